"""Dial in: the page of the machine's four settings."""

from __future__ import annotations

from typing import Any, Final

from beadwright.pages import PAGES
from beadwright.process.melted import NEVER_SIZE_BY_IT
from beadwright.setting.dial_in import DialIn
from beadwright.setting.dial_in_page import DialInAnswer
from beadwright.weld_list.weld_lines import job_line
from beadwright.words.wording import worded
from beadwright_site.drawings.map_drawing import draw_map
from beadwright_site.links import query_of
from beadwright_site.pages.dial_in.aims import aim_buttons
from beadwright_site.pages.dial_in.bands import band_of
from beadwright_site.pages.dial_in.facts import (
    laid_facts,
    main_facts,
    melted_facts,
    mode_and_amps,
    origins,
    torch_facts,
)
from beadwright_site.pages.dial_in.form import dial_in_form
from beadwright_site.pages.dial_in.offer import offered
from beadwright_site.parts.answer_page import Answered, AnswerPage, PageView
from beadwright_site.parts.cited_notes import cited_notes
from beadwright_site.parts.gas_facts import gas_lines
from beadwright_site.parts.job_card import job_card, weld_symbols

LATER = ("alike",)
"""Parts asked for when the rest stands."""

LIVE = ("state", "settings", "facts", "notes", "setup", "map")
"""Parts that follow a dragging finger; the others come when it lets go."""


def _alike(dialled: DialIn) -> dict[str, Any]:
    # A later part: what only it needs is imported when it is asked for.
    from beadwright_site.pages.dial_in.alike import alike_table

    return {"table": alike_table(dialled)}


def _view(answered: Answered[DialInAnswer]) -> PageView:
    found, system, typed = answered.found, answered.asked.system, answered.typed
    dialled = found.dialled
    bands = tuple(band_of(setting, system) for setting in dialled.settings.all())
    notes = cited_notes(found.notes, system)
    card = job_card(dialled)
    feed, volts = bands[0], bands[1]
    set_to = f"{feed.number} {feed.unit}, {volts.number} {volts.unit}" if dialled.open else "Shut"
    return PageView(
        f"{set_to} · {card.line}",
        "Your job" if answered.asked.typed else "Example job",
        {
            "joint": lambda: {"card": card},
            "settings": lambda: {
                "bands": bands,
                "let_go": {band.key: query_of({**typed, band.key: ""}) for band in bands},
                "open": dialled.open,
                "mode": mode_and_amps(dialled),
                "shut_notes": [note for note in notes if note.level == "stop"],
                "offer": offered(found.other_mode, typed, system),
                "ways_out": [
                    (worded(way.phrase, system), query_of({**typed, **way.changes}))
                    for way in found.ways_out
                ],
            },
            "aims": lambda: {"aims": aim_buttons(dialled, typed), "fixed": dialled.open},
            "notes": lambda: {"notes": [note for note in notes if note.level != "stop"]},
            "facts": lambda: {
                "main": main_facts(dialled),
                "query": query_of(typed) or PAGES["dial-in"].example,
                "line": job_line("", typed),
            },
            "setup": lambda: {
                "symbols": weld_symbols(dialled),
                "gas": dialled.job.gas,
                "gas_lines": gas_lines(dialled.job.gas, system),
                "torch": torch_facts(dialled),
                "laid": laid_facts(dialled),
                "melted": melted_facts(dialled),
                "never_size_by_it": NEVER_SIZE_BY_IT,
            },
            "alike": lambda: _alike(dialled),
            "map": lambda: {"map": draw_map(found.window_map, system)},
            "how": lambda: {
                "origins": tuple(origins(dialled)),
                "bands": bands,
                "symbols": weld_symbols(dialled, both=True),
            },
        },
    )


PAGE: Final = AnswerPage(
    name="dial-in",
    parts=(
        "units-switch", "state", "joint", "job-form", "settings", "aims", "facts", "notes",
        "setup", "alike", "map", "how",
    ),
    form=dial_in_form,
    view=_view,
    topics=(
        "arc", "metal", "wires", "gas", "joints", "grooves", "windows", "planned", "plates",
        "melted",
    ),
    lists={"live": LIVE, "later": LATER},
    keeps_in_address=True,
)  # fmt: skip
"""The page."""
