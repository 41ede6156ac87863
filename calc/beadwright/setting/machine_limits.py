"""Limits on the current by the power source: its most, its volts, its duty cycle, its breaker."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType

from beadwright.job.job import Job
from beadwright.phrases import Amount, say
from beadwright.power.duty_cycle import current_at
from beadwright.power.primary import line_factor
from beadwright.process.operating import volts_window
from beadwright.process.positions import Mover
from beadwright.process.transfer import MODE_PHRASES, Transfer
from beadwright.root import crossing
from beadwright.setting.limits import Limit

ARC_SHARE: Mapping[Mover, float] = MappingProxyType({"hand": 0.5, "track": 0.8, "robot": 0.8})
"""Share of ten busy minutes that the arc burns, by who moves the gun [-].

Source: operating factors in print, semi-automatic 15-60 %, mechanized 50-80 % (handbooks and TWI,
found); their busy ends.
"""

SOURCE_EFFICIENCY = 0.85
SOURCE_POWER_FACTOR = 0.95
"""Output over power drawn, and power drawn over volt-amps drawn, of a usual inverter [-].

Source: textbook, inverters 0.85 to 0.90 (second-hand); power factor: common practice. Shop counts
with the machine's own.
"""

SOURCE_LIMITS = frozenset({"machine", "machine-volts", "duty", "breaker"})
"""Keys of the limits of a power source."""

_LOWEST_A, _HIGHEST_A = 5.0, 1500.0


def machine_limits(job: Job, transfer: Transfer) -> Iterator[Limit]:
    """Yield every limit of the power source on the current [A].

    Source: ``duty_cycle.current_at``, ``primary``, ``ARC_SHARE``, ``SOURCE_EFFICIENCY``,
    ``SOURCE_POWER_FACTOR``.

    Args:
        job: The job [-].
        transfer: The mode planned [-].
    """
    if job.machine_amps_a is not None:
        why = say("setting.machine-stops", most=Amount(job.machine_amps_a, "current"))
        yield Limit("machine", why, high=job.machine_amps_a, source="yours")
    if job.machine_volts_v is not None and transfer != "pulse":
        # The low edge of the volts window is straight in current: above this the machine lacks
        # volts.
        foot = volts_window(0.0, job.wire, job.gas, transfer)[0]
        slope = (volts_window(100.0, job.wire, job.gas, transfer)[0] - foot) / 100
        volts, mode = Amount(job.machine_volts_v, "volts"), MODE_PHRASES[transfer]
        why = say("setting.machine-volts-carry", volts=volts, mode=mode)
        most = max(1.0, (job.machine_volts_v - foot) / slope)
        yield Limit("machine-volts", why, high=most, source="yours")
    yield from _of_duty(job)
    yield from _of_breaker(job, transfer)


def _of_duty(job: Job) -> Iterator[Limit]:
    """The rated current, or what the duty cycle leaves at the share of time the arc burns."""
    source = job.source
    if source.rated_a is None:
        return
    share = ARC_SHARE[job.travel_by]
    duty = source.duty if source.duty is not None else 1.0
    if duty < share:
        most = current_at(share, source.rated_a, duty)
        why = say("setting.duty-holds", most=Amount(most, "current"), share=share)
        yield Limit("duty", why, high=most, source="i2t")
    elif job.machine_amps_a is None:
        why = say("setting.machine-stops", most=Amount(source.rated_a, "current"))
        yield Limit("machine", why, high=source.rated_a, source="yours")


def _of_breaker(job: Job, transfer: Transfer) -> Iterator[Limit]:
    """The current at which the arc draws what the breaker carries."""
    source = job.source
    if source.breaker_a is None:
        return
    drawn = source.breaker_a * source.supply_v * line_factor(source.phases)
    most_w = drawn * SOURCE_EFFICIENCY * SOURCE_POWER_FACTOR

    def output(current: float) -> float:
        return current * volts_window(current, job.wire, job.gas, transfer)[1]

    if output(_HIGHEST_A) <= most_w:
        return
    most = crossing(output, _LOWEST_A, _HIGHEST_A, most_w)
    breaker = Amount(source.breaker_a, "current")
    why = say("setting.breaker-carries", breaker=breaker, most=Amount(most, "current"))
    yield Limit("breaker", why, high=most, source="nec-630")
