"""What an assessment proves of the driveline, as numbers ready for a table or a picture. Read from its JSON report."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING, Any

from fieldshaft._frames import frame, table
from fieldshaft._records import Record, fill
from fieldshaft._reports import ReportedValue, reported
from fieldshaft.si import MachineState

if TYPE_CHECKING:
    from fieldshaft._frames import DataFrame

#: What a state moves, in the order of the report, with the words of a table.
EXTREMES = {
    "front_angle": "greatest angle of the front joint",
    "rear_angle": "greatest angle of the rear joint",
    "difference": "greatest difference of the angles",
    "longest": "longest between the joint centres",
    "shortest": "shortest between the joint centres",
    "speed_variation": "greatest speed variation",
}

#: Units in which tables and pictures speak, for the SI units of a report.
TRADE = {"rad": ("deg", 180.0 / math.pi), "m": ("mm", 1e3), "": ("-", 1.0)}


class StateExtreme(Record):
    """An extreme of the driveline over the positions of a state.

    Attributes
    ----------
    bound : ReportedValue
        Proved for the rigid model: no position of the state is worse.
    attained : ReportedValue
        By a driveline within the tolerances, at that position.
    gap : ReportedValue
        Between the two.
    yaw, pitch, roll : float
        Position at which it is attained, in radians.
    lift : float or None
        The same in metres, of a mounted implement.
    within_gap : bool
        Whether the search ended because the wanted gap was reached.
    matters_most : str or None
        Entry of the case whose tolerance moves the extreme most.
    moves : ReportedValue or None
        By how much that tolerance alone moves it.
    """

    __slots__ = ("bound", "attained", "gap", "yaw", "pitch", "roll", "lift", "within_gap", "matters_most", "moves")
    bound: ReportedValue
    attained: ReportedValue
    gap: ReportedValue
    yaw: float
    pitch: float
    roll: float
    lift: float | None
    within_gap: bool
    matters_most: str | None
    moves: ReportedValue | None

    def __init__(
        self, bound: Any, attained: Any, gap: Any, yaw: float, pitch: float, roll: float, lift: float | None = None,
        within_gap: bool = False, matters_most: str | None = None, moves: Any = None,
    ) -> None:  # fmt: skip
        fill(self, (bound, attained, gap, yaw, pitch, roll, lift, within_gap, matters_most, moves))


class MeasuredEntry(Record):
    """A measurement of the case as it went into a range.

    Attributes
    ----------
    entry : str
        Path of the case document.
    value, tolerance : ReportedValue
        As stated.
    """

    __slots__ = ("entry", "value", "tolerance")
    entry: str
    value: ReportedValue
    tolerance: ReportedValue

    def __init__(self, entry: str, value: Any, tolerance: Any) -> None:
        fill(self, (entry, value, tolerance))


class RangeOrigin(Record):
    """What was not stated but follows from what was measured, every tolerance included.

    Attributes
    ----------
    of : str
        "yaw", "pitch", "roll" or "top_link".
    range : pair of float
        Lowest and highest, in radians or metres.
    from_ : tuple of MeasuredEntry
        What was measured.
    """

    __slots__ = ("of", "range", "from_")
    of: str
    range: tuple[float, float]
    from_: tuple[MeasuredEntry, ...]

    def __init__(self, of: str, range: Any, from_: Any) -> None:
        fill(self, (of, tuple(range), tuple(from_)))


class StateEnvelope(Record):
    """What is proved of the driveline over one state of the machine.

    Attributes
    ----------
    state : MachineState
        Working, turning or transport.
    driven : bool
        Whether the PTO turns.
    yaw, pitch, roll : pair of float, or None
        Lowest and highest of the state, in radians; pitch of trailed machines only.
    roll_at_full_turn : float or None
        Share of the roll that is left there, where it is less.
    lift : pair of float, or None
        The same in metres, of a mounted implement.
    slack_top_link : bool
        Whether a mounted implement stands on its own wheels.
    steers_about_pivot : bool
        Whether it is semi-mounted: the yaw is then the turn about its pivot.
    origins : tuple of RangeOrigin
        Where the ranges come from that follow from measurements.
    front_angle, rear_angle, difference, longest, shortest : StateExtreme
        Each over all positions of the state and every measurement within its tolerance.
    speed_variation : StateExtreme or None
        Where it is followed.
    """

    __slots__ = ("state", "driven", "yaw", "pitch", "roll", "roll_at_full_turn", "lift", "slack_top_link", "steers_about_pivot", "origins", *EXTREMES)
    state: MachineState
    driven: bool
    yaw: tuple[float, float]
    pitch: tuple[float, float] | None
    roll: tuple[float, float]
    roll_at_full_turn: float | None
    lift: tuple[float, float] | None
    slack_top_link: bool
    steers_about_pivot: bool
    origins: tuple[RangeOrigin, ...]
    front_angle: StateExtreme
    rear_angle: StateExtreme
    difference: StateExtreme
    longest: StateExtreme
    shortest: StateExtreme
    speed_variation: StateExtreme | None

    def __init__(
        self, state: Any, driven: bool, yaw: Any, pitch: Any, roll: Any, roll_at_full_turn: float | None, lift: Any,
        slack_top_link: bool, steers_about_pivot: bool, origins: Any,
        front_angle: Any, rear_angle: Any, difference: Any, longest: Any, shortest: Any, speed_variation: Any = None,
    ) -> None:  # fmt: skip
        extremes = (front_angle, rear_angle, difference, longest, shortest, speed_variation)
        ranges = (yaw, pitch, roll, roll_at_full_turn, lift)
        fill(self, (MachineState(state), driven, *ranges, slack_top_link, steers_about_pivot, tuple(origins), *extremes))

    def to_frame(self) -> DataFrame:
        """The extremes as a pandas data frame, one row each."""
        return envelope_frame([self])


class BranchEnvelopeOfCase(Record):
    """What is proved of a branch over its folding, while it turns or with the PTO at rest; its poses are those of the folding part about its hinge.

    Attributes
    ----------
    name : str
        Of the branch, as the case states it.
    driven : bool
        Whether the PTO turns.
    fold : pair of float
        Lowest and highest angle of the hinge, in radians.
    front_angle, rear_angle, longest, shortest : StateExtreme
        Each over the whole folding.
    """

    __slots__ = ("name", "driven", "fold", "front_angle", "rear_angle", "longest", "shortest")
    name: str
    driven: bool
    fold: tuple[float, float]
    front_angle: StateExtreme
    rear_angle: StateExtreme
    longest: StateExtreme
    shortest: StateExtreme

    def __init__(self, name: str, driven: bool, fold: Any, front_angle: Any, rear_angle: Any, longest: Any, shortest: Any) -> None:
        fill(self, (name, driven, tuple(fold), front_angle, rear_angle, longest, shortest))


class TurnAtPitch(Record):
    """How far one may turn at one pitch before the first rule objects; proved for that pitch.

    Attributes
    ----------
    pitch : float
        In radians.
    left, right : float
        Turns to either side, in radians, at least 0.
    """

    __slots__ = ("pitch", "left", "right")
    pitch: float
    left: float
    right: float

    def __init__(self, pitch: float, left: float, right: float) -> None:
        fill(self, (pitch, left, right))


def _extreme(entry: Mapping[str, Any] | None) -> StateExtreme | None:
    if entry is None:
        return None
    pose, most = entry["pose"], entry.get("matters_most", {})
    bound, attained, gap = (reported(entry[name]) for name in ("bound", "attained", "gap"))
    place = (pose["yaw"], pose["pitch"], pose["roll"], pose.get("lift"))
    return StateExtreme(bound, attained, gap, *place, entry["within_gap"], most.get("entry"), reported(most.get("moves")))


def _origin(entry: Mapping[str, Any]) -> RangeOrigin:
    measured = [MeasuredEntry(one["entry"], reported(one["value"]), reported(one["tolerance"])) for one in entry["from"]]
    return RangeOrigin(entry["of"], entry["range"], measured)


def branches_of(geometry: Mapping[str, Any]) -> tuple[BranchEnvelopeOfCase, ...]:
    """The branches of a report's geometry."""
    extremes = BranchEnvelopeOfCase.__slots__[3:]
    return tuple(
        BranchEnvelopeOfCase(entry["name"], entry["driven"], entry["fold"], *(_extreme(entry[name]) for name in extremes))
        for entry in geometry["branches"]
    )


