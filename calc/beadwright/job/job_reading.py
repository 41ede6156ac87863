"""From a job's entries to the job: the wire by class and size, pairs that contradict each other."""

from __future__ import annotations

from dataclasses import replace

from beadwright.errors import FieldErrors, UnknownEntryError
from beadwright.job.job import USUAL_SUPPLY_V, ByHand, Edges, Job, PowerSource
from beadwright.job.job_entries import JobEntries
from beadwright.job.job_joint import weld_way
from beadwright.job.joint_conflicts import conflicts
from beadwright.process.own_numbers import own_of
from beadwright.process.wires import wire_of


def job_of(asked: JobEntries) -> Job:
    """Return the job that entries describe.

    Args:
        asked: The entries [-].

    Raises:
        FieldErrors: If entries contradict each other, each named.
    """
    try:
        wire = wire_of(asked.wire, asked.dia)
    except UnknownEntryError as error:
        raise FieldErrors({"dia": [str(error)]}) from error
    if asked.own:
        own = own_of(asked.own, wire.type.name, wire.size, asked.gas.name)
        wire = replace(wire, own=own)
    job = Job(
        units=asked.units,
        joint=asked.joint,
        plate_m=asked.plate,
        plate2_m=asked.plate if asked.plate2 is None else asked.plate2,
        leg_m=asked.leg,
        gap_m=asked.gap,
        reinforcement_m=asked.reinforcement,
        position=asked.position,
        wire=wire,
        gas=asked.gas,
        transfer=asked.transfer,
        travel_by=asked.travel_by,
        by_hand=ByHand(
            wire_feed_m_s=asked.wfs,
            volts=asked.volts,
            tip_to_work_m=asked.ctwd,
            travel_m_s=asked.travel,
        ),
        weld_length_m=asked.weld_length,
        welds=asked.welds,
        machine_amps_a=asked.machine_amps,
        machine_volts_v=asked.machine_volts,
        source=PowerSource(
            rated_a=asked.rated_amps,
            duty=asked.duty,
            breaker_a=asked.breaker,
            supply_v=asked.supply or USUAL_SUPPLY_V,
            phases=3 if asked.phase == "3" else 1,
        ),
        edges=_edges(asked),
        nozzle=asked.nozzle,
        aim=asked.aim,
        heat_min_j_m=asked.heat_min,
        heat_max_j_m=asked.heat_max,
    )
    _check_heat(job)
    _check_pairs(job)
    # A plug is laid around: its way follows from the hole.
    return replace(job, weld_length_m=weld_way(job)) if job.is_round else job


def _edges(asked: JobEntries) -> Edges:
    return Edges(
        leg2_m=asked.leg2,
        skew_deg=90.0 if asked.skew is None else asked.skew,
        corner=asked.corner,
        angle_deg=asked.angle,
        root_face_m=asked.root_face,
        depth_m=asked.depth,
        depth2_m=asked.depth2,
        backing=asked.backing,
        back=asked.back,
        gouge_m=asked.gouge_depth,
        hole_m=asked.hole,
        slot_m=asked.slot_length,
        pitch_m=asked.pitch,
    )


def _check_heat(job: Job) -> None:
    least, most = job.heat_min_j_m, job.heat_max_j_m
    if least is not None and most is not None and least > most:
        text = "The least heat is over the most; a procedure's range runs the other way."
        raise FieldErrors({"heat_min": [text], "heat_max": [text]})


def _check_pairs(job: Job) -> None:
    """Refuse what no single field shows: pairs that contradict each other."""
    found: dict[str, list[str]] = {}
    for fields, text in conflicts(job):
        for field in fields:
            found.setdefault(field, []).append(text)
    if found:
        raise FieldErrors(found)
