"""The method of cost, supplies and circuit as data: each equation those pages use."""

from __future__ import annotations

from beadwright.capacity import FULL_SHARE
from beadwright.circuit import MOST_CABLE_VOLTS
from beadwright.conductors import WARM_K
from beadwright.cylinders import RESIDUAL_PA
from beadwright.measures import PSI_PA
from beadwright.primary import LEAST_MULTIPLIER
from beadwright.spools import PACKING
from beadwright_site.mathml import equation, line, over, power, root, row, sub
from beadwright_site.method import Equation, Section, Symbol, plain

T_ON, T_OFF = sub("t", "on"), sub("t", "off")
C_NOW, C_NEW = sub("C", "now"), sub("C", "new")
I_RATED, X_RATED = sub("I", "rated"), sub("X", "rated")
I_IN, I_EFF, U_IN = sub("I", "in"), sub("I", "eff"), sub("U", "in")
P_0, T_0 = sub("p", "0"), sub("T", "0")
P_MOST = sub("P", "most")

_COST = Symbol("C", "cost of a part", "money")
_ONCE = Symbol("F", "paid once for the change", "money")
_MONTHS = Symbol("n", "months in which it must come back", "–")
_METAL = Symbol("M", "weld metal in a part", "kg")
_EFFICIENCY = Symbol("η", "laid metal over wire used", "–")
_WASTE = Symbol("u", "wire bought and never melted", "–")
_CURRENT = Symbol("I", "welding current", "A")

COST = Equation(
    "cost",
    "Cost of a part",
    (
        equation("C", "=", line("( 1 + r ) · S + r · ( L + O ) · g")),
        equation("S", "=", line("( L + O ) · ("), T_ON, "+", T_OFF, ")"),
        equation(line("+ W + G + E + K")),
        equation(T_ON, "=", over("M", "D"), ",", "W", "=",
                 over(line("M · P"), line("η · ( 1 − u )"))),
        equation("G", "=", line("q · ("), T_ON, "+", line("s · e ) · v")),
    ),
    (
        _COST,
        Symbol("S", "the same welded once", "money"),
        Symbol("r", "parts welded twice, as a share", "–"),
        Symbol("L", "labour", "money/s"),
        Symbol("O", "overhead", "money/s"),
        Symbol(T_ON, "time the arc burns", "s"),
        Symbol(T_OFF, "fit-up, repositioning, cleaning, spatter, other, a share of a spool change",
               "s"),
        Symbol("g", "grinding out before it is welded again", "s"),
        Symbol("W", "wire", "money"),
        Symbol("P", "price of wire", "money/kg"),
        Symbol("G", "gas: flow q, s starts with e seconds before and after, price v", "money"),
        Symbol("q", "gas flow", "m³/s"),
        Symbol("s", "starts", "–"),
        Symbol("e", "gas before and after an arc", "s"),
        Symbol("v", "price of gas", "money/m³"),
        Symbol("E", "power: arc power over the machine's efficiency, and idling", "money"),
        Symbol("K", "tips and nozzles by arc time", "money"),
        _METAL,
        Symbol("D", "laid metal", "kg/s"),
        _EFFICIENCY,
        _WASTE,
    ),
    "Any job that has settings, or arc time or laid metal measured.",
    "Each input's own; drawn on Cost as what it hangs on.",
    ("cost-chapter", "operating-factor", "navedtra-14251a"),
    "The pieces are the whole: nothing is added after. Operating factor is arc time over all time.",
)  # fmt: skip

BREAK_EVEN = Equation(
    "break-even",
    "Breaking even",
    (
        equation("N", "=", over(row("Y", "+", over(line("12 · F"), "n")), row(C_NOW, "−", C_NEW))),
        equation(P_MOST, "=", "P", "+", over(row(C_NOW, "−", C_NEW, "−", "a"), "w")),
    ),
    (
        Symbol("N", "parts a year at which both ways cost the same", "1/year"),
        Symbol("Y", "paid more by the year for the new way", "money/year"),
        _ONCE,
        _MONTHS,
        Symbol(C_NOW, "cost of a part as now", "money"),
        Symbol(C_NEW, "cost of a part the new way", "money"),
        Symbol(P_MOST, "highest price of the new wire", "money/kg"),
        Symbol("P", "its price", "money/kg"),
        Symbol("a", "what a part must save to carry the change; nothing for running costs alone",
               "money"),
        Symbol("w", "new wire bought for a part", "kg"),
    ),
    "Costs are straight lines in parts, price and arc time: solved, not searched.",
    "That of both costs. Switch or stay is said only where the band of the net saving leaves no "
    "doubt: root of the sum of squares of all swings.",
    ("mass-balance", "practice"),
    f"Over {FULL_SHARE:.0%} of the hours taken there is nothing left for a bad week.",
)  # fmt: skip

CHANCE = Equation(
    "chance",
    "Chance that switching pays",
    (equation("p", "=", over(row("k"), "n")),),
    (
        Symbol("p", "chance", "–"),
        Symbol("k", "draws in which the net saving is above zero", "–"),
        Symbol("n", "draws; each unsure input from a triangle, low and high as its ends", "–"),
    ),
    "Inputs that know nothing of each other. Same seed, same draws.",
    "Two in a hundred at 2000 draws.",
    ("practice",),
)

