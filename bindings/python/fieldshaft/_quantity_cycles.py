"""Cycles of a history on quantities."""

from __future__ import annotations

from typing import Any

from fieldshaft import _core
from fieldshaft._quantities import Context, _bare, read_rows, reader
from fieldshaft._records import Record, fill, given
from fieldshaft import si


class Cycles(Record):
    """Counted cycles of a history with a unit.

    Attributes
    ----------
    range : quantity
        Highest less lowest of each cycle, in the unit of the history.
    mean : quantity
        Midway between them.
    count : array
        1, or 0.5 for half a cycle.
    """

    __slots__ = ("range", "mean", "count")
    range: Any
    mean: Any
    count: Any

    def __init__(self, range: Any, mean: Any, count: Any) -> None:
        fill(self, (range, mean, count))

    def __len__(self) -> int:
        return len(self.count)


def _as_quantity(values: Any) -> Any:
    """A column of pint-pandas as a quantity, anything else as it stands."""
    return getattr(values, "array", values).quantity if hasattr(getattr(values, "dtype", None), "units") else values


def _counted(name: str, history: Any, gate: Any, grid: Any) -> Any:
    """Counts the magnitudes of a history; gate and grid are brought into its unit."""
    function = getattr(_core, name)
    history = _as_quantity(history)
    if hasattr(history, "_REGISTRY"):
        unit = history.units
        return unit, function(history.magnitude, _size(name, "gate", gate, history), _size(name, "grid", grid, history))
    return None, function(history, gate, grid)


def _size(name: str, parameter: str, value: Any, history: Any) -> Any:
    if hasattr(value, "_REGISTRY"):
        if value._REGISTRY is not history._REGISTRY:
            raise TypeError(f"{name}: {parameter} and history belong to different pint registries")
        return value.m_as(history.units)
    if value == 0.0:
        return 0.0
    raise TypeError(f"{name}: {parameter}{_bare(value)} has no unit; expected a quantity in units of {history.units}")


def _cycles(unit: Any, rows: Any) -> Any:
    return rows if unit is None else Cycles(rows[:, 0] * unit, rows[:, 1] * unit, rows[:, 2])


def count_cycles(history: Any, gate: Any = 0.0, grid: Any = 0.0) -> Any:
    """Cycles of a history by the rainflow method.

    Parameters
    ----------
    history : quantity, or array of plain numbers, of shape (n,)
        Samples of one unit, finite. Equal neighbours count once.
    gate : quantity or float, default 0.0
        A swing of at most this size is no reversal, in the unit of the history; at least 0.
    grid : quantity or float, default 0.0
        Reversals are rounded to whole multiples of this, at least 0; zero: not rounded.

    Returns
    -------
    Cycles, or array of shape (m, 3)
        Range, mean and count of each cycle, in the order in which they close: quantities for a history with a unit,
        rows of numbers for one without.

    Notes
    -----
    The starting point's ranges and what is left at the end count as half cycles.

    Source: ASTM E1049-85 (2017), section 5.4.4.

    Examples
    --------
    >>> from fieldshaft import *
    >>> count_cycles([-2, 1, -3, 5, -1, 3, -4, 4, -2])[:3]
    array([[ 3. , -0.5,  0.5],
           [ 4. , -1. ,  0.5],
           [ 4. ,  1. ,  1. ]])
    """
    return _cycles(*_counted("count_cycles", history, gate, grid))


def count_repeating_cycles(history: Any, gate: Any = 0.0, grid: Any = 0.0) -> Any:
    """Cycles of a history that repeats over and over, from its highest sample round to it again.

    Parameters
    ----------
    history, gate, grid
        As for count_cycles.

    Returns
    -------
    Cycles, or array of shape (m, 3)
        As for count_cycles; every cycle is whole.

    Notes
    -----
    Source: ASTM E1049-85 (2017), section 5.4.5.

    Examples
    --------
    >>> from fieldshaft import *
    >>> count_repeating_cycles([-2, 1, -3, 5, -1, 3, -4, 4, -2])[:, 0]
    array([4., 3., 7., 9.])
    """
    return _cycles(*_counted("count_repeating_cycles", history, gate, grid))


def count_closed_cycles(history: Any, gate: Any = 0.0, grid: Any = 0.0) -> Any:
    """Cycles that a history closes, by the four-point method, and the reversals that stay open.

    Parameters
    ----------
    history, gate, grid
        As for count_cycles.

    Returns
    -------
    cycles : Cycles, or array of shape (m, 3)
        As for count_cycles; every cycle is whole.
    residue : quantity, or array, of shape (k,)
        The reversals that stay open; close_residue counts them.

    Notes
    -----
    Source: four-point rainflow counting.

    Examples
    --------
    >>> from fieldshaft import *
    >>> rows, residue = count_closed_cycles([1, 3, 2, 4])
    >>> rows, residue
    (array([[1. , 2.5, 1. ]]), array([1., 4.]))
    """
    unit, (rows, residue) = _counted("count_closed_cycles", history, gate, grid)
    return _cycles(unit, rows), residue if unit is None else residue * unit


def close_residue(residue: Any) -> Any:
    """Cycles of a residue that is run through twice, as a record that repeats closes them.

    Parameters
    ----------
    residue : quantity, or array of plain numbers, of shape (n,)
        Reversals that count_closed_cycles left.

    Returns
    -------
    Cycles, or array of shape (m, 3)
        As for count_cycles.

    Notes
    -----
    Source: four-point rainflow counting.

    Examples
    --------
    >>> from fieldshaft import *
    >>> close_residue([2, -1, 3, -5, 4, -4, 2])[:, 0]
    array([3., 7., 9.])
    """
    residue = _as_quantity(residue)
    if hasattr(residue, "_REGISTRY"):
        return _cycles(residue.units, _core.close_residue(residue.magnitude))
    return _core.close_residue(residue)


