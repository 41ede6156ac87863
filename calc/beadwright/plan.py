"""The plan behind a dial-in: transfer mode, joint to scale, number of passes, room for the feed."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from math import ceil, inf

from beadwright import units
from beadwright.current_limits import current_limits
from beadwright.deposition import (
    deposition_efficiency,
    feed_for_travel,
    laid_rate,
    travel_for_section,
)
from beadwright.fillets import REINFORCED_OVER_FLAT, flat_section
from beadwright.heat import (
    BURN_THROUGH_J_M2,
    THIN_M,
    burn_through_current,
    thickness_current,
)
from beadwright.job import Job
from beadwright.job_joint import joint_shape
from beadwright.joints import JointShape
from beadwright.limits import Limit, Window, bind
from beadwright.operating import at_feed, feed_at_current
from beadwright.positions import COMFORTABLE_TRAVEL_M_S, TRAVEL_RANGE_M_S
from beadwright.technique import tip_to_work
from beadwright.transfer import (
    Transfer,
    gas_refused,
    spray_refused,
    transition_current,
)

_IN = 0.0254

SHORT_BELOW_M = 0.0031
"""Thinner than 1/8 in, short circuit is planned [m]. Common practice."""

COLD_LAP_M = 3 / 16 * _IN
"""Over this, short circuit may lie on the plate without fusing [m]. Common practice."""

MOST_PASSES = 150
"""More than the largest leg takes in the position that takes most."""

_SIZE_SLACK = 1.03
"""So that 8 mm counts as 5/16 in: the codes' metric sizes are rounded."""
FEEDER_M_S = (50 * _IN / 60, 800 * _IN / 60)
"""What a usual feeder holds steadily [m/s]. Common practice."""

_STEP_ROOM = 0.98
"""Room left under the heat limit for the steps a hand sets volts and feed in."""


@dataclass(frozen=True, slots=True)
class Plan:
    """What is decided before any setting.

    Attributes:
        transfer: Mode planned.
        reason: Why that mode.
        refused: Why the mode asked for cannot be held, or empty.
        shape: The joint to scale.
        wanted_leg_m: Leg asked for or the code's minimum; zero for a groove [m].
        tip_to_work_m: Tip-to-work held or set [m].
        efficiency: Deposition efficiency: low, typical, high [-].
        passes: Passes [-].
        currents: Room for the current [A].
        feeds: Room for the wire feed [m/s].
        too_hot: True if no number of passes keeps the heat under what thin plate stands.
    """

    transfer: Transfer
    reason: str
    refused: str
    shape: JointShape
    wanted_leg_m: float
    tip_to_work_m: float
    efficiency: tuple[float, float, float]
    passes: int
    currents: Window
    feeds: Window
    too_hot: bool = False

    @property
    def bead_m2(self) -> float:
        """Section of one bead [m²]."""
        return self.shape.section_m2 / self.passes

    @property
    def open(self) -> bool:
        """True if a feed is left that holds every limit."""
        return self.feeds.open and not self.refused and not self.too_hot


def planned_transfer(job: Job) -> tuple[Transfer, str, str]:
    """Return the mode planned, why, and why it cannot be held (empty if it can).

    Source: ``transfer.spray_refused``; thin plate short-circuited, thick plate sprayed where wire,
    gas and position carry it: common practice.

    Args:
        job: The job [-].
    """
    refusal = spray_refused(job.wire, job.gas, job.position)
    wrong_gas = gas_refused(job.wire, job.gas)
    if job.transfer == "spray":
        return "spray", "you asked for spray", refusal or wrong_gas
    if job.transfer == "short":
        return "short", "you asked for short circuit", wrong_gas
    if job.transfer == "pulse":
        return "pulse", "you asked for pulse", spray_refused(job.wire, job.gas) or wrong_gas
    if wrong_gas:
        return "short", wrong_gas, wrong_gas
    if job.thinner_m < SHORT_BELOW_M:
        return "short", "the plate is under 1/8 in", ""
    if (
        job.joint == "square"
        and job.thinner_m <= COLD_LAP_M * 1.001
        and (job.gap_m is None or job.gap_m > 0)
    ):
        return "short", "spray falls through an open gap", ""
    least = transition_current(job.wire, job.gas)
    if not refusal and (job.thinner_m >= THIN_M or least < burn_through_current(job.thinner_m)):
        return "spray", "wire, gas and position carry it", ""
    if job.gas.co2 == 1 and job.position.sprays and job.thinner_m > COLD_LAP_M:
        return "globular", f"{refusal}, and the plate is too thick for short circuit", ""
    return "short", refusal or "this wire would burn through in spray", ""


def largest_bead_m2(job: Job) -> float:
    """Return the largest section planned for one bead [m²].

    Source: ``positions.POSITIONS``: the practical one-pass fillet, as welded.

    Args:
        job: The job [-].
    """
    return REINFORCED_OVER_FLAT * flat_section(job.position.practical_leg_m)


