"""The top of the Cost page: the verdict in words, the sums under it, what it hangs on."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from beadwright.measures import System
from beadwright.money.cost_notes import HALF_INVENTED
from beadwright.money.cost_page import Comparison, CostAnswer
from beadwright.money.first_year import FirstYear, rounded_sums
from beadwright.money.odds import EVEN
from beadwright.words.wording import reason, worded
from beadwright_site.pages.cost.view import ends_text
from beadwright_site.parts.job_card import job_card
from beadwright_site.written import counted

UNDRAWN = ("same", "none")
"""Words of a verdict that stands on no odds and no sums."""

_FOR = ("pays", "probably pays", "only the other delivers")
_AGAINST = ("does not pay", "probably does not pay", "cannot deliver")


@dataclass(frozen=True, slots=True)
class SumLine:
    """One line of the sums: what it is, the amount, and whether it is a result of those above."""

    name: str
    amount: str
    result: bool = False


def main_comparison(found: CostAnswer) -> int:
    """Return which comparison the page leads with: one that delivers and pays, the best saving."""
    order = found.comparisons
    return max(
        range(len(order)),
        key=lambda i: (
            order[i].held[1].delivers,
            order[i].verdict.word in _FOR,
            order[i].case.net_saving,
        ),
    )


def headline(found: Comparison, system: System) -> str:
    """Return the verdict in words.

    Args:
        found: The comparison.
        system: Whose units.
    """
    return worded(found.verdict.headline, system)


def verdict_view(
    found: CostAnswer, lead: int, system: System, drawn: Comparison | None = None
) -> dict[str, Any]:
    """Return what the verdict's part shows.

    Args:
        found: The answer.
        lead: Which comparison it leads with.
        system: Whose units.
        drawn: That comparison with more draws made, if there are.
    """
    main, sign = drawn or found.comparisons[lead], found.currency
    verdict = main.verdict
    others = [each for index, each in enumerate(found.comparisons) if index != lead]
    plain = verdict.word in UNDRAWN
    return {
        "tone": _tone(main),
        "headline": headline(main, system),
        "odds": reason(verdict.odds, system),
        "way": main.case.other.name,
        "now": main.case.now.name,
        "alike": worded(main.alike, system),
        "reason": worded(verdict.reason, system),
        "sums": () if plain else sum_lines(main.sums, sign),
        "facts": () if plain else _facts(main, system),
        "hangs": [
            (worded(swing.lever.name, system), ends_text(swing, sign, system))
            for swing in verdict.hangs_on
        ],
        "half": [
            worded(note.phrase, system) for note in found.notes if note.phrase.key == HALF_INVENTED
        ],
        "settle": reason(verdict.settle, system),
        "by_bench": verdict.by_bench,
        "others": [
            (each.case.other.name, headline(each, system), worded(each.verdict.reason, system))
            for each in others
        ],
        "job": _job_line(found),
    }


def _tone(found: Comparison) -> str:
    word = found.verdict.word
    if word == "only the other delivers" and found.chance.pays < EVEN:
        return "open"  # the parts, for more money
    if word in _FOR:
        return "for"
    return "against" if word in _AGAINST else "open"


def sum_lines(sums: FirstYear, sign: str) -> tuple[SumLine, ...]:
    """Return the sums line by line, rounded so that they add up as shown.

    Args:
        sums: The sums as they are.
        sign: Currency sign.
    """
    shown, fine, places = rounded_sums(sums)

    def money(amount: float, decimals: int = places) -> str:
        return f"{'−' if amount < 0 else ''}{sign}{abs(amount):,.{decimals}f}"

    saved = "Saved a part" if shown.part >= 0 else "Lost a part"
    lines = [
        SumLine(saved, money(shown.part, fine)),
        SumLine(f"× {counted(shown.parts, 'part')} a year", money(shown.gross)),
    ]
    if shown.yearly:
        lines.append(SumLine("less yearly cost", money(-shown.yearly)))
    allowed = f"Savings, first {counted(shown.months, 'month')}"
    if shown.months == 12:
        allowed = "First-year savings"
    elif shown.period != shown.year:
        lines.append(
            SumLine(f"in {counted(shown.months, 'month')}", money(shown.period), result=True)
        )
    if shown.once:
        lines.append(SumLine("less change-over cost", money(-shown.once)))
    lines.append(SumLine(allowed, money(shown.first), result=True))
    lines.append(SumLine("Each year after", money(shown.year)))
    lines.append(SumLine("Worst case, 1 in 10", money(shown.worst)))
    return tuple(lines)


def _facts(found: Comparison, system: System) -> tuple[tuple[str, str], ...]:
    """What switching does to the week: name and number."""
    work, week = found.work, ""
    hours = abs(work.freed_s) / 3600
    time = f"{hours:,.1f} h" if hours >= 1 else f"{60 * hours:.0f} min"
    freed = "Frees a week" if work.freed_s >= 0 else "Takes more a week"
    if work.even_week is not None:
        week = f"{work.even_week:,.1f} parts a week"
    else:
        week = {"always": "any volume", "never": "no volume", "below": "only a small volume"}.get(
            found.break_even.crossing, ""
        )
    return (
        (freed, time),
        ("Parts a shift", f"{work.shift_now:,.1f} → {work.shift_other:,.1f}"),
        ("Break-even", week),
    )


def _job_line(found: CostAnswer) -> str:
    """The job in a line: its joint as given, how many welds, how many parts."""
    job = found.ways[0].dialled.job
    welds = f"{job.welds} weld{'' if job.welds == 1 else 's'} a part"
    return (
        f"{job_card(found.ways[0].dialled).joint}, {welds}. {counted(found.parts, 'part')} a year."
    )
