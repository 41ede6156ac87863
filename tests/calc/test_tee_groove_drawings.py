"""Beveled tees and limits of grooves, corner by corner, by hand."""

from math import inf, sqrt

import pytest

from beadwright.errors import OutOfRangeError
from beadwright.joint.closed_corner import closed_corner_joint
from beadwright.joint.fillet_joints import fillet_face, fillet_joint, fillet_throat
from beadwright.joint.groove_joints import groove_joint
from beadwright.joint.joints import JointKind, corners, rounded_face
from beadwright.joint.plug_slot import plug_joint
from beadwright.joint.tee_grooves import tee_groove_joint
from tests.calc.drawn import dimensions, mm, mm2, mm_groove, near, rectangle


def test_a_beveled_tee_on_a_backing() -> None:
    groove = mm_groove("tee-bevel", 45, 6, 20, backed=True)
    shape = tee_groove_joint(groove, 0.010, 0.020, 0.005, 0.001)
    (weld,) = shape.regions
    assert near(weld.filled, [(0, 26), (-20, 6), (-20, 0), (5, 0)])
    assert near(weld.face, [(5, 0), (0, 26)])
    assert near([weld.root], [(-20, 0)])
    # 16 high on average over 20, a triangle of 5 × 26, two thirds of the crown's box.
    assert shape.section_m2 == mm2(320 + 65 + 2 / 3 * sqrt(701))
    base, upright = shape.plates
    assert near(base, rectangle(-45.8, -10, 25.8, 0))
    assert near(upright, [(0, 46.8), (-20, 46.8), (-20, 6), (0, 26)])
    assert near(shape.backing, rectangle(-26.35, 0, -20, 25.05))
    assert dimensions(shape) == {"plate": [25.8, -10, 25.8, 0, 10],
                                 "plate2": [-20, 46.8, 0, 46.8, 20],
                                 "leg": [5, 0, 5, 5, 5]}  # fmt: skip
    (angle,) = shape.angles
    assert near([angle.vertex], [(-20, 6)])
    assert (angle.from_deg, angle.to_deg, angle.radius_m) == (0, 45, mm(20 + 1.25 * 20))
    assert (shape.throat_m, shape.leg_m, shape.leg2_m) == (0.020, 0.005, mm(26))
    assert (shape.root_face_m, shape.gap_m, shape.complete) == (0, 0.006, True)
    assert not shape.gouged


def test_a_tee_beveled_on_both_sides_part_way() -> None:
    groove = mm_groove("tee-double-bevel", 45, 1, 5, 4, complete=False)
    shape = tee_groove_joint(groove, 0.010, 0.016, 0.008, 0.0, 0.001)
    first, second = shape.regions
    assert near(first.filled, [(0, 8), (0, 6), (-5, 1), (-5, 0), (8, 0)])
    assert near(second.filled, [(-24, 0), (-12, 0), (-12, 1), (-16, 5), (-16, 8)])
    # Without a crown the outline is what is filled.
    assert second.outline == second.filled
    assert near(second.face, [(-16, 8), (-24, 0)])
    assert near([second.root], [(-12, 0)])
    assert first.section_m2 == mm2(17.5 + 32)
    assert second.section_m2 == mm2(12 + 32)
    assert shape.section_m2 == mm2(93.5)
    # From each root to the face x + y = 8, less a millimeter each.
    assert shape.throat_m == mm(13 / sqrt(2) - 1 + 12 / sqrt(2) - 1)
    base, upright = shape.plates
    assert near(base, rectangle(-36.8, -10, 20.8, 0))
    assert near(upright, [(0, 20.8), (-16, 20.8), (-16, 5), (-12, 1), (-5, 1), (0, 6)])
    assert shape.angles[0].radius_m == mm(5 + 1.25 * 8)
    assert (shape.root_face_m, shape.leg2_m) == (mm(7), 0.008)
    assert not shape.complete
    assert not shape.gouged


