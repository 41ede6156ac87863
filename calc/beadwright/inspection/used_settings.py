"""The settings a weld was made with: how far each may turn, in this hand, to change its metal."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from math import ceil, floor
from typing import Literal

from beadwright import units
from beadwright.inspection.inspected import Inspected
from beadwright.job.job import ByHand
from beadwright.layers.bead_limits import fewest_beads
from beadwright.measures import MEASURES
from beadwright.phrases import Phrase, say
from beadwright.process.deposition import bead_section, travel_for_section
from beadwright.process.operating import Operating
from beadwright.results import Quantity
from beadwright.setting.dial_in import DialIn
from beadwright.setting.feed_limits import FeedRoom, feed_room
from beadwright.setting.limits import Window
from beadwright.setting.run import Run
from beadwright.setting.size_limits import bead_room
from beadwright.setting.travel_limits import travel_room
from beadwright.setting.volts_limits import volts_room

Turned = Literal["travel", "wire_feed", "both"]
"""Which setting is changed."""


@dataclass(frozen=True, slots=True)
class Change:
    """A change of setting that brings a weld to its size.

    Attributes:
        turned: What is changed.
        travel_m_s: Travel to run [m/s].
        feed_m_s: Wire feed to set [m/s].
        volts: Volts at that feed; None where the machine sets its own [V].
        share: How far it goes, as a share of the room of what is changed [-].
    """

    turned: Turned
    travel_m_s: float
    feed_m_s: float
    volts: float | None
    share: float


@dataclass(frozen=True, slots=True)
class UsedSettings:
    """The settings a weld was made with, and the room each has in this hand.

    Attributes:
        weld: The weld as measured.
        dialled: The settings: typed, else planned.
        point: Their operating point.
        passes: Passes it was laid in [-].
        travel_m_s: Travel the weld was laid at [m/s].
        ratio: Metal this hand lays over metal by our sums [-].
    """

    weld: Inspected
    dialled: DialIn
    point: Operating
    passes: int
    travel_m_s: float
    ratio: float = 1.0

    @property
    def bead_m2(self) -> float:
        """Section of one bead by our sums [m²]."""
        laid = self.dialled.plan.run.laid(self.point.feed_m_s)
        return bead_section(laid, self.travel_m_s, self.dialled.job.wire.material)

    @property
    def travel(self) -> Quantity:
        """The travel with its room for these passes."""
        room = self.travels()
        return replace(
            self.dialled.settings.travel, value=self.travel_m_s, low=room.low, high=room.high
        )

    @property
    def own_volts(self) -> float | None:
        """Volts as they stood; None where the machine sets its own [V]."""
        return None if self.dialled.plan.transfer == "pulse" else self.point.volts

    def changes(self, metal: float) -> Iterator[Change]:
        """Yield what mends the size: travel alone, feed alone, or both where neither does.

        Args:
            metal: Metal wanted over metal laid, above zero [-].
        """
        if self.least_passes() > self.passes:
            return
        single = [each for each in (self._slower(metal), self._fed(metal)) if each is not None]
        if single:
            yield from single
        else:
            both = self._both(metal)
            if both is not None:
                yield both

    def least_passes(self) -> int:
        """Return the fewest passes the position allows for the joint; see ``fewest_beads``."""
        weld = self.weld
        return fewest_beads(weld.job, weld.shape, self.dialled.plan.transfer)

    def _bead_room(self) -> tuple[float, float]:
        """Sections as our sums count them that this hand makes the largest and smallest joint."""
        most, least = bead_room(self.weld.job, self.weld.shape, self.passes)
        return most / self.ratio, least / self.ratio

    def travels(self) -> Window:
        """Return the room for the travel while feed and volts stand [m/s]."""
        return travel_room(self.dialled.plan.run, self.point, self._bead_room())

    def _run_at(self, travel: float) -> Run:
        """The run with the travel held and feed and volts free."""
        run = self.dialled.plan.run
        return replace(run, job=replace(run.job, by_hand=ByHand(travel_m_s=travel)))

    def feeds(self, travel: float) -> FeedRoom:
        """Return the room for the feed at a travel, volts following [m/s].

        Args:
            travel: Travel held, above zero [m/s].
        """
        return feed_room(self._run_at(travel), self._bead_room())

    def _slower(self, metal: float) -> Change | None:
        wanted, room = self.travel_m_s / metal, self.travels()
        travel = _step(wanted, "travel", self.weld.job.units, up=False)
        travel = travel if travel >= room.low else wanted
        if not room.low <= travel <= room.high:
            return None
        share = _share(abs(travel - self.travel_m_s), self.travel)
        return Change("travel", travel, self.point.feed_m_s, self.own_volts, share)

    def _fed(self, metal: float) -> Change | None:
        feed = self._held_feed(self.point.feed_m_s * metal, self.travel_m_s)
        if feed is None:
            return None
        share = _share(abs(feed - self.point.feed_m_s), self.dialled.settings.wire_feed)
        return Change("wire_feed", self.travel_m_s, feed, self._volts(feed), share)

    def _both(self, metal: float) -> Change | None:
        """Travel to the end of its room, and the feed makes up the rest."""
        room = self.travels()
        if not room.open:
            return None
        travel = room.hold(self.travel_m_s / metal)
        feed = self._held_feed(self.point.feed_m_s * metal * travel / self.travel_m_s, travel)
        if feed is None:
            return None
        return Change("both", travel, feed, self._volts(feed), 1.0)

    def _held_feed(self, wanted: float, travel: float) -> float | None:
        """A feed on a step that holds every limit at a travel, or None."""
        found = self.feeds(travel)
        room = found.window
        if not found.kept:
            return None
        feed = _step(wanted, "wire_feed", self.weld.job.units, up=True)
        feed = feed if feed <= room.high else wanted
        return feed if room.low <= feed <= room.high else None

    def _volts(self, feed: float) -> float | None:
        """Volts at a feed: as far from the mode's line as they stood, inside their room."""
        run = replace(self.dialled.plan.run, job=replace(self.dialled.job, by_hand=ByHand()))
        if run.transfer == "pulse":
            return None
        line = run.point(feed)
        off = self.point.volts - run.point(self.point.feed_m_s).volts
        volts = volts_room(run, line).hold(line.volts + off)
        return units.settable(volts, "volts", self.weld.job.units)

    def blocked(self, metal: float) -> tuple[Phrase, ...]:
        """Return why neither setting goes so far.

        Args:
            metal: Metal wanted over metal laid, above zero [-].
        """
        least = self.least_passes()
        if least > self.passes:
            return (say("inspection.too-few-passes", count=self.passes, least=least),)
        more, room = metal > 1, self.travels()
        limit = room.low_limit if more else room.high_limit
        key = "inspection.travel-stops-low" if more else "inspection.travel-stops-high"
        travel = say(key, why=limit.why)
        found = self.feeds(self.travel_m_s)
        if found.heat_fight is not None:
            return travel, say("inspection.feed-fights", why=found.heat_fight.why)
        limit = found.window.high_limit if more else found.window.low_limit
        key = "inspection.feed-stops-high" if more else "inspection.feed-stops-low"
        return travel, say(key, why=limit.why)


