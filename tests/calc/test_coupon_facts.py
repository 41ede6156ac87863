"""What one coupon says, worked by hand; kept coupons read back, bad ones refused whole."""

from __future__ import annotations

import json
from typing import Any

import pytest

from beadwright.api import answer, answer_json
from beadwright.coupons.coupon_facts import CouponFacts, as_published, coupon_facts
from beadwright.coupons.coupon_records import (
    CouponRecord,
    CouponRecordsError,
    read_records,
    records_text,
)
from beadwright.coupons.new_record import new_record
from beadwright.coupons.next_coupon import heat_mix
from beadwright.errors import FieldErrors

JOB = "plate=1/4in&leg=1/4in&wire=ER70S-6&dia=0.045in&gas=90/10"
SET = "wfs=370in/min&volts=27V&ctwd=3/4in"


def facts(more: str) -> CouponFacts:
    return answer("coupons", f"{JOB}&{SET}&{more}").facts


def test_travel_is_length_over_time() -> None:
    found = facts("marked=8in&arc_time=40s")
    assert found.travel_m_s == pytest.approx(0.2032 / 40)  # 12 in/min
    planned = answer("dial-in", f"{JOB}&{SET}").dialled.settings.travel.value
    assert planned is not None
    assert found.travel == pytest.approx(0.2032 / 40 / planned)


def test_travel_set_by_hand_is_what_it_is_held_against() -> None:
    assert facts("marked=8in&arc_time=40s&travel=12in/min").travel == pytest.approx(1.0)


def test_burn_off_by_hand() -> None:
    """0.045 in solid at 370 in/min, 300 A: ρA v H over I φ + I² r L / A.

    φ = 4.192 V, r = 3.454e-7 Ω·m, H = 1.3 MJ/kg, 7850 kg/m³: A = 1.02608e-6 m², ρA = 8.0547e-3
    kg/m, v = 0.156633 m/s, so 1640.1 W. Arc 4.25 mm at 27 V, so L = 14.8 mm: 1257.6 W and 448.4 W.
    """
    found = facts("meter_amps=300A")
    assert found.melting == pytest.approx(1640.1 / (1257.6 + 448.4), rel=2e-4)
    assert found.anode_share == pytest.approx(1257.6 / (1257.6 + 448.4), rel=2e-4)
    point = answer("dial-in", f"{JOB}&{SET}").dialled.point
    assert point is not None
    assert sum(heat_mix(point, answer("dial-in", JOB).query.job.wire)) == pytest.approx(1.0)


def test_a_timed_burst_counts_before_what_was_set() -> None:
    burst = facts("meter_amps=300A&burst_length=70in&burst_time=12s")  # 350 in/min
    plain = facts("meter_amps=300A")
    assert burst.feed_m_s == pytest.approx(70 * 0.0254 / 12)
    assert burst.melting is not None
    assert plain.melting is not None
    assert burst.melting / plain.melting == pytest.approx(350 / 370)


def test_efficiency_by_weight() -> None:
    """40 s at 370 in/min burn 6.2653 m, 0.050465 kg; 0.104 lb = 0.047174 kg gained: 0.9348.

    Spray in 90/10 is given 0.97 (98 % less 0.1 % for each 1 % CO2).
    """
    found = facts("marked=8in&arc_time=40s&weight_before=2.000lb&weight_after=2.104lb")
    assert found.efficiency == pytest.approx(0.9348 / 0.97, rel=5e-4)
    assert found.laid_kg_s == pytest.approx(0.047174 / 40, rel=1e-4)


def test_crown_by_gauge() -> None:
    """Legs 1/4 in: flat 20.16 mm². Face 0.354 in, convexity 1/16 in: 2/3 × 8.99 × 1.59 = 9.52 mm².

    (20.16 + 9.52) / 20.16 = 1.472, over 1.2 as published.
    """
    found = facts("leg_seen=1/4in&face=0.354in&convexity=1/16in")
    assert found.crown == pytest.approx(1.472 / 1.2, rel=1e-3)


def test_crown_by_what_was_laid_and_the_legs() -> None:
    """12 in/min at 0.048952 kg in 40 s (97 %): 1.2238e-3 kg/s over 7850 × 5.08e-3 = 30.69 mm²."""
    found = facts("marked=8in&arc_time=40s&leg_seen=1/4in&leg2_seen=9/32in")
    flat = 0.25 * 0.28125 / 2 * 25.4**2
    assert found.crown == pytest.approx(30.69 / flat / 1.2, rel=1e-3)


