"""The joint of a job, to scale: what a blank entry means, and the shape it makes."""

from __future__ import annotations

from beadwright.fillets import gapped_leg, minimum_leg, usual_convexity
from beadwright.job import Job
from beadwright.fillet_joints import fillet_joint
from beadwright.groove_joints import square_joint
from beadwright.joints import JointShape

_IN = 0.0254

SQUARE_GAP_FROM_M = 1 / 16 * _IN
SQUARE_MOST_GAP_M = 1 / 8 * _IN
SQUARE_REINFORCEMENT_M = 1 / 16 * _IN


def joint_shape(job: Job) -> tuple[JointShape, float]:
    """Return the joint to scale and the leg asked for (zero for a groove) [m].

    Args:
        job: The job [-].
    """
    if job.joint == "square":
        gap = job.gap_m
        if gap is None:
            wide = job.thinner_m / 2 if job.thinner_m > SQUARE_GAP_FROM_M else 0.0
            gap = min(wide, SQUARE_MOST_GAP_M)
        crown = job.reinforcement_m
        if crown is None:
            crown = SQUARE_REINFORCEMENT_M
        return square_joint(job.plate_m, job.plate2_m, gap, crown), 0.0
    wanted = job.leg_m if job.leg_m is not None else minimum_leg(job.thinner_m)
    gap = job.gap_m or 0.0
    leg = gapped_leg(wanted, gap)
    crown = job.reinforcement_m if job.reinforcement_m is not None else usual_convexity(leg)
    shape = fillet_joint(job.joint, job.plate_m, job.plate2_m, leg, wanted, crown, gap)
    return shape, wanted
