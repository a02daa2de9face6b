"""The pictures of the handbook, drawn by the library: one function a page, named as the page; its docstring is the caption.

Every machine in them is invented.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import fieldshaft
import matplotlib
import numpy as np
from fieldshaft import plots, si
from fieldshaft._plot_style import BLUE, DASHES, GREEN, ORANGE, RED, draw_limit, new_figure

matplotlib.use("svg")
matplotlib.rcParams["svg.hashsalt"] = "fieldshaft"  # the same picture at every build

RPM = np.pi / 30
EXAMPLES = Path(__file__).resolve().parents[1] / "examples"

SHAFT = fieldshaft.Driveline("60 mm", "60 mm", fieldshaft.Position("-700 mm", "0 mm", "250 mm"))
PIN = fieldshaft.Position("-400 mm", "0 mm", "-250 mm")
TURNS = fieldshaft.AttitudeRange(fieldshaft.AngleRange("-50 deg", "50 deg"), fieldshaft.AngleRange("-6 deg", "6 deg"))


def units() -> Any:
    """Torque of the power take-off over its power, read in metric units (left and bottom) or in US units (right and top)."""
    figure, ax = new_figure("Torque from power and speed")
    power = np.linspace(0.0, 150e3, 151)
    for speed, colour in ((540, BLUE), (1000, ORANGE)):
        ax.plot(power / 1e3, si.shaft_torque(power, speed * RPM), color=colour, linestyle=DASHES[colour], label=f"{speed} r/min")
    ax.set(xlabel="power [kW]", ylabel="torque [N·m]", xlim=(0, 150), ylim=(0, None))
    horsepower, pound_foot = 0.74569987158227022, 1.3558179483314004  # kW and N·m (NIST SP 811)
    ax.secondary_xaxis("top", functions=(lambda x: x / horsepower, lambda x: x * horsepower)).set_xlabel("power [hp]")
    ax.secondary_yaxis("right", functions=(lambda y: y / pound_foot, lambda y: y * pound_foot)).set_ylabel("torque [lbf·ft]")
    ax.legend(loc="upper left")
    return figure


def materials() -> Any:
    """Tensile and yield strength of the steels in the catalogue, each in one condition."""
    figure, ax = new_figure("Steels of the catalogue")
    ultimate, yields = (np.array([getattr(m, name) for m in si.materials()]) / 1e6 for name in ("ultimate", "yield_"))
    ax.plot(ultimate, yields, "o", color=BLUE, label="a steel in one condition")
    ax.plot([300, 2000], [300, 2000], color=RED, linestyle=DASHES[RED], label="yield equals tensile strength")
    ax.set(xlabel="tensile strength [MPa]", ylabel="yield strength [MPa]")
    ax.legend()
    return figure


def pto() -> Any:
    """Recommended greatest powers of the PTO types at 540 r/min, lowest and highest edition, and a tractor of 58 kW."""
    return plots.recommended_powers("58 kW", "540 rpm")


def power() -> Any:
    """Fuel of a diesel engine of 58 kW rated PTO power over its load, at full and at reduced engine speed (ASAE D497)."""
    figure, ax = new_figure("Fuel over load")
    load = np.linspace(0.2, 1.0, 81)
    for share, colour in ((1.0, BLUE), (0.85, ORANGE), (0.7, GREEN)):
        litres = si.fuel_rate(58e3, load, share) * 3.6e6
        ax.plot(100 * load, litres, color=colour, linestyle=DASHES[colour], label=f"{100 * share:.0f} % of the engine speed")
    ax.set(xlabel="share of the rated power [%]", ylabel="fuel [L/h]")
    ax.legend()
    return figure


def rotor() -> Any:
    """Blade tip speed of a rotary cutter over the engine speed in two gears, and the highest one stated by its maker."""
    options = [fieldshaft.pto_option("540", "540 rpm", "2100 rpm"), fieldshaft.pto_option("1000", "1000 rpm", "2050 rpm")]
    return plots.tip_speed("750 mm", 1.6, options, ("1000 rpm", "2350 rpm"), "80 m/s")


def fatigue() -> Any:
    """Load cycles of an invented torque history by their range, and the damage that each class of them does."""
    steps = np.arange(2000)
    history = (600 + 400 * np.sin(steps * 1.3) * np.cos(steps * 0.017)) * fieldshaft.shaft_torque("1 kW", "540 rpm").units
    line = fieldshaft.TorqueSnLine("3 kN·m", -0.1, "300 N·m", "6 kN·m", "5 kN·m")
    return plots.damage(fieldshaft.count_cycles(history), line, "goodman")


def joint() -> Any:
    """How unevenly one joint at 20° turns its driven shaft, and what a second one at 15° in phase leaves of it."""
    return plots.speed_ripple("20 deg", "15 deg", "0 deg")


def spline() -> Any:
    """Stresses of a six-tooth spline of 1 3/8 in under 400 N·m as shares of their limits, for a hub that slides unloaded."""
    six = fieldshaft.sae_spline(6, "b_slides_unloaded", "1.375 in", "75 mm")
    return plots.stresses("400 N·m", six, fieldshaft.spline_limits("brinell_302_351"))


def shaft() -> Any:
    """Critical speed of two steel tubes over their length between the joints, against two PTO speeds."""
    figure, ax = new_figure("Critical speed over length")
    lengths = np.linspace(0.8, 2.5, 100)
    for (outer, inner), colour in (((60, 52), BLUE), ((45, 37), ORANGE)):
        speeds = si.critical_speed(si.TubeSection(outer / 1e3, inner / 1e3), lengths, 207e9, 7850.0) / RPM
        ax.plot(lengths, speeds, color=colour, linestyle=DASHES[colour], label=f"tube {outer}/{inner} mm")
    for speed in (540, 1000):
        draw_limit(ax, speed, f"PTO at {speed} r/min", 0.2)
    ax.set(xlabel="joint centre to joint centre [m]", ylabel="critical speed [r/min]", ylim=(0, 8000))
    ax.legend()
    return figure


def overload() -> Any:
    """Between which torques a shear bolt of class 8.8 at 75 mm goes: it must hold the work and go before a part yields."""
    figure, ax = new_figure("Shear bolts of class 8.8, 75 mm from the axis")
    sizes = (6, 8, 10, 12)
    for place, size in enumerate(sizes):
        band = si.shear_bolt_band_of_grade(size / 1e3, 0.075, si.find_bolt_grade("8.8", size / 1e3), 1, 1)
        ax.bar(place, band.high - band.low, bottom=band.low, width=0.5, color=BLUE, edgecolor="black")
    draw_limit(ax, 1060.0, "peak of the work (invented)", 0.99)
    draw_limit(ax, 3375.0, "weakest part yields (invented)", 0.01)
    ax.set(xlabel="bolt", ylabel="torque [N·m]", xticks=range(len(sizes)), xticklabels=[f"M{size}" for size in sizes])
    return figure


def hitch() -> Any:
    """A mounted implement at one lift: linkage, driveline and both joint angles in side view and plan."""
    linkage = fieldshaft.ThreePointLinkage(
        "100 mm", "250 mm", "900 mm", "200 mm", "-300 mm", "650 mm", "610 mm", span="820 mm", convergence="1900 mm"
    )
    line = fieldshaft.Driveline("60 mm", "60 mm", fieldshaft.Position("-100 mm", "0 mm", "250 mm"))
    return plots.views(line, fieldshaft.LinkagePosition("350 mm", "60 mm"), linkage)


def driveline() -> Any:
    """Joint angles and length of a trailed driveline over the turn, the proved extremes, and limits."""
    limits = fieldshaft.DrivelineLimits("25 deg", "25 deg", None, "1 m", "850 mm")
    return plots.joint_angles(SHAFT, PIN, TURNS, limits)


def dynamics() -> Any:
    """A rotor is brought up by a slip clutch of 600 N·m against a load of 250 N·m: both speeds and the clutch's torque."""
    drive = si.LineBody("PTO", 1.0, 540 * RPM, si.HeldSpeed())
    rotor = si.LineBody("rotor", 4.0, load=si.LineLoad(250.0))
    result = si.simulate(si.PtoLine([drive, rotor], [si.LineClutch(600.0)]), si.SimulationSettings(1.0, sample_every=0.01))
    figure, (speeds, torque) = new_figure("Start through a slip clutch", 2, 1, sharex=True)
    for column, (name, colour) in enumerate((("PTO", BLUE), ("rotor", ORANGE))):
        speeds.plot(result.trace.time, result.trace.speeds[:, column] / RPM, color=colour, linestyle=DASHES[colour], label=name)
    torque.plot(result.trace.time, result.trace.torques[:, 0], color=GREEN)
    speeds.set(ylabel="speed [r/min]")
    speeds.legend()
    torque.set(xlabel="time [s]", ylabel="clutch torque [N·m]")
    return figure


