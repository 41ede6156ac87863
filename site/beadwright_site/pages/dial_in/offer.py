"""The other mode that holds the joint, offered beside the settings."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from beadwright.phrases import Amount, say
from beadwright.process.transfer import MODE_PHRASES, Transfer
from beadwright.setting.other_mode import OtherMode
from beadwright.units import System
from beadwright.words.wording import worded
from beadwright_site.links import query_of


@dataclass(frozen=True, slots=True)
class Offer:
    """What is offered: its words and the query that takes it."""

    text: str
    query: str


def offered(other: OtherMode | None, typed: Mapping[str, str], system: System) -> Offer | None:
    """Return the other mode as a link, or None where there is none.

    Args:
        other: The other mode.
        typed: Entries as typed.
        system: Units to show.
    """
    if other is None:
        return None
    mode: Transfer = "short" if other.transfer == "short" else "spray"
    told = say(
        "setting.other-side",
        mode=MODE_PHRASES[mode],
        feed=Amount(other.feed_m_s, "wire_feed"),
        volts=Amount(other.volts or 0.0, "volts"),
        current=Amount(other.current_a, "current"),
    )
    return Offer(worded(told, system), query_of({**typed, "transfer": other.transfer}))
