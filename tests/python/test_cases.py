"""Cases, assessments and the command line, on the example cases."""

from __future__ import annotations

import json
import math
import os
import pickle
import subprocess
import sys
from pathlib import Path
from typing import Any

import jsonschema
import pytest

import fieldshaft
from fieldshaft import Status
from fieldshaft.__main__ import main
from fieldshaft._envelopes import EXTREMES

ROOT = Path(__file__).resolve().parents[2]
EXAMPLES = sorted((ROOT / "docs" / "examples" / "cases").glob("*.json"))
PACKAGE = Path(fieldshaft.__file__).resolve().parent


@pytest.fixture(scope="module")
def assessments() -> dict[str, fieldshaft.Assessment]:
    return {path.stem: fieldshaft.assess(fieldshaft.read_case_file(path)) for path in EXAMPLES}


def _toml(value: Any, path: tuple[str, ...] = ()) -> str:
    """A document as TOML, with inline tables: enough for the tests."""

    def inline(item: Any) -> str:
        if isinstance(item, dict):
            return "{" + ", ".join(f"{key} = {inline(entry)}" for key, entry in item.items()) + "}"
        if isinstance(item, list):
            return "[" + ", ".join(map(inline, item)) + "]"
        return json.dumps(item, ensure_ascii=False)

    return "".join(f"{key} = {inline(entry)}\n" for key, entry in value.items())


def test_there_are_examples() -> None:
    assert len(EXAMPLES) >= 7


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_case(path: Path, tmp_path: Path) -> None:
    case = fieldshaft.read_case_file(path)
    document = json.loads(path.read_text(encoding="utf-8"))
    assert fieldshaft.read_case(path.read_text(encoding="utf-8")) == case
    assert fieldshaft.read_case(document) == case
    assert fieldshaft.read_case(case.to_json()) == case
    assert pickle.loads(pickle.dumps(case)) == case
    assert hash(case) == hash(fieldshaft.read_case(case.to_dict()))
    assert document["title"] in repr(case)
    toml = tmp_path / "case.toml"
    toml.write_text(_toml(document), encoding="utf-8")
    assert fieldshaft.read_case_file(toml) == case
    assert fieldshaft.read_case_file(str(toml)) == case


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_assessment(path: Path, assessments: dict[str, fieldshaft.Assessment]) -> None:
    assessment = assessments[path.stem]
    assert assessment.verdict is max(f.status for f in assessment.findings)
    assert sum(assessment.count(status) for status in Status) == len(assessment.findings) > 5
    report = assessment.to_dict()
    assert report["verdict"] == assessment.verdict
    assert [f.id for f in assessment.findings] == [entry["id"] for entry in report["findings"]]
    for finding in assessment.findings:
        assert finding in assessment.findings and assessment.find(finding.id).id == finding.id
        assert finding.to_dict()["id"] == finding.id in repr(finding)
        assert pickle.loads(pickle.dumps(finding)) == finding
        assert all(isinstance(words, str) and words for words in finding.advice)
        assert finding.status is not Status.ok or finding.value is None or finding.value.si == finding.value.si
    assert assessment.find("no.such.check") is None
    assert list(assessment.what_to_change) == report["what_to_change"]
    assert set(assessment.what_to_state) == {path for finding in assessment.findings for path in finding.missing}
    assert fieldshaft.to_json(assessment) == assessment.to_json("metric")
    assert assessment.headline.split(".")[0] in fieldshaft.to_text(assessment)
    assert assessment.headline in repr(assessment)
    assert "<table>" in assessment._repr_html_()
    again = pickle.loads(pickle.dumps(assessment))
    assert again == assessment and hash(again) == hash(assessment)
    assert again.case == assessment.case and again.findings == assessment.findings
    for form in ("text", "markdown", "html", "json"):
        for units in ("metric", "us"):
            written = getattr(assessment, f"to_{form}")(units)
            assert written == getattr(fieldshaft, f"to_{form}")(assessment, units) == getattr(again, f"to_{form}")(units)
    frame = assessment.to_frame()
    assert list(frame["id"]) == [f.id for f in assessment.findings]
    assert {"margin [-]", "value [SI]"} <= set(frame.columns)


