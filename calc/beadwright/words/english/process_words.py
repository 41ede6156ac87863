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
        "process.meter-over": (
            "Volts are at the arc: set your machine's meter {off} higher, as your coupons say."
        ),
        "process.meter-under": (
            "Volts are at the arc: set your machine's meter {off} lower, as your coupons say."
        ),
        "process.wind": (
            "Wind over 5 mph (8 km/h) takes the gas away: screen it. In a draft run the high "
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
        "process.short-circuit": "short circuit",
        "process.globular": "globular",
        "process.spray": "spray",
        "process.pulsed-spray": "pulsed spray",
        "process.flat": "flat",
        "process.horizontal": "horizontal",
        "process.vertical-up": "vertical-up",
        "process.vertical-down": "vertical-down",
        "process.overhead": "overhead",
        "process.a-hand": "a hand",
        "process.a-track": "a track",
        "process.a-robot": "a robot",
        "process.solid": "solid",
        "process.metal-cored": "metal-cored",
        "process.flux-cored": "flux-cored",
        "process.co2-or-argon-mixtures": "CO2 or argon mixtures",
        "process.argon-mixtures": "argon mixtures",
        "process.co2": "CO2",
        "process.argon-20-25-co2": "argon with 20 to 25% CO2",
        "process.co2-never-sprays": "CO2 does not spray at any setting",
        "process.spray-wants-argon": "{gas} does not spray: it wants argon",
        "process.much-co2-to-spray": (
            "{kind} wire does not spray above about {limit:.0%} CO2; {gas} has more"
        ),
        "process.much-helium-to-spray": (
            "no spray above about {limit:.0%} helium; {gas} is for shorting"
        ),
        "process.spray-wanders": "spray wanders on steel in {gas}; it wants 2% O2 or 5% CO2",
        "process.not-its-gas": "{wire} is made for {gases}, not {gas}",
        "process.slag-runs-ahead": (
            "{wire} is not made for vertical-down: the slag runs ahead of the arc"
        ),
        "process.runs-out": "{mode} runs out of the joint {orientation}",
        "process.runs-out-pulse-there": (
            "{mode} runs out of the joint {orientation}; {kind} wire wants pulse there"
        ),
        "process.fine-drops-only": "{wire} runs in fine drops only; it does not short circuit",
        "process.pulse-gives-nothing": "pulse gives {wire} nothing; run it on plain volts",
        "process.no-estimate-short": (
            "no estimate in short circuit: the arc is out part of the time, no points found"
        ),
        "process.no-estimate-pulse": (
            "no estimate in pulse: a mean current says nothing of its peaks"
        ),
        "process.no-estimate-cored": (
            "no estimate for {kind} wire: its arc is broader, no points found"
        ),
        "process.no-estimate-so-far-out": "no estimate: {outside} what was measured",
        "process.no-estimate-thin-plate": (
            "no estimate: the plate is thinner than the form counts on"
        ),
        "process.no-estimate-butt": "no estimate for a butt: gap and edges decide",
        "process.band-widened": "{outside} what was measured: band widened",
        "process.current-below": "current below",
        "process.current-above": "current above",
        "process.volts-below": "volts below",
        "process.volts-above": "volts above",
        "process.travel-below": "travel below",
        "process.travel-above": "travel above",
        "process.sheet-and-shop-volts": (
            "Sheets for 0.045 in print {sheet_low:bare g}-{sheet_high:g} at 250 in/min in 75-95% "
            "argon; shops run it a volt or two under solid wire, on a shorter arc. The window "
            "holds both."
        ),
        "process.cored-in-oxygen": (
            "Metal-cored wire is classified in argon with CO2, not in {gas}: weld metal and "
            "spatter are not known. Use 90/10 or 85/15."
        ),
        "process.no-points-solid": (
            "No printed points for solid wire in this size: burn-off and spray currents are taken "
            "half-way between its neighbors, and the band is wider. Read the machine's ammeter."
        ),
        "process.remembered-data": (
            "Mass and burn-off of flux-cored wire stand on remembered data, not on a sheet in "
            "hand: hold the amps against your meter."
        ),
        "process.no-points-carried-over": (
            "No printed points for this wire in this size: mass and burn-off are carried over "
            "from its neighbor, and the band is wider."
        ),
        "process.lays-against-solid": (
            "At the same amps this wire lays {laid} than solid. Shops say about 30% more: that is "
            "near the band's top."
        ),
        "process.more-laid": "{share} (by the band {low} to {high})",
        "process.percent-more": "{percent}% more",
        "process.percent-less": "{percent}% less",
        "process.cored-wants-pulse": (
            "Metal-cored wire out of position wants pulse; short circuit on light work only."
        ),
        "process.chip-slag": (
            "Slag: chip and brush every pass before the next, or it is in the weld."
        ),
        "process.argon-wanders": "The arc wanders on steel and undercuts.",
        "process.co2-raises-spray": "Spray starts at a higher current the more CO2 there is.",
        "process.co2-shorts": "Solid wire runs short circuit; it does not spray.",
        "process.co2-globular": "Short circuit, or globular when hot. Never spray.",
        "process.oxygen-lowers-spray": "Oxygen steadies the arc and lets spray start sooner.",
        "process.helium-shorts": "Mostly helium: short circuit, no spray.",
        "process.co2-asks-volts": "CO2 asks more volts for the same arc.",
        "process.oxygen-asks-volts": "Oxygen asks a little more volts.",
        "process.helium-asks-volts": "Helium asks more volts and starts harder.",
        "process.little-spatter": "A little spatter, more with more CO2.",
        "process.some-spatter": "Some spatter; more than a rich argon mix.",
        "process.most-spatter": "Spatters most of all.",
        "process.spatter-takes-some": "Spatter takes a few percent of the wire.",
        "process.spatter-takes-most": "Lays least of the wire: it goes in spatter.",
        "process.finger": "Deep in the middle and narrow: a finger.",
        "process.rounder-root": "Wider and rounder at the root than argon alone.",
        "process.deep-and-round": "Deep and round.",
        "process.helium-wider": "Wider: helium carries more heat into the plate.",
        "process.oxygen-thins-pool": "Oxygen thins the pool: flat bead, clean toes.",
        "process.oxygen-burns-alloy": "Burns manganese and silicon out of the wire.",
        "process.toes-wet-in": "Toes wet in well.",
        "process.more-fume": "More fume with more CO2.",
        "process.most-fume": "Most fume, and carbon monoxide in it.",
        "process.oxygen-fume": "A little more fume with oxygen.",
        "process.lighter-than-air": "Lighter than air: run more.",
    }
)
"""Texts by id."""
