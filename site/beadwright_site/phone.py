"""The one door the phone's worker calls: an action's name and JSON in, JSON out."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any, cast

from beadwright.api import answer_json
from beadwright.errors import UnknownEntryError
from beadwright.schemas import EXAMPLE_QUERY
from beadwright_site.pages import PAGES

Asked = Mapping[str, Any]

QUARTER_INCH_FILLET_LB_FT = 0.106
"""Weld metal in a flat 1/4 in fillet. Source: weld-metal weight tables (0.283 lb/in³)."""

_QUARTER_INCH_QUERY = "plate=1/4in&leg=1/4in&reinforcement=0in"


def _check(_: Asked) -> dict[str, Any]:
    """Compute one printed answer end to end, and draw one page."""
    found = answer_json("dial-in", _QUARTER_INCH_QUERY)["answer"]["metal"]["value"]
    shown = PAGES["dial-in"](EXAMPLE_QUERY, None, None)
    right = round(found, 3) == QUARTER_INCH_FILLET_LB_FT and shown.ok
    return {"ok": right, "answer": found, "printed": QUARTER_INCH_FILLET_LB_FT}


def _text(asked: Asked, key: str) -> str:
    value = asked.get(key, "")
    if not isinstance(value, str):
        raise TypeError(f"{key} is no text")
    return value


def _kept(asked: Asked) -> Mapping[str, Any]:
    kept = asked.get("kept")
    return cast("dict[str, Any]", kept) if isinstance(kept, dict) else {}


def _page(asked: Asked) -> dict[str, Any]:
    page = _text(asked, "page")
    if page not in PAGES:
        raise UnknownEntryError(f"no page {page[:40]}")
    parts: list[Any] | None = asked.get("parts")
    wanted = tuple(map(str, parts)) if isinstance(parts, list) else None
    shown = PAGES[page](_text(asked, "query"), _kept(asked), wanted)
    return {
        "ok": shown.ok,
        "query": shown.query,
        "title": shown.title,
        "html": shown.html,
        "errors": shown.errors,
    }


def _json(asked: Asked) -> dict[str, Any]:
    return answer_json(_text(asked, "page"), _text(asked, "query"), _kept(asked))


ACTIONS: Mapping[str, Callable[[Asked], dict[str, Any]]] = MappingProxyType(
    {"check": _check, "page": _page, "json": _json}
)
"""What the page may ask for, by name."""


def call(action: str, payload: str) -> str:
    """Return the answer to a named action as JSON.

    An exception comes back as ``{"error": {"type", "message"}}``; nothing is raised.

    Args:
        action: A key of ``ACTIONS``.
        payload: A JSON object with the action's arguments.
    """
    try:
        if action not in ACTIONS:
            raise UnknownEntryError(f"no action {action[:40]}")
        asked = json.loads(payload)
        if not isinstance(asked, dict):
            raise TypeError("the payload is no object")
        return json.dumps(ACTIONS[action](cast("dict[str, Any]", asked)))
    except Exception as error:  # the page shows it; the worker lives on
        return json.dumps({"error": {"type": type(error).__name__, "message": str(error)[:300]}})
