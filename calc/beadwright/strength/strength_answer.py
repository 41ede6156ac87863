"""What the Strength page answers: the legs that matter, the links, which gives way first."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.job.page_query import PageAnswered
from beadwright.strength.groove_weld import GrooveSizes
from beadwright.strength.intermittent import Intermittent
from beadwright.strength.leg_sizes import LegSizes
from beadwright.strength.plug_weld import PlugSizes
from beadwright.strength.strength_check import (
    Link,
    Spread,
)
from beadwright.strength.strength_query import StrengthQuery
from beadwright.strength.strength_task import StrengthTask
from beadwright.tolerance import REL_TOL


@dataclass(frozen=True, slots=True)
class StrengthAnswer(PageAnswered):
    """The Strength page's answer.

    Attributes:
        page: ``strength``.
        query: The query as read.
        task: What was asked.
        spread: How the load spreads along the weld.
        sizes: What of the weld's size matters: legs of a fillet, throat of a groove, hole.
        links: What can give way, the weakest first.
        segments: Intermittent welding that would carry it, or None.
        notes: Notes, the most severe first.
    """

    query: StrengthQuery
    task: StrengthTask
    spread: Spread
    sizes: LegSizes | GrooveSizes | PlugSizes
    links: tuple[Link, ...]
    segments: Intermittent | None

    @property
    def legs(self) -> LegSizes:
        """The legs that matter, of a fillet."""
        assert isinstance(self.sizes, LegSizes)
        return self.sizes

    @property
    def stopped(self) -> bool:
        """True if something is said that stops it, whatever it holds."""
        return any(note.level == "stop" for note in self.notes)

    @property
    def holds(self) -> bool:
        """True if every link holds and nothing else stops it."""
        return self.links[0].use <= 1 + REL_TOL and not self.stopped

    @property
    def weld(self) -> Link:
        """The weld's own link."""
        return next(link for link in self.links if link.key == "weld")

    @property
    def ringed(self) -> Link:
        """The weakest of those that give way at a point of the weld."""
        points = (link for link in self.links if link.measure == "force_per_length")
        return next(points, self.weld)

    @property
    def load_times(self) -> float:
        """How many times the load, as it acts now, the weakest link holds [-]."""
        return 1 / self.links[0].use if self.links[0].use else float("inf")
