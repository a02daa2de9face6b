"""The pictures: what they draw is what the formulas say."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import matplotlib
import numpy as np
import pint
import pytest

matplotlib.use("Agg")

import matplotlib.pyplot as plt

import fieldshaft
from fieldshaft import Status, plots

SHAFT = fieldshaft.Driveline("60 mm", "60 mm", fieldshaft.Position("-700 mm", "0 mm", "250 mm"))
PIN = fieldshaft.Position("-400 mm", "0 mm", "-250 mm")
TURNS = fieldshaft.AttitudeRange(fieldshaft.AngleRange("-50 deg", "50 deg"), fieldshaft.AngleRange("-6 deg", "6 deg"))


@pytest.fixture(autouse=True)
def close_figures() -> Iterator[None]:
    yield
    plt.close("all")


def _lines(ax: Any) -> dict[str, Any]:
    return {line.get_label(): line for line in ax.get_lines()}


def _texts(figure: Any) -> str:
    return " | ".join(text.get_text() for text in figure.findobj(matplotlib.text.Text))


def _drawn(figure: Any) -> None:
    """Saved without a warning, with a title, and with names on the outer axes."""
    figure.canvas.draw()
    assert figure.get_suptitle()
    assert figure.axes[-1].get_xlabel() and all(ax.get_ylabel() or ax.get_yticklabels() for ax in figure.axes)


def test_speed_ripple() -> None:
    figure = plots.speed_ripple("20 deg", "20 deg", "0 deg")
    _drawn(figure)
    (ax,) = figure.axes
    one, both = (line for name, line in _lines(ax).items() if name.startswith("behind"))
    variation = 100.0 * fieldshaft.joint_speed_variation("20 deg")
    assert np.ptp(one.get_ydata()) == pytest.approx(variation, rel=1e-4)
    assert np.ptp(both.get_ydata()) < 1e-6  # equal joints in phase cancel
    assert len(plots.speed_ripple("20 deg").axes[0].get_lines()) == 1


def test_tip_speed() -> None:
    options = [fieldshaft.pto_option("540", "540 rpm", "2100 rpm"), fieldshaft.pto_option("1000", "1000 rpm", "2050 rpm")]
    figure = plots.tip_speed("750 mm", 1.6, options, ("1000 rpm", "2100 rpm"), "80 m/s")
    _drawn(figure)
    first = figure.axes[0].get_lines()[0]
    expected = fieldshaft.tip_speed(fieldshaft.geared_speed("540 rpm", 1.6), "750 mm").m
    assert first.get_ydata()[-1] == pytest.approx(expected, rel=1e-12)
    assert "highest tip speed" in _texts(figure)


def test_joint_angles() -> None:
    limits = fieldshaft.DrivelineLimits("25 deg", "25 deg", None, "1 m", "850 mm")
    figure = plots.joint_angles(SHAFT, PIN, TURNS, limits, points=11)
    _drawn(figure)
    envelope = fieldshaft.driveline_envelope(SHAFT, PIN, TURNS)
    assert f"at most {envelope.front_angle.upper.m:.1f}°" in _texts(figure)
    front = _lines(figure.axes[0])["front joint"].get_ydata()
    assert front.max() == pytest.approx(envelope.front_angle.value.m, abs=0.05)
    longest = _lines(figure.axes[1])["longest"].get_ydata()
    assert longest.max() == pytest.approx(envelope.longest.value.m, abs=0.5)
    for text in ("limit of both joints", "longest allowed", "shortest allowed"):
        assert text in _texts(figure)


def test_envelope_map() -> None:
    limits = fieldshaft.DrivelineLimits("25 deg", None, None, "1 m", None)
    figure = plots.envelope_map(SHAFT, PIN, TURNS, limits, points=7)
    figure.canvas.draw()
    assert len(figure.axes) == 4 and figure.get_suptitle()
    envelope = fieldshaft.driveline_envelope(SHAFT, PIN, TURNS)
    text = _texts(figure)
    assert f"at most {envelope.front_angle.upper.m:.1f}°" in text and f"at most {envelope.longest.upper.m:.0f} mm" in text
    assert f"at least {envelope.shortest.lower.m:.0f} mm" in text
    assert "front joint, limit 25.0°" in text and "rear joint, limit" not in text
    hatched = [c for ax in figure.axes for c in ax.collections if any(getattr(c, "hatches", None) or [])]
    assert len(hatched) == 2  # front joint and longest: the two limits that are exceeded
    (dot,) = [line for line in figure.axes[0].get_lines() if line.get_marker() == "o"]
    assert dot.get_xdata()[0] == pytest.approx(envelope.front_angle.at.yaw.m)
    level = fieldshaft.AttitudeRange(fieldshaft.AngleRange("-50 deg", "50 deg"))
    with pytest.raises(fieldshaft.InputError, match="envelope_map: range = pitch of no width"):
        plots.envelope_map(SHAFT, PIN, level)


LINKAGE = fieldshaft.ThreePointLinkage(
    "100 mm", "250 mm", "900 mm", "200 mm", "-300 mm", "650 mm", "610 mm", span="820 mm", convergence="1900 mm"
)


def test_views_of_a_mounted_implement() -> None:
    shaft = fieldshaft.Driveline("60 mm", "60 mm", fieldshaft.Position("-100 mm", "0 mm", "250 mm"))
    where = fieldshaft.LinkagePosition("350 mm", "60 mm")
    figure = plots.views(shaft, where, LINKAGE)
    _drawn(figure)
    side, plan = (_lines(ax) for ax in figure.axes)
    assert {"lower links", "top link", "driveline", "input shaft", "hitch point"} <= set(side) and "drawbar" not in side
    top = np.hypot(np.ptp(side["top link"].get_xdata()), np.ptp(side["top link"].get_ydata()))
    assert top == pytest.approx(650.0, rel=0.01)  # sway enters the side view by its square
    pose = fieldshaft.mounted_pose(LINKAGE, where)
    assert side["hitch point"].get_ydata()[0] == pytest.approx(pose.pin.up.m_as("mm"))
    assert plan["hitch point"].get_ydata()[0] == pytest.approx(60.0)
    with pytest.raises(TypeError, match="views: pose = .*expected a Pose, or a LinkagePosition with"):
        plots.views(shaft, where)


def test_stresses() -> None:
    spline = fieldshaft.stub_spline_of_type(fieldshaft.pto_type(1)).value
    tube = fieldshaft.TubeSection("60 mm", "50 mm")
    limits = fieldshaft.spline_limits("surface_hardened_c48_53")
    figure = plots.stresses("1500 N·m", spline, limits, tube, "120 MPa")
    _drawn(figure)
    stress = fieldshaft.spline_stress(spline, "1500 N·m")
    shares = [
        *(getattr(stress, name) / getattr(limits.value, name) for name in ("root_torsion", "tooth_shear", "flank_pressure")),
        fieldshaft.torsion_stress(tube, "1500 N·m") / pint.Quantity(120, "MPa"),
    ]
    assert [bar.get_width() for bar in figure.axes[0].patches] == pytest.approx([100 * s.m_as("dimensionless") for s in shares])
    assert [bool(bar.get_hatch()) for bar in figure.axes[0].patches] == [s.m_as("dimensionless") > 1 for s in shares]
    assert "no limit stated" in _texts(plots.stresses("1500 N·m", section=tube))
    with pytest.raises(TypeError, match="neither spline nor section"):
        plots.stresses("1500 N·m")


def test_pto_torque() -> None:
    figure = plots.pto_torque("70 kW", "540 rpm")
    _drawn(figure)
    point = _lines(figure.axes[0])["this case: 70 kW, 1,238 N·m"]
    assert point.get_ydata()[0] == pytest.approx(fieldshaft.shaft_torque("70 kW", "540 rpm").m)
    assert {"type 1", "type 2", "type 3", "type 4"} <= set(_lines(figure.axes[0]))
    assert "this case" not in _texts(plots.pto_torque())


def test_views() -> None:
    pose = fieldshaft.Pose(PIN, fieldshaft.Attitude("-35 deg", "5 deg"))
    figure = plots.views(SHAFT, pose)
    _drawn(figure)
    state = fieldshaft.driveline_at(SHAFT, pose)
    assert f"{state.front_angle.m:.1f}° at the front joint" in _texts(figure)
    assert "drawbar" in _lines(figure.axes[0])
    side, plan = (_lines(ax)["driveline"] for ax in figure.axes)
    x, y, z = side.get_xdata(), plan.get_ydata(), side.get_ydata()
    assert np.sqrt(np.ptp(x) ** 2 + np.ptp(y) ** 2 + np.ptp(z) ** 2) == pytest.approx(state.length.m, rel=1e-12)


def test_recommended_powers() -> None:
    figure = plots.recommended_powers("70 kW", "1000 rpm")
    _drawn(figure)
    names = [label.get_text() for label in figure.axes[0].get_yticklabels()]
    assert names and all(name.endswith("1000 r/min") for name in names)
    assert "this case: 70 kW" in _texts(figure)


def test_farm_matrix() -> None:
    path = Path(__file__).resolve().parents[2] / "docs" / "examples" / "farms" / "three-tractors-seven-implements.json"
    study = fieldshaft.study_farm(fieldshaft.read_farm_file(path), "screening")
    figure = plots.farm_matrix(study)
    figure.canvas.draw()
    (ax,) = figure.axes
    assert len(ax.patches) == len(study.tractors) * len(study.implements)
    words = {Status.ok: "runs", Status.caution: "runs, with care", Status.not_known: "not known", Status.stop: "stop"}
    shown = [text.get_text() for text in ax.texts if text.get_text() in words.values()]
    assert shown == [words[study.verdict(t, i)] for t in study.tractors for i in study.implements]
    assert all(bool(patch.get_hatch()) == (word in ("runs, with care", "stop")) for patch, word in zip(ax.patches, shown, strict=True))


def test_damage() -> None:
    history = pint.Quantity(600 + 400 * np.sin(np.arange(2000) * 1.3) * np.cos(np.arange(2000) * 0.017), "N*m")
    line = fieldshaft.TorqueSnLine("3 kN·m", -0.1, "300 N·m", "6 kN·m", "5 kN·m")
    cycles = fieldshaft.count_cycles(history)
    figure = plots.damage(cycles, line, "goodman")
    _drawn(figure)
    assert sum(bar.get_height() for bar in figure.axes[0].patches) == pytest.approx(cycles.count.sum())
    assert sum(bar.get_height() for bar in figure.axes[1].patches) == pytest.approx(100.0)
    assert "N·m" in figure.axes[1].get_xlabel()


TRAIN = fieldshaft.plain_train(["2 kg·m²", "0.4 kg·m²", "3 kg·m²"], ["9000 N·m/rad", "20000 N·m/rad"])
ORDERS = [fieldshaft.ExcitationOrder(2.0), fieldshaft.ExcitationOrder(4.0, 2)]


def test_interference() -> None:
    working = fieldshaft.SpeedRange("300 rpm", "620 rpm")
    figure = plots.interference(TRAIN, ORDERS, working, ["joints", "plunger"])
    _drawn(figure)
    table = fieldshaft.interference_table(TRAIN, ORDERS, working)
    points = {line.get_xdata()[0]: line for line in figure.axes[0].get_lines() if line.get_marker() in ("o", "X")}
    shown = [row for row in table if row.critical_speed.m in points]
    assert len(shown) == len(points) >= 3
    for row in shown:
        point = points[row.critical_speed.m]
        assert point.get_ydata()[0] == pytest.approx(row.natural.m)
        assert (point.get_marker() == "X") == (300 <= row.critical_speed.m <= 620)
    assert {line.get_marker() for line in points.values()} == {"o", "X"}
    joints = _lines(figure.axes[0])["joints"]
    assert joints.get_ydata()[1] / joints.get_xdata()[1] == pytest.approx(2.0 / 60.0)  # two pulses a turn
    with pytest.raises(TypeError, match="interference: names = .*expected one for each of the 2 orders"):
        plots.interference(TRAIN, ORDERS, working, ["joints"])
    with pytest.raises(fieldshaft.InputError, match="interference: train"):
        plots.interference(fieldshaft.TorsionalTrain([fieldshaft.TrainInertia("2 kg·m²")]), ORDERS[:1], working)


def test_simulation() -> None:
    drive = fieldshaft.LineBody("PTO", "1 kg·m²", "540 rpm", fieldshaft.HeldSpeed())
    rotor = fieldshaft.LineBody("rotor", "4 kg·m²", load=fieldshaft.LineLoad("250 N·m"))
    line = fieldshaft.PtoLine([drive, rotor], [fieldshaft.LineClutch("600 N·m")])
    result = fieldshaft.simulate(line, fieldshaft.SimulationSettings("1 s", sample_every="0.01 s"))
    figure = plots.simulation(result, line)
    _drawn(figure)
    speeds, torques = (_lines(ax) for ax in figure.axes)
    assert speeds["rotor"].get_ydata()[-1] == pytest.approx(540.0, rel=1e-6)
    assert torques["clutch, PTO to rotor"].get_ydata().max() == pytest.approx(600.0, rel=1e-6)
    assert "clutch locks" in _texts(figure) and "600 N·m" in _texts(figure)
    with pytest.raises(fieldshaft.InputError, match="simulation: result = without a trace"):
        plots.simulation(fieldshaft.simulate(line), line)


def test_duties() -> None:
    work = [fieldshaft.Duty("800 N·m", "0 N·m", "2 Hz", "60 h"), fieldshaft.Duty("300 N·m", "500 N·m", "2 Hz", "300 h")]
    line = fieldshaft.TorqueSnLine("2902.6 N·m", -0.1, "250 N·m", "4000 N·m", "3000 N·m")
    for given in (work, fieldshaft.to_frame(work)):
        figure = plots.duties(given, line, "goodman", ["baling", "carting"])
        figure.canvas.draw()
        hours, shares = ([bar.get_width() for bar in ax.patches] for ax in figure.axes)
        assert hours == pytest.approx([60.0, 300.0])
        damage = [fieldshaft.duty_life([duty], line, "goodman").value.damage_per_year for duty in work]
        assert shares == pytest.approx([100 * part / sum(damage) for part in damage])
    assert "no end of life" in _texts(plots.duties([fieldshaft.Duty("10 N·m", "0 N·m", "2 Hz", "60 h")], line, "goodman"))
    assert "500 ± 300 N·m" in _texts(plots.duties(work, line, "goodman"))
    with pytest.raises(TypeError, match="duties: names"):
        plots.duties(work, line, "goodman", ["baling"])


def test_turn_curve() -> None:
    cases = Path(__file__).resolve().parents[2] / "docs" / "examples" / "cases"
    assessment = fieldshaft.assess(fieldshaft.read_case_file(cases / "drawbar-left-in-the-540-hole.json"))
    figure = plots.turn_curve(assessment)
    _drawn(figure)
    table = assessment.turn_frame()
    left = figure.axes[0].get_lines()[0]
    assert left.get_xdata() == pytest.approx(-table["left [deg]"].to_numpy())
    assert f"{table['left [deg]'].min():.1f}° to the left" in _texts(figure)
    mounted = fieldshaft.assess(fieldshaft.read_case_file(cases / "mounted-mower-lifted-for-transport.json"))
    with pytest.raises(fieldshaft.InputError, match="turn_curve: assessment = without a turn curve"):
        plots.turn_curve(mounted)


def test_pictures_come_with_the_package_but_with_no_star() -> None:
    assert fieldshaft.plots is plots and "plots" not in fieldshaft.__all__


def test_every_picture_is_drawn_here() -> None:
    text = Path(__file__).read_text(encoding="utf-8")
    assert not [name for name in plots.__all__ if f"plots.{name}(" not in text]
