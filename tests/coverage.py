"""Which lines and branches of include/ and src/ the C++ test programs reach.

    python3 tests/coverage.py LLVM_PROFDATA LLVM_COV FOLDER PROGRAM...

Runs every program, two at a time, prints each file below the limits and both folders in all, and ends with 1 if a program
fails, if a folder is below the limits, or if a file below them is not explained in the table of DEVELOPERS.md.
"""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
LIMITS = {"lines": 95.0, "branches": 90.0}  # [%]: what the project asks of itself
HEADING = "## What the tests do not reach"


def run(program: str, folder: Path) -> str:
    """Runs one program and returns what it prints if it fails."""
    profile = folder / f"{Path(program).name}.profraw"
    done = subprocess.run([program, "--minimal"], env={**os.environ, "LLVM_PROFILE_FILE": str(profile)}, capture_output=True, text=True)
    return "" if done.returncode == 0 else f"{program} ended with {done.returncode}\n{done.stdout[-2000:]}{done.stderr[-2000:]}"


def share(counts: dict[str, int]) -> float:
    return 100.0 * counts["covered"] / counts["count"] if counts["count"] else 100.0


def in_all(files: dict[str, dict[str, dict[str, int]]]) -> dict[str, dict[str, int]]:
    return {kind: {key: sum(counts[kind][key] for counts in files.values()) for key in ("count", "covered")} for kind in LIMITS}


def below(counts: dict[str, dict[str, int]]) -> bool:
    return any(share(counts[kind]) < limit for kind, limit in LIMITS.items())


def told(name: str, counts: dict[str, dict[str, int]], reason: str = "") -> str:
    parts = [f"{kind} {share(counts[kind]):6.2f} % ({counts[kind]['count'] - counts[kind]['covered']} of {counts[kind]['count']} missed)" for kind in LIMITS]
    return f"{name:<48} {', '.join(parts)}{reason}"


def explained() -> dict[str, str]:
    """File and reason of each row of the table."""
    section = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8").partition(HEADING)[2].partition("\n## ")[0]
    return dict(re.findall(r"^\| `([^`]+)` \| (.+?) \|$", section, re.MULTILINE))


def measured(cov: str, profile: Path, programs: list[str]) -> dict[str, dict[str, dict[str, int]]]:
    """Counts of each file of include/ and src/."""
    objects = [part for program in programs[1:] for part in ("-object", program)]
    out = subprocess.run([cov, "export", "-summary-only", f"-instr-profile={profile}", programs[0], *objects], capture_output=True, check=True)
    files = {file["filename"]: file["summary"] for file in json.loads(out.stdout)["data"][0]["files"]}
    inside = {str(Path(name).relative_to(ROOT)): counts for name, counts in files.items() if Path(name).is_relative_to(ROOT)}
    return {name: counts for name, counts in sorted(inside.items()) if name.startswith(("include/", "src/"))}


def main(profdata: str, cov: str, folder: Path, programs: list[str]) -> int:
    folder.mkdir(parents=True, exist_ok=True)
    with ThreadPoolExecutor(2) as pool:
        failures = [text for text in pool.map(lambda program: run(program, folder), programs) if text]
    profiles = [str(folder / f"{Path(program).name}.profraw") for program in programs]
    merged = folder / "all.profdata"
    subprocess.run([profdata, "merge", "-sparse", *profiles, "-o", str(merged)], check=True)
    files = measured(cov, merged, programs)
    reasons = explained()
    low = {name: counts for name, counts in files.items() if below(counts)}
    for name, counts in low.items():
        print(told(name, counts, f"  {reasons.get(name, 'NOT EXPLAINED in DEVELOPERS.md')}"))
    for name in sorted(set(reasons) - set(low)):
        print(f"{name} is above the limits and needs no explanation in DEVELOPERS.md")
    bad = bool(failures) or not set(low) <= set(reasons)
    for part in ("include/", "src/"):
        total = in_all({name: counts for name, counts in files.items() if name.startswith(part)})
        bad = bad or below(total) or not total["lines"]["count"]
        print(told(part, total))
    print(*failures, sep="\n")
    limits = ", ".join(f"{kind} {limit:g} %" for kind, limit in LIMITS.items())
    print(f"{len(programs)} programs, {len(failures)} failed; {len(files)} files, {len(low)} below; limits: {limits}: {'missed' if bad else 'met'}")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2], Path(sys.argv[3]), sys.argv[4:]))
