"""The quantity layer: reads quantities and texts into SI numbers, and names the unit of every result.

pint is imported only where a quantity has to be made. The registry of a result is that of the arguments, else pint's
application registry; no registry is ever changed.
"""

from __future__ import annotations

import re
import weakref
from collections.abc import Callable
from typing import Any

from fieldshaft import _core
from fieldshaft._kinds import KINDS
from fieldshaft._errors import InputError
from fieldshaft._records import Record, Sourced, Validated, fill, given, show

Reader = Callable[[Any, "Context", str], Any]
Writer = Callable[[Any, Any], Any]

#: Units of energy that the trade also writes for a torque.
TORQUE_NAMES = frozenset({"foot_pound"})


def application_registry() -> Any:
    from fieldshaft._extras import need

    return need("pint", "quantities (fieldshaft.si takes and returns plain SI numbers without it)").get_application_registry().get()


class Context:
    """One call: whose arguments are read, and the registry that they belong to."""

    __slots__ = ("function", "registry", "first", "units")

    def __init__(self, function: str) -> None:
        self.function = function
        self.registry: Any = None
        self.first = ""
        self.units: _Units | None = None

    def meet(self, registry: Any, parameter: str) -> None:
        if registry is self.registry:
            return
        if self.registry is None:
            self.registry = registry
            self.first = parameter
        elif registry is not None:
            raise TypeError(
                f"{self.function}: {parameter} and {self.first} belong to different pint registries; "
                "make all quantities with one registry"
            )


class _Units:
    """What is known of the units of one registry: factors to SI, and the units in which results are given."""

    __slots__ = ("factors", "results")

    def __init__(self) -> None:
        self.factors: dict[tuple[str, Any], float] = {}
        self.results: dict[tuple[str, str | None], tuple[float, Any]] = {}


_known: weakref.WeakKeyDictionary[Any, _Units] = weakref.WeakKeyDictionary()


def _units_of(registry: Any) -> _Units:
    if getattr(registry, "_active_ctx", None):  # a context may redefine units: what is known holds outside it alone
        return _Units()
    units = _known.get(registry)
    if units is None:
        units = _known[registry] = _Units()
    return units


def _wrong_unit(units: Any, kind: str, context: Context, parameter: str, why: str) -> TypeError:
    table = KINDS.get(kind, {"text": "a plain number", "si": ""})
    unit = f", in units of {table['si']}" if table["si"] else ""
    name = str(units) or "dimensionless"
    return TypeError(f"{context.function}: {parameter} is given in {name}; expected {table['text']}{unit}{why}")


def _energy_by_name(registry: Any, container: Any) -> bool:
    """Whether a unit says energy by its name (J, kWh), not force times length."""
    energy = registry.get_dimensionality("joule")
    power = registry.get_dimensionality("watt")
    return any(
        name not in TORQUE_NAMES and registry.get_dimensionality(name) in (energy, power) for name in dict(container)
    )


def _find_factor(value: Any, kind: str, context: Context, parameter: str) -> float:
    registry, units = value._REGISTRY, value.units
    table = KINDS.get(kind, {"pint": "dimensionless", "radian": [0], "advice": "an angle is no plain number"})
    wanted = registry.Unit(table["pint"])
    if value.dimensionality != wanted.dimensionality:
        raise _wrong_unit(units, kind, context, parameter, "")
    one = registry.Quantity(1, units)  # whole numbers: a registry may calculate with decimals or fractions
    if registry.Quantity(0, units).m_as(wanted) != 0:
        raise _wrong_unit(units, kind, context, parameter, ": a difference, not a reading of a thermometer")
    root = registry.get_root_units(units)[1]
    turns = dict(root._units).get("radian", 0)
    advice = f" ({table.get('advice', '')})"
    if "radian" in table and turns not in table["radian"]:
        raise _wrong_unit(units, kind, context, parameter, advice)
    if kind == "torque" and turns == 0 and _energy_by_name(registry, units._units):
        raise _wrong_unit(units, kind, context, parameter, advice)
    return float(one.m_as(wanted))


def _factor(value: Any, kind: str, context: Context, parameter: str) -> float:
    if context.units is None:
        context.units = _units_of(value._REGISTRY)
    factors = context.units.factors
    key = (kind, value._units)
    factor = factors.get(key)
    if factor is None:
        factor = factors[key] = _find_factor(value, kind, context, parameter)
    return factor


def _scaled(magnitude: Any, factor: float) -> Any:
    if type(magnitude) is int or type(magnitude) is float:
        return magnitude * factor
    if not hasattr(magnitude, "dtype") and hasattr(magnitude, "__float__"):
        return float(magnitude) * factor  # Decimal, Fraction
    if getattr(getattr(magnitude, "dtype", None), "kind", "f") not in "fiu":
        return magnitude  # refused below, by its name
    return magnitude if factor == 1.0 else magnitude * factor


