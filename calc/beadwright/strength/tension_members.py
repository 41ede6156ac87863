"""Strength of a flat plate pulled through welds at its end: yielding, rupture, block shear."""

from __future__ import annotations

from math import radians, tan

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.strength.base_metal import (
    GAMMA_M0,
    OMEGA_PULL,
    OMEGA_RUPTURE,
    PHI_PULL,
    PHI_RUPTURE,
)
from beadwright.strength.resistance_aisc import SHEAR_SHARE, Basis, available
from beadwright.strength.resistance_en import GAMMA_M2

SPREAD_DEG = 30.0
"""How a pull spreads from the start of a weld into a wider plate, to each side [°].

Source: AISC Manual part 9, Whitmore section.
"""


def gross_yielding(area_m2: float, yield_pa: float, basis: Basis) -> float:
    """Return the pull at which a section yields all over [N].

    Source: AISC 360-22 D2(a) and J4.1(a): Fy Ag, φ 0.90, Ω 1.67.

    Args:
        area_m2: Gross section, above zero [m²].
        yield_pa: Yield strength, above zero [Pa].
        basis: ``lrfd`` or ``asd`` [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(area_m2=area_m2, yield_pa=yield_pa)
    return available(yield_pa * area_m2, basis, PHI_PULL, OMEGA_PULL)


def net_rupture(area_m2: float, tensile_pa: float, lag: float, basis: Basis) -> float:
    """Return the pull at which a section tears [N].

    Source: AISC 360-22 D2(b), D3 and J4.1(b): Fu An U, φ 0.75, Ω 2.00.

    Args:
        area_m2: Net section, above zero [m²].
        tensile_pa: Tensile strength, above zero [Pa].
        lag: Shear lag factor U, above zero to 1 [-].
        basis: ``lrfd`` or ``asd`` [-].

    Raises:
        OutOfRangeError: If an argument is out of its range.
    """
    require_positive(area_m2=area_m2, tensile_pa=tensile_pa, lag=lag)
    if lag > 1 + 1e-9:
        raise OutOfRangeError(f"lag = {lag} must be at most 1")
    return available(tensile_pa * area_m2 * lag, basis, PHI_RUPTURE, OMEGA_RUPTURE)


def lag_of_edge_welds(length_m: float, width_m: float, off_m: float) -> float:
    """Return the shear lag factor U of a plate welded along its edges only [-].

    Source: AISC 360-16 and -22 Table D3.1, case 4: 3l²/(3l² + w²) · (1 - x̄/l). Editions to -10
    gave 1, 0.87 and 0.75 from l ≥ 2w, 1.5w and w, and allowed no shorter welds.

    Args:
        length_m: Mean length of the welds along the pull, above zero [m].
        width_m: Width of the plate, above zero [m].
        off_m: Eccentricity x̄: from the faying face to the plate's middle, from zero to under the
            length [m].

    Raises:
        OutOfRangeError: If an argument is out of its range.
    """
    require_positive(width_m=width_m)
    square = 3 * length_m**2
    return square / (square + width_m**2) * lag_of_mixed_welds(length_m, off_m)


def lag_of_mixed_welds(length_m: float, off_m: float) -> float:
    """Return the shear lag factor U of a plate welded along and across the pull [-].

    Source: AISC 360-22 Table D3.1, case 2: 1 - x̄/l.

    Args:
        length_m: Length of the connection along the pull, above zero [m].
        off_m: Eccentricity x̄, from zero to under the length [m].

    Raises:
        OutOfRangeError: If an argument is out of its range.
    """
    require_positive(length_m=length_m)
    if not 0 <= off_m < length_m:
        raise OutOfRangeError(f"off_m = {off_m} must be 0 to under length_m = {length_m}")
    return 1 - off_m / length_m


def block_shear(
    shear_m2: float, tension_m2: float, yield_pa: float, tensile_pa: float, basis: Basis
) -> float:
    """Return the pull at which a block tears out of a plate along its welds [N].

    Nothing is drilled: net and gross sections are the same. The pull is even over the end: Ubs 1.

    Source: AISC 360-22 J4.3: 0.60 Fu Anv + Ubs Fu Ant ≤ 0.60 Fy Agv + Ubs Fu Ant, φ 0.75, Ω 2.00.

    Args:
        shear_m2: Section along the welds, above zero [m²].
        tension_m2: Section across the block's end, above zero [m²].
        yield_pa: Yield strength, above zero [Pa].
        tensile_pa: Tensile strength, above zero [Pa].
        basis: ``lrfd`` or ``asd`` [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(
        shear_m2=shear_m2, tension_m2=tension_m2, yield_pa=yield_pa, tensile_pa=tensile_pa
    )
    sheared = SHEAR_SHARE * min(yield_pa, tensile_pa) * shear_m2
    return available(sheared + tensile_pa * tension_m2, basis, PHI_RUPTURE, OMEGA_RUPTURE)


def spread_width(width_m: float, length_m: float) -> float:
    """Return the width of a wide plate that a weld group's pull reaches at its end [m].

    Source: AISC Manual part 9, Whitmore section: w + 2 l tan 30°.

    Args:
        width_m: Between the welds, zero or more [m].
        length_m: Of the welds along the pull, zero or more [m].

    Raises:
        OutOfRangeError: If an argument is below zero.
    """
    if width_m < 0 or length_m < 0:
        raise OutOfRangeError("width_m and length_m must be zero or more")
    return width_m + 2 * length_m * tan(radians(SPREAD_DEG))


def gross_yielding_en(area_m2: float, yield_pa: float) -> float:
    """Return the design pull at which a section yields all over [N].

    Source: EN 1993-1-1, 6.2.3: A fy / γM0. Without holes the net section is the gross one.

    Args:
        area_m2: Gross section, above zero [m²].
        yield_pa: Yield strength, above zero [Pa].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(area_m2=area_m2, yield_pa=yield_pa)
    return yield_pa * area_m2 / GAMMA_M0


def net_rupture_en(area_m2: float, tensile_pa: float) -> float:
    """Return the design pull at which a section with a hole in it tears [N].

    Source: EN 1993-1-1, 6.2.3(2)b: 0.9 Anet fu / γM2.

    Args:
        area_m2: Net section, above zero [m²].
        tensile_pa: Tensile strength, above zero [Pa].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(area_m2=area_m2, tensile_pa=tensile_pa)
    return 0.9 * tensile_pa * area_m2 / GAMMA_M2
