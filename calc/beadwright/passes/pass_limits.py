"""The largest bead a run holds within its travel and heat."""

from __future__ import annotations

from dataclasses import dataclass
from math import inf

from beadwright.passes.pass_process import Process
from beadwright.process.deposition import bead_section
from beadwright.process.positions import TRAVEL_RANGE_M_S
from beadwright.setting.feed_limits import FeedRoom

_TIGHTER = 0.93
"""Factor from one section tried to the next [-]: fine enough to lose at most 7 % of a bead, and few
steps."""

_ROUNDS = 48
"""Most sections tried [-]: 0.93 to the 48th is 0.03, smaller than any bead that is laid."""


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
