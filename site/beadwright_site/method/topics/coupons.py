"""The method of learning from coupons as data."""

from __future__ import annotations

from beadwright.coupons.learned_numbers import (
    APART,
    CROWN_SHOPS,
    EFFICIENCY_SHOPS,
    METER_SHOPS_V,
    TRAVEL_SHOPS,
)
from beadwright.coupons.learning import FREEDOM, ODD_CHANCE, SCATTER_OVER_SHOPS
from beadwright_site.method.equations import Equation, Section, Symbol, plain
from beadwright_site.method.mathml import equation, over, power, root, row, sub

SHOWS = Equation(
    "coupon-shows",
    "What a coupon shows against print",
    (
        equation("y", "=", over(row("ρ", "A", "v", "H"), row("I", "φ", "+", power("I", "2"), "R")),
                 "−", "1"),
        equation(sub("y", "η"), "=", over("m", row("t", "ρ", "A", "v", "η")), "−", "1"),
        equation(sub("y", "k"), "=", over("S", row(sub("S", "flat"), "k")), "−", "1"),
    ),
    (
        Symbol("y", "burn-off: what melted over what the amps should melt", "–"),
        Symbol(sub("y", "η"), "deposition efficiency, by weight", "–"),
        Symbol(sub("y", "k"), "weld metal in a fillet's leg", "–"),
        Symbol("ρ", "density of the wire", "kg/m³"),
        Symbol("A", "section of the wire", "m²"),
        Symbol("H", "heat to melt a drop", "J/kg"),
        Symbol("φ", "heating voltage at the tip", "V"),
        Symbol("η", "published deposition efficiency", "–"),
        Symbol(sub("S", "flat"), "section of the flat triangle", "m²"),
        Symbol("t", "arc time", "s"),
        Symbol("v", "wire feed: a timed burst, else as set", "m/s"),
        Symbol("I", "amps the machine showed", "A"),
        Symbol("R", "resistance of the extension, as published", "Ω"),
        Symbol("m", "weight gained in the arc time t", "kg"),
        Symbol("S", "section: flat triangle and face × crown × 2/3, else what was laid", "m²"),
        Symbol("k", "section over the flat one, as published", "–"),
    ),
    "One pass for the crown. Travel: timed over planned. Meter: volts shown less volts at the arc. "
    "Cost takes the means of m ÷ t and of m ÷ (t ρ A v) over the coupons of one weld.",
    "As good as the readings.",
    ("power-balance", "mass-balance"),
    "",
    ("coupon_facts.coupon_facts", "coupon_facts.as_published", "next_coupon.heat_mix",
     "measured_way.measured_way"),
)  # fmt: skip

LEARN = Equation(
    "coupons-learn",
    "How far coupons move print",
    (
        equation(sub("V", "n"), "=", power(row("(", "P", "+", "Σ", "x", power("x", "T"), ")"),
                                           row("−", "1"))),
        equation("b", "=", sub("V", "n"), "Σ", "x", "y"),
        equation(power("s", "2"), "=",
                 over(row("4", power(sub("s", "0"), "2"), "+", "Σ", power("y", "2"), "−",
                          power("b", "T"), "Σ", "x", "y"), row("4", "+", "n"))),
        equation("±", "=", "t", "s", root(row(power("x", "T"), sub("V", "n"), "x"))),
    ),
    (
        Symbol("b", "how far the shop's number stands over print", "–"),
        Symbol("x", "what a coupon shows of it: 1; of burn-off, the shares of arc and extension",
               "–"),
        Symbol("n", "coupons", "–"),
        Symbol("P", "belief in print: its published band, over the scatter", "–"),
        Symbol(sub("V", "n"), "what stays unsure after n coupons, over the scatter", "–"),
        Symbol("y", "how far a coupon's reading stands over print", "–"),
        Symbol(power("x", "T"), "x turned from column to row", "–"),
        Symbol("s", "scatter of the coupons, found", "–"),
        Symbol("Σ", "sum over the coupons", "–"),
        Symbol(sub("s", "0"),
               f"scatter believed: {SCATTER_OVER_SHOPS:.2f} × the distance between shops", "–"),
        Symbol("t", f"Student's t at {FREEDOM} + n degrees of freedom", "–"),
    ),
    f"Shops stand off print by {100 * EFFICIENCY_SHOPS:.0f} % in efficiency, "
    f"{100 * CROWN_SHOPS:.0f} % in crown, {100 * TRAVEL_SHOPS:.0f} % in travel, "
    f"{METER_SHOPS_V:g} V at the meter (common practice); in burn-off by its published band.",
    f"Holds nine simulated shops in ten. A coupon further off than {100 * ODD_CHANCE:g} % of sound "
    "ones is named and set aside.",
    ("own-coupons",),
    f"Arc and extension may stand apart by {100 * APART:.0f} % of what they share. One coupon "
    "moves a number a third of the way, ten five sixths.",
    (
        "learning.learn", "learning.quadratic", "learning.FREEDOM", "learning.SCATTER_OVER_SHOPS",
        "learning.CHANCE", "learning.ODD_CHANCE", "learning.MOST_ODD", "learning.LOOK_PAST",
        "student_t.t_within",
        "student_t.t_quantile", "student_t.LARGE", "learned_numbers.APART",
        "learned_numbers.BAND_SIGMAS", "learned_numbers.EFFICIENCY_SHOPS",
        "learned_numbers.CROWN_SHOPS", "learned_numbers.TRAVEL_SHOPS",
        "learned_numbers.METER_SHOPS_V", "learned_numbers.prior_of", "learned_numbers.same_way",
        "learned_numbers.learned_number", "learned_numbers.own_numbers_of",
        "next_coupon.next_coupon", "next_coupon.KEEP_OFF", "next_coupon.STEPS",
    ),
)  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return plain((SHOWS, LEARN))
