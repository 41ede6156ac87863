"""Card: one printed page that tells the next hand all, headed as what it is."""

from __future__ import annotations

from typing import Any, Final

from beadwright.card.card_page import CardAnswer
from beadwright_site.links import query_of
from beadwright_site.pages.card.form import PAPER_NAMES, card_form
from beadwright_site.pages.card.view import (
    cautions_of,
    facts_of,
    is_tight,
    judged_by,
    limit_lines,
    part_rows,
    picture_of,
    proof_line,
    settings_of,
)
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView
from beadwright_site.parts.job_card import weld_line
from beadwright_site.parts.shared_link import shared_query, short_query


def _sheet(answered: Answered[CardAnswer]) -> dict[str, Any]:
    found = answered.found
    cautions, more = cautions_of(found)
    says = found.query.says
    tell = ("names",) if says.code_names == "yes" else ()
    return {
        "paper": found.query.paper,
        "tight": is_tight(found),
        "says": says,
        "joint": weld_line(found.dialled),
        "drawing": picture_of(found),
        "settings": settings_of(found),
        "rows": tuple(part_rows(found)),
        "count": len(found.found.beads),
        "facts": tuple(facts_of(found)),
        "accept": judged_by(found),
        "limits": tuple(limit_lines(found)),
        "cautions": cautions,
        "more": more,
        "proof": proof_line(found),
        "link": short_query(shared_query("card", answered.typed, answered.asked.kept, tell)),
    }


def _proofs(answered: Answered[CardAnswer]) -> dict[str, Any]:
    rows = list[tuple[str, str]]()
    for each in answered.found.proofs:
        day = each.record.made[:10]
        proof = {
            "proved_mark": each.mark or f"of {day}",
            "proved_by": each.record.welder,
            "proved_on": day,
        }
        rows.append((f"{each.mark or 'A coupon'}, {day}", query_of({**answered.typed, **proof})))
    return {"rows": rows}


def _view(answered: Answered[CardAnswer]) -> PageView:
    found = answered.found
    name = found.query.says.piece or weld_line(found.dialled)
    return PageView(
        f"{name} · Card",
        answered.whose,
        {
            "sheet": lambda: _sheet(answered),
            "proofs": lambda: _proofs(answered),
            "take": lambda: {"paper": PAPER_NAMES[found.query.paper]},
        },
    )


PAGE: Final = AnswerPage(
    name="card",
    parts=("units-switch", "state", "sheet", "take", "proofs", "job-form", "notes"),
    form=card_form,
    view=_view,
    topics=("windows", "planned", "preheat", "inspect"),
)
"""The page."""
