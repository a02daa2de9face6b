"""Pictures of speeds: ripple over one turn, and tip speed against engine speed."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING, Any

import numpy as np

from fieldshaft import si
from fieldshaft._plot_style import BLUE, DASHES, GREY, ORANGE, draw_limit, new_figure, number, plain

if TYPE_CHECKING:
    from fieldshaft._plot_style import Figure


def speed_ripple(front: Any, rear: Any = None, phase: Any = "0 deg") -> Figure:
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
    one = number(front, "angle", "speed_ripple", "front")
    turn = np.linspace(0.0, 2.0 * np.pi, 721)
    single = 100.0 * (si.joint_speed_ratio(one, turn) - 1.0)
    figure, ax = new_figure("Speed of the driven shaft over one turn")
    degrees = np.degrees(turn)
    ax.plot(degrees, single, color=ORANGE, linestyle="--", linewidth=2, label=f"behind one joint at {np.degrees(one):.1f}°")
    if rear is not None:
        two = number(rear, "angle", "speed_ripple", "rear")
        shift = number(phase, "angle", "speed_ripple", "phase")
        both = 100.0 * (si.joint_pair_speed_ratio(one, two, shift, turn) - 1.0)
        label = f"behind both, {np.degrees(one):.1f}° and {np.degrees(two):.1f}°, phase {np.degrees(shift):.0f}°"
        ax.plot(degrees, both, color=BLUE, linewidth=2.5, label=label)
    ax.set(xlabel="rotation of the driving shaft [°]", ylabel="faster or slower than the driving shaft [%]", xlim=(0, 360))
    ax.set_xticks(range(0, 361, 45))
    ax.margins(y=0.1)
    figure.legend(loc="outside lower center", ncols=2, frameon=False)
    return figure


def tip_speed(radius: Any, ratio: float, options: Iterable[Any], engine_speeds: tuple[Any, Any], limit: Any = None) -> Figure:
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
    reach = number(radius, "length", "tip_speed", "radius")
    low, high = (number(speed, "angular_speed", "tip_speed", "engine_speeds") for speed in engine_speeds)
    engine = np.linspace(low, high, 101)
    rpm = engine * 30.0 / np.pi
    figure, ax = new_figure("Tip speed against engine speed")
    for option, (colour, dash) in zip(options, DASHES.items(), strict=False):
        gear = plain(option)
        speed = si.tip_speed(si.geared_speed(si.pto_speed(gear, engine), ratio), reach)
        ax.plot(rpm, speed, color=colour, linestyle=dash, linewidth=2.5)
        ax.annotate(gear.name, (rpm[-1], speed[-1]), xytext=(8, 0), textcoords="offset points", color=colour, va="center",
                    fontweight="bold")  # fmt: skip
        if low <= gear.engine_speed <= high:
            rated = si.tip_speed(si.geared_speed(gear.nominal_speed, ratio), reach)
            ax.plot(gear.engine_speed * 30.0 / np.pi, rated, "o", color=colour, markersize=8)
    if limit is not None:
        draw_limit(ax, number(limit, "speed", "tip_speed", "limit"), "highest tip speed", at=0.01)
    ax.set(xlabel="engine speed [r/min]", ylabel="tip speed [m/s]", xlim=(rpm[0], rpm[-1] + 0.08 * (rpm[-1] - rpm[0])))
    ax.set_ylim(bottom=0)
    ax.annotate("dots: PTO at its nominal speed", (0.99, 0.03), xycoords="axes fraction", ha="right", color=GREY)
    return figure
