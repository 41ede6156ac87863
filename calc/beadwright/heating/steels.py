"""Steels by grade: a usual melt, the limits of the standard, the preheat category.

Percent by mass throughout, as standards and certificates print it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.errors import OutOfRangeError, UnknownEntryError

Element = Literal["c", "mn", "si", "cr", "mo", "v", "ni", "cu", "b", "nb"]
ELEMENTS: tuple[Element, ...] = ("c", "mn", "si", "cr", "mo", "v", "ni", "cu", "b", "nb")
"""Elements read from a certificate, in the order it prints them."""

SYMBOLS: Mapping[Element, str] = MappingProxyType(
    {"c": "C", "mn": "Mn", "si": "Si", "cr": "Cr", "mo": "Mo", "v": "V", "ni": "Ni", "cu": "Cu",
     "b": "B", "nb": "Nb"}
)  # fmt: skip
"""Chemical symbols."""


@dataclass(frozen=True, slots=True)
class Composition:
    """An analysis; what is not given is zero.

    Attributes:
        c: Carbon [% by mass].
        mn: Manganese [% by mass].
        si: Silicon [% by mass].
        cr: Chromium [% by mass].
        mo: Molybdenum [% by mass].
        v: Vanadium [% by mass].
        ni: Nickel [% by mass].
        cu: Copper [% by mass].
        b: Boron [% by mass].
        nb: Niobium [% by mass].

    Raises:
        OutOfRangeError: If a share is below zero or all together exceed 100 %.
    """

    c: float
    mn: float
    si: float = 0.0
    cr: float = 0.0
    mo: float = 0.0
    v: float = 0.0
    ni: float = 0.0
    cu: float = 0.0
    b: float = 0.0
    nb: float = 0.0

    def __post_init__(self) -> None:
        total = 0.0
        for element in ELEMENTS:
            share = self.share(element)
            if not share >= 0:
                raise OutOfRangeError(f"{SYMBOLS[element]} {share:g} % is below zero")
            total += share
        if total > 100:
            raise OutOfRangeError(f"the elements add up to {total:g} %; a steel has 100 %")

    def share(self, element: Element) -> float:
        """Return an element's share [% by mass]."""
        return float(getattr(self, element))


Category = Literal["B", "C"]


@dataclass(frozen=True, slots=True)
class Steel:
    """A grade.

    Attributes:
        name: Its name.
        typical: A usual melt; common practice.
        limit: Every element at the most its standard allows, all at once.
        limit_source: Source id of the limits.
        ce_cap: The most CE(IIW) its standard allows, or None where it sets none [%].
        category: Its category in the prequalified table with low-hydrogen processes, or None.
    """

    name: str
    typical: Composition
    limit: Composition
    limit_source: str
    ce_cap: float | None
    category: Category | None


STEELS: Mapping[str, Steel] = MappingProxyType(
    {
        steel.name: steel
        for steel in (
            Steel("A36", Composition(0.16, 0.75, 0.20, 0.08, 0.02, 0.003, 0.09, 0.25),
                  Composition(0.25, 1.20, 0.40), "astm-limits", None, "B"),
            Steel("A572-50", Composition(0.15, 1.15, 0.22, 0.08, 0.02, 0.04, 0.09, 0.25, nb=0.01),
                  Composition(0.23, 1.35, 0.40, v=0.15), "ti-809-26-steels", None, "B"),
            Steel("A572-60", Composition(0.16, 1.30, 0.25, 0.08, 0.02, 0.06, 0.09, 0.25, nb=0.02),
                  Composition(0.26, 1.35, 0.40, v=0.15), "astm-limits", None, "C"),
            Steel("A588", Composition(0.13, 1.05, 0.35, 0.52, 0.02, 0.035, 0.20, 0.30),
                  Composition(0.20, 1.35, 0.50, 0.70, 0.0, 0.10, 0.50, 0.40),
                  "ti-809-26-steels", None, "B"),
            Steel("A992", Composition(0.08, 1.15, 0.22, 0.12, 0.03, 0.04, 0.12, 0.28),
                  Composition(0.23, 1.50, 0.40, 0.35, 0.15, 0.11, 0.45, 0.60, nb=0.05),
                  "ti-809-26-steels", 0.45, "B"),
            Steel("A500-B", Composition(0.19, 0.75, 0.03, 0.04, 0.01, 0.002, 0.03, 0.05),
                  Composition(0.26, 1.35), "astm-limits", None, "B"),
            Steel("A500-C", Composition(0.19, 0.85, 0.03, 0.04, 0.01, 0.002, 0.03, 0.05),
                  Composition(0.23, 1.35), "astm-limits", None, "B"),
            Steel("S235JR", Composition(0.12, 0.65, 0.18, 0.05, 0.01, 0.002, 0.05, 0.10),
                  Composition(0.17, 1.40, cu=0.55), "en-10025-2", 0.35, None),
            Steel("S275JR", Composition(0.14, 0.90, 0.18, 0.05, 0.01, 0.002, 0.05, 0.10),
                  Composition(0.21, 1.50, cu=0.55), "en-10025-2", 0.40, None),
            Steel("S355J2", Composition(0.16, 1.40, 0.30, 0.04, 0.01, 0.005, 0.04, 0.05),
                  Composition(0.20, 1.60, 0.55, cu=0.55), "en-10025-2", 0.45, None),
        )
    }
)  # fmt: skip
"""Steels by grade.

Source: limits as each names; A36 is plate up to 1-1/2 in, A588 grade B, EN grades up to 16 mm.
Usual melts: common practice. Categories: AWS D1.1 Table 5.8, gas metal arc.
"""

UNKNOWN = "unknown"
"""The name for a steel of unknown grade."""


def steel_of(name: str) -> Steel | None:
    """Return the steel of a grade, or None for ``unknown``.

    Args:
        name: A key of ``STEELS`` in any case, or ``unknown`` [-].

    Raises:
        UnknownEntryError: If the grade is not in the table.
    """
    wanted = name.strip().lower()
    if wanted == UNKNOWN:
        return None
    for key, steel in STEELS.items():
        if key.lower() == wanted:
            return steel
    known = ", ".join((*STEELS, UNKNOWN))
    raise UnknownEntryError(f"{name[:40]} is not in the table; it has {known}")