def test_proved_geometry(assessments: dict[str, fieldshaft.Assessment]) -> None:
    for assessment in assessments.values():
        geometry, states = assessment.to_dict()["geometry"], assessment.envelopes
        assert [state.state for state in states] == [entry["state"] for entry in geometry["states"]]
        assert list(assessment.certificate) == geometry["certificate"]
        frame = assessment.envelope_frame()
        assert len(frame) == sum(len([name for name in EXTREMES if name in entry]) for entry in geometry["states"])
        for state, entry in zip(states, geometry["states"], strict=True):
            assert pickle.loads(pickle.dumps(state)) == state and hash(state) == hash(state.replace())
            assert state.front_angle.bound.si == entry["front_angle"]["bound"]["si"] >= state.front_angle.attained.si
            assert state.shortest.bound.si <= state.shortest.attained.si
            rows = frame[frame["state"] == str(state.state)].set_index("extreme")
            assert rows.loc["front_angle", "bound"] == pytest.approx(math.degrees(state.front_angle.bound.si))
            assert rows.loc["longest", "attained"] == pytest.approx(1e3 * state.longest.attained.si)
            assert rows.loc["longest", "unit"] == "mm" and rows.loc["front_angle", "yaw [deg]"] == pytest.approx(math.degrees(state.front_angle.yaw))
            assert len(state.to_frame()) == len(rows)
        turns = assessment.turn_frame()
        assert list(turns.columns) == ["pitch [deg]", "left [deg]", "right [deg]"] and len(turns) == len(assessment.turn_curve)
        assert [math.degrees(point.left) for point in assessment.turn_curve] == pytest.approx(list(turns["left [deg]"]))
    assert any(a.turn_curve for a in assessments.values()) and any(a.envelopes for a in assessments.values())


def test_branches_and_what_was_measured(assessments: dict[str, fieldshaft.Assessment]) -> None:
    branched, measured, steered = 0, 0, 0
    for assessment in assessments.values():
        geometry = assessment.to_dict()["geometry"]
        for branch, entry in zip(assessment.branches, geometry["branches"], strict=True):
            branched += 1
            assert (branch.name, branch.driven, list(branch.fold)) == (entry["name"], entry["driven"], entry["fold"])
            assert branch.longest.bound.si == entry["longest"]["bound"]["si"] >= branch.longest.attained.si
            assert pickle.loads(pickle.dumps(branch)) == branch
        for state, entry in zip(assessment.envelopes, geometry["states"], strict=True):
            assert state.slack_top_link == ("top_link" in entry) and state.steers_about_pivot == ("yaw_about" in entry)
            steered += state.steers_about_pivot
            for origin, one in zip(state.origins, entry["measured"], strict=True):
                measured += 1
                assert origin.of == one["of"] and list(origin.range) == one["range"]
                assert [part.entry for part in origin.from_] == [part["entry"] for part in one["from"]]
                assert all(part.tolerance.si >= 0.0 and part.value.text for part in origin.from_)
    assert branched == 3 and measured > 0 and steered == 3


def test_cases_as_rows(assessments: dict[str, fieldshaft.Assessment]) -> None:
    cases = [assessment.case for assessment in assessments.values()]
    frame = fieldshaft.to_frame(cases)
    assert len(frame) == len(cases) and list(frame["title"]) == [case.to_dict()["title"] for case in cases]
    assert {"tractor.power [W]", "tractor.hitch.distance [m]", "tractor.hitch.distance ± [m]", "driveline.joint_rating [N·m]"} <= set(frame.columns)
    assert len(fieldshaft.to_frame(list(assessments.values()))) == sum(len(a.findings) for a in assessments.values())


def test_units_of_a_report(assessments: dict[str, fieldshaft.Assessment]) -> None:
    assessment = next(iter(assessments.values()))
    assert "lbf" in fieldshaft.to_text(assessment, "us")
    assert "lbf" not in fieldshaft.to_text(assessment)
    with pytest.raises(fieldshaft.InputError, match="to_text: units = \"imperial\"; allowed: metric, us"):
        fieldshaft.to_text(assessment, "imperial")


def test_pages(assessments: dict[str, fieldshaft.Assessment]) -> None:
    assessment = next(iter(assessments.values()))
    assert assessment.to_html().startswith("<!DOCTYPE html>") and "</html>" in assessment.to_html()
    assert assessment.to_markdown().startswith("# ")
    for name in ("to_text", "to_markdown", "to_html", "to_json"):
        with pytest.raises(TypeError, match=f"{name}: report = 5"):
            getattr(fieldshaft, name)(5)


