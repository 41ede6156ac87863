"""The odds against a sampler of its own, in pounds, minutes and dollars, from the stated ranges.

The sampler knows nothing of the core: each cost is the handbook's sum, each unsure figure a
triangle between the ends the page states with what was typed as its peak. What both ways share is
drawn once.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np
import pytest
from numpy.typing import NDArray

from beadwright.api import answer
from beadwright.money.chance import Chance, ChanceState
from beadwright.money.cost_page import start_chance
from beadwright.money.swings import Lever
from beadwright.phrases import Phrase
from tests.calc.plain_way import ten_against_eight, wire_alone
from tests.calc.worked_money import COST_QUERY

DRAWS, OURS = 400_000, 20_000
Draws = NDArray[np.float64]


def unsure(random: np.random.Generator, low: float, high: float) -> Draws:
    """Draw a factor between two ends, most often one."""
    return random.triangular(low, 1.0, high, DRAWS)


def either_way(random: np.random.Generator, share: float) -> Draws:
    return unsure(random, 1 - share, 1 + share)


def by_factor(seed: int) -> Draws:
    """``COST_QUERY`` at 3.00 a pound: saved a year of 1000 parts, 100 paid once.

    Both ways: 1 lb of weld, 6 min off the arc, gas 30 ft³/h at 0.10. Now 10 lb/h, 90 %, 1.80; other
    15 lb/h, 80 %, 3.00. Both rates measured, to 2 %; flow to 15 %.
    """
    random = np.random.default_rng(seed)
    labor, overhead = 30 * either_way(random, 0.10), 20 * either_way(random, 0.10)
    off_h = 6 / 60 * either_way(random, 0.15)
    gas_h = 30 * either_way(random, 0.15) * 0.10 * either_way(random, 0.05)
    pounds = 1.0 * unsure(random, 1.0, 1.10)

    def part(laid: float, efficiency: float, price: float) -> Draws:
        arc_h = pounds / (laid * either_way(random, 0.02))
        wire = pounds / efficiency * price * either_way(random, 0.05)
        return (labor + overhead) * (arc_h + off_h) + wire + gas_h * arc_h

    saved = part(10, 0.90, 1.80) - part(15, 0.80, 3.00)
    return saved * 1000 * either_way(random, 0.25) - 100 * either_way(random, 0.25)


MINUTES_QUERY = (
    "plate=3/8in&leg=5/16in&parts=700&arc_min=6min&laid=10lb/h&efficiency=95%"
    "&gas_flow=40ft3/h&gas_extra=0s&waste=0%&rework=4%&grind=10min&wire_price=2/lb&gas_price=.12/ft3"
    "&labour=25/h&overhead=35/h&energy_price=0&tip_price=0&nozzle_price=0&fit_up=5min"
    "&reposition=0min&clean=0min&spatter=3min&spool_change=0min"
    "&b_wire=E70C-6M&b_arc_min=5min&b_laid=12lb/h&b_efficiency=90%&b_wire_price=2.80/lb"
    "&b_spatter=2.4min&b_rolls=60&b_liner=40&b_procedure=500&b_training=100&months=24"
)


def by_minutes(seed: int) -> Draws:
    """``MINUTES_QUERY``: 4 % of the parts ground out for 10 min, welded again; 700 in 2 years."""
    random = np.random.default_rng(seed)
    hour = 25 * either_way(random, 0.10) + 35 * either_way(random, 0.10)
    fit_up_h = 5 / 60 * either_way(random, 0.15)
    gas_h = 40 * either_way(random, 0.15) * 0.12 * either_way(random, 0.05)
    pounds = 1.0 * unsure(random, 1.0, 1.10)
    again = 0.04 * unsure(random, 0.0, 2.0)

    def part(laid: float, efficiency: float, price: float, spatter_min: float) -> Draws:
        arc_h = pounds / (laid * either_way(random, 0.02))
        off_h = fit_up_h + spatter_min / 60 * either_way(random, 0.30)
        wire = pounds / efficiency * price * either_way(random, 0.05)
        once = hour * (arc_h + off_h) + wire + gas_h * arc_h
        return once + again * (once + hour * 10 / 60)

    saved = part(10, 0.95, 2.00, 3.0) - part(12, 0.90, 2.80, 2.4)
    return saved * 700 * either_way(random, 0.25) - 700 * either_way(random, 0.25) / 2


@dataclass(frozen=True)
class Sampled:
    """A query and its sampler."""

    query: str
    sampler: Callable[[int], Draws]


CASES = (
    Sampled(COST_QUERY.replace("b_wire_price=2.40", "b_wire_price=3.00"), by_factor),
    Sampled(MINUTES_QUERY, by_minutes),
)


def ours(query: str) -> ChanceState:
    return start_chance(answer("cost", query), draws=OURS).run(OURS)


@pytest.mark.parametrize("case", CASES, ids=("factor", "minutes"))
def test_the_draws_are_those_of_an_independent_sampler(case: Sampled) -> None:
    """To three times the scatter of 20 000 draws."""
    found, drawn = ours(case.query), case.sampler(1)
    pays, spread = float((drawn > 0).mean()), float(drawn.std())
    assert 0.05 < pays < 0.95  # else nothing is tested
    assert found.pays == pytest.approx(pays, abs=3 * (pays * (1 - pays) / OURS) ** 0.5)
    assert found.mean == pytest.approx(float(drawn.mean()), abs=3 * spread / OURS**0.5)
    assert found.spread == pytest.approx(spread, rel=0.02)
    for ends, share in ((found.low, 10), (found.middle, 50), (found.high, 90)):
        assert ends == pytest.approx(float(np.percentile(drawn, share)), abs=0.03 * spread)


@pytest.mark.parametrize("case", CASES, ids=("factor", "minutes"))
def test_what_both_ways_share_moves_together(case: Sampled) -> None:
    """Drawn apart for each way, what they share would spread the saving over half as much again."""
    answered = answer("cost", case.query).comparisons[0]
    apart = [lever for lever in answered.levers if len({part for part, _ in lever.targets}) == 1]
    shared = [lever for lever in answered.levers if lever not in apart]
    assert shared
    alone = Chance(answered.case, shared, 1, 4000).run(4000)
    everything = Chance(answered.case, answered.levers, 1, 4000).run(4000)
    # Both ways cost some 13 to 15 a part; shared figures move each by a tenth, the difference less.
    each = (alone.now[1] - alone.now[0]) / 2.56 * answered.case.parts
    assert alone.spread < 0.35 * each
    assert alone.spread < everything.spread


@pytest.mark.parametrize("at", [0.6, 0.8, 0.95, 0.99, 1.05])
def test_a_lopsided_figure_is_drawn_from_its_triangle(at: float) -> None:
    """A wire of 10, half off at the least and a tenth over at the most, against one of 10 × at.

    Under the peak a share (at − 0.5)² / (0.6 × 0.5) lies below, over it (1.1 − at)² / (0.6 × 0.1)
    above.
    """
    now = Lever("x", Phrase("x"), (("now", "wire_kg"),), 0.5, 1.1, "count", 1.0, False, Phrase("x"))
    case = replace(ten_against_eight(), other=wire_alone("other", 10 * at))
    over = (1.1 - at) ** 2 / 0.06 if at > 1 else 1 - (at - 0.5) ** 2 / 0.3
    pays = Chance(case, [now], 1, OURS).run(OURS).pays
    assert pays == pytest.approx(over, abs=3 * (over * (1 - over) / OURS) ** 0.5)
