"""The second way is never the first: its wire, size, gas and figures where none are written."""

import pytest

from beadwright.api import answer, answer_json
from beadwright.money.cost_page import CostAnswer
from tests.told import in_words


def cost(query: str) -> CostAnswer:
    return answer("cost", query)


def wires(found: CostAnswer) -> list[tuple[str, str, str]]:
    jobs = (way.dialled.job for way in found.ways)
    return [(job.wire.type.name, job.wire.size, job.gas.name) for job in jobs]


LB = 0.45359237


@pytest.mark.parametrize(
    ("query", "second"),
    [
        ("plate=3/8in", ("E70C-6M", "0.045in", "90/10")),
        ("plate=3/8in&wire=E70C-6M", ("ER70S-6", "0.045in", "90/10")),
        ("plate=3/8in&wire=e80c-ni1", ("ER70S-6", "0.045in", "90/10")),
        # Metal-cored is not made in 0.030 in, nor for CO2.
        ("plate=1/8in&dia=0.030in&gas=75/25", ("E70C-6M", "0.035in", "75/25")),
        ("plate=1/4in&dia=0.035in&gas=CO2", ("E70C-6M", "0.035in", "90/10")),
        ("plate=3/8in&wire=E71T-1C&gas=CO2", ("E70C-6M", "0.045in", "90/10")),
        ("plate=1/8in&dia=0.030in&gas=75/25&b_dia=0.040in", ("E70C-6M", "0.040in", "75/25")),
        ("plate=3/8in&b_wire=ER70S-3", ("ER70S-3", "0.045in", "90/10")),
    ],
)
def test_the_second_wire_where_none_is_written(query: str, second: tuple[str, str, str]) -> None:
    found = wires(cost(query))
    assert found[1] == second
    assert found[0] != found[1]


def test_from_metal_cored_the_figures_go_with_the_wire() -> None:
    """The invented prices: metal-cored 2.80 a pound and 1 min of spatter, solid 2.10 and 4 min."""
    there, back = cost("plate=3/8in"), cost("plate=3/8in&wire=E70C-6M")
    for found, prices, spatter in ((there, (2.10, 2.80), (4, 1)), (back, (2.80, 2.10), (1, 4))):
        ways = [each.way for each in found.costs]
        assert [way.wire_kg * LB for way in ways] == pytest.approx(prices)
        assert [way.spatter_s / 60 for way in ways] == pytest.approx(spatter)
    assert back.comparisons[0].case.part_saving == pytest.approx(
        -there.comparisons[0].case.part_saving, rel=0.02
    )
    assert back.comparisons[0].verdict.word == "does not pay"


@pytest.mark.parametrize(
    "query",
    [
        "plate=3/8in&wire=E70C-6M&b_wire=e70c-6m",
        "plate=3/8in&b_wire=ER70S-6",
        "plate=3/8in&wire=ER70S-3&b_wire=ER70S-3&b_name=Another",
    ],
)
def test_two_equal_ways_get_no_verdict(query: str) -> None:
    found = cost(query).comparisons[0]
    assert found.verdict.word == "same"
    assert in_words(found.verdict.headline) == "Both ways come to the same"
    assert "Type what is different" in in_words(found.verdict.reason)
    assert found.verdict.settle is None
    assert found.case.once == 0


def test_a_price_apart_is_a_difference() -> None:
    found = cost("plate=3/8in&b_wire=ER70S-6&b_wire_price=1.90/lb&parts=5000").comparisons[0]
    assert found.verdict.word == "pays"


def test_another_gas_brings_what_changing_it_costs() -> None:
    """Invented: 160. Also where the second wire brings the gas itself."""
    for query in ("plate=3/8in&b_gas=85/15", "plate=1/4in&dia=0.035in&gas=CO2"):
        assert dict(cost(query).ways[1].once)["gas_change"] == 160
    assert dict(cost("plate=3/8in").ways[1].once)["gas_change"] == 0


def test_a_gas_or_size_that_is_none_is_refused_at_its_own_entry() -> None:
    for key in ("gas", "dia", "wire"):
        assert set(answer_json("cost", f"{key}=nonsense")["errors"]) == {key}


def test_what_both_ways_have_alike_is_one_lever() -> None:
    def keys(query: str) -> set[str]:
        return {lever.key for lever in cost(query).comparisons[0].levers}

    gas_alone = keys("plate=3/8in&b_wire=ER70S-6&b_gas=85/15")
    assert {"price", "laid", "spatter"} <= gas_alone
    assert not {"now_spatter", "other_spatter", "now_price", "other_laid"} & gas_alone
    wires = keys("plate=3/8in")
    assert {"now_price", "other_price", "now_laid", "other_laid", "now_spatter"} <= wires
    alike = keys("plate=3/8in&spatter=2min&b_spatter=2min")
    assert "spatter" in alike
    assert {"now_laid", "other_laid"} <= alike
    weighed = keys("plate=3/8in&b_wire=ER70S-6&b_gas=85/15&laid=9lb/h&b_laid=9.5lb/h")
    assert {"now_laid", "other_laid"} <= weighed
