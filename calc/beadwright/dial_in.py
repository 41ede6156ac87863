"""Dial in: from a job to the settings, the room each has, and what follows from them."""

from __future__ import annotations

from dataclasses import dataclass
from math import inf

from beadwright import units
from beadwright.arc import arc_length_m
from beadwright.burnoff import constants_of, extension_from_feed
from beadwright.deposition import (
    bead_section,
    feed_for_travel,
    laid_rate,
    travel_for_section,
)
from beadwright.fillets import flat_section, leg_of_section
from beadwright.gas_flow import gas_flow
from beadwright.heat import heat_input, heat_input_en
from beadwright.job import Job
from beadwright.limits import Limit, Window, bind
from beadwright.melted import melted
from beadwright.operating import Operating, at_feed, volts_window
from beadwright.outcome import Outcome, Settings
from beadwright.plan import Plan, best_feed, heat_ceiling_j_m, make_plan
from beadwright.positions import TRAVEL_RANGE_M_S
from beadwright.remarks import remarks
from beadwright.results import Note, Quantity, within
from beadwright.technique import Torch, tip_to_work, torch
from beadwright.transfer import NAMES, transfer_at
from beadwright.wires import STEEL_DENSITY_KG_M3

OVERWELD_M = 1 / 16 * 0.0254
"""Leg over the one asked for that counts as overwelding [m]. Common practice."""

MOST_BUTT_CROWN_M = 1 / 8 * 0.0254
"""Most reinforcement of a butt [m]. Source: AWS D1.1, from memory."""


@dataclass(frozen=True, slots=True)
class DialIn:
    """The answer of the Dial-in page.

    Attributes:
        job: The job as understood.
        plan: Mode, joint to scale, passes, room.
        open: False if no setting holds every limit.
        settings: Feed, volts, tip-to-work, travel.
        point: Where the arc stands, or None without a set point.
        outcome: What follows, or None without a set point.
        torch: How to hold it.
        notes: What to mind, loudest first.
    """

    job: Job
    plan: Plan
    open: bool
    settings: Settings
    point: Operating | None
    outcome: Outcome | None
    torch: Torch
    notes: tuple[Note, ...]


def _feed_of(job: Job, plan: Plan) -> float | None:
    hand = job.by_hand
    if hand.wire_feed_m_s is not None:
        return hand.wire_feed_m_s
    if hand.travel_m_s is not None:
        return feed_for_travel(job.wire, hand.travel_m_s, plan.bead_m2, plan.efficiency[1])
    return best_feed(job, plan) if plan.open else None


def _window(
    name: str,
    measure: str,
    value: float | None,
    window: Window,
    *,
    by_hand: bool,
    sources: tuple[str, ...],
) -> Quantity:
    return Quantity(
        name,
        measure,
        value,
        window.low if window.low > -inf else None,
        window.high if window.high < inf else None,
        "window",
        sources,
        window.low_limit.text,
        window.high_limit.text,
        by_hand,
    )


def _volts(job: Job, plan: Plan, point: Operating) -> Quantity:
    low, _, high = volts_window(point.current_a, job.wire, job.gas, plan.transfer)
    if plan.transfer == "pulse":
        return Quantity(
            "Volts at the arc",
            "volts",
            None,
            meaning="window",
            sources=("practice",),
            low_by="pulse: the machine sets its own volts; trim arc length by ear",
        )
    mode = NAMES[plan.transfer].lower()
    limits = [
        Limit("arc-short", f"below it {mode} stubs and spits at this current", low=low),
        Limit("arc-long", f"above it the {mode} arc is too long: spatter and undercut", high=high),
    ]
    if job.machine_volts_v is not None:
        text = f"your machine stops at {job.machine_volts_v:g} V"
        limits.append(Limit("machine", text, high=job.machine_volts_v, source="yours"))
    source = "power-source-conditions" if job.wire.kind == "solid" else "e70c-sheet"
    return _window(
        "Volts at the arc",
        "volts",
        point.volts,
        bind(limits),
        by_hand=job.by_hand.volts is not None,
        sources=("machinery-31-t5", source),
    )


