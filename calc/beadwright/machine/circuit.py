"""Whether machine, leads and circuit carry the job: each check with its need and its limit."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from beadwright.machine.conductors import WARM_K, Conductor, resistance, volts_lost
from beadwright.machine.duty_cycle import PERIOD_S, current_at, duty_at, minutes_on
from beadwright.machine.primary import (
    Phases,
    apparent_power,
    effective_current,
    line_factor,
    primary_current,
)

Held = Literal["holds", "close", "fails"]

MOST_CABLE_VOLTS = 4.0
"""Most volts to lose in the welding leads [V]. Source: AWS fact sheet no. 39."""

MOST_CORD_SHARE = 0.05
"""Most of the supply's volts to lose in the cord [-]. Common practice."""

GENERATOR_ROOM = 0.8
"""Share of a generator's rating that an arc, going on and off, may load [-]. Common practice."""


@dataclass(frozen=True, slots=True)
class Machine:
    """A power source and what feeds it.

    Attributes:
        rated_a: Rated current [A].
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


@dataclass(frozen=True, slots=True)
class Check:
    """One thing that must carry the job.

    Attributes:
        key: Its id: current, arc, share, cable, breaker, cord, cord_drop, generator.
        name: What it is.
        held: holds, close or fails.
        measure: Kind of quantity.
        asked: What the job asks [SI].
        limit: What holds [SI].
        text: The same in a sentence; what to do where it does not hold.
        source: Source id.
    """

    key: str
    name: str
    held: Held
    measure: str
    asked: float
    limit: float
    text: str
    source: str


@dataclass(frozen=True, slots=True)
class Circuit:
    """What the machine can do at the job's current, and whether everything carries it.

    Attributes:
        machine: The machine.
        load: The job.
        duty: Duty cycle it holds at the job's current [-].
        on_s: Minutes on in ten [s].
        off_s: Minutes off in ten [s].
        all_day_a: Current it holds without a break [A].
        cable_v: Volts lost in the welding leads, or None without a size [V].
        machine_v: Volts to set at the machine so that the arc has its own [V].
        primary_a: Current drawn while the arc burns [A].
        effective_a: Steady current that heats as much [A].
        apparent_va: Volt-amps drawn while the arc burns [VA].
        worked_duty: Duty cycle the effective current is for [-].
        checks: Everything that has to carry it.
    """

    machine: Machine
    load: Load
    duty: float
    on_s: float
    off_s: float
    all_day_a: float
    cable_v: float | None
    machine_v: float
    primary_a: float
    effective_a: float
    apparent_va: float
    worked_duty: float
    checks: tuple[Check, ...]

    @property
    def holds(self) -> bool:
        """True if nothing fails."""
        return all(check.held != "fails" for check in self.checks)


def circuit(machine: Machine, load: Load) -> Circuit:
    """Return what the machine can do at a load and whether everything carries it.

    Source: ``duty_cycle``, ``primary``, ``conductors``.

    Args:
        machine: The machine and its circuit [-].
        load: The job [-].
    """
    duty = duty_at(load.current_a, machine.rated_a, machine.duty)
    cable = None
    if machine.cable is not None:
        cable = volts_lost(machine.cable, machine.cable_m, load.current_a)
    volts = load.volts + (cable or 0.0)
    output = volts * load.current_a
    primary = primary_current(
        output, machine.efficiency, machine.power_factor, machine.supply_v, machine.phases
    )
    worked = min(duty, load.share) if load.share is not None else duty
    found = Circuit(
        machine,
        load,
        duty,
        minutes_on(duty),
        PERIOD_S - minutes_on(duty),
        current_at(1.0, machine.rated_a, machine.duty),
        cable,
        volts,
        primary,
        effective_current(primary, worked),
        apparent_power(output, machine.efficiency, machine.power_factor),
        worked,
        (),
    )
    return _checked(found)


def _checked(found: Circuit) -> Circuit:
    checks = (*_of_machine(found), *_of_leads(found), *_of_supply(found))
    values = {name: getattr(found, name) for name in Circuit.__slots__ if name != "checks"}
    return Circuit(**values, checks=checks)


def _of_machine(found: Circuit) -> Iterator[Check]:
    machine, load = found.machine, found.load
    yield _current(machine, load.current_a)
    minutes = f"{found.on_s / 60:.1f} min on, {found.off_s / 60:.1f} off"
    fits = load.longest_arc_s <= found.on_s
    text = f"At {load.current_a:.0f} A: {minutes}, in ten."
    if not fits:
        text += (
            f" One weld runs {load.longest_arc_s / 60:.1f} min without a break: weld it in "
            "pieces, or with less current."
        )
    yield Check("arc", "Longest weld", "holds" if fits else "fails", "time",
                load.longest_arc_s, found.on_s, text, "i2t")  # fmt: skip
    if load.share is not None:
        fits = load.share <= found.duty
        text = (
            f"The arc burns {load.share:.0%} of the time, the machine holds {found.duty:.0%}."
            if fits
            else f"The arc burns {load.share:.0%} of the time, the machine holds {found.duty:.0%} "
            f"here: it will cut out. It runs all day at {found.all_day_a:.0f} A."
        )
        near = fits and load.share > 0.9 * found.duty and found.duty < 1
        yield Check("share", "Duty cycle", "close" if near else "holds" if fits else "fails",
                    "share", load.share, found.duty, text, "i2t")  # fmt: skip


def _current(machine: Machine, current: float) -> Check:
    most = machine.most_a or machine.rated_a
    held: Held = "holds"
    text = "The machine gives the current."
    if machine.most_a is not None and current > most:
        held = "fails"
        text = f"The job wants {current:.0f} A, the machine stops at {most:.0f} A: a thinner "
        text += "wire, less feed or another machine."
    elif current > machine.rated_a:
        held = "close"
        text = f"The job wants {current:.0f} A, over the rated {machine.rated_a:.0f} A: read on "
        text += "the plate whether the machine gives it, and for how long."
    return Check("current", "Current", held, "current", current, most, text, "yours")


def _of_leads(found: Circuit) -> Iterator[Check]:
    cable, lost = found.machine.cable, found.cable_v
    if cable is None or lost is None:
        return
    fits = lost <= MOST_CABLE_VOLTS
    text = f"{lost:.1f} V lost in {cable.name}: set {found.machine_v:.1f} V at the machine for "
    text += f"{found.load.volts:.1f} V at the arc."
    if not fits:
        text += " Over 4 V: shorter or thicker leads."
    yield Check("cable", "Welding leads", "holds" if fits else "close", "volts", lost,
                MOST_CABLE_VOLTS, text, "four-volts")  # fmt: skip


def _of_supply(found: Circuit) -> Iterator[Check]:
    machine, primary, steady = found.machine, found.primary_a, found.effective_a
    if machine.breaker_a is not None:
        yield _breaker(machine.breaker_a, primary, steady)
    if machine.cord is not None:
        if machine.cord.cord_a is not None:
            fits = steady <= machine.cord.cord_a
            text = f"{machine.cord.name} carries {machine.cord.cord_a:.0f} A, " + (
                f"{steady:.0f} A asked." if fits else f"{steady:.0f} A asked: a thicker cord."
            )
            yield Check("cord", "Cord", "holds" if fits else "fails", "current", steady,
                        machine.cord.cord_a, text, "nec-400.5")  # fmt: skip
        yield _cord_drop(machine, machine.cord, primary)
    if machine.generator_va is not None:
        yield _generator(machine.generator_va, found.apparent_va)


def _breaker(breaker: float, primary: float, steady: float) -> Check:
    held: Held = "holds"
    text = f"{primary:.0f} A drawn, {breaker:.0f} A breaker."
    if steady > breaker:
        held = "fails"
        text += f" Even on and off it heats like {steady:.0f} A: it trips. A larger circuit."
    elif primary > breaker:
        held = "close"
        text += f" On and off it heats like {steady:.0f} A, but a long weld trips it."
    return Check("breaker", "Breaker", held, "current", primary, breaker, text, "nec-630")


def _cord_drop(machine: Machine, cord: Conductor, primary: float) -> Check:
    ways = 2.0 if machine.phases == 1 else line_factor(3)
    lost = primary * resistance(cord, machine.cord_m, WARM_K) * ways
    most = MOST_CORD_SHARE * machine.supply_v
    fits = lost <= most
    text = f"{lost:.1f} V of {machine.supply_v:.0f} V lost in the cord."
    if not fits:
        text += " The arc goes soft: shorter or thicker."
    return Check("cord_drop", "Volts lost in the cord", "holds" if fits else "close", "volts",
                 lost, most, text, "copper-annealed")  # fmt: skip


def _generator(rating: float, asked: float) -> Check:
    text = f"{asked / 1000:.1f} kVA drawn, generator gives {rating / 1000:.1f}."
    if asked > rating:
        return Check("generator", "Generator", "fails", "power", asked, rating,
                     f"{text} It stalls.", "machine-efficiency")  # fmt: skip
    near = asked > GENERATOR_ROOM * rating
    if near:
        text += " Keep a fifth free for the starts."
    return Check("generator", "Generator", "close" if near else "holds", "power", asked, rating,
                 text, "machine-efficiency")  # fmt: skip
