"""The method of loaded joints that are more than a fillet, as data: plates, grooves, plugs."""

from __future__ import annotations

from beadwright.job.preparations import SQUARE_BACKED_TO_M
from beadwright.measures import INCH_M
from beadwright.strength.base_metal import OMEGA_PULL, OMEGA_RUPTURE, PHI_PULL, PHI_RUPTURE
from beadwright.strength.groove_strength import (
    OMEGA_NORMAL,
    PHI_NORMAL,
    SQUARE_EN_TO_M,
    UNSURE_M,
)
from beadwright.strength.plug_strength import FULL_TO_M, HOLE_OVER_PLATE_M
from beadwright.strength.resistance_aisc import OMEGA_WELD, PHI_WELD, SHEAR_SHARE
from beadwright.strength.skew_sides import (
    CORED_LOSS_M,
    MOST_EN_DEG,
    Z_LOSS_FROM_DEG,
    Z_LOSS_TO_DEG,
)
from beadwright.strength.tension_members import SPREAD_DEG
from beadwright_site.method.equations import Equation, Section, Symbol, plain
from beadwright_site.method.mathml import equation, fenced, line, over, power, root, row, sub

F_U, F_Y = sub("F", "u"), sub("F", "y")
F_EXX, R_N = sub("F", "EXX"), sub("R", "n")
A_G, A_V, A_T = sub("A", "g"), sub("A", "v"), sub("A", "t")

MEMBERS = Equation(
    "members",
    "Plates of a lap, pulled",
    (
        equation(sub("R", "yield"), "=", F_Y, "·", A_G),
        equation(sub("R", "tear"), "=", F_U, "·", A_G, "·", "U"),
        equation("U", "=", over(row("3", "·", power("l", "2")),
                                row("3", "·", power("l", "2"), "+", power("w", "2"))),
                 "·", fenced("1", "−", over("x", "l"))),
        equation(sub("R", "block"), "=", f"{SHEAR_SHARE:g}", "·", F_Y, "·", A_V, "+", F_U, "·",
                 A_T),
    ),
    (
        Symbol(sub("R", "yield"), "pull at which a plate yields all over", "N"),
        Symbol(sub("R", "tear"), "pull at which it tears", "N"),
        Symbol(sub("R", "block"), "pull at which a block tears out along the welds", "N"),
        Symbol(F_Y, "yield strength", "Pa"),
        Symbol(F_U, "tensile strength", "Pa"),
        Symbol(A_G, "its width times its thickness", "m²"),
        Symbol("U", "shear lag: what welds along its edges reach of it", "–"),
        Symbol("l", "mean length of the welds along the pull", "m"),
        Symbol("w", "width of the plate", "m"),
        Symbol("x", "from the faying face to the plate's middle: half its thickness", "m"),
        Symbol(A_V, "sections along the two outer welds", "m²"),
        Symbol(A_T, "section between them", "m²"),
    ),
    f"Yielding × {PHI_PULL:g} or ÷ {OMEGA_PULL:g}; tearing and block × {PHI_RUPTURE:g} or ÷ "
    f"{OMEGA_RUPTURE:g}. Only for a pull through the welds' middle, in their plane, along or "
    "square to every line of weld. For any other load the page says the plates are not checked.",
    "The code's own margin. A load that pushes may buckle the plates, which is not checked.",
    ("aisc-d2", "aisc-d3.1", "aisc-j4.3", "aisc-manual-9", "en-1993-1-1-pull"),
    "U by AISC 360-16 and -22. Editions to -10 gave 1, 0.87 or 0.75 by steps of l over w, and "
    "allowed no welds shorter than w. Welds along and across: U is 1 − x/l. Across only: U is 1, "
    "of what is welded. Welds on both sides: x is 0. A width left blank is as far as the welds "
    "reach. A wider lower plate counts as far as the pull spreads into it, "
    f"{SPREAD_DEG:g}° to each side from the start of the welds; past that a block tears out of it "
    "first. EN 1993-1-1 asks yielding of the whole section only. Each plate has its own steel; "
    "by EN 1993-1-8 the weld goes by the weaker.",
    ("tension_members.SPREAD_DEG", "tension_members.gross_yielding",
     "tension_members.net_rupture", "tension_members.lag_of_edge_welds",
     "tension_members.lag_of_mixed_welds", "tension_members.block_shear",
     "tension_members.spread_width", "tension_members.gross_yielding_en",
     "lap_members.pull_of", "lap_members.width_of", "lap_members.check_widths",
     "lap_members.lap_members"),
)  # fmt: skip


