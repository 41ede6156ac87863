"""English of room ``money``: what a weld costs and whether another way pays."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Plural, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "money.of-way": "{way}: {told}",
        "money.price-stands-in": ("No price written for {way}: the first wire's price stands in."),
        "money.time-free": "Time is priced at nothing: only what is bought counts.",
        "money.no-parts-no-payback": "No parts a year: costs for a part hold, nothing pays back.",
        "money.invented-in-use": (
            "Invented figures still in use: {keys:, }. Put in your own once; this phone keeps them."
        ),
        "money.invented-marked": Plural(
            "One figure here is invented, marked in the form. Put in your own once.",
            "{count} figures here are invented, marked in the form. Put in your own once.",
        ),
    }
)
"""Texts by id."""
