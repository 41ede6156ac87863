"""What each aim gives and costs: its set point, time and heat."""

from __future__ import annotations

from dataclasses import dataclass, replace

from beadwright.job.job import Aim
from beadwright.setting.aims import AIMS
from beadwright.setting.plan import Plan
from beadwright.setting.set_point import set_feed, set_point


@dataclass(frozen=True, slots=True)
class AimResult:
    """One aim's set point and what follows.

    Attributes:
        aim: The aim.
        feed_m_s: Wire feed [m/s].
        volts: Volts at the arc, or None where the machine sets its own [V].
        travel_m_s: Travel [m/s].
        weld_s: Arc time of one weld, all passes [s].
        heat_j_m: Heat input of a pass, no efficiency in it [J/m].
    """

    aim: Aim
    feed_m_s: float
    volts: float | None
    travel_m_s: float
    weld_s: float
    heat_j_m: float


def aim_results(plan: Plan) -> tuple[AimResult, ...]:
    """Return every aim's set point with its time and heat; empty if the plan is shut.

    Source: ``aims``; time is length × passes ÷ travel, heat volts × amps ÷ travel.

    Args:
        plan: The plan [-].
    """
    return tuple(_result(plan, aim) for aim in AIMS) if plan.open else ()


def _result(plan: Plan, aim: Aim) -> AimResult:
    job = replace(plan.run.job, aim=aim)
    run = replace(plan.run, job=job)
    aimed = replace(plan, run=run)
    feed = set_feed(aimed)
    assert feed is not None  # an open plan has one
    point = set_point(aimed, feed)
    travel = run.travel(feed)
    return AimResult(
        aim,
        feed,
        None if run.transfer == "pulse" else point.volts,
        travel,
        job.weld_length_m * plan.passes / travel,
        run.heat(point),
    )
