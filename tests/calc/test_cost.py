"""What a part costs: the pieces are the whole, and a query means what it says."""

import csv
import io
import json
from dataclasses import fields, replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.api import answer, answer_csv, answer_json
from beadwright.errors import FieldErrors
from beadwright.money.capacity import Hours, capacity
from beadwright.money.cost import cost_of, part_cost
from beadwright.money.cost_page import CostAnswer
from beadwright.money.cost_query import DEFAULTS
from beadwright.money.demo_prices import INVENTED
from beadwright.money.way import Rates, Way, off_arc
from tests.calc.ways import MB3, RATES, WAYS
from tests.told import in_words, told


def cost(query: str = "", **kept: str) -> CostAnswer:
    return answer("cost", f"{MB3}&{query}", kept)


@given(WAYS, RATES)
def test_pieces_are_the_whole(way: Way, rates: Rates) -> None:
    found = cost_of(way, rates)
    assert found.part == sum(piece.amount for piece in found.pieces)
    assert found.time_s == sum(piece.amount for piece in found.times)
    assert found.time_s == pytest.approx(way.time_s)
    assert all(piece.amount >= 0 for piece in (*found.pieces, *found.times))


@given(WAYS, RATES)
def test_the_short_sum_is_the_long_one(way: Way, rates: Rates) -> None:
    assert part_cost(way, rates) == pytest.approx(cost_of(way, rates).part)


@given(WAYS, RATES, st.integers(0, 10**6), st.integers(2, 9))
def test_volume_scales_what_varies(way: Way, rates: Rates, parts: int, times: int) -> None:
    found = cost_of(way, rates)
    assert found.year(times * parts) - way.yearly == pytest.approx(
        times * (found.year(parts) - way.yearly), rel=1e-9, abs=1e-6
    )
    assert found.batch(times * parts) == pytest.approx(times * found.batch(parts))


@given(WAYS, RATES, st.floats(1.01, 10))
def test_more_weld_never_costs_less(way: Way, rates: Rates, times: float) -> None:
    more = replace(way, metal_kg=way.metal_kg * times)
    assert part_cost(more, rates) >= part_cost(way, rates)


@given(WAYS, RATES)
def test_rework_of_every_part_doubles_it(way: Way, rates: Rates) -> None:
    once = part_cost(replace(way, rework=0.0, grind_s=0.0), rates)
    assert part_cost(replace(way, rework=1.0, grind_s=0.0), rates) == pytest.approx(2 * once)


def test_the_operating_factor_undoes_itself() -> None:
    way = cost("factor=35%").costs[0].way
    assert way.factor == pytest.approx(0.35)
    assert off_arc(90.0, 0.45) == pytest.approx(110.0)


def test_a_later_way_takes_over_minutes_not_the_factor() -> None:
    equal = "factor=35%&laid=8lb/h&b_laid=12lb/h&spatter=2min&b_spatter=2min"
    now, other = (c.way for c in cost(equal).costs)
    assert other.off_s == pytest.approx(now.off_s)
    assert other.factor < now.factor


def test_a_difference_in_minutes_is_kept_beside_a_factor() -> None:
    now, other = (c.way for c in cost("factor=35%&spatter=4min&b_spatter=1min").costs)
    assert now.off_s - other.off_s == pytest.approx(180.0)


def test_measurements_belong_to_the_wire_they_were_made_with() -> None:
    now, other = (c.way for c in cost("wfs=350in/min&laid=9lb/h&efficiency=96%").costs)
    assert now.efficiency == 0.96
    assert other.efficiency == 0.91
    assert now.laid_kg_s * 3600 / 0.45359237 == pytest.approx(9.0)
    assert other.laid_kg_s != pytest.approx(now.laid_kg_s)


def test_a_way_that_welds_the_same_takes_over_measurements() -> None:
    same = cost("b_wire=ER70S-6&b_wire_price=1.90/lb&laid=9lb/h&wfs=350in/min")
    now, other = (c.way for c in same.costs)
    assert other.laid_kg_s == now.laid_kg_s
    assert other.arc_w == now.arc_w
    assert same.comparisons[0].case.part_saving > 0


def test_arc_minutes_and_laid_metal_measured_together_make_the_metal() -> None:
    way = cost("arc_min=6min&laid=10lb/h").costs[0].way
    assert way.arc_s == pytest.approx(360.0)
    assert way.metal_kg == pytest.approx(10 * 0.45359237 / 3600 * 360)


def test_arc_minutes_alone_leave_the_drawing_its_metal() -> None:
    drawn, timed = (c.costs[0].way for c in (cost(), cost("arc_min=9min")))
    assert timed.metal_kg == pytest.approx(drawn.metal_kg, rel=1e-6)
    assert timed.arc_s == pytest.approx(540.0)


