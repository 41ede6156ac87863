"""The license of everything shipped that others wrote, in one list of the site.

The list is kept on the phone, with every short text; the three long ones are files beside it, which
a phone fetches when they are opened.
"""

import json
from collections.abc import Iterator
from importlib import metadata
from pathlib import Path

from beadwright_build.libraries import LIBRARIES, licence_texts
from beadwright_build.places import NODE_MODULES, ROOT
from beadwright_build.release import LICENCES
from beadwright_build.shipped_parts import LONG, PARTS, TURBO_COPYRIGHT, long_texts, text
from beadwright_build.vendor import FRONT_END

_WHOLE = {"idb-keyval": "apache-2.0", "pyodide": "mpl-2.0"}
"""Packages that only name their license; another needs its text put beside it."""


def write_licences(to: Path) -> None:
    """Write the list, our own license first, then each part with its version; the long texts."""
    own = ("Beadwright", "MIT", [(ROOT / "LICENSE").read_text()])
    sections = [own, *_npm(), *_inside_pyodide(), *_python()]
    to.write_text("\n\n".join(_section(*section) for section in sections))
    folder = to.parent / LICENCES
    folder.mkdir()
    for name, whole in long_texts():
        (folder / name).write_text(whole)


def _npm() -> Iterator[tuple[str, str, list[str]]]:
    for package in sorted({*map(_package, FRONT_END.values()), "pyodide"}):
        folder = NODE_MODULES / package
        about = json.loads((folder / "package.json").read_text())
        texts = [
            file.read_text()
            for file in sorted(folder.iterdir())
            if file.stem.upper() in {"LICENSE", "LICENCE", "NOTICE"}
        ]
        if package == "@hotwired/turbo":
            texts = [TURBO_COPYRIGHT, text("mit")]
        elif package in _WHOLE:
            texts.append(_told(_WHOLE[package]))
        if package == "pyodide":
            texts.append("Its source: https://github.com/pyodide/pyodide")
        yield f"{package} {about['version']}", about["license"], texts


def _inside_pyodide() -> Iterator[tuple[str, str, list[str]]]:
    for part in PARTS:
        texts = [part.copyright, _told(part.text) if part.text else ""]
        yield f"{part.name} (inside pyodide)", part.licence, [each for each in texts if each]


def _told(name: str) -> str:
    """A short text, or where the long one is."""
    if name in LONG:
        return f"Whole text, fetched when opened: {LICENCES}{name}.txt"
    return text(name)


def _package(file: str) -> str:
    """The npm package of a file below ``node_modules/``."""
    parts = file.split("/")
    return "/".join(parts[: 2 if file.startswith("@") else 1])


def _python() -> Iterator[tuple[str, str, list[str]]]:
    for library in LIBRARIES:
        about = metadata.metadata(library)
        # BSD or MIT; whichever field the package fills, the text follows.
        name = about.get("License-Expression") or about.get("License") or "see below"
        yield f"{library} {about['Version']}", name, licence_texts(library)


def _section(name: str, licence: str, texts: list[str]) -> str:
    body = "\n\n".join(text.strip() for text in texts)
    return f"{'=' * 72}\n{name}\nLicence: {licence}\n{'=' * 72}\n{body}\n"