def _read_amount(kind: str) -> Reader:
    def read(value: Any, context: Context, parameter: str) -> Any:
        if isinstance(value, str):
            return _core.parse(value, kind, context.function, parameter)
        registry = getattr(value, "_REGISTRY", None)
        if registry is not None and hasattr(value, "_magnitude"):
            context.meet(registry, parameter)
            return _scaled(value._magnitude, _factor(value, kind, context, parameter))
        if hasattr(getattr(value, "dtype", None), "units"):  # a column of pint-pandas
            return read(getattr(value, "array", value).quantity, context, parameter)
        if isinstance(value, list | tuple) and value and any(isinstance(v, str) or hasattr(v, "_REGISTRY") for v in value):
            import numpy as np

            return np.array([read(entry, context, f"{parameter}[{i}]") for i, entry in enumerate(value)])
        if kind in KINDS:
            table = KINDS[kind]
            raise TypeError(
                f"{context.function}: {parameter}{_bare(value)} has no unit; expected {table['text']} such as "
                f'"1 {table["symbol"]}" or a quantity in units of {table["si"]}'
            )
        return value

    return read


def _bare(value: Any) -> str:
    """A number without a unit as the user wrote it; a long array by its type."""
    text = repr(value)
    return f" = {text}" if len(text) <= 80 else f", a {type(value).__name__},"


def _read_as_given(value: Any, context: Context, parameter: str) -> Any:
    return value


#: The classes of the quantity layer by name, and by the class of the SI layer to which they belong.
_records: dict[str, type[QuantityRecord]] = {}


def register_records(*records: type[QuantityRecord]) -> None:
    for record in records:
        _records[record.__name__] = record


def _read_record(name: str) -> Reader:
    record = _records[name]
    number = " or its number" if record._takes_number else ""

    def read(value: Any, context: Context, parameter: str) -> Any:
        if isinstance(value, record):
            context.meet(value._registry, parameter)
            return value._si
        if isinstance(value, record._si_class) or (number and isinstance(value, int) and not isinstance(value, bool)):
            return value
        raise TypeError(f"{context.function}: {parameter}{given(value)}; expected a {name}{number}")

    return read


def _read_column(frame: Any, field: str, kind: str, context: Context, parameter: str) -> Any:
    """The SI numbers of a column of a data frame, which has its unit in its name or in its type; else as it stands."""
    names = [name for name in frame.columns if isinstance(name, str) and name.partition(" [")[0] == field]
    if len(names) != 1:
        found = f"several columns {field!r}" if names else f"no column {field!r}"
        raise TypeError(f"{context.function}: {parameter} has {found} among {', '.join(map(repr, frame.columns))}")
    (name,) = names
    unit = name.partition(" [")[2].removesuffix("]")
    column, where = frame[name], f"{parameter}[{name!r}]"
    if kind in KINDS and unit and getattr(column.dtype, "kind", "") in "fiu":
        return column.to_numpy(float) * _core.parse(f"1 {unit}", kind, context.function, where)
    if kind in KINDS:
        import numpy as np

        entries = column if hasattr(column.dtype, "units") else list(column)
        return np.asarray(reader(kind)(entries, context, where))
    return column.tolist()


def read_rows(frame: Any, fields: dict[str, str], context: Context, parameter: str) -> list[tuple[Any, ...]]:
    """The rows of a data frame with a column for each field, whose kinds are given, as SI numbers."""
    columns = [_read_column(frame, name, kind.partition("@")[0], context, parameter) for name, kind in fields.items()]
    return list(zip(*columns, strict=True))


def _read_list(inner: Reader, name: str = "") -> Reader:
    record = _records.get(name)

    def read(value: Any, context: Context, parameter: str) -> Any:
        if record is not None and hasattr(value, "columns"):
            fields = dict(zip(record._names(), record._types, strict=True))
            return [record._si_class(*row) for row in read_rows(value, fields, context, parameter)]
        if isinstance(value, str) or not hasattr(value, "__iter__"):
            raise TypeError(f"{context.function}: {parameter}{given(value)}; expected a list")
        return [inner(entry, context, f"{parameter}[{i}]") for i, entry in enumerate(value)]

    return read


