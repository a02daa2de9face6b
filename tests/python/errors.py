"""The table of errors in the handbook, made from what the tests threw (see tests/support/error_recorder.cpp).

    python tests/python/errors.py write LOG    writes docs/handbook/errors.md from the recorded messages
    python tests/python/errors.py check LOG    fails if a place of the sources that refuses something is not among them or not
                                               on the page, or if the page tells what none of them says
"""

from __future__ import annotations

import os
import re
import sys
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
PAGE = ROOT / "docs/handbook/errors.md"

MESSAGE = re.compile(r"^(?P<function>[^:]+(?:::\w+)?): (?P<parameter>.+?) = (?P<value>.*); allowed: (?P<allowed>.*)$")
CALL = re.compile(r"\b(?:finite|positive|not_negative|within|between|from_below|at_least|below|fail_bound|fail_range|fail|fail_input|check_price)(?=\()")
PROBLEM = re.compile(r"^  (?P<path>.+?): (?P<value>.*?); expected (?P<expected>.*)$")
TEXT = re.compile(r'"((?:[^"\\]|\\.)*)"')
NAMED = re.compile(r'const char\*\s*(?:const\s+)?(\w+)\s*(?:=\s*"([^"]+)")?')

#: What each check of core/check.hpp says is allowed: beginning and end.
CHECKS = {
    "finite": ("a finite number", ""),
    "positive": ("a finite number above 0", ""),
    "not_negative": ("a finite number, at least 0", ""),
    "check_price": ("a finite number, at least 0", ""),
    "within": ("from ", ", both included"),
    "between": ("from ", ", both excluded"),
    "from_below": ("from ", ", upper end excluded"),
    "at_least": ("a finite number, at least ", ""),
    "below": ("a finite number below ", ""),
}

#: What is allowed, in the words of the checks: why it was refused, and what to do.
CAUSES = [
    ("at least one", "the list is empty", "give at least one entry"),
    ("a finite number", "the number is NaN or infinite, or lies beyond the bound", "look where it was computed or measured, and give"),
    ("from ", "the number lies outside what can be, often from a wrong unit", "check the unit, and give a number"),
    ("below", "the number reaches another one that must be larger", "check both, and give"),
]  # fmt: skip

#: Wrong entries of a document, by a mark in what stands or in what is expected: why they are refused, and what to do.
STANDS = [
    ("unknown key", "the key is misspelt, or stands in another object than the one that has it", "write"),
    ("missing", "an entry is left out without which its neighbours mean nothing", "add"),
    ("stands twice", "a key stands twice, and one of the two would be lost", "keep"),
    ("beside", "two entries state the same thing", "state"),
    (" and a", "two entries state the same thing", "state"),
    (" and its own", "two entries state the same thing", "state"),
    ("stated", "the entry belongs to another kind of hitch", "state"),
]
EXPECTED = [
    ("bare number", "a number stands without its unit or currency", "write it as text:"),
    ("without a tolerance", "a tolerance stands where none is used", "write"),
    (", the version that", "the document was written for another version", "give"),
    (" document", "the text is no document of this kind", "give"),
    ("a JSON object", "the text is no document of this kind", "give"),
    ("name of a", "the name is not one that the document lists", "write"),
    ("such as", "the unit or currency is another, or the number lies outside what can be", "write"),
    ("one of ", "the word is not one of those that the entry knows", "write"),
]


@dataclass(frozen=True, order=True)
class Refusal:
    """What one message says: function, parameter without the index of an entry, and what is allowed."""

    function: str
    parameter: str
    allowed: str

    def kind(self) -> tuple[str, str, str]:
        """The refusal with its numbers and quoted names left open: one row of the page."""
        return self.function, self.parameter, _open(self.allowed)


@dataclass(frozen=True, order=True)
class Problem:
    """A wrong entry of a document: its path without indices, what stands, and what is expected."""

    path: str
    value: str
    expected: str

    def kind(self) -> tuple[str, str, str]:
        return self.path, self.value if self.value in ("unknown key", "missing") else "", _open(self.expected)


@dataclass(frozen=True)
class Place:
    """One refusal in the sources; what a variable fills in is None (function) or open (patterns)."""

    function: str | None
    parameter: str
    allowed: str
    where: str

    def told_by(self, refusal: Refusal) -> bool:
        return bool(re.fullmatch(self.parameter, refusal.parameter) and re.fullmatch(self.allowed, refusal.allowed))

    def __str__(self) -> str:
        return f"{self.where}: {self.function or '(any)'}: {self.parameter}; {self.allowed}".replace("\\", "")


@dataclass(frozen=True)
class DocumentPlace:
    """One place that notes a wrong entry of a document: patterns of path, value and expectation."""

    path: str
    value: str
    expected: str
    where: str

    def told_by(self, problem: Problem) -> bool:
        pairs = ((self.path, problem.path), (self.value, problem.value), (self.expected, problem.expected))
        return all(re.fullmatch(pattern, text, re.DOTALL) for pattern, text in pairs)

    def __str__(self) -> str:
        return f"{self.where}: {self.path}: {self.value}; expected {self.expected}".replace("\\", "")


