"""Wheel and sdist, made and installed as a packager and a user do it."""

from __future__ import annotations

import email
import os
import subprocess
import sys
import tarfile
import venv
import zipfile
from importlib.metadata import Distribution, distribution
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

import fieldshaft

ROOT = Path(__file__).resolve().parents[2]


def _run(*command: str | Path, cwd: Path | None = None, **environment: str) -> str:
    done = subprocess.run(
        [str(part) for part in command],
        cwd=cwd, capture_output=True, text=True, check=False, env={**os.environ, **environment},
    )  # fmt: skip
    assert done.returncode == 0, done.stdout[-4000:] + done.stderr[-4000:]
    return done.stdout


@pytest.fixture(scope="module")
def sdist(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("sdist")
    _run(sys.executable, "-m", "build", "--sdist", "--no-isolation", "--outdir", folder, ROOT)
    (path,) = folder.glob("fieldshaft-*.tar.gz")
    return path


@pytest.fixture(scope="module")
def wheel(sdist: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Made from the sdist, so that the sdist is known to be complete."""
    folder = tmp_path_factory.mktemp("wheel")
    with tarfile.open(sdist) as archive:
        archive.extractall(folder)
    (source,) = folder.glob("fieldshaft-*/")
    # A compiler cache has seen every file of the library in the build that runs this test, and sees paths relative to the folder
    # of the build: that folder stands as deep here, and the flags are the same.
    settings = ("--config-setting=build-dir=build/test", "--config-setting=cmake.define.FIELDSHAFT_WERROR=ON")
    _run(sys.executable, "-m", "build", "--wheel", "--no-isolation", *settings, "--outdir", folder, source, CCACHE_BASEDIR=str(source))
    (path,) = folder.glob("fieldshaft-*.whl")
    return path


def test_sdist_holds_the_sources_alone(sdist: Path) -> None:
    with tarfile.open(sdist) as archive:
        names = {name.partition("/")[2] for name in archive.getnames()}
    assert {"pyproject.toml", "README.md", "CMakeLists.txt", "bindings/python/formulas/power.toml"} <= names
    assert not [name for name in names if name.startswith((".venv", "build", "tests", "docs", ".ci", ".git/"))]


def test_wheel(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        names = set(archive.namelist())
        (metadata,) = [archive.read(n).decode() for n in names if n.endswith(".dist-info/METADATA")]
    package = {name for name in names if not name.partition("/")[0].endswith(".dist-info")}
    assert {"fieldshaft/__init__.py", "fieldshaft/si.py", "fieldshaft/si.pyi", "fieldshaft/py.typed"} <= package
    assert all(name.startswith("fieldshaft/") for name in package)
    assert not [name for name in package if "__pycache__" in name]
    assert [name for name in package if name.startswith("fieldshaft/_core.") and name.endswith(".so")]
    assert f"Version: {fieldshaft.__version__}\n" in metadata
    for extra in ("units", "frames", "plots", "progress", "all"):
        assert f"Provides-Extra: {extra}\n" in metadata
    assert [line for line in metadata.splitlines() if line.startswith("Requires-Dist") and "extra" not in line] == [
        "Requires-Dist: numpy>=1.24"
    ]


# Installed as a user has it: NumPy alone at first, then one extra after the other. --------------------------------


def _closure(requirement: str) -> set[str]:
    """The distributions that a requirement brings, as this environment has them."""
    found: set[str] = set()
    waiting = [Requirement(requirement)]
    while waiting:
        wanted = waiting.pop()
        if canonicalize_name(wanted.name) in found:
            continue
        found.add(canonicalize_name(wanted.name))
        inner = map(Requirement, distribution(wanted.name).requires or ())
        waiting += [r for r in inner if r.marker is None or any(r.marker.evaluate({"extra": e}) for e in ("", *wanted.extras))]
    return found


class Installed:
    """A fresh environment with the wheel, to which distributions of this one are linked."""

    def __init__(self, wheel: Path, folder: Path) -> None:
        venv.create(folder / "fresh", with_pip=False)
        self.folder = folder
        self.python = folder / "fresh" / "bin" / "python"
        self.site = Path(_run(self.python, "-c", "import sysconfig; print(sysconfig.get_path('purelib'))").strip())
        with zipfile.ZipFile(wheel) as archive:
            archive.extractall(self.site)
            (metadata,) = [archive.read(n).decode() for n in archive.namelist() if n.endswith(".dist-info/METADATA")]
        self.requirements = [Requirement(line) for line in email.message_from_string(metadata).get_all("Requires-Dist", [])]
        self.add("")

    def add(self, extra: str) -> None:
        """Links what the package needs with this extra."""
        for requirement in self.requirements:
            if requirement.marker is None or requirement.marker.evaluate({"extra": extra}):
                for name in _closure(str(requirement).partition(";")[0]):
                    self._link(distribution(name))

    def _link(self, found: Distribution) -> None:
        for name in {path.parts[0] for path in found.files or () if path.parts[0] not in ("..", "__pycache__")}:
            if not (self.site / name).exists():
                (self.site / name).symlink_to(found.locate_file(name))

    def run(self, code: str) -> str:
        return _run(self.python, "-I", "-W", "error", "-c", code, cwd=self.folder)

    def fails(self, code: str) -> str:
        """The last line of the error with which a program ends."""
        done = subprocess.run([self.python, "-I", "-c", code], cwd=self.folder, capture_output=True, text=True, check=False)
        assert done.returncode == 1, done.stdout + done.stderr
        return done.stderr.strip().splitlines()[-1]


def test_install(wheel: Path, tmp_path: Path) -> None:
    """NumPy alone runs the formulas, cases and reports; every other thing says which extra it needs, until that is there."""
    case = ROOT / "docs" / "examples" / "cases" / "trailed-cutter-that-fits.json"
    fresh = Installed(wheel, tmp_path)
    start = f"import fieldshaft, sys\nfrom fieldshaft import si\ncase = fieldshaft.read_case_file({str(case)!r})\n"
    out = fresh.run(start + "print(fieldshaft.__file__, si.shaft_torque(1e3, 10.0), fieldshaft.assess(case).verdict)\nassert 'pint' not in sys.modules")
    assert out.split() == [str(fresh.site / "fieldshaft" / "__init__.py"), "100.0", "ok"]
    assert "Implement: trailed rotary cutter" in _run(fresh.python, "-I", "-m", "fieldshaft", "assess", case, case, cwd=tmp_path)
    quantity = "fieldshaft.shaft_torque('75 hp', '540 rpm')"
    frame = "fieldshaft.assess(case).to_frame()"
    picture = "from fieldshaft import plots; plots.recommended_powers('70 kW').savefig('powers.png')"
    assert fresh.fails(start + quantity) == (
        "ImportError: fieldshaft needs pint for quantities (fieldshaft.si takes and returns plain SI numbers without it): "
        "pip install 'fieldshaft[units]'"
    )
    assert fresh.fails(start + frame) == "ImportError: fieldshaft needs pandas for data frames: pip install 'fieldshaft[frames]'"
    assert fresh.fails(start + picture) == "ImportError: fieldshaft needs matplotlib for pictures: pip install 'fieldshaft[plots]'"
    fresh.add("units")
    assert "989.015" in fresh.run(start + f"print({quantity})")
    assert "fieldshaft[frames]" in fresh.fails(start + frame)
    fresh.add("frames")
    assert "pto.speed" in fresh.run(start + f"print({frame})")
    assert "fieldshaft[plots]" in fresh.fails(start + picture)
    fresh.add("plots")
    fresh.run(start + picture)
    assert (tmp_path / "powers.png").stat().st_size > 5000
    assert fresh.fails("import tqdm") == "ModuleNotFoundError: No module named 'tqdm'"
    fresh.add("progress")
    fresh.run("import tqdm")