def test_gas_by_the_cylinder_outranks_gas_by_volume() -> None:
    way = cost("gas_price=9/ft3&cylinder_price=33&cylinder_gas=330ft3").costs[0].way
    assert way.gas_m3 == pytest.approx(0.1 / 0.3048**3)


def test_currency_signs_and_thousands_are_read() -> None:
    found = cost("currency=€&wire_price=€2.10/lb&b_procedure=$1,250&labour=26/h")
    assert found.currency == "€"
    assert dict(found.ways[1].once)["procedure"] == 1250.0


def test_the_second_wire_of_the_demo_lends_its_prices_to_no_other() -> None:
    found = cost("b_wire=ER70S-3")
    assert found.costs[1].way.wire_kg == found.costs[0].way.wire_kg
    assert found.costs[1].way.once == 0
    assert any("the first wire's price is used" in told(note) for note in found.notes)


def test_four_ways_at_once() -> None:
    found = cost("c_transfer=pulse&d_travel_by=robot&d_wire_price=1.80/lb&d_name=robot")
    assert [planned.prefix for planned in found.ways] == ["", "b_", "c_", "d_"]
    assert len(found.comparisons) == 3
    assert found.costs[3].way.name == "robot"
    assert len({c.way.name for c in found.costs}) == 4


def test_what_is_invented_says_so_until_written_over() -> None:
    assert any(note.source == "invented" for note in cost().notes)
    own = {key: DEFAULTS[key] for key in INVENTED if key in DEFAULTS}
    found = answer("cost", MB3, {key: value or "1" for key, value in own.items()})
    assert not any(note.source == "invented" for note in found.notes)


def test_a_feed_that_cannot_be_had_is_asked_for() -> None:
    with pytest.raises(FieldErrors, match="Write the feed you run") as raised:
        cost("b_position=4F&b_transfer=spray")
    assert set(raised.value.messages) == {"b_wfs"}


def test_errors_of_a_later_way_stand_beside_its_own_field() -> None:
    with pytest.raises(FieldErrors, match="is made in") as raised:
        cost("b_dia=0.030in")
    assert set(raised.value.messages) == {"b_dia"}


@pytest.mark.parametrize(
    ("query", "field", "says"),
    [
        ("labour=-3/h", "labour", "below zero"),
        ("wire_price=cheap", "wire_price", "write it like"),
        ("factor=0.45", "factor", "as 45%"),
        ("efficiency=120%25", "efficiency", "no more is deposited than melted"),
        ("parts=-1", "parts", "not a count"),
        ("months=0", "months", "outside 1 to 240"),
        ("b_name==HYPERLINK(1)", "b_name", "begin with a letter"),
        ("draws=5", "draws", "outside 100 to"),
    ],
)
def test_messages_say_what_is_allowed(query: str, field: str, says: str) -> None:
    errors = answer_json("cost", query)["errors"]
    assert says in errors[field][0]


def test_the_query_comes_back_as_typed() -> None:
    typed = "b_wire=E70C-6M&leg=5/16in&parts=900"
    found = answer("cost", typed)
    assert found.canonical == "leg=5/16in&parts=900&b_wire=E70C-6M"


def test_json_and_csv_say_the_same() -> None:
    report = answer_json("cost", MB3)
    rows = {row[0]: row[2:] for row in csv.reader(io.StringIO(answer_csv("cost", MB3)))}
    ways = report["answer"]["ways"]
    assert [float(text) for text in rows["Cost of a part"]] == [way["part"] for way in ways]
    for way in ways:
        assert sum(piece["part"] for piece in way["pieces"]) == pytest.approx(way["part"])
    assert json.loads(json.dumps(report, allow_nan=False)) == report


def test_a_page_without_a_table_says_so() -> None:
    with pytest.raises(FieldErrors, match="no table"):
        answer_csv("shop", MB3)


def test_capacity() -> None:
    way = cost("rework=0%25").costs[0].way
    hours = Hours(welders=2, shift_s=8 * 3600, shifts_a_week=5, weeks=50)
    found = capacity(way, 480, hours)
    assert found.shift_s == pytest.approx(480 * way.time_s)
    assert found.parts_a_shift == pytest.approx(2 * 8 * 3600 / way.time_s)
    assert found.delivers
    most = found.most_parts
    assert in_words(capacity(way, most * 1.01, hours).phrase).startswith("Cannot deliver")
    assert in_words(capacity(way, most * 0.95, hours).phrase).startswith("Just delivers")
    assert in_words(capacity(way, 0, hours).phrase).startswith("Nothing to weld")


def test_no_field_of_a_way_is_left_out_of_the_strategy() -> None:
    assert {field.name for field in fields(Way)} == set(Way.__slots__)
