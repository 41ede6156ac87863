"""The method of weld strength as data: load along the weld, codes, plates, intermittent welds."""

from __future__ import annotations

from beadwright.joint.groove_rules import STRUCTURAL_FROM_M
from beadwright.measures import INCH_M, PSI_PA
from beadwright.strength.base_metal import (
    OMEGA_PULL,
    OMEGA_RUPTURE,
    OMEGA_YIELD,
    PHI_PULL,
    PHI_RUPTURE,
    PHI_YIELD,
)
from beadwright.strength.leg_search import LARGEST_LEG_M
from beadwright.strength.resistance_aisc import OMEGA_WELD, PHI_WELD, SHEAR_SHARE
from beadwright.strength.resistance_en import GAMMA_M2, THINNEST_M
from beadwright.strength.steel_strength import LEVEL_PA
from beadwright_site.method.equations import Equation, Section, Symbol, plain
from beadwright_site.method.mathml import equation, line, over, power, root, row, sub
from beadwright_site.method.tables.strength import codes_table, strengths_table

F_X, F_Y, F_Z = sub("f", "x"), sub("f", "y"), sub("f", "z")
P_X, P_Y, P_Z = sub("P", "x"), sub("P", "y"), sub("P", "z")
M_X, M_Y, M_Z = sub("M", "x"), sub("M", "y"), sub("M", "z")
I_X, I_Y = sub("I", "x"), sub("I", "y")
F_EXX, R_N = sub("F", "EXX"), sub("R", "n")
SIN_15 = power(row("sin", "θ"), "1.5")
D_M, D_U = sub("Δ", "m"), sub("Δ", "u")
F_U, F_YIELD = sub("F", "u"), sub("F", "y")
BETA_W, GAMMA = sub("β", "w"), sub("γ", "M2")
S_N, T_N, T_A = sub("σ", "⊥"), sub("τ", "⊥"), sub("τ", "∥")

_THROAT = Symbol("a", "throat: leg over √2", "m")
_ANGLE = Symbol("θ", "angle between force and weld", "°")
_FILLER = Symbol(F_EXX, "tensile strength of the filler, by its class", "Pa")
_LEG = Symbol("w", "leg", "m")

ELASTIC = Equation(
    "elastic-line",
    "Load along the weld, elastic",
    (
        equation(F_X, "=", over(P_X, "L"), "−", over(row(M_Z, "·", "y"), "J")),
        equation(F_Y, "=", over(P_Y, "L"), "+", over(row(M_Z, "·", "x"), "J")),
        equation(F_Z, "=", over(P_Z, "L"), "+", over(row(M_X, "·", "y"), I_X), "−",
                 over(row(M_Y, "·", "x"), I_Y)),
        equation("f", "=", root(row(power(F_X, "2"), "+", power(F_Y, "2"), "+", power(F_Z, "2")))),
    ),
    (
        Symbol("f", "force per length of weld, and its parts", "N/m"),
        Symbol("P", "force: right, up, out of the joint", "N"),
        Symbol("M", "moment at the centroid about the same axes", "N·m"),
        Symbol("L", "length of weld", "m"),
        Symbol("I", "second moment of the line about its centroid", "m³"),
        Symbol("J", "polar second moment", "m³"),
        Symbol("x", "right of the centroid", "m"),
        Symbol("y", "above the centroid", "m"),
        Symbol("z", "out of the joint", "m"),
    ),
    "Any shape, one leg throughout. Where it is not symmetric, the product moment counts too.",
    "Mostly safe: before it breaks a weld shares its load more evenly. Of a thousand groups drawn, "
    "in the plane, the instantaneous center held up to 2.6 times as much; where a load lies almost "
    "through the middle of a straight line, a tenth less.",
    ("weld-as-line", "aisc-manual-8"),
    "",
    ("elastic_line.load_at_centroid", "elastic_line.line_forces", "elastic_line.worst",
     "weld_line.line_properties", "strength_check.spread"),
)  # fmt: skip

