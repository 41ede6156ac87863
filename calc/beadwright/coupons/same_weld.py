"""Whether two jobs weld the same joint, whatever they weld it with."""

from __future__ import annotations

from beadwright.job.job import Job

SIZE_APART = 0.03
"""How far plates, leg and gap may differ and still be the same size [-]; as the codes round."""


def same_weld(one: Job, other: Job) -> bool:
    """Return whether two jobs weld the same joint, in the same position, moved alike.

    Args:
        one: A job [-].
        other: Another [-].
    """
    named = ("joint", "position", "edges", "travel_by")
    if any(getattr(one, name) != getattr(other, name) for name in named):
        return False
    sized = ("plate_m", "plate2_m", "leg_m", "gap_m")
    return all(_alike(getattr(one, name), getattr(other, name)) for name in sized)


def _alike(one: float | None, other: float | None) -> bool:
    if one is None or other is None:
        return one is other
    return abs(one - other) <= SIZE_APART * max(abs(one), abs(other))
