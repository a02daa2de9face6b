"""The examples in the docstrings, of both layers; and that every public function has one."""

from __future__ import annotations

import doctest
import inspect
from types import ModuleType
from typing import Any

import pytest

# pytest's checker compares numbers as far as the example writes them.
from _pytest.doctest import _get_checker, _get_flag_lookup

import fieldshaft
from fieldshaft import si

FLAGS = _get_flag_lookup()
OPTIONS = FLAGS["NUMBER"] | FLAGS["NORMALIZE_WHITESPACE"]

#: Functions that work on a whole case or on files: their examples are the case files, which the tests of cases run.
WITHOUT_EXAMPLE = {
    "assess", "case_json_schema", "farm_json_schema", "read_case", "read_case_file", "read_farm", "read_farm_file", "remedies",
    "study_farm", "study_pair", "to_html", "to_json", "to_markdown", "to_text", "with_options",
}  # fmt: skip


def _documented(module: ModuleType) -> list[tuple[str, Any]]:
    found = []
    for name in sorted(module.__all__):
        item = getattr(module, name)
        if inspect.isfunction(item):
            found.append((name, item))
        elif inspect.isclass(item):
            for key, member in vars(item).items():
                target = member.fget if isinstance(member, property) else member
                if inspect.isfunction(target) and ">>>" in (target.__doc__ or ""):
                    found.append((f"{name}.{key}", target))
    return found


CASES = [
    pytest.param(item, id=f"{module.__name__}.{name}") for module in (fieldshaft, si) for name, item in _documented(module)
]


@pytest.mark.parametrize("item", CASES)
def test_example(item: Any) -> None:
    document = inspect.getdoc(item)
    assert document, "a public function has a docstring"
    if item.__name__ in WITHOUT_EXAMPLE:
        return
    test = doctest.DocTestParser().get_doctest(document, {}, item.__name__, None, 0)
    assert test.examples, "a public function has an example"
    report: list[str] = []
    runner = doctest.DocTestRunner(checker=_get_checker(), optionflags=OPTIONS)
    result = runner.run(test, out=report.append)
    assert result.failed == 0, "".join(report)


@pytest.mark.parametrize("item", CASES)
def test_docstring_names_every_parameter(item: Any) -> None:
    """numpydoc's sections, and each parameter of the signature under its own name."""
    document = inspect.getdoc(item) or ""
    names = [name for name in inspect.signature(item).parameters if name != "self"]
    if not names:
        return
    if item.__name__ in WITHOUT_EXAMPLE and "Parameters" not in document:
        return
    section = document.split("Parameters\n----------\n")[1].split("\n\n")[0]
    listed = [part.strip() for line in section.split("\n") if not line.startswith(" ") for part in line.split(" : ")[0].split(",")]
    assert listed == names
