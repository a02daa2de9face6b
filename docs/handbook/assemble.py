"""Puts the pages of the handbook together for Sphinx: the Markdown as it stands, a picture on the page of its module, and for
each module a page of the names in its headers.

    assemble.py HANDBOOK PICTURES XML OUT
"""

from __future__ import annotations

import shutil
import sys
from collections import Counter
from pathlib import Path
from xml.etree import ElementTree
from xml.etree.ElementTree import Element

#: Pages in reading order. A page that no part names ends the build.
PARTS = {
    "To begin": ["getting-started", "walk-through", "case", "findings", "report", "safety", "python", "embedding", "extending"],
    "Modules": [
        "units", "materials", "pto", "power", "rotor", "fatigue", "joint", "spline", "shaft", "overload", "hitch", "driveline",
        "dynamics", "cost", "advise", "farm",
    ],
    "What it rests on": ["trust", "external_checks", "constants", "errors", "speed"],
}  # fmt: skip

CSS = """
div.body { max-width: none; }
table.docutils { display: block; overflow-x: auto; border: none; box-shadow: none; font-size: 92%; }
table.docutils td, table.docutils th { vertical-align: top; }
pre { font-size: 85%; line-height: 1.35; white-space: pre-wrap; }
dl.cpp pre { background: none; border: none; padding: 0; }
figure img { max-width: 100%; height: auto; }
figcaption p { font-style: italic; }
a { color: #00588a; }
"""


def with_picture(text: str, page: str, caption: str) -> str:
    """The page with its picture ahead of its first section."""
    picture = f"```{{figure}} figures/{page}.svg\n:alt: {caption}\n\n{caption}\n```\n\n"
    at = text.find("\n## ") + 1
    return text[:at] + picture + text[at:]


def directive(member: Element, overloaded: bool) -> str:
    """What makes Breathe show a function, an enumeration, a variable or an alias."""
    kind = {"function": "function", "enum": "enum", "variable": "variable", "typedef": "typedef"}[member.get("kind", "")]
    name = f"fieldshaft::{member.findtext('name')}"
    if overloaded:
        types = ("".join(param.find("type").itertext()) for param in member.iterfind("param"))  # type: ignore[union-attr]
        name += f"({', '.join(types)})"
    return f".. doxygen{kind}:: {name}\n"


def directives_by_header(xml: Path) -> dict[str, list[str]]:
    """Every public name of the namespace fieldshaft by the header that declares it, in the order of the header."""
    found: dict[str, list[tuple[int, str]]] = {}

    def add(location: Element | None, text: str) -> None:
        if location is not None:
            found.setdefault(location.get("file", ""), []).append((int(location.get("line", 0)), text))

    root = ElementTree.parse(xml / "namespacefieldshaft.xml").getroot()
    named = ((m, m.findtext("name") or "") for m in root.iterfind("compounddef/sectiondef/memberdef"))
    members = [m for m, name in named if not name.startswith("operator") and "<" not in name]
    times = Counter(member.findtext("name") for member in members)
    for member in members:
        add(member.find("location"), directive(member, times[member.findtext("name")] > 1))
    for inner in root.iterfind("compounddef/innerclass"):
        compound = ElementTree.parse(xml / f"{inner.get('refid')}.xml").find("compounddef")
        if compound is not None and "<" not in (inner.text or ""):
            add(compound.find("location"), f".. doxygen{compound.get('kind')}:: {inner.text}\n   :members:\n   :undoc-members:\n")
    return {header: [text for _, text in sorted(texts)] for header, texts in found.items()}


def names_page(module: str, headers: dict[str, list[str]]) -> str:
    title = f"Names of {module}"
    parts = [f"{title}\n{'=' * len(title)}\n"]
    for header in sorted(headers):
        parts.append(f"{header}\n{'-' * len(header)}\n")
        parts += headers[header]
    return "\n".join(parts)


def contents(pages: dict[str, list[str]]) -> str:
    trees = (f"```{{toctree}}\n:caption: {part}\n:maxdepth: 1\n:hidden:\n\n" + "\n".join(names) + "\n```\n" for part, names in pages.items())
    return "\n" + "\n".join(trees)


def write_names(xml: Path, out: Path) -> list[str]:
    out.mkdir(parents=True, exist_ok=True)
    modules: dict[str, dict[str, list[str]]] = {}
    for header, texts in directives_by_header(xml).items():
        modules.setdefault(header.split("/")[1].removesuffix(".hpp"), {})[header] = texts
    for module, headers in modules.items():
        (out / f"{module}.rst").write_text(names_page(module, headers))
    return [f"names/{module}" for module in sorted(modules)]


def main(handbook: Path, pictures: Path, xml: Path, out: Path) -> None:
    shutil.rmtree(out, ignore_errors=True)
    shutil.copytree(pictures, out / "figures")
    (out / "_static").mkdir()
    (out / "_static" / "handbook.css").write_text(CSS)
    captions = dict(line.split("\t", 1) for line in (pictures / "captions.txt").read_text().splitlines())
    pages = {path.stem: path.read_text() for path in handbook.glob("*.md")}
    parts = {part: [name for name in names if name in pages] for part, names in PARTS.items()}
    lost = set(pages) - {"index"} - {name for names in parts.values() for name in names}
    if lost or set(captions) - set(pages):
        sys.exit(f"assemble.py: in no part of the handbook: {sorted(lost)}; pictures without a page: {sorted(set(captions) - set(pages))}")
    for name, text in pages.items():
        (out / f"{name}.md").write_text(with_picture(text, name, captions[name]) if name in captions else text)
    parts["Names in C++"] = write_names(xml, out / "names")
    with (out / "index.md").open("a") as index:
        index.write(contents(parts))


if __name__ == "__main__":
    main(*(Path(argument) for argument in sys.argv[1:]))
