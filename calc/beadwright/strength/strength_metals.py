"""The steels of both plates and the filler a check counts."""

from __future__ import annotations

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.strength.resistance_aisc import filler_strength
from beadwright.strength.steel_strength import STRENGTHS, SteelStrength
from beadwright.strength.strength_query import StrengthQuery
from beadwright.tolerance import REL_TOL
from beadwright.units import written


def plate_steels(query: StrengthQuery) -> tuple[SteelStrength, SteelStrength]:
    """Return the steel of the plate lying down and of the other.

    Args:
        query: The query as read [-].

    Raises:
        FieldErrors: If the code has no factor for a steel, or it is not made so thick.
    """
    other = "steel2" if query.member.steel2 else "steel"
    return _steel(query, "steel", "plate"), _steel(query, other, "plate2")


def counted_filler(query: StrengthQuery, steels: tuple[SteelStrength, SteelStrength]) -> float:
    """Return the tensile strength of the filler, typed or by its class [Pa].

    Source: EN 1993-1-8:2005, 4.2(2): no weaker than the steel; where two steels meet, the weaker.

    Args:
        query: The query as read [-].
        steels: The steels of both plates [-].

    Raises:
        FieldErrors: If it is weaker than the steel, where EN 1993-1-8 is the code.
    """
    job = query.job
    filler = query.filler_strength or filler_strength(job.wire.type.name)
    if not query.design_code.startswith("en"):
        return filler
    tensile, grade = min(
        (steel.at(thickness)[1], steel.grade)
        for steel, thickness in zip(steels, (job.plate_m, job.plate2_m), strict=True)
    )
    if filler < tensile * (1 - REL_TOL):
        text = (
            f"EN 1993-1-8, 4.2(2): filler must be as strong as the steel or stronger. "
            f"{written(filler, 'stress', job.units)} is under the "
            f"{written(tensile, 'stress', job.units)} of {grade}: take stronger filler."
        )
        key = "wire" if query.filler_strength is None else "filler_strength"
        raise FieldErrors({key: [text], "steel": [text]})
    return filler


def _steel(query: StrengthQuery, key: str, plate: str) -> SteelStrength:
    """The steel of a plate, typed under one key or the other, or the usual."""
    european = query.design_code.startswith("en")
    typed = query.member.steel2 if key == "steel2" else query.steel
    steel = typed or STRENGTHS["S235JR" if european else "A36"]
    if european and steel.correlation is None:
        grades = ", ".join(g for g, s in STRENGTHS.items() if s.correlation is not None)
        text = (
            f"EN 1993-1-8 has no correlation factor for {steel.grade}: take {grades}, "
            "or design by AISC (asd, lrfd)."
        )
        raise FieldErrors({key: [text], "design_code": [text]})
    try:
        steel.at(query.job.plate_m if plate == "plate" else query.job.plate2_m)
    except OutOfRangeError as error:
        raise FieldErrors({plate: [str(error)], key: [str(error)]}) from error
    return steel
