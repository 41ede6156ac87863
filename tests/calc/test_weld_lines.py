"""Weld groups as lines: second opinions on their properties, statics of the elastic method."""

from dataclasses import replace
from math import cos, hypot, pi, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import LineString, MultiLineString

from beadwright.errors import OutOfRangeError
from beadwright.strength.elastic_line import (
    GroupLoad,
    LineForce,
    line_forces,
    load_at_centroid,
    worst,
)
from beadwright.strength.weld_group import SHAPES, WeldGroup, polyline_group, shaped_group
from beadwright.strength.weld_line import line_properties

SIZES = st.floats(0.01, 2.0)
POINTS = st.lists(
    st.tuples(st.floats(-1, 1), st.floats(-1, 1)).map(lambda p: (round(p[0], 3), round(p[1], 3))),
    min_size=3,
    max_size=7,
    unique=True,
)
LOAD = st.builds(GroupLoad, *(st.floats(-1e5, 1e5) for _ in range(6)))


def leans(group: WeldGroup) -> bool:
    """True if the group has width both ways, so that it can be bent any way."""
    p = line_properties(group)
    return p.ix * p.iy - p.ixy**2 > 1e-3 * p.j**2


@given(st.sampled_from(sorted(SHAPES)), SIZES, SIZES)
def test_length_and_centroid_are_those_of_the_lines_drawn(
    shape: str, width: float, height: float
) -> None:
    group = shaped_group(shape, width, height)
    drawn = MultiLineString([LineString(stretch) for stretch in group.stretches])
    p = line_properties(group)
    assert p.length_m == pytest.approx(drawn.length)
    assert group.length_m == pytest.approx(drawn.length)
    assert (p.x, p.y) == pytest.approx((drawn.centroid.x, drawn.centroid.y))


@given(POINTS)
def test_second_moments_are_those_of_many_short_pieces(points: list[tuple[float, float]]) -> None:
    group = polyline_group(tuple(points))
    p = line_properties(group)
    pieces = 400
    ix = iy = ixy = 0.0
    for (x0, y0), (x1, y1) in group.stretches:
        share = hypot(x1 - x0, y1 - y0) / pieces
        for i in range(pieces):
            at = (i + 0.5) / pieces
            dx, dy = x0 + at * (x1 - x0) - p.x, y0 + at * (y1 - y0) - p.y
            ix, iy, ixy = ix + dy * dy * share, iy + dx * dx * share, ixy + dx * dy * share
    assert (p.ix, p.iy, p.ixy) == pytest.approx((ix, iy, ixy), rel=1e-4, abs=1e-5)


@given(st.sampled_from([*sorted(SHAPES), "circle"]), SIZES, SIZES, LOAD)
def test_forces_along_the_weld_add_up_to_the_load(
    shape: str, width: float, height: float, load: GroupLoad
) -> None:
    group = shaped_group(shape, width, height)
    if not leans(group):
        load = GroupLoad(load.px, load.py, load.pz, mz=load.mz)
    p = line_properties(group)
    forces = _at_samples(group, load)
    scale = max(abs(v) for v in (load.px, load.py, load.pz, load.mx, load.my, load.mz, 1.0))
    scale *= 1 + width + height
    total = [0.0] * 6
    for f in forces:
        share, dx, dy = f.place.length_m, f.place.x - p.x, f.place.y - p.y
        for i, value in enumerate((f.fx, f.fy, f.fz, dy * f.fz, -dx * f.fz, dx * f.fy - dy * f.fx)):
            total[i] += value * share
    wanted = (load.px, load.py, load.pz, load.mx, load.my, load.mz)
    assert total == pytest.approx(wanted, abs=1e-6 * scale)


def _at_samples(group: WeldGroup, load: GroupLoad) -> list[LineForce]:
    """Forces at the samples, by cutting the weld at each."""
    cut = replace(group)
    cut.__dict__["ends"] = group.samples  # what the cached property would have found
    return list(line_forces(cut, load, line_properties(group)))


