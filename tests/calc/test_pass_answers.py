"""The Passes page: other plans, what fights, what is refused."""

from dataclasses import replace

import pytest

from beadwright.api import answer_json
from beadwright.errors import FieldErrors
from beadwright.passes.pass_beads import of_beads
from beadwright.passes.pass_choices import choices
from beadwright.passes.pass_plan import pass_plan
from beadwright.passes.passes_page import passes_answer
from tests.calc.jobs import planned
from tests.told import in_words, told


def test_the_bead_looked_at_is_the_last_or_the_one_asked_for() -> None:
    whole = passes_answer("plate=3/4in&leg=5/8in")
    assert whole.bead is whole.found.beads[-1]
    second = passes_answer("plate=3/4in&leg=5/8in&at=2")
    assert second.bead.number == 2
    assert passes_answer("plate=3/4in&leg=5/8in&at=1").bead.number == 1


def test_a_plan_read_bead_by_bead_is_worked_out_once() -> None:
    query = "plate=3/4in&leg=5/8in"
    assert passes_answer(f"{query}&at=2").found is passes_answer(query).found
    assert passes_answer(f"{query}&passes=7").found is not passes_answer(query).found


def test_of_dial_in_s_notes_only_warnings_on_the_joint_are_told() -> None:
    """Not that the settings run hot, nor which detail of the code the joint is."""
    answer = passes_answer("plate=1in&joint=double-v&position=1G&angle=60deg&gap=1/8in")
    dialled = {(note.level, note.field) for note in answer.dialled.notes}
    here = {(note.level, note.field) for note in answer.notes}
    assert ("caution", "gap") in here & dialled
    assert {("caution", "wfs"), ("note", "angle")} <= dialled - here


@pytest.mark.parametrize(
    ("query", "said"),
    [
        (
            "plate=1/2in&leg=1/2in&passes=3&at=99",
            "There is no bead 99: this plan has 3 beads. Use 1 to 3, or leave it blank for the "
            "last.",
        ),
        (
            "leg=5/16in&at=2",
            "There is no bead 2: this plan has 1 bead. Use 1, or leave it blank for the last.",
        ),
        ("leg=5/16in&at=0", "0 is outside 1 to 400"),
        ("leg=5/16in&at=two", "“two” is not a count"),
    ],
)
def test_a_bead_that_is_not_there_is_refused(query: str, said: str) -> None:
    with pytest.raises(FieldErrors) as refused:
        passes_answer(query)
    assert said in refused.value.messages["at"][0]


def test_too_few_passes_are_said_and_the_nearest_that_holds_is_named() -> None:
    answer = passes_answer("plate=3/4in&leg=5/8in&passes=2")
    assert len(answer.found.beads) == 2
    assert answer.found.over == (1, 2)
    assert answer.nearest is not None
    assert answer.nearest.open
    there = passes_answer(f"plate=3/4in&leg=5/8in&passes={answer.nearest.changes['passes']}")
    assert there.found.open
    assert not there.found.over


def test_what_fights_is_named_with_its_bead() -> None:
    answer = passes_answer("plate=1/2in&leg=1/4in&passes=9&transfer=spray")
    assert not answer.found.open
    stop = next(note for note in answer.notes if note.level == "stop")
    assert "two limits conflict" in told(stop)
    assert told(stop).startswith("Bead")
    assert answer.nearest is not None


def test_choices_cost_what_their_plans_cost() -> None:
    found = planned("plate=3/4in&leg=5/8in")
    rows = choices(found)
    assert rows[0].same
    assert rows[0].beads == len(found.beads)
    for row in rows:
        if row.changes.get("passes"):
            again = planned(f"plate=3/4in&leg=5/8in&passes={row.changes['passes']}")
            assert len(again.beads) == row.beads == int(row.changes["passes"])
            assert row.arc_time_s == pytest.approx(again.arc_time_s)
    quick = next(row for row in rows if row.changes.get("aim") == "least-time")
    cool = next(row for row in rows if row.changes.get("aim") == "least-heat")
    assert quick.arc_time_s is not None
    assert cool.heat_j_m is not None
    assert quick.arc_time_s <= found.arc_time_s
    hottest = found.hottest
    assert hottest is not None
    assert hottest.laid is not None
    assert cool.heat_j_m <= hottest.laid.heat_j_m


