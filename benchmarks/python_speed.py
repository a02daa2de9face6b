"""What a call from Python costs, against an empty call and against the same loop in C++.

    PYTHONPATH=build/test/python .venv/bin/python benchmarks/python_speed.py

Prints the best of several runs. The C++ loop is compiled on the spot with the flags of a release build.
"""

from __future__ import annotations

import ctypes
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


def best(code: Callable[[], Any], calls: int, rounds: int = 7) -> float:
    """Seconds for one call, in the best round."""
    times = []
    for _ in range(rounds):
        start = time.perf_counter()
        for _ in range(calls):
            code()
        times.append((time.perf_counter() - start) / calls)
    return min(times)


def loops() -> ctypes.CDLL:
    folder = Path(tempfile.mkdtemp())
    (folder / "loops.cpp").write_text(LOOPS, encoding="utf-8")
    flags = ["-std=c++17", "-O3", "-DNDEBUG", "-fPIC", "-shared", f"-I{ROOT / 'include'}"]
    subprocess.run(["c++", *flags, "loops.cpp", "-o", "loops.so"], cwd=folder, check=True)
    return ctypes.CDLL(str(folder / "loops.so"))


def scalars() -> None:
    def empty(power: float, speed: float) -> float:
        return power

    nothing = best(lambda: empty(50e3, 56.5), 200_000)
    number = best(lambda: si.shaft_torque(50e3, 56.5), 200_000)
    couples = best(lambda: si.joint_couples(100.0, 0.3, 0.1), 100_000)
    tube = si.TubeSection(0.05, 0.044)
    stress = best(lambda: si.torsion_stress(tube, 500.0), 100_000)
    power, speed = pint.Quantity(50.0, "kW"), pint.Quantity(540.0, "rpm")
    quantity = best(lambda: fieldshaft.shaft_torque(power, speed), 10_000)
    text = best(lambda: fieldshaft.shaft_torque("50 kW", "540 rpm"), 10_000)
    print(f"scalar: si.shaft_torque {1e6 * (number - nothing):.3f} us over an empty call (aim 0.5)")
    print(f"        si.joint_couples, three results, {1e6 * (couples - nothing):.3f} us")
    print(f"        si.torsion_stress, an object, {1e6 * (stress - nothing):.3f} us")
    print(f"        with pint quantities {1e6 * quantity:.1f} us (aim 20), with texts {1e6 * text:.1f} us")


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
        ours = best(lambda f=function, a=first, b=second: f(a, b), 10)
        theirs = best(plain, 10)
        print(f"array of 10^6: si.{name} {1e3 * ours:.2f} ms, the loop in C++ {1e3 * theirs:.2f} ms, ratio {ours / theirs:.2f} (aim 1.2)")


def threads() -> None:
    angle = np.random.default_rng(1).uniform(0, 0.7, 2_000_000)

    def work() -> Any:
        return si.joint_speed_ratio(angle, 0.5)

    one = best(lambda: (work(), work()), 3)
    with ThreadPoolExecutor(2) as pool:
        two = best(lambda: [f.result() for f in (pool.submit(work), pool.submit(work))], 3)
    print(f"two threads: {one / two:.2f} times one (aim 1.7)")


def imports() -> None:
    code = (
        "import time, numpy; start = time.perf_counter(); import fieldshaft.si; print(time.perf_counter() - start)"
    )
    environment = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}
    runs = [
        subprocess.run([sys.executable, "-c", code], env=environment, check=True, capture_output=True, text=True)
        for _ in range(12)
    ]
    print(f"import: {1e3 * min(float(run.stdout) for run in runs):.1f} ms over NumPy (aim 20)")


if __name__ == "__main__":
    scalars()
    arrays(loops())
    threads()
    imports()
