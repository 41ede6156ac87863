"""Coupons: time it, measure it, keep it; what all of them say of this wire, machine and hand."""

from __future__ import annotations

from typing import Final

from beadwright.coupons.coupons_page import CouponsAnswer
from beadwright.words.wording import worded
from beadwright_site.drawings.coupon_drawing import draw_fit
from beadwright_site.pages.coupons.form import MEASURED, coupons_form
from beadwright_site.pages.coupons.stack_sheet import set_names, sheet_coupons, stack_choice
from beadwright_site.pages.coupons.view import (
    beads_of,
    coupon_facts_of,
    headline_of,
    log_rows,
    number_rows,
    pace_of,
    setting_rows,
    setting_strips,
)
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView
from beadwright_site.parts.job_card import job_card


def _view(answered: Answered[CouponsAnswer]) -> PageView:
    found = answered.found
    headline = headline_of(found)
    coming, job, typed = found.coming, found.dialled.job, answered.typed
    return PageView(
        f"{headline} · Coupons",
        answered.whose,
        {
            "learned": lambda: {
                "headline": headline,
                "job": job_card(found.dialled).line,
                "set": tuple(setting_rows(found)),
                "changed": found.own is not None,
                "way": ",".join((job.wire.type.name, job.wire.size, job.gas.name)),
                "own": found.own.text if found.own is not None else "",
                "transfer": found.dialled.plan.transfer,
                "pace": pace_of(found),
                "beads": beads_of(found),
            },
            "measured": lambda: {"facts": tuple(coupon_facts_of(found))},
            "numbers": lambda: {
                "rows": tuple(number_rows(found)),
                "plot": draw_fit(found),
                "settings": tuple(setting_strips(found)) if found.own is not None else (),
            },
            "next": lambda: {"text": worded(coming.phrase, found.units) if coming else ""},
            "log": lambda: {"rows": tuple(log_rows(found)), "elsewhere": found.elsewhere},
            "stack": lambda: {
                "coupons": tuple(sheet_coupons(found)),
                "set": set_names(found.units),
                **stack_choice(found, typed),
            },
            "take": lambda: {},
        },
    )


PAGE: Final = AnswerPage(
    name="coupons",
    parts=(
        "units-switch", "state", "learned", "job-form", "readings", "measured", "numbers", "next",
        "log", "stack", "notes", "take",
    ),
    form=coupons_form,
    view=_view,
    topics=("coupons",),
    lists={"measured": MEASURED},
)  # fmt: skip
"""The page."""