def _tip_to_work(job: Job, plan: Plan, point: Operating) -> Quantity:
    low, _, high = tip_to_work(job.wire, plan.transfer)
    mode = NAMES[plan.transfer].lower()
    limits = [
        Limit("tip-range", f"the usual range for this wire in {mode}", low, high),
    ]
    arc = arc_length_m(point.volts)
    currents = plan.currents
    in_room = currents.low <= point.current_a <= currents.high
    if in_room and currents.low > 0:
        longest = extension_from_feed(job.wire, point.feed_m_s, currents.low) + arc
        limits.append(Limit("current-low", f"farther out, {currents.low_limit.text}", high=longest))
    if in_room and currents.high < inf:
        closest = extension_from_feed(job.wire, point.feed_m_s, currents.high) + arc
        limits.append(Limit("current-high", f"closer in, {currents.high_limit.text}", low=closest))
    return _window(
        "Tip to work",
        "tip_to_work",
        plan.tip_to_work_m,
        bind(limits),
        by_hand=job.by_hand.tip_to_work_m is not None,
        sources=("power-source-conditions", "practice"),
    )


def _travel_limits(job: Job, plan: Plan, point: Operating, laid: float) -> list[Limit]:
    slow, fast = TRAVEL_RANGE_M_S[job.travel_by, job.position.lie]
    over, under = _section_room(job, plan)
    limits = [
        Limit("mover", f"what a {job.travel_by} holds {job.position.lie}", slow, fast),
        Limit(
            "oversize",
            "slower lays over 1/16 in more leg than asked"
            if job.is_fillet
            else "slower heaps the crown over 1/8 in",
            low=travel_for_section(laid, over / plan.passes),
            source="mass-balance",
        ),
        Limit(
            "undersize",
            "faster leaves the leg short even if the face is flat"
            if job.is_fillet
            else "faster leaves less than half the crown",
            high=travel_for_section(laid, under / plan.passes),
            source="mass-balance",
        ),
    ]
    ceiling = heat_ceiling_j_m(job)
    if ceiling < inf:
        limits.append(
            Limit(
                "heat",
                "slower puts in more heat than this plate stands",
                low=point.volts * point.current_a / ceiling,
            )
        )
    return limits


def _section_room(job: Job, plan: Plan) -> tuple[float, float]:
    """Largest and smallest section of weld metal that is still the joint asked for [m²]."""
    shape = plan.shape
    if job.is_fillet:
        swell = ((shape.leg_m + OVERWELD_M) / shape.leg_m) ** 2
        return shape.section_m2 * swell, shape.section_m2 - shape.crown_m2
    more = shape.crown_room_m2(MOST_BUTT_CROWN_M)
    return shape.section_m2 + more, shape.section_m2 - shape.crown_m2 / 2


def _settings(job: Job, plan: Plan) -> tuple[Settings, Operating | None, float | None]:
    hand = job.by_hand
    feed = _feed_of(job, plan)
    feed_quantity = _window(
        "Wire feed",
        "wire_feed",
        feed,
        plan.feeds,
        by_hand=hand.wire_feed_m_s is not None,
        sources=("power-balance", plan.feeds.low_limit.source, plan.feeds.high_limit.source),
    )
    if feed is None:
        blank = (
            Quantity(
                "Volts at the arc",
                "volts",
                hand.volts,
                meaning="window",
                by_hand=hand.volts is not None,
            ),
            Quantity(
                "Tip to work",
                "tip_to_work",
                plan.tip_to_work_m,
                meaning="window",
                by_hand=hand.tip_to_work_m is not None,
            ),
            Quantity("Travel", "travel", None, meaning="window"),
        )
        return Settings(feed_quantity, *blank), None, None
    point = at_feed(job.wire, job.gas, plan.transfer, feed, plan.tip_to_work_m, hand.volts)
    if hand.volts is None and plan.transfer != "pulse":
        volts = units.settable(point.volts, "volts", job.units)
        if job.machine_volts_v is not None:
            volts = min(volts, job.machine_volts_v)
        stepped = at_feed(job.wire, job.gas, plan.transfer, feed, plan.tip_to_work_m, volts)
        if transfer_at(stepped.current_a, volts, job.wire, job.gas) == plan.transfer:
            point = stepped
    laid = laid_rate(job.wire, feed, plan.efficiency[1])
    travel = hand.travel_m_s or travel_for_section(laid, plan.bead_m2)
    travel_quantity = _window(
        "Travel",
        "travel",
        travel,
        bind(_travel_limits(job, plan, point, laid)),
        by_hand=hand.travel_m_s is not None,
        sources=("mass-balance", "fillet-reinforced"),
    )
    settings = Settings(
        feed_quantity, _volts(job, plan, point), _tip_to_work(job, plan, point), travel_quantity
    )
    return settings, point, travel


