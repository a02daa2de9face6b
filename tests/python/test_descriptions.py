"""The descriptions of the package against the C++ headers: nothing missing, nothing renamed, the same defaults."""

from __future__ import annotations

import functools
import inspect
import math
import re
import sys
from typing import Any

import headers
import pytest

import fieldshaft

sys.path.insert(0, str(headers.ROOT / "bindings" / "python" / "generator"))
import descriptions

LIBRARY = descriptions.load(headers.ROOT / "bindings" / "python")

#: Functions of C++ that Python offers in another form.
OTHER_FORM = {
    "check_material": "a Material is checked when it is made",
    "make_material": "Material(...)",
    "make_machine": "Machine(...)",
    "limits_mm": "a shorthand for the library's own tables",
    "standing_name": "Standing prints its name",
    "is_finite": "math.isfinite",
    "spline_factors": "a check inside namespace check",
    "joint_angle": "a check inside namespace check",
    "joint_pair_speed_ratios": "joint_pair_speed_ratio takes arrays",
    "count_cycles": "by hand: whole arrays",
    "count_repeating_cycles": "by hand: whole arrays",
    "count_closed_cycles": "by hand: whole arrays",
    "close_residue": "by hand: whole arrays",
    "miner_damage": "by hand: whole arrays",
    "history_damage": "by hand: whole arrays",
    "backup_of": "FarmStudy holds it",
    "case_of": "study_pair(...).case",
    "change_id": "Change.id",
    "check_id": "Finding.id",
    "farm_contradictions": "read_farm raises CaseError",
    "pair_set_ups": "study_pair and FarmStudy.to_frame name the best one",
    "status_name": "Status prints its name",
    "try_assess": "assess raises InputError",
    "try_read_case": "read_case raises CaseError",
    "try_read_farm": "read_farm raises CaseError",
    "verdict_code": "a packed form for C++",
    "verdict_matrix": "FarmStudy.matrix",
    "worse": "max: members of Status compare in their order",
    "write_case": "Case.to_json",
    "write_farm": "Farm.to_json",
}

#: Modules whose functions Python needs no names for, with the reason.
OTHER_MODULES = {"core": "checks are made inside, `threads` is a parameter", "units": "pint and texts"}

#: Constants of C++ that Python offers in another form, by how their names begin or end.
OTHER_CONSTANTS = {
    "_schema_version": "the schema entry of the document",
    "_count": "len(...) of the enumeration",
    "screened_checks": "screened_checks()",
    "outside_": "comes with the result of the formula",
    "pi": "math.pi",
}

#: How a described type writes what a header declares.
CONSTANT_TYPES = {"double": "number", "int": "count", "std::array": "list"}


def _is_elsewhere(constant: headers.Constant) -> bool:
    """Units belong to pint and to the texts."""
    name = constant.name
    ends = any(name == key or name.startswith(key) and key.endswith("_") or name.endswith(key) and key.startswith("_") for key in OTHER_CONSTANTS)
    return ends or constant.space == "unit"


@pytest.mark.parametrize("module", headers.modules())
def test_every_constant_is_described(module: str) -> None:
    described = {constant.cpp: str(constant.type) for constant in LIBRARY.constants}
    for constant in headers.constants(module):
        if _is_elsewhere(constant):
            continue
        name = "::".join(part for part in ("fieldshaft", constant.space, constant.name) if part)
        assert name in described, f"{constant.header}: {name} is not described"
        head = described[name].partition("[")[0].partition("@")[0]
        declared = constant.type.partition("<")[0]
        assert head.replace("_", "") == CONSTANT_TYPES.get(declared, declared).lower() or head == declared, name


def test_described_constants_are_in_use() -> None:
    declared = {c.name for module in headers.modules() for c in headers.constants(module)}
    assert {c.cpp.rpartition("::")[2] for c in LIBRARY.constants} <= declared
    assert all(any(key in name for name in declared) for key in OTHER_CONSTANTS)
    assert len(LIBRARY.constants) == len({c.name for c in LIBRARY.constants}) > 100
    assert all(c.summary for c in LIBRARY.constants)


MODULES = [module for module in LIBRARY.modules if module != "core"]


def _declared(module: str) -> list[headers.Function]:
    functions, _, _ = headers.read(module)
    return [f for f in functions if f.returns != "void" or f.name in OTHER_FORM]


