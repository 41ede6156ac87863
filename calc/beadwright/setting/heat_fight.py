"""The note where the heat leaves no room."""

from __future__ import annotations

from math import inf

from beadwright.job.job import Job
from beadwright.joint.joints import JointShape
from beadwright.layers.bead_limits import one_layer_deep
from beadwright.phrases import say
from beadwright.results import Note
from beadwright.setting.limits import Limit


def heat_fight(job: Job, shape: JointShape, limit: Limit) -> Note:
    """Return the note on a heat limit that no feed and no number of passes keeps.

    Args:
        job: The job [-].
        shape: Its joint to scale [-].
        limit: The limit, one of ``heat_limits`` [-].
    """
    if limit.high < inf:
        burns = limit.key == "plate-heat"
        if job.is_fillet:
            key = "setting.fight-burns-through-leg" if burns else "setting.fight-hot-leg"
        elif one_layer_deep(shape):
            key = "setting.fight-burns-through-root" if burns else "setting.fight-hot-root"
        else:
            key = "setting.fight-burns-through-gap" if burns else "setting.fight-hot-gap"
        field = "heat_max" if not burns else "leg" if job.is_fillet else "gap"
    else:
        key, field = "setting.fight-cold", "heat_min"
    told = say(key) if limit.key == "plate-heat" else say(key, heat=limit.why)
    return Note("stop", told, limit.source, field)
