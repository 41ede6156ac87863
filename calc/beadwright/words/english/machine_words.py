"""English of room ``machine``: power source and circuit."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "machine.duty-rule": (
            "The rule for duty cycle errs by up to a tenth; the plate rules. Plates are tested at "
            "40 °C (104 °F)."
        ),
        "machine.electrician": (
            "Wiring, breakers and earthing belong to a licensed electrician and the local code."
        ),
        "machine.demo-stands-in": ("The demonstration shop's machine stands in for: {keys:, }."),
        "machine.demo-stands-in-marked": "The demonstration shop stands in for: {names}.",
        "machine.duty-in-ten": "At {current}: {on} on, {off:bare} off, in ten.",
        "machine.weld-outlasts-duty": (
            "At {current}: {on} on, {off:bare} off, in ten. One weld runs {longest} without a "
            "break: weld it in pieces, or with less current."
        ),
        "machine.share-held": (
            "The arc burns {share:.0%} of the time, the machine holds {duty:.0%}."
        ),
        "machine.share-over": (
            "The arc burns {share:.0%} of the time, the machine holds {duty:.0%} here: it will "
            "cut out. It runs all day at {all_day}."
        ),
        "machine.gives-current": "The machine gives the current.",
        "machine.stops-short": (
            "The job wants {wants}, the machine stops at {most}: a thinner wire, less feed or "
            "another machine."
        ),
        "machine.over-rated": (
            "The job wants {wants}, over the rated {rated}: read on the plate whether the machine "
            "gives it, and for how long."
        ),
        "machine.leads-hold": (
            "{lost} lost in {cable}: set {machine} at the machine for {arc} at the arc."
        ),
        "machine.leads-lose": (
            "{lost} lost in {cable}: set {machine} at the machine for {arc} at the arc. Over 4 V: "
            "shorter or thicker leads."
        ),
        "machine.cord-carries": "{cord} carries {most}, {asked} asked.",
        "machine.cord-too-thin": "{cord} carries {most}, {asked} asked: a thicker cord.",
        "machine.breaker-holds": "{drawn} drawn, {breaker} breaker.",
        "machine.breaker-trips": (
            "{drawn} drawn, {breaker} breaker. Even on and off it heats like {heats_like}: it "
            "trips. A larger circuit."
        ),
        "machine.long-weld-trips": (
            "{drawn} drawn, {breaker} breaker. On and off it heats like {heats_like}, but a long "
            "weld trips it."
        ),
        "machine.cord-drop": "{lost} of {supply:.0f} lost in the cord.",
        "machine.cord-drop-soft-arc": (
            "{lost} of {supply:.0f} lost in the cord. The arc goes soft: shorter or thicker."
        ),
        "machine.generator-holds": "{drawn:bare .1f} kVA drawn, generator gives {gives:bare .1f}.",
        "machine.generator-stalls": (
            "{drawn:bare .1f} kVA drawn, generator gives {gives:bare .1f}. It stalls."
        ),
        "machine.generator-close": (
            "{drawn:bare .1f} kVA drawn, generator gives {gives:bare .1f}. Keep a fifth free for "
            "the starts."
        ),
        "machine.current": "Current",
        "machine.arc": "Longest weld",
        "machine.share": "Duty cycle",
        "machine.cable": "Welding leads",
        "machine.breaker": "Breaker",
        "machine.cord": "Cord",
        "machine.cord-lost": "Volts lost in the cord",
        "machine.generator": "Generator",
    }
)
"""Texts by id."""
