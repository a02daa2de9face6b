"""Farms: what runs with what, what stands still when a tractor is down, and what pays."""

from __future__ import annotations

from collections.abc import Mapping
from os import PathLike
from typing import Any

from fieldshaft import _core
from fieldshaft._documents import Document, document_text, read_document_file


class Farm(Document):
    """Tractors, implements and drivelines of a farm, what they cost, and the changes that it weighs.

    Made by read_farm or read_farm_file. Two farms are equal if they hold the same data.
    """

    __slots__ = ()
    _kind = "farm"

    def __repr__(self) -> str:
        document = self.to_dict()
        counts = ", ".join(f"{len(document.get(part, ()))} {part}" for part in ("tractors", "implements", "drivelines", "options"))
        return f"<Farm {document.get('title', '')!r}: {counts}>"


def read_farm(text: str | Mapping[str, Any]) -> Farm:
    """A farm from its document.

    Parameters
    ----------
    text : str or mapping
        The JSON document, or the same tree as a dictionary.

    Returns
    -------
    Farm

    Raises
    ------
    CaseError
        With every wrong entry of the document at once.
    """
    return Farm(document_text("read_farm", text))


def read_farm_file(path: str | PathLike[str]) -> Farm:
    """A farm from a file: TOML if its name ends in .toml, JSON otherwise.

    Parameters
    ----------
    path : str or path
        The file, in UTF-8.

    Returns
    -------
    Farm

    Raises
    ------
    CaseError
        With every wrong entry of the document at once.
    OSError
        If the file cannot be read.
    """
    return read_farm(read_document_file(path))


def farm_json_schema() -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) of the farm document."""
    import json

    schema: dict[str, Any] = json.loads(_core.farm_json_schema())
    return schema


def screened_checks() -> tuple[str, ...]:
    """Ids of the checks at which a screening looks: all that needs no geometry of the driveline and no strength.

    Examples
    --------
    >>> from fieldshaft import *
    >>> screened_checks()[0]
    'pto.speed'
    """
    return tuple(_core.screened_checks())


__all__ = ["Farm", "farm_json_schema", "read_farm", "read_farm_file", "screened_checks"]
