"""Dial in: from a job to the settings, the room each has, and what follows from them."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.job.job import Job
from beadwright.joint.fillets import flat_section, leg_of_section
from beadwright.phrases import say
from beadwright.process.burnoff import constants_of
from beadwright.process.deposition import bead_section, laid_rate
from beadwright.process.gas_flow import gas_flow
from beadwright.process.heat import heat_input, heat_input_en
from beadwright.process.melted import melted
from beadwright.process.operating import Operating
from beadwright.process.transfer_regions import transfer_at
from beadwright.results import Note, Quantity, within
from beadwright.setting.outcome import Outcome, Settings
from beadwright.setting.plan import Plan, make_plan
from beadwright.setting.remarks import remarks
from beadwright.setting.settings import settings_of
from beadwright.setting.torch import Torch, torch


@dataclass(frozen=True, slots=True)
class DialIn:
    """The answer of the Dial-in page.

    Attributes:
        job: The job as understood.
        plan: Mode, joint to scale, passes, room.
        open: False if no setting holds every limit.
        settings: Feed, volts, tip-to-work, travel.
        point: The operating point, or None without a set point.
        outcome: What follows, or None without a set point.
        torch: How to hold it.
        notes: Notes, the most severe first.
    """

    job: Job
    plan: Plan
    open: bool
    settings: Settings
    point: Operating | None
    outcome: Outcome | None
    torch: Torch
    notes: tuple[Note, ...]


def _outcome(job: Job, plan: Plan, point: Operating, travel: float) -> Outcome:
    low, typical, high = plan.efficiency
    laid = laid_rate(job.wire, point.feed_m_s, typical)
    bead = bead_section(laid, travel, job.wire.material)
    metal = bead * plan.passes * job.wire.material.density_kg_m3
    length = job.weld_length_m * job.welds
    band = constants_of(job.wire).band
    # Feed grows with a power of current between 1 and 2, so the current's band is a little tighter.
    current = within("Current", "current", point.current_a, band / 1.2, "power-balance")
    heat = heat_input(point.volts, point.current_a, travel)
    heat_en = heat_input_en(point.volts, point.current_a, travel)
    flow = gas_flow(job.gas, point.current_a, job.position.orientation, job.nozzle)
    over_flat = plan.shape.section_m2 / flat_section(plan.shape.leg_m) if job.is_fillet else 1.0
    leg = leg_of_section(bead * plan.passes, over_flat) if job.is_fillet else None
    mode = plan.transfer  # a mean current and the machine's own volts say nothing of pulse
    if mode != "pulse":
        mode = transfer_at(point.current_a, point.volts, job.wire, job.gas)
    into_plate = melted(
        kind=job.wire.kind,
        transfer=mode,
        current_a=point.current_a,
        volts=point.volts,
        travel_m_s=travel,
        thinner_m=job.thinner_m,
        bead_m2=bead,
        leg_m=leg_of_section(bead, over_flat) if job.is_fillet else None,
        co2=job.gas.co2,
    )
    return Outcome(
        transfer=mode,
        current=current,
        heat=within("Heat input", "heat_input", heat, band / 1.2, "asme-qw-409"),
        heat_en=within("Heat input, EN", "heat_input", heat_en, band / 1.2, "en-1011-1"),
        laid=Quantity(
            name="Deposition rate",
            measure="deposition",
            value=laid,
            low=laid * low / typical,
            high=laid * high / typical,
            meaning="band",
            sources=(job.wire.traits.efficiency_source,),
        ),
        bead=Quantity("Bead section", "area", bead, sources=("mass-balance",)),
        leg=Quantity("Leg laid", "leg", leg, sources=("fillet-reinforced",)),
        throat=Quantity("Throat", "length", plan.shape.throat_m, sources=("mass-balance",)),
        gas_flow=Quantity(
            name="Gas flow",
            measure="gas_flow",
            value=flow.usual,
            low=flow.low,
            high=flow.high,
            meaning="window",
            sources=flow.sources,
            low_by=say("setting.less-gas-lets-air-in", nozzle=flow.nozzle.name),
            high_by=say("setting.more-gas-drags-air-in", nozzle=flow.nozzle.name),
        ),
        flow=flow,
        metal=Quantity("Weld metal", "mass_per_length", metal, sources=("mass-balance",)),
        wire_mass=Quantity(
            name="Wire for the job",
            measure="mass",
            value=metal * length / typical,
            low=metal * length / high,
            high=metal * length / low,
            meaning="band",
            sources=(job.wire.traits.efficiency_source,),
        ),
        arc_time=Quantity(
            "Arc time for the job", "time", length * plan.passes / travel, sources=("mass-balance",)
        ),
        penetration=into_plate.penetration,
        dilution=into_plate.dilution,
    )


def dial_in(job: Job, passes: int | None = None) -> DialIn:
    """Return the settings for a job, each with low, set and high, and what follows from them.

    Source: the modules it calls; every quantity names its own.

    Args:
        job: The job as read by ``job_query.read_query`` [-].
        passes: Passes asked for, all of one size, 1 or more; None: the fewest [-].
    """
    plan = make_plan(job, passes)
    settings, point, travel = settings_of(job, plan)
    outcome = None
    if point is not None and travel is not None:
        outcome = _outcome(job, plan, point, travel)
    held = torch(job.joint, job.position.orientation, plan.transfer, job.wire.kind)
    notes = remarks(job, plan, settings, outcome)
    return DialIn(
        job=job,
        plan=plan,
        open=plan.open,
        settings=settings,
        point=point,
        outcome=outcome,
        torch=held,
        notes=notes,
    )