@given(POINTS, LOAD, st.floats(0, 2 * pi))
def test_turning_weld_and_load_together_changes_nothing(
    points: list[tuple[float, float]], load: GroupLoad, angle: float
) -> None:
    group = polyline_group(tuple(points))
    if not leans(group):
        return
    c, s = cos(angle), sin(angle)
    turned = polyline_group(tuple((c * x - s * y, s * x + c * y) for x, y in points))
    other = GroupLoad(c * load.px - s * load.py, s * load.px + c * load.py, load.pz,
                      c * load.mx - s * load.my, s * load.mx + c * load.my, load.mz)  # fmt: skip
    before, after = line_forces(group, load), line_forces(turned, other)
    for one, two in zip(before, after, strict=True):
        assert one.total == pytest.approx(two.total, rel=1e-6, abs=1e-3)
        assert one.along == pytest.approx(two.along, rel=1e-6, abs=1e-3)
        assert one.across == pytest.approx(two.across, rel=1e-6, abs=1e-3)


def test_a_load_off_the_centroid_brings_its_moments() -> None:
    p = line_properties(shaped_group("rectangle", 4.0, 6.0))
    moved = load_at_centroid(p, GroupLoad(1.0, 2.0, 3.0, mz=7.0), (5.0, 4.0, 2.0))
    # r = (3, 1, 2): r × P = (1·3 - 2·2, 2·1 - 3·3, 3·2 - 1·1), by hand.
    assert (moved.mx, moved.my, moved.mz) == pytest.approx((-1.0, -7.0, 12.0))
    assert not moved.in_plane
    assert GroupLoad(1.0, 2.0, mz=3.0).in_plane


def test_a_single_line_bends_about_the_axis_across_it_only() -> None:
    line = shaped_group("line", 1.0, 6.0)
    forces = line_forces(line, GroupLoad(mx=36.0))
    assert [f.fz for f in forces] == pytest.approx([-6.0, 6.0])  # M/(d²/6), by hand
    with pytest.raises(OutOfRangeError, match="about itself"):
        line_forces(line, GroupLoad(my=1.0))
    level = polyline_group(((0.0, 0.0), (6.0, 0.0)))
    assert [f.fz for f in line_forces(level, GroupLoad(my=36.0))] == pytest.approx([6.0, -6.0])
    slant = polyline_group(((0.0, 0.0), (3.0, -3.0)))
    across = GroupLoad(mx=-1.0, my=-1.0)  # about the axis square to the slant
    assert max(abs(f.fz) for f in line_forces(slant, across)) == pytest.approx(
        2**0.5 / (18 / 6), rel=1e-9
    )


def test_nothing_that_bends_leaves_nothing_out_of_the_plane() -> None:
    forces = line_forces(shaped_group("c", 4.0, 6.0), GroupLoad(px=3.0, py=-1.0, mz=-8.0))
    assert {f.fz for f in forces} == {0.0}


@pytest.mark.parametrize("size", [0.001, 1.0, 1000.0])
def test_a_square_bends_alike_at_any_size(size: float) -> None:
    # Ix of a square of four lines is 2·d³/12 + 2·d·(d/2)² = 2/3·d³; M of d² gives 3/4 at its edge.
    square = shaped_group("rectangle", size, size)
    forces = line_forces(square, GroupLoad(mx=size**2))
    assert max(f.fz for f in forces) == pytest.approx(0.75)
    assert min(f.fz for f in forces) == pytest.approx(-0.75)
    turned = line_forces(square, GroupLoad(my=size**2))
    assert {round(f.fz, 6) for f in turned if f.place.x == 0} == {0.75}


@pytest.mark.parametrize("times", [1.0, 1e6])
def test_a_line_that_rises_bends_about_the_axis_across_it(times: float) -> None:
    line = polyline_group(((0.0, 0.0), (1.0, 3.0)))
    # √10 long: M/(d²/6) is √10·6/10.
    forces = line_forces(line, GroupLoad(mx=3 * times, my=-times))
    assert [f.fz for f in forces] == pytest.approx([-1.8973666 * times, 1.8973666 * times])


def test_the_worst_is_the_greatest() -> None:
    forces = line_forces(shaped_group("c", 4.0, 6.0), GroupLoad(py=-1.0, mz=-8.0))
    at = worst(forces)
    assert forces[at].total == max(f.total for f in forces)


def test_ends_pieces_and_outline_of_the_shapes() -> None:
    facts = {
        name: (g.free_ends, round(g.shortest_m, 9), g.way is not None)
        for name in (*SHAPES, "circle")
        for g in (shaped_group(name, 4.0, 6.0),)
    }
    assert facts == {
        "line": (2, 6.0, True),
        "lines": (4, 6.0, True),
        "flats": (4, 4.0, True),
        "rectangle": (0, 20.0, False),
        "c": (2, 14.0, False),
        "l": (2, 10.0, False),
        "t": (3, 10.0, False),
        "circle": (0, round(6 * pi, 9), False),
    }
    for name in ("rectangle", "circle"):
        assert shaped_group(name, 6.0, 6.0).outline == (0.0, 0.0, 6.0, 6.0)
    assert shaped_group("circle", 1.0, 6.0).samples[0].length_m == pytest.approx(6 * pi / 72)


