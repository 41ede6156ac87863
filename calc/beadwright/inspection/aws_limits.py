"""What AWS D1.1 accepts of a finished weld: sizes, undercut, pores, reinforcement."""

from __future__ import annotations

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.measures import INCH_M
from beadwright.tolerance import REL_TOL

UNDERSIZE_M = (
    (5 / 16 * INCH_M, 1 / 8 * INCH_M),
    (0.006, 3 / 32 * INCH_M),
    (0.0, 1 / 16 * INCH_M),
)
"""From this leg [m], it may lack so much [m].

Source: AWS D1.1:2020 Table 8.1 (6): to 3/16 in (5 mm) 1/16 in, 1/4 in (6 mm) 3/32 in, from 5/16 in
(8 mm) 1/8 in (second-hand). Between two sizes the smaller one's counts.
"""

UNDERSIZE_SHARE = 0.10
"""Share of a weld's length that may lack it [-]. Source: AWS D1.1:2020 Table 8.1 (6)
(second-hand)."""

HEAVY_M = 1.0 * INCH_M
"""Thickness from which undercut is judged as of heavy plate [m]. Source: AWS D1.1:2020 Table 8.1
(7)(A) (second-hand)."""

DEEP_LENGTH_M = 2.0 * INCH_M
"""Length in any 12 in that undercut to 1/16 in may have on plate under 1 in [m]. Source: AWS
D1.1:2020 Table 8.1 (7)(A) (second-hand)."""

COUNTED_PORE_M = 1 / 32 * INCH_M
"""Smallest pore that is counted [m]. Source: AWS D1.1:2020 Table 8.1 (8)(A) (second-hand)."""

PORES_INCH_M, PORES_FOOT_M = 3 / 8 * INCH_M, 3 / 4 * INCH_M
"""Most that the diameters of pores add to, in any inch and in any 12 in of weld [m]. Source: AWS
D1.1:2020 Table 8.1 (8)(A) (second-hand)."""

CYCLIC_PORE_M = 3 / 32 * INCH_M
"""Largest pore under load that comes and goes [m]. Source: AWS D1.1:2020 Table 8.1 (8)(B)
(second-hand)."""

CYCLIC_PORES = 1
"""Pores in each 4 in of weld under load that comes and goes [-]. Source: AWS D1.1:2020 Table 8.1
(8)(B) (from memory)."""

WIDEST_GAP_M = 3 / 16 * INCH_M
"""Widest gap under a fillet on plate under 3 in [m]. Source: AWS D1.1 7.21.1 (second-hand)."""


def undersize_allowed(leg_m: float) -> float:
    """Return how much a leg may lack over a tenth of its weld's length [m].

    Source: ``UNDERSIZE_M``.

    Args:
        leg_m: Leg specified, above zero [m].

    Raises:
        OutOfRangeError: If the leg is not above zero.
    """
    require_positive(leg_m=leg_m)
    return next(less for size, less in UNDERSIZE_M if leg_m >= size - REL_TOL)


def undercut_allowed(
    thickness_m: float, length_m: float | None, *, cyclic: bool, across: bool
) -> float:
    """Return the deepest undercut accepted [m].

    Source: AWS D1.1:2020 Table 8.1 (7) (second-hand): steady load, under 1 in thick 1/32 in, or
    1/16 in over ``DEEP_LENGTH_M`` of any 12 in; from 1 in 1/16 in. Load that comes and goes: 0.01
    in across the pull in a primary member, else 1/32 in.

    Args:
        thickness_m: Thickness of the plate, above zero [m].
        length_m: Length of the undercut in the worst 12 in, zero or more; None: all along [m].
        cyclic: True if the load comes and goes [-].
        across: True if the weld lies across the pull in a primary member [-].

    Raises:
        OutOfRangeError: If the thickness is not above zero or the length is negative.
    """
    require_positive(thickness_m=thickness_m)
    if length_m is not None and not length_m >= 0:
        raise OutOfRangeError(f"length_m = {length_m} must be zero or more")
    if cyclic:
        return 0.01 * INCH_M if across else 1 / 32 * INCH_M
    if thickness_m >= HEAVY_M - REL_TOL:
        return 1 / 16 * INCH_M
    short = length_m is not None and length_m <= DEEP_LENGTH_M + REL_TOL
    return (1 / 16 if short else 1 / 32) * INCH_M
