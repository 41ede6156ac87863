"""The method of machine and circuit as data: duty cycle, current from the wall, leads."""

from __future__ import annotations

from beadwright.machine.circuit import MOST_CABLE_VOLTS
from beadwright.machine.conductors import WARM_K
from beadwright.machine.shop_ways import LEAST_CURRENT_A
from beadwright.machine.supply_checks import (
    BREAKER_TRIPS,
    GENERATOR_START,
    MOST_CORD_SHARE,
)
from beadwright.power.primary import LEAST_MULTIPLIER
from beadwright_site.method.equations import Equation, Section, Symbol, plain
from beadwright_site.method.mathml import equation, line, over, power, root, row, sub

I_RATED, X_RATED = sub("I", "rated"), sub("X", "rated")
I_IN, I_EFF, U_IN = sub("I", "in"), sub("I", "eff"), sub("U", "in")

_CURRENT = Symbol("I", "welding current", "A")

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
    "",
    ("duty_cycle.duty_at", "duty_cycle.current_at", "duty_cycle.minutes_on",
     "duty_cycle.PERIOD_S",),
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
    ("machine-efficiency", "nec-630", "iec-60974-1", "ul-489", "generator-rule"),
    "With the current on the machine's plate, η·λ is what the plate says: rated amps times 14 V "
    "and 0.05 V an amp, over volts times amps drawn. A breaker holds its rating; over "
    f"{BREAKER_TRIPS:.0%} it has to trip, and does not hold, however short the welds; between, it "
    "is a matter of time. A generator wants "
    f"{GENERATOR_START:g} × the volt-amps of the arc for the starts. What is offered where "
    "something does not hold is worked out in full before it is shown; less feed is looked for "
    f"down to {LEAST_CURRENT_A:g} A.",
    (
        "primary.primary_current",
        "primary.apparent_power",
        "primary.line_factor",
        "primary.effective_current",
        "primary.LEAST_MULTIPLIER",
        "primary.rated_volts",
        "supply_checks.BREAKER_TRIPS",
        "supply_checks.HOUR_TO_A",
        "supply_checks.TRIPS_AT_TWICE_S",
        "supply_checks.GENERATOR_START",
        "supply_checks.supply_checks",
        "shop_ways.LEAST_CURRENT_A",
        "shop_ways.shop_ways_out",
    ),
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
        Symbol("R", "resistance; metric sizes by table, AWG by section and 2 % for the twist of "
               "the strands", "Ω"),
        Symbol("l", "length there and back", "m"),
        Symbol("A", "copper section", "mm²"),
        Symbol("θ", f"how much warmer than 20 °C, {WARM_K:g}", "K"),
        Symbol("V", "volts lost", "V"),
        _CURRENT,
    ),
    f"Copper. Over {MOST_CABLE_VOLTS:g} V in the welding leads, or {MOST_CORD_SHARE:.0%} of the "
    "supply's volts in the cord, the page asks for shorter or thicker ones. A cord carries what "
    "the code's table has for as many wires as carry.",
    "A few percent; bad lugs lose more than the cable.",
    ("awg", "copper-annealed", "iec-60228", "four-volts", "nec-400.5"),
    "",
    ("conductors.resistance", "conductors.volts_lost", "conductors.awg_diameter",
     "conductors.COPPER_OHM_M", "conductors.COPPER_PER_K", "conductors.STRANDED",
     "conductors.WARM_K", "circuit.MOST_CABLE_VOLTS", "supply_checks.MOST_CORD_SHARE",
     "conductors.cord_amps", "circuit.circuit"),
)  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return plain((DUTY, PRIMARY, LEADS))
