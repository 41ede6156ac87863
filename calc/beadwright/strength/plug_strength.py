"""Strength of plug and slot welds: by the area they fill of the faying surface, in shear only."""

from __future__ import annotations

from dataclasses import replace

from beadwright.errors import require_positive
from beadwright.job.job import Job
from beadwright.joint.plug_slot import turn_length
from beadwright.strength.resistance_aisc import SHEAR_SHARE, Basis, available
from beadwright.strength.resistance_en import simplified_strength

HOLE_OVER_PLATE_M = 0.008
"""Least width of a hole over its plate's thickness [m]. Source: EN 1993-1-8, 4.3.5(2)."""

FULL_TO_M = 0.016
"""Plate up to which a hole is filled level [m]. Source: EN 1993-1-8, 4.3.5(4)."""


def faying_area(hole_m: float, slot_m: float | None = None) -> float:
    """Return the area of a plug or slot in the faying surface; a slot's ends are half circles [m²].

    Source: AISC 360-22 J2.3a: the section of the hole in the plane of the faying surface.

    Args:
        hole_m: Diameter of a plug, width of a slot, above zero [m].
        slot_m: Length of a slot end to end, at least its width; None for a plug [m].

    Raises:
        OutOfRangeError: If the hole is not above zero, or the slot shorter than wide.
    """
    return turn_length(hole_m, slot_m) * hole_m / 2


def plug_shear(area_m2: float, filler_pa: float, basis: Basis) -> float:
    """Return the shear a plug or slot takes [N].

    Source: AISC 360-22 J2.3a and Table J2.5: 0.60 FEXX on the faying surface, φ 0.75, Ω 2.00.

    Args:
        area_m2: Faying area, above zero [m²].
        filler_pa: Tensile strength of the filler, above zero [Pa].
        basis: ``lrfd`` or ``asd`` [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(area_m2=area_m2, filler_pa=filler_pa)
    return available(SHEAR_SHARE * filler_pa * area_m2, basis)


def plug_shear_en(area_m2: float, tensile_pa: float, correlation: float) -> float:
    """Return the design shear a plug or slot takes [N].

    Source: EN 1993-1-8, 4.8: fvw,d × Aw, the area of the hole; fvw,d by 4.5.3.3.

    Args:
        area_m2: Area of the hole, above zero [m²].
        tensile_pa: Tensile strength of the weaker part, above zero [Pa].
        correlation: βw, 0.8 to 1 [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    return simplified_strength(area_m2, tensile_pa, correlation)


def least_hole_en(plate_m: float) -> float:
    """Return the least diameter of a plug's hole, or width of a slot [m].

    Source: EN 1993-1-8, 4.3.5(2): 8 mm more than the part with the hole is thick.

    Args:
        plate_m: Thickness of the part with the hole, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(plate_m=plate_m)
    return plate_m + HOLE_OVER_PLATE_M


def least_fill_en(plate_m: float) -> float:
    """Return how deep a hole must be filled [m].

    Source: EN 1993-1-8, 4.3.5(4): to 16 mm full; over it half the thickness, at least 16 mm.

    Args:
        plate_m: Thickness of the part with the hole, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(plate_m=plate_m)
    return plate_m if plate_m <= FULL_TO_M else max(plate_m / 2, FULL_TO_M)


def least_spacing(hole_m: float, slot_m: float | None = None) -> tuple[float, float]:
    """Return the least distance center to center: side by side, and end to end [m].

    Source: AISC 360 J2.3b, from memory: plugs four diameters; slots four widths side by side and
    two lengths end to end.

    Args:
        hole_m: Diameter of a plug, width of a slot, above zero [m].
        slot_m: Length of a slot, or None for a plug [m].

    Raises:
        OutOfRangeError: If a length is not above zero.
    """
    require_positive(hole_m=hole_m)
    beside = 4 * hole_m
    if slot_m is None:
        return beside, beside
    require_positive(slot_m=slot_m)
    return beside, 2 * slot_m


def hole_by_en(job: Job) -> Job:
    """Return a plug or slot, its hole and fill the least that EN asks where they are blank.

    Source: ``least_hole_en``, ``least_fill_en``.

    Args:
        job: A plug or slot [-].
    """
    edges, top = job.edges, job.plate2_m
    hole = least_hole_en(top) if edges.hole_m is None else edges.hole_m
    fill = least_fill_en(top) if edges.depth_m is None else edges.depth_m
    return replace(job, edges=replace(edges, hole_m=hole, depth_m=fill))
