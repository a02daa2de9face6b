"""The figures of the library: value, unit, source and standing, in both layers and as a table."""

from __future__ import annotations

import copy
import os
import pickle
import re
from pathlib import Path

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


PAGE = Path(__file__).resolve().parents[2] / "docs/handbook/constants.md"
ORDER = ["exact", "published", "textbook", "quoted", "common_practice", "from_memory"]

#: A text and its standing, as sources are written in C++; adjoining texts are one.
STATED = re.compile(r'((?:"(?:[^"\\]|\\.)*"\s*)+),\s*Standing::(\w+)')


def _statements() -> list[tuple[str, str, str]]:
    """Every source that the library's own files state: file, text and standing."""
    root = PAGE.parents[2]
    found = []
    for path in sorted([*root.glob("include/**/*.hpp"), *root.glob("src/**/*.hpp"), *root.glob("src/**/*.cpp")]):
        for text, standing in STATED.findall(path.read_text(encoding="utf-8")):
            found.append((path.relative_to(root).as_posix(), "".join(re.findall(r'"((?:[^"\\]|\\.)*)"', text)), standing))
    return found


def _cell(text: object) -> str:
    return str(text).replace("|", "\\|").replace('\\"', '"')


def _value(figure: object) -> str:
    value = getattr(figure.value, "m", figure.value)
    number = f"{value:.6g}" if isinstance(value, float) else str(getattr(value, "name", value))
    return _cell(f"{number} {figure.unit}".strip())


def _page() -> str:
    """Every constant by its standing, firmest first, then every source that the files state."""
    by_standing = {name: [f for f in FIGURES if f.standing is not None and f.standing.name == name] for name in ORDER}
    stated = _statements()
    lines = [
        "# Every constant and how sure it is", "",
        "Written by `tests/python/test_constants.py` (`FIELDSHAFT_WRITE_REPORTS=1` writes it anew) and compared in every run. The first",
        "table counts; the next ones list the numbers of the public constants by standing; the last one lists every source that a file of",
        "the library states, so that the limits that only an assessment uses are there too.", "",
        "| standing | numbers of public constants | sources stated in the files |", "| --- | --- | --- |",
    ]  # fmt: skip
    for name in ORDER:
        lines.append(f"| {name} | {len(by_standing[name])} | {sum(standing == name for _, _, standing in stated)} |")
    for name in ORDER:
        if not by_standing[name]:
            continue
        lines += ["", f"## {name}", "", "| constant | value | source |", "| --- | --- | --- |"]
        lines += [f"| `{f.name}` | {_value(f)} | {_cell(f.source)} |" for f in by_standing[name]]
    lines += ["", "## Sources by file", "", "| file | standing | source |", "| --- | --- | --- |"]
    lines += [f"| `{path}` | {standing} | {_cell(text)} |" for path, text, standing in stated]
    return "\n".join(lines) + "\n"


def test_page_lists_every_constant_by_standing() -> None:
    if os.environ.get("FIELDSHAFT_WRITE_REPORTS"):
        PAGE.write_text(_page(), encoding="utf-8")
    assert PAGE.read_text(encoding="utf-8") == _page()


def test_no_source_escapes_the_page() -> None:
    """Each use of a standing in the files is a stated source, or code that asks for one."""
    root = PAGE.parents[2]
    asks = re.compile(r"(case|[!=]=|return|\?|:|, *source\.) *Standing::|Standing::\w+ *[?:]")
    paths = [*root.glob("include/**/*.hpp"), *root.glob("src/**/*.cpp"), *root.glob("src/**/*.hpp")]
    text = "\n".join(path.read_text(encoding="utf-8") for path in paths)
    text = STATED.sub("", text)
    left = [line.strip() for line in text.splitlines() if "Standing::" in line and not asks.search(line)]
    # Texts handed through: those of the joints' angles are listed with their constants, a given one is the user's.
    assert len(left) == 2 and all("{text, Standing::common_practice}" in line or "Standing::given" in line for line in left)


def test_figures_of_every_public_sourced_constant() -> None:
    """Every `inline constexpr Sourced<...>` of the headers is a constant of the package."""
    root = PAGE.parents[2] / "include/fieldshaft"
    pattern = re.compile(r"inline constexpr Sourced<[^=;{]*?>\s+(\w+)\s*[{=]")
    names = {name for path in root.glob("**/*.hpp") for name in pattern.findall(path.read_text(encoding="utf-8"))}
    listed = {figure.name.partition("[")[0].partition(".")[0] for figure in FIGURES}
    renamed = {"youngs_modulus", "shear_modulus", "poisson_ratio", "density"}  # steel_... in Python
    assert len(names) > 40
    assert names - renamed <= listed
    assert {f"steel_{name}" for name in renamed} <= listed
