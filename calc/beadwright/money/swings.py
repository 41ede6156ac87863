"""What the answer depends on: each input's swing, longest first."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import repeat
from types import MappingProxyType
from typing import Literal

from beadwright.money.break_even import MONTHS_A_YEAR, Case
from beadwright.money.cost import UNSURE, hourly, part_costs
from beadwright.money.way import Rates, Way
from beadwright.phrases import Phrase

Part = Literal["rates", "now", "other", "case"]

MOST: Mapping[str, float] = MappingProxyType({"efficiency": 1.0, "rework": 1.0})
"""No factor lays more than is melted, or welds more than every part again [-]."""


@dataclass(frozen=True, slots=True)
class Lever:
    """An input that is not known for sure, as a factor on what was taken for it.

    Attributes:
        key: Its id.
        name: What it is.
        targets: The fields it moves.
        low: Least factor [-].
        high: Largest factor [-].
        measure: Kind of quantity.
        value: What was taken [SI].
        bench: True if a coupon can show it.
        settle: What to do to find it out, in the imperative.
    """

    key: str
    name: Phrase
    targets: tuple[tuple[Part, str], ...]
    low: float
    high: float
    measure: str
    value: float
    bench: bool
    settle: Phrase


@dataclass(frozen=True, slots=True)
class Swing:
    """The effect of one lever.

    Attributes:
        lever: The lever.
        at_low: Net saving a year with the lever low [money/year].
        at_high: The same with it high [money/year].
    """

    lever: Lever
    at_low: float
    at_high: float

    @property
    def width(self) -> float:
        """Distance between the ends [money/year]."""
        return abs(self.at_high - self.at_low)

    @property
    def turns(self) -> bool:
        """True if one end saves and the other loses."""
        return min(self.at_low, self.at_high) < 0 <= max(self.at_low, self.at_high)


@dataclass(frozen=True, slots=True)
class Moved:
    """A comparison with its unsure figures moved, a number for each move.

    Attributes:
        now: Cost of a part as now [money].
        other: Cost of a part the other way [money].
        net: Net saving [money/year].
    """

    now: list[float]
    other: list[float]
    net: list[float]


type _Columns = Mapping[tuple[Part, str], list[float]]
"""Figures that move, by whose they are and their name: a number for each move."""


def moved_costs(
    case: Case, levers: Sequence[Lever], factors: Sequence[Sequence[float]], moves: int
) -> Moved:
    """Return what a comparison comes to for each move of its unsure figures.

    Args:
        case: The comparison [-].
        levers: What is not known for sure [-].
        factors: For each lever its factor in every move [-].
        moves: How many moves [-].
    """
    columns = _columns(case, levers, factors)
    rates = case.rates
    now = part_costs(case.now, rates, _rows(rates, case.now, "now", columns, moves))
    other = part_costs(case.other, rates, _rows(rates, case.other, "other", columns, moves))
    parts = columns.get(("case", "parts")) or [case.parts] * moves
    once = columns.get(("other", "once")) or [case.other.once] * moves
    net = [
        (before - after) * count
        - (case.yearly + (paid - case.now.once) * MONTHS_A_YEAR / case.months)
        for before, after, count, paid in zip(now, other, parts, once, strict=True)
    ]
    return Moved(now, other, net)


def _columns(case: Case, levers: Sequence[Lever], factors: Sequence[Sequence[float]]) -> _Columns:
    """Each figure that a lever moves, times its levers' factors, held to what can be."""
    holders: dict[Part, Rates | Way | Case] = {
        "rates": case.rates, "now": case.now, "other": case.other, "case": case,
    }  # fmt: skip
    found: dict[tuple[Part, str], list[float]] = {}
    for lever, column in zip(levers, factors, strict=True):
        for target in lever.targets:
            if target in found:
                pairs = zip(found[target], column, strict=True)
                found[target] = [value * factor for value, factor in pairs]
            elif value := getattr(holders[target[0]], target[1]):  # nothing stays nothing
                found[target] = [value * factor for factor in column]
    for (_, name), values in found.items():
        if name in MOST:
            most = MOST[name]
            values[:] = [value if value < most else most for value in values]
    return found


def _rows(
    rates: Rates, way: Way, part: Part, columns: _Columns, moves: int
) -> Iterable[tuple[float, ...]]:
    """The rows that ``part_costs`` takes; a way's own rate stands in for both of the shop's."""
    rated, (labor, overhead) = way.rate_s is not None, hourly(way, rates)

    def column(whose: Part, name: str, value: float) -> Iterable[float]:
        return columns.get((whose, name)) or repeat(value, moves)

    return zip(
        column(part, "rate_s", labor) if rated else column("rates", "labor_s", labor),
        repeat(overhead, moves) if rated else column("rates", "overhead_s", overhead),
        *(column(part, name, getattr(way, name)) for name in UNSURE),
        strict=True,
    )


def swings(case: Case, levers: Sequence[Lever]) -> tuple[Swing, ...]:
    """Return each lever's swing of the net saving, longest first.

    Args:
        case: The case [-].
        levers: What is not known for sure [-].
    """
    moves = 2 * len(levers)
    factors = [[1.0] * moves for _ in levers]
    for index, lever in enumerate(levers):
        factors[index][2 * index : 2 * index + 2] = lever.low, lever.high
    net = moved_costs(case, levers, factors, moves).net
    found = (Swing(lever, *net[2 * i : 2 * i + 2]) for i, lever in enumerate(levers))
    return tuple(sorted(found, key=lambda swing: -swing.width))
