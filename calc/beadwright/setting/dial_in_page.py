"""The Dial-in page's answer: the settings, the feed and volts plane, ways out of a shut window."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from beadwright.job.page_query import PageAnswered, read_page
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.dial_in_query import DialInQuery
from beadwright.setting.other_mode import OtherMode, other_mode
from beadwright.setting.ways_out import WayOut, ways_out
from beadwright.setting.window_map import WindowMap, window_map


@dataclass(frozen=True, slots=True)
class DialInAnswer(PageAnswered):
    """The Dial-in page's answer.

    Attributes:
        page: ``dial-in``.
        query: The query as read.
        dialled: The settings and what follows.
        window_map: Feed and volts plane.
        ways_out: What would open a shut window.
        other_mode: Another mode that holds the joint, where the choice was a near one.
        notes: Notes, the most severe first.
    """

    dialled: DialIn
    window_map: WindowMap
    ways_out: tuple[WayOut, ...]
    other_mode: OtherMode | None


def dial_in_answer(query: str, kept: Mapping[str, Any] | None = None) -> DialInAnswer:
    """Return the Dial-in page's answer to a query string.

    Args:
        query: Keys of ``dial_in_query.DialInQuery`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    read = read_page(DialInQuery, query, kept)
    dialled = dial_in(read.job)
    out = () if dialled.open else ways_out(read.job)
    other = other_mode(read.job, dialled.plan) if dialled.open else None
    drawn = window_map(dialled)
    return DialInAnswer("dial-in", read, dialled, drawn, out, other, notes=dialled.notes)
