"""Welds from one side only: which loads open them at the root."""

from __future__ import annotations

from typing import Literal

from beadwright.job.preparations import groove_of
from beadwright.strength.elastic_line import LineForce
from beadwright.strength.strength_task import StrengthTask
from beadwright.strength.weld_group import WeldGroup

RootLoad = Literal["pulled", "lap", "across", "unknown"]
"""Pulled off the joint; a lap pulled across its only weld; pushed sideways; not said which way."""

_NOTHING = 1e-6
"""Share of a load under which a part of it counts as none [-]."""


def is_one_line(group: WeldGroup) -> bool:
    """Return whether a group is one straight line of weld, in one piece or several.

    Args:
        group: The weld group [-].
    """
    if group.way is None:
        return False
    way_x, way_y = group.way
    aside = [x * way_y - y * way_x for stretch in group.stretches for x, y in stretch]
    return max(aside) - min(aside) <= _NOTHING * group.length_m


def opens_at_root(task: StrengthTask) -> bool:
    """Return whether a part hangs on one line of weld, laid from one side and not through.

    Source: EN 1993-1-8, 4.12, single fillets and single-sided partial-penetration butt welds.

    Args:
        task: What is asked [-].
    """
    job = task.job
    if task.sides != 1 or job.is_round or not is_one_line(task.group):
        return False
    if job.is_fillet:
        return True
    return not (job.closed_corner or job.is_double or groove_of(job).complete)


def root_load(task: StrengthTask, forces: tuple[LineForce, ...]) -> RootLoad | None:
    """Return how a weld from one side is loaded at its root; None if nothing opens it.

    Source: EN 1993-1-8, 4.12(2): a moment about the weld's length, or a pull square to it, that
    brings tension to the root.

    Args:
        task: What is asked [-].
        forces: Force per length along the weld [-].
    """
    if not opens_at_root(task):
        return None
    if task.per_length_n_m is not None:
        return "unknown"
    size = max(force.total for force in forces)
    if max(force.fz for force in forces) > _NOTHING * size:
        return "pulled"
    if max(abs(force.across) for force in forces) > _NOTHING * size:
        return "lap" if task.job.joint == "lap" else "across"
    return None
