"""The core's wheel, installed alone in an empty environment: all that a program or a desk needs."""

from __future__ import annotations

import json
import os
import re
import shlex
import shutil
import subprocess
import sys
import venv
import zipfile
from importlib import metadata
from pathlib import Path

import pytest

from beadwright.pages import PAGES
from beadwright_build.places import ROOT
from tests.site.kept_files import sound_file

README_COMMANDS = re.findall(r"^\.venv/bin/python -m beadwright (.*)$",
                             (ROOT / "README.md").read_text(), re.MULTILINE)  # fmt: skip
"""What follows the program's name in each line of README that runs it."""


def _run(*command: str | Path, cwd: Path) -> subprocess.CompletedProcess[str]:
    # Nothing of this checkout is to be found but by way of what is installed.
    kept = {key: text for key, text in os.environ.items() if not key.startswith("PYTHON")}
    return subprocess.run(
        command, cwd=cwd, env=kept, stdin=subprocess.DEVNULL, capture_output=True, text=True,
        check=False,
    )  # fmt: skip


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The wheel, made as pip makes it."""
    folder = tmp_path_factory.mktemp("wheel")
    made = subprocess.run(
        [sys.executable, "-m", "pip", "wheel", "--quiet", "--no-build-isolation", "--no-deps",
         "--no-index", "--wheel-dir", folder, ROOT],
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert made.returncode == 0, made.stderr
    [found] = folder.glob("*.whl")
    return found


@pytest.fixture(scope="module")
def desk(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """An environment with the wheel, marshmallow and nothing else: its ``python``."""
    folder = tmp_path_factory.mktemp("desk")
    venv.create(folder, symlinks=True)
    python = folder / "bin" / "python"
    [packages] = folder.glob("lib/python*/site-packages")
    for file in metadata.files("marshmallow") or ():  # as installed here: no network is needed
        target = packages.joinpath(*file.parts)
        if target.is_relative_to(packages) and "__pycache__" not in file.parts:
            target.parent.mkdir(parents=True, exist_ok=True)
            shutil.copyfile(str(file.locate()), target)
    pip = (sys.executable, "-m", "pip", "--python", python)
    put_in = _run(*pip, "install", "--quiet", "--no-index", wheel, cwd=folder)
    assert put_in.returncode == 0, put_in.stderr
    listed = _run(*pip, "list", "--format=json", cwd=folder)
    assert {each["name"] for each in json.loads(listed.stdout)} == {"beadwright", "marshmallow"}
    return python


def test_it_holds_the_core_its_types_and_its_license_and_nothing_else(wheel: Path) -> None:
    names = zipfile.ZipFile(wheel).namelist()
    tops = {name.split("/")[0] for name in names}
    assert {top for top in tops if not top.endswith(".dist-info")} == {"beadwright"}
    assert "beadwright/py.typed" in names
    assert any(name.endswith("/licenses/LICENSE") for name in names)


def test_it_is_imported_from_where_it_is_installed_with_its_types(desk: Path) -> None:
    told = _run(
        desk, "-c",
        "import beadwright.api as api, pathlib; print(api.__file__);"
        "print(pathlib.Path(api.__file__).with_name('py.typed').is_file());"
        "print(api.answer('dial-in', '').dialled.open)",
        cwd=desk.parent,
    )  # fmt: skip
    assert told.stderr == ""
    where, typed, opened = told.stdout.split()
    assert Path(where).is_relative_to(desk.parents[1])
    assert (typed, opened) == ("True", "True")


def test_readme_shows_how_it_is_asked() -> None:
    assert len(README_COMMANDS) >= 2


@pytest.mark.parametrize("arguments", README_COMMANDS)
def test_a_command_of_readme_is_answered(desk: Path, arguments: str) -> None:
    ran = _run(desk, "-m", "beadwright", *shlex.split(arguments), cwd=desk.parent)
    assert (ran.returncode, ran.stderr) == (0, "")
    if "--help" in arguments:
        assert "keys of dial-in" in ran.stdout
    else:
        assert json.loads(ran.stdout)["answer"]["open"] is True


@pytest.mark.parametrize("page", [page.name for page in PAGES.values() if page.has_table])
def test_a_table_is_written_as_csv(desk: Path, page: str) -> None:
    query = PAGES[page].example
    ran = _run(desk, "-m", "beadwright", page, query, "--csv", cwd=desk.parent)
    assert (ran.returncode, ran.stderr) == (0, "")
    heads = ran.stdout.splitlines()[0].split(",")
    assert len(heads) > 2


def test_a_list_of_welds_in_a_file_is_priced(desk: Path, tmp_path: Path) -> None:
    lines = "Name,Joint,Plate,Leg,Length,Welds,Position\nGusset,tee,3/8in,5/16in,6in,8,2F\n"
    (tmp_path / "welds.csv").write_text(lines)
    ran = _run(desk, "-m", "beadwright", "list", "welds.csv", "margin=25%25", cwd=tmp_path)
    assert (ran.returncode, ran.stderr) == (0, "")
    found = json.loads(ran.stdout)["answer"]
    assert (found["lines"], found["missing"]) == (1, 0)
    one = found["quotes"][0]["batches"][0]
    assert one["price"] == pytest.approx(one["cost"] / 0.75)


def test_a_file_saved_on_shop_is_learned_from(desk: Path, tmp_path: Path) -> None:
    (tmp_path / "kept.json").write_text(json.dumps(sound_file()))
    ran = _run(desk, "-m", "beadwright", "learn", "kept.json", cwd=tmp_path)
    assert (ran.returncode, ran.stderr) == (0, "")
    [learned] = json.loads(ran.stdout)["learned"]
    assert (learned["welder"], learned["machine"]) == ("Ann", "one")


def test_the_program_s_own_name_does_the_same(desk: Path) -> None:
    ran = _run(desk.with_name("beadwright"), "shop", "breaker=lots", cwd=desk.parent)
    assert ran.returncode == 2
    assert json.loads(ran.stdout)["errors"].keys() == {"breaker"}
