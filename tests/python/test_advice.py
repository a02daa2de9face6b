"""Remedies and changeovers: what Python makes of them."""

from __future__ import annotations

import json
import math
import pickle
from pathlib import Path
from typing import Any

import pint
import pytest

import fieldshaft
from fieldshaft import Status, si

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
            assert after.find(check) is None or after.find(check).status < before.find(check).status
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
    assert steps.possible and "stop the engine" in steps.steps[1] and len(steps.steps) > 4 and steps.hazards
    assert pickle.loads(pickle.dumps(steps)) == steps
    assert "1000" in repr(steps) and repr(steps).startswith("<Changeover from type 1")
    assert steps.steps[0] in " ".join(steps.to_text().split()) or steps.steps[0][:30] in steps.to_text()
    assert any("Unhitch" in step for step in steps.steps)
    mounted = fieldshaft.changeover("reversible", (1, "540 rpm"), (2, "1000 rpm"), hitch="three-point")
    assert not any("Unhitch" in step or "drawbar" in step for step in mounted.steps)
    with pytest.raises(fieldshaft.InputError, match="changeover: hitch = 'towed'; allowed: drawbar, three-point"):
        fieldshaft.changeover("reversible", (1, "540 rpm"), (2, "1000 rpm"), hitch="towed")
    assert not fieldshaft.changeover("fixed", (1, "540 rpm"), (2, "1000 rpm")).possible
    with pytest.raises(fieldshaft.InputError, match="arrangement = 'any'"):
        fieldshaft.changeover("any", (1, "540 rpm"), (2, "1000 rpm"))
    with pytest.raises(TypeError, match=r"changeover: to = 2 \(int\); expected a type number and a speed"):
        fieldshaft.changeover("fixed", (1, "540 rpm"), 2)
    with pytest.raises(TypeError, match=r"changeover: to\[1\] = 1000 has no unit"):
        fieldshaft.changeover("fixed", (1, "540 rpm"), (2, 1000))
    with pytest.raises(fieldshaft.InputError):
        fieldshaft.changeover("fixed", (1, "540 rpm"), (9, "1000 rpm"))


# Gears, economy PTO and changeovers of cases. ----------------------------------------------------------------


def _with_economy_gear() -> dict[str, Any]:
    document = json.loads((CASES / "trailed-cutter-that-fits.json").read_text(encoding="utf-8"))
    document["tractor"]["pto"]["gears"].append({"name": "540E", "pto_speed": "540 r/min", "engine_speed": "1600 r/min"})
    return document


def test_gear_uses() -> None:
    plain, economy = fieldshaft.gear_uses(fieldshaft.read_case(_with_economy_gear()))
    assert (plain.gear, plain.suits, economy.gear, economy.suits) == ("540", True, "540E", True)
    assert [use.set.m_as("rpm") for use in (plain, economy)] == pytest.approx([2100.0, 1600.0])
    # Guards act at 630 r/min: 2100 * 630/540 and 1600 * 630/540, rounded down.
    assert [use.never_pass.m_as("rpm") for use in (plain, economy)] == pytest.approx([2450.0, 1866.0])
    assert economy.pto_at_high_idle.m_as("rpm") == pytest.approx(540 * 2350 / 1600)
    assert plain.available.low > economy.available.low and plain.missing == ("implement.machine",)
    assert pickle.loads(pickle.dumps(plain)) == plain and "2100 rpm" in repr(plain) and "2450 rpm" in plain._repr_html_()
    document = _with_economy_gear()
    del document["tractor"]["engine"]["high_idle"]
    unknown = si.gear_uses(fieldshaft.read_case(document))[0]
    assert unknown.never_pass is None and unknown.pto_at_high_idle is None and "tractor.engine.high_idle" in unknown.missing
    assert unknown.set == pytest.approx(2100 * math.pi / 30)


def test_economy_answer() -> None:
    case = fieldshaft.read_case(_with_economy_gear())
    answer = fieldshaft.economy_answer(case, fieldshaft.SeasonUse("300 h", fieldshaft.Money(1.2, "EUR")))
    fuel = fieldshaft.economy_saving("58 kW", "34 kW", "2100 rpm", "1600 rpm", "2200 rpm").value
    assert answer.saving == pytest.approx(fuel.saving)
    assert answer.saved.m_as("L/h") == pytest.approx((fuel.plain - fuel.economy).m_as("L/h"))
    assert answer.litres_a_season == pytest.approx(300 * answer.saved.m_as("L/h"))
    assert answer.money_a_season.amount == pytest.approx(1.2 * answer.litres_a_season) and answer.money_a_season.currency == "EUR"
    assert answer.pto_at_plain_engine.m_as("rpm") == pytest.approx(540 * 2100 / 1600)
    assert answer.fits is Status.ok and answer.missing == ()
    assert fieldshaft.economy_answer(case, si.SeasonUse(300 * 3600.0)).money_a_season is None
    assert si.economy_answer(case, si.SeasonUse(0.0)).litres_a_season == 0.0


def test_what_an_economy_answer_does_not_know_is_none() -> None:
    document = _with_economy_gear()
    del document["implement"]["power_need"]
    answer = fieldshaft.economy_answer(fieldshaft.read_case(document), fieldshaft.SeasonUse("300 h"))
    assert answer.fits is Status.not_known and "implement.power_need" in answer.missing
    assert answer.saved is answer.saving is answer.litres_a_season is None and answer.available is not None
    del document["tractor"]["pto"]["gears"][1]
    none = fieldshaft.economy_answer(fieldshaft.read_case(document), fieldshaft.SeasonUse("300 h"))
    assert none.economy == "" and none.economy_engine is none.available is none.pto_at_plain_engine is None


def test_bad_gears_and_seasons() -> None:
    case = fieldshaft.read_case(_with_economy_gear())
    for layer in (fieldshaft, si):
        with pytest.raises(TypeError, match=r"gear_uses: case = '\{\}' \(str\); expected a Case, see read_case"):
            layer.gear_uses("{}")
        with pytest.raises(TypeError, match="economy_answer: season = 300"):
            layer.economy_answer(case, 300)
    with pytest.raises(fieldshaft.InputError, match="economy_answer: season = -3600 s"):
        fieldshaft.economy_answer(case, fieldshaft.SeasonUse("-1 h"))
    with pytest.raises(TypeError, match="SeasonUse: hours = 300 has no unit"):
        fieldshaft.SeasonUse(300)


def test_changeover_between_cases() -> None:
    before = fieldshaft.read_case_file(CASES / "cutter-with-lever-at-1000.json")
    document = before.to_dict()
    pto = document["tractor"]["pto"]
    (slow,) = [gear for gear in pto["gears"] if gear["name"] == "540"]
    pto["selected"] = slow["name"]
    steps = fieldshaft.changeover_between(before, fieldshaft.read_case(document))
    assert steps == fieldshaft.changeover("lever only", (1, "1000 rpm"), (1, "540 rpm")) and steps.possible
    assert fieldshaft.changeover_between(before, before) is None
    with pytest.raises(TypeError, match="changeover_between: after = 5"):
        fieldshaft.changeover_between(before, 5)
