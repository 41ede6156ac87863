"""A second route to the same code: Pyodide's own build tool against our packer.

The tool compiles with the Python it runs on. That fits the phone only nearly: CPython 3.13.0 and
3.13.2 differ in the instructions of generator expressions, under one magic number. So the app is
compiled inside Pyodide, and here the two are compared in all but the instructions.
"""

import marshal
import subprocess
import sys
import zipfile
from pathlib import Path
from types import CodeType

import pytest

from beadwright_build.places import INSIDE, ROOT
from beadwright_build.pyodide_node import run

PYC_HEADER = 16  # PEP 552
CORE = ROOT / "calc" / "beadwright"


def shape(code: CodeType) -> tuple[object, ...]:
    """Return all a code object says but how: names, arguments, constants, lines, and its parts."""
    constants = (
        shape(part) if isinstance(part, CodeType) else (type(part).__name__, part)
        for part in code.co_consts
    )
    return (
        code.co_qualname,
        code.co_firstlineno,
        code.co_flags,
        code.co_argcount,
        code.co_varnames,
        code.co_freevars,
        code.co_names,
        *constants,
    )


def shapes(archive: Path) -> dict[str, tuple[object, ...]]:
    with zipfile.ZipFile(archive) as packed:
        return {
            name: shape(marshal.loads(packed.read(name)[PYC_HEADER:]))
            for name in packed.namelist()
            if name.endswith(".pyc")
        }


@pytest.mark.long(reason="compiles the core twice; the packed runtime is asked for answers always")
@pytest.mark.skipif(
    sys.version_info[:2] != (3, 13), reason="pyodide py-compile compiles for the Python it runs on"
)
def test_our_packer_compiles_what_pyodide_py_compile_does(tmp_path: Path) -> None:
    sources = sorted(file for file in CORE.rglob("*.py"))
    theirs = tmp_path / "theirs.zip"
    with zipfile.ZipFile(theirs, "w") as archive:
        for file in sources:
            archive.write(file, file.relative_to(CORE.parent))
    command = Path(sys.executable).with_name("pyodide")
    subprocess.run([command, "py-compile", "--silent", theirs], check=True, capture_output=True)

    ours = tmp_path / "ours"
    ours.mkdir()
    plan = {
        "stdlib": "/lib/python313.zip",
        "archives": [
            {
                "to": f"{INSIDE}/ours/core.zip",
                "files": {
                    (name := file.relative_to(CORE.parent).as_posix()): f"{INSIDE}/calc/{name}"
                    for file in sources
                },
                "optimize": 0,
                "docstrings": True,
                "codes": {},
            }
        ],
    }
    written = run(
        "beadwright_build.inside.pack", plan, mounts={"calc": CORE.parent, "ours": ours}, path=[]
    )
    assert written == {f"{INSIDE}/ours/core.zip": len(sources)}

    expected = shapes(theirs)
    made = shapes(ours / "core.zip")
    assert made.keys() == expected.keys()
    assert [name for name in made if made[name] != expected[name]] == []
