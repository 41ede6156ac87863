"""The layout's traps: each of these mistakes is silent until something goes missing."""

import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
SOURCE_ROOTS = {"calc": "beadwright", "site": "beadwright_site", "build": "beadwright_build"}


def tracked() -> list[str]:
    """Files git knows or would add."""
    listed = subprocess.run(
        ["git", "ls-files", "--cached", "--others", "--exclude-standard"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    return [name for name in listed.stdout.splitlines() if (ROOT / name).is_file()]


@pytest.mark.parametrize("folder", SOURCE_ROOTS)
def test_a_source_root_is_not_a_package(folder: str) -> None:
    # site/__init__.py would stand in for the standard library's site, build/ for the build tool.
    assert not (ROOT / folder / "__init__.py").exists()


@pytest.mark.parametrize(("folder", "package"), SOURCE_ROOTS.items())
def test_each_source_root_holds_one_package(folder: str, package: str) -> None:
    packages = {path.parent.name for path in (ROOT / folder).glob("*/__init__.py")}
    assert packages == {package}


def test_tests_are_not_packages() -> None:
    assert not list((ROOT / "tests").rglob("__init__.py"))


def test_site_and_build_are_still_those_of_python() -> None:
    where = subprocess.run(
        [sys.executable, "-c", "import site; print(site.__file__)"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    assert not Path(where.stdout.strip()).is_relative_to(ROOT / "site")


@pytest.mark.parametrize(
    "path",
    [
        "build/beadwright_build/new.py",
        "build/new",
        "site/beadwright_site/build/new.js",
        "tests/build/test_new.py",
        "tests/site/test_new.py",
        "calc/beadwright/lib/new.py",
    ],
)
def test_no_source_is_ignored_by_git(path: str) -> None:
    asked = subprocess.run(
        ["git", "check-ignore", "--no-index", path], cwd=ROOT, capture_output=True, check=False
    )
    assert asked.returncode == 1  # 1: not ignored


@pytest.mark.parametrize("path", [".out/site/index.html", ".venv/x", "build/node_modules/x"])
def test_what_is_generated_is_ignored_by_git(path: str) -> None:
    asked = subprocess.run(
        ["git", "check-ignore", "--no-index", path], cwd=ROOT, capture_output=True, check=False
    )
    assert asked.returncode == 0


def test_gitignore_names_folders_from_the_root() -> None:
    entries = [
        line
        for line in (ROOT / ".gitignore").read_text().splitlines()
        if line and not line.startswith("#")
    ]
    floating = {entry for entry in entries if not entry.startswith("/")}
    assert floating == {"__pycache__/", "*.pyc"}


def test_pytest_does_not_skip_folders_named_build() -> None:
    settings = tomllib.loads((ROOT / "pyproject.toml").read_text())["tool"]["pytest"]
    assert "build" not in settings["norecursedirs"]
    assert settings["testpaths"] == ["calc", "tests"]


def test_the_top_level_has_its_fixed_names_only() -> None:
    top = {name.split("/")[0] for name in tracked()}
    shown = {name for name in top if not name.startswith(".")}
    assert shown <= {
        *SOURCE_ROOTS,
        "tests",
        "README.md",
        "DEVELOPERS.md",
        "LICENSE",
        "pyproject.toml",
    }


def test_no_module_is_a_drawer_for_odds_and_ends() -> None:
    stems = {Path(name).stem.lstrip("_") for name in tracked()}
    assert not stems & {"utils", "util", "helpers", "helper", "misc", "common"}


LONGEST = 300
"""Lines a file may have, but for tables."""

TABLES = {
    "calc/beadwright/job/job_entries.py": "one field for each key of a job, all asked on one form",
    "calc/beadwright/setting/procedure_rows.py": "published rows, table by table, as printed",
}
"""Files that only list, and what; a list is found faster in one place."""


def test_files_stay_small_enough_to_read() -> None:
    long = {
        name: lines
        for name in tracked()
        if Path(name).suffix in {".py", ".js", ".mjs", ".css", ".html", ".sh"}
        and (lines := len((ROOT / name).read_text().splitlines())) > LONGEST
    }
    assert long.keys() == TABLES.keys(), long
