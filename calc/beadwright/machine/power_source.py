"""A power source with what feeds it, and the load of a job on it."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.machine.conductors import Conductor
from beadwright.power.primary import Phases


@dataclass(frozen=True, slots=True)
class Machine:
    """A power source and what feeds it.

    Attributes:
        rated_a: Rated current [A].
        plate_a: Most current it draws by its plate (I1max), or None if not written [A].
        duty: Duty cycle at it [-].
        most_a: Most current it gives, or None if not written [A].
        efficiency: Output power over power drawn [-].
        power_factor: Power drawn over volt-amps drawn [-].
        supply_v: Supply volts, between lines if three phase [V].
        phases: 1 or 3.
        breaker_a: Breaker or fuse, or None [A].
        cord: Cord from wall or generator, or None.
        cord_m: Its length, one way [m].
        generator_va: Generator's rating, or None on the mains [VA].
        cable: Welding leads, or None.
        cable_m: Both leads together [m].
    """

    rated_a: float
    plate_a: float | None
    duty: float
    most_a: float | None
    efficiency: float
    power_factor: float
    supply_v: float
    phases: Phases
    breaker_a: float | None
    cord: Conductor | None
    cord_m: float
    generator_va: float | None
    cable: Conductor | None
    cable_m: float


@dataclass(frozen=True, slots=True)
class Drawn:
    """What a machine draws from its supply.

    Attributes:
        primary_a: Current while the arc burns [A].
        effective_a: Steady current that heats as much [A].
        apparent_va: Volt-amps while the arc burns [VA].
    """

    primary_a: float
    effective_a: float
    apparent_va: float


@dataclass(frozen=True, slots=True)
class Load:
    """The load of the job on the machine.

    Attributes:
        current_a: Current [A].
        volts: Volts at the arc [V].
        longest_arc_s: Longest arc without a break [s].
        share: Share of the time the arc burns at the busiest, or None if not known [-].
    """

    current_a: float
    volts: float
    longest_arc_s: float
    share: float | None