GROOVES = Equation(
    "grooves-loaded",
    "What a groove weld holds",
    (
        equation(R_N, "=", f"{SHEAR_SHARE:g}", "·", F_EXX, "·", "E"),
        equation(root(row(power(fenced(over("n", sub("R", "pull"))), "2"), "+",
                          power(fenced(over("v", sub("R", "shear"))), "2"))), "≤", "1"),
    ),
    (
        Symbol(R_N, "nominal strength per length, pulled or sheared", "N/m"),
        Symbol(F_EXX, "tensile strength of the filler", "Pa"),
        Symbol("E", "effective throat, all sides together", "m"),
        Symbol("n", "pull square to the weld, per length", "N/m"),
        Symbol("v", "shear, along it and through the thickness", "N/m"),
        Symbol(sub("R", "pull"), f"nominal × {PHI_NORMAL:g} or ÷ {OMEGA_NORMAL:g}", "N/m"),
        Symbol(sub("R", "shear"), f"nominal × {PHI_WELD:g} or ÷ {OMEGA_WELD:g}", "N/m"),
    ),
    "Grooves cut part way. A push is held to the same as a pull. Never judged as a fillet.",
    "The code's own margin.",
    ("aisc-j2.5", "aisc-j2.1", "aisc-j2.3", "en-1993-1-8-butt", "env-1993-throat"),
    "The plate is checked over the same depth, at its tensile strength pulled and "
    f"{SHEAR_SHARE:g} of it sheared, × {PHI_RUPTURE:g} or ÷ {OMEGA_RUPTURE:g}, and over its whole "
    "thickness as beside a fillet; in a butt both plates are pulled. Welded through, the weld "
    "holds as the weaker plate, if the filler matches it: a weaker filler is stopped. Whether a "
    "root welded from one side is sound, no sum tells. By EN 1993-1-8 a part-way groove goes by "
    "the same formulas as a fillet, its throat square to the pull, "
    f"{UNSURE_M * 1000:g} mm less than cut on each side. A square edge over "
    f"{SQUARE_BACKED_TO_M / INCH_M:g} in thick, in EN {SQUARE_EN_TO_M * 1000:g} mm, is stopped as "
    "welded through; a closed corner is refused.",
    ("groove_strength.SQUARE_EN_TO_M",
     "groove_strength.PHI_NORMAL", "groove_strength.OMEGA_NORMAL", "groove_strength.UNSURE_M",
     "groove_strength.groove_pull", "groove_strength.groove_shear",
     "groove_strength.plate_at_groove", "groove_strength.groove_use_en",
     "groove_strength.sure_depth", "groove_weld.groove_sizes", "groove_weld.groove_links",
     "groove_weld.groove_notes", "groove_weld.unmatched"),
)  # fmt: skip

PLUGS = Equation(
    "plugs-loaded",
    "What a plug or slot holds",
    (
        equation(R_N, "=", f"{SHEAR_SHARE:g}", "·", F_EXX, "·", "A"),
        equation("A", "=", over(row("π", "·", power("d", "2")), "4"), "+", "d", "·",
                 line("( s − d )")),
    ),
    (
        Symbol(R_N, "nominal shear one takes", "N"),
        Symbol(F_EXX, "tensile strength of the filler", "Pa"),
        Symbol("A", "what it fills of the faying surface", "m²"),
        Symbol("d", "diameter of the hole, width of the slot", "m"),
        Symbol("π", "3.1416", "–"),
        Symbol("s", "length of the slot; of a plug the same as d", "m"),
    ),
    f"Shear through the middle of the plugs only, × {PHI_WELD:g} or ÷ {OMEGA_WELD:g}. A pull, a "
    "moment or a force per length is refused. Several share the load evenly.",
    "The code's own margin.",
    ("aisc-j2.3a", "aisc-j2.3b", "aisc-j2.3b-apart", "en-1993-1-8-plug", "aisc-d2"),
    "EN 1993-1-8 counts the tensile strength of the weaker plate over √3, its correlation factor "
    f"and γM2 on the same area; it asks a hole {HOLE_OVER_PLATE_M * 1000:g} mm wider than its "
    f"plate is thick, filled level to {FULL_TO_M * 1000:g} mm. AISC asks plugs four diameters "
    "apart, slots four widths side by side and two lengths end to end. A plate whose width is "
    "given is checked for yielding; the one with a single hole also for tearing beside it, "
    "without shear lag, for which no case is printed.",
    ("plug_strength.HOLE_OVER_PLATE_M", "plug_strength.FULL_TO_M", "plug_strength.faying_area",
     "plug_strength.plug_shear", "plug_strength.plug_shear_en", "plug_strength.least_hole_en",
     "plug_strength.least_fill_en", "plug_strength.least_spacing", "plug_strength.hole_by_en",
     "plug_weld.plug_sizes", "plug_weld.plug_links",
     "plug_weld.plug_notes", "tension_members.net_rupture_en"),
)  # fmt: skip

