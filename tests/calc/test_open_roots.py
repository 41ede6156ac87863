"""Roots with nothing under them: what the code lets count, what no bead over a gap may be."""

import pytest
from shapely import Polygon, unary_union

from beadwright.api import answer_json
from beadwright.passes.passes_page import passes_answer
from tests.calc.jobs import planned
from tests.told import told

IN = 0.0254

THROUGH_ONLY = (
    "complete joint penetration only after back-gouging, from a backing, or by a qualified "
    "procedure"
)
"""AWS D1.1:2020, 5.4.1 and Figure 5.1, from memory; all details of the 2000 edition are either on a
steel backing or gouged from the back (found second-hand: Miller)."""


@pytest.mark.parametrize(
    ("joint", "detail"),
    [("v", "B-U2-GF"), ("bevel", "B-U4b-GF"), ("tee-bevel", "TC-U4b-GF")],
)
@pytest.mark.parametrize("page", ["dial-in", "passes", "card"])
def test_a_gouged_detail_left_open_is_not_prequalified(page: str, joint: str, detail: str) -> None:
    notes = answer_json(page, f"joint={joint}&plate=1/2in&position=1G")["notes"]
    [said] = [note for note in notes if detail in note["text"]]
    assert (said["level"], said["field"]) == ("caution", "backing")
    assert "it is not prequalified" in said["text"]
    assert THROUGH_ONLY in said["text"]


@pytest.mark.parametrize(
    "query", ["joint=v&angle=50", "joint=square&plate=1/4in", "joint=square&plate=3mm&units=si"]
)
def test_through_from_one_side_says_when_it_counts(query: str) -> None:
    """A groove off its detail, and a square butt: D1.1 rules from 1/8 in, 3 mm."""
    said = [note for note in passes_answer(query).notes if THROUGH_ONLY in told(note)]
    assert [(note.level, note.field) for note in said] == [("caution", "backing")]


@pytest.mark.parametrize(
    "query",
    [
        "joint=v&plate=1/2in&backing=steel",
        "joint=double-v&plate=1in",
        "joint=v&plate=1/2in&depth=1/4in",
        "joint=square&plate=2.9mm",
        "joint=square&plate=1/4in&backing=copper",
        "joint=tee",
    ],
)
def test_nothing_is_said_of_it_where_the_root_is_no_question(query: str) -> None:
    assert not [note for note in passes_answer(query).notes if THROUGH_ONLY in told(note)]


@pytest.mark.parametrize("joint", ["v", "bevel", "tee-bevel"])
def test_strength_says_the_same(joint: str) -> None:
    notes = answer_json("strength", f"joint={joint}&plate=1/2in&pz=5kip")["notes"]
    [said] = [note for note in notes if THROUGH_ONLY in note["text"]]
    assert (said["level"], said["field"]) == ("caution", "backing")


def test_a_thick_root_in_short_circuit_is_named_where_a_count_is_asked_for() -> None:
    """Common practice: over 3/16 in, short circuit may lie on the edges without fusing."""
    answer = passes_answer("joint=v&plate=1/2in&position=3G-up&passes=3")
    root = answer.found.beads[0]
    assert root.laid is not None
    assert root.laid.transfer == "short"
    assert root.slot.thickness_m > 3 / 16 * IN
    assert answer.found.over == (1,)
    [said] = [note for note in answer.notes if note.level == "out"]
    assert (said.key, said.field) == ("passes.short-too-thick", "passes")
    assert "Bead 1: in short circuit thicker than 3/16 in" in told(said)
    assert not planned("joint=v&plate=1/2in&position=3G-up&passes=4").over
    assert not planned("joint=v&plate=1/2in&position=3G-up&passes=3&transfer=pulse").over


@pytest.mark.parametrize("joint", ["double-v", "double-bevel", "tee-double-bevel"])
@pytest.mark.parametrize("position", ["1G", "2G", "3G-up", "4G"])
def test_no_bead_is_planned_over_the_limit_of_its_mode_on_either_side(
    joint: str, position: str
) -> None:
    found = planned(f"joint={joint}&plate=1in&plate2=1in&position={position}")
    for bead in found.beads:
        shorted = found.processes[bead.part].transfer == "short"
        most = 3 / 16 if shorted else 1 / 4 if bead.side == 2 else 1 / 2
        assert bead.slot.thickness_m <= most * IN * (1 + 1e-6)


