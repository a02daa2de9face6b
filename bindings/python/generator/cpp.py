"""Writes the C++ half of the bindings: one file for each module, and the list of modules."""

from __future__ import annotations

import json
from pathlib import Path

from descriptions import Enumeration, Formula, Library, Parameter, Struct, Type

#: Small forwards by hand, for the calls of a module.
FORWARDS = Path(__file__).resolve().parent.parent / "src" / "forwards"

#: Structs that hold their texts themselves; the others point to them.
OWN_TEXT = {"fieldshaft::PtoOption", "fieldshaft::LineBody"}

HEAD = "// Generated from the descriptions in bindings/python. Change those, not this file.\n\n"


def _text(value: str) -> str:
    return json.dumps(value, ensure_ascii=False)


def _unit(library: Library, kind: Type) -> str:
    return library.kinds[kind.head]["si"] if library.is_quantity(kind) else ""


def enumeration(item: Enumeration) -> str:
    names = ", ".join(_text(item.value(member)) for member, _ in item.members)
    checks = "\n".join(
        f"  static_assert(static_cast<int>(fieldshaft::{item.name}::{member}) == {i});"
        for i, (member, _) in enumerate(item.members)
    )
    return (
        f"template <> struct Enumeration<fieldshaft::{item.name}> {{\n"
        f"  static constexpr const char* name = {_text(item.name)};\n"
        f"  static constexpr const char* names[] = {{{names}}};\n{checks}\n}};\n"
    )


def _access(struct: Struct, entry: Parameter) -> str:
    """The C++ expression for a field of `value`."""
    usual = f"value.{entry.cpp_name}{'()' if struct.by_method else ''}"
    return struct.access.get(entry.name, usual)


def _field(library: Library, struct: Struct, entry: Parameter) -> str:
    """The C++ expression that reads a field."""
    kind = "const char*" if entry.type.head == "text" and struct.cpp not in OWN_TEXT else library.cpp_type(entry.type)
    text = f"fields.next<{kind}>({_text(entry.name)}, {_text(_unit(library, entry.type))})"
    base = library.bases.get(str(entry.type))
    return f"as_base<{base}>({text})" if base else text


def record(library: Library, struct: Struct, handed_out: bool) -> str:
    names = ", ".join(_text(f.name) for f in struct.fields) or "nullptr"
    visits = " ".join(f"visit({_access(struct, f)});" for f in struct.fields)
    types = " ".join(
        f"visit(Type<std::decay_t<decltype({_access(struct, f).replace('value', 'sample()', 1)})>>{{}});" for f in struct.fields
    )
    lines = [
        f"template <> struct Record<{struct.cpp}> {{",
        "  static constexpr bool known = true;",
        f"  static constexpr const char* name = {_text(struct.name)};",
        f"  static constexpr const char* names[] = {{{names}}};",
        f"  static constexpr std::size_t count = {len(struct.fields)};",
    ]
    if handed_out:
        lines += [
            f"  template <class T, class V> static void each(const T& value, V&& visit) {{ {visits} }}",
            f"  static const {struct.cpp}& sample();",
            f"  template <class V> static constexpr void each_type(V&& visit) {{ {types} }}",
        ]
    if struct.from_number:
        lines.append(f"  static {struct.cpp} from_number(int number) {{ return {struct.from_number}(number); }}")
    if struct.is_input:
        reads = ", ".join(_field(library, struct, f) for f in struct.fields)
        made = struct.make or f"{struct.cpp}{{{reads}}}"
        body = f"return {struct.check}({made});" if struct.check else f"return {made};"
        lines.append(f"  static {struct.cpp} make([[maybe_unused]] Fields& fields) {{ {body} }}")
    return "\n".join(lines) + "\n};\n"


def _arguments(formula: Formula, values: dict[str, str]) -> str:
    """The C++ call with the given text for each parameter; unions are visited first."""
    if formula.call:
        return formula.call.format(**values)
    if formula.method_of:
        first, *rest = formula.parameters
        arguments = ", ".join(values[p.name] for p in rest)
        return f"{values[first.name]}.{formula.header_name}({arguments})"
    arguments = ", ".join(values[p.name] for p in formula.parameters)
    return f"fieldshaft::{formula.header_name}({arguments})"


