"""English of room ``supply``: wire and gas to buy."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "supply.no-parts-no-span": (
            "No parts a year, so it cannot say how long a package lasts: type how many you weld."
        ),
        "supply.rusts-first": (
            "This package is {years:.0f} years of wire at your volume: it will rust first. Buy "
            "smaller."
        ),
        "supply.rusts-in-a-lifetime": (
            "This package is a lifetime of wire at your volume: it will rust first. Buy smaller."
        ),
        "supply.gouging-not-counted": "Rods or disks and air for gouging the back are not counted.",
        "supply.nothing-to-weld": "Nothing to weld, nothing to buy.",
        "supply.no-gas-extra": "Gas before and after the arc is not counted.",
        "supply.cylinder-empty": (
            "Empty: under {least} the regulator no longer holds the flow. Change it."
        ),
        "supply.bottle-lasts": (
            "Lasts {span:.0f} with the gas on: {parts:,.0f} parts. Taken as a {size} bottle; the "
            "water volume stamped on its shoulder as W.C. is more exact."
        ),
        "supply.cylinder-lasts": "Lasts {span:.0f} with the gas on: {parts:,.0f} parts.",
    }
)
"""Texts by id."""
