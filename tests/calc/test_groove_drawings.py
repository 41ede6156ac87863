"""Grooves to scale, corner by corner: sizes in whole millimeters, each drawn and summed by hand."""

from math import sqrt

import pytest

from beadwright.joint.groove_joints import groove_joint
from tests.calc.drawn import about_one, dimensions, mm, mm2, mm_groove, near, rectangle


def test_a_v() -> None:
    shape = groove_joint(mm_groove("v", 90, 4, 18), 0.020, 0.020, 0.003)
    (weld,) = shape.regions
    edges = [(-20, 0), (-2, -18), (-2, -20), (2, -20), (2, -18), (20, 0)]
    assert near(weld.filled, edges)
    assert near(weld.face, [(21.5, 0), (-21.5, 0)])
    assert near([weld.root], [(0, -20)])
    # 18 × 18 of triangles, 4 × 20 of gap, two thirds of 43 × 3 of crown.
    assert shape.section_m2 == mm2(324 + 80 + 86)
    left, right = shape.plates
    assert near(right, [(67, 0), (20, 0), (2, -18), (2, -20), (67, -20)])
    assert near(left, [(-67, -20), (-2, -20), (-2, -18), (-20, 0), (-67, 0)])
    assert dimensions(shape) == {"plate": [-67, -20, -67, 0, 20], "plate2": [67, -20, 67, 0, 20],
                                 "gap": [-2, -20, 2, -20, 4]}  # fmt: skip
    assert (shape.root_face_m, shape.gap_m) == (mm(2), 0.004)
    assert (shape.throat_m, shape.leg_m, shape.face_m) == (0.020, 0, mm(43))
    assert shape.complete
    assert not shape.gouged
    assert shape.backing == ()
    (angle,) = shape.angles
    # The bevels meet 20 below; the arc stands twice the crown above the plate, along the bevel.
    assert near([angle.vertex], [(0, -20)])
    assert (angle.from_deg, angle.to_deg) == (45, 135)
    assert angle.radius_m == mm(26 * sqrt(2))


def test_the_arc_of_a_wide_v_stays_near_its_groove() -> None:
    # tan 60° = √3: the bevels meet 10 + 3 / √3 below; one and a half times that and 2 above.
    (angle,) = groove_joint(mm_groove("v", 120, 6, 10), 0.010, 0.010, 0.0).angles
    assert near([angle.vertex], [(0, -10 - sqrt(3))])
    assert (angle.from_deg, angle.to_deg) == (about_one(30), about_one(150))
    assert angle.radius_m == mm(1.5 * (12 + sqrt(3)))


def test_a_bevel_cut_part_way_against_a_thicker_plate() -> None:
    groove = mm_groove("bevel", 45, 0, 6, complete=False)
    shape = groove_joint(groove, 0.010, 0.014, 0.0005, 0.005)
    (weld,) = shape.regions
    assert near(weld.filled, [(-6, 0), (0, -6), (0, 0)])
    assert near(weld.face, [(1.5, 0), (-7.5, 0)])
    assert near([weld.root], [(0, -6)])
    assert shape.section_m2 == mm2(18 + 3)
    left, right = shape.plates
    assert near(left, [(-25.8, -10), (0, -10), (0, -6), (-6, 0), (-25.8, 0)])
    assert near(right, [(25.8, 0), (0, 0), (0, -10), (0, -14), (25.8, -14)])
    assert dimensions(shape) == {"plate": [-25.8, -10, -25.8, 0, 10],
                                 "plate2": [25.8, -14, 25.8, 0, 14],
                                 "depth": [0, -6, 0, 0, 6]}  # fmt: skip
    assert (shape.root_face_m, shape.throat_m) == (mm(4), 0.005)
    assert not shape.complete
    (angle,) = shape.angles
    assert near([angle.vertex], [(0, -6)])
    assert (angle.from_deg, angle.to_deg) == (90, 135)
    # 6 down and a fifth of the plate up, along the bevel.
    assert angle.radius_m == mm(8 * sqrt(2))


def test_the_depth_of_a_v_cut_part_way_is_written_at_its_right_edge() -> None:
    groove = mm_groove("v", 90, 2, 6, complete=False)
    shape = groove_joint(groove, 0.010, 0.010, 0.0, 0.006)
    assert dimensions(shape)["depth"] == [7, -6, 7, 0, 6]
    # Not welded through: the gap below the bevels stays open.
    assert near(shape.weld, [(-7, 0), (-1, -6), (1, -6), (7, 0)])
    assert shape.section_m2 == mm2(36 + 12)


