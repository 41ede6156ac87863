"""Single changes that make machine and circuit hold a job, each worked out in full."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Set
from dataclasses import dataclass, replace
from itertools import islice
from math import ceil, floor

from beadwright import units
from beadwright.errors import FieldErrors
from beadwright.job.job import ByHand, Job, PowerSource
from beadwright.machine.circuit import Circuit, circuit
from beadwright.machine.conductors import CONDUCTORS, Conductor, cord_amps
from beadwright.machine.power_source import Load
from beadwright.machine.shop_load import dialled_for, load_of, machine_of
from beadwright.machine.shop_query import ShopQuery
from beadwright.machine.supply_checks import GENERATOR_START
from beadwright.measures import EXACT_INCH_M, FOOT_M, System
from beadwright.phrases import Amount, Phrase, say
from beadwright.power.primary import Phases
from beadwright.process.operating import volts_window
from beadwright.process.wires import wire_of
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.ways_out import MOST_OFFERED, NEAR_SIZES, WayOut

BREAKERS_A = (15.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 100.0, 125.0)
"""Ratings of breakers [A]. Source: NFPA 70, 240.6(A), standard ampere ratings, from memory."""

LEAST_CURRENT_A = 30.0
"""Current under which no lower feed is looked for [A]. Common practice: the least wires run at."""

_HALVINGS = 12
_CORD_STEP_M = 5 * float(FOOT_M)
_PIECE_STEP_M: Mapping[System, float] = {"us": float(EXACT_INCH_M / 8), "si": 0.005}
"""Step of the length of a piece [m]. Common practice: as fine as chalk marks it."""

Way = tuple[Phrase, Mapping[str, str]]


@dataclass(frozen=True, slots=True)
class _Asked:
    """What is to be made to hold.

    Attributes:
        read: The page's query.
        dialled: The job as dialled in.
        found: What machine and circuit do with it.
    """

    read: ShopQuery
    dialled: DialIn
    found: Circuit

    @property
    def wrong(self) -> frozenset[str]:
        """Keys of what fails or is close; leads lose volts whatever is changed here."""
        held = {check.key for check in self.found.checks if check.held == "holds"}
        return frozenset(check.key for check in self.found.checks) - held - {"cable"}

    def mended(self, found: Circuit, keys: Set[str]) -> bool:
        """True if nothing fails any more and what was wrong with these keys holds."""
        return found.holds and all(
            check.held == "holds" for check in found.checks if check.key in self.wrong & keys
        )

    def tried(self, read: ShopQuery, *keys: str) -> bool:
        """True if another machine or circuit mends what was wrong with these keys."""
        found = circuit(machine_of(read), load_of(read, self.dialled))
        return self.mended(found, set(keys))


def shop_ways_out(read: ShopQuery, dialled: DialIn, found: Circuit) -> tuple[WayOut, ...]:
    """Return the changes after which nothing fails and less is close; none where all holds.

    Source: ``circuit.circuit`` and ``dial_in.dial_in``, asked again for each.

    Args:
        read: The page's query [-].
        dialled: The job as dialled in [-].
        found: What machine and circuit do with it [-].
    """
    asked = _Asked(read, dialled, found)
    if not asked.wrong:
        return ()
    return tuple(WayOut(phrase, changes) for phrase, changes in islice(_ways(asked), MOST_OFFERED))


def _ways(asked: _Asked) -> Iterator[Way]:
    job = asked.read.job
    yield from _cooler(asked, job)
    yield from _of_cord(asked)
    yield from _of_time(asked)
    made = job.wire.type.sizes
    at = made.index(job.wire.size)
    for size in reversed(made[max(0, at - NEAR_SIZES) : at]):
        yield from _cooler(asked, replace(job, wire=wire_of(job.wire.type.name, size)))
    yield from _of_supply(asked)


def _cooler(asked: _Asked, job: Job) -> Iterator[Way]:
    """The most feed of a wire with which all holds, if the job has room for it."""
    most = _most_current(asked, job)
    if most is None:
        return
    free = replace(job, by_hand=ByHand(tip_to_work_m=job.by_hand.tip_to_work_m))
    capped = dial_in(replace(free, machine_amps_a=most, machine_volts_v=None, source=PowerSource()))
    feed = capped.settings.wire_feed.value
    if not capped.open or feed is None:
        return
    text = units.write(_rounded_down(feed, job.units), "wire_feed", job.units)
    changes = {"wfs": text, "amps": "", "volts": "", "travel": ""}
    if job.wire.size != asked.read.job.wire.size:
        changes["dia"] = job.wire.size
    by_hand = replace(free.by_hand, wire_feed_m_s=units.read(text, "wire_feed"))
    set_to = replace(free, by_hand=by_hand)
    found = _worked(asked.read, set_to)
    if found is None and capped.plan.transfer in ("short", "spray"):
        changes["transfer"] = capped.plan.transfer
        found = _worked(asked.read, replace(set_to, transfer=capped.plan.transfer))
    if found is None or not asked.mended(found, asked.wrong):
        return
    shown = Amount(units.read(text, "wire_feed"), "wire_feed")
    if "dia" in changes:
        yield say("machine.wire-and-feed", size=job.wire.size, feed=shown), changes
    else:
        yield say("machine.feed-down", feed=shown), changes


def _rounded_down(feed_m_s: float, system: System) -> float:
    step = units.STEPS["wire_feed", system] * units.MEASURES["wire_feed"].unit(system).factor
    return float(floor(feed_m_s / step + 1e-9) * step)


def _worked(read: ShopQuery, job: Job) -> Circuit | None:
    """What machine and circuit do with another job; None where it leaves its own windows."""
    asked = replace(read, amps=None)
    dialled = dialled_for(asked, job)
    if not dialled.open or any(note.level in ("out", "stop") for note in dialled.notes):
        return None
    try:
        return circuit(machine_of(asked), load_of(asked, dialled))
    except FieldErrors:
        return None


def _most_current(asked: _Asked, job: Job) -> float | None:
    """The most current, under the job's, at which all holds; None where none does [A].

    A weld of less current takes longer in proportion: its metal is the same.
    """
    machine, load = asked.found.machine, asked.found.load

    def holds(current: float) -> bool:
        volts = volts_window(current, job.wire, job.gas, asked.dialled.plan.transfer)[1]
        arc_s = load.longest_arc_s * load.current_a / current
        found = circuit(machine, Load(current, volts, arc_s, load.share))
        return asked.mended(found, asked.wrong)

    low, high = LEAST_CURRENT_A, load.current_a
    if not holds(low):
        return None
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        low, high = (middle, high) if holds(middle) else (low, middle)
    return low


def _of_cord(asked: _Asked) -> Iterator[Way]:
    """A shorter cord or a thicker one."""
    read, wrong = asked.read, asked.wrong
    if "cord_drop" in wrong:
        [drop] = [check for check in asked.found.checks if check.key == "cord_drop"]
        length = floor(read.cord_length * drop.limit / drop.asked / _CORD_STEP_M) * _CORD_STEP_M
        if length > 0 and asked.tried(replace(read, cord_length=length), "cord_drop"):
            text = units.write(length, "distance", "us")
            yield (say("machine.shorter-cord", length=Amount(length, "distance")),
                   {"cord_length": text})  # fmt: skip
    if wrong & {"cord", "cord_drop"}:
        for cord in _thicker(read.cord, asked.found.machine.phases):
            if asked.tried(replace(read, cord=cord), "cord", "cord_drop"):
                yield say("machine.thicker-cord", cord=cord.name), {"cord": cord.name}
                return


def _thicker(cord: Conductor, phases: Phases) -> list[Conductor]:
    """Thicker cords of the same kind of size, the thinnest first."""
    kind = cord.name.split()[-1]
    same = [each for each in CONDUCTORS.values() if each.name.endswith(kind)]
    return [each for each in same if each.section_m2 > cord.section_m2
            and cord_amps(each, phases) is not None]  # fmt: skip


def _of_time(asked: _Asked) -> Iterator[Way]:
    """Shorter welds, longer rests."""
    load, found = asked.found.load, asked.found
    if "arc" in asked.wrong and found.on_s > 0:
        yield from _in_pieces(asked)
    if load.share is not None and asked.wrong & {"share", "breaker", "cord"}:
        for percent in range(round(load.share * 100 / 5) * 5, 0, -5):
            share = percent / 100
            rested = circuit(found.machine, replace(load, share=share))
            if share < load.share and asked.mended(rested, {"share", "breaker", "cord"}):
                yield say("machine.rest-more", share=share), {"arc_share": f"{percent}%"}
                return


def _in_pieces(asked: _Asked) -> Iterator[Way]:
    """The fewest equal pieces that hold, each of a length that can be marked with chalk."""
    job, load, found = asked.read.job, asked.found.load, asked.found
    step = _PIECE_STEP_M[job.units]
    fewest = ceil(load.longest_arc_s / found.on_s)
    for pieces in (fewest, fewest + 1):
        length = ceil(job.weld_length_m / pieces / step - 1e-9) * step
        share = length / job.weld_length_m
        shorter = replace(load, longest_arc_s=load.longest_arc_s * share)
        if asked.mended(circuit(found.machine, shorter), {"arc"}):
            text = units.write(length, "length", job.units)
            welds = {"weld_length": text, "welds": str(job.welds * pieces)}
            yield say("machine.in-pieces", pieces=float(pieces)), welds
            return


def _of_supply(asked: _Asked) -> Iterator[Way]:
    """A larger circuit, a larger generator."""
    read, found = asked.read, asked.found
    if "breaker" in asked.wrong:
        for breaker in BREAKERS_A:
            if breaker > read.breaker and asked.tried(replace(read, breaker=breaker), "breaker"):
                amps = Amount(breaker, "current")
                yield say("machine.larger-circuit", breaker=amps), {"breaker": f"{breaker:g}A"}
                break
    if "generator" in asked.wrong:
        kva = ceil(found.drawn.apparent_va * GENERATOR_START / 1000)
        if asked.tried(replace(read, generator=kva * 1000.0), "generator"):
            gives = Amount(kva * 1000.0, "power")
            yield say("machine.larger-generator", gives=gives), {"generator": f"{kva}kVA"}
