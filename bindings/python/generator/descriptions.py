"""The descriptions of kinds and formulas, read from their TOML files and checked.

A type is written as in a signature: a kind of quantity ("torque"), "number", "count", "index" (a count of a struct
that is never negative), "flag", "text", "Case", the name of a struct or enumeration, or one of these inside list[...],
sourced[...], datum[...], validated[...], optional[...], array[...] (of results alone); "A|B" is one of several, "none"
among them for None. "time@hour" answers in another unit of the trade than the kind's usual one.
"""

from __future__ import annotations

import keyword
import re
import tomllib
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

#: Names of Python that C++ keeps for itself, and what its headers say instead.
CPP_NAMES = {"case": "value"}

SIMPLE = {"number": "double", "count": "int", "flag": "bool", "text": "std::string", "none": "std::monostate", "index": "std::size_t", "Case": "fieldshaft::Case"}
WRAPPERS = {
    "list": "std::vector",
    "sourced": "fieldshaft::Sourced",
    "datum": "fieldshaft::Datum",
    "validated": "fieldshaft::Validated",
    "optional": "std::optional",
    "array": "Table",
}


class DescriptionError(Exception):
    """A description that cannot be used, with the file and the entry."""


@dataclass(frozen=True)
class Type:
    """A parsed type: `head` is a kind, a simple type, a name, a wrapper, or "|" for one of several."""

    head: str
    inner: tuple[Type, ...] = ()
    trade: str | None = None

    def __str__(self) -> str:
        if self.head == "|":
            return "|".join(map(str, self.inner))
        text = f"{self.head}[{self.inner[0]}]" if self.inner else self.head
        return f"{text}@{self.trade}" if self.trade else text


#: Names for several types, such as Section for every section.
_ALIASES: dict[str, str] = {}


def parse_type(text: str) -> Type:
    text = _ALIASES.get(text.strip(), text.strip())
    parts, depth, start = [], 0, 0
    for i, char in enumerate(text):
        depth += (char == "[") - (char == "]")
        if char == "|" and depth == 0:
            parts.append(text[start:i])
            start = i + 1
    if parts:
        return Type("|", tuple(parse_type(p) for p in [*parts, text[start:]]))
    if text.endswith("]"):
        head, _, inner = text[:-1].partition("[")
        return Type(head, (parse_type(inner),))
    head, _, trade = text.partition("@")
    return Type(head, (), trade or None)


@dataclass(frozen=True)
class Parameter:
    name: str
    type: Type
    doc: str
    default: Any = None
    has_default: bool = False

    @property
    def cpp_name(self) -> str:
        """The name in C++: a trailing underscore only avoids a Python keyword."""
        plain = self.name.removesuffix("_")
        return CPP_NAMES.get(plain, plain if keyword.iskeyword(plain) else self.name)


@dataclass(frozen=True)
class Formula:
    module: str
    name: str
    summary: str
    parameters: tuple[Parameter, ...]
    returns: Type
    notes: str
    source: str
    call: str | None
    example: str
    gives: str
    si_example: str
    si_gives: str
    method_of: str | None
    is_property: bool
    is_slow: bool
    header_name: str
    loop: str | None  # C++ function by hand that does a whole run, where it can

    @property
    def core_name(self) -> str:
        return f"{self.method_of}_{self.name}" if self.method_of else self.name


@dataclass(frozen=True)
class Struct:
    module: str
    name: str
    summary: str
    fields: tuple[Parameter, ...]
    is_input: bool
    by_method: bool
    make: str | None
    check: str | None
    cpp: str
    access: dict[str, str]
    from_number: str | None  # C++ function that makes one from its number


@dataclass(frozen=True)
class Enumeration:
    module: str
    name: str
    summary: str
    members: tuple[tuple[str, str], ...]

    def value(self, member: str) -> str:
        return member.rstrip("_")


@dataclass(frozen=True)
class Constant:
    """A figure of the library that is no result of a formula: a guide value, a limit, a table."""

    module: str
    name: str
    type: Type
    summary: str
    cpp: str


@dataclass
class Library:
    kinds: dict[str, dict[str, Any]]
    modules: dict[str, str] = field(default_factory=dict)  # name to header
    formulas: list[Formula] = field(default_factory=list)
    constants: list[Constant] = field(default_factory=list)
    structs: dict[str, Struct] = field(default_factory=dict)
    enumerations: dict[str, Enumeration] = field(default_factory=dict)
    bases: dict[str, str] = field(default_factory=dict)  # C++ base class of one of several types

    def is_quantity(self, kind: Type) -> bool:
        return kind.head in self.kinds

    def is_number(self, kind: Type) -> bool:
        """Whether values of this type broadcast."""
        return kind.head in self.kinds or kind.head in ("number", "count")

    def cpp_type(self, kind: Type) -> str:
        if kind.head in self.kinds:
            return "fieldshaft::" + "".join(word.capitalize() for word in kind.head.split("_"))
        if kind.head in SIMPLE:
            return SIMPLE[kind.head]
        if kind.head == "|":
            return f"std::variant<{', '.join(self.cpp_type(t) for t in kind.inner)}>"
        if kind.head in WRAPPERS:
            return f"{WRAPPERS[kind.head]}<{self.cpp_type(kind.inner[0])}>"
        if kind.head in self.structs:
            return self.structs[kind.head].cpp
        return f"fieldshaft::{kind.head}"

    def flat(self, kind: Type) -> bool:
        """Whether a result consists of numbers and flags alone, so that it can be an array for each."""
        if kind.head in self.structs:
            return all(self.flat(f.type) for f in self.structs[kind.head].fields)
        if kind.head == "validated":
            return self.flat(kind.inner[0])
        return self.is_number(kind) or kind.head == "flag"

    def holds_quantities(self, kind: Type) -> bool:
        if kind.head in self.structs:
            return any(self.holds_quantities(f.type) for f in self.structs[kind.head].fields)
        return self.is_quantity(kind) or any(self.holds_quantities(t) for t in kind.inner)

    def elementwise(self, formula: Formula) -> bool:
        return self.flat(formula.returns) and any(self.is_number(p.type) for p in formula.parameters)

    def check(self, kind: Type, where: str) -> None:
        known = kind.head in self.kinds or kind.head in SIMPLE or kind.head in WRAPPERS or kind.head == "|"
        if not (known or kind.head in self.structs or kind.head in self.enumerations or kind.head == "Source"):
            raise DescriptionError(f"{where}: unknown type {kind}")
        for inner in kind.inner:
            self.check(inner, where)