def _call(formula: Formula, values: dict[str, str]) -> str:
    unions = [p for p in formula.parameters if p.type.head == "|"]
    if not unions:
        return _arguments(formula, values)
    inside = {**values, **{p.name: f"one_{p.cpp_name}" for p in unions}}
    heads = ", ".join(f"const auto& one_{p.cpp_name}" for p in unions)
    tails = ", ".join(values[p.name] for p in unions)
    return f"std::visit([&]({heads}) {{ return {_arguments(formula, inside)}; }}, {tails})"


def elementwise(library: Library, formula: Formula) -> str:
    name = formula.core_name
    rows, objects, reads, values = [], [], [], {}
    numbers = 0
    for i, p in enumerate(formula.parameters):
        unit = _text(_unit(library, p.type))
        if library.is_number(p.type):
            role = "count" if p.type.head == "count" else "number"
            number = f"values[{numbers}]"
            if role == "count":
                values[p.name] = f"checked_count({number}, {_text(formula.name)}, {_text(p.name)})"
            elif p.type.head == "number":
                values[p.name] = number
            else:
                values[p.name] = f"{library.cpp_type(p.type)}::from_value({number})"
            numbers += 1
        else:
            role = "object"
            values[p.name] = f"std::get<{len(objects)}>(objects)"
            objects.append(library.cpp_type(p.type))
            reads.append(f"read<{objects[-1]}>(arguments[{i}], {{{_text(formula.name)}, {_text(p.name)}, {unit}}})")
        rows.append(f"{{{_text(p.name)}, {unit}, Role::{role}}}")
    return (
        f"struct {name}_formula {{\n"
        f"  static constexpr const char* name = {_text(name)};\n"
        f"  static constexpr Parameter parameters[] = {{{', '.join(rows)}}};\n"
        f"  static constexpr std::size_t numbers = {numbers};\n"
        f"  using Objects = std::tuple<{', '.join(objects)}>;\n"
        f"  static Objects objects([[maybe_unused]] PyObject* const* arguments) {{ return Objects{{{', '.join(reads)}}}; }}\n"
        f"  static auto call([[maybe_unused]] const Objects& objects, const double* values) {{\n"
        f"    return {_call(formula, values)};\n  }}\n"
        + (f"  static bool loop(const Run& run) {{ return {formula.loop}(run); }}\n" if formula.loop else "")
        + "};\n"
    )


def single(library: Library, formula: Formula) -> str:
    lines = [f"PyObject* {formula.core_name}_single([[maybe_unused]] PyObject* const* arguments) {{"]
    values = {}
    for i, p in enumerate(formula.parameters):
        values[p.name] = f"argument_{i}"
        unit = _text(_unit(library, p.type))
        lines.append(
            f"  const auto argument_{i} = read<{library.cpp_type(p.type)}>(arguments[{i}], "
            f"{{{_text(formula.name)}, {_text(p.name)}, {unit}}});"
        )
    if formula.is_slow:  # long enough for other threads to use
        lines.append(f"  const auto result = unlocked([&] {{ return {_call(formula, values)}; }});")
        lines.append("  return to_python(result).release();")
    else:
        lines.append(f"  return to_python({_call(formula, values)}).release();")
    return "\n".join(lines) + "\n}\n"


def _needed(library: Library, name: str) -> tuple[list[Enumeration], list[Struct]]:
    """What the formulas and structs of a module touch, in the order in which they are described."""
    names: set[str] = set()

    def visit(kind: Type) -> None:
        for inner in kind.inner:
            visit(inner)
        if kind.head == "sourced" or kind.head == "datum":
            visit(Type("Source"))
        if kind.head in names:
            return
        names.add(kind.head)
        for entry in library.structs[kind.head].fields if kind.head in library.structs else ():
            visit(entry.type)

    for formula in library.formulas:
        if formula.module == name:
            for kind in [formula.returns, *(p.type for p in formula.parameters)]:
                visit(kind)
    for constant in library.constants:
        if constant.module == name:
            visit(constant.type)
    for item in [*library.structs.values(), *library.enumerations.values()]:
        if item.module == name:
            visit(Type(item.name))
    enumerations = [e for e in library.enumerations.values() if e.name in names]
    return enumerations, [s for s in library.structs.values() if s.name in names]


