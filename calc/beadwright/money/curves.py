"""The year's cost of two ways against parts a year, each with its band."""

from __future__ import annotations

from dataclasses import dataclass
from math import floor, log10

from beadwright.money.break_even import MONTHS_A_YEAR, Case
from beadwright.money.chance import ChanceState
from beadwright.money.cost import part_cost
from beadwright.money.way import Way

STEPS = 24
"""Steps of a curve; the lines are straight, the picture needs no more."""

FARTHEST = 8
"""The crossing is drawn if it is within this many times the shop's own volume."""


@dataclass(frozen=True, slots=True)
class CurvePoint:
    """Cost of a year at a number of parts, what is paid once spread over the months allowed.

    Attributes:
        parts: Parts a year.
        now: Low, cost, high of the way now [money/year].
        other: Low, cost, high of the other way [money/year].
    """

    parts: float
    now: tuple[float, float, float]
    other: tuple[float, float, float]


def curve(case: Case, state: ChanceState, crossing: float | None) -> tuple[CurvePoint, ...]:
    """Return both curves from zero past the shop's own volume and, if near, the crossing.

    Args:
        case: The comparison [-].
        state: The draws, whose costs of a part are the bands [-].
        crossing: Parts a year where they meet, or None [1/year].
    """
    here = (part_cost(case.now, case.rates), part_cost(case.other, case.rates))
    last = _last(case.parts, crossing)
    points: list[CurvePoint] = []
    for step in range(STEPS + 1):
        parts = last * step / STEPS
        points.append(
            CurvePoint(
                parts,
                _ends(parts, _around(here[0], state.now), _fixed(case.now, case.months)),
                _ends(parts, _around(here[1], state.other), _fixed(case.other, case.months)),
            )
        )
    return tuple(points)


def _fixed(way: Way, months: float) -> float:
    return way.yearly + way.once * MONTHS_A_YEAR / months


def _around(cost: float, ends: tuple[float, float]) -> tuple[float, float, float]:
    """A cost within its band, which may lie all on one side: welds are only ever heavier."""
    return min(ends[0], cost), cost, max(ends[1], cost)


def _ends(
    parts: float, costs: tuple[float, float, float], fixed: float
) -> tuple[float, float, float]:
    low, middle, high = (parts * cost + fixed for cost in costs)
    return low, middle, high


def _last(parts: float, crossing: float | None) -> float:
    """A round number beyond all that must be shown."""
    reach = max(parts, 1.0)
    if crossing is not None and crossing <= FARTHEST * reach:
        reach = max(reach, crossing)
    wanted = 1.5 * reach
    ten = 10.0 ** floor(log10(wanted))
    return next(ten * step for step in (1, 1.5, 2, 3, 4, 5, 6, 8, 10) if ten * step >= wanted)
