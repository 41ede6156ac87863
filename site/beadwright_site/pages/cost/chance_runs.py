"""The chance that switching pays, drawn chunk by chunk in the worker: one run at a time is held.

To stop a run is to ask no more of it.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from beadwright.api import answer
from beadwright.money.chance import Chance
from beadwright.money.cost_page import CostAnswer, drawn_on, start_chance
from beadwright.pages import PAGES
from beadwright_site.forms.asked import with_example
from beadwright_site.forms.kept import kept_for
from beadwright_site.pages.cost.page import show_drawn

MOST_CHUNK = 2_000
"""Draws at a time, so that nothing asked meanwhile waits long."""


@dataclass(slots=True)
class Run:
    """A run under way.

    Attributes:
        key: What was asked.
        chance: The draws.
        found: The answer they belong to.
        done: Draws made.
    """

    key: str
    chance: Chance
    found: CostAnswer
    done: int


_held: list[Run] = []


def draw_chunk(
    query: str, kept: Mapping[str, Any], way: int, done: int, chunk: int, draws: int = 0
) -> dict[str, Any]:
    """Return where a run stands after some more draws, and its part of the page.

    A run is taken up where it was left if it is the one held and stands where the caller thinks;
    else it begins anew, which gives the same draws.

    Args:
        query: The Cost page's query.
        kept: What the phone keeps, by name.
        way: Which way the first is held against, 1 for the second.
        done: Draws the caller has seen, 0 to begin.
        chunk: Draws to make now.
        draws: Draws of the whole run, as the tap says; 0 for as many as the query asks.

    Raises:
        FieldErrors: If the query cannot be taken.
        UnknownEntryError: If there is no such way.
    """
    key = json.dumps([query, dict(kept), way, draws], sort_keys=True)
    run = next((held for held in _held if held.key == key and 0 < held.done == done), None)
    if run is None:
        asked, _ = with_example(PAGES["cost"], query)
        found = answer("cost", asked, kept_for(asked, kept))
        run = Run(key, start_chance(found, way, draws or found.query.draws), found, 0)
        _held[:] = [run]
    state = run.chance.run(min(max(chunk, 1), MOST_CHUNK))
    run.done = state.done
    found, lead = run.found, way - 1
    drawn = drawn_on(found.comparisons[lead], state, found.currency)
    return {
        "ok": True,
        "done": state.done,
        "draws": state.draws,
        "finished": state.finished,
        "pays": state.pays,
        "html": show_drawn(found, lead, drawn),
    }
