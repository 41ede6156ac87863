"""Solid and metal-cored wire on one joint: at equal amps, at equal heat, and as each is run."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

from beadwright.job.job import ByHand, Job
from beadwright.process.operating import Operating
from beadwright.process.wire_kinds import Kind
from beadwright.process.wires import WIRE_TYPES, Wire, wire_of
from beadwright.root import crossing
from beadwright.setting.dial_in import DialIn
from beadwright.setting.plan import Plan, make_plan
from beadwright.setting.set_point import set_feed, set_point
from beadwright.tolerance import REL_TOL

Basis = Literal["this-wire", "equal-amps", "equal-heat", "as-run"]

OTHER_WIRE: dict[Kind, str] = {"solid": "E70C-6M", "metal-cored": "ER70S-6"}
"""The wire each kind is held against."""


@dataclass(frozen=True, slots=True)
class Alike:
    """One wire on the joint.

    Attributes:
        basis: What is held equal to the wire in use; ``this-wire`` is that wire itself.
        wire: The wire.
        feed_m_s: Wire feed [m/s].
        current_a: Current [A].
        volts: Volts at the arc; in pulse the open arc's, as heat is counted [V].
        travel_m_s: Travel that fills the joint [m/s].
        laid_kg_s: Deposition rate [kg/s].
        heat_j_m: Heat input of a pass, no efficiency in it [J/m].
        holds: True if every limit of that wire holds there.
    """

    basis: Basis
    wire: Wire
    feed_m_s: float
    current_a: float
    volts: float
    travel_m_s: float
    laid_kg_s: float
    heat_j_m: float
    holds: bool


def other_wire(job: Job) -> Wire | None:
    """Return the wire a job's own is held against, in its size; None where none is made.

    Args:
        job: The job [-].
    """
    name = OTHER_WIRE.get(job.wire.kind)
    if name is None or job.wire.size not in WIRE_TYPES[name].sizes:
        return None
    return wire_of(name, job.wire.size)


def like_for_like(answer: DialIn) -> tuple[Alike, ...]:
    """Return the wire in use and the other one beside it; empty where they cannot be compared.

    Source: ``burnoff``, ``deposition``; each wire at its own tip-to-work on its own volts, each
    filling the joint as it wets. Both in the mode planned, so that like stands beside like.

    Args:
        answer: The dial-in [-].
    """
    job, point = answer.job, answer.point
    wire = other_wire(job)
    if wire is None or point is None or not answer.open:
        return ()
    mode = answer.plan.transfer
    asked = mode if mode != "globular" else "auto"
    other = replace(job, wire=wire, by_hand=ByHand(), transfer=asked)
    plan = make_plan(other)
    if plan.refused or plan.transfer != mode:
        return ()
    own = _alike("this-wire", answer.plan, point)
    rows = [own, _alike("equal-amps", plan, _at_amps(plan, point.current_a))]
    same_heat = _at_heat(plan, own.heat_j_m)
    if same_heat is not None:
        rows.append(_alike("equal-heat", plan, same_heat))
    feed = set_feed(plan)
    if feed is not None:
        rows.append(_alike("as-run", plan, set_point(plan, feed)))
    return tuple(rows)


def _at_amps(plan: Plan, current_a: float) -> Operating:
    return plan.run.point(plan.run.feed_at(current_a))


def _at_heat(plan: Plan, heat_j_m: float) -> Operating | None:
    """Where the wire puts the same heat in a length of weld, if it does inside its room."""
    run, window = plan.run, plan.feeds
    if not window.open:
        return None
    ends = [run.heat(run.point(feed)) for feed in (window.low, window.high)]
    if not min(ends) <= heat_j_m <= max(ends):
        return None
    feed = crossing(lambda feed: run.heat(run.point(feed)), window.low, window.high, heat_j_m)
    return run.point(feed)


def _alike(basis: Basis, plan: Plan, point: Operating) -> Alike:
    run, feed = plan.run, point.feed_m_s
    holds = plan.open and plan.feeds.low * (1 - REL_TOL) <= feed <= plan.feeds.high * (1 + REL_TOL)
    return Alike(
        basis,
        run.job.wire,
        feed,
        point.current_a,
        point.volts,
        run.travel(feed),
        run.laid(feed),
        run.heat(point),
        holds,
    )