def _outcome(job: Job, plan: Plan, point: Operating, travel: float) -> Outcome:
    low, typical, high = plan.efficiency
    laid = laid_rate(job.wire, point.feed_m_s, typical)
    bead = bead_section(laid, travel)
    metal = bead * plan.passes * STEEL_DENSITY_KG_M3
    length = job.weld_length_m * job.welds
    band = constants_of(job.wire).band
    # Feed goes with current to a power between 1 and 2, so the current's band is a little tighter.
    current = within("Current", "current", point.current_a, band / 1.2, "power-balance")
    heat = heat_input(point.volts, point.current_a, travel)
    heat_en = heat_input_en(point.volts, point.current_a, travel)
    flow = gas_flow(job.gas, point.current_a, job.position.lie, job.nozzle)
    over_flat = plan.shape.section_m2 / flat_section(plan.shape.leg_m) if job.is_fillet else 1.0
    leg = leg_of_section(bead * plan.passes, over_flat) if job.is_fillet else None
    efficiency_source = "e70c-sheet" if job.wire.kind == "metal-cored" else "lecture-efficiency"
    mode = plan.transfer  # a mean current and the machine's own volts say nothing of pulse
    if mode != "pulse":
        mode = transfer_at(point.current_a, point.volts, job.wire, job.gas)
    into_plate = melted(
        job.wire.kind,
        mode,
        point.current_a,
        point.volts,
        travel,
        job.thinner_m,
        bead,
        leg_of_section(bead, over_flat) if job.is_fillet else None,
    )
    return Outcome(
        transfer=mode,
        current=current,
        heat=within("Heat input", "heat_input", heat, band / 1.2, "asme-qw-409"),
        heat_en=within("Heat input, EN", "heat_input", heat_en, band / 1.2, "en-1011-1"),
        laid=Quantity(
            "Laid metal",
            "deposition",
            laid,
            laid * low / typical,
            laid * high / typical,
            "band",
            (efficiency_source,),
        ),
        bead=Quantity("Bead section", "area", bead, sources=("mass-balance",)),
        leg=Quantity("Leg laid", "leg", leg, sources=("fillet-reinforced",)),
        throat=Quantity("Throat", "length", plan.shape.throat_m, sources=("mass-balance",)),
        gas_flow=Quantity(
            "Gas flow",
            "gas_flow",
            flow.usual,
            flow.low,
            flow.high,
            "window",
            flow.sources,
            f"less lets air in under a {flow.nozzle.name} nozzle",
            f"more is turbulent in a {flow.nozzle.name} nozzle and drags air in",
        ),
        flow=flow,
        metal=Quantity("Weld metal", "mass_per_length", metal, sources=("mass-balance",)),
        wire_mass=Quantity(
            "Wire for the job",
            "mass",
            metal * length / typical,
            metal * length / high,
            metal * length / low,
            "band",
            (efficiency_source,),
        ),
        arc_time=Quantity(
            "Arc time for the job", "time", length * plan.passes / travel, sources=("mass-balance",)
        ),
        penetration=into_plate.penetration,
        dilution=into_plate.dilution,
    )


def dial_in(job: Job) -> DialIn:
    """Return the settings for a job, each with low, set and high, and what follows from them.

    Source: the modules it calls; every quantity names its own.

    Args:
        job: The job as read by ``schemas.read_query`` [-].
    """
    plan = make_plan(job)
    settings, point, travel = _settings(job, plan)
    outcome = None
    if point is not None and travel is not None:
        outcome = _outcome(job, plan, point, travel)
    held = torch(job.joint, job.position.lie, plan.transfer)
    notes = remarks(job, plan, settings, outcome)
    return DialIn(job, plan, plan.open, settings, point, outcome, held, notes)
