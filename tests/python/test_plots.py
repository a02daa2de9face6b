"""The pictures: what they draw is what the formulas say."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import matplotlib
import numpy as np
import pint
import pytest

matplotlib.use("Agg")

import matplotlib.pyplot as plt

import fieldshaft
from fieldshaft import plots

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


def test_views() -> None:
    pose = fieldshaft.Pose(PIN, fieldshaft.Attitude("-35 deg", "5 deg"))
    figure = plots.views(SHAFT, pose)
    _drawn(figure)
    state = fieldshaft.driveline_at(SHAFT, pose)
    assert f"{state.front_angle.m:.1f}° at the front" in _texts(figure)
    side, plan = (_lines(ax)["driveline"] for ax in figure.axes)
    x, y, z = side.get_xdata(), plan.get_ydata(), side.get_ydata()
    assert np.sqrt(np.ptp(x) ** 2 + np.ptp(y) ** 2 + np.ptp(z) ** 2) == pytest.approx(state.length.m, rel=1e-12)


def test_recommended_powers() -> None:
    figure = plots.recommended_powers("70 kW", "1000 rpm")
    _drawn(figure)
    names = [label.get_text() for label in figure.axes[0].get_yticklabels()]
    assert names and all(name.endswith("1000 r/min") for name in names)
    assert "this case: 70 kW" in _texts(figure)


def test_damage() -> None:
    history = pint.Quantity(600 + 400 * np.sin(np.arange(2000) * 1.3) * np.cos(np.arange(2000) * 0.017), "N*m")
    line = fieldshaft.TorqueSnLine("3 kN·m", -0.1, "300 N·m", "6 kN·m", "5 kN·m")
    cycles = fieldshaft.count_cycles(history)
    figure = plots.damage(cycles, line, "goodman")
    _drawn(figure)
    assert sum(bar.get_height() for bar in figure.axes[0].patches) == pytest.approx(cycles.count.sum())
    assert sum(bar.get_height() for bar in figure.axes[1].patches) == pytest.approx(100.0)
    assert "N·m" in figure.axes[1].get_xlabel()
