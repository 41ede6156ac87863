"""The pages that compute, free of any web framework: they run under Flask and on the phone."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any

from beadwright_site.pages.dial_in import show_dial_in
from beadwright_site.pages.shown import Shown

PAGES: Mapping[str, Callable[[str, Mapping[str, Any] | None], Shown]] = MappingProxyType(
    {"dial-in": show_dial_in}
)
"""Pages by name: a query and the shop's own defaults in, what is shown out."""
