"""A robot cell against a hand, worked by hand; what a factor and a change-over hold."""

from dataclasses import replace

import pytest

from beadwright.api import answer, answer_json
from beadwright.money.break_even import Case, at_laid, least_laid
from beadwright.money.cell_entries import CELL_KEYS, minutes
from beadwright.money.cost import hourly, part_cost
from beadwright.money.cost_page import CostAnswer
from beadwright.money.cycle import more_parts, what_rules
from beadwright.money.way import Rates
from tests.calc.plain_way import PLAIN
from tests.told import in_words, told

HAND = (
    "leg=5/16in&arc_min=6min&laid=10lb/h&efficiency=80%&waste=0%&rework=0%&fit_up=6min"
    "&reposition=0min&clean=0min&spatter=4min&spool_change=0min&wire_price=2/lb&gas_price=0"
    "&shop_rate=60/h&energy_price=0&tip_price=0&nozzle_price=0&tip_life=5h"
).replace("%", "%25")
"""6 min of arc, 6 to fit up, 4 of spatter at a dollar a minute; 1.25 lb of wire at 2: 18.50."""

CELL = (
    "&b_wire=ER70S-6&b_travel_by=robot&b_arc_min=3min&b_laid=20lb/h&b_efficiency=80%25&b_rate=90/h"
    "&b_fit_up=0min&b_spatter=1min&b_load=2min&b_stations=2&b_clean_stop=0.5min"
    "&b_clean_every=10min&b_tip_change=1min&b_spool=500lb&b_spool_change=20min"
    "&b_equipment=80000&b_programming=6000&parts=10000&months=36"
)
"""3 min of arc, 0.15 of stops, 0.01 of tips, 0.05 of a drum: the torch 3.21 min, the hands 3."""


def cost(query: str) -> CostAnswer:
    return answer("cost", HAND + query)


def test_a_hand_and_a_cell_are_two_ways_of_one_comparison() -> None:
    found = cost(CELL)
    hand, cell = found.costs
    assert hand.part == pytest.approx(18.50)
    assert cell.time_s / 60 == pytest.approx(3.21)
    assert cell.part == pytest.approx(3.21 * 1.5 + 2.50)
    once = dict(found.ways[1].once)
    assert (once["equipment"], once["programming"]) == (80_000, 6_000)
    saved = 18.50 - 7.315
    assert found.comparisons[0].case.net_saving == pytest.approx(10_000 * saved - 86_000 / 3)


def test_the_times_of_a_cell_say_what_stops_it() -> None:
    times = {piece.key: piece.amount / 60 for piece in cost(CELL).costs[1].times}
    assert {key: round(time, 4) for key, time in times.items() if time} == {
        "arc": 3.0,
        "spool": 0.05,
        "stops": 0.15,
        "tip": 0.01,
    }


@pytest.mark.parametrize(
    ("query", "cycle", "rule"),
    [
        ("", 3.21, "The gun sets the pace: 3.2 min a part, hands 3.0 min beside it"),
        (
            "&b_load=5min",
            6.0,
            "Loading sets the pace: hands take 6.0 min a part, the gun takes 3.2 min",
        ),
        ("&b_stations=1", 6.21, "The arc is on 48% of the time"),
    ],
)
def test_the_longer_of_torch_and_hands_rules_two_stations(
    query: str, cycle: float, rule: str
) -> None:
    way = cost(CELL + query).costs[1].way
    assert way.time_s / 60 == pytest.approx(cycle)
    assert in_words(what_rules(way)).startswith(rule)
    assert answer_json("cost", HAND + CELL + query)["answer"]["ways"][1]["cycle"][
        "text"
    ].startswith(rule)


def test_laying_more_makes_more_parts_where_the_arc_rules_alone() -> None:
    """Arc 3 min a tenth faster: 0.27273 min less of it, with its stops 0.28727 of 6.21."""
    one = cost(CELL + "&b_stations=1").costs[1].way
    assert more_parts(one) == pytest.approx(6.21 / (6.21 - 3 / 11 * 1.0533333333) - 1)
    waiting = cost(CELL + "&b_load=5min").costs[1].way
    assert more_parts(waiting) == 0
    assert waiting.waits_s / 60 == pytest.approx(2.79)


