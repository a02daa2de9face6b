"""The quantity layer: any registry, texts as in C++, columns with units, and nothing global changed."""

from __future__ import annotations

import subprocess
import sys
import threading
import time
from concurrent.futures import ProcessPoolExecutor
from multiprocessing import get_context
from pathlib import Path
from typing import Any

import numpy as np
import pandas
import pint
import pint_pandas
import pytest

import fieldshaft
from fieldshaft import _core, _frames, _quantities, si
from fieldshaft._kinds import KINDS

PACKAGE = Path(fieldshaft.__file__).resolve().parent


def test_results_belong_to_the_registry_of_the_arguments() -> None:
    registry = pint.UnitRegistry()
    torque = fieldshaft.shaft_torque(registry.Quantity(75, "horsepower"), "540 rpm")
    assert torque._REGISTRY is registry
    assert torque.units == registry.Unit("N*m")
    assert (torque + registry.Quantity(1, "lbf*ft")).check("[energy]")
    assert fieldshaft.shaft_torque("75 hp", "540 rpm")._REGISTRY is pint.get_application_registry().get()


def test_application_registry_may_be_another() -> None:
    before = pint.get_application_registry().get()
    other = pint.UnitRegistry()
    pint.set_application_registry(other)
    try:
        assert fieldshaft.shaft_torque("75 hp", "540 rpm")._REGISTRY is other
    finally:
        pint.set_application_registry(before)


@pytest.mark.parametrize("kind", KINDS)
def test_units_of_the_trade(kind: str) -> None:
    """pint and the library agree on every unit in which fieldshaft answers, and on its symbol as text."""
    table = KINDS[kind]
    registry = pint.get_application_registry()
    factor = registry.Quantity(1.0, table["trade"]).m_as(table["pint"])
    assert _core.parse(f"1 {table['symbol']}", kind, "f", "p") == pytest.approx(factor, rel=1e-15)
    assert _core.parse(f"1 {table['si']}", kind, "f", "p") == 1.0


@pytest.mark.parametrize(
    ("text", "kind", "unit", "number"),
    [
        ("75 hp", "power", "horsepower", 75),
        ("75 metric hp", "power", "metric_horsepower", 75),
        ("1 3/8 in", "length", "inch", 1.375),
        ("16000 ft/min", "speed", "foot / minute", 16000),
        ("660 lbf·ft", "torque", "force_pound * foot", 660),
        ("77 ksi", "stress", "ksi", 77),
        ("540 r/min", "angular_speed", "rpm", 540),
        ("1 gal/h", "volume_rate", "gallon / hour", 1),
        ("20 t/h", "mass_rate", "metric_ton / hour", 20),
        ("4 lb·ft²", "moment_of_inertia", "pound * foot ** 2", 4),
    ],
)
def test_texts_agree_with_pint(text: str, kind: str, unit: str, number: float) -> None:
    expected = pint.Quantity(number, unit).m_as(KINDS[kind]["pint"])
    assert _core.parse(text, kind, "f", "p") == pytest.approx(expected, rel=2e-15)


def test_lists_of_texts_and_quantities() -> None:
    torques = fieldshaft.shaft_torque(["50 kW", pint.Quantity(75, "hp")], "540 rpm")
    assert torques.m.shape == (2,)
    with pytest.raises(TypeError, match=r"shaft_torque: power\[1\] = 5 has no unit"):
        fieldshaft.shaft_torque(["50 kW", 5], "540 rpm")


def test_columns_with_units() -> None:
    pint_pandas.PintType.ureg = pint.get_application_registry()
    frame = pandas.DataFrame({"power": pandas.Series([50.0, 75.0], dtype="pint[kilowatt]")})
    torques = fieldshaft.shaft_torque(frame["power"], "540 rpm")
    assert torques.m == pytest.approx(fieldshaft.shaft_torque(pint.Quantity([50.0, 75.0], "kW"), "540 rpm").m)
    with pytest.raises(TypeError, match="column with units"):
        si.shaft_torque(frame["power"], 56.5)
    assert si.shaft_torque(pandas.Series([1.0, 2.0]), 2.0).tolist() == [0.5, 1.0]