CENTRE = Equation(
    "turning-center",
    "Load along the weld, instantaneous center",
    (
        equation("f", "=", f"{SHEAR_SHARE:g}", "·", F_EXX, "·", "a", "·", line("( 1 + 0.5 ·"),
                 SIN_15, line(") ·"), power(line("( p · ( 1.9 − 0.9 · p ) )"), "0.3")),
        equation("p", "=", over("Δ", D_M), ",", D_M, "=", "0.209", "·",
                 power(line("( θ + 2 )"), row("−", "0.32")), "·", "w"),
        equation(D_U, "=", "1.087", "·", power(line("( θ + 6 )"), row("−", "0.65")),
                 line("· w ≤ 0.17 · w")),
    ),
    (
        Symbol("f", "force per length of an element", "N/m"),
        _FILLER,
        _THROAT,
        _ANGLE,
        Symbol("sin", "sine", "–"),
        Symbol("p", "how far an element has given way", "–"),
        Symbol("Δ", "how far it gives way: by its distance from the center", "m"),
        Symbol(D_M, "where it holds most", "m"),
        Symbol(D_U, "where it breaks: the first to get there ends it", "m"),
        _LEG,
    ),
    "AISC only. Loads in the plane of the joint; out of it, two equal lines of weld with the load "
    "midway between them, along them or square off the joint.",
    "Within 1 % of the printed coefficients for C-shaped groups and for two lines, out of the "
    "plane too.",
    ("aisc-manual-8", "aisc-j2.4-strength"),
    "Out of the plane it is the Manual's special case, k = 0: seen from the side both lines fall "
    "into one and the load lies in that picture, where the center is sought. The welds carry the "
    "push as well as the pull.",
    ("instantaneous_center.peak_deformation", "instantaneous_center.breaking_deformation",
     "instantaneous_center.element_strength", "instantaneous_center.center_strength",
     "bracket_center.turns_as_bracket", "bracket_center.bracket_strength"),
)  # fmt: skip

AISC = Equation(
    "weld-aisc",
    "What a fillet holds, AISC 360",
    (
        equation(R_N, "=", f"{SHEAR_SHARE:g}", "·", F_EXX, "·", "a", "·", line("( 1 + 0.5 ·"),
                 SIN_15, ")"),
        equation("β", "=", line("1.2 − 0.002 ·"), over("l", "w"), "≤", "1"),
    ),
    (
        Symbol(R_N, "nominal strength per length", "N/m"),
        _FILLER,
        _THROAT,
        _ANGLE,
        Symbol("sin", "sine", "–"),
        Symbol("β", "part of a long weld that counts when loaded along", "–"),
        Symbol("l", "its length", "m"),
        _LEG,
    ),
    f"Factored loads × {PHI_WELD:g}; service loads ÷ {OMEGA_WELD:g}. The part with θ counts only "
    "when asked for, and only where the code allows it.",
    "The code's own margin.",
    ("aisc-j2.4-strength", "aisc-j2.2b-long", "aisc-j2.5-filler", "aws-d1.3"),
    "A weld shorter than four legs counts a quarter of its length as leg; of one over 300 legs, "
    "180 legs count. Welds along and across a load through their middle hold the greater of two "
    "sums: both as they are, without the part with θ, or 0.85 of those along and 1.5 of those "
    f"across. The leg goes up to 1/16 in or 1 mm; over {LARGEST_LEG_M / INCH_M:g} in cut a groove. "
    "Filler more than one level, "
    f"{LEVEL_PA / PSI_PA / 1000:g} ksi, over the one that matches the weaker steel is named. Under "
    f"{STRUCTURAL_FROM_M["us"] / INCH_M:g} in it is sheet, which this does not cover.",
    ("resistance_aisc.SHEAR_SHARE", "resistance_aisc.PHI_WELD", "resistance_aisc.OMEGA_WELD",
     "resistance_aisc.filler_strength", "resistance_aisc.direction_factor",
     "resistance_aisc.nominal_strength", "resistance_aisc.available",
     "resistance_aisc.long_weld_factor", "resistance_aisc.counted_leg",
     "resistance_aisc.concentric_strength",
     "steel_strength.LEVEL_PA",
     "strength_check.counted_throat", "strength_check.weld_link", "leg_search.leg_needed",
     "leg_search.largest_counted", "leg_search.shop_legs", "leg_search.SHOP_STEP_M",
     "leg_search.LARGEST_LEG_M", "leg_sizes.least_leg", "leg_sizes.leg_sizes",
     "leg_sizes.judged_leg2"),
)  # fmt: skip

