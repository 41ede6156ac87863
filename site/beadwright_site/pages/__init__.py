"""The pages that compute, free of any web framework: they run under Flask and on the phone."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from types import MappingProxyType
from typing import Any

from beadwright_site.pages.dial_in import show_dial_in
from beadwright_site.pages.shown import Shown

ShowPage = Callable[[str, Mapping[str, Any] | None, Sequence[str] | None], Shown]
"""Takes a query, the shop's own defaults, and which parts to draw (None: all)."""

# The other pages are imported when first asked: a phone dials in before anybody asks a price.


def _cost(query: str, kept: Mapping[str, Any] | None, parts: Sequence[str] | None) -> Shown:
    from beadwright_site.pages.cost import show_cost

    return show_cost(query, kept, parts)


def _strength(query: str, kept: Mapping[str, Any] | None, parts: Sequence[str] | None) -> Shown:
    from beadwright_site.pages.strength import show_strength

    return show_strength(query, kept, parts)


def _supplies(query: str, kept: Mapping[str, Any] | None, parts: Sequence[str] | None) -> Shown:
    from beadwright_site.pages.supplies import show_supplies

    return show_supplies(query, kept, parts)


def _shop(query: str, kept: Mapping[str, Any] | None, parts: Sequence[str] | None) -> Shown:
    from beadwright_site.pages.shop import show_shop

    return show_shop(query, kept, parts)


def _heat(query: str, kept: Mapping[str, Any] | None, parts: Sequence[str] | None) -> Shown:
    from beadwright_site.pages.heat import show_heat

    return show_heat(query, kept, parts)


PAGES: Mapping[str, ShowPage] = MappingProxyType(
    {
        "dial-in": show_dial_in,
        "cost": _cost,
        "supplies": _supplies,
        "shop": _shop,
        "heat": _heat,
        "strength": _strength,
    }
)
"""Pages by name."""