def _parameters(entries: list[list[Any]], where: str) -> tuple[Parameter, ...]:
    result = []
    for entry in entries:
        if len(entry) not in (3, 4):
            raise DescriptionError(f"{where}: a parameter has name, type, text and perhaps a default: {entry}")
        default = entry[3] if len(entry) == 4 else None
        result.append(Parameter(entry[0], parse_type(entry[1]), entry[2], default, len(entry) == 4))
    return tuple(result)


def _formula(module: str, table: dict[str, Any], where: str) -> Formula:
    known = {
        "name", "summary", "parameters", "returns", "notes", "source", "call", "example", "gives", "si_example",
        "si_gives", "method_of", "property", "slow", "header_name", "loop",
    }  # fmt: skip
    if unknown := set(table) - known:
        raise DescriptionError(f"{where}: unknown entries {sorted(unknown)}")
    return Formula(
        module=module,
        name=table["name"],
        summary=table["summary"],
        parameters=_parameters(table.get("parameters", []), where),
        returns=parse_type(table["returns"]),
        notes=table.get("notes", ""),
        source=table.get("source", ""),
        call=table.get("call"),
        example=table.get("example", ""),
        gives=table.get("gives", ""),
        si_example=table.get("si_example", ""),
        si_gives=table.get("si_gives", ""),
        method_of=table.get("method_of"),
        is_property=table.get("property", False),
        is_slow=table.get("slow", False),
        header_name=table.get("header_name", table["name"]),
        loop=table.get("loop"),
    )


def _in_order(structs: dict[str, Struct]) -> dict[str, Struct]:
    """The structs, each after those that its fields and their defaults name."""
    ordered: dict[str, Struct] = {}

    def visit(struct: Struct) -> None:
        if struct.name in ordered:
            return
        for entry in struct.fields:
            for name in re.findall(r"\w+", f"{entry.type} {entry.default}"):
                if name in structs and name != struct.name:
                    visit(structs[name])
        ordered[struct.name] = struct

    for struct in structs.values():
        visit(struct)
    return ordered


def load(folder: Path) -> Library:
    library = Library(tomllib.loads((folder / "kinds.toml").read_text(encoding="utf-8")))
    paths = sorted((folder / "formulas").glob("*.toml"))
    documents = {path: tomllib.loads(path.read_text(encoding="utf-8")) for path in paths}
    for document in documents.values():
        for table in document.get("alias", []):
            _ALIASES[table["name"]] = table["type"]
            if "base" in table:
                library.bases[str(parse_type(table["type"]))] = table["base"]
    for path, document in documents.items():
        module = path.stem
        library.modules[module] = document.get("header", f"fieldshaft/{module}.hpp")
        for table in document.get("enum", []):
            members = tuple((m[0], m[1] if len(m) > 1 else "") for m in table["members"])
            library.enumerations[table["name"]] = Enumeration(module, table["name"], table["summary"], members)
        for table in document.get("struct", []):
            name = table["name"]
            if name in library.structs:
                raise DescriptionError(f"{path.name}: {name} is described twice")
            library.structs[name] = Struct(
                module=module,
                name=name,
                summary=table["summary"],
                fields=_parameters(table["fields"], f"{path.name}: {name}"),
                is_input=table.get("input", False),
                by_method=table.get("by_method", False),
                make=table.get("make"),
                check=table.get("check"),
                access=table.get("access", {}),
                from_number=table.get("from_number"),
                cpp=table.get("cpp", f"fieldshaft::{name}"),
            )
        for name, kind, summary, *cpp in document.get("constants", []):
            expression = cpp[0] if cpp else f"fieldshaft::{name}"
            library.constants.append(Constant(module, name, parse_type(kind), summary, expression))
        for table in document.get("formula", []):
            library.formulas.append(_formula(module, table, f"{path.name}: {table.get('name')}"))
    library.structs = _in_order(library.structs)
    for struct in library.structs.values():
        for entry in struct.fields:
            library.check(entry.type, f"{struct.name}.{entry.name}")
    for constant in library.constants:
        library.check(constant.type, constant.name)
    for formula in library.formulas:
        for entry in formula.parameters:
            library.check(entry.type, f"{formula.name}({entry.name})")
        library.check(formula.returns, formula.name)
    return library
