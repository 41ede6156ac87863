"""What would open a window that is shut: one change to the job at a time, each tried for real."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from beadwright.job.job import Job
from beadwright.process.gases import GASES
from beadwright.process.positions import POSITIONS
from beadwright.process.transfer import NAMES
from beadwright.process.wires import wire_of
from beadwright.setting.plan import make_plan

MOST_OFFERED = 5


@dataclass(frozen=True, slots=True)
class WayOut:
    """One change that opens the window.

    Attributes:
        text: What to do, in the imperative.
        changes: Query keys to their new values.
    """

    text: str
    changes: Mapping[str, str]


def _changes(job: Job) -> Iterator[tuple[str, dict[str, str], Job]]:
    hand = job.by_hand
    if job.transfer != "auto":
        auto = replace(job, transfer="auto")
        yield "Let transfer follow the plate and gas", {"transfer": "auto"}, auto
    if hand.tip_to_work_m is not None:
        loose = replace(job, by_hand=replace(hand, tip_to_work_m=None))
        yield "Let go of tip-to-work", {"ctwd": ""}, loose
    if hand.volts is not None:
        yield "Let go of volts", {"volts": ""}, replace(job, by_hand=replace(hand, volts=None))
    for transfer in ("short", "pulse"):
        if job.transfer != transfer:
            name = NAMES[transfer].lower()
            yield f"Run {name}", {"transfer": transfer}, replace(job, transfer=transfer)
    made = job.wire.type.sizes
    near = made.index(job.wire.size)
    for size in sorted(made, key=lambda name: abs(made.index(name) - near)):
        if size != job.wire.size:
            wire = wire_of(job.wire.type.name, size)
            yield f"Use {size} wire", {"dia": size}, replace(job, wire=wire)
    for name in ("90/10", "75/25", "CO2"):
        if name != job.gas.name:
            yield f"Use {name} gas", {"gas": name}, replace(job, gas=GASES[name])
    if job.position.orientation == "vertical-down":
        up = POSITIONS["3-up"]
        way = {"position": up.name(job.is_fillet)}
        yield "Run it uphill", way, replace(job, position=up)
    for mover in ("track", "robot"):
        if mover != job.travel_by and job.travel_by != "robot":
            yield f"Put the torch on a {mover}", {"travel_by": mover}, replace(job, travel_by=mover)
    if job.machine_amps_a is not None or job.machine_volts_v is not None:
        bigger = replace(job, machine_amps_a=None, machine_volts_v=None)
        yield "Use a bigger power source", {"machine_amps": "", "machine_volts": ""}, bigger
    if job.leg_m is not None:
        least = replace(job, leg_m=None)
        yield "Weld the code's minimum leg", {"leg": ""}, least


def ways_out(job: Job) -> tuple[WayOut, ...]:
    """Return the single changes that leave a window, most at hand first; none if none does.

    Args:
        job: A job whose window is shut [-].
    """
    found: list[WayOut] = []
    for text, changes, changed in _changes(job):
        if make_plan(changed).open:
            found.append(WayOut(text, changes))
        if len(found) == MOST_OFFERED:
            break
    return tuple(found)
