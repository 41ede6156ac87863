"""The smallest leg that holds the load."""

from __future__ import annotations

from beadwright.errors import OutOfRangeError
from beadwright.joint.fillets import throat
from beadwright.measures import INCH_M
from beadwright.strength.strength_check import Spread, spread, weld_link
from beadwright.strength.strength_task import StrengthTask

SHOP_STEP_M = {"us": INCH_M / 16, "si": 0.001}
"""Legs go up by 1/16 in or by 1 mm."""

LARGEST_LEG_M = 0.0508
"""Largest leg looked for: over 2 in a groove weld is the better choice [m]. Common practice."""


def leg_needed(task: StrengthTask, found: Spread) -> float | None:
    """Return the smallest shop leg whose weld holds, or None if none to 2 in does [m].

    The plates do not ask for a leg; see ``plate_links``. Every leg is tried: of a long lap EN 1993
    counts nothing of a small leg and enough of a larger one, of a short weld the other way round.

    Args:
        task: What is asked [-].
        found: How the load spreads, no end taken off [-].
    """
    return next(
        (
            leg
            for leg in shop_legs(task)
            if (use := _use(task, found, leg)) is not None and use <= 1 + 1e-9
        ),
        None,
    )


def largest_counted(task: StrengthTask, found: Spread) -> float | None:
    """Return the largest shop leg to 2 in that may carry load in this weld at all, or None [m].

    Args:
        task: What is asked [-].
        found: How the load spreads, no end taken off [-].
    """
    legs = [leg for leg in shop_legs(task) if _use(task, found, leg) is not None]
    return legs[-1] if legs else None


def shop_legs(task: StrengthTask) -> tuple[float, ...]:
    """Return the legs of the shop to 2 in, from 1/8 in by sixteenths or from 3 mm by one [m].

    Args:
        task: What is asked [-].
    """
    step = SHOP_STEP_M[task.job.units]
    start = 2 if task.job.units == "us" else 3
    return tuple(count * step for count in range(start, int(LARGEST_LEG_M / step + 1e-9) + 1))


def _use(task: StrengthTask, found: Spread, leg: float) -> float | None:
    """How much of a leg is used, or None where the code lets it carry nothing."""
    try:
        if task.ends_lost:
            found = spread(task, throat(leg))
        return weld_link(task, found, leg).use
    except OutOfRangeError:
        return None
