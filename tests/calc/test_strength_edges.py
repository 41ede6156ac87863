"""Strength: where a rule begins and ends, worked by hand on either side of it."""

from dataclasses import replace

import pytest

from beadwright.api import answer_json
from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.strength.elastic_line import GroupLoad
from beadwright.strength.intermittent import pitch_for
from beadwright.strength.resistance_aisc import (
    concentric_strength,
    direction_factor,
    filler_strength,
    long_weld_factor,
)
from beadwright.strength.resistance_en import effective_length
from beadwright.strength.steel_strength import STRENGTHS
from beadwright.strength.strength_check import point_numbers
from tests.calc.strength_asked import ask
from tests.told import in_words

KSI = 6.894757e6
KIP_IN = 175126.8
"""A kip per inch [N/m]."""


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


def test_a_seam_asked_a_little_more_than_its_weld_holds_is_refused() -> None:
    with pytest.raises(OutOfRangeError, match="weld all along"):
        pitch_for(1.03, 1.0, 0.05)
    assert pitch_for(1.0, 1.0, 0.05) == 0.05


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


@pytest.mark.parametrize(
    ("query", "welds"),
    [
        ("group=lines&weld_sides=1&plate2=10mm&group_width=20mm", 2),
        ("group=lines&weld_sides=1&plate2=10mm&group_width=20.5mm", 1),
        ("group=flats&weld_sides=1&plate2=10mm&group_width=6in&group_height=20mm", 2),
        ("group=flats&weld_sides=1&plate2=10mm&group_width=6in&group_height=20.5mm", 1),
        ("group=lines&weld_sides=2&plate2=10mm&group_width=6in", 2),
        ("group=line&weld_sides=1&plate2=10mm&group_height=15mm", 1),
    ],
)
def test_welds_within_two_plates_of_each_other_share_one(query: str, welds: int) -> None:
    assert ask(f"{query}&py=1kip&leg=1/8in").task.welds_on_stem == welds


def test_a_moment_under_a_millionth_of_load_times_length_is_rounding() -> None:
    task = ask("group=line&group_height=100mm&py=1kN&plate=1in").task
    # 1000 N times 0.1 m times 1e-6.
    assert replace(task, load=GroupLoad(py=1000.0, mz=0.9e-4)).concentric
    assert not replace(task, load=GroupLoad(py=1000.0, mz=1.2e-4)).concentric


@pytest.mark.parametrize(
    ("query", "ends"),
    [
        ("group=line&py=5kip", True),
        ("group=line&py=5kip&pz=1kip", False),
        ("group=line&py=5kip&px=1kip", False),
        ("group=polyline:0,0 3,4&px=3kip&py=4kip", True),
        ("group=polyline:0,0 3,4&px=-3kip&py=4kip", False),
        ("group=c&py=5kip", False),
        ("line_load=1kip/in", False),
    ],
)
def test_a_weld_is_loaded_at_its_end_by_a_force_along_it(query: str, ends: bool) -> None:
    assert ask(f"{query}&plate=1in&plate2=1in&leg=1/4in").task.end_loaded is ends


def test_a_force_per_length_is_drawn_at_the_middle_of_the_weld() -> None:
    # Uprights of 6 in, 4 in apart: 2 in to the right, 3 in up, in the plane of the weld.
    at = ask("group=lines&group_height=6in&group_width=4in&line_load=1kip/in&leg=1/4in").task.at
    assert at == pytest.approx((2 * 0.0254, 3 * 0.0254, 0.0))


@pytest.mark.parametrize("group", ["line&group_height=6in", "polyline:2,2 8,2", "polyline:2,2 2,8"])
def test_a_weld_as_long_as_its_part_fits_and_a_longer_one_does_not(group: str) -> None:
    assert ask(f"group={group}&py=1kip&part_length=6in").links
    with pytest.raises(FieldErrors):
        ask(f"group={group}&py=1kip&part_length=5.9in")


def test_a_leg_may_be_the_most_along_its_edge() -> None:
    # AISC 360 J2.2b: a quarter of an inch less a sixteenth.
    assert ask("joint=lap&plate=1/2in&plate2=1/4in&leg=3/16in&py=1kip").links


def test_a_moment_in_the_plane_alone_finds_its_center() -> None:
    assert ask("group=c&analysis=ic&mz=5kip-in&leg=1/4in").spread.center is not None


def test_the_instantaneous_center_of_a_bracket_by_the_manual_s_table() -> None:
    # Table 8-8: k 0.5, a 0.25 give C 3.90; the centroid lies 8·0.25/2 = 1 in off the upright, the
    # load 2 in beyond. 3.90·4·8 = 124.8 kip, half of it with Ω 2.00.
    found = ask("group=c&group_width=4in&group_height=8in&weld_sides=1&analysis=ic&py=-20kip"
                "&load_x=3in&leg=1/4in&plate=1in&plate2=1in")  # fmt: skip
    assert found.weld.use == pytest.approx(20 / 62.4, rel=4e-3)
    assert found.spread.factor > 0
    assert ask("group=c&py=-20kip&load_x=3in&leg=1/4in&plate=1in&plate2=1in").spread.factor == 0


