"""A joint as a shop print: fitted to the paper, to one scale, dimensioned."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from beadwright.joint.joints import FILLETS, Dimension, JointShape
from beadwright_site.drawings.joint_dimensions import (
    CHARACTER,
    DimensionMark,
    arc_top,
    draw_dimensions,
    equal_to_another,
    side_of,
)
from beadwright_site.drawings.paper import XY, Box, Field, Paper, box_of, fit

WIDTH, HEIGHT = 184.0, 136.0
"""The paper [px]."""

SIDE_BARE, TOP_BARE, TOP_WITH_TEXT = 8.0, 8.0, 27.0
SIDE_LINE = 16.0
"""Margins without and with a dimension on that side; beside the part its text takes its length
[px]."""

LEAST_LEG, LEAST_FACE = 13.0, 24.0
"""A fillet's leg and a groove's face are drawn no smaller [px]: on thick plate the drawing becomes
a detail, the plate runs off the paper, and what runs off is not dimensioned."""


@dataclass(frozen=True, slots=True)
class JointDrawing:
    """A joint on paper.

    Attributes:
        width: Of the paper [px].
        height: Of the paper [px].
        plates: Outlines as SVG points.
        welds: Weld metal by side, first side first, as SVG points.
        backing: Outline as SVG points, or empty.
        marks: Dimensions.
    """

    width: float
    height: float
    plates: tuple[str, ...]
    welds: tuple[str, ...]
    backing: str
    marks: tuple[DimensionMark, ...]


def draw_joint(shape: JointShape, write: Callable[[Dimension], str]) -> JointDrawing:
    """Return a joint fitted to the paper, one scale both ways.

    Args:
        shape: The joint [m].
        write: Gives a dimension its text.
    """
    weld = [*_corners(shape)]
    plates = [point for plate in (*shape.plates, shape.backing) for point in plate]
    box = box_of([*plates, *weld])
    dimensions = [d for d in shape.dimensions if d.value_m > 0 and not equal_to_another(shape, d)]
    texts: dict[str, int] = {}
    for dimension in dimensions:
        side = side_of(dimension, box)
        texts[side] = max(texts.get(side, 0), len(write(dimension)))
    if shape.angles:
        texts.setdefault("above", 3)
    paper = _fit(shape, box, box_of(weld), _field(texts))
    return JointDrawing(
        WIDTH,
        HEIGHT,
        tuple(paper.points(plate, 2) for plate in shape.plates),
        tuple(paper.points(region.outline, 2) for region in shape.regions),
        paper.points(shape.backing, 2),
        draw_dimensions(dimensions, shape.angles, paper, box, (WIDTH, HEIGHT), write),
    )


def _corners(shape: JointShape) -> list[XY]:
    """What must be seen whole: the weld, and where the angles are written [m]."""
    outlines = [point for region in shape.regions for point in region.outline]
    return [*outlines, *map(arc_top, shape.angles)]


def _field(texts: Mapping[str, int]) -> Field:
    """The room left for the joint, from the longest text of a dimension on each side."""
    left, right = (
        SIDE_LINE + CHARACTER * texts[side] if side in texts else SIDE_BARE
        for side in ("left", "right")
    )
    top, bottom = (TOP_WITH_TEXT if side in texts else TOP_BARE for side in ("above", "below"))
    return Field(left, top, WIDTH - right, HEIGHT - bottom)


def _fit(shape: JointShape, box: Box, weld: Box, field: Field) -> Paper:
    """The whole joint, or a detail with the weld in the middle if that would be too small."""
    scale = field.largest_scale(box)
    fillet = shape.kind in FILLETS and shape.leg_m > 0
    least = LEAST_LEG / shape.leg_m if fillet else LEAST_FACE / shape.regions[0].face_m
    least = min(least, (field.bottom - field.top) / weld.height)
    if scale < least:
        return fit(weld.middle, field, least)
    return fit(box.middle, field, scale)
