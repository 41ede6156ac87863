"""Whether machine, leads and circuit carry the job: each check with its need and its limit."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Literal

from beadwright.machine.conductors import WARM_K, Conductor, resistance, volts_lost
from beadwright.machine.power_source import Load, Machine
from beadwright.phrases import Amount, Parameter, Phrase, say
from beadwright.power.duty_cycle import PERIOD_S, current_at, duty_at, minutes_on
from beadwright.power.primary import (
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


_CHECKS: Mapping[str, Phrase] = MappingProxyType(
    {
        "current": say("machine.current"),
        "arc": say("machine.arc"),
        "share": say("machine.share"),
        "cable": say("machine.cable"),
        "breaker": say("machine.breaker"),
        "cord": say("machine.cord"),
        "cord_drop": say("machine.cord-lost"),
        "generator": say("machine.generator"),
    }
)


@dataclass(frozen=True, slots=True)
class Check:
    """One thing that must carry the job.

    Attributes:
        key: Its id: current, arc, share, cable, breaker, cord, cord_drop, generator.
        held: holds, close or fails.
        measure: Kind of quantity.
        asked: What the job asks [SI].
        limit: What holds [SI].
        phrase: The same in a sentence; what to do where it does not hold.
        source: Source id.
    """

    key: str
    held: Held
    measure: str
    asked: float
    limit: float
    phrase: Phrase
    source: str

    @property
    def name(self) -> Phrase:
        """What it is called."""
        return _CHECKS[self.key]


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
        machine=machine,
        load=load,
        duty=duty,
        on_s=minutes_on(duty),
        off_s=PERIOD_S - minutes_on(duty),
        all_day_a=current_at(1.0, machine.rated_a, machine.duty),
        cable_v=cable,
        machine_v=volts,
        primary_a=primary,
        effective_a=effective_current(primary, worked),
        apparent_va=apparent_power(output, machine.efficiency, machine.power_factor),
        worked_duty=worked,
        checks=(),
    )
    return _checked(found)


def _checked(found: Circuit) -> Circuit:
    return replace(found, checks=(*_of_machine(found), *_of_leads(found), *_of_supply(found)))


def _of_machine(found: Circuit) -> Iterator[Check]:
    machine, load = found.machine, found.load
    yield _current(machine, load.current_a)
    fits = load.longest_arc_s <= found.on_s
    minutes: dict[str, Parameter] = {
        "current": Amount(load.current_a, "current"),
        "on": Amount(found.on_s, "time"),
        "off": Amount(found.off_s, "time"),
    }
    if fits:
        told = say("machine.duty-in-ten", **minutes)
    else:
        longest = Amount(load.longest_arc_s, "time")
        told = say("machine.weld-outlasts-duty", **minutes, longest=longest)
    yield Check("arc", "holds" if fits else "fails", "time",
                load.longest_arc_s, found.on_s, told, "i2t")  # fmt: skip
    if load.share is not None:
        fits = load.share <= found.duty
        all_day = Amount(found.all_day_a, "current")
        told = (
            say("machine.share-held", share=load.share, duty=found.duty)
            if fits
            else say("machine.share-over", share=load.share, duty=found.duty, all_day=all_day)
        )
        near = fits and load.share > 0.9 * found.duty and found.duty < 1
        yield Check("share", "close" if near else "holds" if fits else "fails",
                    "share", load.share, found.duty, told, "i2t")  # fmt: skip


def _current(machine: Machine, current: float) -> Check:
    most = machine.most_a or machine.rated_a
    held: Held = "holds"
    told = say("machine.gives-current")
    wants = Amount(current, "current")
    if machine.most_a is not None and current > most:
        held = "fails"
        told = say("machine.stops-short", wants=wants, most=Amount(most, "current"))
    elif current > machine.rated_a:
        held = "close"
        rated = Amount(machine.rated_a, "current")
        told = say("machine.over-rated", wants=wants, rated=rated)
    return Check("current", held, "current", current, most, told, "yours")


def _of_leads(found: Circuit) -> Iterator[Check]:
    cable, lost = found.machine.cable, found.cable_v
    if cable is None or lost is None:
        return
    fits = lost <= MOST_CABLE_VOLTS
    told = say(
        "machine.leads-hold" if fits else "machine.leads-lose",
        lost=Amount(lost, "volts"),
        cable=cable.name,
        machine=Amount(found.machine_v, "volts"),
        arc=Amount(found.load.volts, "volts"),
    )
    yield Check("cable", "holds" if fits else "close", "volts", lost,
                MOST_CABLE_VOLTS, told, "four-volts")  # fmt: skip


def _of_supply(found: Circuit) -> Iterator[Check]:
    machine, primary, steady = found.machine, found.primary_a, found.effective_a
    if machine.breaker_a is not None:
        yield _breaker(machine.breaker_a, primary, steady)
    if machine.cord is not None:
        if machine.cord.cord_a is not None:
            fits = steady <= machine.cord.cord_a
            told = say(
                "machine.cord-carries" if fits else "machine.cord-too-thin",
                cord=machine.cord.name,
                most=Amount(machine.cord.cord_a, "current"),
                asked=Amount(steady, "current"),
            )
            yield Check("cord", "holds" if fits else "fails", "current", steady,
                        machine.cord.cord_a, told, "nec-400.5")  # fmt: skip
        yield _cord_drop(machine, machine.cord, primary)
    if machine.generator_va is not None:
        yield _generator(machine.generator_va, found.apparent_va)


def _breaker(breaker: float, primary: float, steady: float) -> Check:
    held: Held = "holds"
    drawn: dict[str, Parameter] = {
        "drawn": Amount(primary, "current"),
        "breaker": Amount(breaker, "current"),
    }
    heats_like = Amount(steady, "current")
    told = say("machine.breaker-holds", **drawn)
    if steady > breaker:
        held = "fails"
        told = say("machine.breaker-trips", **drawn, heats_like=heats_like)
    elif primary > breaker:
        held = "close"
        told = say("machine.long-weld-trips", **drawn, heats_like=heats_like)
    return Check("breaker", held, "current", primary, breaker, told, "nec-630")


def _cord_drop(machine: Machine, cord: Conductor, primary: float) -> Check:
    ways = 2.0 if machine.phases == 1 else line_factor(3)
    lost = primary * resistance(cord, machine.cord_m, WARM_K) * ways
    most = MOST_CORD_SHARE * machine.supply_v
    fits = lost <= most
    told = say(
        "machine.cord-drop" if fits else "machine.cord-drop-soft-arc",
        lost=Amount(lost, "volts"),
        supply=Amount(machine.supply_v, "volts"),
    )
    return Check("cord_drop", "holds" if fits else "close", "volts",
                 lost, most, told, "copper-annealed")  # fmt: skip


def _generator(rating: float, asked: float) -> Check:
    held: Held = "holds"
    key = "machine.generator-holds"
    if asked > rating:
        held, key = "fails", "machine.generator-stalls"
    elif asked > GENERATOR_ROOM * rating:
        held, key = "close", "machine.generator-close"
    told = say(key, drawn=Amount(asked, "power"), gives=Amount(rating, "power"))
    return Check("generator", held, "power", asked, rating, told, "machine-efficiency")