def feed_limits(
    job: Job, transfer: Transfer, tip_m: float, bead_m2: float, efficiency: float
) -> Iterator[Limit]:
    """Yield every limit on the wire feed for a bead section [m/s]."""
    volts = job.by_hand.volts
    for limit in current_limits(job, transfer):
        yield Limit(
            limit.key,
            limit.text,
            -inf
            if limit.low == -inf
            else feed_at_current(job.wire, job.gas, transfer, limit.low, tip_m, volts),
            inf
            if limit.high == inf
            else feed_at_current(job.wire, job.gas, transfer, limit.high, tip_m, volts),
            limit.source,
        )
    yield Limit("feeder", "a usual feeder holds 50 to 800 in/min", *FEEDER_M_S)
    slow, fast = TRAVEL_RANGE_M_S[job.travel_by, job.position.lie]
    mover = {"hand": "a hand", "track": "a track", "robot": "a robot"}[job.travel_by]
    shown = [
        f"{units.show(v, 'travel', job.units)} {units.symbol('travel', job.units)}"
        for v in (slow, fast)
    ]
    yield Limit(
        "travel-low",
        f"under {shown[0]} {mover} is not steady {job.position.lie}",
        low=feed_for_travel(job.wire, slow, bead_m2, efficiency),
    )
    yield Limit(
        "travel-high",
        f"over {shown[1]} {mover} does not hold the joint",
        high=feed_for_travel(job.wire, fast, bead_m2, efficiency),
    )


def heat_ceiling_j_m(job: Job) -> float:
    """Return the most heat input thin plate stands; no limit on thicker plate [J/m]."""
    return BURN_THROUGH_J_M2 * job.thinner_m if job.thinner_m < THIN_M else inf


def make_plan(job: Job) -> Plan:
    """Return the plan with the fewest passes that leaves room, or one that is shut.

    Where the choice of transfer is ours and spray leaves no room, short circuit is tried.

    Args:
        job: The job [-].
    """
    transfer, reason, refused = planned_transfer(job)
    plan = _plan_for(job, transfer, reason, refused)
    if job.transfer == "auto" and transfer == "spray" and not _holds(job, plan):
        cooler = _plan_for(job, "short", "spray leaves no room on this joint", "")
        if _holds(job, cooler):
            return cooler
    return plan


def _plan_for(job: Job, transfer: Transfer, reason: str, refused: str) -> Plan:
    shape, wanted = joint_shape(job)
    tip = job.by_hand.tip_to_work_m or tip_to_work(job.wire, transfer)[1]
    efficiency = deposition_efficiency(job.wire, job.gas, transfer)
    currents = bind(current_limits(job, transfer))
    first: Plan | None = None
    fewest = max(1, ceil(shape.section_m2 / (largest_bead_m2(job) * _SIZE_SLACK)))
    for passes in range(fewest, MOST_PASSES + 1):
        bead = shape.section_m2 / passes
        feeds = bind(feed_limits(job, transfer, tip, bead, efficiency[1]))
        plan = Plan(
            transfer, reason, refused, shape, wanted, tip, efficiency, passes, currents, feeds
        )
        first = first or plan
        if _holds(job, plan):
            return plan
        if not feeds.open and feeds.high_limit.key == "travel-high":
            break  # more passes only ask for more speed
    assert first is not None  # MOST_PASSES makes the largest leg small enough in any position
    ours = job.by_hand.wire_feed_m_s is None and job.by_hand.travel_m_s is None
    return replace(first, too_hot=ours and first.feeds.open)


def _holds(job: Job, plan: Plan) -> bool:
    """True if the plan has room, and settings fixed by hand leave the travel in reach."""
    slow, fast = TRAVEL_RANGE_M_S[job.travel_by, job.position.lie]
    hand = job.by_hand
    if hand.wire_feed_m_s is not None:
        laid = laid_rate(job.wire, hand.wire_feed_m_s, plan.efficiency[1])
        travel = travel_for_section(laid, plan.bead_m2)
        return hand.travel_m_s is not None or travel >= slow
    if hand.travel_m_s is not None:
        feed = feed_for_travel(job.wire, hand.travel_m_s, plan.bead_m2, plan.efficiency[1])
        return feed <= plan.feeds.high or hand.travel_m_s > fast
    return plan.feeds.open and _cool_enough(job, plan)


def _cool_enough(job: Job, plan: Plan) -> bool:
    feed = best_feed(job, plan)
    point = at_feed(job.wire, job.gas, plan.transfer, feed, plan.tip_to_work_m, job.by_hand.volts)
    laid = laid_rate(job.wire, feed, plan.efficiency[1])
    travel = travel_for_section(laid, plan.bead_m2)
    return point.volts * point.current_a / travel <= _STEP_ROOM * heat_ceiling_j_m(job)


def best_feed(job: Job, plan: Plan) -> float:
    """Return the feed to start from inside the plan's window, on a step a hand can set [m/s].

    Short circuit on thin plate starts from the thumb-rule current; else from the travel that is
    comfortable. Either is held between a fifth and three fifths of the way up the window.

    Args:
        job: The job [-].
        plan: An open plan [-].
    """
    window = plan.feeds
    if plan.transfer == "short":
        current = thickness_current(min(job.thinner_m, COLD_LAP_M))
        target = feed_at_current(job.wire, job.gas, "short", current, plan.tip_to_work_m)
    else:
        travel = COMFORTABLE_TRAVEL_M_S[job.travel_by]
        target = feed_for_travel(job.wire, travel, plan.bead_m2, plan.efficiency[1])
    feed = min(max(target, window.place(0.2)), window.place(0.6))
    stepped = units.settable(feed, "wire_feed", job.units)
    return stepped if window.low <= stepped <= window.high else feed