SPOOL = Equation(
    "spool",
    "Wire on a begun spool",
    (
        equation(
            "m", "=", over("π", "4"), "·",
            row("(", power("d", "2"), "−", power("b", "2"), ")"), line("· w · k · ρ"),
        ),
        equation("l", "=", over(line("m · ( 1 − u ) · η"), "c")),
    ),
    (
        Symbol("π", "3.14159", "–"),
        Symbol("m", "wire on it, or weighed: the spool less an empty one", "kg"),
        Symbol("d", "diameter it is wound to", "m"),
        Symbol("b", "barrel under the wire", "m"),
        Symbol("w", "width between the flanges", "m"),
        Symbol("k", f"share of the winding that is wire, {PACKING[1]:g}", "–"),
        Symbol("ρ", "density of the wire", "kg/m³"),
        Symbol("l", "length of this weld it lays", "m"),
        Symbol("c", "weld metal by length", "kg/m"),
        _WASTE,
        _EFFICIENCY,
    ),
    "Layer-wound spools.",
    f"By size {PACKING[0]:g} to {PACKING[2]:g} of the winding is wire; by weight, the scale's.",
    ("practice", "mass-balance"),
)  # fmt: skip

GAS = Equation(
    "gas-left",
    "Gas in a cylinder",
    (
        equation("V", "=", over(line("w · p"), row(P_0, "·", "Z")), "·", over(T_0, "T")),
        equation("t", "=", over(row("V", "−", sub("V", "rest")), "q")),
    ),
    (
        Symbol("V", "gas at 70 °F and 1 atm", "m³"),
        Symbol("w", "water volume of the cylinder", "m³"),
        Symbol("p", "gauge pressure and one atmosphere", "Pa"),
        Symbol(P_0, "one atmosphere", "Pa"),
        Symbol("Z", "compressibility, by Redlich and Kwong", "–"),
        Symbol(T_0, "70 °F", "K"),
        Symbol("T", "temperature of the cylinder", "K"),
        Symbol("t", "time with the gas on", "s"),
        Symbol(sub("V", "rest"),
               f"what stays: under {RESIDUAL_PA / float(PSI_PA):.0f} psi the flow no longer holds",
               "m³"),
        Symbol("q", "gas flow", "m³/s"),
    ),
    "Argon and its mixtures up to 300 bar. CO2 alone is liquid: weigh it, 8.76 ft³ a pound.",
    "Z within 2 % up to 200 bar; the gauge is worse.",
    ("redlich-kwong", "cylinder-chart", "co2-by-weight"),
)  # fmt: skip

DUTY = Equation(
    "duty",
    "Duty cycle at another current",
    (
        equation("X", "=", X_RATED, "·",
                 power(row("(", over(I_RATED, "I"), ")"), "2")),
    ),
    (
        Symbol("X", "share of ten minutes the arc may burn, 1 at the most", "–"),
        Symbol(X_RATED, "duty cycle at the rated current", "–"),
        Symbol(I_RATED, "rated current", "A"),
        _CURRENT,
    ),
    "Up to the most current the machine gives.",
    "Up to a tenth against rating plates; the plate rules.",
    ("i2t", "aws-duty"),
)  # fmt: skip

PRIMARY = Equation(
    "primary",
    "Current from the wall",
    (
        equation(I_IN, "=", over(line("U · I"), row("η", "·", "λ", "·", "k", "·", U_IN))),
        equation(I_EFF, "=", I_IN, "·", root("X")),
    ),
    (
        Symbol(I_IN, "current drawn while the arc burns", "A"),
        Symbol("U", "volts at the machine: the arc's and what the leads lose", "V"),
        _CURRENT,
        Symbol("η", "power given over power drawn", "–"),
        Symbol("λ", "power factor", "–"),
        Symbol("k", "1 for single phase, √3 for three", "–"),
        Symbol(U_IN, "supply volts, between lines if three phase", "V"),
        Symbol(I_EFF, "steady current that heats a conductor as much", "A"),
        Symbol("X", f"duty cycle worked at; the root is {LEAST_MULTIPLIER:g} at the least", "–"),
    ),
    "Current without an arc is left out.",
    "That of efficiency and power factor: read the plate.",
    ("machine-efficiency", "nec-630"),
)

LEADS = Equation(
    "leads",
    "Volts lost in leads and cord",
    (
        equation("R", "=", over(row("l", "·", "1.02"), line("58 · A")), "·",
                 row("(", line("1 + 0.00393 · θ"), ")")),
        equation(line("V = I · R")),
    ),
    (
        Symbol("R", "resistance; metric sizes by table, AWG by section and 2 % for the lay", "Ω"),
        Symbol("l", "length there and back", "m"),
        Symbol("A", "copper section", "mm²"),
        Symbol("θ", f"how much warmer than 20 °C, {WARM_K:g}", "K"),
        Symbol("V", "volts lost", "V"),
        _CURRENT,
    ),
    f"Copper. Over {MOST_CABLE_VOLTS:g} V in the welding leads the page asks for shorter or "
    "thicker ones.",
    "Few percent; bad lugs lose more than the cable.",
    ("awg", "copper-annealed", "iec-60228", "four-volts"),
)  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic, in the order of the pages."""
    return plain((COST, BREAK_EVEN, CHANCE, SPOOL, GAS, DUTY, PRIMARY, LEADS))
