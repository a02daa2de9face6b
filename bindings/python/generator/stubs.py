"""Writes the stubs: what a type checker and an editor see of both layers."""

from __future__ import annotations

import layers
from descriptions import Formula, Library, Parameter, Struct, Type

HEAD = "# Generated from the descriptions in bindings/python. Change those, not this file.\n"


class Stubs:
    """The types of one layer."""

    def __init__(self, library: Library, si: bool) -> None:
        self.library = library
        self.si = si
        self.layer = layers.Layer(library, si)
        self.shared = {name for name in library.structs if not library.holds_quantities(Type(name))}

    def given(self, kind: Type, array: bool = False) -> str:
        """The type of an argument."""
        if self.library.is_number(kind):
            if self.si:
                return "ArrayLike" if array else "float" if kind.head != "count" else "int"
            if self.library.is_quantity(kind):
                return "_QuantityLike"
            return "_Number" if kind.head == "number" else "ArrayLike" if array else "int"
        if kind.head == "|":
            return " | ".join(dict.fromkeys(self.given(t) for t in kind.inner))
        inner = self.given(kind.inner[0]) if kind.inner else ""
        if kind.head in self.library.enumerations:
            return f"{kind.head} | str"
        number = " | int" if kind.head in self.library.structs and self.library.structs[kind.head].from_number else ""
        if kind.head in self.library.structs and not self.si and self.library.holds_quantities(kind):
            return f"{kind.head} | si.{kind.head}{number}"
        if number:
            return kind.head + number
        return {
            "flag": "bool", "text": "str", "list": f"Iterable[{inner}]", "sourced": "Sourced", "datum": "Sourced | None",
            "optional": f"{inner} | None", "none": "None", "array": "Any", "index": "int",
        }.get(kind.head, kind.head)  # fmt: skip

    def result(self, kind: Type, array: bool = False) -> str:
        """The type of a result or of a field."""
        if self.library.is_quantity(kind):
            return "Quantity[Any]" if not self.si else "NDArray[np.float64]" if array else "float"
        if kind.head in ("number", "count", "flag"):
            if array:
                return {"number": "NDArray[np.float64]", "count": "NDArray[np.int64]", "flag": "NDArray[np.bool_]"}[kind.head]
            return {"number": "float", "count": "int", "flag": "bool"}[kind.head]
        if kind.head == "|":
            return " | ".join(dict.fromkeys(self.result(t) for t in kind.inner))
        inner = self.result(kind.inner[0]) if kind.inner else ""
        return {
            "text": "str", "list": f"tuple[{inner}, ...]", "sourced": "Sourced", "datum": "Sourced | None",
            "validated": "Validated", "optional": f"{inner} | None", "none": "None", "index": "int",
            "array": "NDArray[np.float64]" if self.si else inner,
        }.get(kind.head, kind.head)  # fmt: skip

    def signature(self, parameters: tuple[Parameter, ...], array: bool) -> str:
        return ", ".join(
            f"{p.name}: {self.given(p.type, array)}{' = ...' if p.has_default else ''}" for p in parameters
        )

    def function(self, formula: Formula) -> str:
        broadcast = self.library.elementwise(formula)
        plain = formula.returns.head in ("number", "count", "flag")
        two = broadcast and (self.library.is_quantity(formula.returns) or plain)
        if two and (self.si or plain):
            if not self.si and not any(self.library.is_number(p.type) for p in formula.parameters):
                two = False
            elif not self.si:
                head = self.signature(formula.parameters, True)
                return f"def {formula.name}({head}) -> Any: ...\n"
        if two and self.si:
            scalar = self.signature(formula.parameters, False)
            arrays = self.signature(formula.parameters, True)
            return (
                f"@typing.overload\ndef {formula.name}({scalar}) -> {self.result(formula.returns)}: ...\n"
                f"@typing.overload\ndef {formula.name}({arrays}) -> {self.result(formula.returns, True)}: ...\n"
            )
        return f"def {formula.name}({self.signature(formula.parameters, broadcast)}) -> {self.result(formula.returns)}: ...\n"

    def method(self, formula: Formula) -> str:
        others = formula.parameters[1:]
        broadcast = self.library.elementwise(formula) and bool(others)
        arguments = "".join(", " + self.signature((p,), broadcast) for p in others)
        lead = "    @property\n" if formula.is_property else ""
        result = "Any" if broadcast and self.si else self.result(formula.returns)
        return f"{lead}    def {formula.name}(self{arguments}) -> {result}: ...\n"

    def struct(self, struct: Struct) -> str:
        # The fields of a result may be arrays where the arguments were.
        any_size = self.si and not struct.is_input and self.library.flat(Type(struct.name))
        base = "Record" if self.si else "QuantityRecord"
        lines = [f"class {struct.name}({base}):\n"]
        for entry in struct.fields:
            kind = "Any" if any_size and entry.type.head not in self.library.structs else self.result(entry.type)
            lines.append(f"    {entry.name}: {kind}\n")
        arguments = "".join(", " + self.signature((p,), any_size) for p in struct.fields)
        lines.append(f"    def __init__(self{arguments}) -> None: ...\n")
        lines += [self.method(f) for f in self.library.formulas if f.method_of == struct.name]
        return "".join(lines)


