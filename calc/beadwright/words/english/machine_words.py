"""English of room ``machine``: power source and circuit."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Rounded, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "machine.duty-rule": Rounded(
            us=(
                "The duty cycle formula is off by up to a tenth; go by the rating plate. Plates "
                "are tested at 104 °F."
            ),
            si=(
                "The duty cycle formula is off by up to a tenth; go by the rating plate. Plates "
                "are tested at 40 °C."
            ),
        ),
        "machine.electrician": (
            "Wiring, breakers and grounding belong to a licensed electrician and the local code."
        ),
        "machine.demo-stands-in": (
            "From the demonstration shop's machine: {keys:, }. Type your own."
        ),
        "machine.demo-stands-in-marked": "From the demonstration shop: {names}. Type your own.",
        "machine.duty-in-ten": "At {current}: {on} on, {off:bare} off, in ten.",
        "machine.weld-outlasts-duty": (
            "At {current}: {on} on, {off:bare} off, in ten. One weld runs {longest} without a "
            "break: weld it in pieces, or with less current."
        ),
        "machine.share-held": (
            "The arc is on {share:.0%} of the time, the machine allows {duty:.0%}."
        ),
        "machine.share-over": (
            "The arc is on {share:.0%} of the time, the machine allows {duty:.0%} here: it will "
            "cut out. It runs all day at {all_day}."
        ),
        "machine.gives-current": "The machine gives the current.",
        "machine.stops-short": (
            "The job needs {wants}, the machine stops at {most}: use a thinner wire, less feed or "
            "another machine."
        ),
        "machine.over-rated": (
            "The job needs {wants}, over the rated {rated}: check the rating plate whether the "
            "machine gives it, and for how long."
        ),
        "machine.leads-hold": (
            "{lost} lost in {cable}: set {machine} at the machine for {arc} at the arc."
        ),
        "machine.leads-lose": (
            "{lost} lost in {cable}: set {machine} at the machine for {arc} at the arc. Over 4 V: "
            "use shorter or thicker leads."
        ),
        "machine.cord-carries": (
            "{cord} carries {most} on {phases:.0f} phase; this job heats it like {asked}."
        ),
        "machine.cord-too-thin": (
            "{cord} carries {most} on {phases:.0f} phase; this job heats it like {asked}: use a "
            "thicker cord."
        ),
        "machine.breaker-holds": "{drawn} drawn, {breaker} breaker.",
        "machine.breaker-overheats": (
            "{drawn} drawn, {breaker} breaker. Even on and off it heats like {heats_like}: it "
            "will trip. How soon depends on the breaker. Use less current or a larger circuit."
        ),
        "machine.breaker-trips": (
            "{drawn} drawn, {breaker} breaker: {share:.0%} of its rating. It will trip: over 135% "
            "it has to, at twice its rating within {twice:.0f}; how soon depends on the breaker "
            "and how warm it is. Use less current or a larger circuit."
        ),
        "machine.long-weld-trips": (
            "{drawn} drawn, {breaker} breaker: {share:.0%} of its rating. Short welds with pauses "
            "are fine, they heat it like {heats_like}; a long weld trips it. At 135% it has to "
            "trip within {hours:.0f}, often sooner."
        ),
        "machine.cord-drop": "{lost} of {supply:.0f} lost in the cord.",
        "machine.cord-drop-soft-arc": (
            "{lost} of {supply:.0f} lost in the cord. The arc goes soft: use a shorter or thicker "
            "cord."
        ),
        "machine.generator-holds": (
            "{drawn:bare .1f} kVA while the arc burns, about {start:bare .1f} at each start; the "
            "generator gives {gives:bare .1f}."
        ),
        "machine.generator-stalls": (
            "{drawn:bare .1f} kVA while the arc burns, about {start:bare .1f} at each start; the "
            "generator gives {gives:bare .1f}. It stalls: use less current or a larger generator."
        ),
        "machine.generator-close": (
            "{drawn:bare .1f} kVA while the arc burns, about {start:bare .1f} at each start; the "
            "generator gives {gives:bare .1f}. The starts pull it down: allow a third more than "
            "the arc takes."
        ),
        "machine.generator-mind": (
            "Run the generator outdoors: its exhaust kills in closed rooms. Full speed before the "
            "first arc, nothing else on it. Go by its running watts, not the starting watts; a "
            "single-phase machine gets only part of a three-phase rating. Check the machine's "
            "manual for generator use."
        ),
        "machine.plate-rules-circuit": (
            "Size a circuit, cord or generator by this machine's rating plate, not by this job: "
            "at its rated {rated} it draws about {primary}, heating like {heats_like} at its "
            "{duty:.0%} ({volt_amps:bare .1f} kVA). This job draws {drawn}."
        ),
        "machine.feed-down": "Less feed: {feed}",
        "machine.wire-and-feed": "{size} wire at {feed}",
        "machine.shorter-cord": "A cord of {length} at the most",
        "machine.thicker-cord": "A {cord} cord",
        "machine.in-pieces": "Weld it in {pieces:.0f} pieces, with a rest between",
        "machine.rest-more": "Rest more: arc on {share:.0%} of the time",
        "machine.larger-circuit": "A {breaker} circuit, by an electrician",
        "machine.larger-generator": "A generator of {gives:bare .0f} kVA",
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
