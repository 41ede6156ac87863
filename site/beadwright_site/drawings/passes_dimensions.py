"""The dimensions of a pass plan's print: legs and gap beside the weld, plates in the metal."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from beadwright.joint.joints import Dimension, JointShape
from beadwright_site.drawings.joint_dimensions import equal_to_another
from beadwright_site.drawings.marks import Label, dimension_line, label
from beadwright_site.drawings.paper import XY, Paper, box_of

OFFSET, INSET, CLEAR = 15.0, 24.0, 3.0
"""Dimension line off the weld; a plate's in from the paper's edge; extension line clear of the
weld [px]."""

OUTSIDE, SHORTEST, NEAREST_EDGE = 0.5, 6.0, 4.0
"""A dimension is left out if an end lies so far outside the paper, if its line is shorter, or if
it stands nearer to the paper's edge [px]."""


def draw_dimensions(
    shape: JointShape, paper: Paper, size: XY, write: Callable[[Dimension], str]
) -> tuple[str, tuple[Label, ...]]:
    """Return the dimension lines as SVG path data, and what is written at them.

    Args:
        shape: The joint.
        paper: Where it lies.
        size: Of the paper [px].
        write: Gives a dimension its text.
    """
    weld = box_of(paper.at(point) for region in shape.regions for point in region.outline)
    paths: list[str] = []
    labels: list[Label] = []
    for dimension in _dimensioned(shape):
        placed = _dimension(dimension, paper, size, weld.middle, write(dimension))
        if placed is not None:
            paths.append(placed[0])
            labels.append(placed[1])
    return "".join(paths), tuple(labels)


def _dimensioned(shape: JointShape) -> Iterator[Dimension]:
    """Legs, plates and gap; of equal ones, one."""
    for each in shape.dimensions:
        deep = each.name == "gap" and len(shape.regions) > 1  # inside the metal
        wanted = each.value_m > 0 and not deep and each.name != "reinforcement"
        if wanted and not equal_to_another(shape, each):
            yield each


def _dimension(
    dimension: Dimension, paper: Paper, size: XY, middle: XY, text: str
) -> tuple[str, Label] | None:
    ends = paper.at(dimension.start), paper.at(dimension.end)
    (x0, y0), (x1, y1) = ends
    # ``across`` is the axis the line stands across, ``lengthwise`` the one it runs along.
    across, lengthwise = (0, 1) if abs(x1 - x0) < abs(y1 - y0) else (1, 0)
    places = ends[0][across], ends[1][across]
    plate = dimension.name.startswith("plate")
    if plate:  # what it measures runs off the paper, so it stands in the plate itself
        out = 1 if places[0] < middle[across] else -1
        line = min(max(places[0] + out * OFFSET, INSET), size[across] - INSET)
    else:
        out = -1 if sum(places) / 2 < middle[across] - 0.5 else 1
        line = (min(places) if out < 0 else max(places)) + out * OFFSET
    low, high = sorted(end[lengthwise] for end in ends)
    whole = low >= -OUTSIDE and high <= size[lengthwise] + OUTSIDE
    if not (whole and high - low >= SHORTEST and NEAREST_EDGE < line < size[across] - NEAREST_EDGE):
        return None
    half = (low + high) / 2
    if across == 1:
        at = label(half, line + (16 if out > 0 else -6), "middle", text)
        return dimension_line((low, line), (high, line)), at
    at = label(line + out * 6, half + 5, "start" if out > 0 else "end", text)
    path = dimension_line((line, low), (line, high))
    return path if plate else path + _extensions(ends, line), at


def _extensions(ends: tuple[XY, XY], line: float) -> str:
    """Extension lines of an upright dimension, from beside the weld."""
    reach = OFFSET - CLEAR
    return "".join(
        f"M{line - reach if line > x else line + reach:.1f} {y:.1f}H{line:.1f}" for x, y in ends
    )