ONE_SIDE = Equation(
    "one-sided-loaded",
    "Welds from one side",
    (equation("m", "=", "n", "·", "e"),),
    (
        Symbol("m", "bending of the throat per length of weld", "N"),
        Symbol("n", "pull per length, square to the weld", "N/m"),
        Symbol("e", "from the line of the pull to the middle of the throat", "m"),
    ),
    "One straight line of fillet, or of a groove cut part way, from one side only. Welds around a "
    "hollow section, and lines that stand apart, are none.",
    "Not counted: the page stops where the root is pulled open, and says so.",
    ("one-sided-root", "en-1993-1-8-root", "aisc-j2.2b"),
    "A part pulled off, or a lap with a single weld across its pull, turns about the weld and "
    "opens its root. A tee pushed sideways does so if it is pushed away from its weld: the page "
    "warns. No added strength across such a weld counts. Say the part is held from turning, if "
    "something else holds it: a caution is left.",
    ("one_sided.is_one_line", "one_sided.opens_at_root", "one_sided.root_load"),
)

SKEW = Equation(
    "skewed-both-sides",
    "Skewed tees welded on both sides",
    (
        equation("t", "=", "b", "·", row("cos", over("ψ", "2")), "−", "Z"),
        equation(sub("ψ", "2"), "=", "180°", "−", "ψ"),
    ),
    (
        Symbol("t", "throat of a side", "m"),
        Symbol("b", "leg laid along the plates", "m"),
        Symbol("ψ", "angle between the plates on the first side", "°"),
        Symbol(sub("ψ", "2"), "the same on the other side", "°"),
        Symbol("cos", "cosine", "–"),
        Symbol("Z", "what the root of a sharp angle loses", "m"),
    ),
    "Each side has its own throat, and the lesser counts on both: a pull in the middle of the "
    "plate shares evenly.",
    "Geometry; Z not checked against the book.",
    ("skewed-tees", "aws-d1.1-skew", "aws-d1.1-z-loss", "en-1993-1-8-angle"),
    "Legs are given as on a square tee, and the page tells what to lay along the plates. A blank "
    "leg on the other side counts as laid like the first, with no more throat than the first. "
    f"From {Z_LOSS_FROM_DEG:g}° to under {Z_LOSS_TO_DEG:g}° nothing is lost flat and horizontal; "
    f"vertical and overhead flux-cored wire loses {CORED_LOSS_M / INCH_M:g} in, and for gas metal "
    "arc there is no figure: the page stops. EN 1993-1-8 counts fillets from "
    f"{Z_LOSS_TO_DEG:g}° to {MOST_EN_DEG:g}°.",
    ("skew_sides.Z_LOSS_FROM_DEG", "skew_sides.Z_LOSS_TO_DEG", "skew_sides.CORED_LOSS_M",
     "skew_sides.MOST_EN_DEG", "skew_sides.throat_of_laid", "skew_sides.root_loss",
     "skew_sides.skew_sides", "strength_check.weld_throat", "strength_check.both_sides"),
)  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic: plates pulled, grooves, plugs, one side, skewed tees."""
    return plain((MEMBERS, GROOVES, PLUGS, ONE_SIDE, SKEW))
