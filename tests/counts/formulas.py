"""Instruction counts of every typed formula against the same text on bare doubles.

    formulas.py write INCLUDE PROGRAM.cpp        writes the program: up to three functions for each text of the headers
    formulas.py check INCLUDE PROGRAM VALGRIND   counts, prints the table and compares

A text is a template on deduced number types, so that on doubles it is its own twin. callgrind counts the instructions of
both, and of the checked front where one takes the same parameters. Counts repeat; seconds do not. A text with a
parameter that is not in the table below ends the run: say there what the parameter is.
"""

from __future__ import annotations

import os
import re
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import NamedTuple

MODULES = ("materials", "pto", "power", "rotor", "fatigue", "joint", "spline", "shaft", "cost", "overload")

#: By how much a typed text may cost more than its bare twin.
TOLERANCE = 0.01

#: What parameters are, invented sizes of a rotary cutter's driveline. What is not a quantity is the same to both.
TORQUE, SPEED, LENGTH = "newton_metres(500)", "rpm(540)", "metres(0.4)"
NUMBER, STRESS, ANGLE = "0.2", "megapascals(700)", "radians(0.3)"
VALUES = {
    **dict.fromkeys(("bending", "clutch", "clutch_torque", "moment", "nominal", "peak", "torque", "weakest"), TORQUE),
    **dict.fromkeys(("drive", "load", "windage"), "newton_metres(20)"),
    **dict.fromkeys(("slip_speed", "speed"), SPEED),
    **dict.fromkeys(("height", "module", "thickness", "thinnest_wall", "wall"), "metres(0.004)"),
    **dict.fromkeys(("core", "inner"), "metres(0.2)"),
    **dict.fromkeys(("arm", "diameter", "length", "outer", "side", "width"), LENGTH),
    **dict.fromkeys(("radius", "root"), "metres(0.3)"),
    **dict.fromkeys(("at_first", "ceiling", "first", "shear_stress", "strength", "stress", "ultimate"), STRESS),
    **dict.fromkeys(("endurance", "second", "shear_strength", "shear_yield", "yield"), "megapascals(400)"),
    **dict.fromkeys(("shear_modulus", "youngs_modulus"), "gigapascals(200)"),
    **dict.fromkeys(("angle", "front", "joint_angle"), ANGLE),
    **dict.fromkeys(("phase", "rear", "rotation"), "radians(0.2)"),
    **dict.fromkeys(("driven", "driving", "inertia"), "kilogram_square_metres(5)"),
    **dict.fromkeys(("rim_speed", "tip_speed"), "metres_per_second(70)"),
    **dict.fromkeys(("energy", "heat"), "joules(2000)"),
    **dict.fromkeys(("reaction_time", "time"), "seconds(0.5)"),
    **dict.fromkeys(("area", "enclosed_area"), "square_metres(4e-4)"),
    **dict.fromkeys(("first_cycles",), "1e3"),
    **dict.fromkeys(("k", "surfaces", "bolts", "planes", "second_cycles", "teeth"), "6.0"),
    **dict.fromkeys(("amplitude_over_coefficient", "a", "coefficient", "depth", "depth_over_diameter", "efficiency"), NUMBER),
    **dict.fromkeys(("bore_ratio", "cosine", "deep", "depth_over_radius", "form", "friction", "knee", "load_fraction"), NUMBER),
    **dict.fromkeys(("m", "margin", "n", "nu", "poisson_ratio", "q", "ratio", "restitution", "s", "scatter"), NUMBER),
    **dict.fromkeys(("bending_factor", "concentration", "torsion_factor"), "1.5"),
    **dict.fromkeys(("section", "sensitivity", "shallow", "share", "slenderness", "speed_fraction", "speed_ratio"), "0.7"),
    **dict.fromkeys(("tangent", "unevenness", "variation", "x", "neuber_root", "radius_inch"), NUMBER),
    **dict.fromkeys(("strength_mpa", "ksi", "fahrenheit", "diameter_mm"), "100.0"),
    "exponent": "-0.2",
    "air": "kilograms_per_cubic_metre(1.2)",
    "axial_force": "newtons(5000)",
    "constant": "square_metres(1e-3) * square_metres(1e-3)",
    "constants": "SurfaceConstants{1.6, -0.085}",
    "contact": "ClutchContact::uniform_wear",
    "density": "kilograms_per_cubic_metre(7850)",
    "factor": "kilograms_per_cubic_metre(7850) * 0.1",
    "feed_rate": "tonnes_per_hour(20)",
    "litre": "litres_per_kilowatt_hour(1)",
    "load_rating": "newtons(20000)",
    "mass": "kilograms(3)",
    "modulus": "square_metres(1e-3) * metres(1e-2)",
    "moment_over_strength": "newton_metres(500) / megapascals(400)",
    "per_mass": "kilowatt_hours_per_tonne(2)",
    "per_width": "kilowatts_per_metre(5)",
    "power": "kilowatts(40)",
    "rated_power": "kilowatts(60)",
    "reference_diameter": "metres(0.04)",
    "rule": "MeanStressRule::goodman",
    "second_moment": "square_metres(1e-3) * square_metres(1e-4)",
    "small_cycles": "SmallCycles::count",
    "specific_heat": "joules_per_kilogram_kelvin(480)",
    "twist_rate": "radians_per_metre(0.05)",
}

