"""English of room ``inspection``: a weld measured, judged and mended."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Plural, Rounded, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        # What is judged.
        "inspection.crack": "crack",
        "inspection.fusion": "incomplete fusion",
        "inspection.leg": "leg on the bottom plate",
        "inspection.leg2": "leg on the vertical plate",
        "inspection.throat": "throat",
        "inspection.throat-over": "throat over size",
        "inspection.asymmetry": "difference of the legs",
        "inspection.convexity": "crown",
        "inspection.reinforcement": "reinforcement",
        "inspection.underfill": "underfill",
        "inspection.undercut": "undercut",
        "inspection.overlap": "overlap",
        "inspection.pore": "largest pore",
        "inspection.pores": "pores",
        "inspection.pores-inch": "pores added up, worst inch",
        "inspection.pores-foot": "pores added up, worst 12 in",
        "inspection.pore-count": "pores in the worst 4 in",
        "inspection.crater": "crater below the face",
        "inspection.length": "length of the weld",
        "inspection.gap": "root opening",
        # What a limit hangs on.
        "inspection.tenth-may-lack": "Undersize over no more than a tenth of the length.",
        "inspection.deeper-if-short": (
            "On plate under 1 in, 1/16 in deep is allowed over no more than 2 in of any 12 in."
        ),
        "inspection.across-the-pull": "Weld across the load in a primary member.",
        "inspection.crater-to-size": "Filled to the size asked for.",
        "inspection.none-across": "Butt welded through, across the load: no visible pore allowed.",
        "inspection.short-only": (
            "Short ones only: up to 25 mm in any 100 mm, a quarter of a shorter weld. Type how "
            "long."
        ),
        # What mends the size.
        "inspection.metal-in-crown": (
            "There is enough metal, but it stands in the crown. Wet it out first: a little more "
            "volts, push the gun."
        ),
        "inspection.metal-in-one-leg": (
            "There is enough metal, but it is on one plate. Point the gun at the short side "
            "first, the {leg}."
        ),
        "inspection.travel-stops-low": "Slower travel speed is out: {why}.",
        "inspection.travel-stops-high": "Faster travel speed is out: {why}.",
        "inspection.feed-stops-high": "More feed at that travel speed is out: {why}.",
        "inspection.feed-stops-low": "Less feed at that travel speed is out: {why}.",
        "inspection.too-few-passes": Plural(
            "One pass cannot lay this joint: it needs {least}.",
            "{count} passes cannot lay this joint: it needs {least}.",
        ),
        "inspection.feed-fights": "No feed works at that travel speed: {why}.",
        # Notes.
        "inspection.never-over-a-crack": (
            "A crack: stop. Never weld over it. Mark it, tell whoever is responsible for the "
            "weld, and find out why it cracked before anybody repairs it."
        ),
        "inspection.more-than-sums": "more",
        "inspection.less-than-sums": "less",
        "inspection.sums-differ": (
            "The weld you measured has {share:.2f} × the metal these settings should lay, much "
            "{more}. Check the feed and travel speed used, and the gauge, before you change a "
            "setting."
        ),
        "inspection.sums-differ-last": (
            "Counting all metal above the face, the last bead has {share:.2f} × the metal these "
            "settings should lay, much {more}. Check the feed and travel speed used, and the "
            "gauge, before you change a setting."
        ),
        "inspection.travel-unlikely": (
            "By the numbers this weld was laid at {travel}, faster or slower than anyone welds: "
            "the feed was different, or the reading is off. Type the feed and travel speed used."
        ),
        "inspection.one-leg": "One leg measured: the other is assumed in proportion. Measure both.",
        "inspection.no-leg-here": "This joint has no fillet: legs and throat are not judged.",
        "inspection.counted-across": (
            "Judged as lying across the load, the strict case. Tap Along if it does not."
        ),
        "inspection.stiffeners": (
            "Fillets from stiffener to web have their own rule for pores, and the end of a girder "
            "flange weld may not be short: look it up."
        ),
        "inspection.sheet-code": Rounded(
            us=(
                "AWS D1.1 does not cover plate under 1/8 in: structural sheet to 3/16 in is under "
                "AWS D1.3, which has its own limits. Those here are from AWS D1.1."
            ),
            si=(
                "AWS D1.1 does not cover plate under 3 mm: structural sheet to 5 mm is under AWS "
                "D1.3, which has its own limits. Those here are from AWS D1.1."
            ),
        ),
        "inspection.eye-only": (
            "Visual and gauge only. Flaws inside, and what the drawing, the contract and the code "
            "also ask, are not checked here. The inspector decides."
        ),
        "inspection.wait-to-look": (
            "Inspect when cold. Quenched and tempered high-strength plate: 48 hours after welding."
        ),
        # Repair.
        "inspection.repair-crack": (
            "Crack: find both ends by magnetic particle, dye or etching; remove it with 2 in (50 "
            "mm) of sound metal past each end; reweld by an approved repair procedure, and test "
            "again. Repair of a large or late crack needs the engineer's approval first."
        ),
        "inspection.repair-remove": (
            "Too much metal or overlap: grind it off, blended smoothly into the plate. No notch, "
            "no grinding into the plate."
        ),
        "inspection.repair-add": (
            "Too little metal, undercut or open crater: clean to bright metal and add a bead, no "
            "smaller than the procedure allows on cold plate; preheat as for the weld."
        ),
        "inspection.repair-cut-out": (
            "Pores or incomplete fusion: gouge or grind it out to sound metal, check that none is "
            "left, reweld."
        ),
        "inspection.repair-lengthen": "Too short: grind the end and weld on the missing length.",
        "inspection.repair-ask": (
            "Root opening, uneven legs or throat oversize: no usual repair. Ask the engineer; "
            "often it may stay, or the leg is made larger."
        ),
        # Trouble.
        "inspection.porosity": "Porosity",
        "inspection.spatter": "Spatter",
        "inspection.cold-lap": "Cold lap",
        "inspection.burn-through": "Burn-through",
        "inspection.stubbing": "Stubbing",
        "inspection.burn-back": "Burn-back",
        "inspection.ropey": "Ropey bead",
        "inspection.crater-crack": "Crater crack",
        "inspection.birds-nest": "Bird's nest",
        # Causes.
        "inspection.travel-fast": "Travel speed too fast",
        "inspection.travel-slow": "Travel speed too slow: the puddle runs ahead",
        "inspection.volts-high": "Volts too high, arc too long",
        "inspection.volts-low": "Volts too low",
        "inspection.feed-high": "Too much wire",
        "inspection.feed-low": "Too little wire, too cold",
        "inspection.tip-far": "Tip too far out",
        "inspection.tip-close": "Tip too close",
        "inspection.gas-low": "Too little gas",
        "inspection.gas-high": "Too much gas: it pulls air in",
        "inspection.wind": "Draft over the weld",
        "inspection.gap-wide": "Root opening too wide for the plate",
        "inspection.heat-high": "More heat than the plate takes",
        "inspection.between-modes": "Between short circuit and spray",
        "inspection.cold-short": "Short circuit on plate too thick for it",
        "inspection.downhill": "Downhill: the puddle runs under the arc",
        "inspection.large-leg": "Leg too large for one bead here",
        "inspection.no-pause": "No pause at the toes of the weave",
        "inspection.thick-plate": "Cold thick plate",
        "inspection.co2-rich": "Gas rich in CO2",
        "inspection.lean-wire": "Wire low in deoxidizers on scale or rust",
        "inspection.crater-open": "Crater left open",
        "inspection.thin-wire": "Thin wire buckles",
        "inspection.rolls-crush": "Rolls crush the cored wire",
        "inspection.dirt": "Rust, oil, paint or galvanizing on the plate",
        "inspection.nozzle": "Spatter in the nozzle",
        "inspection.hose": "Leak in hose or fitting, empty cylinder",
        "inspection.angle": "Gun angle or aim",
        "inspection.clamp": "Poor work clamp or cable",
        "inspection.worn-tip": "Contact tip worn, wrong size or blocked",
        "inspection.rolls-slip": "Rolls slip, wire stops",
        "inspection.rolls-tight": "Rolls too tight",
        "inspection.liner": "Liner dirty, kinked or too tight",
        "inspection.burnback-time": "Burn-back time too long",
        # Checks.
        "inspection.time-a-bead": "Time a bead between two marks.",
        "inspection.read-volts": "Read the volts while it burns, at the feeder and at the work.",
        "inspection.time-the-wire": "Run wire for 6 seconds, measure it, times 10.",
        "inspection.measure-tip": "Stop, do not cut the wire, measure tip to plate.",
        "inspection.flow-at-nozzle": "Read the flow at the nozzle, gas on, wire off.",
        "inspection.look-at-smoke": "Watch which way the smoke goes; put up a screen.",
        "inspection.measure-gap": "Measure the root opening; close it or put a backing under it.",
        "inspection.cool-between": "Let it cool, weld shorter, skip around.",
        "inspection.listen": "Listen: spray hisses, short circuit crackles, in between it pops.",
        "inspection.cut-a-coupon": "Cut and etch a coupon: is the root fused?",
        "inspection.split-passes": "Lay it in more passes.",
        "inspection.hold-at-toes": "Pause at each toe until it fills.",
        "inspection.feel-plate": "Take the plate's temperature; preheat it.",
        "inspection.read-cylinder": "Read the cylinder's label.",
        "inspection.grind-scale": "Grind a strip bright and weld across it: is it gone there?",
        "inspection.fill-crater": "Step back into the crater and wait before you let go.",
        "inspection.straight-gun": "Lay the gun straight; see where the wire buckles.",
        "inspection.look-at-rolls": "Look at the wire after the rolls: knurled V, light pressure.",
        "inspection.grind-bright": "Grind to bright metal, wipe dry, try again.",
        "inspection.look-in-nozzle": "Look in the nozzle, clean it and the diffuser holes.",
        "inspection.soap-hose": "Gas on, soap water along hose and fittings.",
        "inspection.look-at-angle": (
            "Have somebody watch from the side: aim, travel and work angle."
        ),
        "inspection.feel-clamp": "After a bead, feel the clamp and lugs: a hot one is bad.",
        "inspection.change-tip": "Fit a new tip of the wire's size.",
        "inspection.stop-wire-by-hand": (
            "Stop welding: pinch the wire in gloves at the tip. The rolls should just slip."
        ),
        "inspection.ease-rolls": "Ease the rolls until they slip, then half a turn more.",
        "inspection.pull-wire": "Rolls open, pull the wire through by hand: it should pull easily.",
        "inspection.turn-burnback": "Turn the burn-back time down a little.",
    }
)
"""Texts by id."""
