"""Every place of the sources that refuses an input or an entry stands in the handbook's table (that the table is what the tests
provoked is the test refusals/page)."""

from __future__ import annotations

import json
import re
from typing import Any

import errors
import pytest

import fieldshaft
from fieldshaft import si

NAN = float("nan")

TORSION = {"torque_amplitude": 100.0, "torque_mean": 500.0, "shear_endurance": 1e8, "shear_ultimate": 5e8, "school": "goodman_in_shear"}

SPLINE = si.StraightSpline(6, 0.035, 0.029, 0.0087, 0.06)
LINKAGE = si.ThreePointLinkage(lower_link=0.9, top_pivot_below=-0.5, top_link=0.9, mast_height=0.5, span=0.8, convergence=2.0)
ENVELOPE = {"driveline": si.Driveline(0.06, 0.06, si.Position(-0.6, 0.0, 0.0)), "pin": si.Position(-0.4, 0.0, 0.0)}
CHAIN = {"first": ENVELOPE["driveline"], "second": si.Driveline(0.06, 0.06, si.Position(-2.0, 0.0, 0.0)), "pin": ENVELOPE["pin"], "range": si.AttitudeRange()}
MOUNTED_LINE = {"driveline": ENVELOPE["driveline"], "linkage": si.ThreePointLinkage(0.1, 0.25, 0.9, 0.2, -0.3, 0.65, 0.61)}
LEVELLED = {**MOUNTED_LINE, "range": si.MountedRange()}
STEERING = si.Position(-0.5, 0.0, 0.0)
AROUND = si.MountedSurroundings(si.Surroundings(0.05, [si.Rod(si.Position(-0.3, 0.0, -0.2), si.Position(-0.1, 0.0, -0.2), 0.03)]))
TURN = {**ENVELOPE, "range": si.AttitudeRange(yaw=si.AngleRange(-0.5, 0.5))}


def coupled(**coupling: float) -> Any:
    return si.AttitudeRange(couplings=[si.AngleCoupling(**coupling)])


