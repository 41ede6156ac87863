"""The steel a query asks for: a grade's usual or worst melt, or a certificate."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.heating.carbon_equivalent import equivalent, worst_melt
from beadwright.heating.steels import Composition, Limits, Steel
from beadwright.phrases import Phrase, say
from beadwright.units import System

Melt = Literal["typical", "limit", "certificate"]

PRINTED = 0.005
"""A carbon equivalent is printed to two places: it is over a cap from this much on [% by mass]."""


@dataclass(frozen=True, slots=True)
class ChosenSteel:
    """The steel as asked.

    Attributes:
        grade: Its grade, or None where it is not known.
        composition: The analysis used, or None without one.
        limits: What the grade allows at the thickness; None without a grade.
        worst: The worst melt the grade allows, by CET, if a usual melt is used; else None.
        melt: Which analysis it is.
        off_grade: Why a certificate is not of its grade, or None.
        too_thick: True if the grade is not made so thick.
    """

    grade: Steel | None
    composition: Composition | None
    limits: Limits | None
    worst: Composition | None
    melt: Melt
    off_grade: Phrase | None = None
    too_thick: bool = False

    @property
    def name(self) -> str:
        """Its name."""
        return self.grade.name if self.grade else "Steel not known"


@dataclass(frozen=True, slots=True)
class AskedSteel:
    """What was written of the steel.

    Attributes:
        grade: The grade, or None where it is not known.
        grade_written: True if it was written, not a default.
        melt: Without a certificate: the usual melt, or the worst allowed.
        shares: What the certificate prints, by element [-].
    """

    grade: Steel | None
    grade_written: bool
    melt: Literal["typical", "limit"]
    shares: dict[str, float]


def chosen_steel(asked: AskedSteel, thickness_m: float, system: System) -> ChosenSteel:
    """Return the steel asked for: a certificate before the grade's melt.

    Source: the grade's limits at the thickness, ``steels.STEELS``.

    Args:
        asked: What was written [-].
        thickness_m: Thickest part, above zero [m].
        system: Whose edition of the limits [-].

    Raises:
        FieldErrors: If the certificate lacks C or Mn, or adds up to more than 100 %.
    """
    grade = asked.grade
    shares = {key: round(share * 100, 9) for key, share in asked.shares.items()}
    if shares and not asked.grade_written:
        grade = None  # a certificate alone means no grade, so no grade is assumed
    limits = None if grade is None else grade.limits_at(thickness_m, system)
    thick = limits is not None and thickness_m > limits.through(system) + 1e-9
    if not shares:
        if grade is None or limits is None:
            return ChosenSteel(None, None, None, None, "certificate")
        worst = worst_melt(limits, "cet")
        if asked.melt == "limit":
            return ChosenSteel(grade, worst, limits, None, "limit", too_thick=thick)
        return ChosenSteel(grade, grade.typical, limits, worst, "typical", too_thick=thick)
    composition = _certificate(shares)
    off = None if grade is None or limits is None else _off_grade(grade.name, composition, limits)
    return ChosenSteel(grade, composition, limits, None, "certificate", off, thick)


def _certificate(shares: dict[str, float]) -> Composition:
    missing = [key for key in ("c", "mn") if key not in shares]
    if missing:
        text = "Write C and Mn both: every certificate prints them, every method needs them."
        raise FieldErrors({key: [text] for key in missing})
    try:
        return Composition(**shares)
    except OutOfRangeError as error:
        most = max(shares, key=lambda key: shares[key])
        raise FieldErrors({most: [f"Check the certificate: {error}."]}) from error


def _off_grade(name: str, analysis: Composition, limits: Limits) -> Phrase | None:
    """Why an analysis is not of the grade, by its carbon and its carbon equivalent.

    The two preheat hangs on. Manganese is left aside: standards let it rise as carbon falls.
    """
    if analysis.c > limits.most.c + 1e-9:
        return say("heating.off-grade-carbon", steel=name, share=analysis.c, most=limits.most.c)
    ce, cap = equivalent(analysis, "ce"), limits.ce_cap
    if cap is not None and ce >= cap + PRINTED:
        return say("heating.off-grade-ce", steel=name, ce=ce, most=cap)
    return None
