"""Second methods by SciPy: the proved extremes against two global optimisers, flights against a solver of differential
equations; angles, lengths and the law of motion are written anew."""

from __future__ import annotations

import math

import numpy as np
import pytest
from layouts import Layout, random_layouts
from scipy.integrate import solve_ivp
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


# Flights with drag. ------------------------------------------------------------------------------------------


def flight_by_solver(speed: float, angle: float, height: float, drag: float) -> tuple[float, float, float]:
    """Distance, time and landing speed of m dv/dt = -m g - m drag |v| v, with an eighth-order solver in time."""

    def motion(_: float, s: np.ndarray) -> list[float]:
        size = math.hypot(s[2], s[3])
        return [s[2], s[3], -drag * size * s[2], -9.80665 - drag * size * s[3]]

    def landed(_: float, s: np.ndarray) -> float:
        return float(s[1])

    landed.terminal, landed.direction = True, -1
    start = [0.0, height, speed * math.cos(angle), speed * math.sin(angle)]
    found = solve_ivp(motion, (0.0, 1e3), start, method="DOP853", events=landed, rtol=1e-12, atol=1e-12)
    (end,) = found.y_events[0]
    return float(end[0]), float(found.t_events[0][0]), math.hypot(end[2], end[3])


@pytest.mark.parametrize("grams", [5.0, 50.0, 500.0])
@pytest.mark.parametrize("degrees", [-10.0, 0.0, 5.0, 38.0, 85.0])
def test_flights_are_those_of_a_general_solver(grams: float, degrees: float) -> None:
    mass, height, speed, angle = 1e-3 * grams, 0.8, 67.0, math.radians(degrees)
    area = si.round_body_area(mass, 2650.0)
    flight = si.throw_flight(speed, angle, height, mass, area, 0.8, 1.225)
    expected = flight_by_solver(speed, angle, height, 1.225 * 0.8 * area / (2.0 * mass))
    assert (flight.distance, flight.time, flight.landing_speed) == pytest.approx(expected, rel=1e-8)
