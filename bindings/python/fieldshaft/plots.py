"""Pictures of joints, drivelines and rotors, one call each. They need matplotlib.

Every function takes quantities or texts as the functions of `fieldshaft` do, and returns the matplotlib figure. Lines
differ in dash as well as in colour, so that they can be told apart in print and by colour-blind eyes.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import numpy as np

import fieldshaft
from fieldshaft import si
from fieldshaft._extras import need
from fieldshaft._quantities import Context, reader
from fieldshaft._records import show_quantity

#: Okabe and Ito's colours, which colour-blind eyes tell apart, and the dash that goes with each.
BLUE, ORANGE, GREEN, RED, GREY = "#0072B2", "#E69F00", "#009E73", "#D55E00", "#666666"
DASHES = {BLUE: "-", ORANGE: "--", GREEN: "-.", RED: ":"}


def _number(value: Any, kind: str, function: str, parameter: str) -> Any:
    """A quantity or text as its SI number."""
    return reader(kind)(value, Context(function), parameter)


def _figure(title: str, rows: int = 1, columns: int = 1, size: tuple[float, float] = (7.5, 4.5), **more: Any) -> Any:
    plt = need("matplotlib.pyplot", "pictures")
    figure, axes = plt.subplots(rows, columns, figsize=size, layout="constrained", **more)
    figure.suptitle(title, fontweight="bold")
    for ax in np.ravel(axes):
        ax.grid(True, color="#dddddd", linewidth=0.8)
        ax.set_axisbelow(True)
        ax.spines[["top", "right"]].set_visible(False)
    return figure, axes


def _limit(ax: Any, height: float, text: str) -> None:
    ax.axhline(height, color=RED, linewidth=1.4, linestyle=(0, (1, 1)))
    ax.annotate(text, (0.01, height), xycoords=("axes fraction", "data"), ha="left", va="bottom", color=RED)


def speed_ripple(front: Any, rear: Any = None, phase: Any = "0 deg") -> Any:
    """Speed of the driven shaft over one turn: behind one joint, and behind both of a pair.

    Parameters
    ----------
    front : quantity or str
        Angle of the front joint.
    rear : quantity or str, optional
        Angle of the rear joint; without it there is one joint only.
    phase : quantity or str, default '0 deg'
        Relative phase of the pair; at 0 equal angles cancel.

    Returns
    -------
    matplotlib Figure
    """
    one = _number(front, "angle", "speed_ripple", "front")
    turn = np.linspace(0.0, 2.0 * np.pi, 721)
    single = 100.0 * (si.joint_speed_ratio(one, turn) - 1.0)
    figure, ax = _figure("Speed of the driven shaft over one turn")
    degrees = np.degrees(turn)
    ax.plot(degrees, single, color=ORANGE, linestyle="--", linewidth=2, label=f"behind one joint at {np.degrees(one):.1f}°")
    if rear is not None:
        two = _number(rear, "angle", "speed_ripple", "rear")
        shift = _number(phase, "angle", "speed_ripple", "phase")
        both = 100.0 * (si.joint_pair_speed_ratio(one, two, shift, turn) - 1.0)
        label = f"behind both, {np.degrees(one):.1f}° and {np.degrees(two):.1f}°, phase {np.degrees(shift):.0f}°"
        ax.plot(degrees, both, color=BLUE, linewidth=2.5, label=label)
    ax.set(xlabel="rotation of the driving shaft [°]", ylabel="faster or slower than the driving shaft [%]", xlim=(0, 360))
    ax.set_xticks(range(0, 361, 45))
    ax.margins(y=0.2)
    ax.legend(loc="upper right", frameon=True, framealpha=0.95)
    return figure


def tip_speed(radius: Any, ratio: float, options: Iterable[Any], engine_speeds: tuple[Any, Any], limit: Any = None) -> Any:
    """Tip speed of a rotor against engine speed, for each position of the tractor's PTO lever.

    Parameters
    ----------
    radius : quantity or str
        Of the rotor, to the tip.
    ratio : float
        Rotor speed over PTO speed.
    options : iterable of PtoOption
        The PTO speeds that the tractor offers.
    engine_speeds : pair of quantities or str
        Lowest and highest engine speed of the picture.
    limit : quantity or str, optional
        Highest tip speed, from the operator's manual.

    Returns
    -------
    matplotlib Figure
    """
    reach = _number(radius, "length", "tip_speed", "radius")
    low, high = (_number(speed, "angular_speed", "tip_speed", "engine_speeds") for speed in engine_speeds)
    engine = np.linspace(low, high, 101)
    rpm = engine * 30.0 / np.pi
    figure, ax = _figure("Tip speed against engine speed")
    for option, (colour, dash) in zip(options, DASHES.items(), strict=False):
        number = option.si if hasattr(option, "si") else option
        speed = si.tip_speed(si.geared_speed(si.pto_speed(number, engine), ratio), reach)
        ax.plot(rpm, speed, color=colour, linestyle=dash, linewidth=2.5)
        ax.annotate(f" {number.name}", (rpm[-1], speed[-1]), color=colour, va="center", fontweight="bold")
        if low <= number.engine_speed <= high:
            rated = si.tip_speed(si.geared_speed(number.nominal_speed, ratio), reach)
            ax.plot(number.engine_speed * 30.0 / np.pi, rated, "o", color=colour, markersize=8)
    if limit is not None:
        _limit(ax, _number(limit, "speed", "tip_speed", "limit"), "highest tip speed")
    ax.set(xlabel="engine speed [r/min]", ylabel="tip speed [m/s]", xlim=(rpm[0], rpm[-1] + 0.08 * (rpm[-1] - rpm[0])))
    ax.set_ylim(bottom=0)
    ax.annotate("dots: PTO at its nominal speed", (0.99, 0.03), xycoords="axes fraction", ha="right", color=GREY)
    return figure


def joint_angles(driveline: Any, pin: Any, range: Any, limits: Any = None, points: int = 41) -> Any:
    """Joint angles and length of a driveline over the turn, at the worst pitch and roll, with the proved extremes.

    Parameters
    ----------
    driveline : Driveline
    pin : Position
        Origin of the implement frame in the tractor frame.
    range : AttitudeRange
        Turns, pitches and rolls.
    limits : DrivelineLimits, optional
        Drawn where stated.
    points : int, default 41
        Turns that are looked at.

    Returns
    -------
    matplotlib Figure
    """
    shaft, place, turns = (item.si if hasattr(item, "si") else item for item in (driveline, pin, range))
    bounds = limits.si if hasattr(limits, "si") else limits
    rows = si.envelope_table(shaft, place, turns, points, 7)
    yaw = np.unique([row.yaw for row in rows])

    def worst(name: str, choose: Any) -> Any:
        return np.array([choose(getattr(row, name) for row in rows if row.yaw == at) for at in yaw])

    extremes = si.driveline_envelope(shaft, place, turns)
    figure, (top, bottom) = _figure("Driveline over the turn, at the worst pitch and roll", 2, size=(7.5, 7.0), sharex=True)
    x = np.degrees(yaw)
    for name, colour, words in (("front_angle", BLUE, "front joint"), ("rear_angle", ORANGE, "rear joint")):
        top.plot(x, np.degrees(worst(name, max)), color=colour, linestyle=DASHES[colour], linewidth=2.5, label=words)
        extreme = getattr(extremes, name)
        top.plot(np.degrees(extreme.at.yaw), np.degrees(extreme.upper), "o", color=colour, markersize=8)
        proved = f"at most {np.degrees(extreme.upper):.1f}°"
        top.annotate(proved, (np.degrees(extreme.at.yaw), np.degrees(extreme.upper)), xytext=(0, 9 if colour == BLUE else -18),
                     textcoords="offset points", ha="center", color=colour, fontweight="bold")  # fmt: skip
    for name, choose, colour, words in (("longest", max, BLUE, "longest"), ("shortest", min, ORANGE, "shortest")):
        bottom.plot(x, 1e3 * worst(name, choose), color=colour, linestyle=DASHES[colour], linewidth=2.5, label=words)
    if bounds is not None:
        both = bounds.front_angle is not None and bounds.front_angle == bounds.rear_angle
        for name, words in (("front_angle", "limit of the front joint"), ("rear_angle", "limit of the rear joint")):
            if getattr(bounds, name) is not None and not (both and name == "rear_angle"):
                _limit(top, np.degrees(getattr(bounds, name)), "limit of both joints" if both else words)
        for name, words in (("longest", "longest allowed"), ("shortest", "shortest allowed")):
            if getattr(bounds, name) is not None:
                _limit(bottom, 1e3 * getattr(bounds, name), words)
    top.set(ylabel="joint angle [°]")
    top.set_ylim(bottom=0)
    top.margins(x=0.06, y=0.15)
    bottom.set(xlabel="turn [°], below 0: to the left", ylabel="joint centre distance [mm]")
    bottom.margins(y=0.15)
    for ax in (top, bottom):
        ax.legend(loc="best", frameon=True, framealpha=0.95)
    return figure


def views(driveline: Any, pose: Any) -> Any:
    """Side and plan view of the driveline between tractor and implement at a pose.

    Parameters
    ----------
    driveline : Driveline
    pose : Pose
        Of the implement.

    Returns
    -------
    matplotlib Figure
    """
    shaft, place = (item.si if hasattr(item, "si") else item for item in (driveline, pose))
    state = si.driveline_at(shaft, place)

    def point(position: Any) -> Any:
        return np.array([position.forward, position.left, position.up])

    output, front = point(shaft.output), point(si.front_joint_position(shaft))
    rear = point(si.in_tractor(place, si.rear_joint_position(shaft)))
    inlet = point(si.in_tractor(place, shaft.input))
    pin = point(place.pin)
    parts = (("PTO shaft", output, front, GREY), ("driveline", front, rear, BLUE), ("input shaft", rear, inlet, ORANGE))
    figure, (side, plan) = _figure("Driveline at one pose", 2, size=(7.5, 6.5), sharex=True)
    for ax, axis, words in ((side, 2, "up [mm]"), (plan, 1, "left [mm]")):
        for name, start, end, colour in parts:
            ax.plot(1e3 * np.array([start[0], end[0]]), 1e3 * np.array([start[axis], end[axis]]), color=colour,
                    linewidth=5, solid_capstyle="round", label=name)  # fmt: skip
        ax.plot([1e3 * pin[0], 1e3 * inlet[0]], [1e3 * pin[axis], 1e3 * inlet[axis]], color=GREEN, linestyle="-.", linewidth=1.5,
                label="implement")  # fmt: skip
        ax.plot(1e3 * pin[0], 1e3 * pin[axis], "s", color=GREEN, markersize=9, label="hitch pin")
        ax.plot(1e3 * np.array([front[0], rear[0]]), 1e3 * np.array([front[axis], rear[axis]]), "o", color="black", markersize=7)
        ax.set_ylabel(words)
        ax.set_aspect("equal", adjustable="datalim")
        ax.margins(0.12)
    side.set_title("from the right side, driving to the right", loc="left", fontsize="medium")
    plan.set_title(
        f"from above: {np.degrees(state.front_angle):.1f}° at the front, {np.degrees(state.rear_angle):.1f}° at the rear, "
        f"{1e3 * state.length:.0f} mm between the joints",
        loc="left", fontsize="medium",
    )  # fmt: skip
    plan.set_xlabel("forward of the PTO shaft's end [mm]")
    side.legend(loc="center left", bbox_to_anchor=(1.01, 0.5), frameon=False)
    return figure


def recommended_powers(power: Any = None, speed: Any = None) -> Any:
    """The greatest power that the editions of the standards recommend, by PTO type and speed, with a case's own point.

    Parameters
    ----------
    power : quantity or str, optional
        PTO power of the case, drawn as a line.
    speed : quantity or str, optional
        PTO speed of the case: types that are not driven at it are left out.

    Returns
    -------
    matplotlib Figure
    """
    rows = []
    for kind in si.pto_types():
        for known in kind.known_speeds:
            if speed is not None and not si.is_nominal_speed(_number(speed, "angular_speed", "recommended_powers", "speed"), known.value):
                continue
            found = si.recommended_power(kind, known.value)
            if found.lowest and found.highest:
                rows.append((f"type {kind.number} at {known.value * 30 / np.pi:.0f} r/min", found.lowest.value / 1e3, found.highest.value / 1e3))
    figure, ax = _figure("Greatest recommended PTO power, by edition", size=(7.5, 1.6 + 0.55 * len(rows)))
    for place, (_, low, high) in enumerate(rows):
        ax.barh(place, low, color=BLUE, height=0.55, label="all editions agree" if place == 0 else None)
        ax.barh(place, high - low, left=low, color=ORANGE, height=0.55, hatch="///", edgecolor="white",
                label="editions disagree" if place == 0 else None)  # fmt: skip
        ax.annotate(f" {high:.0f} kW", (high, place), va="center")
    if power is not None:
        own = _number(power, "power", "recommended_powers", "power") / 1e3
        ax.axvline(own, color=RED, linewidth=2, linestyle=(0, (1, 1)), label=f"this case: {own:.0f} kW")
    ax.set_yticks(range(len(rows)), [name for name, _, _ in rows])
    ax.invert_yaxis()
    ax.set_xlabel("PTO power [kW]")
    ax.margins(x=0.12)
    ax.grid(False, axis="y")
    ax.legend(loc="upper right", frameon=True, framealpha=0.95)
    return figure


def damage(cycles: Any, line: Any, rule: Any, bins: int = 20) -> Any:
    """Which cycles use up the life: the share of Miner's sum by range.

    Parameters
    ----------
    cycles : Cycles
        Of a history of torque or stress, from count_cycles.
    line : SnLine or TorqueSnLine
        S-N line of the part.
    rule : MeanStressRule or str
        What a mean does.
    bins : int, default 20
        Classes of range.

    Returns
    -------
    matplotlib Figure
    """
    size = np.asarray(cycles.range.m, dtype=float)
    whole = fieldshaft.miner_damage(cycles, line, rule).value
    edges = np.linspace(0.0, float(size.max()), bins + 1)
    place = np.clip(np.digitize(size, edges) - 1, 0, bins - 1)
    counts, shares = np.zeros(bins), np.zeros(bins)
    for i in np.unique(place):
        chosen = place == i
        some = fieldshaft.Cycles(cycles.range[chosen], cycles.mean[chosen], cycles.count[chosen])
        counts[i] = some.count.sum()
        shares[i] = fieldshaft.miner_damage(some, line, rule).value
    figure, (top, bottom) = _figure(f"Cycles and their damage; Miner's sum {whole:.3g}", 2, size=(7.5, 6.0), sharex=True)
    middle, width = 0.5 * (edges[:-1] + edges[1:]), 0.9 * (edges[1] - edges[0])
    top.bar(middle, counts, width, color=BLUE)
    unit = show_quantity(1 * cycles.range.units).removeprefix("1 ")
    top.set(ylabel="cycles")
    if counts.max() > 100:
        top.set_yscale("log")
    bottom.bar(middle, 100.0 * shares / whole if whole > 0.0 else shares, width, color=ORANGE, hatch="///", edgecolor="white")
    bottom.set(xlabel=f"range [{unit}]", ylabel="share of the damage [%]")
    return figure


__all__ = ["damage", "joint_angles", "recommended_powers", "speed_ripple", "tip_speed", "views"]
