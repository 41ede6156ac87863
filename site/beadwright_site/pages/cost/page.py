"""Cost: whether the dearer wire pays, what each way costs, and what the answer hangs on."""

from __future__ import annotations

from typing import Any, Final

from beadwright.money.cost_page import Comparison, CostAnswer
from beadwright.money.cost_query import MOST_DRAWS
from beadwright.money.demo_prices import invented_in_use
from beadwright.words.money_text import money_text
from beadwright.words.wording import worded
from beadwright_site.drawings.chance_drawing import draw_chance
from beadwright_site.drawings.curve_drawing import draw_curve
from beadwright_site.pages.cost.coupon_ways import coupons_view
from beadwright_site.pages.cost.form import cost_form
from beadwright_site.pages.cost.headline import (
    UNDRAWN,
    headline,
    main_comparison,
    verdict_view,
)
from beadwright_site.pages.cost.view import (
    bars,
    cards,
    evens,
    letters_of,
    pieces_table,
    sums_table,
    times_table,
)
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView
from beadwright_site.parts.cited_notes import cited_notes, state_line
from beadwright_site.parts.invented_notes import with_invented_counted
from beadwright_site.rendering import draw_part
from beadwright_site.written import counted


def _view(answered: Answered[CostAnswer]) -> PageView:
    found, system, sign = answered.found, answered.asked.system, answered.found.currency
    invented = len(invented_in_use(found.query))
    lead = main_comparison(found)
    main = found.comparisons[lead]
    return PageView(
        f"{headline(main, system)} · Cost",
        state_line(answered.whose, invented),
        {
            "verdict": lambda: verdict_view(found, lead, system),
            "ways": lambda: {"cards": cards(found)},
            "coupons": lambda: coupons_view(found, answered.typed, answered.asked.kept),
            "even": lambda: _even_view(found, lead, main),
            "hangs": lambda: {
                **dict(zip(("bars", "fewer"), bars(main, sign, system), strict=True)),
                "practice": [worded(told, system) for told in main.practice],
            },
            "chance": lambda: chance_view(main, lead + 1, sign),
            "hours": lambda: {"cards": cards(found)},
            "pieces": lambda: {
                "tables": (pieces_table(found), times_table(found), sums_table(found)),
                "names": tuple(
                    zip(letters_of(found), (w.way.name for w in found.ways), strict=True)
                ),
            },
            "notes": lambda: {
                "notes": cited_notes(with_invented_counted(found.notes, invented), system)
            },
            "take": lambda: {},
        },
    )


def chance_view(found: Comparison, way: int, sign: str) -> dict[str, Any]:
    """Return what the chance's part shows of the draws.

    Args:
        found: The comparison.
        way: Which way the first is held against, 1 for the second.
        sign: Currency sign.
    """
    state = found.chance
    return {
        "way": way,
        "none": found.verdict.word in UNDRAWN,
        "state": state,
        "more": MOST_DRAWS,
        "pays": f"{state.pays:.0%}",
        "low": money_text(state.low, sign),
        "middle": money_text(state.middle, sign),
        "high": money_text(state.high, sign),
        "picture": draw_chance(state, sign),
    }


def show_drawn(found: CostAnswer, lead: int, main: Comparison) -> dict[str, str]:
    """Return the parts of the page that come from the draws, for a run that may not be over.

    Args:
        found: The answer.
        lead: Which comparison.
        main: That comparison with the draws made so far.
    """
    sign, system = found.currency, found.units
    views: dict[str, dict[str, Any]] = {
        "verdict": verdict_view(found, lead, system, main),
        "chance": chance_view(main, lead + 1, sign),
        "even": _even_view(found, lead, main),
    }
    return {name: draw_part("cost", name, **view) for name, view in views.items()}


def _even_view(found: CostAnswer, lead: int, main: Comparison) -> dict[str, Any]:
    sign, case = found.currency, main.case
    return {
        "evens": tuple(evens(main, sign, found.units)),
        "curve": draw_curve(main, found.query.swings.volume, sign),
        "pair": (letters_of(found)[0], letters_of(found)[lead + 1]),
        "names": (case.now.name, case.other.name),
        "months": counted(case.months, "month"),
        "once": money_text(case.once, sign) if case.once else "",
    }


PAGE: Final = AnswerPage(
    name="cost",
    parts=(
        "units-switch", "state", "verdict", "ways", "coupons", "job-form", "even", "hangs",
        "chance", "hours", "pieces", "notes", "take",
    ),
    form=cost_form,
    view=_view,
    topics=("costs", "cost_alike"),
)  # fmt: skip
"""The page."""