def _read_one_of(names: list[str]) -> Reader:
    records = {name: reader(name) for name in names if name in _records}
    others = [name for name in names if name not in records]

    def read(value: Any, context: Context, parameter: str) -> Any:
        for name, inner in records.items():
            if isinstance(value, (_records[name], _records[name]._si_class)):
                return inner(value, context, parameter)
        if not others:
            raise TypeError(
                f"{context.function}: {parameter}{given(value)}; expected {' or '.join(records)}"
            )
        if isinstance(value, str) and value[:1].isalpha():
            return value  # an enumerator
        return reader(others[0])(value, context, parameter)

    return read


def _split(text: str) -> tuple[str, str]:
    head, _, inner = text.partition("[")
    return head, inner.removesuffix("]")


def reader(text: str) -> Reader:
    """The function that reads a value of a described type into the SI layer."""
    if "|" in text and not text.endswith("]"):
        return _read_one_of(text.split("|"))
    head, inner = _split(text.partition("@")[0])
    if head in KINDS or head == "number":
        return _read_amount(head)
    if head == "list":
        return _read_list(reader(inner), inner)
    if head in ("optional", "datum", "sourced"):
        return _read_optional(reader(inner))
    if head in _records:
        return _read_record(head)
    return _read_as_given


def _read_optional(inner: Reader) -> Reader:
    def read(value: Any, context: Context, parameter: str) -> Any:
        if value is None:
            return None
        if isinstance(value, Sourced):
            return Sourced(inner(value.value, context, parameter), value.source)
        return inner(value, context, parameter)

    return read


def _write_amount(kind: str, trade: str | None) -> Writer:
    key = (kind, trade)
    name = trade or KINDS[kind]["trade"]
    si = KINDS[kind]["pint"]

    def write(value: Any, registry: Any) -> Any:
        results = _units_of(registry).results
        found = results.get(key)
        if found is None:
            unit = registry.Unit(name)._units  # what a quantity keeps of a unit: half the time of making one
            found = results[key] = (float(registry.Quantity(1, unit).m_as(si)), unit)
        factor, unit = found
        return registry.Quantity(value if factor == 1.0 else value / factor, unit)

    return write


def _write_as_is(value: Any, registry: Any) -> Any:
    return value


def writer(text: str) -> Writer:
    """The function that turns a value of the SI layer into one of the quantity layer."""
    if "|" in text and not text.endswith("]"):
        options = {_records[name]._si_class: _records[name] for name in text.split("|") if name in _records}
        return lambda value, registry: options[type(value)]._from_si(value, registry) if type(value) in options else value
    head, inner = _split(text)
    if head == text:
        head, _, trade = text.partition("@")
        if head in KINDS:
            return _write_amount(head, trade or None)
        if head in _records:
            record = _records[head]
            return lambda value, registry: record._from_si(value, registry)
        return _write_as_is
    one = writer(inner)
    if head == "array":
        return one
    if head == "list":
        return lambda value, registry: tuple(one(entry, registry) for entry in value)
    if head in ("sourced", "datum"):
        return lambda value, registry: None if value is None else Sourced(one(value.value, registry), value.source)
    if head == "validated":
        return lambda value, registry: Validated(one(value.value, registry), value.outside)
    return lambda value, registry: None if value is None else one(value, registry)


def needs_registry(text: str) -> bool:
    """Whether values of a described type hold quantities."""
    words = text.replace("[", " ").replace("]", " ").replace("|", " ").split()
    return any(word.partition("@")[0] in KINDS or word in _records for word in words)


def _in_own_unit(error: InputError, kinds: dict[str, str], arguments: dict[str, Any]) -> InputError:
    """The error with its SI numbers in the unit that the user chose; a text speaks in the unit of the trade."""
    name, bracket, _ = error.parameter.partition("[")
    kind = kinds.get(name, "").partition("@")[0]
    value: Any = arguments.get(name)
    if kind not in KINDS or bracket and not hasattr(value, "_REGISTRY"):
        return error
    table = KINDS[kind]
    if hasattr(value, "_REGISTRY"):
        factor, symbol = _factor(value, kind, Context(""), name), show(1.0 * value.units).partition(" ")[2]
    else:
        factor, symbol = _core.parse(f"1 {table['symbol']}", kind, "", ""), table["symbol"]
    number = re.compile(rf"(-?(?:\d[\d.]*(?:e[-+]?\d+)?|inf|nan)) {re.escape(table['si'])}(?![\w/·²³⁴])")

    def translated(text: str) -> str:
        return number.sub(lambda match: f"{float(match[1]) / factor:.8g} {symbol}", text)

    return type(error)(error.function, error.parameter, translated(error.value), translated(error.allowed))


