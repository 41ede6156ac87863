"""Supplies: wire, gas and small parts for a job; what is left on the spool and in the cylinder."""

from __future__ import annotations

from typing import Final

from beadwright.money.demo_prices import invented_in_use
from beadwright.supply.supplies_page import SuppliesAnswer
from beadwright.words.wording import worded
from beadwright_site.pages.supplies.form import supplies_form
from beadwright_site.pages.supplies.view import (
    buy_rows,
    gas_facts,
    headline_of,
    need_facts,
    spool_facts,
    total_of,
)
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView
from beadwright_site.parts.cited_notes import cited_notes, state_line
from beadwright_site.parts.invented_notes import with_invented_counted
from beadwright_site.parts.job_card import job_card


def _view(answered: Answered[SuppliesAnswer]) -> PageView:
    found = answered.found
    invented = len(invented_in_use(found.query))
    headline = headline_of(found)
    line = job_card(found.planned.dialled).line
    return PageView(
        f"{headline} · Supplies",
        state_line(answered.whose, invented),
        {
            "need": lambda: {
                "headline": headline,
                "job": f"{found.supplies.count:,} parts: {line}.",
                "facts": tuple(need_facts(found)),
            },
            "buy": lambda: {"rows": tuple(buy_rows(found)), "total": total_of(found)},
            "spool": lambda: {"facts": tuple(spool_facts(found.spool, answered.asked.system))},
            "cylinder": lambda: {
                "text": worded(found.gas_left.phrase, found.units) if found.gas_left else "",
                "facts": tuple(gas_facts(found)),
            },
            "notes": lambda: {
                "notes": cited_notes(
                    with_invented_counted(found.notes, invented), answered.asked.system
                )
            },
            "take": lambda: {},
        },
    )


PAGE: Final = AnswerPage(
    name="supplies",
    parts=(
        "units-switch", "state", "need", "buy", "job-form", "spool", "spool-entries", "cylinder",
        "cylinder-entries", "notes", "take",
    ),
    form=supplies_form,
    view=_view,
    topics=("supplies",),
)  # fmt: skip
"""The page."""
