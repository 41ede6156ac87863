"""Same sources, same bytes: or every build would make every phone fetch five megabytes again."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from beadwright_build.places import OUT, ROOT

BUILD_AGAIN = """
from beadwright_build import stamp
from beadwright_build.places import OUT
from beadwright_build.steps import build_site
stamp.clear(OUT / "test-site-again")
build_site("test-site-again")
"""


def contents(folder: Path) -> dict[str, bytes]:
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in folder.rglob("*")
        if path.is_file()
    }


@pytest.mark.long(reason="builds the site a second time")
def test_two_builds_are_the_same_to_the_byte(built_site: Path) -> None:
    # Another process, order of sets, time zone, language and folder.
    subprocess.run(
        [sys.executable, "-c", BUILD_AGAIN],
        cwd=ROOT,
        env={**os.environ, "PYTHONHASHSEED": "4", "TZ": "Asia/Tokyo", "LC_ALL": "C"},
        check=True,
        capture_output=True,
    )
    one, other = contents(built_site), contents(OUT / "test-site-again")
    assert one.keys() == other.keys()
    assert [name for name in one if one[name] != other[name]] == []
