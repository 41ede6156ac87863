"""The licence text of everything shipped that others wrote, in one file of the site."""

import json
from collections.abc import Iterator
from importlib import metadata
from pathlib import Path

from beadwright_build.libraries import LIBRARIES, licence_texts
from beadwright_build.places import NODE_MODULES, ROOT
from beadwright_build.vendor import FRONT_END


def write_licences(to: Path) -> None:
    """Write the notice file: our own licence first, then each part with name and version."""
    own = ("Beadwright", "MIT", [(ROOT / "LICENSE").read_text()])
    sections = [own, *_npm(), *_python()]
    to.write_text("\n\n".join(_section(*section) for section in sections))


def _npm() -> Iterator[tuple[str, str, list[str]]]:
    for package in sorted({*map(_package, FRONT_END.values()), "pyodide"}):
        folder = NODE_MODULES / package
        about = json.loads((folder / "package.json").read_text())
        texts = [
            file.read_text()
            for file in sorted(folder.iterdir())
            if file.stem.upper() in {"LICENSE", "LICENCE", "NOTICE"}
        ]
        yield f"{package} {about['version']}", about["license"], texts


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
