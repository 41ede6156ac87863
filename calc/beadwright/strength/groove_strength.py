"""Strength of groove welds: through the plate as the plate, part way by their effective throat."""

from __future__ import annotations

from collections.abc import Iterable
from math import sqrt

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.strength.base_metal import OMEGA_RUPTURE, PHI_RUPTURE
from beadwright.strength.resistance_aisc import SHEAR_SHARE, Basis, available
from beadwright.strength.resistance_en import GAMMA_M2

PHI_NORMAL, OMEGA_NORMAL = 0.80, 1.88
"""Factors of a groove cut part way, pulled square to its length. Source: AISC 360-22 Table J2.5."""

UNSURE_M = 0.002
"""Depth of a groove cut part way that does not count, on each side welded [m].

Source: ENV 1993-1-1, 6.6.6.2, from memory: 2 mm less than the preparation, unless trials show that
more is reached. EN 1993-1-8, 4.7.2(2) counts what is consistently reached.
"""

SQUARE_EN_TO_M = 0.008
"""Thickest square edge that is prepared for gas metal arc, from both sides or on a backing [m].

Source: ISO 9692-1:2013, Tables 1 and 2, from memory.
"""


def groove_pull(throat_m: float, filler_pa: float, basis: Basis) -> float:
    """Return the pull square to its length that a groove cut part way takes, per length [N/m].

    A push is held to the same: what is not finished to bear has more, columns need none.

    Source: AISC 360-22 J2.4 and Table J2.5: 0.60 FEXX E, φ 0.80, Ω 1.88.

    Args:
        throat_m: Effective throat E, above zero [m].
        filler_pa: Tensile strength of the filler, above zero [Pa].
        basis: ``lrfd`` or ``asd`` [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(throat_m=throat_m, filler_pa=filler_pa)
    return available(SHEAR_SHARE * filler_pa * throat_m, basis, PHI_NORMAL, OMEGA_NORMAL)


def groove_shear(throat_m: float, filler_pa: float, basis: Basis) -> float:
    """Return the shear that a groove cut part way takes, per length [N/m].

    Source: AISC 360-22 J2.4 and Table J2.5: 0.60 FEXX E, φ 0.75, Ω 2.00.

    Args:
        throat_m: Effective throat E, above zero [m].
        filler_pa: Tensile strength of the filler, above zero [Pa].
        basis: ``lrfd`` or ``asd`` [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(throat_m=throat_m, filler_pa=filler_pa)
    return available(SHEAR_SHARE * filler_pa * throat_m, basis)


def plate_at_groove(throat_m: float, tensile_pa: float, basis: Basis) -> tuple[float, float]:
    """Return the pull and the shear that the plate takes over a groove's throat [N/m].

    Source: AISC 360-22 J4.1(b) and J4.2(b): Fu E and 0.60 Fu E, φ 0.75, Ω 2.00; the plate's section
    taken as the weld's, as in AISC Design Examples v16.0, J.2B.

    Args:
        throat_m: Effective throat E, above zero [m].
        tensile_pa: Tensile strength of the plate, above zero [Pa].
        basis: ``lrfd`` or ``asd`` [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(throat_m=throat_m, tensile_pa=tensile_pa)
    pull = available(tensile_pa * throat_m, basis, PHI_RUPTURE, OMEGA_RUPTURE)
    return pull, SHEAR_SHARE * pull


def groove_use_en(
    along_n_m: float,
    across_n_m: float,
    pull_n_m: float,
    throat_m: float,
    tensile_pa: float,
    correlation: float,
) -> float:
    """Return the share of a part-way groove's strength that three forces per length use [-].

    Its throat stands square to the pull: all of the pull is normal stress, the rest shear.

    Source: EN 1993-1-8, 4.7.2(1), by 4.5.3.2: √(σ⊥² + 3 τ⊥² + 3 τ∥²) ≤ fu/(βw γM2) and
    σ⊥ ≤ 0.9 fu/γM2.

    Args:
        along_n_m: Force along the weld [N/m].
        across_n_m: Force across it through the thickness [N/m].
        pull_n_m: Force square to the throat [N/m].
        throat_m: Throat a, above zero [m].
        tensile_pa: Tensile strength of the weaker part, above zero [Pa].
        correlation: βw, 0.8 to 1 [-].

    Raises:
        OutOfRangeError: If throat, strength or factor is not above zero.
    """
    require_positive(throat_m=throat_m, tensile_pa=tensile_pa, correlation=correlation)
    square = abs(pull_n_m) / throat_m
    sheared = (along_n_m / throat_m) ** 2 + (across_n_m / throat_m) ** 2
    whole = sqrt(square**2 + 3 * sheared) / (tensile_pa / (correlation * GAMMA_M2))
    return max(whole, square / (0.9 * tensile_pa / GAMMA_M2))


def sure_depth(depths_m: Iterable[float]) -> float:
    """Return the throat of a groove cut part way, all sides welded together [m].

    Source: ENV 1993-1-1, 6.6.6.2, from memory: the depths prepared, each less 2 mm.

    Args:
        depths_m: Depth prepared on each side, zero or more [m].

    Raises:
        OutOfRangeError: If a depth is below zero.
    """
    depths = tuple(depths_m)
    if any(depth < 0 for depth in depths):
        raise OutOfRangeError(f"depths_m = {depths} must be zero or more")
    return sum(max(0.0, depth - UNSURE_M) for depth in depths)
