"""Which coupons prove a card: the same weld, wire and gas, at settings the card would pass."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from beadwright.card.card_page import CardAnswer, card_answer
from beadwright.card.card_proof import proofs_of
from beadwright.coupons.coupon_records import read_records
from beadwright.coupons.new_record import new_record

JOB = "plate=1/4in&leg=1/4in"
WELDED = f"{JOB}&marked=8in&arc_time=40s&meter_amps=330A&coupon=C-12&welder=Ann"


def records(*queries: str) -> str:
    """Kept coupons as the phone gives them."""
    kept = [
        new_record(query, None, f"key{at}", f"2026-11-{10 + at}T08:00:00Z").plain()
        for at, query in enumerate(queries)
    ]
    return json.dumps(kept)


def test_only_a_coupon_of_this_weld_at_these_settings_is_offered() -> None:
    coupons = records(
        WELDED,
        WELDED.replace("plate=1/4in", "plate=3/8in"),
        f"{WELDED}&position=1F",
        f"{WELDED}&gas=75/25",
        f"{WELDED}&wfs=200in/min&volts=19V&transfer=short",
        WELDED.replace("C-12", "C-13"),
    )
    card = card_answer(JOB, {"coupons": coupons})
    assert [proof.mark for proof in card.proofs] == ["C-13", "C-12"]  # the newest first
    assert card.proofs[0].record.welder == "Ann"
    assert proofs_of((), card.dialled, card.found) == ()
    assert not card.proved
    assert card_answer(f"{JOB}&proved_mark=C-12").proved


def test_a_coupon_at_other_volts_proves_nothing() -> None:
    volts = card_answer(JOB).dialled.settings.volts.value
    assert volts is not None
    for off, proved in ((0.98, True), (-0.98, True), (1.03, False), (-1.03, False)):
        coupons = records(f"{WELDED}&volts={volts + off:.2f}V")
        assert bool(card_answer(JOB, {"coupons": coupons}).proofs) is proved, off


def is_proved(job: str, coupon: str) -> bool:
    return bool(card_answer(job, {"coupons": records(coupon)}).proofs)


def set_as(card: CardAnswer, feed_m_s: float) -> str:
    """A coupon of the card's weld at another wire feed, all else as on the card."""
    volts = card.dialled.settings.volts.value
    mode = card.dialled.plan.transfer
    return f"{WELDED}&wfs={feed_m_s * 60:.6f}m/min&volts={volts:.2f}V&transfer={mode}"


@pytest.mark.parametrize(("past", "proved"), [(0.0295, True), (0.031, False)])
def test_its_feed_may_lie_three_percent_past_the_room_of_the_card(
    past: float, proved: bool
) -> None:
    """Three percent: the same size, as the codes round. Any feed inside the room is the card's."""
    card = card_answer(JOB)
    room = card.dialled.settings.wire_feed
    assert room.low is not None
    assert room.high is not None
    assert is_proved(JOB, set_as(card, room.low * (1 - past))) is proved
    assert is_proved(JOB, set_as(card, room.high * (1 + past))) is proved
    assert is_proved(JOB, set_as(card, (room.low + room.high) / 2))


@pytest.mark.parametrize(("off", "proved"), [(0.969, False), (0.9705, True), (1.0305, True),
                                             (1.0315, False)])  # fmt: skip
def test_its_leg_may_be_three_percent_off(off: float, proved: bool) -> None:
    assert is_proved(JOB, WELDED.replace("leg=1/4in", f"leg={0.25 * off:.5f}in")) is proved


def test_a_coupon_with_another_wire_size_wire_or_gas_proves_nothing() -> None:
    for other in ("dia=0.035in", "wire=E70C-6M", "gas=85/15"):
        assert not is_proved(f"{JOB}&{other}", WELDED), other
        assert is_proved(f"{JOB}&{other}", f"{WELDED}&{other}"), other


def test_a_coupon_whose_leg_was_left_blank_is_not_one_of_a_written_leg() -> None:
    blank = WELDED.replace("&leg=1/4in", "")
    assert is_proved("plate=1/4in", blank)
    assert not is_proved(JOB, blank)
    assert not is_proved("plate=1/4in", WELDED)


def test_a_gap_the_coupon_had_not_is_another_weld() -> None:
    assert not is_proved(f"{JOB}&gap=1/16in", WELDED)
    assert is_proved(f"{JOB}&gap=1/16in", f"{WELDED}&gap=1/16in")


def test_pulse_has_no_volts_to_compare() -> None:
    pulse = "transfer=pulse"
    assert is_proved(f"{JOB}&{pulse}", f"{WELDED}&{pulse}")
    [proof] = card_answer(f"{JOB}&{pulse}", {"coupons": records(f"{WELDED}&{pulse}")}).proofs
    assert proof.volts is None


def test_a_proof_says_what_it_was_welded_at() -> None:
    card = card_answer(JOB)
    volts, feed = card.dialled.settings.volts.value, card.dialled.settings.wire_feed.value
    [proof] = card_answer(JOB, {"coupons": records(WELDED)}).proofs
    assert (proof.feed_m_s, proof.volts) == (feed, volts)


def test_a_coupon_that_can_no_longer_be_read_proves_nothing_and_hides_no_other() -> None:
    card = card_answer(JOB)
    good, old = read_records(records(WELDED, WELDED))
    broken = replace(old, query="plate=9zz&leg=what")
    proofs = proofs_of((broken, good), card.dialled, card.found)
    assert [proof.record for proof in proofs] == [good]


def test_a_coupon_no_setting_holds_proves_nothing_and_hides_no_other() -> None:
    card = card_answer(JOB)
    good, old = read_records(records(WELDED, WELDED))
    none = replace(old, query=f"{WELDED}&machine_amps=30A")
    proofs = proofs_of((none, good), card.dialled, card.found)
    assert [proof.record for proof in proofs] == [good]


@pytest.mark.parametrize("more", ["", "&transfer=pulse"])
def test_nothing_proves_a_card_without_beads(more: str) -> None:
    card = card_answer(JOB + more)
    [good] = read_records(records(WELDED + more))
    assert proofs_of((good,), card.dialled, replace(card.found, beads=())) == ()