def test_whole_and_exact_magnitudes() -> None:
    from decimal import Decimal
    from fractions import Fraction

    registry = pint.UnitRegistry(non_int_type=Decimal)
    exact = fieldshaft.shaft_torque(registry.Quantity(Decimal("50"), "kilowatt"), "540 rpm")
    assert exact.m == pytest.approx(884.194, rel=1e-6)
    fractions = pint.UnitRegistry(non_int_type=Fraction)
    assert fieldshaft.tip_speed("540 rpm", fractions.Quantity(Fraction(3, 4), "meter")).m == pytest.approx(42.4115, rel=1e-6)
    whole = pint.Quantity(np.array([50, 75]), "kilowatt")
    assert fieldshaft.shaft_torque(whole, "540 rpm").m.dtype == np.float64


def test_magnitudes_that_are_refused() -> None:
    masked = pint.Quantity(np.ma.masked_array([1.0, 2.0], mask=[True, False]), "kW")
    with pytest.raises(TypeError, match="shaft_torque: power is a masked array"):
        fieldshaft.shaft_torque(masked, "540 rpm")
    with pytest.raises(TypeError, match="shaft_torque: power holds objects"):
        fieldshaft.shaft_torque(pint.Quantity(np.array([1.0, None], dtype=object), "kW"), "540 rpm")


@pytest.mark.parametrize("slow", ["array", "search"])
def test_other_threads_go_on(slow: str) -> None:
    """While one thread is in a long call another one runs Python: the interpreter's lock is released."""
    angles = np.linspace(0.0, 0.7, 3_000_000)
    shaft = si.Driveline(0.06, 0.06, si.Position(-0.7, 0.0, 0.25))
    half = si.AngleRange(-0.6, 0.6)
    turns = si.AttitudeRange(half, half, half)
    options = si.EnvelopeOptions(1e-12, 1e-12, 1e-12, 200000)
    pin = si.Position(-0.4, 0.05, -0.25)

    def call() -> None:
        if slow == "array":
            si.joint_speed_ratio(angles, 0.5)
        else:
            si.driveline_envelope(shaft, pin, turns, options)

    worker = threading.Thread(target=call)
    turns_of_loop = 0
    worker.start()
    while worker.is_alive():
        turns_of_loop += 1
        time.sleep(0.0005)
    # With the lock held the loop could turn but once or twice, before and after the call.
    assert turns_of_loop > 5


def _tip_speed(radius: float) -> float:
    return float(fieldshaft.tip_speed("540 rpm", f"{radius} m").m_as("m/s"))


def test_other_processes() -> None:
    with ProcessPoolExecutor(1, mp_context=get_context("spawn")) as pool:
        assert list(pool.map(_tip_speed, [0.5, 1.0])) == [_tip_speed(0.5), _tip_speed(1.0)]
        assert pool.submit(si.tip_speed, 50.0, 2.0).result() == 100.0
        torque = pool.submit(fieldshaft.shaft_torque, "75 hp", "540 rpm").result()
        assert torque == fieldshaft.shaft_torque("75 hp", "540 rpm")


BLOCKED = """
import sys

class Blocked:
    def find_spec(self, name, path=None, target=None):
        if name.split(".")[0] in {"pint", "pandas", "matplotlib", "tqdm", "dask", "scipy"}:
            raise ModuleNotFoundError("No module named " + repr(name), name=name)

sys.meta_path.insert(0, Blocked())
"""