def _described(module: str) -> dict[str, list[descriptions.Formula]]:
    found: dict[str, list[descriptions.Formula]] = {}
    for formula in LIBRARY.formulas:
        if formula.module == module and not formula.method_of:
            found.setdefault(formula.header_name, []).append(formula)
    return found


def _cpp_names(parameters: list[headers.Parameter]) -> list[str]:
    return [p.name for p in parameters if p.name != "size"]


@pytest.mark.parametrize("module", [module for module in headers.modules() if module not in OTHER_MODULES])
def test_every_function_is_in_python(module: str) -> None:
    """Each public function is described, written by hand, or offered in the form that is named here."""
    described = {formula.header_name for formula in LIBRARY.formulas}
    missing = sorted({f.name for f in _declared(module)} - described - set(fieldshaft.__all__) - set(OTHER_FORM))
    assert not missing


def test_other_forms_are_needed() -> None:
    declared = {f.name for module in headers.modules() for f in headers.read(module)[0]}
    assert not set(OTHER_FORM) - declared
    assert not {name for name, form in OTHER_FORM.items() if not form.startswith("by hand")} & set(fieldshaft.__all__)


@pytest.mark.parametrize("item", [fieldshaft.remedies, fieldshaft.RemedyOptions])
def test_bounds_of_a_search_are_those_of_the_header(item: Any) -> None:
    (options,) = [s for s in headers.read("advise")[1] if s.name == "RemedyOptions"]
    declared = dict(re.findall(r"(?m)^ *\w+ (\w+) = ([\w:.]+);", options.body))
    defaults = {name: p.default for name, p in inspect.signature(item).parameters.items() if name != "case"}
    assert declared == {name: f"Status::{value}" if name == "accept" else str(value) for name, value in defaults.items()}


@pytest.mark.parametrize("module", MODULES)
def test_parameters_have_the_names_of_the_header(module: str) -> None:
    declared: dict[str, list[list[str]]] = {}
    for function in _declared(module):
        declared.setdefault(function.name, []).append(_cpp_names(function.parameters))
    for name, formulas in _described(module).items():
        if all(formula.call and f"::{name}(" not in formula.call for formula in formulas):
            continue  # made of other functions
        assert name in declared, f"{name} is described but not declared"
        for formula in formulas:
            names = [p.cpp_name for p in formula.parameters]
            assert any(names == other or names == other[: len(names)] for other in declared[name]), (name, declared[name])


#: SI units in what the constructors of quantities name.
FACTORS = {"millimetres": 1e-3, "degrees": math.pi / 180}


def _number(text: str) -> float | None:
    match = re.fullmatch(r"(?:(\w+)\()?(-?\d+(?:\.\d+)?)\)?", text)
    return float(match[2]) * FACTORS.get(match[1], 1.0) if match else None


@pytest.mark.parametrize("module", MODULES)
def test_defaults_are_those_of_the_header(module: str) -> None:
    declared = {(f.name, p.name): p.default for f in _declared(module) for p in f.parameters if p.default}
    for formula in LIBRARY.formulas:
        if formula.module != module or formula.method_of:
            continue
        for p in formula.parameters:
            default = declared.get((formula.header_name, p.cpp_name))
            if default is None:
                continue
            assert p.has_default, f"{formula.name}: {p.name} has the default {default}"
            number = _number(default)
            if number is not None:
                assert p.default == number, (formula.name, p.name, default)
            elif "::" in default:
                assert p.default == default.split("::")[1].rstrip("_"), (formula.name, p.name, default)


@pytest.mark.parametrize("module", headers.modules())
def test_enumerations(module: str) -> None:
    _, _, declared = headers.read(module)
    for enumeration in declared:
        if enumeration.name in LIBRARY.enumerations:
            members = [name for name, _ in LIBRARY.enumerations[enumeration.name].members]
            assert members == [name for name, _ in enumeration.members], enumeration.name


def test_kinds_are_those_of_the_header() -> None:
    text = (headers.INCLUDE / "units" / "kind.hpp").read_text(encoding="utf-8")
    block = re.search(r"enum class Kind \{(.*?)\};", text, re.S)
    assert block
    assert set(re.findall(r"\w+", re.sub(r"//.*", "", block[1]))) == {*LIBRARY.kinds, "number", "share"}


