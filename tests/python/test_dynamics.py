"""Whirling, torsional trains and simulation: what is special to Python, arrays and objects of both layers."""

from __future__ import annotations

import pickle

import numpy as np
import pint
import pytest

import fieldshaft
from fieldshaft import si


def _line(layer: object, quantities: bool) -> object:
    def f(text: str, number: float) -> object:
        return text if quantities else number

    drive = layer.LineBody("PTO", f("1 kg·m²", 1.0), f("540 rpm", 540 * np.pi / 30), layer.HeldSpeed())
    rotor = layer.LineBody("rotor", f("4 kg·m²", 4.0), load=layer.LineLoad(f("250 N·m", 250.0)))
    return layer.PtoLine([drive, rotor], [layer.LineClutch(f("600 N·m", 600.0))])


SETTINGS = si.SimulationSettings(1.0, sample_every=0.05)


def test_trace_is_arrays() -> None:
    result = si.simulate(_line(si, False), SETTINGS)
    trace = result.trace
    assert result.complete and result.end is si.SimulationEnd.duration
    assert trace.time.shape == (len(trace.time),) and len(trace.time) >= 20
    assert trace.speeds.shape == (len(trace.time), 2) and trace.torques.shape == (len(trace.time), 1)
    assert np.all(trace.speeds[:, 0] == trace.speeds[0, 0])  # the drive keeps its speed
    slipping = trace.time < result.links[0].locked_at
    assert trace.torques[slipping][1:, 0] == pytest.approx(600.0)
    assert trace.speeds[~slipping][1:, 1] == pytest.approx(trace.speeds[0, 0])
    assert si.simulate(_line(si, False)).trace.time.shape == (0,)
    frame = trace.to_frame()
    assert list(frame.columns) == ["time [s]", "speeds[0] [rad/s]", "speeds[1] [rad/s]", "torques[0] [N·m]"]
    assert np.array_equal(frame["speeds[1] [rad/s]"], trace.speeds[:, 1])


def test_quantities_of_a_simulation() -> None:
    result = fieldshaft.simulate(_line(fieldshaft, True), SETTINGS)
    assert result.trace.speeds.units == pint.Unit("rpm")
    assert result.trace.speeds.m[-1] == pytest.approx([540.0, 540.0])
    engagement = fieldshaft.clutch_engagement("4 kg·m²", "540 rpm", "600 N·m", "250 N·m")
    assert result.links[0].locked_at.m_as("s") == pytest.approx(engagement.time.m_as("s"), rel=1e-6)
    assert result.links[0].heat.m_as("J") == pytest.approx(engagement.heat.m_as("J"), rel=1e-6)
    kinds = [event.kind for event in result.events]
    assert fieldshaft.LineEventKind.locks in kinds
    assert abs(result.energy.error) < 1e-6


def test_objects() -> None:
    pint.get_application_registry()
    for layer, quantities in ((fieldshaft, True), (si, False)):
        line = _line(layer, quantities)
        assert pickle.loads(pickle.dumps(line)) == line
        assert line.bodies[0].drive == layer.HeldSpeed() and line.bodies[1].drive is None
        result = layer.simulate(line, SETTINGS)
        assert pickle.loads(pickle.dumps(result)) == result
        assert "<table>" in result._repr_html_() and "HeldSpeed()" in repr(line)


def test_drives() -> None:
    line = si.engine_line(si.PtoPower(75e3), 230.0, 0.3, 146.0, 246.0)
    engine = si.LineBody("PTO", 3.0, 56.5, si.EngineDrive(line, 0.25))
    rotor = si.LineBody("rotor", 4.0, 56.5, load=si.LineLoad(viscous=5.0))
    result = si.simulate(si.PtoLine([engine, rotor], [si.LineShaft(20e3, 20.0, joints=si.LineJoints(0.3, 0.3))]), SETTINGS)
    assert result.complete and result.bodies[0].drive_work > 0.0
    with pytest.raises(TypeError, match="LineBody: drive = 'engine'.*expected None or HeldSpeed or EngineDrive"):
        si.LineBody("PTO", 3.0, drive="engine")
    with pytest.raises(si.InputError, match="bodies"):
        si.simulate(si.PtoLine([engine], [si.LineClutch(600.0)]))


def test_indices() -> None:
    with pytest.raises(si.InputError, match="TrainShaft: to = -1"):
        si.TrainShaft(0, -1, 5000.0)
    with pytest.raises(si.InputError, match="TrainShaft: to = 1.5; allowed: a whole number"):
        si.TrainShaft(0, 1.5, 5000.0)
    with pytest.raises(si.InputError):
        si.torsional_modes(si.TorsionalTrain([si.TrainInertia(2.0)], [si.TrainShaft(0, 7, 5000.0)]))


def test_a_pair_at_many_rotations() -> None:
    turns = np.linspace(-20.0, 20.0, 1001)
    pair = (0.35, 0.17, 0.4)
    one_by_one = np.array([si.joint_pair_speed_ratio(*pair, t) for t in turns])
    # The loop over one pair, every other element, rotations beyond its reduction, and many pairs: alike to rounding.
    assert si.joint_pair_speed_ratio(*pair, turns) == pytest.approx(one_by_one, rel=1e-14)
    assert si.joint_pair_speed_ratio(*pair, turns[::2]) == pytest.approx(one_by_one[::2], rel=1e-14)
    whole = 2.0 * np.pi * 1e5
    assert si.joint_pair_speed_ratio(*pair, turns + whole) == pytest.approx(one_by_one, rel=1e-9)
    fronts = np.full(turns.shape, pair[0])
    assert si.joint_pair_speed_ratio(fronts, *pair[1:], turns) == pytest.approx(one_by_one, rel=1e-14)
    table = si.joint_pair_speed_ratio(np.array([[0.1], [0.35]]), *pair[1:], turns)
    assert table.shape == (2, 1001) and table[1] == pytest.approx(one_by_one, rel=1e-14)
    degrees = fieldshaft.joint_pair_speed_ratio("0.35 rad", "0.17 rad", "0.4 rad", pint.Quantity(np.degrees(turns), "deg"))
    assert np.asarray(degrees) == pytest.approx(one_by_one, rel=1e-13)


def test_a_pair_names_what_is_wrong_among_many() -> None:
    turns = np.zeros(5)
    turns[3] = np.nan
    with pytest.raises(si.InputError, match=r"joint_pair_speed_ratio: rotation\[3\] = nan"):
        si.joint_pair_speed_ratio(0.3, 0.2, 0.0, turns)
    with pytest.raises(si.InputError, match="joint_pair_speed_ratio: rear = 1.6"):
        si.joint_pair_speed_ratio(0.3, 1.6, 0.0, np.zeros(5))
    assert si.joint_pair_speed_ratio(0.3, 0.2, 0.0, np.zeros(0)).shape == (0,)
