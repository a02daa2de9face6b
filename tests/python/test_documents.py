"""README and handbook: what they show is a piece of a program that is compiled and run, and their links lead somewhere."""

from __future__ import annotations

import importlib.util
import os
import re
import subprocess
import sys
from pathlib import Path

import pytest

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


def test_first_python_program() -> None:
    program = EXAMPLES / "first_program" / "first.py"
    (shown,) = (block for place, block in _blocks("python") if place.startswith("getting-started.md"))
    assert shown == _lines(program.read_text())
    case = EXAMPLES / "cases" / "trailed-cutter-that-fits.json"
    ran = subprocess.run([sys.executable, "-B", program, case], capture_output=True, text=True, check=True, env=dict(os.environ))
    first, verdict, headline = ran.stdout.splitlines()[:3]
    assert float(first.split()[0]) == pytest.approx(75 * 745.69987158227022 / (540 * 3.141592653589793 / 30), rel=1e-12)
    assert verdict == "ok" and headline.startswith("NO OBJECTION")


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
