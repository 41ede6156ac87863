"""The method of what the arc does to plates as data: heat input, thin plate."""

from __future__ import annotations

from beadwright import units
from beadwright.measures import INCH_M
from beadwright.process.heat import burn_through_current, fusion_current, thickness_current
from beadwright.process.materials import CARBON_STEEL
from beadwright.setting.heat_limits import UPHILL_HEAT
from beadwright_site.method.equations import Equation, Section, Symbol, number
from beadwright_site.method.mathml import equation, line, over, sub

I_MOST, I_LEAST, Q_MOST = sub("I", "most"), sub("I", "least"), sub("E", "most")
MIL_M = 0.001 * INCH_M

_CURRENT = Symbol("I", "mean current, wire positive", "A")
_VOLTS = Symbol("U", "volts at the arc", "V")
_TRAVEL = Symbol("w", "travel", "m/s")

HEAT = Equation(
    "heat",
    "Heat input, two conventions",
    (
        equation("E", "=", over(line("U · I"), "w")),
        equation("Q", "=", "k", "·", over(line("U · I"), "w")),
    ),
    (
        Symbol("E", "heat input as AWS and ASME count it, no efficiency: shown with US units",
               "J/m"),
        Symbol("Q", "heat input as EN counts it: shown with metric units", "J/m"),
        Symbol("k", "thermal efficiency of MIG/MAG, 0.8", "–"),
        _VOLTS,
        _CURRENT,
        _TRAVEL,
    ),
    "Mean volts and current. Pulse wants the machine's own power reading.",
    "That of the current.",
    ("asme-qw-409", "en-1011-1"),
    "The two differ by a fifth: never compare one with a limit written in the other.",
    ("heat.heat_input", "heat.heat_input_en", "heat.EN_EFFICIENCY"),
)  # fmt: skip


def plate_limits() -> Equation:
    """Return the limits thin plate sets, as ``heat`` has them."""
    steel = CARBON_STEEL
    slope = burn_through_current(2 * MIL_M, steel) - burn_through_current(MIL_M, steel)
    foot = burn_through_current(MIL_M, steel) - slope
    thumb, least = thickness_current(MIL_M), fusion_current(MIL_M, steel)
    thin = units.show(steel.thin_m, "length", "si")
    ceiling = steel.burn_through_j_m2 / 1e9
    return Equation(
        "plate",
        "Burning through, and lying on the plate",
        (
            equation(I_MOST, "=", number(foot), "+", number(slope), line("· t")),
            equation(I_LEAST, "=", number(least), line("· t")),
            equation(Q_MOST, "=", number(ceiling), line("· s")),
        ),
        (
            Symbol(I_MOST, f"current above which plate under {thin} mm falls through", "A"),
            Symbol(I_LEAST, "current below which the bead lies on the plate, not melted in; t "
                   "counts to 3/16 in", "A"),
            Symbol(Q_MOST, f"heat input above which plate under {thin} mm falls through", "kJ/mm"),
            Symbol("t", "thickness of the thinner plate", "0.001 in"),
            Symbol("s", "the same thickness", "mm"),
        ),
        f"The thumb rule stands between the two: {thumb:g} A for each 0.001 in, on sheet. "
        f"Uphill the plate takes {UPHILL_HEAT:g} times the heat: the pool rests on the bead.",
        "Rules, not laws. Prove them on a coupon.",
        ("power-source-conditions", "power-source-rule", "practice"),
        "",
        ("heat.thickness_current", "heat.burn_through_current", "heat.fusion_current",
         "heat.heat_ceiling", "heat_limits.UPHILL_HEAT", "heat_limits.heat_ceiling_j_m",
         "materials.CARBON_STEEL"),
    )  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return (Section(HEAT), Section(plate_limits()))
