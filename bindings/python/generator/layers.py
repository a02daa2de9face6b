"""Writes the Python half: the SI layer, the quantity layer, and the stubs of both."""

from __future__ import annotations

import json
import textwrap

from descriptions import Enumeration, Formula, Library, Parameter, Struct, Type

HEAD = "# Generated from the descriptions in bindings/python. Change those, not this file.\n"
WIDTH = 116

#: Functions of whole histories, written by hand.
CYCLES = [
    "close_residue",
    "count_closed_cycles",
    "count_cycles",
    "count_repeating_cycles",
    "history_damage",
    "miner_damage",
]


#: Only those who ask for the figures wait for them.
LAZY_CONSTANTS = """

def __getattr__(name):
    if name != "constants":
        raise AttributeError(f"module 'fieldshaft.si' has no attribute {name!r}")
    from fieldshaft._constants import SiConstants

    globals()["constants"] = SiConstants()
    return globals()["constants"]

"""

FIGURES_DOC = {
    False: "The figures of the library as quantities, each with its source: `fieldshaft.constants`.",
    True: "The figures of the library as plain SI numbers, each with its source: `fieldshaft.si.constants`.",
}


def _wrap(text: str, indent: int) -> str:
    return textwrap.fill(
        " ".join(text.split()), WIDTH, initial_indent=" " * indent, subsequent_indent=" " * indent, break_on_hyphens=False
    )


def _sentence(text: str) -> str:
    text = text.strip() or "As named"
    text = text[:1].upper() + text[1:]
    return text if text.endswith(".") else text + "."


