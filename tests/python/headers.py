"""What the C++ headers declare: public functions, structs and enumerations, read from the formatted text.

The tests compare it with the descriptions of the Python package, so that neither can gain, lose or rename anything
without the other.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
INCLUDE = ROOT / "include" / "fieldshaft"


@dataclass
class Parameter:
    type: str
    name: str
    default: str | None


@dataclass
class Function:
    module: str
    header: str
    returns: str
    name: str
    parameters: list[Parameter]
    comment: list[str] = field(repr=False)


@dataclass
class Struct:
    module: str
    header: str
    name: str
    body: str = field(repr=False)
    comment: list[str] = field(repr=False)


@dataclass
class Constant:
    module: str
    header: str
    space: str
    type: str
    name: str


@dataclass
class Enumeration:
    module: str
    header: str
    name: str
    members: list[tuple[str, str]]
    comment: list[str] = field(repr=False)


def _without_private(text: str) -> str:
    """The text without `namespace text`, `detail` and `math` blocks."""
    lines, depth, out = text.split("\n"), 0, []
    for line in lines:
        if depth == 0 and re.match(r"namespace (text|detail|math) \{", line):
            depth = 1
            continue
        if depth:
            if re.match(r"\} // namespace", line):
                depth = 0
            continue
        out.append(line)
    return "\n".join(out)


def split_arguments(text: str) -> list[str]:
    parts, depth, current = [], 0, ""
    for char in text:
        if char in "<({[":
            depth += 1
        if char in ">)}]":
            depth -= 1
        if char == "," and depth == 0:
            parts.append(current.strip())
            current = ""
        else:
            current += char
    return [*parts, current.strip()] if current.strip() else parts


def _parameter(text: str) -> Parameter:
    text = " ".join(text.split())
    head, _, default = text.partition(" = ")
    kind, _, name = head.rpartition(" ")
    return Parameter(kind.removeprefix("const ").rstrip("& "), name.lstrip("&*"), default or None)


def _comment_before(lines: list[str], index: int) -> list[str]:
    out: list[str] = []
    while index > 0 and lines[index - 1].startswith("///"):
        index -= 1
        out.insert(0, lines[index][3:].removeprefix(" "))
    return out


_FUNCTION = re.compile(
    r"^(?:\[\[nodiscard\]\] )?(?P<lead>(?:constexpr |inline )*)(?P<returns>(?:const )?[\w:<>, &*]+?[ &*])"
    r"(?P<name>[a-z]\w*)\((?P<arguments>(?:[^{};]|\{[^{};]*\})*?)\)(?: noexcept)?(?: \{|;)"
)


def read(module: str) -> tuple[list[Function], list[Struct], list[Enumeration]]:
    functions, structs, enumerations = [], [], []
    for header in sorted((INCLUDE / module).glob("*.hpp")):
        lines = _without_private(header.read_text()).split("\n")
        for i, whole in enumerate(lines):
            line = re.sub(r"^template <[^>]*> ", "", whole)
            comment = _comment_before(lines, i)
            name = header.name
            if match := re.match(r"(?:struct|class) (\w+)(?: final)? \{", line):
                end = next((j for j in range(i, len(lines)) if lines[j].startswith("}")), i)
                structs.append(Struct(module, name, match[1], "\n".join(lines[i + 1 : end]), comment))
            elif match := re.match(r"enum class (\w+) \{", line):
                block = line
                j = i
                while "};" not in block:
                    j += 1
                    block += "\n" + lines[j]
                inner = block[block.index("{") + 1 : block.index("};")]
                documented = re.findall(r"(?m)^ *(\w+)(?: = \w+)?,? *///< (.*)$", inner)
                bare = re.sub(r"///<.*", "", inner)
                names = [entry.split("=")[0].strip() for entry in bare.split(",") if entry.strip()]
                members = [(name, dict(documented).get(name, "")) for name in names]
                enumerations.append(Enumeration(module, name, match[1], members, comment))
            elif line and not line[0].isspace() and not line.startswith(("//", "#", "template", "using", "}", "namespace")):
                text = "\n".join([line, *lines[i + 1 : i + 12]])
                if (match := _FUNCTION.match(text)) and "operator" not in match["returns"]:
                    arguments = [_parameter(a) for a in split_arguments(match["arguments"])]
                    returns = match["returns"].strip().removeprefix("const ").rstrip("& ")
                    functions.append(Function(module, name, returns, match["name"], arguments, comment))
    return functions, structs, enumerations


def constants(module: str) -> list[Constant]:
    """The public constants of a module; `space` is a namespace of their own, such as steel."""
    found = []
    for header in sorted((INCLUDE / module).glob("*.hpp")):
        space = ""
        for line in _without_private(header.read_text()).split("\n"):
            if opened := re.match(r"namespace (\w+) \{", line):
                space = opened[1] if opened[1] != "fieldshaft" else ""
            elif line.startswith("} // namespace"):
                space = ""
            elif match := re.match(r"inline constexpr (.+?) \*?(\w+)(?:\[\d*\])?(?: =|\{|$)", line):
                found.append(Constant(module, header.name, space, match[1], match[2]))
    return found


def members(struct: Struct) -> list[str]:
    """The public data members of a struct, in their order."""
    body = re.sub(r"///?.*", "", struct.body).split("private:")[0]
    while (flat := re.sub(r"\{[^{}]*\}|\([^()]*\)", "@", body)) != body:  # bodies, arguments, initialisers
        body = flat
    statements = re.split(r";|(?<=@)\n", body)
    found = [re.fullmatch(r"(?:[\w:<>, *&]|@)+?[ *&](\w+)(?:@| = .*)?", " ".join(s.split())) for s in statements]
    words = ("friend", "using", "static", "return", "template", "public", "explicit", "operator")
    return [m[1] for m in found if m and not any(re.match(rf"(constexpr )?{w}\b", m[0]) for w in words) and "@ " not in m[0]]


def modules() -> list[str]:
    return sorted(p.name for p in INCLUDE.iterdir() if p.is_dir())
