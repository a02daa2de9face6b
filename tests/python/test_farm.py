"""Farms: reading, studying, frames, options, and the command line."""

from __future__ import annotations

import json
import pickle
from pathlib import Path

import jsonschema
import pytest

import fieldshaft
from fieldshaft import Status
from fieldshaft.__main__ import main

FARM_FILE = Path(__file__).resolve().parents[2] / "docs" / "examples" / "farms" / "three-tractors-seven-implements.json"


@pytest.fixture(scope="module")
def farm() -> fieldshaft.Farm:
    return fieldshaft.read_farm_file(FARM_FILE)


@pytest.fixture(scope="module")
def study(farm: fieldshaft.Farm) -> fieldshaft.FarmStudy:
    return fieldshaft.study_farm(farm)


def test_farm(farm: fieldshaft.Farm) -> None:
    document = json.loads(FARM_FILE.read_text(encoding="utf-8"))
    assert fieldshaft.read_farm(document) == farm == fieldshaft.read_farm(farm.to_json())
    assert pickle.loads(pickle.dumps(farm)) == farm and hash(farm) == hash(fieldshaft.read_farm(document))
    assert document["title"] in repr(farm) and "3 tractors, 7 implements" in repr(farm)
    assert farm.names("tractors") == tuple(entry["name"] for entry in document["tractors"])
    schema = fieldshaft.farm_json_schema()
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.Draft202012Validator(schema).validate(document)
    jsonschema.Draft202012Validator(schema).validate(farm.to_dict())
    assert farm != document
    machines = farm.to_frame("implements")
    assert list(machines["name"]) == list(farm.names("implements")) and "power_need [W]" in machines.columns
    with pytest.raises(fieldshaft.InputError, match="to_frame: part = 'cows'; allowed: tractors, implements"):
        farm.to_frame("cows")


def test_changeovers_of_a_farm(study: fieldshaft.FarmStudy) -> None:
    steps = study.changeovers()
    assert list(steps.columns) == ["tractor", "implements", "from", "to", "number", "step"]
    assert set(steps["tractor"]) == {"tractor B"}
    ways = {(start, end) for start, end in zip(steps["from"], steps["to"], strict=True)}
    assert len(ways) == 2 and {(end, start) for start, end in ways} == ways  # there and back
    for _, list_ in steps.groupby(["from", "to", "implements"]):
        assert list(list_["number"]) == list(range(1, len(list_) + 1))
        assert "by hand" in list_["step"].iloc[-1]


def test_bad_farms(farm: fieldshaft.Farm) -> None:
    document = farm.to_dict()
    document["tractors"][0]["powr"] = 5
    document["interest"] = "five"
    with pytest.raises(fieldshaft.CaseError) as caught:
        fieldshaft.read_farm(document)
    assert {"interest", "tractors[0].powr"} <= {problem.path for problem in caught.value.problems}
    with pytest.raises(TypeError, match="read_farm: text = 5"):
        fieldshaft.read_farm(5)
    with pytest.raises(TypeError, match="study_farm: farm = 'x'"):
        fieldshaft.study_farm("x")
    with pytest.raises(fieldshaft.InputError, match="study_farm: depth = 'deep'; allowed: certified, screening"):
        fieldshaft.study_farm(farm, "deep")
    with pytest.raises(fieldshaft.InputError, match="study_farm: threads = -1"):
        fieldshaft.study_farm(farm, "screening", threads=-1)
    with pytest.raises(TypeError, match="study_farm: threads = 1.5"):
        fieldshaft.study_farm(farm, threads=1.5)


def test_frames(study: fieldshaft.FarmStudy) -> None:
    matrix, pairs = study.matrix(), study.to_frame()
    assert matrix.shape == (len(study.tractors), len(study.implements)) and len(pairs) == matrix.size
    for pair in pairs.to_dict("records"):
        verdict = study.verdict(pair["tractor"], pair["implement"])
        assert matrix.loc[pair["tractor"], pair["implement"]] == verdict == pair["verdict"]
    assert {"margin [-]", "gear", "stub", "driveline", "governing"} <= set(pairs.columns)
    never = [name for name in study.implements if not matrix[name].isin(["ok", "caution"]).any()]
    assert list(study.never_run) == never
    idle = study.stands_still()
    (single,) = [row for row in idle.to_dict("records") if row["down"] == "tractor B"]
    for implement in single["stands still"].split(", "):
        assert matrix.drop("tractor B")[implement].isin(["stop", "not_known"]).all()
    pays = study.pay_offs()
    assert list(pays["option"]) == list(study.farm.names("options")) and set(pays["pays"]) <= {"yes", "no", "not_known"}
    assert pays["currency"].dropna().isin(["EUR"]).all()


