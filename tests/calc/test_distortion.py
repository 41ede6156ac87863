"""What a weld does to its part: the ways beside one another, invariants, refusals."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.errors import OutOfRangeError
from beadwright.heating import angular, camber, shrinkage, welded_part
from beadwright.heating.distortion import (
    Distortion,
    distortion_of,
    distortions,
    other_ways,
)
from beadwright.heating.laid_weld import LaidWeld, repassed, resized
from beadwright.heating.published_forms import Form, spread
from beadwright.heating.welded_part import Box, WeldedPart, section, tee_part
from beadwright.phrases import Phrase
from beadwright.process.materials import CARBON_STEEL
from tests.told import in_words

IN, MM = 0.0254, 1e-3

# 8 mm fillet, 32 mm², on 10 mm plate; 0.8 kJ/mm gives 160 kN.
LAID = LaidWeld("tee", 8 * MM, 32 * MM**2, 10 * MM, 0.0, 1, 0.8e6, 250.0, 1, 1.0, 3.0, CARBON_STEEL)
# A 1000 mm² bar: 10 mm off its axis each way, 5e5 and 1e5 mm⁴.
PART = WeldedPart(1000 * MM**2, 5e5 * MM**4, 10 * MM, 1e5 * MM**4, 5 * MM, 100 * MM, 3.0)


def mm(found: Distortion, name: str) -> tuple[float, float, float]:
    quantity = getattr(found, name)
    return (quantity.low / MM, quantity.value / MM, quantity.high / MM)


def test_a_fillet_worked_by_hand() -> None:
    found = distortion_of("yours", "", LAID, PART)
    # Across: 1.02·8/10/2 = 0.408; the leg is over 3/4 of the plate, so it stands alone.
    assert mm(found, "across") == pytest.approx((0.204, 0.408, 0.816), rel=1e-9)
    # Along: tendon 160e3·3000/(207e3·1000) = 2.3188; Guyot 0.025·0.032·3000 = 2.4; but 32 mm² is
    # under 1/20 of 1000, so it holds; allowance 0.8. Band: 0.8 to 1.5 × 2.3188.
    assert mm(found, "along") == pytest.approx((0.8, 2.318841, 3.478261), rel=1e-6)
    # Camber: 0.005·32·10·3000²/5e5 = 28.8; force 160e3·10·9e6/(8·207e3·5e5) = 17.391.
    assert mm(found, "camber") == pytest.approx((17.391304, 28.8, 43.2), rel=1e-6)
    # Sweep: 0.005·32·5·9e6/1e5 = 72; force 160e3·5·9e6/(8·207e3·1e5) = 43.478.
    assert mm(found, "sweep") == pytest.approx((43.478261, 72.0, 108.0), rel=1e-6)
    # Lift: 0.02·3.937·(0.31496)^1.3/(0.3937)² in = 0.11312 in = 2.873 mm of two fillets, half of it
    # of one; half to double.
    assert mm(found, "lift") == pytest.approx((0.7183, 1.4366, 2.8732), rel=2e-4)


def test_a_thin_leg_has_the_shop_allowance_beside_it() -> None:
    laid = replace(LAID, leg_m=6 * MM, section_m2=18 * MM**2)
    found = distortion_of("yours", "", laid, PART)
    # 1.02·6/10/2 = 0.306, alone to a factor 1.5 below; the allowance 0.8 above.
    assert mm(found, "across") == pytest.approx((0.204, 0.306, 0.8), rel=1e-9)
    both = distortion_of("yours", "", replace(laid, sides=2), PART)
    assert mm(both, "across") == pytest.approx((0.408, 0.612, 1.6), rel=1e-9)


def test_a_butt_worked_by_hand() -> None:
    laid = replace(LAID, joint="square", leg_m=0.0, section_m2=40 * MM**2, gap_m=2 * MM)
    found = distortion_of("yours", "", laid, PART)
    # 0.2·40/10 + 0.05·2 = 0.9; 0.10·40/10 = 0.4.
    assert mm(found, "across") == pytest.approx((0.4, 0.9, 1.35), rel=1e-9)
    # Tendon 2.3188; Guyot 0.025·0.04·3000 = 3.0; King 0.12e-5·25.4·250·3000/10 = 2.286; shop 3.0.
    assert mm(found, "along") == pytest.approx((1.545894, 2.318841, 3.478261), rel=1e-6)
    assert found.lift.value is None
    assert "no published form" in in_words(found.lift.low_by)
    two = distortion_of("yours", "", replace(laid, sides=2, current_a=None), PART)
    # Both sides: 0.2·80/10 + 0.1 = 1.7; along, both heat the same steel, so the tendon once; shop
    # 3.0 is within 1.5 of it.
    assert mm(two, "across")[1] == pytest.approx(1.7, rel=1e-9)
    assert mm(two, "along") == pytest.approx((1.545894, 2.318841, 3.478261), rel=1e-6)


def test_a_v_has_its_allowances() -> None:
    laid = replace(LAID, joint="v", leg_m=0.0, section_m2=60 * MM**2)
    # 0.2·60/10 = 1.2, 0.6, and 1.5 to 3.
    across = mm(distortion_of("yours", "", laid, PART), "across")
    assert across == pytest.approx((0.6, 1.2, 3.0), rel=1e-9)


def test_heavy_welds_leave_out_what_holds_for_light_ones() -> None:
    laid = replace(LAID, section_m2=50 * MM**2)
    assert "guyot" in distortion_of("yours", "", laid, PART).along.sources
    laid = replace(LAID, section_m2=50.1 * MM**2)
    assert "guyot" not in distortion_of("yours", "", laid, PART).along.sources
    assert "king" not in distortion_of("yours", "", laid, PART).along.sources


def test_without_a_set_point_heat_is_left_out() -> None:
    laid = replace(LAID, heat_j_m=None, current_a=None)
    found = distortion_of("yours", "", laid, PART)
    assert found.camber.sources == ("blodgett-camber",)
    assert mm(found, "camber") == pytest.approx((14.4, 28.8, 57.6), rel=1e-9)
    assert mm(found, "along")[1] == pytest.approx(2.4, rel=1e-9)
    assert resized(laid, 4 * MM).heat_j_m is None
    assert repassed(laid, 2).heat_j_m is None


def test_a_lap_has_no_lift_and_its_own_constant() -> None:
    found = distortion_of("yours", "", replace(LAID, joint="lap"), PART)
    assert mm(found, "across")[1] == pytest.approx(1.52 * 0.8 / 2, rel=1e-9)
    assert found.lift.value is None
    # The form is for fillets at the middle of a plate: a corner's lies at its edge.
    assert distortion_of("yours", "", replace(LAID, joint="corner"), PART).lift.value is None


def test_one_fillet_is_not_two() -> None:
    one, two = (distortion_of("yours", "", replace(LAID, sides=n), PART) for n in (1, 2))
    for name in ("across", "along", "camber", "lift"):
        assert mm(two, name)[1] == pytest.approx(2 * mm(one, name)[1], rel=1e-9)
    assert (two.sweep.value, one.sweep.value == 0) == (0.0, False)


def test_the_edges_of_sheet_are_not_said_to_lift_like_plate() -> None:
    sheet, plate = (
        distortion_of("yours", "", replace(LAID, plate_m=t * MM), PART) for t in (3.1, 3.175)
    )
    assert sheet.lift.low_by == Phrase("heating.sheet-buckles")
    assert sheet.across.value is not None
    assert plate.lift.value is not None


def test_a_groove_in_a_tee_has_only_the_forms_that_hold_for_it() -> None:
    laid = replace(LAID, joint="tee-bevel", leg_m=0.0)
    found = distortion_of("yours", "", laid, PART)
    assert (found.across.value, found.lift.value) == (None, None)
    assert found.along.sources == ("tendon", "guyot")
    assert mm(found, "along")[1] == pytest.approx(2.318841, rel=1e-6)
    heavy = replace(laid, heat_j_m=None, section_m2=60 * MM**2)
    assert distortion_of("yours", "", heavy, PART).along.low_by == Phrase("heating.no-form")


@pytest.mark.parametrize("joint", ["plug", "slot"])
def test_a_plug_or_slot_has_no_form_at_all(joint: str) -> None:
    laid = replace(LAID, joint=joint, leg_m=0.0, passes=3)
    [only] = distortions(laid, PART, 0.0)
    assert [quantity.value for quantity in only.all()] == [None] * 5
    assert {quantity.low_by for quantity in only.all()} == {Phrase("heating.no-form")}


def test_what_is_welded_in_part_counts_in_part() -> None:
    whole = distortion_of("yours", "", LAID, PART)
    half = distortion_of("yours", "", replace(LAID, share=0.5), PART)
    assert tuple(whole.named().values()) == whole.all()
    for one, other in zip(whole.all(), half.all(), strict=True):
        assert one.value is not None
        assert other.value == pytest.approx(one.value / 2, rel=1e-12)
    # A weld over the middle third bends (1/3)(5/3) = 5/9 as far.
    short = distortion_of("yours", "", replace(LAID, length_m=1.0), PART)
    assert mm(short, "camber")[1] == pytest.approx(28.8 * 5 / 9, rel=1e-9)
    assert mm(short, "along")[1] == pytest.approx(2.318841 / 3, rel=1e-6)


def test_the_same_on_both_sides_bows_twice_as_far() -> None:
    found = distortion_of("yours", "", replace(LAID, sides=2), PART)
    assert mm(found, "camber") == pytest.approx((34.782609, 57.6, 86.4), rel=1e-6)
    assert found.sweep.value == 0.0


def test_a_leg_hardly_over_the_least_may_be_less() -> None:
    assert "smaller" in {key for key, _, _ in other_ways(LAID, 7.7 * MM)}
    assert "smaller" not in {key for key, _, _ in other_ways(LAID, 7.95 * MM)}


def test_the_other_ways() -> None:
    laid = replace(LAID, passes=3, section_m2=32 * MM**2)
    ways = {key: way for key, _, way in other_ways(laid, 5 * MM)}
    assert list(ways) == ["smaller", "fewer", "both", "stitched"]
    # 25/64 of the section and heat.
    assert ways["smaller"].section_m2 == pytest.approx(12.5 * MM**2, rel=1e-12)
    assert ways["smaller"].heat_j_m == pytest.approx(0.8e6 * 25 / 64, rel=1e-12)
    assert ways["fewer"].passes == 2
    assert ways["fewer"].heat_j_m == pytest.approx(1.2e6, rel=1e-12)
    # Half the leg is 4 mm, under the code's 5: 5 it is, in one pass of 3 passes' heat by 25/64.
    assert (ways["both"].leg_m, ways["both"].sides, ways["both"].passes) == (5 * MM, 2, 1)
    assert ways["both"].heat_j_m == pytest.approx(2.4e6 * 25 / 64, rel=1e-12)
    assert ways["stitched"].share == 0.5
    assert [key for key, _, _ in other_ways(replace(LAID, sides=2, share=0.8), 8 * MM)] == []
    thick = {key: way for key, _, way in other_ways(LAID, 3 * MM)}
    assert thick["both"].leg_m == pytest.approx(4 * MM)


def test_the_other_ways_of_a_butt() -> None:
    laid = replace(LAID, joint="square", leg_m=0.0, passes=4)
    [fewer, both] = [way for _, _, way in other_ways(laid, 0.0)]
    assert fewer.passes == 3
    assert (both.sides, both.passes) == (2, 2)
    assert both.section_m2 == pytest.approx(16 * MM**2)
    assert both.heat_j_m == pytest.approx(0.8e6)
    one = [way for _, _, way in other_ways(replace(laid, passes=1), 0.0)]
    # One pass cannot be halved: half the metal is laid with half the heat.
    assert one[0].passes == 1
    assert one[0].heat_j_m == pytest.approx(0.4e6)


@given(
    leg=st.floats(3 * MM, 12 * MM),
    plate=st.floats(4 * MM, 50 * MM),
    passes=st.integers(1, 6),
    length=st.floats(0.1, 10.0),
)
def test_no_other_way_draws_a_tee_further(
    leg: float, plate: float, passes: int, length: float
) -> None:
    laid = replace(LAID, leg_m=leg, section_m2=leg**2 / 2, plate_m=plate, passes=passes)
    laid = replace(laid, length_m=length)
    part = tee_part(plate, plate, 0.1, 0.1, leg, length)
    yours, *others = distortions(laid, part, 3 * MM)
    for way in others:
        for one, other in zip(yours.all(), way.all(), strict=True):
            assert one.value is not None
            assert other.value is not None
            assert other.low is not None
            assert other.high is not None
            assert other.low <= other.value <= other.high
        assert way.lift.value is not None
        assert yours.lift.value is not None
        if way.key != "both":  # two of the code's least leg may lift more than one fillet
            assert way.lift.value <= yours.lift.value * (1 + 1e-9)
        if way.key in ("smaller", "stitched"):
            assert way.camber.value is not None
            assert yours.camber.value is not None
            assert way.camber.value < yours.camber.value
        if way.key == "both":
            assert way.sweep.value == 0.0


def test_spread_of_forms() -> None:
    forms = [
        Form(Phrase("a"), 2.0, "tendon"),
        Form(Phrase("b"), 5.0, "guyot"),
        Form(Phrase("c"), 1.9, "tendon"),
    ]
    found = spread("x", "small_length", forms)
    assert found.low == pytest.approx(2 / 1.5)
    assert (found.value, found.high) == (2.0, 5.0)
    assert (found.low_by, found.high_by) == (Phrase("c"), Phrase("b"))
    assert found.sources == ("tendon", "guyot")
    none = spread("x", "small_length", (), Phrase("why"))
    assert (none.value, none.low_by) == (None, Phrase("why"))


def test_section_of_a_tee_worked_by_hand() -> None:
    # 100 × 10 under 10 × 100: middle at 32.5 mm, I = 2 354 167 mm⁴ level, 841 667 mm⁴ upright.
    boxes = (Box(0.0, 5 * MM, 100 * MM, 10 * MM), Box(0.0, 60 * MM, 10 * MM, 100 * MM))
    found = section(boxes)
    scales = (MM**2, MM, MM, MM**4, MM**4)
    shown = [value / scale for value, scale in zip(found, scales, strict=True)]
    assert shown == pytest.approx([2000, 0, 32.5, 2_354_166.667, 841_666.667], rel=1e-9)


@pytest.mark.parametrize(
    "ask",
    [
        lambda: shrinkage.across_butt_by_section(1e-5, 0.01, -1e-9),
        lambda: shrinkage.across_butt_by_section(0.0, 0.01, 0.0),
        lambda: shrinkage.across_butt_by_width(1e-5, 0.0),
        lambda: shrinkage.across_fillets(0.01, 0.01, 3),
        lambda: shrinkage.across_fillets(0.0, 0.01, 2),
        lambda: shrinkage.fillet_allowance_holds(0.0, 0.01),
        lambda: shrinkage.along_by_allowance(0.0, True),
        lambda: shrinkage.along_by_section(1e-5, 0.0, 1.0),
        lambda: shrinkage.along_butt_by_current(0.0, 0.01, 1.0),
        lambda: shrinkage.along_by_force(1.0, 1e-3, float("inf"), CARBON_STEEL),
        lambda: shrinkage.tendon_force(float("nan"), CARBON_STEEL),
        lambda: camber.camber_by_section(1e-5, -0.01, 1.0, 1e-6),
        lambda: camber.camber_by_force(1e3, -0.01, 1.0, 1e-6, CARBON_STEEL),
        lambda: camber.camber_by_force(1e3, float("inf"), 1.0, 1e-6, CARBON_STEEL),
        lambda: camber.bow_of_short_weld(1.01, 1.0),
        lambda: angular.edge_lift(0.0, 0.01, 0.1, 2),
        lambda: angular.edge_lift(0.01, 0.01, 0.1, 3),
        lambda: angular.tilt(-1e-9, 0.1),
        lambda: angular.tilt(0.01, 0.0),
        lambda: angular.tilt(float("inf"), 0.1),
        lambda: shrinkage.across_butt_by_section(1e-5, 0.01, float("inf")),
        lambda: angular.passes_factor(0),
        lambda: welded_part.butt_part(0.01, 0.1, 0.0),
        lambda: welded_part.tee_part(0.01, 0.01, 0.1, 0.1, 0.0, 1.0),
    ],
)
def test_out_of_range_is_refused(ask: object) -> None:
    assert callable(ask)
    with pytest.raises(OutOfRangeError):
        ask()
