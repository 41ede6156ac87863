"""The method of comparing wires in like work as data."""

from __future__ import annotations

from beadwright.money.common_practice import (
    LAID_MORE,
    NEAR,
    PRICE_MORE,
    PRINTED_AT_EQUAL_AMPS,
)
from beadwright.setting.run_alike import STEP
from beadwright_site.method.equations import Equation, Section, Symbol, plain
from beadwright_site.method.mathml import equation, power, root, row, sub

I_1, I_2, V_1, V_2 = (sub(letter, way) for letter in "Iv" for way in "12")
B_1, B_2, B_D = sub("b", "1"), sub("b", "2"), sub("b", "D")

ALIKE = Equation(
    "cost-alike",
    "A later way run as the first is",
    (
        equation(I_2, "=", I_1),
        equation(V_2, "=", V_1),
        equation(B_D, "=", root(row(power("b", "2"), "+", power(B_1, "2"), "+", power(B_2, "2")))),
    ),
    (
        Symbol(I_1, "current of the first way; where its metal was weighed, at that feed", "A"),
        Symbol(I_2, "current of the later way, at its own stickout (tip to work) and volts", "A"),
        Symbol(V_1, "travel of the first way", "m/s"),
        Symbol(V_2, "travel of the later way, in as many passes", "m/s"),
        Symbol(B_D, "how far what the later way lays may be off at equal amps", "–"),
        Symbol("b", "how far the deposition rate may be off", "–"),
        Symbol(B_1, "band of the first wire's feed", "–"),
        Symbol(B_2, "band of the later wire's feed", "–"),
    ),
    "Wires of one size, moved by the same hand in one position, at equal amps unless said "
    "otherwise; what differs more, as each is usually run. Amps past the later wire's room end at "
    "its end; another mode, or a travel no bead of it takes, is run as usual, and that is said. "
    f"Amps within {STEP:.1%} are equal. What is typed or measured of a way stands before all of "
    "it.",
    "Deposition rate at equal amps: as above; measured, 2 %.",
    ("power-balance", "mass-balance", "practice"),
    "Common practice, no source: metal-cored wire costs "
    f"{PRICE_MORE[0]:.0%} to {PRICE_MORE[1]:.0%} more a pound, lays about {LAID_MORE:.0%} more in "
    "like work and leaves less to clean up. The printed points of both wires in 0.045 in give "
    f"{PRINTED_AT_EQUAL_AMPS[0]:.0%} to {PRINTED_AT_EQUAL_AMPS[1]:.0%} more at one current. Cost "
    f"shows the job beside it; within {NEAR:.0%} counts as in line.",
    ("run_alike.run_alike", "run_alike.STEP", "run_alike.usual_alike",
     "common_practice.beside_practice",
     "common_practice.PRICE_MORE", "common_practice.LAID_MORE", "common_practice.NEAR",
     "common_practice.PRINTED_AT_EQUAL_AMPS"),
)  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return plain((ALIKE,))
