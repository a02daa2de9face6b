"""What to do: remedies that were verified, and the steps of a changeover."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from fieldshaft import _core
from fieldshaft._cases import Assessment, Case, assess
from fieldshaft._errors import InputError
from fieldshaft._frames import table
from fieldshaft._quantities import Context, reader
from fieldshaft._records import Record, choice, fill, given
from fieldshaft._reports import Report, Status
from fieldshaft.si import StubArrangement

if TYPE_CHECKING:
    from fieldshaft._frames import DataFrame


class Change(Record):
    """One change to a case.

    Attributes
    ----------
    id : str
        Stable name of the kind, such as "cut_tubes".
    text : str
        What to change, in words.
    entries : tuple of dict
        What it changes in the case document: path, from, to.
    price : float or None
        Where the case states one.
    currency : str or None
        Of the price.
    """

    __slots__ = ("id", "text", "entries", "price", "currency")
    id: str
    text: str
    entries: tuple[dict[str, Any], ...]
    price: float | None
    currency: str | None

    def __init__(self, id: str, text: str, entries: Any = (), price: float | None = None, currency: str | None = None) -> None:
        fill(self, (id, text, tuple(entries), price, currency))

    def __str__(self) -> str:
        return self.text

    def __hash__(self) -> int:
        return hash((self.id, self.text))


def _change(document: dict[str, Any]) -> Change:
    price = document.get("price") or {"amount": None, "currency": None}
    return Change(document["id"], document["text"], document["entries"], price["amount"], price["currency"])


class Remedy(Record):
    """A set of changes that was verified: assessed together, they heal what they claim and make nothing worse.

    Attributes
    ----------
    changes : tuple of Change
        All of them are made.
    price : float or None
        Of all changes, where each has one.
    currency : str or None
        Of the price.
    verdict : Status
        Of the changed case.
    healed : tuple of str
        Ids of checks that stood in the way and are gone.
    left : tuple of str
        Ids of checks that still stand in the way.
    new_cautions : tuple of str
        Ids of checks that are now a caution where there was none.
    changed : Case
        With all changes made.
    """

    __slots__ = ("changes", "price", "currency", "verdict", "healed", "left", "new_cautions", "changed")
    changes: tuple[Change, ...]
    price: float | None
    currency: str | None
    verdict: Status
    healed: tuple[str, ...]
    left: tuple[str, ...]
    new_cautions: tuple[str, ...]
    changed: Case

    def __init__(
        self, changes: Any, price: Any, currency: Any, verdict: Any, healed: Any, left: Any, new_cautions: Any, changed: Case
    ) -> None:
        fill(self, (tuple(changes), price, currency, Status(verdict), tuple(healed), tuple(left), tuple(new_cautions), changed))

    def assess(self) -> Assessment:
        """The assessment of the changed case."""
        return assess(self.changed)

    def __str__(self) -> str:
        return "; ".join(map(str, self.changes))


def _remedy(document: dict[str, Any], changed: Case) -> Remedy:
    price = document.get("price") or {"amount": None, "currency": None}
    healed, left, new_cautions = (document[name] for name in ("healed", "left", "new_cautions"))
    changes = map(_change, document["changes"])
    return Remedy(changes, price["amount"], price["currency"], document["verdict"], healed, left, new_cautions, changed)


class RemedyOptions(Record):
    """How far a search for remedies goes; see `remedies` for what each means.

    Attributes
    ----------
    accept : Status or str
        Worst status that a finding may keep.
    most_changes, beyond_smallest, most_sets, most_cases, most_ranges : int
        Bounds of the search.
    least_need : float
        Share of the power need below which less work is no remedy.
    """

    __slots__ = ("accept", "most_changes", "beyond_smallest", "most_sets", "most_cases", "most_ranges", "least_need")
    accept: Status
    most_changes: int
    beyond_smallest: int
    most_sets: int
    most_cases: int
    most_ranges: int
    least_need: float

    def __init__(
        self,
        accept: Status | str = "caution",
        most_changes: int = 5,
        beyond_smallest: int = 0,
        most_sets: int = 8,
        most_cases: int = 500,
        most_ranges: int = 250,
        least_need: float = 0.5,
    ) -> None:
        worst = choice(Status, accept, "remedies", "accept")
        fill(self, (worst, most_changes, beyond_smallest, most_sets, most_cases, most_ranges, least_need))

    def bounds(self) -> tuple[int, tuple[float, ...]]:
        """The place of the status in its order, and the numbers that follow it."""
        accept, *numbers = self._values()
        return list(Status).index(accept), tuple(numbers)


class Remedies(Report):
    """The smallest sets of changes with which a case fits, each verified by assessing the changed case.

    Attributes
    ----------
    case : Case
        As it is.
    sets : tuple of Remedy
        Smallest first, then cheapest; empty where nothing stands in the way or nothing helps.
    by_finding : dict
        For each finding that a single change heals, by its id, any one of these changes.
    without_remedy : tuple of str
        Ids of stops for which no change is known.
    state_first : tuple of str
        Entries that the case does not state: to be stated, not remedied.
    complete_size : int
        Every set of up to this many proposed changes was looked at.
    cut_off : bool
        Whether the search ended at one of its bounds.
    """

    __slots__ = ("case", "sets")

    def __init__(self, case: Case, handle: Any) -> None:
        super().__init__(handle)
        changed = [Case._of(_core.changed_case(handle, i)) for i in range(len(self._document["sets"]))]
        self._fill(case, changed)

    def _fill(self, case: Case, changed: list[Case]) -> None:
        self.case = case
        self.sets = tuple(_remedy(entry, one) for entry, one in zip(self._document["sets"], changed, strict=True))

    def _more(self) -> dict[str, Any]:
        return {"case": self.case, "changed": [remedy.changed for remedy in self.sets]}

    def _restore(self, more: dict[str, Any]) -> None:
        self._fill(more["case"], more["changed"])

    @property
    def by_finding(self) -> dict[str, tuple[Change, ...]]:
        """For each finding that a single change heals, by its id, any one of these changes."""
        return {entry["check"]: tuple(map(_change, entry["changes"])) for entry in self._document["by_finding"]}

    @property
    def without_remedy(self) -> tuple[str, ...]:
        """Ids of stops for which no change is known."""
        return tuple(self._document["without_remedy"])

    @property
    def state_first(self) -> tuple[str, ...]:
        """Entries that the case does not state."""
        return tuple(self._document["state_first"])

    @property
    def complete_size(self) -> int:
        """Every set of up to this many proposed changes was looked at."""
        return int(self._document["search"]["complete_size"])

    @property
    def cut_off(self) -> bool:
        """Whether the search ended at one of its bounds."""
        return bool(self._document["search"]["cut_off"])

    def to_frame(self) -> DataFrame:
        """The sets as a pandas data frame, one row for each change; prices are in the currency that a column names."""
        rows = [
            (number, change.id, change.text, change.price, change.currency, str(remedy.verdict))
            for number, remedy in enumerate(self.sets, 1)
            for change in remedy.changes
        ]
        return table(rows, ["set", "change", "text", "price", "currency", "verdict afterwards"])

    def __len__(self) -> int:
        return len(self.sets)

    def __repr__(self) -> str:
        first = f"; first: {self.sets[0]}" if self.sets else ""
        return f"<Remedies {self._document['title']!r}: {len(self.sets)} sets of changes{first}>"


def remedies(
    case: Case,
    accept: Status | str = "caution",
    most_changes: int = 5,
    beyond_smallest: int = 0,
    most_sets: int = 8,
    most_cases: int = 500,
    most_ranges: int = 250,
    least_need: float = 0.5,
) -> Remedies:
    """The smallest sets of changes with which no finding of a case is worse than `accept`, each verified.

    Parameters
    ----------
    case : Case
        From read_case or read_case_file.
    accept : Status or str, default 'caution'
        Worst status that a finding may keep; "ok" heals cautions too.
    most_changes : int, default 5
        In one set.
    beyond_smallest : int, default 0
        How many changes more than the smallest set a set may have.
    most_sets : int, default 8
        That are reported.
    most_cases : int, default 500
        Changed cases to assess before the search is cut off.
    most_ranges : int, default 250
        States of the machine to examine anew, the costly part, before the search is cut off.
    least_need : float, default 0.5
        Share of the power need below which less work is no remedy.

    Returns
    -------
    Remedies
        What is not known for want of data is not remedied: `state_first` lists the entries.
    """
    if not isinstance(case, Case):
        raise TypeError(f"remedies: case{given(case)}; expected a Case, see read_case")
    options = RemedyOptions(accept, most_changes, beyond_smallest, most_sets, most_cases, most_ranges, least_need)
    return Remedies(case, _core.remedies(case._handle, *options.bounds()))


class Changeover(Report):
    """How a tractor is changed from one PTO stub or speed to another.

    Attributes
    ----------
    possible : bool
        Whether this arrangement can make the change at all.
    steps : tuple of str
        In their order.
    hazards : tuple of str
        What can go wrong.
    """

    __slots__ = ()

    @property
    def possible(self) -> bool:
        """Whether this arrangement can make the change at all."""
        return bool(self._document["possible"])

    @property
    def steps(self) -> tuple[str, ...]:
        """The steps, in their order."""
        return tuple(step["text"] for step in self._document["steps"])

    @property
    def hazards(self) -> tuple[str, ...]:
        """What can go wrong."""
        return tuple(hazard["text"] for hazard in self._document["hazards"])

    def __repr__(self) -> str:
        ends = [f"{end['name']} at {end['speed']['text']}" for end in (self._document["from"], self._document["to"])]
        return f"<Changeover from {ends[0]} to {ends[1]}: {len(self.steps)} steps>"


def _set_up(pair: Any, parameter: str) -> tuple[int, float]:
    """Type number and speed of a pair."""
    if not isinstance(pair, tuple | list) or len(pair) != 2 or not isinstance(pair[0], int) or isinstance(pair[0], bool):
        raise TypeError(f"changeover: {parameter}{given(pair)}; expected a type number and a speed such as (1, \"540 rpm\")")
    return pair[0], reader("angular_speed")(pair[1], Context("changeover"), f"{parameter}[1]")


def changeover(arrangement: StubArrangement | str, from_: Any, to: Any, hitch: str = "drawbar") -> Changeover:
    """The steps of a safe changeover, and what can go wrong in it. The operator's manuals come before it.

    Another stub asks for another position of the drawbar; what hangs on it is unhitched before and hitched up after.

    Parameters
    ----------
    arrangement : StubArrangement or str
        How the tractor offers its PTO speeds.
    from_, to : pair of int and quantity or str
        Number of the type that is out, and the speed of the gear, before and after.
    hitch : str, default 'drawbar'
        What the implement hangs on: "drawbar" or "three-point"; the latter leaves the drawbar alone.

    Returns
    -------
    Changeover

    Examples
    --------
    >>> from fieldshaft import *
    >>> changeover("reversible", (1, "540 rpm"), (2, "1000 rpm")).possible
    True
    """
    number = list(StubArrangement).index(choice(StubArrangement, arrangement, "changeover", "arrangement"))
    if not isinstance(hitch, str) or hitch not in ("drawbar", "three-point"):
        raise InputError("changeover", "hitch", repr(hitch), "drawbar, three-point")
    return Changeover(_core.changeover(number, *_set_up(from_, "from_"), *_set_up(to, "to"), hitch == "three-point"))


def changeover_between(before: Case, after: Case) -> Changeover | None:
    """The changeover that leads from one case to another of the same tractor, such as from a case to its remedy.

    Parameters
    ----------
    before, after : Case
        From read_case, read_case_file, or `changed` of a Remedy.

    Returns
    -------
    Changeover or None
        None where stub and speed stay, or where arrangement, stub or speed of one of them is not known.

    Examples
    --------
    >>> from fieldshaft import *
    >>> gears = [{"name": "540", "pto_speed": "540 r/min"}, {"name": "1000", "pto_speed": "1000 r/min"}]
    >>> pto = {"arrangement": "lever only", "stub": {"type": 1}, "gears": gears}
    >>> rest = {"schema": "fieldshaft-case/1", "implement": {"name": "cutter"}, "driveline": {}}
    >>> slow, fast = (
    ...     read_case({**rest, "tractor": {"name": "tractor", "pto": {**pto, "selected": name}}}) for name in ("540", "1000")
    ... )
    >>> changeover_between(fast, slow)
    <Changeover from type 1, 1 3/8 in, 6 splines at 1000 r/min to type 1, 1 3/8 in, 6 splines at 540 r/min: 8 steps>
    """
    for name, case in (("before", before), ("after", after)):
        if not isinstance(case, Case):
            raise TypeError(f"changeover_between: {name}{given(case)}; expected a Case, see read_case")
    found = _core.changeover_between(before._handle, after._handle)
    return None if found is None else Changeover(found)


__all__ = ["Change", "Changeover", "Remedies", "Remedy", "RemedyOptions", "changeover", "changeover_between", "remedies"]
