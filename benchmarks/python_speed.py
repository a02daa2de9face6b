"""What a call from Python costs, against an empty call and against the same loop in C++.

    PYTHONPATH=build/test/python .venv/bin/python benchmarks/python_speed.py [OUT.json]

Prints the best of many short runs, which fall between two switches of a busy machine, and each figure also as a ratio to
something of the same run: an empty call, pint's own division, the loop in C++, which is compiled on the spot with the
flags of a release build, and a sweep over attitudes against the same written with NumPy.
"""

from __future__ import annotations

import ctypes
import json
import math
import os
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

import numpy as np
import pint

import fieldshaft
from fieldshaft import si

ROOT = Path(__file__).resolve().parent.parent

LOOPS = """
#include <fieldshaft/joint.hpp>
#include <fieldshaft/power.hpp>
using namespace fieldshaft;
extern "C" void torque(const double* p, const double* w, double* out, long n) {
  for (long i = 0; i < n; ++i) out[i] = shaft_torque(watts(p[i]), radians_per_second(w[i])).value();
}
extern "C" void ratio(const double* b, const double* t, double* out, long n) {
  for (long i = 0; i < n; ++i) out[i] = joint_speed_ratio(radians(b[i]), radians(t[i]));
}
"""


def best(
    code: Callable[[], Any], calls: int, rounds: int = 60, clock: Callable[[], float] = time.perf_counter
) -> float:
    """Seconds for one call, in the best round."""
    times = []
    for _ in range(rounds):
        start = clock()
        for _ in range(calls):
            code()
        times.append((clock() - start) / calls)
    return min(times)


#: What was measured, for the JSON file.
FIGURES: dict[str, float] = {}


def noted(name: str, value: float) -> float:
    FIGURES[name] = value
    return value


def loops() -> ctypes.CDLL:
    folder = Path(tempfile.mkdtemp())
    (folder / "loops.cpp").write_text(LOOPS, encoding="utf-8")
    flags = ["-std=c++17", "-O3", "-DNDEBUG", "-fPIC", "-shared", f"-I{ROOT / 'include'}"]
    subprocess.run(["c++", *flags, "loops.cpp", "-o", "loops.so"], cwd=folder, check=True)
    return ctypes.CDLL(str(folder / "loops.so"))


def scalars() -> None:
    def empty(power: float, speed: float) -> float:
        return power

    nothing = best(lambda: empty(50e3, 56.5), 2000)
    number = best(lambda: si.shaft_torque(50e3, 56.5), 2000)
    couples = best(lambda: si.joint_couples(100.0, 0.3, 0.1), 1000)
    tube = si.TubeSection(0.05, 0.044)
    stress = best(lambda: si.torsion_stress(tube, 500.0), 1000)
    power, speed = pint.Quantity(50.0, "kW"), pint.Quantity(540.0, "rpm")
    quantity = best(lambda: fieldshaft.shaft_torque(power, speed), 200)
    text = best(lambda: fieldshaft.shaft_torque("50 kW", "540 rpm"), 200)
    division = best(lambda: power / speed, 200)
    print(f"scalar: si.shaft_torque {noted('scalar_call_us', 1e6 * (number - nothing)):.3f} us over an empty call (aim 0.5)")
    print(f"        si.joint_couples, three results, {1e6 * (couples - nothing):.3f} us")
    print(f"        si.torsion_stress, an object, {1e6 * (stress - nothing):.3f} us")
    print(f"        with pint quantities {noted('pint_call_us', 1e6 * quantity):.1f} us (aim 20), with texts {1e6 * text:.1f} us")
    print(f"        that is {noted('pint_call_ratio', quantity / division):.2f} of power / speed in pint alone, {1e6 * division:.1f} us")


def arrays(library: ctypes.CDLL) -> None:
    size = 1_000_000
    random = np.random.default_rng(1)
    cases = [
        ("shaft_torque", library.torque, si.shaft_torque, random.uniform(1e4, 1e5, size), random.uniform(50, 100, size)),
        ("joint_speed_ratio", library.ratio, si.joint_speed_ratio, random.uniform(0, 0.7, size), random.uniform(0, 6, size)),
    ]
    pointer = ctypes.POINTER(ctypes.c_double)
    for name, loop, function, first, second in cases:

        def plain(loop: Any = loop, first: Any = first, second: Any = second) -> Any:
            out = np.empty(size)
            loop(*(a.ctypes.data_as(pointer) for a in (first, second, out)), ctypes.c_long(size))
            return out

        assert np.array_equal(plain(), function(first, second))
        ours = best(lambda f=function, a=first, b=second: f(a, b), 1, 40, time.process_time)
        theirs = best(plain, 1, 40, time.process_time)
        print(f"array of 10^6: si.{name} {1e3 * ours:.2f} ms, the loop in C++ {1e3 * theirs:.2f} ms, ratio {noted(name + '_array_ratio', ours / theirs):.2f} (aim 1.2)")


def pairs() -> None:
    size = 1_000_000
    turns = np.random.default_rng(1).uniform(0, 20 * np.pi, size)
    front, rear, phase = np.radians([20.0, 10.0, 30.0])

    def expression() -> Any:
        behind = np.arctan2(np.sin(turns), np.cos(turns) * np.cos(front)) + phase + 0.5 * np.pi
        first = np.cos(front) / (1.0 - (np.sin(front) * np.cos(turns)) ** 2)
        return first * np.cos(rear) / (1.0 - (np.sin(rear) * np.cos(behind)) ** 2)

    assert np.allclose(expression(), si.joint_pair_speed_ratio(front, rear, phase, turns), rtol=1e-12)
    ours = best(lambda: si.joint_pair_speed_ratio(front, rear, phase, turns), 1, 40, time.process_time)
    theirs = best(expression, 1, 7, time.process_time)
    print(f"a pair at 10^6 rotations: {1e3 * ours:.2f} ms, the NumPy expression {1e3 * theirs:.1f} ms, ratio {theirs / ours:.1f} (aim 20)")