def si_stub(library: Library) -> str:
    stubs = Stubs(library, True)
    parts = [
        HEAD,
        "import typing\nfrom collections.abc import Iterable\nfrom typing import Any\n\n",
        "import numpy as np\nfrom numpy.typing import ArrayLike, NDArray\n\n",
        "from fieldshaft._cycles import (\n",
        *(f"    {name} as {name},\n" for name in layers.CYCLES),
        ")\nfrom fieldshaft._cases import Case\nfrom fieldshaft._constants import SiConstants\nfrom fieldshaft._errors import InputError as InputError\n",
        "from fieldshaft._records import Name, Record\n",
        "from fieldshaft._records import Sourced as Sourced\nfrom fieldshaft._records import Validated as Validated\n\n",
        layers.exported(library, ["InputError", "Sourced", "Validated", "constants", *layers.CYCLES]),
        "\nconstants: SiConstants\n",
    ]
    for item in library.enumerations.values():
        parts.append(f"\nclass {item.name}(Name):\n")
        parts += [f"    {member} = {item.value(member)!r}\n" for member, _ in item.members]
    parts += ["\n" + stubs.struct(s) for s in library.structs.values()]
    parts.append("\n")
    parts += [stubs.function(f) for f in library.formulas if not f.method_of]
    return "".join(parts)


#: What is written by hand, by its module.
BY_HAND = {
    "_advice": ["Change", "Changeover", "Remedies", "Remedy", "RemedyOptions", "changeover", "changeover_between", "remedies"],
    "_cases": ["Assessment", "Case", "Finding", "assess", "case_json_schema", "read_case", "read_case_file"],
    "_documents": ["CaseError", "CaseProblem"],
    "_envelopes": ["BranchEnvelopeOfCase", "MeasuredEntry", "RangeOrigin", "StateEnvelope", "StateExtreme", "TurnAtPitch"],
    "_farms": ["Farm", "FarmStudy", "farm_json_schema", "read_farm", "read_farm_file", "screened_checks", "study_farm", "study_pair", "with_options"],
    "_frames": ["to_frame"],
    "_quantity_cycles": ["Cycles", *layers.CYCLES],
    "_reports": ["ReportedValue", "to_html", "to_json", "to_markdown", "to_text"],
}


def _imports() -> str:
    return "".join(
        f"from fieldshaft.{module} import (\n{''.join(f'    {name} as {name},' + chr(10) for name in names)})\n"
        for module, names in BY_HAND.items()
    )


def quantity_stub(library: Library) -> str:
    stubs = Stubs(library, False)
    shared = sorted([*stubs.shared, *library.enumerations])
    parts = [
        HEAD,
        "from collections.abc import Iterable, Sequence\nfrom typing import Any\n\n",
        "from numpy.typing import ArrayLike\nfrom pint import Quantity\nfrom pint.facets.plain import PlainQuantity\n\n",
        "from fieldshaft import plots as plots\nfrom fieldshaft import si as si\nfrom fieldshaft._constants import Constants\n",
        _imports(),
        "from fieldshaft._errors import InputError as InputError\nfrom fieldshaft._quantities import QuantityRecord\n",
        "from fieldshaft._records import Sourced as Sourced\nfrom fieldshaft._records import Validated as Validated\n",
        "from fieldshaft.si import (\n",
        *(f"    {name} as {name},\n" for name in shared),
        ")\n\n",
        layers.exported(
            library,
            ["InputError", "Sourced", "Validated", "constants", "si", *(name for names in BY_HAND.values() for name in names)],
        ),
        "\n__version__: str\nconstants: Constants\n\n",
        # What a registry makes is a PlainQuantity to some type checkers and a Quantity to others.
        "_Amount = Quantity[Any] | PlainQuantity[Any] | str\n_QuantityLike = _Amount | Sequence[_Amount]\n",
        "_Number = _Amount | ArrayLike\n",
    ]
    parts += ["\n" + stubs.struct(s) for s in library.structs.values() if s.name not in stubs.shared]
    parts.append("\n")
    parts += [stubs.function(f) for f in library.formulas if not f.method_of]
    return "".join(parts)


#: Functions of the module that are bound by hand.
CORE_BY_HAND = [
    "assess", "best_case", "case_json_schema", "changed_case", "changeover", "changeover_between", "farm_json_schema", "read_case", "read_farm",
    "register_case_error", "remedies", "screened_checks", "study_farm", "to_html", "to_json", "to_markdown", "to_text",
    "with_options", "write_case", "write_farm",
]  # fmt: skip


def core_stub(library: Library) -> str:
    functions = [f.core_name for f in library.formulas]
    functions += [s.name for s in library.structs.values() if s.is_input and not s.make]
    functions += [f"{c.name}_constant" for c in library.constants]
    functions += [*layers.CYCLES, "parse", "register", "register_error"]
    lines = [f"def {name}(*arguments: Any) -> Any: ...\n" for name in functions]
    classes = "".join(f"class {name}: ...\n" for name in ("Assessment", "Case", "Changeover", "Farm", "FarmStudy", "Remedies"))
    fixed = classes + "".join(f"def {name}(*arguments: Any) -> Any: ...\n" for name in CORE_BY_HAND)
    return HEAD + "from typing import Any\n\n" + fixed + "".join(lines)


def all_stubs(library: Library) -> dict[str, str]:
    return {
        "_core.pyi": core_stub(library),
        "_formulas.pyi": HEAD + "from typing import Any\n\ndef __getattr__(name: str) -> Any: ...\n",
        "__init__.pyi": quantity_stub(library),
        "si.pyi": si_stub(library),
    }
