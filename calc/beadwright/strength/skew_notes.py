"""What is said of a skewed tee: the leg to lay on each side, and what a sharp angle takes."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.phrases import Amount, say
from beadwright.results import Note
from beadwright.strength.leg_sizes import LegSizes
from beadwright.strength.skew_sides import MOST_EN_DEG, Z_LOSS_TO_DEG
from beadwright.strength.strength_check import both_sides
from beadwright.strength.strength_task import StrengthTask


def skew_notes(task: StrengthTask, legs: LegSizes) -> Iterator[Note]:
    """Yield the notes on a skewed tee's sides; nothing for a square one alike on both.

    Args:
        task: What was asked [-].
        legs: The legs that matter [-].
    """
    job, sides = task.job, both_sides(task, legs.judged)
    welded = (job.skew_deg,) if sides is None else tuple(side.angle_deg for side in sides)
    off = any(not Z_LOSS_TO_DEG <= angle <= MOST_EN_DEG for angle in welded)
    if task.european and off:
        yield Note("stop", say("strength.skew-en"), "en-1993-1-8-angle", "skew")
    if sides is None:
        return
    near, far = sides
    blank = task.far_leg_m is None and job.leg_m is not None
    shown = {
        "near": Amount(legs.to_weld, "leg"),
        "far": Amount(legs.to_weld_far or legs.to_weld, "leg"),
        "near_deg": Amount(near.angle_deg, "angle"),
        "far_deg": Amount(far.angle_deg, "angle"),
        "near_throat": Amount(near.throat_m, "length"),
        "far_throat": Amount(far.throat_m, "length"),
    }
    yield Note("note", say("strength.skew-sides", **shown), "skewed-tees", "far_leg")
    if blank and far.throat_m < near.throat_m * (1 - 1e-9):
        yield Note(
            "caution",
            say("strength.skew-far-blank", far_deg=shown["far_deg"], far=shown["far"],
                far_throat=shown["far_throat"]),
            "skewed-tees",
            "far_leg",
        )  # fmt: skip
    if task.european:
        return
    if far.lost_m is None:
        yield Note("stop", say("strength.skew-no-figure"), "aws-d1.1-z-loss", "position")
    elif far.lost_m:
        lost = Amount(far.lost_m, "leg")
        yield Note("note", say("strength.skew-loss", lost=lost), "aws-d1.1-z-loss", "skew")
