"""The Weld list: its sums are the pages' own answers weld by weld; what cannot be read is kept."""

from __future__ import annotations

from unittest.mock import patch
from urllib.parse import quote, urlencode

import pytest

from beadwright.api import answer, answer_json
from beadwright.money.cost_ways import planned_ways
from beadwright.pages import PAGES
from beadwright.weld_list.list_page import ListAnswer
from beadwright.weld_list.list_rows import called, heaviest, hottest, worst_checks
from beadwright.weld_list.listed_weld import at_most_new

BRACKET = "tee,3/8in,5/16in,6in"


def listed(lines: str, more: str = "") -> ListAnswer:
    return answer("list", f"lines={quote(lines)}&{more}")


def test_bracket_of_eight_lines_costs_what_cost_says() -> None:
    """Cost's example is the same eight welds in one line: the same minutes, money, wire, gas."""
    found = answer("list", PAGES["list"].example)
    whole = answer("cost", PAGES["cost"].example)
    assert [t.part for t in found.totals] == pytest.approx([c.part for c in whole.costs])
    assert [t.time_s for t in found.totals] == pytest.approx([c.time_s for c in whole.costs])
    way = whole.ways[0].way
    total = found.totals[0]
    assert (total.wire_kg, total.gas_m3, total.metal_kg, total.arc_s, total.off_s) == pytest.approx(
        (way.bought_kg, way.gas_part_m3, way.metal_kg, way.arc_s, way.off_s)
    )
    assert total.length_m == pytest.approx(48 * 0.0254)


@pytest.mark.parametrize(
    "shop",
    ["", "factor=25%25", "stations=2&load=3min", "stations=2&load=90min", "other=3min&swap=8min",
     "rework=50%25&grind=30min", "shop_rate=80/h&b_wire=E71T-1M&b_gas=75/25&b_spatter=6min",
     "factor=25%25&b_spatter=2min", "c_gas=75/25"],
)  # fmt: skip
def test_one_line_of_eight_is_the_job_of_cost(shop: str) -> None:
    """However the shop counts its minutes; with two stations as well."""
    found = listed(f"all,{BRACKET},8,2F", shop)
    whole = answer("cost", f"leg=5/16in&{shop}")
    assert [t.part for t in found.totals] == pytest.approx([c.part for c in whole.costs])
    assert [t.time_s for t in found.totals] == pytest.approx([c.time_s for c in whole.costs])


def test_totals_are_the_sums_of_the_lines_on_their_own() -> None:
    """Metal, wire, gas, arc time of three different welds, each asked on Cost alone."""
    lines = f"a,{BRACKET},2,2F\nb,lap,10ga,,12in,3,2F,ER70S-6 0.035in,75/25\nc,v,1/2in,,10in,1,1G"
    found = listed(lines)
    alone = [
        answer("cost", "leg=5/16in&welds=2"),
        answer("cost", "joint=lap&plate=10ga&weld_length=12in&welds=3&dia=0.035in&gas=75/25"),
        answer("cost", "joint=v&plate=1/2in&weld_length=10in&welds=1&position=1G"),
    ]
    ways = [each.ways[0].way for each in alone]
    total = found.totals[0]
    assert found.missing == 0
    assert total.metal_kg == pytest.approx(sum(way.metal_kg for way in ways))
    assert total.wire_kg == pytest.approx(sum(way.bought_kg for way in ways))
    assert total.gas_m3 == pytest.approx(sum(way.gas_part_m3 for way in ways))
    assert total.arc_s == pytest.approx(sum(way.arc_s for way in ways))
    # Fit-up 6 min and spatter 4 min stand once, not three times.
    assert total.off_s == pytest.approx(sum(way.off_s for way in ways) - 2 * 10 * 60)
    assert [p.name for p in found.packages] == [
        "ER70S-6 0.045in", "ER70S-6 0.035in", "90/10", "75/25"]  # fmt: skip
    assert found.packages[0].amount == pytest.approx(40 * (ways[0].bought_kg + ways[2].bought_kg))
    heavy, hot = heaviest(found.counted), hottest(found.counted)
    assert heavy is not None
    assert called(heavy) == "c"
    heats = [each.ways[0].dialled.outcome for each in alone]
    assert hot is not None
    outcome = hot.weld.first.dialled.outcome
    assert outcome is not None
    assert max(h.heat.value or 0 for h in heats if h) == pytest.approx(outcome.heat.value)