def threads(library: ctypes.CDLL) -> None:
    """Two runs one after the other against two at a time, and the same of the loop in C++: a busy machine spoils both."""
    size = 200_000
    angle, turn = np.random.default_rng(1).uniform(0, 0.7, size), np.full(size, 0.5)
    pointer = ctypes.POINTER(ctypes.c_double)

    def plain() -> None:
        library.ratio(*(a.ctypes.data_as(pointer) for a in (angle, turn, np.empty(size))), ctypes.c_long(size))

    def gain(work: Callable[[], Any]) -> float:
        one = best(lambda: (work(), work()), 1, 120)
        with ThreadPoolExecutor(2) as pool:
            two = best(lambda: [f.result() for f in (pool.submit(work), pool.submit(work))], 1, 120)
        return one / two

    ours, theirs = gain(lambda: si.joint_speed_ratio(angle, turn)), gain(plain)
    print(f"two threads: {noted('two_threads', ours):.2f} times one (aim 1.7), the loop in C++ {theirs:.2f} times")


class Sweep:
    """An invented trailed cutter over a grid of attitudes."""

    front, rear = 0.08, 0.09
    pin, input = (-0.4, 0.02, -0.25), (-0.9, -0.05, 0.3)

    def __init__(self, side: int) -> None:
        self.side = side
        self.yaw, self.pitch, self.roll = (np.radians(np.linspace(-most, most, side)) for most in (60.0, 12.0, 10.0))

    def with_numpy(self, parts: int = 1) -> tuple[float, float, float, float, float]:
        """The same five extremes, the yaws in parts: 1 is the plain way, one a yaw keeps the arrays in the cache."""
        x, y, z = self.pin[0] + self.front, self.pin[1], self.pin[2]
        jx, jy, jz = self.input[0] + self.rear, self.input[1], self.input[2]
        sp, cp = np.sin(self.pitch)[:, None], np.cos(self.pitch)[:, None]
        sr, cr = np.sin(self.roll)[None, :], np.cos(self.roll)[None, :]
        front, rear, difference, longest, shortest = 0.0, 0.0, 0.0, 0.0, math.inf
        for yaw in np.array_split(self.yaw[:, None, None], parts):
            s, c = np.sin(yaw), np.cos(yaw)
            rolled_y, rolled_z = jy * cr - jz * sr, jy * sr + jz * cr
            ahead, up = cp * jx + sp * rolled_z, cp * rolled_z - sp * jx
            dx, dy, dz = x + c * ahead - s * rolled_y, y + s * ahead + c * rolled_y, z + up
            length = np.sqrt(dx * dx + dy * dy + dz * dz)
            at_front = np.arccos(-dx / length)
            at_rear = np.arccos(-(c * cp * dx + s * cp * dy - sp * dz) / length)
            front, rear = max(front, float(at_front.max())), max(rear, float(at_rear.max()))
            difference = max(difference, float(np.abs(at_front - at_rear).max()))
            longest, shortest = max(longest, float(length.max())), min(shortest, float(length.min()))
        return front, rear, difference, longest, shortest


def sweep() -> None:
    case = Sweep(256)
    line = si.Driveline(front_joint=case.front, rear_joint=case.rear, input=si.Position(*case.input))
    grid = si.AttitudeGrid(list(case.yaw), list(case.pitch), list(case.roll))

    def own() -> Any:
        return si.driveline_sweep(line, si.Position(*case.pin), grid, threads=1)

    found = own()
    states = (found.front_angle, found.rear_angle, found.difference, found.longest, found.shortest)
    names = ("front_angle", "rear_angle", "difference", "length", "length")
    for extreme, name, expected in zip(states, names, case.with_numpy(), strict=True):
        assert math.isclose(abs(getattr(extreme.state, name)), expected, rel_tol=1e-6)
    ours = best(own, 1, 5, time.process_time)
    print(f"sweep of 256^3 attitudes: {1e3 * ours:.1f} ms")
    for way, parts, aim in (("plain", 1, " (aim 60)"), ("a yaw at a time", case.side, "")):
        theirs = best(lambda parts=parts: case.with_numpy(parts), 1, 2, time.process_time)
        ratio = noted(f"sweep over NumPy, {way}", theirs / ours)
        print(f"        with NumPy, {way}, {1e3 * theirs:.0f} ms: {ratio:.0f} times as long{aim}")


def imports() -> None:
    code = (
        "import time, numpy; start = time.perf_counter(); import fieldshaft.si; print(time.perf_counter() - start)"
    )
    environment = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}
    runs = [
        subprocess.run([sys.executable, "-c", code], env=environment, check=True, capture_output=True, text=True)
        for _ in range(12)
    ]
    least = noted("import_ms", 1e3 * min(float(run.stdout) for run in runs))
    print(f"import: {least:.1f} ms over NumPy (aim 20)")


if __name__ == "__main__":
    scalars()
    library = loops()
    arrays(library)
    pairs()
    threads(library)
    sweep()
    imports()
    if len(sys.argv) > 1:
        Path(sys.argv[1]).write_text(json.dumps(FIGURES, indent=2) + "\n", encoding="utf-8")
