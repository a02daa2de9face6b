"""fieldshaft on the command line: python -m fieldshaft assess FILE..."""

from __future__ import annotations

import argparse
import importlib
import json
import sys
from collections.abc import Iterable
from typing import Any

from fieldshaft._cases import Assessment, CaseError, Status, assess, read_case_file
from fieldshaft._errors import InputError

FINE, OBJECTION, BAD_INPUT = 0, 1, 2


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="python -m fieldshaft", description="Whether a tractor can run a PTO implement.")
    commands = parser.add_subparsers(dest="command", required=True)
    command = commands.add_parser(
        "assess",
        help="assess case files and print their reports",
        description="Assesses case files (JSON or TOML) and prints their reports. Exit status: 0 without a stop and "
        "without anything that is not known, 1 otherwise, 2 for input that cannot be read; of several files the worst.",
    )
    command.add_argument("files", nargs="+", metavar="FILE", help="a case document, .json or .toml")
    command.add_argument("--json", action="store_true", help="print JSON; a list if there are several files")
    command.add_argument("--units", choices=("metric", "us"), default="metric", help="units of the report")
    return parser


def _with_progress(files: list[str]) -> Iterable[str]:
    """The files; with a bar on a terminal where there are several."""
    if len(files) > 1 and sys.stderr.isatty():
        try:
            tqdm = importlib.import_module("tqdm").tqdm
        except ImportError:
            return files
        bar: Iterable[str] = tqdm(files, unit="case", file=sys.stderr)
        return bar
    return files


def _assess(path: str) -> Assessment | None:
    """The assessment of a file; None after a message if it cannot be read."""
    try:
        return assess(read_case_file(path))
    except CaseError as error:
        for problem in error.problems:
            print(f"{path}: {problem}", file=sys.stderr)
    except (InputError, OSError) as error:
        print(f"{path}: {error.strerror or error if isinstance(error, OSError) else error}", file=sys.stderr)
    return None


def _status(assessment: Assessment | None) -> int:
    if assessment is None:
        return BAD_INPUT
    return FINE if assessment.verdict in (Status.ok, Status.caution) else OBJECTION


def _print_json(results: list[tuple[str, Assessment]], units: str, several: bool) -> None:
    reports: list[dict[str, Any]] = [{"file": path, **json.loads(a.to_json(units))} for path, a in results]
    if several:
        print(json.dumps(reports, ensure_ascii=False, indent=2))
    elif reports:
        print(results[0][1].to_json(units))


def _print_text(results: list[tuple[str, Assessment]], units: str, several: bool) -> None:
    for i, (path, assessment) in enumerate(results):
        if several:
            print(f"{chr(10) if i else ''}== {path} ==\n")
        print(assessment.to_text(units), end="")


def main(arguments: list[str] | None = None) -> int:
    options = _parser().parse_args(arguments)
    outcomes = [(path, _assess(path)) for path in _with_progress(options.files)]
    results = [(path, assessment) for path, assessment in outcomes if assessment is not None]
    (_print_json if options.json else _print_text)(results, options.units, len(options.files) > 1)
    return max(_status(assessment) for _, assessment in outcomes)


if __name__ == "__main__":
    try:
        sys.exit(main())
    except BrokenPipeError:  # the reader of a pipe has seen enough
        sys.stderr.close()
        sys.exit(FINE)
    except KeyboardInterrupt:
        sys.exit(130)
