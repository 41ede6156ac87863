"""Cost: whether the dearer wire pays, what each way costs, and what the answer hangs on."""

from __future__ import annotations

from typing import Any, Final

from beadwright.measures import System
from beadwright.money.chance import ChanceState
from beadwright.money.cost_page import Comparison, CostAnswer, invented_in_use
from beadwright.words.money_text import money_text
from beadwright.words.wording import reason, worded
from beadwright_site.drawings.chance_drawing import draw_chance
from beadwright_site.drawings.curve_drawing import draw_curve
from beadwright_site.pages.cost.form import cost_form
from beadwright_site.pages.cost.view import (
    bars,
    cards,
    evens,
    pieces_table,
    sums_table,
    times_table,
)
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView
from beadwright_site.parts.cited_notes import cited_notes, state_line
from beadwright_site.parts.invented_notes import with_invented_counted
from beadwright_site.parts.job_card import job_card
from beadwright_site.rendering import draw_part


def main_comparison(found: CostAnswer) -> int:
    """Return which comparison the page leads with: one that says switch, else the best saving."""
    order = found.comparisons
    return max(
        range(len(order)),
        key=lambda i: (order[i].verdict.word == "switch", order[i].case.net_saving),
    )


def _verdict_view(found: Comparison, system: System) -> dict[str, str]:
    verdict = found.verdict
    return {
        "word": verdict.word,
        "headline": worded(verdict.headline, system),
        "reason": worded(verdict.reason, system),
        "coupon": reason(verdict.coupon, system),
        "ask": reason(verdict.ask, system),
    }


def _view(answered: Answered[CostAnswer]) -> PageView:
    found, system, sign = answered.found, answered.asked.system, answered.found.currency
    invented = len(invented_in_use(found.query))
    lead = main_comparison(found)
    main = found.comparisons[lead]
    verdicts = [_verdict_view(each, system) for each in found.comparisons]
    verdict = verdicts.pop(lead)
    letters = [planned.prefix[:1].upper() or "A" for planned in found.ways]
    pair = (letters[0], letters[lead + 1])
    joint = job_card(found.ways[0].dialled).joint
    return PageView(
        f"{verdict['headline']} · Cost",
        state_line(answered.whose, invented),
        {
            "verdict": lambda: {
                "verdict": verdict,
                "others": [(other["headline"], other["reason"]) for other in verdicts],
                "job": _job_line(found, joint),
                "band": tuple(money_text(end, sign) for end in main.band),
            },
            "ways": lambda: {"cards": cards(found)},
            "even": lambda: {
                "evens": tuple(evens(main, sign, system)),
                "curve": draw_curve(main, found.query.swings.volume, sign),
                "pair": pair,
                "names": (main.case.now.name, main.case.other.name),
                "months": f"{main.case.months:g}",
                "once": money_text(main.case.once, sign) if main.case.once else "",
            },
            "hangs": lambda: dict(zip(("bars", "fewer"), bars(main, sign, system), strict=True)),
            "chance": lambda: chance_view(main, lead + 1, sign, found.query.draws),
            "hours": lambda: {"cards": cards(found)},
            "pieces": lambda: {
                "tables": (pieces_table(found), times_table(found), sums_table(found)),
                "names": tuple(zip(letters, (w.way.name for w in found.ways), strict=True)),
            },
            "notes": lambda: {
                "notes": cited_notes(with_invented_counted(found.notes, invented), system)
            },
            "take": lambda: {},
        },
    )


def _job_line(found: CostAnswer, joint: str) -> str:
    """The job in a line: its joint as given, how many welds, how many parts."""
    job = found.ways[0].dialled.job
    welds = f"{job.welds} weld{'' if job.welds == 1 else 's'} a part"
    return f"{joint}, {welds}. {found.parts:,} parts a year."


def chance_view(found: Comparison, way: int, sign: str, draws: int) -> dict[str, Any]:
    """Return what the chance's part shows: not yet drawn, or drawn with the answer.

    Args:
        found: The comparison.
        way: Which way the first is held against, 1 for the second.
        sign: Currency sign.
        draws: Draws to make.
    """
    state = found.chance
    return {
        "way": way,
        "draws": draws,
        "state": state,
        **({} if state is None else drawn(state, sign)),
    }


def drawn(state: ChanceState, sign: str) -> dict[str, Any]:
    """Return a run of draws as shown.

    Args:
        state: Where the run stands.
        sign: Currency sign.
    """
    return {
        "pays": f"{state.pays:.0%}",
        "low": money_text(state.low, sign),
        "middle": money_text(state.middle, sign),
        "high": money_text(state.high, sign),
        "picture": draw_chance(state, sign),
    }


def show_chance(state: ChanceState, way: int, sign: str) -> str:
    """Return the chance's part for a run that may not be over.

    Args:
        state: Where the run stands.
        way: Which way the first is held against.
        sign: Currency sign.
    """
    return draw_part(
        "cost", "chance", way=way, draws=state.draws, state=state, **drawn(state, sign)
    )


PAGE: Final = AnswerPage(
    name="cost",
    parts=(
        "units-switch", "state", "verdict", "ways", "job-form", "even", "hangs", "chance", "hours",
        "pieces", "notes", "take",
    ),
    form=cost_form,
    view=_view,
    topics=("costs",),
)  # fmt: skip
"""The page."""
