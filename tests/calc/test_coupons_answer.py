"""What stands behind the answer of Coupons: whose coupons count, at which mix, what is noted."""

from __future__ import annotations

import pytest

from beadwright.api import answer
from beadwright.coupons.coupon_facts import CouponFacts
from beadwright.coupons.coupon_records import CouponRecord, records_text
from beadwright.coupons.coupons_page import CouponsAnswer
from beadwright.coupons.next_coupon import heat_mix
from beadwright.process.deposition import deposition_efficiency
from tests.told import told

JOB = "plate=1/4in&leg=1/4in&wire=ER70S-6&dia=0.045in&gas=90/10&machine=one"


def record(
    key: str, facts: CouponFacts, *, machine: str = "one", made: str | None = None
) -> CouponRecord:
    when = f"2026-11-{len(key):02d}T08:00" if made is None else made
    return CouponRecord(key, when, "", "ER70S-6", "0.045in", "90/10", machine, "Ann", facts)


def page(query: str, *records: CouponRecord) -> CouponsAnswer:
    return answer("coupons", query, {"coupons": records_text(records)})


def notes(found: CouponsAnswer) -> dict[str, str]:
    return {note.key: told(note) for note in found.notes}


def test_burn_off_is_learned_at_the_mix_the_job_stands_at() -> None:
    found = page(JOB)
    assert found.published.point is not None
    at = {number.key: number.at for number in found.numbers}
    assert at.pop("melting") == heat_mix(found.published.point, found.published.job.wire)
    assert set(at.values()) == {(1.0, 0.0)}
    shut = page("plate=3/8in&machine_amps=60A")
    assert shut.published.point is None
    assert {number.at for number in shut.numbers} == {(1.0, 0.0)}


def test_coupons_of_other_machines_are_counted_as_elsewhere() -> None:
    seen = CouponFacts(meter_v=0.5)
    found = page(JOB, record("a", seen), record("b", seen), record("c", seen, machine="two"))
    assert (len(found.records), found.elsewhere) == (2, 1)


def test_the_spread_of_what_is_laid_is_no_wider_than_print_s() -> None:
    """One coupon as published leaves the printed range: half of it over the typical share."""
    found = page(JOB, record("a", CouponFacts(efficiency=1.0)))
    job = found.published.job
    low, typical, high = deposition_efficiency(job.wire, job.gas, found.published.plan.transfer)
    assert found.own is not None
    [laid] = [number for number in found.numbers if number.key == "efficiency"]
    by_hand = min((high - low) / 2 / typical, laid.half_band)
    assert found.own.spread == pytest.approx(by_hand, rel=1e-3)
    assert by_hand < laid.half_band


def test_each_coupon_proves_one_hand_and_a_nameless_hand_is_asked_for_its_name() -> None:
    mine = record("a", CouponFacts(travel=0.9))
    nameless = notes(page(JOB, mine))
    assert "does not qualify a procedure" in nameless["coupons.not-a-procedure"]
    assert "Name the welder" in nameless["coupons.no-welder"]
    assert "coupons.no-welder" not in notes(page(f"{JOB}&welder=Ann", mine))
    assert "coupons.no-welder" not in notes(page(JOB))


@pytest.mark.parametrize(
    ("made", "mark"), [("2026-11-14T08:00:00Z", "2026-11-14 "), ("", "oddone12 ")]
)
def test_an_odd_coupon_is_named_by_its_day_or_else_its_key(made: str, mark: str) -> None:
    sound = [record("k" * n, CouponFacts(travel=0.9 + 0.01 * (n % 3))) for n in range(1, 9)]
    odd = record("oddone123456", CouponFacts(travel=3.0), made=made)
    said = notes(page(f"{JOB}&welder=Ann", *sound, odd))["coupons.odd"]
    assert mark in said
    assert "hand's travel" in said
