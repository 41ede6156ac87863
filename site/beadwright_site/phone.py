"""The one door the phone's worker calls: an action's name and JSON in, JSON out."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from contextlib import AbstractContextManager, nullcontext
from types import MappingProxyType
from typing import Any, cast

from beadwright.api import answer_csv, answer_json
from beadwright.errors import FieldErrors, UnknownEntryError
from beadwright.pages import PAGES
from beadwright_site.page_table import SITE_PAGES

Asked = Mapping[str, Any]

QUARTER_INCH_FILLET_LB_FT = 0.106
"""Weld metal in a flat 1/4 in fillet. Source: weld-metal weight tables (0.283 lb/in³)."""

NEW_WELDS = 12
"""Welds of a list answered anew in one question: some four seconds on a slow phone."""

_QUARTER_INCH_QUERY = "plate=1/4in&leg=1/4in&reinforcement=0in"


def _check(_: Asked) -> dict[str, Any]:
    """Compute one printed answer end to end, and draw one page."""
    found = answer_json("dial-in", _QUARTER_INCH_QUERY)["answer"]["metal"]["value"]
    shown = SITE_PAGES["dial-in"].load().show(PAGES["dial-in"].example)
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


def _new_welds(page: str) -> AbstractContextManager[None]:
    """On the Weld list only so many welds are answered at once: the page asks again for more."""
    if page != "list":
        return nullcontext()
    from beadwright.weld_list.listed_weld import at_most_new

    return at_most_new(NEW_WELDS)


def _page(asked: Asked) -> dict[str, Any]:
    page = _text(asked, "page")
    if page not in PAGES:
        raise UnknownEntryError(f"no page {page[:40]}")
    parts: list[Any] | None = asked.get("parts")
    wanted = tuple(map(str, parts)) if isinstance(parts, list) else None
    with _new_welds(page):
        shown = SITE_PAGES[page].load().show(_text(asked, "query"), _kept(asked), wanted)
    return {
        "ok": shown.ok,
        "query": shown.query,
        "title": shown.title,
        "html": shown.html,
        "errors": shown.errors,
    }


# What only some questions need is imported when first asked.


def _question(asked: Asked) -> tuple[str, str, Mapping[str, Any]]:
    """Page, query and shop's defaults, as the core takes them."""
    from beadwright_site.forms.asked import with_example
    from beadwright_site.forms.kept import kept_for

    page, query = _text(asked, "page"), _text(asked, "query")
    if page in PAGES:
        query, _ = with_example(PAGES[page], query)
    return page, query, kept_for(query, _kept(asked))


def _json(asked: Asked) -> dict[str, Any]:
    return answer_json(*_question(asked))


def _csv(asked: Asked) -> dict[str, Any]:
    try:
        return {"ok": True, "csv": answer_csv(*_question(asked))}
    except FieldErrors as error:
        return {"ok": False, "errors": error.messages}


def _count(asked: Asked, key: str) -> int:
    value = asked.get(key, 0)
    if not isinstance(value, int):
        raise TypeError(f"{key} is no count")
    return value


def _chance(asked: Asked) -> dict[str, Any]:
    from beadwright_site.pages.cost.chance_runs import draw_chunk

    try:
        return draw_chunk(
            _text(asked, "query"),
            _kept(asked),
            _count(asked, "way"),
            _count(asked, "done"),
            _count(asked, "chunk"),
            _count(asked, "draws"),
        )
    except FieldErrors as error:
        return {"ok": False, "errors": error.messages}


def _coupon(asked: Asked) -> dict[str, Any]:
    """Return the coupon at hand as the record to keep."""
    from beadwright.coupons.new_record import new_record

    _, query, kept = _question(asked)
    try:
        record = new_record(query, kept, _text(asked, "key"), _text(asked, "made"))
    except FieldErrors as error:
        return {"ok": False, "errors": error.messages}
    return {"ok": True, "record": record.plain()}


def _wall(asked: Asked) -> dict[str, Any]:
    """Draw the wall sheet of three wires."""
    from beadwright_site.pages.sheets.wall import wall_part

    return wall_part(_text(asked, "query"), _kept(asked))


def _link(asked: Asked) -> dict[str, Any]:
    """Return the query of a link to what is asked: what is private only if it may be told."""
    tell = ("prices", "names") if asked.get("tell") is True else ()
    page = SITE_PAGES[_text(asked, "page")].load()
    short = asked.get("short") is not False
    return {"query": page.link(_text(asked, "query"), _kept(asked), tell, short=short)}


def _weld(asked: Asked) -> dict[str, Any]:
    """Draw one weld of the list as a form, one of its entries set anew where that is asked."""
    from beadwright_site.pages.list.weld_fields import weld_fields

    _, query, kept = _question({**asked, "page": "list"})
    number = _count(asked, "number")
    return weld_fields(query, kept, number, _text(asked, "key"), _text(asked, "value"))


def _look(asked: Asked) -> dict[str, Any]:
    """Say what a file would change of what the phone keeps, or why it cannot be taken."""
    from beadwright_site.forms.kept_file import preview_file

    return preview_file(_text(asked, "text"), asked)


ACTIONS: Mapping[str, Callable[[Asked], dict[str, Any]]] = MappingProxyType(
    {
        "check": _check,
        "page": _page,
        "json": _json,
        "csv": _csv,
        "chance": _chance,
        "coupon": _coupon,
        "wall": _wall,
        "look": _look,
        "link": _link,
        "weld": _weld,
    }
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
