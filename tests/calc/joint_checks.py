"""Adapters between printed joint geometry and code sizes, and the core.

Factors are typed here, not taken from ``beadwright.units``. Standard library and beadwright only.
"""

from __future__ import annotations

from beadwright.job import preparations
from beadwright.job.job_joint import (
    corner_room,
    effective_depth,
    fill_m,
    hole_limits,
    hole_m,
    joint_shape,
    slot_m,
    wanted_leg,
    weld_way,
)
from beadwright.job.job_query import read_query
from beadwright.job.preparations import Case
from beadwright.job.weld_symbol import Mark, weld_symbol
from beadwright.joint import (
    fillet_joints,
    fillets,
    groove_rules,
    joint_entries,
    joints,
    plug_slot,
    tee_grooves,
)
from beadwright.joint.closed_corner import closed_corner_joint
from beadwright.joint.groove_joints import Groove, groove_joint
from beadwright.joint.joints import JointKind, JointShape

INCH = 0.0254
TABLE_LB_IN3 = 0.283
"""Density the weld-metal weight tables state [lb/in³]."""


def inches(text: str) -> float:
    """Return a size printed in inches: 3/8, 1-1/4, 0.25 [m]."""
    whole, _, fraction = text.rpartition("-") if "/" in text else ("", "", "")
    if not fraction:
        return float(text) * INCH
    top, below = fraction.split("/")
    return (float(whole or 0) + float(top) / float(below)) * INCH


def _shape(query: str) -> JointShape:
    return joint_shape(read_query(query).job)[0]


# Skewed and unequal fillets


def skew_leg_ratio(skew_deg: float) -> float:
    """Gauge leg over the leg of the square tee with the same throat."""
    along = fillet_joints.skew_leg(0.01, skew_deg)
    # Cut: the phone's C library may end a sine elsewhere.
    return float(f"{fillet_joints.gauge_leg(along, skew_deg) / 0.01:.9g}")


def skew_along_ratio(skew_deg: float) -> float:
    return fillet_joints.skew_leg(0.01, skew_deg) / 0.01


def gauge_ratio(skew_deg: float) -> float:
    return fillet_joints.gauge_leg(0.01, skew_deg) / 0.01


def throat_in(leg_in: str, leg2_in: str, skew_deg: float) -> float:
    return fillet_joints.fillet_throat(inches(leg_in), inches(leg2_in), skew_deg) / INCH


def face_in(leg_in: str, leg2_in: str, skew_deg: float) -> float:
    return fillet_joints.fillet_face(inches(leg_in), inches(leg2_in), skew_deg) / INCH


def skewed_section_over_throat2(skew_deg: float) -> float:
    along = fillet_joints.skew_leg(0.01, skew_deg)
    shape = fillet_joints.fillet_joint("tee", 0.01, 0.01, along, along, 0.0, skew_deg=skew_deg)
    return shape.section_m2 / shape.throat_m**2


# Grooves


def groove_lb_ft(
    kind: JointKind, plate_in: str, angle_deg: float, gap_in: str, root_face_in: str = "0"
) -> float:
    plate, face = inches(plate_in), inches(root_face_in)
    double = kind in joints.DOUBLES
    depth = (plate - face) / 2 if double else plate - face
    groove = Groove(kind, angle_deg, inches(gap_in), depth, depth if double else 0.0)
    section = groove_joint(groove, plate, plate, 0.0).section_m2
    return section / INCH**2 * 12 * TABLE_LB_IN3


def groove_in2(query: str) -> float:
    return _shape(query).section_m2 / INCH**2


def crown_in2(query: str) -> float:
    return _shape(query).crown_m2 / INCH**2


def crown_room_in2(query: str, most_in: str) -> float:
    return _shape(query).crown_room_m2(inches(most_in)) / INCH**2


def face_width_in(query: str) -> float:
    return _shape(query).regions[0].face_m / INCH


def throat_of_in(query: str) -> float:
    return _shape(query).throat_m / INCH


def root_face_in(query: str) -> float:
    return _shape(query).root_face_m / INCH


def gap_in(query: str) -> float:
    return _shape(query).gap_m / INCH


def leg_in(query: str) -> float:
    return wanted_leg(read_query(query).job) / INCH


def asked_leg_in(query: str) -> float:
    """The leg a joint is drawn for; none without a fillet."""
    return joint_shape(read_query(query).job)[1] / INCH


def corner_room_in(query: str) -> float:
    return corner_room(read_query(query).job) / INCH


def effective_depth_in(query: str) -> float:
    return effective_depth(read_query(query).job) / INCH


def detail(joint: JointKind, case: Case) -> str:
    found = preparations.DETAILS[joint, case]
    face = "any" if found.most_face_m == float("inf") else f"{found.most_face_m / INCH:g}"
    return f"{found.name} {found.angle_deg:g} {found.gap_m / INCH:g} {face}"


