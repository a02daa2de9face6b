"""The stubs: as the generator writes them, true to the modules, and clean in a typed program."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import pytest

import fieldshaft

HERE = Path(__file__).resolve().parent
SOURCE = HERE.parents[1] / "bindings" / "python"
PACKAGE = Path(fieldshaft.__file__).resolve().parent


def _run(*arguments: str, cwd: Path) -> str:
    done = subprocess.run([sys.executable, "-m", *arguments], cwd=cwd, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def test_committed_stubs_are_current(tmp_path: Path) -> None:
    subprocess.run([sys.executable, str(SOURCE / "generator"), "--stubs", str(tmp_path)], check=True)
    written = {path.name: path.read_text(encoding="utf-8") for path in tmp_path.glob("*.pyi")}
    committed = {path.name: path.read_text(encoding="utf-8") for path in (SOURCE / "fieldshaft").glob("*.pyi")}
    assert written.keys() == committed.keys()
    for name, text in written.items():
        assert text == committed[name], f"{name}: run python bindings/python/generator --stubs bindings/python/fieldshaft"


def test_package_is_typed() -> None:
    assert (PACKAGE / "py.typed").exists()


#: What a type checker has to find in the second and third line of a program.
WRONG = "from fieldshaft import si\nx: str = si.shaft_torque(1.0, 2.0)\nsi.shaft_torque(1.0)\n"

#: What only those who know pandas and matplotlib can find: tables and pictures are no plain Any.
WRONG_TABLES = """import fieldshaft
from fieldshaft import plots
x: str = fieldshaft.to_frame([])
y: str = fieldshaft.constants.to_frame()
z: str = plots.speed_ripple("20 deg")
"""


@pytest.fixture(scope="module")
def cache(tmp_path_factory: pytest.TempPathFactory) -> str:
    """What mypy has learned of the package, for all of its runs."""
    return str(tmp_path_factory.mktemp("mypy"))


@pytest.mark.parametrize("what", [["-p", "fieldshaft"], [str(HERE / "typed_use.py")]], ids=["package", "user"])
def test_mypy(what: list[str], cache: str) -> None:
    _run("mypy", "--strict", "--config-file", "", "--cache-dir", cache, *what, cwd=PACKAGE.parent)


def test_wrong_use_is_found(tmp_path: Path, cache: str) -> None:
    sample = tmp_path / "wrong.py"
    sample.write_text(WRONG, encoding="utf-8")
    done = subprocess.run(
        [sys.executable, "-m", "mypy", "--strict", "--config-file", "", "--cache-dir", cache, str(sample)],
        cwd=PACKAGE.parent, capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert "wrong.py:2" in done.stdout and "wrong.py:3" in done.stdout


def test_stubs_describe_the_modules() -> None:
    _run("mypy.stubtest", "fieldshaft", "--allowlist", str(HERE / "stubtest_allowed.txt"), "--ignore-unused-allowlist", cwd=PACKAGE.parent)


def test_pyright(tmp_path: Path) -> None:
    """The same sample as editors check it. Strict would judge pint, whose own types are partly unknown to pyright."""
    (tmp_path / "typed_use.py").write_text((HERE / "typed_use.py").read_text(encoding="utf-8"), encoding="utf-8")
    (tmp_path / "wrong.py").write_text(WRONG, encoding="utf-8")
    (tmp_path / "tables.py").write_text(WRONG_TABLES, encoding="utf-8")
    settings = {"typeCheckingMode": "standard", "pythonVersion": "3.11", "extraPaths": [str(PACKAGE.parent)]}
    (tmp_path / "pyrightconfig.json").write_text(json.dumps(settings), encoding="utf-8")
    command = [sys.executable, "-m", "basedpyright", "--outputjson", "--pythonpath", sys.executable, "-p", str(tmp_path)]
    done = subprocess.run(command, cwd=tmp_path, capture_output=True, text=True, check=False)
    found = json.loads(done.stdout)["generalDiagnostics"]
    places = {(Path(entry["file"]).name, entry["range"]["start"]["line"] + 1) for entry in found if entry["severity"] == "error"}
    assert places == {("wrong.py", 2), ("wrong.py", 3), *(("tables.py", line) for line in (3, 4, 5))}, done.stdout
