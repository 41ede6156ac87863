"""The pass plan: every bead inside its limits or a word said; counts, order, settings."""

from itertools import pairwise
from urllib.parse import urlencode

import pytest
import shapely
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from beadwright.errors import FieldErrors
from beadwright.joint.joints import JOINTS
from beadwright.layers.bead_limits import SPLIT_M
from beadwright.passes.passes_page import PassesAnswer, passes_answer
from beadwright.process.positions import TRAVEL_RANGE_M_S
from tests.calc.jobs import Typed, one_of, planned, wires
from tests.told import told

FILLET_POSITIONS = ("1F", "2F", "3F-up", "4F")
ROUNDING = 1e-6


@st.composite
def heavy_jobs(draw: st.DrawFn) -> Typed:
    """Joints that take a bead or many, over joints, positions and wires."""
    joint = draw(one_of(*(joint for joint in JOINTS if joint not in ("plug", "slot"))))
    fillet = joint in ("tee", "lap", "corner")
    typed = {
        "joint": joint,
        "plate": draw(one_of("1/4in", "3/8in", "1/2in", "3/4in", "1in", "2in")),
        "position": draw(one_of(*FILLET_POSITIONS)),
        "gas": draw(one_of("90/10", "85/15", "75/25")),
        "travel_by": draw(one_of("hand", "track", "robot")),
        "bead": draw(one_of("weave", "stringer")),
    } | draw(wires())
    assume(typed["wire"] != "E71T-1C")  # made for CO2
    if fillet and joint != "corner":
        typed["leg"] = draw(one_of("1/4in", "5/16in", "3/8in", "1/2in", "5/8in", "3/4in"))
    if draw(st.booleans()):
        typed["passes"] = str(draw(st.integers(1, 12)))
    if draw(st.booleans()):
        typed["wfs"] = draw(one_of("180in/min", "290in/min", "420in/min"))
    if draw(st.booleans()):
        typed["heat_max"] = draw(one_of("20kJ/in", "45kJ/in", "80kJ/in"))
    return typed


def answered(typed: Typed) -> PassesAnswer:
    try:
        return passes_answer(urlencode(typed))
    except FieldErrors:
        assume(False)
        raise


@settings(max_examples=60)
@given(heavy_jobs())
def test_never_outside_a_limit_without_a_word(typed: Typed) -> None:
    answer = answered(typed)
    found = answer.found
    slow, fast = TRAVEL_RANGE_M_S[found.job.travel_by, found.job.position.orientation]
    heats = found.processes["fill"].heats
    beside = [note for note in answer.notes if note.level in ("stop", "out")]
    for bead in found.beads:
        if bead.laid is None:
            assert any("two limits conflict" in told(note) for note in beside)
            continue
        laid = bead.laid
        if not slow * (1 - ROUNDING) <= laid.travel_m_s <= fast * (1 + ROUNDING):
            assert any("travel speed is" in told(note) for note in beside), bead.number
        if not heats.low * (1 - ROUNDING) <= laid.heat_j_m <= heats.high * (1 + ROUNDING):
            assert any(" in over your" in told(note) or " in more heat" in told(note)
                       for note in beside), bead.number  # fmt: skip
    if found.over:
        assert any("Ask for more passes" in told(note) for note in beside)


@settings(max_examples=60)
@given(heavy_jobs())
def test_beads_add_up_in_welding_order(typed: Typed) -> None:
    found = answered(typed).found
    total = sum(bead.slot.section_m2 for bead in found.beads)
    # A drawn crown is a parabola in chords, a few parts in a thousand under it.
    crown = found.shape.crown_m2
    assert total == pytest.approx(found.shape.section_m2, rel=1e-3, abs=crown / 300)
    assert [bead.number for bead in found.beads] == list(range(1, len(found.beads) + 1))
    steps = [(bead.side, bead.slot.layer, bead.slot.place) for bead in found.beads]
    assert steps == sorted(steps)
    if "passes" in typed:
        sides = len(found.shape.regions)
        assert len(found.beads) == max(int(typed["passes"]), sides)
    else:
        widest = SPLIT_M[found.job.position.orientation]
        assert max(bead.slot.width_m for bead in found.beads) < 2.0 * widest


@settings(max_examples=40)
@given(heavy_jobs())
def test_a_feed_of_a_part_is_shared_and_travel_fills_each_bead(typed: Typed) -> None:
    found = answered(typed).found
    for bead in found.beads:
        if bead.laid is None:
            continue
        wire, laid = found.job.wire, bead.laid
        efficiency = found.processes[bead.part]
        section = (
            laid.point.feed_m_s * wire.linear_mass_kg_m * efficiency.efficiency[1]
            / (7850 * laid.travel_m_s)
        )  # fmt: skip
        assert section == pytest.approx(bead.section_m2, rel=1e-6)
        assert bead.section_m2 >= bead.slot.section_m2 * (1 - 1e-9)
        heat = laid.point.volts * laid.point.current_a / laid.travel_m_s
        assert laid.heat_j_m == pytest.approx(heat, rel=1e-9)
        assert laid.wire_kg == pytest.approx(laid.wire_m * wire.linear_mass_kg_m)


