"""English of room ``heating``: preheat, cooling and distortion."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Rounded, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "heating.steel-unknown": (
            "Steel not known: do not guess a preheat. Find the certificate, have it analyzed, or "
            "weld a test piece and break it."
        ),
        "heating.no-grade": (
            "Grade not known: only EN 1011-2 answers. Choose the grade on the certificate and AWS "
            "D1.1's prequalified table is read too."
        ),
        "heating.not-in-table": (
            "{steel} is not in the prequalified table of AWS D1.1: only EN 1011-2 answers."
        ),
        "heating.off-grade": (
            "{why:capital}. The prequalified table is not read for it: find out what steel it is."
        ),
        "heating.off-grade-element": (
            "the certificate is not of {steel}: {element} {share:.4g} %, at this thickness at most "
            "{most:g} %"
        ),
        "heating.off-grade-manganese": (
            "the certificate is not of {steel}: Mn {share:.4g} %, at this thickness and carbon at "
            "most {most:.4g} %"
        ),
        "heating.certificate-fits": (
            "By C, Mn, alloys and CE the certificate is within {steel} at this thickness; the rest "
            "is not checked. D1.1 goes by the grade, the other ways by the certificate."
        ),
        "heating.off-grade-ce": (
            "the certificate is not of {steel}: CE(IIW) {ce:.2f}, at this thickness at most "
            "{most:.2f}"
        ),
        "heating.grade-too-thick": (
            "{steel} is listed here to {most} only: check the grade. The limits of that thickness "
            "are counted."
        ),
        "heating.table-lists-not": "its table does not list {steel}",
        "heating.table-wants-a-grade": "its table goes by the grade, and none is given",
        "heating.no-analysis-no-preheat": "no analysis, no preheat",
        "heating.none-by-table": (
            "No preheat by AWS D1.1: {why}. Qualify the procedure by test, or preheat by another "
            "code if the work allows it."
        ),
        "heating.none-by-method-b": (
            "No preheat by EN 1011-2 method B: {why}. Prove the preheat by a weld test."
        ),
        "heating.none-by-method-a": "No preheat by EN 1011-2 method A: {why}.",
        "heating.method-a-curve": (
            "Table C.1 does not settle it; read Figure C.2 for CE {ce:.2f}, hydrogen scale "
            "{scale}, {combined} combined, {heat}"
        ),
        "heating.method-b-asks-more": (
            "EN 1011-2 method B asks {asks} for this melt, hydrogen and heat, more than the "
            "table's {least}. The table is a least: a stiff joint or a rich melt may need more."
        ),
        "heating.table-asks-more": (
            "AWS D1.1's table asks {asks}, more than the method that rules here: on work to D1.1 "
            "the table rules."
        ),
        "heating.short-not-prequalified": (
            "Short circuit is not prequalified in AWS D1.1, and its preheat table does not make it "
            "so: the procedure qualified by test sets the preheat."
        ),
        "heating.short-root-not-prequalified": (
            "The root is planned in short circuit, for its open gap of {gap}: not prequalified in "
            "AWS D1.1. The procedure qualified by test sets the preheat."
        ),
        "heating.ce-past-carbon": (
            "CE(IIW) {ce:.2f} is for C to {most:g} %, this steel has {share:.4g} %: take no "
            "preheat from it."
        ),
        "heating.usual-melt": (
            "A usual melt of {steel} is counted. At the limits of its standard method B asks "
            "{asks}: go by the mill certificate."
        ),
        "heating.usual-melt-refused": (
            "A usual melt of {steel} is counted. At the limits of its standard method B has no "
            "answer ({why}): go by the mill certificate."
        ),
        "heating.hardens": (
            "CE {ce:.2f}: it hardens. Dry wire and plate, no short tacks, no arc strikes beside "
            "the joint, cool slowly."
        ),
        "heating.too-cold": "{start} is too cold: preheat to {asked}.",
        "heating.too-hot": "{start} is too hot: wait until it is under {most}.",
        "heating.preheat-over-interpass": (
            "The preheat needed is over the highest interpass temperature, {most}: a qualified "
            "procedure must settle this."
        ),
        "heating.cold-plate": (
            "Below {cold}: warm it to {warm} and hold it there. Wipe off the damp."
        ),
        "heating.cool-plate": (
            "{least} is a rule in the shop too: steel colder than that is warmed to it before the "
            "arc and held, below {cold} to {warm}. Wipe off the damp."
        ),
        "heating.heat-through": Rounded(
            us=(
                "Heat through, at least 3 in each way from the weld or the plate's thickness if "
                "more. Measure there, away from the flame; hold until the last pass."
            ),
            si=(
                "Heat through, at least 75 mm each way from the weld or the plate's thickness if "
                "more. Measure there, away from the flame; hold until the last pass."
            ),
        ),
        "heating.torch-eats-air": (
            "A torch in a tank, pit or closed room eats the air: ventilate, test, post a watch."
        ),
        "heating.too-hard": (
            "About {hardness:.0f} HV beside the bead, over {most:.0f}: preheat more, or lay more "
            "heat, and test it."
        ),
        "heating.no-heat": (
            "No setting holds this job, so there is no heat to count: preheat by method B is for "
            "the least heat it knows. Put Dial in right first, or write the heat."
        ),
        "heating.method-b-counted": "Method B: {counted}.",
        "heating.sheet": Rounded(
            us="Under 1/8 in AWS D1.1 does not rule: sheet to 3/16 in is under AWS D1.3.",
            si="Under 3 mm AWS D1.1 does not rule: sheet to 5 mm is under AWS D1.3.",
        ),
        "heating.sheet-row-read": Rounded(
            us=(
                "Under 1/8 in AWS D1.1 does not rule: sheet to 3/16 in is under AWS D1.3. The "
                "table's first row is read in its place; the written procedure rules."
            ),
            si=(
                "Under 3 mm AWS D1.1 does not rule: sheet to 5 mm is under AWS D1.3. The table's "
                "first row is read in its place; the written procedure rules."
            ),
        ),
        "heating.procedure-rules": (
            "Structure, pressure, lifting gear: the written, qualified procedure rules, not this "
            "page, and who is licensed to sign it."
        ),
        "heating.strip-coating": (
            "Galvanized or painted: strip it well back from the weld on every face the heat "
            "reaches. Zinc fume poisons and zinc cracks the weld."
        ),
        "heating.forms-differ": (
            "Published forms differ by two and more. Weld one part, measure it, then set the jig."
        ),
        "heating.free-to-move": (
            "Counted for a part free to move. Clamps cut the bow and leave stress in its place."
        ),
        "heating.forms-without-heat": (
            "No setting holds this job, so the forms that go by heat are left out."
        ),
        "heating.no-angle-form": (
            "No published form here for the angle of this joint. Preset it, or turn it over."
        ),
        "heating.no-form-at-all": (
            "No published form here for what a plug or slot does to its part. Weld one and measure."
        ),
        "heating.aws-handbook": "AWS Welding Handbook",
        "heating.shop-allowance": "shop allowance",
        "heating.spraragen-ettinger": "Spraragen and Ettinger",
        "heating.blodgett": "Blodgett",
        "heating.tendon-force": "tendon force",
        "heating.guyot": "Guyot",
        "heating.king": "King",
        "heating.stiffness-not-written": "the part's stiffness sideways is not written",
        "heating.no-form": "no published form for this joint",
        "heating.sheet-buckles": "sheet buckles in waves, no published form here",
        "heating.no-such-steel": (
            "{element} {share:.4g} % is outside {low:g} to {high:g} %: {formula} is for no such "
            "steel"
        ),
        "heating.element-counted": "{element} counted as {least:g} %, the least method B knows",
        "heating.cet-counted": "CET {cet:.3f} counted as {least:g}, the least method B knows",
        "heating.cet-over": "CET {cet:.3f} is over {most:g}, the most of method B",
        "heating.thickness-counted": (
            "thinner than {least} counted as {least}, the least method B knows"
        ),
        "heating.heat-counted": "heat over {most} counted as {most}, the most method B knows",
        "heating.heat-under-range": (
            "heat under {least} is less than method B was tried on; same line taken"
        ),
        "heating.element-outside": "{element} {share:.4g} % is outside {low:g} to {high:g} %",
        "heating.cooling-outside": "{seconds:.3g} s of cooling is outside {low:g} to {high:g} s",
        "heating.no-analysis-no-hardness": "no analysis, no hardness",
        "heating.sheet-no-hardness": "sheet, the formulas are for beads on plate",
        "heating.no-cooling-no-hardness": "no cooling time, no hardness",
    }
)
"""Texts by id."""
