"""Every reference row whose formula is public in Python, through the quantity layer."""

from __future__ import annotations

import math
import os
from collections import Counter
from pathlib import Path
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


def _compared(row: dict[str, Any]) -> dict[str, tuple[float, float]]:
    """For each expected value of a row what the formula gives, and what was expected."""
    result, values = _result(row), VALUES.get(row["formula"])
    actual = {name: values(result)[name] if values else rows.follow(result, name) for name in row["expect"]}
    return {name: (rows.number_of(a), rows.expected_number(row["expect"][name], a)) for name, a in actual.items()}


@pytest.mark.parametrize("row", [r for r in ROWS if r["formula"] not in NOT_PUBLIC], ids=lambda row: f"{row['formula']}: {row['id']}")
def test_row(row: dict[str, Any]) -> None:
    assert hasattr(fieldshaft, row["formula"]), f"{row['formula']} is not public in Python"
    assert row["expect"]
    for name, (number, wanted) in _compared(row).items():
        assert rows.close(number, wanted, row["tolerance"]), f"{name} = {number!r}, expected {wanted!r}"


def test_reasons_are_in_use() -> None:
    formulas = {row["formula"] for row in ROWS}
    assert not {name for name in NOT_PUBLIC if name not in formulas or hasattr(fieldshaft, name)}


PAGE = Path(__file__).resolve().parents[2] / "docs/handbook/external_checks.md"

#: Rows that somebody else printed, firmest first; what is computed from a stated formula is no outside check.
OUTSIDE = [
    "exact", "published", "textbook example", "published (quoted elsewhere)", "common practice, no source", "from memory, verify",
]  # fmt: skip


def _deviation(row: dict[str, Any]) -> float:
    """The greatest relative difference of a row's values from the expected ones."""
    return max(abs(n - w) / max(abs(n), abs(w)) if n != w else 0.0 for n, w in _compared(row).values())


def _in_words(deviation: float) -> str:
    """One digit: a compiler's last digits are no matter of the page."""
    if deviation == 0.0 or deviation < 1e-9:
        return "below 1e-9"
    return f"{deviation:.0e}"


def _page() -> str:
    outside = {status: [row for row in ROWS if row["status"] == status] for status in OUTSIDE}
    lines = [
        "# Checks against the outside", "",
        "Every reference row that somebody else printed, with the deviation of the library from it: the greatest relative difference of the",
        "row's values. Written by `tests/python/test_reference_rows.py` (`FIELDSHAFT_WRITE_REPORTS=1` writes it anew) and compared in every",
        "run; the rows themselves stand in `tests/reference`. A tolerance is as wide as the digits that are printed. Rows",
        f'"computed" from a stated formula ({sum(row["status"] == "computed" for row in ROWS)} of {len(ROWS)}) guard the arithmetic and are no outside check.', "",
        "| status | rows | greatest deviation |", "| --- | --- | --- |",
    ]  # fmt: skip
    for status, some in outside.items():
        if some:
            lines.append(f"| {status} | {len(some)} | {_in_words(max(map(_deviation, some)))} |")
    for status, some in outside.items():
        if some:
            lines += ["", f"## {status}", "", "| row | formula | deviation | tolerance | source |", "| --- | --- | --- | --- | --- |"]
        for row in some:
            source = row["source"].replace("|", "\\|")
            lines.append(f"| {row['id']} | `{row['formula']}` | {_in_words(_deviation(row))} | {row['tolerance']:g} | {source} |")
    return "\n".join(lines) + "\n"


def test_page_of_outside_checks() -> None:
    if os.environ.get("FIELDSHAFT_WRITE_REPORTS"):
        PAGE.write_text(_page(), encoding="utf-8")
    assert PAGE.read_text(encoding="utf-8") == _page()


def test_every_row_says_where_it_comes_from() -> None:
    for row in ROWS:
        assert row["source"].strip() and row["status"] in {*OUTSIDE, "computed"} and 0 <= row["tolerance"] <= 0.05, row["id"]
