"""Cases, their assessment, and reports."""

from __future__ import annotations

import json
from collections.abc import Mapping
from os import PathLike
from pathlib import Path
from typing import Any

from fieldshaft import _core
from fieldshaft._records import Name, Record, fill, given


class Status(Name):
    """What a check found, from the best to the worst. The verdict of a case is its worst finding."""

    ok = "ok"
    caution = "caution"
    not_known = "not_known"
    stop = "stop"


class CaseProblem(Record):
    """One wrong entry of a case document.

    Attributes
    ----------
    path : str
        Where it stands, such as tractor.pto.gears[1].pto_speed; empty for the document itself.
    value : str
        As written; "missing" where nothing stands.
    expected : str
        In words, with the unit and the allowed range.
    """

    __slots__ = ("path", "value", "expected")
    path: str
    value: str
    expected: str

    def __init__(self, path: str, value: str, expected: str) -> None:
        fill(self, (path, value, expected))

    def __str__(self) -> str:
        return f"{self.path or 'document'}: {self.value}; expected {self.expected}"


class CaseError(ValueError):
    """A case document that cannot be read.

    Attributes
    ----------
    problems : tuple of CaseProblem
        Every wrong entry at once.
    """

    def __init__(self, problems: Any) -> None:
        super().__init__(problems)
        self.problems = tuple(p if isinstance(p, CaseProblem) else CaseProblem(*p) for p in problems)

    def __str__(self) -> str:
        return "\n".join(map(str, self.problems))


_core.register_case_error(CaseError)


class Case:
    """A tractor, an implement, the driveline between them and the range in which they work.

    Made by read_case or read_case_file. Two cases are equal if they hold the same data.
    """

    __slots__ = ("_handle", "_text")

    def __init__(self, text: str) -> None:
        self._handle = _core.read_case(text)
        self._text: str | None = None

    def to_json(self) -> str:
        """The case as a JSON document that reads back to the same case; quantities are in SI units."""
        if self._text is None:
            self._text = _core.write_case(self._handle)
        return self._text

    def to_dict(self) -> dict[str, Any]:
        """The case document as a dictionary."""
        document: dict[str, Any] = json.loads(self.to_json())
        return document

    def __eq__(self, other: object) -> bool:
        return self.to_json() == other.to_json() if isinstance(other, Case) else NotImplemented

    def __hash__(self) -> int:
        return hash(self.to_json())

    def __reduce__(self) -> tuple[Any, ...]:
        return Case, (self.to_json(),)

    def __repr__(self) -> str:
        document = self.to_dict()
        tractor, implement = (document.get(part, {}).get("name", "unnamed") for part in ("tractor", "implement"))
        return f"<Case {document.get('title', '')!r}: {tractor} with {implement}>"


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


def _reported(entry: Any) -> ReportedValue | None:
    if not isinstance(entry, Mapping) or "si" not in entry:
        return None
    return ReportedValue(entry["si"], entry.get("unit", ""), entry.get("text", ""))


class Finding(Record):
    """The result of one check.

    Attributes
    ----------
    id : str
        Stable name of the check, such as "pto.speed".
    title : str
        The check in words.
    status : Status
        What it found.
    text : str
        What was found, in words.
    value, limit : ReportedValue or None
        What was checked and against what; None where there is no number.
    margin : float or None
        Room between value and limit as a share of the limit: positive on the good side, negative beyond.
    advice : tuple of str
        What to change.
    missing : tuple of str
        Entries of the case document that would have to be stated.
    document : dict
        The whole finding as it stands in the JSON report.
    """

    __slots__ = ("id", "title", "status", "text", "value", "limit", "margin", "advice", "missing", "document")
    id: str
    title: str
    status: Status
    text: str
    value: ReportedValue | None
    limit: ReportedValue | None
    margin: float | None
    advice: tuple[str, ...]
    missing: tuple[str, ...]
    document: dict[str, Any]

    def __init__(self, document: Mapping[str, Any]) -> None:
        fill(
            self,
            (
                document["id"],
                document["title"],
                Status(document["status"]),
                document["text"],
                _reported(document.get("value")),
                _reported(document.get("limit")),
                document.get("margin"),
                tuple(document.get("advice", ())),
                tuple(document.get("missing", ())),
                dict(document),
            ),
        )

    def __reduce__(self) -> tuple[Any, ...]:
        return Finding, (self.document,)

    def __hash__(self) -> int:
        return hash((self.id, self.status, self.text))

    def to_dict(self) -> dict[str, Any]:
        """The finding as it stands in the JSON report."""
        return dict(self.document)

    def __repr__(self) -> str:
        return f"<Finding {self.id}: {self.status} - {self.text}>"


