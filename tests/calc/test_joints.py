"""Joints to scale: what is drawn has the area said, and weld and plate do not share metal."""

from itertools import combinations
from math import cos, hypot, pi, sin, sqrt, tau

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString, Point, Polygon

from beadwright.errors import OutOfRangeError
from beadwright.job.job_joint import joint_shape
from beadwright.job.job_query import read_query
from beadwright.joint.fillet_joints import (
    fillet_joint,
)
from beadwright.joint.fillets import face_section, flat_section, usual_crown
from beadwright.joint.groove_joints import Groove, groove_joint, square_face_width
from beadwright.joint.joints import (
    FILLETS,
    XY,
    JointKind,
    JointShape,
    box,
    corners,
    polygon_area,
    rounded_face,
    same,
)

INCH = 0.0254
plates = st.floats(0.0005, 0.1)
legs = st.floats(0.0016, 0.05)
gaps = st.just(0.0) | st.floats(1e-5, 0.0047)
crowns = st.just(0.0) | st.floats(1e-5, 0.0047)
kinds = st.sampled_from(FILLETS)


@given(
    st.lists(st.floats(0.5, 2), min_size=3, max_size=12),
    st.floats(-5, 5),
    st.floats(-5, 5),
)
def test_area_is_that_of_another_library(radii: list[float], x: float, y: float) -> None:
    corners: list[XY] = [
        (x + r * cos(tau * n / len(radii)), y + r * sin(tau * n / len(radii)))
        for n, r in enumerate(radii)
    ]
    assert polygon_area(corners) == pytest.approx(Polygon(corners).area, rel=1e-9)
    assert polygon_area(corners[::-1]) == pytest.approx(polygon_area(corners), rel=1e-9)


@given(st.floats(-1, 1), st.floats(-1, 1), st.floats(0.001, 1), st.floats(0.001, 1))
def test_area_of_a_box_is_width_times_height(
    left: float, bottom: float, width: float, height: float
) -> None:
    drawn = box(left, bottom, left + width, bottom + height)
    assert polygon_area(drawn) == pytest.approx(width * height, rel=1e-9)


def test_two_corners_have_no_area() -> None:
    with pytest.raises(OutOfRangeError, match="points = 2 must be three or more corners"):
        polygon_area(((0, 0), (1, 1)))


@given(st.floats(0, tau), st.floats(0.001, 0.1), st.floats(0.0001, 0.02))
def test_a_rounded_face_bulges_its_height_to_the_right_of_the_way(
    way: float, length: float, height: float
) -> None:
    end = (length * cos(way), length * sin(way))
    points = rounded_face((0, 0), end, height)
    # Right of the way: the cross product with the way is negative.
    out = [(x * end[1] - y * end[0]) / length for x, y in points]
    assert max(out) == pytest.approx(height, rel=1e-9)
    assert min(out) > 0
    assert rounded_face((0, 0), end, 0.0) == ()


def solid(corners: tuple[XY, ...]) -> Polygon:
    return Polygon(corners)


def check_drawing(shape: JointShape) -> None:
    """What must hold of any joint drawn."""
    weld = solid(shape.weld)
    assert weld.is_valid
    # Chords cut a little off the parabola, never the flat part.
    assert weld.area == pytest.approx(shape.section_m2, rel=2.5e-3)
    assert polygon_area(shape.weld) == pytest.approx(weld.area, rel=1e-9)
    speck = 1e-9 * weld.area
    for plate in shape.plates:
        assert solid(plate).is_valid
        assert weld.intersection(solid(plate)).area <= speck
        assert weld.distance(solid(plate)) <= 0.0048  # never farther than the widest gap
    for one, other in combinations(shape.plates, 2):
        assert solid(one).intersection(solid(other)).area <= speck
    for dimension in shape.dimensions:
        (x0, y0), (x1, y1) = dimension.start, dimension.end
        assert hypot(x1 - x0, y1 - y0) == pytest.approx(dimension.value_m, rel=1e-9)


@given(kinds, plates, plates, legs, crowns, gaps)
def test_a_fillet_is_drawn_as_it_is_counted(
    kind: JointKind, plate: float, plate2: float, leg: float, crown: float, gap: float
) -> None:
    shape = fillet_joint(kind, plate, plate2, leg, leg, crown, gap)
    check_drawing(shape)
    assert shape.section_m2 == pytest.approx(leg**2 / 2 + 2 / 3 * leg * sqrt(2) * crown, rel=1e-12)
    assert shape.face_m == pytest.approx(leg * sqrt(2))
    assert shape.leg_m == leg


@given(kinds, plates, legs, st.floats(1.0, 1.7))
def test_the_throat_is_of_the_leg_asked_for_not_of_the_one_welded_for_a_gap(
    kind: JointKind, plate: float, leg: float, more: float
) -> None:
    shape = fillet_joint(kind, plate, plate, leg * more, leg, 0.0, 0.002)
    assert shape.throat_m == pytest.approx(0.70710678 * leg, rel=1e-7)
    # By drawing: the root is that far and more from the flat face.
    face = LineString([(leg * more, 0), (0, leg * more)])
    assert Point(0, 0).distance(face) >= shape.throat_m * (1 - 1e-9)


@given(kinds, plates, legs)
def test_the_toes_stand_a_leg_from_the_root(kind: JointKind, plate: float, leg: float) -> None:
    shape = fillet_joint(
        kind, plate, plate, leg, leg, usual_crown(flat_section(leg), leg * sqrt(2))
    )
    left, bottom, right, top = solid(shape.weld).bounds
    assert (left, bottom) == (0, 0)
    assert (0.0, leg) in shape.weld
    assert (leg, 0.0) in shape.weld
    assert leg <= right <= 1.6 * leg
    assert leg <= top <= 1.6 * leg


