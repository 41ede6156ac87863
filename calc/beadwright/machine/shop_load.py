"""What the Shop page's query asks of a machine: the machine as written, the job as a load on it."""

from __future__ import annotations

from dataclasses import replace

from beadwright.errors import FieldErrors
from beadwright.job.job import Job, PowerSource
from beadwright.machine.power_source import Load, Machine
from beadwright.machine.shop_query import DEMO_RATED_A, ShopQuery
from beadwright.measures import System
from beadwright.power.primary import Phases, line_factor, rated_volts
from beadwright.process.operating import feed_at_current
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.units import written

MOST_PLATE_SHARE = 0.98
"""Most of a plate's volt-amps that can come out as rated output [-]: no machine does better."""


def machine_of(read: ShopQuery) -> Machine:
    """Return the machine and its circuit.

    Args:
        read: The page's query [-].

    Raises:
        FieldErrors: If its plate draws less than it gives.
    """
    rated = read.rated_amps or read.machine_amps or DEMO_RATED_A
    phases: Phases = 3 if read.phase == "3" else 1
    _plate_is_possible(read, rated, read.supply * line_factor(phases))
    return Machine(
        rated_a=rated,
        plate_a=read.plate_amps,
        duty=read.duty,
        most_a=read.machine_amps,
        efficiency=read.machine_efficiency,
        power_factor=read.power_factor,
        supply_v=read.supply,
        phases=phases,
        breaker_a=read.breaker,
        cord=read.cord,
        cord_m=read.cord_length,
        generator_va=read.generator,
        cable=read.cable,
        cable_m=read.cable_length,
    )


def _plate_is_possible(read: ShopQuery, rated: float, volts: float) -> None:
    if read.plate_amps is None:
        return
    least = rated * rated_volts(rated) / MOST_PLATE_SHARE / volts
    if read.plate_amps < least:
        system: System = read.job.units
        raise FieldErrors({"plate_amps": [
            f"At its rated {written(rated, 'current', system)} this machine gives more than "
            f"{written(read.plate_amps, 'current', system)} bring; it must draw "
            f"{written(least, 'current', system)} or more. Check rated amps, supply and phases."
        ]})  # fmt: skip


def dialled_for(read: ShopQuery, job: Job | None = None) -> DialIn:
    """Return the job as dialled in, without the machine's limits: Shop says what they do not give.

    With a current written, the feed is the one that draws it, and the volts follow.

    Args:
        read: The page's query [-].
        job: Another job than the query's, or None [-].
    """
    whole = replace(
        job or read.job, machine_amps_a=None, machine_volts_v=None, source=PowerSource()
    )
    dialled = dial_in(whole)
    point, stick = dialled.point, dialled.settings.tip_to_work.value
    if read.amps is None or whole.by_hand.wire_feed_m_s is not None:
        return dialled
    if point is None or stick is None or dialled.outcome is None:
        return dialled
    feed = feed_at_current(
        whole.wire, whole.gas, dialled.outcome.transfer, read.amps, stick, whole.by_hand.volts
    )
    return dial_in(replace(whole, by_hand=replace(whole.by_hand, wire_feed_m_s=feed)))


def load_of(read: ShopQuery, dialled: DialIn) -> Load:
    """Return the job as a load on the machine.

    Args:
        read: The page's query [-].
        dialled: The job as dialled in [-].

    Raises:
        FieldErrors: If no setting holds every limit of the job.
    """
    point, travel = dialled.point, dialled.settings.travel.value
    if point is None or travel is None:
        text = "No setting holds every limit of this job. Write the feed you run."
        raise FieldErrors({"wfs": [text]})
    current = read.amps or point.current_a
    return Load(current, point.volts, dialled.job.weld_length_m / travel, read.arc_share)
