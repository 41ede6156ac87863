"""Heat input by the two conventions a procedure may use, and the limits of thin plate."""

from __future__ import annotations

from math import inf

from beadwright.errors import require_positive
from beadwright.measures import INCH_M
from beadwright.process.materials import Material

EN_EFFICIENCY = 0.8
"""Thermal efficiency k of MIG/MAG, all wires [-]. Source: EN 1011-1, Table 1 (8.7)."""


def heat_input(volts: float, current_a: float, travel_m_s: float) -> float:
    """Return the heat input without efficiency, as AWS and ASME count it [J/m].

    Source: ASME Section IX, QW-409.1(a): volts × amps × 60 / travel (in/min) = J/in.

    Args:
        volts: Arc volts, above zero [V].
        current_a: Current, above zero [A].
        travel_m_s: Travel, above zero [m/s].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(volts=volts, current_a=current_a, travel_m_s=travel_m_s)
    return volts * current_a / travel_m_s


def heat_input_en(volts: float, current_a: float, travel_m_s: float) -> float:
    """Return the heat input with EN's thermal efficiency, 0.8 for MIG/MAG [J/m].

    Source: EN 1011-1, 8.7: Q = k·U·I/v, k = 0.8.

    Args:
        volts: Arc volts, above zero [V].
        current_a: Current, above zero [A].
        travel_m_s: Travel, above zero [m/s].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    return EN_EFFICIENCY * heat_input(volts, current_a, travel_m_s)


def thickness_current(thickness_m: float) -> float:
    """Return the thumb-rule current for a thickness: 1 A for each 0.001 in [A].

    Source: power-source manual, rule of thumb for short-circuit work on sheet and thin plate.

    Valid for: sheet up to about 3/16 in; above that the process, not the plate, sets current.

    Args:
        thickness_m: Plate thickness, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thickness_m=thickness_m)
    return thickness_m / INCH_M * 1000


def burn_through_current(thickness_m: float, material: Material) -> float:
    """Return the current above which thin plate falls through [A].

    Source: the material's.

    Valid for: plate below the material's ``thin_m``; thicker plate sets no such limit.

    Args:
        thickness_m: Plate thickness, above zero [m].
        material: What the plate is made of [-].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    foot, slope = material.burn_through_a
    return foot + slope * thickness_current(thickness_m)


def heat_ceiling(thickness_m: float, material: Material) -> float:
    """Return the most heat input that thin plate bears; no limit on thicker plate [J/m].

    Source: the material's.

    Args:
        thickness_m: Plate thickness, above zero [m].
        material: What the plate is made of [-].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thickness_m=thickness_m)
    return material.burn_through_j_m2 * thickness_m if thickness_m < material.thin_m else inf


def fusion_current(thickness_m: float, material: Material) -> float:
    """Return the current below which the bead does not fuse to the plate [A].

    Source: the material's.

    Args:
        thickness_m: Plate thickness, above zero [m].
        material: What the plate is made of [-].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    return material.fusion_share * thickness_current(min(thickness_m, material.fusion_to_m))
