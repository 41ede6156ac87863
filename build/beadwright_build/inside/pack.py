"""Runs inside Pyodide: compile Python sources and put them in archives.

Same sources, same bytes: names are sorted, dates fixed, and each ``.pyc`` carries the hash of its
source instead of a time. Entries are stored, not deflated: the whole archive then compresses
better on its way to the phone, and the phone need not inflate a module to import it.
"""

import ast
import hashlib
import importlib.util
import json
import marshal
import zipfile
from pathlib import Path
from types import CodeType
from typing import TypedDict

EPOCH = (1980, 1, 1, 0, 0, 0)
UNCHECKED_HASH = 0b01
_NO_COLUMNS = 0x80 | 13 << 3
"""First byte of an entry of the table of lines that has no columns; its length goes on top."""


class Archive(TypedDict):
    """One archive to write: the files in it, by name, and how to compile them.

    ``codes`` names further modules and, for each, texts whose compiled code it shall hold.
    ``docstrings`` is False to leave them out; a dataclass keeps a mark in place of its own, for
    with none it writes itself one at import, from its signature.
    """

    to: str
    files: dict[str, str]
    optimize: int
    docstrings: bool
    codes: dict[str, list[str]]


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
            _write(archive, contents)
            written[archive["to"]] = len(contents)
    return json.dumps(written)


def _write(archive: Archive, contents: dict[str, bytes]) -> None:
    optimize = archive["optimize"]
    entries: dict[str, bytes] = {}
    for name, data in contents.items():
        if name.endswith(".py"):
            tree = ast.parse(data, name)
            if not archive["docstrings"]:
                leave_out_docstrings(tree)
            code = compile(tree, name, "exec", dont_inherit=True, optimize=optimize)
            entries[f"{name}c"] = _pyc(code, data)
        else:
            entries[name] = data
    for module, texts in archive["codes"].items():
        entries[f"{module}.pyc"] = _pyc(_code_table(texts, optimize), "".join(texts).encode())
    with zipfile.ZipFile(archive["to"], "w", zipfile.ZIP_STORED) as out:
        for name, data in sorted(entries.items()):
            out.writestr(_entry(name), data)


def leave_out_docstrings(tree: ast.Module) -> None:
    """Take the docstrings out of a module; a class with a decorator keeps a mark in its place."""
    for node in ast.walk(tree):
        if not isinstance(node, ast.Module | ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef):
            continue
        match node.body:
            case [ast.Expr(value=ast.Constant(value=str())) as first, *rest]:
                if isinstance(node, ast.ClassDef) and node.decorator_list:
                    first.value = ast.copy_location(ast.Constant("."), first.value)
                elif rest or isinstance(node, ast.Module):
                    node.body = rest
                else:
                    node.body = [ast.copy_location(ast.Pass(), first)]
            case _:
                pass


def _code_table(texts: list[str], optimize: int) -> CodeType:
    """Return a module that has ``CODE``: each text's compiled code by the text's SHA-1."""
    codes = [
        compile(text, "<generated>", "exec", dont_inherit=True, optimize=optimize) for text in texts
    ]
    # Source cannot write down a code object; the constants of a compiled module can hold one.
    module = compile("CODE = dict(zip('keys', 'codes'))", "<table>", "exec", dont_inherit=True)
    constants: dict[object, tuple[object, ...]] = {
        "keys": tuple(hashlib.sha1(text.encode()).digest() for text in texts),
        "codes": tuple(codes),
    }
    return module.replace(
        co_consts=tuple(constants.get(constant, constant) for constant in module.co_consts)
    )


def _entry(name: str) -> zipfile.ZipInfo:
    entry = zipfile.ZipInfo(name, EPOCH)
    entry.create_system = 3
    entry.external_attr = 0o644 << 16
    return entry


def _pyc(code: CodeType, source: bytes) -> bytes:
    return b"".join(
        (
            importlib.util.MAGIC_NUMBER,
            UNCHECKED_HASH.to_bytes(4, "little"),
            importlib.util.source_hash(source),
            marshal.dumps(without_lines(code)),
        )
    )


def without_lines(code: CodeType) -> CodeType:
    """Return code whose every instruction stands in its function's first line.

    The tables of lines and columns are a third of an archive. An error on the phone is told by its
    type and message; the same query in a terminal, from source, gives the lines.

    Source: CPython 3.13, InternalDocs/locations.md: an entry without columns covers up to eight
    code units, here each with a line delta of zero.
    """
    constants = (
        without_lines(constant) if isinstance(constant, CodeType) else constant
        for constant in code.co_consts
    )
    full, rest = divmod(len(code.co_code) // 2, 8)
    table = bytes((_NO_COLUMNS | 7, 0)) * full
    if rest:
        table += bytes((_NO_COLUMNS | (rest - 1), 0))
    return code.replace(co_linetable=table, co_consts=tuple(constants))
