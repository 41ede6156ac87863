"""Joints to scale, corner by corner: sizes in whole millimeters, each drawn and summed by hand.

How far a plate is drawn past its weld is ours (common practice); everything else is geometry.
"""

from math import sqrt

import pytest

from beadwright.joint.closed_corner import closed_corner_joint
from beadwright.joint.fillet_joints import Corner, fillet_joint
from beadwright.joint.plug_slot import plug_joint
from tests.calc.drawn import Points, dimensions, mm, mm2, near, rectangle


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
