"""The steel a query asks for: a grade's usual or worst melt, or a certificate."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.heating.carbon_equivalent import equivalent, worst_melt
from beadwright.heating.steels import SYMBOLS, Composition, Element, Limits, Steel
from beadwright.phrases import Phrase, say
from beadwright.units import System

Melt = Literal["typical", "limit", "certificate"]

ALLOYS: tuple[Element, ...] = ("cr", "mo", "v", "ni", "cu")
"""Elements besides C and Mn that CE(IIW) counts. Source: ``carbon_equivalent.FORMULAS``."""

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
        melt: Without a certificate: the usual melt, or the worst allowed.
        shares: What the certificate prints, by element [-].
    """

    grade: Steel | None
    melt: Literal["typical", "limit"]
    shares: dict[str, float]


def chosen_steel(asked: AskedSteel, thickness_m: float, system: System) -> ChosenSteel:
    """Return the steel asked for: a certificate before the grade's melt, held against its limits.

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
    off = None if grade is None or limits is None else _off_grade(grade, composition, limits)
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


def _off_grade(grade: Steel, analysis: Composition, limits: Limits) -> Phrase | None:
    """Why an analysis is not of the grade, by what preheat hangs on.

    Carbon, manganese and the cap on CE(IIW); without a cap each alloy the standard limits.
    """
    if analysis.c > limits.most.c + 1e-9:
        return _over(grade, "c", analysis, limits.most.c)
    most_mn, ce, cap = grade.most_mn(limits, analysis.c), equivalent(analysis, "ce"), limits.ce_cap
    if analysis.mn > most_mn + 1e-9:
        told, share = "heating.off-grade-manganese", analysis.mn
        return say(told, steel=grade.as_listed, share=share, most=most_mn)
    if cap is not None and ce >= cap + PRINTED:
        return say("heating.off-grade-ce", steel=grade.as_listed, ce=ce, most=cap)
    for element in () if cap is not None else ALLOYS:
        most = limits.most.share(element)
        if most and analysis.share(element) > most + 1e-9:
            return _over(grade, element, analysis, most)
    return None


def _over(grade: Steel, element: Element, analysis: Composition, most: float) -> Phrase:
    return say(
        "heating.off-grade-element",
        steel=grade.as_listed,
        element=SYMBOLS[element],
        share=analysis.share(element),
        most=most,
    )