#: The same name for something else.
SPECIAL = {
    ("implement_power", "constant"): "kilowatts(5)",
    ("neuber_root", "load"): "NotchLoad::bending",
    ("object_energy", "speed"): "metres_per_second(60)",
    ("run_down_angle", "friction"): "newton_metres(20)",
    ("run_down_time", "friction"): "newton_metres(20)",
    # Rotations that are added up have lost their radian before the text.
    **{
        (name, parameter): NUMBER
        for name in ("joint_output_rotation", "rear_joint_rotation", "joint_pair_speed_ratio", "joint_pair_slope")
        for parameter in ("angle", "front", "rear", "phase", "rotation")
    },
}

TEXTS = re.compile(r"^namespace text \{(.*?)^\} // namespace text", re.S | re.M)
FUNCTION = re.compile(r"template <class[^>]*>\s*(?:constexpr |inline )*\w+ (\w+)\(((?:[^()]|\([^()]*\))*)\)")


class Text(NamedTuple):
    name: str
    values: tuple[str, ...]
    has_front: bool

    @property
    def is_typed(self) -> bool:
        """Texts of numbers alone are their own twin."""
        return any("(" in value for value in self.values)


def parameters(listed: str) -> tuple[str, ...]:
    return tuple(p.split()[-1].lstrip("&") for p in listed.split(",") if p.strip())


def has_front(header: str, name: str, wanted: tuple[str, ...]) -> bool:
    found = re.findall(rf"^(?:constexpr|inline) \w+ {name}\(((?:[^()]|\([^()]*\))*)\)", header, re.M)
    return any(parameters(listed) == wanted for listed in found)


def texts(include: Path) -> list[Text]:
    found = []
    for module in MODULES:
        for file in sorted((include / "fieldshaft" / module).glob("*.hpp")):
            header = re.sub(r"//(?! namespace text).*", "", file.read_text(encoding="utf-8"))
            for block in TEXTS.findall(header):
                for name, listed in FUNCTION.findall(block):
                    if "[" in listed or "array" in listed:
                        continue  # tables of numbers
                    names = parameters(listed)
                    unknown = [p for p in names if p not in VALUES and (name, p) not in SPECIAL]
                    if unknown:
                        sys.exit(f"{file}: say in {__file__} what {', '.join(unknown)} of {name} is")
                    values = tuple(SPECIAL.get((name, p), VALUES[p]) for p in names)
                    found.append(Text(name, values, has_front(TEXTS.sub("", header), name, names)))
    return [text for text in found if text.is_typed]


