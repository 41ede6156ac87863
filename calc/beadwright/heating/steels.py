"""Steels by grade: a usual melt, the limits of the standard by thickness, the preheat category.

Percent by mass throughout, as standards and certificates print it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import inf
from types import MappingProxyType
from typing import Literal

from beadwright.errors import OutOfRangeError, UnknownEntryError
from beadwright.measures import INCH_M, System

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

MN_PER_C = 6.0
"""Manganese allowed above its most for each part of carbon under its most [-]. Source: ASTM A36,
A572, A588, A500: 0.06 % for each 0.01 %."""


@dataclass(frozen=True, slots=True)
class Limits:
    """The most a standard allows in material up to a thickness.

    Attributes:
        through_in_m: Up to and with this, as the edition in inches prints it; infinite if open [m].
        through_mm_m: The same as the metric edition prints it [m].
        most: Every element at its limit, all at once.
        ce_cap: The most CE(IIW) besides, or None where the standard sets none [%].
        mn_open: True if the standard sets no most of manganese here; what is counted is ours.
    """

    through_in_m: float
    through_mm_m: float
    most: Composition
    ce_cap: float | None = None
    mn_open: bool = False

    def through(self, system: System) -> float:
        """Return the thickness up to which they hold, by the edition of a system [m].

        Args:
            system: Whose edition [-].
        """
        return self.through_mm_m if system == "si" else self.through_in_m


@dataclass(frozen=True, slots=True)
class Steel:
    """A grade.

    Attributes:
        name: Its name.
        typical: A usual melt; common practice.
        limits: What its standard allows, by thickness, thin first.
        limit_source: Source id of the limits.
        category: Its category in the prequalified table with low-hydrogen processes, or None.
        cap_source: Source id of the caps on CE(IIW); empty where there is none.
        mn_top: The most manganese where carbon is lower than its most, or None where the standard
            trades none for it [%].
        listed: What of the grade is listed, where its standard has more; empty: all of it.
    """

    name: str
    typical: Composition
    limits: tuple[Limits, ...]
    limit_source: str
    category: Category | None
    cap_source: str = ""
    mn_top: float | None = None
    listed: str = ""

    @property
    def as_listed(self) -> str:
        """Its name, with what of it is listed here."""
        return f"{self.name} {self.listed}".rstrip()

    def limits_at(self, thickness_m: float, system: System) -> Limits:
        """Return what the standard allows at a thickness; past its last step, that of the last.

        Args:
            thickness_m: Thickness, above zero [m].
            system: Whose edition: the two are printed apart, not converted [-].
        """
        for step in self.limits:
            if thickness_m <= step.through(system) + 1e-9:
                return step
        return self.limits[-1]

    def most_mn(self, limits: Limits, carbon: float) -> float:
        """Return the most manganese a certificate may print beside its carbon [% by mass].

        Source: ASTM A36, A572, A588, A500, notes to the analysis: 0.06 % more for each 0.01 % of
        carbon under its most, to ``mn_top``.

        Args:
            limits: What the grade allows at the thickness [% by mass].
            carbon: What the certificate prints [% by mass].
        """
        most = limits.most.mn
        if limits.mn_open:
            return inf
        if self.mn_top is None:
            return most
        return min(self.mn_top, most + MN_PER_C * max(0.0, limits.most.c - carbon))


def _to(
    inch: float, mm: float, most: Composition, cap: float | None = None, *, mn_open: bool = False
) -> Limits:
    return Limits(inch * INCH_M, mm / 1e3, most, cap, mn_open)


def _en(mm: float, most: Composition, cap: float) -> Limits:
    return Limits(mm / 1e3, mm / 1e3, most, cap)


_A992 = Composition(0.23, 1.50, 0.40, 0.35, 0.15, 0.11, 0.45, 0.60, nb=0.05)

STEELS: Mapping[str, Steel] = MappingProxyType(
    {
        steel.name: steel
        for steel in (
            Steel("A36", Composition(0.16, 0.75, 0.20, 0.08, 0.02, 0.003, 0.09, 0.25),
                  (_to(0.75, 20, Composition(0.25, 1.20, 0.40), mn_open=True),
                   _to(1.5, 40, Composition(0.25, 1.20, 0.40)),
                   _to(2.5, 65, Composition(0.26, 1.20, 0.40)),
                   _to(4.0, 100, Composition(0.27, 1.20, 0.40)),
                   _to(inf, inf, Composition(0.29, 1.20, 0.40))), "astm-limits", "B", mn_top=1.35,
                  listed="plate"),
            Steel("A572-50", Composition(0.15, 1.15, 0.22, 0.08, 0.02, 0.04, 0.09, 0.25, nb=0.01),
                  (_to(4.0, 100, Composition(0.23, 1.35, 0.40, v=0.15)),),
                  "ti-809-26-steels", "B", mn_top=1.60),
            Steel("A572-60", Composition(0.16, 1.30, 0.25, 0.08, 0.02, 0.06, 0.09, 0.25, nb=0.02),
                  (_to(1.25, 32, Composition(0.26, 1.35, 0.40, v=0.15)),), "astm-limits", "C",
                  mn_top=1.60),
            Steel("A588", Composition(0.13, 1.05, 0.35, 0.52, 0.02, 0.035, 0.20, 0.30),
                  (_to(inf, inf, Composition(0.20, 1.35, 0.50, 0.70, 0.0, 0.10, 0.50, 0.40)),),
                  "ti-809-26-steels", "B", mn_top=1.50, listed="grade B"),
            Steel("A992", Composition(0.08, 1.15, 0.22, 0.12, 0.03, 0.04, 0.12, 0.28),
                  (_to(2.0, 50, _A992, 0.45), _to(inf, inf, _A992, 0.47)),
                  "ti-809-26-steels", "B", "astm-a992", mn_top=1.60),
            Steel("A500-B", Composition(0.19, 0.75, 0.03, 0.04, 0.01, 0.002, 0.03, 0.05),
                  (_to(inf, inf, Composition(0.26, 1.35)),), "astm-limits", "B", mn_top=1.50),
            Steel("A500-C", Composition(0.19, 0.85, 0.03, 0.04, 0.01, 0.002, 0.03, 0.05),
                  (_to(inf, inf, Composition(0.23, 1.35)),), "astm-limits", "B", mn_top=1.50),
            Steel("S235JR", Composition(0.12, 0.65, 0.18, 0.05, 0.01, 0.002, 0.05, 0.10),
                  (_en(40, Composition(0.17, 1.40, cu=0.55), 0.35),
                   _en(150, Composition(0.20, 1.40, cu=0.55), 0.38),
                   _en(250, Composition(0.20, 1.40, cu=0.55), 0.40)),
                  "en-10025-2-analysis", None, "en-10025-2-cev"),
            Steel("S275JR", Composition(0.14, 0.90, 0.18, 0.05, 0.01, 0.002, 0.05, 0.10),
                  (_en(40, Composition(0.21, 1.50, cu=0.55), 0.40),
                   _en(150, Composition(0.22, 1.50, cu=0.55), 0.42),
                   _en(250, Composition(0.22, 1.50, cu=0.55), 0.44)),
                  "en-10025-2-analysis", None, "en-10025-2-cev"),
            Steel("S355J2", Composition(0.16, 1.40, 0.30, 0.04, 0.01, 0.005, 0.04, 0.05),
                  (_en(30, Composition(0.20, 1.60, 0.55, cu=0.55), 0.45),
                   _en(40, Composition(0.20, 1.60, 0.55, cu=0.55), 0.47),
                   _en(150, Composition(0.22, 1.60, 0.55, cu=0.55), 0.47),
                   _en(250, Composition(0.22, 1.60, 0.55, cu=0.55), 0.49)),
                  "en-10025-2-analysis", None, "en-10025-2-cev"),
        )
    }
)  # fmt: skip
"""Steels by grade.

Source: limits as each names. A36 is plate: the standard sets no Mn to 3/4 in, and as the worst melt
the next step's 1.20 % is counted. A588 is grade B. A992 goes by its flange. ``mn_top``: A36, A588,
A500 found second-hand, A572 from memory; A992 as newer editions allow outright, from memory. Usual
melts: common practice. Categories: AWS D1.1:2020 Table 5.8, gas metal arc.
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
