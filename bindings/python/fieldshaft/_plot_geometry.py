"""Pictures of the driveline: angles and length over the range, and views of a pose."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

from fieldshaft import si
from fieldshaft._plot_style import BLUE, DASHES, GREEN, GREY, ORANGE, PAPER, RED, draw_limit, mark, new_figure, plain
from fieldshaft._records import given

if TYPE_CHECKING:
    from fieldshaft._plot_style import Figure

DEGREES = "{:.1f}°"
MILLIMETRES = "{:.0f} mm"


def _limits_of_angles(limits: Any) -> list[tuple[float, str]]:
    """The limits of the joints in degrees with their words; equal ones once."""
    front, rear = limits.front_angle, limits.rear_angle
    if front is not None and front == rear:
        return [(np.degrees(front), "limit of both joints")]
    pairs = ((front, "limit of the front joint"), (rear, "limit of the rear joint"))
    return [(np.degrees(angle), words) for angle, words in pairs if angle is not None]


def joint_angles(driveline: Any, pin: Any, range: Any, limits: Any = None, points: int = 41) -> Figure:
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
    shaft, place, turns, bounds = (plain(item) for item in (driveline, pin, range, limits))
    rows = si.envelope_table(shaft, place, turns, points, 7)
    yaw = np.unique([row.yaw for row in rows])

    def worst(name: str, choose: Any) -> Any:
        return np.array([choose(getattr(row, name) for row in rows if row.yaw == at) for at in yaw])

    extremes = si.driveline_envelope(shaft, place, turns)
    figure, (top, bottom) = new_figure("Driveline over the turn, at the worst pitch and roll", 2, size=(7.5, 7.0), sharex=True)
    x = np.degrees(yaw)
    for name, colour, words in (("front_angle", BLUE, "front joint"), ("rear_angle", ORANGE, "rear joint")):
        top.plot(x, np.degrees(worst(name, max)), color=colour, linestyle=DASHES[colour], linewidth=2.5, label=words)
    for name, choose, colour, words in (("longest", max, BLUE, "longest"), ("shortest", min, ORANGE, "shortest")):
        bottom.plot(x, 1e3 * worst(name, choose), color=colour, linestyle=DASHES[colour], linewidth=2.5, label=words)
    if bounds is not None:
        for height, words in _limits_of_angles(bounds):
            draw_limit(top, height, words, at=0.5)
        for name, words in (("longest", "longest allowed"), ("shortest", "shortest allowed")):
            if getattr(bounds, name) is not None:
                draw_limit(bottom, 1e3 * getattr(bounds, name), words)
    top.set(ylabel="joint angle [°]")
    top.set_ylim(bottom=0)
    top.margins(x=0.02, y=0.22)
    bottom.margins(y=0.22)
    bottom.set(xlabel="turn [°], below 0: to the left", ylabel="between the joint centres [mm]")
    for name, colour in (("front_angle", BLUE), ("rear_angle", ORANGE)):
        extreme = getattr(extremes, name)
        at = (np.degrees(extreme.at.yaw), np.degrees(extreme.upper))
        mark(top, at, f"at most {DEGREES.format(at[1])}", colour, below=colour == ORANGE)
    for extreme, size, words, colour in (
        (extremes.longest, extremes.longest.upper, "at most", BLUE),
        (extremes.shortest, extremes.shortest.lower, "at least", ORANGE),
    ):
        mark(bottom, (np.degrees(extreme.at.yaw), 1e3 * size), f"{words} {MILLIMETRES.format(1e3 * size)}", colour, colour == ORANGE)
    for ax in (top, bottom):
        ax.legend(loc="upper left", bbox_to_anchor=(1.01, 1.0), frameon=False)
    return figure


def envelope_map(driveline: Any, pin: Any, range: Any, limits: Any = None, points: int = 21) -> Figure:
    """Joint angles and length of a driveline over turn and pitch, at the worst roll, with limits and proved extremes.

    Parameters
    ----------
    driveline : Driveline
    pin : Position
        Origin of the implement frame in the tractor frame.
    range : AttitudeRange
        Turns, pitches and rolls; turn and pitch must both have some width.
    limits : DrivelineLimits, optional
        What lies beyond is hatched.
    points : int, default 21
        Turns that are looked at; of pitches half as many.

    Returns
    -------
    matplotlib Figure
    """
    shaft, place, turns, bounds = (plain(item) for item in (driveline, pin, range, limits))
    for name in ("yaw", "pitch"):
        if not getattr(turns, name).high > getattr(turns, name).low:
            raise si.InputError("envelope_map", "range", f"{name} of no width", "a turn and a pitch that vary; see joint_angles")
    columns = max(points // 2, 2)
    rows = si.envelope_table(shaft, place, turns, points, columns)
    extremes = si.driveline_envelope(shaft, place, turns)
    figure, axes = new_figure("Driveline over turn and pitch, at the worst roll", 2, 2, (10.0, 7.0), sharex=True, sharey=True)
    parts: tuple[tuple[str, str, Any, str, str, str], ...] = (
        ("front_angle", "front joint", np.degrees, DEGREES, "upper", "at most"),
        ("rear_angle", "rear joint", np.degrees, DEGREES, "upper", "at most"),
        ("longest", "longest", lambda m: 1e3 * m, MILLIMETRES, "upper", "at most"),
        ("shortest", "shortest", lambda m: 1e3 * m, MILLIMETRES, "lower", "at least"),
    )
    for ax, (name, title, scale, text, bound, words) in zip(np.ravel(axes), parts, strict=True):
        x, y, z = (
            np.reshape(values, (points, columns))
            for values in (
                np.degrees([row.yaw for row in rows]),
                np.degrees([row.pitch for row in rows]),
                scale(np.array([getattr(row, name) for row in rows])),
            )
        )
        limit = None if bounds is None or getattr(bounds, name) is None else scale(getattr(bounds, name))
        _contours(ax, x, y, z, text, limit, below=name == "shortest")
        extreme = getattr(extremes, name)
        size = scale(getattr(extreme, bound))
        mark(ax, (np.degrees(extreme.at.yaw), np.degrees(extreme.at.pitch)), f"{words} {text.format(size)}", "black")
        note = "" if limit is None else f", limit {text.format(limit)}"
        ax.set_title(f"{title}{note}", loc="left", fontsize="medium")
    for ax in axes[1]:
        ax.set_xlabel("turn [°], below 0: to the left")
    for ax in axes[:, 0]:
        ax.set_ylabel("pitch [°], above 0: hollow")
    if bounds is not None:
        figure.supxlabel("hatched: beyond the limit; dots: the proved extreme over the whole range", fontsize="small", color=GREY)
    return figure


def _contours(ax: Any, x: Any, y: Any, z: Any, text: str, limit: Any, below: bool) -> None:
    """Shades from light to dark, lines with their values, and hatches beyond the limit."""
    ax.grid(False)
    if np.ptp(z) < 1e-9 * max(abs(z.max()), 1.0):  # the same everywhere: nothing to draw lines of
        ax.pcolormesh(x, y, z, cmap="Blues", shading="gouraud", vmin=z.min() - 1.0, vmax=z.max() + 1.0)
        return
    ax.contourf(x, y, z, levels=12, cmap="Blues", vmax=z.max() + 0.8 * np.ptp(z))  # light enough to write on
    lines = ax.contour(x, y, z, levels=6, colors="black", linewidths=0.8)
    if limit is not None:
        _hatch_beyond(ax, x, y, z, limit, below)
    for label in ax.clabel(lines, fmt=lambda value: text.format(value), fontsize="small", inline=True):
        label.set(bbox=PAPER, zorder=4)


def _hatch_beyond(ax: Any, x: Any, y: Any, z: Any, limit: Any, below: bool) -> None:
    beyond = (z.min() - 1.0, limit) if below else (limit, z.max() + 1.0)
    if (z.min() < limit) if below else (z.max() > limit):
        ax.contourf(x, y, z, levels=sorted(beyond), colors="none", hatches=["////"])
        ax.contour(x, y, z, levels=[limit], colors=RED, linewidths=2.5, linestyles="--")


def turn_curve(assessment: Any) -> Figure:
    """How far one may turn before the first rule objects, over the pitch, with the turns that the case states.

    Parameters
    ----------
    assessment : Assessment
        Of a case with a trailed implement.

    Returns
    -------
    matplotlib Figure
    """
    table = assessment.turn_frame()
    if table.empty:
        raise si.InputError("turn_curve", "assessment", "without a turn curve", "one of a trailed machine whose turns are stated")
    figure, ax = new_figure("How far one may turn, proved for each pitch", size=(8.0, 5.0))
    pitch, left, right = (table[name].to_numpy() for name in ("pitch [deg]", "left [deg]", "right [deg]"))
    ax.fill_betweenx(pitch, -left, right, color=BLUE, alpha=0.12)
    for turns, words in ((-left, "to the left"), (right, "to the right")):
        ax.plot(turns, pitch, color=BLUE, linewidth=2.5)
        worst = int(np.argmin(np.abs(turns)))
        mark(ax, (turns[worst], pitch[worst]), f"{DEGREES.format(abs(turns[worst]))} {words}", BLUE)
    for state in assessment.envelopes:
        if state.state == "turning":
            low, high = np.degrees(state.yaw)
            ax.axvspan(low, high, facecolor="none", edgecolor=ORANGE, hatch="..", linewidth=0.0, label="turns of the case", zorder=0)
    ax.axvline(0.0, color=GREY, linewidth=0.8)
    ax.set(xlabel="turn [°], below 0: to the left", ylabel="pitch [°], above 0: hollow")
    ax.margins(x=0.12)
    figure.legend(*ax.get_legend_handles_labels(), loc="outside lower center", frameon=False)
    return figure


# Views. ---------------------------------------------------------------------------------------------------------


class _Sketch:
    """Lines and areas in the tractor frame, drawn from the side and from above."""

    def __init__(self, side: Any, plan: Any) -> None:
        self.views = ((side, 2), (plan, 1))

    def line(self, points: Any, colour: str, width: float, words: str | None = None, dash: str = "-", only: int | None = None) -> None:
        for ax, axis in self.views:
            if only in (None, axis):
                ax.plot(1e3 * points[:, 0], 1e3 * points[:, axis], color=colour, linewidth=width, linestyle=dash,
                        solid_capstyle="round", label=words)  # fmt: skip

    def area(self, points: Any, axis: int, colour: str, hatch: str, words: str | None = None) -> None:
        ax = next(ax for ax, number in self.views if number == axis)
        ax.fill(1e3 * points[:, 0], 1e3 * points[:, axis], facecolor=colour, alpha=0.25, edgecolor=colour, hatch=hatch, label=words)

    def dot(self, point: Any, colour: str, form: str, size: float, words: str | None = None) -> None:
        for ax, axis in self.views:
            ax.plot(1e3 * point[0], 1e3 * point[axis], form, color=colour, markersize=size, label=words, zorder=5)


def _point(position: Any) -> Any:
    return np.array([position.forward, position.left, position.up])


def _placed(pose: Any, *points: tuple[float, float, float]) -> Any:
    """Points of the implement frame in the tractor frame, one row each."""
    return np.array([_point(si.in_tractor(pose, si.Position(*point))) for point in points])


def _draw_tractor(sketch: _Sketch, size: float) -> None:
    """A block ahead of the shaft's end; only its rear face is to scale."""
    high, wide, deep = 0.35 * size, 0.3 * size, 0.45 * size
    sketch.area(np.array([[0, 0, -high], [deep, 0, -high], [deep, 0, high], [0, 0, high]]), 2, GREY, "", "tractor (sketched)")
    sketch.area(np.array([[0, -wide, 0], [deep, -wide, 0], [deep, wide, 0], [0, wide, 0]]), 1, GREY, "")


