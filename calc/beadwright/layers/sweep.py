"""A polygon swept by a straight line: the area below a level, and the level of an area."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt

from beadwright.errors import OutOfRangeError
from beadwright.joint.joints import XY

_GRAIN = 1e-9
"""Levels closer than this share of the whole height are one level."""


@dataclass(frozen=True, slots=True)
class Sweep:
    """Area of a polygon below a level, as a series of quadratics.

    Between two neighboring corners' levels the chord is straight in the level, so the area is a
    quadratic there; both ways are exact for any simple polygon.

    Attributes:
        levels: Levels of the corners, rising [m].
        areas: Area below each [m²].
        chords: Chord just above each level [m].
        slopes: How fast the chord grows above it [-].
    """

    levels: tuple[float, ...]
    areas: tuple[float, ...]
    chords: tuple[float, ...]
    slopes: tuple[float, ...]

    @property
    def area(self) -> float:
        """Area of the whole [m²]."""
        return self.areas[-1]

    def below(self, level: float) -> float:
        """Return the area below a level [m²].

        Args:
            level: Any level; beyond the ends nothing or all of it [m].
        """
        if level <= self.levels[0]:
            return 0.0
        if level >= self.levels[-1]:
            return self.area
        at = bisect_right(self.levels, level) - 1
        up = level - self.levels[at]
        return self.areas[at] + up * (self.chords[at] + self.slopes[at] * up / 2)

    def level(self, area: float) -> float:
        """Return the level below which an area lies [m].

        Args:
            area: Zero to the whole [m²].

        Raises:
            OutOfRangeError: If the area is below zero or over the whole.
        """
        if not -1e-12 * self.area <= area <= self.area * (1 + 1e-12):
            raise OutOfRangeError(f"area = {area} must be 0 to {self.area}")
        if area >= self.area:
            return self.levels[-1]
        at = max(0, min(bisect_right(self.areas, area) - 1, len(self.levels) - 2))
        left, chord, slope = area - self.areas[at], self.chords[at], self.slopes[at]
        # This form of the root loses no digits where the chord hardly changes.
        under = sqrt(max(0.0, chord * chord + 2 * slope * left))
        up = 2 * left / (chord + under) if chord + under > 0 else 0.0
        return min(self.levels[at] + up, self.levels[at + 1])


def sweep(points: Sequence[XY], axis: int) -> Sweep:
    """Return the sweep of a simple polygon.

    Source: geometry: each edge adds its straight line to the chord between its two levels, with
    the sign of its direction.

    Args:
        points: Corners in order, three or more [m].
        axis: 0 to sweep along x, 1 along y [-].

    Raises:
        OutOfRangeError: If there are fewer than three corners, or they enclose nothing.
    """
    if len(points) < 3:
        raise OutOfRangeError(f"points = {len(points)} must be three or more corners")
    other = 1 - axis
    heights = [point[axis] for point in points]
    bottom, span = min(heights), max(heights) - min(heights)
    if not span > 0:
        raise OutOfRangeError("points must enclose an area")
    grain = _GRAIN * span
    # Corners closer than the tolerance count as level: the slope between them would be endless.
    snapped = [round((height - bottom) / grain) * grain + bottom for height in heights]
    jumps: dict[float, tuple[float, float]] = {}
    twice = 0.0
    before, low = points[-1], snapped[-1]
    for point, high in zip(points, snapped, strict=True):
        twice += before[0] * point[1] - before[1] * point[0]
        if low != high:
            slope = (point[other] - before[other]) / (high - low)
            for level, across, sign in ((low, before[other], 1.0), (high, point[other], -1.0)):
                chord, steeper = jumps.get(level, (0.0, 0.0))
                jumps[level] = chord + sign * across, steeper + sign * slope
        before, low = point, high
    # An edge that goes down has its two ends in the other order: that already turns the sign.
    return _summed(jumps, 1.0 if (twice > 0) == (axis == 1) else -1.0)


def _summed(jumps: dict[float, tuple[float, float]], turn: float) -> Sweep:
    levels = sorted(jumps)
    areas: list[float] = []
    chords: list[float] = []
    slopes: list[float] = []
    area = chord = slope = 0.0
    before = levels[0]
    for level in levels:
        up = level - before
        area += max(0.0, up * (chord + slope * up / 2))
        added, steeper = jumps[level]
        chord = max(0.0, chord + slope * up + turn * added)
        slope += turn * steeper
        areas.append(area)
        chords.append(chord)
        slopes.append(slope)
        before = level
    if not area > 0:
        raise OutOfRangeError("points must enclose an area")
    return Sweep(tuple(levels), tuple(areas), tuple(chords), tuple(slopes))


def band(points: Sequence[XY], axis: int, low: float, high: float) -> list[XY]:
    """Return the part of a polygon between two levels [m].

    Source: Sutherland and Hodgman's clipping, one level at a time. A part that falls in two is
    returned as one outline whose halves are joined along the level, with the right area.

    Args:
        points: Corners in order [m].
        axis: 0 for levels of x, 1 of y [-].
        low: Lower level [m].
        high: Upper level [m].
    """
    return _side(_side(points, axis, low, 1.0), axis, high, -1.0)


def _side(points: Sequence[XY], axis: int, level: float, keep: float) -> list[XY]:
    kept: list[XY] = []
    if not points:
        return kept
    before = points[-1]
    was = keep * (before[axis] - level)
    for point in points:
        now = keep * (point[axis] - level)
        if (was > 0 > now) or (was < 0 < now):
            share = was / (was - now)
            across = before[1 - axis] + share * (point[1 - axis] - before[1 - axis])
            kept.append((level, across) if axis == 0 else (across, level))
        if now >= 0:
            kept.append(point)
        before, was = point, now
    return kept
