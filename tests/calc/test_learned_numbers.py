"""The numbers of a shop, one by one: what a coupon shows of each, what other pages get."""

from __future__ import annotations

from dataclasses import replace
from math import sqrt

import pytest

from beadwright.api import answer
from beadwright.coupons.coupon_facts import CouponFacts
from beadwright.coupons.coupon_records import CouponRecord
from beadwright.coupons.learned_numbers import (
    APART,
    BAND_SIGMAS,
    OF,
    LearnedKey,
    LearnedNumber,
    learned_number,
    own_numbers_of,
    prior_of,
)
from beadwright.coupons.learning import Pair
from beadwright.coupons.next_coupon import KEEP_OFF, STEPS, heat_mix, next_coupon
from beadwright.coupons.student_t import t_quantile
from beadwright.process.burnoff import constants_of
from beadwright.process.gases import gas_of
from beadwright.process.wires import wire_of

WIRE, GAS = wire_of("ER70S-6", "0.045in"), gas_of("90/10")
JOB = "plate=1/4in&leg=1/4in&wire=ER70S-6&dia=0.045in&gas=90/10"
SPREAD = 0.03


def records(*facts: CouponFacts) -> list[CouponRecord]:
    return [
        CouponRecord(f"k{n}", f"2026-11-{n + 1:02d}", "", "ER70S-6", "0.045in", "90/10", "", "",
                     each)
        for n, each in enumerate(facts)
    ]  # fmt: skip


def number(key: LearnedKey, at: Pair, *facts: CouponFacts) -> LearnedNumber:
    return learned_number(key, records(*facts), WIRE, at)


def test_what_is_believed_of_other_shops_is_as_told() -> None:
    """Our choices, told on Method: a change of one is a change of every band."""
    told = {"efficiency": 0.03, "crown": 0.10, "travel": 0.20, "meter": 1.2}
    keys: tuple[LearnedKey, ...] = ("efficiency", "crown", "travel", "meter")
    for key in keys:
        prior = prior_of(key, WIRE)
        assert (prior.level, prior.apart) == (told[key], 0.0)
        plain = number(key, (1.0, 0.0))
        assert plain.half_before == pytest.approx(1.645 * told[key])
        assert plain.half_band == plain.half_before  # no coupon: as published
        assert plain.decided == 0.0
    level = constants_of(WIRE).band / BAND_SIGMAS
    melting = prior_of("melting", WIRE)
    assert (melting.level, melting.apart) == pytest.approx((level, 0.5 * level))
    assert APART == 0.5
    assert KEEP_OFF == 0.05  # common practice


def test_the_band_of_print_at_a_mix_is_by_the_normal_distribution() -> None:
    """Variance at a, b: level² (a + b)² + apart² (a² + b²), by hand."""
    at = (0.7, 0.3)
    level = constants_of(WIRE).band / 1.645
    by_hand = 1.645 * level * sqrt(1 + 0.25 * (0.49 + 0.09))
    assert number("melting", at).half_before == pytest.approx(by_hand)


def test_what_a_coupon_shows_of_each() -> None:
    facts = CouponFacts(
        melting=1.1, anode_share=0.7, efficiency=0.97, crown=1.2, travel=0.8, meter_v=0.6
    )
    seen = {key: [y, *x] for key, of in OF.items() for y, x in [of(facts) or (0.0, (0.0, 0.0))]}
    assert seen["melting"] == pytest.approx([0.1, 0.7, 0.3])
    assert seen["efficiency"] == pytest.approx([-0.03, 1.0, 0.0])
    assert seen["crown"] == pytest.approx([0.2, 1.0, 0.0])
    assert seen["travel"] == pytest.approx([-0.2, 1.0, 0.0])
    assert seen["meter"] == pytest.approx([0.6, 1.0, 0.0])
    none = CouponFacts(melting=1.1), CouponFacts(anode_share=0.7), CouponFacts()
    assert [OF["melting"](each) for each in none] == [None, None, None]


UNLIKE = [
    CouponFacts(melting=1.10 + 0.3 * (share - 0.7), anode_share=share)
    for share in (0.55, 0.62, 0.7, 0.78, 0.85, 0.92)
]
"""A shop whose extension melts less than its arc: the more the arc's part, the more it melts."""


def test_other_pages_get_both_constants_and_the_band() -> None:
    melting = number("melting", (0.72, 0.28), *UNLIKE)
    own = own_numbers_of([melting], WIRE, GAS, SPREAD)
    assert own is not None
    first, second = melting.found.mean
    assert own.phi == pytest.approx(1 + first, abs=5e-4)
    assert own.r == pytest.approx(1 + second, abs=5e-4)
    assert own.r is not None
    assert own.phi is not None
    assert own.phi > own.r > 0.9
    half = t_quantile(0.95, melting.found.freedom) * melting.found.scatter
    a, b, c = melting.found.spread
    half *= sqrt(a * 0.72**2 + 2 * b * 0.72 * 0.28 + c * 0.28**2)
    assert melting.half_band == pytest.approx(half)
    # The feed's band is a share of the shop's own feed.
    assert own.band == pytest.approx(half / (1 + melting.share), abs=5e-5)
    assert own.band is not None
    assert own.band < constants_of(WIRE).band
    assert (own.efficiency, own.spread, own.crown, own.volts_v) == (None, None, None, None)
    assert own.coupons == 6


