"""Inspect: in or out and by how much, the change of setting that mends it, repair, trouble."""

from __future__ import annotations

from typing import Final

from beadwright import units
from beadwright.inspection.inspect_page import InspectAnswer
from beadwright.sources import SOURCES
from beadwright.words.wording import worded
from beadwright_site.drawings.fillet_gauge_drawing import draw_gauges
from beadwright_site.pages.inspect.form import inspect_form
from beadwright_site.pages.inspect.troubles import first_cause, trouble_lists
from beadwright_site.pages.inspect.view import (
    TONES,
    WORDS,
    judged_by,
    limit_rows,
    mend_of,
    reasons,
    spoken,
)
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView
from beadwright_site.parts.job_card import job_card


def _view(answered: Answered[InspectAnswer]) -> PageView:
    found, system = answered.found, answered.asked.system
    verdict, fillet = WORDS[found.verdict], found.weld.job.is_fillet
    line = job_card(found.used).line
    return PageView(
        f"{verdict} · Inspect",
        answered.whose,
        {
            "verdict": lambda: {
                "headline": verdict,
                "tone": TONES[found.verdict],
                "reasons": reasons(found),
                "first": first_cause(found),
                "stopped": any(note.level == "stop" for note in found.notes),
                "judged": judged_by(found),
                "line": line,
            },
            "mend": lambda: {"mend": mend_of(found)},
            "picture": lambda: {
                "drawing": draw_gauges(found.weld, lambda v: units.show(v, "length", system))
                if fillet
                else None,
                "spoken": spoken(found) if fillet else "",
                "unit": units.symbol("length", system),
            },
            "limits": lambda: {
                "rows": (rows := tuple(limit_rows(found))),
                "left": sum(row[0] == "open" for row in rows),
            },
            "repair": lambda: {
                "ways": tuple(
                    (worded(each.phrase, system), each.source, SOURCES[each.source])
                    for each in found.repairs
                )
            },
            "trouble": lambda: {"lists": tuple(trouble_lists(found))},
        },
    )


PAGE: Final = AnswerPage(
    name="inspect",
    parts=(
        "units-switch", "state", "verdict", "mend", "picture", "job-form", "seen", "trouble",
        "limits", "repair", "notes",
    ),
    form=inspect_form,
    view=_view,
    topics=("inspect",),
)  # fmt: skip
"""The page."""
