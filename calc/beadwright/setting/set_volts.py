"""Where in its room the volts are set, by joint and position: butts and out of position lower."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.job.job import Job
from beadwright.process.positions import Orientation
from beadwright.process.transfer import Transfer
from beadwright.setting.usual_current import runs_as_butt

SHORT_BUTT_V = -0.8
"""Short circuit in argon mixtures on butts against fillets [V].

Source: power-source manual, butts 1.0 to 4.0 mm in argon and CO2, 13-15 V at 50-55 A to 18-21 V at
150-170 A (found); in CO2 butts and fillets stand on one line (found)."""

SHORT_FILLET_V = 0.5
"""Short circuit in argon mixtures on fillets against the middle of its line [V].

Source: fillets in 75/25, 18 V at 100 A to 22 V at 160-185 A (trade-school schedules and a procedure
handbook, from memory), against 17-18 V at 140-190 A (Machinery's Handbook)."""

FLUX_OUT_OF_POSITION_V: Mapping[Orientation, float] = MappingProxyType(
    {"vertical-up": -1.2, "overhead": -0.6}
)
"""Flux-cored wire out of position against flat, at the same current [V].

Source: vertical-up 24-25.5 V at 180-220 A with 0.045 in (from memory); overhead 25-26 V at
180-220 A and 26-27 V at 200-240 A (a sample procedure, second-hand)."""

_LEAN_CO2 = 0.25


def set_volts_shift(job: Job, transfer: Transfer) -> float:
    """Return how far from its mode's own line a job's volts are set [V].

    Source: ``SHORT_BUTT_V``, ``SHORT_FILLET_V``, ``FLUX_OUT_OF_POSITION_V``.

    Args:
        job: The job [-].
        transfer: The mode planned [-].
    """
    if job.wire.traits.slag:
        return FLUX_OUT_OF_POSITION_V.get(job.position.orientation, 0.0)
    if transfer != "short":
        return 0.0
    own = SHORT_BUTT_V if runs_as_butt(job) else SHORT_FILLET_V
    return own * max(0.0, min(1.0, (1 - job.gas.co2) / (1 - _LEAN_CO2)))
