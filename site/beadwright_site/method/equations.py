"""The method as data: what an equation, a table and a section of the page are made of.

Each topic has a module of its own in ``method.topics``, with a function ``sections``;
``method.contents`` lists them. Numbers are read from the core where it holds them, so this page
cannot say one thing and the core do another.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from markupsafe import Markup

from beadwright_site.drawings.points_drawing import Plot
from beadwright_site.method.mathml import Part


@dataclass(frozen=True, slots=True)
class Symbol:
    """A sign of an equation: the sign, what it is, its unit."""

    sign: Part
    meaning: str
    unit: str


@dataclass(frozen=True, slots=True)
class Equation:
    """One equation.

    Attributes:
        key: Id on the page.
        title: What it gives.
        formulas: The equation, in one form or several.
        symbols: Its signs.
        valid: Where it holds.
        band: How far it may be off.
        sources: Source ids.
        words: What to know of it.
        covers: The functions and constants of the core it tells of, as ``module.name``.
    """

    key: str
    title: str
    formulas: tuple[Markup, ...]
    symbols: tuple[Symbol, ...]
    valid: str
    band: str
    sources: tuple[str, ...]
    words: str = ""
    covers: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Table:
    """A table of the page; ``covers`` as in an equation."""

    key: str
    title: str
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    sources: tuple[str, ...]
    words: str = ""
    covers: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Section:
    """An equation with the tables and plots that belong to it."""

    equation: Equation
    tables: tuple[Table, ...] = ()
    plots: tuple[Plot, ...] = ()


def plain(equations: Iterable[Equation]) -> tuple[Section, ...]:
    """Return sections of equations without tables or plots."""
    return tuple(Section(equation) for equation in equations)


def number(value: float) -> str:
    """Return a number as an equation shows it."""
    return f"{value:.4g}"
