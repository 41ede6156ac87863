"""The process a group of beads is laid with: root, fill or cap."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Literal

from beadwright.job.job import ByHand, Job
from beadwright.layers.bead_limits import (
    BRIDGE_M,
    COLD_LAP_M,
    bridges,
    open_arc_falls,
    root_wants_backing,
    shorted_root,
)
from beadwright.measures import INCH_M
from beadwright.phrases import Amount, Phrase, say
from beadwright.process.deposition import deposition_efficiency, feed_for_travel
from beadwright.process.positions import Mover
from beadwright.process.tip_to_work import tip_to_work
from beadwright.process.transfer import Transfer, transfer_refused
from beadwright.setting.current_limits import current_limits
from beadwright.setting.feed_limits import FeedRoom, feed_room
from beadwright.setting.heat_limits import heat_limits
from beadwright.setting.limits import Limit, Window, tightest_window
from beadwright.setting.plan import OPEN_GAP, Plan
from beadwright.setting.run import Run
from beadwright.setting.size_limits import section_room

Part = Literal["root", "fill", "cap", "back"]
"""Root, fill and cap; and the gouged second side, where it is not welded as fill and cap are."""

BRIDGING_TRAVEL_M_S: Mapping[Mover, float] = MappingProxyType(
    {"hand": 15 * INCH_M / 60, "track": 18 * INCH_M / 60, "robot": 20 * INCH_M / 60}
)
"""Fastest travel at which a bead bridges an open root [m/s]. Common practice: 6 to 14 in/min by
hand; faster, the keyhole is lost and the edges are missed."""


@dataclass(frozen=True, slots=True)
class PartByHand:
    """What is fixed by hand for one part only; None where it is as for the rest.

    Attributes:
        transfer: Mode.
        wire_feed_m_s: Wire feed [m/s].
        volts: Volts at the arc [V].
    """

    transfer: Transfer | None = None
    wire_feed_m_s: float | None = None
    volts: float | None = None


AS_THE_REST = PartByHand()
"""A part with nothing fixed by hand for it alone."""


@dataclass(frozen=True, slots=True)
class Process:
    """Mode, settings fixed by hand, and limits of a group of beads.

    Attributes:
        part: What it is for.
        job: The job as this part is welded: its transfer and what is fixed by hand. Travel is
            not in it: each bead has its own.
        transfer: Mode.
        why: Why that mode.
        refused: Why the mode cannot be held, or None.
        tip_to_work_m: Tip-to-work [m].
        efficiency: Deposition efficiency: low, typical, high [-].
        currents: Room for the current [A].
        heats: Room for the heat input [J/m].
        travel_m_s: Travel fixed by hand, or None [m/s].
        bridges: True if it bridges an open root.
        own: What is fixed by hand for this part only.
        shares: Most and least that may be laid of a bead, the joint still being the one asked for;
            shares of its section [-].
    """

    part: Part
    job: Job
    transfer: Transfer
    why: Phrase
    refused: Phrase | None
    tip_to_work_m: float
    efficiency: tuple[float, float, float]
    currents: Window
    heats: Window
    travel_m_s: float | None
    bridges: bool
    own: PartByHand
    shares: tuple[float, float]

    @property
    def by_hand(self) -> ByHand:
        """What is fixed by hand."""
        return self.job.by_hand

    def run(self, section_m2: float) -> Run:
        """Return the run that lays a bead.

        Args:
            section_m2: Its section, above zero [m²].
        """
        return Run(
            job=self.job,
            transfer=self.transfer,
            tip_to_work_m=self.tip_to_work_m,
            section_m2=section_m2,
            efficiency=self.efficiency[1],
            currents=self.currents,
            heats=self.heats,
        )

    def room(self, section_m2: float) -> FeedRoom:
        """Return the room for the feed of a bead.

        Args:
            section_m2: Its section, above zero [m²].
        """
        run = self.run(section_m2)
        room = feed_room(run, (section_m2, section_m2))
        if not self.bridges or self.travel_m_s is not None:
            return room
        fast = BRIDGING_TRAVEL_M_S[self.job.travel_by]
        high = feed_for_travel(run.job.wire, fast, section_m2, run.efficiency)
        window = room.window
        if high >= window.high:
            return room
        why = say("passes.root-not-bridged", travel=Amount(fast, "travel"))
        limit = Limit("travel-high", why, high=high, source="practice")
        return replace(room, window=replace(window, high=high, high_limit=limit))

    def holds(self, section_m2: float, room: FeedRoom) -> bool:
        """Return whether a bead leaves room, or a feed set by hand keeps its travel and heat.

        Args:
            section_m2: Its section, above zero [m²].
            room: Its room, of ``room`` [-].
        """
        feed = self.by_hand.wire_feed_m_s
        if feed is None:
            return room.window.open and room.heat_fight is None
        run = self.run(section_m2)
        return self.heats.low <= run.heat(run.point(feed, self.by_hand.volts)) <= self.heats.high


def process_of(job: Job, plan: Plan, part: Part, own: PartByHand) -> Process:
    """Return the process of a part.

    An open root without backing is welded in short circuit if the rest would spray: spray falls
    through an open gap (common practice). Under such a root is its own edge, not the plate, so its
    limits and its current are those of plate no thicker than ``COLD_LAP_M``; where it bridges a
    gap, no thicker than ``BRIDGE_M``.

    Args:
        job: The job [-].
        plan: Its plan [-].
        part: Which part [-].
        own: What is fixed by hand for it [-].
    """
    transfer, why = plan.transfer, plan.reason
    shape = plan.shape
    shorted = shorted_root(job, shape, transfer)
    refused = None
    if part == "back":
        refused = _gouge_refused(job, plan)
        if refused is None:
            transfer, why = "pulse", say("passes.gouge-not-shorted")
    if own.transfer is not None:
        transfer, why = own.transfer, say("passes.you-asked")
    elif part == "root" and shorted:
        transfer, why = "short", OPEN_GAP
    hand = job.by_hand
    fixed = ByHand(
        own.wire_feed_m_s if own.wire_feed_m_s is not None else hand.wire_feed_m_s,
        own.volts if own.volts is not None else hand.volts,
        hand.tip_to_work_m,
        None,
    )
    if transfer != plan.transfer and own == AS_THE_REST:
        fixed = ByHand()  # what is fixed by hand was meant for the other mode
    ours = replace(job, by_hand=fixed, transfer=transfer if transfer != "globular" else "auto")
    edge = ours
    bridging = part == "root" and bridges(shape)
    if part == "root" and transfer == "short" and (shorted or bridging):
        thin = min(job.thinner_m, BRIDGE_M if bridging else COLD_LAP_M)
        edge = replace(ours, plate_m=thin, plate2_m=thin)
    most, least = section_room(job, shape)
    if own.transfer is not None:
        refused = transfer_refused(job.wire, job.gas, job.position, transfer)
    if part == "root" and own.transfer == "spray" and open_arc_falls(shape):
        refused = refused or say("passes.spray-root-falls")
    if part == "root" and root_wants_backing(job, shape):
        refused = say("passes.root-wants-backing", kind=job.wire.traits.phrase)
    return Process(
        part=part,
        job=edge,
        transfer=transfer,
        why=why,
        refused=refused,
        tip_to_work_m=fixed.tip_to_work_m or tip_to_work(job.wire, transfer)[1],
        efficiency=deposition_efficiency(job.wire, job.gas, transfer),
        currents=tightest_window(current_limits(edge, transfer)),
        heats=tightest_window(heat_limits(ours)),
        travel_m_s=hand.travel_m_s,
        bridges=bridging,
        own=own,
        shares=(most / shape.section_m2, least / shape.section_m2),
    )


def apart(plan: Plan) -> bool:
    """Return whether the second side is welded otherwise than as fill and cap.

    Short circuit may lie in a gouged groove without fusing it.

    Source: common practice; nor is it prequalified in AWS D1.1.

    Args:
        plan: The job's plan [-].
    """
    return plan.shape.gouged and plan.transfer == "short"


def _gouge_refused(job: Job, plan: Plan) -> Phrase | None:
    """Why the gouged side of a job planned in short circuit cannot be pulsed instead, or None."""
    if job.transfer == "short" and plan.reason.key != "passes.spray-too-light":
        return say("passes.short-asked")
    return transfer_refused(job.wire, job.gas, job.position, "pulse")