def test_a_polyline_has_two_to_24_points() -> None:
    steps = tuple((i / 10, i % 2 / 10) for i in range(25))
    # 23 steps of √2 tenths.
    assert line_properties(polyline_group(steps[:24])).length_m == pytest.approx(2.3 * 2**0.5)
    assert len(polyline_group(steps[:2]).stretches) == 1
    with pytest.raises(OutOfRangeError, match="25 points; it must have 2 to 24"):
        polyline_group(steps)


def test_points_a_micrometre_apart_are_one() -> None:
    assert polyline_group(((0.0, 0.0), (1.2e-6, 0.0))).length_m == pytest.approx(1.2e-6)
    with pytest.raises(OutOfRangeError, match="twice in a row"):
        polyline_group(((1.0, 1.0), (1.0, 1.0 + 0.9e-6)))


def test_where_the_shapes_stand() -> None:
    width, depth = 4.0, 6.0
    assert {end.length_m for end in shaped_group("c", width, depth).ends} == {0}
    assert shaped_group("line", width, depth).stretches == (((0, 0), (0, 6)),)
    assert shaped_group("lines", width, depth).stretches == (((0, 0), (0, 6)), ((4, 0), (4, 6)))
    assert shaped_group("flats", width, depth).stretches == (((0, 0), (4, 0)), ((0, 6), (4, 6)))
    assert shaped_group("c", width, depth).stretches == (
        ((4, 0), (0, 0)), ((0, 0), (0, 6)), ((0, 6), (4, 6)),
    )  # fmt: skip
    assert shaped_group("l", width, depth).stretches == (((4, 0), (0, 0)), ((0, 0), (0, 6)))
    assert shaped_group("t", width, depth).stretches == (((0, 6), (4, 6)), ((2, 0), (2, 6)))
    assert shaped_group("rectangle", width, depth).outline == (0, 0, 4, 6)
    ring = shaped_group("circle", width, depth)
    assert ring.outline == (0, 0, 6, 6)
    assert ring.length_m == pytest.approx(18.849556)
    # A quarter of the way round it runs to the left, at the top.
    top = ring.ends[18]
    assert (top.x, top.y, top.along_x, top.along_y) == pytest.approx((3, 6, -1, 0), abs=1e-12)
    assert top.length_m == 0
    right = ring.ends[0]
    assert (right.x, right.y, right.along_x, right.along_y) == pytest.approx((6, 3, 0, 1))


def test_ends_that_meet_no_other_line_are_free() -> None:
    assert polyline_group(((1.0, 1.0), (5.0, 1.0), (5.0, 7.0))).free_ends == 2
    assert polyline_group(((1.0, 1.0), (5.0, 1.0), (5.0, 7.0), (1.0, 1.0))).free_ends == 0
    # Its last end stops half a meter short of the first line.
    near = polyline_group(((0.0, 0.0), (10.0, 0.0), (10.0, 5.0), (5.0, 0.5)))
    assert near.free_ends == 2
    assert shaped_group("c", 0.1, 0.1).free_ends == 2
    assert shaped_group("t", 0.1, 0.1).free_ends == 3


def test_the_way_of_a_weld_is_that_of_its_lines() -> None:
    assert polyline_group(((1.0, 1.0), (4.0, 5.0))).way == pytest.approx((0.6, 0.8))
    assert polyline_group(((1.0, 1.0), (4.0, 5.0), (7.0, 9.0))).way == pytest.approx((0.6, 0.8))
    assert polyline_group(((1.0, 1.0), (4.0, 5.0), (7.0, 9.01))).way is None


@pytest.mark.parametrize(
    ("make", "said"),
    [
        (lambda: shaped_group("knot", 1.0, 1.0), "knot"),
        (lambda: shaped_group("c", 0.0, 1.0), "width_m"),
        (lambda: polyline_group(((0.0, 0.0),)), "1 points"),
        (lambda: polyline_group(((0.0, 0.0),) * 2), "twice"),
    ],
)
def test_shapes_that_are_none_are_refused(make: object, said: str) -> None:
    assert callable(make)
    with pytest.raises(OutOfRangeError, match=said):
        make()
