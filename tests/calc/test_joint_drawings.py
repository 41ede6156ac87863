"""Joints to scale, corner by corner: sizes in whole millimeters, each drawn and summed by hand.

How far a plate is drawn past its weld is ours (common practice); everything else is geometry.
"""

from collections.abc import Iterable
from math import sqrt

import pytest

from beadwright.joint.closed_corner import closed_corner_joint
from beadwright.joint.fillet_joints import Corner, fillet_joint
from beadwright.joint.groove_joints import Groove, groove_joint
from beadwright.joint.joints import XY, JointKind, JointShape
from beadwright.joint.plug_slot import plug_joint

Points = Iterable[tuple[float, float]]


def near(points: Points, by_hand: Points) -> bool:
    """Whether points [m] are those given [mm]."""
    found = [(x * 1e3, y * 1e3) for x, y in points]
    wanted = list(by_hand)
    return len(found) == len(wanted) and all(
        one == pytest.approx(other, abs=1e-6) for one, other in zip(found, wanted, strict=True)
    )


def rectangle(left: float, bottom: float, right: float, top: float) -> list[XY]:
    return [(left, bottom), (right, bottom), (right, top), (left, top)]


def dimensions(shape: JointShape) -> dict[str, list[float]]:
    """Ends and value of each dimension [mm]."""
    return {
        d.name: [round(v * 1e3, 6) + 0.0 for v in (*d.start, *d.end, d.value_m)]
        for d in shape.dimensions
    }


def about(*values: float) -> object:
    return pytest.approx(values, abs=1e-6)


def mm(value: float) -> object:
    return pytest.approx(value * 1e-3, rel=1e-7, abs=1e-12)


def mm2(value: float) -> object:
    return pytest.approx(value * 1e-6, rel=1e-7)


def mm_groove(kind: JointKind, angle: float, gap: float, depth: float, depth2: float = 0.0,
              **more: bool) -> Groove:  # fmt: skip
    return Groove(kind, angle, gap / 1e3, depth / 1e3, depth2 / 1e3, **more)


def test_a_tee() -> None:
    shape = fillet_joint("tee", 0.010, 0.006, 0.008, 0.006, 0.001, 0.002, leg2_m=0.005,
                         wanted_leg2_m=0.004)  # fmt: skip
    base, upright = shape.plates
    # Drawn 1.6 times the largest size, here the 10 mm plate, past the weld.
    assert near(base, rectangle(-22, -10, 24, 0))
    assert near(upright, rectangle(-6, 2, 0, 21))
    assert dimensions(shape)["plate"] == [24, -10, 24, 0, 10]
    assert dimensions(shape)["plate2"] == [-6, 21, 0, 21, 6]
    # Each leg is written along itself: 5 up the upright, 8 along the plate.
    upright_leg, flat_leg = sorted(
        (d for d in shape.dimensions if d.name.startswith("leg")), key=lambda d: d.value_m
    )
    assert near((upright_leg.start, upright_leg.end), [(8, 0), (8, 5)])
    assert near((flat_leg.start, flat_leg.end), [(0, 5), (8, 5)])
    assert (upright_leg.value_m, flat_leg.value_m) == (0.005, 0.008)
    (weld,) = shape.regions
    assert near(weld.filled, [(0, 5), (0, 0), (8, 0)])
    assert near(weld.face, [(8, 0), (0, 5)])
    assert near([weld.root], [(0, 0)])
    assert shape.face_m == mm(sqrt(89))
    assert shape.section_m2 == mm2(20 + 2 / 3 * sqrt(89))
    assert shape.throat_m == mm(6 * 4 / sqrt(52))
    assert (shape.leg_m, shape.leg2_m, shape.gap_m) == (0.008, 0.005, 0.002)
    assert shape.angles == ()


@pytest.mark.parametrize(
    ("skew", "base", "upright"),
    [
        # cos 60° = 1/2, sin 60° = √3/2: 21 mm of upright lean 10.5 over the weld.
        (60, (-1.1547005 * 5 - 8, 18.5),
         [(-5.7735027, 2), (1.1547005, 2), (10.5, 18.1865335), (5.3038476, 21.1865335)]),
        (120, (-23.6961524, 16),
         [(-8.0829038, 2), (-1.1547005, 2), (-10.5, 18.1865335), (-15.6961524, 15.1865335)]),
    ],
)  # fmt: skip
def test_a_skewed_tee(skew: float, base: tuple[float, float], upright: Points) -> None:
    shape = fillet_joint("tee", 0.010, 0.006, 0.008, 0.008, 0.0, 0.002, leg2_m=0.005,
                         wanted_leg2_m=0.005, skew_deg=skew)  # fmt: skip
    left, right = base
    assert near(shape.plates[0], rectangle(left, -10, right, 0))
    assert near(shape.plates[1], upright)
    assert dimensions(shape) == {"leg": [0, 0, 8, 0, 8], "plate": [right, -10, right, 0, 10]}
    (angle,) = shape.angles
    # The arc stands three tenths of the longer leg outside its toe.
    assert (angle.name, angle.vertex, angle.from_deg, angle.to_deg) == ("skew", (0, 0), 0, skew)
    assert angle.radius_m == mm(10.4)
    cosine = 0.5 if skew == 60 else -0.5
    assert shape.face_m == mm(sqrt(64 + 25 - 2 * 40 * cosine))
    # Half of 8 × 5 × sin 60°.
    assert shape.section_m2 == mm2(20 * sqrt(3) / 2)


