"""A coupon laid in several beads: its settings, its beat, what it is held against."""

from __future__ import annotations

import pytest

from beadwright.api import answer, answer_json
from beadwright.coupons.coupon_entries import CouponEntries
from beadwright.coupons.coupon_facts import coupon_facts
from beadwright.coupons.coupon_stack import coupon_stack
from beadwright.coupons.coupons_page import CouponsAnswer
from beadwright.coupons.new_record import new_record
from beadwright.setting.dial_in import dial_in
from beadwright.setting.plan import make_plan

LAP = "joint=lap&plate=1/4in&leg=1/4in&position=2F&wire=ER70S-6&dia=0.045in&gas=90/10"
IPM = 0.0254 / 60


def page(query: str) -> CouponsAnswer:
    return answer("coupons", query)


@pytest.mark.parametrize("count", [2, 3])
def test_settings_of_light_beads_are_those_of_the_pass_plan(count: int) -> None:
    """Of one size each: a third of the metal is laid three times as fast at the same feed."""
    job = answer("dial-in", LAP).query.job
    found = dial_in(job, count)
    assert make_plan(job, count).passes == found.plan.passes == count
    feed, volts, travel = (
        found.settings.wire_feed, found.settings.volts, found.settings.travel,
    )  # fmt: skip
    for bead in answer("passes", f"{LAP}&passes={count}").found.beads:
        assert bead.laid is not None
        assert feed.value == pytest.approx(bead.laid.point.feed_m_s)
        assert volts.value == pytest.approx(bead.laid.point.volts)
        assert travel.value == pytest.approx(bead.laid.travel_m_s, rel=2e-3)
    # By hand: all that is melted and laid, over density and travel, is the joint's section.
    wire, share = job.wire, found.plan.efficiency[1]
    assert feed.value is not None
    assert travel.value is not None
    laid = feed.value * wire.linear_mass_kg_m * share
    section = laid / (wire.material.density_kg_m3 * travel.value)
    assert count * section == pytest.approx(found.plan.shape.section_m2, rel=2e-3)


def test_beads_lighter_than_an_arc_lays_leave_no_window() -> None:
    found = dial_in(answer("dial-in", LAP).query.job, 9)
    assert not found.open
    assert found.settings.wire_feed.value is None


def test_the_stack_s_three_beads_are_three_on_the_page() -> None:
    lap = [*coupon_stack({"wire": "ER70S-6", "dia": "0.045in", "gas": "90/10"})][3]
    opened = page(lap.query)
    assert opened.query.passes == opened.dialled.plan.passes == 3
    [row, *_] = lap.beads
    assert row.laid is not None
    assert opened.dialled.settings.wire_feed.value == pytest.approx(row.laid.point.feed_m_s)
    assert opened.dialled.settings.travel.value == pytest.approx(row.laid.travel_m_s, rel=2e-3)
    assert len(opened.beads().beads) == len(opened.travels()) == 3
    assert opened.coming is not None
    room = opened.dialled.settings.wire_feed
    assert room.low is not None
    assert room.high is not None
    assert room.low < opened.coming.feed_m_s < room.high


def test_a_light_bead_is_held_against_the_travel_of_a_light_bead() -> None:
    planned = page(f"{LAP}&passes=3").dialled.settings.travel.value
    assert planned is not None
    seconds = 0.2032 / planned  # 8 in at the travel planned
    seen = f"{LAP}&marked=8in&arc_time={seconds:.3f}s"
    assert page(f"{seen}&passes=3").facts.travel == pytest.approx(1.0, rel=1e-3)
    # In one pass the same time says a hand more than twice as fast as planned.
    one = page(seen).facts.travel
    assert one is not None
    assert one > 2
    # A leg of three beads says nothing of the crown of one.
    assert page(f"{seen}&passes=3&leg_seen=1/4in").facts.crown is None
    assert page(f"{seen}&leg_seen=1/4in").facts.crown is not None


def test_a_kept_coupon_keeps_its_beads() -> None:
    query = f"{LAP}&passes=3&marked=8in&arc_time=14s"
    record = new_record(query, None, "k1", "2026-11-28")
    assert "passes=3" in record.query
    assert record.facts == page(query).facts


def test_the_throat_stands_in_for_the_convexity() -> None:
    """Legs 1/4 in: flat throat 0.17678, face 0.35355 in. Throat 0.22: crown 0.04322 in.

    Section 0.03125 + 2/3 × 0.35355 × 0.04322 = 0.041438 in², 1.3260 of the flat one, over 1.2.
    """
    lap = f"{LAP}&leg_seen=1/4in&throat_seen=0.22in"
    assert page(lap).facts.crown == pytest.approx(1.3260 / 1.2, rel=1e-3)
    hollow = page(f"{LAP}&leg_seen=1/4in&throat_seen=0.15in").facts.crown
    # 0.03125 - 2/3 × 0.35355 × 0.02678 = 0.024938 in²
    assert hollow == pytest.approx(0.024938 / 0.03125 / 1.2, rel=1e-3)


@pytest.mark.parametrize(
    ("more", "field", "said"),
    [
        ("throat_seen=0.2in", "leg_seen", "needs the leg"),
        ("throat_seen=0.2in&leg_seen=1/4in&convexity=0.02in&face=0.3in", "throat_seen", "not both"),
        ("throat_seen=0.04in&leg_seen=1/4in", "throat_seen", "Measure both again"),
        ("passes=0", "passes", "1"),
        ("passes=151", "passes", "150"),
    ],
)
def test_what_cannot_be_is_refused_beside_its_entry(more: str, field: str, said: str) -> None:
    errors = answer_json("coupons", f"{LAP}&{more}")["errors"]
    assert list(errors) == [field]
    assert said in " ".join(errors[field])


def test_a_bare_arc_time_is_in_seconds() -> None:
    """Nobody times a coupon in minutes."""
    bare = page(f"{LAP}&marked=8in&arc_time=31").facts
    assert bare.travel_m_s == pytest.approx(0.2032 / 31)
    assert page(f"{LAP}&marked=8in&arc_time=0.5min").facts.travel_m_s == pytest.approx(0.2032 / 30)
    assert page(f"{LAP}&burst_length=100in&burst_time=15").facts.feed_m_s == pytest.approx(
        100 * 0.0254 / 15
    )


def test_a_skewed_bead_has_the_section_of_its_angle() -> None:
    """Legs 1/4 in at 60°: 1/2 × 0.0625 × 0.86603 = 0.027063 in²; face 1/4, convexity 0.04 in.

    2/3 × 0.25 × 0.04 = 0.0066667 in²: 1.24633 of the flat one, over 1.2.
    """
    tee = "plate=1/4in&leg=1/4in&skew=60&wire=ER70S-6&dia=0.045in&gas=90/10"
    found = page(f"{tee}&leg_seen=1/4in&convexity=0.04in&face=0.25in").facts
    assert found.crown == pytest.approx(1.24633 / 1.2, rel=1e-4)


def test_what_is_half_measured_says_nothing() -> None:
    job = answer("dial-in", LAP).query.job
    assert page(f"{LAP}&leg_seen=1/4in").facts.crown is None  # nor timed nor gauged
    flat = page(f"{LAP}&leg_seen=1/4in&convexity=0in&marked=8in&arc_time=40s").facts
    assert flat.crown == page(f"{LAP}&leg_seen=1/4in&marked=8in&arc_time=40s").facts.crown
    for half in (CouponEntries(burst_length=1.0), CouponEntries(burst_time=10.0)):
        assert coupon_facts(job, half).feed_m_s == dial_in(job).settings.wire_feed.value
