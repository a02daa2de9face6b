"""The figures of the library: value, unit, source and standing, in both layers and as a table."""

from __future__ import annotations

import copy
import pickle

import pint
import pytest

import fieldshaft
from fieldshaft import si
from fieldshaft._kinds import KINDS

FIGURES = fieldshaft.constants.figures()


def test_a_figure_knows_its_source() -> None:
    modulus = fieldshaft.constants.steel_youngs_modulus
    assert modulus.value.m_as("GPa") == pytest.approx(207.0)
    assert modulus.source.standing is fieldshaft.Standing.from_memory
    assert si.constants.steel_youngs_modulus.value == 207e9
    assert si.constants.steel_youngs_modulus.source == modulus.source


def test_tables_of_the_trade() -> None:
    assert [row.value.m_as("rpm") for row in fieldshaft.constants.nominal_pto_speeds] == pytest.approx([540, 1000, 1300])
    guards = si.constants.pto_overspeed_guards
    assert {guard.nominal for guard in guards} == {row.value for row in si.constants.nominal_pto_speeds[:2]}
    assert all(guard.guard > guard.nominal and guard.source.text for guard in guards)
    assert fieldshaft.constants.plain_joint_practice.working.high.value.m == pytest.approx(25.0)
    assert fieldshaft.constants.plain_use_limits.working == fieldshaft.constants.plain_joint_practice.working
    assert fieldshaft.constants.pto_rotation_from_behind.value is fieldshaft.Rotation.clockwise
    assert fieldshaft.constants.tip_speed_lines[0].speed == fieldshaft.turf_tip_speed_line().speed


@pytest.mark.parametrize("name", fieldshaft.constants)
def test_both_layers_agree(name: str) -> None:
    quantity, number = getattr(fieldshaft.constants, name), getattr(si.constants, name)
    assert getattr(quantity, "si", quantity) == number or _plain(quantity) == number
    assert fieldshaft.constants.summary(name) == si.constants.summary(name) != ""
    assert fieldshaft.constants[name] == quantity


def _plain(value: object) -> object:
    """A constant of the quantity layer in SI numbers; in base units every number is one."""
    if isinstance(value, fieldshaft.Sourced):
        return si.Sourced(_plain(value.value), value.source)
    if isinstance(value, tuple):
        return tuple(map(_plain, value))
    return pytest.approx(value.to_base_units().m, rel=1e-14) if hasattr(value, "_REGISTRY") else getattr(value, "si", value)


@pytest.mark.parametrize("figure", FIGURES, ids=lambda figure: figure.name)
def test_every_number_has_a_unit_and_a_meaning(figure: object) -> None:
    assert figure.meaning.endswith(".")
    if hasattr(figure.value, "_REGISTRY"):
        assert figure.unit in {table["symbol"] for table in KINDS.values()} | {"GPa", "m", "h", "MPa"}
    if figure.source is not None:
        assert figure.source and figure.standing in set(fieldshaft.Standing)


def test_what_has_no_source_is_no_datum_of_the_trade() -> None:
    """Definitions, the library's own bands, and lists of choices; each says in its summary what it rests on."""
    bare = {figure.name.partition("[")[0].partition(".")[0] for figure in FIGURES if figure.source is None}
    assert bare == {
        "drawbar_categories", "drawbar_power_classes", "joint_pulses_per_turn", "nominal_speed_band", "pto_measuring_tolerance", "pto_ratio_band",
        "roller_life_exponent", "small_joint_angle", "sn_first_cycles", "sn_knee_cycles", "spline_miscount",
        "standard_gravity", "stub_arrangements", "thin_wall_ratio",
    }  # fmt: skip


def test_table() -> None:
    frame = fieldshaft.constants.to_frame()
    assert list(frame.columns) == ["name", "value", "unit", "meaning", "source", "standing"]
    assert len(frame) == len(FIGURES) == len(si.constants.figures()) > 250
    row = frame.set_index("name").loc["plain_joint_practice.working.high"]
    assert row["value"] == pytest.approx(25.0) and row["unit"] == "deg" and row["standing"] == "common_practice"
    row = si.constants.to_frame().set_index("name").loc["steel_density"]
    assert (row["value"], row["unit"]) == (7850.0, "kg/m³")


@pytest.mark.parametrize("layer", [fieldshaft, si])
def test_the_collection_itself(layer: object) -> None:
    constants = layer.constants
    assert pickle.loads(pickle.dumps(constants)) == constants == copy.copy(constants)
    assert "steel_density" in constants and "nothing" not in constants
    assert len(constants) == len(list(constants)) and set(constants) <= set(dir(constants))
    assert repr(constants).startswith(f"<{len(constants)} constants of")
    assert "207 GPa" in fieldshaft.constants._repr_html_() and "<table>" in constants._repr_html_()
    with pytest.raises(KeyError):
        constants["nothing"]
    with pytest.raises(AttributeError):
        constants.nothing
    with pytest.raises(AttributeError):
        constants.steel_density = 5


def test_quantities_belong_to_the_application_registry() -> None:
    before = pint.get_application_registry().get()
    other = pint.UnitRegistry()
    pint.set_application_registry(other)
    try:
        assert fieldshaft.constants.steel_density.value._REGISTRY is other
    finally:
        pint.set_application_registry(before)