@settings(max_examples=30)
@given(
    st.sampled_from(["3/16", "1/4", "5/16", "3/8", "7/16", "1/2", "9/16", "5/8", "3/4", "1"]),
    st.sampled_from(FILLET_POSITIONS),
)
def test_a_larger_leg_takes_no_fewer_beads_and_more_time(leg: str, position: str) -> None:
    sizes = ["3/16", "1/4", "5/16", "3/8", "7/16", "1/2", "9/16", "5/8", "3/4", "1"]
    larger = sizes[min(sizes.index(leg) + 1, len(sizes) - 1)]
    small, large = (
        planned(f"plate=1in&leg={size}in&position={position}") for size in (leg, larger)
    )
    assert len(small.beads) <= len(large.beads)
    assert small.wire_kg <= large.wire_kg


@settings(max_examples=40)
@given(heavy_jobs())
def test_beads_keep_apart_and_inside_the_joint(typed: Typed) -> None:
    found = answered(typed).found
    beads = [
        shapely.Polygon([(1000 * x, 1000 * y) for x, y in outline])
        for bead in found.beads
        for outline in bead.slot.outlines
    ]
    joint = shapely.unary_union(
        [
            shapely.Polygon([(1000 * x, 1000 * y) for x, y in region.outline]).buffer(0.01)
            for region in found.shape.regions
        ]
    )
    together = shapely.unary_union([bead.buffer(0) for bead in beads])
    total = sum(bead.area for bead in beads)
    # A back gouge cuts into the first side's beads: there the second side's lie over them.
    sides = [
        shapely.Polygon([(1000 * x, 1000 * y) for x, y in region.outline])
        for region in found.shape.regions
    ]
    again = shapely.intersection_all(sides).area if found.shape.gouged else 0.0
    assert together.area == pytest.approx(total - again, rel=3e-3)
    assert together.difference(joint).area < 2e-3 * total


def test_a_crown_over_the_convexity_rule_is_said() -> None:
    answer = passes_answer("plate=3/4in&leg=5/8in&reinforcement=3/16in")
    assert any(note.source == "aws-d1.1-convexity" for note in answer.notes)


def test_how_many_passes_at_290() -> None:
    """A feed set by hand is kept in every bead, and the count is the answer."""
    free = planned("plate=3/4in&leg=5/8in")
    held = planned("plate=3/4in&leg=5/8in&wfs=290in/min&volts=26")
    (feed,) = {bead.laid.point.feed_m_s for bead in held.beads if bead.laid}
    assert feed == pytest.approx(290 * 0.0254 / 60)
    assert {bead.laid.point.volts for bead in held.beads if bead.laid} == {26.0}
    assert len(held.beads) >= len(free.beads)


def test_feed_and_travel_by_hand_set_the_bead() -> None:
    """290 in/min at 12 in/min lays so much; the joint's section over that is the count."""
    found = planned("plate=3/4in&leg=5/8in&wfs=290in/min&travel=12in/min")
    wire = found.job.wire
    laid = 290 * 0.0254 / 60 * wire.linear_mass_kg_m * found.processes["fill"].efficiency[1]
    bead = laid / (7850 * 12 * 0.0254 / 60)
    assert len(found.beads) >= found.shape.section_m2 / bead
    travels = [b.laid.travel_m_s for b in found.beads if b.laid]
    assert min(travels) >= 12 * 0.0254 / 60 * (1 - 1e-6)


@pytest.mark.parametrize("joint", ["double-v", "double-bevel"])
def test_both_sides_of_a_horizontal_butt_are_built_up_from_the_lower_plate(joint: str) -> None:
    """The lower plate stands at the right of the section, whichever side is welded."""
    found = planned(f"plate=1-1/2in&joint={joint}&position=2G")
    for side in (1, 2):
        for layer in {bead.slot.layer for bead in found.beads if bead.side == side}:
            laid = [b for b in found.beads if (b.side, b.slot.layer) == (side, layer)]
            middles = [sum(x for x, _ in b.slot.outlines[0]) / len(b.slot.outlines[0])
                       for b in laid]  # fmt: skip
            assert middles == sorted(middles, reverse=True)


