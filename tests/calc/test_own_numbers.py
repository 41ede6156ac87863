"""A shop's own numbers: their text, what they change in an answer, how they are switched off."""

from __future__ import annotations

from dataclasses import replace

import pytest

from beadwright.api import answer, answer_json
from beadwright.errors import FieldErrors
from beadwright.process.burnoff import constants_of, current_from_feed, feed_from_current
from beadwright.process.deposition import deposition_efficiency
from beadwright.process.gases import gas_of
from beadwright.process.own_numbers import (
    OwnNumbers,
    OwnNumbersError,
    own_book,
    own_of,
)
from beadwright.process.wires import wire_of
from tests.told import in_words

WAY = "ER70S-6,0.045in,90/10"
FULL = f"{WAY},n7,phi1.1,r1.1,band0.08,eff0.98,spread0.02,crown1.05,travel0.9,volts0.8"
JOB = "plate=3/8in&leg=5/16in&wire=ER70S-6&dia=0.045in&gas=90/10"


def test_the_text_is_read_back_as_written() -> None:
    [own] = own_book(FULL)
    assert own == OwnNumbers("ER70S-6", "0.045in", "90/10", 7, 1.1, 1.1, 0.08, 0.98, 0.02, 1.05,
                             0.9, 0.8)  # fmt: skip
    assert own.text == FULL


def test_a_book_has_numbers_by_wire_and_gas() -> None:
    book = own_book(f"{FULL};E70C-6M,0.045in,90/10,n2,travel1.2; ")
    assert [own.wire for own in book] == ["ER70S-6", "E70C-6M"]
    assert own_of(book, "E70C-6M", "0.045in", "90/10") == book[1]
    assert own_of(book, "E70C-6M", "0.045in", "CO2") is None
    assert own_book(" OFF ") == ()


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("hello", "is no own number"),
        (f"{WAY}", "is no own number"),
        (f"{WAY},n7,phi2.5,r1,band0.1", "outside 0.6 to 1.6"),
        (f"{WAY},n7,phi1.0", "stand together"),
        (f"{WAY},n7,eff0.9", "stand together"),
        (f"{WAY},travel1.1", "number of coupons"),
        (f"{WAY},n7,speed1.1", "is none of"),
        (f"{WAY},n7,travel", "is none of"),
    ],
)
def test_what_is_no_own_number_is_refused_by_name(text: str, why: str) -> None:
    with pytest.raises(OwnNumbersError, match=why):
        own_book(text)


def test_a_refusal_stands_beside_its_field() -> None:
    with pytest.raises(FieldErrors) as caught:
        answer("dial-in", f"{JOB}&own=hello")
    assert list(caught.value.messages) == ["own"]
    assert "errors" in answer_json("dial-in", f"own={'x' * 5000}")


def test_burn_off_moves_by_both_constants() -> None:
    """By hand: feed is (I φ + I² r L / A) over the same mass and heat; φ and r each × 1.1."""
    wire = wire_of("ER70S-6", "0.045in")
    own = replace(wire, own=own_book(FULL)[0])
    assert feed_from_current(own, 250, 0.015) == pytest.approx(
        1.1 * feed_from_current(wire, 250, 0.015)
    )
    feed = feed_from_current(own, 250, 0.015)
    assert current_from_feed(own, feed, 0.015) == pytest.approx(250)
    assert constants_of(own).band == 0.08


def test_efficiency_moves_and_takes_the_shops_band() -> None:
    wire, gas = wire_of("ER70S-6", "0.045in"), gas_of("90/10")
    typical = deposition_efficiency(wire, gas, "spray")[1]
    low, own, high = deposition_efficiency(replace(wire, own=own_book(FULL)[0]), gas, "spray")
    assert own == pytest.approx(0.98 * typical)
    assert (low, high) == pytest.approx((own * 0.98, own * 1.02))


