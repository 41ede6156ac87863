"""What the answer depends on: each input's swing, longest first."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Any, Literal

from beadwright.money.break_even import Case
from beadwright.money.way import Rates, Way
from beadwright.phrases import Phrase

Part = Literal["rates", "now", "other", "case"]

MOST: Mapping[str, float] = MappingProxyType({"efficiency": 1.0, "rework": 1.0})
"""No factor lays more than is melted, or welds more than every part again [-]."""

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
    if all(getattr(way, name) <= most for name, most in MOST.items()):
        return way
    return replace(way, **{name: min(getattr(way, name), most) for name, most in MOST.items()})


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
