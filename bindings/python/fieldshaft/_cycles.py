"""Cycles of a history on plain numbers: functions of whole arrays."""

from __future__ import annotations

from typing import Any

from fieldshaft import _core


def count_cycles(history: Any, gate: float = 0.0, grid: float = 0.0) -> Any:
    """Cycles of a history by the rainflow method.

    Parameters
    ----------
    history : array of shape (n,)
        Samples of one unit, finite. Equal neighbours count once.
    gate : float, default 0.0
        A swing of at most this size is no reversal, in the unit of the history; at least 0.
    grid : float, default 0.0
        Reversals are rounded to whole multiples of this, at least 0; zero: not rounded.

    Returns
    -------
    array of shape (m, 3)
        A row for each cycle, in the order in which they close: range, mean, and count (1, or 0.5 for half a cycle).

    Notes
    -----
    The starting point's ranges and what is left at the end count as half cycles.

    Source: ASTM E1049-85 (2017), section 5.4.4.

    Examples
    --------
    >>> from fieldshaft.si import *
    >>> count_cycles([-2, 1, -3, 5, -1, 3, -4, 4, -2])[:3]
    array([[ 3. , -0.5,  0.5],
           [ 4. , -1. ,  0.5],
           [ 4. ,  1. ,  1. ]])
    """
    return _core.count_cycles(history, gate, grid)


def count_repeating_cycles(history: Any, gate: float = 0.0, grid: float = 0.0) -> Any:
    """Cycles of a history that repeats over and over, from its highest sample round to it again.

    Parameters
    ----------
    history : array of shape (n,)
        Samples of one unit, finite.
    gate, grid : float, default 0.0
        As for count_cycles.

    Returns
    -------
    array of shape (m, 3)
        A row for each cycle: range, mean, and count, which is always 1.

    Notes
    -----
    Source: ASTM E1049-85 (2017), section 5.4.5.

    Examples
    --------
    >>> from fieldshaft.si import *
    >>> count_repeating_cycles([-2, 1, -3, 5, -1, 3, -4, 4, -2])[:, 0]
    array([4., 3., 7., 9.])
    """
    return _core.count_repeating_cycles(history, gate, grid)


def count_closed_cycles(history: Any, gate: float = 0.0, grid: float = 0.0) -> Any:
    """Cycles that a history closes, by the four-point method, and the reversals that stay open.

    Parameters
    ----------
    history : array of shape (n,)
        Samples of one unit, finite.
    gate, grid : float, default 0.0
        As for count_cycles.

    Returns
    -------
    rows : array of shape (m, 3)
        A row for each cycle: range, mean, and count, which is always 1.
    residue : array of shape (k,)
        The reversals that stay open; close_residue counts them.

    Notes
    -----
    Source: four-point rainflow counting.

    Examples
    --------
    >>> from fieldshaft.si import *
    >>> rows, residue = count_closed_cycles([1, 3, 2, 4])
    >>> rows, residue
    (array([[1. , 2.5, 1. ]]), array([1., 4.]))
    """
    return _core.count_closed_cycles(history, gate, grid)


def close_residue(residue: Any) -> Any:
    """Cycles of a residue that is run through twice, as a record that repeats closes them.

    Parameters
    ----------
    residue : array of shape (n,)
        Reversals that count_closed_cycles left.

    Returns
    -------
    array of shape (m, 3)
        A row for each cycle: range, mean, and count.

    Notes
    -----
    Source: four-point rainflow counting.

    Examples
    --------
    >>> from fieldshaft.si import *
    >>> close_residue([2, -1, 3, -5, 4, -4, 2])[:, 0]
    array([3., 7., 9.])
    """
    return _core.close_residue(residue)


def miner_damage(cycles: Any, line: Any, rule: Any, small_cycles: Any = "harmless") -> Any:
    """Share of a part's life that cycles use up; 1 is the mean life.

    Parameters
    ----------
    cycles : array of shape (m, 3)
        Rows of range (at least 0), mean and count (at least 0), in the unit of the line.
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
    >>> from fieldshaft.si import *
    >>> line = sn_line(FatigueStrength(150e6, 720e6, 550e6), 0.84)
    >>> miner_damage([[400e6, 0, 1000]], line, "goodman").value
    0.0041591
    """
    return _core.miner_damage(cycles, line, rule, small_cycles)


def history_damage(
    history: Any,
    line: Any,
    rule: Any,
    small_cycles: Any = "harmless",
    gate: float = 0.0,
    grid: float = 0.0,
    threads: int = 1,
) -> Any:
    """Damage of a history: its cycles counted and added up in one pass.

    Parameters
    ----------
    history : array of shape (n,)
        Samples in the unit of the line, finite.
    line, rule, small_cycles
        As for miner_damage.
    gate, grid : float, default 0.0
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
    >>> from fieldshaft.si import *
    >>> line = sn_line(FatigueStrength(150e6, 720e6, 550e6), 0.84)
    >>> history_damage([0, 200e6, -200e6, 200e6, 0], line, "goodman").value
    0.0000041591
    """
    return _core.history_damage(history, line, rule, small_cycles, gate, grid, threads)
