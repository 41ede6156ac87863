"""Every limit on the current: what the wire, the mode, the plate and the machine allow."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.job.job import Job
from beadwright.process.heat import burn_through_current, fusion_current
from beadwright.process.operating import volts_window
from beadwright.process.transfer import (
    NAMES,
    OPEN_TOP_A,
    SHORT_RANGE_A,
    Transfer,
    globular_current,
    transition_current,
)
from beadwright.setting.limits import Limit


def current_limits(job: Job, transfer: Transfer) -> Iterator[Limit]:
    """Yield every limit on the current [A].

    Args:
        job: The job [-].
        transfer: The mode planned [-].
    """
    yield from _of_mode(job, transfer)
    yield from _of_plate(job)
    yield from _of_machine(job, transfer)


def _of_mode(job: Job, transfer: Transfer) -> Iterator[Limit]:
    wire = job.wire
    short_low, short_high = SHORT_RANGE_A[wire.size]
    if transfer == "short":
        text = f"below {short_low:.0f} A this wire stubs"
        yield Limit("short-low", text, low=short_low, source="power-source-rule")
        text = f"over {short_high:.0f} A this wire no longer shorts evenly"
        yield Limit("short-top", text, high=short_high, source="equipment-sheet")
        return
    if transfer == "spray":
        least = transition_current(wire, job.gas)
        shorts = wire.traits.shorts
        does = "this wire drops out of spray" if shorts else "this wire's drops grow coarse"
        source = wire.traits.start_source
        yield Limit("transition", f"below {least:.0f} A {does}", low=least, source=source)
    elif transfer == "globular":
        least = max(short_low, globular_current(wire, job.gas))
        text = f"below {least:.0f} A this wire still short circuits"
        yield Limit("globular-low", text, low=least, source="power-source-conditions")
    else:
        text = f"below {short_low:.0f} A even pulse stubs this wire"
        yield Limit("pulse-low", text, low=short_low)
    top = OPEN_TOP_A[wire.kind, wire.size]
    source = wire.traits.top_source
    yield Limit("wire-top", f"{top:.0f} A is this wire's usual top", high=top, source=source)


def _of_plate(job: Job) -> Iterator[Limit]:
    thin, material = job.thinner_m, job.wire.material
    if thin < material.thin_m:
        top = burn_through_current(thin, material)
        text = f"over {top:.0f} A this plate burns through"
        yield Limit("burn-through", text, high=top, source="power-source-conditions")
    least = fusion_current(thin, material)
    text = f"below {least:.0f} A the bead lies on the plate without fusing"
    yield Limit("fusion", text, low=least)


def _of_machine(job: Job, transfer: Transfer) -> Iterator[Limit]:
    if job.machine_amps_a is not None:
        text = f"your machine stops at {job.machine_amps_a:.0f} A"
        yield Limit("machine", text, high=job.machine_amps_a, source="yours")
    if job.machine_volts_v is not None and transfer != "pulse":
        # The low edge of the volts window is straight in current: above this the machine is short.
        foot = volts_window(0.0, job.wire, job.gas, transfer)[0]
        slope = (volts_window(100.0, job.wire, job.gas, transfer)[0] - foot) / 100
        mode = NAMES[transfer].lower()
        text = f"your machine's {job.machine_volts_v:g} V carry {mode} no higher"
        most = max(1.0, (job.machine_volts_v - foot) / slope)
        yield Limit("machine-volts", text, high=most, source="yours")
