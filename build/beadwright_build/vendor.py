"""Front-end files from npm packages, under the names the pages use."""

import shutil
from pathlib import Path

from beadwright_build.edits import edit_front_end
from beadwright_build.errors import BuildError
from beadwright_build.places import NODE_MODULES, PYODIDE

FONT = "@fontsource/barlow-semi-condensed"
FRONT_END = {
    "turbo.es2017-esm.js": "@hotwired/turbo/dist/turbo.es2017-esm.js",
    "idb-keyval.js": "idb-keyval/dist/index.js",
    "lean-qr.js": "lean-qr/index.mjs",
    "fonts/barlow-semi-condensed-latin-500-normal.woff2": (
        f"{FONT}/files/barlow-semi-condensed-latin-500-normal.woff2"
    ),
    "fonts/barlow-semi-condensed-latin-600-normal.woff2": (
        f"{FONT}/files/barlow-semi-condensed-latin-600-normal.woff2"
    ),
}
"""Path under ``static/vendor/`` to path under ``build/node_modules/``."""

PYODIDE_FILES = ("pyodide.mjs", "pyodide.asm.js", "pyodide.asm.wasm")
"""All of Pyodide the phone fetches; its standard library is repacked, its lock file not needed."""


def copy_front_end(to: Path) -> None:
    """Copy the front-end files, with our edits, into a folder laid out like ``static/vendor/``."""
    for name, source in FRONT_END.items():
        _copy(NODE_MODULES / source, to / name)
    edit_front_end(to)


def copy_pyodide(to: Path) -> None:
    """Copy Pyodide's own files."""
    for name in PYODIDE_FILES:
        _copy(PYODIDE / name, to / name)


def _copy(source: Path, target: Path) -> None:
    if not source.is_file():
        raise BuildError(f"{source} is missing: its npm package no longer has this file")
    target.parent.mkdir(parents=True, exist_ok=True)
    shutil.copyfile(source, target)