def function(kind: str, index: int, text: Text) -> str:
    arguments = []
    for i, value in enumerate(text.values):
        if "::" in value or "{" in value:
            arguments.append(value)
        elif kind == "bare" or "(" not in value:
            arguments.append(f"x[{i}]")
        else:
            arguments.append(f"std::decay_t<decltype({value})>::from_value(x[{i}])")
    space = "fieldshaft::" if kind == "front" else "text::"
    call = f"{space}{text.name}({', '.join(arguments)})"
    return f'extern "C" FIELDSHAFT_COLD void {kind}_{index}(const double* x, void* out) {{ store(out, {call}); }}\n'


def write(include: Path, program: Path) -> None:
    lines = [f"#include <fieldshaft/{module}.hpp>\n" for module in MODULES]
    lines += ["#include <cstdio>\n#include <new>\n#include <type_traits>\nusing namespace fieldshaft;\n"]
    lines += ["template <class T> void store(void* out, const T& value) { ::new (out) T(value); }\n"]
    calls = []
    for index, text in enumerate(texts(include)):
        numbers = []
        for value in text.values:
            is_choice = "::" in value or "{" in value
            numbers.append("0.0" if is_choice else f"({value}).value()" if "(" in value else value)
        calls.append(f"  {{ const double x[] = {{{', '.join(numbers)}}};\n")
        for kind in ("typed", "bare") + (("front",) if text.has_front else ()):
            lines.append(function(kind, index, text))
            calls.append(f"    {kind}_{index}(x, out); std::printf(\"%d\", out[0]);\n")
        calls.append("  }\n")
    lines += ["int main() {\n  alignas(64) unsigned char out[4096] = {};\n", *calls, "}\n"]
    program.write_text("".join(lines), encoding="utf-8")


def counts(program: Path, valgrind: str) -> dict[str, int]:
    """Instructions of each function with all that it calls."""
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "counts"
        command = [valgrind, "--tool=callgrind", f"--callgrind-out-file={out}", str(program)]
        # Bound at once: the first call of a library function is like every other.
        run = subprocess.run(command, env={**os.environ, "LD_BIND_NOW": "1"}, capture_output=True, text=True)
        if run.returncode != 0:
            sys.exit(run.stderr)
        annotate = str(Path(valgrind).with_name("callgrind_annotate"))
        table = subprocess.run(
            [annotate, "--inclusive=yes", "--threshold=100", str(out)], capture_output=True, text=True, check=True
        ).stdout
    return {
        name: int(number.replace(",", ""))
        for number, name in re.findall(r"^\s*([\d,]+) \([^)]*\).*:((?:typed|bare|front)_\d+)\b", table, re.M)
    }


def check(include: Path, program: Path, valgrind: str) -> int:
    counted = counts(program, valgrind)
    wrong = 0
    print(f"{'instructions':32} {'bare':>6} {'typed':>6} {'front':>6} over typed")
    for index, text in enumerate(texts(include)):
        bare, typed = counted[f"bare_{index}"], counted[f"typed_{index}"]
        front = counted.get(f"front_{index}") if text.has_front else None
        costs_more = typed - bare > TOLERANCE * bare
        wrong += costs_more
        extra = " " * 12 if front is None else f"{front:6} {front - typed:+5}"
        print(f"{text.name:32} {bare:6} {typed:6} {extra}  {'COSTS MORE' if costs_more else ''}".rstrip())
    print(f"{wrong} of {len(texts(include))} typed texts cost more than their bare twin by more than {TOLERANCE:.0%}")
    return 1 if wrong else 0


def main(task: str, include: str, program: str, *valgrind: str) -> int:
    if task == "write":
        write(Path(include), Path(program))
        return 0
    return check(Path(include), Path(program), *valgrind)


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
