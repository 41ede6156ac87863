"""The four settings, and what they make."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.phrases import Phrase, say
from beadwright.process.gas_flow import GasFlow
from beadwright.process.transfer import Transfer
from beadwright.results import Quantity

SETTING_PHRASES: Mapping[str, Phrase] = MappingProxyType(
    {
        "wire_feed": say("setting.wire-feed"),
        "volts": say("setting.volts"),
        "tip_to_work": say("setting.tip-to-work"),
        "travel": say("setting.travel"),
    }
)
"""What each of the four settings is called, by its measure."""


@dataclass(frozen=True, slots=True)
class Settings:
    """The four settings, each with its window; value None where none can be given."""

    wire_feed: Quantity
    volts: Quantity
    tip_to_work: Quantity
    travel: Quantity

    def all(self) -> tuple[Quantity, ...]:
        """The four, in the order they are set."""
        return (self.wire_feed, self.volts, self.travel, self.tip_to_work)


@dataclass(frozen=True, slots=True)
class Outcome:
    """What the settings make.

    Attributes:
        transfer: Mode at the set point (the planned one where no set point is given).
        current: Mean current, with the burn-off's band.
        heat: Heat input, no efficiency (AWS, ASME).
        heat_en: Heat input with k = 0.8 (EN 1011-1).
        laid: Deposition rate.
        bead: Section of one bead.
        leg: Leg that the passes fill; value None for a groove.
        throat: Throat of the leg asked for.
        gas_flow: Gas flow.
        flow: The same with its nozzle.
        metal: Weld metal per length of joint.
        wire_mass: Wire for the whole job.
        arc_time: Arc time of the whole job.
        penetration: Depth past the root, or below the surface for a butt; an estimate.
        dilution: Share of base metal in the bead; an estimate.
    """

    transfer: Transfer
    current: Quantity
    heat: Quantity
    heat_en: Quantity
    laid: Quantity
    bead: Quantity
    leg: Quantity
    throat: Quantity
    gas_flow: Quantity
    flow: GasFlow
    metal: Quantity
    wire_mass: Quantity
    arc_time: Quantity
    penetration: Quantity
    dilution: Quantity
