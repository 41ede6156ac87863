"""Where two ways meet: at each break-even they cost the same, to a cent."""

from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from beadwright.api import answer, answer_json
from beadwright.errors import OutOfRangeError, UnknownEntryError
from beadwright.money.break_even import (
    Case,
    at_laid,
    break_even,
    highest_price,
    least_laid,
    months_to_pay,
    parts_to_break_even,
    parts_to_pay,
)
from beadwright.money.chance import Chance
from beadwright.money.cost import part_cost
from beadwright.money.cost_page import CostAnswer, start_chance
from tests.calc.ways import MB3, RATES, WAYS
from tests.told import in_words

CENT = 0.01
CASES = st.builds(
    Case,
    rates=RATES,
    now=WAYS,
    other=WAYS,
    parts=st.integers(0, 10**6),
    months=st.integers(1, 240),
)


def compare(query: str = "") -> CostAnswer:
    return answer("cost", f"{MB3}&{query}")


@given(CASES)
def test_at_the_highest_price_a_part_costs_the_same(case: Case) -> None:
    price = highest_price(case, 0.0)
    assume(price is not None)
    assert price is not None
    there = replace(case, other=replace(case.other, wire_kg=price))
    assert there.part_saving == pytest.approx(0, abs=CENT)


@given(CASES)
def test_at_the_price_that_carries_everything_a_year_costs_the_same(case: Case) -> None:
    assume(case.parts > 0)
    price = break_even(case).price_paid_back
    assume(price is not None)
    assert price is not None
    there = replace(case, other=replace(case.other, wire_kg=price))
    assert there.net_saving == pytest.approx(0, abs=CENT + 1e-9 * abs(case.net_saving))


@given(CASES)
def test_at_the_least_laid_a_part_costs_the_same(case: Case) -> None:
    laid = least_laid(case, 0.0)
    assume(laid is not None and laid < 1e3)
    assert laid is not None
    there = replace(case, other=at_laid(case.other, laid))
    assert there.part_saving == pytest.approx(0, abs=CENT)


@given(CASES)
def test_at_the_parts_of_break_even_a_year_costs_the_same(case: Case) -> None:
    parts = break_even(case).parts_a_year
    assume(parts is not None)
    assert parts is not None
    assert parts >= 0
    there = replace(case, parts=parts)
    assert there.net_saving == pytest.approx(0, abs=CENT + 1e-9 * abs(case.to_carry))


@given(CASES)
def test_the_crossing_says_on_which_side_it_pays(case: Case) -> None:
    found = break_even(case)
    middle = found.parts_a_year
    sides = {"above": (False, True), "below": (True, False),
             "always": (True, True), "never": (False, False)}[found.crossing]  # fmt: skip
    low, high = (0.5, 2.0) if middle is None else (middle * 0.5, middle * 2)
    if middle is not None and middle < 1e-6:
        return
    slack = 1e-9 * (1 + abs(case.to_carry))
    for pays, parts in zip(sides, (low, high), strict=True):
        net = replace(case, parts=parts).net_saving
        assert net >= -slack if pays else net <= slack


@given(CASES)
def test_after_the_months_to_pay_what_was_paid_is_back(case: Case) -> None:
    months = months_to_pay(case.once, case.year_saving)
    assume(months is not None and case.once > 0)
    assert months is not None
    assert case.year_saving * months / 12 == pytest.approx(case.once)


@pytest.mark.parametrize(
    ("saving", "carry", "expected"),
    [
        (2.0, 100.0, ("above", 50.0)),
        (2.0, 0.0, ("always", None)),
        (0.0, 0.0, ("never", None)),
        (0.0, -1.0, ("always", None)),
        (-2.0, 100.0, ("never", None)),
        (-2.0, -100.0, ("below", 50.0)),
    ],
)
def test_crossings(saving: float, carry: float, expected: tuple[str, float | None]) -> None:
    assert parts_to_break_even(saving, carry) == expected


def test_what_never_comes_back() -> None:
    assert months_to_pay(100.0, 0.0) is None
    assert months_to_pay(0.0, -1.0) is None
    assert parts_to_pay(100.0, -1.0) is None
    assert parts_to_pay(0.0, 1.0) == 0.0


# Common practice: a third more per pound against a third more laid an hour.
THIRD = (
    "wire_price=2.10/lb&b_wire_price=2.80/lb&laid=9lb/h&b_laid=12lb/h"
    "&spatter=2min&b_spatter=2min&b_rolls=0&b_liner=0&b_procedure=0&b_training=0"
)


def test_a_third_more_laid_carries_a_third_more_a_pound_where_labor_counts() -> None:
    found = compare(f"{THIRD}&labour=26/h&overhead=34/h").comparisons[0]
    assert found.case.part_saving > 0
    assert found.case.net_saving > 0
    assert found.verdict.word in ("pays", "probably pays")


def test_a_third_more_a_pound_does_not_pay_for_whom_time_is_free() -> None:
    found = compare(f"{THIRD}&labour=0/h&overhead=0/h").comparisons[0]
    assert found.case.part_saving < 0
    assert found.verdict.word == "does not pay"
    assert "priced at zero" in in_words(found.sentences["laid"])


CLOSE = "spatter=2min&b_spatter=1min"
"""One minute of spatter, and what metal-cored wire lays more, against a dearer wire."""


def test_pays_does_not_pay_and_neither() -> None:
    assert compare("b_laid=20lb/h&laid=8lb/h").comparisons[0].verdict.word == "pays"
    assert compare("b_wire_price=40/lb").comparisons[0].verdict.word == "does not pay"
    close = compare(CLOSE).comparisons[0]
    assert close.verdict.word not in ("pays", "does not pay")
    assert in_words(close.verdict.settle).endswith(".")


