"""The Coupons page: what a shop learns, kept apart by wire, gas, machine and hand."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from beadwright.api import answer, answer_json
from beadwright.coupons.coupon_facts import CouponFacts
from beadwright.coupons.coupon_records import CouponRecord, records_text
from beadwright.coupons.coupon_stack import coupon_stack
from beadwright.coupons.coupons_page import CouponsAnswer, coupons_answer
from beadwright.coupons.coupons_report import coupons_report
from beadwright.coupons.learned_numbers import (
    learned_number,
    own_numbers_of,
    prior_of,
    same_way,
)
from beadwright.coupons.next_coupon import next_coupon
from beadwright.process.own_numbers import own_book
from beadwright.process.wires import wire_of

JOB = "plate=1/4in&leg=1/4in&wire=ER70S-6&dia=0.045in&gas=90/10&machine=one&welder=Ann"


def coupon(number: int, **facts: float) -> CouponRecord:
    return CouponRecord(
        f"k{number}", f"2026-11-{number + 1:02d}", "", "ER70S-6", "0.045in", "90/10", "one", "Ann",
        CouponFacts(**facts),
    )  # fmt: skip


def page(records: list[CouponRecord], query: str = JOB) -> CouponsAnswer:
    return answer("coupons", query, {"coupons": records_text(records)})


TEN = [
    coupon(n, melting=1.12 + 0.01 * (n % 3), anode_share=0.70 + 0.02 * n, travel=0.85)
    for n in range(10)
]


def test_ten_coupons_move_the_settings_and_narrow_the_band() -> None:
    found = page(TEN)
    numbers = {number.key: number for number in found.numbers}
    assert numbers["melting"].count == 10
    assert 0.08 < numbers["melting"].share < 0.13  # toward 0.13 as shown
    assert numbers["melting"].half_band < numbers["melting"].half_before
    assert numbers["travel"].share == pytest.approx(-0.15 * 10 / 12)  # ten: five sixths
    assert numbers["crown"].count == 0
    assert found.own is not None
    assert own_book(found.own.text) == (found.own,)
    before, after = found.published.settings.travel.value, found.dialled.settings.travel.value
    assert before is not None
    assert after is not None
    assert after < before


def test_what_is_used_elsewhere_is_what_the_page_shows() -> None:
    found = page(TEN)
    assert found.own is not None
    used = answer("dial-in", JOB.partition("&machine")[0], {"own": found.own.text})
    assert used.dialled.settings == found.dialled.settings


def test_without_coupons_nothing_moves() -> None:
    found = page([])
    assert found.own is None
    assert found.published.settings == found.dialled.settings


def counts(query: str) -> dict[str, int]:
    return {number.key: number.count for number in page(TEN, query).numbers}


def test_machines_and_hands_stay_apart() -> None:
    assert counts(JOB)["melting"] == 10
    other_machine = counts(JOB.replace("one", "two"))
    assert (other_machine["melting"], other_machine["travel"]) == (0, 0)
    other_hand = counts(JOB.replace("Ann", "Ben"))
    assert (other_hand["melting"], other_hand["travel"]) == (10, 0)
    assert counts(JOB.replace("90/10", "CO2"))["melting"] == 0
    own, bens = page(TEN).own, page(TEN, JOB.replace("Ann", "Ben")).own
    assert own is not None
    assert bens is not None
    assert (own.machine, own.welder, bens.welder) == ("one", "Ann", "Ben")
    assert own.travel is not None
    assert bens.travel is None  # nothing of Ann's hand in Ben's numbers
    assert counts(JOB.replace("0.045in", "0.035in"))["melting"] == 0


def test_an_odd_coupon_is_named_until_it_is_counted() -> None:
    odd = coupon(20, melting=2.4, anode_share=0.75)
    found = page([*TEN, odd])
    assert list(found.odd()) == ["k20"]
    assert "coupons.odd" in {note.key for note in found.notes}
    counted = page([*TEN, replace(odd, count_odd=True)])
    assert not counted.odd()


def test_the_next_coupon_is_for_what_is_least_known_and_inside_the_window() -> None:
    first = page([]).coming
    assert first is not None
    assert first.number == "melting"
    feed = page([]).dialled.settings.wire_feed
    assert feed.low is not None
    assert feed.high is not None
    assert feed.low < first.feed_m_s < feed.high
    later = page(TEN).coming
    assert later is not None
    assert later.number not in ("melting", "travel")  # ten coupons spoke of these
    # All seen at one end: the next burn-off coupon goes to the other.
    others = {"efficiency": 1.0, "crown": 1.0, "travel": 1.0, "meter_v": 0.0}
    high = [coupon(n, melting=1.0, anode_share=0.68, **others) for n in range(3)]
    more = [coupon(n + 10, **others) for n in range(9)]
    asked = page([*high, *more]).coming
    assert asked is not None
    assert asked.number == "melting"
    assert asked.moved
    assert asked.feed_m_s < (feed.low + feed.high) / 2  # low feed: more of the arc's part


def test_one_more_coupon_takes_doubt_away() -> None:
    for count in range(1, 8):
        fewer, more = page(TEN[:count]).numbers[0], page(TEN[: count + 1]).numbers[0]
        assert more.half_band <= fewer.half_band + 1e-12


def test_what_is_believed_beforehand_is_the_published_band() -> None:
    wire = wire_of("ER70S-6", "0.045in")
    assert prior_of("melting", wire).level == pytest.approx(0.19 / 1.645)  # band 19 %, nine in ten
    assert prior_of("efficiency", wire).level == 0.03


def test_the_stack_has_five_joints_with_settings() -> None:
    stack = page([]).stack()
    assert [coupon.mark for coupon in stack] == [1, 2, 3, 4, 5]
    assert all(coupon.plan is not None for coupon in stack)
    lap = stack[3]
    assert lap.plan is not None
    assert len(lap.plan.found.beads) == 3
    assert all(bead.laid is not None for coupon in stack for bead in coupon.beads)


def test_a_wire_that_cannot_weld_one_says_so() -> None:
    """Gas-shielded flux-cored wire of 1/16 in has no setting for 14 gauge sheet."""
    [sheet, *_] = coupon_stack({"wire": "E71T-1C", "dia": "1/16in", "gas": "CO2"})
    assert sheet.refused is not None
    assert not sheet.beads


def test_the_report_is_plain_data() -> None:
    found = answer_json("coupons", JOB, {"coupons": records_text(TEN)})
    json.dumps(found)
    assert found["answer"]["learned"]["melting"]["coupons"] == 10


def test_the_numbers_one_by_one() -> None:
    """Ten coupons at 0.85 of the planned travel: -0.15 × 10 / 12 = -0.125, so 0.875 of it."""
    job = coupons_answer(JOB).query.job
    assert len(same_way(TEN, job, "one", "Ann", "travel")) == 10
    assert same_way(TEN, job, "one", "", "travel") == ()
    assert len(same_way(TEN, job, "one", "", "melting")) == 10
    travel = learned_number("travel", TEN, job.wire, (1.0, 0.0))
    assert travel.decided == pytest.approx(1 - travel.half_band / travel.half_before)
    assert 0.3 < travel.decided < 1.0
    own = own_numbers_of([travel], job.wire, job.gas, 0.02)
    assert own is not None
    assert own.travel == pytest.approx(0.875)
    assert own.phi is None
    assert own_numbers_of([learned_number("travel", [], job.wire, (1.0, 0.0))], job.wire,
                          job.gas, 0.02) is None  # fmt: skip


def test_no_coupon_is_asked_for_where_no_window_is_open() -> None:
    found = coupons_answer("plate=3/8in&machine_amps=60A")
    assert not found.dialled.open
    assert next_coupon(found.dialled, found.query.job.wire, found.numbers) is None
    assert found.coming is None
    assert "coupons.no-settings" in {note.key for note in found.notes}
    assert coupons_report(found)["answer"] is not None


def test_the_beat_has_a_travel_for_each_bead() -> None:
    one = coupons_answer(f"{JOB}&travel=12in/min")
    assert one.travels() == pytest.approx([12 * 0.0254 / 60])
    thick = JOB.replace("1/4in", "5/8in")
    planned = answer("passes", thick).found.beads
    assert len(planned) > 1
    assert coupons_answer(thick).travels() == tuple(
        bead.laid.travel_m_s for bead in planned if bead.laid is not None
    )


def test_the_beat_is_as_long_as_what_is_marked_or_else_the_weld() -> None:
    assert coupons_answer(f"{JOB}&marked=8in").paced_m() == pytest.approx(8 * 0.0254)
    assert coupons_answer(f"{JOB}&weld_length=10in").paced_m() == pytest.approx(10 * 0.0254)
