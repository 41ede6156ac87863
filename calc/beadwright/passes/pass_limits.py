"""The limits of beads as runs hold them: their travel and heat, over a gap, after a gouge."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import inf

from beadwright.joint.joints import JointShape
from beadwright.layers.bead_limits import fusing
from beadwright.layers.frame import Frame
from beadwright.layers.layers import BeadLimits
from beadwright.passes.pass_process import BRIDGING_TRAVEL_M_S, Part, Process
from beadwright.process.deposition import bead_section
from beadwright.process.positions import TRAVEL_RANGE_M_S
from beadwright.setting.feed_limits import FeedRoom
from beadwright.setting.plan import LEAST_ROOM

_TIGHTER = 0.93
"""Factor from one section tried to the next [-]: fine enough to lose at most 7 % of a bead, and few
steps."""

_ROUNDS = 48
"""Most sections tried [-]: 0.93 to the 48th is 0.03, smaller than any bead that is laid."""


_ANY_M2 = 1e-5
"""A section where none is meant: what a feed lays does not depend on it [m²]."""

_ROOTS = 4
"""Steps from the thinnest root over a gap to the thickest [-]: 1/64 in each in short circuit."""


@dataclass(frozen=True, slots=True)
class Widest:
    """The largest bead a process can lay.

    Attributes:
        section_m2: Its section; where none holds, the largest looked at [m²].
        room: Room for the feed at that section.
        holds: True if the section leaves room.
    """

    section_m2: float
    room: FeedRoom
    holds: bool


def widest(process: Process, most_m2: float) -> Widest:
    """Return the largest bead, up to a section, that leaves the process room.

    Heavier beads ask for slower travel and put in more heat, so the search goes down in section. A
    feed set by hand is kept: the bead is then what it lays at the slowest travel, or at the travel
    set by hand.

    Args:
        process: Mode and limits [-].
        most_m2: Largest section wanted, above zero [m²].
    """
    hand = process.by_hand
    section = most_m2
    if hand.wire_feed_m_s is not None:
        slow = TRAVEL_RANGE_M_S[process.job.travel_by, process.job.position.orientation][0]
        travel = process.travel_m_s or slow
        laid = process.run(section).laid(hand.wire_feed_m_s)
        section = min(section, bead_section(laid, travel, process.job.wire.material))
    first: Widest | None = None
    for _ in range(_ROUNDS):
        room = process.room(section)
        found = Widest(section, room, process.holds(section, room))
        if found.holds:
            return found
        first = first or found
        window, fight = found.room.window, found.room.heat_fight
        if fight is None and window.high_limit.key == "travel-high":
            break  # a lighter bead only needs more speed
        if fight is not None and fight.high == inf:
            break  # too cold already
        section *= _TIGHTER
    assert first is not None  # the loop runs at least once
    return first


def lightest_m2(process: Process) -> float:
    """Return the lightest bead a process lays, at its least current and fastest travel [m²].

    Zero where the current has no least, or no room, and where the feed is set by hand: it is kept,
    and what it puts out is told.

    Source: conservation of mass; ``positions.TRAVEL_RANGE_M_S``, ``plan.LEAST_ROOM``; over a gap
    ``pass_process.BRIDGING_TRAVEL_M_S``.

    Args:
        process: Mode and limits [-].
    """
    currents, run = process.currents, process.run(_ANY_M2)
    if not currents.open or currents.low <= 0 or process.by_hand.wire_feed_m_s is not None:
        return 0.0
    feed = run.feed_at(currents.low)
    fast = TRAVEL_RANGE_M_S[process.job.travel_by, process.job.position.orientation][1]
    if process.bridges:
        fast = min(fast, BRIDGING_TRAVEL_M_S[process.job.travel_by])
    travel = process.travel_m_s or fast / LEAST_ROOM
    return bead_section(run.laid(feed), travel, process.job.wire.material)


def run_limits(
    processes: Mapping[Part, Process], shape: JointShape, first: Frame, size: BeadLimits
) -> BeadLimits:
    """Return the limits of size, tightened to what the runs can lay within travel and heat.

    The root over a gap is no lighter than its arc lays at a travel that bridges.

    Args:
        processes: Process of each part [-].
        shape: The joint to scale [-].
        first: The side welded first [-].
        size: What the position allows [-].
    """
    root, fill, cap = processes["root"], processes["fill"], processes["cap"]
    after = (fill,) if cap == replace(fill, part="cap") else (fill, cap)
    held = replace(
        fused_limits(processes, shape, size),
        root_m2=widest(root, size.root_m2).section_m2,
        section_m2=min(widest(each, size.section_m2).section_m2 for each in after),
        root_least_m2=lightest_m2(root),
        section_least_m2=max(map(lightest_m2, after)),
    )
    return _bridging(root, first, held)


def _bridging(root: Process, first: Frame, limits: BeadLimits) -> BeadLimits:
    least, room = limits.root_least_m, limits.root_m - limits.root_least_m
    if not least:
        return limits
    for step in range(_ROOTS + 1):
        thick = least + room * step / _ROOTS
        section = first.levels.below(first.bottom + thick)
        if section > limits.root_m2:
            break
        if root.holds(section, root.room(section)):
            return replace(limits, root_least_m=thick)
    return limits


def second_limits(
    processes: Mapping[Part, Process], size: BeadLimits, limits: BeadLimits
) -> BeadLimits:
    """Return the limits of the second side: those of fill and cap where it is welded as they are.

    Args:
        processes: Process of each part [-].
        size: What the position allows [-].
        limits: Of the first side [-].
    """
    back = processes.get("back")
    if back is None or back.transfer == "short":
        return limits
    return replace(
        size,
        section_m2=widest(back, size.section_m2).section_m2,
        section_least_m2=lightest_m2(back),
    )


def fused_limits(
    processes: Mapping[Part, Process], shape: JointShape, size: BeadLimits
) -> BeadLimits:
    """Return the limits of size, as an open root and short circuit narrow them.

    Args:
        processes: Process of each part [-].
        shape: The joint to scale [-].
        size: What the position allows [-].
    """
    return fusing(size, shape, processes["root"].transfer, processes["fill"].transfer)