def test_the_same_way_twice_is_called_so_and_gets_no_verdict() -> None:
    found = compare("b_wire=ER70S-6").comparisons[0]
    assert found.case.part_saving == 0
    assert found.verdict.word == "same"
    assert in_words(found.verdict.headline) == "Both ways come to the same"
    assert found.verdict.hangs_on == ()


ODD = [
    "parts=0", "labour=0&overhead=0", "wire_price=0&b_wire_price=0", "b_wire_price=0",
    "labour=0&overhead=0&wire_price=0&b_wire_price=0&gas_price=0&energy_price=0&tip_price=0"
    "&nozzle_price=0", "parts=0&labour=0&overhead=0", "spool=2000lb&parts=1", "rework=100%25",
    "b_procedure=1000000000", "b_yearly=1000000", "yearly=1000000", "parts=100000000",
    "swing_rates=0%25&swing_prices=0%25&swing_feed=0%25&swing_minutes=0%25&swing_volume=0%25"
    "&swing_once=0%25&swing_size=0%25", "welds=1&weld_length=1/4in", "waste=50%25",
    "fit_up=0&reposition=0&clean=0&spatter=0&b_spatter=0&spool_change=0",
]  # fmt: skip


@pytest.mark.parametrize("query", ODD)
def test_odd_figures_give_sentences_not_infinities(query: str) -> None:
    found = compare(query)
    report = answer_json("cost", f"{MB3}&{query}")
    text = str(report)
    assert "errors" not in report
    assert "inf" not in text.replace("information", "")
    assert "nan" not in text.lower()
    for sentence in map(in_words, found.comparisons[0].sentences.values()):
        assert sentence[0].isupper() or not sentence[0].isalpha()
        assert sentence.endswith(".")


def test_zero_volume_says_nothing_pays_back() -> None:
    found = compare("parts=0").comparisons[0]
    assert found.verdict.word == "none"
    assert in_words(found.sentences["months"]) == "No payback at zero parts a year."


def test_swings_stand_longest_first_and_the_draws_hold_the_answer() -> None:
    found = compare().comparisons[0]
    widths = [swing.width for swing in found.swings]
    assert widths == sorted(widths, reverse=True)
    assert found.chance.low < found.case.net_saving < found.chance.high


def test_a_lever_that_is_sure_is_no_lever() -> None:
    keys = {lever.key for lever in compare("swing_rates=0%25").comparisons[0].levers}
    assert not keys & {"labour", "overhead"}


def test_volume_swings_both_ways() -> None:
    found = compare("laid=8lb/h&b_laid=14lb/h").comparisons[0]
    parts = next(swing for swing in found.swings if swing.lever.key == "parts")
    assert parts.at_low < found.case.net_saving < parts.at_high


def test_the_same_seed_gives_the_same_chance_in_any_chunks() -> None:
    found = compare().comparisons[0]
    whole = Chance(found.case, found.levers, 7, 500).run(500)
    run = Chance(found.case, found.levers, 7, 500)
    states = [run.run(chunk) for chunk in (1, 99, 250, 400)]
    assert [state.done for state in states] == [1, 100, 350, 500]
    assert states[-1] == whole
    assert whole.finished
    assert not states[0].finished
    assert sum(count for _, _, count in whole.bars) == 500
    assert Chance(found.case, found.levers, 8, 500).run(500) != whole


def test_the_chance_of_a_sure_and_of_a_close_call() -> None:
    sure = compare("b_laid=20lb/h&laid=8lb/h").comparisons[0]
    assert Chance(sure.case, sure.levers, 1, 400).run(400).pays == 1.0
    lost = compare("b_wire_price=40/lb").comparisons[0]
    assert Chance(lost.case, lost.levers, 1, 400).run(400).pays == 0.0
    close = compare(CLOSE).comparisons[0]
    state = Chance(close.case, close.levers, 1, 400).run(400)
    assert 0 < state.pays < 1
    assert state.low < state.middle < state.high


def test_a_query_can_ask_for_the_chance() -> None:
    assert answer_json("cost", MB3)["answer"]["comparisons"][0]["chance"]["done"] == 400
    found = answer_json("cost", f"{MB3}&draws=300&seed=3")["answer"]["comparisons"][0]["chance"]
    assert found["done"] == 300
    run = start_chance(compare("draws=300&seed=3"))
    assert run.run(300).pays == pytest.approx(found["pays"])


def test_there_is_no_run_for_a_way_that_is_not_there() -> None:
    with pytest.raises(UnknownEntryError, match="no way 2"):
        start_chance(compare(), 2)
    found = compare().comparisons[0]
    with pytest.raises(OutOfRangeError, match="draws"):
        Chance(found.case, found.levers, 1, 0)


def test_curves_pass_through_the_shops_own_point_and_the_crossing() -> None:
    found = compare().comparisons[0]
    case, points = found.case, found.curve
    first, last = points[0], points[-1]
    assert first.parts == 0
    assert first.other[1] == pytest.approx(case.other.once)
    assert last.parts >= max(case.parts, found.break_even.parts_a_year or 0)
    for point in points:
        assert point.now[0] <= point.now[1] <= point.now[2]
        assert point.other[0] <= point.other[1] <= point.other[2]
        gap = point.now[1] - point.other[1]
        assert gap == pytest.approx(replace(case, parts=point.parts).net_saving, abs=1e-6)


def test_part_cost_drives_the_case() -> None:
    case = compare().comparisons[0].case
    assert case.part_saving == part_cost(case.now, case.rates) - part_cost(case.other, case.rates)
