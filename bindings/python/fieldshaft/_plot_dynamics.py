"""Pictures of dynamics: which speeds meet a natural frequency, and a start or a blockage in time."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

import numpy as np

from fieldshaft import si
from fieldshaft._plot_style import DASHES, GREY, PAPER, RED, new_figure, plain
from fieldshaft._records import given

if TYPE_CHECKING:
    from fieldshaft._plot_style import Figure

RPM = 30.0 / np.pi


def interference(train: Any, orders: Sequence[Any], speeds: Any, names: Sequence[str] = ()) -> Figure:
    """Natural frequencies and pulses of a driveline against its speed: where lines cross, it resonates.

    Parameters
    ----------
    train : TorsionalTrain
    orders : sequence of ExcitationOrder
        What pulses how often in a turn.
    speeds : SpeedRange
        Speeds at which the machine works, shaded; of the first inertia.
    names : sequence of str, optional
        What the orders are, such as "joints"; else their pulses per turn.

    Returns
    -------
    matplotlib Figure
    """
    shafts, pulses, working = plain(train), [plain(order) for order in orders], plain(speeds)
    if names and len(names) != len(pulses):
        raise TypeError(f"interference: names{given(names)}; expected one for each of the {len(pulses)} orders")
    table = si.interference_table(shafts, pulses, working)
    if not table:
        raise si.InputError("interference", "train", "without a natural frequency above 0", "a train that can swing")
    figure, ax = new_figure("Natural frequencies and pulses over the speed", size=(9.0, 5.5))
    top = 1.25 * RPM * max(working.high, *(row.critical_speed for row in table if row.critical_speed < 2.0 * working.high), 0.0)
    speed = np.array([0.0, top])
    ax.axvspan(RPM * working.low, RPM * working.high, color="#e8e8e8", zorder=0, label="working speeds")
    for row in {row.mode: row for row in table}.values():
        ax.axhline(row.natural, color="black", linewidth=1.5, label="natural frequencies" if row.mode == table[0].mode else None)
        ax.annotate(f"{row.natural:.1f} Hz", (0.01, row.natural), xycoords=("axes fraction", "data"), xytext=(0, 2),
                    textcoords="offset points", va="bottom", bbox=PAPER)  # fmt: skip
    highest = 1.15 * max(row.natural for row in table)
    for number, (order, (colour, dash)) in enumerate(zip(pulses, DASHES.items(), strict=False)):
        row = next(row for row in table if row.order == number)
        slope = row.natural / (RPM * row.critical_speed)  # pulses a second for each r/min of the first inertia
        words = names[number] if names else f"{order.per_turn:g} pulses a turn"
        ax.plot(speed, slope * speed, color=colour, linestyle=dash, linewidth=2.5, label=words)
    for row in table:
        at = RPM * row.critical_speed
        if at < top:
            inside = row.separation == 0.0
            ax.plot(at, row.natural, "X" if inside else "o", color=RED if inside else GREY, markersize=11 if inside else 7,
                    markeredgecolor="white", zorder=5, clip_on=False)  # fmt: skip
            ax.annotate(f"{at:.0f} r/min", (at, row.natural), xytext=(6, -10), textcoords="offset points", va="top",
                        color=RED if inside else GREY, fontweight="bold" if inside else "normal", bbox=PAPER, zorder=6)  # fmt: skip
    ax.set(xlabel="speed of the first inertia [r/min]; crosses: resonance while working, dots: elsewhere", ylabel="frequency [Hz]", xlim=(0.0, top), ylim=(0.0, highest))
    figure.legend(*ax.get_legend_handles_labels(), loc="outside lower center", ncols=4, frameon=False)
    return figure


#: What a link is called in a legend.
LINKS = {
    "LineShaft": "shaft", "LineClutch": "clutch", "LineShearBolt": "shear bolt", "LineCutOut": "cut-out clutch",
    "LineOverrun": "overrunning clutch",
}  # fmt: skip


def _link_names(line: Any) -> list[str]:
    bodies = [body.name for body in line.bodies]
    return [f"{LINKS[type(link).__name__]}, {bodies[i]} to {bodies[i + 1]}" for i, link in enumerate(line.links)]


def _draw_events(ax: Any, events: Sequence[Any], bodies: list[str], links: list[str], end: float) -> None:
    """The words of what happens beside the time at which it does; those of near times one below the other."""
    lines, last = 0, -end
    for event in events[:12]:
        name = (bodies if event.kind in BODY_EVENTS else links)[event.index].partition(",")[0]
        lines = lines + 1 if event.time - last < 0.2 * end else 0
        last, late = event.time, event.time > 0.75 * end
        ax.annotate(f"{name} {str(event.kind).replace('_', ' ')}", (event.time, 1.0), xycoords=("data", "axes fraction"),
                    xytext=(-4 if late else 4, -4 - 13 * lines), textcoords="offset points", ha="right" if late else "left",
                    va="top", fontsize="small", bbox=PAPER, zorder=6)  # fmt: skip


#: Events of bodies; the others are of links.
BODY_EVENTS = ("stops", "starts", "is_blocked", "stalls")


def simulation(result: Any, line: Any) -> Figure:
    """Speeds of the bodies and torques in the links over time, with what happens when.

    Parameters
    ----------
    result : SimulationResult
        From simulate with settings that ask for a trace (sample_every).
    line : PtoLine
        Of that simulation.

    Returns
    -------
    matplotlib Figure
    """
    run, machine = plain(result), plain(line)
    trace = run.trace
    if len(trace.time) < 2:
        raise si.InputError("simulation", "result", "without a trace", "a simulation with sample_every set")
    bodies, links = [body.name for body in machine.bodies], _link_names(machine)
    title = "A PTO line in time" + ("" if run.complete else ": ended early")
    figure, (top, bottom) = new_figure(title, 2, size=(9.0, 7.0), sharex=True)
    looks = list(DASHES.items())
    for ax, names, values in ((top, bodies, RPM * trace.speeds), (bottom, links, trace.torques)):
        for i, name in enumerate(names):
            colour, dash = looks[i % len(looks)]
            ax.plot(trace.time, values[:, i], color=colour, linestyle=dash, linewidth=2.2, label=name)
        ax.legend(loc="upper left", bbox_to_anchor=(1.01, 1.0), frameon=False)
        ax.axhline(0.0, color=GREY, linewidth=0.8)
    for i, link in enumerate(run.links):
        colour = looks[i % len(looks)][0]
        bottom.plot(link.peak.time, link.peak.torque, "o", color=colour, markersize=7, markeredgecolor="white", zorder=5)
        bottom.annotate(f"{link.peak.torque:,.0f} N·m", (link.peak.time, link.peak.torque), xytext=(6, 4), textcoords="offset points",
                        color=colour, fontweight="bold", bbox=PAPER, zorder=6)  # fmt: skip
    for time in {event.time for event in run.events}:
        for ax in (top, bottom):
            ax.axvline(time, color=GREY, linewidth=0.8, linestyle=":", zorder=1)
    top.margins(y=0.35)
    bottom.margins(y=0.15)
    _draw_events(top, run.events, bodies, links, float(trace.time[-1]))
    top.set(ylabel="speed [r/min]")
    bottom.set(xlabel="time [s]; dots: greatest torque of each link", ylabel="torque [N·m]", xlim=(0.0, float(trace.time[-1])))
    return figure
