"""Writes the generated files of the Python package.

    python generator --output DIR          the C++ files into DIR/cpp, the Python files into DIR/fieldshaft
    python generator --stubs DIR           the stubs into DIR (they are committed)
    python generator --list                the names of the C++ files, for the build
"""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

import cpp
import layers
import stubs
from descriptions import DescriptionError, load

HERE = Path(__file__).resolve().parent.parent


def write(path: Path, text: str) -> None:
    """Leaves a file alone that holds the same text, so that nothing is compiled anew without need."""
    path.parent.mkdir(parents=True, exist_ok=True)
    if not path.exists() or path.read_text(encoding="utf-8") != text:
        path.write_text(text, encoding="utf-8")


def main() -> int:
    parser = argparse.ArgumentParser(prog="generator")
    parser.add_argument("--output", type=Path)
    parser.add_argument("--stubs", type=Path)
    parser.add_argument("--list", action="store_true")
    options = parser.parse_args()
    try:
        library = load(HERE)
    except DescriptionError as error:
        print(error, file=sys.stderr)
        return 1
    if options.list:
        print(";".join(["modules.cpp", *(f"{name}.cpp" for name in library.modules)]), end="")
    if options.output:
        for name in library.modules:
            write(options.output / "cpp" / f"{name}.cpp", cpp.module(library, name))
            write(options.output / "cpp" / f"{name}_records.hpp", cpp.records(library, name))
        write(options.output / "cpp" / "modules.cpp", cpp.modules(library))
        write(options.output / "fieldshaft" / "si.py", layers.si_layer(library))
        write(options.output / "fieldshaft" / "_formulas.py", layers.quantity_layer(library))
        write(options.output / "fieldshaft" / "_kinds.py", layers.kinds(library))
        write(options.output / "fieldshaft" / "_constants.py", layers.constants(library))
        write(options.output / "fieldshaft" / "_exported.py", layers.exported_names(library))
    if options.stubs:
        for name, text in stubs.all_stubs(library).items():
            write(options.stubs / name, text)
    return 0


if __name__ == "__main__":
    sys.exit(main())
