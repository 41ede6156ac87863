"""Timed and weighed coupons as the measured figures of a way, worked by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest

from beadwright.api import answer
from beadwright.coupons.coupon_records import CouponRecord
from beadwright.coupons.measured_way import MeasuredWay, measured_way
from beadwright.coupons.new_record import new_record
from beadwright.coupons.same_weld import SIZE_APART, same_weld
from beadwright.job.job import Job

WELD = "plate=3/8in&leg=5/16in&position=2F"
WIRE = "wire=ER70S-6&dia=0.045in&gas=90/10"
POUND_KG = 0.45359237


def coupon(key: str, gained_lb: float, query: str = f"{WELD}&{WIRE}", seconds: int = 60,
           more: str = "") -> CouponRecord:  # fmt: skip
    weighed = f"weight_before=4lb&weight_after={4 + gained_lb:.4f}lb"
    return new_record(
        f"{query}&wfs=425in/min&marked=10in&arc_time={seconds}s&{weighed}&welder=Ann&machine=one{more}",
        None, key, f"2026-11-{len(key):02d}T08:00:00Z",
    )  # fmt: skip


def job(query: str = f"{WELD}&{WIRE}") -> Job:
    return answer("dial-in", query).query.job


def said(*records: CouponRecord, of: str = f"{WELD}&{WIRE}", machine: str = "one",
         welder: str = "Ann") -> MeasuredWay:  # fmt: skip
    return measured_way(records, job(of), machine, welder)


def test_two_coupons_are_their_mean() -> None:
    """0.180 and 0.190 lb in a minute each: 11.1 lb/h.

    425 in/min of 0.045 in wire is 0.67588 in³, 0.19168 lb a minute at 0.2836 lb/in³: 96.5 %.
    """
    found = said(coupon("a", 0.180), coupon("bb", 0.190))
    assert (found.coupons, found.elsewhere, found.odd) == (2, 0, ())
    assert found.laid_kg_s == pytest.approx(0.185 * POUND_KG / 60, rel=1e-4)
    assert found.efficiency == pytest.approx(0.185 / 0.19168, rel=1e-3)
    assert found.clean_s_m is None


def test_clean_up_counts_where_every_coupon_has_it() -> None:
    clean = "&clean_time=30s"
    both = said(coupon("a", 0.18, more=clean), coupon("bb", 0.18, more="&clean_time=1min"))
    assert both.clean_s_m == pytest.approx(45 / 0.254)  # a mean of 45 s on 10 in
    assert said(coupon("a", 0.18, more=clean), coupon("bb", 0.18)).clean_s_m is None


def test_only_this_weld_wire_gas_machine_and_hand_count() -> None:
    mine = coupon("a", 0.185)
    other_weld = coupon("bb", 0.100, f"plate=1/4in&leg=1/4in&{WIRE}")
    other_wire = coupon("ccc", 0.155, f"{WELD}&wire=E70C-6M&dia=0.045in&gas=90/10")
    untimed = new_record(f"{WELD}&{WIRE}&meter_amps=330A&welder=Ann&machine=one", None, "d", "")
    found = said(mine, other_weld, other_wire, untimed)
    assert (found.coupons, found.elsewhere) == (1, 1)
    assert found.laid_kg_s == pytest.approx(0.185 * POUND_KG / 60, rel=1e-4)
    assert said(mine, machine="two") == MeasuredWay(0, 0)
    assert said(mine, welder="Ben") == MeasuredWay(0, 0)
    cored = said(mine, other_wire, of=f"{WELD}&wire=E70C-6M&dia=0.045in&gas=90/10")
    assert (cored.coupons, cored.elsewhere) == (1, 0)
    assert said(other_weld) == MeasuredWay(0, 1)


def test_a_misread_scale_is_set_aside_and_named() -> None:
    records = [coupon("a" * n, 0.183 + 0.001 * (n % 3)) for n in range(1, 8)]
    found = said(*records, coupon("b" * 9, 0.100))
    assert (found.coupons, found.odd) == (7, ("2026-11-09",))
    assert found.laid_kg_s == pytest.approx(0.184 * POUND_KG / 60, rel=2e-3)
    assert said(coupon("z", 0.02)).odd == ("2026-11-01",)  # a lone one too far off to be true


def test_a_query_of_another_version_is_no_coupon_of_this_weld() -> None:
    record = coupon("a", 0.18)
    strange = replace(record, query="plate=?")
    assert said(strange) == MeasuredWay(0, 0)


def test_a_leg_left_blank_is_the_plate_s_own() -> None:
    blank = f"plate=3/8in&position=2F&{WIRE}"
    leg = answer("dial-in", blank).dialled.plan.wanted_leg_m / 0.0254
    assert said(coupon("a", 0.18, blank), of=f"plate=3/8in&leg={leg}in&position=2F&{WIRE}").coupons


def test_welds_are_the_same_within_a_size() -> None:
    def alike(one: str, other: str) -> bool:
        found = same_weld(job(one), job(other))
        assert found == same_weld(job(other), job(one))
        return found

    assert SIZE_APART == 0.03
    assert alike("plate=3/8in&leg=5/16in", "plate=3/8in&leg=8mm")  # 0.8 % apart
    # 2.96 % of the larger, 3.05 % of the smaller: held against the larger, whichever is asked.
    assert alike("plate=1/2in&leg=1/4in", "plate=0.4852in&leg=1/4in")
    assert not alike("plate=3/8in&leg=5/16in", "plate=3/8in&leg=9/32in")
    assert not alike("plate=3/8in&leg=5/16in", "plate=1/2in&leg=5/16in")
    assert not alike("plate=3/8in&leg=1/4in", "plate=3/8in&leg=1/4in&joint=lap")
    assert not alike("plate=3/8in&leg=1/4in", "plate=3/8in&leg=1/4in&position=4F")
    assert not alike("plate=3/8in", "plate=3/8in&leg=1/4in")
    assert not alike("plate=3/8in&leg=1/4in", "plate=3/8in&leg=1/4in&travel_by=track")
