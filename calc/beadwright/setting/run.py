"""One run to lay: all that is fixed before wire feed and volts are chosen."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from beadwright.job.job import Job
from beadwright.process.deposition import laid_rate, travel_for_section
from beadwright.process.operating import Operating, at_feed, feed_at_current
from beadwright.process.transfer import Transfer
from beadwright.setting.limits import Window
from beadwright.setting.set_volts import set_volts_shift


@dataclass(frozen=True, slots=True)
class Run:
    """One run, its mode and the limits that do not depend on the set point.

    Attributes:
        job: The job.
        transfer: Mode planned.
        tip_to_work_m: Tip-to-work held or set [m].
        section_m2: Section one bead has to fill [m²].
        efficiency: Typical deposition efficiency [-].
        currents: Room for the current [A].
        heats: Room for the heat input, no efficiency in it [J/m].
        shift_v: How far from the mode's own line its volts are set; of job and mode [V].
    """

    job: Job
    transfer: Transfer
    tip_to_work_m: float
    section_m2: float
    efficiency: float
    currents: Window
    heats: Window
    shift_v: float = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "shift_v", set_volts_shift(self.job, self.transfer))

    def of(self, section_m2: float) -> Run:
        """Return the run of a bead of another section.

        Args:
            section_m2: Section the bead has to fill, above zero [m²].
        """
        return replace(self, section_m2=section_m2)

    def point(self, feed_m_s: float, volts: float | None = None) -> Operating:
        """Return the operating point at a feed; volts follow the mode's line unless given.

        Args:
            feed_m_s: Wire feed, above zero [m/s].
            volts: Volts at the arc, or None for the mode's own [V].
        """
        job, tip = self.job, self.tip_to_work_m
        return at_feed(job.wire, job.gas, self.transfer, feed_m_s, tip, volts, self.shift_v)

    def feed_at(self, current_a: float, volts: float | None = None) -> float:
        """Return the feed that draws a current; volts follow the mode's line unless given [m/s].

        Args:
            current_a: Mean current, above zero [A].
            volts: Volts at the arc, or None for the mode's own [V].
        """
        job, tip = self.job, self.tip_to_work_m
        return feed_at_current(
            job.wire, job.gas, self.transfer, current_a, tip, volts, self.shift_v
        )

    def laid(self, feed_m_s: float) -> float:
        """Return the deposition rate of a feed [kg/s]."""
        return laid_rate(self.job.wire, feed_m_s, self.efficiency)

    def filling(self, feed_m_s: float) -> float:
        """Return the travel at which a feed fills the section [m/s]."""
        return travel_for_section(self.laid(feed_m_s), self.section_m2, self.job.wire.material)

    def travel(self, feed_m_s: float) -> float:
        """Return the travel at a feed: set by hand, or the one that fills the section [m/s]."""
        return self.job.by_hand.travel_m_s or self.filling(feed_m_s)

    def heat(self, point: Operating, travel_m_s: float | None = None) -> float:
        """Return the heat input of a point, no efficiency in it [J/m].

        Args:
            point: The operating point [-].
            travel_m_s: Travel, or None for the one at that feed [m/s].
        """
        travel = travel_m_s or self.travel(point.feed_m_s)
        return point.volts * point.current_a / travel
