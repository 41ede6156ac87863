"""English of room ``heating``: preheat, cooling and distortion."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Rounded, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "heating.steel-unknown": (
            "Steel not known: do not guess a preheat. Find the certificate, have the steel "
            "analyzed, or weld a test piece and break it."
        ),
        "heating.no-grade": (
            "Grade not known: only EN 1011-2 answers. Pick the grade on the certificate to read "
            "the prequalified table of AWS D1.1 too."
        ),
        "heating.not-in-table": (
            "{steel} is not in the prequalified table of AWS D1.1: only EN 1011-2 answers."
        ),
        "heating.off-grade": (
            "{why:capital}. The prequalified table is not read: find out which steel it is."
        ),
        "heating.off-grade-element": (
            "the certificate does not fit {steel}: {element} {share:.4g} %, at this thickness at "
            "most {most:g} %"
        ),
        "heating.off-grade-manganese": (
            "the certificate does not fit {steel}: Mn {share:.4g} %, at this thickness and carbon "
            "at most {most:.4g} %"
        ),
        "heating.certificate-fits": (
            "C, Mn, alloys and CE on the certificate fit {steel} at this thickness; the rest is "
            "not checked. D1.1 goes by the grade, the other ways by the certificate."
        ),
        "heating.off-grade-ce": (
            "the certificate does not fit {steel}: CE(IIW) {ce:.2f}, at this thickness at most "
            "{most:.2f}"
        ),
        "heating.grade-too-thick": (
            "{steel} is listed here only to {most}: check the grade. The limits for that "
            "thickness are used."
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
        "heating.none-by-method-a": (
            "No preheat by EN 1011-2 method A: {why}. Use another method, or prove the preheat by "
            "a weld test."
        ),
        "heating.method-a-curve": (
            "Table C.1 does not settle it; read Figure C.2 for CE {ce:.2f}, hydrogen scale "
            "{scale}, {combined} combined, {heat}"
        ),
        "heating.method-b-asks-more": (
            "EN 1011-2 method B asks {asks} for this steel, hydrogen and heat, more than the "
            "table's {least}. The table is a minimum: a stiff joint or a rich steel may need more."
        ),
        "heating.table-asks-more": (
            "AWS D1.1's table asks {asks}, more than the method used here: on work to D1.1 use "
            "the table."
        ),
        "heating.short-not-prequalified": (
            "Short circuit is not prequalified in AWS D1.1, whatever its preheat table says: the "
            "procedure qualified by test sets the preheat."
        ),
        "heating.short-root-not-prequalified": (
            "The root is planned in short circuit, for its root opening of {gap}: not "
            "prequalified in AWS D1.1. The procedure qualified by test sets the preheat."
        ),
        "heating.ce-past-carbon": (
            "CE(IIW) {ce:.2f} is for C up to {most:g} %, this steel has {share:.4g} %: do not use "
            "it for preheat."
        ),
        "heating.usual-melt": (
            "Figured for a typical analysis of {steel}. At the limits of its standard, method B "
            "asks {asks}: go by the mill certificate."
        ),
        "heating.usual-melt-refused": (
            "Figured for a typical analysis of {steel}. At the limits of its standard, method B "
            "has no answer ({why}): go by the mill certificate."
        ),
        "heating.hardens": (
            "CE {ce:.2f}: this steel hardens. Dry wire and plate, no short tacks, no arc strikes "
            "beside the joint, cool slowly."
        ),
        "heating.too-cold": "{start} is too cold: preheat to {asked}.",
        "heating.too-hot": "{start} is too hot: wait until it is under {most}.",
        "heating.preheat-over-interpass": (
            "The preheat needed is over the highest interpass temperature, {most}: go by a "
            "qualified procedure."
        ),
        "heating.cold-plate": (
            "Below {cold}: warm it to {warm} and hold it there. Wipe off moisture."
        ),
        "heating.cool-plate": (
            "Keep to {least} in the shop too: warm colder steel to it before welding and hold it; "
            "below {cold}, warm it to {warm}. Wipe off moisture."
        ),
        "heating.heat-through": Rounded(
            us=(
                "Heat it through, at least 3 in each way from the weld, or the plate's thickness "
                "if more. Measure there, away from the flame; hold it until the last pass."
            ),
            si=(
                "Heat it through, at least 75 mm each way from the weld, or the plate's thickness "
                "if more. Measure there, away from the flame; hold it until the last pass."
            ),
        ),
        "heating.heat-through-en": Rounded(
            us=(
                "Heat it through. To 2 in thick, measure four times the thickness from the edges "
                "to be welded, at most 2 in from them; over that, at least 3 in. Measure away from "
                "the flame; hold it until the last pass."
            ),
            si=(
                "Heat it through. To 50 mm thick, measure four times the thickness from the edges "
                "to be welded, at most 50 mm from them; over that, at least 75 mm. Measure away "
                "from the flame; hold it until the last pass."
            ),
        ),
        "heating.torch-eats-air": (
            "A heating flame uses up the air in a tank, pit or closed room: ventilate, test the "
            "air, post a watch."
        ),
        "heating.too-hard": (
            "Peak HAZ hardness about {hardness:.0f} HV, over {most:.0f}: preheat more, or put in "
            "more heat, and test it."
        ),
        "heating.no-heat": (
            "No setting fits this job, so there is no heat input to use: preheat by method B is "
            "for the lowest heat it covers. Fix Dial in first, or type the heat input."
        ),
        "heating.method-b-counted": "Method B: {counted}.",
        "heating.sheet": Rounded(
            us="AWS D1.1 does not cover plate under 1/8 in: sheet to 3/16 in is under AWS D1.3.",
            si="AWS D1.1 does not cover plate under 3 mm: sheet to 5 mm is under AWS D1.3.",
        ),
        "heating.sheet-row-read": Rounded(
            us=(
                "AWS D1.1 does not cover plate under 1/8 in: sheet to 3/16 in is under AWS D1.3. "
                "The table's first row is used in its place; the written procedure rules."
            ),
            si=(
                "AWS D1.1 does not cover plate under 3 mm: sheet to 5 mm is under AWS D1.3. The "
                "table's first row is used in its place; the written procedure rules."
            ),
        ),
        "heating.procedure-rules": (
            "Structures, pressure, lifting gear: go by the written, qualified procedure and the "
            "people licensed to sign it, not by this page."
        ),
        "heating.strip-coating": (
            "Galvanized or painted: strip it well back from the weld on every face the heat "
            "reaches. Zinc fume is poisonous and zinc cracks the weld."
        ),
        "heating.forms-differ": (
            "Published formulas differ by a factor of two or more. Weld one part, measure it, "
            "then set the fixture."
        ),
        "heating.free-to-move": (
            "For a part free to move. Clamps cut the distortion and leave stress instead."
        ),
        "heating.forms-without-heat": (
            "No setting fits this job, so formulas that need the heat input are left out."
        ),
        "heating.no-angle-form": (
            "No published formula here for angular distortion of this joint. Preset it, or turn "
            "it over."
        ),
        "heating.no-form-at-all": (
            "No published formula here for distortion by a plug or slot. Weld one and measure."
        ),
        "heating.aws-handbook": "AWS Welding Handbook",
        "heating.shop-allowance": "shop allowance",
        "heating.spraragen-ettinger": "Spraragen and Ettinger",
        "heating.blodgett": "Blodgett",
        "heating.tendon-force": "tendon force",
        "heating.guyot": "Guyot",
        "heating.king": "King",
        "heating.stiffness-not-written": "type the part's stiffness sideways to get this",
        "heating.no-form": "no published formula for this joint",
        "heating.sheet-buckles": "sheet buckles in waves, no published formula here",
        "heating.no-such-steel": (
            "{element} {share:.4g} % is outside {low:g} to {high:g} %, the range of {formula}"
        ),
        "heating.element-counted": "{element} taken as {least:g} %, the lowest in method B",
        "heating.cet-counted": "CET {cet:.3f} taken as {least:g}, the lowest in method B",
        "heating.cet-over": "CET {cet:.3f} is over {most:g}, the highest in method B",
        "heating.thickness-counted": (
            "thinner than {least}, taken as {least}, the lowest in method B"
        ),
        "heating.heat-counted": "heat over {most} taken as {most}, the highest in method B",
        "heating.heat-under-range": (
            "heat under {least} is below the range of method B; the same line is used"
        ),
        "heating.element-outside": "{element} {share:.4g} % is outside {low:g} to {high:g} %",
        "heating.cooling-outside": "{seconds:.3g} s of cooling is outside {low:g} to {high:g} s",
        "heating.no-analysis-no-hardness": "no analysis, no hardness",
        "heating.sheet-no-hardness": "sheet, the formulas are for beads on plate",
        "heating.no-cooling-no-hardness": "no cooling time, no hardness",
    }
)
"""Texts by id."""