@pytest.mark.parametrize(
    ("given_", "text"),
    [((3,), "Bead 3"), ((1, 2, 3), "Beads 1–3"), ((1, 3, 4, 7), "Beads 1, 3–4, 7")],
)
def test_numbers_as_a_shop_writes_them(given_: tuple[int, ...], text: str) -> None:
    assert in_words(of_beads(given_)) == text


@pytest.mark.parametrize(
    ("query", "field", "says"),
    [
        ("passes=0", "passes", "1 to 400"),
        ("passes=four", "passes", "four"),
        ("bead=zigzag", "bead", "weave, stringer"),
        ("root_transfer=globular", "root_transfer", "short, spray, pulse"),
        ("root_wfs=5in/min", "root_wfs", "no feeder holds"),
        ("cap_volts=99", "cap_volts", "outside"),
    ],
)
def test_what_cannot_be_is_said_beside_its_field(query: str, field: str, says: str) -> None:
    with pytest.raises(FieldErrors) as caught:
        passes_answer(query)
    assert says in caught.value.messages[field][0]


def test_the_plan_of_a_job_is_what_dial_in_calls_it() -> None:
    answer = passes_answer("plate=3/8in&leg=5/16in")
    assert answer.found.plan.passes == len(answer.found.beads) == 1
    other = replace(answer.found.job, leg_m=0.0127)
    assert len(pass_plan(other).beads) == 3


def test_a_torch_is_held_to_tenths_of_a_degree() -> None:
    beads = answer_json("passes", "plate=1/2in&leg=1/2in&passes=3")["answer"]["beads"]
    angles = [bead["work_angle"]["value"] for bead in beads]
    assert len(set(angles)) == 3
    assert all(angle == round(angle, 1) for angle in angles)


@pytest.mark.parametrize("typed", ["ctwd=2in", "volts=15V"])
def test_what_is_set_by_hand_for_every_bead_and_out_of_its_window_is_said(typed: str) -> None:
    key = typed.partition("=")[0]
    found = answer_json("passes", f"plate=3/8in&leg=1/4in&{typed}")["notes"]
    assert ("out", key) in [(note["level"], note["field"]) for note in found]
    plain = answer_json("passes", "plate=3/8in&leg=1/4in")["notes"]
    assert not [note for note in plain if note["field"] == key]


@pytest.mark.parametrize(
    ("query", "field", "says"),
    [
        ("wfs=900in/min", "wfs", "Bead 1: Wire feed 900 is above 514 in/min: 380 A"),
        ("wfs=60in/min", "wfs", "Wire feed 60 is below"),
        (
            "travel=100in/min",
            "travel",
            "Travel speed 100.0 is above 40.0 in/min: what a hand holds",
        ),
        ("travel=60in/min", "travel", "Planned at 27.6 in/min"),
        ("travel=30in/min", "travel", "it needs 558 in/min of wire, and 380 A"),
        ("wfs=290in/min&travel=8in/min", "travel", "your 290 in/min of wire fills the bead"),
        ("joint=v&plate=1/2in&position=1G&root_wfs=700in/min", "root_wfs", "Bead 1: Wire feed 700"),
        ("joint=v&plate=1/2in&position=1G&cap_volts=45V", "cap_volts", "45.0 is above"),
    ],
)
def test_what_is_typed_and_out_of_a_bead_s_window_is_said_with_its_reason(
    query: str, field: str, says: str
) -> None:
    told_out = [
        told(note)
        for note in passes_answer(query).notes
        if (note.level, note.field) == ("out", field)
    ]
    assert any(says in each for each in told_out), told_out


@pytest.mark.parametrize("typed", ["wfs=900in/min", "wfs=60in/min", "travel=100in/min"])
def test_passes_names_out_what_dial_in_names_out(typed: str) -> None:
    key = typed.partition("=")[0]
    for page in ("dial-in", "passes"):
        notes = answer_json(page, typed)["notes"]
        assert ("out", key) in [(note["level"], note["field"]) for note in notes], page


def test_what_holds_is_not_named() -> None:
    notes = passes_answer("wfs=400in/min&travel=21in/min").notes
    assert not [note for note in notes if note.level == "out"]
