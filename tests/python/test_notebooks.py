"""The example notebooks run from top to bottom."""

from __future__ import annotations

import os
import re
import warnings
from pathlib import Path

import pytest

with warnings.catch_warnings():
    warnings.simplefilter("ignore")
    import nbclient
    import nbformat

import fieldshaft

EXAMPLES = Path(__file__).resolve().parents[2] / "docs" / "examples"
NOTEBOOKS = sorted(EXAMPLES.glob("*.ipynb"))


def test_there_are_notebooks() -> None:
    assert len(NOTEBOOKS) == 4


def test_the_questions_of_the_readme_are_answered() -> None:
    readme = (EXAMPLES.parents[1] / "README.md").read_text(encoding="utf-8")
    questions = re.findall(r"(?m)^(\d\. .*\?)$", readme)
    assert len(questions) == 5
    answered = "\n".join(cell.source for cell in nbformat.read(EXAMPLES / "five_questions.ipynb", as_version=4).cells)
    assert not [question for question in questions if f"**{question}**" not in answered]


@pytest.mark.filterwarnings("ignore")
@pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: path.stem)
def test_notebook(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    package = Path(fieldshaft.__file__).resolve().parent.parent
    monkeypatch.setenv("PYTHONPATH", os.pathsep.join([str(package), os.environ.get("PYTHONPATH", "")]))
    monkeypatch.setenv("MPLBACKEND", "module://matplotlib_inline.backend_inline")
    monkeypatch.setenv("PYDEVD_DISABLE_FILE_VALIDATION", "1")
    notebook = nbformat.read(path, as_version=4)
    nbformat.validate(notebook)
    assert all(not cell.get("outputs") for cell in notebook.cells), "notebooks are kept without results"
    done = nbclient.NotebookClient(notebook, timeout=300, resources={"metadata": {"path": str(EXAMPLES)}}).execute()
    results = [output for cell in done.cells for output in cell.get("outputs", [])]
    assert results
    assert not [output for output in results if output.output_type == "error"]
    assert not [output for output in results if output.get("name") == "stderr"], "a warning is printed"