def test_a_line_that_cannot_be_read_is_kept_with_its_reason_and_the_rest_counts() -> None:
    good = f"a,{BRACKET},1,2F"
    bad = ["b,tee,9zz,,6in", "c,tee,,,6in", "d,tee,3/8in", 'e,"tee', f"f,{BRACKET},1,2F,,,what",
           "g,tee,3/8in,9in,6in", f"h,{BRACKET},0", f"i,{BRACKET},1,5X"]  # fmt: skip
    found = listed("\n".join([good, *bad, good]))
    assert [row.line.typed for row in found.rows] == [good, *bad, good]
    assert [bool(row.wrong) for row in found.rows] == [False, *[True] * 8, False]
    assert found.missing == 8
    assert found.totals == listed(f"{good}\n{good}").totals
    asked = answer_json("list", f"lines={quote(good + chr(10) + bad[0])}")
    assert "not in any total" in asked["notes"][0]["text"]
    reasons = [row.wrong for row in found.rows if row.wrong]
    assert "Bottom plate: “9zz”" in reasons[0]
    assert reasons[1].startswith("The plate is blank")
    assert reasons[2].startswith("The length is blank")
    assert "quote is opened" in reasons[3]
    assert "“what” stands in no column" in reasons[4]


def test_what_another_page_asks_of_its_one_weld_is_not_lent_to_the_list() -> None:
    plain = listed(f"a,{BRACKET}")
    lent = listed(f"a,{BRACKET}", "leg=1/4in&plate=1in&wfs=500in/min&position=3F-up&gap=1/16in")
    assert lent.totals == plain.totals


def test_the_worst_weld_is_told_for_the_machine_and_what_needs_preheat_is_named() -> None:
    found = listed(f"thin,lap,10ga,,6in,1\nthick,tee,2in,5/8in,12in,1\nmore,{BRACKET}")
    worst = {check.key: called(row) for row, check in worst_checks(found.counted)}
    amps = {called(row): row.weld.circuit.load.current_a for row in found.rows if row.weld}
    assert worst["current"] == max(amps, key=lambda name: amps[name])
    told = [note["text"] for note in answer_json("list", urlencode({
        "lines": "thick,tee,2in,5/8in,12in,1\nthin,lap,10ga,,6in,1"}))["notes"]]  # fmt: skip
    [preheat] = [text for text in told if text.startswith("Preheat to")]
    assert preheat.endswith("thick.")


def test_every_weld_that_must_not_be_laid_so_is_named() -> None:
    """A leg of 1/4 in up the edge of a 1/4 in lap melts the edge away: on both of the two."""
    lines = f"one,lap,1/4in,1/4in,4in\ntwo,lap,1/4in,1/4in,9in\nfine,{BRACKET}"
    notes = answer_json("list", f"lines={quote(lines)}")["notes"]
    [stop] = [note["text"] for note in notes if note["level"] == "stop"]
    assert stop.startswith("one, two: ")


def test_the_quote_of_ten_by_hand() -> None:
    """Half an hour at 26 + 34 an hour is 30, 3 a part in ten; a quarter of the price is margin."""
    found = answer("list", PAGES["list"].example)
    one, ten, hundred = found.quotes[0]
    part = found.totals[0].part
    assert (one.parts, ten.parts, hundred.parts) == (1, 10, 100)
    assert (one.cost, ten.cost, hundred.cost) == pytest.approx((part + 30, part + 3, part + 0.3))
    assert ten.price == pytest.approx((part + 3) / 0.75)
    assert ten.batch == pytest.approx(10 * ten.price)


def test_equal_welds_are_answered_once_and_stay_answered_while_another_is_edited() -> None:
    """Fifty equal welds are planned once, and once more with what is done once a part."""
    lines = [f"w{n},{BRACKET}" for n in range(50)]
    with patch("beadwright.weld_list.listed_weld.planned_ways", wraps=planned_ways) as planned:
        listed("\n".join(lines), "waste=7%25")
        assert planned.call_count == 2
        lines[20] = "other,tee,3/8in,5/16in,7in"
        listed("\n".join(lines), "waste=7%25&margin=30%25")
        assert planned.call_count == 4  # the edited weld, and the part


def test_an_empty_list_counts_nothing() -> None:
    found = listed("")
    assert (found.rows, found.totals, found.packages, found.quotes) == ((), (), (), ())
    assert found.order.places == ()
    assert heaviest(found.counted) is None is hottest(found.counted)


def test_a_long_list_is_counted_some_welds_at_a_time_to_the_same_end() -> None:
    lines = "\n".join(f"n{at},tee,3/8in,,{at + 1}.125in" for at in range(7)) + "\nx,tee,9zz,,6in"
    waiting = list[int]()
    found = None
    while found is None or found.waiting:
        with at_most_new(3):
            found = listed(lines)
        waiting.append(found.waiting)
        assert len(found.counted) + found.waiting + found.missing == 8
        assert len(found.in_order) == len(found.counted)
    assert waiting == [5, 2, 0]  # the one that cannot be read waits too, until its turn
    assert found.missing == 1
    whole = listed(lines)
    assert whole.waiting == 0
    assert (whole.totals, whole.order, whole.notes) == (found.totals, found.order, found.notes)


def test_none_may_be_answered_anew_and_then_all_again() -> None:
    with at_most_new(0):
        none = listed("z,tee,3/8in,,6.0625in")
        assert (none.waiting, none.totals) == (1, ())
    assert listed("z,tee,3/8in,,6.0625in").waiting == 0
