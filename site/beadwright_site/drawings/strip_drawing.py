"""Two bands on one scale, what is published over what the shop has, and a mark for each coupon."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from beadwright_site.drawings.axes import Scale
from beadwright_site.drawings.paper import px
from beadwright_site.drawings.points_drawing import PATHS, DrawnMark

WIDTH, HEIGHT = 344, 46
LEFT, RIGHT = 8.0, 336.0
MIDDLE = 15.0
"""The paper, where the scale begins and ends on it, how far down the bands' middle lies [px]."""

TEXT_WIDE = 8.0
"""Width of a character of the numbers below, for keeping two of them apart [px]."""


@dataclass(frozen=True, slots=True)
class Band:
    """A band to draw: its ends, and the value in it."""

    low: float
    high: float
    value: float


@dataclass(frozen=True, slots=True)
class DrawnBand:
    """A band on the paper: where it begins, how wide it is, where its value stands [px]."""

    x: float
    width: float
    value: float


@dataclass(frozen=True, slots=True)
class Strip:
    """Both bands on the paper.

    Attributes:
        before: The published band.
        after: The shop's own.
        marks: A mark for each coupon; open crosses are set aside.
        ends: The ends of the published band in words, each with its place [px].
        spoken: The picture in words.
    """

    before: DrawnBand
    after: DrawnBand
    marks: tuple[DrawnMark, ...]
    ends: tuple[tuple[float, str], ...]
    spoken: str
    width: int = WIDTH
    height: int = HEIGHT
    middle: float = MIDDLE


def draw_strip(
    before: Band,
    after: Band,
    points: Sequence[tuple[float, bool]],
    ends: tuple[str, str],
    spoken: str,
) -> Strip:
    """Return two bands to one scale.

    Args:
        before: The published band.
        after: The shop's own.
        points: What each coupon shows, and whether it counts.
        ends: The ends of the published band in words.
        spoken: The picture in words.
    """
    held = [value for band in (before, after) for value in (band.low, band.high, band.value)]
    held += [value for value, _ in points]
    least, most = min(held), max(held)
    if most <= least:
        least, most = least - 1, most + 1
    along = Scale(least, most, LEFT, RIGHT)

    def drawn(band: Band) -> DrawnBand:
        left, right = along(band.low), along(band.high)
        return DrawnBand(px(left), px(right - left), px(along(band.value)))

    return Strip(
        drawn(before),
        drawn(after),
        tuple(
            DrawnMark(px(along(value)), MIDDLE, PATHS["circle" if counts else "cross"], counts)
            for value, counts in points
        ),
        _placed(along(before.low), along(before.high), ends),
        spoken,
    )


def _placed(low: float, high: float, ends: tuple[str, str]) -> tuple[tuple[float, str], ...]:
    """The numbers under the ends of a band, on the paper and off each other."""
    first, last = (TEXT_WIDE * len(text) for text in ends)
    left = min(max(low, first / 2), WIDTH - first - last / 2)
    right = min(max(high, left + (first + last) / 2), WIDTH - last / 2)
    return (px(left), ends[0]), (px(right), ends[1])
