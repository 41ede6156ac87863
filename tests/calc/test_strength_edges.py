"""Strength: where a rule begins and ends, worked by hand on either side of it."""

import pytest

from beadwright.base_metal import matching_thickness
from beadwright.errors import OutOfRangeError
from beadwright.intermittent import intermittent_for
from beadwright.resistance_aisc import (
    concentric_strength,
    direction_factor,
    filler_strength,
    long_weld_factor,
)
from beadwright.resistance_en import effective_length
from beadwright.steel_strength import STRENGTHS

KSI = 6.894757e6


@pytest.mark.parametrize(
    ("wire", "ksi"),
    [
        ("ER70S6", 70),  # written without its dash
        ("E60T-8", 60),  # AWS A5.20 of old, from memory
        ("ER120S-1", 120),
    ],
)
def test_a_class_says_its_strength_from_60_to_120(wire: str, ksi: float) -> None:
    assert filler_strength(wire) == pytest.approx(ksi * KSI, rel=1e-6)


@pytest.mark.parametrize("wire", ["ER50S-6", "ER75S-6", "ER130S-1", "E7T-1", "solid"])
def test_a_class_that_says_no_strength_is_refused(wire: str) -> None:
    with pytest.raises(OutOfRangeError, match="does not say a strength of 60 to 120 ksi"):
        filler_strength(wire)


def test_a_fillet_is_at_most_square_to_its_load() -> None:
    assert direction_factor(90.0) == 1.5
    with pytest.raises(OutOfRangeError, match="must be 0 to 90"):
        direction_factor(91.0)


def test_over_300_legs_a_weld_counts_180_of_them() -> None:
    assert long_weld_factor(3.10, 0.01) == pytest.approx(180 / 310)


def test_a_load_may_have_no_weld_along_it_or_none_across() -> None:
    assert concentric_strength(0.0, 2.0) == pytest.approx(3.0)
    assert concentric_strength(2.0, 0.0) == pytest.approx(2.0)


def test_six_throats_must_be_left_where_that_is_over_30_mm() -> None:
    # 46 mm less two throats of 6 leaves 34; six throats are 36.
    with pytest.raises(OutOfRangeError, match=r"leaves 34 mm.* must keep 36 mm"):
        effective_length(0.046, 0.006)
    assert effective_length(0.049, 0.006) == pytest.approx(0.037)


def test_a_plate_matches_one_weld_unless_two_are_given() -> None:
    assert matching_thickness(0.01, 480e6, 400e6) == pytest.approx(0.01 * 0.70711 * 1.2, rel=1e-5)


def test_a_seam_asked_a_little_more_than_its_weld_holds_is_refused() -> None:
    with pytest.raises(OutOfRangeError, match="weld all along"):
        intermittent_for(1.03, 1.0, 0.05, 0.005)
    assert intermittent_for(1.0, 1.0, 0.05, 0.005).pitch_m == 0.05


@pytest.mark.parametrize(
    ("grade", "most_mm"),
    [("A572-50", 101.6), ("A572-60", 31.75), ("A588", 203.2), ("A500-B", 25.4), ("A500-C", 25.4),
     ("S235JR", 100), ("S275JR", 100), ("S355J2", 100)],
)  # fmt: skip
def test_a_grade_is_not_held_thicker_than_its_last_row(grade: str, most_mm: float) -> None:
    steel = STRENGTHS[grade]
    assert steel.at(most_mm / 1000) == steel.rows[-1][1:]
    with pytest.raises(OutOfRangeError, match=f"{grade} is not held here over"):
        steel.at(1.02 * most_mm / 1000)
