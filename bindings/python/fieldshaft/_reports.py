"""Reports: what the library found, as text, Markdown, HTML, JSON or a dictionary."""

from __future__ import annotations

import json
import re
from typing import Any

from fieldshaft import _core
from fieldshaft._errors import InputError
from fieldshaft._records import Record, fill, given
from fieldshaft.si import Status as Status

FORMS = ("text", "markdown", "html", "json")
UNITS = ("metric", "us")


class ReportedValue(Record):
    """A number of a report.

    Attributes
    ----------
    si : float
        In SI units.
    unit : str
        The SI unit; empty for a plain number.
    text : str
        As the report prints it.
    """

    __slots__ = ("si", "unit", "text")
    si: float
    unit: str
    text: str

    def __init__(self, si: float, unit: str, text: str) -> None:
        fill(self, (si, unit, text))

    def __str__(self) -> str:
        return self.text


def reported(entry: Any) -> ReportedValue | None:
    """A number of a JSON report; None where there is none."""
    if not isinstance(entry, dict) or "si" not in entry:
        return None
    return ReportedValue(entry["si"], entry.get("unit", ""), entry.get("text", ""))


class Report:
    """What the library found. It stays as it was made: it compares by its content, and pickles."""

    __slots__ = ("_handle", "_written", "_document")

    def __init__(self, handle: Any) -> None:
        self._handle = handle
        self._written: dict[tuple[str, str], str] = {}
        self._document: dict[str, Any] = json.loads(self._write("json", "metric"))

    def _write(self, form: str, units: str) -> str:
        if not isinstance(units, str):
            raise TypeError(f"to_{form}: units{given(units)}; expected one of: {', '.join(UNITS)}")
        if units not in UNITS:
            raise InputError(f"to_{form}", "units", json.dumps(units), ", ".join(UNITS))
        key = (form, units)
        if key not in self._written:
            self._written[key] = getattr(_core, f"to_{form}")(self._handle, units)
        return self._written[key]

    def to_text(self, units: str = "metric") -> str:
        """The report as plain text."""
        return self._write("text", units)

    def to_markdown(self, units: str = "metric") -> str:
        """The report as Markdown."""
        return self._write("markdown", units)

    def to_html(self, units: str = "metric") -> str:
        """The report as one HTML document that needs nothing beside it."""
        return self._write("html", units)

    def to_json(self, units: str = "metric") -> str:
        """The report as a JSON document, SI numbers and texts side by side."""
        return self._write("json", units)

    def to_dict(self) -> dict[str, Any]:
        """The report as a dictionary, SI numbers and texts side by side."""
        document: dict[str, Any] = json.loads(self.to_json())
        return document

    def _more(self) -> dict[str, Any]:
        """What a pickle must hold beside the texts."""
        return {}

    def _restore(self, more: dict[str, Any]) -> None:
        """Takes back what a pickle held."""

    def __eq__(self, other: object) -> bool:
        return self._document == other._document if isinstance(other, Report) and type(other) is type(self) else NotImplemented

    def __hash__(self) -> int:
        return hash((type(self), self.to_json()))

    def __reduce__(self) -> tuple[Any, ...]:
        for form in FORMS:
            for units in UNITS:
                self._write(form, units)
        return _restored, (type(self), self._written, self._more())

    def _repr_html_(self) -> str:
        """The body of the HTML report, without the document's own styles."""
        body = re.search(r"<body[^>]*>(.*)</body>", self.to_html(), re.S)
        return body[1] if body else self.to_html()


def _restored(cls: type[Report], written: dict[tuple[str, str], str], more: dict[str, Any]) -> Report:
    report = object.__new__(cls)
    report._handle = None
    report._written = dict(written)
    report._document = json.loads(written["json", "metric"])
    report._restore(more)
    return report


def _checked(function: str, report: Any) -> Report:
    if not isinstance(report, Report):
        raise TypeError(f"{function}: report{given(report)}; expected an Assessment or another report")
    return report


def to_text(report: Report, units: str = "metric") -> str:
    """A report as plain text; `units` is "metric" or "us"."""
    return _checked("to_text", report).to_text(units)


def to_markdown(report: Report, units: str = "metric") -> str:
    """A report as Markdown; `units` is "metric" or "us"."""
    return _checked("to_markdown", report).to_markdown(units)


def to_html(report: Report, units: str = "metric") -> str:
    """A report as one HTML document that needs nothing beside it; `units` is "metric" or "us"."""
    return _checked("to_html", report).to_html(units)


def to_json(report: Report, units: str = "metric") -> str:
    """A report as a JSON document, SI numbers and texts side by side."""
    return _checked("to_json", report).to_json(units)
