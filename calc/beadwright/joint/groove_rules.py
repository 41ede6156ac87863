"""Code rules for partial-penetration grooves, fillets on them, plugs and slots."""

from __future__ import annotations

from collections.abc import Mapping
from math import ceil
from types import MappingProxyType

from beadwright.errors import require_positive
from beadwright.measures import INCH_M
from beadwright.tolerance import REL_TOL, figure_up_to
from beadwright.units import System

MINIMUM_THROAT_M = (
    (1 / 4 * INCH_M, 1 / 8 * INCH_M),
    (1 / 2 * INCH_M, 3 / 16 * INCH_M),
    (3 / 4 * INCH_M, 1 / 4 * INCH_M),
    (3 / 2 * INCH_M, 5 / 16 * INCH_M),
    (9 / 4 * INCH_M, 3 / 8 * INCH_M),
    (6 * INCH_M, 1 / 2 * INCH_M),
    (float("inf"), 5 / 8 * INCH_M),
)
"""Thinner part up to [m], least effective throat of a partial-penetration groove [m].

Source: AISC 360 Table J2.3.
"""

LOST_M = 1 / 8 * INCH_M
"""Depth that a narrow bevel loses out of position [m]. Source: AISC 360 Table J2.1."""

FULL_FILL_M = 5 / 8 * INCH_M
"""Plate up to which a hole is filled level with its surface [m]. Source: AISC 360 J2.3b."""


STRUCTURAL_FROM_M: Mapping[System, float] = MappingProxyType({"us": INCH_M / 8, "si": 0.003})
"""Thinnest plate of AWS D1.1, in inches and in millimeters; thinner is sheet, and another code's
[m]. Source: AWS D1.1:2020, scope, from memory."""

REINFORCEMENT_M = (
    (1.0 * INCH_M, 1 / 8 * INCH_M),
    (2.0 * INCH_M, 3 / 16 * INCH_M),
    (float("inf"), 1 / 4 * INCH_M),
)
"""Thickness up to [m], most reinforcement of a groove [m]. Source: AWS D1.1:2020 Table 7.9,
schedule A (from memory)."""


def minimum_throat(thinner_m: float) -> float:
    """Return the least effective throat of a partial-penetration groove [m].

    Source: AISC 360 Table J2.3.

    Args:
        thinner_m: Thickness of the thinner part, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thinner_m=thinner_m)
    return figure_up_to(MINIMUM_THROAT_M, thinner_m)


def lost_depth(angle_deg: float, out_of_position: bool) -> float:
    """Return the depth of the groove less the effective throat [m].

    Source: AISC 360 Table J2.1, gas metal arc: from 60° nothing; 45° bevel nothing flat and
    horizontal, 1/8 in vertical and overhead. Under 45° the table is silent; 1/8 in is taken
    off in any position (common practice).

    Args:
        angle_deg: Groove angle, above zero [°].
        out_of_position: True for vertical and overhead [-].

    Raises:
        OutOfRangeError: If the angle is not above zero.
    """
    require_positive(angle_deg=angle_deg)
    if angle_deg >= 60 - REL_TOL:
        return 0.0
    return LOST_M if out_of_position or angle_deg < 45 - REL_TOL else 0.0


def fillet_on_groove(upright_m: float) -> float:
    """Return the leg of the fillet that covers a groove in a tee [m].

    Source: AWS D1.1, notes to the prequalified joints (second-hand): a quarter of the plate
    prepared; never more than 3/8 in is asked for.

    Args:
        upright_m: Thickness of the plate prepared, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(upright_m=upright_m)
    return min(upright_m / 4, 3 / 8 * INCH_M)


def least_hole(plate_m: float) -> float:
    """Return the least diameter of a plug's hole, or width of a slot [m].

    Source: AISC 360 J2.3b: thickness of the part with the hole plus 5/16 in, rounded up to the
    next odd 1/16 in (the rounding from memory).

    Args:
        plate_m: Thickness of the part with the hole, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(plate_m=plate_m)
    sixteenths = ceil((plate_m + 5 / 16 * INCH_M) / (INCH_M / 16) - 1e-6)
    return (sixteenths + (sixteenths + 1) % 2) * INCH_M / 16


def largest_hole(plate_m: float, fill_m: float) -> float:
    """Return the largest diameter of a plug's hole, or width of a slot [m].

    Source: AISC 360 J2.3b: the least plus 1/8 in, or 2¼ times the thickness of the weld,
    whichever is greater.

    Args:
        plate_m: Thickness of the part with the hole, above zero [m].
        fill_m: Thickness of the weld, above zero [m].

    Raises:
        OutOfRangeError: If a length is not above zero.
    """
    require_positive(fill_m=fill_m)
    return max(least_hole(plate_m) + 1 / 8 * INCH_M, 9 / 4 * fill_m)


def least_fill(plate_m: float) -> float:
    """Return how deep a hole must be filled [m].

    Source: AISC 360 J2.3b: to 5/8 in full; over it half the thickness, at least 5/8 in.

    Args:
        plate_m: Thickness of the part with the hole, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(plate_m=plate_m)
    return plate_m if plate_m <= FULL_FILL_M + REL_TOL else max(plate_m / 2, FULL_FILL_M)


def longest_slot(fill_m: float) -> float:
    """Return the longest slot [m].

    Source: AISC 360 J2.3b, from memory: ten times the thickness of the weld.

    Args:
        fill_m: Thickness of the weld, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(fill_m=fill_m)
    return 10 * fill_m


def reinforcement_allowed(thickness_m: float) -> float:
    """Return the most reinforcement of a groove's face [m].

    Source: ``REINFORCEMENT_M``.

    Args:
        thickness_m: Thickness of the thinner plate, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thickness_m=thickness_m)
    return figure_up_to(REINFORCEMENT_M, thickness_m)
