"""The dimensions of a joint's print: each on its own outside, with extension lines and a text."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from math import cos, radians, sin

from beadwright.joint.joints import BUTTS, Angle, Dimension, JointShape
from beadwright_site.drawings.marks import Label, dimension_line, label
from beadwright_site.drawings.paper import XY, Box, Paper

CHARACTER, ASCENT = 7.0, 10.0
"""Width of a character of a dimension, its height over the baseline [px]."""

OFFSET, OVERSHOOT, CLEAR, TEXT_GAP = 10.0, 3.0, 2.0, 5.0
"""Dimension line off the part, extension line past it and clear of the part, text off the line
[px]."""

STEEP_DEG = 80.0
"""An arc whose middle stands flatter than this has its text beside it, not on top [°]."""


@dataclass(frozen=True, slots=True)
class DimensionMark:
    """A dimension as drawn.

    Attributes:
        name: What it dimensions.
        path: Extension lines, dimension line and ticks, as SVG path data.
        label: What is written at it.
    """

    name: str
    path: str
    label: Label


def draw_dimensions(
    dimensions: Sequence[Dimension],
    angles: Sequence[Angle],
    paper: Paper,
    box: Box,
    size: XY,
    write: Callable[[Dimension], str],
) -> tuple[DimensionMark, ...]:
    """Return the dimensions and angles that have room on the paper.

    Args:
        dimensions: What to dimension.
        angles: What angles to write.
        paper: Where the joint lies.
        box: The joint's box [m].
        size: Of the paper [px].
        write: Gives a dimension its text.
    """

    def on_paper(point: XY) -> bool:
        x, y = paper.at(point)
        return 0 <= x <= size[0] and 0 <= y <= size[1]

    def marks() -> Iterator[DimensionMark]:
        for dimension in dimensions:
            if on_paper(dimension.start) and on_paper(dimension.end):
                side = side_of(dimension, box)
                draw = _upright if side in ("left", "right") else _lying
                yield draw(dimension, paper, side, write(dimension))
        for angle in angles:
            if on_paper(arc_top(angle)):
                yield _arc(angle, paper)

    return tuple(mark for mark in marks() if _readable(mark.label, size))


def side_of(dimension: Dimension, box: Box) -> str:
    """Return on which side of the part a dimension stands: its own outside.

    Args:
        dimension: The dimension.
        box: The part's box.
    """
    (x0, y0), (x1, y1) = dimension.start, dimension.end
    middle = box.middle
    if x0 == x1 or dimension.name == "reinforcement":
        return "left" if (x0 + x1) / 2 < middle[0] - 1e-12 else "right"
    return "below" if (y0 + y1) / 2 < middle[1] - 1e-12 else "above"


def equal_to_another(shape: JointShape, dimension: Dimension) -> bool:
    """Return whether an equal one is written already: the other leg, the plate across the gap.

    Args:
        shape: The joint.
        dimension: One of its dimensions.
    """
    if dimension.name == "leg2":
        return shape.leg2_m in (0.0, shape.leg_m)
    if dimension.name == "plate2" and shape.kind in BUTTS:
        return any(d.name == "plate" and d.value_m == dimension.value_m for d in shape.dimensions)
    return False


def arc_top(angle: Angle) -> XY:
    """Return where an arc's middle stands: its text is written over it [m]."""
    return _along(angle, (angle.from_deg + angle.to_deg) / 2)


def _along(angle: Angle, degrees: float) -> XY:
    turn = radians(degrees)
    (x, y), radius = angle.vertex, angle.radius_m
    return x + radius * cos(turn), y + radius * sin(turn)


def _upright(dimension: Dimension, paper: Paper, side: str, text: str) -> DimensionMark:
    """A dimension whose line stands upright, left or right of the part."""
    (x, y0), (_, y1) = paper.at(dimension.start), paper.at(dimension.end)
    out = -1 if side == "left" else 1
    line = x + out * OFFSET
    # A leg is measured to the toe on the other plate, so its upper extension starts there.
    toe = paper.at((0.0, 0.0))[0] if dimension.name == "leg" else x
    past = line + out * OVERSHOOT
    path = (
        f"M{x + out * CLEAR:.1f} {y0:.1f}H{past:.1f}M{toe + out * CLEAR:.1f} {y1:.1f}H{past:.1f}"
        f"{dimension_line((line, y0), (line, y1))}"
    )
    anchor = "end" if side == "left" else "start"
    at = label(line + out * TEXT_GAP, (y0 + y1) / 2 + 4.5, anchor, text)
    return DimensionMark(dimension.name, path, at)


def _lying(dimension: Dimension, paper: Paper, side: str, text: str) -> DimensionMark:
    """A dimension whose line lies above or below the part."""
    (x0, y), (x1, _) = paper.at(dimension.start), paper.at(dimension.end)
    out = 1 if side == "below" else -1
    line = y + out * OFFSET
    past = line + out * OVERSHOOT
    path = (
        f"M{x0:.1f} {y + out * CLEAR:.1f}V{past:.1f}M{x1:.1f} {y + out * CLEAR:.1f}V{past:.1f}"
        f"{dimension_line((x0, line), (x1, line))}"
    )
    baseline = line + 15.0 if side == "below" else line - TEXT_GAP
    return DimensionMark(dimension.name, path, label((x0 + x1) / 2, baseline, "middle", text))


def _arc(angle: Angle, paper: Paper) -> DimensionMark:
    radius = angle.radius_m * paper.scale
    (x0, y0), (x1, y1) = (paper.at(_along(angle, end)) for end in (angle.from_deg, angle.to_deg))
    path = f"M{x0:.1f} {y0:.1f}A{radius:.1f} {radius:.1f} 0 0 0 {x1:.1f} {y1:.1f}"
    x, y = paper.at(arc_top(angle))
    flat = (angle.from_deg + angle.to_deg) / 2 < STEEP_DEG
    at = label(x + (4 if flat else 0), y - 3, "start" if flat else "middle",
               f"{angle.value_deg:g}°")  # fmt: skip
    return DimensionMark(angle.name, path, at)


def _readable(at: Label, size: XY) -> bool:
    """True if a text stands on the paper."""
    wide = CHARACTER * len(at.text) - 1
    share = {"start": 0.0, "middle": 0.5, "end": 1.0}[at.anchor]
    beside = at.x - share * wide >= -1 and at.x + (1 - share) * wide <= size[0] + 1
    return beside and ASCENT <= at.y <= size[1]
