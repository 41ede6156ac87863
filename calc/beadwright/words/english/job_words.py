"""English of room ``job``: the job and its joint."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Plural, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "job.gouge-root": (
            "Gouge the root to sound metal from the other side, {depth} deep from the back of the "
            "root, before you weld there. Counted as a U of {radius} radius, {angle:g} between its "
            "walls; what is cut out is laid again and counted, the time of gouging is not."
        ),
        "job.slope-thicker": "Slope the thicker plate, or the weld, 1 in 2.5 down to the thinner.",
        "job.square-butt-one-side": (
            "Over about 5/32 in, a square butt from one side does not melt through for sure. Bevel "
            "it, weld it on a backing, or weld both sides: each past the middle, over {half} deep, "
            "the second after gouging to sound metal: choose that under Back of the root. This "
            "plan is laid from one side."
        ),
        "job.square-gouged": (
            "Square edges: the first side's metal is taken to be sound to the middle of the plate. "
            "It has to fuse over {reach} deep, where the gouge ends: gouge on until the metal is "
            "sound."
        ),
        "job.closed-corner-thick": (
            "Over about 5/32 in, a seam with no gap does not melt through for sure: open the "
            "corner, or bevel an edge."
        ),
        "job.square-butt-thick": (
            "No prequalified detail for gas metal arc welds a square edge over {most} thick "
            "through: bevel it."
        ),
        "job.open-root": (
            "Open root: run the root pass in short circuit or pulse; spray falls through."
        ),
        "job.no-gap-no-backing": (
            "No gap and no backing: it is not through until the back is gouged and welded."
        ),
        "job.not-as-detail": "Not as prequalified detail {detail}: {off:; }. Qualify it by test.",
        "job.as-detail": "Prepared as prequalified detail {detail}, but not for short circuit.",
        "job.detail-is-gouged": (
            "Cut as detail {detail}, which is gouged from the back. From one side it is not "
            "prequalified: complete joint penetration only after back-gouging, from a backing, or "
            "by a qualified procedure."
        ),
        "job.through-from-one-side": (
            "From one side: complete joint penetration only after back-gouging, from a backing, "
            "or by a qualified procedure."
        ),
        "job.angle-under": "groove angle {angle:g} is under {edge:g}",
        "job.angle-over": "groove angle {angle:g} is over {edge:g}",
        "job.gap-over": "gap {length} is over {edge}",
        "job.gap-under": "gap {length} is under {edge}",
        "job.root-face-over": "root face {length} is over {edge}",
        "job.root-face-under": "root face {length} is under {edge}",
        "job.cut-part-way": "Cut part way: effective throat {throat} of {depth} groove.",
        "job.throat-under-code": (
            "Throat {throat} is under the code's least of {least} for this plate: cut deeper."
        ),
        "job.not-asked": "This joint does not ask for {entries:, }: left aside.",
        "job.own-numbers": Plural(
            "Your own numbers count here, from {count} coupon.",
            "Your own numbers count here, from {count} coupons.",
        ),
        "job.own-numbers-of": Plural(
            "Your own numbers count here, from {count} coupon of {whose}.",
            "Your own numbers count here, from {count} coupons of {whose}.",
        ),
        "job.own-numbers-off": "Your own numbers are switched off: this is as published.",
        "job.corner": "corner",
        "job.skew": "skew",
        "job.leg": "leg",
        "job.leg2": "leg2",
        "job.gap": "gap",
        "job.angle": "angle",
        "job.root-face": "root face",
        "job.depth": "depth",
        "job.depth2": "depth2",
        "job.backing": "backing",
        "job.back": "back of the root",
        "job.gouge-depth": "depth of gouge",
        "job.hole": "hole",
        "job.slot-length": "slot length",
        "job.reinforcement": "reinforcement",
        "job.pitch": "pitch",
        "job.usual-leg": (
            "Leg {leg} is what a hand lays well on this plate; the code's minimum is {least}. Your "
            "drawing rules."
        ),
        "job.usual-leg-of-edge": (
            "Leg {leg} is all this edge holds; the code's minimum for the plate is {least}. Your "
            "drawing rules."
        ),
        "job.leg-under-minimum": (
            "Leg {leg} is under the code's minimum of {least} for this plate: the bead chills and "
            "may crack."
        ),
        "job.edge-melts-fill-flush": "Sheet of {sheet} melts at its edge: fill it flush, no more.",
        "job.leg-over-edge": (
            "Leg {leg} is over {most}, the most along this edge: the edge melts away and hides "
            "the size."
        ),
        "job.least-lap": "Lap the plates at least {lap}.",
        "job.not-in-one-pass": (
            "Over {leg} in one pass is not prequalified {orientation}: run {passes}."
        ),
        "job.planned-passes": "{passes} passes: one pass {orientation} is planned to {leg}.",
        "job.gap-takes-throat": "Gap over 1/16 in: weld {leg} so the throat is still there.",
        "job.skewed-tee": (
            "At {skew:g} weld {leg} along each plate; a leg gauge reads {gauge}. Check the face: "
            "{face} toe to toe."
        ),
        "job.skewed-tee-unequal": (
            "At {skew:g} weld {leg} along each plate ({leg2} up); a leg gauge reads {gauge}. "
            "Check the face: {face} toe to toe."
        ),
        "job.skew-as-square": (
            "From 80° to 100° the code sizes it like a square tee; this keeps the full throat."
        ),
        "job.square-edge-open": (
            "An edge cut square stands {gap} open on this side: bevel it to fit, or add the gap "
            "to the leg."
        ),
        "job.sharp-side": (
            "Sharp side: steer the arc into the root. Under 60° the root is lost and the code "
            "takes it off the throat."
        ),
        "job.piece-too-short": (
            "Pieces {length} long are under {least}, the least for intermittent fillets this size."
        ),
        "job.shorter-than-four-legs": (
            "Shorter than four legs, {least}: only a quarter of the length counts as leg, "
            "{counted}."
        ),
        "job.crown-over-code": "Crown {crown} is over the {most} the code accepts on this face.",
        "job.reinforcement-over-code": (
            "Reinforcement over {most} is more than the code accepts on this plate."
        ),
        "job.hole-too-small": (
            "Hole {hole} is under {least} for this plate: the wire cannot reach the root all round."
        ),
        "job.slot-too-narrow": (
            "Slot {hole} is under {least} for this plate: the wire cannot reach the root all round."
        ),
        "job.hole-too-large": "Hole {hole} is over {most}: weld a fillet round it instead.",
        "job.slot-too-wide": "Slot {hole} is over {most}: weld a fillet round it instead.",
        "job.least-fill": "Fill it at least {fill} deep.",
        "job.holes-too-close": "Centers {pitch} apart are under four times the hole, {least}.",
        "job.slots-too-close": "Centers {pitch} apart are under four times the slot, {least}.",
        "job.keep-holes-apart": (
            "Keep holes {apart} apart, center to center. Run round the foot first, then fill."
        ),
        "job.keep-slots-apart": (
            "Keep slots side by side {apart} apart, center to center. Run round the foot first, "
            "then fill."
        ),
    }
)
"""Texts by id."""