#: Refusals that no list of formulas reaches, because a number or a record stands where a quantity does elsewhere.
REFUSED: list[tuple[str, dict[str, Any], str]] = [
    ("Direction", {"forward": 1.0, "left": NAN, "up": 0.0}, "left"),
    ("Direction", {"forward": 1.0, "left": 0.0, "up": NAN}, "up"),
    ("sn_line_through", {"first": 4e8, "first_cycles": -1.0, "second": 2e8, "second_cycles": 1e6, "ultimate": 8e8, "yield_": 6e8}, "first_cycles"),
    ("finite_life_strength", {"endurance": 2e8, "cycles": -1.0}, "cycles"),
    ("finite_life_strength", {"endurance": 2e8, "cycles": 1e4, "exponent": NAN}, "exponent"),
    ("clutch_temperature_rise", {"heat": 1e4, "mass": 5.0, "specific_heat": 0.0}, "specific_heat"),
    ("cut_out_torque", {"trip_torque": 1e3, "least_share": NAN}, "least_share"),
    ("real_interest_by_difference", {"interest": 0.08, "inflation": NAN}, "inflation"),
    ("referred_inertia", {"inertia": 1.0, "ratio": 0.0}, "ratio"),
    ("torque_band", {"nominal": 1e3, "scatter": 1.5}, "scatter"),
    ("slide_force", {"torque": 500.0, "bearing_diameter": 0.03, "friction": 0.1, "flank_angle": NAN}, "flank_angle"),
    ("spring_compression", {"force": 1e3, "springs": 0, "rate": 1e5, "compression_at_bind": 0.01}, "springs"),
    ("slip_time_for_rise", {"clutch_torque": 500.0, "slip_speed": 50.0, "mass": 5.0, "rise": 100.0, "specific_heat": 0.0}, "specific_heat"),
    (
        "free_clutch_engagement",
        {"driving_inertia": 2.0, "driving_speed": 50.0, "driven_inertia": 2.0, "driven_speed": 0.0, "clutch_torque": 500.0, "drive_torque": NAN},
        "drive_torque",
    ),
    (
        "free_clutch_engagement",
        {"driving_inertia": 2.0, "driving_speed": 50.0, "driven_inertia": 2.0, "driven_speed": 0.0, "clutch_torque": 500.0, "load_torque": NAN},
        "load_torque",
    ),
    (
        "shear_bolt_band",
        {"diameter": 0.008, "arm": 0.05, "ultimate_min": 8e8, "ultimate_max": 9e8, "bolts": 1, "planes": 1, "least_ratio": NAN},
        "least_ratio",
    ),
    ("shear_endurance", {"endurance": 1e8, "ratio": 0.0}, "ratio"),
    ("sn_line_through", {"first": 4e8, "first_cycles": 1e3, "second": 2e8, "second_cycles": NAN, "ultimate": 8e8, "yield_": 6e8}, "second_cycles"),
    ("shear_ultimate", {"ultimate": 6e8, "ratio": 1.2}, "ratio"),
    ("referred_yield", {"yield_torque": 900.0, "speed_ratio": 1.9, "efficiency": 0.0}, "efficiency"),
    ("equivalent_pto_power", {"drawbar": 2e4, "transmission": 1.2, "traction": 0.7, "pto": 3e4}, "transmission"),
    ("equivalent_pto_power", {"drawbar": 2e4, "transmission": 0.9, "traction": 0.0, "pto": 3e4}, "traction"),
    ("UnevenProfileSection", {"enclosed_area": 0.0, "walls": [si.Wall(0.1, 0.004)]}, "enclosed_area"),
    ("UnevenProfileSection", {"enclosed_area": 1e-3, "walls": [si.Wall(0.0, 0.004)]}, "walls.width"),
    ("UnevenProfileSection", {"enclosed_area": 1e-3, "walls": [si.Wall(0.1, NAN)]}, "walls.thickness"),
    ("spline_stress", {"spline": SPLINE, "torque": 500.0, "factors": si.SplineFactors(application=0.0)}, "factors.application"),
    ("spline_stress", {"spline": SPLINE, "torque": 500.0, "factors": si.SplineFactors(load_distribution=-1.0)}, "factors.load_distribution"),
    ("spline_stress", {"spline": SPLINE, "torque": 500.0, "factors": si.SplineFactors(fatigue_life=NAN)}, "factors.fatigue_life"),
    ("StraightSpline", {"count": 6, "major_diameter": 0.0, "minor_diameter": 0.03, "tooth_width": 0.008, "length": 0.06}, "major_diameter"),
    ("MeasuredSpline", {"sizes": si.SplineSizes(6, 0.0, 0.029, 0.032, 0.0087, 0.003, 0.06, 0.0352)}, "major_diameter"),
    ("taxes_insurance_housing", {"price": si.Money(1e5, "EUR"), "salvage": si.Money(-1.0, "EUR")}, "salvage"),
    ("overlap_at", {"telescope": si.Telescope(0.5, si.Slide(0.4), si.Slide(0.6)), "length": 0.7}, "second closed_overlap"),
    ("turn_limit", {**TURN, "limits": si.DrivelineLimits(longest=0.0)}, "limits.longest"),
    ("turn_limit", {**TURN, "limits": si.DrivelineLimits(shortest=-1.0)}, "limits.shortest"),
    ("driveline_envelope", {**ENVELOPE, "range": coupled(pitch_share=NAN)}, "coupling.pitch_share"),
    ("driveline_envelope", {**ENVELOPE, "range": coupled(roll_share=NAN)}, "coupling.roll_share"),
    ("driveline_envelope", {**ENVELOPE, "range": coupled(limit=NAN)}, "coupling.limit"),
    ("mounted_pose", {"linkage": LINKAGE, "position": si.LinkagePosition(sway=NAN)}, "sway"),
    ("mounted_pose", {"linkage": LINKAGE, "position": si.LinkagePosition(difference=NAN)}, "difference"),
    ("chain_envelope", {**CHAIN, "between": NAN}, "between"),
    ("mounted_driveline_envelope", {**MOUNTED_LINE, "linkage": LINKAGE, "range": si.MountedRange(sway=si.LengthRange(-0.1, 0.1), pivot=STEERING)}, "range.sway"),
    ("tolerant_mounted_driveline_envelope", {**LEVELLED, "tolerance": si.MountedTolerance(level=si.LevelLift(NAN, 0.01, True))}, "tolerance.level.lift"),
    ("tolerant_mounted_driveline_envelope", {**LEVELLED, "tolerance": si.MountedTolerance(level=si.LevelLift(0.0, -0.01, True))}, "tolerance.level.tolerance"),
    ("mounted_least_clearance", {**MOUNTED_LINE, "range": si.MountedRange(pivot=STEERING), "around": AROUND}, "range.pivot"),
    ("steered_wheel", {"wheel": si.SupportWheel(2.0, 0.5, 0.6), "pivot": STEERING, "steer": NAN}, "steer"),
    ("steered_wheel", {"wheel": si.SupportWheel(2.0, 0.5, 0.6), "pivot": STEERING, "steer": 0.1, "roll": NAN}, "roll"),
    ("torsion_fatigue_diameter", {**TORSION, "safety_factor": 0.0}, "safety_factor"),
    ("torsion_fatigue_diameter", {**TORSION, "safety_factor": 1.5, "notch_factor": 0.5}, "notch_factor"),
    ("torsion_fatigue_diameter", {**TORSION, "safety_factor": 1.5, "bore_ratio": 1.0}, "bore_ratio"),
    ("torsion_fatigue_safety_factor", {**TORSION, "diameter": 0.04, "notch_factor": 0.5}, "notch_factor"),
    ("torsion_fatigue_safety_factor", {**TORSION, "diameter": 0.04, "bore_ratio": 1.0}, "bore_ratio"),
]


