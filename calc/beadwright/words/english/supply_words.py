"""English of room ``supply``: wire and gas to buy."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "supply.no-parts-no-span": "No parts a year: how long a package lasts cannot be said.",
        "supply.rusts-first": (
            "This package is {years:.0f} years of wire at your volume: it rusts first. Buy smaller."
        ),
        "supply.rusts-in-a-lifetime": (
            "This package is a lifetime of wire at your volume: it rusts first. Buy smaller."
        ),
        "supply.gouging-not-counted": (
            "What gouging the back takes, rods or disks and air, is not counted."
        ),
        "supply.nothing-to-weld": "Nothing to weld, nothing to buy.",
        "supply.no-gas-extra": "No gas before and after the arc is counted.",
        "supply.cylinder-empty": "Empty: under {least} the regulator no longer holds the flow.",
        "supply.bottle-lasts": (
            "Lasts {span:.0f} with the gas on: {parts:,.0f} parts. Taken as a {size} bottle; the "
            "water volume stamped on its shoulder as W.C. tells more."
        ),
        "supply.cylinder-lasts": "Lasts {span:.0f} with the gas on: {parts:,.0f} parts.",
    }
)
"""Texts by id."""
