"""README and handbook: what they show is a piece of a program that is compiled and run, and their links lead somewhere."""

from __future__ import annotations

import doctest
import importlib.util
import json
import os
import re
import shlex
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

# pytest's checker compares numbers as far as the page writes them.
from _pytest.doctest import _get_checker, _get_flag_lookup

import fieldshaft

ROOT = Path(__file__).resolve().parents[2]
EXAMPLES = ROOT / "docs" / "examples"
PAGES = [ROOT / "README.md", *sorted((ROOT / "docs" / "handbook").glob("*.md"))]
SOURCES = {
    "cpp": [*EXAMPLES.glob("*.cpp"), EXAMPLES / "first_program" / "first.cpp"],
    "cmake": [EXAMPLES / "first_program" / "CMakeLists.txt", ROOT / "tests" / "consumer" / "CMakeLists.txt"],
}


def _lines(text: str) -> list[str]:
    return [line.strip() for line in text.splitlines() if line.strip()]


def _blocks(language: str) -> list[tuple[str, list[str]]]:
    fence = re.compile(rf"^```{language}\n(.*?)^```", re.MULTILINE | re.DOTALL)
    return [(f"{page.name}:{n}", _lines(block)) for page in PAGES for n, block in enumerate(fence.findall(page.read_text()), 1)]


def _stands_in(block: list[str], source: list[str]) -> bool:
    """The includes anywhere, the rest as one piece, wherever its lines are broken."""
    loose = [line for line in block if line.startswith(("#include", "using namespace"))]
    one, other = ("".join("".join(line for line in lines if line not in loose).split()) for lines in (block, source))
    return all(line in source for line in loose) and one in other


@pytest.mark.parametrize(("place", "block"), _blocks("cpp"), ids=[place for place, _ in _blocks("cpp")])
def test_cpp_is_compiled(place: str, block: list[str]) -> None:
    assert any(_stands_in(block, _lines(path.read_text())) for path in SOURCES["cpp"]), f"{place} is in no example program"


def test_cmake_is_used() -> None:
    program = _lines((EXAMPLES / "first_program" / "CMakeLists.txt").read_text())
    (shown,) = (block for place, block in _blocks("cmake") if place.startswith("getting-started.md"))
    assert shown == program
    (brief,) = (block for place, block in _blocks("cmake") if place.startswith("README.md"))
    named = [line.split("#")[0].strip().replace("my_program", "first") for line in brief]
    assert len(named) == 2 and set(named) <= set(program)


def test_first_python_program() -> None:
    program = EXAMPLES / "first_program" / "first.py"
    (shown,) = (block for place, block in _blocks("python") if place.startswith("getting-started.md"))
    assert shown == _lines(program.read_text())
    case = EXAMPLES / "cases" / "trailed-cutter-that-fits.json"
    ran = subprocess.run([sys.executable, "-B", program, case], capture_output=True, text=True, check=True, env=dict(os.environ))
    first, verdict, headline = ran.stdout.splitlines()[:3]
    assert float(first.split()[0]) == pytest.approx(75 * 745.69987158227022 / (540 * 3.141592653589793 / 30), rel=1e-12)
    assert verdict == "ok" and headline.startswith("NO OBJECTION")


def _as_toml(value: Any) -> str:
    if isinstance(value, dict):
        return "{" + ", ".join(f"{json.dumps(key)} = {_as_toml(item)}" for key, item in value.items()) + "}"
    if isinstance(value, list):
        return "[" + ", ".join(_as_toml(item) for item in value) + "]"
    return json.dumps(value, ensure_ascii=False)


def _write_toml(path: Path, source: Path) -> None:
    tree = json.loads(source.read_text(encoding="utf-8"))
    path.write_text("".join(f"{key} = {_as_toml(item)}\n" for key, item in tree.items()), encoding="utf-8")


def _session(block: list[str]) -> str:
    """A block as a session of the interpreter: what a comment shows as a value, the statement has to give."""
    lines = []
    for line in block:
        statement, _, shown = (part.strip() for part in line.partition("  # "))
        statement = re.sub(r"^print\((.*)\)$", r"\1", statement)
        lines += [f">>> {statement}"]
        if re.fullmatch(r"<.*>|array\(.*\)|[\d.]+", shown):
            lines += [shown.replace("…", "")]
        elif re.match(r"[\w.]+[(.]", statement):  # a value that the page only tells of
            lines[-1] = f">>> shown = {statement}"
    return "\n".join(lines) + "\n"