def _draw_implement(sketch: _Sketch, pose: Any, inlet: Any, size: float) -> None:
    """A tongue from the hitch point to the input shaft, and a block behind it, which is sketched."""
    x, y, z = inlet.forward, inlet.left, inlet.up
    back, wide, low = x - 0.45 * size, 0.35 * size, min(0.0, z) - 0.1 * size
    sketch.area(_placed(pose, (x, y, low), (x, y, z + 0.1 * size), (back, y, z + 0.1 * size), (back, y, low)), 2, GREEN, "..", "implement (sketched)")
    sketch.area(_placed(pose, (x, y - wide, z), (x, y + wide, z), (back, y + wide, z), (back, y - wide, z)), 1, GREEN, "..")
    sketch.line(_placed(pose, (0, 0, 0), (x, y, 0)), GREEN, 2.5, dash="-.")


def _draw_drawbar(sketch: _Sketch, pose: Any, size: float) -> None:
    pin = _point(pose.pin)
    sketch.line(np.array([[0.3 * size, 0.0, pin[2]], pin]), "black", 3.0, "drawbar")


def _draw_linkage(sketch: _Sketch, linkage: Any, pose: Any) -> None:
    """Lower links and top link between their pivots and the hitch points; seen from above the links as their span shows."""
    depth, rise, half = linkage.coupler_depth, linkage.coupler_rise, 0.5 * linkage.span
    ends = _placed(pose, (depth, half, -rise), (depth, -half, -rise), (depth + linkage.mast_forward, 0, linkage.mast_height - rise))
    share = linkage.lower_link / linkage.convergence if linkage.convergence > 0.0 else 0.0
    for end, side in ((ends[0], 1.0), (ends[1], -1.0)):
        pivot = np.array([-linkage.lower_pivot_behind, side * half * (1.0 - share), -linkage.lower_pivot_below])
        sketch.line(np.array([pivot, end]), "black", 3.0, "lower links" if side > 0 else None)
        sketch.dot(pivot, "black", "o", 5)
    top = np.array([-linkage.top_pivot_behind, 0.0, -linkage.top_pivot_below])
    sketch.line(np.array([top, ends[2]]), GREY, 3.0, "top link", "--")
    sketch.dot(top, GREY, "o", 5)
    sketch.line(np.array([ends[2], _point(pose.pin)]), GREEN, 2.5, dash="-.", only=2)
    sketch.line(ends[:2], GREEN, 2.5, dash="-.", only=1)


