"""How far fillets lift the edges of the plate they lie on."""

from __future__ import annotations

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.measures import INCH_M

LIFT = 0.02
"""Lift of the edge over W·ω^1.3/t², lengths in inches [in^0.7].

Source: Blodgett, Design of Weldments: flange of width W under two fillets of leg ω; from memory.
"""

LEG_POWER = 1.3
"""Power of the leg in it [-]."""


SHEET_M = 1 / 8 * INCH_M
"""Thinner plate is sheet: its edges buckle in waves, which no form here gives [m].

Common practice: the codes for plate begin here too.
"""


def edge_lift(leg_m: float, thickness_m: float, width_m: float, fillets: int) -> float:
    """Return how far fillets lift either edge of the plate they lie on, free to move [m].

    Source: Blodgett, Design of Weldments: 0.02·W·ω^1.3/t², inches, of two fillets; from memory.
    One fillet is taken as half of it: it bends the plate along one line, not two, and half of that
    lifts each edge.

    Args:
        leg_m: Leg, above zero [m].
        thickness_m: The plate, above zero [m].
        width_m: Its width, the fillets at its middle; above zero [m].
        fillets: 1 or 2 [-].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(leg_m=leg_m, thickness_m=thickness_m, width_m=width_m)
    if fillets not in (1, 2):
        raise OutOfRangeError(f"fillets = {fillets} must be 1 or 2")
    leg, thickness, width = leg_m / INCH_M, thickness_m / INCH_M, width_m / INCH_M
    lift: float = LIFT * width * leg**LEG_POWER / thickness**2
    return lift * INCH_M * fillets / 2


def tilt(lift_m: float, width_m: float) -> float:
    """Return the angle by which each half of the plate turns [rad].

    Source: geometry, small angles: the lift over half the width.

    Args:
        lift_m: Lift of the edge, zero or more [m].
        width_m: Width of the plate, above zero [m].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(width_m=width_m)
    if not 0 <= lift_m < float("inf"):
        raise OutOfRangeError(f"lift_m = {lift_m} must be zero or more")
    return 2 * lift_m / width_m


def passes_factor(passes: int) -> float:
    """Return the lift of a fillet laid in equal passes over that of one pass [-].

    Source: derived from Blodgett's power of the leg: a pass of 1/n of the section has a leg of
    1/√n, and n of them add up to n^(1 − 1.3/2). The trade's rule says the same: fewer, larger
    passes turn a plate less.

    Args:
        passes: Passes, 1 or more [-].

    Raises:
        OutOfRangeError: If there is none.
    """
    if passes < 1:
        raise OutOfRangeError(f"passes = {passes} must be 1 or more")
    factor: float = passes ** (1 - LEG_POWER / 2)
    return factor
