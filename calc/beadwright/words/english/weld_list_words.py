"""English of room ``weld_list``: the welds of one part together."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Plural, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "weld_list.missing": Plural(
            (
                "One line is not in any total: it cannot be read. It stays in the list as you "
                "typed it, with the reason. Fix it."
            ),
            (
                "{count} lines are not in any total: they cannot be read. They stay in the list "
                "as you typed them, each with its reason. Fix them."
            ),
        ),
        "weld_list.parts-missing": (
            "This list is printed on {count} codes, and these are not read yet: {parts:, }. Scan "
            "them with this phone; until then totals count only the welds that are here."
        ),
        "weld_list.empty": "No weld on the list yet. Add one below, or from Dial in.",
        "weld_list.columns-passed-over": (
            "No entry of a weld is called {names:, }: that column is kept but not counted."
        ),
        "weld_list.preheat": "Preheat to {preheat} before these: {names:, }.",
        "weld_list.preheat-not-known": (
            "No preheat can be given for these; see Heat and the written procedure: {names:, }."
        ),
        "weld_list.longer-than-part": (
            "Longer than the long side of the part: {names:, }. Type a longer part or a shorter "
            "weld; until then the weld's own length is used."
        ),
        "weld_list.of-welds": "{names:, }: {said}",
        "weld_list.no-margin": "These prices have no margin: each is what the part costs you.",
        "weld_list.order-rule": (
            "This order changes wire and gas the least, then turns the part the least, then "
            "changes settings the least. Welds of one setting are spaced half the list apart, so "
            "that heat does not build up in one place; neighbors on the list count as neighbors "
            "on the part. The fixture and the written procedure overrule this order."
        ),
        "weld_list.defer": (
            "The settings are a start, and prices are no offer until you have checked them. A "
            "written procedure, the drawing and the local code overrule this list."
        ),
    }
)
"""Texts by id."""