@pytest.mark.parametrize(("function", "given", "parameter"), REFUSED, ids=lambda value: value if isinstance(value, str) else "")
def test_refused(function: str, given: dict[str, Any], parameter: str) -> None:
    named = re.sub("^(Measured|tolerant_|mounted_)+", "", function)  # C++ tells these apart by their arguments alone
    with pytest.raises(ValueError, match=rf"^({function}|{named}): {parameter} = .*; allowed: ."):
        getattr(si, function)(**given)


CUTTER = "cases/trailed-cutter-that-fits"
MOUNTED = "cases/mounted-mower-lifted-for-transport"
STEERED = "cases/semi-mounted-mower-behind-its-headstock"
WINGS = "cases/cutter-with-folding-wings"
SHAKING = "cases/unequal-joints-that-shake"
BALER = "cases/baler-by-the-table"
FARM = "farms/three-tractors-seven-implements"

#: An example document, one entry of it that is changed, and how the one problem of the document begins.
WRONG: list[tuple[str, str, Any, str]] = [
    (CUTTER, "tractor/pto/stub/type", 2.5, "tractor.pto.stub.type: 2.5; expected a whole number from 0 to 4"),
    (CUTTER, "driveline/tractor_yoke", {"spline_count": 6.5}, "driveline.tractor_yoke.spline_count: 6.5; expected a whole number up to 200"),
    (CUTTER, "driveline/tube_steel", {"condition": "cold drawn"}, 'driveline.tube_steel.condition: "cold drawn" without a name'),
    (CUTTER, "driveline/tube_steel", {"yield": "400 MPa", "ultimate": "300 MPa"}, 'driveline.tube_steel.yield: "400 MPa"; expected at most'),
    (CUTTER, "driveline/tube", {"outer_diameter": "60 mm", "wall": "4 mm"}, "driveline.tube: diameters and a profile"),
    (CUTTER, "driveline/telescope_positions", 2.5, "driveline.telescope_positions: 2.5; expected a whole number"),
    (CUTTER, "driveline/duties", [{"name": "mowing", "share": "60 %"}], "driveline.duties: .* expected shares that together make 100 %"),
    (CUTTER, "implement/machine", "balr", 'implement.machine: "balr"; expected a row of the published table'),
    (CUTTER, "implement/note_applies", "yes", "implement.note_applies: stands without implement.machine"),
    (BALER, "implement/note_applies", "no", "implement.note_applies: no; expected nothing"),
    (BALER, "implement/feed_basis", "dry", "implement.feed_basis: "),
    (CUTTER, "tractor/hitch", {"distance": "400 mm"}, "tractor.hitch.kind: missing"),
    (CUTTER, "implement/steering_pivot", {"behind": "500 mm", "lateral": "0 mm"}, "implement.steering_pivot: stated"),
    (STEERED, "range/working/sway", ["-10 mm", "10 mm"], "range.working.sway: beside implement.steering_pivot"),
    (MOUNTED, "range/turning/roll_at_full_turn", "50 %", "range.turning.roll_at_full_turn: stated"),
    (WINGS, "implement/branches/1/coupled_at_rest", "no", "implement.branches[1].fold_at_rest: stands beside coupled_at_rest"),
    (MOUNTED, "tractor/hitch/distance", "400 mm", "tractor.hitch: a three-point hitch with drawbar dimensions"),
    (SHAKING, "torsion/masses/1/name", "engine", 'torsion.masses[1].name: "engine"; expected a name that no other mass has'),
    (SHAKING, "torsion/masses/0/speed", "500 rpm", 'torsion.masses[0].speed: "500 rpm"; expected no speed unless'),
    (SHAKING, "torsion/shafts/1/from", "rotor", 'torsion.shafts[1].to: "rotor"; expected another mass than'),
    (SHAKING, "torsion/shafts/0/joints", "yes", "torsion.shafts: 2 shafts with joints; expected only one"),
    (SHAKING, "torsion/shafts/0/to", "rotor", 'torsion.shafts: no shaft to "rotor"'),
    (FARM, "drivelines/0/serves", 5, "drivelines[0].serves: 5; expected a list of texts"),
    (FARM, "drivelines/0/serves/0", 5, "drivelines[0].serves[0]: 5; expected a text"),
    (FARM, "options/1/value_at_end", "1 EUR", "options[1]: a value_class and a value_at_end"),
]


