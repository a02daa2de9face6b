"""Records and objects of both layers: repr, equality, pickling, conversion, and that they do not change."""

from __future__ import annotations

import copy
import inspect
import json
import pickle
import re
from typing import Any

import numpy as np
import pandas
import pint
import pytest

import fieldshaft
from fieldshaft import si
from fieldshaft._records import Record, Sourced


def _samples(layer: Any) -> list[Any]:
    quantities = layer is fieldshaft

    def f(text: str, number: float) -> Any:
        return text if quantities else number

    line = layer.engine_line(layer.PtoPower(f("75 kW", 75e3)), f("2200 rpm", 230.0), 0.3, f("1400 rpm", 146.0), f("2350 rpm", 246.0))
    spline = layer.InvoluteSpline(21, f("1.5875 mm", 0.0015875), f("30 deg", np.pi / 6), f("50 mm", 0.05))
    return [
        layer.SolidSection(f("40 mm", 0.04)),
        layer.TubeSection(f("50 mm", 0.05), f("44 mm", 0.044)),
        layer.ProfileSection(f("1296 mm²", 1296e-6), f("144 mm", 0.144), f("4 mm", 0.004)),
        layer.OpenSection([layer.Wall(f("50 mm", 0.05), f("3 mm", 0.003))]),
        layer.StraightSpline(6, f("34.9 mm", 0.0349), f("29.7 mm", 0.0297), f("8.7 mm", 0.0087), f("60 mm", 0.06)),
        spline,
        layer.spline_stress(spline, f("500 N·m", 500.0)),
        layer.pto_type(2),
        layer.identify_pto(6, f("35 mm", 0.035)),
        layer.find_material("4140", "annealed"),
        layer.joint_bearing_life_checked(f("20 kN", 2e4), f("40 mm", 0.04), f("400 N·m", 400.0), f("540 rpm", 56.5), f("1 deg", 0.0174)),
        layer.Money(5, "EUR"),
        layer.NotchFactors(),
        line,
        layer.Source("a manual", "given"),
        layer.shear_ratio("maximum shear"),
        layer.run_down_time,
        layer.MeanStressRule.gerber,
    ]


SAMPLES = [pytest.param(item, id=f"{layer.__name__}-{i}") for layer in (fieldshaft, si) for i, item in enumerate(_samples(layer))]


@pytest.fixture(autouse=True)
def application_registry() -> Any:
    """Quantities come back from a pickle in the application registry."""
    return pint.get_application_registry()


@pytest.mark.parametrize("item", SAMPLES)
def test_pickle(item: Any) -> None:
    for protocol in range(2, pickle.HIGHEST_PROTOCOL + 1):
        again = pickle.loads(pickle.dumps(item, protocol))
        assert again == item
        assert type(again) is type(item)
        assert repr(again) == repr(item)


@pytest.mark.parametrize("item", SAMPLES)
def test_value_semantics(item: Any) -> None:
    assert copy.deepcopy(item) == item
    if isinstance(item, Record):
        assert hash(copy.deepcopy(item)) == hash(item)
        assert item != object() and item != 5
        name = item._names()[0]
        with pytest.raises(AttributeError, match="does not change"):
            setattr(item, name, 1)
        with pytest.raises(AttributeError, match="does not change"):
            delattr(item, name)
        assert item.replace() == item


@pytest.mark.parametrize("item", SAMPLES)
def test_words(item: Any) -> None:
    if isinstance(item, Record):
        text = repr(item)
        assert text.startswith(type(item).__name__ + "(")
        assert all(name in text for name in item._names())
        assert "0x" not in text
        html = item._repr_html_()
        assert html.startswith("<table>") and html.endswith("</table>")
        document = item.to_dict()
        assert list(document) == list(item._names())


@pytest.mark.parametrize("item", SAMPLES)
def test_json_and_frames(item: Any) -> None:
    if isinstance(item, Record):
        document = json.loads(item.to_json())
        assert list(document) == list(item._names())
        frame = item.to_frame()
        assert len(frame) == 1 and all(any(name.startswith(field) for field in item._names()) for name in frame.columns)
        pandas.testing.assert_frame_equal(fieldshaft.to_frame([item, item]).iloc[[1]].reset_index(drop=True), frame)


def test_units_of_columns() -> None:
    tube = fieldshaft.TubeSection("2 in", "44 mm")
    assert tube.to_frame().iloc[0].to_dict() == pytest.approx({"outer_diameter [mm]": 50.8, "inner_diameter [mm]": 44.0})
    assert tube.si.to_frame().iloc[0].to_dict() == pytest.approx({"outer_diameter [m]": 0.0508, "inner_diameter [m]": 0.044})
    assert json.loads(tube.to_json())["outer_diameter"] == {"value": pytest.approx(50.8), "unit": "mm"}
    assert json.loads(tube.si.to_json()) == pytest.approx({"outer_diameter": 0.0508, "inner_diameter": 0.044})
    season = fieldshaft.SeasonUse("300 h").to_frame()
    assert season["hours [h]"][0] == 300.0 and season["fuel_price"][0] is None


