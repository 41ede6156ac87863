"""What the welder is told: which note, how loud, beside which field."""

import pytest
from hypothesis import given, settings

from beadwright.job.job_entries import DEFAULTS, FIELDS
from beadwright.reading.fields import Measured
from beadwright.results import Note
from beadwright.setting.dial_in import DialIn
from beadwright.units import read
from tests.calc.jobs import Typed, dialled, jobs, jobs_by_hand
from tests.told import in_words, told

EXAMPLE: Typed = {"plate": "3/8in", "leg": "5/16in", "position": "2F", "dia": "0.045in"}
SHUT = ("Two limits conflict", "No spray here", "Wrong gas", "Not this wire")
LOUDNESS = ["stop", "out", "caution", "note"]


def notes_with(answer: DialIn, text: str) -> list[Note]:
    return [note for note in answer.notes if text in told(note)]


def only(answer: DialIn, text: str) -> Note:
    [note] = notes_with(answer, text)
    return note


@settings(max_examples=80)
@given(jobs_by_hand())
def test_the_loudest_come_first_and_none_twice(typed: Typed) -> None:
    answer = dialled(typed)
    levels = [LOUDNESS.index(note.level) for note in answer.notes]
    assert levels == sorted(levels)
    texts = [told(note) for note in answer.notes]
    assert len(texts) == len(set(texts))


@settings(max_examples=80)
@given(jobs_by_hand())
def test_a_note_stands_beside_a_field_of_the_page(typed: Typed) -> None:
    assert {note.field for note in dialled(typed).notes} <= {*DEFAULTS, ""}


@settings(max_examples=100)
@given(jobs())
def test_a_shut_window_names_two_limits_or_why_spray_is_refused(typed: Typed) -> None:
    answer = dialled(typed)
    stops = [n for n in answer.notes if told(n).startswith(SHUT)]
    if answer.open:
        assert stops == []
        return
    [stop] = stops
    assert stop.level == "stop"
    if answer.plan.refused is not None:
        assert told(stop).split(": ", 1)[1].startswith(f"{in_words(answer.plan.refused)}. ")
        assert told(stop).startswith(("No spray here: ", "Wrong gas: ", "Not this wire: "))
        assert stop.field == "transfer"
        return
    if answer.plan.heat_fight is not None:
        assert "burns through this plate" in told(stop)
        assert stop.field == ("leg" if answer.job.is_fillet else "gap")
        return
    low, high = answer.plan.feeds.low_limit, answer.plan.feeds.high_limit
    assert in_words(low.why) in told(stop)
    assert in_words(high.why) in told(stop)
    assert low.key != high.key
    assert stop.field == "wfs"


@settings(max_examples=100)
@given(jobs_by_hand())
def test_a_setting_outside_its_window_is_said_and_no_other(typed: Typed) -> None:
    answer = dialled(typed)
    out = [told(note) for note in answer.notes if note.level == "out"]
    said = {text.split(" is ")[0].rsplit(" ", 1)[0] for text in out
            if " is below " in text or " is above " in text}  # fmt: skip
    outside = {q.name for q in answer.settings.all() if q.value is not None and not q.inside}
    assert said == outside


@pytest.mark.parametrize(
    ("position", "gas", "wire", "why"),
    [
        ("2F", "CO2", "ER70S-6", "CO2 does not spray at any setting"),
        ("2F", "CO2", "E70C-6M", "CO2 does not spray at any setting"),
        ("2F", "75/25", "ER70S-6",
         "solid wire does not spray above about 20% CO2; 75/25 has more"),
        ("3F-up", "90/10", "ER70S-6", "spray runs out of the joint vertical-up"),
        ("3F-down", "90/10", "ER70S-6", "spray runs out of the joint vertical-down"),
        ("4F", "90/10", "E70C-6M",
         "spray runs out of the joint overhead; metal-cored wire needs pulse there"),
    ],
)  # fmt: skip
def test_spray_is_refused_in_these_words(position: str, gas: str, wire: str, why: str) -> None:
    answer = dialled(
        EXAMPLE | {"position": position, "gas": gas, "wire": wire, "transfer": "spray"}
    )
    note = only(answer, "No spray here")
    assert told(note) == f"No spray here: {why}. Set transfer to auto."
    assert (note.level, note.source, note.field) == ("stop", "mig-handbook-1-2", "transfer")
    assert not answer.open


