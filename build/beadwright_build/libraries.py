"""The Python libraries the phone needs, as source, taken from the installed packages."""

import shutil
from importlib import metadata
from pathlib import Path

from beadwright_build.errors import BuildError

LIBRARIES = ("jinja2", "markupsafe", "marshmallow")
"""Names of distribution and package alike."""

_LATER = '''
class _Later:
    """A pattern compiled when it is first matched against."""

    def __init__(self, pattern, flags):
        self._compile = lambda: re.compile(pattern, flags)

    def match(self, text):
        self.match = self._compile().match
        return self.match(text)


class Email('''

EDITS = {
    "marshmallow/validate.py": {
        "\nclass Email(": _LATER,
        "USER_REGEX = re.compile(": "USER_REGEX = _Later(",
        "DOMAIN_REGEX = re.compile(": "DOMAIN_REGEX = _Later(",
    }
}
"""Changes made to the copies, each found exactly once.

The two patterns for e-mail addresses span the letters of every script: compiling them took half of
all the time our imports take (67 of 132 ms on a desktop, six times that on a slow phone), at every
start, and the app has no e-mail field.
"""

_STUB = '''"""Stands in, where templates come compiled, for a module that reads them."""


class _Absent:
    def __init__(self, *args, **kwargs):
        raise RuntimeError("templates are compiled by the build; none is read here")


def __getattr__(name):
    if name.startswith("__"):
        raise AttributeError(name)
    return _Absent
'''

STUBBED = ("jinja2/bccache.py", "jinja2/compiler.py", "jinja2/lexer.py", "jinja2/parser.py")
"""Imported by Jinja at every start, and never used where templates come compiled.

With what they import in turn they took half of the time to import Jinja.
"""


def copy_sources(to: Path) -> None:
    """Copy each library's ``.py`` files; compiled parts are for this machine and stay behind."""
    for library in LIBRARIES:
        for file in metadata.files(library) or ():
            if file.parts[0] == library and file.suffix == ".py":
                target = to.joinpath(*file.parts)
                target.parent.mkdir(parents=True, exist_ok=True)
                shutil.copyfile(str(file.locate()), target)
    for name, changes in EDITS.items():
        _edit(to / name, changes)
    for name in STUBBED:
        (to / name).write_text(_STUB)


def _edit(file: Path, changes: dict[str, str]) -> None:
    text = file.read_text()
    for old, new in changes.items():
        if text.count(old) != 1:
            raise BuildError(f"{file.name} of a new version has {text.count(old)} times: {old!r}")
        text = text.replace(old, new)
    file.write_text(text)


def licence_texts(distribution: str) -> list[str]:
    """Return the licence files an installed package came with."""
    return [
        file.read_text()
        for file in metadata.files(distribution) or ()
        if ".dist-info" in file.parts[0] and file.stem.upper() in {"LICENSE", "LICENCE", "NOTICE"}
    ]
