"""The preheat a job needs: by the code that rules it, with the other ways beside it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.heating.preheat import HEAT_RANGE_J_M, SHOP_K, MethodB, preheat_b
from beadwright.heating.preheat_a import MethodA, preheat_a
from beadwright.heating.preheat_table import TableRow, table_row
from beadwright.heating.steels import Composition
from beadwright.heating.welded_steel import ChosenSteel
from beadwright.phrases import Phrase, say
from beadwright.temperatures import from_celsius, rounded_up
from beadwright.units import System

Code = Literal["d1.1", "en-b", "en-a"]
"""AWS D1.1's prequalified table, EN 1011-2 method B, EN 1011-2 method A."""

CODES: tuple[Code, ...] = ("d1.1", "en-b", "en-a")
"""Every code that may rule."""

By = Literal["table", "method-b", "method-a", "none"]

_BY: dict[Code, By] = {"d1.1": "table", "en-b": "method-b", "en-a": "method-a"}


@dataclass(frozen=True, slots=True)
class Needed:
    """The preheat needed.

    Attributes:
        kelvin: What the ruling code asks, rounded up to a crayon's step where it is a formula's;
            None where it gives none [K].
        code: The code that rules.
        chosen: True if it was asked for; else it is D1.1 where its table lists the steel, else EN.
        row: The prequalified table's row, or None where it does not list the steel.
        table_k: What it asks [K].
        method_b: EN 1011-2 method B, or None without an analysis.
        worst_b: Method B for the worst melt, or None.
        method_a: EN 1011-2 method A, or None without an analysis.
        refused: Why the ruling code gives none, or None where it does.
    """

    kelvin: float | None
    code: Code
    chosen: bool
    row: TableRow | None
    table_k: float | None
    method_b: MethodB | None
    worst_b: MethodB | None
    method_a: MethodA | None
    refused: Phrase | None

    @property
    def by(self) -> By:
        """What gave it."""
        return "none" if self.kelvin is None else _BY[self.code]

    @property
    def even_cold(self) -> bool:
        """True if a joint at shop temperature is warm enough."""
        return self.kelvin is not None and self.kelvin <= SHOP_K + 1e-6


@dataclass(frozen=True, slots=True)
class Weld:
    """What preheat goes by besides the steel.

    Attributes:
        thickest_m: Thickest part [m].
        combined_m: Combined thickness [m].
        hydrogen: Diffusible hydrogen [ml/100 g].
        heat_en_j_m: Heat input with EN's efficiency, or None without a setting [J/m].
        units: Whose edition of the table, and whose crayons.
    """

    thickest_m: float
    combined_m: float
    hydrogen: float
    heat_en_j_m: float | None
    units: System


def preheat_needed(steel: ChosenSteel, weld: Weld, asked: Code | None) -> Needed:
    """Return the preheat by the code asked for, else by the one the steel belongs to.

    Which code rules is the contract's to say. Where nothing is said, AWS D1.1 rules steels its
    prequalified table lists, EN 1011-2 method B the others: so a change of units changes nothing.

    Source: ``preheat_table.table_row``, ``preheat.preheat_b``, ``preheat_a.preheat_a``.

    Args:
        steel: The steel as asked [-].
        weld: The weld [SI].
        asked: The code asked for, or None [-].
    """
    row = None
    if steel.grade is not None and steel.grade.category is not None and steel.off_grade is None:
        row = table_row(steel.grade.category, weld.thickest_m, weld.units)
    code: Code = asked or ("en-b" if row is None else "d1.1")
    # Without settings the least heat of the method's range counts: it needs the most preheat.
    heat = HEAT_RANGE_J_M[0] if weld.heat_en_j_m is None else weld.heat_en_j_m

    def by_b(analysis: Composition | None) -> MethodB | None:
        if analysis is None:
            return None
        return preheat_b(analysis, weld.thickest_m, weld.hydrogen, heat)

    method_b, worst, method_a = by_b(steel.composition), by_b(steel.worst), None
    if steel.composition is not None:
        method_a = preheat_a(steel.composition, weld.combined_m, weld.hydrogen, heat)
    table_k = None if row is None else row.kelvin(weld.units)
    kelvin, refused = _ruled(code, steel, table_k, method_b, method_a, weld.units)
    chosen = asked is not None
    return Needed(
        kelvin, code, chosen, row, table_k, method_b, worst, method_a, refused
    )  # fmt: skip


def _ruled(
    code: Code,
    steel: ChosenSteel,
    table_k: float | None,
    method_b: MethodB | None,
    method_a: MethodA | None,
    system: System,
) -> tuple[float | None, Phrase | None]:
    """What the ruling code asks, or why it asks nothing."""
    if code == "d1.1":
        return table_k, None if table_k is not None else _unlisted(steel)
    if method_b is None or method_a is None:
        return None, say("heating.no-analysis-no-preheat")
    if code == "en-a":
        return method_a.kelvin, method_a.refused
    if method_b.kelvin is None:
        return None, method_b.refused[0][1]
    kelvin = method_b.kelvin
    return (rounded_up(kelvin, system) if kelvin > from_celsius(0) else kelvin), None


def _unlisted(steel: ChosenSteel) -> Phrase:
    if steel.off_grade is not None:
        return steel.off_grade
    if steel.grade is None:
        return say("heating.table-wants-a-grade")
    return say("heating.table-lists-not", steel=steel.grade.name)