def test_python_is_run(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """What README and handbook show of Python, in one session, beside the files that it names."""
    monkeypatch.chdir(tmp_path)
    case = EXAMPLES / "cases" / "strong-tractor-at-540.json"
    shutil.copy(case, "my-case.json")
    _write_toml(tmp_path / "machine.toml", case)
    _write_toml(tmp_path / "farm.toml", EXAMPLES / "farms" / "three-tractors-seven-implements.json")
    loaded = fieldshaft.read_case_file("machine.toml")
    names: dict[str, Any] = {
        "pandas": pytest.importorskip("pandas"),
        "case": loaded,
        "cases": [loaded],
        "torques": [400.0, 500.0],
        "shaft": fieldshaft.Driveline("60 mm", "60 mm", fieldshaft.Position("-700 mm", "0 mm", "250 mm")),
        "pin": fieldshaft.Position("-400 mm", "0 mm", "-250 mm"),
        "turns": fieldshaft.AttitudeRange(fieldshaft.AngleRange("-30 deg", "30 deg")),
    }
    flags = _get_flag_lookup()
    runner = doctest.DocTestRunner(checker=_get_checker(), optionflags=flags["NUMBER"] | flags["NORMALIZE_WHITESPACE"])
    # The lines of the handbook's python.md first: they import what those of the README use too.
    pieces = [(place, block) for place, block in _blocks("python") if not place.startswith("getting-started.md")]
    compared = 0
    for place, block in sorted(pieces, key=lambda piece: piece[0].startswith("README")):
        test = doctest.DocTestParser().get_doctest(_session(block), names, place, None, 0)
        compared += sum(bool(example.want) for example in test.examples)
        report: list[str] = []
        printed = runner.run(test, out=report.append, clear_globs=False)
        assert printed.failed == 0, "".join(report)
        names = test.globs
    assert compared >= 4


def test_json_is_read() -> None:
    """The parts of a case that the page shows, in place of those of an example."""
    case = json.loads((EXAMPLES / "cases" / "trailed-cutter-that-fits.json").read_text(encoding="utf-8"))
    pieces = [json.loads("{" + " ".join(block) + "}") for _, block in _blocks("json")]
    assert sorted(key for piece in pieces for key in piece) == ["engine", "implement"]
    for piece in pieces:
        changed = json.loads(json.dumps(case))
        if "engine" in piece:
            changed["tractor"] = {**case["tractor"], **piece}
            assert len(fieldshaft.read_case(changed).to_dict()["tractor"]["engine"]["curve"]) == 3
        else:
            changed["implement"] = {**case["implement"], **piece["implement"]}
            assert fieldshaft.read_case(changed).to_dict()["implement"]["peak_factor"] == 2.0


def _commands() -> list[list[str]]:
    blocks = re.compile(r"^ *```\n(.*?)^ *```", re.MULTILINE | re.DOTALL)
    return [
        shlex.split(part)
        for page in PAGES
        for block in blocks.findall(page.read_text(encoding="utf-8"))
        for line in block.replace("\\\n", " ").splitlines()
        for part in line.split("&&")
        if re.match(r" *(cmake|build/|assess_files)", part)
    ]


def test_commands_are_known(tmp_path: Path) -> None:
    """The command lines of the pages: what assesses is run, the rest names presets and options that there are."""
    presets = {preset["name"] for preset in json.loads((ROOT / "CMakePresets.json").read_text(encoding="utf-8"))["configurePresets"]}
    options = (ROOT / "CMakeLists.txt").read_text(encoding="utf-8")
    program = Path(os.environ["FIELDSHAFT_BUILD_DIR"]) / "docs" / "examples" / "assess_files"
    shutil.copy(EXAMPLES / "cases" / "trailed-cutter-that-fits.json", tmp_path / "my-case.json")
    ran = 0
    for words in _commands():
        for word in words:
            if word.startswith("-DFIELDSHAFT_"):
                assert word[2:].split("=")[0] in options, word
        if words[:3] == ["cmake", "--workflow", "--preset"]:
            assert words[3] in presets, words
        elif words and Path(words[0]).name == "assess_files":
            arguments = words[1:] if ">" not in words else words[1 : words.index(">")]
            arguments = [str(ROOT / word) if word.startswith("docs/") else word for word in arguments]
            answer = subprocess.run([program, *arguments], cwd=tmp_path, capture_output=True, text=True)
            assert answer.returncode in (0, 1) and answer.stdout, (words, answer.stderr)
            ran += 1
    assert ran >= 6


def test_links_lead_somewhere() -> None:
    for page in PAGES:
        for link in re.findall(r"\]\(([^)#\s]+)[^)]*\)", page.read_text()):
            assert "://" in link or (page.parent / link).exists(), f"{page.name}: {link}"


def test_every_page_is_found_from_the_index() -> None:
    spec = importlib.util.spec_from_file_location("assemble", ROOT / "docs" / "handbook" / "assemble.py")
    assert spec and spec.loader
    assemble = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(assemble)
    placed = {name for names in assemble.PARTS.values() for name in names}
    index = (ROOT / "docs" / "handbook" / "index.md").read_text()
    for page in PAGES[1:]:
        if page.stem != "index":
            assert page.stem in placed, f"{page.name} is in no part of the built handbook (docs/handbook/assemble.py)"
            assert f"({page.name})" in index, f"{page.name} is not named in index.md"


def test_no_name_of_a_test_is_cut_in_two() -> None:
    """A semicolon in the name of a C++ test makes ctest run two tests that are none."""
    names = [name for path in (ROOT / "tests").glob("*/*.cpp") for name in re.findall(r'TEST_CASE\("([^"]+)"', path.read_text(encoding="utf-8"))]
    assert len(names) > 500
    assert [name for name in names if ";" in name] == []
