"""Roots with nothing under them: what the code lets count, what no bead over a gap may be."""

import pytest

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
    "query", ["joint=v&angle=50", "joint=square&plate=1/4in", "joint=square&plate=3mm"]
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
    assert f"Bead 1: Travel {over} is above {fast} in/min" in said
    for held in (f"{asked}&travel={fast}in/min", f"{asked}&travel={over}in/min&gap=1/16in"):
        notes = passes_answer(held).notes
        assert not [note for note in notes if "edges of an open root" in told(note)]