def _handed_out(library: Library) -> set[str]:
    """The structs that results and constants hold; of the others C++ need not know how to take them apart."""
    names: set[str] = set()

    def visit(kind: Type) -> None:
        for inner in kind.inner:
            visit(inner)
        if kind.head in ("sourced", "datum"):
            visit(Type("Source"))
        if kind.head in library.structs and kind.head not in names:
            names.add(kind.head)
            for entry in library.structs[kind.head].fields:
                visit(entry.type)

    for kind in [*(f.returns for f in library.formulas), *(c.type for c in library.constants)]:
        visit(kind)
    return names


def records(library: Library, name: str) -> str:
    """The header of a module: the records and enumerations that its formulas touch."""
    enumerations, structs = _needed(library, name)
    used = {name, *(item.module for item in [*enumerations, *structs])}
    headers = dict.fromkeys(library.modules[m] for m in library.modules if m in used)
    parts = [HEAD, '#pragma once\n\n#include "formula.hpp"\n']
    parts += [f'#include "forwards/{m}.hpp"\n' for m in library.modules if m in used and (FORWARDS / f"{m}.hpp").exists()]
    parts.append("\n")
    parts += [f"#include <{h}>\n" for h in headers]
    parts += ["\nnamespace fieldshaft_python {\n\n", *map(enumeration, enumerations)]
    handed_out = _handed_out(library)
    parts += [record(library, s, s.name in handed_out) for s in structs]
    return "".join(parts) + "\n} // namespace fieldshaft_python\n"


def module(library: Library, name: str) -> str:
    formulas = [f for f in library.formulas if f.module == name]
    parts = [HEAD, f'#include "{name}_records.hpp"\n\nnamespace fieldshaft_python {{\nnamespace {{\n\n']
    adds = []
    for formula in formulas:
        if library.elementwise(formula):
            parts.append(elementwise(library, formula))
            adds.append(f"  add<{formula.core_name}_formula>(module);")
        else:
            parts.append(single(library, formula))
            adds.append(
                f"  add_single(module, {_text(formula.core_name)}, {len(formula.parameters)}, &{formula.core_name}_single);"
            )
    for constant in library.constants:
        if constant.module == name:
            entry = f"{constant.name}_constant"
            parts.append(f"PyObject* {entry}(PyObject* const*) {{ return to_python({constant.cpp}).release(); }}\n")
            adds.append(f"  add_single(module, {_text(entry)}, 0, &{entry});")
    for struct in library.structs.values():
        if struct.module == name:
            adds.append(f"  announce_record<{struct.cpp}>();")
            if struct.is_input and not struct.make:
                adds.append(
                    f"  add_single(module, {_text(struct.name)}, {len(struct.fields)}, &checked_fields<{struct.cpp}>);"
                )
    for item in library.enumerations.values():
        if item.module == name:
            adds.append(f"  announce_enumeration<fieldshaft::{item.name}>();")
    body = "\n".join(adds)
    parts.append(f"\n}} // namespace\n\nvoid add_{name}([[maybe_unused]] PyObject* module) {{\n{body}\n}}\n\n}} // namespace fieldshaft_python\n")
    return "".join(parts)


def modules(library: Library) -> str:
    declared = "\n".join(f"void add_{name}(PyObject* module);" for name in library.modules)
    added = "\n".join(f"  add_{name}(module);" for name in library.modules)
    kinds = "\n".join(f"      {{{_text(k)}, fieldshaft::Kind::{k}}}," for k in [*library.kinds, "number"])
    return (
        f'{HEAD}#include "modules.hpp"\n\nnamespace fieldshaft_python {{\n\n{declared}\n\n'
        f"void add_modules(PyObject* module) {{\n{added}\n}}\n\n"
        "std::map<std::string, fieldshaft::Kind, std::less<>> kind_table() {\n  return {\n"
        f"{kinds}\n  }};\n}}\n\n}} // namespace fieldshaft_python\n"
    )
