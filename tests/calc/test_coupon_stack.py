"""The stack of coupons: for a new wire, with what the shop keeps; or of the jobs kept."""

from __future__ import annotations

import json
from dataclasses import replace
from typing import Any

import pytest

from beadwright.api import answer, answer_json
from beadwright.coupons.coupon_records import records_text
from beadwright.coupons.coupon_stack import (
    MOST_JOBS,
    coupon_stack,
    job_stack,
    kept_of,
    stacked_jobs,
)
from beadwright.coupons.coupons_page import CouponsAnswer
from beadwright.coupons.kept_jobs import KeptJob, KeptJobsError, read_jobs
from beadwright.coupons.new_record import new_record

IPM = 0.0254 / 60


def job(number: int, query: str, page: str = "dial-in", name: str = "") -> KeptJob:
    return KeptJob(page, query, name or f"Job {number}", f"2026-11-{number:02d}")


def text_of(*jobs: KeptJob) -> str:
    return json.dumps([{"page": each.page, "query": each.query, "name": each.name,
                        "made": each.made} for each in jobs])  # fmt: skip


RAIL = job(3, "plate=1/4in&leg=1/4in&joint=lap&passes=3&at=2", "passes", "Rail, lap")
FRAME = job(5, "plate=3/8in&leg=5/16in&wire=E70C-6M&shop_rate=90", "cost", "Frame & gusset")
SHEET = job(4, "plate=14ga&joint=lap&wire=ER70S-6&dia=0.030in&gas=75/25&travel=20in/min")


def page(query: str, **kept: str) -> CouponsAnswer:
    return answer("coupons", query, kept)


def test_the_stack_is_for_the_wire_gas_and_machine_the_shop_keeps() -> None:
    """What is usual in the shop counts where nothing is typed, as on every page."""
    kept = {"wire": "E70C-6M", "dia": "0.045in", "gas": "85/15", "machine_amps": "250A"}
    plain, shop = page("").stack(), page("", **kept).stack()
    for coupon in shop:
        assert coupon.plan is not None
        found = coupon.plan.dialled.job
        assert (found.wire.type.name, found.gas.name) == ("E70C-6M", "85/15")
    for alone, limited in zip(plain, shop, strict=True):
        assert alone.query == limited.query  # a link says what is typed; the phone adds the rest
    # Of a machine of 250 A no bead takes more.
    amps = [bead.laid.point.current_a for each in shop for bead in each.beads if bead.laid]
    assert max(amps) <= 250
    typed = page("wire=ER70S-6&gas=90/10", **kept).stack()[2]
    assert typed.plan is not None
    assert typed.plan.dialled.job.wire.type.name == "ER70S-6"


def test_the_five_joints_are_numbered_from_thin_to_thick() -> None:
    assert [(coupon.mark, coupon.name.key) for coupon in coupon_stack({})] == [
        (1, "coupons.thin-lap"), (2, "coupons.eighth-tee"), (3, "coupons.quarter-tee"),
        (4, "coupons.quarter-lap"), (5, "coupons.half-v"),
    ]  # fmt: skip


def test_the_shop_s_own_numbers_count_in_the_stack() -> None:
    own = {"own": "ER70S-6,0.045in,90/10,n9,phi0.9,r0.9,band0.08,travel0.8"}
    plain = [*coupon_stack({})][2].beads[0].laid
    shop = [*coupon_stack({}, own)][2].beads[0].laid
    assert plain is not None
    assert shop is not None
    assert shop.point.feed_m_s < plain.point.feed_m_s


def test_a_stack_of_the_jobs_kept_has_the_settings_of_each() -> None:
    found = page("stack=jobs", jobs=text_of(RAIL, FRAME, SHEET))
    stack = found.stack()
    assert found.jobs_to_stack() == 3
    # The job kept last first.
    assert [(each.mark, dict(each.name.parameters)["name"]) for each in stack] == [
        (1, "Frame & gusset"), (2, "Job 4"), (3, "Rail, lap"),
    ]  # fmt: skip
    frame, sheet, rail = stack
    assert frame.query == "plate=3/8in&leg=5/16in&wire=E70C-6M"  # no price goes along
    dialled = answer("dial-in", frame.query).dialled.settings
    [bead] = frame.beads
    assert bead.laid is not None
    assert bead.laid.point.feed_m_s == pytest.approx(dialled.wire_feed.value)
    assert bead.laid.travel_m_s == pytest.approx(dialled.travel.value, rel=2e-3)
    assert sheet.beads[0].laid is not None
    assert sheet.beads[0].laid.travel_m_s / IPM == pytest.approx(20)
    assert rail.plan is not None
    assert len(rail.plan.found.beads) == 3
    opened = page(rail.query)
    assert opened.dialled.plan.passes == 3