def test_a_double_v_tapers_the_thicker_plate() -> None:
    shape = groove_joint(mm_groove("double-v", 90, 2, 12, 6), 0.020, 0.028, 0.001)
    first, second = shape.regions
    assert near(first.filled, [(-13, 0), (-1, -12), (-1, -14), (1, -14), (1, -12), (13, 0)])
    assert near(first.face, [(14.5, 0), (-14.5, 0)])
    assert near([first.root], [(0, -14)])
    assert first.section_m2 == mm2(144 + 28 + 2 / 3 * 29)
    assert near(second.filled, [(7, -20), (1, -14), (-1, -14), (-7, -20)])
    assert near(second.face, [(-8.5, -20), (8.5, -20)])
    assert near([second.root], [(0, -14)])
    assert second.section_m2 == mm2(36 + 12 + 2 / 3 * 17)
    left, right = shape.plates
    # Level 3 mm past the second groove, then 2.5 along for each down.
    assert near(right, [(62.6, 0), (13, 0), (1, -12), (1, -14), (7, -20), (10, -20), (30, -28),
                        (62.6, -28)])  # fmt: skip
    assert near(left, [(-62.6, -20), (-7, -20), (-1, -14), (-1, -12), (-13, 0), (-62.6, 0)])
    assert dimensions(shape)["gap"] == [-1, -20, 1, -20, 2]
    assert "depth" not in dimensions(shape)
    assert not shape.gouged
    assert shape.root_face_m == mm(2)
    (angle,) = shape.angles
    assert near([angle.vertex], [(0, -13)])
    assert angle.radius_m == mm(17 * sqrt(2))


def test_a_double_bevel_against_a_much_thicker_plate_is_drawn_past_its_taper() -> None:
    groove = mm_groove("double-bevel", 45, 0, 5, 5)
    shape = groove_joint(groove, 0.010, 0.040, 0.0)
    # The bevels are the left plate's. Level 5 and twice 1.5 mm, 75 along the taper, 12 more.
    assert near(shape.plates[1], [(95, 0), (0, 0), (0, -10), (8, -10), (83, -40), (95, -40)])
    assert near(shape.plates[0], [(-95, -10), (-5, -10), (0, -5), (-5, 0), (-95, 0)])
    first, second = shape.regions
    assert near(first.filled, [(-5, 0), (0, -5), (0, 0)])
    assert near(second.filled, [(0, -10), (0, -5), (-5, -10)])
    assert near(second.face, [(-5, -10), (0, -10)])


def test_a_v_on_a_backing() -> None:
    shape = groove_joint(mm_groove("v", 60, 6, 10, backed=True), 0.010, 0.040, 0.002)
    out = 10 / sqrt(3)
    assert near(shape.weld[:4], [(-3 - out, 0), (-3, -10), (3, -10), (3 + out, 0)])
    assert near(shape.backing, rectangle(-13, -16.35, 13, -10))
    left, right = shape.plates
    # Level under the backing, then tapered; drawn 0.3 of the thicker plate past the taper.
    assert near(right, [(100, 0), (3 + out, 0), (3, -10), (13, -10), (88, -40), (100, -40)])
    assert near(left, [(-100, -10), (-3, -10), (-3 - out, 0), (-100, 0)])


@pytest.mark.parametrize(("plate", "wide"), [(4, 9), (8, 11), (12, 15), (20, 15.5)])
def test_a_backing_reaches_as_far_as_the_plate_is_thick_6_to_12_and_a_half(
    plate: float, wide: float
) -> None:
    groove = mm_groove("v", 60, 6, plate, backed=True)
    shape = groove_joint(groove, plate / 1e3, plate / 1e3, 0.0)
    assert near(shape.backing, rectangle(-wide, -plate - 6.35, wide, -plate))


def test_a_square_butt() -> None:
    shape = groove_joint(mm_groove("square", 0, 3, 10), 0.010, 0.012, 0.001)
    (weld,) = shape.regions
    assert near(weld.filled, [(-1.5, 0), (-1.5, -10), (1.5, -10), (1.5, 0)])
    assert near(weld.face, [(4.5, 0), (-4.5, 0)])
    assert shape.section_m2 == mm2(30 + 2 / 3 * 9)
    assert near(shape.plates[0], [(-23.4, -10), (-1.5, -10), (-1.5, 0), (-23.4, 0)])
    assert near(shape.plates[1], [(23.4, 0), (1.5, 0), (1.5, -10), (1.5, -12), (23.4, -12)])
    assert dimensions(shape)["reinforcement"] == [4.5, 0, 4.5, 1, 1]
    assert shape.angles == ()
    assert shape.root_face_m == 0
    # Without a gap the crown alone is laid; a 2 mm sheet takes toes of 2 mm.
    thin = groove_joint(mm_groove("square", 0, 0, 2), 0.002, 0.002, 0.001)
    assert thin.regions[0].filled == ()
    assert near(thin.regions[0].face, [(2, 0), (-2, 0)])
    assert thin.section_m2 == mm2(2 / 3 * 4)


def test_a_square_butt_cut_part_way_keeps_its_root_face() -> None:
    groove = mm_groove("square", 0, 0, 4, complete=False)
    shape = groove_joint(groove, 0.010, 0.010, 0.001, 0.004)
    assert shape.root_face_m == mm(6)
    assert dimensions(shape)["depth"] == [0, -4, 0, 0, 4]
    assert "reinforcement" not in dimensions(shape)


def test_the_toe_of_a_groove_in_sheet_is_the_sheet() -> None:
    shape = groove_joint(mm_groove("v", 90, 0, 1), 0.001, 0.001, 0.001)
    assert near(shape.regions[0].face, [(2, 0), (-2, 0)])
