"""English of room ``passes``: the pass plan."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Plural, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "passes.beads": Plural("Bead {beads:runs}", "Beads {beads:runs}"),
        "passes.put-in": Plural("{beads} puts in {heat}.", "{beads} put in {heat}."),
        "passes.count": Plural("1 pass", "{count} passes"),
        "passes.hold": Plural("One pass holds", "{count} passes hold"),
        "passes.you-asked": "you asked for it",
        "passes.spray-too-light": "spray has no window for beads this light",
        "passes.root-refused": "Root: {why}.",
        "passes.fill-refused": "Fill: {why}.",
        "passes.cap-refused": "Cap: {why}.",
        "passes.back-refused": (
            "Second side: {why}; and short circuit may not fuse in a gouged groove. Pulse it in a "
            "gas that pulses, use flux-cored wire, or turn the joint flat and spray it."
        ),
        "passes.short-asked": "you asked for short circuit",
        "passes.gouge-not-shorted": "short circuit may not fuse in a gouged groove",
        "passes.back-in-mode": (
            "Second side in {mode}: {why}. Without a pulse machine use flux-cored wire, or turn "
            "the joint flat and spray it."
        ),
        "passes.two-limits-fight": "{beads}: two limits conflict: {low}; but {high}.",
        "passes.root-beside": (
            "{beads} lie side by side over an open root: one bead has to bridge it from edge to "
            "edge. Ask for fewer passes, close the root opening to 1/16 in, or weld it from one "
            "side on a backing."
        ),
        "passes.too-large": (
            "{beads}: larger, thicker or wider than one bead may be {orientation}. Ask for more "
            "passes."
        ),
        "passes.short-too-thick": (
            "{beads}: in short circuit thicker than {most}, over which it may not fuse. Ask for "
            "more passes."
        ),
        "passes.travel-too-slow": (
            "{beads}: travel speed is slower than the {travel} {mover} holds {orientation}. Ask "
            "for more passes, or more feed."
        ),
        "passes.travel-too-fast": (
            "{beads}: travel speed is faster than the {travel} {mover} holds {orientation}. Ask "
            "for fewer passes, or less feed."
        ),
        "passes.root-in-mode": "Root in {mode}: {why}.",
        "passes.gouge-before": (
            "Before bead {bead} turn the part and gouge the root to sound metal, about {depth} "
            "deep from the back of the root. Gouging throws molten metal and is loud: leathers, "
            "ear plugs, a fire watch. The metal cut out is counted as laid again; the time to "
            "gouge is not counted."
        ),
        "passes.of-beads": "{beads}: {told}",
        "passes.below-window": "{beads}: {setting} {value:bare} is below {edge}: {why}.",
        "passes.above-window": "{beads}: {setting} {value:bare} is above {edge}: {why}.",
        "passes.below-window-planned": (
            "{beads}: {setting} {value:bare} is below {edge}: {why}. Planned at {planned}."
        ),
        "passes.above-window-planned": (
            "{beads}: {setting} {value:bare} is above {edge}: {why}. Planned at {planned}."
        ),
        "passes.mover-holds": "what {mover} holds {orientation}",
        "passes.feed-by-hand-fills": "your {feed} of wire fills the bead at that travel speed",
        "passes.travel-wants-feed": "it needs {feed} of wire, and {why}",
        "passes.root-wants-backing": "{kind} wire does not hold an open root; weld it on a backing",
        "passes.spray-root-falls": (
            "spray falls through an open root; run it in short circuit or pulse, or weld on a "
            "backing"
        ),
        "passes.root-not-bridged": "faster than {travel} the bead misses the edges of an open root",
        "passes.fewest": "Fewest",
        "passes.stringers": "Stringers",
        "passes.chip-and-brush": (
            "Chip the slag and brush each bead bright before the next, and let it cool below your "
            "interpass limit."
        ),
        "passes.brush": (
            "Brush each bead bright before the next, and let it cool below your interpass limit."
        ),
        "passes.fight": "{low:capital}; but {high}.",
    }
)
"""Texts by id."""
