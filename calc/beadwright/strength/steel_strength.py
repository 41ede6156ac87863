"""Least yield and tensile strength of common steels, by grade, as their standards ask."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import inf
from types import MappingProxyType

from beadwright.errors import OutOfRangeError, UnknownEntryError
from beadwright.measures import INCH_M, PSI_PA
from beadwright.typed_number import quoted

_KSI = float(1000 * PSI_PA)
_MPA = 1e6


@dataclass(frozen=True, slots=True)
class SteelStrength:
    """A grade's strength.

    Attributes:
        grade: Its name.
        rows: Thickness up to which it holds [m], yield [Pa], tensile [Pa].
        correlation: Correlation factor βw of EN 1993-1-8 Table 4.1, or None for other standards'.
        matching: Strength of the filler that matches it by AWS D1.1 [Pa], or None for others.
        source: Source id.
    """

    grade: str
    rows: tuple[tuple[float, float, float], ...]
    correlation: float | None
    matching: float | None
    source: str

    def at(self, thickness_m: float) -> tuple[float, float]:
        """Return yield and tensile strength of a thickness [Pa].

        Args:
            thickness_m: Thickness, above zero, up to what the rows hold for [m].

        Raises:
            OutOfRangeError: If the grade is not made so thick.
        """
        if not thickness_m > 0:
            raise OutOfRangeError(f"thickness_m = {thickness_m} must be above zero")
        for limit, fy, fu in self.rows:
            if thickness_m <= limit * (1 + 1e-9):
                return fy, fu
        raise OutOfRangeError(
            f"{self.grade} is not held here over {self.rows[-1][0] / INCH_M:.4g} in "
            f"({self.rows[-1][0] * 1000:.0f} mm)"
        )


def _us(grade: str, matching: float, *rows: tuple[float, float, float]) -> SteelStrength:
    return SteelStrength(
        grade,
        tuple((inch * INCH_M, fy * _KSI, fu * _KSI) for inch, fy, fu in rows),
        None,
        matching * _KSI,
        "astm-a500" if grade.startswith("A500") else "astm-strengths",
    )


def _en(grade: str, beta: float, fu: float, *rows: tuple[float, float]) -> SteelStrength:
    return SteelStrength(
        grade,
        tuple((mm / 1000, fy * _MPA, fu * _MPA) for mm, fy in rows),
        beta,
        None,
        "en-10025-2",
    )


STRENGTHS: Mapping[str, SteelStrength] = MappingProxyType(
    {
        steel.grade: steel
        for steel in (
            _us("A36", 70, (8.0, 36, 58), (inf, 32, 58)),
            _us("A572-50", 70, (4.0, 50, 65)),
            _us("A572-60", 80, (1.25, 60, 75)),
            _us("A588", 70, (4.0, 50, 70), (5.0, 46, 67), (8.0, 42, 63)),
            _us("A992", 70, (inf, 50, 65)),
            _us("A500-B", 70, (1.0, 46, 58)),
            _us("A500-B-round", 70, (1.0, 42, 58)),
            _us("A500-C", 70, (1.0, 50, 62)),
            _us("A500-C-round", 70, (1.0, 46, 62)),
            _en("S235JR", 0.80, 360, (16, 235), (40, 225), (63, 215), (100, 215)),
            _en("S275JR", 0.85, 410, (16, 275), (40, 265), (63, 255), (80, 245), (100, 235)),
            _en("S355J2", 0.90, 470, (16, 355), (40, 345), (63, 335), (80, 325), (100, 315)),
        )
    }
)
"""Steels by grade.

Source: ASTM grades as AISC Manual Tables 2-4 and 2-5 list them, from memory; A500 by copies of its
table of strengths, round and shaped (square, rectangular) apart: A500-B and -C without a word are
shaped. EN 10025-2 Table 7, from memory: the least of its tensile range, from 3 mm, which is under
EN 1993-1-1 Table 3.1. βw: EN 1993-1-8:2005 Table 4.1. Matching filler: AWS D1.1:2020 Table 5.4, the
stronger where two match, from memory.
"""

ROUND_OF: Mapping[str, str] = MappingProxyType({"A500-B": "A500-B-round", "A500-C": "A500-C-round"})
"""Grades of shaped tube, to the same grade as round tube, which is weaker."""

LEVEL_PA = 10 * _KSI
"""One strength level of filler. Source: AWS D1.1:2020 Table 5.4: 60, 70, 80 ksi and so on."""


def _plain(name: str) -> str:
    """A grade's name as it is compared: letters and figures only, without the word grade."""
    letters = "".join(c for c in name.upper() if c.isalnum())
    return letters.replace("GRADE", "").replace("GR", "")


def strength_of(name: str) -> SteelStrength:
    """Return a steel's strength by its grade.

    Args:
        name: Such as ``A36``, ``a572-50``, ``A572 Gr 50``, ``S355J2`` [-].

    Raises:
        UnknownEntryError: If the grade is not in the table.
    """
    wanted = _plain(name)
    for grade, steel in STRENGTHS.items():
        if _plain(grade) == wanted:
            return steel
    if wanted == "UNKNOWN":
        raise UnknownEntryError(
            "Steel without papers has no strength to count on: find them, or have it tested."
        )
    raise UnknownEntryError(
        f"{quoted(name)} has no strength in the table; it has {', '.join(STRENGTHS)}"
    )