def _pose_of(pose: Any, hitch: Any) -> Any:
    if isinstance(pose, si.Pose):
        return pose
    if isinstance(pose, si.LinkagePosition) and isinstance(hitch, si.ThreePointLinkage):
        return si.mounted_pose(hitch, pose)
    raise TypeError(f"views: pose{given(pose)}; expected a Pose, or a LinkagePosition with a ThreePointLinkage as hitch")


def views(driveline: Any, pose: Any, hitch: Any = None) -> Figure:
    """Side and plan view of tractor hitch, driveline and implement at a pose.

    Parameters
    ----------
    driveline : Driveline
    pose : Pose or LinkagePosition
        Of the implement; where a linkage stands only together with that linkage.
    hitch : DrawbarHitch or ThreePointLinkage, optional
        Drawn if it is given; without it a drawbar is drawn to the pin.

    Returns
    -------
    matplotlib Figure
    """
    shaft, hung = plain(driveline), plain(hitch)
    place = _pose_of(plain(pose), hung)
    state = si.driveline_at(shaft, place)
    output, front = _point(shaft.output), _point(si.front_joint_position(shaft))
    rear = _point(si.in_tractor(place, si.rear_joint_position(shaft)))
    inlet = _point(si.in_tractor(place, shaft.input))
    size = float(np.linalg.norm(inlet - output))
    figure, (side, plan) = new_figure("Driveline at one pose", 2, size=(9.0, 8.0), sharex=True)
    figure.set_layout_engine("compressed")  # axes of a fixed scale
    sketch = _Sketch(side, plan)
    _draw_tractor(sketch, size)
    _draw_implement(sketch, place, shaft.input, size)
    if isinstance(hung, si.ThreePointLinkage):
        _draw_linkage(sketch, hung, place)
    else:
        _draw_drawbar(sketch, place, size)
    sketch.line(np.array([output, front]), GREY, 6, "PTO shaft")
    sketch.line(np.array([rear, inlet]), ORANGE, 6, "input shaft")
    sketch.line(np.array([front, rear]), BLUE, 6, "driveline")
    for joint in (front, rear):
        sketch.dot(joint, "black", "o", 9, "joints" if joint is front else None)
    sketch.dot(_point(place.pin), GREEN, "s", 9, "hitch point")
    _finish_views(figure, side, plan, state, front, rear)
    return figure


