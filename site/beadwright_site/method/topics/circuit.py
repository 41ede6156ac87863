"""The method of machine and circuit as data: duty cycle, current from the wall, leads."""

from __future__ import annotations

from beadwright.machine.circuit import GENERATOR_ROOM, MOST_CABLE_VOLTS, MOST_CORD_SHARE
from beadwright.machine.conductors import WARM_K
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
    ("machine-efficiency", "nec-630"),
    "",
    (
        "primary.primary_current",
        "primary.apparent_power",
        "primary.line_factor",
        "primary.effective_current",
        "primary.LEAST_MULTIPLIER",
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
    "supply's volts in the cord, the page asks for shorter or thicker ones. A generator is loaded "
    f"to {GENERATOR_ROOM:.0%} of its rating.",
    "A few percent; bad lugs lose more than the cable.",
    ("awg", "copper-annealed", "iec-60228", "four-volts"),
    "",
    ("conductors.resistance", "conductors.volts_lost", "conductors.awg_diameter",
     "conductors.COPPER_OHM_M", "conductors.COPPER_PER_K", "conductors.STRANDED",
     "conductors.WARM_K", "circuit.MOST_CABLE_VOLTS", "circuit.MOST_CORD_SHARE",
     "circuit.GENERATOR_ROOM", "circuit.circuit"),
)  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return plain((DUTY, PRIMARY, LEADS))