def note(problems: Iterable[str]) -> None:
    """Notes what Python raised, where the recorder runs: a document's problems reach Python without a C++ exception."""
    if "error_recorder" in os.environ.get("LD_PRELOAD", ""):
        with (Path(os.environ["FIELDSHAFT_BUILD_DIR"]) / "tests/refusals.log").open("a", encoding="utf-8") as log:
            log.writelines(f"  {problem}\n" for problem in problems)


def plain(parameter: str) -> str:
    """A parameter or path without the index of an entry."""
    return re.sub(r"\[[^\]]*\]", "[]", re.sub(r" \(element \[[^\]]*\]\)", "", parameter))


def _open(text: str) -> str:
    return re.sub(r"-?\d[\d.]*(e[+-]?\d+)?", "#", re.sub(r'"[^"]*"', "#", text))


def parse(lines: list[str]) -> tuple[set[Refusal], set[Problem]]:
    """What the functions and what the readers of documents refused."""
    refused = filter(None, map(MESSAGE.match, lines))
    wrong = filter(None, map(PROBLEM.match, lines))
    return (
        {Refusal(m["function"].removesuffix("_m"), plain(m["parameter"]), m["allowed"]) for m in refused},
        {Problem(plain(m["path"]), m["value"], m["expected"]) for m in wrong},
    )


def _arguments(text: str, at: int) -> list[str]:
    """The arguments of the call whose parenthesis opens just before `at`."""
    found, depth, start = [], 0, at
    for match in re.compile(r'"(?:[^"\\]|\\.)*"|[(){}\[\],]').finditer(text, at):
        mark = match[0]
        if mark in "({[":
            depth += 1
        elif mark in ")}]":
            depth -= 1
        if depth < 0 or (mark == "," and depth == 0):
            found.append(text[start : match.start()].strip())
            start = match.end()
        if depth < 0:
            break
    return found


def _place(check: str, arguments: list[str]) -> list[str]:
    """Function and parameter as a refusal states them; empty where the name is that of something else."""
    if check == "fail_input":
        return arguments[:2] if len(arguments) == 4 else []
    braces = [_arguments(argument, 1) for argument in arguments if argument.startswith("{")]
    return next((parts for parts in braces if len(parts) == 3), [])


def _pattern(expression: str) -> str:
    """A pattern of the text that an expression makes: what it states is fixed, what a variable fills in is open."""
    parts = [re.escape(re.sub(r"\\(.)", r"\1", text)) for text in TEXT.findall(expression)]
    rest = re.sub(r"\s", "", TEXT.sub("", expression))
    variable = rest != ""
    if "?" in rest:
        return ".*(" + "|".join(parts) + ").*"
    return ".*" + "".join(part + ".*" for part in parts) if variable else "".join(parts)


def _allowed(check: str, arguments: list[str]) -> str:
    if check in CHECKS:
        begin, end = CHECKS[check]
        return re.escape(begin) + ("" if check == "finite" else ".*") + re.escape(end)
    if check == "fail_range":
        return "from .*"
    return _pattern(arguments[3 if check == "fail_input" else 2]) + (".*" if check == "fail_bound" else "")


def places() -> list[Place]:
    """Each place of the sources that refuses an input; those of core/check.hpp itself are the checks."""
    found: list[Place] = []
    for path in sorted([*ROOT.glob("include/**/*.hpp"), *ROOT.glob("src/**/*.?pp")]):
        if path.name in ("check.hpp", "error.hpp"):
            continue
        text = re.sub(r"//[^\n]*", lambda m: " " * len(m[0]), path.read_text(encoding="utf-8"))
        names = [(m.start(), m[1], m[2]) for m in NAMED.finditer(text)]
        for match in CALL.finditer(text):
            arguments = _arguments(text, match.end() + 1)
            place = _place(match[0], arguments)
            if not place:
                continue
            function: str | None = place[0].strip('"')
            if not place[0].startswith('"'):
                before = [value for start, name, value in names if name == function and start < match.start()]
                function = before[-1] if before else None
            where = f"{path.relative_to(ROOT)}:{text.count(chr(10), 0, match.start()) + 1}"
            found.append(Place(function, _pattern(place[1]), _allowed(match[0], arguments), where))
    return found


def document_places() -> list[DocumentPlace]:
    """Each place that notes a wrong entry of a document."""
    found: list[DocumentPlace] = []
    for path in sorted([*ROOT.glob("src/case/*.?pp"), *ROOT.glob("src/advise/*.?pp")]):
        text = re.sub(r"//[^\n]*", lambda m: " " * len(m[0]), path.read_text(encoding="utf-8"))
        for match in re.finditer(r"\b(?:problem|push_back)(?=\()", text):
            arguments = _arguments(text, match.end() + 1)
            if match[0] == "push_back" and len(arguments) == 1 and arguments[0].startswith("{"):
                arguments = _arguments(arguments[0], 1)
            named = "problem" in text[match.start() - 12 : match.end()]
            if len(arguments) != 3 or not named or "std::string expected" in arguments[2] or "std::move(expected)" in arguments[2]:
                continue
            where = f"{path.relative_to(ROOT)}:{text.count(chr(10), 0, match.start()) + 1}"
            key = _pattern(arguments[0]) or "document"
            found.append(DocumentPlace(key, _pattern(arguments[1]), _pattern(arguments[2]), where))
    return found


