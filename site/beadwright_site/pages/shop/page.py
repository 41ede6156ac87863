"""Shop: what machine and circuit do with the planned job, and all that is asked only once."""

from __future__ import annotations

from typing import Final

from beadwright.errors import FieldErrors
from beadwright.machine.shop_page import ShopAnswer
from beadwright.pages import PAGES
from beadwright.reading.queries import split_query
from beadwright.words.wording import worded
from beadwright_site.forms.asked import Asked, Kept, with_example
from beadwright_site.forms.kept import KEPT, check_kept, kept_for
from beadwright_site.forms.typed import LONGEST_ECHO
from beadwright_site.links import query_of
from beadwright_site.pages.shop.form import shop_form
from beadwright_site.pages.shop.view import (
    check_rows,
    circuit_facts,
    headline_of,
    shop_notes,
    tone_of,
)
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView
from beadwright_site.parts.cited_notes import cited_notes
from beadwright_site.parts.job_card import job_card


def _read(name: str, query: str, kept: Kept) -> Asked:
    """What is asked; what only other pages use is typed and kept here too, by its kept name."""
    defaults = PAGES[name].defaults
    held = {k: v for k, v in (kept or {}).items() if isinstance(v, str) and v}
    try:
        given = {k: v[:LONGEST_ECHO] for k, v in split_query(query).items() if v}
    except FieldErrors:
        return Asked(query, {}, {}, held)  # the core says why
    typed = {k: v for k, v in given.items() if k in defaults or k in KEPT or "@" in k}
    texts = {**held, **typed}
    others = {k: v for k, v in texts.items() if k not in defaults and (k in KEPT or "@" in k)}
    _, wrong = check_kept({**others, "units": texts.get("units", "us")})
    mine = {k: v for k, v in given.items() if k in defaults or k not in typed}
    asked, _ = with_example(PAGES[name], query_of(mine))
    return Asked(asked, kept_for(asked, held), typed, held, wrong=wrong)


def _view(answered: Answered[ShopAnswer]) -> PageView:
    found, circuit, held = answered.found, answered.found.circuit, answered.asked.held
    example = "leg" not in answered.typed and "leg" in found.query.typed
    headline = headline_of(found)
    return PageView(
        f"{headline} · Shop",
        PAGES["shop"].example_name if example else answered.whose,
        {
            "holds": lambda: {
                "headline": headline,
                "tone": tone_of(found),
                "job": job_card(found.dialled).line,
                "facts": tuple(circuit_facts(found)),
                "on": round(circuit.on_s / 60, 2),
                "on_text": f"{circuit.on_s / 60:.1f}",
                "off_text": f"{circuit.off_s / 60:.1f}",
                "amps": f"{circuit.load.current_a:.0f}",
                "ways_out": [
                    (worded(way.phrase, found.units), query_of({**answered.typed, **way.changes}))
                    for way in found.ways_out
                ],
            },
            "checks": lambda: {"checks": tuple(check_rows(found))},
            "notes": lambda: {"notes": cited_notes(shop_notes(found), found.units)},
            "file": lambda: {"kept": len(held)},
        },
    )


PAGE: Final = AnswerPage(
    name="shop",
    parts=("units-switch", "state", "holds", "checks", "job-form", "notes", "file"),
    form=shop_form,
    view=_view,
    topics=("circuit",),
    read=_read,
)
"""The page."""
