"""What the answer depends on: each input's swing, longest first."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from math import sqrt
from typing import Any, Literal

from beadwright.money.break_even import Case
from beadwright.money.cost import part_cost
from beadwright.money.way import Rates, Way
from beadwright.phrases import Phrase

Part = Literal["rates", "now", "other", "case"]

Factors = Mapping[tuple[Part, str], float]
"""What to multiply each field by."""


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
        low: The case with the lever low.
        high: The case with it high.
    """

    lever: Lever
    low: Case
    high: Case

    @property
    def at_low(self) -> float:
        """Net saving a year with the lever low [money/year]."""
        return self.low.net_saving

    @property
    def at_high(self) -> float:
        """Net saving a year with the lever high [money/year]."""
        return self.high.net_saving

    @property
    def width(self) -> float:
        """Distance between the ends [money/year]."""
        return abs(self.at_high - self.at_low)

    @property
    def turns(self) -> bool:
        """True if one end saves and the other loses."""
        return min(self.at_low, self.at_high) < 0 <= max(self.at_low, self.at_high)


def moved(case: Case, factors: Factors) -> Case:
    """Return a case with fields multiplied.

    Args:
        case: The case [-].
        factors: Factor by part and field [-].
    """
    changes: dict[Part, dict[str, Any]] = {"rates": {}, "now": {}, "other": {}, "case": {}}
    parts: dict[Part, Rates | Way | Case] = {
        "rates": case.rates, "now": case.now, "other": case.other, "case": case,
    }  # fmt: skip
    for (part, field), factor in factors.items():
        changes[part][field] = getattr(parts[part], field) * factor
    return Case(
        replace(case.rates, **changes["rates"]) if changes["rates"] else case.rates,
        _held(replace(case.now, **changes["now"])) if changes["now"] else case.now,
        _held(replace(case.other, **changes["other"])) if changes["other"] else case.other,
        changes["case"].get("parts", case.parts),
        case.months,
    )


def _held(way: Way) -> Way:
    """No factor may lay more than is melted, or rework more than every part."""
    if way.efficiency <= 1 and way.rework <= 1:
        return way
    return replace(way, efficiency=min(way.efficiency, 1.0), rework=min(way.rework, 1.0))


def factors_of(lever: Lever, factor: float) -> dict[tuple[Part, str], float]:
    """Return the factors that set one lever."""
    return dict.fromkeys(lever.targets, factor)


def swings(case: Case, levers: Iterable[Lever]) -> tuple[Swing, ...]:
    """Return each lever's swing of the net saving, longest first.

    Args:
        case: The case [-].
        levers: What is not known for sure [-].
    """
    found = [
        Swing(
            lever,
            moved(case, factors_of(lever, lever.low)),
            moved(case, factors_of(lever, lever.high)),
        )
        for lever in levers
    ]
    return tuple(sorted(found, key=lambda swing: -swing.width))


def net_band(case: Case, found: Iterable[Swing]) -> tuple[float, float]:
    """Return low and high of the net saving with every lever uncertain [money/year].

    Source: root of the sum of squares of the swings each way; holds for independent levers.

    Args:
        case: The case [-].
        found: Its swings [-].
    """
    here = case.net_saving
    ends = [(swing.at_low - here, swing.at_high - here) for swing in found]
    return here - _together(ends, -1), here + _together(ends, 1)


def cost_bands(case: Case, found: Iterable[Swing]) -> tuple[tuple[float, float], ...]:
    """Return low and high cost of a part, for the way now and the other [money].

    Args:
        case: The case [-].
        found: Its swings [-].
    """
    here = _part_costs(case)
    ends: tuple[list[tuple[float, float]], ...] = ([], [])
    for swing in found:
        low, high = _part_costs(swing.low), _part_costs(swing.high)
        for which, side in enumerate(ends):
            side.append((low[which] - here[which], high[which] - here[which]))
    return tuple(
        (cost - _together(side, -1), cost + _together(side, 1))
        for cost, side in zip(here, ends, strict=True)
    )


def _part_costs(case: Case) -> tuple[float, float]:
    return part_cost(case.now, case.rates), part_cost(case.other, case.rates)


def _together(ends: Iterable[tuple[float, float]], sign: int) -> float:
    """Root of the sum of squares of the ends on one side."""
    return sqrt(sum(max(0.0, sign * low, sign * high) ** 2 for low, high in ends))