def untested(refusals: set[Refusal], problems: set[Problem]) -> list[Place | DocumentPlace]:
    """Places that no test has made refuse."""
    return [*_untested_functions(refusals), *(p for p in document_places() if not any(map(p.told_by, problems)))]


def _untested_functions(seen: set[Refusal]) -> list[Place]:
    """Where a caller names the function, a refusal that another place explains does not count."""
    everywhere = places()
    named = [place for place in everywhere if place.function]
    by_name = {place: {r for r in seen if r.function == place.function and place.told_by(r)} for place in named}
    rest = seen - set().union(*by_name.values())
    return [p for p in everywhere if not (by_name[p] if p.function else any(map(p.told_by, rest)))]


def _advice(allowed: str) -> tuple[str, str]:
    for mark, cause, cure in CAUSES:
        if allowed.startswith(mark):
            return cause, f"{cure} {allowed}" if not cure.endswith("entry") else cure
    return "the input is not one of those that the function knows", f"give {allowed}"


def _document_advice(problem: Problem) -> tuple[str, str]:
    for text, marks in ((problem.value, STANDS), (problem.expected, EXPECTED)):
        for mark, cause, cure in marks:
            if mark in text and not (marks is STANDS and text.startswith('"')):
                return cause, f"{cure} {problem.expected}"
    return "the entry contradicts another one, or cannot be", f"give {problem.expected}"


def _row(*cells: str) -> str:
    return "| " + " | ".join(cell.replace("|", "\\|") for cell in cells) + " |"


def _shortest(found: set[Any]) -> list[Any]:
    """One of each kind, the shortest, in order."""
    shown: dict[tuple[str, ...], Any] = {}
    for one in sorted(found, key=lambda one: (len(str(one)), str(one))):
        shown.setdefault(one.kind(), one)
    return sorted(shown.values())


def page(refusals: set[Refusal], problems: set[Problem]) -> str:
    lines = [
        "# Every refused input, why, and what to do", "",
        "An impossible input raises `InputError` (C++ and Python) with the message `function: parameter = value; allowed: ...`, a wrong document",
        "`CaseError` with every wrong entry at once, `path: value; expected ...`; nothing is half changed. Both tables are made from what the",
        "tests made the library refuse, one row for each reason; numbers and names that depend on others are those of one test. The test",
        "`refusals/page` fails if a place in the sources refuses something that no test has made it refuse, or if this page tells otherwise.",
        "Write it anew with `cmake --build build/test --target record_errors`.", "",
        "## Functions", "",
        "| function | parameter | allowed | cause | cure |", "| --- | --- | --- | --- | --- |",
    ]  # fmt: skip
    lines += [_row(f"`{r.function}`", f"`{r.parameter}`", r.allowed, *_advice(r.allowed)) for r in _shortest(refusals)]
    lines += ["", "## Documents", "", "| entry | what stood there | expected | cause | cure |", "| --- | --- | --- | --- | --- |"]
    lines += [_row(f"`{p.path}`", _code(p.value), p.expected, *_document_advice(p)) for p in _shortest(problems)]
    return "\n".join(lines) + "\n"


def _code(text: str) -> str:
    return "`` " + "".join(c if c.isprintable() else "?" for c in text) + " ``"


def cells() -> list[list[str]]:
    rows = [line for line in PAGE.read_text(encoding="utf-8").splitlines() if line.startswith("| `")]
    return [[cell.replace("\\|", "|") for cell in re.split(r" (?<!\\)\| ", row.strip("| "))] for row in rows]


def told() -> tuple[set[Refusal], set[Problem]]:
    """What each row of the page says."""
    refusals = {Refusal(row[0].strip("`"), row[1].strip("`"), row[2]) for row in cells() if not row[1].startswith("`` ")}
    problems = {Problem(row[0].strip("`"), row[1][3:-3], row[2]) for row in cells() if row[1].startswith("`` ")}
    return refusals, problems


def main(action: str, log: str) -> int:
    recorded = parse(Path(log).read_text(encoding="utf-8", errors="replace").splitlines())
    if action == "write":
        PAGE.write_text(page(*recorded), encoding="utf-8")
    rows = {one.kind() for group in told() for one in group}
    stale = sorted(rows - {one.kind() for group in recorded for one in group})
    for row in stale:
        print("the page tells what no test provokes:", *row)
    left = untested(*recorded)
    for place in left:
        print("no test refuses", place)
    untold = [place for place in untested(*told()) if place not in left]
    for place in untold:
        print("the page does not tell of", place)
    print(f"{len(places())} places refuse an input, {len(document_places())} a document; {len(left)} of them in no test; {len(rows)} rows")
    return 1 if stale or left or untold else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