def test_schema() -> None:
    schema = fieldshaft.case_json_schema()
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    for path in EXAMPLES:
        validator.validate(json.loads(path.read_text(encoding="utf-8")))
        validator.validate(fieldshaft.read_case_file(path).to_dict())


@pytest.mark.parametrize(
    "text", ["7 ft 1 in", "7' 1\"", "7’ 1”", "½ in", "14½ in", "14 in.", "14 in. +- 1/4 in", "7 ft 1 ± ¼ in", "1 m 20 cm", "-1 ft 3 in"]
)
def test_schema_reads_lengths_as_a_tape_does(text: str) -> None:
    wheelbase = fieldshaft.case_json_schema()["properties"]["tractor"]["properties"]["wheelbase"]
    jsonschema.Draft202012Validator(wheelbase).validate(text)
    for wrong in ("14", "in", "½", "7 kg 1 in", "7 ft 1 lb"):
        assert not jsonschema.Draft202012Validator(wheelbase).is_valid(wrong)


def test_every_problem_at_once() -> None:
    document = json.loads(EXAMPLES[0].read_text(encoding="utf-8"))
    document["tractor"]["power"] = 62
    document["implement"]["imput_speed"] = document["implement"].pop("input_speed")
    with pytest.raises(fieldshaft.CaseError) as caught:
        fieldshaft.read_case(document)
    paths = [problem.path for problem in caught.value.problems]
    assert "tractor.power" in paths
    assert len(paths) >= 2
    assert "tractor.power: 62; expected" in str(caught.value)
    assert isinstance(caught.value, ValueError)
    again = pickle.loads(pickle.dumps(caught.value))
    assert again.problems == caught.value.problems


@pytest.mark.parametrize(
    ("name", "content"),
    [("a.json", b"{"), ("b.toml", b"= 3"), ("c.json", b"\xff\xfe"), ("d.toml", b"x = 1979-05-27"), ("e.json", b"")],
)
def test_files_that_are_no_case(name: str, content: bytes, tmp_path: Path) -> None:
    path = tmp_path / name
    path.write_bytes(content)
    with pytest.raises(fieldshaft.CaseError):
        fieldshaft.read_case_file(path)


def test_wrong_types() -> None:
    for wrong in (5, None, [], b"{}"):
        with pytest.raises(TypeError, match="read_case: text"):
            fieldshaft.read_case(wrong)
    with pytest.raises(TypeError, match="assess: case"):
        fieldshaft.assess("{}")


# The command line. --------------------------------------------------------------------------------------------


def _expected_status(assessment: fieldshaft.Assessment) -> int:
    return 0 if assessment.verdict in (Status.ok, Status.caution) else 1


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_exit_status(
    path: Path, assessments: dict[str, fieldshaft.Assessment], capsys: pytest.CaptureFixture[str]
) -> None:
    assessment = assessments[path.stem]
    assert main(["assess", str(path)]) == _expected_status(assessment)
    out, err = capsys.readouterr()
    assert (out, err) == (assessment.to_text(), "")
    assert main(["assess", str(path), "--json", "--units", "us"]) == _expected_status(assessment)
    out, err = capsys.readouterr()
    assert json.loads(out) == json.loads(assessment.to_json("us")) and err == ""


def test_examples_have_both_outcomes(assessments: dict[str, fieldshaft.Assessment]) -> None:
    assert {_expected_status(assessment) for assessment in assessments.values()} == {0, 1}


