"""The sums under the verdict: saved a part, a year, in the months allowed, and after them."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.money.break_even import MONTHS_A_YEAR, BreakEven, Case
from beadwright.money.capacity import Capacity
from beadwright.money.chance import ChanceState

FINEST = 10
"""Most decimals of what is saved a part [-]."""

NEAR = 5e-5
"""What is saved a part is written so finely that a year of it is off by no more than this [-]."""


@dataclass(frozen=True, slots=True)
class FirstYear:
    """What switching brings, figure by figure, below zero where it costs.

    Attributes:
        part: Saved on each part [money].
        parts: Parts a year [1/year].
        gross: Saved by a year's parts [money/year].
        yearly: Paid more by the year for the other way [money/year].
        year: Saved a year, before what is paid once [money/year].
        months: Months in which what is paid once must come back [-].
        period: Saved in those months, before what is paid once [money].
        once: Paid once for the change [money].
        first: Left after those months, what is paid once taken off [money].
        worst: The same, where one draw in ten is worse [money].
    """

    part: float
    parts: float
    gross: float
    yearly: float
    year: float
    months: float
    period: float
    once: float
    first: float
    worst: float


def first_year(case: Case, state: ChanceState) -> FirstYear:
    """Return the sums of a comparison, as they are.

    Args:
        case: The two ways [-].
        state: The draws [-].
    """
    share = case.months / MONTHS_A_YEAR
    gross = case.part_saving * case.parts
    return FirstYear(
        part=case.part_saving,
        parts=case.parts,
        gross=gross,
        yearly=case.yearly,
        year=case.year_saving,
        months=case.months,
        period=case.year_saving * share,
        once=case.once,
        first=case.net_saving * share,
        worst=state.low * share,
    )


def rounded_sums(sums: FirstYear) -> tuple[FirstYear, int, int]:
    """Return the sums rounded so that they add up on paper, and the decimals of part and sums.

    The part has as many decimals as it takes for part times parts to come to the year's sum; each
    sum is worked from the rounded ones above it.

    Args:
        sums: The sums as they are [-].
    """
    largest = max(abs(sums.gross), abs(sums.once), abs(sums.yearly))
    places = 2 if largest < 100 else 0
    slack = max(0.5 * 10.0**-places, NEAR * abs(sums.gross))
    fine = next(
        (n for n in range(2, FINEST) if abs(round(sums.part, n) * sums.parts - sums.gross) < slack),
        FINEST,
    )
    part = round(sums.part, fine)
    gross = round(part * sums.parts, places)
    yearly, once = round(sums.yearly, places), round(sums.once, places)
    year = round(gross - yearly, places)
    period = round(year * sums.months / MONTHS_A_YEAR, places)
    return (
        FirstYear(
            part=part,
            parts=sums.parts,
            gross=gross,
            yearly=yearly,
            year=year,
            months=sums.months,
            period=period,
            once=once,
            first=round(period - once, places),
            worst=round(sums.worst, places),
        ),
        fine,
        places,
    )


@dataclass(frozen=True, slots=True)
class Work:
    """What switching does to the shop's week.

    Attributes:
        freed_s: Welder time freed a week; below zero it takes more [s].
        shift_now: Parts a shift as now.
        shift_other: Parts a shift the other way.
        even_week: Parts a week from which it pays, or None if there is no such number [1/week].
    """

    freed_s: float
    shift_now: float
    shift_other: float
    even_week: float | None


def week_of(held: tuple[Capacity, Capacity], found: BreakEven, weeks: float) -> Work:
    """Return what switching does to the shop's week.

    Args:
        held: What each way asks of the hours, the way now first [-].
        found: Where the two ways meet [-].
        weeks: Weeks worked in a year, above zero [-].
    """
    now, other = held
    parts = found.parts_a_year if found.crossing == "above" else None
    return Work(
        freed_s=(now.shift_s - other.shift_s) / weeks,
        shift_now=now.parts_a_shift,
        shift_other=other.parts_a_shift,
        even_week=None if parts is None else parts / weeks,
    )
