"""Cost takes both wires' timed and weighed coupons as measured, by one tap."""

from __future__ import annotations

import re
from typing import Any

import pytest

from beadwright.api import answer
from beadwright.coupons.coupon_records import records_text
from beadwright.coupons.new_record import new_record
from beadwright_site.page_table import SITE_PAGES
from beadwright_site.pages.cost.coupon_ways import coupons_view

WELD = "plate=3/8in&leg=5/16in&position=2F"
JOB = f"{WELD}&wire=ER70S-6&dia=0.045in&gas=90/10&weld_length=10in&welds=6&b_wire=E70C-6M"


def kept(*wires: tuple[str, float]) -> dict[str, Any]:
    records = [
        new_record(
            f"{WELD}&wire={wire}&dia=0.045in&gas=90/10&wfs=425in/min&marked=10in&arc_time=60s"
            f"&weight_before=4lb&weight_after={4 + gained}lb&clean_time=10s&welder=Ann&machine=one",
            None, f"k{number}", "2026-11-28",
        )
        for number, (wire, gained) in enumerate(wires)
    ]  # fmt: skip
    return {"coupons": records_text(records), "welder": "Ann", "machine": "one"}


BOTH = kept(("ER70S-6", 0.185), ("E70C-6M", 0.160))


def view(query: str, names: dict[str, Any]) -> dict[str, Any]:
    return coupons_view(answer("cost", query), {}, names)


def test_the_coupons_of_both_wires_stand_beside_their_ways() -> None:
    first, second = view(JOB, BOTH)["rows"]
    assert (first.letter, second.letter) == ("A", "B")
    # 0.185 lb a minute is 11.1 lb/h; 10 s of clean-up on 10 in is a minute on 60 in.
    assert first.words.startswith("1 coupon: 11.1 lb/h laid, 96.5 % deposition efficiency, 1.0 min")
    assert second.words.startswith("1 coupon: 9.6 lb/h laid")


def test_the_tap_fills_in_what_was_measured_and_the_answer_takes_it() -> None:
    link = view(JOB, BOTH)["query"]
    taken = answer("cost", f"{JOB}&{link}")
    assert [way.measured for way in taken.ways] == [True, True]
    for way, gained in zip(taken.ways, (0.185, 0.160), strict=True):
        assert way.way.laid_kg_s * 3600 / 0.45359237 == pytest.approx(60 * gained, rel=1e-3)
    assert taken.ways[1].alike is not None
    assert taken.ways[1].alike.compared == "measured"
    shown = SITE_PAGES["cost"].load().show(f"{JOB}&{link}", BOTH)
    assert shown.ok
    assert "They count above" in shown.html["coupons"]
    assert "Count them as measured" in SITE_PAGES["cost"].load().show(JOB, BOTH).html["coupons"]


def test_a_way_without_coupons_says_so_and_stays_worked_out() -> None:
    found = view(JOB, kept(("ER70S-6", 0.185)))
    assert found["rows"][1].words == "none timed and weighed on this weld"
    assert re.search(r"(^|&)laid=", found["query"])
    assert "b_laid" not in found["query"]
    other = view(JOB.replace("5/16in", "1/4in"), kept(("ER70S-6", 0.185)))
    assert other["rows"][0].words == "none timed and weighed on this weld; 1 of other welds"
    assert other["query"] == ""


@pytest.mark.parametrize("names", [{}, {"coupons": ""}, {"coupons": "[broken"}, None])
def test_without_coupons_nothing_is_shown(names: dict[str, Any] | None) -> None:
    assert coupons_view(answer("cost", JOB), {}, names)["rows"] == ()
    assert "<h2" not in SITE_PAGES["cost"].load().show(JOB, names).html["coupons"]
