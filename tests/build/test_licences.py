"""All that ships and others wrote is on the list of licenses, with its text or where that is."""

import re
from pathlib import Path
from zipfile import ZipFile

import pytest

from beadwright_build.compiled_templates import PACKAGE as TEMPLATES
from beadwright_build.edits import DATACLASS_CODE
from beadwright_build.libraries import LIBRARIES
from beadwright_build.places import NODE_MODULES, PYODIDE
from beadwright_build.shipped_parts import LONG, PARTS, TURBO_COPYRIGHT, Part
from beadwright_build.vendor import FRONT_END, PYODIDE_FILES

OWN = ("beadwright", "beadwright_site", TEMPLATES, DATACLASS_CODE)
NOT_INSIDE = (b"SQLite format 3", b"OpenSSL 3", b"liblzma")
"""Marks of parts that a build of Pyodide could have too; with one of them the list needs a row."""


@pytest.fixture(scope="session")
def told(built_site: Path) -> dict[str, str]:
    """What is told of each part, by its name."""
    text = (built_site / "licences.txt").read_text()
    rule = "=" * 72
    found = re.findall(rf"^{rule}\n(.+)\nLicence: (.+)\n{rule}\n", text, re.M)
    bodies = re.split(rf"^{rule}\n.+\nLicence: .+\n{rule}\n", text, flags=re.M)[1:]
    return {name: f"{licence}\n{body}" for (name, licence), body in zip(found, bodies, strict=True)}


def named(told: dict[str, str], start: str) -> str:
    [text] = [text for name, text in told.items() if name.startswith(start)]
    return text


def test_every_front_end_package_and_library_is_told_with_a_text(told: dict[str, str]) -> None:
    packages = {
        "/".join(path.split("/")[: 2 if path[0] == "@" else 1]) for path in FRONT_END.values()
    }
    for part in (*packages, "pyodide", *LIBRARIES):
        text = named(told, f"{part} ")
        assert len(text) > 100, part
        assert re.search(r"copyright|licences/", text, re.I), part


@pytest.mark.parametrize("part", PARTS, ids=lambda part: part.name)
def test_a_part_inside_pyodide_is_there_and_told(told: dict[str, str], part: Part) -> None:
    shipped = b"".join((PYODIDE / name).read_bytes() for name in PYODIDE_FILES)
    assert part.mark in shipped
    text = named(told, part.name)
    assert part.copyright in text
    assert part.licence in text.splitlines()[0]


def test_nothing_else_is_known_to_be_inside_pyodide() -> None:
    shipped = b"".join((PYODIDE / name).read_bytes() for name in PYODIDE_FILES)
    assert [mark for mark in NOT_INSIDE if mark in shipped] == []


def test_every_file_of_others_belongs_to_a_part_that_is_told(built_site: Path) -> None:
    vendor = built_site / "static" / "vendor"
    there = {path.relative_to(vendor).as_posix() for path in vendor.rglob("*") if path.is_file()}
    assert {name for name in there if not name.endswith((".gz", ".br"))} == FRONT_END.keys()
    runtime = {path.name for path in (built_site / "runtime").iterdir()}
    ours = {"app.zip", "libs.zip", "stdlib.zip", "manifest.json"}
    assert {name for name in runtime if not name.endswith((".gz", ".br"))} == {
        *PYODIDE_FILES,
        *ours,
    }
    for archive, roots in (("libs.zip", LIBRARIES), ("app.zip", OWN)):
        with ZipFile(built_site / "runtime" / archive) as packed:
            tops = {name.split("/")[0].removesuffix(".pyc") for name in packed.namelist()}
        assert tops <= {*roots}, archive


def test_the_long_texts_are_whole(built_site: Path) -> None:
    beginnings = {
        "python": "A. HISTORY OF THE SOFTWARE",
        "mpl-2.0": "Mozilla Public License Version 2.0",
        "apache-2.0": "Apache License",
    }
    ends = {
        "python": "USE OR PERFORMANCE OF THIS SOFTWARE",
        "mpl-2.0": 'Incompatible With Secondary Licenses", as',
        "apache-2.0": "limitations under the License.",
    }
    for name in LONG:
        text = (built_site / "licences" / f"{name}.txt").read_text()
        assert beginnings[name] in text[:200]
        assert ends[name] in text[-300:]


def test_turbo_still_says_whose_it_is() -> None:
    script = (NODE_MODULES / FRONT_END["turbo.es2017-esm.js"]).read_text()
    assert TURBO_COPYRIGHT in script[:200]
