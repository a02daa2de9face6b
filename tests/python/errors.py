"""The table of errors in the handbook, made from what the tests threw (see tests/support/error_recorder.cpp).

    python tests/python/errors.py LOG    writes docs/handbook/errors.md from the recorded messages
"""

from __future__ import annotations

import re
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PAGE = ROOT / "docs/handbook/errors.md"

MESSAGE = re.compile(r"^(?P<function>[^:]+): (?P<parameter>.+?) = (?P<value>.*); allowed: (?P<allowed>.*)$")

#: A place in the sources: {function, "parameter", "unit"} of a check, or fail_input(function, "parameter", ...).
PLACE = re.compile(r'(?:\{|fail_input\()\s*(\w+|"[^"]+")\s*,\s*("[^"]+")\s*,\s*(?:"[^"]*"\s*\}|)')
NAMED = re.compile(r'const char\*\s*(?:const\s+)?(\w+)\s*(?:=\s*"([^"]+)")?')

#: What is allowed, in the words of the checks: why it was refused, and what to do.
CAUSES = [
    ("at least one", "the list is empty", "give at least one entry"),
    ("a finite number", "the number is NaN or infinite, or lies beyond the bound", "look where it was computed or measured, and give"),
    ("from ", "the number lies outside what can be, often from a wrong unit", "check the unit, and give a number"),
    ("below", "the number reaches another one that must be larger", "check both, and give"),
]


def plain(parameter: str) -> str:
    """A parameter without the index of an entry."""
    return re.sub(r"\[[^\]]*\]", "[]", re.sub(r" \(element \[[^\]]*\]\)", "", parameter))


def parse(lines: list[str]) -> dict[tuple[str, str], set[str]]:
    """What each parameter of each function may be, from recorded messages; numbers that depend on others are left open."""
    found: dict[tuple[str, str], set[str]] = {}
    for line in lines:
        match = MESSAGE.match(line)
        if match:
            key = (match["function"].removesuffix("_m"), plain(match["parameter"]))
            found.setdefault(key, set()).add(match["allowed"].replace("|", "\\|"))
    return found


def places() -> set[tuple[str | None, str]]:
    """Each place of the sources that refuses an input: function, unless a caller names it, and parameter."""
    found: set[tuple[str | None, str]] = set()
    for path in [*ROOT.glob("include/**/*.hpp"), *ROOT.glob("src/**/*.cpp"), *ROOT.glob("src/**/*.hpp")]:
        text = path.read_text(encoding="utf-8")
        names = [(m.start(), m[1], m[2]) for m in NAMED.finditer(text)]
        for match in PLACE.finditer(text):
            if "fail_input(" not in match[0] and "check::" not in _statement(text, match.start()):
                continue
            function, parameter = match[1], match[2].strip('"')
            if function.startswith('"'):
                found.add((function.strip('"'), plain(parameter)))
                continue
            before = [value for start, name, value in names if name == function and start < match.start()]
            found.add((before[-1] if before and before[-1] else None, plain(parameter)))
    return found


def _statement(text: str, at: int) -> str:
    start = max(text.rfind(mark, 0, at) for mark in (";", "\n\n", "):", ") {\n"))
    return text[start + 1 : at]


def _advice(allowed: str) -> tuple[str, str]:
    for mark, cause, cure in CAUSES:
        if allowed.startswith(mark):
            return cause, f"{cure} {allowed}" if not cure.endswith("entry") else cure
    return "the input is not one of those that the function knows", f"give {allowed}"


def page(found: dict[tuple[str, str], set[str]]) -> str:
    lines = [
        "# Every refused input, why, and what to do", "",
        "An impossible input raises `InputError` (C++ and Python) with the message `function: parameter = value; allowed: ...`; nothing is half",
        "changed. This table is made from what the tests made the library throw, one row for each parameter of each function and what is",
        "allowed there. `tests/python/test_errors.py` fails if a place in the sources refuses an input and no test has made it do so. Write the",
        "table anew with `cmake --build build/test --target record_errors`.", "",
        "| function | parameter | allowed | cause | cure |", "| --- | --- | --- | --- | --- |",
    ]  # fmt: skip
    for (function, parameter), allowed in sorted(found.items()):
        shown = sorted(allowed, key=lambda text: (len(text), text))
        some = shown[0]
        cause, cure = _advice(some)
        lines.append(f"| `{function}` | `{parameter}` | {some} | {cause} | {cure} |")
    return "\n".join(lines) + "\n"


def told() -> set[tuple[str, str]]:
    """Function and parameter of each row of the page."""
    return set(re.findall(r"^\| `([^`]+)` \| `([^`]+)` \|", PAGE.read_text(encoding="utf-8"), re.MULTILINE))


def untested(seen: set[tuple[str, str]]) -> list[tuple[str | None, str]]:
    """Places that refuse an input which no test has made them refuse."""
    parameters = {parameter for _, parameter in seen}
    return sorted(
        (place for place in places() if place not in seen and not (place[0] is None and place[1] in parameters)),
        key=lambda place: (place[0] or "", place[1]),
    )


def named(parameter: str) -> bool:
    """Whether a test asks for a refusal of this parameter by its name; the page tells of it once it is written anew."""
    files = [*ROOT.glob("tests/unit/*.cpp"), *ROOT.glob("tests/python/test_*.py")]
    return any(f"{parameter}\"" in text or f": {parameter} = " in text for text in map(_text, files))


def _text(path: Path) -> str:
    return path.read_text(encoding="utf-8") if path.name != "test_errors.py" else ""


if __name__ == "__main__":
    recorded = parse(Path(sys.argv[1]).read_text(encoding="utf-8").splitlines())
    PAGE.write_text(page(recorded), encoding="utf-8")
    for function, parameter in untested(set(recorded)):
        print("no test refuses", function or "(any)", parameter)
