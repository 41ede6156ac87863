"""What every page of answers is put together from: its parts, its refusal, the whole page."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from typing import Any

from markupsafe import Markup

from beadwright.units import System
from beadwright_site.forms.entries import EntryGroup
from beadwright_site.links import query_of
from beadwright_site.parts.page_parts import PageParts
from beadwright_site.rendering import render

Views = Mapping[str, Callable[[], dict[str, Any]]]
"""What each part shows, by element id; worked out when the part is drawn."""


def draw_part(page: str, part: str, **values: Any) -> str:
    """Return a part of a page: the template of its id in the page's folder.

    Args:
        page: The page's endpoint.
        part: The part's element id.
        **values: What it shows.
    """
    return render(f"{page}/{part}.html", page, part=part, **values)


def draw_parts(page: str, parts: Iterable[str], views: Views) -> dict[str, str]:
    """Return the parts asked for that the page has, by element id.

    Args:
        page: The page's endpoint.
        parts: Element ids.
        views: What each shows.
    """
    return {part: draw_part(page, part, **views[part]()) for part in parts if part in views}


def switch_view(system: System, typed: Mapping[str, str]) -> dict[str, Any]:
    """Return what the switch of units shows: the units, and the query in the other ones."""
    other = "us" if system == "si" else "si"
    return {"system": system, "query": query_of({**typed, "units": other})}


def state_view(example: bool, line: str) -> dict[str, Any]:
    """Return what the line over an answer shows.

    Args:
        example: True if nothing was asked and the example stands.
        line: What it says.
    """
    return {"kind": "example" if example else "yours", "count": 0, "line": line}


def keys_of(groups: Iterable[EntryGroup]) -> set[str]:
    """Return the keys that have an entry in a form."""
    return {entry.key for group in groups for entry in group.entries}


def refusal(
    page: str,
    typed: Mapping[str, str],
    messages: Mapping[str, list[str]],
    keys: Collection[str],
    *,
    more: Mapping[str, str] | None = None,
    **form: Any,
) -> PageParts:
    """Return a page's parts where something typed could not be taken.

    Args:
        page: The page's endpoint.
        typed: Entries as typed.
        messages: Messages by key.
        keys: Keys with an entry in the form; the messages of others stand over it.
        more: Further parts, drawn.
        **form: What the form shows.
    """
    general = [text for key, found in messages.items() if key not in keys for text in found]
    html = {
        "state": draw_part(page, "state", kind="refused", count=len(messages), line=""),
        "job-form": draw_part(page, "job-form", general=general, **form),
        **(more or {}),
    }
    return PageParts(False, query_of(typed), "Not taken", html, dict(messages))


def whole_page(page: str, shown: PageParts, parts: Sequence[str], **lists: Sequence[str]) -> str:
    """Return a whole page, as Flask answers it and as it is frozen.

    Args:
        page: The page's endpoint.
        shown: Its parts for a query.
        parts: Element ids of all its parts; one not drawn stands empty.
        **lists: Further lists of element ids the page's script is told, by name.
    """
    html = {part: Markup(shown.html.get(part, f'<div id="{part}"></div>')) for part in parts}
    told = {name: " ".join(ids) for name, ids in {"part_ids": parts, **lists}.items()}
    return render(f"{page}/page.html", page, shown=shown, parts=html, **told)
