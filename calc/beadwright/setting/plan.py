"""The plan behind a dial-in: transfer mode, joint to scale, number of passes, room for the feed."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import inf
from types import MappingProxyType

from beadwright.job.job import ByHand, Job
from beadwright.job.job_joint import joint_shape
from beadwright.joint.joints import JointShape
from beadwright.layers.bead_limits import COLD_LAP_M, fewest_beads, one_layer_deep
from beadwright.measures import INCH_M
from beadwright.phrases import Phrase, say
from beadwright.process.deposition import (
    bead_section,
    deposition_efficiency,
    feed_for_travel,
)
from beadwright.process.positions import COMFORTABLE_TRAVEL_M_S, TRAVEL_RANGE_M_S
from beadwright.process.tip_to_work import tip_to_work
from beadwright.process.transfer import (
    MODE_PHRASES,
    SHORT_RANGE_A,
    Transfer,
    gas_refused,
    spray_refused,
    transfer_refused,
    transition_current,
)
from beadwright.setting.current_limits import current_limits
from beadwright.setting.feed_limits import FeedRoom, feed_room
from beadwright.setting.heat_limits import heat_limits
from beadwright.setting.limits import Limit, Window, tightest_window
from beadwright.setting.run import Run
from beadwright.setting.size_limits import section_room
from beadwright.setting.usual_current import usual_current
from beadwright.tolerance import SAME_PLATE

SHORT_BELOW_M = 0.0031
"""Plate under which short circuit is planned: thinner than 1/8 in [m]. Common practice."""

SHORT_TO_M = 1 / 4 * INCH_M
"""Thickest plate short-circuited in argon mixtures that do not spray [m]. Common practice: 75/25 is
run short to 1/4 in."""

NEARLY = 0.95
"""Spray is planned where the plate asks for so much of the transition current [-]: the transition
is known to 20 % only. Common practice."""

LEAST_ROOM = 1.1
"""The least bead over what the lowest current lays at the fastest travel [-]: room for a hand."""

MOST_PASSES = 150
"""Most passes tried: more than the largest leg takes in any position [-]."""

_ASKED: Mapping[Transfer, Phrase] = MappingProxyType(
    {
        "short": say("setting.asked-for-short"),
        "spray": say("setting.asked-for-spray"),
        "pulse": say("setting.asked-for-pulse"),
    }
)
OPEN_GAP = say("setting.open-gap")
"""Why an open root is shorted."""

_LIGHTER = ("travel-low", "plate-heat", "heat-max")
"""Limits that lighter beads may ease for a feed set by hand."""


@dataclass(frozen=True, slots=True)
class Plan:
    """What is decided before any setting.

    Attributes:
        transfer: Mode planned.
        reason: Why that mode.
        refused: Why the mode asked for cannot be held, or None.
        shape: The joint to scale.
        wanted_leg_m: Leg asked for or what a hand lays on the plate; zero for a groove [m].
        tip_to_work_m: Tip-to-work held or set [m].
        efficiency: Deposition efficiency: low, typical, high [-].
        passes: Passes [-].
        currents: Room for the current [A].
        feeds: Room for the wire feed [m/s].
        run: One of the passes, before feed and volts are chosen.
        heat_fight: The heat limit that no feed and no number of passes keeps, or None.
    """

    transfer: Transfer
    reason: Phrase
    refused: Phrase | None
    shape: JointShape
    wanted_leg_m: float
    tip_to_work_m: float
    efficiency: tuple[float, float, float]
    passes: int
    currents: Window
    feeds: Window
    run: Run
    heat_fight: Limit | None = None

    @property
    def bead_m2(self) -> float:
        """Section of one bead [m²]."""
        return self.shape.section_m2 / self.passes

    @property
    def open(self) -> bool:
        """True if a feed is left that holds every limit."""
        return self.feeds.open and self.refused is None and self.heat_fight is None


def planned_transfer(job: Job) -> tuple[Transfer, Phrase, Phrase | None]:
    """Return the mode planned, why, and why it cannot be held (None if it can).

    Source: ``transfer.transfer_refused``; thin plate short-circuited, thick plate sprayed where
    wire, gas and position carry it, metal-cored wire out of position pulsed: common practice.

    Args:
        job: The job [-].
    """
    wire, gas, position = job.wire, job.gas, job.position
    if not wire.traits.shorts:
        asked: Transfer = "spray" if job.transfer == "auto" else job.transfer
        refused = transfer_refused(wire, gas, position, asked)
        return "spray", say("setting.one-mode"), refused
    if job.transfer != "auto":
        why = spray_refused(wire, gas, position) if job.transfer == "spray" else None
        refused = why or transfer_refused(wire, gas, position, job.transfer)
        return job.transfer, _ASKED[job.transfer], refused
    wrong_gas = gas_refused(wire, gas)
    if wrong_gas is not None:
        return "short", wrong_gas, wrong_gas
    if job.thinner_m < SHORT_BELOW_M:
        return "short", say("setting.thin-plate"), None
    if job.open_root and job.thinner_m <= COLD_LAP_M * SAME_PLATE:
        return "short", OPEN_GAP, None
    refusal = spray_refused(wire, gas, position)
    thick = job.thinner_m > COLD_LAP_M * SAME_PLATE
    if wire.traits.wants_pulse and not position.sprays and thick:
        kind = wire.traits.phrase
        reason = say("setting.wants-pulse", kind=kind, orientation=position.phrase)
        return "pulse", reason, spray_refused(wire, gas)
    least = transition_current(wire, gas)
    open_arc = usual_current(job, "spray")
    if refusal is None and open_arc >= NEARLY * least:
        return "spray", say("setting.all-carry-spray"), None
    if refusal is None:
        return "short", say("setting.plate-wants-less"), None
    shorts_to = COLD_LAP_M if gas.co2 == 1 else SHORT_TO_M
    beyond = open_arc >= SHORT_RANGE_A[wire.size][1] or gas.co2 < 1
    if position.sprays and beyond and job.thinner_m > shorts_to * SAME_PLATE:
        return "globular", say("setting.too-thick-to-short", why=refusal), None
    return "short", refusal, None


def make_plan(job: Job, passes: int | None = None) -> Plan:
    """Return the plan with the fewest passes that leaves room, or one that is shut.

    If the mode is not asked for and an open arc leaves no room, short circuit is tried.
    What is set by hand changes the mode only if it leaves the planned one no room at all.

    Args:
        job: The job [-].
        passes: Passes asked for, all of one size, 1 or more; None: the fewest [-].
    """

    def planned(of: Job, mode: Transfer, why: Phrase, no: Phrase | None) -> Plan:
        return _plan_for(of, mode, why, no, passes)

    transfer, reason, refused = planned_transfer(job)
    plan = planned(job, transfer, reason, refused)
    hot = transfer in ("spray", "globular")
    thick = job.thinner_m > COLD_LAP_M * SAME_PLATE  # short circuit may lie on it without fusing
    if not hot or thick or job.transfer != "auto" or not job.wire.traits.shorts:
        return plan
    cooler = say("setting.mode-leaves-no-room", mode=MODE_PHRASES[transfer])
    free = replace(job, by_hand=ByHand())
    opens = plan.open if job == free else planned(free, transfer, reason, refused).open
    if opens and plan.open:
        return plan
    short = planned(job, "short", cooler, None)
    if opens:
        return short if short.open else plan
    if short.open or planned(free, "short", cooler, None).open:
        return short
    return plan


def _plan_for(
    job: Job, transfer: Transfer, reason: Phrase, refused: Phrase | None, asked: int | None
) -> Plan:
    """The plan in one mode: the fewest passes that keep every limit and what is fixed by hand."""
    shape, wanted = joint_shape(job)
    tip = job.by_hand.tip_to_work_m or tip_to_work(job.wire, transfer)[1]
    efficiency = deposition_efficiency(job.wire, job.gas, transfer)
    currents, heats = (
        tightest_window(current_limits(job, transfer)),
        tightest_window(heat_limits(job)),
    )
    most, least = section_room(job, shape)
    first: Plan | None = None
    open_: Plan | None = None
    fewest = fewest_beads(job, shape, transfer)
    counts = range(fewest, max(fewest, _most_passes(shape)) + 1) if asked is None else (asked,)
    for passes in counts:
        section = shape.section_m2 / passes
        run = Run(
            job=job,
            transfer=transfer,
            tip_to_work_m=tip,
            section_m2=section,
            efficiency=efficiency[1],
            currents=currents,
            heats=heats,
        )
        if passes == 1:
            run = least_bead(run, most)
        room = feed_room(run, (most / passes, least / passes))
        plan = Plan(
            transfer=transfer,
            reason=reason,
            refused=refused,
            shape=shape,
            wanted_leg_m=wanted,
            tip_to_work_m=tip,
            efficiency=efficiency,
            passes=passes,
            currents=currents,
            feeds=room.window,
            run=run,
            heat_fight=room.heat_fight,
        )
        if room.window.open and room.kept:
            return plan
        first = first or plan
        open_ = open_ or (plan if plan.open else None)
        if not _more_passes_help(run, room):
            break
    assert first is not None  # the loop runs at least once
    return open_ or first


def _most_passes(shape: JointShape) -> int:
    """Most passes tried: where one bead has to fill the first side, no lighter one does."""
    if not one_layer_deep(shape):
        return MOST_PASSES
    first = shape.regions[0].section_m2
    return round(shape.section_m2 / first)


def least_bead(run: Run, most_m2: float) -> Run:
    """Return the run, its bead made as large as the arc has to lay at the mover's fastest travel.

    A joint smaller than that is laid over its size, as far as it is still the joint asked for. What
    is fixed by hand stays.

    Source: conservation of mass; ``LEAST_ROOM``.

    Args:
        run: The run in one pass [-].
        most_m2: Largest section that is still the joint [m²].
    """
    job = run.job
    if job.by_hand.travel_m_s is not None or not run.currents.open or run.currents.low <= 0:
        return run
    where = job.travel_by, job.position.orientation
    current, fast = run.currents.low, TRAVEL_RANGE_M_S[where][1] / LEAST_ROOM
    if job.joint == "corner" and job.leg_m is None:  # filled round, at a travel a hand likes
        current = run.currents.hold(usual_current(job, run.transfer))
        fast = COMFORTABLE_TRAVEL_M_S[where][1]
    wanted = bead_section(run.laid(run.feed_at(current)), fast, job.wire.material)
    least = min(wanted, most_m2)
    return replace(run, section_m2=least) if run.section_m2 < least else run


def _more_passes_help(run: Run, room: FeedRoom) -> bool:
    """True if lighter beads may let a run keep what this one does not."""
    if not run.currents.open:
        return False
    window, hand = room.window, run.job.by_hand
    if not window.open:
        return window.high_limit.key != "travel-high"  # more passes only need more speed
    if room.heat_fight is not None:
        return room.heat_fight.high < inf  # too hot; if too cold, they would be colder
    if hand.travel_m_s is not None:
        filling = feed_for_travel(run.job.wire, hand.travel_m_s, run.section_m2, run.efficiency)
        return filling > (hand.wire_feed_m_s or window.high)
    if hand.wire_feed_m_s is not None:
        return hand.wire_feed_m_s < window.low and window.low_limit.key in _LIGHTER
    return True
