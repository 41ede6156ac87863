"""What the Coupons page shows of its answer."""

from __future__ import annotations

import re

from beadwright.api import answer
from beadwright.coupons.coupons_page import coupons_answer
from beadwright.passes.pass_beads import ROLE_NAMES
from beadwright.units import show
from beadwright_site.pages.coupons.stack_sheet import sheet_coupons, stack_choice
from beadwright_site.pages.coupons.view import (
    beads_of,
    coupon_facts_of,
    pace_of,
    setting_rows,
)

JOB = "plate=1/4in&leg=1/4in&wire=ER70S-6&dia=0.045in&gas=90/10"


def test_each_setting_stands_behind_its_name() -> None:
    typed = "&wfs=380in/min&volts=27.1V&travel=14in/min&ctwd=11/16in"
    found = {name: before for name, before, _, _ in setting_rows(coupons_answer(JOB + typed))}
    assert found == {
        "Wire feed": "380 in/min",
        "Volts": "27.1 V",
        "Travel speed": "14.0 in/min",
        "Stickout (tip to work)": "11/16 in",
    }


def test_the_beat_counts_in_the_units_shown() -> None:
    found = pace_of(coupons_answer(f"{JOB}&travel=15in/min&marked=4in"))
    assert (found.beads, found.length, found.names) == ("6.3500", "101.60", "1/4 in,1/2 in")
    assert pace_of(coupons_answer(f"{JOB}&units=si")).names == "5 mm,10 mm"


LAP = "joint=lap&plate=1/4in&leg=1/4in&wire=ER70S-6&dia=0.045in&gas=90/10"


def test_several_beads_are_drawn_and_one_is_not() -> None:
    drawn = beads_of(coupons_answer(f"{LAP}&passes=3"))
    assert drawn is not None
    assert len(drawn.drawing.beads) == 3
    assert drawn.words.startswith("3 beads")
    assert beads_of(coupons_answer(LAP)) is None
    assert beads_of(coupons_answer(f"{LAP}&passes=60")) is None  # lighter than any arc lays


def test_penetration_and_flow_stand_beside_what_is_planned() -> None:
    found = {fact.name: fact for fact in coupon_facts_of(
        coupons_answer(f"{JOB}&penetration_seen=0.06in&flow_seen=15ft3/h"))}  # fmt: skip
    assert found["penetration past the root"].value == "0.060 in"
    assert re.fullmatch(r"0\.0\d+ to 0\.\d+ in planned", found["penetration past the root"].room)
    assert found["gas flow"].value == "15 ft³/h"
    assert found["gas flow"].room.endswith("planned: outside")
    assert not list(coupon_facts_of(coupons_answer(JOB)))


JOBS = (
    '[{"page": "dial-in", "query": "plate=3/8in&leg=5/16in", "name": "MB-3", "made": "2026-11-01"}]'
)


def test_the_stack_goes_over_to_the_jobs_kept_and_back() -> None:
    none = stack_choice(coupons_answer(JOB), {"plate": "1/4in"})
    assert (none["jobs"], none["of_jobs"]) == (0, False)
    new = stack_choice(coupons_answer(JOB, {"jobs": JOBS}), {"plate": "1/4in"})
    assert (new["jobs"], new["other"]) == (1, "plate=1/4in&stack=jobs")
    found = coupons_answer("stack=jobs", {"jobs": JOBS})
    kept = stack_choice(found, {"plate": "1/4in", "stack": "jobs"})
    assert (kept["of_jobs"], kept["other"], kept["left_out"]) == (True, "plate=1/4in", 0)
    [coupon] = sheet_coupons(found)
    assert (coupon.name, len(coupon.rows)) == ("MB-3", 1)


def test_the_sheet_has_every_setting_of_each_coupon_as_dial_in_and_passes_give_it() -> None:
    found = coupons_answer(JOB)
    for coupon, stacked in zip(sheet_coupons(found), found.stack(), strict=True):
        beads = answer("passes", stacked.query).found.beads
        laid = {
            ROLE_NAMES[bead.role]: bead.laid for bead in reversed(beads) if bead.laid is not None
        }
        assert {row.name for row in coupon.rows} == laid.keys()
        for row in coupon.rows:
            bead = laid[row.name]
            wanted = (
                (bead.point.feed_m_s, "wire_feed"), (bead.point.volts, "volts"),
                (bead.travel_m_s, "travel"), (bead.tip_to_work_m, "tip_to_work"),
            )  # fmt: skip
            assert (row.feed, row.volts, row.travel, row.tip) == tuple(
                show(value, measure, "us") for value, measure in wanted
            )
        outcome = answer("dial-in", stacked.query).dialled.outcome
        assert outcome is not None
        assert outcome.gas_flow.value is not None
        assert coupon.also == f"Gas {show(outcome.gas_flow.value, 'gas_flow', 'us')} ft³/h."


def test_the_sheet_tells_how_the_machine_s_meter_stands() -> None:
    own = {"own": "ER70S-6,0.045in,90/10,n3,volts0.8"}
    for coupon in sheet_coupons(coupons_answer(JOB, own)):
        assert "set your machine's meter 0.8 V higher" in coupon.also
