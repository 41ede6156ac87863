"""The part of a weld group that is full size, where its free ends are not."""

from __future__ import annotations

from math import hypot

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.strength.weld_group import XY, WeldGroup


def effective_weld(group: WeldGroup, throat_m: float) -> WeldGroup:
    """Return a weld group with a throat taken off each end where a bead starts or stops.

    Where stretches meet, the bead runs on and nothing is taken off; so nothing is off a weld all
    round. The group's length, centroid and moments are then those of the full-size part.

    Source: EN 1993-1-8:2005, 4.5.1(1): overall length less twice the throat, unless the weld is
    full size throughout, starts and stops included.

    Args:
        group: The weld group [-].
        throat_m: Throat a, above zero [m].

    Raises:
        OutOfRangeError: If the throat is not above zero, or a stretch is no longer than what its
            ends take off.
    """
    require_positive(throat_m=throat_m)
    if not group.free_ends:
        return group
    stretches = tuple(
        _cut(start, end, throat_m * free[0], throat_m * free[1])
        for (start, end), free in zip(group.stretches, group.free_tips, strict=True)
    )
    return WeldGroup(group.name, stretches)


def _cut(start: XY, end: XY, first: float, last: float) -> tuple[XY, XY]:
    dx, dy = end[0] - start[0], end[1] - start[1]
    length = hypot(dx, dy)
    if length <= first + last:
        raise OutOfRangeError(
            f"stretch of {length * 1000:.0f} mm is no longer than the {(first + last) * 1000:.0f} "
            "mm its ends lose"
        )
    a, b = first / length, 1 - last / length
    return (start[0] + a * dx, start[1] + a * dy), (start[0] + b * dx, start[1] + b * dy)