class Layer:
    """What differs between the two layers: words for types, and how defaults and examples are written."""

    def __init__(self, library: Library, si: bool) -> None:
        self.library = library
        self.si = si
        self.name = "fieldshaft.si" if si else "fieldshaft"

    # Words. --------------------------------------------------------------------------------------------------

    def words(self, kind: Type, result: bool, broadcast: bool) -> str:
        if self.library.is_quantity(kind):
            table = self.library.kinds[kind.head]
            if self.si:
                return f"float{' or array' if broadcast else ''}, {table['si']}"
            unit = kind.trade or table["symbol"]
            return f"quantity, {unit}" if result else "quantity or str"
        if kind.head == "number":
            return "float or array" if broadcast else "float"
        if kind.head == "count":
            return "int or array" if broadcast and not result else "int"
        if kind.head == "|":
            return " or ".join(self.words(t, result, broadcast) for t in kind.inner)
        inner = self.words(kind.inner[0], result, broadcast) if kind.inner else ""
        if kind.head in self.library.enumerations and not result:
            return f"{kind.head} or str"
        if kind.head in self.library.structs and self.library.structs[kind.head].from_number and not result:
            return f"{kind.head} or int"
        return {
            "flag": "bool", "text": "str", "list": f"{'tuple' if result else 'sequence'} of {inner}",
            "sourced": f"Sourced ({inner})", "datum": f"Sourced ({inner}) or None",
            "validated": f"Validated ({inner})", "optional": f"{inner} or None", "none": "None", "array": f"array, {inner}",
            "index": "int",
        }.get(kind.head, kind.head)  # fmt: skip

    def default(self, entry: Parameter) -> str:
        value = entry.default
        if isinstance(value, list) and entry.type.head == "list":
            inner = entry.type.inner[0]
            written = value if self.si else [f"{number!r} {self.library.kinds[inner.head]['si']}" for number in value]
            return repr(tuple(written))
        if isinstance(value, list):  # number, text and standing of a sourced value
            number, text, standing = value
            inner = entry.type.inner[0]
            if self.library.is_quantity(inner) and not self.si:
                number = f"{number!r} {self.library.kinds[inner.head]['si']}"
            return f"Sourced({number!r}, Source({json.dumps(text)}, {standing!r}))"
        if self.si or not self.library.is_quantity(entry.type):
            if isinstance(value, str) and (value.endswith(")") or value == "None"):
                # A call such as NotchFactors(). Of records with quantities the SI one, which needs no pint.
                holds = not self.si and value[0].isalpha() and self.library.holds_quantities(entry.type)
                return f"si.{value}" if holds and value.endswith(")") else value
            return repr(value)
        return repr(f"{value!r} {self.library.kinds[entry.type.head]['si']}")

    def signature(self, parameters: tuple[Parameter, ...]) -> str:
        return ", ".join(p.name + (f"={self.default(p)}" if p.has_default else "") for p in parameters)

    def annotation(self, kind: Type) -> str:
        """The type of a constant in a signature."""
        if kind.head in self.library.kinds:
            return "float" if self.si else "Quantity[Any]"
        if kind.head == "list":
            return f"tuple[{self.annotation(kind.inner[0])}, ...]"
        names = {"number": "float", "count": "int", "text": "str", "sourced": "Sourced"}
        return names.get(kind.head) or f"{'si' if self.si else 'fieldshaft'}.{kind.head}"

    # Docstrings. ---------------------------------------------------------------------------------------------

    def parameter_docs(self, parameters: tuple[Parameter, ...], broadcast: bool, indent: int) -> list[str]:
        lines = []
        for p in parameters:
            words = self.words(p.type, False, broadcast)
            if p.has_default:
                words += f", default {self.default(p)}"
            lines.append(" " * indent + f"{p.name} : {words}")
            kind = "" if not self.library.is_quantity(p.type) else self.library.kinds[p.type.head]["text"]
            text = p.doc or p.name.replace("_", " ").strip()
            lines.append(_wrap(_sentence(f"{text} ({kind})" if kind and not self.si else text), indent + 4))
        return lines

    def docstring(self, formula: Formula, indent: int) -> str:
        broadcast = self.library.elementwise(formula)
        pad = " " * indent
        parameters = formula.parameters[1:] if formula.method_of else formula.parameters
        lines = [_wrap('"""' + _sentence(formula.summary), indent)]
        if parameters:
            lines += ["", f"{pad}Parameters", f"{pad}----------", *self.parameter_docs(parameters, broadcast, indent)]
        lines += ["", f"{pad}Returns", f"{pad}-------", pad + self.words(formula.returns, True, broadcast)]
        if broadcast:
            text = "Scalars give a scalar, arrays are broadcast against each other."
            lines.append(_wrap(text, indent + 4))
        if formula.notes or formula.source:
            lines += ["", f"{pad}Notes", f"{pad}-----"]
            paragraphs = [p for p in formula.notes.split("\n") if p]
            if formula.source:
                paragraphs.append("Source: " + _sentence(formula.source))
            lines.append("\n\n".join(_wrap(p, indent) for p in paragraphs))
        example, gives = (formula.si_example, formula.si_gives) if self.si else (formula.example, formula.gives)
        if example:
            lines += ["", f"{pad}Examples", f"{pad}--------", f"{pad}>>> from {self.name} import *"]
            *first, last = example.split("\n")
            lines += [f"{pad}>>> {line}" for line in [*first, last]]
            lines += [pad + line for line in gives.split("\n") if line]
        return "\n".join(lines) + f'\n{pad}"""\n'

    # Classes. ------------------------------------------------------------------------------------------------

    def struct_docstring(self, struct: Struct) -> str:
        lines = [_wrap('"""' + _sentence(struct.summary), 4), "", "    Attributes", "    ----------"]
        return "\n".join([*lines, *self.parameter_docs(struct.fields, False, 4)]) + '\n    """\n'

    def struct(self, struct: Struct, methods: list[Formula]) -> str:
        slots = "".join(json.dumps(f.name) + ", " for f in struct.fields).rstrip(" ")
        names = ", ".join(f.name for f in struct.fields)
        base = "Record" if self.si else "QuantityRecord"
        lines = [f"class {struct.name}({base}):\n", self.struct_docstring(struct), f"\n    __slots__ = ({slots})\n"]
        if not self.si:
            types = ", ".join(json.dumps(str(f.type)) for f in struct.fields) + ","
            lines += [f"    _types = ({types})\n", f"    _si_class = si.{struct.name}\n"]
            if struct.from_number:
                lines.append("    _takes_number = True\n")
        signature = "".join(", " + self.signature((entry,)) for entry in struct.fields)
        lines.append(f"\n    def __init__(self{signature}):\n")
        if not self.si:
            lines.append(f"        fill_quantities(self, ({names},))\n")
        elif struct.is_input and not struct.make:
            lines.append(f"        fill(self, _core.{struct.name}({names}))\n")
        else:
            lines.append(f"        fill(self, ({names + ',' if names else ''}))\n")
        for method in methods:
            others = method.parameters[1:]
            if method.is_property:
                lines.append("\n    @property")
            signature = "".join(", " + self.signature((p,)) for p in others)
            arguments = "".join(", " + p.name for p in others)
            lines.append(f"\n    def {method.name}(self{signature}):\n" + self.docstring(method, 8))
            target = f"_core.{method.core_name}" if self.si else f"_{method.core_name}"
            lines.append(f"        return {target}(self{arguments})\n")
        return "".join(lines)

    def enumeration(self, item: Enumeration) -> str:
        lines = [f"class {item.name}(Name):\n", f'    """{_sentence(item.summary)}"""\n\n']
        for member, doc in item.members:
            comment = f"  #: {doc}" if doc else ""
            lines.append(f"    {member} = {json.dumps(item.value(member))}{comment}\n")
        return "".join(lines)

    # Functions. ----------------------------------------------------------------------------------------------

    def function(self, formula: Formula) -> str:
        arguments = ", ".join(p.name for p in formula.parameters)
        target = f"_core.{formula.core_name}" if self.si else f"_{formula.core_name}"
        head = f"def {formula.name}({self.signature(formula.parameters)}):\n"
        return head + self.docstring(formula, 4) + f"    return {target}({arguments})\n"

    def converter(self, formula: Formula) -> str:
        """The caller of the quantity layer: reads the arguments, calls the SI layer, names the unit of the result."""
        rows = "".join(f"({json.dumps(p.name)}, {json.dumps(str(p.type))}), " for p in formula.parameters).rstrip(" ")
        returns = json.dumps(str(formula.returns))
        return (
            f"_{formula.core_name} = Caller({json.dumps(formula.name)}, _core.{formula.core_name}, ({rows}), {returns})\n"
        )


