"""What is said where the heat leaves no room."""

from __future__ import annotations

from math import inf

from beadwright.job.job import Job
from beadwright.results import Note
from beadwright.setting.limits import Limit


def heat_fight(job: Job, limit: Limit) -> Note:
    """Return what to say of a heat limit that no feed and no number of passes keeps.

    Args:
        job: The job [-].
        limit: The limit, one of ``heat_limits`` [-].
    """
    hot = limit.high < inf
    if limit.key == "plate-heat":
        what = "a bead this size burns through this plate"
        field = "leg" if job.is_fillet else "gap"
    else:
        what = f"a bead this size puts in {limit.text}"
        field = "heat_max" if hot else "heat_min"
    if hot:
        then = "but lighter beads ask for more speed than you have. "
        then += "Ask for a smaller leg." if job.is_fillet else "Close the gap."
    else:
        then = "but a heavier bead is more than one pass takes. "
        then += "Ask for a larger leg, or a cooler procedure."
    return Note("stop", f"Two limits fight: {what}; {then}", limit.source, field)
