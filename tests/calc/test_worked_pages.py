"""Pages answer as worked by hand, through the door everybody uses."""

import pytest

from beadwright.api import answer_json
from beadwright.pages import PAGES
from tests.calc.worked_card import CARD
from tests.calc.worked_coupons import COUPONS
from tests.calc.worked_heat import HEAT
from tests.calc.worked_inspect import INSPECT
from tests.calc.worked_joint import DIAL_IN, PASSES
from tests.calc.worked_list import LIST
from tests.calc.worked_loaded import LOADED
from tests.calc.worked_money import COST
from tests.calc.worked_pages import Worked, at
from tests.calc.worked_strength import STRENGTH
from tests.calc.worked_supplies import SHOP, SUPPLIES

WORKED = (
    *CARD, *LIST,
    *STRENGTH, *LOADED, *HEAT, *COST, *SUPPLIES, *SHOP, *PASSES, *DIAL_IN, *INSPECT, *COUPONS,
)  # fmt: skip


@pytest.mark.parametrize("worked", WORKED, ids=lambda worked: f"{worked.page}?{worked.query}"[:90])
def test_a_page_answers_as_worked_by_hand(worked: Worked) -> None:
    wrong = worked.wrong()
    assert not wrong, "\n".join([worked.query, *wrong, worked.working])


def test_the_cooling_time_stands_between_those_of_the_least_and_the_most_heat() -> None:
    found = answer_json("heat", "plate=3/8in&leg=5/16in")["answer"]
    assert found["heat_en"]["low"] < found["heat_en"]["value"] < found["heat_en"]["high"]
    assert found["cooling"]["low"] < found["cooling"]["value"] < found["cooling"]["high"]


def test_every_page_is_worked_by_hand() -> None:
    assert {worked.page for worked in WORKED} == set(PAGES)


def test_every_page_worked_shows_its_working() -> None:
    assert [worked.query for worked in WORKED if len(worked.working) < 5 or not worked.shown] == []


def test_a_wrong_page_is_told() -> None:
    wrong = Worked("strength", "leg=5/16in", {"leg.value": 0.25, "holds": True}, "").wrong()
    assert wrong == ["leg.value is 0.3125, by hand 0.25"]
    [refused] = Worked("strength", "leg=lots", {"holds": True}, "").wrong()
    assert "lots" in refused
    with pytest.raises(KeyError):
        at({"links": [{"key": "weld"}]}, "links[plate].use")
