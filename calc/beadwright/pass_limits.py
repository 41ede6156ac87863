"""What one bead and one layer may be: by position, and by what a bead's run holds."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import inf
from types import MappingProxyType

from beadwright.deposition import bead_section
from beadwright.feed_limits import FeedRoom
from beadwright.job import Job
from beadwright.pass_layers import BeadLimits
from beadwright.pass_process import Process
from beadwright.plan import SIZE_SLACK, largest_bead_m2
from beadwright.positions import TRAVEL_RANGE_M_S, Lie

_IN = 0.0254

ROOT_M: Mapping[Lie, float] = MappingProxyType(
    {
        "flat": 3 / 8 * _IN,
        "horizontal": 5 / 16 * _IN,
        "vertical-up": 1 / 2 * _IN,
        "vertical-down": 3 / 16 * _IN,
        "overhead": 5 / 16 * _IN,
    }
)
"""Thickest root pass by position [m].

Source: AWS D1.1:2020, Table 5.1, root pass thickness (second-hand); vertical-down is not in it:
common practice.
"""

LAYER_M = 1 / 4 * _IN
"""Thickest layer after the root [m]. Source: AWS D1.1:2020, Table 5.1, fill passes, gas metal arc
and flux-cored arc (second-hand)."""

SPLIT_M: Mapping[Lie, float] = MappingProxyType(
    {
        "flat": 5 / 8 * _IN,
        "horizontal": 5 / 8 * _IN,
        "vertical-up": 1.0 * _IN,
        "vertical-down": 5 / 8 * _IN,
        "overhead": 5 / 8 * _IN,
    }
)
"""Widest bead before a layer is split [m].

Source: AWS D1.1:2020, Table 5.1, layers over 5/8 in wide are split, vertical over 1 in (from
memory).
"""

STRINGER_M = 3 / 8 * _IN
"""Widest stringer: about eight wire diameters of 0.045 in wire [m]. Common practice."""

_TIGHTER = 0.93
_ROUNDS = 48


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


def position_limits(job: Job, *, stringers: bool) -> BeadLimits:
    """Return what a bead and a layer may be in the job's position.

    Source: ``plan.largest_bead_m2``, ``ROOT_M``, ``LAYER_M``, ``SPLIT_M``, ``STRINGER_M``.

    Args:
        job: The job [-].
        stringers: True if beads are laid without weaving [-].
    """
    lie = job.position.lie
    most = largest_bead_m2(job) * SIZE_SLACK
    wide = min(SPLIT_M[lie], STRINGER_M) if stringers else SPLIT_M[lie]
    return BeadLimits(most, most, ROOT_M[lie], LAYER_M, wide)


def widest(process: Process, most_m2: float) -> Widest:
    """Return the largest bead, up to a section, that leaves the process room.

    Heavier beads ask for slower travel and put in more heat, so it is looked for downwards. A feed
    set by hand is kept: the bead is then what it lays at the slowest travel, or at a travel set by
    hand.

    Args:
        process: Mode and limits [-].
        most_m2: Largest section wanted, above zero [m²].
    """
    hand = process.by_hand
    section = most_m2
    if hand.wire_feed_m_s is not None:
        slow = TRAVEL_RANGE_M_S[process.job.travel_by, process.job.position.lie][0]
        travel = process.travel_m_s or slow
        laid = process.run(section).laid(hand.wire_feed_m_s)
        section = min(section, bead_section(laid, travel))
    first: Widest | None = None
    for _ in range(_ROUNDS):
        found = Widest(section, process.room(section), process.holds(section))
        if found.holds:
            return found
        first = first or found
        window, fight = found.room.window, found.room.heat_fight
        if fight is None and window.high_limit.key == "travel-high":
            break  # a lighter bead only asks for more speed
        if fight is not None and fight.high == inf:
            break  # too cold already
        section *= _TIGHTER
    assert first is not None  # the loop runs at least once
    return first
