"""English of room ``weld_list``: the welds of one part together."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Plural, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "weld_list.missing": Plural(
            "One line is missing from every total: it cannot be read. It stands in the list as you "
            "typed it, with the reason.",
            "{count} lines are missing from every total: they cannot be read. They stand in the "
            "list as you typed them, each with its reason.",
        ),
        "weld_list.parts-missing": (
            "This list is printed on {count} codes, and these are not read yet: {parts:, }. Scan "
            "them with this phone; until then every total is of the welds that are here."
        ),
        "weld_list.empty": "No weld is on the list yet.",
        "weld_list.columns-passed-over": (
            "No entry of a weld is called {names:, }: what stands in that column is kept and not "
            "counted."
        ),
        "weld_list.preheat": "Preheat to {preheat} before these: {names:, }.",
        "weld_list.preheat-not-known": (
            "No preheat can be given for these; see Heat and the written procedure: {names:, }."
        ),
        "weld_list.longer-than-part": (
            "Longer than the long side of the part: {names:, }. Write a longer part or a shorter "
            "weld; until then the weld's own length is taken."
        ),
        "weld_list.of-welds": "{names:, }: {said}",
        "weld_list.no-margin": "No margin is in these prices: each is what the part costs you.",
        "weld_list.order-rule": (
            "In this order wire and gas are changed least, then the part is turned least, then the "
            "dial is set least. Welds of one setting follow each other half the list apart, so "
            "that heat does not gather in one place; neighbors on the list count as neighbors on "
            "the part. Where the fixture or the written procedure says another order, that one "
            "rules."
        ),
        "weld_list.defer": (
            "The settings are a start, and prices are no offer until you have checked them. A "
            "written procedure, the drawing and the local code rule over this list."
        ),
    }
)
"""Texts by id."""
