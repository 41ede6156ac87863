"""Same sources, same bytes: or every build would make every phone fetch five megabytes again."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from beadwright_build.places import ROOT

BUILD = "from beadwright_build.steps import build_site; build_site()"
CAN_BUILD = "import sys, ensurepip, venv; print(*sys.version_info[:2], sep='.')"
MINORS = ("3.12", "3.13", "3.14")


def contents(folder: Path) -> dict[str, bytes]:
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in folder.rglob("*")
        if path.is_file()
    }


def differing(one: dict[str, bytes], other: dict[str, bytes]) -> list[str]:
    return [name for name in sorted({*one, *other}) if one.get(name) != other.get(name)]


def another_python() -> Path | None:
    """Return a Python of another minor version that can make an environment."""
    own = ".".join(map(str, sys.version_info[:2]))
    kept = Path(os.environ.get("PYENV_ROOT", Path.home() / ".pyenv")) / "versions"
    for minor in (each for each in MINORS if each != own):
        named = shutil.which(f"python{minor}")
        there = [Path(named)] if named else []
        for python in [*there, *kept.glob(f"{minor}.*/bin/python")]:
            asked = subprocess.run([python, "-c", CAN_BUILD], capture_output=True, check=False)
            if asked.stdout.decode().strip() == minor:
                return python
    return None


@pytest.fixture
def elsewhere(tmp_path: Path) -> Path:
    """The sources in another folder, with npm's packages and nothing made of them."""
    made = shutil.ignore_patterns(".git", ".out", ".venv", ".*_cache", ".hypothesis", "__pycache__")
    to = tmp_path / "a folder of another name"
    return Path(shutil.copytree(ROOT, to, ignore=made, symlinks=True))


@pytest.mark.long(reason="builds the site a second time")
def test_a_build_elsewhere_is_the_same_to_the_byte(built_site: Path, elsewhere: Path) -> None:
    # Another folder, process, order of sets, time zone and language; no compressed copies kept.
    roots = os.pathsep.join(str(elsewhere / root) for root in ("calc", "site", "build"))
    own = {"PYTHONPATH": roots, "PYTHONHASHSEED": "4", "TZ": "Asia/Tokyo", "LC_ALL": "C"}
    subprocess.run(
        [sys.executable, "-c", BUILD],
        cwd=elsewhere, env=os.environ | own, check=True, capture_output=True,
    )  # fmt: skip
    assert differing(contents(built_site), contents(elsewhere / ".out" / "site")) == []


@pytest.mark.long(reason="installs the packages for another Python and builds with it")
def test_another_python_builds_the_same_bytes(
    built_site: Path, elsewhere: Path, tmp_path: Path
) -> None:
    python = another_python()
    if python is None:
        pytest.skip("no Python of another minor version here")
    own = {name: text for name, text in os.environ.items() if name != "PYTHONPATH"}
    public = tmp_path / "public"
    subprocess.run(
        [elsewhere / "build" / "serve", "--out", public],
        env=own | {"PYTHON": str(python)}, check=True, capture_output=True,
    )  # fmt: skip
    made_with = (elsewhere / ".venv" / "pyvenv.cfg").read_text()
    assert f"version = {'.'.join(map(str, sys.version_info[:2]))}." not in made_with
    assert differing(contents(built_site), contents(public)) == []