def test_a_pair_is_its_own_case(farm: fieldshaft.Farm, study: fieldshaft.FarmStudy) -> None:
    for tractor in farm.names("tractors"):
        one = fieldshaft.study_pair(farm, tractor, 0)
        assert one.verdict is study.verdict(tractor, 0)
        assert fieldshaft.assess(one.case) == one
    with pytest.raises(fieldshaft.InputError, match="study_pair: tractor = 'red one'; allowed: one of: tractor A"):
        fieldshaft.study_pair(farm, "red one", 0)
    with pytest.raises(fieldshaft.InputError, match="study_pair: implement = 99"):
        fieldshaft.study_pair(farm, 0, 99)
    with pytest.raises(TypeError, match="study_pair: tractor = True|study_pair: tractor = 1.0"):
        fieldshaft.study_pair(farm, 1.0, 0)


def test_options(farm: fieldshaft.Farm) -> None:
    names = farm.names("options")
    assert fieldshaft.with_options(farm, []) == farm
    changed = fieldshaft.with_options(farm, names)
    assert changed != farm and changed == fieldshaft.with_options(farm, range(len(names)))
    with pytest.raises(fieldshaft.InputError, match=r"with_options: options\[0\] = 'none'"):
        fieldshaft.with_options(farm, ["none"])
    with pytest.raises(TypeError, match="with_options: options = 'all'"):
        fieldshaft.with_options(farm, "all")


@pytest.fixture(scope="module")
def screened(farm: fieldshaft.Farm) -> fieldshaft.FarmStudy:
    return fieldshaft.study_farm(farm, "screening")


def test_screening_and_threads(farm: fieldshaft.Farm, study: fieldshaft.FarmStudy, screened: fieldshaft.FarmStudy) -> None:
    order = list(Status)
    for tractor in study.tractors:
        for implement in study.implements:
            assert order.index(screened.verdict(tractor, implement)) <= order.index(study.verdict(tractor, implement))
    assert fieldshaft.study_farm(farm, "screening", threads=2) == screened != study
    assert "pto.speed" in fieldshaft.screened_checks()


def test_bounds_of_remedies(farm: fieldshaft.Farm, study: fieldshaft.FarmStudy) -> None:
    few = fieldshaft.RemedyOptions(most_changes=1, most_sets=1, most_cases=20)
    found = fieldshaft.study_farm(farm, remedies=few)
    assert found.matrix().equals(study.matrix()) and study.to_dict()["remedies"] == []
    sets = [entry["sets"] for entry in found.to_dict()["remedies"]]
    assert {len(entry) for entry in sets} == {0, 1} and {len(one["changes"]) for entry in sets for one in entry} == {1}
    with pytest.raises(TypeError, match="study_farm: remedies = 'yes'.*expected True, False or RemedyOptions"):
        fieldshaft.study_farm(farm, remedies="yes")
    with pytest.raises(fieldshaft.InputError, match="remedies: most_sets = 1.5; allowed: a whole number"):
        fieldshaft.study_farm(farm, remedies=few.replace(most_sets=1.5))


def test_objects(study: fieldshaft.FarmStudy) -> None:
    again = pickle.loads(pickle.dumps(study))
    assert again == study and hash(again) == hash(study) and again.farm == study.farm
    for form in ("text", "markdown", "html", "json"):
        assert getattr(fieldshaft, f"to_{form}")(again, "us") == getattr(study, f"to_{form}")("us")
    assert "of 21 pairs run" in repr(study) and "<table" in study._repr_html_() and "<html" not in study._repr_html_()


def test_command_line(
    study: fieldshaft.FarmStudy, screened: fieldshaft.FarmStudy, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    page = tmp_path / "farm.html"
    assert main(["study", str(FARM_FILE), "--html", str(page)]) == (1 if study.never_run else 0)
    assert page.read_text(encoding="utf-8") == study.to_html()
    status = 1 if screened.never_run else 0
    assert main(["study", "--screening", str(FARM_FILE)]) == status
    assert capsys.readouterr() == (screened.to_text(), "")
    assert main(["study", "--screening", "--json", "--units", "us", "--threads", "1", str(FARM_FILE)]) == status
    assert json.loads(capsys.readouterr().out) == json.loads(screened.to_json("us"))
    bad = tmp_path / "bad.json"
    bad.write_text('{"schema": "fieldshaft-farm/1", "tractors": 5}', encoding="utf-8")
    assert main(["study", str(bad)]) == 2
    out, err = capsys.readouterr()
    assert out == "" and f"{bad}: tractors: 5; expected" in err