def test_one_weld_kept_on_two_pages_is_one_coupon() -> None:
    again = job(9, FRAME.query.replace("&shop_rate=90", ""), "heat", "The same")
    assert [name for name, _ in stacked_jobs([FRAME, again])] == ["The same"]
    others = [job(1, "machine_amps=250A", "shop"), job(2, "lines=A", "list")]
    assert stacked_jobs(others) == ()  # no weld of one joint
    assert stacked_jobs([job(1, "&".join(f"k{n}=1" for n in range(5000)))]) == ()


def test_a_sheet_holds_so_many_jobs_and_says_why_one_has_no_settings() -> None:
    many = [job(n, f"plate=3/8in&leg={n}mm") for n in range(4, 16)]
    assert len(stacked_jobs(many)) == 12
    assert len([*job_stack(many)]) == MOST_JOBS
    [shut] = job_stack([job(1, "plate=3/8in&machine_amps=60A")])
    assert shut.plan is None
    assert shut.refused is not None
    assert shut.refused.key == "coupons.no-window"
    assert (shut.mark, shut.beads) == (1, ())
    assert (dict(shut.name.parameters)["name"], shut.query) == (
        "Job 1", "plate=3/8in&machine_amps=60A",
    )  # fmt: skip
    [wrong] = job_stack([job(1, "plate=banana")])
    assert wrong.refused is not None
    assert wrong.refused.key == "coupons.not-welded"
    assert (dict(wrong.name.parameters)["name"], wrong.query) == ("Job 1", "plate=banana")
    assert page("stack=jobs").stack() == ()


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("[{", "cut or damaged"),
        ("{}", "no list"),
        (json.dumps([{}] * 2001), "more than 2,000"),
        ("[3]", "Kept job 1: page is no text"),
        ('[{"page": "heat", "query": "", "name": 3, "made": ""}]', "name is no text"),
        (" " * 5_000_000 + "[]", "characters are more"),
    ],
)
def test_jobs_that_cannot_be_read_are_refused_with_the_reason(text: str, why: str) -> None:
    with pytest.raises(KeptJobsError, match=why):
        read_jobs(text)
    found: dict[str, Any] = answer_json("coupons", "", {"jobs": text})
    assert why in " ".join(found["errors"]["jobs"])


def test_jobs_are_read_as_the_phone_keeps_them() -> None:
    assert read_jobs(text_of(RAIL, FRAME)) == (RAIL, FRAME)
    assert read_jobs("  ") == ()


def test_a_coupon_of_the_stack_says_how_many_of_it_are_kept() -> None:
    way = "wire=ER70S-6&dia=0.045in&gas=90/10&machine=one"
    third = page(way).stack()[2]
    seen = "&marked=8in&arc_time=40s&welder="
    records = [
        new_record(f"{query}{seen}{who}", {"machine": "one"}, key, f"2026-11-{key}")
        for key, who, query in (
            ("01", "Ann", third.query), ("02", "Ben", third.query),
            ("03", "Ann", third.query.replace("leg=1/4in", "leg=5/16in")),
            ("04", "Ann", third.query.replace("gas=90/10", "gas=75/25")),
        )
    ]  # fmt: skip
    found = page(f"{way}&units=si&machine_amps=300A", coupons=records_text(records))
    counts = [kept_of(coupon, found.records_to_stack()) for coupon in found.stack()]
    assert counts == [0, 0, 2, 0, 0]
    jobs = page("stack=jobs&machine=two", jobs=text_of(job(1, third.query)),
                coupons=records_text(records))  # fmt: skip
    assert [kept_of(each, jobs.records_to_stack()) for each in jobs.stack()] == [2]
    strange = replace(records[0], query="&".join(f"k{n}=1" for n in range(5000)))
    assert kept_of(third, [strange]) == 0