def test_frames_of_arrays() -> None:
    torque = np.array([[100.0, 200.0], [300.0, 400.0]])
    frame = si.joint_couples(torque, 0.3, 0.1).to_frame()
    assert len(frame) == 4 and frame["output [N·m]"][3] == si.joint_couples(400.0, 0.3, 0.1).output
    life = si.joint_bearing_life_checked(2e4, 0.04, 400.0, 56.5, np.array([0.0174, 0.3])).to_frame()
    assert len(life) == 2 and any(name.endswith("outside") for name in life.columns)


def test_json_of_what_is_not_finite() -> None:
    assert json.loads(si.Money(5.0, "EUR").replace(amount=7.0).to_json())["amount"] == 7.0
    assert json.loads(Sourced(float("inf"), None).to_json()) == {"value": "inf", "source": None}


def test_what_is_no_row() -> None:
    for wrong in (5, "5 mm", None):
        with pytest.raises(TypeError, match="to_frame: items"):
            fieldshaft.to_frame(wrong)
    with pytest.raises(TypeError, match=r"to_frame: items\[1\] = 5"):
        fieldshaft.to_frame([si.SolidSection(0.04), 5])


def test_reprs() -> None:
    assert repr(si.TubeSection(0.05, 0.044)) == "TubeSection(outer_diameter=0.05, inner_diameter=0.044)"
    assert repr(fieldshaft.TubeSection("50 mm", "44 mm")) == "TubeSection(outer_diameter='50 mm', inner_diameter='44 mm')"
    stress = fieldshaft.joint_couples("100 N·m", "20 deg", "0 deg")
    assert repr(stress) == "JointCouples(output='93.9693 N·m', driving='0 N·m', driven='34.202 N·m')"


def test_repr_of_an_input_makes_it_again() -> None:
    for item in (si.TubeSection(0.05, 0.044), si.NotchFactors(1.5, 1.2), si.StubShaft(si.StubSection(0.03))):
        assert eval(repr(item), vars(si)) == item
    tube = fieldshaft.TubeSection("50 mm", "44 mm")
    assert eval(repr(tube), vars(fieldshaft)) == tube


def test_fields_are_in_the_layer() -> None:
    tube = fieldshaft.TubeSection("2 in", "44 mm")
    assert tube.outer_diameter.to("mm").m == pytest.approx(50.8)
    assert tube.si == si.TubeSection(0.0508, 0.044)
    assert isinstance(si.TubeSection(0.05, 0.044).outer_diameter, float)
    registry = pint.UnitRegistry()
    given = fieldshaft.TubeSection(registry.Quantity(2, "inch"), registry.Quantity(44, "mm"))
    assert given.outer_diameter.units == registry.inch
    stress = fieldshaft.torsion_stress(given, "500 N·m")
    assert stress._REGISTRY is registry
    assert given == tube


def test_records_are_checked_when_made() -> None:
    with pytest.raises(fieldshaft.InputError, match="TubeSection: inner_diameter"):
        fieldshaft.TubeSection("50 mm", "60 mm")
    with pytest.raises(fieldshaft.InputError, match="TubeSection: inner_diameter"):
        si.TubeSection(0.05, 0.06)
    with pytest.raises(TypeError, match="TubeSection: outer_diameter = 50 has no unit"):
        fieldshaft.TubeSection(50, "44 mm")
    with pytest.raises(TypeError, match="TubeSection: outer_diameter = '50 mm'"):
        si.TubeSection("50 mm", 0.04)
    with pytest.raises(fieldshaft.InputError, match="EngineLine"):
        si.EngineLine([], 240.0)
    with pytest.raises(fieldshaft.InputError, match="Currency"):
        fieldshaft.Money(5, "euro")


def test_arrays_in_records() -> None:
    result = si.joint_couples(np.array([100.0, 200.0]), 0.3, 0.1)
    assert result.output.shape == result.driven.shape == (2,)
    assert result == si.joint_couples(np.array([100.0, 200.0]), 0.3, 0.1)
    assert result != si.joint_couples(np.array([100.0, 300.0]), 0.3, 0.1)
    quantities = fieldshaft.joint_couples(pint.Quantity([100.0, 200.0], "N*m"), "20 deg", "0 deg")
    assert quantities.output.m.shape == (2,)


def test_validity_of_arrays() -> None:
    result = si.equivalent_joint_angle_small(np.array([0.1, 0.5]), 0.1, 0.0)
    assert result.valid.tolist() == [True, False]
    assert result.outside[0] is None and "20°" in result.outside[1]
    assert si.equivalent_joint_angle_small(0.1, 0.1, 0.0).valid is True


def test_answers_of_yes_and_no() -> None:
    nominal = 540 * np.pi / 30
    assert si.is_nominal_speed(nominal, nominal) is True
    assert si.is_nominal_speed(np.array([nominal, 2 * nominal]), nominal).tolist() == [True, False]


