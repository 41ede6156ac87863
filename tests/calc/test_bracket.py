"""The examples of all pages are one part, bracket MB-3, welded one way: none contradicts another.

No number here is right or wrong by itself; each page's own tests hold it to print. Here the pages
are held to each other.
"""

from __future__ import annotations

from typing import Any

import pytest

from beadwright.api import answer, answer_json
from beadwright.job.job import Job
from beadwright.pages import PAGES
from beadwright.weld_list.list_page import ListAnswer

PARTS = {page: answer_json(page, row.example) for page, row in PAGES.items()}
ANSWERS: dict[str, Any] = {page: found["answer"] for page, found in PARTS.items()}
WELDS = 8


def _weld(job: Job) -> tuple[object, ...]:
    """What makes it that weld: joint, sizes, position, wire and gas."""
    sizes = (job.plate_m, job.plate2_m, job.leg_m, job.gap_m, job.weld_length_m, job.skew_deg)
    wire = job.wire.type.name, job.wire.size, job.gas.name
    return job.joint, sizes, job.position_name, wire, job.travel_by, job.transfer


def _listed() -> list[Job]:
    found = answer("list", PAGES["list"].example)
    assert isinstance(found, ListAnswer)
    return [row.weld.first.dialled.job for row in found.rows if row.weld is not None]


def test_the_list_is_eight_welds_alike_each_with_a_name_of_its_own() -> None:
    jobs = _listed()
    assert len(jobs) == WELDS
    assert len({_weld(job) for job in jobs}) == 1
    assert {job.welds for job in jobs} == {1}
    assert len({row["name"] for row in ANSWERS["list"]["rows"]}) == WELDS


@pytest.mark.parametrize("page", PAGES)
def test_a_page_s_example_is_one_of_the_welds_of_the_list(page: str) -> None:
    job = answer(page, PAGES[page].example).query.job
    assert _weld(job) == _weld(_listed()[0])
    assert job.welds == WELDS  # as many as the list counts
    assert "bracket MB-3" in PAGES[page].example_name


@pytest.mark.parametrize("key", ["wire_feed", "volts", "travel"])
def test_the_settings_are_one_wherever_they_are_planned(key: str) -> None:
    planned = ANSWERS["dial-in"][key]
    assert ANSWERS["card"][key] == planned
    assert [row[key] for row in ANSWERS["list"]["rows"]] == [planned] * WELDS
    assert ANSWERS["coupons"]["settings"]["published"][key] == planned
    assert ANSWERS["coupons"]["settings"]["own"][key] == planned
    way = ANSWERS["cost"]["ways"][0]
    assert key == "volts" or way[key]["value"] == pytest.approx(planned["value"], rel=1e-6)


def test_passes_heat_and_current_are_one() -> None:
    dialled, listed = ANSWERS["dial-in"], ANSWERS["list"]["rows"]
    assert {row["passes"] for row in listed} == {dialled["passes"]}
    assert all(row["heat"] == dialled["heat"] for row in listed)
    assert ANSWERS["heat"]["heat"] == dialled["heat"]
    current = dialled["current"]["value"]
    assert ANSWERS["shop"]["current"]["value"] == pytest.approx(current, rel=1e-6)
    preheats = [each["preheat"] for each in (ANSWERS["card"], *listed)]
    assert {each["value"] for each in preheats} == {ANSWERS["heat"]["preheat"]["value"]}
    needed = {row["preheat_needed"] for row in listed}
    assert needed == {ANSWERS["heat"]["preheat"]["needed"]}


def test_metal_wire_time_and_cost_of_the_part_are_one() -> None:
    way, total = ANSWERS["cost"]["ways"][0], ANSWERS["list"]["totals"][0]
    assert total["way"] == way["name"]
    assert total["metal"] == way["metal"]
    assert total["wire"] == way["wire_bought"]
    assert total["time"]["value"] == pytest.approx(way["time"]["value"])
    assert total["part"] == pytest.approx(way["part"])
    pieces = list(total["pieces"].values())
    assert pieces == pytest.approx([piece["part"] for piece in way["pieces"]])
    [arc] = [each["value"] for each in way["times"] if each["key"] == "arc"]
    dialled = ANSWERS["dial-in"]
    assert arc == pytest.approx(dialled["arc_time"]["value"], rel=1e-6)
    feet = WELDS * 0.5
    assert way["metal"]["value"] == pytest.approx(dialled["metal"]["value"] * feet, rel=1e-6)


def test_supplies_are_those_of_the_parts_that_cost_and_list_count() -> None:
    way, supplies = ANSWERS["cost"]["ways"][0], ANSWERS["supplies"]
    assert supplies["count"] == ANSWERS["cost"]["batch"] == ANSWERS["list"]["batch"]
    assert supplies["parts"] == ANSWERS["cost"]["parts"]
    wire = supplies["count"] * way["wire_bought"]["value"]
    assert supplies["wire"]["value"] == pytest.approx(wire)


def test_a_machine_is_asked_for_the_longest_weld_of_the_list() -> None:
    longest = max(row["arc"]["value"] for row in ANSWERS["list"]["rows"])
    assert ANSWERS["shop"]["longest_weld"]["value"] == pytest.approx(longest)


def test_the_leg_welded_holds_its_load_and_is_the_one_inspected() -> None:
    strength, wanted = ANSWERS["strength"], ANSWERS["inspect"]["gauge"]["wanted"]
    assert strength["holds"]
    assert strength["leg_needed"]["value"] <= strength["leg"]["value"] == 0.3125
    assert wanted["leg"]["value"] == wanted["leg2"]["value"] == 0.3125


def test_the_weld_inspected_was_run_as_its_size_says() -> None:
    """It is out, being small; what its settings lay by our sums is what the gauge read."""
    inspected = ANSWERS["inspect"]
    assert inspected["verdict"] == "out"
    assert inspected["change"]["laid_over_sums"] == pytest.approx(1, abs=0.1)


def test_three_passes_lay_the_same_weld() -> None:
    assert ANSWERS["passes"]["passes"] == 3
    assert "in three passes" in PAGES["passes"].example_name
    metal = ANSWERS["dial-in"]["metal"]["value"]
    assert ANSWERS["passes"]["metal"]["value"] == pytest.approx(metal, rel=1e-3)
