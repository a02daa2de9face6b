"""Records and documents as columns: names with units, values without. What data frames and JSON are made of."""

from __future__ import annotations

import enum
import math
import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING, Any

from fieldshaft._kinds import KINDS
from fieldshaft._records import Record, Sourced, Validated, given, show_quantity

if TYPE_CHECKING:  # pandas is an extra: where it is missing, type checkers see Any
    from pandas import DataFrame as DataFrame  # type: ignore[import-not-found, import-untyped, unused-ignore]

#: Quantities of documents, such as "0.35 m ± 0.005 m".
_QUANTITY = re.compile(r"(-?\d\S*) (\S+)(?: ± (\S+) \2)?")
_SI_UNITS = {table["si"].translate(str.maketrans({"·": ".", "²": "^2", "³": "^3", "⁴": "^4"})): table["si"] for table in KINDS.values()}


def kinds_of(record: Any) -> tuple[str, ...]:
    """The described types of a record's fields. Those of a plain record stand in the class of the other layer."""
    if hasattr(record, "_types"):
        return tuple(record._types)
    from fieldshaft import _formulas

    twin = getattr(_formulas, type(record).__name__, None)
    return tuple(getattr(twin, "_types", [""] * len(record._names())))


def si_unit(kind: str) -> str:
    return str(KINDS.get(kind.partition("@")[0], {"si": ""})["si"])


def _innermost(kind: str) -> str:
    """The kind of the numbers inside wrappers: "optional[time@hour]" holds "time@hour"."""
    while kind.endswith("]"):
        kind = kind[:-1].partition("[")[2]
    return kind


def _amount(name: str, value: Any, kind: str) -> tuple[str, Any]:
    """A quantity in the unit in which its kind is answered, so that rows of one kind share their columns."""
    head, _, trade = kind.partition("@")
    if head not in KINDS:
        return f"{name} [{show_quantity(1 * value.units).partition(' ')[2]}]", value.magnitude
    unit = value._REGISTRY.Unit(trade or KINDS[head]["trade"])
    return f"{name} [{_symbol(head, trade)}]", value.m_as(unit)


#: Symbols of the units of the trade that are not the usual ones of their kind.
_SYMBOLS = {"meter": "m", "hour": "h", "gigapascal": "GPa"}


def _symbol(head: str, trade: str) -> str:
    return _SYMBOLS.get(trade, str(KINDS[head]["symbol"]))


def _column(name: str, value: Any, kind: str, in_si: bool) -> Iterator[tuple[str, Any]]:
    kind = _innermost(kind)
    head, _, trade = kind.partition("@")
    if hasattr(value, "_REGISTRY"):
        yield _amount(name, value, kind)
    elif head in KINDS and isinstance(value, tuple):
        for i, entry in enumerate(value):
            yield from _column(f"{name}[{i}]", entry, kind, in_si)
    elif head in KINDS:
        yield f"{name} [{si_unit(kind) if in_si else _symbol(head, trade)}]", value
    else:
        yield name, value.value if isinstance(value, enum.Enum) else value


def columns(record: Record, before: str = "", in_si: bool | None = None) -> Iterator[tuple[str, Any]]:
    """Every value of a record under its name, with the unit: "front_angle.upper [deg]". Sources are left out."""
    plain = not hasattr(record, "_types") if in_si is None else in_si
    for name, value, kind in zip(record._names(), record._values(), kinds_of(record), strict=True):
        path = f"{before}{name}"
        while isinstance(value, Sourced | Validated):
            if isinstance(value, Validated):
                yield f"{path}.outside", value.outside
            value = value.value
        if type(value).__name__ == "Source":
            continue
        if isinstance(value, Record):
            yield from columns(value, f"{path}.", plain)
        elif isinstance(value, tuple) and value and isinstance(value[0], Record):
            for i, entry in enumerate(value):
                yield from columns(entry, f"{path}[{i}].", plain)
        else:
            yield from _column(path, value, kind, plain)


