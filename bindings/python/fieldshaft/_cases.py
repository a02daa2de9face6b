"""Cases and their assessment."""

from __future__ import annotations

from collections.abc import Mapping
from os import PathLike
from typing import TYPE_CHECKING, Any

from fieldshaft import _core
from fieldshaft._documents import Document, document_text, read_document_file
from fieldshaft._frames import table
from fieldshaft._records import Record, fill, given
from fieldshaft._envelopes import (
    BranchEnvelopeOfCase,
    StateEnvelope,
    TurnAtPitch,
    branches_of,
    envelope_frame,
    envelopes_of,
    turn_curve_of,
    turn_frame,
)
from fieldshaft._reports import Report, ReportedValue, Status, reported

if TYPE_CHECKING:
    from fieldshaft._frames import DataFrame


class Case(Document):
    """A tractor, an implement, the driveline between them and the range in which they work.

    Made by read_case or read_case_file. Two cases are equal if they hold the same data.
    """

    __slots__ = ()
    _kind = "case"

    def __repr__(self) -> str:
        document = self.to_dict()
        tractor, implement = (document.get(part, {}).get("name", "unnamed") for part in ("tractor", "implement"))
        return f"<Case {document.get('title', '')!r}: {tractor} with {implement}>"


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
        What to change, in words.
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
                reported(document.get("value")),
                reported(document.get("limit")),
                document.get("margin"),
                tuple(entry["text"] for entry in document.get("advice", ())),
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


def _row(finding: Finding) -> tuple[Any, ...]:
    """A finding in the order of Assessment.to_frame."""
    value, limit = ((number.text, number.si, number.unit) if number else (None,) * 3 for number in (finding.value, finding.limit))
    return finding.id, finding.title, str(finding.status), value[0], limit[0], finding.margin, value[1], limit[1], value[2]


class Assessment(Report):
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
    what_to_change : tuple of str
        What to do about what stands in the way.
    what_to_state : tuple of str
        Entries of the case document for which findings wait.
    not_examined : tuple
        Checks that do not apply to this case.
    rests_on_memory : bool
        Whether a check that passes rests on a limit that is remembered and not yet verified.
    envelopes : tuple of StateEnvelope
        What is proved of the driveline over each state.
    branches : tuple of BranchEnvelopeOfCase
        The same of each branch.
    turn_curve : tuple of TurnAtPitch
        How far one may turn at each pitch.
    certificate : tuple of str
        What is proved, in words.
    """

    __slots__ = ("case", "findings")

    def __init__(self, case: Case) -> None:
        super().__init__(_core.assess(case._handle))
        self.case = case
        self.findings = tuple(Finding(entry) for entry in self._document["findings"])

    def _more(self) -> dict[str, Any]:
        return {"case": self.case}

    def _restore(self, more: dict[str, Any]) -> None:
        self.case = more["case"]
        self.findings = tuple(Finding(entry) for entry in self._document["findings"])

    @property
    def verdict(self) -> Status:
        """The worst finding."""
        return Status(self._document["verdict"])

    @property
    def headline(self) -> str:
        """The verdict in words."""
        return str(self._document["headline"])

    @property
    def not_examined(self) -> tuple[Any, ...]:
        """Checks that do not apply to this case."""
        return tuple(self._document.get("not_examined", ()))

    @property
    def what_to_change(self) -> tuple[str, ...]:
        """What stands in the way and what to do about it, in words, in the order of the report."""
        return tuple(self._document["what_to_change"])

    @property
    def what_to_state(self) -> tuple[str, ...]:
        """Entries of the case document for which findings wait, in the order of the report."""
        return tuple(entry["path"] for entry in self._document["what_to_state"])

    @property
    def rests_on_memory(self) -> bool:
        """Whether a check that passes rests on a limit that is remembered and not yet verified."""
        return bool(self._document["rests_on_memory"])

    @property
    def envelopes(self) -> tuple[StateEnvelope, ...]:
        """What is proved of the driveline over each state that is fully stated."""
        return envelopes_of(self._document["geometry"])

    @property
    def branches(self) -> tuple[BranchEnvelopeOfCase, ...]:
        """What is proved of each branch that is fully stated, over its folding."""
        return branches_of(self._document["geometry"])

    @property
    def turn_curve(self) -> tuple[TurnAtPitch, ...]:
        """How far one may turn at each pitch before the first rule objects; trailed machines only."""
        return turn_curve_of(self._document["geometry"])

    @property
    def certificate(self) -> tuple[str, ...]:
        """What is proved of the driveline, in words."""
        return tuple(self._document["geometry"]["certificate"])

    def envelope_frame(self) -> DataFrame:
        """The envelopes as a pandas data frame: a row for each extreme of each state, in degrees and millimetres.

        The column "unit" is that of bound, attained, gap and moves.
        """
        return envelope_frame(self.envelopes)

    def turn_frame(self) -> DataFrame:
        """The turn curve as a pandas data frame, in degrees."""
        return turn_frame(self.turn_curve)

    def find(self, check: str) -> Finding | None:
        """The finding of a check by its id; None if that check does not apply."""
        return next((finding for finding in self.findings if finding.id == check), None)

    def count(self, status: Status | str) -> int:
        """How many findings have a status."""
        wanted = Status(status)
        return sum(finding.status is wanted for finding in self.findings)

    def to_frame(self) -> DataFrame:
        """The findings as a pandas data frame, one row each; numbers are in SI units, which a column names."""
        names = ("id", "title", "status", "value", "limit", "margin [-]", "value [SI]", "limit [SI]", "SI unit")
        return table(map(_row, self.findings), names)

    def __repr__(self) -> str:
        return f"<Assessment {self._document['title']!r}: {self.headline}>"

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
    return Case(document_text("read_case", text))


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
    return read_case(read_document_file("read_case_file", path))


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


def case_json_schema() -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) of the case document."""
    import json

    schema: dict[str, Any] = json.loads(_core.case_json_schema())
    return schema


__all__ = ["Assessment", "Case", "Finding", "assess", "case_json_schema", "read_case", "read_case_file"]
