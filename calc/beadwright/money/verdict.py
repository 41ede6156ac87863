"""Switch, stay or too close: the answer in a word, its reason, and what would decide it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from beadwright.money.break_even import BreakEven, Case
from beadwright.money.cost import Cost
from beadwright.money.swings import Swing
from beadwright.phrases import Amount, Money, Parameter, Phrase, say

_BOUGHT: tuple[tuple[str, Phrase], ...] = (
    ("wire", say("money.wire")),
    ("gas", say("money.gas")),
    ("power", say("money.power")),
    ("tips", say("money.tips-and-nozzles")),
    ("rework", say("money.rework")),
)
"""Pieces named in a reason beside the two kinds of time."""

FAR_MONTHS = 240
"""Past twenty years what is paid once is called lost [months]."""

TEN_TIMES = 10
"""A gain in laid metal that no wire has [-]."""

PAYS_NO_FASTER, MUST_LAY = "money.pays-no-faster", "money.must-lay"
"""Ids of the two sentences that say what the other way must lay."""

_HARDLY = 0.05
"""Share of the largest piece under which a piece is not named [-]."""

Word = Literal["switch", "stay", "too close"]


@dataclass(frozen=True, slots=True)
class Verdict:
    """The answer.

    Attributes:
        word: switch, stay or too close.
        headline: The word as a page shows it.
        reason: Why, one sentence.
        coupon: The coupon that would decide it, or None if nothing is open.
        ask: What to ask or look up first, or None.
    """

    word: Word
    headline: Phrase
    reason: Phrase
    coupon: Phrase | None
    ask: Phrase | None


def verdict(
    case: Case,
    costs: tuple[Cost, Cost],
    band: tuple[float, float],
    swings: Sequence[Swing],
    sign: str,
) -> Verdict:
    """Return whether to switch.

    Switch if the whole band of the net saving is above zero, stay if it is below, else too close.

    Args:
        case: The comparison [-].
        costs: Cost now and the other way [-].
        band: Low and high of the net saving [money/year].
        swings: What it depends on, longest first [-].
        sign: Currency sign [-].
    """
    name = case.other.name
    if case.parts == 0:
        ask = say("money.write-parts")
        return Verdict("stay", say("money.stay"), say("money.no-parts-no-saving"), None, ask)
    reason = _reason(case, costs, sign)
    low, high = band
    if low > 0:
        return Verdict("switch", say("money.switch-to", way=name), reason, None, None)
    if high < 0 or (low == high == 0):
        return Verdict("stay", say("money.stay-with", way=case.now.name), reason, None, None)
    coupon = next((s.lever.settle for s in swings if s.lever.bench and s.width > 0), None)
    first = swings[0].lever if swings else None
    ask_first = first.settle if first is not None and not first.bench else None
    return Verdict("too close", say("money.too-close-to-call"), reason, coupon, ask_first)


def _reason(case: Case, costs: tuple[Cost, Cost], sign: str) -> Phrase:
    """One sentence: the largest piece on each side, and what is left."""
    now, other = costs
    hour = case.rates.labor_s + case.rates.overhead_s
    gains = sorted(
        (
            (hour * (now.way.arc_s - other.way.arc_s), say("money.time-on-arc")),
            (hour * (now.way.off_s - other.way.off_s), say("money.time-off-arc")),
            *((now.piece(key) - other.piece(key), name) for key, name in _BOUGHT),
        ),
        key=lambda gain: gain[0],
    )
    (lost, worst), (won, best) = gains[0], gains[-1]
    total = _total(case, sign)
    if round(case.part_saving, 2) == 0 and round(won, 2) == 0 and round(lost, 2) == 0:
        return say("money.both-cost-the-same", total=total)
    costs_more, saves = Money(-lost, sign), Money(won, sign)
    if won < max(0.005, -lost * _HARDLY):
        return say("money.hardly-cheaper", worst=worst, costs=costs_more, total=total)
    if -lost < max(0.005, won * _HARDLY):
        return say("money.hardly-dearer", best=best, saves=saves, total=total)
    return say(
        "money.saves-and-costs",
        best=best,
        saves=saves,
        worst=worst,
        costs=costs_more,
        total=total,
    )


def _total(case: Case, sign: str) -> Phrase:
    net = Money(abs(case.net_saving), sign)
    if case.once > 0:
        key = "money.saved-after-once" if case.net_saving >= 0 else "money.lost-after-once"
    else:
        key = "money.saved" if case.net_saving >= 0 else "money.lost"
    return say(key, net=net)


def break_even_sentences(case: Case, found: BreakEven, sign: str) -> dict[str, Phrase]:
    """Return a sentence for each break-even, also for those that have no number.

    Args:
        case: The comparison [-].
        found: Its break-evens [-].
        sign: Currency sign [-].
    """
    return {
        "parts_a_year": _parts_sentence(case, found),
        "months": _months_sentence(case, found),
        "price": _price_sentence(case, found, sign),
        "laid": _laid_sentence(case, found),
    }


def _parts_sentence(case: Case, found: BreakEven) -> Phrase:
    name = case.other.name
    if found.crossing == "always":
        return say("money.never-dearer", way=name)
    if found.crossing == "never" or found.parts_a_year is None:
        return say("money.no-number-pays", way=name)
    if found.crossing == "below":
        return say("money.cheaper-below", way=name, parts=found.parts_a_year)
    if case.once > 0:
        return say("money.pays-back-from", months=case.months, parts=found.parts_a_year)
    return say("money.pays-from", parts=found.parts_a_year)


def _months_sentence(case: Case, found: BreakEven) -> Phrase:
    if case.parts == 0:
        return say("money.nothing-comes-back")
    if found.months is None:
        return say("money.never-comes-back")
    if found.months == 0:
        return say("money.nothing-paid-once")
    if found.months > FAR_MONTHS:
        return say("money.over-twenty-years")
    return say("money.back-after", months=found.months, parts=found.parts_to_pay or 0.0)


def _price_sentence(case: Case, found: BreakEven, sign: str) -> Phrase:
    if found.price is None:
        return say("money.dearer-at-any-price", way=case.other.name)
    may_cost: dict[str, Parameter] = {
        "way": case.other.name,
        "sign": sign,
        "price": Amount(found.price, "price_per_mass"),
        "now": Amount(case.other.wire_kg, "price_per_mass"),
    }
    if case.now.wire_kg > 0:
        against = _over(found.price / case.now.wire_kg - 1)
        return say("money.may-cost-against-first", **may_cost, against=against)
    return say("money.may-cost", **may_cost)


def _laid_sentence(case: Case, found: BreakEven) -> Phrase:
    hour = case.rates.labor_s + case.rates.overhead_s
    if hour == 0:
        return say("money.faster-saves-nothing")
    if found.laid is None or found.gain is None:
        return say("money.no-deposition-carries")
    laid = Amount(found.laid, "deposition")
    if found.gain <= 0 and case.other.laid_kg_s >= found.laid:
        return say(PAYS_NO_FASTER, laid=laid)
    if found.gain > TEN_TIMES:
        return say("money.ten-times-as-fast")
    here = case.other.laid_kg_s / case.now.laid_kg_s - 1
    return say(MUST_LAY, laid=laid, gain=_over(found.gain), here=_over(here))


def _over(share: float) -> Phrase:
    return say("money.over" if share >= 0 else "money.under", share=abs(share))
