"""English of room ``job``: the job and its joint."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Plural, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "job.gouge-root": (
            "Gouge the root to sound metal from the other side, {depth} deep from the back of the "
            "root, before you weld there. Counted as a U of {radius} radius, {angle:g} between "
            "its walls. The metal cut out is counted as laid again; the time to gouge is not "
            "counted."
        ),
        "job.slope-thicker": "Slope the thicker plate, or the weld, 1 in 2.5 down to the thinner.",
        "job.square-butt-one-side": (
            "Over about 5/32 in, a square butt welded from one side may not melt through. Bevel "
            "it, weld it on a backing, or weld both sides, each past the middle, over {half} "
            "deep, the second after gouging to sound metal: set Back of the root to Gouged. This "
            "plan is from one side."
        ),
        "job.square-gouged": (
            "Square edges: the first side is taken to be sound to the middle of the plate. It has "
            "to fuse over {reach} deep, where the gouge ends: keep gouging until the metal is "
            "sound."
        ),
        "job.closed-corner-thick": (
            "Over about 5/32 in, a seam with no root opening may not melt through: open the "
            "corner, or bevel an edge."
        ),
        "job.square-butt-thick": (
            "No prequalified detail for gas metal arc welds a square edge over {most} thick all "
            "the way through: bevel it."
        ),
        "job.open-root": (
            "Open root: run the root pass in short circuit or pulse; spray falls through."
        ),
        "job.no-gap-no-backing": (
            "No root opening and no backing: it is not welded through until the back is gouged "
            "and welded."
        ),
        "job.not-as-detail": "Off prequalified detail {detail}: {off:; }. Qualify it by test.",
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
        "job.gap-over": "root opening {length} is over {edge}",
        "job.gap-under": "root opening {length} is under {edge}",
        "job.root-face-over": "root face {length} is over {edge}",
        "job.root-face-under": "root face {length} is under {edge}",
        "job.cut-part-way": "Partial penetration: effective throat {throat} of a {depth} groove.",
        "job.throat-under-code": (
            "Throat {throat} is under the code minimum of {least} for this plate: cut deeper."
        ),
        "job.not-asked": "Not used on this joint: {entries:, }.",
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
        "job.leg2": "second leg",
        "job.gap": "root opening",
        "job.angle": "angle",
        "job.root-face": "root face",
        "job.depth": "depth",
        "job.depth2": "depth of the second side",
        "job.backing": "backing",
        "job.back": "back of the root",
        "job.gouge-depth": "depth of gouge",
        "job.hole": "hole",
        "job.slot-length": "slot length",
        "job.reinforcement": "reinforcement",
        "job.pitch": "pitch",
        "job.usual-leg": (
            "Leg {leg} is what a hand lays well on this plate; the code minimum is {least}. Go by "
            "your drawing."
        ),
        "job.usual-leg-of-edge": (
            "Leg {leg} is all this edge holds; the code minimum for the plate is {least}. Go by "
            "your drawing."
        ),
        "job.leg-under-minimum": (
            "Leg {leg} is under the code minimum of {least} for this plate: the bead chills and "
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
        "job.planned-passes": "{passes} passes: one pass {orientation} is planned up to {leg}.",
        "job.gap-takes-throat": "Root opening over 1/16 in: weld {leg} to keep the throat.",
        "job.skewed-tee": (
            "At {skew:g} weld {leg} along each plate; a leg gauge reads {gauge}. Check the face: "
            "{face} toe to toe."
        ),
        "job.skewed-tee-unequal": (
            "At {skew:g} weld {leg} along each plate ({leg2} on the vertical plate); a leg gauge "
            "reads {gauge}. Check the face: {face} toe to toe."
        ),
        "job.skew-as-square": (
            "From 80° to 100° the code sizes it like a square tee; this keeps the full throat."
        ),
        "job.square-edge-open": (
            "An edge cut square leaves a {gap} root opening on this side: bevel it to fit, or add "
            "that to the leg."
        ),
        "job.sharp-side": (
            "Sharp side: aim the arc into the root. Under 60° the root may not fuse and the code "
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
            "Hole {hole} is under {least} for this plate: the wire cannot reach all around the "
            "root."
        ),
        "job.slot-too-narrow": (
            "Slot {hole} is under {least} for this plate: the wire cannot reach all around the "
            "root."
        ),
        "job.hole-too-large": "Hole {hole} is over {most}: weld a fillet around it instead.",
        "job.slot-too-wide": "Slot {hole} is over {most}: weld a fillet around it instead.",
        "job.least-fill": "Fill it at least {fill} deep.",
        "job.holes-too-close": "Centers {pitch} apart are under four times the hole, {least}.",
        "job.slots-too-close": "Centers {pitch} apart are under four times the slot, {least}.",
        "job.keep-holes-apart": (
            "Keep holes {apart} apart, center to center. Weld around the bottom first, then fill."
        ),
        "job.keep-slots-apart": (
            "Keep slots side by side {apart} apart, center to center. Weld around the bottom "
            "first, then fill."
        ),
    }
)
"""Texts by id."""
