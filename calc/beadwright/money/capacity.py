"""Whether the shop can weld the volume at all: arc hours, shift hours, parts in a shift."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.money.way import Way
from beadwright.phrases import Phrase, say

FULL_SHARE = 0.85
"""Share of the hours above which there is no room for a sick day [-]. Common practice."""


@dataclass(frozen=True, slots=True)
class Hours:
    """The hours the shop has.

    Attributes:
        welders: Torches that can burn at once, above zero [-].
        shift_s: A shift [s].
        shifts_a_week: Shifts in a week [-].
        weeks: Weeks worked in a year [-].
    """

    welders: int
    shift_s: float
    shifts_a_week: float
    weeks: float

    @property
    def year_s(self) -> float:
        """Welder time in a year [s]."""
        return self.welders * self.shift_s * self.shifts_a_week * self.weeks


@dataclass(frozen=True, slots=True)
class Capacity:
    """What a volume asks of the shop.

    Attributes:
        arc_s: Arc time a year, rework with it [s].
        shift_s: Welder time a year [s].
        parts_a_shift: Parts all welders finish in a shift [-].
        most_parts: Parts a year the shop can weld [1/year].
        used: Share of the shop's hours this volume takes [-].
        delivers: True if the hours are there.
        phrase: The same in a sentence.
    """

    arc_s: float
    shift_s: float
    parts_a_shift: float
    most_parts: float
    used: float
    delivers: bool
    phrase: Phrase


def capacity(way: Way, parts: float, hours: Hours) -> Capacity:
    """Return what a year's parts ask of the shop's hours.

    Source: time for a part times parts, against welders × shift × shifts × weeks.

    Args:
        way: The way [-].
        parts: Parts a year, zero or more [1/year].
        hours: What the shop has, above zero [-].
    """
    arc = parts * (1 + way.rework) * way.arc_s
    asked, most = parts * way.time_s, hours.year_s / way.time_s
    used = asked / hours.year_s
    return Capacity(
        arc_s=arc,
        shift_s=asked,
        parts_a_shift=hours.welders * hours.shift_s / way.time_s,
        most_parts=most,
        used=used,
        delivers=used <= 1,
        phrase=_sentence(parts, most, used),
    )


def _sentence(parts: float, most: float, used: float) -> Phrase:
    if parts == 0:
        return say("money.nothing-to-weld", most=most)
    if used > 1:
        return say("money.cannot-deliver", most=most, wanted=parts)
    if used > FULL_SHARE:
        return say("money.just-delivers", used=used)
    return say("money.delivers", used=used)
