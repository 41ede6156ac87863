"""The wire's usual range: said of a set point outside it, with its source, and never a limit."""

from dataclasses import replace

import pytest
from hypothesis import given, settings

from beadwright.process.transfer import Transfer
from beadwright.process.wire_kinds import Kind
from beadwright.process.wire_ranges import usual_feed, usual_volts
from beadwright.results import Note
from beadwright.setting.usual_range import range_sources, usual_notes
from beadwright.sources import SOURCES
from tests.calc.jobs import Typed, dialled, jobs_by_hand
from tests.told import told

EXAMPLE: Typed = {"plate": "3/8in", "leg": "5/16in"}
SAID = ("setting.under-usual", "setting.over-usual")


def cautions(typed: Typed) -> list[Note]:
    return [note for note in dialled(typed).notes if note.phrase.key in SAID]


def test_our_own_set_point_on_the_usual_tip_to_work_is_usual() -> None:
    assert cautions(EXAMPLE) == []
    assert cautions(EXAMPLE | {"wire": "E70C-6M"}) == []
    assert cautions({"plate": "16ga", "gas": "75/25", "dia": "0.030in"}) == []


def test_volts_by_hand_over_the_usual() -> None:
    """0.045 in solid in 90/10: 20.4 + 0.025 × 229.3 − 2.2 to 20.4 + 0.025 × 380 + 2.5 V."""
    [note] = cautions(EXAMPLE | {"volts": "40V"})
    assert (note.level, note.field, note.source) == ("caution", "volts", "machinery-31-t5")
    assert told(note).startswith("Volts at the arc 40.0 is over")
    assert "23.9 to 32.4 V" in told(note)
    [under] = cautions(EXAMPLE | {"volts": "20V"})
    assert "20.0 is under" in told(under)
    [flux] = cautions(EXAMPLE | {"wire": "E71T-1C", "gas": "CO2", "volts": "40V"})
    assert flux.source == "fcaw-ranges"


def test_a_long_tip_to_work_takes_more_feed_than_usual_and_that_is_no_limit() -> None:
    typed = EXAMPLE | {"ctwd": "1in", "wfs": "560in/min"}
    [note] = cautions(typed)
    assert (note.field, note.source) == ("wfs", "equipment-sheet")
    assert "Wire feed 560 is over" in told(note)
    assert dialled(typed).settings.wire_feed.inside


def test_a_short_tip_to_work_takes_less_feed_than_usual() -> None:
    typed = EXAMPLE | {"ctwd": "1/2in", "wfs": "255in/min"}
    [note] = cautions(typed)
    assert (note.field, note.source) == ("wfs", "mig-handbook-1-2")
    assert "Wire feed 255 is under" in told(note)
    assert dialled(typed).settings.wire_feed.inside


@pytest.mark.parametrize(
    ("volts", "said"), [("23.8V", True), ("24.0V", False), ("32.3V", False), ("32.5V", True)]
)
def test_volts_a_tenth_past_the_usual_are_said(volts: str, said: bool) -> None:
    assert bool(cautions(EXAMPLE | {"volts": volts, "wfs": "400in/min"})) == said


@pytest.mark.parametrize(("off", "said"), [(0, False), (0.5e-6, False), (1e-6, False),
                                           (1.02e-6, True), (1e-4, True)])  # fmt: skip
def test_on_the_end_is_inside_and_a_millionth_past_it_still_is(off: float, said: bool) -> None:
    answer = dialled(EXAMPLE)
    job, mode = answer.job, answer.plan.transfer
    low, high = usual_feed(job.wire, job.gas, mode)
    feed = replace(answer.settings.wire_feed, low=None, high=None)
    for value in (low * (1 - off), high * (1 + off)):
        standing = replace(answer.settings, wire_feed=replace(feed, value=value))
        assert len(list(usual_notes(job, mode, standing))) == said


def test_where_the_wire_s_own_limit_says_it_nothing_is_said_twice() -> None:
    for feed in ("800in/min", "150in/min"):
        answer = dialled(EXAMPLE | {"wfs": feed})
        assert any(n.level == "out" and "this wire" in told(n) for n in answer.notes)
        assert not any(n.phrase.key in SAID for n in answer.notes)


@settings(max_examples=80)
@given(jobs_by_hand())
def test_it_is_said_of_what_is_outside_and_of_nothing_else(typed: Typed) -> None:
    answer = dialled(typed)
    job, mode, feed = answer.job, answer.plan.transfer, answer.settings.wire_feed
    notes = list(usual_notes(job, mode, answer.settings))
    usual = {"wfs": usual_feed(job.wire, job.gas, mode)}
    standing = {"wfs": feed.value, "volts": answer.settings.volts.value}
    volts = usual_volts(job.wire, job.gas, mode)
    if volts is not None:
        usual["volts"] = volts
    for note in notes:
        low, high = usual[note.field]
        value = standing[note.field]
        assert value is not None
        assert value > high if "is over" in told(note) else value < low
    low, high = usual["wfs"]
    if feed.value is not None and feed.inside and not low * 0.999 < feed.value < high * 1.001:
        assert [note.field for note in notes] == ["wfs"]
    assert len(notes) <= 1


@pytest.mark.parametrize(
    ("kind", "mode", "expected"),
    [
        ("solid", "short", ("power-source-rule", "equipment-sheet")),
        ("metal-cored", "short", ("power-source-rule", "equipment-sheet")),
        ("solid", "spray", ("mig-handbook-1-2", "equipment-sheet")),
        ("metal-cored", "spray", ("e70c-sheet", "e70c-sheet")),
        ("flux-cored", "spray", ("fcaw-deposition", "fcaw-deposition")),
        ("solid", "pulse", ("practice", "equipment-sheet")),
        ("metal-cored", "pulse", ("practice", "e70c-sheet")),
        ("solid", "globular", ("equipment-sheet", "equipment-sheet")),
    ],
)
def test_where_an_end_comes_from(kind: Kind, mode: Transfer, expected: tuple[str, str]) -> None:
    assert range_sources(kind, mode) == expected
    assert set(expected) <= set(SOURCES)