#: Records of described structs that offer something else than the public members of C++.
OTHER_MEMBERS = {
    "Direction": "made of a forward, left and up part; a class in C++",
    "EngineLine": "points and high idle; a class in C++",
    "EnvelopeOptions": "all but which extremes an assessment leaves out",
    "HeldSpeed": "nothing of its own; a base in C++",
    "Position": "forward, left and up, which are functions in C++",
    "PtoIdentification": "also the answers that are functions in C++",
    "PtoOptions": "the list; a class in C++",
    "RecommendedPowers": "also the answers that are functions in C++",
    "DeviceWindow": "also the answer that is a function in C++",
}

#: Records that are written by hand: members of C++ that Python offers under another name, or in another form.
BY_HAND: dict[str, dict[str, str]] = {
    "BranchEnvelopeOfCase": {},
    "CaseProblem": {},
    "MeasuredEntry": {},
    "RangeOrigin": {"from": "from_"},
    "RemedyOptions": {},
    "StateEnvelope": {},
    "StateExtreme": {"pose": "yaw", "most": "matters_most"},
    "TurnAtPitch": {},
    "Remedy": {"after": "assess"},
    "Assessment": {
        "title": "document", "note": "document", "tractor": "case", "implement": "case", "unasked": "what_to_state",
        "gears": "document", "economy": "document", "wide_angle_joints": "certificate",
    },
    "Remedies": {"before": "case", "search": "complete_size"},
    "FarmStudy": {
        "title": "document", "note": "document", "depth": "document", "options": "farm", "verdicts": "verdict",
        "details": "to_frame", "backup": "stands_still", "plan": "document", "speeds": "document", "remedies": "document",
    },
    "FarmStudySettings": {"executor": "threads", "remedy_options": "remedies"},
}  # fmt: skip


@functools.cache
def _structs() -> dict[str, headers.Struct]:
    return {struct.name: struct for module in headers.modules() for struct in headers.read(module)[1]}


def test_records_have_the_members_of_the_header() -> None:
    declared = _structs()
    others = set()
    for name, struct in LIBRARY.structs.items():
        if struct.cpp != f"fieldshaft::{name}" or name not in declared:
            continue  # one of several that a template makes
        if [entry.cpp_name for entry in struct.fields] != headers.members(declared[name]):
            others.add(name)
    assert others == set(OTHER_MEMBERS)


@pytest.mark.parametrize("name", BY_HAND)
def test_objects_have_the_members_of_the_header(name: str) -> None:
    item = fieldshaft.study_farm if name == "FarmStudySettings" else getattr(fieldshaft, name)
    has = set(inspect.signature(item).parameters) if inspect.isfunction(item) else {*dir(item), "document"}
    members = headers.members(_structs()[name])
    assert members and set(BY_HAND[name]) <= set(members)
    missing = [member for member in members if BY_HAND[name].get(member, member) not in has]
    assert not missing


def test_every_overload_is_in_python() -> None:
    """Of functions with several forms each, up to the conveniences that are named here."""
    short = {"shear_yield", "shear_ultimate"}  # a Material instead of its `yield` or `ultimate`
    short |= {"mirrored"}  # takes any of them as `item`
    missing = []
    for module in MODULES:
        described = {name: [[p.cpp_name for p in f.parameters] for f in formulas] for name, formulas in _described(module).items()}
        for function in _declared(module):
            names = _cpp_names(function.parameters)
            forms = described.get(function.name)
            if forms is None or function.name in short:
                continue
            threads = [["threads" if name == "executor" else name for name in names]]
            if not any(names == form[: len(names)] or threads[0] == form for form in forms):
                missing.append((function.name, names))
    assert not missing


@pytest.mark.parametrize("formula", LIBRARY.formulas, ids=lambda formula: formula.core_name)
def test_descriptions_are_complete(formula: descriptions.Formula) -> None:
    assert formula.summary and formula.source
    assert formula.example and formula.gives and formula.si_example and formula.si_gives


@pytest.mark.parametrize("item", [*LIBRARY.structs.values(), *LIBRARY.enumerations.values()], ids=lambda item: item.name)
def test_classes_are_described(item: descriptions.Struct | descriptions.Enumeration) -> None:
    assert item.summary
