"""Pictures of strength and life: stresses against limits, powers by PTO type, damage by range."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

import fieldshaft
from fieldshaft import si
from fieldshaft._plot_style import BLUE, GREEN, GREY, ORANGE, PAPER, RED, new_figure, number, plain
from fieldshaft._quantities import Context, reader
from fieldshaft._records import Sourced, given, show_quantity

if TYPE_CHECKING:
    from fieldshaft._plot_style import Figure


def _stress_rows(torque: float, spline: Any, spline_limits: Any, factors: Any, section: Any, shear_limit: Any) -> list[Any]:
    """Name, stress and limit of each row; the limit is None where none is stated."""
    rows = []
    if spline is not None:
        stress = si.spline_stress(plain(spline), torque, factors)
        bounds = plain(spline_limits.value if isinstance(spline_limits, Sourced) else spline_limits)
        for name, words in (
            ("root_torsion", "spline: torsion at the root"),
            ("tooth_shear", "spline: shear of the teeth"),
            ("flank_pressure", "spline: pressure on the flanks"),
        ):
            rows.append((words, getattr(stress, name), getattr(bounds, name, None)))
    if section is not None:
        limit = shear_limit.value if isinstance(shear_limit, Sourced) else shear_limit
        bound = None if limit is None else number(limit, "stress", "stresses", "shear_limit")
        rows.append(("shaft: torsion", si.torsion_stress(plain(section), torque), bound))
    return rows


def stresses(
    torque: Any, spline: Any = None, spline_limits: Any = None, section: Any = None, shear_limit: Any = None, factors: Any = si.SplineFactors()
) -> Figure:
    """Stresses of a spline and of a shaft, each as a share of its own limit.

    Parameters
    ----------
    torque : quantity or str
        That both carry.
    spline : StraightSpline, InvoluteSpline or MeasuredSpline, optional
        Without it the shaft is drawn alone.
    spline_limits : SplineLimits or Sourced, optional
        Such as from spline_limits; a stress without one is named, not judged.
    section : SolidSection, TubeSection or another section, optional
        Without it the spline is drawn alone.
    shear_limit : quantity, str or Sourced, optional
        Greatest shear stress of the shaft.
    factors : SplineFactors, default SplineFactors()
        Of the spline's stresses.

    Returns
    -------
    matplotlib Figure
    """
    moment = number(torque, "torque", "stresses", "torque")
    rows = _stress_rows(moment, spline, spline_limits, factors, section, shear_limit)
    if not rows:
        raise TypeError("stresses: neither spline nor section is given; expected at least one of them")
    figure, ax = new_figure(f"Stresses at {moment:,.0f} N·m, as shares of their limits", size=(9.0, 1.8 + 0.6 * len(rows)))
    shares = [100.0 * stress / limit if limit else 0.0 for _, stress, limit in rows]
    for place, ((_, stress, limit), share) in enumerate(zip(rows, shares, strict=True)):
        over = share > 100.0
        ax.barh(place, share, height=0.55, color=ORANGE if over else BLUE, hatch="///" if over else None, edgecolor="white")
        words = f"{stress / 1e6:.0f} MPa, no limit stated" if limit is None else f"{share:.0f} %: {stress / 1e6:.0f} of {limit / 1e6:.0f} MPa"
        ax.annotate(words, (share, place), xytext=(6, 0), textcoords="offset points", va="center",
                    fontweight="bold" if over else "normal", bbox=PAPER)  # fmt: skip
    ax.axvline(100.0, color=RED, linewidth=2, linestyle=(0, (1, 1)))
    ax.annotate("limit", (100.0, 1.0), xycoords=("data", "axes fraction"), ha="center", va="bottom", color=RED)
    ax.set_yticks(range(len(rows)), [name for name, _, _ in rows])
    ax.invert_yaxis()
    ax.grid(False, axis="y")
    ax.set(xlabel="stress over its limit [%]; hatched: beyond", xlim=(0.0, 1.45 * max(100.0, *shares)))
    return figure


def _recommended(speed: Any) -> list[tuple[Any, float, float, float]]:
    """Type, speed, and the lowest and highest power that the editions recommend for it."""
    rows = []
    for kind in si.pto_types():
        for known in kind.known_speeds:
            if speed is not None and not si.is_nominal_speed(speed, known.value):
                continue
            found = si.recommended_power(kind, known.value)
            if found.lowest and found.highest:
                rows.append((kind, known.value, found.lowest.value, found.highest.value))
    return rows


def _rpm(speed: float) -> float:
    return speed * 30.0 / np.pi


def recommended_powers(power: Any = None, speed: Any = None) -> Figure:
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
    at = None if speed is None else number(speed, "angular_speed", "recommended_powers", "speed")
    rows = _recommended(at)
    figure, ax = new_figure("Greatest recommended PTO power, by edition", size=(8.0, 2.0 + 0.55 * len(rows)))
    for place, (_, _, low, high) in enumerate(rows):
        ax.barh(place, low / 1e3, color=BLUE, height=0.55, label="all editions agree" if place == 0 else None)
        ax.barh(place, (high - low) / 1e3, left=low / 1e3, color=ORANGE, height=0.55, hatch="///", edgecolor="white",
                label="editions disagree" if place == 0 else None)  # fmt: skip
        words = f"{high / 1e3:.0f} kW" if high == low else f"{low / 1e3:.0f} to {high / 1e3:.0f} kW"
        ax.annotate(words, (high / 1e3, place), xytext=(6, 0), textcoords="offset points", va="center", bbox=PAPER)
    if power is not None:
        own = number(power, "power", "recommended_powers", "power") / 1e3
        ax.axvline(own, color="white", linewidth=5, zorder=2)
        ax.axvline(own, color=RED, linewidth=2.5, linestyle=(0, (1, 1)), label=f"this case: {own:.0f} kW", zorder=3)
    ax.set_yticks(range(len(rows)), [f"type {kind.number} at {_rpm(at):.0f} r/min" for kind, at, _, _ in rows])
    ax.invert_yaxis()
    ax.set_xlabel("PTO power [kW]")
    ax.margins(x=0.16)
    ax.grid(False, axis="y")
    figure.legend(*ax.get_legend_handles_labels(), loc="outside lower center", ncols=3, frameon=False)
    return figure


def pto_torque(power: Any = None, speed: Any = None) -> Figure:
    """Torque against power at each PTO speed, with what the editions recommend for each type, and a case's own point.

    Parameters
    ----------
    power : quantity or str, optional
        PTO power of the case.
    speed : quantity or str, optional
        PTO speed of the case; with both given its point is drawn.

    Returns
    -------
    matplotlib Figure
    """
    rows = _recommended(None)
    figure, ax = new_figure("Torque against power of the PTO types", size=(9.0, 6.0))
    colours = dict(zip(sorted({kind.number for kind, _, _, _ in rows}), ((BLUE, "o"), (ORANGE, "s"), (GREEN, "^"), ("#CC79A7", "D")), strict=False))
    greatest = 1.08 * max(high for _, _, _, high in rows)
    for turning in sorted({at for _, at, _, _ in rows}):
        ends = np.array([0.0, greatest])
        ax.plot(ends / 1e3, ends / turning, color=GREY, linewidth=1.0, zorder=1)
    for kind, turning, low, high in rows:
        colour, form = colours[kind.number]
        span = np.array([low, high])
        ax.plot(span / 1e3, span / turning, color=colour, linewidth=5, alpha=0.45, solid_capstyle="butt", zorder=2)
        ax.plot(span / 1e3, span / turning, form, color=colour, markersize=18 if kind.number == 1 else 10, markeredgecolor="white", zorder=3,
                label=f"type {kind.number}" if kind.known_speeds[0].value == turning else None)  # fmt: skip
    top = 1.15 * max(high / turning for _, turning, _, high in rows)
    for turning in sorted({at for _, at, _, _ in rows}):
        end = min(greatest, top * turning)
        ax.annotate(f"{_rpm(turning):.0f} r/min", (end / 1e3, end / turning), ha="right", va="bottom", color=GREY, fontweight="bold")
    if power is not None and speed is not None:
        own = number(power, "power", "pto_torque", "power")
        moment = si.shaft_torque(own, number(speed, "angular_speed", "pto_torque", "speed"))
        ax.plot(own / 1e3, moment, "*", color=RED, markersize=18, markeredgecolor="black", zorder=4, label=f"this case: {own / 1e3:.0f} kW, {moment:,.0f} N·m")
    ax.set(xlabel="PTO power [kW]", ylabel="torque [N·m]", xlim=(0.0, greatest / 1e3), ylim=(0.0, top))
    figure.legend(*ax.get_legend_handles_labels(), loc="outside lower center", ncols=5, frameon=False)
    ax.annotate("a bar between two marks: the editions disagree", (0.99, 0.03), xycoords="axes fraction", ha="right", color=GREY)
    return figure


def damage(cycles: Any, line: Any, rule: Any, bins: int = 20) -> Figure:
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
    figure, (top, bottom) = new_figure(f"Cycles and their damage; Miner's sum {whole:.3g}", 2, size=(7.5, 6.0), sharex=True)
    middle, width = 0.5 * (edges[:-1] + edges[1:]), 0.9 * (edges[1] - edges[0])
    top.bar(middle, counts, width, color=BLUE)
    unit = show_quantity(1 * cycles.range.units).removeprefix("1 ")
    top.set(ylabel="cycles")
    if counts.max() > 100:
        top.set_yscale("log")
    bottom.bar(middle, 100.0 * shares / whole if whole > 0.0 else shares, width, color=ORANGE, hatch="///", edgecolor="white")
    bottom.set(xlabel=f"range [{unit}]", ylabel="share of the damage [%]")
    if whole == 0.0:
        bottom.set_ylim(0.0, 100.0)
        bottom.annotate("no cycle does damage", (0.5, 0.5), xycoords="axes fraction", ha="center", color=GREY)
    return figure


def duties(duties: Any, line: Any, rule: Any, names: Any = ()) -> Figure:
    """Which work of the year uses up the life of a part: hours and share of Miner's sum of each duty.

    Parameters
    ----------
    duties : sequence of Duty, or data frame
        The year's work.
    line : TorqueSnLine
        S-N line of the part.
    rule : MeanStressRule or str
        What a mean does.
    names : sequence of str, optional
        What the duties are; else their mean and swing.

    Returns
    -------
    matplotlib Figure
    """
    context = Context("duties")
    work, number_line = reader("list[Duty]")(duties, context, "duties"), reader("TorqueSnLine")(line, context, "line")
    whole = si.duty_life(work, number_line, rule).value
    shares = [si.duty_life([duty], number_line, rule).value.damage_per_year for duty in work]
    words = list(names) or [f"{duty.mean:,.0f} ± {duty.amplitude:,.0f} N·m" for duty in work]
    if len(words) != len(work):
        raise TypeError(f"duties: names{given(names)}; expected one for each of the {len(work)} duties")
    years = f"{whole.years:.3g} years" if np.isfinite(whole.years) else "no end of life"
    figure, (left, right) = new_figure(f"What uses up the life: {years} of this work", 1, 2, (9.0, 2.2 + 0.5 * len(work)), sharey=True)
    damage = whole.damage_per_year
    for ax, values, text, colour, hatch in (
        (left, [duty.per_year / 3600.0 for duty in work], "{:,.0f} h", BLUE, None),
        (right, [100.0 * share / damage if damage > 0.0 else 0.0 for share in shares], "{:.1f} %", ORANGE, "///"),
    ):
        ax.barh(range(len(work)), values, height=0.6, color=colour, hatch=hatch, edgecolor="white")
        for place, value in enumerate(values):
            ax.annotate(text.format(value), (value, place), xytext=(4, 0), textcoords="offset points", va="center", bbox=PAPER)
        ax.grid(False, axis="y")
        ax.set_xlim(0.0, 1.25 * max(*values, 1e-9))
    left.set_yticks(range(len(work)), words)
    left.invert_yaxis()
    left.set_xlabel("work in a year [h]")
    right.set_xlabel("share of the damage [%]")
    return figure
