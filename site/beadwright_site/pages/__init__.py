"""The pages that compute, free of any web framework: they run under Flask and on the phone."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from types import MappingProxyType
from typing import Any

from beadwright_site.pages.dial_in import show_dial_in
from beadwright_site.pages.shown import Shown

ShowPage = Callable[[str, Mapping[str, Any] | None, Sequence[str] | None], Shown]
"""Takes a query, the shop's own defaults, and which parts to draw (None: all)."""

PAGES: Mapping[str, ShowPage] = MappingProxyType({"dial-in": show_dial_in})
"""Pages by name."""
