"""Strength of fillet welds by EN 1993-1-8:2005, 4.5: simplified and directional methods."""

from __future__ import annotations

from math import sqrt

from beadwright.errors import OutOfRangeError, require_positive

GAMMA_M2 = 1.25
"""Partial factor of welds. Source: EN 1993-1-8:2005 Table 2.1, recommended value; a national annex
may say otherwise."""

LEAST_THROAT_M = 0.003
"""Least throat. Source: EN 1993-1-8:2005, 4.5.2(2)."""

LEAST_LENGTH_M = 0.030
"""Least effective length of a weld that carries load. Source: EN 1993-1-8:2005, 4.5.1(2): 30 mm or
six throats, whichever is more."""

MOST_LAP_THROATS = 450.0
"""Length, in throats, at which a long lap weld holds the most [-]. Derived from EN 1993-1-8:2005,
4.11(3): l (1.2 - 0.2 l/(150 a)) is greatest at 450 a; a longer weld holds less."""

THINNEST_M = 0.004
"""Least thickness of the parts joined: thinner is sheet, EN 1993-1-3. Source: EN 1993-1-8:2005,
4.1(1)."""


def simplified_strength(
    throat_m: float, tensile_pa: float, correlation: float, gamma: float = GAMMA_M2
) -> float:
    """Return the design strength per length, whatever the direction [N/m].

    Source: EN 1993-1-8:2005, 4.5.3.3: fu / (√3 βw γM2) × throat.

    Args:
        throat_m: Throat a, above zero [m].
        tensile_pa: Tensile strength of the weaker part joined, above zero [Pa].
        correlation: βw, 0.8 to 1 [-].
        gamma: γM2, above zero [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(throat_m=throat_m, tensile_pa=tensile_pa, correlation=correlation, gamma=gamma)
    return tensile_pa / (sqrt(3) * correlation * gamma) * throat_m


def directional_use(
    along_n_m: float,
    across_n_m: float,
    pull_n_m: float,
    throat_m: float,
    tensile_pa: float,
    correlation: float,
    gamma: float = GAMMA_M2,
) -> float:
    """Return the share of a weld's strength that three forces per length use, directional method.

    On the throat at 45° the forces across and pulling add up on one side of the joint and cancel on
    the other; the worse side counts.

    Source: EN 1993-1-8:2005, 4.5.3.2: √(σ⊥² + 3 τ⊥² + 3 τ∥²) ≤ fu/(βw γM2) and σ⊥ ≤ 0.9 fu/γM2.

    Args:
        along_n_m: Force along the weld [N/m].
        across_n_m: Force across it, in the plane of the part it stands on [N/m].
        pull_n_m: Force square to that plane [N/m].
        throat_m: Throat a, above zero [m].
        tensile_pa: Tensile strength of the weaker part joined, above zero [Pa].
        correlation: βw, 0.8 to 1 [-].
        gamma: γM2, above zero [-].

    Raises:
        OutOfRangeError: If throat, strength or a factor is not above zero.
    """
    require_positive(throat_m=throat_m, tensile_pa=tensile_pa, correlation=correlation, gamma=gamma)
    n, z = abs(across_n_m) / throat_m, abs(pull_n_m) / throat_m
    along = along_n_m / throat_m
    sum_, rest = (n + z) / sqrt(2), abs(n - z) / sqrt(2)
    whole = tensile_pa / (correlation * gamma)
    square = 0.9 * tensile_pa / gamma
    combined = sqrt(rest**2 + 3 * sum_**2 + 3 * along**2)
    return max(combined / whole, sum_ / square)


def effective_length(length_m: float, throat_m: float, *, ends_full: bool = False) -> float:
    """Return the effective length of a weld [m].

    Source: EN 1993-1-8:2005, 4.5.1(1): l - 2a, or the whole where the weld is full size to its
    ends; 4.5.1(2): see ``least_length_en``.

    Args:
        length_m: Length, above zero [m].
        throat_m: Throat a, above zero [m].
        ends_full: True if it is full size to its ends, starts and stops included.

    Raises:
        OutOfRangeError: If an argument is not above zero, or what is left may carry no load.
    """
    require_positive(length_m=length_m, throat_m=throat_m)
    left = length_m if ends_full else length_m - 2 * throat_m
    least = least_length_en(throat_m)
    if left < least - 1e-9:
        raise OutOfRangeError(
            f"length_m = {length_m * 1000:.0f} mm leaves {left * 1000:.0f} mm; a weld with throat "
            f"{throat_m * 1000:.1f} mm must keep {least * 1000:.0f} mm to carry load"
        )
    return left


def least_length_en(throat_m: float) -> float:
    """Return the least effective length that may carry load [m].

    Source: EN 1993-1-8:2005, 4.5.1(2): 30 mm or six throats, whichever is more.

    Args:
        throat_m: Throat a, above zero [m].

    Raises:
        OutOfRangeError: If the throat is not above zero.
    """
    require_positive(throat_m=throat_m)
    return max(LEAST_LENGTH_M, 6 * throat_m)


def long_weld_factor(length_m: float, throat_m: float) -> float:
    """Return the reduction of a long lap weld loaded along it [-].

    Source: EN 1993-1-8:2005, 4.11(3): over 150 throats, 1.2 - 0.2 l/(150 a), at most 1.

    Args:
        length_m: Length of the lap, above zero [m].
        throat_m: Throat a, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero, or the weld so long that nothing is left.
    """
    require_positive(length_m=length_m, throat_m=throat_m)
    factor = min(1.0, 1.2 - 0.2 * length_m / (150 * throat_m))
    if factor <= 0:
        raise OutOfRangeError(f"length_m = {length_m:.3f} is over 900 throats of {throat_m:.4f}")
    return factor
