"""Strength: the leg the load asks for, what is used of it, and which link gives way first."""

from __future__ import annotations

from typing import Final

from beadwright.strength.strength_answer import StrengthAnswer
from beadwright.words.wording import worded
from beadwright_site.drawings.strength_drawing import draw_group
from beadwright_site.pages.strength.form import strength_form
from beadwright_site.pages.strength.view import (
    line_of,
    link_rows,
    main_facts,
    size_facts,
    spoken,
    verdict_of,
)
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView
from beadwright_site.written import written


def _view(answered: Answered[StrengthAnswer]) -> PageView:
    found, system = answered.found, answered.asked.system
    headline, reason = verdict_of(found)

    def write(value: float, measure: str) -> str:
        return written(value, measure, system)

    return PageView(
        f"{headline} · Strength",
        f"{answered.whose}{'. Load made up' if found.task.demo_load else ''}",
        {
            "verdict": lambda: {
                "headline": headline,
                "reason": reason,
                "tone": "switch" if found.holds else "fails",
                "line": line_of(found),
                "facts": tuple(main_facts(found)),
            },
            "picture": lambda: {
                "drawing": draw_group(found, write),
                "spoken": spoken(found),
                "weakest": worded(found.ringed.phrase, system),
                "round": found.task.job.is_round,
            },
            "links": lambda: {"links": tuple(link_rows(found))},
            "sizes": lambda: {"facts": tuple(size_facts(found))},
        },
    )


PAGE: Final = AnswerPage(
    name="strength",
    parts=(
        "units-switch", "state", "verdict", "picture", "job-form", "links", "sizes", "notes",
    ),
    form=strength_form,
    view=_view,
    topics=("strength", "loaded"),
)  # fmt: skip
"""The page."""
