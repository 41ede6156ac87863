"""Cooling: closed form against the field itself, worked by other means; the curve; hardness."""

from math import pi, sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.errors import OutOfRangeError
from beadwright.heating.cooling import (
    BEAD,
    BUTT,
    CORNER,
    TEE,
    ShapeFactors,
    cooling,
    shape_factors,
    thick_time,
    thin_time,
    transition_thickness,
)
from beadwright.heating.thermal_field import (
    implied_metal,
)
from beadwright.temperatures import (
    from_celsius,
)

HEATS, STARTS = st.floats(0.3e6, 4e6), st.floats(260, 570)


@given(HEATS, STARTS, st.floats(0.4, 1), st.floats(0.4, 1))
def test_at_the_transition_both_take_the_same_time(
    heat: float, start: float, thin: float, thick: float
) -> None:
    depth = transition_thickness(heat, start, thin, thick)
    assert thin_time(heat, depth, start, thin) == pytest.approx(thick_time(heat, start, thick))


@given(HEATS, STARTS, st.floats(2e-3, 60e-3), st.floats(2e-3, 60e-3))
def test_the_larger_time_rules_and_the_room_holds_it(
    heat: float, start: float, plate: float, plate2: float
) -> None:
    for factors in (TEE, CORNER, BUTT, BEAD):
        found = cooling((0.9 * heat, heat, 1.1 * heat), (plate, plate2), start, factors)
        assert found.seconds == max(found.thick_s, found.thin_s)
        assert found.low <= found.seconds <= found.high
        middle = (plate + plate2) / 2
        assert (found.regime == "thin") == (middle < found.transition_m)


@given(HEATS, st.floats(260, 550), st.floats(2e-3, 60e-3))
def test_more_heat_or_preheat_cools_slower_more_plate_faster(
    heat: float, start: float, depth: float
) -> None:
    assert thick_time(heat * 1.1, start) > thick_time(heat, start)
    assert thick_time(heat, start + 10) > thick_time(heat, start)
    assert thin_time(heat, depth, start + 10) > thin_time(heat, depth, start)
    assert thin_time(heat, depth * 1.1, start) < thin_time(heat, depth, start)


@pytest.mark.parametrize("start_c", [500, 800, -60])
def test_a_start_the_formulas_are_not_for_is_refused(start_c: float) -> None:
    start = from_celsius(start_c)
    for ask in (
        lambda: thick_time(1e6, start),
        lambda: thin_time(1e6, 0.01, start),
        lambda: transition_thickness(1e6, start),
        lambda: implied_metal(start),
    ):
        with pytest.raises(OutOfRangeError, match="must be from −50 °C to below 500 °C"):
            ask()


@pytest.mark.parametrize("start_c", [-50, 499])
def test_a_start_at_the_ends_is_taken(start_c: float) -> None:
    start = from_celsius(start_c + 1e-6)
    assert thick_time(1e6, start) > 0
    assert implied_metal(start).conductivity > 0
    for ask in (thick_time, transition_thickness):
        with pytest.raises(OutOfRangeError):
            ask(1e6, from_celsius(-51))
    with pytest.raises(OutOfRangeError):
        implied_metal(from_celsius(-51))


ODD = ShapeFactors((0.4, 0.5, 0.6), (0.7, 0.8, 0.9))


@pytest.mark.parametrize("thicker", [12e-3, 80e-3])
def test_the_room_is_least_heat_in_the_thicker_part_to_most_in_the_thinner(thicker: float) -> None:
    start, thinner = from_celsius(60), thicker * 2 / 3
    middle = (thicker + thinner) / 2
    found = cooling((0.9e6, 1.2e6, 1.5e6), (thinner, thicker), start, ODD)
    assert found.low == max(thick_time(0.9e6, start, 0.7), thin_time(0.9e6, thicker, start, 0.4))
    assert found.thick_s == thick_time(1.2e6, start, 0.8)
    assert found.thin_s == pytest.approx(thin_time(1.2e6, middle, start, 0.5))
    assert found.high == max(thick_time(1.5e6, start, 0.9), thin_time(1.5e6, thinner, start, 0.6))
    assert found.transition_m == transition_thickness(1.2e6, start, 0.5, 0.8)


def test_every_joint_has_shape_factors() -> None:
    assert shape_factors("tee") is TEE
    assert shape_factors("lap") is TEE
    assert shape_factors("corner") is CORNER
    assert shape_factors("double-v") is BUTT


def test_where_thin_plate_turns_thick_by_hand() -> None:
    # 1 kJ/mm from 20 °C: (4300 - 86)/(6700 - 100)·1e5·(1/480 + 1/780) is 214.874, its root in mm.
    assert transition_thickness(1e6, from_celsius(20)) == pytest.approx(14.6586e-3, rel=1e-5)
    assert transition_thickness(1e6, from_celsius(20), 0.45, 0.9) == pytest.approx(
        14.6586e-3 / sqrt(2), rel=1e-5
    )


def test_fifty_below_is_the_coldest_start() -> None:
    coldest = from_celsius(-50)
    # 1/(2π·(6700 + 250)) in W/(mm·K).
    assert implied_metal(coldest).conductivity == pytest.approx(1e6 / (2 * pi * 6950))
    # (6700 + 250)·(1/550 - 1/850).
    assert thick_time(1e6, coldest) == pytest.approx(6950 * (1 / 550 - 1 / 850))
    with pytest.raises(OutOfRangeError, match="−50 °C to below 500 °C"):
        thick_time(1e6, coldest - 1)
