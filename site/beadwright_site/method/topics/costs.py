"""The method of cost and breaking even as data."""

from __future__ import annotations

from beadwright.money.break_even import MONTHS_A_YEAR
from beadwright.money.capacity import FULL_SHARE
from beadwright.money.chance import ONE_IN_TEN
from beadwright.money.first_year import NEAR
from beadwright.money.odds import LIKELY, SURE
from beadwright_site.method.equations import Equation, Section, Symbol, plain
from beadwright_site.method.mathml import equation, line, over, power, root, row, sub
from beadwright_site.method.topics.cost_counts import COUNTS

T_ON, T_OFF = sub("t", "on"), sub("t", "off")
C_NOW, C_NEW = sub("C", "now"), sub("C", "new")
P_MOST = sub("P", "most")
P_KNOWN, F_MEAN, V_F = sub("p", "known"), sub("f", "mean"), sub("v", "f")

_COST = Symbol("C", "cost of a part", "money")
_ONCE = Symbol("F", "change-over cost", "money")
_MONTHS = Symbol("n", "months in which it must come back", "–")
_METAL = Symbol("M", "weld metal in a part", "kg")
_EFFICIENCY = Symbol("η", "metal deposited over wire used", "–")
_WASTE = Symbol("u", "wire bought and never melted", "–")
_NOW = Symbol(C_NOW, "cost of a part as now", "money")
_NEW = Symbol(C_NEW, "cost of a part the new way", "money")

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
        Symbol("r", "rework, as a share of parts", "–"),
        Symbol("L", "labor", "money/s"),
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
        Symbol("D", "deposition rate", "kg/s"),
        _EFFICIENCY,
        _WASTE,
    ),
    "Any job that has settings, or arc time or deposition rate measured.",
    "Each input's own; Cost draws how far each moves the answer.",
    ("cost-chapter", "operating-factor", "navedtra-14251a"),
    "The cost is the sum of its pieces; nothing is added afterwards. Operating factor is arc time "
    "over all time.",
    ("cost.cost_of", "cost.part_cost", "cost.part_costs"),
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
    "That of both costs.",
    ("mass-balance", "practice"),
    f"Over {FULL_SHARE:.0%} of the hours, nothing is left for a bad week.",
    ("break_even.break_even", "break_even.parts_to_break_even", "break_even.highest_price",
     "break_even.least_laid", "break_even.at_laid", "capacity.FULL_SHARE",),
)  # fmt: skip

PAYBACK = Equation(
    "payback",
    "Payback of the change-over cost",
    (
        equation("p", "=", over("F", row(C_NOW, "−", C_NEW)), ",", "m", "=",
                 over(line(f"{MONTHS_A_YEAR} · F"), "G")),
    ),
    (
        Symbol("p", "parts", "–"),
        Symbol("m", "months", "–"),
        _ONCE,
        _NOW,
        _NEW,
        Symbol("G", "saved a year, paid by the year taken off", "money/year"),
    ),
    "Where a part saves and a year saves; else it never comes back, and that is said.",
    "That of both costs.",
    ("mass-balance",),
    "",
    ("break_even.months_to_pay", "break_even.parts_to_pay", "break_even.MONTHS_A_YEAR"),
)  # fmt: skip

CAPACITY = Equation(
    "capacity",
    "Hours",
    (equation("s", "=", over(line("N · t"), row("k", "·", "h", "·", "j", "·", "y"))),),
    (
        Symbol("s", "share of the shop's hours taken", "–"),
        Symbol("N", "parts a year", "1/year"),
        Symbol("t", "time for a part, rework with it", "s"),
        Symbol("k", "welders", "–"),
        Symbol("h", "length of a shift", "s"),
        Symbol("j", "shifts in a week", "–"),
        Symbol("y", "weeks worked in a year", "–"),
    ),
    "Any volume. Over the whole, the shop cannot deliver.",
    f"Over {FULL_SHARE:.0%} is called just delivering.",
    ("practice",),
    "",
    ("capacity.capacity",),
)

CHANCE = Equation(
    "chance",
    "Chance that switching pays",
    (equation("p", "=", over("k", "n")),),
    (
        Symbol("p", "chance", "–"),
        Symbol("k", "draws in which the net saving is above zero", "–"),
        Symbol("n", "draws; each unsure input from a triangle, low and high as its ends", "–"),
    ),
    "Inputs that do not depend on each other. What is unsure in both ways alike (rates, parts, "
    "gas, flow, non-arc minutes, rework, size of the welds) is drawn once for both. Same seed, "
    "same draws.",
    "Five in a hundred at 400 draws, one in a hundred at 10 000.",
    ("practice",),
    f"Headline, worst case, bands and picture come from the same draws. From {SURE:.0%} of them on "
    f"it pays, from {LIKELY:.0%} on it probably pays; from {1 - LIKELY:.0%} down it probably does "
    f"not, from {1 - SURE:.0%} down it does not. The worst case is what {ONE_IN_TEN:.0%} of the "
    "draws fall short of. No draw lays more than is melted. Sums are rounded so that they add up, "
    f"a year to {NEAR:.3%}.",
    ("chance.Chance", "swings.moved_costs", "swings.swings", "odds.word_of",
     "odds.SURE", "odds.LIKELY", "odds.odds_phrase", "chance.ONE_IN_TEN", "swings.MOST",
      "first_year.first_year", "first_year.rounded_sums",
     "first_year.week_of", "first_year.NEAR", "first_year.FINEST"),
)  # fmt: skip

IF_KNOWN = Equation(
    "odds-if-known",
    "Whether one figure, once known, could change the verdict",
    (
        equation(P_KNOWN, "=", line("Φ ("),
                 over(row("m", "+", "b", "·", line("( f −"), F_MEAN, ")"),
                 root(row(power("s", "2"), "−", power("b", "2"), "·", V_F))), ")"),
    ),
    (
        Symbol(P_KNOWN, "chance with the figure known", "–"),
        Symbol("m", "mean of the draws", "money/year"),
        Symbol("s", "their spread, one standard deviation", "money/year"),
        Symbol("b", "change of the net saving by the figure's factor, a straight line",
               "money/year"),
        Symbol("f", "its factor at the end that one draw in ten passes", "–"),
        Symbol(F_MEAN, "mean of its triangle", "–"),
        Symbol(V_F, "variance of its triangle", "–"),
        Symbol("Φ", "the normal distribution's share below", "–"),
    ),
    "Many unsure inputs, none of them nearly all of the spread.",
    "Good enough to rank them. A figure is named as worth finding out if it could bring the chance "
    "over or under even, or make an open verdict a sure one.",
    ("practice",),
    "",
    ("odds.odds_if_known", "odds.settles", "odds.settling", "odds.EVEN"),
)  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return plain((COST, *COUNTS, BREAK_EVEN, PAYBACK, CAPACITY, CHANCE, IF_KNOWN))
