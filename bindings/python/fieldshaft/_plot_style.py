"""What the pictures share: colours and dashes, axes, limits, and how numbers come in."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

from fieldshaft._extras import need
from fieldshaft._quantities import Context, reader

if TYPE_CHECKING:  # matplotlib is an extra: where it is missing, type checkers see Any
    from matplotlib.figure import Figure as Figure  # type: ignore[import-not-found, unused-ignore]

#: Okabe and Ito's colours, which colour-blind eyes tell apart, and the dash that goes with each for print.
BLUE, ORANGE, GREEN, RED, GREY = "#0072B2", "#E69F00", "#009E73", "#D55E00", "#666666"
DASHES = {BLUE: "-", ORANGE: "--", GREEN: "-.", RED: ":"}

#: A light ground for words that stand on lines.
PAPER = {"boxstyle": "round,pad=0.15", "facecolor": "white", "edgecolor": "none", "alpha": 0.85}


def number(value: Any, kind: str, function: str, parameter: str) -> Any:
    """A quantity or text as its SI number."""
    return reader(kind)(value, Context(function), parameter)


def plain(item: Any) -> Any:
    """A record of either layer in plain SI numbers."""
    return item.si if hasattr(item, "si") else item


def new_figure(
    title: str, rows: int = 1, columns: int = 1, size: tuple[float, float] = (7.5, 4.5), **more: Any
) -> tuple[Figure, Any]:
    plt = need("matplotlib.pyplot", "pictures")
    figure, axes = plt.subplots(rows, columns, figsize=size, layout="constrained", **more)
    figure.suptitle(title, fontweight="bold")
    for ax in np.ravel(axes):
        ax.grid(True, color="#dddddd", linewidth=0.8)
        ax.set_axisbelow(True)
        ax.spines[["top", "right"]].set_visible(False)
    return figure, axes


def draw_limit(ax: Any, height: float, text: str, at: float = 0.99) -> None:
    """A horizontal limit with its name, which stands at a share of the width."""
    ax.axhline(height, color=RED, linewidth=1.6, linestyle=(0, (1, 1)))
    ax.annotate(text, (at, height), xycoords=("axes fraction", "data"), xytext=(0, 2), textcoords="offset points",
                ha="right" if at > 0.75 else "left" if at < 0.25 else "center", va="bottom", color=RED, bbox=PAPER)  # fmt: skip


def mark(ax: Any, place: tuple[float, float], text: str, colour: str, below: bool = False) -> None:
    """A dot with words that stay inside the axes."""
    x, y = place
    (low, high), (bottom, top) = ax.get_xlim(), ax.get_ylim()
    share = (x - low) / (high - low)
    below = below or (y - bottom) / (top - bottom) > 0.9
    side = "left" if share < 0.25 else "right" if share > 0.75 else "center"
    shift = {"left": 6, "right": -6, "center": 0}[side]
    ax.plot(x, y, "o", color=colour, markersize=8, markeredgecolor="white", zorder=5, clip_on=False)
    ax.annotate(text, place, xytext=(shift, -9 if below else 9), textcoords="offset points", ha=side,
                va="top" if below else "bottom", color=colour, fontweight="bold", bbox=PAPER, zorder=6)  # fmt: skip