def test_a_tee_s_second_side_starts_on_the_plate_lying_down() -> None:
    found = planned("plate=1in&joint=tee-double-bevel&position=2F")
    top = max(bead.slot.layer for bead in found.beads if bead.side == 2)
    first, *_, last = (b for b in found.beads if b.side == 2 and b.slot.layer == top)
    assert first.slot.aim[1] < last.slot.aim[1]
    for bead in found.beads:  # both measured from the plate lying down
        assert 0 < bead.work_deg < 90
        assert bead.work_deg == pytest.approx(min(bead.torch_deg, 180 - bead.torch_deg))


def test_root_and_cap_may_run_on_their_own() -> None:
    found = planned(
        "plate=1in&joint=v&position=1G&root_transfer=short&root_wfs=180in/min&cap_wfs=350in/min"
        "&cap_volts=27"
    )
    by_role = {bead.role: bead.laid for bead in found.beads}
    root, cap, fill = by_role["root"], by_role["cap"], by_role["fill"]
    assert root is not None
    assert cap is not None
    assert fill is not None
    assert root.transfer == "short"
    assert root.point.feed_m_s == pytest.approx(180 * 0.0254 / 60)
    assert cap.point.feed_m_s == pytest.approx(350 * 0.0254 / 60)
    assert cap.point.volts == 27.0
    assert fill.point.feed_m_s not in (root.point.feed_m_s, cap.point.feed_m_s)


def test_an_open_root_is_shorted_and_a_backed_one_is_not() -> None:
    open_root = planned("plate=1in&joint=v&position=1G&gap=1/8in")
    assert open_root.processes["root"].transfer == "short"
    assert open_root.beads[1].role == "hot"
    backed = planned("plate=1in&joint=v&position=1G&gap=1/4in&backing=steel&root_face=0in")
    assert backed.processes["root"].transfer == "spray"


def test_a_second_side_is_gouged_first() -> None:
    answer = passes_answer("plate=2in&joint=double-v&position=1G")
    found = answer.found
    second = next(bead for bead in found.beads if bead.side == 2)
    assert any(f"Before bead {second.number} turn the part" in told(note) for note in answer.notes)
    assert len(found.layers) == 2


def test_a_horizontal_fillet_is_built_up_from_the_lower_plate() -> None:
    found = planned("plate=1in&leg=3/4in&position=2F")
    for one, other in pairwise(found.beads):
        if one.slot.layer == other.slot.layer:
            assert other.slot.across > one.slot.across  # the next lies higher
    toes = [bead.slot for bead in found.beads if bead.role == "cap"]
    assert min(x for slot in toes for x, _ in slot.outlines[0]) == pytest.approx(0, abs=1e-6)
    reach = max(x for slot in toes for x, _ in slot.outlines[0])
    assert reach == pytest.approx(found.shape.leg_m, rel=1e-3)  # the toes meet the leg marks


def test_each_bead_leaves_the_next_a_shelf() -> None:
    """The cut a bead is laid against never falls away from the joint in the horizontal."""
    found = planned("plate=1in&leg=3/4in&position=2F")
    for bead in found.beads:
        slot = bead.slot
        if slot.place in (1, slot.of):
            continue
        aim, outline = slot.aim, slot.outlines[0]
        inner = min(range(len(outline)), key=lambda i: abs(outline[i][0] - aim[0])
                    + abs(outline[i][1] - aim[1]))  # fmt: skip
        shelf = min(
            (outline[(inner + step) % len(outline)] for step in (1, -1)),
            key=lambda point: point[1] - aim[1] if point[0] > aim[0] else 1.0,
        )
        assert shelf[0] > aim[0]
        assert shelf[1] >= aim[1] - 1e-6  # level, or rising outward


def test_light_beads_are_shorted_where_the_mode_is_ours() -> None:
    found = planned("plate=3/16in&joint=lap&leg=3/16in&passes=3")
    assert found.open
    assert {bead.laid.transfer for bead in found.beads if bead.laid} == {"short"}


def test_light_beads_on_thick_plate_stay_in_spray() -> None:
    """Over 3/16 in short circuit may lie on the plate without fusing."""
    found = planned("plate=5/16in&joint=lap&leg=1/4in&passes=3")
    assert found.open
    assert {bead.laid.transfer for bead in found.beads if bead.laid} == {"spray"}


def test_heat_asked_for_takes_more_beads() -> None:
    free = planned("plate=3/4in&leg=5/8in")
    cool = planned("plate=3/4in&leg=5/8in&heat_max=30kJ/in")
    assert len(cool.beads) > len(free.beads)
    most = 30e3 / 0.0254
    assert all(bead.laid.heat_j_m <= most for bead in cool.beads if bead.laid)


def test_stringers_are_narrower() -> None:
    woven, straight = (planned(f"plate=1in&joint=v&position=1G&bead={b}") for b in
                       ("weave", "stringer"))  # fmt: skip
    assert len(straight.beads) > len(woven.beads)
