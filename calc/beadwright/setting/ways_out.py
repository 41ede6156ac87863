"""Single changes to the job that would open a shut window, each worked out in full."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from beadwright.job.job import Job, PowerSource
from beadwright.job.job_joint import joint_shape
from beadwright.layers.bead_limits import BRIDGED_GAP_M, one_layer_deep
from beadwright.measures import INCH_M
from beadwright.phrases import Amount, Phrase, say
from beadwright.process.gases import GASES
from beadwright.process.positions import MOVER_PHRASES, POSITIONS
from beadwright.process.transfer import MODE_PHRASES
from beadwright.process.wires import wire_of
from beadwright.setting.plan import SHORT_TO_M, make_plan
from beadwright.tolerance import SAME_PLATE

MOST_OFFERED = 5
"""Changes offered at most: as many as a phone shows at once [-]."""

NEAR_SIZES = 2
"""Sizes up or down the list of a wire's that are offered [-]. Common practice: no hand takes 0.023
in wire to plate where 0.045 in was meant."""

DOWNHILL_TO_M = 1 / 4 * INCH_M
"""Thickest plate that is offered downhill [m]. Common practice: short circuit downhill on thicker
plate laps cold."""


@dataclass(frozen=True, slots=True)
class WayOut:
    """One change that opens the window.

    Attributes:
        phrase: What to do, in the imperative.
        changes: Query keys to their new values.
    """

    phrase: Phrase
    changes: Mapping[str, str]


def _changes(job: Job) -> Iterator[tuple[Phrase, dict[str, str], Job]]:
    hand = job.by_hand
    if one_layer_deep(joint_shape(job)[0]):
        closed = replace(job, gap_m=BRIDGED_GAP_M)
        told = say("setting.close-gap", gap=Amount(BRIDGED_GAP_M, "length"))
        yield told, {"gap": "1/16in"}, closed
        if not job.is_double:
            backed = replace(job, edges=replace(job.edges, backing="steel"))
            yield say("setting.back-it"), {"backing": "steel"}, backed
    if job.transfer != "auto":
        auto = replace(job, transfer="auto")
        yield say("setting.let-transfer-follow"), {"transfer": "auto"}, auto
    if hand.tip_to_work_m is not None:
        loose = replace(job, by_hand=replace(hand, tip_to_work_m=None))
        yield say("setting.let-go-of-tip"), {"ctwd": ""}, loose
    if hand.volts is not None:
        loose = replace(job, by_hand=replace(hand, volts=None))
        yield say("setting.let-go-of-volts"), {"volts": ""}, loose
    made = job.wire.type.sizes
    near = made.index(job.wire.size)
    for size in sorted(made, key=lambda name: abs(made.index(name) - near)):
        if 0 < abs(made.index(size) - near) <= NEAR_SIZES:
            wire = wire_of(job.wire.type.name, size)
            use = say("setting.use-wire", size=size)
            yield use, {"dia": size}, replace(job, wire=wire)
    for transfer in ("short", "pulse"):
        thick = transfer == "short" and job.thinner_m > SHORT_TO_M * SAME_PLATE
        if job.transfer != transfer and not thick:
            run = say("setting.run-mode", mode=MODE_PHRASES[transfer])
            yield run, {"transfer": transfer}, replace(job, transfer=transfer)
    for name in ("90/10", "75/25", "CO2"):
        if name != job.gas.name:
            use = say("setting.use-gas", gas=name)
            yield use, {"gas": name}, replace(job, gas=GASES[name])
    if job.position.orientation == "vertical-down":
        up = POSITIONS["3-up"]
        way = {"position": up.name(job.is_fillet)}
        yield say("setting.run-uphill"), way, replace(job, position=up)
    if job.position.orientation == "vertical-up" and job.thinner_m <= DOWNHILL_TO_M:
        down = POSITIONS["3-down"]
        way = {"position": down.name(job.is_fillet)}
        yield say("setting.run-downhill"), way, replace(job, position=down)
    for mover in ("track", "robot"):
        if mover != job.travel_by and job.travel_by != "robot":
            put = say("setting.put-torch-on", mover=MOVER_PHRASES[mover])
            yield put, {"travel_by": mover}, replace(job, travel_by=mover)
    limited = (job.machine_amps_a, job.machine_volts_v, job.source.rated_a, job.source.breaker_a)
    if any(limit is not None for limit in limited):
        bigger = replace(job, machine_amps_a=None, machine_volts_v=None, source=PowerSource())
        own: tuple[str, ...] = ("machine_amps", "machine_volts", "rated_amps", "breaker")
        yield say("setting.bigger-power-source"), dict.fromkeys(own, ""), bigger
    if job.leg_m is not None:
        least = replace(job, leg_m=None)
        yield say("setting.minimum-leg"), {"leg": ""}, least


def ways_out(job: Job) -> tuple[WayOut, ...]:
    """Return the single changes that leave a window, the easiest first; none if no change does.

    No change is offered that only opens by running globular where that was not meant.

    Args:
        job: A job whose window is shut [-].
    """
    found: list[WayOut] = []
    meant = make_plan(job).transfer
    for phrase, changes, changed in _changes(job):
        plan = make_plan(changed)
        if plan.open and (plan.transfer != "globular" or meant == "globular"):
            found.append(WayOut(phrase, changes))
        if len(found) == MOST_OFFERED:
            break
    return tuple(found)
