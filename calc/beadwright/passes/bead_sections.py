"""Section each bead is laid at: that of its place, or more where its arc lays more."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import inf

from beadwright.job.job import Job
from beadwright.joint.joints import JointShape
from beadwright.passes.pass_process import Process
from beadwright.setting.plan import least_bead
from beadwright.setting.size_limits import side_most_m2


@dataclass(frozen=True, slots=True)
class Cut:
    """What the layers leave one bead.

    Attributes:
        side: Side it is laid from, 1 or 2 [-].
        section_m2: Section of its place [m²].
        process: What it is laid with.
    """

    side: int
    section_m2: float
    process: Process


def laid_sections(job: Job, shape: JointShape, cuts: Sequence[Cut], *, grown: bool) -> list[float]:
    """Return the section each bead is laid at [m²].

    A bead is laid over the size of its place where its arc lays more at the fastest travel, as far
    as its side is still the joint asked for: its crown grows.

    Source: conservation of mass; ``size_limits.side_most_m2``, ``plan.least_bead``.

    Args:
        job: The job [-].
        shape: The joint to scale [-].
        cuts: Every bead, in welding order [-].
        grown: True if several beads of a side may grow; where their number is asked for, fewer
            would do [-].
    """
    sections = [cut.section_m2 for cut in cuts]
    for side in {cut.side for cut in cuts}:
        mine = [at for at, cut in enumerate(cuts) if cut.side == side]
        most = side_most_m2(job, shape, side)
        room = most - sum(sections[at] for at in mine)
        laid = {at: _least(cuts[at]) for at in mine}
        if len(mine) == 1:
            laid = {at: max(sections[at], min(least, most)) for at, least in laid.items()}
        elif not grown or sum(laid[at] - sections[at] for at in mine) > room:
            continue
        for at, section in laid.items():
            sections[at] = section
    return sections


def _least(cut: Cut) -> float:
    """Its section, or the least its arc lays; at a travel set by hand it stays."""
    if cut.process.travel_m_s is not None:
        return cut.section_m2
    return least_bead(cut.process.run(cut.section_m2), inf).section_m2