def document_columns(tree: Any, before: str = "") -> Iterator[tuple[str, Any]]:
    """Every entry of a document under its path, quantities as numbers: "tractor.power [W]", "tractor.power ± [W]"."""
    if isinstance(tree, Mapping):
        for key, entry in tree.items():
            yield from document_columns(entry, f"{before}.{key}" if before else key)
    elif isinstance(tree, list):
        for i, entry in enumerate(tree):
            yield from document_columns(entry, f"{before}[{i}]")
    else:
        match = _QUANTITY.fullmatch(tree) if isinstance(tree, str) else None
        if match is None or match[2] not in _SI_UNITS:
            yield before, tree
            return
        unit = _SI_UNITS[match[2]]
        yield f"{before} [{unit}]", float(match[1])
        if match[3]:
            yield f"{before} ± [{unit}]", float(match[3])


def table(rows: Iterable[Sequence[Any]], columns: Sequence[str], index: Sequence[str] | None = None) -> DataFrame:
    """A data frame of rows that are in the order of the columns."""
    from fieldshaft._extras import need

    made: DataFrame = need("pandas", "data frames").DataFrame(list(rows), columns=list(columns), index=index)
    return made


def frame(rows: Iterable[Mapping[str, Any]]) -> DataFrame:
    """A data frame with a row for each mapping; where values are arrays, a row for each of their elements."""
    from fieldshaft._extras import need

    pandas = need("pandas", "data frames")
    rows = list(rows)
    arrays = any(getattr(value, "ndim", 0) for row in rows for value in row.values())
    made: DataFrame = (
        pandas.concat([pandas.DataFrame(dict(_unrolled(row))) for row in rows], ignore_index=True)
        if arrays
        else pandas.DataFrame(rows)
    )
    return made


def _unrolled(row: Mapping[str, Any]) -> Iterator[tuple[str, Any]]:
    """Arrays as columns: those of one shape as they stand; a table beside columns one by one, "speeds[0] [rpm]"."""
    shapes = {value.shape for value in row.values() if getattr(value, "ndim", 0)}
    for name, value in row.items():
        if len(shapes) > 1 and getattr(value, "ndim", 0) == 2:
            plain, bracket, unit = name.partition(" [")
            yield from ((f"{plain}[{i}]{bracket}{unit}", value[:, i]) for i in range(value.shape[1]))
        else:
            yield name, value.reshape(-1) if getattr(value, "ndim", 0) else value


def to_frame(items: Any) -> DataFrame:
    """Records, cases or reports as one pandas data frame, with the units in the names of the columns.

    Parameters
    ----------
    items : record, case or report, or an iterable of them
        A record is one row; one whose values are arrays is a row for each of their elements. A case is one row, with a
        column for each entry of its document; a report has the rows of its own to_frame.

    Returns
    -------
    pandas DataFrame

    Examples
    --------
    >>> from fieldshaft import *
    >>> tubes = [TubeSection("50 mm", "44 mm"), TubeSection("2 in", "44 mm")]
    >>> to_frame(tubes)
       outer_diameter [mm]  inner_diameter [mm]
    0                 50.0                 44.0
    1                 50.8                 44.0
    """
    if hasattr(items, "to_frame"):
        alone: DataFrame = items.to_frame()
        return alone
    if isinstance(items, str) or not isinstance(items, Iterable):
        raise TypeError(f"to_frame: items{given(items)}; expected records, cases or reports")
    entries = list(items)
    for i, entry in enumerate(entries):
        if not hasattr(entry, "to_frame"):
            raise TypeError(f"to_frame: items[{i}]{given(entry)}; expected a record, a case or a report")
    if all(isinstance(entry, Record) for entry in entries):
        return frame(dict(columns(entry)) for entry in entries)
    from fieldshaft._extras import need

    joined: DataFrame = need("pandas", "data frames").concat([entry.to_frame() for entry in entries], ignore_index=True)
    return joined


def json_ready(value: Any) -> Any:
    """A value as JSON holds it: quantities with their unit, arrays as lists, what is not finite as text."""
    if isinstance(value, Record):
        return {name: json_ready(entry) for name, entry in zip(value._names(), value._values(), strict=True)}
    if hasattr(value, "_REGISTRY"):
        return {"value": json_ready(value.magnitude), "unit": show_quantity(1 * value.units).partition(" ")[2]}
    if hasattr(value, "tolist"):
        return json_ready(value.tolist())
    if isinstance(value, Mapping):
        return {str(key): json_ready(entry) for key, entry in value.items()}
    if isinstance(value, list | tuple):
        return [json_ready(entry) for entry in value]
    if isinstance(value, float) and not math.isfinite(value):
        return str(value)
    return value.value if isinstance(value, enum.Enum) else value


__all__ = ["to_frame"]
