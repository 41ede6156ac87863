"""English of room ``strength``: what gives way and what the codes ask of a weld under load."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Rounded, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "strength.plate": "bottom plate",
        "strength.other-plate": "second plate",
        "strength.plate-yielding": "bottom plate, yielding",
        "strength.plate-tearing": "bottom plate, tearing",
        "strength.other-plate-yielding": "second plate, yielding",
        "strength.other-plate-tearing": "second plate, tearing",
        "strength.weld-at-point": "weld at point {point}",
        "strength.weld-at-worst": "weld at its worst point",
        "strength.weld-all": "weld, all of it",
        "strength.member-yielding": "{plate}, pulled: yielding over {width}",
        "strength.member-tearing": "{plate}, pulled: tearing over {width}, shear lag {lag:.2f}",
        "strength.block-shear": "{plate}, a block torn out along the welds",
        "strength.no-leg-helps": (
            "{link:capital}: {use:.0%} of what it holds. A larger leg does not help: use thicker "
            "plate, stronger steel or more weld."
        ),
        "strength.no-weld-helps": (
            "{link:capital}: {use:.0%} of what it holds. More weld does not help: use wider or "
            "thicker plate, or stronger steel."
        ),
        "strength.longer-weld-helps": (
            "{link:capital}: {use:.0%} of what it holds. A larger leg does not help: use a longer "
            "weld, wider or thicker plate, or stronger steel."
        ),
        "strength.overloaded": "{link:capital}: {use:.0%} of what it holds.",
        "strength.weakest": "Weakest of the links checked: {link}, {use:.0%} used.",
        "strength.no-fillet-holds": (
            "No fillet up to 2 in holds this. Use a longer weld, spread the welds, or use a groove."
        ),
        "strength.no-fillet-holds-so-long": (
            "No fillet up to 2 in holds this, and a longer one holds less. Use more lines of "
            "weld, or a groove."
        ),
        "strength.leg-under-least": (
            "Leg {leg} is under the code minimum of {least}: use {least} or more."
        ),
        "strength.asks-less": "Strength needs only {leg}; the code minimum here is {least}.",
        "strength.fights-edge": (
            "Two limits conflict: strength needs leg {leg}, the plate's edge allows {most}. Use "
            "more weld or thicker plate."
        ),
        "strength.not-in-one-pass": (
            "Over {leg} in one pass is not prequalified {orientation}: run more than one."
        ),
        "strength.weld-larger": "Root opening or slant: weld {leg} to keep the throat counted.",
        "strength.shorter-than-four-legs": (
            "Shorter than four legs: only {counted} of the leg counts."
        ),
        "strength.long-weld": (
            "Over 100 legs long and loaded along: its middle carries less, {counted:.0%} counts."
        ),
        "strength.take-directional": (
            "EN 1993-1-8 counts the load's direction in its directional method: pick Directional."
        ),
        "strength.no-increase": (
            "No directional increase is counted: the load misses the weld's centroid. Pick the "
            "instantaneous center, which counts it as far as the weld stretches."
        ),
        "strength.center-of-bracket": (
            "Instantaneous center out of the joint's plane, by the special case of the AISC "
            "Manual's tables: two equal lines, the load midway between them. The welds carry push "
            "as well as pull; contact between the plates is not counted."
        ),
        "strength.center-asks-less": (
            "The elastic method is the safe one here. By the instantaneous center, in the AISC "
            "Manual's case for such brackets, strength needs leg {leg}: set it under How the load "
            "spreads."
        ),
        "strength.both-lines-one-plate": "Both lines weld one plate: its thickness carries both.",
        "strength.net-tearing": "{plate}, pulled: tearing beside the hole, over {width}",
        "strength.plug-sheared": "plug, sheared where the plates meet",
        "strength.slot-sheared": "slot, sheared where the plates meet",
        "strength.groove-through": "weld through the plate, as strong as the weaker plate",
        "strength.plate-at-groove": "plate over the depth of the groove, tearing",
        "strength.hole-small": "Hole {hole}: the code asks {least} or more, to reach the root.",
        "strength.hole-large": "Hole {hole}: the code allows {most} at most. Weld a fillet in it.",
        "strength.fill-low": "Filled {fill}: the code asks {least} or more.",
        "strength.plugs-close": (
            "Closer than {least} center to center: not allowed by the code. Space them wider."
        ),
        "strength.plugs-apart": "Keep plugs {least} or more center to center.",
        "strength.slots-apart": (
            "Keep slots {least} or more center to center side by side, {far} end to end."
        ),
        "strength.plug-plates-unchecked": (
            "The plug or slot itself is checked. A plate is checked for pull only where its width "
            "is given, and beside its hole only where there is one plug. Distance from plugs to "
            "an edge is not checked."
        ),
        "strength.groove-no-increase": (
            "No directional increase across a groove: that is for fillets."
        ),
        "strength.throat-under-least": (
            "Effective throat {throat} is under the code minimum of {least}: cut it deeper."
        ),
        "strength.throat-aisc": (
            "Partial penetration: {throat} counts as throat, the depth less what a narrow bevel "
            "loses."
        ),
        "strength.throat-en": (
            "Partial penetration: {throat} counts as throat, 2 mm less than cut on each side, "
            "unless tests show more."
        ),
        "strength.square-part": (
            "Only a test shows how deep a square edge is fused: cut one and look before you count "
            "the depth."
        ),
        "strength.square-thick": (
            "No prequalified detail for gas metal arc welds a square edge over {most} thick all "
            "the way through. Bevel it, or type the depth a test has shown."
        ),
        "strength.square-thick-en": (
            "ISO 9692-1 has no square edge over {most} thick for gas metal arc. Bevel it, or type "
            "the depth a test has shown."
        ),
        "strength.groove-uneven": (
            "Sides cut to different depths: a pull in the middle of the plate bends the weld. "
            "That is not counted."
        ),
        "strength.filler-under": (
            "Filler {filler} is weaker than the plate: a weld through the plate needs a matching "
            "one. Use a stronger wire."
        ),
        "strength.groove-root": (
            "Counted as welded through. From one side: complete joint penetration only after "
            "back-gouging, from a backing, or by a qualified procedure."
        ),
        "strength.groove-gouged": (
            "Counted as welded through: true only after the first side's root is gouged to sound "
            "metal."
        ),
        "strength.butt-pull": "Type a pull from plate to plate under Pull square off the joint.",
        "strength.skew-sides": (
            "Lay {near} along the plates on the {near_deg} side, {far} on the {far_deg} side. "
            "Throats {near_throat} and {far_throat}: the lesser counts on both."
        ),
        "strength.skew-far-blank": (
            "The {far_deg} side is assumed laid {far} like the first, which leaves its throat "
            "{far_throat}. Type its own leg."
        ),
        "strength.skew-loss": (
            "Under 60° the root may not fuse: {lost} of the throat on that side does not count."
        ),
        "strength.skew-no-figure": (
            "Under 60°, vertical or overhead, D1.1 has no figure for what gas metal arc loses at "
            "the root: prove it by test, or weld flat or horizontal."
        ),
        "strength.skew-en": (
            "EN 1993-1-8 covers fillets from 60° to 120°. Prove a wider one by test; count a "
            "sharper one as a partial penetration groove."
        ),
        "strength.one-sided-pulled": (
            "Welded from one side only and pulled: the part turns about the weld and opens its "
            "root. The bending this causes is not counted here. Weld both sides, hold the part "
            "from turning and say so, or have an engineer check the bending."
        ),
        "strength.one-sided-lap": (
            "A lap with one weld across its pull opens. Weld the ends of both plates, or hold "
            "the plates together and say so."
        ),
        "strength.one-sided-across": (
            "Pushed away from its only weld, this part turns and opens the root: not counted "
            "here. Weld both sides, hold the part from turning and say so, or have an engineer "
            "check the bending."
        ),
        "strength.one-sided-unknown": (
            "Welded from one side only: where this force pulls the root open, more bending is "
            "added that is not counted here. Weld both sides, hold the part from turning and say "
            "so, or have an engineer check the bending."
        ),
        "strength.one-sided-held": (
            "Counted as held from turning about its only weld. Make sure something else holds it: "
            "the weld does not."
        ),
        "strength.not-checked": (
            "Not checked: fatigue, earthquake, plates that buckle, bend out of their plane or "
            "split through their thickness, and what is joined farther away."
        ),
        "strength.lap-plates-unchecked": (
            "The plates of this lap are checked beside the weld only. The load turns, leaves the "
            "plane, runs at a slant or is given per length: check pull, bending and tearing of "
            "both plates yourself."
        ),
        "strength.lap-width-unknown": (
            "One line of weld does not tell how wide the plates are, so they are not checked for "
            "pull. Type both widths."
        ),
        "strength.lap-width-taken": (
            "A plate with no width typed counts as wide as the welds reach, {width}. If it is "
            "wider, type the width across the pull."
        ),
        "strength.lag-one-line": (
            "There is no shear lag rule for a plate welded along one line: tearing is not "
            "checked. Weld both edges."
        ),
        "strength.lag-en": (
            "Side welds shorter than the distance between them: EN 1993-1-8 has no shear lag for "
            "them, so none is counted. BS 5950-1 does not allow them this short."
        ),
        "strength.least-lap": "Lap the plates {least} or more.",
        "strength.ends-lost": (
            "Each end of the weld is taken as not full size: {throat} of length less there. If "
            "full size to the ends, or returned around the corner, set it under Ends of the weld."
        ),
        "strength.long-lap": (
            "Over 150 throats long and loaded along: by the rule for laps its middle carries "
            "less, {counted:.0%} counts."
        ),
        "strength.lap-too-long": (
            "A weld this long holds less than a shorter one: by the clause's rule {most} holds "
            "the most with this leg. Weld shorter, or use a larger leg."
        ),
        "strength.sheet-us": Rounded(
            us=(
                "Under 1/8 in this is sheet: go by AWS D1.3 and AISI S100, which also check the "
                "sheet tearing beside the weld. AWS D1.1, whose welds AISC 360 counts, begins at "
                "1/8 in."
            ),
            si=(
                "Under 3 mm this is sheet: go by AWS D1.3 and AISI S100, which also check the "
                "sheet tearing beside the weld. AWS D1.1, whose welds AISC 360 counts, begins at "
                "3 mm."
            ),
        ),
        "strength.sheet-en": (
            "Under 4 mm go by EN 1993-1-3, for sheet. EN 1993-1-8, used here, begins at 4 mm."
        ),
        "strength.filler-over-matching": (
            "Filler of {filler} is more than one level over the {matching} that matches {steel}: "
            "AISC 360 allows one. Use a softer wire."
        ),
        "strength.shaped-tube": (
            "{steel} is counted as square or rectangular tube. Round tube is weaker: pick {other}."
        ),
        "strength.intermittent": "Or weld {segment} on {pitch} centers. Put a segment at each end.",
        "strength.intermittent-en": (
            "Or weld {segment} on {pitch} centers, no clear space wider than a quarter of the "
            "narrower plate. At each end weld three quarters of that width. Not where it rusts."
        ),
        "strength.demo-load": "The load is made up for the demonstration bracket. Type yours.",
        "strength.licensed": (
            "Structural, pressure and lifting gear: go by the written procedure, the local code "
            "and licensed people. This checks arithmetic, it is not a design."
        ),
        "strength.steady-load": (
            "Steady load only. Fatigue, shock and cold are not covered: a weld that holds once "
            "may crack in time."
        ),
        "strength.service-loads": "Loads are service loads, as they come.",
        "strength.factored-loads": (
            "Loads are factored loads: multiply them first, as 1.2 dead + 1.6 live."
        ),
        "strength.design-loads": "Loads are design values, partial factors included.",
        "strength.steel-counted": (
            "Strength is counted for {steel}. Steel without papers may be weaker or not weldable: "
            "find out before you trust it."
        ),
    }
)
"""Texts by id."""