@pytest.mark.parametrize("query", ["joint=v&plate=1/2in", "joint=square&plate=3/16in"])
def test_spray_asked_for_over_an_open_root_is_refused(query: str) -> None:
    answer = passes_answer(f"{query}&position=1G&root_transfer=spray")
    assert not answer.found.open
    [said] = [note for note in answer.notes if note.field == "root_transfer"]
    assert said.level == "stop"
    assert "falls through an open root; run it in short circuit or pulse" in told(said)


@pytest.mark.parametrize(
    "query",
    [
        "joint=v&plate=1/2in&backing=steel&root_transfer=spray",
        "joint=v&plate=1/2in&depth=1/4in&root_transfer=spray",
        "joint=double-v&plate=1in&gap=1/16in&root_transfer=spray",
        "joint=v&plate=1/2in&root_transfer=pulse",
    ],
)
def test_a_root_that_holds_its_pool_is_not_refused(query: str) -> None:
    assert passes_answer(f"{query}&position=1G").found.processes["root"].refused is None


@pytest.mark.parametrize(
    ("mover", "fast", "over"), [("hand", "15.0", 15.2), ("track", "18.0", 18.2)]
)
def test_no_travel_set_by_hand_races_over_a_gap(mover: str, fast: str, over: float) -> None:
    """Common practice: by hand 6 to 14 in/min over a 1/8 in gap, 15 at the most."""
    asked = f"joint=square&plate=3/16in&gap=1/8in&position=1G&travel_by={mover}"
    answer = passes_answer(f"{asked}&travel={over}in/min")
    [said] = [told(note) for note in answer.notes if "edges of an open root" in told(note)]
    assert f"Bead 1: Travel speed {over} is above {fast} in/min" in said
    for held in (f"{asked}&travel={fast}in/min", f"{asked}&travel={over}in/min&gap=1/16in"):
        notes = passes_answer(held).notes
        assert not [note for note in notes if "edges of an open root" in told(note)]


@pytest.mark.parametrize("joint", ["v", "bevel", "double-v", "double-bevel", "tee-bevel"])
def test_a_gouged_detail_is_prequalified_and_says_how_deep(joint: str) -> None:
    notes = answer_json("dial-in", f"joint={joint}&plate=1in&position=1G&back=gouge")["notes"]
    assert any("Prepared as prequalified detail" in note["text"] for note in notes)
    [said] = [note for note in notes if note["field"] == "gouge_depth"]
    assert "3/16 in deep from the back of the root" in said["text"]
    assert "1/4 in radius, 20° between its walls" in said["text"]
    assert not [note for note in notes if THROUGH_ONLY in note["text"]]


@pytest.mark.parametrize("joint", ["double-v", "double-bevel", "tee-double-bevel"])
def test_a_double_groove_not_gouged_is_not_prequalified(joint: str) -> None:
    asked = f"joint={joint}&plate=1in&plate2=1in&position=1G&back=open"
    answer = passes_answer(asked)
    assert not answer.found.shape.gouged
    assert any(THROUGH_ONLY in told(note) for note in answer.notes)
    assert not [note for note in answer.notes if note.key == "passes.gouge-before"]
    notes = answer_json("strength", f"{asked}&pz=5kip")["notes"]
    assert any(THROUGH_ONLY in note["text"] for note in notes)
    gouged = answer_json("strength", f"{asked}&pz=5kip&back=gouge")["notes"]
    assert any("the first side's root" in note["text"] for note in gouged)


