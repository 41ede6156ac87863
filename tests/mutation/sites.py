"""Where a module can be changed: each node of a statement, and what is known of it there.

What is left aside: docstrings, annotations, and what only words a refusal.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import cast

COUNTING = ("round", "range", "islice", "batched")
"""Calls whose numbers count things: a share more of one would only raise."""


@dataclass(frozen=True)
class Site:
    """Where a change can be made: the node's place in the walk, and who holds it.

    Attributes:
        number: Place in the walk.
        node: What may be changed.
        parent: Who holds it.
        scope: Function it stands in.
        counting: True where a number counts things.
        types: Annotation of each name the function declares with one.
        given: Names that have a value before this place.
    """

    number: int
    node: ast.AST
    parent: ast.AST
    scope: str
    counting: bool
    types: Mapping[str, str]
    given: frozenset[str]


def _is_type(node: ast.AST) -> bool:
    return (
        isinstance(node, ast.Subscript)
        and isinstance(node.value, ast.Name)
        and node.value.id == "Literal"
    )


def is_docstring(node: object) -> bool:
    return isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant)


def _children(node: ast.AST) -> Iterator[ast.AST]:
    """Yield what is under a node, but for annotations, docstrings and what words a refusal."""
    if isinstance(node, ast.Raise) or _is_type(node):
        return
    for name, field in ast.iter_fields(node):
        if name in ("annotation", "returns", "format_spec", "type_params"):
            continue
        for child in cast("list[object]", field) if isinstance(field, list) else [field]:
            if is_docstring(child):
                continue
            if isinstance(child, ast.AST):
                yield child


def _declared(function: ast.FunctionDef) -> dict[str, str]:
    """Return the annotation of each name a function declares with one."""
    given = function.args
    arguments = [*given.posonlyargs, *given.args, *given.kwonlyargs]
    found = {one.arg: ast.unparse(one.annotation) for one in arguments if one.annotation}
    for node in ast.walk(function):
        if isinstance(node, ast.AnnAssign) and isinstance(node.target, ast.Name):
            found[node.target.id] = ast.unparse(node.annotation)
    return found


def names_set(node: ast.AST) -> set[str]:
    """Return the names a statement gives a value."""
    return {
        one.id
        for one in ast.walk(node)
        if isinstance(one, ast.Name) and isinstance(one.ctx, ast.Store)
    }


def sites(statement: ast.stmt, tree: ast.Module) -> Iterator[Site]:
    """Yield each place of one statement of a module where a change can be made."""
    number = 0
    types: Mapping[str, str] = {}
    given: set[str] = set()
    pending: list[tuple[ast.AST, ast.AST, str, bool]] = [(statement, tree, "", False)]
    while pending:
        node, parent, scope, counting = pending.pop()
        if isinstance(node, ast.FunctionDef):
            types = _declared(node)
            given = {one.arg for one in ast.walk(node.args) if isinstance(one, ast.arg)}
        yield Site(number, node, parent, scope, counting, types, frozenset(given))
        number += 1
        if isinstance(node, ast.Assign | ast.AnnAssign | ast.For):
            given |= names_set(node)
        called = (
            node.func.id if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) else ""
        )
        if isinstance(node, ast.FunctionDef | ast.ClassDef):
            inside = f"{scope}.{node.name}".lstrip(".")
            body = {id(statement) for statement in node.body}
        else:
            inside, body = scope, set[int]()
        counts = called in COUNTING or (isinstance(parent, ast.Subscript) and node is parent.slice)
        for child in reversed(list(_children(node))):
            child_scope = inside if id(child) in body else scope
            pending.append((child, node, child_scope, counting or counts))
