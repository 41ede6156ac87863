"""One thing that must carry the job."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.phrases import Phrase, say

Held = Literal["holds", "close", "fails"]

_CHECKS: Mapping[str, Phrase] = MappingProxyType(
    {
        "current": say("machine.current"),
        "arc": say("machine.arc"),
        "share": say("machine.share"),
        "cable": say("machine.cable"),
        "breaker": say("machine.breaker"),
        "cord": say("machine.cord"),
        "cord_drop": say("machine.cord-lost"),
        "generator": say("machine.generator"),
    }
)


@dataclass(frozen=True, slots=True)
class Check:
    """One thing that must carry the job.

    Attributes:
        key: Its id: current, arc, share, cable, breaker, cord, cord_drop, generator.
        held: holds, close or fails.
        measure: Kind of quantity.
        asked: What the job asks [SI].
        limit: What holds [SI].
        phrase: The same in a sentence; what to do where it does not hold.
        source: Source id.
    """

    key: str
    held: Held
    measure: str
    asked: float
    limit: float
    phrase: Phrase
    source: str

    @property
    def name(self) -> Phrase:
        """What it is called."""
        return _CHECKS[self.key]