def test_the_meter_against_the_arc() -> None:
    assert facts("meter_volts=27.9V&arc_volts=27.1V").meter_v == pytest.approx(0.8)
    assert facts("meter_volts=27.9V").meter_v is None  # one reading says nothing


def test_own_numbers_do_not_count_when_a_coupon_is_held_against_print() -> None:
    own = "own=ER70S-6,0.045in,90/10,n7,phi1.2,r1.2,band0.1,crown1.3,travel0.8"
    assert facts(f"meter_amps=300A&{own}") == facts("meter_amps=300A")
    job = answer("coupons", f"{JOB}&{own}").query.job
    assert as_published(job).wire.own is None
    assert coupon_facts(job, answer("coupons", JOB).query.seen).melting is None


@pytest.mark.parametrize(
    ("more", "field"),
    [
        ("arc_time=40s", "marked"),
        ("burst_length=70in", "burst_time"),
        ("burst_time=10s", "burst_length"),
        ("weight_before=2lb", "weight_after"),
        ("weight_after=2lb", "weight_before"),
        ("weight_before=2lb&weight_after=1.9lb&marked=8in&arc_time=40s", "weight_after"),
        ("weight_before=2lb&weight_after=2.1lb", "arc_time"),
        ("convexity=1/16in", "face"),
        ("meter_amps=5A", "meter_amps"),
        ("coupons=[", "coupons"),
    ],
)
def test_bad_readings_are_refused_beside_their_field(more: str, field: str) -> None:
    found = answer_json("coupons", f"{JOB}&{more}")
    assert field in found["errors"]


RECORD = CouponRecord(
    "a1", "2026-11-28T08:00:00Z", JOB, "ER70S-6", "0.045in", "90/10", "big one", "Ann",
    CouponFacts(melting=1.05, anode_share=0.75, travel=0.9),
)  # fmt: skip


def test_records_are_read_back_as_written() -> None:
    text = records_text([RECORD])
    assert read_records(text) == (RECORD,)
    assert read_records("  ") == ()


def changed(**parts: Any) -> str:
    return json.dumps([{**RECORD.plain(), **parts}])


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ('[{"version": 1', "cut or damaged"),
        ("[" * 100_000, "cut or damaged"),
        ("{}", "no list"),
        ("[3]", "no record"),
        (changed(version=2), "version “2”"),
        (changed(version=None), "update the app"),
        (changed(key=""), "no key"),
        (changed(query="x" * 5000), "query is no short text"),
        (changed(made=7), "made is no short text"),
        (changed(facts=[]), "no facts"),
        (changed(facts={"melting": "1.0"}), "melting is no number"),
        (changed(facts={"melting": True}), "melting is no number"),
        (changed(facts={"speed": None}), "speed is no number"),
        (changed(count_odd="yes"), "neither true nor false"),
        ('[{"version": 1, "key": "a", "facts": {"melting": NaN}}]', "melting is no number"),
        (json.dumps([RECORD.plain(), RECORD.plain()]), "one key"),
        (json.dumps([1] * 6000), "more than 5,000"),
        (" " * 5_000_000 + "[]", "characters are more"),
    ],
)
def test_bad_records_are_refused_whole_with_the_reason(text: str, why: str) -> None:
    with pytest.raises(CouponRecordsError, match=why):
        read_records(text)


def test_a_fact_that_a_later_release_adds_is_left_out_and_the_rest_counts() -> None:
    facts = RECORD.plain()["facts"]
    assert read_records(changed(facts={**facts, "penetration_m": 0.002})) == (RECORD,)


def test_a_new_record_keeps_what_was_typed_and_what_it_says() -> None:
    query = f"{JOB}&{SET}&marked=8in&arc_time=40s&welder=Ann&count_odd=yes"
    record = new_record(query, {"machine": "big one"}, "k1", "2026-11-28")
    assert (record.wire, record.dia, record.gas) == ("ER70S-6", "0.045in", "90/10")
    assert (record.machine, record.welder, record.count_odd) == ("big one", "Ann", True)
    assert record.facts == answer("coupons", query).facts
    assert answer("coupons", record.query).facts == record.facts
    assert read_records(records_text([record])) == (record,)


def test_a_coupon_that_says_nothing_is_not_kept() -> None:
    with pytest.raises(FieldErrors, match="Nothing to learn"):
        new_record(JOB, None, "k1", "2026-11-28")
