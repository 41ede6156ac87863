"""Where two ways cost the same: parts, months, price of wire, laid metal."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

from beadwright.money.cost import part_cost
from beadwright.money.way import Rates, Way

Crossing = Literal["above", "below", "always", "never"]
"""When the other way is cheaper: above a number of parts a year, below it, always, or never."""

MONTHS_A_YEAR = 12


@dataclass(frozen=True, slots=True)
class Case:
    """Two ways compared with each other.

    Attributes:
        rates: What the shop pays in both.
        now: What the shop does now.
        other: The way it thinks of.
        parts: Parts a year, zero or more [1/year].
        months: Months within which what is paid once must come back, above zero [-].
    """

    rates: Rates
    now: Way
    other: Way
    parts: float
    months: float

    @property
    def alike(self) -> bool:
        """True if the two ways are the same but for their names."""
        return self.now == replace(self.other, name=self.now.name)

    @property
    def part_saving(self) -> float:
        """Saved on each part by the other way; below zero it costs more [money]."""
        return part_cost(self.now, self.rates) - part_cost(self.other, self.rates)

    @property
    def once(self) -> float:
        """Paid once for the change [money]."""
        return self.other.once - self.now.once

    @property
    def yearly(self) -> float:
        """Paid more by the year for the other way [money]."""
        return self.other.yearly - self.now.yearly

    @property
    def to_carry(self) -> float:
        """What a year's parts must save to pay the change back in time [money/year]."""
        return self.yearly + self.once * MONTHS_A_YEAR / self.months

    @property
    def year_saving(self) -> float:
        """Saved a year, before what is paid once [money/year]."""
        return self.part_saving * self.parts - self.yearly

    @property
    def net_saving(self) -> float:
        """Saved a year, what is paid once spread over the months allowed [money/year]."""
        return self.part_saving * self.parts - self.to_carry


@dataclass(frozen=True, slots=True)
class BreakEven:
    """Where the two ways meet; None where they do not.

    Attributes:
        crossing: On which side the other way is the cheaper.
        parts_a_year: Parts a year at which both cost the same [1/year].
        months: Months until what is paid once has come back at this volume [-].
        parts_to_pay: Parts until then [-].
        price: Price of the other wire at which running costs are the same [money/kg].
        price_paid_back: The same, with what is paid once and by the year carried [money/kg].
        laid: Least the other way must lay for its wire's price [kg/s].
        gain: That over what is laid now, less one [-].
    """

    crossing: Crossing
    parts_a_year: float | None
    months: float | None
    parts_to_pay: float | None
    price: float | None
    price_paid_back: float | None
    laid: float | None
    gain: float | None


def break_even(case: Case) -> BreakEven:
    """Return where the two ways of a case cost the same.

    Source: cost equations of ``cost.cost_of``, which are linear in parts, in the price of wire and
    in arc time; solved, not searched.

    Args:
        case: The two ways [-].
    """
    crossing, parts = parts_to_break_even(case.part_saving, case.to_carry)
    target = case.to_carry / case.parts if case.parts > 0 else None
    laid = least_laid(case, 0.0 if target is None else target)
    return BreakEven(
        crossing=crossing,
        parts_a_year=parts,
        months=months_to_pay(case.once, case.year_saving),
        parts_to_pay=parts_to_pay(case.once, case.part_saving),
        price=highest_price(case, 0.0),
        price_paid_back=None if target is None else highest_price(case, target),
        laid=laid,
        gain=None if laid is None else laid / case.now.laid_kg_s - 1,
    )


def parts_to_break_even(part_saving: float, to_carry: float) -> tuple[Crossing, float | None]:
    """Return the side on which the other way is cheaper, and the parts a year where they meet.

    Args:
        part_saving: Saved on each part [money].
        to_carry: What a year's parts must save [money/year].
    """
    if part_saving > 0:
        return ("always", None) if to_carry <= 0 else ("above", to_carry / part_saving)
    if to_carry >= 0:
        return "never", None
    return ("always", None) if part_saving == 0 else ("below", to_carry / part_saving)


def months_to_pay(once: float, year_saving: float) -> float | None:
    """Return the months until what is paid once is paid back; None if never [-].

    Args:
        once: Paid once [money].
        year_saving: Saved a year [money/year].
    """
    if once <= 0:
        return 0.0 if year_saving >= 0 else None
    return once / year_saving * MONTHS_A_YEAR if year_saving > 0 else None


def parts_to_pay(once: float, part_saving: float) -> float | None:
    """Return the parts until what is paid once is paid back; None if never [-].

    Args:
        once: Paid once [money].
        part_saving: Saved on each part [money].
    """
    if once <= 0:
        return 0.0 if part_saving >= 0 else None
    return once / part_saving if part_saving > 0 else None


def highest_price(case: Case, saving: float) -> float | None:
    """Return the other wire's price at which a part still saves an amount; None if none does.

    Args:
        case: The two ways [-].
        saving: What each part must save [money].

    Returns:
        The price [money/kg], or None if even free wire would not save it.
    """
    price = case.other.wire_kg + (case.part_saving - saving) / case.other.bought_kg
    return price if price >= 0 else None


def least_laid(case: Case, saving: float) -> float | None:
    """Return the least deposition of the other way at which a part saves an amount, or None.

    Minutes without an arc stay as they are.

    Args:
        case: The two ways [-].
        saving: What each part must save [money].

    Returns:
        The rate [kg/s], or None where time on the arc costs nothing or is not enough.
    """
    other = case.other
    most = part_cost(other, case.rates) + case.part_saving - saving
    bend = _bend_s(other)
    start = bend if bend > 0 else other.arc_s
    longest = _arc_that_costs(case, most, start, 2 * start)
    if longest is not None and bend > max(longest, 0.0):
        # The torch waits there: less arc saves gas, power and tips alone.
        longest = _arc_that_costs(case, most, bend / 2, bend)
    return other.metal_kg / longest if longest is not None and longest > 0 else None


def _bend_s(way: Way) -> float:
    """Arc time up to which the torch waits for the hands; zero with one station [s]."""
    if way.stations == 1:
        return 0.0
    a_second = 1 + way.stopped + way.tipped
    return max(0.0, way.arc_s + (way.hands_s - way.torch_s) / a_second)


def _arc_that_costs(case: Case, most: float, one: float, other: float) -> float | None:
    """Arc time at which a part costs an amount, on the line through two arc times [s]."""
    costs = [
        part_cost(at_laid(case.other, case.other.metal_kg / arc), case.rates)
        for arc in (one, other)
    ]
    a_second = (costs[1] - costs[0]) / (other - one)
    return one + (most - costs[0]) / a_second if a_second > 0 else None


def at_laid(way: Way, laid_kg_s: float) -> Way:
    """Return a way that lays another rate, all else the same.

    Args:
        way: The way [-].
        laid_kg_s: Deposition rate, above zero [kg/s].
    """
    return replace(way, melted_kg_s=laid_kg_s / way.efficiency)