def used_settings(weld: Inspected, dialled: DialIn, passes: int) -> UsedSettings | None:
    """Return the settings a weld was made with, its travel as typed or as fills the joint.

    Args:
        weld: The weld [-].
        dialled: The settings: typed, else planned [-].
        passes: Passes it was laid in, one or more [-].

    Returns:
        None where there is no set point.
    """
    point, run = dialled.point, dialled.plan.run
    if point is None:
        return None
    travel = run.job.by_hand.travel_m_s or travel_for_section(
        run.laid(point.feed_m_s), weld.shape.section_m2 / passes, run.job.wire.material
    )
    return UsedSettings(weld, dialled, point, passes, travel)


def _share(change: float, setting: Quantity) -> float:
    """A change as a share of the setting's room."""
    width = (setting.high or 0.0) - (setting.low or 0.0)
    return change / width if width > 0 else 1.0


def _step(value: float, measure: str, system: units.System, *, up: bool) -> float:
    """The next step a hand can set, at or over a value, or at or under it [SI]."""
    step = units.STEPS[measure, system] * MEASURES[measure].unit(system).factor
    count = Fraction(value) / step
    near = Fraction(1, 10**6)  # a value a hair from a step is that step
    return float((ceil(count - near) if up else floor(count + near)) * step)
