"""The method of supplies as data: wire on a spool, gas in a cylinder."""

from __future__ import annotations

from beadwright.measures import PSI_PA
from beadwright.supply.cylinder_sizes import FILLED_PSI, LARGEST_FILLED_PSI
from beadwright.supply.cylinders import RESIDUAL_PA, WATER_OFF
from beadwright.supply.spools import PACKING
from beadwright_site.method.equations import Equation, Section, Symbol, plain
from beadwright_site.method.mathml import equation, line, over, power, row, sub

P_0, T_0 = sub("p", "0"), sub("T", "0")

_EFFICIENCY = Symbol("η", "metal deposited over wire used", "–")
_WASTE = Symbol("u", "wire bought and never melted", "–")

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
    "",
    ("spools.left_by_size", "spools.left_by_weight", "spools.weld_length", "spools.wire_length",
     "spools.PACKING",),
)  # fmt: skip

SPOOL_BEFORE = Equation(
    "spool-before",
    "Wire on a spool whose full size is known",
    (
        equation("m", "=", "F", "·",
                 over(row(power("d", "2"), "−", power("b", "2")),
                      row(power("D", "2"), "−", power("b", "2")))),
    ),
    (
        Symbol("m", "wire on it", "kg"),
        Symbol("F", "wire on it when full", "kg"),
        Symbol("d", "diameter it is wound to now", "m"),
        Symbol("D", "diameter when full", "m"),
        Symbol("b", "barrel under the wire", "m"),
    ),
    "Wound the same way through.",
    "A loose winding reads high.",
    ("mass-balance",),
    "The share of the winding that is wire cancels out.",
    ("spools.left_by_full",),
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
    "A size called by its content has the water volume that holds its argon when full: at "
    f"{LARGEST_FILLED_PSI} psi the 330 ft³, at {FILLED_PSI} psi the smaller. It may be off by "
    f"{WATER_OFF:.0%}; what is stamped on the shoulder rules.",
    ("cylinders.content", "cylinders.usable", "cylinders.lasts", "cylinders.RESIDUAL_PA",
     "cylinders.co2_gas", "cylinders.CO2_M3_KG", "cylinders.full_content",
     "cylinders.water_volume", "cylinders.WATER_OFF", "cylinder_sizes.FILLED_PSI",
     "cylinder_sizes.LARGEST_FILLED_PSI",),
)  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return plain((SPOOL, SPOOL_BEFORE, GAS))
