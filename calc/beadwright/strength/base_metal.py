"""Strength of the plates beside a weld, in shear and in pull, per length of weld."""

from __future__ import annotations

from math import hypot, sqrt

from beadwright.errors import require_positive
from beadwright.strength.resistance_aisc import SHEAR_SHARE, Basis, available

PHI_YIELD, OMEGA_YIELD = 1.00, 1.50
PHI_RUPTURE, OMEGA_RUPTURE = 0.75, 2.00
"""Factors of yielding and of rupture in shear. Source: AISC 360 J4.2, equations J4-3 and J4-4."""

PHI_PULL, OMEGA_PULL = 0.90, 1.67
"""Factors of yielding under pull; rupture has the factors of shear. Source: AISC 360 J4.1."""

GAMMA_M0 = 1.00
"""Partial factor of steel. Source: EN 1993-1-1, 6.1, recommended value."""


def yield_strength(thickness_m: float, yield_pa: float, basis: Basis) -> float:
    """Return the shear a plate takes per length before it yields [N/m].

    Source: AISC 360 J4.2(a): 0.60 Fy t, φ 1.00, Ω 1.50.

    Args:
        thickness_m: Thickness, above zero [m].
        yield_pa: Yield strength, above zero [Pa].
        basis: ``lrfd`` or ``asd`` [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(thickness_m=thickness_m, yield_pa=yield_pa)
    return available(SHEAR_SHARE * yield_pa * thickness_m, basis, PHI_YIELD, OMEGA_YIELD)


def rupture_strength(thickness_m: float, tensile_pa: float, basis: Basis) -> float:
    """Return the shear a plate takes per length before it tears [N/m].

    Source: AISC 360 J4.2(b): 0.60 Fu t, φ 0.75, Ω 2.00.

    Args:
        thickness_m: Thickness, above zero [m].
        tensile_pa: Tensile strength, above zero [Pa].
        basis: ``lrfd`` or ``asd`` [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(thickness_m=thickness_m, tensile_pa=tensile_pa)
    return available(SHEAR_SHARE * tensile_pa * thickness_m, basis, PHI_RUPTURE, OMEGA_RUPTURE)


def pull_yield_strength(thickness_m: float, yield_pa: float, basis: Basis) -> float:
    """Return the pull a plate takes per length before it yields [N/m].

    Source: AISC 360 J4.1(a): Fy t, φ 0.90, Ω 1.67.

    Args:
        thickness_m: Thickness, above zero [m].
        yield_pa: Yield strength, above zero [Pa].
        basis: ``lrfd`` or ``asd`` [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(thickness_m=thickness_m, yield_pa=yield_pa)
    return available(yield_pa * thickness_m, basis, PHI_PULL, OMEGA_PULL)


def pull_rupture_strength(thickness_m: float, tensile_pa: float, basis: Basis) -> float:
    """Return the pull a plate takes per length before it tears [N/m].

    Source: AISC 360 J4.1(b): Fu t, φ 0.75, Ω 2.00.

    Args:
        thickness_m: Thickness, above zero [m].
        tensile_pa: Tensile strength, above zero [Pa].
        basis: ``lrfd`` or ``asd`` [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(thickness_m=thickness_m, tensile_pa=tensile_pa)
    return available(tensile_pa * thickness_m, basis, PHI_RUPTURE, OMEGA_RUPTURE)


def together(pull: float, shear: float, pull_strength: float, shear_strength: float) -> float:
    """Return the share of a plate's strength that pull and shear use together [-].

    Source: circular interaction, common practice for plates; with strengths fy and fy/√3 it is
    the yield criterion of EN 1993-1-1, 6.2.1(5).

    Args:
        pull: Pull per length [N/m].
        shear: Shear per length [N/m].
        pull_strength: What it holds in pull alone, above zero [N/m].
        shear_strength: What it holds in shear alone, above zero [N/m].

    Raises:
        OutOfRangeError: If a strength is not above zero.
    """
    require_positive(pull_strength=pull_strength, shear_strength=shear_strength)
    return hypot(pull / pull_strength, shear / shear_strength)


def yield_strength_en(thickness_m: float, yield_pa: float) -> float:
    """Return the design shear a plate takes per length before it yields [N/m].

    Source: EN 1993-1-1, 6.2.6: fy / √3 / γM0 × t.

    Args:
        thickness_m: Thickness, above zero [m].
        yield_pa: Yield strength, above zero [Pa].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(thickness_m=thickness_m, yield_pa=yield_pa)
    return yield_pa / sqrt(3) / GAMMA_M0 * thickness_m


def pull_strength_en(thickness_m: float, yield_pa: float) -> float:
    """Return the design pull a plate takes per length before it yields [N/m].

    Source: EN 1993-1-1, 6.2.3: fy / γM0 × t.

    Args:
        thickness_m: Thickness, above zero [m].
        yield_pa: Yield strength, above zero [Pa].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(thickness_m=thickness_m, yield_pa=yield_pa)
    return yield_pa / GAMMA_M0 * thickness_m
