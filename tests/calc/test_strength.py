"""Strength: the weakest link, the leg needed, what the codes let count, refusals, caution."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from beadwright.api import answer_json
from beadwright.errors import UnknownEntryError
from beadwright.joint.fillets import least_segment
from beadwright.process.wires import WIRE_TYPES
from beadwright.strength import intermittent, resistance_aisc
from beadwright.strength.elastic_line import GroupLoad
from beadwright.strength.steel_strength import STRENGTHS, strength_of
from beadwright.units import read
from tests.calc.strength_asked import ask
from tests.told import told

SHAPES = ("line", "lines", "flats", "rectangle", "circle", "c", "l", "t")
WIDE = ("rectangle", "circle", "c", "l", "t", "lines", "flats")
CODES = ("asd", "lrfd", "en", "en-directional")


def in_plane(shape: str, code: str, py: float, arm: float) -> str:
    return (
        f"group={shape}&group_width=5in&group_height=8in&py={py:.3f}kip&load_x={arm:.2f}in"
        f"&design_code={code}&plate=1in&plate2=1in&weld_sides=1"
    )


QUERY = st.builds(
    in_plane,
    st.sampled_from(SHAPES),
    st.sampled_from(CODES),
    st.floats(0.5, 20),
    st.floats(-12, 12),
)


@settings(max_examples=40)
@given(QUERY, st.sampled_from(("elastic", "ic")))
def test_the_leg_needed_holds_and_the_next_smaller_does_not(query: str, analysis: str) -> None:
    if "design_code=en" in query:
        analysis = "elastic"
    found = ask(f"{query}&analysis={analysis}")
    needed = found.legs.needed
    if needed is None:
        return
    step = 0.0254 / 16
    assert ask(f"{query}&analysis={analysis}&leg={needed / 0.0254}in").weld.use <= 1 + 1e-6
    if needed > 2.5 * step:
        smaller = ask(f"{query}&analysis={analysis}&leg={(needed - step) / 0.0254}in")
        assert smaller.weld.use > 1


@settings(max_examples=40)
@given(QUERY)
def test_twice_the_load_uses_twice_as_much(query: str) -> None:
    one = ask(f"{query}&leg=1/2in")
    load = one.query.typed["py"]
    two = ask(f"{query}&leg=1/2in&py={2 * float(load.removesuffix('kip')):.3f}kip")
    for a in one.links:
        b = next(link for link in two.links if link.key == a.key)
        assert b.use == pytest.approx(2 * a.use, rel=1e-6)


@settings(max_examples=40)
@given(st.sampled_from(SHAPES), st.floats(0.5, 20), st.floats(-12, 12), st.floats(-5, 5))
def test_the_directional_method_never_asks_more_than_the_simplified(
    shape: str, py: float, arm: float, pz: float
) -> None:
    query = in_plane(shape, "en", py, arm) + f"&pz={pz:.3f}kip&leg=1/2in"
    if shape == "line":
        query += "&load_x=0"
    simple = ask(query)
    exact = ask(query.replace("design_code=en", "design_code=en-directional"))
    assert exact.weld.use <= simple.weld.use * (1 + 1e-9)
    assert exact.weld.use >= simple.weld.use * 0.81  # √(2/3): across alone


@settings(max_examples=30)
@given(QUERY)
def test_inches_and_millimeters_give_the_same(query: str) -> None:
    us, si = ask(f"{query}&leg=1/2in"), ask(f"{query}&leg=1/2in&units=si")
    assert [link.key for link in us.links] == [link.key for link in si.links]
    assert us.links[0].use == pytest.approx(si.links[0].use)


def test_links_stand_weakest_first_and_the_verdict_is_theirs() -> None:
    found = ask("leg=5/16in")
    uses = [link.use for link in found.links]
    assert uses == sorted(uses, reverse=True)
    assert found.holds == (uses[0] <= 1)
    assert found.load_times == pytest.approx(1 / uses[0])
    assert {link.key for link in found.links} == {
        "weld", "plate-yield", "plate-rupture", "plate2-yield", "plate2-rupture",
    }  # fmt: skip


def test_the_bracket_worked_by_hand() -> None:
    # Two 6 in welds, one each side; 10 kip down, 3 in out: M = 30 kip·in on d²/6 = 6 in².
    found = ask("leg=5/16in&py=-10kip&load_z=3in")
    pull, shear = 30 / 6, 10 / 6
    assert found.weld.asked / read("1kip/in", "force_per_length") == pytest.approx(
        (pull**2 + shear**2) ** 0.5
    )
    assert found.weld.use == pytest.approx((pull**2 + shear**2) ** 0.5 / (2 * 5 * 0.9280), rel=1e-3)
    # Its plate, 3/8 in A36: pull 36·0.375/1.67 and shear 0.6·36·0.375/1.5 kip/in, as a circle.
    plate = next(link for link in found.links if link.key == "plate2-yield")
    assert plate.use == pytest.approx(((pull / 8.084) ** 2 + (shear / 5.4) ** 2) ** 0.5, rel=1e-3)


def test_force_per_length_is_what_the_weld_is_asked() -> None:
    found = ask("line_load=3kip/in")
    assert found.weld.asked == pytest.approx(read("3kip/in", "force_per_length"))
    # Both sides, E70 ASD: 3 / (2·0.928) = 1.62 sixteenths, so 2; the table's least is 3/16 in.
    assert found.legs.needed == pytest.approx(2 * 0.0254 / 16)
    assert found.legs.judged == pytest.approx(3 * 0.0254 / 16)


def test_added_strength_across_counts_only_where_the_code_lets_it() -> None:
    line = "group=line&weld_sides=1&leg=1/4in&px=5kip&plate=1in&held=yes"
    plain, counted = ask(line), ask(f"{line}&cross_increase=yes")
    assert counted.weld.holds == pytest.approx(1.5 * plain.weld.holds)
    off = "group=c&group_height=6in&weld_sides=1&leg=1/4in&py=5kip&load_x=9in&plate=1in"
    refused = ask(f"{off}&cross_increase=yes")
    assert refused.weld.use == pytest.approx(ask(off).weld.use)
    assert any("No directional increase is counted" in told(note) for note in refused.notes)
    # J2.4(c): 6 in along and two of 4 in across: max(6 + 8, 0.85·6 + 1.5·8) = 17.1 in.
    mixed = ask("group=c&group_height=6in&weld_sides=1&leg=1/4in&py=5kip&plate=1in"
                "&cross_increase=yes")  # fmt: skip
    assert mixed.weld.use == pytest.approx(5 / 17.1 / (4 * 0.9280), rel=1e-3)


def test_long_and_short_welds_count_less() -> None:
    long = ask("group=lines&group_width=6in&group_height=50in&weld_sides=1&leg=1/4in&py=100kip")
    # l/w 200: 0.8; 100 kip over 2·50 in is 1 kip/in.
    assert long.weld.use == pytest.approx(1 / (0.8 * 4 * 0.9280), rel=1e-3)
    assert any("80% counts" in told(note) for note in long.notes)
    short = ask("group=line&group_height=1in&weld_sides=1&leg=1/2in&py=1kip&plate=1in")
    assert short.weld.use == pytest.approx(1 / (4 * 0.9280), rel=1e-3)  # only 1/4 in counts
    assert any("four legs" in told(note) for note in short.notes)


def test_two_lines_on_one_plate_share_its_thickness() -> None:
    near = ask("group=lines&group_width=3/8in&group_height=6in&weld_sides=1&py=10kip&leg=1/4in")
    both = ask("group=line&group_height=6in&weld_sides=2&py=10kip&leg=1/4in")
    for key in ("weld", "plate-yield", "plate2-yield"):
        uses = [next(k for k in f.links if k.key == key).use for f in (near, both)]
        assert uses[0] == pytest.approx(uses[1])
    apart = ask("group=lines&group_width=6in&group_height=6in&weld_sides=1&py=10kip&leg=1/4in")
    assert next(k for k in apart.links if k.key == "plate2-yield").use == pytest.approx(
        next(k for k in near.links if k.key == "plate2-yield").use / 2
    )


@settings(max_examples=30)
@given(st.floats(0.1, 4))
def test_segments_carry_what_the_seam_is_asked(load: float) -> None:
    found = ask(f"line_load={load:.3f}kip/in&leg=1/4in&plate=1/2in")
    seam = found.segments
    if seam is None:
        return
    assert seam.pitch_m > seam.segment_m >= least_segment(found.legs.judged) - 1e-9
    for link in found.links:
        assert link.asked <= seam.share * link.holds * (1 + 1e-9)
    assert seam.pitch_m <= intermittent.widest_pitch_aisc(found.task.job.thinner_m) + 1e-9


def test_no_segments_where_the_load_turns_or_bends_the_weld() -> None:
    assert ask("leg=5/16in").segments is None
    assert ask("group=c&py=1kip&load_x=9in").segments is None


def test_steels_by_any_usual_spelling() -> None:
    assert strength_of("a572 gr 50") is STRENGTHS["A572-50"]
    assert strength_of("A572 Gr.50") is STRENGTHS["A572-50"]
    assert strength_of("s355j2") is STRENGTHS["S355J2"]
    with pytest.raises(UnknownEntryError, match="A36"):
        strength_of("S460")


def test_json_has_the_numbers_of_the_answer() -> None:
    query = "group=c&group_width=4in&group_height=6in&py=-9kip&load_x=9in&analysis=ic&leg=1/4in"
    found, told = ask(query), answer_json("strength", query)["answer"]
    assert told["holds"] == found.holds
    assert told["leg"]["value"] == 0.25
    assert told["worst"] in {point["number"] for point in told["points"]}
    assert told["centre"]["x"]["unit"] == "in"
    assert told["load"]["py"] == {"value": -9.0, "unit": "kip"}
    assert [link["use"] for link in told["links"]] == [round(k.use, 6) for k in found.links]


def test_a_load_of_nothing_uses_nothing() -> None:
    assert GroupLoad().in_plane
    assert ask("pz=0.001kip&leg=1/4in").load_times > 1000


def test_unequal_legs_and_slanted_tees_keep_to_their_throat() -> None:
    # Throat of 1/4 by 1/2 in: 1/4·1/2/√(1/16 + 1/4) = 0.2236 in, by hand.
    found = ask("leg=1/4in&leg2=1/2in&py=2kip&weld_sides=1&plate=1in")
    assert found.legs.throat == pytest.approx(0.2236 * 0.0254, rel=1e-3)
    assert found.weld.holds / read("1kip/in", "force_per_length") == pytest.approx(
        0.6 * 70 * 0.2236 / 2, rel=1e-3
    )
    # A tee at 120°, legs along the plates: throat over cos 60° is 1.414 times the square leg.
    slanted = ask("leg=1/4in&skew=120deg&py=2kip")
    assert slanted.legs.to_weld == pytest.approx(1.4142 * 0.25 * 0.0254, rel=1e-3)


def test_every_shape_code_and_steel_is_answered() -> None:
    for shape in SHAPES:
        for code in CODES:
            assert ask(f"group={shape}&py=2kip&design_code={code}&weld_sides=1").links
    for grade, steel in STRENGTHS.items():
        code = "asd" if steel.correlation is None else "en"
        assert ask(f"steel={grade}&design_code={code}").task.steel is steel


@pytest.mark.parametrize(
    ("query", "sides"),
    [
        ("py=1kip", 2),
        ("py=1kip&joint=lap", 1),
        ("py=1kip&group=c", 1),
        ("py=1kip&group=circle", 1),
        ("py=1kip&group=lines", 1),
        ("py=1kip&group=c&weld_sides=2", 2),
        ("py=1kip&weld_sides=1", 1),
    ],
)
def test_only_a_tee_s_line_is_taken_as_run_on_both_sides(query: str, sides: int) -> None:
    assert ask(query).task.sides == sides


def test_every_wire_s_class_says_its_strength() -> None:
    for name in WIRE_TYPES:
        strength = resistance_aisc.filler_strength(name) / read("1ksi", "stress")
        assert strength == pytest.approx(int("".join(c for c in name if c.isdigit())[0]) * 10)
