"""The joint's entries of the form: what each is called on this joint, what a blank means."""

from __future__ import annotations

from collections.abc import Mapping

from beadwright import units
from beadwright.job.job import Job
from beadwright.job.job_joint import fill_m, hole_m, slot_m, told_leg, wanted_leg
from beadwright.job.preparations import groove_of
from beadwright.joint.groove_joints import Groove
from beadwright.joint.joints import TEE_GROOVES, JointKind, JointShape
from beadwright.units import System
from beadwright_site.written import written

JOINT_NAMES: Mapping[JointKind, str] = {
    "tee": "Tee",
    "lap": "Lap",
    "corner": "Corner",
    "square": "Square butt",
    "v": "V groove",
    "double-v": "Double V",
    "bevel": "Bevel groove",
    "double-bevel": "Double bevel",
    "tee-bevel": "Beveled tee",
    "tee-double-bevel": "Tee beveled both sides",
    "plug": "Plug",
    "slot": "Slot",
}
"""What each joint is called."""

_ON_JOINT: Mapping[tuple[str, JointKind], str] = {
    ("plate2", "tee"): "Vertical plate",
    ("plate2", "tee-bevel"): "Vertical plate, beveled",
    ("plate2", "tee-double-bevel"): "Vertical plate, beveled",
    ("plate2", "lap"): "Upper plate",
    ("plate2", "plug"): "Plate with the hole",
    ("plate2", "slot"): "Plate with the slot",
    ("plate", "plug"): "Plate below",
    ("plate", "slot"): "Plate below",
    ("plate", "square"): "Plate",
    ("plate", "v"): "Plate",
    ("plate", "double-v"): "Plate",
    ("plate", "bevel"): "Plate, beveled",
    ("plate", "double-bevel"): "Plate, beveled",
    ("leg2", "lap"): "Leg on the edge",
    ("leg2", "corner"): "Leg on the edge",
    ("leg", "tee-bevel"): "Leg of the fillet on it",
    ("leg", "tee-double-bevel"): "Leg of the fillets on it",
    ("hole", "plug"): "Hole diameter",
    ("hole", "slot"): "Slot width",
    ("depth", "plug"): "Depth of fill",
    ("depth", "slot"): "Depth of fill",
    ("depth", "double-v"): "Depth, first side",
    ("depth", "double-bevel"): "Depth, first side",
    ("depth", "tee-double-bevel"): "Depth, first side",
    ("angle", "bevel"): "Bevel angle",
    ("angle", "double-bevel"): "Bevel angle",
    ("angle", "tee-bevel"): "Bevel angle",
    ("angle", "tee-double-bevel"): "Bevel angle",
}


def name_on(joint: JointKind, key: str, usual: str) -> str:
    """Return what an entry is called on a joint.

    Args:
        joint: The joint.
        key: Query key.
        usual: What it is called elsewhere.
    """
    return _ON_JOINT.get((key, joint), usual)


def joint_blanks(job: Job, shape: JointShape) -> dict[str, str]:
    """Return what a blank entry of the joint means for this job.

    Args:
        job: The job.
        shape: Its joint to scale.
    """
    words = {"skew": "square, 90°", "leg2": "the same", "pitch": "no space between"}
    crown = units.show(max(r.crown_m for r in shape.regions), "leg", job.units)
    words["reinforcement"] = f"the usual, {crown}"
    if job.is_round:
        long = slot_m(job)
        words["hole"] = f"the minimum, {written(hole_m(job), 'leg', job.units)}"
        words["depth"] = f"the minimum, {written(fill_m(job), 'leg', job.units)}"
        words["slot_length"] = written(long, "leg", job.units) if long else "slots only"
        return words
    if job.is_fillet:
        usual = written(told_leg(job), "leg", job.units)
        return words | {"leg": f"the usual, {usual}", "gap": "tight"}
    gap = written(shape.gap_m, "leg", job.units) if shape.gap_m else "none"
    words |= {"leg": "fillets only", "gap": gap}
    if job.joint == "corner":
        return words
    groove = groove_of(job)
    if job.joint in TEE_GROOVES:
        words["leg"] = f"covers the groove, {written(wanted_leg(job), 'leg', job.units)}"
    words |= {
        "angle": f"{groove.angle_deg:g}°",
        "root_face": written(shape.root_face_m, "leg", job.units) if shape.root_face_m else "none",
        "depth": "through" if shape.complete else written(groove.depth_m, "leg", job.units),
        "depth2": written(groove.depth2_m, "leg", job.units),
        "gouge_depth": _gouged(groove, job.units),
    }
    return words


def _gouged(groove: Groove, system: System) -> str:
    """How deep a gouge goes where no depth is given."""
    if groove.gouge is None:
        return "no gouge"
    return written(groove.gouge.depth_m, "leg", system)
