"""fieldshaft on the command line: python -m fieldshaft assess FILE..., python -m fieldshaft study FILE."""

from __future__ import annotations

import argparse
import importlib
import io
import json
import sys
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

from fieldshaft import __version__
from fieldshaft._cases import assess, read_case_file
from fieldshaft._documents import CaseError, CaseProblem
from fieldshaft._errors import InputError
from fieldshaft._farms import FarmStudy, read_farm_file, study_farm
from fieldshaft._reports import Report, Status

FINE, OBJECTION, BAD_INPUT = 0, 1, 2

#: Forms of a report that go into files, with the ending that their names have in a folder.
PAGES = {"html": ".html", "markdown": ".md"}


def _add_forms(command: argparse.ArgumentParser) -> None:
    forms = command.add_mutually_exclusive_group()
    forms.add_argument("--json", action="store_true", help="print JSON; a list if there are several files")
    forms.add_argument("--html", metavar="PATH", help="write an HTML page into this file; several go into this folder")
    forms.add_argument("--markdown", metavar="PATH", help="the same as Markdown")
    command.add_argument("--units", choices=("metric", "us"), default="metric", help="units of the report")


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python -m fieldshaft",
        description="Whether a tractor can run a PTO implement through its whole working range.",
        epilog="Each command explains itself: python -m fieldshaft assess --help",
    )
    parser.add_argument("--version", action="version", version=f"fieldshaft {__version__}")
    commands = parser.add_subparsers(dest="command", required=True)
    command = commands.add_parser(
        "assess",
        help="assess case files and print their reports",
        description="Assesses case files (JSON or TOML) and prints their reports. Exit status: 0 without a stop and "
        "without anything that is not known, 1 otherwise, 2 for input that cannot be read; of several files the worst.",
    )
    command.add_argument("files", nargs="+", metavar="FILE", help="a case document, .json or .toml")
    _add_forms(command)
    command = commands.add_parser(
        "study",
        help="study a farm: what runs with what, backup, and what pays",
        description="Studies farm files (JSON or TOML) and prints one page each. Exit status: 0 if every implement has a "
        "tractor that runs it, 1 otherwise, 2 for input that cannot be read; of several files the worst.",
    )
    command.add_argument("files", nargs="+", metavar="FILE", help="a farm document, .json or .toml")
    command.add_argument("--screening", action="store_true", help="only the checks that need no geometry; for large fleets")
    command.add_argument("--remedies", action="store_true", help="also search what brings each other pair to work")
    command.add_argument("--threads", type=int, default=0, help="to share the work out among; 0: all that the machine has")
    _add_forms(command)
    return parser


def _with_progress(files: list[str]) -> Iterable[str]:
    """The files; with a bar on a terminal where there are several."""
    if len(files) > 1 and sys.stderr.isatty():
        try:
            tqdm = importlib.import_module("tqdm").tqdm
        except ImportError:
            return files
        bar: Iterable[str] = tqdm(files, unit="file", file=sys.stderr)
        return bar
    return files


def _worked(path: str, work: Callable[[str], Report]) -> Report | None:
    """The report of a file; None after a message if it cannot be read."""
    try:
        return work(path)
    except CaseError as error:
        for problem in error.problems:
            print(f"{path}: {problem}{_other_command(problem)}", file=sys.stderr)
    except (InputError, OSError) as error:
        print(f"{path}: {error.strerror or error if isinstance(error, OSError) else error}", file=sys.stderr)
    return None


def _other_command(problem: CaseProblem) -> str:
    """What to call for a document of the other kind."""
    if problem.path == "schema" and problem.value.startswith('"fieldshaft-'):
        kinds = {"case": "assess", "farm": "study"}
        kind = problem.value.removeprefix('"fieldshaft-').partition("/")[0]
        if kind in kinds and f"fieldshaft-{kind}/" not in problem.expected:
            return f"; for a {kind} call: python -m fieldshaft {kinds[kind]}"
    return ""


def _status(report: Report | None) -> int:
    if report is None:
        return BAD_INPUT
    if isinstance(report, FarmStudy):
        return OBJECTION if report.never_run else FINE
    return FINE if getattr(report, "verdict", None) in (Status.ok, Status.caution) else OBJECTION


Results = list[tuple[str, Report]]


def _print_json(results: Results, units: str, several: bool) -> None:
    reports: list[dict[str, Any]] = [{"file": path, **json.loads(report.to_json(units))} for path, report in results]
    if several:
        print(json.dumps(reports, ensure_ascii=False, indent=2))
    elif reports:
        print(results[0][1].to_json(units), end="")


def _print_text(results: Results, units: str, several: bool) -> None:
    for i, (path, report) in enumerate(results):
        if several:
            print(f"{chr(10) if i else ''}== {path} ==\n")
        print(report.to_text(units), end="")


def _write_pages(results: Results, form: str, target: Path, units: str, several: bool) -> None:
    """One file, or one in a folder for each of several files, which keep their names."""
    if several:
        target.mkdir(parents=True, exist_ok=True)
    for path, report in results:
        place = target / _page_name(path, form) if several or target.is_dir() else target
        place.write_text(getattr(report, f"to_{form}")(units), encoding="utf-8")


def _form(options: argparse.Namespace) -> str | None:
    """Of the pages that are asked for."""
    return next((name for name in PAGES if getattr(options, name) is not None), None)


def _page_name(path: str, form: str) -> str:
    return Path(path).stem + PAGES[form]


def _check_pages(parser: argparse.ArgumentParser, options: argparse.Namespace) -> None:
    """Refuses, before any work, pages that would be written over each other."""
    form = _form(options)
    pages: dict[str, str] = {}
    for path in options.files if form else ():
        other = pages.setdefault(_page_name(path, form or ""), path)
        if other is not path:
            parser.error(f"{other} and {path} would both be written as {_page_name(path, form or '')}")


def _write(results: Results, options: argparse.Namespace, several: bool) -> int:
    form = _form(options)
    if form is None:
        (_print_json if options.json else _print_text)(results, options.units, several)
        return FINE
    target = Path(getattr(options, form))
    try:
        _write_pages(results, form, target, options.units, several)
    except OSError as error:
        print(f"{error.filename or target}: {error.strerror or error}", file=sys.stderr)
        return BAD_INPUT
    return FINE


def _study(options: argparse.Namespace) -> Callable[[str], Report]:
    depth = "screening" if options.screening else "certified"
    return lambda path: study_farm(read_farm_file(path), depth, options.remedies, options.threads)


def main(arguments: list[str] | None = None) -> int:
    parser = _parser()
    options = parser.parse_args(arguments)
    _check_pages(parser, options)
    work = _study(options) if options.command == "study" else lambda path: assess(read_case_file(path))
    outcomes = [(path, _worked(path, work)) for path in _with_progress(options.files)]
    results = [(path, report) for path, report in outcomes if report is not None]
    written = _write(results, options, len(options.files) > 1)
    return max(written, *(_status(report) for _, report in outcomes))


def _forgive_terminals() -> None:
    """A terminal may lack ° and ·, and then shows a question mark."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")


if __name__ == "__main__":
    _forgive_terminals()
    try:
        sys.exit(main())
    except BrokenPipeError:  # the reader of a pipe has seen enough
        sys.stderr.close()
        sys.exit(FINE)
    except KeyboardInterrupt:
        sys.exit(130)
