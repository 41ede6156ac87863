"""The Python libraries the phone needs, as source, taken from the installed packages."""

import shutil
from importlib import metadata
from pathlib import Path

from beadwright_build.edits import edit_libraries

LIBRARIES = ("jinja2", "markupsafe", "marshmallow")
"""Names of distribution and package alike."""


def copy_sources(to: Path) -> None:
    """Copy each library's ``.py`` files, with our edits.

    Compiled parts are for this machine and stay behind.
    """
    for library in LIBRARIES:
        for file in metadata.files(library) or ():
            if file.parts[0] == library and file.suffix == ".py":
                target = to.joinpath(*file.parts)
                target.parent.mkdir(parents=True, exist_ok=True)
                shutil.copyfile(str(file.locate()), target)
    edit_libraries(to)


def licence_texts(distribution: str) -> list[str]:
    """Return the licence files an installed package came with."""
    return [
        file.read_text()
        for file in metadata.files(distribution) or ()
        if ".dist-info" in file.parts[0] and file.stem.upper() in {"LICENSE", "LICENCE", "NOTICE"}
    ]