def square_joint(plate: float, plate2: float, gap: float, crown: float) -> JointShape:
    return groove_joint(Groove("square", 0.0, gap, min(plate, plate2)), plate, plate2, crown)


@given(plates, plates, gaps, st.floats(0.0003, 0.0047))
def test_a_square_butt_is_drawn_as_it_is_counted(
    plate: float, plate2: float, gap: float, crown: float
) -> None:
    shape = square_joint(plate, plate2, gap, crown)
    check_drawing(shape)
    thinner = min(plate, plate2)
    face = square_face_width(thinner, gap)
    assert shape.section_m2 == pytest.approx(gap * thinner + 2 / 3 * face * crown, rel=1e-12)
    assert shape.throat_m == thinner
    assert shape.face_m == face


def test_a_square_butt_without_crown_is_its_gap() -> None:
    shape = square_joint(0.006, 0.006, 0.002, 0.0)
    assert solid(shape.weld).area == pytest.approx(12e-6)
    assert [d.name for d in shape.dimensions] == ["plate", "plate2", "gap"]


@given(plates, gaps)
def test_square_face(plate: float, gap: float) -> None:
    wide = square_face_width(plate, gap)
    assert gap < wide <= gap + 0.006
    assert wide - gap == pytest.approx(min(2 * plate, 0.006))


@given(kinds, plates, legs, st.floats(0.1, 10))
def test_twice_the_size_is_four_times_the_metal(
    kind: JointKind, plate: float, leg: float, scale: float
) -> None:
    one = fillet_joint(kind, plate, plate, leg, leg, leg / 10)
    other = fillet_joint(kind, plate * scale, plate * scale, leg * scale, leg * scale,
                         leg * scale / 10)  # fmt: skip
    assert other.section_m2 == pytest.approx(one.section_m2 * scale**2, rel=1e-9)
    assert other.throat_m == pytest.approx(one.throat_m * scale, rel=1e-9)


def test_a_full_round_of_the_fillets_own_numbers() -> None:
    # Half-circle crowns are not drawn; a flat one a quarter of a square.
    assert flat_section(0.01) == pytest.approx(50e-6)
    assert face_section(0.01, 0.005) < pi * 0.005**2 / 2


@pytest.mark.parametrize("bad", [0.0, -1.0, float("nan"), float("inf")])
def test_lengths_that_are_none_are_refused(bad: float) -> None:
    for place, name in enumerate(("plate_m", "plate2_m", "leg_m", "wanted_leg_m")):
        sizes = [0.01] * 4
        sizes[place] = bad
        with pytest.raises(OutOfRangeError, match=f"{name} = "):
            fillet_joint("tee", sizes[0], sizes[1], sizes[2], sizes[3], 0.0)
    with pytest.raises(OutOfRangeError, match="plate_m = "):
        square_joint(bad, 0.01, 0.001, 0.001)


@pytest.mark.parametrize("bad", [-0.001, float("nan")])
def test_a_crown_or_gap_below_zero_is_refused(bad: float) -> None:
    with pytest.raises(OutOfRangeError, match="convexity_m"):
        fillet_joint("tee", 0.01, 0.01, 0.006, 0.006, bad)
    with pytest.raises(OutOfRangeError, match="gap_m"):
        fillet_joint("tee", 0.01, 0.01, 0.006, 0.006, 0.0, bad)
    with pytest.raises(OutOfRangeError, match="must be 0 or more, not both 0"):
        square_joint(0.01, 0.01, bad, 0.001)
    with pytest.raises(OutOfRangeError, match="must be 0 or more, not both 0"):
        square_joint(0.01, 0.01, 0.001, bad)


def test_nothing_to_fill_is_refused() -> None:
    with pytest.raises(OutOfRangeError, match="not both 0"):
        square_joint(0.01, 0.01, 0.0, 0.0)


def test_a_square_butt_is_no_fillet() -> None:
    with pytest.raises(OutOfRangeError, match="kind = square must be one of tee, lap, corner"):
        fillet_joint("square", 0.01, 0.01, 0.006, 0.006, 0.0)


def test_area_is_signless() -> None:
    assert polygon_area(((0, 0), (0, 1), (1, 1), (1, 0))) == pytest.approx(1)


@pytest.mark.parametrize(
    ("text", "angle"),
    [("skew=75deg", 75), ("joint=v&angle=50deg", 50), ("joint=bevel", 45),
     ("joint=double-v&plate=1in", 60), ("joint=tee-bevel&angle=30deg", 30)],
)  # fmt: skip
def test_the_angle_written_is_the_one_between_the_edges(text: str, angle: float) -> None:
    shape = joint_shape(read_query(text).job)[0]
    (drawn,) = shape.angles
    assert drawn.value_deg == pytest.approx(angle)
    # The arc runs outside the weld.
    far = max(Point(drawn.vertex).distance(Point(xy)) for xy in shape.weld if xy[1] <= 0)
    assert drawn.radius_m > 0.5 * far


def test_corners_are_each_there_once() -> None:
    assert same((0.0, 0.0), (1e-10, -1e-10))
    assert not same((0.0, 0.0), (1e-8, 0.0))
    assert corners(((0, 0), (1, 0), (1, 0), (1, 1), (0, 1e-12), (0, 0))) == ((0, 0), (1, 0), (1, 1))
