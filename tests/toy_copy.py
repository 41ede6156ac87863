"""A temporary copy of the sources with a few lines added, to walk the recipes of DEVELOPERS.md."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
ROOTS = ("calc", "site", "build")


class ToyCopy:
    """The core, the pages and the build, copied to a folder of their own."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        for root in ROOTS:
            ignored = shutil.ignore_patterns("__pycache__", "node_modules")
            shutil.copytree(ROOT / root, folder / root, ignore=ignored)

    def write(self, folder: str, files: Mapping[str, str]) -> None:
        """Put new files into a folder: name and text, but for its first line if that is blank."""
        for name, text in files.items():
            path = self.folder / folder / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text.removeprefix("\n"), encoding="utf-8")

    def add(self, file: str, after: Mapping[str, str]) -> None:
        """Put lines into a file, each after the one line that holds a text."""
        path = self.folder / file
        lines = path.read_text(encoding="utf-8").splitlines(keepends=True)
        for mark, new in after.items():
            [at] = [number for number, line in enumerate(lines) if mark in line]
            lines.insert(at + 1, new)
        path.write_text("".join(lines), encoding="utf-8")

    def run(self, *arguments: str) -> subprocess.CompletedProcess[str]:
        """Run Python on the copy and return what it wrote."""
        paths = (str(self.folder / root) for root in ROOTS)
        return subprocess.run(
            [sys.executable, *arguments],
            env=os.environ | {"PYTHONPATH": os.pathsep.join(paths)},
            cwd=self.folder,
            capture_output=True,
            text=True,
            check=False,
        )