class Assessment:
    """The findings of a case.

    Attributes
    ----------
    case : Case
        What was assessed.
    verdict : Status
        The worst finding.
    headline : str
        The verdict in words.
    findings : tuple of Finding
        In the order of the report.
    not_examined : tuple
        Checks that do not apply to this case.
    rests_on_memory : bool
        Whether a check that passes rests on a limit that is remembered and not yet verified.
    """

    __slots__ = ("case", "_handle", "_report", "verdict", "headline", "findings", "not_examined", "rests_on_memory")

    def __init__(self, case: Case) -> None:
        self.case = case
        self._handle = _core.assess(case._handle)
        self._report: dict[str, Any] = json.loads(_core.to_json(self._handle, "metric"))
        self.verdict = Status(self._report["verdict"])
        self.headline: str = self._report["headline"]
        self.findings = tuple(Finding(entry) for entry in self._report["findings"])
        self.not_examined = tuple(self._report.get("not_examined", ()))
        self.rests_on_memory: bool = self._report["rests_on_memory"]

    def find(self, check: str) -> Finding | None:
        """The finding of a check by its id; None if that check does not apply."""
        return next((finding for finding in self.findings if finding.id == check), None)

    def count(self, status: Status | str) -> int:
        """How many findings have a status."""
        wanted = Status(status)
        return sum(finding.status is wanted for finding in self.findings)

    def to_dict(self) -> dict[str, Any]:
        """The report as a dictionary, SI numbers and texts side by side."""
        document: dict[str, Any] = json.loads(self.to_json())
        return document

    def to_json(self, units: str = "metric") -> str:
        """The report as a JSON document."""
        return str(_core.to_json(self._handle, units))

    def to_text(self, units: str = "metric") -> str:
        """The report as plain text."""
        return str(_core.to_text(self._handle, units))

    def to_frame(self) -> Any:
        """The findings as a pandas data frame, one row each; numbers are in SI units, which a column names."""
        from fieldshaft._extras import need

        pandas = need("pandas", "data frames")
        return pandas.DataFrame(
            {
                "id": [f.id for f in self.findings],
                "title": [f.title for f in self.findings],
                "status": [str(f.status) for f in self.findings],
                "value": [f.value.text if f.value else None for f in self.findings],
                "limit": [f.limit.text if f.limit else None for f in self.findings],
                "margin [-]": [f.margin for f in self.findings],
                "value [SI]": [f.value.si if f.value else None for f in self.findings],
                "limit [SI]": [f.limit.si if f.limit else None for f in self.findings],
                "SI unit": [f.value.unit if f.value else None for f in self.findings],
            }
        )

    def __eq__(self, other: object) -> bool:
        return self._report == other._report if isinstance(other, Assessment) else NotImplemented

    def __hash__(self) -> int:
        return hash(self.to_json())

    def __reduce__(self) -> tuple[Any, ...]:
        return Assessment, (self.case,)

    def __repr__(self) -> str:
        return f"<Assessment {self._report['title']!r}: {self.headline}>"

    def _repr_html_(self) -> str:
        from html import escape

        rows = "".join(
            f"<tr><td>{escape(str(f.status))}</td><td style='text-align:left'>{escape(f.title)}</td>"
            f"<td>{escape(f.value.text if f.value else '')}</td><td>{escape(f.limit.text if f.limit else '')}</td>"
            f"<td style='text-align:left'>{escape(f.text)}</td></tr>"
            for f in self.findings
        )
        head = "".join(f"<th>{name}</th>" for name in ("status", "check", "value", "limit", "finding"))
        return f"<p><b>{escape(self.headline)}</b></p><table><tr>{head}</tr>{rows}</table>"


def read_case(text: str | Mapping[str, Any]) -> Case:
    """A case from its document.

    Parameters
    ----------
    text : str or mapping
        The JSON document, or the same tree as a dictionary.

    Returns
    -------
    Case

    Raises
    ------
    CaseError
        With every wrong entry of the document at once.
    """
    if isinstance(text, Mapping):
        text = json.dumps(text, ensure_ascii=False, default=str)
    if not isinstance(text, str):
        raise TypeError(f"read_case: text{given(text)}; expected a JSON document or a mapping")
    return Case(text)


def read_case_file(path: str | PathLike[str]) -> Case:
    """A case from a file: TOML if its name ends in .toml, JSON otherwise.

    Parameters
    ----------
    path : str or path
        The file, in UTF-8.

    Returns
    -------
    Case

    Raises
    ------
    CaseError
        With every wrong entry of the document at once.
    OSError
        If the file cannot be read.
    """
    data = Path(path).read_bytes()
    try:
        text = data.decode("utf-8-sig")
        if Path(path).suffix.lower() != ".toml":
            return read_case(text)
        import tomllib

        return read_case(tomllib.loads(text))
    except UnicodeDecodeError as error:
        raise CaseError([("", f"byte {error.start}", "text in UTF-8")]) from None
    except ValueError as error:
        if isinstance(error, CaseError):
            raise
        raise CaseError([("", str(error), "a TOML document")]) from None


def assess(case: Case) -> Assessment:
    """Whether the tractor of a case can run its implement through the whole working range.

    Parameters
    ----------
    case : Case
        From read_case or read_case_file.

    Returns
    -------
    Assessment
        Missing data give findings that are not known, never a pass.
    """
    if not isinstance(case, Case):
        raise TypeError(f"assess: case{given(case)}; expected a Case, see read_case")
    return Assessment(case)


def to_text(assessment: Assessment, units: str = "metric") -> str:
    """The report of an assessment as plain text; `units` is "metric" or "us"."""
    return assessment.to_text(units)


def to_json(assessment: Assessment, units: str = "metric") -> str:
    """The report of an assessment as a JSON document, SI numbers and texts side by side."""
    return assessment.to_json(units)


def case_json_schema() -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) of the case document."""
    schema: dict[str, Any] = json.loads(_core.case_json_schema())
    return schema


__all__ = [
    "Assessment",
    "Case",
    "CaseError",
    "CaseProblem",
    "Finding",
    "ReportedValue",
    "Status",
    "assess",
    "case_json_schema",
    "read_case",
    "read_case_file",
    "to_json",
    "to_text",
]