def _envelope(entry: Mapping[str, Any]) -> StateEnvelope:
    def pair(name: str) -> Any:
        return tuple(entry[name]) if name in entry else None

    own, hitched = (entry["state"], entry["driven"]), (entry.get("top_link") == "slack", "yaw_about" in entry)
    ranges = (pair("yaw"), pair("pitch"), pair("roll"), entry.get("roll_at_full_turn"), pair("lift"))
    extremes: list[Any] = [_extreme(entry.get(name)) for name in EXTREMES]
    return StateEnvelope(*own, *ranges, *hitched, map(_origin, entry["measured"]), *extremes)


def envelopes_of(geometry: Mapping[str, Any]) -> tuple[StateEnvelope, ...]:
    """The states of a report's geometry."""
    return tuple(map(_envelope, geometry["states"]))


def turn_curve_of(geometry: Mapping[str, Any]) -> tuple[TurnAtPitch, ...]:
    """The turns that a report's geometry allows, over the pitch."""
    return tuple(TurnAtPitch(entry["pitch"], entry["left"], entry["right"]) for entry in geometry["turn_limit_over_pitch"])


def envelope_frame(envelopes: Iterable[StateEnvelope]) -> DataFrame:
    """A row for each extreme of each state, in degrees and millimetres."""
    return frame(
        _row(envelope, name, getattr(envelope, name))
        for envelope in envelopes
        for name in EXTREMES
        if getattr(envelope, name) is not None
    )


def _row(envelope: StateEnvelope, name: str, extreme: StateExtreme) -> dict[str, Any]:
    unit, factor = TRADE[extreme.bound.unit]
    degrees = {f"{axis} [deg]": math.degrees(getattr(extreme, axis)) for axis in ("yaw", "pitch", "roll")}
    return {
        "state": str(envelope.state), "driven": envelope.driven, "extreme": name, "meaning": EXTREMES[name], "unit": unit,
        **{part: factor * getattr(extreme, part).si for part in ("bound", "attained", "gap")},
        **degrees, "lift [mm]": None if extreme.lift is None else 1e3 * extreme.lift,
        "matters most": extreme.matters_most, "moves": None if extreme.moves is None else factor * extreme.moves.si,
    }  # fmt: skip


def turn_frame(curve: Iterable[TurnAtPitch]) -> DataFrame:
    """A row for each pitch, in degrees."""
    rows = [[math.degrees(value) for value in point._values()] for point in curve]
    return table(rows, [f"{name} [deg]" for name in TurnAtPitch.__slots__])


__all__ = ["BranchEnvelopeOfCase", "MeasuredEntry", "RangeOrigin", "StateEnvelope", "StateExtreme", "TurnAtPitch"]