class Caller:
    """A formula of the quantity layer: its SI function with the types of its parameters and of its result."""

    __slots__ = ("name", "function", "parameters", "returns", "_readers", "_writer", "_needs_registry")

    def __init__(self, name: str, function: Any, parameters: tuple[tuple[str, str], ...], returns: str) -> None:
        self.name = name
        self.function = function
        self.parameters = parameters
        self.returns = returns
        self._readers: list[tuple[str, Reader]] | None = None

    def _prepare(self) -> list[tuple[str, Reader]]:
        self._readers = [(name, reader(kind)) for name, kind in self.parameters]
        self._writer = writer(self.returns)
        self._needs_registry = needs_registry(self.returns)
        return self._readers

    def __call__(self, *arguments: Any) -> Any:
        readers = self._readers or self._prepare()
        context = Context(self.name)
        values = [read(value, context, name) for (name, read), value in zip(readers, arguments, strict=True)]
        try:
            result = self.function(*values)
        except InputError as error:
            kinds = dict(self.parameters)
            raise _in_own_unit(error, kinds, dict(zip(kinds, arguments, strict=True))) from None
        if not self._needs_registry:
            return result
        return self._writer(result, context.registry or application_registry())


class QuantityRecord(Record):
    """A record whose values are quantities. `si` is the same record in plain SI numbers."""

    __slots__ = ("_si", "_registry")
    _si: Any
    _registry: Any
    _types: tuple[str, ...] = ()
    _si_class: type[Record] = Record
    _takes_number = False

    @property
    def si(self) -> Any:
        """The same record in plain SI numbers."""
        return self._si

    @classmethod
    def _from_si(cls, record: Any, registry: Any) -> Any:
        values = [writer(kind)(value, registry) for kind, value in zip(cls._types, record._values(), strict=True)]
        return _filled(object.__new__(cls), record, registry, values)

    def __eq__(self, other: object) -> bool:
        return bool(self._si == other._si) if isinstance(other, type(self)) else NotImplemented

    def __hash__(self) -> int:
        return hash((type(self), self._si))

    def __reduce__(self) -> tuple[Any, ...]:
        return _restored, (type(self), self._si, self._values())

    def replace(self, **changes: Any) -> Any:
        """The same record with some values changed."""
        context = Context(type(self).__name__)
        context.meet(self._registry, "the record")
        kinds = dict(zip(self._names(), self._types, strict=True))
        if unknown := sorted(set(changes) - set(kinds)):
            raise TypeError(f"{type(self).__name__} has no {', '.join(unknown)}")
        numbers = {name: reader(kinds[name])(value, context, name) for name, value in changes.items()}
        si = self._si.replace(**numbers)
        values = {name: _kept(changes[name], getattr(si, name), kinds[name], self._registry) for name in changes}
        kept = dict(zip(self._names(), self._values(), strict=True))
        return _filled(object.__new__(type(self)), si, self._registry, tuple({**kept, **values}.values()))

    def __repr__(self) -> str:
        inside = ", ".join(f"{n}={_repr_of(v)}" for n, v in zip(self._names(), self._values(), strict=True))
        return f"{type(self).__name__}({inside})"


def _repr_of(value: Any) -> str:
    if hasattr(value, "_REGISTRY"):
        return repr(show(value))
    if isinstance(value, tuple):
        return f"({', '.join(map(_repr_of, value))}{',' if len(value) == 1 else ''})"
    return repr(value)


def _kept(given: Any, number: Any, kind: str, registry: Any) -> Any:
    """What a record shows of a value: a quantity as given, anything else in the unit of the trade."""
    return given if hasattr(given, "_REGISTRY") else writer(kind)(number, registry)


def _filled(record: Any, si: Any, registry: Any, values: Any) -> Any:
    object.__setattr__(record, "_si", si)
    object.__setattr__(record, "_registry", registry)
    fill(record, values)
    return record


def _restored(cls: Any, si: Any, values: tuple[Any, ...]) -> Any:
    """A record from its pickle. Its quantities have come back in the application registry."""
    return _filled(object.__new__(cls), si, application_registry(), values)


def fill_quantities(record: QuantityRecord, values: tuple[Any, ...]) -> None:
    """Sets the values of a new record: quantities as given, texts as quantities in the unit of the trade."""
    cls = type(record)
    context = Context(cls.__name__)
    names = cls._names()
    numbers = [reader(k)(v, context, n) for k, v, n in zip(cls._types, values, names, strict=True)]
    try:
        si = cls._si_class(*numbers)
    except InputError as error:
        raise _in_own_unit(error, dict(zip(names, cls._types, strict=True)), dict(zip(names, values, strict=True))) from None
    registry = context.registry or application_registry()
    kept = [_kept(g, v, k, registry) for k, g, v in zip(cls._types, values, si._values(), strict=True)]
    _filled(record, si, registry, kept)


__all__ = ["Caller", "QuantityRecord", "fill_quantities", "read_rows", "register_records"]
