"""Card: what it gathers is what the other pages answer, and only a like coupon proves it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from beadwright.api import answer_json
from beadwright.card.card_page import card_answer
from beadwright.card.card_query import PAPERS
from beadwright.card.card_report import card_report
from beadwright.errors import FieldErrors
from beadwright.heating.heat_page import heat_answer, heat_of
from beadwright.inspection.inspect_page import limits_of
from beadwright.inspection.inspected import inspected
from beadwright.inspection.weld_readings import WeldReadings
from beadwright.passes.passes_page import passes_answer, passes_of

JOB = "plate=1/4in&leg=1/4in"


def told(query: str) -> Mapping[str, Any]:
    found: Mapping[str, Any] = answer_json("card", query)["answer"]
    return found


@pytest.mark.parametrize("query", [JOB, "plate=1in&joint=double-v&position=2G&passes=14&units=si"])
def test_its_numbers_are_those_of_the_pages_they_come_from(query: str) -> None:
    card, dial_in = told(query), answer_json("dial-in", query)["answer"]
    for key in ("wire_feed", "volts", "travel", "tip_to_work", "gas_flow"):
        assert card[key] == dial_in[key]
    heat = answer_json("heat", query)["answer"]
    assert card["preheat"] == {key: heat["preheat"][key] for key in card["preheat"]}
    assert card["interpass_most"] == heat["interpass_most"]
    judged = answer_json("inspect", query)["answer"]["checks"]
    checks = {check["key"]: check["limit"] for check in judged}
    assert {limit["key"]: limit["limit"] for limit in card["limits"]} == checks


def test_the_beads_of_a_part_stand_together_in_welding_order() -> None:
    parts = told("plate=1in&joint=double-v&position=2G&passes=14")["parts"]
    assert [bead for part in parts for bead in part["beads"]] == list(range(1, 15))
    assert (parts[0]["side"], parts[0]["role"]) == (1, "root")
    assert len({(part["side"], part["role"]) for part in parts}) == len(parts)


@pytest.mark.parametrize(
    ("query", "paper"), [("", "letter"), ("units=si", "a4"), ("paper=pocket", "pocket")]
)
def test_the_paper_is_the_one_asked_for_else_that_of_the_units(query: str, paper: str) -> None:
    assert told(f"{JOB}&{query}")["paper"] == paper
    assert card_answer(f"{JOB}&{query}").query.paper == paper
    assert paper in PAPERS


def test_the_report_tells_what_the_card_says() -> None:
    answer = card_answer(f"{JOB}&piece=MB-3&proved_by=Ann")
    says = card_report(answer)["answer"]
    assert isinstance(says, dict)
    assert says["says"]["piece"] == "MB-3"
    assert says["says"]["proved_by"] == "Ann"


def test_a_card_asks_passes_and_heat_as_they_would_be_asked() -> None:
    query = f"{JOB}&passes=3&bead=stringer&steel=A572-50&preheat=200F"
    card = card_answer(query).query
    assert passes_of(card.of_passes).found == passes_answer(query).found
    of_card, of_heat = heat_of(card.of_heat), heat_answer(query)
    assert (of_card.needed, of_card.start_k) == (of_heat.needed, of_heat.start_k)
    assert of_card.distortion == of_heat.distortion


def test_a_longer_note_is_refused_beside_its_entry() -> None:
    with pytest.raises(FieldErrors) as refused:
        card_answer(f"{JOB}&card_note={'x' * 121}")
    assert list(refused.value.messages) == ["card_note"]


@pytest.mark.parametrize("accept", ["iso-b", "iso-d", "d1.1-cyclic"])
def test_the_limits_follow_what_it_is_judged_by(accept: str) -> None:
    card = card_answer(f"{JOB}&accept={accept}")
    other = card_answer(JOB)
    assert card.limits != other.limits
    assert {check.state for check in card.limits} == {"unknown"}
    weld = inspected(card.query.job, WeldReadings(read_by="along"))
    assert tuple(limits_of(weld, card.query.accept, across=True)) == card.limits