def _without_extras(code: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run([sys.executable, "-c", BLOCKED + code], cwd=PACKAGE.parent, capture_output=True, text=True, check=False)


def test_si_needs_numpy_alone() -> None:
    done = _without_extras("import fieldshaft\nfrom fieldshaft import si\nprint(si.shaft_torque(100.0, 4.0))\n")
    assert (done.stdout, done.stderr) == ("25.0\n", "")


def test_missing_pint_is_explained() -> None:
    done = _without_extras("import fieldshaft\nfieldshaft.shaft_torque('75 hp', '540 rpm')\n")
    assert "ImportError: fieldshaft needs pint for quantities" in done.stderr
    assert "pip install 'fieldshaft[units]'" in done.stderr


def test_cases_need_numpy_alone() -> None:
    document = {"schema": "fieldshaft-case/1", "tractor": {"name": "T"}, "implement": {"name": "I"}, "driveline": {}}
    done = _without_extras(f"import fieldshaft\nprint(fieldshaft.assess(fieldshaft.read_case({document})).verdict)\n")
    assert done.stdout == "not_known\n", done.stderr


def test_errors_speak_in_the_unit_of_the_user() -> None:
    with pytest.raises(fieldshaft.InputError) as caught:
        fieldshaft.shaft_torque("50 kW", pint.Quantity(-540, "rpm"))
    assert str(caught.value) == "shaft_torque: speed = -540 rpm; allowed: a finite number above 0 rpm"
    with pytest.raises(fieldshaft.InputError) as caught:
        fieldshaft.joint_speed_variation(pint.Quantity(95.0, "degree"))
    assert str(caught.value) == "joint_speed_variation: angle = 95 deg; allowed: from 0 deg to 90 deg, upper end excluded"
    with pytest.raises(fieldshaft.InputError, match=r"angle = 1.6 rad; allowed: from 0 rad to 1.5707963 rad"):
        fieldshaft.joint_speed_variation(pint.Quantity(1.6, "radian"))
    with pytest.raises(fieldshaft.InputError, match=r"speed\[1\] = -600 rpm; allowed: a finite number above 0 rpm"):
        fieldshaft.shaft_torque("50 kW", pint.Quantity([540, -600], "rpm"))
    with pytest.raises(fieldshaft.InputError, match="radius = -5 in; allowed: a finite number, at least 0 in"):
        fieldshaft.tip_speed("540 rpm", pint.Quantity(-5, "inch"))
    with pytest.raises(fieldshaft.InputError, match="TubeSection: inner_diameter = 60 mm; allowed: from 0 mm to 50 mm"):
        fieldshaft.TubeSection("5 cm", "6 cm")
    with pytest.raises(fieldshaft.InputError, match="speed = -56.5 rad/s"):
        si.shaft_torque(5e4, -56.5)


def test_a_number_stands_for_its_pto_type() -> None:
    for layer in (fieldshaft, si):
        assert layer.stub_spline_of_type(1) == layer.stub_spline_of_type(layer.pto_type(1))
        assert layer.drawbar_distances(0) == ()
        with pytest.raises(layer.InputError, match="pto_type: number = 5"):
            layer.stub_spline_of_type(5)
        with pytest.raises(TypeError, match=r"stub_spline_of_type: type = '1' \(str\); expected a PtoType or its number"):
            layer.stub_spline_of_type("1")
        with pytest.raises(TypeError, match="stub_spline_of_type: type = True"):
            layer.stub_spline_of_type(True)


def test_long_objects_are_named_not_printed() -> None:
    for layer, torque in ((fieldshaft, "5 N·m"), (si, 5.0)):
        with pytest.raises(TypeError) as caught:
            layer.torsion_stress(layer.pto_type(1), torque)
        assert str(caught.value).startswith("torsion_stress: section is a PtoType; expected SolidSection or TubeSection or")
        with pytest.raises(TypeError, match="spline_stress: spline is a Sourced; pass its .value; expected"):
            layer.spline_stress(layer.stub_spline_of_type(1), torque)
    with pytest.raises(TypeError, match=r"shaft_torque: speed, a ndarray, has no unit"):
        fieldshaft.shaft_torque("5 kW", np.arange(100.0))


# Data frames in place of lists of objects. --------------------------------------------------------------------

DUTIES = [fieldshaft.JointDuty(0.7, "400 N·m", "540 rpm", "15 deg"), fieldshaft.JointDuty(0.3, "200 N·m", "1000 rpm", "8 deg")]


def test_frames_of_every_unit_read_back() -> None:
    """The names of the columns that to_frame writes are read again, for every kind and every unit of the trade."""
    units = {(kind, "") for kind in KINDS}
    for record in _quantities._records.values():
        units |= {(kind, trade) for kind, _, trade in (_frames._innermost(t).partition("@") for t in record._types) if kind in KINDS}
    for kind, trade in units:
        assert _core.parse(f"1 {_frames._symbol(kind, trade)}", kind, "", "") == pytest.approx(
            pint.Quantity(1.0, trade or KINDS[kind]["trade"]).m_as(KINDS[kind]["pint"]), rel=1e-12
        )


def test_duty_list_from_a_frame() -> None:
    frame = fieldshaft.to_frame(DUTIES)
    assert fieldshaft.joint_mean_duty(frame).si.torque == pytest.approx(fieldshaft.joint_mean_duty(DUTIES).si.torque, rel=1e-14)
    mixed = pandas.DataFrame({
        "share": [0.7, 0.3], "torque": pandas.Series([0.4, 0.2], dtype="pint[kN*m]"),
        "speed [rpm]": [540, 1000], "angle": ["15 deg", "8 deg"], "note": ["baling", "transport"],
    })  # fmt: skip
    life = fieldshaft.joint_bearing_life_of_duties("20 kN", "40 mm", DUTIES)
    for given in (frame, mixed, frame.iloc[::-1]):
        assert fieldshaft.joint_bearing_life_of_duties("20 kN", "40 mm", given).m == pytest.approx(life.m, rel=1e-12)
    year = fieldshaft.Duty("800 N·m", "100 N·m", "2 Hz", "100 h")
    line = fieldshaft.TorqueSnLine("2902.6 N·m", -0.1, "729.1 N·m", "4000 N·m", "3000 N·m")
    assert fieldshaft.duty_life(year.to_frame(), line, "goodman") == fieldshaft.duty_life([year], line, "goodman")


def test_cycles_from_a_frame() -> None:
    history = pandas.Series([-2, 1, -3, 5, -1, 3, -4, 4, -2.0], dtype="pint[kN*m]")
    cycles = fieldshaft.count_cycles(history)
    assert cycles == fieldshaft.count_cycles(pint.Quantity(history.array.quantity.m, "kN*m"))
    line = fieldshaft.TorqueSnLine("9 kN·m", -0.1, "2 kN·m", "12 kN·m", "10 kN·m")
    damage = fieldshaft.miner_damage(cycles, line, "goodman").value
    assert fieldshaft.miner_damage(cycles.to_frame(), line, "goodman").value == pytest.approx(damage, rel=1e-12)
    assert fieldshaft.miner_damage(cycles.to_frame().iloc[:0], line, "goodman").value == 0.0
    with pytest.raises(TypeError, match=r"miner_damage: cycles\['range \[MPa\]'\] = .*stress"):
        fieldshaft.miner_damage(cycles.to_frame().rename(columns={"range [kN·m]": "range [MPa]"}), line, "goodman")


@pytest.mark.parametrize(
    ("change", "error", "words"),
    [
        (lambda f: f.drop(columns="share"), TypeError, "duties has no column 'share' among 'torque"),
        (lambda f: f.rename(columns={"torque [N·m]": "torque"}), TypeError, r"duties\['torque'\] = .*has no unit"),
        (lambda f: f.rename(columns={"torque [N·m]": "torque [kW]"}), TypeError, r"duties\['torque \[kW\]'\].*measures a power"),
        (lambda f: f.assign(torque=["1 N·m", "2 N·m"]), TypeError, "duties has several columns 'torque'"),
        (lambda f: f.assign(**{"torque [N·m]": [1.0, float("nan")]}), fieldshaft.InputError, "duties.torque = nan"),
        (lambda f: f.assign(**{"torque [N·m]": ["much", "1 N·m"]}), fieldshaft.InputError, r"duties\['torque \[N·m\]'\]\[0\] = \"much\""),
        (lambda f: f.iloc[:0], fieldshaft.InputError, "duties.share"),
    ],
)  # fmt: skip
def test_frames_that_are_refused(change: Any, error: type[Exception], words: str) -> None:
    with pytest.raises(error, match=f"joint_mean_duty: {words}"):
        fieldshaft.joint_mean_duty(change(fieldshaft.to_frame(DUTIES)))
