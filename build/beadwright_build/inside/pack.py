"""Runs inside Pyodide: compile Python sources and put them in archives.

Same sources, same bytes: names are sorted, dates fixed, and each ``.pyc`` carries the hash of its
source instead of a time. Entries are stored, not deflated: the whole archive then compresses
better on its way to the phone, and the phone need not inflate a module to import it.
"""

import importlib.util
import json
import marshal
import zipfile
from pathlib import Path
from typing import TypedDict

EPOCH = (1980, 1, 1, 0, 0, 0)
UNCHECKED_HASH = 0b01


class Archive(TypedDict):
    """One archive to write: the files in it, by name, and how to compile them."""

    to: str
    files: dict[str, str]
    optimize: int


class Plan(TypedDict):
    """All archives. Files whose path starts with the standard library's archive come from it."""

    stdlib: str
    archives: list[Archive]


def main(text: str) -> str:
    """Write every archive of the plan, in its order; return the number of files in each."""
    plan: Plan = json.loads(text)
    with zipfile.ZipFile(plan["stdlib"]) as stdlib:

        def read(path: str) -> bytes:
            inside = path.removeprefix(f"{plan['stdlib']}/")
            return stdlib.read(inside) if inside != path else Path(path).read_bytes()

        written: dict[str, int] = {}
        for archive in plan["archives"]:
            contents = {name: read(path) for name, path in sorted(archive["files"].items())}
            _write(archive["to"], contents, archive["optimize"])
            written[archive["to"]] = len(contents)
    return json.dumps(written)


def _write(to: str, contents: dict[str, bytes], optimize: int) -> None:
    with zipfile.ZipFile(to, "w", zipfile.ZIP_STORED) as out:
        for name, data in contents.items():
            if name.endswith(".py"):
                out.writestr(_entry(f"{name}c"), _pyc(data, name, optimize))
            else:
                out.writestr(_entry(name), data)


def _entry(name: str) -> zipfile.ZipInfo:
    entry = zipfile.ZipInfo(name, EPOCH)
    entry.create_system = 3
    entry.external_attr = 0o644 << 16
    return entry


def _pyc(source: bytes, name: str, optimize: int) -> bytes:
    code = compile(source, name, "exec", dont_inherit=True, optimize=optimize)
    return b"".join(
        (
            importlib.util.MAGIC_NUMBER,
            UNCHECKED_HASH.to_bytes(4, "little"),
            importlib.util.source_hash(source),
            marshal.dumps(code),
        )
    )
