"""The floors of the core, as ``pyproject.toml`` lists them: no import runs up, none in a circle."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[1]


def test_no_import_runs_up() -> None:
    linted = subprocess.run(
        [Path(sys.executable).with_name("lint-imports"), "--no-cache"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert linted.returncode == 0, linted.stdout[linted.stdout.find("Contracts") :]
