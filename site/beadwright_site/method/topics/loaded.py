"""The method of what a weld joins under load, as data: plates pulled through their welds."""

from __future__ import annotations

from beadwright.strength.base_metal import OMEGA_PULL, OMEGA_RUPTURE, PHI_PULL, PHI_RUPTURE
from beadwright.strength.resistance_aisc import SHEAR_SHARE
from beadwright.strength.tension_members import SPREAD_DEG
from beadwright_site.method.equations import Equation, Section, Symbol, plain
from beadwright_site.method.mathml import equation, line, over, power, row, sub

F_U, F_Y = sub("F", "u"), sub("F", "y")
A_G, A_V, A_T = sub("A", "g"), sub("A", "v"), sub("A", "t")

MEMBERS = Equation(
    "members",
    "Plates of a lap, pulled",
    (
        equation(sub("R", "yield"), "=", F_Y, "·", A_G),
        equation(sub("R", "tear"), "=", F_U, "·", A_G, "·", "U"),
        equation("U", "=", over(row("3", "·", power("l", "2")),
                                row("3", "·", power("l", "2"), "+", power("w", "2"))),
                 "·", line("( 1 −"), over("x", "l"), ")"),
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


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic: plates pulled."""
    return plain((MEMBERS,))
