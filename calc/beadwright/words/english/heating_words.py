"""English of room ``heating``: preheat, cooling and distortion."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Rounded, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "heating.steel-unknown": (
            "Steel not known: do not guess a preheat. Find the certificate, have it analysed, or "
            "weld a test piece and break it."
        ),
        "heating.no-grade": (
            "No grade given: only method B answers. Give the grade too and the prequalified table "
            "is read as well."
        ),
        "heating.not-in-table": (
            "{steel} is not in the prequalified table: only method B answers."
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
        "heating.thinner-than-table": (
            "The prequalified table begins at 1/8 in; its first row is read."
        ),
        "heating.procedure-rules": (
            "Structure, pressure, lifting gear: the written, qualified procedure rules, not this "
            "page, and who is licensed to sign it."
        ),
        "heating.strip-coating": (
            "Galvanised or painted: strip it well back from the weld on every face the heat "
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
        "heating.aws-handbook": "AWS Welding Handbook",
        "heating.shop-allowance": "shop allowance",
        "heating.spraragen-ettinger": "Spraragen and Ettinger",
        "heating.blodgett": "Blodgett",
        "heating.tendon-force": "tendon force",
        "heating.guyot": "Guyot",
        "heating.king": "King",
        "heating.stiffness-not-written": "the part's stiffness sideways is not written",
        "heating.no-form": "no published form for this joint",
        "heating.no-such-steel": (
            "{element} {share:.4g} % is outside {low:g} to {high:g} %: {formula} is for no such "
            "steel"
        ),
        "heating.element-counted": "{element} counted as {least:g} %, the least method B knows",
        "heating.cet-counted": "CET {cet:.3f} counted as {least:g}, the least method B knows",
        "heating.cet-over": "CET {cet:.3f} is over {most:g}, the most of method B",
        "heating.thickness-counted": (
            "thinner than 10 mm counted as 10 mm, the least method B knows"
        ),
        "heating.heat-counted": "heat over 4 kJ/mm counted as 4 kJ/mm, the most method B knows",
        "heating.heat-under-range": (
            "heat under 0.5 kJ/mm is less than method B was tried on; same line taken"
        ),
        "heating.element-outside": "{element} {share:.4g} % is outside {low:g} to {high:g} %",
        "heating.cooling-outside": "{seconds:.3g} s of cooling is outside {low:g} to {high:g} s",
        "heating.no-analysis-no-hardness": "no analysis, no hardness",
        "heating.no-cooling-no-hardness": "no cooling time, no hardness",
    }
)
"""Texts by id."""
