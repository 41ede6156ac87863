"""The parts of every page's answer: quantities with their room, and notes."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.phrases import Phrase

Meaning = Literal["window", "band", "exact"]
"""What low..high says: room to set in, how far an estimate may be off, or nothing to say."""

Level = Literal["note", "caution", "out", "stop"]
"""note: good to know; caution: can hurt somebody or a weld; out: outside the window; stop: do
not."""


@dataclass(frozen=True, slots=True)
class Note:
    """One thing to tell the welder, with where it comes from.

    Attributes:
        level: How severe it is.
        phrase: What it says; its words, in the imperative where something is to be done, stand in
            ``words``.
        source: Source id of ``beadwright.sources``, or empty.
        field: The field or setting it belongs beside, or empty.
    """

    level: Level
    phrase: Phrase
    source: str = ""
    field: str = ""

    @property
    def key(self) -> str:
        """The id of what it says."""
        return self.phrase.key


_SEVERITY: Mapping[Level, int] = MappingProxyType({"stop": 0, "out": 1, "caution": 2, "note": 3})


def severest_first(notes: Iterable[Note]) -> tuple[Note, ...]:
    """Return notes by their level, the most severe first; those of one level keep their order.

    Args:
        notes: The notes [-].
    """
    return tuple(sorted(notes, key=lambda note: _SEVERITY[note.level]))


@dataclass(frozen=True, slots=True)
class Quantity:
    """A number, its room, its kind and where it comes from.

    Attributes:
        name: The trade's name for it.
        measure: Kind of quantity, key of ``units.MEASURES``.
        value: The number [SI], or None where no number can honestly be given.
        low: Low end [SI] or None.
        high: High end [SI] or None.
        meaning: What low..high says.
        sources: Source ids.
        low_by: What binds the low end, or why there is no number; a phrase that follows "because".
        high_by: What binds the high end.
        by_hand: True if the welder set it.
    """

    name: str
    measure: str
    value: float | None
    low: float | None = None
    high: float | None = None
    meaning: Meaning = "exact"
    sources: tuple[str, ...] = ()
    low_by: Phrase | None = None
    high_by: Phrase | None = None
    by_hand: bool = False

    @property
    def inside(self) -> bool:
        """True unless the value is outside low..high by more than rounding."""
        if self.value is None:
            return False
        slack = 1e-9 * abs(self.value)
        return not (
            (self.low is not None and self.value < self.low - slack)
            or (self.high is not None and self.value > self.high + slack)
        )


def within(name: str, measure: str, value: float, share: float, *sources: str) -> Quantity:
    """Return an estimate with a band of a share up and down.

    Args:
        name: The trade's name for it [-].
        measure: Kind of quantity [-].
        value: The estimate [SI].
        share: Half the band, as a share of the value; 0 to 1 [-].
        *sources: Source ids [-].
    """
    return Quantity(
        name=name,
        measure=measure,
        value=value,
        low=value * (1 - share),
        high=value * (1 + share),
        meaning="band",
        sources=sources,
    )
