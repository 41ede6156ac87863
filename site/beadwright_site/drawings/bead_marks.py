"""A bead as drawn: its outlines, its shade by its turn, its number where it can be read."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from beadwright.passes.pass_beads import Bead
from beadwright_site.drawings.paper import XY, Paper, box_of, points_text, px

STEPS = 6
"""Steps of shade from the first bead to the last."""

LARGEST_NUMBER, LEAST_NUMBER, CHOSEN_NUMBER = 19.0, 9.0, 12.0
"""Height of a bead's number: at most; below this it is left out; of the bead looked at at least
[px]."""

DIGIT, FILLED, DROP = 0.56, 0.8, 0.35
"""Over a number's height: width of a digit, how much of the bead's box it fills at most, its
baseline under the bead's middle [-]."""


@dataclass(frozen=True, slots=True)
class BeadMark:
    """A bead as drawn.

    Attributes:
        number: Its number.
        points: Its outlines as SVG points.
        x: Middle of its number [px].
        y: The number's baseline [px].
        size: Height of the number; zero where it would not be read [px].
        step: Its shade, by its place in the order: 0 for the first, ``STEPS`` - 1 for the last.
        lost: True if its number lies where a back gouge has put the other side's beads.
    """

    number: int
    points: tuple[str, ...]
    x: float
    y: float
    size: float
    step: int
    lost: bool


def mark_bead(bead: Bead, paper: Paper, beads: int, over: Sequence[XY] = ()) -> BeadMark:
    """Return a bead as drawn.

    Args:
        bead: The bead.
        paper: Where the joint lies.
        beads: How many there are in all.
        over: Metal of the other side that is seen instead of it, in the joint; empty for none.
    """
    outlines = [[*map(paper.at, outline)] for outline in bead.slot.outlines]
    x, y = _middle(outlines[0])
    box = box_of(outlines[0])
    digits = len(str(bead.number))
    size = min(LARGEST_NUMBER, FILLED * box.height, FILLED * box.width / (DIGIT * digits))
    size = px(size) if size >= LEAST_NUMBER else 0.0
    step = round((STEPS - 1) * (bead.number - 1) / (beads - 1)) if beads > 1 else STEPS - 1
    return BeadMark(
        bead.number,
        tuple(map(points_text, outlines)),
        px(x),
        px(y + DROP * (size or CHOSEN_NUMBER)),
        size,
        step,
        inside((x, y), [*map(paper.at, over)]),
    )


def inside(point: XY, outline: Sequence[XY]) -> bool:
    """Return whether a point lies in an outline: a ray from it to the right crosses it oddly.

    Args:
        point: The point.
        outline: Corners in order; none for nothing.
    """
    crossings = 0
    for (x0, y0), (x1, y1) in zip(outline, (*outline[1:], *outline[:1]), strict=True):
        if (y0 > point[1]) != (y1 > point[1]):
            crossings += x0 + (point[1] - y0) * (x1 - x0) / (y1 - y0) > point[0]
    return crossings % 2 == 1


def _middle(points: Sequence[XY]) -> XY:
    """Centroid of a polygon."""
    twice = cx = cy = 0.0
    before = points[-1]
    for point in points:
        cross = before[0] * point[1] - point[0] * before[1]
        twice += cross
        cx += cross * (before[0] + point[0])
        cy += cross * (before[1] + point[1])
        before = point
    return cx / (3 * twice), cy / (3 * twice)
