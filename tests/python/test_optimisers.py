"""The proved extremes against two general-purpose global optimisers, on angles and lengths that are written anew."""

from __future__ import annotations

import numpy as np
import pytest
from layouts import Layout, random_layouts
from scipy.optimize import differential_evolution, shgo

from fieldshaft import si

SEED = 4711
LAYOUTS = random_layouts(6, SEED)
EXTREMES = ("front_angle", "rear_angle", "difference", "longest", "shortest")

#: What an optimiser of slopes leaves of a tip, and rounding: radians or metres.
NEAR = 1e-4


def envelope(layout: Layout) -> si.DrivelineEnvelope:
    driveline = si.Driveline(
        front_joint=layout.front_joint, rear_joint=layout.rear_joint, input=si.Position(*layout.input)
    )
    yaw, pitch, roll = (si.AngleRange(low, high) for low, high in layout.bounds)
    attitudes = si.AttitudeRange(yaw=yaw, pitch=pitch, roll=roll)
    return si.driveline_envelope(driveline, si.Position(*layout.pin), attitudes)


def by_differential_evolution(layout: Layout, extreme: str) -> float:
    objective = layout.objective(extreme)
    found = differential_evolution(objective, layout.bounds, popsize=12, maxiter=60, tol=1e-10, rng=SEED)
    return abs(float(found.fun))


def by_simplicial_homology(layout: Layout, extreme: str) -> float:
    found = shgo(layout.objective(extreme), layout.bounds, n=64, iters=2, sampling_method="sobol")
    return abs(float(found.fun))


@pytest.mark.parametrize("extreme", EXTREMES)
@pytest.mark.parametrize("number", range(len(LAYOUTS)))
def test_no_optimiser_gets_beyond_a_bound_and_the_better_one_gets_near(number: int, extreme: str) -> None:
    layout = LAYOUTS[number]
    proved = getattr(envelope(layout), extreme)
    found = [by_differential_evolution(layout, extreme), by_simplicial_homology(layout, extreme)]
    rounding = 1e-9
    if extreme == "shortest":
        assert min(found) >= proved.lower - rounding
        assert min(found) <= proved.upper + NEAR
    else:
        assert max(found) <= proved.upper + rounding
        assert max(found) >= proved.lower - NEAR


def test_the_values_written_anew_are_those_of_the_library() -> None:
    random = np.random.default_rng(SEED)
    for layout in LAYOUTS:
        proved = envelope(layout)
        for _ in range(200):
            values = layout.values([random.uniform(low, high) for low, high in layout.bounds])
            for extreme in ("front_angle", "rear_angle", "difference", "longest"):
                assert values[extreme] <= getattr(proved, extreme).upper + 1e-12
            assert values["shortest"] >= proved.shortest.lower - 1e-12
        at = proved.front_angle.at
        there = layout.values([at.yaw, at.pitch, at.roll])["front_angle"]
        assert there == pytest.approx(proved.front_angle.value, abs=1e-12)
