"""Mutants of a module: its source with one small thing changed.

What is changed: every number by 5 % (a zero becomes a one, a count or index the next), + and -,
* and /, ** and *, < and <=, > and >=, each way round, == and !=, min and max, and and or, not.
Two names side by side in a call, a tuple or a choice of two are swapped, unless their annotations
say that they are of two types. A statement is left out where the rest still runs without it: a
call, a step of a sum, a second value of a name, an ``if`` without ``else``, a ``raise``.
What is not: docstrings, annotations, and what only words a refusal.
"""

from __future__ import annotations

import ast
import copy
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import cast

from tests.mutation.sites import Site, is_docstring, names_set, sites

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

EITHER_ORDER = ("min", "max", "hypot", "isclose")
"""Calls that give the same whichever argument comes first."""

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


Change = Callable[[Site], None]


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
    return lambda site: setattr(site.node, name, value)


def _set_op(place: int, operator: type[ast.cmpop]) -> Change:
    def change(site: Site) -> None:
        assert isinstance(site.node, ast.Compare)
        site.node.ops[place] = operator()

    return change


def _swap(field: str, place: int) -> Change:
    def change(site: Site) -> None:
        items: list[ast.expr] = getattr(site.node, field)
        items[place], items[place + 1] = items[place + 1], items[place]

    return change


def _swap_branches(site: Site) -> None:
    assert isinstance(site.node, ast.IfExp)
    site.node.body, site.node.orelse = site.node.orelse, site.node.body


def _leave_out(site: Site) -> None:
    for _, field in ast.iter_fields(site.parent):
        if isinstance(field, list):
            statements = cast("list[ast.AST]", field)
            for place, statement in enumerate(statements):
                if statement is site.node:
                    statements[place] = ast.Pass()


def _is_name(node: ast.AST) -> bool:
    """True for a name or a name's attribute that is no class and no constant's own text."""
    if isinstance(node, ast.Attribute):
        return _is_name(node.value)
    return isinstance(node, ast.Name) and not node.id[0].isupper()


def _alike(one: ast.expr, other: ast.expr, types: Mapping[str, str]) -> bool:
    """True if two expressions are names that may be taken for each other."""
    if not (_is_name(one) and _is_name(other)) or ast.dump(one) == ast.dump(other):
        return False
    kinds = [types.get(node.id) if isinstance(node, ast.Name) else None for node in (one, other)]
    return None in kinds or kinds[0] == kinds[1]


def _swaps(field: str, items: Sequence[ast.expr], types: Mapping[str, str]) -> Iterator[Change]:
    for place in range(len(items) - 1):
        if _alike(items[place], items[place + 1], types):
            yield _swap(field, place)


def _can_be_left_out(site: Site) -> bool:
    """True for a statement the rest runs without."""
    node = site.node
    match node:
        case ast.Expr(value=ast.Call() | ast.Yield() | ast.YieldFrom()):
            return True
        case ast.Raise() | ast.AugAssign() | ast.Continue() | ast.Break():
            return True
        case ast.Assign(targets=targets):
            return all(names_set(target) <= site.given for target in targets)
        case ast.If(orelse=[], body=body):
            # An `if` around one raise is noticed with the raise.
            return not (len(body) == 1 and isinstance(body[0], ast.Raise))
        case _:
            return False


def _of_text(node: ast.AST) -> bool:
    return isinstance(node, ast.JoinedStr) or (
        isinstance(node, ast.Constant) and isinstance(node.value, str)
    )


def _changes(site: Site) -> Iterator[Change]:
    node = site.node
    if site.scope and _can_be_left_out(site):
        yield _leave_out
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
        case ast.Call(func=func, args=args):
            if not (isinstance(func, ast.Name) and func.id in EITHER_ORDER):
                yield from _swaps("args", args, site.types)
        case ast.Tuple(elts=elts, ctx=ast.Load()):
            yield from _swaps("elts", elts, site.types)
        case ast.IfExp(body=one, orelse=other):
            if _alike(one, other, site.types):
                yield _swap_branches
        case _:
            return


def _double_not(site: Site) -> None:
    assert isinstance(site.node, ast.UnaryOp)
    site.node.operand = ast.UnaryOp(ast.Not(), site.node.operand)


def _shown(node: ast.AST) -> str:
    text = " ".join(ast.unparse(node).split())
    return text if len(text) <= LONGEST else text[:LONGEST] + "…"


def _around(site: Site) -> ast.AST:
    """Return the smallest piece that says what is changed: a bare number needs its holder."""
    bare = isinstance(site.node, ast.Constant | ast.Name)
    return site.parent if bare and isinstance(site.parent, ast.expr | ast.keyword) else site.node


def mutants(source: str) -> Iterator[Mutant]:
    """Yield every mutant of a module.

    Args:
        source: The module's text.
    """
    tree = ast.parse(source)
    told: dict[tuple[str, str], int] = {}
    places = [
        (place, site)
        for place, statement in enumerate(tree.body)
        if not is_docstring(statement)
        for site in sites(statement, tree)
    ]
    for place, site in places:
        for change in _changes(site):
            # Only the statement changed is copied; the others are the same in every mutant.
            statement = copy.deepcopy(tree.body[place])
            body = [*tree.body[:place], statement, *tree.body[place + 1 :]]
            changed = ast.Module(body, type_ignores=[])
            twin = next(s for s in sites(statement, changed) if s.number == site.number)
            before = _shown(_around(site))
            change(twin)
            ast.fix_missing_locations(statement)
            after = "left out" if change is _leave_out else _shown(_around(twin))
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
