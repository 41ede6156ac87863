"""Fillet sizes: what the codes ask for, between and past the printed rows."""

from math import sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.errors import OutOfRangeError
from beadwright.joint.fillets import (
    REINFORCED_OVER_FLAT,
    face_section,
    flat_section,
    gapped_leg,
    largest_convexity,
    largest_edge_leg,
    leg_of_section,
    minimum_leg,
    throat,
    usual_crown,
)

INCH = 0.0254
lengths = st.floats(0.0003, 0.1)


@given(lengths, lengths)
def test_thicker_plate_never_asks_for_a_smaller_fillet(one: float, other: float) -> None:
    low, high = sorted((one, other))
    assert minimum_leg(low) <= minimum_leg(high)
    assert minimum_leg(low) <= low


@given(lengths)
def test_an_edge_is_never_filled_over(edge: float) -> None:
    most = largest_edge_leg(edge)
    assert 0 < most <= edge
    assert most == edge or edge - most == pytest.approx(INCH / 16)


@given(st.floats(0.003, 0.05), st.floats(0, 3 / 16 * INCH))
def test_a_gap_costs_no_throat(leg: float, gap: float) -> None:
    wide = gapped_leg(leg, gap)
    # The leg on the gapped plate is bridged from beyond the gap; over 1/16 in it is made good.
    left = wide - (gap if gap > INCH / 16 + 1e-9 else 0)
    assert left == pytest.approx(leg)


@pytest.mark.parametrize("gap", [-1e-6, 3 / 16 * INCH + 1e-5, float("nan"), float("inf")])
def test_a_gap_no_fillet_may_be_welded_over_is_refused(gap: float) -> None:
    with pytest.raises(OutOfRangeError, match=r"gap_m = .* must be 0 to 0\.00476 \(3/16 in\)"):
        gapped_leg(0.006, gap)


@given(lengths, st.floats(1, 1.5))
def test_leg_and_section_undo_each_other(leg: float, over_flat: float) -> None:
    section = flat_section(leg) * over_flat
    assert leg_of_section(section, over_flat) == pytest.approx(leg, rel=1e-12)
    assert leg_of_section(section * 1.01, over_flat) > leg


@given(lengths)
def test_throat_and_section_by_pythagoras(leg: float) -> None:
    # The throat is the height of the triangle over its longest side.
    face = sqrt(leg**2 + leg**2)
    assert throat(leg) * face / 2 == pytest.approx(flat_section(leg), rel=1e-12)


@given(st.floats(0, 0.05), st.floats(0, 0.01))
def test_the_crown_is_two_thirds_of_its_box(face: float, height: float) -> None:
    steps = 200
    strip = face / steps
    middles = ((n + 0.5) / steps for n in range(steps))
    summed = sum(4 * x * (1 - x) * height * strip for x in middles)
    assert face_section(face, height) == pytest.approx(summed, rel=1e-4, abs=1e-15)


@given(lengths)
def test_the_usual_crown_makes_the_reinforced_section_or_stops_at_the_code(leg: float) -> None:
    face = leg * sqrt(2)
    crown = usual_crown(flat_section(leg), face)
    section = flat_section(leg) + face_section(face, crown)
    assert 0 < crown <= largest_convexity(face)
    assert section <= REINFORCED_OVER_FLAT * flat_section(leg) * (1 + 1e-9)
    if crown < largest_convexity(face):
        assert section == pytest.approx(REINFORCED_OVER_FLAT * flat_section(leg))


@given(lengths, lengths)
def test_a_wider_face_never_allows_less_crown(one: float, other: float) -> None:
    low, high = sorted((one, other))
    assert largest_convexity(low) <= largest_convexity(high)


@pytest.mark.parametrize("bad", [0.0, -0.001, float("nan"), float("inf")])
@pytest.mark.parametrize(
    ("function", "name"),
    [
        (minimum_leg, "thinner_m"),
        (largest_edge_leg, "edge_m"),
        (throat, "leg_m"),
        (flat_section, "leg_m"),
        (largest_convexity, "face_m"),
        (leg_of_section, "section_m2"),
    ],
)
def test_what_is_not_above_zero_is_refused(function: object, name: str, bad: float) -> None:
    assert callable(function)
    with pytest.raises(OutOfRangeError, match=f"{name} = .* must be above zero and finite"):
        function(bad)


def test_a_gapped_leg_of_nothing_is_refused() -> None:
    with pytest.raises(OutOfRangeError, match="leg_m = 0 must be above zero"):
        gapped_leg(0, 0)
