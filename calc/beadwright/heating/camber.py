"""How far a weld off the neutral axis bows a part."""

from __future__ import annotations

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.process.materials import Material

BLODGETT = 0.005
"""Camber over Aw·d·L²/I [-]. Source: Blodgett, Design of Weldments; from memory."""


def _require_offset(offset_m: float) -> None:
    if not 0 <= offset_m < float("inf"):
        raise OutOfRangeError(f"offset_m = {offset_m} must be zero or more")


def camber_by_section(
    section_m2: float, offset_m: float, length_m: float, inertia_m4: float
) -> float:
    """Return the bow of a part welded along its whole length, after Blodgett [m].

    Source: Design of Weldments: 0.005·Aw·d·L²/I; from memory.

    Args:
        section_m2: Section of weld metal, above zero [m²].
        offset_m: Weld to neutral axis, zero or more [m].
        length_m: Length of the part, above zero [m].
        inertia_m4: Moment of inertia of the part, above zero [m⁴].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(section_m2=section_m2, length_m=length_m, inertia_m4=inertia_m4)
    _require_offset(offset_m)
    return BLODGETT * section_m2 * offset_m * length_m**2 / inertia_m4


def camber_by_force(
    force_n: float, offset_m: float, length_m: float, inertia_m4: float, material: Material
) -> float:
    """Return the bow of a part welded along its whole length, from the force it shrinks with [m].

    Source: beam theory, constant moment: F·d·L²/(8·E·I), with the tendon force.

    Args:
        force_n: Force of the weld, above zero [N].
        offset_m: Weld to neutral axis, zero or more [m].
        length_m: Length of the part, above zero [m].
        inertia_m4: Moment of inertia of the part, above zero [m⁴].
        material: What the part is made of [-].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(force_n=force_n, length_m=length_m, inertia_m4=inertia_m4)
    _require_offset(offset_m)
    return force_n * offset_m * length_m**2 / (8 * material.modulus_pa * inertia_m4)


def bow_of_short_weld(weld_m: float, part_m: float) -> float:
    """Return the bow of a part welded only over its middle, over the bow of one welded whole [-].

    Source: beam theory: the part is bent along the weld and straight beyond it: a·(2L − a)/L².

    Args:
        weld_m: Length of weld, above zero to the part's [m].
        part_m: Length of the part, above zero [m].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(weld_m=weld_m, part_m=part_m)
    if weld_m > part_m * (1 + 1e-9):
        raise OutOfRangeError(f"weld_m = {weld_m} must be {part_m} (the part's length) or less")
    return weld_m * (2 * part_m - weld_m) / part_m**2
