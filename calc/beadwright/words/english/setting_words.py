"""English of room ``setting``: limits and their windows, the plan, what opens a shut window."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Rounded, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "setting.meter-reads": "Set {meter} on your machine's meter to get {arc} at the arc.",
        "setting.any-heat": "any heat",
        "setting.more-heat-than-any-plate": "more heat than any plate takes",
        "setting.more-heat-than-this-plate": "more heat than this plate takes",
        "setting.over-your-procedure": "over your procedure's {heat}",
        "setting.under-your-procedure": "under your procedure's {heat}",
        "setting.wire-stubs": "below {current} this wire stubs",
        "setting.shorts-unevenly": "over {current} this wire no longer shorts evenly",
        "setting.drops-out-of-spray": "below {current} this wire drops out of spray",
        "setting.drops-grow-coarse": "below {current} this wire's drops grow coarse",
        "setting.still-shorts": "below {current} this wire still short circuits",
        "setting.pulse-stubs": "below {current} even pulse stubs this wire",
        "setting.usual-top": "{current} is the usual top for this wire",
        "setting.burns-through": "over {current} this plate burns through",
        "setting.pool-runs": "over {current} the puddle runs {orientation}",
        "setting.does-not-fuse": "below {current} the bead lies on the plate without fusing",
        "setting.duty-holds": ("your machine holds {most} with the arc on {share:.0%} of the time"),
        "setting.breaker-carries": "your {breaker} breaker carries the arc to {most}",
        "setting.machine-binds": (
            "{why:capital}, and that limits this plan. Without it, about {usual}. Run it as "
            "shown, or use a smaller wire or a larger machine."
        ),
        "setting.machine-stops": "your machine stops at {most}",
        "setting.machine-stops-at-volts": "your machine stops at {most:g}",
        "setting.machine-volts-carry": "your machine's {volts:g} reach no higher in {mode}",
        "setting.feeder-holds": "a usual feeder runs 50 to 800 in/min",
        "setting.mover-not-steady": "under {travel} {mover} is not steady {orientation}",
        "setting.mover-loses-joint": "over {travel} {mover} cannot follow the joint",
        "setting.less-feed-short": "at your travel speed, less feed leaves the weld short",
        "setting.more-feed-overwelds": "at your travel speed, more feed overwelds",
        "setting.volts-stub": "{volts:g} stubs",
        "setting.more-feed-stubs": "at {volts:g}, more feed stubs: {mode} needs more volts",
        "setting.volts-too-long": "{volts:g} is too long an arc",
        "setting.less-feed-too-long": "at {volts:g}, less feed makes the {mode} arc too long",
        "setting.sprays-on-volts": "over {current} this wire sprays at {volts:g}",
        "setting.less-feed-puts-in": "less feed puts in {heat}",
        "setting.more-feed-puts-in": "more feed puts in {heat}",
        "setting.stubs-below": "below it, {mode} stubs and spits at this current",
        "setting.too-long-above": "above it, the {mode} arc is too long: spatter and undercut",
        "setting.lower-volts": "lower, {why}",
        "setting.higher-volts": "higher, {why}",
        "setting.lower-volts-put-in": "lower puts in {heat}",
        "setting.higher-volts-put-in": "higher puts in {heat}",
        "setting.sprays-above": "above it, this current sprays",
        "setting.shorts-below": "below it, this current still short circuits",
        "setting.mover-holds": "what {mover} holds {orientation}",
        "setting.slower-overwelds-leg": "slower lays a leg over 1/16 in larger than asked",
        "setting.slower-heaps-crown": "slower builds the crown over 1/8 in",
        "setting.faster-leg-short": "faster leaves the leg short, even with a flat face",
        "setting.faster-half-crown": "faster leaves less than half the crown",
        "setting.slower-puts-in": "slower puts in {heat}",
        "setting.faster-puts-in": "faster puts in {heat}",
        "setting.usual-tip-range": "the usual range for this wire in {mode}",
        "setting.farther-out": "farther out, {why}",
        "setting.closer-in": "closer in, {why}",
        "setting.farther-out-puts-in": "farther out puts in {why}",
        "setting.closer-in-puts-in": "closer in puts in {why}",
        "setting.stubs-closer-in": "closer in, {mode} stubs at these volts",
        "setting.gives-way-farther-out": "farther out, the arc leaves {mode} at these volts",
        "setting.fight-burns-through-leg": (
            "Two limits conflict: a bead this size burns through this plate, but lighter beads "
            "need more travel speed than you have. Ask for a smaller leg."
        ),
        "setting.fight-burns-through-gap": (
            "Two limits conflict: a bead this size burns through this plate, but lighter beads "
            "need more travel speed than you have. Close the root opening."
        ),
        "setting.fight-hot-leg": (
            "Two limits conflict: a bead this size puts in {heat}, but lighter beads need more "
            "travel speed than you have. Ask for a smaller leg."
        ),
        "setting.fight-hot-gap": (
            "Two limits conflict: a bead this size puts in {heat}, but lighter beads need more "
            "travel speed than you have. Close the root opening."
        ),
        "setting.horizontal-groove-as-flat": (
            "No published current was found for a horizontal groove: it is planned with the "
            "current of a flat one. Run the lower half of the window, in stringers, or the puddle "
            "sags."
        ),
        "setting.fight-burns-through-root": (
            "Two limits conflict: a bead that bridges this root opening burns through this plate, "
            "but beads side by side have nothing under them. Close the root opening to 1/16 in, "
            "or weld it from one side on a backing."
        ),
        "setting.fight-hot-root": (
            "Two limits conflict: a bead that bridges this root opening puts in {heat}, but beads "
            "side by side have nothing under them. Close the root opening to 1/16 in, or weld it "
            "from one side on a backing."
        ),
        "setting.fight-cold": (
            "Two limits conflict: a bead this size puts in {heat}, but a heavier bead is more "
            "than one pass may lay. Ask for a larger leg, or a cooler procedure."
        ),
        "setting.one-mode": "this wire runs in one mode only",
        "setting.asked-for-short": "you asked for short circuit",
        "setting.asked-for-spray": "you asked for spray",
        "setting.asked-for-pulse": "you asked for pulse",
        "setting.thin-plate": "the plate is under 1/8 in",
        "setting.open-gap": "spray falls through an open root",
        "setting.wants-pulse": "{kind} wire needs pulse {orientation}",
        "setting.all-carry-spray": "wire, gas and position allow it",
        "setting.too-thick-to-short": "{why}, and the plate is too thick for short circuit",
        "setting.plate-wants-less": "this plate needs less current than spray starts at",
        "setting.mode-leaves-no-room": "{mode} has no operating window on this joint",
        "setting.wrong-gas": "Wrong gas: {why}. Change the gas or the wire.",
        "setting.not-this-wire": "Not this wire: {why}. Change the wire or the position.",
        "setting.no-spray-here": "No spray here: {why}. Set transfer to auto.",
        "setting.two-limits-fight": "Two limits conflict: {low}; but {high}.",
        "setting.root-in-one-bead": (
            "One bead has to bridge this root opening, and no settings lay it: {low}; but {high}. "
            "Close the root opening to 1/16 in, weld it on a backing, or turn the joint flat."
        ),
        "setting.side-too-small": (
            "Side {side} takes {most} of weld metal at most, and this wire lays {least} or more at "
            "the fastest travel. Take a thinner wire or a wider opening on that side."
        ),
        "setting.below-window": "{setting} {value:bare} is below {edge}: {why}.",
        "setting.above-window": "{setting} {value:bare} is above {edge}: {why}.",
        "setting.wire-feed": "Wire feed",
        "setting.volts": "Volts at the arc",
        "setting.tip-to-work": "Stickout (tip to work)",
        "setting.travel": "Travel speed",
        "setting.lays-over": (
            "This feed and travel speed lay a {laid} leg, over the {wanted} asked."
        ),
        "setting.lays-under": (
            "This feed and travel speed lay a {laid} leg, under the {wanted} asked."
        ),
        "setting.other-mode": (
            "At this setting the arc runs {mode}; the windows are for {planned}. Change volts or "
            "feed to suit."
        ),
        "setting.short-not-prequalified": (
            "Short circuit is not prequalified in AWS D1.1: for structural work, qualify the "
            "procedure by test."
        ),
        "setting.short-on-sheet": (
            "Short circuit is not prequalified in AWS D1.1, which does not cover this sheet: see "
            "AWS D1.3 for which procedures need a test."
        ),
        "setting.sheet-code": Rounded(
            us=(
                "AWS D1.1 does not cover plate under 1/8 in: structural sheet to 3/16 in is under "
                "AWS D1.3. What AWS D1.1 and AISC 360 say here is a guide only."
            ),
            si=(
                "AWS D1.1 does not cover plate under 3 mm: structural sheet to 5 mm is under AWS "
                "D1.3. What AWS D1.1 and AISC 360 say here is a guide only."
            ),
        ),
        "setting.short-root-not-prequalified": (
            "The root is planned in short circuit, which is not prequalified in AWS D1.1: for "
            "structural work, qualify the procedure by test."
        ),
        "setting.cored-root-wants-backing": (
            "{kind:capital} wire does not hold an open root: weld it on a backing. No settings "
            "here weld that root."
        ),
        "setting.gouge-not-shorted": (
            "These settings are for the first side. Short circuit may not fuse in the gouged "
            "side: pulse that side, use flux-cored wire, or turn the joint flat and spray it."
        ),
        "setting.gouge-short-asked": (
            "Short circuit may not fuse in the gouged side. Pulse it, use flux-cored wire, or "
            "turn the joint flat and spray it."
        ),
        "setting.downhill-laps-cold": (
            "Downhill short circuit on plate over 1/4 in: the puddle runs under the arc and the "
            "bead may not fuse. Weld it uphill, or cut and etch a coupon first."
        ),
        "setting.other-side": (
            "Either mode works here. {mode:capital} instead: {feed}, {volts}, about {current}"
        ),
        "setting.root-falls-through": (
            "{mode:capital} falls through an open root. Short circuit the root first, as Passes "
            "plans it, or weld it on a backing; these settings fill and cap."
        ),
        "setting.top-of-spray-gas": (
            "In {gas} spray starts anywhere from {least} up: one measurement in 80/20 needed 330 "
            "to 350 A. If it spits, use 90/10."
        ),
        "setting.short-may-not-fuse": (
            "Over 3/16 in, short circuit may lie on the plate without fusing. Cut and etch a "
            "coupon first."
        ),
        "setting.globular-spatters": (
            "Globular: expect spatter and deep, rough beads. Flat and horizontal only."
        ),
        "setting.pulse-is-a-mean": (
            "Pulse: the current is an average, and the machine sets its own volts. Heat is "
            "figured with open-arc volts: trust a power reading first."
        ),
        "setting.volts-at-the-arc": (
            "Volts are at the arc. A meter on the machine also reads the drop in cable and clamp, "
            "often 1 to 3 V."
        ),
        "setting.lean-to-thicker": "Unequal plates: point the arc at the thicker one.",
        "setting.starting-points": (
            "Starting points. Prove them on a coupon. Your written procedure, local code and "
            "licensed people overrule them."
        ),
        "setting.filter-shade": (
            "Filter shade {shade} or darker. Cover your skin. Keep your head out of the fume and "
            "pull it away; strip zinc and paint first."
        ),
        "setting.under-usual": (
            "{setting} {value:bare} is under the usual {least:bare} to {most} for this wire in "
            "{mode}. Try it on scrap first."
        ),
        "setting.over-usual": (
            "{setting} {value:bare} is over the usual {least:bare} to {most} for this wire in "
            "{mode}. Try it on scrap first."
        ),
        "setting.pulse-sets-volts": "pulse: the machine sets its own volts; trim arc length by ear",
        "setting.less-gas-lets-air-in": "less lets air in under a {nozzle} nozzle",
        "setting.more-gas-drags-air-in": "more is turbulent in a {nozzle} nozzle and pulls air in",
        "setting.close-gap": "Close the root opening to {gap}",
        "setting.back-it": "Weld it on a steel backing",
        "setting.let-transfer-follow": "Set transfer to auto",
        "setting.let-go-of-tip": "Set stickout back to auto",
        "setting.let-go-of-volts": "Set volts back to auto",
        "setting.run-mode": "Run {mode}",
        "setting.use-wire": "Use {size} wire",
        "setting.use-gas": "Use {gas} gas",
        "setting.run-uphill": "Run it uphill",
        "setting.run-downhill": "Run it downhill",
        "setting.put-torch-on": "Put the gun on {mover}",
        "setting.bigger-power-source": "Use a bigger power source",
        "setting.minimum-leg": "Weld the code's minimum leg",
        "setting.aim-split-plates": "into the root, split between the plates",
        "setting.aim-lower-plate": "on the bottom plate, washing up to the edge",
        "setting.aim-split-edges": "into the corner, split between the edges",
        "setting.aim-into-gap": "into the root opening, square to the plate",
        "setting.aim-down-middle": "down the middle of the groove",
        "setting.aim-foot-of-edge": "at the bottom of the square edge",
        "setting.aim-root-of-groove": "into the root of the groove",
        "setting.aim-round-hole": "around the bottom of the hole first, then fill inward",
        "setting.aim-round-slot": "around the bottom of the slot first, then fill inward",
        "setting.balanced": "Balanced",
        "setting.least-time": "Fastest",
        "setting.least-heat": "Coolest",
        "setting.easiest": "Easiest to run",
    }
)
"""Texts by id."""
