"""Remedies and changeovers: what Python makes of them."""

from __future__ import annotations

import json
import pickle
from pathlib import Path

import pint
import pytest

import fieldshaft
from fieldshaft import Status

CASES = Path(__file__).resolve().parents[2] / "docs" / "examples" / "cases"


@pytest.fixture(scope="module")
def found() -> fieldshaft.Remedies:
    return fieldshaft.remedies(fieldshaft.read_case_file(CASES / "drawbar-left-in-the-540-hole.json"))


def test_every_set_is_verified(found: fieldshaft.Remedies) -> None:
    before = fieldshaft.assess(found.case)
    assert before.verdict is Status.stop and found.sets and len(found) == len(found.sets)
    for remedy in found.sets:
        after = remedy.assess()
        assert after.verdict is remedy.verdict and remedy.changed != found.case
        assert remedy.changes and all(change.text and change.id for change in remedy.changes)
        for check in remedy.healed:
            assert before.find(check).status > after.find(check).status or after.find(check).status is Status.ok
        assert {finding.id for finding in after.findings if finding.status is Status.stop} <= set(remedy.left)
    assert [len(remedy.changes) for remedy in found.sets] == sorted(len(remedy.changes) for remedy in found.sets)
    assert found.complete_size >= 1


def test_objects(found: fieldshaft.Remedies) -> None:
    again = pickle.loads(pickle.dumps(found))
    assert again == found and hash(again) == hash(found) and again.sets == found.sets and again.case == found.case
    for form in ("text", "markdown", "html", "json"):
        assert getattr(fieldshaft, f"to_{form}")(again, "us") == getattr(found, f"to_{form}")("us")
    assert str(found.sets[0]) in repr(found) and "<" in found._repr_html_() and "<html" not in found._repr_html_()
    assert json.loads(found.to_json())["schema"] == "fieldshaft-remedies/1"
    frame = found.to_frame()
    assert len(frame) == sum(len(remedy.changes) for remedy in found.sets)
    assert list(frame.columns) == ["set", "change", "text", "price", "currency", "verdict afterwards"]
    assert set(found.by_finding) <= {finding.id for finding in fieldshaft.assess(found.case).findings}


def test_bounds_of_the_search() -> None:
    case = fieldshaft.read_case_file(CASES / "drawbar-left-in-the-540-hole.json")
    assert len(fieldshaft.remedies(case, most_sets=1, most_changes=1)) <= 1
    with pytest.raises(fieldshaft.InputError, match="remedies: accept = 'fine'; allowed: one of: ok, caution, not_known, stop"):
        fieldshaft.remedies(case, "fine")
    with pytest.raises(fieldshaft.InputError, match="remedies: most_changes = 1.5; allowed: a whole number"):
        fieldshaft.remedies(case, most_changes=1.5)
    with pytest.raises(TypeError, match="remedies: most_sets = 'two'"):
        fieldshaft.remedies(case, most_sets="two")
    with pytest.raises(TypeError, match="remedies: case = 'x'"):
        fieldshaft.remedies("x")


def test_changeover() -> None:
    steps = fieldshaft.changeover("reversible", (1, "540 rpm"), (2, pint.Quantity(1000, "rpm")))
    assert steps.possible and "engine" in steps.steps[0].lower() and len(steps.steps) > 4 and steps.hazards
    assert pickle.loads(pickle.dumps(steps)) == steps
    assert "1000" in repr(steps) and repr(steps).startswith("<Changeover from type 1")
    assert steps.steps[0] in " ".join(steps.to_text().split()) or steps.steps[0][:30] in steps.to_text()
    assert not fieldshaft.changeover("fixed", (1, "540 rpm"), (2, "1000 rpm")).possible
    with pytest.raises(fieldshaft.InputError, match="arrangement = 'any'"):
        fieldshaft.changeover("any", (1, "540 rpm"), (2, "1000 rpm"))
    with pytest.raises(TypeError, match=r"changeover: to = 2 \(int\); expected a type number and a speed"):
        fieldshaft.changeover("fixed", (1, "540 rpm"), 2)
    with pytest.raises(TypeError, match=r"changeover: to\[1\] = 1000 has no unit"):
        fieldshaft.changeover("fixed", (1, "540 rpm"), (2, 1000))
    with pytest.raises(fieldshaft.InputError):
        fieldshaft.changeover("fixed", (1, "540 rpm"), (9, "1000 rpm"))