def test_a_fuller_crown_slows_the_same_leg() -> None:
    """The section of a fillet is 1.05 × as large, so at one feed the travel is as much slower."""
    job = JOB.replace("5/16", "1/4")
    plain = answer("dial-in", f"{job}&wfs=400in/min").dialled.settings.travel.value
    own = answer("dial-in", f"{job}&wfs=400in/min&own={WAY},n3,crown1.05")
    assert plain is not None
    assert own.dialled.settings.travel.value == pytest.approx(plain / 1.05, rel=1e-6)


def test_the_hands_own_pace_is_planned() -> None:
    plain = answer("dial-in", JOB).dialled.settings
    slow = answer("dial-in", f"{JOB}&own={WAY},n3,travel0.9").dialled.settings
    assert plain.travel.value is not None
    assert slow.travel.value is not None
    assert slow.travel.value == pytest.approx(0.9 * plain.travel.value, rel=0.01)
    assert slow.wire_feed.value < plain.wire_feed.value  # type: ignore[operator]
    robot = f"{JOB}&travel_by=robot"
    assert (
        answer("dial-in", f"{robot}&own={WAY},n3,travel0.9").dialled.settings
        == answer("dial-in", robot).dialled.settings
    )


def keys_of(query: str) -> set[str]:
    return {note.key for note in answer("dial-in", query).notes}


def test_the_page_says_whose_numbers_count() -> None:
    assert "job.own-numbers" in keys_of(f"{JOB}&own={FULL}")
    assert "setting.meter-reads" in keys_of(f"{JOB}&own={FULL}")
    assert "job.own-numbers-off" in keys_of(f"{JOB}&own=off")
    assert not {"job.own-numbers", "job.own-numbers-off"} & keys_of(JOB)
    # Numbers of another wire or gas change nothing and are not spoken of.
    other = "plate=3/8in&leg=5/16in&wire=ER70S-6&dia=0.045in&gas=CO2"
    assert "job.own-numbers" not in keys_of(f"{other}&own={FULL}")


def test_every_page_uses_them_and_off_wins_over_what_is_kept() -> None:
    kept = {"own": FULL}
    for page in ("passes", "cost", "supplies", "heat"):
        used = answer(page, JOB, kept)
        assert "job.own-numbers" in {note.key for note in used.notes}, page
        off = answer(page, f"{JOB}&own=off", kept)
        assert off.query.job.wire.own is None, page


NAMED = f"{FULL},at=bay 2%2C left,by=Ann%3B O%27Neil"


def test_the_text_tells_whose_they_are() -> None:
    [own] = own_book(NAMED)
    assert (own.machine, own.welder) == ("bay 2, left", "Ann; O'Neil")
    assert own.whose == "Ann; O'Neil, bay 2, left"
    assert own.text == NAMED
    assert own == replace(own_book(FULL)[0], machine="bay 2, left", welder="Ann; O'Neil")
    assert len(own_book(f"{NAMED};{FULL}")) == 2
    assert own_book(FULL)[0].whose == ""


@pytest.mark.parametrize("name", ["x" * 41, "a%0Ab"])
def test_a_name_that_is_none_is_refused(name: str) -> None:
    with pytest.raises(OwnNumbersError, match="plain characters"):
        own_book(f"{FULL},by={name}")


def test_a_page_says_whose_numbers_count() -> None:
    notes = answer("dial-in", JOB, {"own": f"{FULL},at=one,by=Ann"}).notes
    [told] = [note.phrase for note in notes if note.key.startswith("job.own")]
    assert told.key == "job.own-numbers-of"
    assert dict(told.parameters)["whose"] == "Ann, one"


@pytest.mark.parametrize(
    ("volts", "key", "said"),
    [("0.8", "process.meter-over", "0.8 V higher"), ("-0.6", "process.meter-under", "0.6 V lower")],
)
def test_a_sheet_tells_how_the_meter_stands_to_the_arc(volts: str, key: str, said: str) -> None:
    [own] = own_book(f"{WAY},n3,volts{volts}")
    assert own.meter_told is not None
    assert own.meter_told.key == key
    assert said in in_words(own.meter_told)
    for none in ("travel0.9", "volts0"):
        [own] = own_book(f"{WAY},n3,{none}")
        assert own.meter_told is None