def test_cycles_with_units() -> None:
    history = pint.Quantity([-2, 1, -3, 5, -1, 3, -4, 4, -2], "kN*m")
    cycles = fieldshaft.count_cycles(history)
    assert len(cycles) == 7
    assert cycles.range.units == history.units
    assert np.array_equal(cycles.range.m, fieldshaft.count_cycles(history.m)[:, 0])
    assert pickle.loads(pickle.dumps(cycles)) == cycles
    with pytest.raises(TypeError, match="gate = 1 has no unit"):
        fieldshaft.count_cycles(history, gate=1)
    line = fieldshaft.TorqueSnLine("9 kN·m", -0.1, "2 kN·m", "12 kN·m", "10 kN·m")
    damage = fieldshaft.miner_damage(cycles, line, "goodman")
    assert damage.value == pytest.approx(fieldshaft.history_damage(history, line, "goodman").value, rel=1e-12)
    assert damage.value > 0
    with pytest.raises(TypeError, match="miner_damage: cycles is given in"):
        fieldshaft.miner_damage(cycles, fieldshaft.SnLine("900 MPa", -0.1, "200 MPa", "900 MPa", "700 MPa"), "goodman")


def test_damage_does_not_depend_on_threads() -> None:
    angle = np.arange(600_000.0)
    history = 4e3 * np.sin(0.3 * angle) + 2e3 * np.sin(1.7 * angle)
    line = si.TorqueSnLine(9e3, -0.1, 2e3, 12e3, 10e3)
    alone = si.history_damage(history, line, "goodman", gate=10.0)
    assert alone.value == pytest.approx(si.miner_damage(si.count_cycles(history, gate=10.0), line, "goodman").value, rel=1e-11)
    for threads in (0, 2, 3):
        assert si.history_damage(history, line, "goodman", gate=10.0, threads=threads) == alone
        damage = fieldshaft.history_damage(
            pint.Quantity(history, "N*m"),
            fieldshaft.TorqueSnLine("9 kN·m", -0.1, "2 kN·m", "12 kN·m", "10 kN·m"),
            "goodman",
            gate="10 N·m",
            threads=threads,
        )
        assert damage == alone
    with pytest.raises(si.InputError, match="history_damage: threads = -1"):
        si.history_damage(history, line, "goodman", threads=-1)
    with pytest.raises(si.InputError, match="history_damage: threads = 1.5"):
        si.history_damage(history, line, "goodman", threads=1.5)


@pytest.mark.parametrize("name", ["count_cycles", "count_repeating_cycles", "count_closed_cycles"])
def test_bad_histories(name: str) -> None:
    function = getattr(si, name)
    with pytest.raises(si.InputError, match=r"history\[2\] = nan"):
        function([1.0, 2.0, np.nan])
    for wrong in ("5 kN", np.zeros((2, 2)), 5.0, [1, "2"], pint.Quantity([1.0], "kN")):
        with pytest.raises(TypeError, match="history"):
            function(wrong)
    assert len(function([])[0] if name == "count_closed_cycles" else function([])) == 0
    strided = np.arange(20.0)[::3] % 4
    first, second = function(strided), function(strided.copy())
    assert all(np.array_equal(a, b) for a, b in zip(first, second, strict=True))


def test_every_class_has_a_docstring() -> None:
    for layer in (fieldshaft, si):
        for name in layer.__all__:
            item = getattr(layer, name)
            if inspect.isclass(item):
                assert inspect.getdoc(item), name
                if issubclass(item, Record) and name not in ("Sourced", "Validated", "Cycles", "Finding", "CaseProblem", "ReportedValue"):
                    heads = re.findall(r"(?m)^ *([\w, ]+?) : ", item.__doc__)
                    assert set(item._names()) <= {field for head in heads for field in head.split(", ")}, name


@pytest.mark.parametrize("degrees", [20.0, 33.0, 34.5, 45.0])
def test_asking_only_whether_limits_hold(degrees: float) -> None:
    """A search that stops once a limit is decided decides as the one that goes to the end; 33.77° is reached."""
    shaft = fieldshaft.Driveline("60 mm", "60 mm", fieldshaft.Position("-700 mm", "0 mm", "250 mm"))
    pin = fieldshaft.Position("-400 mm", "0 mm", "-250 mm")
    turns = fieldshaft.AttitudeRange(fieldshaft.AngleRange("-50 deg", "50 deg"), fieldshaft.AngleRange("-6 deg", "6 deg"))
    limit = pint.Quantity(degrees, "deg")
    options = fieldshaft.EnvelopeOptions(limits=fieldshaft.DrivelineLimits(front_angle=limit))
    asked = fieldshaft.driveline_envelope(shaft, pin, turns, options)
    whole = fieldshaft.driveline_envelope(shaft, pin, turns)
    assert (asked.front_angle.upper <= limit) == (whole.front_angle.upper <= limit) == (degrees > 33.8)
    assert asked.boxes <= whole.boxes