@pytest.mark.parametrize(("load", "way"), [("px=6kip", (1, 0)), ("py=-6kip", (0, -1))])
def test_a_weld_that_only_slides_shares_its_load_evenly(load: str, way: tuple[int, int]) -> None:
    found = ask(f"group=line&group_height=6in&analysis=ic&{load}&leg=1/4in&plate=1in&plate2=1in")
    for force in found.spread.forces:
        assert (force.fx, force.fy) == pytest.approx((way[0] * KIP_IN, way[1] * KIP_IN), rel=1e-3)
        assert force.fz == 0


def test_the_added_strength_of_a_line_goes_by_the_angle_of_its_load() -> None:
    line = "group=line&weld_sides=1&leg=1/4in&px=3kip&py=3kip&plate=1in&plate2=1in&held=yes"
    plain, counted = ask(line), ask(f"{line}&cross_increase=yes")
    # 1 + 0.5·sin^1.5 45° = 1 + 0.5·0.5946.
    assert counted.weld.holds == pytest.approx(1.2973 * plain.weld.holds, rel=1e-4)


@pytest.mark.parametrize(
    ("points", "load", "size", "counts"),
    [
        # 6 along, 4 across: max(10, 0.85·6 + 1.5·4).
        ("1,1 5,1 5,7", "py=5kip", 5.0, 11.1),
        # 3√2 along, 2√2 across: max(7.071, 0.85·4.2426 + 1.5·2.8284).
        ("1,1 4,4 2,6", "px=4kip&py=4kip", 5.65685, 7.8489),
    ],
)
def test_lines_along_and_across_a_load_are_counted_together(
    points: str, load: str, size: float, counts: float
) -> None:
    found = ask(f"group=polyline:{points}&{load}&weld_sides=1&leg=1/4in&plate=1in&plate2=1in"
                "&cross_increase=yes")  # fmt: skip
    assert in_words(found.weld.phrase) == "weld, all of it"
    # A 1/4 in fillet of E70 holds 4·0.9280 kip/in with Ω.
    assert found.weld.use == pytest.approx(size / counts / (4 * 0.92800), rel=1e-3)


@pytest.mark.parametrize(
    "query",
    [
        "group=c&py=2kip&pz=1kip",  # pulled as well
        "group=c&px=1kip&py=2kip",  # at a slant
        "group=circle&py=2kip",  # at every angle
    ],
)
def test_no_other_weld_is_counted_together(query: str) -> None:
    found = ask(f"{query}&leg=1/4in&plate=1in&plate2=1in&cross_increase=yes")
    assert in_words(found.weld.phrase).startswith("weld at ")


def test_points_are_numbered_from_1_and_meet_under_one_number() -> None:
    assert point_numbers(ask("group=c&py=2kip&leg=1/4in").spread.forces) == (1, 2, 2, 3, 3, 4)


@pytest.mark.parametrize(
    ("query", "use"),
    [
        # A 6 mm leg has a throat of 4.2426 mm; S235: 360/(√3·0.8·1.25)·4.2426 is 0.88182 kN/mm.
        # Each free end costs a throat: 1 - 2·4.2426/100 of 100 mm counts.
        ("group=line&group_height=100mm&py=50kN", 0.5 / (0.88182 * 0.915147)),
        ("group=line&group_height=100mm&py=50kN&weld_sides=2", 0.25 / (0.88182 * 0.915147)),
        # 900 mm is 212.13 throats: 1.2 - 0.2·212.13/150 is left; four ends of 1800 mm.
        ("group=lines&group_height=900mm&py=900kN", 0.5 / (0.88182 * 0.990572 * 0.917157)),
        # All the way round there is no end.
        ("group=rectangle&group_height=100mm&group_width=100mm&py=200kN", 0.5 / 0.88182),
    ],
)
def test_ends_and_length_of_a_weld_by_the_european_code(query: str, use: float) -> None:
    for code in ("en", "en-directional"):
        if code == "en-directional" and "rectangle" in query:
            continue
        found = ask(f"units=si&leg=6mm&plate=20mm&plate2=20mm&weld_sides=1&{query}"
                    f"&design_code={code}")  # fmt: skip
        # Along the weld both methods are one.
        assert found.weld.use == pytest.approx(use, rel=1e-4)


def test_shares_of_strength_are_told_to_six_decimals() -> None:
    found = answer_json("strength", "plate=1in&plate2=3/8in&line_load=3.1kip/in")["answer"]
    for use in (found["use"], *(link["use"] for link in found["links"])):
        assert use == round(use, 6)
    assert found["use"] == pytest.approx(3.1 / 5.4, abs=5e-7)