def test_no_band_is_wider_than_the_published_one() -> None:
    wild = [CouponFacts(melting=1 + off, anode_share=0.7) for off in (-0.5, 0.55)]
    own = own_numbers_of([number("melting", (0.7, 0.3), *wild)], WIRE, GAS, SPREAD)
    assert own is not None
    assert own.band == constants_of(WIRE).band


def test_a_weighed_shop_has_its_own_efficiency_and_spread() -> None:
    laid = number("efficiency", (1.0, 0.0), *[CouponFacts(efficiency=0.96)] * 10)
    own = own_numbers_of([laid], WIRE, GAS, SPREAD)
    assert own is not None
    assert own.efficiency == pytest.approx(1 - 0.04 * 10 / 12, abs=5e-5)
    assert own.spread == pytest.approx(laid.half_band / (1 + laid.share), abs=5e-6)
    assert own.spread is not None
    assert own.spread < SPREAD
    narrow = own_numbers_of([laid], WIRE, GAS, 0.006)
    assert narrow is not None
    assert narrow.spread == 0.006


def test_the_meter_is_told_in_volts() -> None:
    meter = number("meter", (1.0, 0.0), *[CouponFacts(meter_v=0.9)] * 10)
    own = own_numbers_of([meter], WIRE, GAS, SPREAD)
    assert own is not None
    assert own.volts_v == pytest.approx(0.9 * 10 / 12)


def test_the_parts_of_the_heat_are_those_of_the_balance() -> None:
    """I φ against I² r L ÷ A, each of their sum; typed out from the constants."""
    found = answer("dial-in", f"{JOB}&wfs=370in/min&volts=27V")
    point = found.dialled.point
    assert point is not None
    fit, area = constants_of(WIRE), WIRE.conducting_area_m2
    arc = fit.phi_v
    rest = point.current_a * fit.r_ohm_m * point.extension_m / area
    mix = heat_mix(point, WIRE)
    assert mix == pytest.approx((arc / (arc + rest), rest / (arc + rest)))
    assert 0.5 < mix[0] < 0.9


FED = {"efficiency": 1.0, "crown": 1.0, "travel": 1.0, "meter_v": 0.0}


def test_the_next_feed_is_the_one_that_narrows_most_over_the_window() -> None:
    """Each step of the window tried by hand: nothing in it takes more doubt away."""
    dialled = answer("dial-in", JOB).dialled
    feed = dialled.settings.wire_feed
    assert feed.low is not None
    assert feed.high is not None
    seen = [CouponFacts(melting=1.0, anode_share=0.66 + 0.01 * n, **FED) for n in range(3)]
    seen += [CouponFacts(**FED)] * 12
    at = (0.7, 0.3)
    numbers = [number(key, at if key == "melting" else (1.0, 0.0), *seen) for key in OF]
    coming = next_coupon(dialled, WIRE, numbers)
    assert coming is not None
    assert coming.number == "melting"
    melting = numbers[0].found
    room = feed.high - feed.low
    tried = [feed.low + room * (KEEP_OFF + (1 - 2 * KEEP_OFF) * n / STEPS)
             for n in range(STEPS + 1)]  # fmt: skip
    mixes = [heat_mix(dialled.plan.run.point(each), WIRE) for each in tried]
    gains = [sum(melting.narrowed(at, one) for at in mixes) / len(mixes) for one in mixes]
    best = gains.index(max(gains))
    assert best in (0, STEPS)  # doubt about two lines is narrowed at an end
    assert coming.moved
    assert coming.feed_m_s == pytest.approx(tried[best])
    assert coming.takes_away == pytest.approx(max(gains))


def test_a_coupon_at_the_best_feed_already_stays_there() -> None:
    dialled = answer("dial-in", JOB).dialled
    numbers = [number(key, (0.7, 0.3) if key == "melting" else (1.0, 0.0)) for key in OF]
    moved = next_coupon(dialled, WIRE, numbers)
    assert moved is not None
    assert moved.moved
    there = replace(dialled, settings=replace(dialled.settings, wire_feed=replace(
        dialled.settings.wire_feed, value=moved.feed_m_s)))  # fmt: skip
    stays = next_coupon(there, WIRE, numbers)
    assert stays is not None
    assert (stays.moved, stays.feed_m_s) == (False, moved.feed_m_s)
    assert stays.takes_away == pytest.approx(moved.takes_away)


def test_what_is_no_burn_off_is_measured_at_the_settings_planned() -> None:
    dialled = answer("dial-in", JOB).dialled
    seen = [CouponFacts(**{name: value for name, value in FED.items() if name != "crown"},
                        melting=1.0, anode_share=0.5 + 0.04 * n) for n in range(12)]  # fmt: skip
    numbers = [number(key, (0.7, 0.3) if key == "melting" else (1.0, 0.0), *seen) for key in OF]
    coming = next_coupon(dialled, WIRE, numbers)
    assert coming is not None
    assert (coming.number, coming.moved) == ("crown", False)
    assert coming.feed_m_s == dialled.settings.wire_feed.value
    assert coming.takes_away == pytest.approx(1 / 3)  # the first coupon of three coupons' worth
