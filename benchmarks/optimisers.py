"""Five proved extremes against SciPy's differential evolution and shgo, which find one of them without a proof.

    PYTHONPATH=build/test/python .venv/bin/python benchmarks/optimisers.py [OUT.json]

Prints times of the processor and their ratios over random layouts. The optimisers evaluate the angles and lengths of tests/python/layouts.py.
"""

from __future__ import annotations

import json
import statistics
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

from scipy.optimize import differential_evolution, shgo

from fieldshaft import si

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "tests" / "python"))
from layouts import Layout, random_layouts  # noqa: E402


def seconds(code: Callable[[], Any]) -> float:
    start = time.process_time()
    code()
    return time.process_time() - start


def envelope(layout: Layout) -> Callable[[], Any]:
    driveline = si.Driveline(
        front_joint=layout.front_joint, rear_joint=layout.rear_joint, input=si.Position(*layout.input)
    )
    pin = si.Position(*layout.pin)
    attitudes = si.AttitudeRange(*(si.AngleRange(low, high) for low, high in layout.bounds))
    options = si.EnvelopeOptions(with_speed_variation=False)
    return lambda: si.driveline_envelope(driveline, pin, attitudes, options)


def main(out: str | None = None) -> None:
    layouts = random_layouts(20, seed=1)
    proved = [min(seconds(envelope(layout)) for _ in range(3)) for layout in layouts]
    evolution = [
        seconds(lambda: differential_evolution(layout.objective("front_angle"), layout.bounds, rng=1))
        for layout in layouts
    ]
    homology = [
        seconds(lambda: shgo(layout.objective("front_angle"), layout.bounds, n=64, iters=2, sampling_method="sobol"))
        for layout in layouts
    ]
    own = statistics.median(proved)
    figures = {"five extremes, proved, ms": 1e3 * own}
    print(f"five extremes, proved:                       {1e3 * own:9.3f} ms (median of {len(layouts)} layouts)")
    for name, times in (("differential evolution", evolution), ("shgo", homology)):
        median = statistics.median(times)
        print(f"{name + ', one extreme, without proof:':44} {1e3 * median:9.3f} ms, {median / own:8.0f} times as long")
        figures[f"{name} over proved"] = median / own
    if out:
        Path(out).write_text(json.dumps(figures, indent=2) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main(*sys.argv[1:])