def _line(line: Any, context: Context) -> tuple[Any, str]:
    """The line of the SI layer, and the kind of its load."""
    read = reader("SnLine|TorqueSnLine")
    number = read(line, context, "line")
    return number, "torque" if isinstance(number, si.TorqueSnLine) else "stress"


def _numbers(values: Any, name: str) -> Any:
    """A column of cycles that NumPy can read without losing what it knows."""
    import numpy as np

    if hasattr(values, "mask") and hasattr(values, "filled"):
        raise TypeError(f"miner_damage: cycles.{name} is a masked array; fill it or leave the masked cycles out")
    column = np.asarray(values)
    if column.size and column.dtype.kind not in "fiu":
        raise TypeError(f"miner_damage: cycles.{name} holds {column.dtype}; expected numbers")
    return column.astype(float).reshape(-1)


def miner_damage(cycles: Any, line: Any, rule: Any, small_cycles: Any = "harmless") -> Any:
    """Share of a part's life that cycles use up; 1 is the mean life.

    Parameters
    ----------
    cycles : Cycles, or rows of range, mean and count
        Ranges and means are quantities or texts of the kind of the line; range and count at least 0. A data frame has
        columns of these names with their unit, as Cycles.to_frame() writes them.
    line : SnLine or TorqueSnLine
        S-N line of the part, notch factors in it or in the cycles.
    rule : MeanStressRule or str
        What a mean does.
    small_cycles : SmallCycles or str, default 'harmless'
        What cycles below the endurance limit do.

    Returns
    -------
    Validated (float)
        Outside where a cycle reaches the static strength or where fewer than 1000 of it lead to failure.

    Notes
    -----
    The order of the cycles is ignored; tests to failure have ended at sums from about 0.3 to 3.

    Source: Palmgren-Miner rule, sum of n/N = 1.

    Examples
    --------
    >>> from fieldshaft import *
    >>> line = sn_line(FatigueStrength("22 ksi", "105 ksi", "80 ksi"), 0.84)
    >>> miner_damage([["120 ksi", "0 ksi", 3], ["60 ksi", "10 ksi", 2], ["40 ksi", "0 ksi", 2]], line, "goodman").value
    0.00045672
    """
    import numpy as np

    context = Context("miner_damage")
    number, kind = _line(line, context)
    read = reader(kind)
    if isinstance(cycles, Cycles):
        ranges, means = (read(c, context, "cycles") for c in (cycles.range, cycles.mean))
        counts = cycles.count
    elif hasattr(cycles, "columns"):
        rows = read_rows(cycles, {"range": kind, "mean": kind, "count": ""}, context, "cycles")
        ranges, means, counts = np.array(rows, dtype=float).reshape(-1, 3).T
    else:
        if isinstance(cycles, str) or not hasattr(cycles, "__iter__"):
            raise TypeError(f"miner_damage: cycles{given(cycles)}; expected Cycles, or rows of range, mean and count")
        rows = list(cycles)
        if any(isinstance(row, str) or not hasattr(row, "__len__") or len(row) != 3 for row in rows):
            raise TypeError("miner_damage: cycles has rows that are not range, mean and count")
        ranges = [read(row[0], context, f"cycles[{i}][0]") for i, row in enumerate(rows)]
        means = [read(row[1], context, f"cycles[{i}][1]") for i, row in enumerate(rows)]
        counts = [row[2] for row in rows]
    columns = [_numbers(column, name) for column, name in zip((ranges, means, counts), Cycles._names(), strict=True)]
    if len({column.size for column in columns}) != 1:
        sizes = ", ".join(str(column.size) for column in columns)
        raise ValueError(f"miner_damage: cycles has ranges, means and counts of different lengths: {sizes}")
    table = np.column_stack(columns)
    return _core.miner_damage(table, number, rule, small_cycles)


def history_damage(
    history: Any,
    line: Any,
    rule: Any,
    small_cycles: Any = "harmless",
    gate: Any = 0.0,
    grid: Any = 0.0,
    threads: int = 1,
) -> Any:
    """Damage of a history: its cycles counted and added up in one pass.

    Parameters
    ----------
    history : quantity of shape (n,)
        Samples of the kind of the line, finite.
    line, rule, small_cycles
        As for miner_damage.
    gate, grid : quantity, or 0.0
        As for count_cycles.
    threads : int, default 1
        To share a long history out among; 0: as many as the machine runs at once. Results do not depend on it.

    Returns
    -------
    Validated (float)
        As for miner_damage.

    Notes
    -----
    Source: ASTM E1049-85 (2017) and the Palmgren-Miner rule.

    Examples
    --------
    >>> from fieldshaft import *
    >>> line = sn_line(FatigueStrength("150 MPa", "720 MPa", "550 MPa"), 0.84)
    >>> history_damage(["0 MPa", "200 MPa", "-200 MPa", "200 MPa", "0 MPa"], line, "goodman").value
    0.0000041591
    """
    context = Context("history_damage")
    number, kind = _line(line, context)
    read = reader(kind)
    sizes = [0.0 if value == 0.0 else read(value, context, name) for name, value in (("gate", gate), ("grid", grid))]
    return _core.history_damage(read(history, context, "history"), number, rule, small_cycles, *sizes, threads)


__all__ = [
    "Cycles",
    "close_residue",
    "count_closed_cycles",
    "count_cycles",
    "count_repeating_cycles",
    "history_damage",
    "miner_damage",
]