def _same_scale(figure: Any, axes: tuple[Any, Any]) -> None:
    """Both views in one scale, each as high as what it shows."""
    boxes = [ax.dataLim for ax in axes]
    wide = 1.06 * max(box.width for box in boxes)
    high = [1.2 * box.height + 0.05 * wide for box in boxes]
    figure.set_size_inches(9.0, 1.6 + 6.1 * sum(high) / wide)
    axes[0].get_gridspec().set_height_ratios(high)
    middle = 0.5 * (min(box.x0 for box in boxes) + max(box.x1 for box in boxes))
    for ax, box, size in zip(axes, boxes, high, strict=True):
        ax.set(xlim=(middle - 0.5 * wide, middle + 0.5 * wide), aspect="equal")
        ax.set_ylim(0.5 * (box.y0 + box.y1 - size), 0.5 * (box.y0 + box.y1 + size))


def _finish_views(figure: Any, side: Any, plan: Any, state: Any, front: Any, rear: Any) -> None:
    for ax, axis, words in ((side, 2, "up [mm]"), (plan, 1, "left [mm]")):
        for joint, angle in ((front, state.front_angle), (rear, state.rear_angle)):
            ax.annotate(DEGREES.format(np.degrees(angle)), 1e3 * joint[[0, axis]], xytext=(0, 12), textcoords="offset points",
                        ha="center", fontweight="bold", bbox=PAPER)  # fmt: skip
        ax.set_ylabel(words)
    _same_scale(figure, (side, plan))
    figure.suptitle(
        f"Driveline at one pose: {np.degrees(state.front_angle):.1f}° at the front joint, "
        f"{np.degrees(state.rear_angle):.1f}° at the rear, {1e3 * state.length:.0f} mm between them",
        fontweight="bold",
    )
    side.set_title("from the right side, driving to the right", loc="left", fontsize="medium")
    plan.set_title("from above, driving to the right", loc="left", fontsize="medium")
    plan.set_xlabel("forward of the PTO shaft's end [mm]")
    figure.legend(*side.get_legend_handles_labels(), loc="outside right center", frameon=False)
