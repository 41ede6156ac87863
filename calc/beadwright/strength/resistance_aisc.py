"""Strength of fillet welds by AISC 360 chapter J2: per length, by direction, long and short."""

from __future__ import annotations

from math import radians, sin
from typing import Literal

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.measures import PSI_PA

Basis = Literal["lrfd", "asd"]

PHI_WELD, OMEGA_WELD = 0.75, 2.00
"""Resistance factor and safety factor of fillet welds. Source: AISC 360 J2.4, Table J2.5."""

SHEAR_SHARE = 0.60
"""Shear strength of weld metal over its tensile strength. Source: AISC 360 Table J2.5."""

_KSI = float(1000 * PSI_PA)


def filler_strength(wire: str) -> float:
    """Return the classified tensile strength of a wire's weld metal, FEXX [Pa].

    Source: the class itself: the figures after the letters are ksi (AWS A5.18, A5.20, A5.28).

    Args:
        wire: AWS classification, such as ``ER70S-6``, ``E71T-1M``, ``ER80S-D2`` [-].

    Raises:
        OutOfRangeError: If the class does not say 70 to 120 ksi.
    """
    digits = "".join(
        c for c in wire.upper().removeprefix("ER").removeprefix("E")[:3] if c.isdigit()
    )
    tens = int(digits[:-1] or 0) * 10
    if digits[-1:] not in ("0", "1") or not 60 <= tens <= 120:
        raise OutOfRangeError(f"wire = {wire} does not say a strength of 60 to 120 ksi")
    return tens * _KSI


def direction_factor(angle_deg: float) -> float:
    """Return how much stronger a fillet is at an angle to the load [-].

    Source: AISC 360 J2.4, 1.0 + 0.50 sin^1.5 θ.

    Args:
        angle_deg: Between load and weld, 0 along it to 90 across [°].

    Raises:
        OutOfRangeError: If the angle is outside 0 to 90.
    """
    if not 0 <= angle_deg <= 90 + 1e-9:
        raise OutOfRangeError(f"angle_deg = {angle_deg} must be 0 to 90")
    return float(1 + 0.5 * sin(radians(min(angle_deg, 90.0))) ** 1.5)


def nominal_strength(throat_m: float, filler_pa: float, angle_deg: float = 0.0) -> float:
    """Return the nominal strength of a fillet per length [N/m].

    Source: AISC 360 J2.4: 0.60 FEXX (1 + 0.50 sin^1.5 θ) × effective throat.

    Args:
        throat_m: Effective throat, above zero [m].
        filler_pa: Tensile strength of the filler, above zero [Pa].
        angle_deg: Between load and weld; 0 takes no increase [°].

    Raises:
        OutOfRangeError: If an argument is out of its range.
    """
    require_positive(throat_m=throat_m, filler_pa=filler_pa)
    return SHEAR_SHARE * filler_pa * throat_m * direction_factor(angle_deg)


def available(
    nominal: float, basis: Basis, phi: float = PHI_WELD, omega: float = OMEGA_WELD
) -> float:
    """Return the strength the basis allows of a nominal one: φRn or Rn/Ω, same unit.

    Source: AISC 360 B3.1 and B3.2.

    Args:
        nominal: Nominal strength, zero or more [any].
        basis: ``lrfd`` for factored loads, ``asd`` for service loads [-].
        phi: Resistance factor [-].
        omega: Safety factor [-].
    """
    return nominal * phi if basis == "lrfd" else nominal / omega


def long_weld_factor(length_m: float, leg_m: float) -> float:
    """Return the effective over the actual length of an end-loaded fillet [-].

    Source: AISC 360 J2.2b(d): to 100 legs 1; over that 1.2 - 0.002 l/w, at most 1; over 300 legs
    the effective length is 180 legs.

    Args:
        length_m: Length, above zero [m].
        leg_m: Leg, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(length_m=length_m, leg_m=leg_m)
    slender = length_m / leg_m
    if slender > 300:
        return 180 / slender
    return min(1.0, 1.2 - 0.002 * slender)


def counted_leg(leg_m: float, length_m: float) -> float:
    """Return the effective leg of a short weld: at most a quarter of its length [m].

    Source: AISC 360 J2.2b(c).

    Args:
        leg_m: Leg, above zero [m].
        length_m: Length, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(leg_m=leg_m, length_m=length_m)
    return min(leg_m, length_m / 4)


def concentric_strength(along_n: float, across_n: float) -> float:
    """Return the strength of welds along and across a load through their centroid [N].

    Source: AISC 360 J2.4(c): the greater of the sum, and 0.85 of those along plus 1.5 of those
    across.

    Args:
        along_n: Nominal strength of the welds along the load, without increase; zero or more [N].
        across_n: The same of those across it [N].

    Raises:
        OutOfRangeError: If an argument is below zero.
    """
    if along_n < 0 or across_n < 0:
        raise OutOfRangeError("along_n and across_n must be zero or more")
    return max(along_n + across_n, 0.85 * along_n + 1.5 * across_n)