def test_what_belongs_to_a_cell_passes_to_ways_moved_alike_alone() -> None:
    cell = "&travel_by=robot&rate=90/h&load=2min&stations=2&clean_stop=1min&clean_every=10min"
    cell += "&yearly=500"
    by_hand = cost(cell + "&b_travel_by=hand").costs[1].way
    assert (by_hand.rate_s, by_hand.stations, by_hand.load_s, by_hand.stopped) == (None, 1, 0, 0)
    assert by_hand.yearly == 0
    same = cost(f"{cell}&b_wire=E70C-6M").costs[1].way
    assert (same.rate_s, same.stations) == (90 / 3600, 2)
    assert (same.load_s, same.stopped, same.yearly) == (120, 0.1, 500)
    assert cost(f"{cell}&b_yearly=700").comparisons[0].case.yearly == 200
    assert set(CELL_KEYS) == {
        "rate", "load", "stations", "clean_stop", "clean_every", "tip_change", "yearly",
    }  # fmt: skip


def test_a_stop_without_its_interval_is_asked_about() -> None:
    errors = answer_json("cost", f"{HAND}&b_clean_stop=1min")["errors"]
    assert list(errors) == ["b_clean_every"]
    assert "write it, as 20min" in errors["b_clean_every"][0]


@pytest.mark.parametrize(
    ("query", "key", "says"),
    [
        ("stations=3", "stations", "outside 1 to 2"),
        ("rate=-1/h", "rate", "below zero"),
        ("load=20000min", "load", "minutes for one part"),
        ("clean_stop=2h", "clean_stop", "minutes for one stop"),
        ("swap=-1min", "swap", "minutes for one batch"),
        ("shop_rate=-5", "shop_rate", "below zero"),
        ("b_change_over=-5", "b_change_over", "below zero"),
        ("b_equipment=lots", "b_equipment", "write it like"),
    ],
)
def test_a_figure_that_cannot_be_is_refused_beside_its_field(
    query: str, key: str, says: str
) -> None:
    errors = answer_json("cost", query)["errors"]
    assert list(errors) == [key]
    assert says in errors[key][0]


def test_a_wire_swap_is_shared_by_the_batch() -> None:
    """12 min for 24 parts: half a minute a part."""
    now, other = (c.way for c in cost("&batch=24&b_swap=12min").costs)
    assert (now.swap_s, other.swap_s) == pytest.approx((0, 30))


def test_a_shop_rate_holds_labor_and_overhead() -> None:
    way, rates = PLAIN, Rates(20 / 3600, 40 / 3600, 0.0, 1.0, 0.0)
    assert hourly(way, rates) == (20 / 3600, 40 / 3600)
    assert hourly(replace(way, rate_s=0.01), rates) == (0.01, 0.0)
    apart = HAND.replace("shop_rate=60/h", "labour=20/h&overhead=40/h")
    assert answer("cost", apart).costs[0].part == pytest.approx(18.50)
    both = cost("&labour=20/h")
    assert both.costs[0].part == pytest.approx(18.50)
    assert "money.shop-rate-holds" in [note.key for note in both.notes]
    assert {"labour", "overhead"} <= both.query.outranked


@pytest.mark.parametrize("stations", [1, 2])
@pytest.mark.parametrize("saving", [-3.0, 0.0, 0.5, 4.0])
def test_the_least_a_cell_must_lay_costs_what_it_may(stations: int, saving: float) -> None:
    """Hands 1000 s a part: with two stations they rule from 1.25 g/s on."""
    rates = Rates(0.02, 0.0, 0.0, 1.0, 0.0)
    cell = replace(PLAIN, stations=stations, load_s=1000.0, gas_m3=5.0)
    case = Case(rates, replace(PLAIN, fit_up_s=500.0), cell, 100.0, 12.0)
    laid = least_laid(case, saving)
    if laid is None:
        fastest = at_laid(cell, 1e9)
        assert part_cost(case.now, rates) - part_cost(fastest, rates) < saving
        return
    there = part_cost(at_laid(cell, laid), rates)
    assert part_cost(case.now, rates) - there == pytest.approx(saving)


def test_the_change_over_may_be_written_in_all() -> None:
    """The demonstration's pieces: 70 + 45 + 400 + 120."""
    pieces, whole = answer("cost", ""), answer("cost", "b_change_over=300&b_rolls=50")
    assert pieces.ways[1].way.once == 635
    assert pieces.ways[0].once == ()
    assert whole.ways[1].once == (("change_over", 300.0),)
    assert "money.change-over-holds" in [note.key for note in whole.notes]
    assert "b_liner" in whole.query.outranked
    listed = "&".join(f"b_{key}=1" for key, _ in pieces.ways[1].once)
    assert answer("cost", listed).ways[1].way.once == 11