def test_several_files(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    bad = tmp_path / "bad.json"
    bad.write_text('{"schema": "fieldshaft-case/1", "tractor": {"power": 5}}', encoding="utf-8")
    missing = tmp_path / "missing.toml"
    files = [str(EXAMPLES[0]), str(bad), str(missing), str(EXAMPLES[1])]
    assert main(["assess", *files]) == 2
    out, err = capsys.readouterr()
    assert f"== {EXAMPLES[0]} ==" in out and f"== {EXAMPLES[1]} ==" in out
    assert f"{bad}: tractor.power: 5; expected" in err
    assert f"{missing}: No such file or directory" in err
    assert "Traceback" not in err
    assert main(["assess", "--json", *files]) == 2
    reports = json.loads(capsys.readouterr().out)
    assert [report["file"] for report in reports] == [files[0], files[3]]


@pytest.mark.parametrize(("form", "ending"), [("html", ".html"), ("markdown", ".md")])
def test_pages_into_files(form: str, ending: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    page, folder = tmp_path / f"page{ending}", tmp_path / "pages"
    assessment = fieldshaft.assess(fieldshaft.read_case_file(EXAMPLES[0]))
    assert main(["assess", str(EXAMPLES[0]), f"--{form}", str(page), "--units", "us"]) == _expected_status(assessment)
    assert page.read_text(encoding="utf-8") == getattr(assessment, f"to_{form}")("us")
    expected = max(_expected_status(fieldshaft.assess(fieldshaft.read_case_file(path))) for path in EXAMPLES[:2])
    assert main(["assess", *map(str, EXAMPLES[:2]), f"--{form}", str(folder)]) == expected
    assert {p.name for p in folder.iterdir()} == {p.stem + ending for p in EXAMPLES[:2]}
    assert capsys.readouterr() == ("", "")
    assert main(["assess", str(EXAMPLES[0]), f"--{form}", str(tmp_path / "no" / "such")]) == 2
    assert "No such file or directory" in capsys.readouterr().err


def test_pages_of_one_name(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Two files of one name in two folders must not be written over each other."""
    twin = tmp_path / EXAMPLES[0].name
    twin.write_bytes(EXAMPLES[1].read_bytes())
    with pytest.raises(SystemExit) as stopped:
        main(["assess", str(EXAMPLES[0]), str(twin), "--html", str(tmp_path / "pages")])
    assert stopped.value.code == 2 and not (tmp_path / "pages").exists()
    assert f"{EXAMPLES[0]} and {twin} would both be written as {twin.stem}.html" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("name", "content", "message"),
    [
        ("farm.json", b'{"schema": "fieldshaft-farm/1"}', "for a farm call: python -m fieldshaft study"),
        ("case.json", b'{"schema": "fieldshaft-case/2"}', 'schema: "fieldshaft-case/2"; expected "fieldshaft-case/1"'),
        ("deep.toml", b"a = " + b"[" * 100_000, "document: lists within lists without end; expected a TOML document"),
        ("deep.json", b"[" * 100_000, "document: the document ends too early"),
        ("photo.json", b"\x89PNG\xff", "document: no text at byte 0; expected text in UTF-8"),
    ],
)
def test_files_of_another_kind(name: str, content: bytes, message: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / name).write_bytes(content)
    assert main(["assess", str(tmp_path / name)]) == 2
    out, err = capsys.readouterr()
    assert out == "" and message in err and (name == "farm.json") == ("call: python" in err)


def test_bar_on_a_terminal(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    monkeypatch.setattr(sys.stderr, "isatty", lambda: True, raising=False)
    main(["assess", "--json", *map(str, EXAMPLES[:2])])
    out, err = capsys.readouterr()
    assert len(json.loads(out)) == 2 and "2/2" in err
    main(["assess", "--json", str(EXAMPLES[0])])
    assert capsys.readouterr().err == ""


def _run(*arguments: str, **variables: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "fieldshaft", *arguments]
    environment = {**os.environ, **variables}
    return subprocess.run(command, cwd=PACKAGE.parent, env=environment, capture_output=True, text=True, check=False)


def test_as_a_program() -> None:
    done = _run("assess", str(EXAMPLES[0]))
    assert done.returncode in (0, 1) and done.stderr == "" and len(done.stdout) > 500
    plain = _run("assess", str(EXAMPLES[0]), PYTHONIOENCODING="ascii")  # a terminal without ° and ·
    assert plain.returncode == done.returncode and plain.stderr == "" and len(plain.stdout) == len(done.stdout)
    assert _run("--version").stdout == f"fieldshaft {fieldshaft.__version__}\n"
    done = _run("assess", "nowhere.json")
    assert done.returncode == 2 and done.stdout == ""
    assert done.stderr == "nowhere.json: No such file or directory\n"
    assert _run("assess").returncode == 2
    assert _run("--help").returncode == 0
