"""Farms: what runs with what, what stands still when a tractor is down, and what pays."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from os import PathLike
from typing import TYPE_CHECKING, Any

from fieldshaft import _core
from fieldshaft._advice import RemedyOptions
from fieldshaft._cases import Assessment, Case, assess
from fieldshaft._documents import Document, document_text, read_document_file
from fieldshaft._errors import InputError
from fieldshaft._frames import document_columns, frame, table
from fieldshaft._records import given
from fieldshaft._reports import Report, Status

if TYPE_CHECKING:
    from fieldshaft._frames import DataFrame

#: The lists of a farm document.
PARTS = ("tractors", "implements", "drivelines", "options")


class Farm(Document):
    """Tractors, implements and drivelines of a farm, what they cost, and the changes that it weighs.

    Made by read_farm or read_farm_file. Two farms are equal if they hold the same data.
    """

    __slots__ = ()
    _kind = "farm"

    def names(self, part: str) -> tuple[str, ...]:
        """The names of its "tractors", "implements", "drivelines" or "options", in their order."""
        return tuple(entry["name"] for entry in self.to_dict().get(part, ()))

    def to_frame(self, part: str = "tractors") -> DataFrame:
        """Its "tractors", "implements", "drivelines" or "options" as a pandas data frame, one row each.

        A column for each entry of the document, with its SI unit in the name.
        """
        if part not in PARTS:
            raise InputError("to_frame", "part", repr(part), ", ".join(PARTS))
        return frame(dict(document_columns(entry)) for entry in self.to_dict().get(part, ()))

    def __repr__(self) -> str:
        document = self.to_dict()
        counts = ", ".join(f"{len(document.get(part, ()))} {part}" for part in PARTS)
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
    return read_farm(read_document_file("read_farm_file", path))


def farm_json_schema() -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) of the farm document."""
    import json

    schema: dict[str, Any] = json.loads(_core.farm_json_schema())
    return schema


class FarmStudy(Report):
    """What runs with what on a farm, what stands still when tractors are down, and what pays.

    Attributes
    ----------
    farm : Farm
        What was studied.
    tractors, implements : tuple of str
        Names, in the order of the farm.
    never_run : tuple of str
        Implements that no tractor runs.
    """

    __slots__ = ("farm",)

    def __init__(self, farm: Farm, handle: Any) -> None:
        super().__init__(handle)
        self.farm = farm

    def _more(self) -> dict[str, Any]:
        return {"farm": self.farm}

    def _restore(self, more: dict[str, Any]) -> None:
        self.farm = more["farm"]

    @property
    def tractors(self) -> tuple[str, ...]:
        """Names, in the order of the farm."""
        return tuple(self._document["tractors"])

    @property
    def implements(self) -> tuple[str, ...]:
        """Names, in the order of the farm."""
        return tuple(self._document["implements"])

    @property
    def never_run(self) -> tuple[str, ...]:
        """Implements that no tractor runs."""
        return tuple(self._document["never_run"])

    def stands_still(self) -> DataFrame:
        """What stands still without a tractor, or without two of them, as a pandas data frame.

        A row for each case in which more stands still than with fewer of them down.
        """
        rows = [
            (", ".join(entry["down"]), ", ".join(entry["stands_still"]))
            for entry in (*self._document["one_down"], *self._document["two_down"])
        ]
        return table(rows, ["down", "stands still"])

    def verdict(self, tractor: str | int, implement: str | int) -> Status:
        """The verdict of a pair in its best set-up."""
        row = self._document["verdicts"][_place("verdict", "tractor", self.tractors, tractor)]
        return Status(row[_place("verdict", "implement", self.implements, implement)]["status"])

    def to_frame(self) -> DataFrame:
        """The pairs as a pandas data frame, one row each: verdict, governing check, and the best set-up."""
        rows = [
            (tractor, implement, pair["status"], *map(pair.get, ("governing", "margin", "gear", "stub", "driveline")))
            for tractor, row in zip(self.tractors, self._document["verdicts"], strict=True)
            for implement, pair in zip(self.implements, row, strict=True)
        ]
        return table(rows, ["tractor", "implement", "verdict", "governing", "margin [-]", "gear", "stub", "driveline"])

    def matrix(self) -> DataFrame:
        """The verdicts as a pandas data frame: a row for each tractor, a column for each implement."""
        rows = [[pair["status"] for pair in row] for row in self._document["verdicts"]]
        return table(rows, self.implements, self.tractors)

    def pay_offs(self) -> DataFrame:
        """The options as a pandas data frame: whether each pays, and what a year costs less with it."""
        rows = []
        for entry in self._document["options"]:
            net = entry.get("year", {}).get("net", {})
            gained = [f"{pair['tractor']} with {pair['implement']}" for pair in entry["gained"]]
            rows.append((entry["option"], entry["pays"], net.get("amount"), net.get("currency"), gained, entry["missing"]))
        return table(rows, ["option", "pays", "saved in a year", "currency", "brings to work", "missing"])

    def changeovers(self) -> DataFrame:
        """How tractors are changed over between the stubs and speeds in use, as a pandas data frame: a row for each step."""
        rows = (
            (entry["tractor"], ", ".join(entry["implements"]), *(_set_up(entry[end]) for end in ("from", "to")), number, step["text"])
            for entry in self._document["changeovers"]
            for number, step in enumerate(entry["steps"], 1)
        )
        return table(rows, ["tractor", "implements", "from", "to", "number", "step"])

    def __repr__(self) -> str:
        pairs = [pair["status"] for row in self._document["verdicts"] for pair in row]
        running = sum(status in ("ok", "caution") for status in pairs)
        return f"<FarmStudy {self._document['title']!r}: {running} of {len(pairs)} pairs run>"


