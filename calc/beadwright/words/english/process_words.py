"""English of room ``process``: gas, wire and arc."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "process.argon-flowmeter": (
            "A flowmeter made for argon shows {shows} when {runs} of this gas runs."
        ),
        "process.argon-pushes-air-out": (
            "Argon and CO2 push out the air in tanks, pits and closed rooms: test, ventilate, post "
            "a watch."
        ),
        "process.co2-pushes-air-out": (
            "CO2 pushes out the air in tanks, pits and closed rooms: test, ventilate, post a watch."
        ),
        "process.gas-pushes-air-out": (
            "Shielding gas pushes out the air in tanks, pits and closed rooms: test, ventilate, "
            "post a watch."
        ),
        "process.wind": (
            "Wind over 5 mph (8 km/h) takes the gas away: screen it. In a draught run the high "
            "end; more than that drags air in."
        ),
        "process.inert-gas": (
            "{gas} is inert: on carbon steel the arc wanders and undercuts. Use 2 % O2 or 5 % CO2 "
            "at the least."
        ),
        "process.much-oxygen": (
            "{oxygen:g} O2 burns manganese and silicon out of the wire: weak, porous metal. 1 to 5 "
            "% is usual."
        ),
        "process.much-helium": (
            "Mostly helium: mixed for short circuit on stainless. It starts hard on carbon steel "
            "and costs more."
        ),
        "process.helium-volts": (
            "What helium adds to the volts is common practice, not print: trim until the arc runs "
            "clean."
        ),
        "process.under-published": (
            "{current} is outside the published points for this wire, {least:bare} to {most}: "
            "under them feed and current are carried on along the fit. Read the machine's ammeter."
        ),
        "process.over-published": (
            "{current} is outside the published points for this wire, {least:bare} to {most}: "
            "over them feed and current are carried on along the fit. Read the machine's ammeter."
        ),
    }
)
"""Texts by id."""
