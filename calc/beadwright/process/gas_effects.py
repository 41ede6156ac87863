"""What a gas does to the arc and the bead, by what is in it.

Only the direction and the reason; the amount is where the number is used: volts in ``arc``, spray
in ``transfer``, laid metal in ``deposition``, flow in ``gas_flow``.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from beadwright.process.gases import Gas
from beadwright.process.transfer import HELIUM_SPRAY_LIMIT, SOLID_SPRAY_CO2_LIMIT

What = Literal["volts", "transfer", "laid", "spatter", "penetration", "wetting", "fume", "flow"]
Part = Literal["argon", "co2", "oxygen", "helium"]
Way = Literal["more", "less", "other"]


@dataclass(frozen=True, slots=True)
class Effect:
    """One effect of one part of a gas.

    Attributes:
        part: Which part.
        over: Share the gas has more of than this [volume share].
        up_to: Share it has at most [volume share].
        what: What it changes.
        way: Which way, against argon with a little oxygen.
        text: In the shop's words.
        source: Source id.
    """

    part: Part
    over: float
    up_to: float
    what: What
    way: Way
    text: str
    source: str


EFFECTS: tuple[Effect, ...] = (
    Effect("argon", 0.999, 1.0, "transfer", "other",
           "The arc wanders on steel and undercuts.", "gas-argon-steel"),
    Effect("co2", 0.0, SOLID_SPRAY_CO2_LIMIT, "transfer", "more",
           "Spray starts at a higher current the more CO2 there is.", "supplier-transition"),
    Effect("co2", SOLID_SPRAY_CO2_LIMIT, 0.50, "transfer", "other",
           "Solid wire runs short circuit; it does not spray.", "gas-choice-textbook"),
    Effect("co2", 0.50, 1.0, "transfer", "other",
           "Short circuit, or globular when hot. Never spray.", "gas-choice-textbook"),
    Effect("oxygen", 0.0, 0.10, "transfer", "less",
           "Oxygen steadies the arc and lets spray start sooner.", "mig-handbook-1-2"),
    Effect("helium", HELIUM_SPRAY_LIMIT, 1.0, "transfer", "other",
           "Mostly helium: short circuit, no spray.", "gas-choice-textbook"),
    Effect("co2", 0.0, 1.0, "volts", "more",
           "CO2 asks more volts for the same arc.", "machinery-31-t5"),
    Effect("oxygen", 0.0, 1.0, "volts", "more",
           "Oxygen asks a little more volts.", "gas-handbook"),
    Effect("helium", 0.0, 1.0, "volts", "more",
           "Helium asks more volts and starts harder.", "gas-properties"),
    Effect("co2", 0.0, 0.20, "spatter", "more",
           "A little spatter, more with more CO2.", "gas-handbook"),
    Effect("co2", 0.20, 0.50, "spatter", "more",
           "Some spatter; more than a rich argon mix.", "gas-handbook"),
    Effect("co2", 0.50, 1.0, "spatter", "more",
           "Spatters most of all.", "gas-choice-textbook"),
    Effect("co2", 0.0, 0.50, "laid", "less",
           "Spatter takes a few percent of the wire.", "lecture-efficiency"),
    Effect("co2", 0.50, 1.0, "laid", "less",
           "Lays least of the wire: it goes in spatter.", "lecture-efficiency"),
    Effect("argon", 0.90, 1.0, "penetration", "other",
           "Deep in the middle and narrow: a finger.", "gas-properties"),
    Effect("co2", 0.05, 0.50, "penetration", "more",
           "Wider and rounder at the root than argon alone.", "gas-handbook"),
    Effect("co2", 0.50, 1.0, "penetration", "more",
           "Deep and round.", "gas-choice-textbook"),
    Effect("helium", 0.0, 1.0, "penetration", "more",
           "Wider: helium carries more heat into the plate.", "gas-properties"),
    Effect("oxygen", 0.0, 0.15, "wetting", "more",
           "Oxygen thins the pool: flat bead, clean toes.", "gas-choice-textbook"),
    Effect("oxygen", 0.05, 1.0, "wetting", "other",
           "Burns manganese and silicon out of the wire.", "gas-handbook"),
    Effect("helium", 0.0, 1.0, "wetting", "more",
           "Toes wet in well.", "gas-properties"),
    Effect("co2", 0.0, 0.50, "fume", "more",
           "More fume with more CO2.", "gas-fume"),
    Effect("co2", 0.50, 1.0, "fume", "more",
           "Most fume, and carbon monoxide in it.", "gas-fume"),
    Effect("oxygen", 0.0, 1.0, "fume", "more",
           "A little more fume with oxygen.", "gas-fume"),
    Effect("helium", 0.0, 1.0, "flow", "more",
           "Lighter than air: run more.", "gas-flow-helium"),
)  # fmt: skip
"""Every effect. For one part and one thing it changes, the ranges of share do not overlap."""


def effects_of(gas: Gas) -> Iterator[Effect]:
    """Yield what a gas does, in the order of ``EFFECTS``.

    Source: each row names its own.

    Args:
        gas: The gas [-].
    """
    for effect in EFFECTS:
        share: float = getattr(gas, effect.part)
        if effect.over < share <= effect.up_to:
            yield effect
