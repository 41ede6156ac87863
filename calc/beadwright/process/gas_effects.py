"""What a gas does to the arc and the bead, by what is in it.

Only the direction and the reason; the amount is where the number is used: volts in ``arc``, spray
in ``transfer``, laid metal in ``deposition``, flow in ``gas_flow``.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from beadwright.phrases import Phrase, say
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
        phrase: What it does.
        source: Source id.
    """

    part: Part
    over: float
    up_to: float
    what: What
    way: Way
    phrase: Phrase
    source: str


EFFECTS: tuple[Effect, ...] = (
    Effect("argon", 0.999, 1.0, "transfer", "other",
           say("process.argon-wanders"), "gas-argon-steel"),
    Effect("co2", 0.0, SOLID_SPRAY_CO2_LIMIT, "transfer", "more",
           say("process.co2-raises-spray"), "supplier-transition"),
    Effect("co2", SOLID_SPRAY_CO2_LIMIT, 0.50, "transfer", "other",
           say("process.co2-shorts"), "gas-choice-textbook"),
    Effect("co2", 0.50, 1.0, "transfer", "other",
           say("process.co2-globular"), "gas-choice-textbook"),
    Effect("oxygen", 0.0, 0.10, "transfer", "less",
           say("process.oxygen-lowers-spray"), "mig-handbook-1-2"),
    Effect("helium", HELIUM_SPRAY_LIMIT, 1.0, "transfer", "other",
           say("process.helium-shorts"), "gas-choice-textbook"),
    Effect("co2", 0.0, 1.0, "volts", "more",
           say("process.co2-asks-volts"), "machinery-31-t5"),
    Effect("oxygen", 0.0, 1.0, "volts", "more",
           say("process.oxygen-asks-volts"), "gas-handbook"),
    Effect("helium", 0.0, 1.0, "volts", "more",
           say("process.helium-asks-volts"), "gas-properties"),
    Effect("co2", 0.0, 0.20, "spatter", "more",
           say("process.little-spatter"), "gas-handbook"),
    Effect("co2", 0.20, 0.50, "spatter", "more",
           say("process.some-spatter"), "gas-handbook"),
    Effect("co2", 0.50, 1.0, "spatter", "more",
           say("process.most-spatter"), "gas-choice-textbook"),
    Effect("co2", 0.0, 0.50, "laid", "less",
           say("process.spatter-takes-some"), "lecture-efficiency"),
    Effect("co2", 0.50, 1.0, "laid", "less",
           say("process.spatter-takes-most"), "lecture-efficiency"),
    Effect("argon", 0.90, 1.0, "penetration", "other",
           say("process.finger"), "gas-properties"),
    Effect("co2", 0.05, 0.50, "penetration", "more",
           say("process.rounder-root"), "gas-handbook"),
    Effect("co2", 0.50, 1.0, "penetration", "more",
           say("process.deep-and-round"), "gas-choice-textbook"),
    Effect("helium", 0.0, 1.0, "penetration", "more",
           say("process.helium-wider"), "gas-properties"),
    Effect("oxygen", 0.0, 0.15, "wetting", "more",
           say("process.oxygen-thins-pool"), "gas-choice-textbook"),
    Effect("oxygen", 0.05, 1.0, "wetting", "other",
           say("process.oxygen-burns-alloy"), "gas-handbook"),
    Effect("helium", 0.0, 1.0, "wetting", "more",
           say("process.toes-wet-in"), "gas-properties"),
    Effect("co2", 0.0, 0.50, "fume", "more",
           say("process.more-fume"), "gas-fume"),
    Effect("co2", 0.50, 1.0, "fume", "more",
           say("process.most-fume"), "gas-fume"),
    Effect("oxygen", 0.0, 1.0, "fume", "more",
           say("process.oxygen-fume"), "gas-fume"),
    Effect("helium", 0.0, 1.0, "flow", "more",
           say("process.lighter-than-air"), "gas-flow-helium"),
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
