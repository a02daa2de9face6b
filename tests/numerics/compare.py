"""Builds values.cpp with two compilers at three levels of optimisation and says by how much the formulas differ.

    python tests/numerics/compare.py

Prints for each formula the greatest difference from g++ -O0 in units of the last digit; exit status 1 if one is beyond its
limit. A fused multiply-add, which -march=native allows, rounds once where the plain code rounds twice; what is left after a
difference of nearly equal numbers shows it most.
"""

from __future__ import annotations

import shutil
import struct
import subprocess
import sys
import tempfile
from itertools import groupby
from pathlib import Path

HERE = Path(__file__).resolve().parent
BUILDS = [(c, o) for c in ("g++", "clang++") for o in (["-O0"], ["-O2"], ["-O3", "-march=native"])]

#: Units of the last digit: most formulas round a handful of times, and a tube is the difference of two fourth powers; the
#: exceptions say why.
USUAL = 64
LIMITS = {
    "driveline_front_angle": 1e4,  # a small angle from a nearly straight line: absolute 1e-15 rad
    "driveline_rear_angle": 1e4,  # likewise
    "driveline_speed_variation": 1e5,  # root of the unevenness, which is a difference
}


def bits(number: float) -> int:
    """A double's place in the order of all doubles."""
    (i,) = struct.unpack("<q", struct.pack("<d", number))
    return i if i >= 0 else -(i & 0x7FFFFFFFFFFFFFFF)


def values(compiler: str, flags: list[str], folder: Path) -> list[tuple[str, float]]:
    program = folder / "values"
    includes = [f"-I{HERE.parents[1] / 'include'}", "-isystem", "/usr/include/eigen3"]
    subprocess.run([compiler, "-std=c++17", *flags, *includes, str(HERE / "values.cpp"), "-o", str(program)], check=True)
    lines = subprocess.run([str(program)], check=True, capture_output=True, text=True).stdout.splitlines()
    return [(name, float.fromhex(number)) for name, number in map(str.split, lines)]


def differences(first: list[tuple[str, float]], other: list[tuple[str, float]]) -> dict[str, int]:
    assert [name for name, _ in first] == [name for name, _ in other]
    pairs = sorted((name, abs(bits(a) - bits(b))) for (name, a), (_, b) in zip(first, other, strict=True))
    return {name: max(d for _, d in group) for name, group in groupby(pairs, key=lambda pair: pair[0])}


def main() -> int:
    if missing := [c for c in ("g++", "clang++") if shutil.which(c) is None]:
        print("not found:", *missing)
        return 1
    with tempfile.TemporaryDirectory() as folder:
        every = [values(compiler, flags, Path(folder)) for compiler, flags in BUILDS]
    columns = [differences(every[0], other) for other in every[1:]]
    print(f"{len(every[0])} values; units of the last digit from g++ -O0:")
    print(f"{'':28}", *(f"{c} {' '.join(f)}".rjust(24) for c, f in BUILDS[1:]), "limit".rjust(8))
    bad = 0
    for name in columns[0]:
        limit = LIMITS.get(name, USUAL)
        row = [column[name] for column in columns]
        bad += max(row) > limit
        print(f"{name:28}", *(f"{d:24d}" for d in row), f"{limit:8g}", "BEYOND" if max(row) > limit else "")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