EUROPE = Equation(
    "weld-en",
    "What a fillet holds, EN 1993-1-8",
    (
        equation(line("f ≤"), over(row(F_U, "·", "a"), row(root("3"), "·", BETA_W, "·", GAMMA))),
        equation(root(row(power(S_N, "2"), "+", "3", "·", power(T_N, "2"), "+", "3", "·",
                          power(T_A, "2"))), "≤", over(F_U, row(BETA_W, "·", GAMMA))),
        equation(S_N, "≤", "0.9", "·", over(F_U, GAMMA)),
        equation("β", "=", line("1.2 − 0.2 ·"), over("l", line("150 · a")), "≤", "1"),
    ),
    (
        Symbol("f", "force per length", "N/m"),
        Symbol(F_U, "tensile strength of the weaker plate", "Pa"),
        _THROAT,
        Symbol(BETA_W, "correlation factor of the steel", "–"),
        Symbol(GAMMA, f"partial factor, {GAMMA_M2:g}", "–"),
        Symbol(S_N, "stress square to the throat", "Pa"),
        Symbol(T_N, "shear across the weld", "Pa"),
        Symbol(T_A, "shear along the weld", "Pa"),
        Symbol("β", "part of a long lap weld that counts when loaded along", "–"),
        Symbol("l", "its length", "m"),
    ),
    f"Throat 3 mm and over, parts {THINNEST_M * 1000:g} mm and over: thinner is EN 1993-1-3's. "
    "Which side the weld lies on is not asked: the worse is counted.",
    "The code's own margin; a national annex may change it.",
    ("en-1993-1-8", "en-1993-1-8-ends", "en-1993-1-8-lap", "en-1993-1-8-filler",
     "en-1993-1-8-sheet", "en-10025-2"),
    "A weld that is not full size to its ends loses one throat at each end where a bead starts or "
    "stops, and its middle and moments are those of what is left; 30 mm and six throats must be "
    "left. Of a long lap past 450 throats a longer weld holds less, and over 900 nothing counts. "
    "Filler weaker than the steel, the weaker of two, is refused.",
    ("resistance_en.GAMMA_M2", "resistance_en.LEAST_THROAT_M", "resistance_en.LEAST_LENGTH_M",
     "resistance_en.simplified_strength", "resistance_en.directional_use",
     "resistance_en.effective_length", "resistance_en.least_length_en",
     "resistance_en.long_weld_factor", "resistance_en.MOST_LAP_THROATS",
     "resistance_en.THINNEST_M", "effective_weld.effective_weld", "strength_metals.counted_filler",
     "strength_metals.plate_steels"),
)  # fmt: skip

PLATES = Equation(
    "plates-strength",
    "What the plates hold",
    (
        equation(sub("R", "yield"), "=", line("0.6 ·"), F_YIELD, "·", "t"),
        equation(sub("R", "tear"), "=", line("0.6 ·"), F_U, "·", "t"),
    ),
    (
        Symbol(sub("R", "yield"), "shear per length before it yields", "N/m"),
        Symbol(sub("R", "tear"), "shear per length before it tears", "N/m"),
        Symbol(F_YIELD, "yield strength", "Pa"),
        Symbol(F_U, "tensile strength", "Pa"),
        Symbol("t", "thickness", "m"),
    ),
    f"Factored loads × {PHI_YIELD:g} and {PHI_RUPTURE:g}, in pull {PHI_PULL:g}; service ÷ "
    f"{OMEGA_YIELD:g} and {OMEGA_RUPTURE:g}, in pull {OMEGA_PULL:g}. In pull "
    "the whole strength counts; pull and shear add by squares.",
    "Least values of the grade. Old or unknown steel may have less.",
    ("aisc-j4.2", "astm-strengths", "en-1993-1-1"),
    "In EN 1993 shear yields at yield strength over √3, and the yield strength is counted whole. "
    "The bottom plate is sheared beside each weld; in a tee the other is pulled and sheared, "
    "in a lap sheared.",
    ("base_metal.PHI_YIELD", "base_metal.OMEGA_YIELD", "base_metal.PHI_RUPTURE",
     "base_metal.OMEGA_RUPTURE", "base_metal.PHI_PULL", "base_metal.OMEGA_PULL",
     "base_metal.GAMMA_M0", "base_metal.yield_strength", "base_metal.rupture_strength",
     "base_metal.pull_yield_strength", "base_metal.pull_rupture_strength", "base_metal.together",
     "base_metal.yield_strength_en", "base_metal.pull_strength_en", "plate_links.plate_links"),
)  # fmt: skip

SEAM = Equation(
    "intermittent",
    "Intermittent fillets",
    (equation("s", "=", "g", "·", over("R", "f")),),
    (
        Symbol("s", "pitch, middle to middle", "m"),
        Symbol("g", "length of a segment", "m"),
        Symbol("R", "what the weakest link holds per length", "N/m"),
        Symbol("f", "what the seam is asked per length", "N/m"),
    ),
    "Straight seams loaded evenly. AISC and AWS: segments four legs and 1-1/2 in or longer, pitch "
    "to 24 thicknesses and 12 in. EN 1993: 30 mm and six throats must be left of a segment, its "
    "ends off; clear space to 12 thicknesses and 200 mm.",
    "Rounded down to a mark on the rule.",
    ("aisc-j2.2b-long", "aws-d1.1-spacing", "en-1993-1-8-seam", "en-1993-1-8-ends"),
    "Spacing is read from middle to middle, the safe way. EN 1993 allows a space of 16 thicknesses "
    "where the parts are pulled, and asks one no wider than a quarter of the narrower plate where "
    "they are pressed or sheared: the first is not used, the second is yours to see to.",
    (
        "intermittent.pitch_for",
        "intermittent.widest_pitch_aisc",
        "intermittent.widest_gap_en",
        "segments.segments_for",
    ),
)


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic: load, codes, plates, seams."""
    return (
        *plain((ELASTIC, CENTRE)),
        Section(AISC, (codes_table(),)),
        Section(EUROPE),
        Section(PLATES, (strengths_table(),)),
        *plain((SEAM,)),
    )