def names(library: Library) -> list[str]:
    functions = [f.name for f in library.formulas if not f.method_of]
    return [*functions, *library.structs, *library.enumerations]


def exported(library: Library, extra: list[str]) -> str:
    return "__all__ = [\n" + "".join(f"    {json.dumps(n)},\n" for n in sorted([*names(library), *extra])) + "]\n"


def _methods(library: Library, struct: Struct) -> list[Formula]:
    return [f for f in library.formulas if f.method_of == struct.name]


def si_layer(library: Library) -> str:
    layer = Layer(library, True)
    parts = [
        HEAD,
        '"""The formulas on bare SI numbers and arrays: metre, kilogram, second, radian, newton, pascal, watt.\n\n'
        "Scalars give scalars, arrays are broadcast as NumPy does. Quantities with units are refused here: the\n"
        'functions of ``fieldshaft`` itself take those."""\n\n',
        "from fieldshaft import _core\nfrom fieldshaft._errors import InputError\n",
        f"from fieldshaft._cycles import (\n{''.join(f'    {n},' + chr(10) for n in CYCLES)})\n",
        "from fieldshaft._records import Name, Record, Sourced, Validated, fill\n\n",
        exported(library, ["InputError", "Sourced", "Validated", "constants", *CYCLES]),
    ]
    parts.append(LAZY_CONSTANTS)
    parts.append("\n_core.register_error(InputError)\n_core.register(Sourced)\n_core.register(Validated)\n")
    parts += ["\n\n@_core.register\n" + layer.enumeration(e) for e in library.enumerations.values()]
    parts += ["\n\n@_core.register\n" + layer.struct(s, _methods(library, s)) for s in library.structs.values()]
    parts += ["\n\n" + layer.function(f) for f in library.formulas if not f.method_of]
    return "".join(parts)