@pytest.mark.parametrize(("example", "entry", "value", "begins"), WRONG)
def test_refused_document(example: str, entry: str, value: Any, begins: str) -> None:
    document = json.loads((errors.ROOT / "docs/examples" / f"{example}.json").read_text(encoding="utf-8"))
    *parents, last = entry.split("/")
    at = document
    for key in parents:
        at = at[int(key) if isinstance(at, list) else key]
    at[int(last) if isinstance(at, list) else last] = value
    read = fieldshaft.read_farm if example == FARM else fieldshaft.read_case
    with pytest.raises(fieldshaft.CaseError) as refused:
        read(json.dumps(document))
    errors.note(str(problem) for problem in refused.value.problems)
    pattern = ".*".join(re.escape(part) for part in begins.split(".*"))
    assert any(re.match(pattern, str(problem)) for problem in refused.value.problems), str(refused.value)


def test_the_page_tells_of_every_place_that_refuses() -> None:
    assert len(errors.places()) > 850
    assert len(errors.document_places()) > 80
    assert [str(place) for place in errors.untested(*errors.told())] == []


def test_a_place_that_the_page_does_not_tell_of_is_noticed() -> None:
    refusals, problems = errors.told()
    tongue = {refusal for refusal in refusals if (refusal.function, refusal.parameter) == ("steady_turn_angle", "tongue")}
    left = errors.untested(refusals - tongue, problems)
    assert [(place.function, place.parameter) for place in left if isinstance(place, errors.Place)] == [("steady_turn_angle", "tongue")] * len(left)
    assert len(left) == 2
    assert len(errors.untested(refusals, set())) > 80


def test_every_row_of_the_page_tells_cause_and_cure() -> None:
    rows = errors.cells()
    assert len(rows) > 1200
    assert all(len(row) == 5 and all(row) for row in rows)
