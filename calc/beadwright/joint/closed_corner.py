"""A closed corner to scale: the horizontal plate covers the edge of the other, welded outside."""

from __future__ import annotations

from math import inf

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.joint.groove_joints import square_face_width
from beadwright.joint.joints import Dimension, JointShape, Polygon, box, region


def closed_corner_joint(
    plate_m: float, plate2_m: float, gap_m: float, crown_m: float
) -> JointShape:
    """Return a closed corner drawn to scale: a square butt turned on its side.

    Source: geometry: gap × the thinner plate, plus the crown as a parabola.

    Args:
        plate_m: Thickness of the horizontal plate, above zero [m].
        plate2_m: Thickness of the plate below it, above zero [m].
        gap_m: Gap between them, zero or more [m].
        crown_m: Crown, zero or more; not both zero [m].

    Raises:
        OutOfRangeError: If a length is out of range or there is nothing to fill.
    """
    require_positive(plate_m=plate_m, plate2_m=plate2_m)
    if not (gap_m >= 0 and crown_m >= 0 and 0 < gap_m + crown_m < inf):
        raise OutOfRangeError(
            f"gap_m = {gap_m} and crown_m = {crown_m} must be 0 or more, not both 0"
        )
    thin, half = min(plate_m, plate2_m), gap_m / 2
    face = square_face_width(thin, gap_m) if crown_m > 0 else gap_m
    low, high = (0.0, -face / 2), (0.0, face / 2)
    filled: Polygon = ((0.0, half), (-thin, half), (-thin, -half), (0.0, -half))
    weld = region("first", filled if gap_m > 0 else (), low, high, (-thin, 0.0), crown_m)
    reach = 3.2 * max(plate_m, plate2_m)
    return JointShape(
        kind="corner",
        plates=(
            box(-plate2_m - reach, half, 0.0, half + plate_m),
            box(-plate2_m, -half - reach, 0.0, -half),
        ),
        regions=(weld,),
        section_m2=weld.section_m2,
        leg_m=0.0,
        throat_m=thin,
        face_m=weld.face_m,
        dimensions=(
            Dimension(
                "plate",
                (-plate2_m - reach, half),
                (-plate2_m - reach, half + plate_m),
                plate_m,
            ),
            Dimension("plate2", (-plate2_m, -half - reach), (0.0, -half - reach), plate2_m),
        ),
        gap_m=gap_m,
        complete=True,
    )