def farm() -> Any:
    """Which tractor of the example farm runs which implement (screening, every machine invented)."""
    return plots.farm_matrix(fieldshaft.study_farm(fieldshaft.read_farm_file(EXAMPLES / "farms" / "three-tractors-seven-implements.json"), "screening"))


def cost() -> Any:
    """What a four-wheel drive tractor of 60 to 112 kW is worth and what its repairs have come to, in shares of the list price, at 400 h a year."""
    figure, ax = new_figure("Worth and repairs of a tractor")
    years = np.arange(1, 21)
    worth = [si.remaining_value("tractor 60 to 112 kW", float(n), 400 * 3600.0).value for n in years]
    repairs = [si.accumulated_repair("tractor, four-wheel drive and crawler", 400 * 3600.0 * n).value for n in years]
    for share, colour, name in ((worth, BLUE, "still worth"), (repairs, ORANGE, "repairs so far")):
        ax.plot(years, 100 * np.array(share), color=colour, linestyle=DASHES[colour], label=name)
    ax.set(xlabel="age [years]", ylabel="share of the list price [%]", xlim=(0, 20), xticks=range(0, 21, 5), ylim=(0, None))
    ax.legend()
    return figure


def advise() -> Any:
    """The engine speed to set in each gear of the example tractor, and the one never to pass (every machine invented)."""
    case = fieldshaft.read_case_file(EXAMPLES / "cases" / "baler-by-the-table.json")
    uses = [use.si for use in fieldshaft.gear_uses(case)]
    figure, ax = new_figure("Engine speeds in each gear", size=(7.5, 3.0))
    for place, use in enumerate(uses):
        ax.barh(place, use.never_pass / RPM, color="#dddddd", height=0.5)
        for speed, colour, marker, words, side in ((use.set, GREEN, "o", "set", -1), (use.never_pass, RED, "|", "never pass", 1)):
            ax.plot(speed / RPM, place, marker, color=colour, markersize=12, markeredgewidth=3)
            ax.annotate(f"{words} {speed / RPM:.0f}", (speed / RPM + 45 * side, place), ha="right" if side < 0 else "left", va="center", color=colour)
    ax.set(yticks=range(len(uses)), yticklabels=[use.gear for use in uses], xlabel="engine speed [r/min]", xlim=(0, 3000))
    return figure


FIGURES: tuple[Callable[[], Any], ...] = (
    units, materials, pto, power, rotor, fatigue, joint, spline, shaft, overload, hitch, driveline, dynamics, cost, advise, farm,
)  # fmt: skip


def draw_all(folder: Path) -> dict[str, str]:
    """Draws every picture into a folder; the captions by page."""
    folder.mkdir(parents=True, exist_ok=True)
    for draw in FIGURES:
        figure = draw()
        figure.savefig(folder / f"{draw.__name__}.svg", metadata={"Date": None})
        matplotlib.pyplot.close(figure)
    return {draw.__name__: " ".join((draw.__doc__ or "").split()) for draw in FIGURES}


if __name__ == "__main__":
    captions = draw_all(Path(sys.argv[1]))
    (Path(sys.argv[1]) / "captions.txt").write_text("".join(f"{page}\t{text}\n" for page, text in captions.items()))