def detail_root_face_in(joint: JointKind, case: Case) -> float:
    """Root face taken where none is given."""
    return preparations.DETAILS[joint, case].root_face_m / INCH


def detail_most_gap_in(joint: JointKind, case: Case) -> float:
    """Widest root opening detailed."""
    return preparations.DETAILS[joint, case].most_gap_m / INCH


def case(query: str) -> str:
    return preparations.case_of(read_query(query).job)


def detail_name(query: str) -> str:
    found = preparations.detail_of(read_query(query).job)
    return found.name if found is not None else "none"


def left_square_in(query: str) -> float:
    return (preparations.left_square_m(read_query(query).job) or 0.0) / INCH


def prepared_in(query: str) -> float:
    return preparations.prepared_m(read_query(query).job) / INCH


def square_gap_in(query: str) -> float:
    return preparations.square_gap(read_query(query).job) / INCH


def groove_angle_deg(query: str) -> float:
    return preparations.groove_of(read_query(query).job).angle_deg


def distance_in(root: list[float], right: list[float], left: list[float]) -> float:
    points = [(x * INCH, y * INCH) for x, y in (root, right, left)]
    return tee_grooves.distance_to_face(points[0], points[1], points[2]) / INCH


def closed_corner_in2(plate_in: str, gap_in: str, crown_in: str) -> float:
    plate = inches(plate_in)
    shape = closed_corner_joint(plate, plate, inches(gap_in), inches(crown_in))
    return shape.section_m2 / INCH**2


# What the codes ask


def minimum_throat_in(thinner_in: str) -> float:
    return groove_rules.minimum_throat(inches(thinner_in)) / INCH


def lost_depth_in(angle_deg: float, out_of_position: bool) -> float:
    return groove_rules.lost_depth(angle_deg, out_of_position) / INCH


def fillet_on_groove_in(upright_in: str) -> float:
    return groove_rules.fillet_on_groove(inches(upright_in)) / INCH


def least_hole_in(plate_in: str) -> float:
    return groove_rules.least_hole(inches(plate_in)) / INCH


def largest_hole_in(plate_in: str, fill_in: str) -> float:
    return groove_rules.largest_hole(inches(plate_in), inches(fill_in)) / INCH


def least_fill_in(plate_in: str) -> float:
    return groove_rules.least_fill(inches(plate_in)) / INCH


def longest_slot_in(fill_in: str) -> float:
    return groove_rules.longest_slot(inches(fill_in)) / INCH


def least_length_in(leg_in: str) -> float:
    return fillets.least_length(inches(leg_in)) / INCH


def least_segment_in(leg_in: str) -> float:
    return fillets.least_segment(inches(leg_in)) / INCH


def least_lap_in(thinner_in: str) -> float:
    return fillets.least_lap(inches(thinner_in)) / INCH


def usual_crown_in(flat_in2: float, face_in: str) -> float:
    return fillets.usual_crown(flat_in2 * INCH**2, inches(face_in)) / INCH


# Plugs and slots


def turn_in(hole_in: str, slot_in: str | None = None) -> float:
    slot = None if slot_in is None else inches(slot_in)
    return plug_slot.turn_length(inches(hole_in), slot) / INCH


def plug_metal_in3(query: str) -> float:
    """Weld metal of one plug: section along the way around."""
    job = read_query(query).job
    return joint_shape(job)[0].section_m2 * weld_way(job) / INCH**3


def hole_in(query: str) -> float:
    return hole_m(read_query(query).job) / INCH


def hole_limits_in(query: str) -> tuple[float, float]:
    low, high = hole_limits(read_query(query).job)
    return low / INCH, high / INCH


def slot_in(query: str) -> float:
    return (slot_m(read_query(query).job) or 0.0) / INCH


def fill_in(query: str) -> float:
    return fill_m(read_query(query).job) / INCH


# Entries and symbol


def asks(joint: JointKind, corner: str, key: str) -> str:
    return "yes" if key in joint_entries.entries_of(joint, corner) else "no"


def _mark(mark: Mark) -> str:
    sizes = [f"{v / INCH:.4g}" for v in (mark.size_m, mark.size2_m) if v is not None]
    return f"{mark.side} {mark.sign} {' '.join(sizes)}".strip()


def symbol(query: str) -> str:
    job = read_query(query).job
    found = weld_symbol(job, joint_shape(job)[0])
    words = [_mark(mark) for mark in found.marks]
    words += ["bevel arrow"] if found.points_at_bevel else []
    words += [f"backing {found.backing}"] if found.backing != "none" else []
    words += ["gouge"] if found.gouged else []
    return "; ".join(words)