def quantity_layer(library: Library) -> str:
    layer = Layer(library, False)
    structs = [s for s in library.structs.values() if library.holds_quantities(Type(s.name))]
    shared = sorted([*library.enumerations, *(set(library.structs) - {s.name for s in structs})])
    parts = [
        HEAD,
        '"""The formulas on quantities: arguments of any pint registry or texts such as "75 hp"."""\n\n',
        "from fieldshaft import _core, si\nfrom fieldshaft._errors import InputError\n",
        "from fieldshaft._quantities import Caller, QuantityRecord, fill_quantities, register_records\n",
        "from fieldshaft._records import Sourced, Validated\n",
        f"from fieldshaft.si import (\n{''.join(f'    {n},' + chr(10) for n in shared)})\n\n",
        exported(library, ["InputError", "Sourced", "Validated"]),
    ]
    parts += ["\n\n" + layer.struct(s, _methods(library, s)) for s in structs]
    parts.append("\n\nregister_records(\n    " + ",\n    ".join(s.name for s in structs) + ",\n)\n\n")
    parts += [layer.converter(f) for f in library.formulas]
    parts += ["\n\n" + layer.function(f) for f in library.formulas if not f.method_of]
    return "".join(parts)


def constants(library: Library) -> str:
    """The figures of the library, one class for each layer."""
    parts = [
        HEAD,
        '"""The figures of the library that are no result of a formula."""\n\n',
        "from __future__ import annotations\n\nfrom typing import TYPE_CHECKING, Any\n\n",
        "from fieldshaft._figures import Figures\nfrom fieldshaft._records import Sourced\n\n",
        "if TYPE_CHECKING:\n    import fieldshaft\n    from fieldshaft import si\n",
        "    from pint import Quantity  # type: ignore[import-not-found, unused-ignore]\n",
    ]
    for is_si, name in ((False, "Constants"), (True, "SiConstants")):
        layer = Layer(library, is_si)
        parts.append(f"\n\nclass {name}(Figures):\n")
        parts.append(f'    """{FIGURES_DOC[is_si]}"""\n\n    _is_si = {is_si}\n')
        parts.append("    _types = {\n" + "".join(f"        {json.dumps(c.name)}: {json.dumps(str(c.type))},\n" for c in library.constants))
        parts.append("    }\n")
        for constant in library.constants:
            kind = layer.annotation(constant.type)
            parts.append(f"\n    @property\n    def {constant.name}(self) -> {kind}:\n")
            parts.append(_wrap('"""' + _sentence(constant.summary), 8) + '"""\n')
            parts.append(f"        return self._value({json.dumps(constant.name)})  # type: ignore[no-any-return, unused-ignore]\n")
    return "".join(parts)


def exported_names(library: Library) -> str:
    """The names of the quantity layer, so that the package knows them before it is loaded."""
    text = exported(library, ["InputError", "Sourced", "Validated"]).replace("__all__", "FORMULAS")
    return HEAD + '"""The names of the quantity layer."""\n\n' + text


def kinds(library: Library) -> str:
    """The table of kinds, as the quantity layer needs it."""
    lines = [HEAD, '"""The kinds of quantity and their units."""\n\nfrom typing import Any\n\nKINDS: dict[str, dict[str, Any]] = {\n']
    for name, table in library.kinds.items():
        entries = ", ".join(f"{json.dumps(k)}: {json.dumps(v, ensure_ascii=False)}" for k, v in table.items())
        lines.append(f"    {json.dumps(name)}: {{{entries}}},\n")
    return "".join(lines) + "}\n"
