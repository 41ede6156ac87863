"""The angles of the torch at each bead."""

from __future__ import annotations

from math import atan2, cos, degrees, radians, sin

from beadwright.job.job import Job
from beadwright.joint.joints import TEE_GROOVES
from beadwright.layers.frame import Frame
from beadwright.passes.pass_layout import Slot

TILT_DEG = 15.0
"""Lean of the torch at the edges of a layer, into the corner the bead is laid in [°].
Common practice, 10 to 20."""


def torch_of(job: Job, frame: Frame, slot: Slot) -> tuple[float, float]:
    """Return the direction of the torch from the picture's right, and its work angle [°].

    It is square to the face over the middle of a layer and leans at the edges, so that the
    wire points into the corner the bead is laid in. The work angle is taken from the horizontal
    plate for fillets and tees, whichever side the torch is on, and from the plate's surface for
    butts and holes.

    Args:
        job: The job [-].
        frame: The side it is laid from [-].
        slot: The bead's place [-].
    """
    tilt = radians(-slot.across * TILT_DEG)
    if slot.of == 1:
        tilt = 0.0
    x = frame.out[0] * cos(tilt) + frame.along[0] * sin(tilt)
    y = frame.out[1] * cos(tilt) + frame.along[1] * sin(tilt)
    torch = degrees(atan2(y, x))
    if job.is_fillet or job.joint in TEE_GROOVES:
        return torch, 180.0 - torch if torch > 90.0 else torch
    return torch, 90.0 - abs(degrees(tilt))
