"""English of room ``inspection``: a weld measured, judged and mended."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Plural, Rounded, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        # What is judged.
        "inspection.crack": "crack",
        "inspection.fusion": "metal not fused",
        "inspection.leg": "leg on the bottom plate",
        "inspection.leg2": "leg up the other plate",
        "inspection.throat": "throat",
        "inspection.throat-over": "throat over size",
        "inspection.asymmetry": "difference of the legs",
        "inspection.convexity": "crown",
        "inspection.reinforcement": "crown of the groove",
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
        "inspection.gap": "gap at the root",
        # What a limit hangs on.
        "inspection.tenth-may-lack": "Lower over no more than a tenth of the length.",
        "inspection.deeper-if-short": (
            "On plate under 1 in, 1/16 in deep passes over no more than 2 in of any 12 in."
        ),
        "inspection.across-the-pull": "Weld across the pull in a primary member.",
        "inspection.crater-to-size": "Filled to the size asked for.",
        "inspection.none-across": "Butt welded through, across the pull: none that is seen.",
        "inspection.short-only": (
            "Short ones only: to 25 mm in any 100 mm, a quarter of a shorter weld. Say how long."
        ),
        # What mends the size.
        "inspection.metal-in-crown": (
            "There is metal enough: it stands in the crown. Wet it out first: a little more volts, "
            "gun pushed."
        ),
        "inspection.metal-in-one-leg": (
            "There is metal enough: it lies on the other plate. Turn the gun toward the short "
            "one first, the {leg}."
        ),
        "inspection.travel-stops-low": "Slower travel is out: {why}.",
        "inspection.travel-stops-high": "Faster travel is out: {why}.",
        "inspection.feed-stops-high": "More feed at that travel is out: {why}.",
        "inspection.feed-stops-low": "Less feed at that travel is out: {why}.",
        "inspection.too-few-passes": Plural(
            "One pass here lays no such joint: it wants {least}.",
            "{count} passes here lay no such joint: it wants {least}.",
        ),
        "inspection.feed-fights": "No feed at that travel holds: {why}.",
        # Notes.
        "inspection.never-over-a-crack": (
            "A crack: stop. Never weld over it. Mark it, tell whoever answers for the weld, find "
            "out why it cracked before anybody repairs it."
        ),
        "inspection.more-than-sums": "more",
        "inspection.less-than-sums": "less",
        "inspection.sums-differ": (
            "The weld measured holds {share:.2f} × the metal these settings lay by our sums, much "
            "{more}. Check the feed and travel used and the gauge before you turn a setting."
        ),
        "inspection.sums-differ-last": (
            "With all that stands over the face counted to it, the last bead holds {share:.2f} × "
            "the metal these settings lay by our sums, much {more}. Check the feed and travel used "
            "and the gauge before you turn a setting."
        ),
        "inspection.travel-unlikely": (
            "By our sums this weld was laid at {travel}, which nobody holds: the feed was not what "
            "is counted here, or the reading is off. Type the feed and the travel used."
        ),
        "inspection.one-leg": "One leg measured: the other is counted in proportion. Measure both.",
        "inspection.no-leg-here": "This joint has no fillet: legs and throat are not judged.",
        "inspection.counted-across": (
            "Counted as lying across the pull, the strict case. Say no if it does not."
        ),
        "inspection.stiffeners": (
            "Fillets from stiffener to web have their own rule for pores, and the last bit of a "
            "girder's flange weld may not be short: look it up."
        ),
        "inspection.sheet-code": Rounded(
            us=(
                "Under 1/8 in AWS D1.1 does not rule: structural sheet to 3/16 in is under AWS "
                "D1.3, which has limits of its own. Those here are of AWS D1.1."
            ),
            si=(
                "Under 3 mm AWS D1.1 does not rule: structural sheet to 5 mm is under AWS D1.3, "
                "which has limits of its own. Those here are of AWS D1.1."
            ),
        ),
        "inspection.eye-only": (
            "By eye and gauge only. What lies inside, and what the drawing, the contract and the "
            "code in force ask besides, is not seen here. The inspector decides."
        ),
        "inspection.wait-to-look": (
            "Look when cold. Quenched and tempered high-strength plate: 48 hours after welding."
        ),
        # Repair.
        "inspection.repair-crack": (
            "Crack: find both ends by magnetic powder, dye or etching; take it out with 2 in (50 "
            "mm) of sound metal past each end; reweld by an approved repair procedure, and test "
            "again. The engineer agrees first to the repair of a large or late crack."
        ),
        "inspection.repair-remove": (
            "Too much metal or overlap: grind it off to a smooth run into the plate. No notch, no "
            "grinding into the plate."
        ),
        "inspection.repair-add": (
            "Too little metal, undercut or open crater: clean to bright metal and add a run, no "
            "smaller than the procedure allows on cold plate; preheat as for the weld."
        ),
        "inspection.repair-cut-out": (
            "Pores or metal not fused: gouge or grind it out to sound metal, look that none is "
            "left, reweld."
        ),
        "inspection.repair-lengthen": (
            "Too short: add the missing length, tied in over a ground end."
        ),
        "inspection.repair-ask": (
            "Gap, uneven legs or throat over size: no usual repair. Ask the engineer; often it may "
            "stay or the leg is made larger."
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
        "inspection.travel-fast": "Travel too fast",
        "inspection.travel-slow": "Travel too slow: the pool runs ahead",
        "inspection.volts-high": "Volts too high, arc too long",
        "inspection.volts-low": "Volts too low",
        "inspection.feed-high": "Too much wire",
        "inspection.feed-low": "Too little wire, too cold",
        "inspection.tip-far": "Tip too far out",
        "inspection.tip-close": "Tip too close",
        "inspection.gas-low": "Too little gas",
        "inspection.gas-high": "Too much gas: it drags air in",
        "inspection.wind": "Draft over the weld",
        "inspection.gap-wide": "Gap too wide for the plate",
        "inspection.heat-high": "More heat than the plate takes",
        "inspection.between-modes": "Between short circuit and spray",
        "inspection.cold-short": "Short circuit on plate too thick for it",
        "inspection.downhill": "Downhill: the pool runs under the arc",
        "inspection.large-leg": "Leg too large for one bead here",
        "inspection.no-pause": "No pause at the toes of the weave",
        "inspection.thick-plate": "Cold thick plate",
        "inspection.co2-rich": "Gas rich in CO2",
        "inspection.lean-wire": "Wire with little deoxidizer on scale or rust",
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
        "inspection.measure-tip": "Stop, cut nothing, measure tip to plate.",
        "inspection.flow-at-nozzle": "Read the flow at the nozzle, gas on, wire off.",
        "inspection.look-at-smoke": "Look which way the smoke goes; put up a screen.",
        "inspection.measure-gap": "Measure the gap; close it or put a backing under it.",
        "inspection.cool-between": "Let it cool, weld shorter, skip about.",
        "inspection.listen": "Listen: spray hisses, short circuit crackles, between them it pops.",
        "inspection.cut-a-coupon": "Cut and etch a coupon: is the root fused?",
        "inspection.split-passes": "Lay it in more passes.",
        "inspection.hold-at-toes": "Hold at each toe until it fills.",
        "inspection.feel-plate": "Take the plate's temperature; preheat it.",
        "inspection.read-cylinder": "Read the cylinder's label.",
        "inspection.grind-scale": "Grind a strip bright and weld across: gone there?",
        "inspection.fill-crater": "Step back into the crater and wait before you let go.",
        "inspection.straight-gun": "Lay the gun straight; look where it buckles.",
        "inspection.look-at-rolls": "Look at the wire after the rolls: knurled V, light pressure.",
        "inspection.grind-bright": "Grind to bright metal, wipe dry, try again.",
        "inspection.look-in-nozzle": "Look in, clean it, holes of the diffuser too.",
        "inspection.soap-hose": "Gas on, soap water along hose and fittings.",
        "inspection.look-at-angle": "Let somebody look from the side: aim, travel and work angle.",
        "inspection.feel-clamp": "After a bead feel the clamp and lugs: a hot one is bad.",
        "inspection.change-tip": "Fit a new tip of the wire's size.",
        "inspection.stop-wire-by-hand": (
            "Arc off: pinch the wire in gloves at the tip. The rolls should just slip."
        ),
        "inspection.ease-rolls": "Ease the rolls until they slip, then half a turn more.",
        "inspection.pull-wire": "Rolls open, pull the wire through by hand: it should run easy.",
        "inspection.turn-burnback": "Turn the burn-back time down a little.",
    }
)
"""Texts by id."""