@pytest.mark.parametrize(
    ("changes", "level", "text", "field"),
    [
        ({"leg": "1/8in"}, "stop", "under the code minimum of 3/16 in", "leg"),
        ({"leg": ""}, "note", "Leg 7/32 in is what a hand lays well on this plate", "leg"),
        ({"leg": ""}, "note", "the code minimum is 3/16 in", "leg"),
        ({"joint": "lap", "leg": "3/8in"}, "stop", "over 5/16 in, the most along this edge",
         "leg"),
        ({"leg": "7/16in"}, "note", "Over 3/8 in in one pass is not prequalified horizontal",
         "leg"),
        ({"leg": "3/8in"}, "note", "one pass horizontal is planned up to 5/16 in", "leg"),
        ({"gap": "1/8in"}, "note", "weld 7/16 in to keep the throat", "gap"),
        ({"reinforcement": "3/16in"}, "out", "is over the 1/8 in the code accepts",
         "reinforcement"),
        ({"joint": "square", "plate": "1/4in"}, "caution",
         "weld it on a backing, or weld both sides", "plate"),
        ({"joint": "square", "plate": "1/8in", "reinforcement": "5/32in"}, "out",
         "Reinforcement over 1/8 in", "reinforcement"),
        ({"transfer": "short"}, "caution", "not prequalified in AWS D1.1", "transfer"),
        ({"transfer": "short"}, "caution", "Over 3/16 in, short circuit may lie on the plate",
         "transfer"),
        ({"gas": "CO2"}, "caution", "Globular: expect spatter", "transfer"),
        ({"transfer": "pulse"}, "note", "the machine sets its own volts", "volts"),
        ({"wire": "E70C-6M"}, "note", "28-30 V at 250 in/min", "volts"),
        ({"wire": "E70C-6M", "position": "3F-up", "transfer": "short"}, "caution",
         "out of position needs pulse", "position"),
        ({"wire": "E70C-6M", "dia": "0.052in"}, "note", "No printed points for this wire", "dia"),
        ({"plate2": "3/4in"}, "note", "Unequal plates", "plate2"),
        ({"wfs": "300in/min", "travel": "5in/min"}, "out", "leg, over the 5/16 in asked",
         "travel"),
        ({"wfs": "300in/min", "travel": "10in/min"}, "out", "leg, under the 5/16 in asked",
         "travel"),
        ({"volts": "18V"}, "out", "the arc runs short circuit; the windows are for spray",
         "volts"),
        ({"wfs": "900in/min"}, "out", "Wire feed 900 is above", "wfs"),
        ({}, "caution", "Starting points. Prove them on a coupon", ""),
        ({}, "caution", "Filter shade 10 or", ""),
        ({}, "caution", "Argon and CO2 push the air", ""),
        ({"gas": "CO2"}, "caution", "CO2 pushes the air", ""),
        ({}, "note", "Wind over 5 mph", ""),
        ({}, "note", "Volts are at the arc", "volts"),
    ],
)  # fmt: skip
def test_each_note_at_its_level_beside_its_field(
    changes: Typed, level: str, text: str, field: str
) -> None:
    note = only(dialled(EXAMPLE | changes), text)
    assert (note.level, note.field) == (level, field)


@pytest.mark.parametrize(
    ("changes", "text"),
    [
        ({}, "under the code minimum"),
        ({"leg": "3/16in"}, "under the code minimum"),
        ({"joint": "lap"}, "the most along this edge"),
        ({}, "in one pass"),
        ({}, "passes: one pass"),
        ({"gap": "1/16in"}, "to keep the throat"),
        ({}, "the code accepts"),
        ({"joint": "square", "plate": "1/8in"}, "from one side may not melt through"),
        ({}, "Two limits conflict"),
        ({}, "leg, over"),
        ({}, "the windows are for"),
        ({"plate2": "7/16in"}, "Unequal plates"),
        ({"plate": "3/16in", "leg": "3/16in", "transfer": "short"}, "may lie on the plate"),
        ({"wire": "E70C-6M"}, "No printed points"),
    ],
)
def test_no_note_where_none_is_due(changes: Typed, text: str) -> None:
    assert notes_with(dialled(EXAMPLE | changes), text) == []


def test_a_leg_by_hand_is_off_only_past_a_thirty_second() -> None:
    free = dialled(EXAMPLE)
    travel = free.settings.travel.value or 0
    near = dialled(EXAMPLE | {"travel": f"{travel * 1.04 * 60 / 0.0254:.3f}in/min",
                              "wfs": "400in/min"})  # fmt: skip
    leg, asked = near.outcome, near.plan.shape.leg_m
    assert leg is not None
    assert leg.leg.value is not None
    off = abs(leg.leg.value - asked) > 0.0254 / 32
    assert bool(notes_with(near, "lay ")) == off


MEASURED = [field for field in FIELDS.values() if isinstance(field, Measured)]


@pytest.mark.parametrize("field", MEASURED, ids=lambda field: field.low_text)
def test_ranges_of_the_form_are_what_its_messages_say(field: Measured) -> None:
    assert field.low == read(field.low_text, field.measure)
    assert field.high == read(field.high_text, field.measure)
    assert field.low < field.high
