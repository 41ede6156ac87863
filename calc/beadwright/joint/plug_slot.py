"""Plug and slot welds to scale, filled around their axis."""

from __future__ import annotations

from math import pi

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.joint.joints import HOLES, Dimension, JointKind, JointShape, box, region


def turn_length(hole_m: float, slot_m: float | None = None) -> float:
    """Return the path of the torch once around a hole: section × path is the volume [m].

    Source: Pappus: half the hole's section, carried around at half the radius, sweeps the hole.

    Args:
        hole_m: Diameter of the hole, width of the slot, above zero [m].
        slot_m: Length of the slot, at least its width; None for a plug [m].

    Raises:
        OutOfRangeError: If the hole is not above zero, or the slot shorter than wide.
    """
    require_positive(hole_m=hole_m)
    straight = 0.0 if slot_m is None else slot_m - hole_m
    if not straight >= 0:
        raise OutOfRangeError(f"slot_m = {slot_m} must be at least hole_m = {hole_m}")
    return pi / 2 * hole_m + 2 * straight


def plug_joint(
    kind: JointKind, plate_m: float, plate2_m: float, hole_m: float, fill_m: float
) -> JointShape:
    """Return a plug or slot drawn to scale, cut across.

    Source: geometry. The section counted is half the one drawn: it is laid around.

    Args:
        kind: plug or slot [-].
        plate_m: Thickness of the plate below, above zero [m].
        plate2_m: Thickness of the plate with the hole, above zero [m].
        hole_m: Diameter of the hole, width of the slot, above zero [m].
        fill_m: Depth of fill, above zero, to the plate's thickness [m].

    Raises:
        OutOfRangeError: If a length is out of range or the kind is neither.
    """
    require_positive(plate_m=plate_m, plate2_m=plate2_m, hole_m=hole_m, fill_m=fill_m)
    if kind not in HOLES:
        raise OutOfRangeError(f"kind = {kind} must be one of {', '.join(HOLES)}")
    if fill_m > plate2_m * (1 + 1e-9):
        raise OutOfRangeError(f"fill_m = {fill_m} must be at most plate2_m = {plate2_m}")
    half, reach = hole_m / 2, hole_m / 2 + 1.6 * max(plate_m, plate2_m)
    right, left = (half, fill_m), (-half, fill_m)
    filled = (left, (-half, 0.0), (half, 0.0), right)
    weld = region("first", filled, right, left, (0.0, 0.0), 0.0)
    dimensions = [
        Dimension("plate", (reach, -plate_m), (reach, 0.0), plate_m),
        Dimension("plate2", (-reach, 0.0), (-reach, plate2_m), plate2_m),
        Dimension("hole", (-half, plate2_m), (half, plate2_m), hole_m),
    ]
    return JointShape(
        kind=kind,
        plates=(
            box(-reach, -plate_m, reach, 0.0),
            box(-reach, 0.0, -half, plate2_m),
            box(half, 0.0, reach, plate2_m),
        ),
        regions=(weld,),
        section_m2=weld.section_m2 / 2,
        leg_m=0.0,
        throat_m=fill_m,
        face_m=hole_m / 2,
        dimensions=tuple(dimensions),
    )
