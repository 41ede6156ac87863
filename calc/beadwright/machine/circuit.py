"""Whether machine, leads and circuit carry the job: each check with its need and its limit."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from beadwright.machine.check import Check, Held
from beadwright.machine.conductors import volts_lost
from beadwright.machine.power_source import Drawn, Load, Machine
from beadwright.machine.supply_checks import supply_checks
from beadwright.phrases import Amount, Parameter, say
from beadwright.power.duty_cycle import PERIOD_S, current_at, duty_at, minutes_on
from beadwright.power.primary import (
    apparent_power,
    effective_current,
    line_factor,
    primary_current,
    rated_volts,
)

MOST_CABLE_VOLTS = 4.0
"""Most volts to lose in the welding leads [V]. Source: AWS fact sheet no. 39."""


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
        drawn: What this job draws from the supply.
        rated: What the machine draws at its rating.
        worked_duty: Duty cycle the job's effective current is for [-].
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
    drawn: Drawn
    rated: Drawn
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
    worked = min(duty, load.share) if load.share is not None else duty
    rated_w = machine.rated_a * rated_volts(machine.rated_a)
    found = Circuit(
        machine=machine,
        load=load,
        duty=duty,
        on_s=minutes_on(duty),
        off_s=PERIOD_S - minutes_on(duty),
        all_day_a=current_at(1.0, machine.rated_a, machine.duty),
        cable_v=cable,
        machine_v=volts,
        drawn=_drawn(machine, volts * load.current_a, worked),
        rated=_drawn(machine, rated_w, machine.duty),
        worked_duty=worked,
        checks=(),
    )
    return _checked(found)


def _drawn(machine: Machine, output_w: float, duty: float) -> Drawn:
    """What the machine draws for an output: by its plate where that is written."""
    efficiency, factor = machine.efficiency, machine.power_factor
    if machine.plate_a is not None:
        plate_va = machine.plate_a * machine.supply_v * line_factor(machine.phases)
        efficiency, factor = machine.rated_a * rated_volts(machine.rated_a) / plate_va, 1.0
    primary = primary_current(output_w, efficiency, factor, machine.supply_v, machine.phases)
    return Drawn(primary, effective_current(primary, duty),
                 apparent_power(output_w, efficiency, factor))  # fmt: skip


def _checked(found: Circuit) -> Circuit:
    return replace(
        found,
        checks=(*_of_machine(found), *_of_leads(found), *supply_checks(found.machine, found.drawn)),
    )


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
