"""The pages that compute, free of any web framework: they run under Flask and on the phone."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from importlib import import_module
from types import MappingProxyType
from typing import Any, cast

from beadwright_site.pages.dial_in.page import show_dial_in
from beadwright_site.parts.page_parts import PageParts

ShowPage = Callable[[str, Mapping[str, Any] | None, Sequence[str] | None], PageParts]
"""Takes a query, the shop's own defaults, and which parts to draw (None: all)."""


def _later(page: str) -> ShowPage:
    """Return a page imported when first asked: a phone dials in before it asks a price."""

    def show(query: str, kept: Mapping[str, Any] | None, parts: Sequence[str] | None) -> PageParts:
        module = import_module(f"beadwright_site.pages.{page}.page")
        return cast("ShowPage", getattr(module, f"show_{page}"))(query, kept, parts)

    return show


PAGES: Mapping[str, ShowPage] = MappingProxyType(
    {
        "dial-in": show_dial_in,
        **{
            page: _later(page)
            for page in ("heat", "passes", "strength", "cost", "supplies", "shop")
        },
    }
)
"""Pages by name."""
