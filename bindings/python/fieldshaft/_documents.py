"""Documents that describe machines: how they are read, and what every object made from one can do."""

from __future__ import annotations

import json
from collections.abc import Mapping
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any, Self

from fieldshaft import _core
from fieldshaft._frames import document_columns, frame
from fieldshaft._records import Record, fill, given

if TYPE_CHECKING:
    from fieldshaft._frames import DataFrame


class CaseProblem(Record):
    """One wrong entry of a case or farm document.

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
    """A case or farm document that cannot be read.

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


class Document:
    """What was read from a document. Two are equal if they hold the same data."""

    __slots__ = ("_handle", "_text")
    _kind = "document"

    def __init__(self, text: str) -> None:
        self._handle = getattr(_core, f"read_{self._kind}")(text)
        self._text: str | None = None

    @classmethod
    def _of(cls, handle: Any) -> Self:
        """The Python object of one that C++ made."""
        made = object.__new__(cls)
        made._handle = handle
        made._text = None
        return made

    def to_json(self) -> str:
        """The document as JSON that reads back to the same data; quantities are in SI units."""
        if self._text is None:
            self._text = str(getattr(_core, f"write_{self._kind}")(self._handle))
        return self._text

    def to_dict(self) -> dict[str, Any]:
        """The document as a dictionary."""
        document: dict[str, Any] = json.loads(self.to_json())
        return document

    def to_frame(self) -> DataFrame:
        """The document as a pandas data frame of one row: a column for each entry, with its SI unit in the name."""
        return frame([dict(document_columns(self.to_dict()))])

    def __eq__(self, other: object) -> bool:
        return self.to_json() == other.to_json() if isinstance(other, Document) and type(other) is type(self) else NotImplemented

    def __hash__(self) -> int:
        return hash(self.to_json())

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), (self.to_json(),)

    def _repr_html_(self) -> str:
        from html import escape

        text = json.dumps(self.to_dict(), indent=2, ensure_ascii=False)
        return f"<details><summary>{escape(repr(self))}</summary><pre>{escape(text)}</pre></details>"


def document_text(function: str, text: str | Mapping[str, Any]) -> str:
    """The JSON text of what a user handed in."""
    if isinstance(text, Mapping):
        return json.dumps(text, ensure_ascii=False, default=str)
    if not isinstance(text, str):
        raise TypeError(f"{function}: text{given(text)}; expected a JSON document or a mapping")
    return text


def read_document_file(function: str, path: str | PathLike[str]) -> str | dict[str, Any]:
    """The content of a file: the tree of a TOML file, the text of any other."""
    if not isinstance(path, str | PathLike):
        raise TypeError(f"{function}: path{given(path)}; expected the name of a file")
    data = Path(path).read_bytes()
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise CaseError([("", f"no text at byte {error.start}", "text in UTF-8")]) from None
    if Path(path).suffix.lower() != ".toml":
        return text
    import tomllib

    try:
        return tomllib.loads(text)
    except ValueError as error:
        raise CaseError([("", str(error), "a TOML document")]) from None
    except RecursionError:
        raise CaseError([("", "lists within lists without end", "a TOML document")]) from None
