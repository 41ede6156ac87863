"""The other side of a change of mode: where both modes hold a joint, both are told."""

from __future__ import annotations

from dataclasses import dataclass, replace

from beadwright.job.job import AskedTransfer, ByHand, Job
from beadwright.process.transfer import Transfer
from beadwright.setting.plan import SHORT_TO_M, Plan, make_plan
from beadwright.setting.set_point import set_feed, set_point
from beadwright.tolerance import SAME_PLATE

NEAR_SPRAY_CO2 = (0.18, 0.26)
"""CO2 about the limit of spray, where solid wire may do either [volume share]. Common practice."""


@dataclass(frozen=True, slots=True)
class OtherMode:
    """Another mode that holds the joint.

    Attributes:
        transfer: The mode.
        feed_m_s: Wire feed it would be set at [m/s].
        volts: Volts, or None where the machine sets its own [V].
        current_a: Current [A].
    """

    transfer: AskedTransfer
    feed_m_s: float
    volts: float | None
    current_a: float


def other_mode(job: Job, plan: Plan) -> OtherMode | None:
    """Return the mode on the other side of the plan's choice, where the choice is a near one.

    Near is plate that either mode is run on, ``plan.SHORT_BELOW_M`` to ``plan.SHORT_TO_M``, and gas
    about the limit of spray, ``NEAR_SPRAY_CO2``.

    Args:
        job: The job [-].
        plan: Its plan [-].
    """
    if job.transfer != "auto" or job.by_hand != ByHand() or not job.wire.traits.shorts:
        return None
    low, high = NEAR_SPRAY_CO2
    if job.thinner_m > SHORT_TO_M * SAME_PLATE and not low <= job.gas.co2 <= high:
        return None
    wanted = _other(plan.transfer)
    found = make_plan(replace(job, transfer=wanted))
    feed = set_feed(found) if found.open else None
    if feed is None:
        return None
    point = set_point(found, feed)
    volts = None if found.transfer == "pulse" else point.volts
    return OtherMode(wanted, feed, volts, point.current_a)


def _other(transfer: Transfer) -> AskedTransfer:
    return "spray" if transfer == "short" else "short"
