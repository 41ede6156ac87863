"""Changes made to copies of other people's modules.

Python's: each saves work done at every start for something the app never asks, or the build can do
once. Turbo's: it makes pages and scripts through the one policy that Trusted Types lets in.
Each text to change must be found exactly once: a new version that moves it stops the build.
Times are a desktop's under Pyodide; a slow phone takes six times as long.
"""

import zipfile
from collections.abc import Mapping
from pathlib import Path

from beadwright_build.errors import BuildError
from beadwright_build.places import PYODIDE

Changes = Mapping[str, str]

_LATER = '''
class _Later:
    """A pattern compiled when it is first matched against."""

    def __init__(self, pattern, flags):
        self._compile = lambda: re.compile(pattern, flags)

    def match(self, text):
        self.match = self._compile().match
        return self.match(text)


class Email('''

LIBRARY_EDITS: Mapping[str, Changes] = {
    # Two patterns that span the letters of every script: 67 ms to compile, and no e-mail here.
    "marshmallow/validate.py": {
        "\nclass Email(": _LATER,
        "USER_REGEX = re.compile(": "USER_REGEX = _Later(",
        "DOMAIN_REGEX = re.compile(": "DOMAIN_REGEX = _Later(",
    }
}

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
"""Imported by Jinja at every start; with what they import, half the time to import it."""

DATACLASS_CODE = "beadwright_dataclass_code"
"""Module of compiled code by the hash of its source, made by ``inside/pack.py``."""

_AHEAD = f'''def _ahead(source):
    """Return the code the build compiled from a class's generated source, or the source."""
    try:
        from {DATACLASS_CODE} import CODE
    except ImportError:
        return source
    from hashlib import sha1
    return CODE.get(sha1(source.encode()).digest(), source)


class _FuncBuilder:
'''

STDLIB_EDITS: Mapping[str, Changes] = {
    # A dataclass writes its methods as source and compiles them: 0.8 ms a class, of 1.4.
    "dataclasses.py": {
        "class _FuncBuilder:\n": _AHEAD,
        "exec(txt, self.globals, ns)": "exec(_ahead(txt), self.globals, ns)",
    }
}


FRONT_END_EDITS: Mapping[str, Changes] = {
    "turbo.es2017-esm.js": {
        "const FrameLoadingStyle = {": (
            'import { pageHtml, scriptUrl } from "../js/offline/trusted.js";\n'
            "const FrameLoadingStyle = {"
        ),
        'return new DOMParser().parseFromString(html, "text/html")': (
            'return new DOMParser().parseFromString(pageHtml(html), "text/html")'
        ),
        # No page has a script written in it, only scripts named by address.
        "    createdScriptElement.textContent = element.textContent;\n": "",
        "destinationElement.setAttribute(name, value);": (
            'destinationElement.setAttribute(name, name === "src" ? scriptUrl(value) : value);'
        ),
    }
}


def edit_front_end(vendor: Path) -> None:
    """Change the copied front-end files in place."""
    for name, changes in FRONT_END_EDITS.items():
        file = vendor / name
        file.write_text(_edited(name, file.read_text(), changes))


def edit_libraries(sources: Path) -> None:
    """Change the copied libraries in place."""
    for name, changes in LIBRARY_EDITS.items():
        file = sources / name
        file.write_text(_edited(name, file.read_text(), changes))
    for name in STUBBED:
        (sources / name).write_text(_STUB)


def edit_stdlib(to: Path) -> None:
    """Write the changed modules of the standard library to a folder."""
    with zipfile.ZipFile(PYODIDE / "python_stdlib.zip") as stdlib:
        for name, changes in STDLIB_EDITS.items():
            target = to / name
            target.parent.mkdir(parents=True, exist_ok=True)
            target.write_text(_edited(name, stdlib.read(name).decode(), changes))


def _edited(name: str, text: str, changes: Changes) -> str:
    for old, new in changes.items():
        if text.count(old) != 1:
            raise BuildError(f"{name} of a new version has {text.count(old)} times: {old!r}")
        text = text.replace(old, new)
    return text
