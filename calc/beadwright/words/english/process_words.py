"""English of room ``process``: gas, wire and arc."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "process.argon-flowmeter": (
            "A flowmeter made for argon shows {shows} when {runs} of this gas flows."
        ),
        "process.argon-pushes-air-out": (
            "Argon and CO2 push the air out of tanks, pits and closed rooms: test the air, "
            "ventilate, post a watch."
        ),
        "process.co2-pushes-air-out": (
            "CO2 pushes the air out of tanks, pits and closed rooms: test the air, ventilate, "
            "post a watch."
        ),
        "process.gas-pushes-air-out": (
            "Shielding gas pushes the air out of tanks, pits and closed rooms: test the air, "
            "ventilate, post a watch."
        ),
        "process.meter-over": (
            "Volts are at the arc: set your machine's meter {off} higher, by your coupons."
        ),
        "process.meter-under": (
            "Volts are at the arc: set your machine's meter {off} lower, by your coupons."
        ),
        "process.wind": (
            "Wind over 5 mph (8 km/h) blows the gas away: put up a screen. In a draft run the "
            "high end; more than that pulls air in."
        ),
        "process.inert-gas": (
            "{gas} is inert: on carbon steel the arc wanders and undercuts. Use at least 2 % O2 "
            "or 5 % CO2."
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
            "The volts added for helium are common practice, not from a printed table: trim until "
            "the arc runs clean."
        ),
        "process.under-published": (
            "{current} is outside the published points for this wire, {least:bare} to {most}: "
            "feed and current are extended below them. Read the machine's ammeter."
        ),
        "process.over-published": (
            "{current} is outside the published points for this wire, {least:bare} to {most}: "
            "feed and current are extended above them. Read the machine's ammeter."
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
        "process.spray-wants-argon": "{gas} does not spray: spray needs argon",
        "process.much-co2-to-spray": (
            "{kind} wire does not spray above about {limit:.0%} CO2; {gas} has more"
        ),
        "process.much-helium-to-spray": (
            "no spray above about {limit:.0%} helium; {gas} is for short circuit"
        ),
        "process.spray-wanders": "spray wanders on steel in {gas}; it needs 2% O2 or 5% CO2",
        "process.not-its-gas": "{wire} is made for {gases}, not {gas}",
        "process.slag-runs-ahead": (
            "{wire} is not made for vertical-down: the slag runs ahead of the arc"
        ),
        "process.runs-out": "{mode} runs out of the joint {orientation}",
        "process.runs-out-pulse-there": (
            "{mode} runs out of the joint {orientation}; {kind} wire needs pulse there"
        ),
        "process.fine-drops-only": "{wire} runs in fine drops only; it does not short circuit",
        "process.pulse-gives-nothing": "pulse does nothing for {wire}; run it on plain volts",
        "process.no-estimate-short": (
            "no estimate in short circuit: the arc is out part of the time, no points found"
        ),
        "process.no-estimate-pulse": (
            "no estimate in pulse: an average current does not tell its peaks"
        ),
        "process.no-estimate-cored": (
            "no estimate for {kind} wire: its arc is broader, no points found"
        ),
        "process.no-estimate-so-far-out": "no estimate: {outside} what was measured",
        "process.no-estimate-thin-plate": (
            "no estimate: the plate is thinner than the formula covers"
        ),
        "process.no-estimate-butt": "no estimate for a butt: it depends on root opening and edges",
        "process.band-widened": "{outside} what was measured: band widened",
        "process.current-below": "current below",
        "process.current-above": "current above",
        "process.volts-below": "volts below",
        "process.volts-above": "volts above",
        "process.travel-below": "travel speed below",
        "process.travel-above": "travel speed above",
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
            "No printed points for solid wire in this size: burn-off and spray currents are "
            "halfway between the next sizes, and the band is wider. Read the machine's ammeter."
        ),
        "process.remembered-data": (
            "Mass and burn-off of flux-cored wire are not checked against the book: compare the "
            "amps with your meter."
        ),
        "process.no-points-carried-over": (
            "No printed points for this wire in this size: mass and burn-off are taken from the "
            "nearest size, and the band is wider."
        ),
        "process.lays-against-solid": (
            "At the same amps this wire lays {laid} than solid. Shops say about 30% more, near "
            "the top of the band."
        ),
        "process.more-laid": "{share} (by the band {low} to {high})",
        "process.percent-more": "{percent}% more",
        "process.percent-less": "{percent}% less",
        "process.cored-wants-pulse": (
            "Metal-cored wire out of position needs pulse; short circuit on light work only."
        ),
        "process.chip-slag": (
            "Slag: chip and brush every pass before the next, or it stays in the weld."
        ),
        "process.argon-wanders": "The arc wanders on steel and undercuts.",
        "process.co2-raises-spray": "The more CO2, the higher the current spray starts at.",
        "process.co2-shorts": "Solid wire runs short circuit; it does not spray.",
        "process.co2-globular": "Short circuit, or globular when hot. Never spray.",
        "process.oxygen-lowers-spray": "Oxygen steadies the arc and lets spray start sooner.",
        "process.helium-shorts": "Mostly helium: short circuit, no spray.",
        "process.co2-asks-volts": "CO2 needs more volts for the same arc.",
        "process.oxygen-asks-volts": "Oxygen needs a little more volts.",
        "process.helium-asks-volts": "Helium needs more volts and starts harder.",
        "process.little-spatter": "A little spatter, more with more CO2.",
        "process.some-spatter": "Some spatter; more than a rich argon mix.",
        "process.most-spatter": "Spatters most of all.",
        "process.spatter-takes-some": "A few percent of the wire goes to spatter.",
        "process.spatter-takes-most": (
            "Lowest deposition efficiency: more of the wire goes to spatter."
        ),
        "process.finger": "Deep in the middle and narrow: a finger.",
        "process.rounder-root": "Wider and rounder at the root than argon alone.",
        "process.deep-and-round": "Deep and round.",
        "process.helium-wider": "Wider: helium carries more heat into the plate.",
        "process.oxygen-thins-pool": "Oxygen thins the puddle: flat bead, clean toes.",
        "process.oxygen-burns-alloy": "Burns manganese and silicon out of the wire.",
        "process.toes-wet-in": "Toes wet in well.",
        "process.more-fume": "More fume with more CO2.",
        "process.most-fume": "Most fume, and carbon monoxide in it.",
        "process.oxygen-fume": "A little more fume with oxygen.",
        "process.lighter-than-air": "Lighter than air: run more.",
    }
)
"""Texts by id."""
