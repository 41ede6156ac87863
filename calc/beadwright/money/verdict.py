"""Whether the other way pays: the odds in words, why, what it hangs on, what would settle it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from beadwright.money.break_even import Case
from beadwright.money.capacity import Capacity
from beadwright.money.chance import ChanceState
from beadwright.money.cost import Cost, hourly
from beadwright.money.odds import OddsWord, odds_phrase, settling, word_of
from beadwright.money.swings import Swing
from beadwright.phrases import Money, Phrase, say

_BOUGHT: tuple[tuple[str, Phrase], ...] = (
    ("wire", say("money.wire")),
    ("gas", say("money.gas")),
    ("power", say("money.power")),
    ("tips", say("money.tips-and-nozzles")),
    ("rework", say("money.rework")),
)
"""Pieces named in a reason beside the two kinds of time."""

_HARDLY = 0.05
"""Share of the largest piece under which a piece is not named [-]."""

HANGS_ON = 2
"""Figures named as those the verdict hangs on [-]."""

Word = Literal[OddsWord, "only the other delivers", "cannot deliver", "same", "none"]
"""What the odds come to, or what stands before any odds."""


@dataclass(frozen=True, slots=True)
class Verdict:
    """The answer.

    Attributes:
        word: What the odds come to; whether only the other way, or not it, has the hours; two ways
            that are the same; no verdict at all.
        headline: The answer as a page shows it.
        odds: The odds on cost alone, where the headline says something else; else None.
        reason: Why, one sentence.
        hangs_on: The figures it hangs on most.
        settle: What to find out, where that alone could change the verdict; else None.
        by_bench: True if that is a run on the bench.
    """

    word: Word
    headline: Phrase
    odds: Phrase | None
    reason: Phrase
    hangs_on: tuple[Swing, ...]
    settle: Phrase | None
    by_bench: bool


def verdict(
    case: Case,
    costs: tuple[Cost, Cost],
    held: tuple[Capacity, Capacity],
    state: ChanceState,
    swings: Sequence[Swing],
    sign: str,
) -> Verdict:
    """Return whether the other way pays.

    Args:
        case: The comparison [-].
        costs: Cost now and the other way [-].
        held: What each asks of the shop's hours [-].
        state: The draws [-].
        swings: What it depends on, longest first [-].
        sign: Currency sign [-].
    """
    if case.alike:
        headline, reason = say("money.same-way"), say("money.write-what-differs")
        return Verdict("same", headline, None, reason, (), None, False)
    if case.parts == 0:
        headline, reason = say("money.no-verdict"), say("money.no-parts-no-saving")
        return Verdict("none", headline, None, reason, (), None, False)
    odds, delivered = odds_phrase(state.pays), _delivered(case, held)
    decisive = settling(state, swings)
    return Verdict(
        word=delivered[0] if delivered else word_of(state.pays),
        headline=delivered[1] if delivered else odds,
        odds=say("money.on-cost-alone", odds=odds) if delivered else None,
        reason=_reason(case, costs, sign),
        hangs_on=tuple(swing for swing in swings[:HANGS_ON] if swing.width > 0),
        settle=None if decisive is None else decisive.lever.settle,
        by_bench=decisive is not None and decisive.lever.bench,
    )


def _delivered(case: Case, held: tuple[Capacity, Capacity]) -> tuple[Word, Phrase] | None:
    """What is said before the odds where the hours do not suffice; None where both deliver."""
    now, other = held
    if other.delivers and now.delivers:
        return None
    if other.delivers:
        headline = say("money.only-other-delivers", way=case.other.name, parts=case.parts)
        return "only the other delivers", headline
    key = "money.other-cannot-deliver" if now.delivers else "money.neither-delivers"
    return "cannot deliver", say(key, way=case.other.name, parts=case.parts, most=other.most_parts)


def _reason(case: Case, costs: tuple[Cost, Cost], sign: str) -> Phrase:
    """One sentence: the largest piece on each side."""
    now, other = costs
    hour, others = (sum(hourly(each.way, case.rates)) for each in costs)
    gains = sorted(
        (
            (hour * now.way.arc_s - others * other.way.arc_s, say("money.time-on-arc")),
            (hour * now.way.off_s - others * other.way.off_s, say("money.time-off-arc")),
            *((now.piece(key) - other.piece(key), name) for key, name in _BOUGHT),
        ),
        key=lambda gain: gain[0],
    )
    (lost, worst), (won, best) = gains[0], gains[-1]
    if round(case.part_saving, 2) == 0 and round(won, 2) == 0 and round(lost, 2) == 0:
        return say("money.both-cost-the-same")
    costs_more, saves = Money(-lost, sign), Money(won, sign)
    if won < max(0.005, -lost * _HARDLY):
        return say("money.hardly-cheaper", worst=worst, costs=costs_more)
    if -lost < max(0.005, won * _HARDLY):
        return say("money.hardly-dearer", best=best, saves=saves)
    return say("money.saves-and-costs", best=best, saves=saves, worst=worst, costs=costs_more)