def _set_up(end: Mapping[str, Any]) -> str:
    """A stub and its speed."""
    return f"{end['name']} at {end['speed']['text']}"


def _place(function: str, parameter: str, names: tuple[str, ...], wanted: str | int) -> int:
    """The place of a machine in its list, by name or number."""
    if isinstance(wanted, str) and wanted in names:
        return names.index(wanted)
    if isinstance(wanted, int) and not isinstance(wanted, bool) and 0 <= wanted < len(names):
        return wanted
    if not isinstance(wanted, str | int):
        raise TypeError(f"{function}: {parameter}{given(wanted)}; expected a name or a number")
    raise InputError(function, parameter, repr(wanted), "one of: " + ", ".join(names))


def _farm(function: str, farm: Any) -> Farm:
    if not isinstance(farm, Farm):
        raise TypeError(f"{function}: farm{given(farm)}; expected a Farm, see read_farm")
    return farm


def study_farm(farm: Farm, depth: str = "certified", remedies: bool | RemedyOptions = False, threads: int = 1) -> FarmStudy:
    """What runs with what on a farm, what stands still when tractors are down, and what pays.

    Parameters
    ----------
    farm : Farm
        From read_farm or read_farm_file.
    depth : str, default 'certified'
        "certified": a whole assessment of each pair in each set-up; "screening": the checks of screened_checks alone.
    remedies : bool or RemedyOptions, default False
        Whether to search remedies for every pair that does not work, and how far; certified studies only.
    threads : int, default 1
        To share the work out among; 0: as many as the machine runs at once. Results do not depend on it.

    Returns
    -------
    FarmStudy
    """
    if not isinstance(depth, str) or depth not in ("certified", "screening"):
        raise InputError("study_farm", "depth", repr(depth), "certified, screening")
    if not isinstance(threads, int) or isinstance(threads, bool):
        raise TypeError(f"study_farm: threads{given(threads)}; expected a whole number")
    if not isinstance(remedies, bool | RemedyOptions):
        raise TypeError(f"study_farm: remedies{given(remedies)}; expected True, False or RemedyOptions")
    options = remedies if isinstance(remedies, RemedyOptions) else RemedyOptions()
    wanted = (depth == "screening", threads, remedies is not False, *options.bounds())
    return FarmStudy(farm, _core.study_farm(_farm("study_farm", farm)._handle, *wanted))


def study_pair(farm: Farm, tractor: str | int, implement: str | int) -> Assessment:
    """The assessment of one tractor with one implement of a farm, in the best set-up; its case is that set-up.

    Parameters
    ----------
    farm : Farm
        From read_farm or read_farm_file.
    tractor : str or int
        Its name, or its place in the farm's list.
    implement : str or int
        Its name, or its place in the farm's list.

    Returns
    -------
    Assessment
    """
    places = (
        _place("study_pair", "tractor", _farm("study_pair", farm).names("tractors"), tractor),
        _place("study_pair", "implement", farm.names("implements"), implement),
    )
    return assess(Case._of(_core.best_case(farm._handle, *places)))


def with_options(farm: Farm, options: Iterable[str | int]) -> Farm:
    """The farm after some of its options, in their order; the list of options is left as it is.

    Parameters
    ----------
    farm : Farm
        From read_farm or read_farm_file.
    options : iterable of str or int
        Their names, or their places in the farm's list.

    Returns
    -------
    Farm
    """
    names = _farm("with_options", farm).names("options")
    if isinstance(options, str) or not isinstance(options, Iterable):
        raise TypeError(f"with_options: options{given(options)}; expected a list of names or numbers")
    places = [_place("with_options", f"options[{i}]", names, option) for i, option in enumerate(options)]
    return Farm._of(_core.with_options(farm._handle, places))


def screened_checks() -> tuple[str, ...]:
    """Ids of the checks at which a screening looks: all that needs no geometry of the driveline and no strength.

    Examples
    --------
    >>> from fieldshaft import *
    >>> screened_checks()[0]
    'pto.speed'
    """
    return tuple(_core.screened_checks())


__all__ = [
    "Farm",
    "FarmStudy",
    "farm_json_schema",
    "read_farm",
    "read_farm_file",
    "screened_checks",
    "study_farm",
    "study_pair",
    "with_options",
]
