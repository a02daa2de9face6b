"""What including fieldshaft costs a compiler, against the bare libraries that a header rests on.

    python3 benchmarks/compile_cost.py [OUT.json]
    python3 benchmarks/compile_cost.py check COMPILER    the lines alone: fails where an umbrella is beyond its aim

For each umbrella: preprocessed lines and template instantiations, which repeat, and the processor's seconds of a compile
without optimisation, best of five. Peers: boost/units/systems/si.hpp, and the same with Eigen/Dense for the geometry.
The row "120 products" is si.hpp with nothing but 120 products of two of its quantities, each of a kind of its own: what
Boost.Units takes for them, whoever writes them down.
At the end the size of a program's object file that calls one formula, against the same division of doubles.
"""

from __future__ import annotations

import itertools
import json
import os
import resource
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
FLAGS = ["-std=c++17", f"-I{ROOT / 'include'}", "-isystem", "/usr/include/eigen3"]
UNITS = "#include <boost/units/systems/si.hpp>\n"
QUANTITIES = (
    *("acceleration", "angular_velocity", "area", "energy", "force", "frequency", "length", "mass", "mass_density"),
    *("moment_of_inertia", "momentum", "power", "pressure", "time", "torque", "velocity", "volume"),
)
PRODUCTS = UNITS + "using namespace boost::units;\n"
for first, second in list(itertools.combinations(QUANTITIES, 2))[:120]:
    PRODUCTS += f"inline auto product(quantity<si::{first}> x, quantity<si::{second}> y) {{ return x * y; }}\n"
EIGEN = UNITS + "#include <Eigen/Dense>\n"
FORMULAS = ("core", "units", "materials", "pto", "power", "rotor", "fatigue", "joint", "spline", "shaft", "cost", "overload")
GEOMETRY = ("geometry", "hitch", "driveline")
WHOLE = ("fieldshaft",)
AIM = 1.35


def compiled(source: Path, *options: str, compiler: str = "g++") -> str:
    command = [compiler, *FLAGS, *options, source.name]
    return subprocess.run(command, cwd=source.parent, check=True, capture_output=True, text=True).stdout


def lines(source: Path, compiler: str = "g++") -> int:
    return compiled(source, "-E", "-P", compiler=compiler).count("\n")


def seconds(source: Path) -> float:
    times = []
    for _ in range(5):
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        compiled(source, "-fsyntax-only")
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        times.append(after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime)
    return min(times)


def instantiations(source: Path) -> int | None:
    """As clang counts them; None where it is not installed."""
    if shutil.which("clang++") is None:
        return None
    compiled(source, "-c", "-ftime-trace", "-ftime-trace-granularity=0", "-o", "traced.o", compiler="clang++")
    trace = json.loads((source.parent / "traced.json").read_text(encoding="utf-8"))
    return sum(event["name"] in ("InstantiateClass", "InstantiateFunction") for event in trace["traceEvents"])


def measure(folder: Path, text: str) -> dict[str, float]:
    source = folder / "measured.cpp"
    source.write_text(text, encoding="utf-8")
    return {"lines": lines(source), "instantiations": instantiations(source) or 0, "seconds": round(seconds(source), 3)}


def one_call(folder: Path) -> dict[str, int]:
    """Bytes of code and data of an object file that calls one formula."""
    programs = {
        "checked front": "#include <fieldshaft/power.hpp>\nusing namespace fieldshaft;\n"
        "double torque(double p, double w) { return shaft_torque(watts(p), radians_per_second(w)).value(); }\n",
        "text": "#include <fieldshaft/power.hpp>\nusing namespace fieldshaft;\n"
        "double torque(double p, double w) { return text::shaft_torque(watts(p), radians_per_second(w)).value(); }\n",
        "bare doubles": "double torque(double p, double w) { return p / w; }\n",
    }
    sizes = {}
    for name, text in programs.items():
        source = folder / "call.cpp"
        source.write_text(text, encoding="utf-8")
        compiled(source, "-O2", "-c", "-o", "call.o")
        table = subprocess.run(["size", str(folder / "call.o")], check=True, capture_output=True, text=True).stdout
        code, data, zeroes = (int(x) for x in table.splitlines()[1].split()[:3])
        sizes[name] = code + data + zeroes
    return sizes


def check(compiler: str) -> int:
    """Whether each umbrella keeps its aim by lines, which repeat where seconds do not."""
    beyond = 0
    with tempfile.TemporaryDirectory() as name:
        source = Path(name) / "measured.cpp"
        for alone, headers in ((UNITS, FORMULAS), (EIGEN, GEOMETRY + WHOLE)):
            source.write_text(alone, encoding="utf-8")
            bare = lines(source, compiler)
            for header in headers:
                source.write_text(f"#include <fieldshaft/{header}.hpp>\n", encoding="utf-8")
                ratio = lines(source, compiler) / bare
                beyond += ratio > AIM
                print(f"{header:14} {ratio:.2f}{' BEYOND ' + str(AIM) if ratio > AIM else ''}")
    return 1 if beyond else 0


def main(out: str | None = None) -> None:
    result: dict[str, object] = {}
    print(f"{'header':14} {'lines':>8} {'ratio':>6} {'templates':>10} {'ratio':>6} {'seconds':>8} {'ratio':>6}   aim {AIM}")
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        for peer, alone, headers in (("units alone", UNITS, FORMULAS), ("Eigen + units", EIGEN, GEOMETRY + WHOLE)):
            bare = measure(folder, alone)
            result[peer] = bare
            print(f"{peer:14} {bare['lines']:8} {'':6} {bare['instantiations']:10} {'':6} {bare['seconds']:8.2f}")
            named = {header: f"#include <fieldshaft/{header}.hpp>\n" for header in headers}
            for header, text in ({"120 products": PRODUCTS} | named if peer == "units alone" else named).items():
                own = measure(folder, text)
                result[header] = own
                row = [f"{header:14}"]
                for figure, width, form in (("lines", 8, "d"), ("instantiations", 10, "d"), ("seconds", 8, ".2f")):
                    row.append(f"{own[figure]:{width}{form}} {own[figure] / max(bare[figure], 1e-9):6.2f}")
                print(" ".join(row))
        sizes = one_call(folder)
        result["bytes of a call"] = sizes
        print("object of one call, bytes: " + ", ".join(f"{k} {v}" for k, v in sizes.items()))
    if out:
        Path(out).write_text(json.dumps(result, indent=2) + "\n", encoding="utf-8")


if __name__ == "__main__":
    os.environ["CCACHE_DISABLE"] = "1"
    if sys.argv[1:2] == ["check"]:
        sys.exit(check(*sys.argv[2:]))
    main(*sys.argv[1:])
