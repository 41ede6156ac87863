"""The current a hand sets for a joint: by its plate, its wire, its mode and its position."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.job.job import Job
from beadwright.process.plate_currents import open_plate_current, short_plate_current
from beadwright.process.position_currents import SHORT_HELD, held_current
from beadwright.process.positions import Mover
from beadwright.process.transfer import OPEN_TOP_A, SHORT_RANGE_A, Transfer

OPEN_SHARE: Mapping[Mover, float] = MappingProxyType({"hand": 1.0, "track": 1.05, "robot": 1.15})
"""Open-arc current of a mover over a hand's on the same plate [-]: what tires no machine.
Common practice."""


BACKED_BUTT = 1.12
"""Current on a butt with a backing over one without [-]: it carries heat and holds the pool.

Source: power-source manuals, butts on copper backing 0.6 to 6 mm against butts without (found); the
rows of one table differ by a fifth either way."""


def runs_as_butt(job: Job) -> bool:
    """Return whether the arc stands on two edges with nothing behind them.

    Args:
        job: The job [-].
    """
    return job.joint in ("square", "corner")


def usual_current(job: Job, transfer: Transfer) -> float:
    """Return the current a hand sets for a job in a mode, before travel and limits are asked [A].

    Metal-cored wire is given the current that solid wire of its size would be, so that the two
    compare as they are run.

    Source: ``plate_currents``, ``position_currents``, ``OPEN_SHARE``, ``BACKED_BUTT``.

    Args:
        job: The job [-].
        transfer: The mode planned [-].
    """
    wire, where, thin = job.wire, job.position.orientation, job.thinner_m
    butt = runs_as_butt(job)
    kind = wire.traits.given_current_of
    backed = BACKED_BUTT if butt and job.backed else 1.0
    open_arc = backed * open_plate_current(thin, OPEN_TOP_A[kind, wire.size], butt=butt)
    if transfer == "short":
        top = SHORT_RANGE_A[wire.size][1]
        usual = backed * short_plate_current(thin, wire.size, butt=butt)
        if job.gas.co2 == 1:  # no spray above it: short circuit is run up to its own top
            usual = max(usual, min(open_arc, top))
        return min(usual, top) * SHORT_HELD[where][0]
    held = held_current(wire, where, transfer)
    usual = open_arc * OPEN_SHARE[job.travel_by]
    return usual if held is None else min(usual, held[0])