@pytest.mark.parametrize(
    ("query", "way", "paid"),
    [
        ("", 1, 0),
        ("b_gas=85/15", 1, 160),
        ("b_gas=90/10", 1, 0),
        ("gas=85/15", 1, 0),
        ("gas=85/15&b_gas=85/15", 1, 0),
        ("b_gas=85/15&b_gas_change=25", 1, 25),
        ("c_gas=85/15&c_wire_price=2/lb", 2, 160),
        ("b_wire=ER70S-3&b_gas=85/15", 1, 160),
    ],
)
def test_a_way_in_another_gas_brings_the_change_of_gas(query: str, way: int, paid: float) -> None:
    found = answer("cost", f"leg=5/16in&{query}")
    assert dict(found.ways[way].once)["gas_change"] == paid


# At 25 % the arc's 6 min are a quarter: 18 min off the arc.
def test_a_factor_keeps_the_spatter_saved_apart() -> None:
    found = cost("&factor=25%25&b_arc_min=6min&b_laid=10lb/h&b_efficiency=80%25&b_spatter=1min")
    now, other = (c.way for c in found.costs)
    assert (now.off_s / 60, now.spatter_s / 60) == pytest.approx((18, 4))
    assert (other.off_s / 60, other.spatter_s / 60) == pytest.approx((15, 1))
    assert found.comparisons[0].case.part_saving + 0.0 == pytest.approx(
        3.0 - 1.25 * 0.80  # three minutes at a dollar; the second wire at 2.80
    )
    words = [told(note) for note in found.notes if note.key.startswith("money.factor")]
    assert "covers all 18.0 min of non-arc time a part, 4.0 min of spatter included" in words[0]
    assert "15.0 min of non-arc" in words[1]
    assert "1.0 min of spatter against 4.0 min" in words[1]


def test_a_factor_of_a_later_way_is_its_own() -> None:
    """3 min of arc at 30 %: 7 min off it, a minute of spatter among them."""
    found = cost("&factor=25%25&b_factor=30%25&b_arc_min=3min&b_laid=20lb/h&b_spatter=1min")
    other = found.costs[1].way
    assert other.off_s / 60 == pytest.approx(7)
    assert (other.spatter_s / 60, other.other_s / 60) == pytest.approx((1, 6))
    held = [note.field for note in found.notes if note.key == "money.factor-holds"]
    assert held == ["factor", "b_factor"]


def test_a_factor_with_no_room_for_the_spatter_written_is_refused() -> None:
    errors = answer_json("cost", f"{HAND}&factor=80%25")["errors"]
    assert errors == {
        "factor": [
            "This leaves 1.5 min of a part off the arc, and the spatter alone takes 4.0 min: "
            "write a lower factor or fewer minutes."
        ]
    }


def test_spatter_of_the_demonstration_shrinks_into_a_factor() -> None:
    """1.5 min off the arc, all of the invented 4 of spatter; a quarter of it with the other."""
    bare = HAND.replace("&spatter=4min", "")
    found = answer("cost", f"{bare}&factor=80%25&b_arc_min=6min&b_laid=10lb/h")
    now, other = (c.way for c in found.costs)
    assert (now.spatter_s / 60, now.other_s) == pytest.approx((1.5, 0))
    assert other.spatter_s / 60 == pytest.approx(0.375)


def test_minutes_are_read_to_their_most() -> None:
    field = minutes("Loading", "loading", "60min", "minutes for one part", blank="none")
    assert field.deserialize("1h", "load", {}) == 3600
    assert field.blank == "none"


@pytest.mark.parametrize(
    ("query", "name"),
    [
        ("b_travel_by=robot", "ER70S-6 0.045in, 90/10, by robot"),
        ("travel_by=track&b_travel_by=hand", "ER70S-6 0.045in, 90/10, by hand"),
        ("travel_by=robot", "ER70S-6 0.045in, 90/10, way B"),
        ("b_travel_by=robot&b_name=Cell 2", "Cell 2"),
    ],
)
def test_one_wire_in_two_hands_is_told_apart_by_who_moves_the_torch(query: str, name: str) -> None:
    assert answer("cost", f"leg=5/16in&b_wire=ER70S-6&{query}").ways[1].way.name == name
