"""Every reference row whose formula is public in Python, through the quantity layer."""

from __future__ import annotations

import math
from collections import Counter
from typing import Any

import pytest
import rows

import fieldshaft
from fieldshaft import si

#: Formulas of rows that Python does not offer under that name, with the reason.
NOT_PUBLIC: dict[str, str] = {}


def _cycle_values(table: Any) -> dict[str, float]:
    """Rows of cycles as the reference files name them: by place, and summed by range."""
    values: dict[str, float] = {"rows": len(table)}
    for i, (size, mean, count) in enumerate(table.tolist()):
        values |= {f"range_{i}": size, f"mean_{i}": mean, f"count_{i}": count}
    sums: Counter[str] = Counter()
    for size, _, count in table.tolist():
        sums[f"range {size:g}"] += count
    return values | sums | {"ranges": len(sums)}


def _closed_values(result: Any) -> dict[str, float]:
    table, residue = result
    return _cycle_values(table) | {"open": len(residue)} | {f"residue_{i}": r for i, r in enumerate(residue.tolist())}


#: Results whose values the rows name in another way than by field.
VALUES = {
    "recommended_power": lambda result: {
        **{entry.edition: entry.power for entry in result.editions},
        **{name: getattr(result, name).value for name in ("lowest", "highest") if getattr(result, name)},
    },
    "identify_pto": lambda result: {
        "candidates": len(result.candidates),
        "near_misses": len(result.near_misses),
        **({"number": result.candidates[0].type.number} if result.candidates else {}),
    },
    "drawbar_distances": lambda result: {str(entry.position): entry.distance.value for entry in result},
    "farthest_throw": lambda result: {
        "launch_angle": result.launch_angle,
        **{name: getattr(result.flight, name) for name in ("distance", "time", "top", "landing_speed")},
    },
    "thread_stress_diameter": lambda result: {"value": result, "area": math.pi / 4 * result**2},
    "beam_critical_speeds": lambda result: {f"speed_{i}": speed for i, speed in enumerate(result, 1)},
    "torsional_modes": lambda result: {f"frequency_{i}": mode.frequency for i, mode in enumerate(result)},
    "interference_table": lambda result: {name: getattr(result[0], name) for name in result[0]._names()},
    "forced_response": lambda result: {"swing": result.value.swings[0].amplitude},
    "count_cycles": _cycle_values,
    "count_repeating_cycles": _cycle_values,
    "close_residue": _cycle_values,
    "count_closed_cycles": _closed_values,
}


def _has_plain_line(row: dict[str, Any]) -> bool:
    """Rows of a line in plain numbers, which belong to the SI layer."""
    line = row["given"].get("line", {}).get("sn_line_through", {})
    return isinstance(line.get("first"), float)


def _result(row: dict[str, Any]) -> Any:
    if _has_plain_line(row):
        given = dict(row["given"])
        line = {rows.python_name(k): v for k, v in given.pop("line")["sn_line_through"].items()}
        return getattr(si, row["formula"])(**given, line=si.sn_line_through(**line))
    return rows.call(row["formula"], row["given"])


ROWS = rows.all_rows()


@pytest.mark.parametrize("row", [r for r in ROWS if r["formula"] not in NOT_PUBLIC], ids=lambda row: f"{row['formula']}: {row['id']}")
def test_row(row: dict[str, Any]) -> None:
    assert hasattr(fieldshaft, row["formula"]), f"{row['formula']} is not public in Python"
    result = _result(row)
    assert row["expect"]
    for name, expected in row["expect"].items():
        values = VALUES.get(row["formula"])
        actual = values(result)[name] if values else rows.follow(result, name)
        number, wanted = rows.number_of(actual), rows.expected_number(expected, actual)
        assert rows.close(number, wanted, row["tolerance"]), f"{name} = {number!r}, expected {wanted!r}"


def test_reasons_are_in_use() -> None:
    formulas = {row["formula"] for row in ROWS}
    assert not {name for name in NOT_PUBLIC if name not in formulas or hasattr(fieldshaft, name)}