def test_a_lap() -> None:
    shape = fillet_joint("lap", 0.010, 0.006, 0.005, 0.005, 0.0, 0.001, leg2_m=0.003)
    assert near(shape.plates[0], rectangle(-22.4, -10, 21, 0))
    assert near(shape.plates[1], rectangle(-35.2, 1, 0, 7))
    assert dimensions(shape) == {
        "leg": [5, 0, 5, 3, 3], "leg2": [0, 3, 5, 3, 5],
        "plate": [21, -10, 21, 0, 10], "plate2": [-35.2, 1, -35.2, 7, 6],
    }  # fmt: skip


@pytest.mark.parametrize(("corner", "left"), [("open", 0), ("half", -3)])
def test_a_corner(corner: Corner, left: float) -> None:
    shape = fillet_joint("corner", 0.010, 0.006, 0.005, 0.005, 0.0, 0.001,
                         corner=corner)  # fmt: skip
    assert near(shape.plates[0], rectangle(-32, 0, 0, 10))
    # Half open: the plate lying down covers half of the other's 6 mm.
    assert near(shape.plates[1], rectangle(left, -32, left + 6, -1))
    assert dimensions(shape)["plate"] == [-32, 0, -32, 10, 10]
    assert dimensions(shape)["plate2"] == [left, -32, left + 6, -32, 6]


def test_a_closed_corner() -> None:
    shape = closed_corner_joint(0.004, 0.006, 0.002, 0.001)
    assert near(shape.plates[0], rectangle(-25.2, 1, 0, 5))
    assert near(shape.plates[1], rectangle(-6, -20.2, 0, -1))
    assert dimensions(shape) == {"plate": [-25.2, 1, -25.2, 5, 4],
                                 "plate2": [-6, -20.2, 0, -20.2, 6]}  # fmt: skip
    (weld,) = shape.regions
    assert near(weld.filled, [(0, 1), (-4, 1), (-4, -1), (0, -1)])
    # Toes 3 mm past the gap on either side: a face of 8.
    assert near(weld.face, [(0, -4), (0, 4)])
    assert near([weld.root], [(-4, 0)])
    assert shape.section_m2 == mm2(8 + 2 / 3 * 8)
    assert (shape.throat_m, shape.leg_m, shape.gap_m) == (0.004, 0, 0.002)
    assert shape.complete
    flush = closed_corner_joint(0.004, 0.006, 0.002, 0.0)
    assert near(flush.regions[0].face, [(0, -1), (0, 1)])
    # Without a gap only the crown is laid.
    assert closed_corner_joint(0.004, 0.006, 0.0, 0.001).regions[0].filled == ()


def test_a_plug() -> None:
    shape = plug_joint("plug", 0.010, 0.006, 0.020, 0.005)
    below, left, right = shape.plates
    assert near(below, rectangle(-26, -10, 26, 0))
    assert near(left, rectangle(-26, 0, -10, 6))
    assert near(right, rectangle(10, 0, 26, 6))
    assert dimensions(shape) == {"plate": [26, -10, 26, 0, 10], "plate2": [-26, 0, -26, 6, 6],
                                 "hole": [-10, 6, 10, 6, 20]}  # fmt: skip
    (weld,) = shape.regions
    assert near(weld.filled, [(-10, 5), (-10, 0), (10, 0), (10, 5)])
    assert near(weld.face, [(10, 5), (-10, 5)])
    assert near([weld.root], [(0, 0)])
    # 20 × 5 is drawn; half of it is carried around.
    assert shape.section_m2 == mm2(50)
    assert (shape.throat_m, shape.face_m) == (0.005, 0.010)
    assert (shape.leg_m, shape.leg2_m, shape.root_face_m, shape.gap_m) == (0, 0, 0, 0)


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


def about_one(value: float) -> object:
    return pytest.approx(value, abs=1e-9)


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
    assert shape.gouged
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
