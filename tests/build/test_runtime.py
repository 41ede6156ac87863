"""The Python that is shipped: compiled for the phone's version, trimmed, and fit to run."""

import hashlib
import importlib.util
import json
import sys
import zipfile
from pathlib import Path
from types import ModuleType

import pytest
from marshmallow import ValidationError, validate

from beadwright_build import edits
from beadwright_build.edits import LIBRARY_EDITS
from beadwright_build.errors import BuildError
from beadwright_build.libraries import copy_sources
from beadwright_build.places import PYODIDE
from beadwright_build.pyodide_node import run

PYC_MAGIC = (3571).to_bytes(2, "little") + b"\r\n"  # CPython 3.13: pycore_magic_number.h
UNCHECKED_HASH = (1).to_bytes(4, "little")  # PEP 552: hash-based, not checked against source
ARCHIVES = ("stdlib.zip", "libs.zip", "app.zip")
EPOCH = (1980, 1, 1, 0, 0, 0)


def names_in(site: Path, archive: str) -> list[str]:
    with zipfile.ZipFile(site / "runtime" / archive) as packed:
        return packed.namelist()


@pytest.mark.parametrize("archive", ARCHIVES)
def test_modules_are_compiled_for_the_phone_and_nothing_in_them_tells_the_time(
    built_site: Path, archive: str
) -> None:
    with zipfile.ZipFile(built_site / "runtime" / archive) as packed:
        entries = packed.infolist()
        assert [entry.filename for entry in entries] == sorted(packed.namelist())
        for entry in entries:
            assert entry.date_time == EPOCH
            assert not entry.filename.endswith(".py")
            if entry.filename.endswith(".pyc"):
                assert packed.read(entry)[:8] == PYC_MAGIC + UNCHECKED_HASH, entry.filename
    assert entries


def test_the_standard_library_is_cut_to_what_is_used(built_site: Path) -> None:
    shipped = set(names_in(built_site, "stdlib.zip"))
    with zipfile.ZipFile(PYODIDE / "python_stdlib.zip") as whole:
        there = {f"{name}c" for name in whole.namelist() if name.endswith(".py")}
    assert shipped < there
    assert len(shipped) < len(there) / 2
    assert not {name for name in shipped if name.startswith(("unittest/", "tkinter/", "test/"))}


def test_what_only_errors_need_is_there_too(built_site: Path) -> None:
    shipped = set(names_in(built_site, "stdlib.zip"))
    assert {"traceback.pyc", "linecache.pyc", "encodings/cp437.pyc", "encodings/idna.pyc"} < shipped


def test_the_web_server_stays_at_home(built_site: Path) -> None:
    for archive in ARCHIVES:
        roots = {name.split("/")[0] for name in names_in(built_site, archive)}
        assert not roots & {"flask", "werkzeug", "flask_frozen", "beadwright_build"}
    app = set(names_in(built_site, "app.zip"))
    assert "beadwright_site/app.pyc" not in app
    assert "beadwright_site/phone.pyc" in app
    assert "beadwright/api.pyc" in app


def test_the_manifest_is_what_pyodide_says_of_itself(built_site: Path) -> None:
    manifest = json.loads((built_site / "runtime" / "manifest.json").read_text())
    lock = json.loads((PYODIDE / "pyodide-lock.json").read_text())
    core = hashlib.sha256((built_site / "runtime" / "app.zip").read_bytes()).hexdigest()[:12]
    assert manifest == {"info": lock["info"], "python": lock["info"]["python"], "core": core}
    for page in ("index.html", "method/index.html"):
        assert f'<meta name="core" content="{core}"' in (built_site / page).read_text()
    assert manifest["python"].startswith("3.13.")


def test_a_missing_module_is_told_not_hidden(tmp_path: Path) -> None:
    with pytest.raises(BuildError, match="no_such_module"):
        run("no_such_module", None, mounts={}, path=[])


def edited_validators(tmp_path: Path) -> ModuleType:
    """Load the shipped copy of the library's validators beside the original."""
    copy_sources(tmp_path)
    [file] = (tmp_path / name for name in LIBRARY_EDITS)
    spec = importlib.util.spec_from_file_location("edited_validate", file)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    return module


@pytest.mark.parametrize(
    ("address", "good"),
    [
        ("welder@example.com", True),
        ('"bead"@example.org', True),
        ("welder@localhost", True),
        ("welder@[127.0.0.1]", True),
        ("s\u00f8mmer@example.no", True),
        ("", False),
        ("welder", False),
        ("@example.com", False),
        ("welder@example", False),
        ("wel der@example.com", False),
        ("welder@exa_mple.com", False),
    ],
)
def test_an_edited_library_still_does_its_work(tmp_path: Path, address: str, good: bool) -> None:
    for validators in (validate, edited_validators(tmp_path)):
        check = validators.Email()
        if good:
            assert check(address) == address
        else:
            with pytest.raises(ValidationError):
                check(address)


def test_the_edit_defers_the_work(tmp_path: Path) -> None:
    edited = edited_validators(tmp_path)
    assert not hasattr(edited.Email.DOMAIN_REGEX, "pattern")
    assert hasattr(validate.Email.DOMAIN_REGEX, "pattern")


def test_the_phone_cannot_read_template_source_and_says_so(
    tmp_path: Path, built_site: Path
) -> None:
    (tmp_path / "read_template.py").write_text(
        "import jinja2\n"
        "def main(_):\n"
        "    return jinja2.Environment().from_string('{{ 1 }}').render()\n"
    )
    with pytest.raises(BuildError, match="templates are compiled by the build"):
        run(
            "read_template",
            None,
            mounts={"runtime": built_site / "runtime", "here": tmp_path},
            path=["runtime/libs.zip", "here"],
            runtime=built_site / "runtime",
        )


DATACLASSES = """
import dataclasses, json

@dataclasses.dataclass(frozen=True, slots=True, order=True)
class Bead:
    leg_mm: float
    name: str = "root"

def main(_):
    from beadwright.results import Note
    from beadwright.phrases import say
    bead, note = Bead(8.0), Note("note", say("job.clean"))
    try:
        note.level = "stop"
    except dataclasses.FrozenInstanceError:
        frozen = True
    return json.dumps([repr(bead), bead == Bead(8.0), bead < Bead(9.0), repr(note), frozen])
"""


def test_dataclasses_work_whether_compiled_ahead_or_not(tmp_path: Path, built_site: Path) -> None:
    assert "beadwright_dataclass_code.pyc" in names_in(built_site, "app.zip")
    (tmp_path / "beads.py").write_text(DATACLASSES)
    answer = run(
        "beads",
        None,
        mounts={"runtime": built_site / "runtime", "here": tmp_path},
        path=["runtime/app.zip", "runtime/libs.zip", "here"],
        runtime=built_site / "runtime",
    )
    assert answer[:3] == ["Bead(leg_mm=8.0, name='root')", True, True]
    assert answer[3].startswith("Note(level='note', phrase=Phrase(key='job.clean', ")
    assert answer[4] is True


def test_an_edit_that_no_longer_fits_stops_the_build(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(edits, "STDLIB_EDITS", {"dataclasses.py": {"no such text": ""}})
    with pytest.raises(BuildError, match=r"dataclasses\.py of a new version has 0 times"):
        edits.edit_stdlib(tmp_path)