def test_a_beveled_tee_without_a_fillet_is_welded_through_its_root_face() -> None:
    groove = mm_groove("tee-bevel", 45, 2, 14)
    shape = tee_groove_joint(groove, 0.010, 0.016, 0.0, 0.008)
    (weld,) = shape.regions
    assert near(weld.filled, [(0, 16), (-14, 2), (-16, 2), (-16, 0), (0, 0)])
    # 9 high on average over 14, the root face's 2 × 2, two thirds of 16 × 8.
    assert shape.section_m2 == mm2(126 + 4 + 2 / 3 * 128)
    assert near(shape.plates[1], [(0, 28.8), (-16, 28.8), (-16, 2), (-14, 2), (0, 16)])
    assert near(shape.plates[0], rectangle(-28.8, -10, 12.8, 0))
    assert "leg" not in dimensions(shape)
    assert (shape.leg_m, shape.leg2_m) == (0, 0)
    # Twice the crown is more than the groove's rise.
    assert shape.angles[0].radius_m == mm(14 + 1.25 * 16)
    closed = tee_groove_joint(mm_groove("tee-bevel", 45, 0, 14), 0.010, 0.016, 0.0, 0.0)
    # Without a gap nothing is laid under the root face.
    assert near(closed.weld, [(0, 14), (-14, 0), (0, 0)])


def test_a_rounded_face_is_a_parabola_on_24_chords() -> None:
    # Up the y axis the right of the way is +x; height 4·s·(1 − s)·h at the share s.
    points = rounded_face((0.0, 0.0), (0.0, 0.024), 0.0036)
    by_hand = [(4 * n * (24 - n) * 3.6 / 576, n) for n in range(1, 24)]
    assert near(points, by_hand)
    # A hollow face bulges the other way.
    assert near(rounded_face((0.0, 0.0), (0.0, 0.024), -0.0036), [(-x, y) for x, y in by_hand])


def test_a_fillet_of_which_nothing_more_is_said_is_square_and_tight() -> None:
    assert fillet_face(0.003, 0.004) == mm(5)
    assert fillet_throat(0.003, 0.004) == mm(2.4)
    shape = fillet_joint("tee", 0.010, 0.010, 0.006, 0.006, 0.0)
    assert (shape.gap_m, shape.leg2_m, shape.angles) == (0, 0.006, ())


def test_a_crown_or_gap_without_end_is_refused() -> None:
    for crown, gap in ((inf, 0.0), (0.0, inf)):
        with pytest.raises(OutOfRangeError, match="must be 0 or more and finite"):
            fillet_joint("tee", 0.010, 0.010, 0.006, 0.006, crown, gap)
        with pytest.raises(OutOfRangeError, match="must be 0 or more, not both 0"):
            groove_joint(mm_groove("v", 60, gap, 10), 0.010, 0.010, crown)
        with pytest.raises(OutOfRangeError, match="must be 0 or more, not both 0"):
            closed_corner_joint(0.004, 0.004, gap, crown)
        with pytest.raises(OutOfRangeError, match="must be 0 or more and finite"):
            tee_groove_joint(mm_groove("tee-bevel", 45, gap, 10), 0.010, 0.010, 0.0, crown)
    with pytest.raises(OutOfRangeError, match="leg_m = inf must be 0 or more and finite"):
        tee_groove_joint(mm_groove("tee-bevel", 45, 0, 10), 0.010, 0.010, inf, 0.0)


def test_a_point_said_twice_is_one_corner() -> None:
    assert corners(((0.0, 0.0), (0.0, 0.0))) == ((0.0, 0.0),)


def test_without_a_gap_nothing_is_laid_below_the_bevels() -> None:
    shape = groove_joint(mm_groove("v", 90, 0, 18), 0.020, 0.020, 0.0)
    assert near(shape.weld, [(-18, 0), (0, -18), (18, 0)])
    assert near([shape.regions[0].root], [(0, -18)])
    assert shape.section_m2 == mm2(324)
    assert shape.throat_m == 0.020


@pytest.mark.parametrize(("kind", "most"), [("v", 150), ("double-v", 150), ("bevel", 85),
                                            ("double-bevel", 85)])  # fmt: skip
def test_no_groove_opens_wider_than_its_most(kind: JointKind, most: float) -> None:
    depth2 = 2 if kind.startswith("double") else 0
    groove_joint(mm_groove(kind, 0.5, 0, 2, depth2), 0.010, 0.010, 0.0)
    groove_joint(mm_groove(kind, most, 0, 2, depth2), 0.010, 0.010, 0.0)
    with pytest.raises(OutOfRangeError, match=f"must be above 0 to {most}"):
        groove_joint(mm_groove(kind, most + 0.5, 0, 2, depth2), 0.010, 0.010, 0.0)