@pytest.mark.parametrize("joint", ["v", "bevel", "tee-bevel"])
def test_the_gouged_side_is_laid_after_the_first_with_beads_of_its_own(joint: str) -> None:
    answer = passes_answer(f"joint={joint}&plate=1/2in&plate2=1/2in&position=1G&back=gouge")
    beads, region = answer.found.beads, answer.found.shape.regions[1]
    sides = [bead.side for bead in beads]
    assert sides == sorted(sides)
    assert set(sides) == {1, 2}
    assert [bead.number for bead in beads] == list(range(1, len(beads) + 1))
    laid = [bead for bead in beads if bead.side == 2]
    assert sum(bead.slot.section_m2 for bead in laid) == pytest.approx(region.section_m2, rel=3e-3)
    drawn = unary_union([Polygon(line) for bead in laid for line in bead.slot.outlines])
    assert drawn.symmetric_difference(Polygon(region.outline)).area < 0.01 * region.section_m2
    [caution] = [note for note in answer.notes if note.key == "passes.gouge-before"]
    assert f"Before bead {laid[0].number} turn the part" in told(caution)
    assert "laid again" in told(caution)


@pytest.mark.parametrize("position", ["2G", "3G-up", "4G"])
@pytest.mark.parametrize(
    "joint", ["v&back=gouge", "double-v", "bevel&back=gouge", "double-bevel", "tee-double-bevel"]
)
def test_no_short_circuit_after_gouging(joint: str, position: str) -> None:
    """Common practice: it may lie in the gouged groove without fusing."""
    found = planned(f"joint={joint}&plate=3/4in&plate2=3/4in&position={position}")
    modes = {bead.side: set[str]() for bead in found.beads}
    for bead in found.beads:
        modes[bead.side].add(found.processes[bead.part].transfer)
    assert "short" not in modes[2]
    assert modes[2] == {"spray" if position == "2G" else "pulse"}


@pytest.mark.parametrize(
    ("typed", "why"),
    [
        ("transfer=short", "you asked for short circuit; and short circuit may not fuse"),
        ("gas=75/25", "; and short circuit may not fuse in a gouged groove"),
    ],
)
def test_short_circuit_after_gouging_is_refused_by_name(typed: str, why: str) -> None:
    asked = f"joint=v&plate=1/2in&position=3G-up&{typed}"
    answer = passes_answer(f"{asked}&back=gouge")
    assert not answer.found.open
    [stop] = [note for note in answer.notes if note.level == "stop"]
    assert (stop.key, stop.field) == ("passes.back-refused", "transfer")
    assert why in told(stop)
    assert "use flux-cored wire, or turn the joint flat and spray it" in told(stop)
    assert answer.nearest is None
    assert answer.ways_out == ()  # another wire size shorts too
    assert passes_answer(asked).found.open


def test_dial_in_says_so_too() -> None:
    for typed, level in (("transfer=short", "stop"), ("", "caution")):
        asked = f"joint=v&plate=1/2in&position=3G-up&back=gouge&{typed}"
        notes = answer_json("dial-in", asked)["notes"]
        [said] = [note for note in notes if "in the gouged side" in note["text"]]
        assert (said["level"], said["field"]) == (level, "back")
    flat = answer_json("dial-in", "joint=v&plate=1/2in&position=1G&back=gouge")["notes"]
    assert not [note for note in flat if "gouged side" in note["text"]]


def test_the_back_weld_is_no_second_side_of_equal_pull() -> None:
    """Its metal pulls with the first side's; half from each side stays another way to weld it."""
    keys = {
        back: [
            way["key"]
            for way in answer_json("heat", f"joint=v&plate=1/2in&position=1G&back={back}")[
                "answer"
            ]["distortion"]["ways"]
        ]
        for back in ("open", "gouge")
    }
    assert keys["gouge"] == keys["open"] == ["yours", "fewer", "both"]


@pytest.mark.parametrize("plate", ["3/4in", "1in"])
def test_a_root_over_a_gap_is_as_heavy_as_its_arc_lays_at_a_travel_that_bridges(
    plate: str,
) -> None:
    """Vertical up no hand is faster than 8 in/min; a skin of 1/8 in would want more."""
    asked = f"joint=tee-double-bevel&plate={plate}&plate2={plate}&position=3G-up"
    found = planned(asked)
    assert found.open
    root = found.beads[0]
    assert root.laid is not None
    assert root.laid.travel_m_s <= 8 * IN / 60 * (1 + 1e-6)
    assert 1 / 8 < root.slot.thickness_m / IN <= 3 / 16 * (1 + 1e-6)
