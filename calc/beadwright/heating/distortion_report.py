"""What the weld does to its part, as a report."""

from __future__ import annotations

from beadwright.heating.distortion import Distortion
from beadwright.heating.distortion_query import PartDistortion
from beadwright.reports import Tree


def distortion_report(found: PartDistortion) -> Tree:
    """Return each way to weld the job with what it does to the part.

    Args:
        found: The answer [-].
    """
    return {"ways": [_way(way) for way in found.ways], "notes": found.notes}


def _way(way: Distortion) -> Tree:
    numbers = {
        name: {"**": q, "low_by": q.low_by or "", "high_by": q.high_by or ""}
        for name, q in way.named().items()
    }
    return {"key": way.key, "name": way.name, **numbers}
