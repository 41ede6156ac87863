"""Heat: how hot to start, how hot at the most, how fast it cools, how hard it gets."""

from __future__ import annotations

from typing import Final

from beadwright.heating.heat_answer import HeatAnswer
from beadwright_site.drawings.heat_drawing import draw_heat
from beadwright_site.pages.heat.distortion import distortion_view
from beadwright_site.pages.heat.form import heat_form
from beadwright_site.pages.heat.view import (
    carbon_rows,
    cooling_facts,
    headline_of,
    method_rows,
    seconds,
    start_facts,
    tone_of,
)
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView
from beadwright_site.parts.job_card import job_card

MELT_WORDS = {"typical": "typical", "limit": "worst the grade allows", "certificate": "certificate"}
REGIME_WORDS = {"thick": "Thick plate: heat flows down as well as sideways.",
                "thin": "Thin plate: heat flows sideways only."}  # fmt: skip


def _view(answered: Answered[HeatAnswer]) -> PageView:
    found, system = answered.found, answered.asked.system
    headline = headline_of(found)
    return PageView(
        f"{headline} · Heat",
        answered.whose,
        {
            "start": lambda: {
                "headline": headline,
                "tone": tone_of(found),
                "job": f"{found.steel.name}. {job_card(found.dialled).line}",
                "facts": tuple(start_facts(found)),
            },
            "methods": lambda: {"rows": tuple(method_rows(found))},
            "cooling": lambda: {
                "drawing": draw_heat(found.curves, system) if found.curves else None,
                "seconds": seconds(found.cooling.seconds) if found.cooling else "",
                "regime": REGIME_WORDS[found.cooling.regime] if found.cooling else "",
                "facts": tuple(cooling_facts(found)),
            },
            "carbon": lambda: {
                "rows": tuple(carbon_rows(found)),
                "melt": MELT_WORDS[found.steel.melt],
                "worst": any(each.worst is not None for each in found.equivalents),
            },
            "distortion": lambda: distortion_view(found.distortion, system),
        },
    )


PAGE: Final = AnswerPage(
    name="heat",
    parts=(
        "units-switch", "state", "start", "job-form", "methods", "cooling", "carbon", "distortion",
        "notes",
    ),
    form=heat_form,
    view=_view,
    topics=("preheat", "distortion"),
)  # fmt: skip
"""The page."""
