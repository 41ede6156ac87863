"""Passes: every bead drawn in its place, numbered, with its own settings; the schedule."""

from __future__ import annotations

from typing import Final

from beadwright import units
from beadwright.pages import PAGES
from beadwright.passes.passes_page import PassesAnswer
from beadwright.weld_list.weld_lines import job_line
from beadwright_site.links import query_of
from beadwright_site.pages.passes.bead_card import bead_card
from beadwright_site.pages.passes.bead_words import arc_words
from beadwright_site.pages.passes.form import passes_form
from beadwright_site.pages.passes.other_plans import other_plans
from beadwright_site.pages.passes.schedule import schedule_rows
from beadwright_site.pages.passes.view import (
    count_of,
    headline_of,
    picture_of,
    query_for,
    sums_of,
    tone_of,
    ways_of,
)
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView
from beadwright_site.parts.cited_notes import cited_notes
from beadwright_site.parts.job_card import job_card

LATER = ("others",)
"""Parts asked for when the others stand: they take several plans to work out."""

AHEAD = ("state", "plan", "picture", "bead")
"""Parts of the first screen, shown a frame ahead of the rest."""

STEPPED = ("units-switch", "picture", "bead", "schedule")
"""Parts that follow from bead to bead."""


def _view(answered: Answered[PassesAnswer]) -> PageView:
    page, found, system = answered.found, answered.found.found, answered.asked.system
    whole = {key: text for key, text in answered.typed.items() if key != "at"}
    headline = headline_of(found)
    notes = cited_notes(page.notes, page.units)
    loud = [note for note in notes if note.level in ("stop", "out")]
    return PageView(
        f"{headline} · Passes",
        answered.whose,
        {
            "plan": lambda: {
                "headline": headline,
                "tone": tone_of(page),
                "line": job_card(page.dialled).line,
                "weld_line": job_line("", answered.typed),
                "sums": sums_of(found, system),
                "loud": loud,
                "ways": tuple(ways_of(page, whole)),
                "dial_in": query_for(whole, PAGES["dial-in"].defaults),
            },
            "picture": lambda: picture_of(page, whole),
            "bead": lambda: {
                "card": bead_card(found, page.bead, system),
                "heat": query_for(whole, PAGES["heat"].defaults),
            },
            "count": lambda: count_of(found, whole),
            "schedule": lambda: {
                "rows": tuple(schedule_rows(found)),
                "at": page.at,
                "stem": query_of(whole),
                "heads": tuple(
                    units.symbol(measure, system)
                    for measure in ("wire_feed", "volts", "travel", "heat_input")
                ),
                "total": arc_words(found.arc_time_s) if found.open else "–",
            },
            "others": lambda: {"plans": tuple(other_plans(page, whole))},
            "notes": lambda: {"notes": [note for note in notes if note not in loud]},
            "take": lambda: {},
        },
    )


PAGE: Final = AnswerPage(
    name="passes",
    parts=(
        "units-switch", "state", "plan", "picture", "bead", "count", "job-form", "schedule",
        "others", "notes", "take",
    ),
    form=passes_form,
    view=_view,
    topics=("passes",),
    lists={"later": LATER, "ahead": AHEAD, "stepped": STEPPED},
)  # fmt: skip
"""The page."""
