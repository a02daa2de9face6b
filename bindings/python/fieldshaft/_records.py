"""Records: results with several values, and the objects that formulas take. They do not change once made."""

from __future__ import annotations

import enum
import sys
from collections.abc import Iterable
from typing import TYPE_CHECKING, Any

from fieldshaft._errors import InputError

if TYPE_CHECKING:
    from fieldshaft._frames import DataFrame


def _same(a: Any, b: Any) -> bool:
    if a is b:
        return True
    if hasattr(a, "shape") or hasattr(b, "shape"):
        import numpy as np

        equal = a == b
        return getattr(a, "shape", None) == getattr(b, "shape", None) and bool(np.all(equal))
    if isinstance(a, tuple) and isinstance(b, tuple):
        return len(a) == len(b) and all(map(_same, a, b))
    return bool(a == b)


def _plain(value: Any) -> Any:
    if isinstance(value, Record):
        return value.to_dict()
    if isinstance(value, tuple):
        return [_plain(entry) for entry in value]
    return value.value if isinstance(value, enum.Enum) else value


class Record:
    """A fixed set of named values: compares by value, pickles, and does not change."""

    __slots__ = ()

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError(f"{type(self).__name__} does not change; make a new one with replace()")

    def __delattr__(self, name: str) -> None:
        raise AttributeError(f"{type(self).__name__} does not change")

    @classmethod
    def _names(cls) -> tuple[str, ...]:
        return cls.__slots__

    def _values(self) -> tuple[Any, ...]:
        return tuple(getattr(self, name) for name in self._names())

    def __eq__(self, other: object) -> bool:
        if type(other) is not type(self):
            return NotImplemented
        return all(map(_same, self._values(), other._values()))

    def __hash__(self) -> int:
        return hash((type(self), self._values()))

    def __repr__(self) -> str:
        inside = ", ".join(f"{name}={value!r}" for name, value in zip(self._names(), self._values(), strict=True))
        return f"{type(self).__name__}({inside})"

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), self._values()

    def replace(self, **changes: Any) -> Any:
        """The same record with some values changed."""
        return type(self)(**{**dict(zip(self._names(), self._values(), strict=True)), **changes})

    def to_dict(self) -> dict[str, Any]:
        """The values by their names; records inside become dictionaries, tuples become lists."""
        return {name: _plain(value) for name, value in zip(self._names(), self._values(), strict=True)}

    def to_json(self) -> str:
        """The values by their names as JSON: a quantity as value and unit, what is not finite as text."""
        import json

        from fieldshaft._frames import json_ready

        return json.dumps(json_ready(self), ensure_ascii=False)

    def to_frame(self) -> DataFrame:
        """The values as a pandas data frame of one row, or one for each element of arrays; units are in the names."""
        from fieldshaft._frames import columns, frame

        return frame([dict(columns(self))])

    def _repr_html_(self) -> str:
        from html import escape

        rows = "".join(
            f"<tr><th style='text-align:left'>{escape(name)}</th><td style='text-align:left'>{escape(show(value))}</td></tr>"
            for name, value in zip(self._names(), self._values(), strict=True)
        )
        return f"<table><caption>{type(self).__name__}</caption>{rows}</table>"


def show_quantity(value: Any) -> str:
    """A quantity with the symbol that the trade writes."""
    from fieldshaft._kinds import KINDS

    registry = value._REGISTRY
    symbols = {registry.Unit(table[unit]): table[symbol] for table in KINDS.values() for unit, symbol in (("pint", "si"), ("trade", "symbol"))}
    symbol = symbols.get(value.units) or f"{value.units:~P}"
    number = f"{value.magnitude:.6g}" if getattr(value.magnitude, "ndim", 0) == 0 else str(value.magnitude)
    return f"{number} {symbol}".strip()


def given(value: Any) -> str:
    """What a user handed in, for a message: as it stands where that is short, else what kind of thing it is."""
    kind = type(value).__name__
    text = repr(value)
    words = f" = {text} ({kind})" if len(text) <= 80 else f" is {'an' if kind[0] in 'AEIOU' else 'a'} {kind}"
    return words + ("; pass its .value" if isinstance(value, Sourced | Validated) else "")


def show(value: Any) -> str:
    """A value as a person reads it."""
    if isinstance(value, float):
        return f"{value:.6g}"
    if isinstance(value, tuple):
        return ", ".join(map(show, value)) or "none"
    if hasattr(value, "_REGISTRY"):
        return show_quantity(value)
    return "not known" if value is None else str(value)


def fill(record: Record, values: Iterable[Any]) -> None:
    """Sets the values of a new record."""
    for name, value in zip(record._names(), values, strict=True):
        object.__setattr__(record, name, value)


class Name(enum.StrEnum):
    """A choice by name. Spaces and hyphens may stand for underscores."""

    @classmethod
    def _missing_(cls, value: object) -> Any:
        if isinstance(value, str):
            name = value.replace(" ", "_").replace("-", "_")
            return next((member for member in cls if member.value == name), None)
        return None

    def __repr__(self) -> str:
        return f"<{type(self).__name__}: {self.value!r}>"

    # Members of one choice compare in their order, not in that of the alphabet.

    def __lt__(self, other: str) -> bool:
        return self._place() < other._place() if isinstance(other, type(self)) else str.__lt__(self, other)

    def __le__(self, other: str) -> bool:
        return not other < self if isinstance(other, type(self)) else str.__le__(self, other)

    def __gt__(self, other: str) -> bool:
        return other < self if isinstance(other, type(self)) else str.__gt__(self, other)

    def __ge__(self, other: str) -> bool:
        return not self < other if isinstance(other, type(self)) else str.__ge__(self, other)

    def _place(self) -> int:
        return list(type(self)).index(self)


def choice(cls: type[Name], value: Any, function: str, parameter: str) -> Any:
    """A member of an enumeration by its name; InputError names what else there is."""
    if not isinstance(value, str):
        raise TypeError(f"{function}: {parameter}{given(value)}; expected one of: {', '.join(cls)}")
    try:
        return cls(value)
    except ValueError:
        raise InputError(function, parameter, repr(str(value)), f"one of: {', '.join(cls)}") from None


class Sourced(Record):
    """A value that knows where it comes from.

    Attributes
    ----------
    value
        The value.
    source : Source
        Where it comes from, and how sure it is.
    """

    __slots__ = ("value", "source")
    value: Any
    source: Any

    def __init__(self, value: Any, source: Any) -> None:
        fill(self, (value, source))


class Validated(Record):
    """A result of a formula that may have been used outside its validity: the fact travels with the number.

    Attributes
    ----------
    value
        The result.
    outside : str or None
        Which range was left; None inside. An array of these where the value is an array.
    """

    __slots__ = ("value", "outside")
    value: Any
    outside: Any

    def __init__(self, value: Any, outside: Any = None) -> None:
        fill(self, (value, outside))

    @property
    def valid(self) -> Any:
        """True inside the range for which the formula is meant; an array where the value is one."""
        if hasattr(self.outside, "shape"):
            np = sys.modules["numpy"]
            return np.equal(self.outside, None).astype(bool)
        return self.outside is None