def test_no_beveled_tee_opens_wider_than_85() -> None:
    tee_groove_joint(mm_groove("tee-bevel", 0.5, 0, 2), 0.010, 0.010, 0.0, 0.0)
    tee_groove_joint(mm_groove("tee-bevel", 85, 0, 2), 0.010, 0.010, 0.0, 0.0)
    with pytest.raises(OutOfRangeError, match="must be above 0 to 85"):
        tee_groove_joint(mm_groove("tee-bevel", 0, 0, 2), 0.010, 0.010, 0.0, 0.0)
    with pytest.raises(OutOfRangeError, match="must be above 0 to 85"):
        tee_groove_joint(mm_groove("tee-bevel", 85.5, 0, 2), 0.010, 0.010, 0.0, 0.0)


def test_depths_from_both_sides_must_fit_in_the_plate_together() -> None:
    with pytest.raises(OutOfRangeError, match=r"depth2_m = 0\.0085 must fit in 0\.02"):
        groove_joint(mm_groove("double-v", 60, 0, 12, 8.5), 0.020, 0.020, 0.0)
    with pytest.raises(OutOfRangeError, match=r"depth2_m = 0\.0085 must fit in 0\.02"):
        tee_groove_joint(mm_groove("tee-double-bevel", 45, 0, 12, 8.5), 0.020, 0.020, 0.0, 0.0)


def test_a_double_v_of_60_degrees() -> None:
    shape = groove_joint(mm_groove("double-v", 60, 2, 12, 6), 0.020, 0.022, 0.0)
    first, second = 12 / sqrt(3), 6 / sqrt(3)
    far = 1.2 * 22 + 2 * (1 + first)
    # Level 3 mm past the second groove, then 5 along the taper for 2 down.
    assert near(shape.plates[1], [(far, 0), (1 + first, 0), (1, -12), (1, -14), (1 + second, -20),
                                  (4 + second, -20), (9 + second, -22), (far, -22)])  # fmt: skip
    assert near(shape.regions[1].filled, [(1 + second, -20), (1, -14), (-1, -14),
                                          (-1 - second, -20)])  # fmt: skip
    assert shape.section_m2 == mm2((144 + 36) / sqrt(3) + 40)


def test_a_plate_slightly_thicker_is_drawn_so() -> None:
    shape = groove_joint(mm_groove("square", 0, 2, 10), 0.010, 0.0102, 0.0)
    assert near(shape.plates[1][1:4], [(1, 0), (1, -10), (1, -10.2)])


def test_a_tee_beveled_30_degrees_on_both_sides() -> None:
    groove = mm_groove("tee-double-bevel", 30, 1, 6, 3)
    shape = tee_groove_joint(groove, 0.010, 0.012, 0.009, 0.0)
    first, second = 1 + 6 / sqrt(3), 1 + 3 / sqrt(3)
    assert near(shape.regions[0].filled, [(0, 9), (0, first), (-6, 1), (-9, 1), (-9, 0), (9, 0)])
    assert near(shape.regions[1].filled, [(-21, 0), (-9, 0), (-9, 1), (-12, second), (-12, 9)])
    # Drawn 0.8 of the upright, 9.6, past the 9 of the fillet.
    assert near(shape.plates[1], [(0, 18.6), (-12, 18.6), (-12, second), (-9, 1), (-6, 1),
                                  (0, first)])  # fmt: skip
    assert near(shape.plates[0], rectangle(-30.6, -10, 18.6, 0))
    assert (shape.root_face_m, shape.gouged, shape.complete) == (mm(3), False, True)


def test_the_arc_of_a_beveled_tee_stands_past_its_rise() -> None:
    shape = tee_groove_joint(mm_groove("tee-bevel", 30, 0, 14), 0.010, 0.016, 0.0, 0.0)
    assert shape.angles[0].radius_m == mm(14 + 1.25 * 14 / sqrt(3))


def test_the_throat_of_a_narrow_beveled_tee_ends_at_its_upper_toe() -> None:
    # tan 30° = 1/√3: the face ends 6/√3 up; from the root 6 deep that is √(36 + 12).
    groove = mm_groove("tee-bevel", 30, 0, 6, complete=False)
    assert tee_groove_joint(groove, 0.010, 0.016, 0.003, 0.0).throat_m == mm(sqrt(48))


def test_a_hole_is_not_filled_over_its_plate() -> None:
    assert plug_joint("plug", 0.010, 0.005, 0.020, 0.005).throat_m == 0.005
    with pytest.raises(OutOfRangeError, match=r"fill_m = 0\.0052 must be at most"):
        plug_joint("plug", 0.010, 0.005, 0.020, 0.0052)
