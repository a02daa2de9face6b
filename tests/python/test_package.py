"""Wheel and sdist, made and installed as a packager and a user do it."""

from __future__ import annotations

import os
import subprocess
import sys
import tarfile
import venv
import zipfile
from pathlib import Path

import pytest

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


def test_install(wheel: Path, tmp_path: Path) -> None:
    """Installed beside the environment's own NumPy and pint, and used from elsewhere."""
    venv.create(tmp_path / "fresh", with_pip=False)
    python = tmp_path / "fresh" / "bin" / "python"
    site = Path(_run(python, "-c", "import sysconfig; print(sysconfig.get_path('purelib'))").strip())
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(site)
    own = _run(sys.executable, "-c", "import sysconfig; print(sysconfig.get_path('purelib'))").strip()
    (site / "own.pth").write_text(own + "\n", encoding="utf-8")
    code = "import fieldshaft, pathlib; print(pathlib.Path(fieldshaft.__file__).parent, fieldshaft.shaft_torque('75 hp', '540 rpm'))"
    out = _run(python, "-I", "-c", code, cwd=tmp_path)
    assert out.startswith(str(site)) and "989.015" in out
    case = ROOT / "docs" / "examples" / "cases" / "trailed-cutter-that-fits.json"
    assert "Implement: trailed rotary cutter" in _run(python, "-I", "-m", "fieldshaft", "assess", case, cwd=tmp_path)
