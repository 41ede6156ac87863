"""Every limit on the current: what the wire, the mode, the plate and the machine allow."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.job.job import Job
from beadwright.phrases import Amount, say
from beadwright.process.heat import burn_through_current, fusion_current
from beadwright.process.position_currents import SHORT_HELD, held_current
from beadwright.process.transfer import (
    OPEN_TOP_A,
    SHORT_RANGE_A,
    Transfer,
    transition_current,
)
from beadwright.process.transfer_regions import globular_current
from beadwright.setting.limits import Limit
from beadwright.setting.machine_limits import machine_limits


def current_limits(job: Job, transfer: Transfer) -> Iterator[Limit]:
    """Yield every limit on the current [A].

    Args:
        job: The job [-].
        transfer: The mode planned [-].
    """
    yield from _of_mode(job, transfer)
    yield from _of_position(job, transfer)
    yield from _of_plate(job)
    yield from machine_limits(job, transfer)


def _of_mode(job: Job, transfer: Transfer) -> Iterator[Limit]:
    wire = job.wire
    short_low, short_high = SHORT_RANGE_A[wire.size]
    if transfer == "short":
        why = say("setting.wire-stubs", current=Amount(short_low, "current"))
        yield Limit("short-low", why, low=short_low, source="power-source-rule")
        why = say("setting.shorts-unevenly", current=Amount(short_high, "current"))
        yield Limit("short-top", why, high=short_high, source="equipment-sheet")
        return
    if transfer == "spray":
        least = transition_current(wire, job.gas)
        key = "setting.drops-out-of-spray" if wire.traits.shorts else "setting.drops-grow-coarse"
        why = say(key, current=Amount(least, "current"))
        yield Limit("transition", why, low=least, source=wire.traits.start_source)
    elif transfer == "globular":
        least = max(short_low, globular_current(wire, job.gas))
        why = say("setting.still-shorts", current=Amount(least, "current"))
        yield Limit("globular-low", why, low=least, source="power-source-conditions")
    else:
        why = say("setting.pulse-stubs", current=Amount(short_low, "current"))
        yield Limit("pulse-low", why, low=short_low)
    top = OPEN_TOP_A[wire.kind, wire.size]
    why = say("setting.usual-top", current=Amount(top, "current"))
    yield Limit("wire-top", why, high=top, source=wire.traits.top_source)


def _of_position(job: Job, transfer: Transfer) -> Iterator[Limit]:
    where = job.position.orientation
    if transfer == "short":
        share = SHORT_HELD[where][1]
        if share == 1:  # the pool stays as flat: short circuit's own top rules
            return
        top, source = SHORT_RANGE_A[job.wire.size][1] * share, "technician-points"
    else:
        held = held_current(job.wire, where, transfer)
        if held is None:
            return
        top, source = held[1], "position-currents"
    why = say("setting.pool-runs", current=Amount(top, "current"), orientation=job.position.phrase)
    yield Limit("position-top", why, high=top, source=source)


def _of_plate(job: Job) -> Iterator[Limit]:
    thin, material = job.thinner_m, job.wire.material
    if thin < material.thin_m:
        top = burn_through_current(thin, material)
        why = say("setting.burns-through", current=Amount(top, "current"))
        yield Limit("burn-through", why, high=top, source="power-source-conditions")
    least = fusion_current(thin, material)
    why = say("setting.does-not-fuse", current=Amount(least, "current"))
    yield Limit("fusion", why, low=least)
