"""The picture of a farm: what runs with what."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from fieldshaft._plot_style import BLUE, ORANGE, RED, new_figure
from fieldshaft._reports import Status

if TYPE_CHECKING:
    from fieldshaft._plot_style import Figure

#: Face, hatch and words of each verdict: told apart in print, too.
LOOKS = {
    Status.ok: ("#ffffff", None, BLUE, "runs"),
    Status.caution: ("#fff3d6", "..", ORANGE, "runs, with care"),
    Status.not_known: ("#e8e8e8", None, "#666666", "not known"),
    Status.stop: ("#f6d9cc", "////", RED, "stop"),
}


def farm_matrix(study: Any) -> Figure:
    """Which tractor of a farm runs which implement: a cell for each pair, with its verdict and the check that governs it.

    Parameters
    ----------
    study : FarmStudy
        From study_farm.

    Returns
    -------
    matplotlib Figure
    """
    tractors, implements = study.tractors, study.implements
    wide, high = 3.5 + 1.5 * len(implements), 2.2 + 0.75 * len(tractors)
    document = study.to_dict()
    note = " (screening: geometry and strength not looked at)" if document["depth"] == "screening" else ""
    figure, ax = new_figure(f"What runs with what: {document['title']}{note}", size=(wide, high))
    ax.grid(False)
    pairs = study.to_frame().to_dict("records")
    for number, pair in enumerate(pairs):
        row, column = divmod(number, len(implements))
        face, hatch, colour, words = LOOKS[Status(pair["verdict"])]
        ax.add_patch(_cell(column, row, face, hatch))
        ax.annotate(words, (column + 0.5, row + 0.38), ha="center", va="center", fontweight="bold", color="black",
                    bbox={"boxstyle": "round,pad=0.2", "facecolor": "white", "edgecolor": colour})  # fmt: skip
        if isinstance(pair["governing"], str):
            check = _wrapped(pair["governing"].replace(".", ": ", 1).replace("_", " "), 26)
            ax.annotate(check, (column + 0.5, row + 0.78), ha="center", va="center", fontsize="x-small",
                        bbox={"boxstyle": "round,pad=0.1", "facecolor": "white", "edgecolor": "none", "alpha": 0.8})  # fmt: skip
    ax.set(xlim=(-0.01, len(implements) + 0.01), ylim=(len(tractors) + 0.02, -0.02))
    ax.set_xticks([i + 0.5 for i in range(len(implements))], [_wrapped(name) for name in implements])
    ax.set_yticks([i + 0.5 for i in range(len(tractors))], [_wrapped(name) for name in tractors])
    ax.tick_params(length=0, labeltop=True, labelbottom=False)
    ax.spines[:].set_visible(False)
    return figure


def _cell(column: int, row: int, face: str, hatch: str | None) -> Any:
    from matplotlib.patches import Rectangle

    return Rectangle((column, row), 1, 1, facecolor=face, hatch=hatch, edgecolor="#999999", linewidth=1.0)


def _wrapped(name: str, width: int = 20) -> str:
    import textwrap

    return "\n".join(textwrap.wrap(name, width))
