"""The README's commands, as somebody would type them."""

import os
import shutil
import subprocess
import urllib.request
from pathlib import Path

import pytest

from beadwright_build.places import ROOT
from beadwright_build.release import read_release


def run(
    *command: str | Path, cwd: Path | None = None, env: dict[str, str] | None = None
) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        command,
        cwd=cwd,
        env=env,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=False,
    )


def test_out_writes_the_static_folder_and_says_what_it_weighs(
    tmp_path: Path, built_site: Path
) -> None:
    done = run(ROOT / "build" / "serve", "--out", "public", cwd=tmp_path)
    assert done.returncode == 0, done.stderr
    public = tmp_path / "public"
    assert read_release(public) == read_release(built_site)
    assert (public / "index.html.gz").is_file()
    assert (public / "index.html.br").is_file()
    assert "= all" in done.stdout
    assert "runtime/pyodide.asm.wasm" in done.stdout


def test_a_second_run_does_nothing_over(tmp_path: Path) -> None:
    run(ROOT / "build" / "serve", "--out", tmp_path / "first")
    done = run(ROOT / "build" / "serve", "--out", tmp_path / "second")
    assert done.returncode == 0, done.stderr
    assert "installing" not in done.stderr
    assert not [line for line in done.stdout.splitlines() if line.endswith(" s")]


def test_serve_prints_an_address_that_answers() -> None:
    with subprocess.Popen(
        [ROOT / "build" / "serve", "--port", "0"],
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        text=True,
    ) as serving:
        try:
            assert serving.stdout is not None
            address = next(line.strip() for line in serving.stdout if line.startswith("http"))
            with urllib.request.urlopen(address.replace("localhost", "127.0.0.1")) as answer:
                assert b"<title>" in answer.read()
        finally:
            serving.terminate()


@pytest.fixture
def bare(tmp_path: Path) -> Path:
    """A copy of the scripts on a machine whose only Python is too old."""
    project = tmp_path / "project"
    (project / "build").mkdir(parents=True)
    for name in ("serve", "test", "environment.sh", "packages-build.txt", "packages-dev.txt"):
        shutil.copy(ROOT / "build" / name, project / "build" / name)
    shutil.copy(ROOT / "pyproject.toml", project)
    tools = tmp_path / "bin"
    tools.mkdir()
    for name in ("sh", "dirname", "cat", "cksum", "id"):
        found = shutil.which(name)
        assert found
        (tools / name).symlink_to(found)
    for name in ("python3", "python3.13"):  # the second as a version manager's empty shim
        (tools / name).write_text(
            '#!/bin/sh\n[ "$1" = --version ] && echo "Python 3.9.2"\nexit 1\n'
        )
        (tools / name).chmod(0o755)
    return project


@pytest.mark.parametrize("command", ["serve", "test"])
def test_an_old_python_is_told_about(bare: Path, command: str) -> None:
    path = str(bare.parent / "bin")
    done = run(bare / "build" / command, env={"PATH": path, "HOME": str(bare)})
    assert done.returncode == 1
    assert "needs Python 3.12 or later" in done.stderr
    assert "Python 3.9.2" in done.stderr
    assert not (bare / ".venv").exists()


def test_a_folder_that_is_not_ours_is_refused_in_words(tmp_path: Path) -> None:
    (tmp_path / "letter.txt").write_text("mine")
    done = run(ROOT / "build" / "serve", "--out", tmp_path)
    assert done.returncode == 1
    assert "name an empty folder" in done.stderr
    assert "Traceback" not in done.stderr


def test_ci_is_the_test_command_with_the_long_tests() -> None:
    assert (ROOT / ".ci" / "run").read_text().rstrip().endswith("exec build/test --all")
    assert os.access(ROOT / ".ci" / "run", os.X_OK)
