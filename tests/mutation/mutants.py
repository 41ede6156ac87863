"""Mutants of a module: its source with one number, operator or comparison changed.

What is changed: every number by 5 % (a zero becomes a one, a count or index the next), + and -,
* and /, ** and *, < and <=, > and >=, each way round, == and !=, min and max, and and or, not.
What is not: docstrings, annotations, and what only words a refusal.
"""

from __future__ import annotations

import ast
import copy
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import cast

Change = Callable[[ast.AST], None]

SHARE = 0.05
"""By how much a number is changed."""

OPERATORS: dict[type[ast.operator], type[ast.operator]] = {
    ast.Add: ast.Sub,
    ast.Sub: ast.Add,
    ast.Mult: ast.Div,
    ast.Div: ast.Mult,
    ast.Pow: ast.Mult,
    ast.FloorDiv: ast.Div,
    ast.Mod: ast.Mult,
}

COMPARISONS: dict[type[ast.cmpop], tuple[type[ast.cmpop], ...]] = {
    ast.Lt: (ast.LtE, ast.Gt),
    ast.LtE: (ast.Lt, ast.GtE),
    ast.Gt: (ast.GtE, ast.Lt),
    ast.GtE: (ast.Gt, ast.LtE),
    ast.Eq: (ast.NotEq,),
    ast.NotEq: (ast.Eq,),
}

ENDS = {"min": "max", "max": "min"}

COUNTING = ("round", "range", "islice", "batched")
"""Calls whose numbers count things: a share more of one would only raise."""

LONGEST = 110


@dataclass(frozen=True)
class Mutant:
    """One change of one module.

    Attributes:
        line: Line of the source.
        scope: Function it stands in, ``Class.method`` or empty at the module's level.
        text: What it changes, before → after; the same change again in a scope is numbered.
        tree: The module with the change.
    """

    line: int
    scope: str
    text: str
    tree: ast.Module


@dataclass(frozen=True)
class _Site:
    """Where a change can be made: the node's place in the walk, and who holds it."""

    number: int
    node: ast.AST
    parent: ast.AST
    scope: str
    counting: bool


def _is_type(node: ast.AST) -> bool:
    return (
        isinstance(node, ast.Subscript)
        and isinstance(node.value, ast.Name)
        and node.value.id == "Literal"
    )


def _children(node: ast.AST) -> Iterator[ast.AST]:
    """Yield what is under a node, but for annotations, docstrings and what words a refusal."""
    if isinstance(node, ast.Raise) or _is_type(node):
        return
    for name, field in ast.iter_fields(node):
        if name in ("annotation", "returns", "format_spec", "type_params"):
            continue
        for child in cast("list[object]", field) if isinstance(field, list) else [field]:
            if isinstance(child, ast.Expr) and isinstance(child.value, ast.Constant):
                continue
            if isinstance(child, ast.AST):
                yield child


def _sites(tree: ast.Module) -> Iterator[_Site]:
    number = 0
    pending: list[tuple[ast.AST, ast.AST, str, bool]] = [(tree, tree, "", False)]
    while pending:
        node, parent, scope, counting = pending.pop()
        yield _Site(number, node, parent, scope, counting)
        number += 1
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


def _numbers(value: object, counting: bool) -> list[object]:
    if isinstance(value, bool) or not isinstance(value, int | float):
        return []
    if value == 0:
        return [1]
    if isinstance(value, int) and counting:
        return [value + 1]
    changed = value * (1 + SHARE)
    if isinstance(value, int) and (changed == round(changed)):
        return [round(changed)]
    return [] if changed == value else [changed]


def _set(name: str, value: object) -> Change:
    return lambda node: setattr(node, name, value)


def _set_op(place: int, operator: type[ast.cmpop]) -> Change:
    def change(node: ast.AST) -> None:
        assert isinstance(node, ast.Compare)
        node.ops[place] = operator()

    return change


def _of_text(node: ast.AST) -> bool:
    return isinstance(node, ast.JoinedStr) or (
        isinstance(node, ast.Constant) and isinstance(node.value, str)
    )


def _changes(site: _Site) -> Iterator[Change]:
    node = site.node
    match node:
        case ast.Constant(value=value):
            counting = site.counting or (
                isinstance(site.parent, ast.Subscript) and node is site.parent.slice
            )
            for number in _numbers(value, counting):
                yield _set("value", number)
        case ast.BinOp(left=left, op=op, right=right):
            if type(op) in OPERATORS and not _of_text(left) and not _of_text(right):
                yield _set("op", OPERATORS[type(op)]())
        case ast.AugAssign(op=op):
            if type(op) in OPERATORS:
                yield _set("op", OPERATORS[type(op)]())
        case ast.Compare(ops=ops):
            for place, compared in enumerate(ops):
                for other in COMPARISONS.get(type(compared), ()):
                    yield _set_op(place, other)
        case ast.Name(id=name) if name in ENDS and isinstance(site.parent, ast.Call):
            yield _set("id", ENDS[name])
        case ast.BoolOp(op=op):
            yield _set("op", ast.Or() if isinstance(op, ast.And) else ast.And())
        case ast.UnaryOp(op=ast.Not(), operand=operand):
            yield _set("op", ast.UAdd()) if isinstance(operand, ast.Constant) else _double_not
        case _:
            return


def _double_not(node: ast.AST) -> None:
    assert isinstance(node, ast.UnaryOp)
    node.operand = ast.UnaryOp(ast.Not(), node.operand)


def _shown(node: ast.AST) -> str:
    text = " ".join(ast.unparse(node).split())
    return text if len(text) <= LONGEST else text[:LONGEST] + "…"


def _around(site: _Site) -> ast.AST:
    """Return the smallest expression that says what is changed: a bare number needs its holder."""
    bare = isinstance(site.node, ast.Constant | ast.Name)
    return site.parent if bare and isinstance(site.parent, ast.expr | ast.keyword) else site.node


def mutants(source: str) -> Iterator[Mutant]:
    """Yield every mutant of a module.

    Args:
        source: The module's text.
    """
    tree = ast.parse(source)
    told: dict[tuple[str, str], int] = {}
    for site in _sites(tree):
        for change in _changes(site):
            changed = copy.deepcopy(tree)
            twin = next(s for s in _sites(changed) if s.number == site.number)
            before = _shown(_around(site))
            change(twin.node)
            ast.fix_missing_locations(changed)
            after = _shown(_around(twin))
            if isinstance(site.node, ast.Constant) and before == after:
                before, after = f"{_shown(site.node)} in {before}", _shown(twin.node)
            text = f"{before} → {after}"
            told[site.scope, text] = again = told.get((site.scope, text), 0) + 1
            line = getattr(site.node, "lineno", getattr(site.parent, "lineno", 0))
            yield Mutant(line, site.scope, text if again == 1 else f"{text} #{again}", changed)


def unchanged(source: str) -> Mutant:
    """Return the module as it is, in a mutant's clothes: it must survive.

    Args:
        source: The module's text.
    """
    return Mutant(0, "", "nothing", ast.parse(source))
