"""Areas below a level against shapely's clipping, and both ways."""

from itertools import accumulate
from math import cos, pi, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely import Polygon, box

from beadwright.errors import OutOfRangeError
from beadwright.layers.sweep import band, sweep

TRAPEZOID = [(0.0, 0.0), (4.0, 0.0), (3.0, 2.0), (1.0, 2.0)]


@st.composite
def stars(draw: st.DrawFn) -> list[tuple[float, float]]:
    """Simple polygons of any shape around the origin, either way round."""
    count = draw(st.integers(5, 14))
    turns = list(accumulate(draw(st.floats(1, 2)) for _ in range(count)))
    turns = [turn / turns[-1] for turn in turns]
    radii = [draw(st.floats(0.2, 1)) for _ in range(count)]
    points = [(r * cos(2 * pi * t), r * sin(2 * pi * t)) for r, t in zip(radii, turns, strict=True)]
    return points[::-1] if draw(st.booleans()) else points


@given(stars(), st.floats(-1.1, 1.1), st.sampled_from([0, 1]))
def test_area_below_is_what_clipping_leaves(
    points: list[tuple[float, float]], level: float, axis: int
) -> None:
    below = box(-2, -2, level, 2) if axis == 0 else box(-2, -2, 2, level)
    left = Polygon(points).intersection(below).area
    assert sweep(points, axis).below(level) == pytest.approx(left, abs=1e-9)


@given(stars(), st.floats(0, 1), st.sampled_from([0, 1]))
def test_a_share_of_the_area_is_found_again(
    points: list[tuple[float, float]], share: float, axis: int
) -> None:
    swept = sweep(points, axis)
    assert swept.area == pytest.approx(Polygon(points).area)
    assert swept.below(swept.level(share * swept.area)) == pytest.approx(
        share * swept.area, abs=1e-9
    )


@given(stars(), st.floats(-1, 1), st.floats(-1, 1), st.sampled_from([0, 1]))
def test_a_band_has_the_area_between_its_levels(
    points: list[tuple[float, float]], one: float, other: float, axis: int
) -> None:
    low, high = sorted((one, other))
    assume(high - low > 1e-3)
    cut = band(points, axis, low, high)
    swept = sweep(points, axis)
    between = swept.below(high) - swept.below(low)
    assume(between > 1e-6)
    twice = sum(
        x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in zip(cut, [*cut[1:], cut[0]], strict=True)
    )
    assert abs(twice) / 2 == pytest.approx(between, abs=1e-9)
    assert all(low - 1e-12 <= point[axis] <= high + 1e-12 for point in cut)


def test_a_trapezoid_by_hand() -> None:
    # Area 6; the lower half of its height holds (4 + 3) / 2 x 1 = 3.5.
    swept = sweep(TRAPEZOID, 1)
    assert swept.area == pytest.approx(6.0)
    assert swept.below(1.0) == pytest.approx(3.5)
    assert swept.level(3.5) == pytest.approx(1.0)
    assert swept.below(-1.0) == 0.0
    assert swept.below(9.0) == pytest.approx(6.0)
    assert swept.level(0.0) == 0.0
    assert swept.level(swept.area) == 2.0


def test_nothing_to_sweep_is_refused() -> None:
    with pytest.raises(OutOfRangeError, match="three or more"):
        sweep([(0.0, 0.0), (1.0, 1.0)], 1)
    with pytest.raises(OutOfRangeError, match="enclose"):
        sweep([(0.0, 0.0), (1.0, 1.0), (2.0, 2.0)], 1)
    with pytest.raises(OutOfRangeError, match="must be 0 to"):
        sweep(TRAPEZOID, 1).level(6.1)
    with pytest.raises(OutOfRangeError, match="must be 0 to"):
        sweep(TRAPEZOID, 1).level(-0.1)


def test_a_band_beyond_the_polygon_is_empty() -> None:
    assert band(TRAPEZOID, 1, 3.0, 4.0) == []
