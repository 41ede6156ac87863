"""``python -m tests.mutation MODULE…``: change each module a little, see whether a test notices.

A mutant no test notices is a hole in the tests, or changes no answer. Those of the second kind are
listed in ``accepted.csv`` with the reason; any other ends the run with status 1.
"""

from __future__ import annotations

import argparse
import csv
import io
import os
import shutil
import subprocess
import sys
import tarfile
import tempfile
from collections import Counter
from pathlib import Path

from tests.mutation.mutants import mutants, unchanged
from tests.mutation.run_mutants import fate_of, measure, preload

ROOT = Path(__file__).resolve().parents[2]
ACCEPTED = Path(__file__).with_name("accepted.csv")


def accepted(path: Path = ACCEPTED) -> dict[tuple[str, str, str], str]:
    """Return the reason of each survivor that may be, by module, scope and change."""
    with path.open(encoding="utf-8", newline="") as file:
        return {
            (row["module"], row["scope"], row["change"]): row["reason"]
            for row in csv.DictReader(file)
        }


def module_path(name: str, under: Path | None = None) -> Path:
    """Return where a module of the core stands, whatever its room; no two have one name.

    Raises:
        StopIteration: If there is none.
    """
    return next(((under or Path.cwd()) / "calc/beadwright").rglob(f"{name}.py"))


def _dotted(path: Path) -> str:
    return ".".join(path.relative_to(Path.cwd() / "calc").with_suffix("").parts)


def _asked() -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="python -m tests.mutation", description=__doc__)
    parser.add_argument("modules", nargs="+", metavar="MODULE", help="as break_even")
    parser.add_argument("--tests", nargs="+", default=["tests/calc"], help="folders or files")
    parser.add_argument("--only", default="", help="mutants whose function or change has this text")
    parser.add_argument("--at", default="", metavar="COMMIT", help="as committed, not as edited")
    parser.add_argument("--list", action="store_true", help="list the mutants, run nothing")
    return parser.parse_args()


def _copied(to: Path, commit: str) -> None:
    """Copy what is run, so that an edit meanwhile is no part of it."""
    if commit:
        packed = subprocess.run(
            ["git", "archive", commit], cwd=ROOT, capture_output=True, check=True
        )
        with tarfile.open(fileobj=io.BytesIO(packed.stdout)) as files:
            files.extractall(to, filter="data")
        return
    for name in ("calc", "site", "build", "tests"):
        left = shutil.ignore_patterns("__pycache__", "node_modules", ".*")
        shutil.copytree(ROOT / name, to / name, ignore=left)
    shutil.copy(ROOT / "pyproject.toml", to)


def main() -> int:
    """Return 0 unless a mutant survives that is not accepted."""
    asked = _asked()
    os.nice(10)
    with tempfile.TemporaryDirectory(prefix="mutation-") as folder:
        _copied(Path(folder), asked.at)
        os.chdir(folder)
        sys.path[:0] = [folder, *(f"{folder}/{name}" for name in ("calc", "site", "build"))]
        sys.dont_write_bytecode = False
        return _run(asked)


def _run(asked: argparse.Namespace) -> int:
    sources = {_dotted(path): path for path in map(module_path, asked.modules)}
    if asked.list:
        for module, path in sources.items():
            for mutant in mutants(path.read_text(encoding="utf-8")):
                print(f"{module}:{mutant.line} {mutant.scope}: {mutant.text}")
        return 0
    may, holes, listed = accepted(), 0, set[tuple[str, str, str]]()
    baseline = measure(sources, asked.tests)
    for name in baseline.failing:
        print(f"left aside, fails with nothing changed: {name}", flush=True)
    preload(baseline.libraries)
    for module, path in sources.items():
        short, fates = module.rpartition(".")[2], Counter[str]()
        same = unchanged(path.read_text(encoding="utf-8"))
        if fate_of(module, path, same, baseline)[0] != "survived":
            said = Path("mutation-said.txt").read_text(encoding="utf-8")
            raise RuntimeError(f"{module} is killed with nothing changed: {said}")
        for mutant in mutants(path.read_text(encoding="utf-8")):
            if asked.only not in f"{mutant.scope} {mutant.text}":
                continue
            fate, spent = fate_of(module, path, mutant, baseline)
            key = (short, mutant.scope, mutant.text)
            if fate == "survived" and key in may:
                fate_said = "accepted"
                listed.add(key)
            else:
                fate_said = fate
            fates[fate_said] += 1
            if fate_said == "survived" or (fate == "killed" and key in may):
                holes += 1
                said = "SURVIVED" if fate == "survived" else "killed, yet listed as accepted"
                print(f"{short}.py:{mutant.line} {mutant.scope or 'module'}: {mutant.text}"
                      f"  [{said}, {spent:.1f} s]", flush=True)  # fmt: skip
        print(f"{short}: " + ", ".join(f"{count} {fate}" for fate, count in sorted(fates.items())),
              flush=True)  # fmt: skip
    return 1 if holes else 0


if __name__ == "__main__":
    raise SystemExit(main())
