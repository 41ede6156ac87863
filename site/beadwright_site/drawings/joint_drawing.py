"""A joint as a shop print: fitted to the paper, to one scale, dimensioned.

Pure arithmetic. The template only writes down what this places, so the frozen picture and the
phone's are the same.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from math import cos, radians, sin

from beadwright.joint.joints import BUTTS, FILLETS, XY, Angle, Dimension, JointShape, Polygon

WIDTH, HEIGHT = 184.0, 136.0
"""The paper [px]."""

SIDE_BARE, TOP_BARE, TOP_WITH_TEXT = 8.0, 8.0, 27.0
SIDE_LINE, CHARACTER = 16.0, 7.0
"""Margins without and with a dimension on that side; beside the part its text takes its length
[px]."""

LEAST_LEG, LEAST_FACE = 13.0, 24.0
"""A fillet's leg and a groove's face are drawn no smaller [px]: on thick plate the drawing becomes
a detail, the plate runs off the paper, and what runs off is not dimensioned."""

ASCENT = 10.0
"""Height of a text over its baseline [px]."""

OFFSET, OVERSHOOT, TICK, TEXT_GAP = 10.0, 3.0, 3.0, 5.0
"""Dimension line off the part, extension line past it, half a tick, text off the line [px]."""


@dataclass(frozen=True, slots=True)
class Mark:
    """A dimension as drawn.

    Attributes:
        name: What it dimensions.
        path: Extension lines, dimension line and ticks, as SVG path data.
        x: Where its text stands [px].
        y: Its baseline [px].
        anchor: SVG text-anchor.
        text: What is written.
    """

    name: str
    path: str
    x: float
    y: float
    anchor: str
    text: str


@dataclass(frozen=True, slots=True)
class JointDrawing:
    """A joint on paper.

    Attributes:
        width: Of the paper [px].
        height: Of the paper [px].
        scale: Pixels a metre [px/m].
        plates: Outlines as SVG points.
        welds: Weld metal by side, first side first, as SVG points.
        backing: Outline as SVG points, or empty.
        marks: Dimensions.
        whole: False if it is a detail: plate runs off the paper.
    """

    width: float
    height: float
    scale: float
    plates: tuple[str, ...]
    welds: tuple[str, ...]
    backing: str
    marks: tuple[Mark, ...]
    whole: bool

    @property
    def weld(self) -> str:
        """The first side's outline."""
        return self.welds[0]


@dataclass(frozen=True, slots=True)
class _Box:
    left: float
    bottom: float
    right: float
    top: float


@dataclass(frozen=True, slots=True)
class _Paper:
    """Where a point of the joint lies on the paper."""

    scale: float
    x0: float
    y0: float

    def at(self, point: XY) -> XY:
        return self.x0 + point[0] * self.scale, self.y0 - point[1] * self.scale

    def points(self, polygon: Polygon) -> str:
        return " ".join(f"{x:.2f},{y:.2f}" for x, y in map(self.at, polygon))


def _box(polygons: tuple[Polygon, ...]) -> _Box:
    xs = [x for polygon in polygons for x, _ in polygon]
    ys = [y for polygon in polygons for _, y in polygon]
    return _Box(min(xs), min(ys), max(xs), max(ys))


def _side(dimension: Dimension, box: _Box) -> str:
    """On which side of the part a dimension stands: its own outside."""
    (x0, y0), (x1, y1) = dimension.start, dimension.end
    if x0 == x1 or dimension.name == "reinforcement":
        return "left" if (x0 + x1) / 2 < (box.left + box.right) / 2 - 1e-12 else "right"
    return "below" if (y0 + y1) / 2 < (box.bottom + box.top) / 2 - 1e-12 else "above"


def _fit(shape: JointShape, box: _Box, texts: Mapping[str, int]) -> tuple[_Paper, bool]:
    left, right = (
        SIDE_LINE + CHARACTER * texts[side] if side in texts else SIDE_BARE
        for side in ("left", "right")
    )
    top, bottom = (TOP_WITH_TEXT if side in texts else TOP_BARE for side in ("above", "below"))
    room = WIDTH - left - right, HEIGHT - top - bottom
    scale = min(room[0] / (box.right - box.left), room[1] / (box.top - box.bottom))
    arcs = tuple((_arc_top(angle),) for angle in shape.angles)
    weld = _box((*(r.outline for r in shape.regions), *arcs))
    fillet = shape.kind in FILLETS and shape.leg_m > 0
    least = LEAST_LEG / shape.leg_m if fillet else LEAST_FACE / shape.regions[0].face_m
    least = min(least, room[1] / (weld.top - weld.bottom))
    middle = box
    if scale < least:  # a detail, with the weld in the middle
        scale, middle = least, weld
    centre = (middle.left + middle.right) / 2, (middle.bottom + middle.top) / 2
    x0 = left + room[0] / 2 - centre[0] * scale
    y0 = top + room[1] / 2 + centre[1] * scale
    return _Paper(scale, x0, y0), middle is box


def _upright(dimension: Dimension, paper: _Paper, side: str, text: str) -> Mark:
    """A dimension whose line stands upright, left or right of the part."""
    (x, y0), (_, y1) = paper.at(dimension.start), paper.at(dimension.end)
    out = -1 if side == "left" else 1
    line = x + out * OFFSET
    # A leg is measured to the toe on the other plate, so its upper extension starts there.
    toe = paper.at((0.0, 0.0))[0] if dimension.name == "leg" else x
    past = line + out * OVERSHOOT
    path = (
        f"M{x + out * 2:.1f} {y0:.1f}H{past:.1f}M{toe + out * 2:.1f} {y1:.1f}H{past:.1f}"
        f"M{line:.1f} {y0:.1f}V{y1:.1f}{_ticks((line, y0), (line, y1))}"
    )
    anchor = "end" if side == "left" else "start"
    return Mark(dimension.name, path, line + out * TEXT_GAP, (y0 + y1) / 2 + 4.5, anchor, text)


def _lying(dimension: Dimension, paper: _Paper, side: str, text: str) -> Mark:
    """A dimension whose line lies above or below the part."""
    (x0, y), (x1, _) = paper.at(dimension.start), paper.at(dimension.end)
    out = 1 if side == "below" else -1
    line = y + out * OFFSET
    past = line + out * OVERSHOOT
    path = (
        f"M{x0:.1f} {y + out * 2:.1f}V{past:.1f}M{x1:.1f} {y + out * 2:.1f}V{past:.1f}"
        f"M{x0:.1f} {line:.1f}H{x1:.1f}{_ticks((x0, line), (x1, line))}"
    )
    baseline = line + 15.0 if side == "below" else line - TEXT_GAP
    return Mark(dimension.name, path, (x0 + x1) / 2, baseline, "middle", text)


def _ticks(*ends: XY) -> str:
    return "".join(
        f"M{x - TICK:.1f} {y + TICK:.1f}l{2 * TICK:.1f} {-2 * TICK:.1f}" for x, y in ends
    )


def _on_paper(point: XY) -> bool:
    return 0 <= point[0] <= WIDTH and 0 <= point[1] <= HEIGHT


def _marks(
    dimensions: tuple[Dimension, ...],
    paper: _Paper,
    box: _Box,
    write: Callable[[Dimension], str],
) -> Iterator[Mark]:
    for dimension in dimensions:
        if _on_paper(paper.at(dimension.start)) and _on_paper(paper.at(dimension.end)):
            side = _side(dimension, box)
            draw = _upright if side in ("left", "right") else _lying
            yield draw(dimension, paper, side, write(dimension))


def _arc_top(angle: Angle) -> XY:
    """Where the arc's middle stands: its text is written over it [m]."""
    turn = radians((angle.from_deg + angle.to_deg) / 2)
    return (
        angle.vertex[0] + angle.radius_m * cos(turn),
        angle.vertex[1] + angle.radius_m * sin(turn),
    )


def _angle_mark(angle: Angle, paper: _Paper) -> Mark:
    radius = angle.radius_m * paper.scale
    ends: list[XY] = []
    for turn in (radians(angle.from_deg), radians(angle.to_deg)):
        x, y = angle.vertex
        ends.append(paper.at((x + angle.radius_m * cos(turn), y + angle.radius_m * sin(turn))))
    (x0, y0), (x1, y1) = ends
    path = f"M{x0:.1f} {y0:.1f}A{radius:.1f} {radius:.1f} 0 0 0 {x1:.1f} {y1:.1f}"
    x, y = paper.at(_arc_top(angle))
    middle = (angle.from_deg + angle.to_deg) / 2
    anchor = "start" if middle < 80 else "middle"
    return Mark(angle.name, path, x + (4 if anchor == "start" else 0), y - 3,
                anchor, f"{angle.value_deg:g}°")  # fmt: skip


def _said(shape: JointShape, dimension: Dimension) -> bool:
    """True if an equal one says it already: the other leg, the plate across the gap."""
    if dimension.name == "leg2":
        return shape.leg2_m in (0.0, shape.leg_m)
    if dimension.name == "plate2" and shape.kind in BUTTS:
        return any(d.name == "plate" and d.value_m == dimension.value_m for d in shape.dimensions)
    return False


def _readable(mark: Mark) -> bool:
    """True if its text stands on the paper."""
    wide = CHARACTER * len(mark.text) - 1
    share = {"start": 0.0, "middle": 0.5, "end": 1.0}[mark.anchor]
    beside = mark.x - share * wide >= -1 and mark.x + (1 - share) * wide <= WIDTH + 1
    return beside and ASCENT <= mark.y <= HEIGHT


def draw_joint(shape: JointShape, write: Callable[[Dimension], str]) -> JointDrawing:
    """Return a joint fitted to the paper, one scale both ways.

    Args:
        shape: The joint [m].
        write: Gives a dimension its text.
    """
    outlines = tuple(r.outline for r in shape.regions)
    arcs = tuple((_arc_top(angle),) for angle in shape.angles)
    box = _box((*shape.plates, *outlines, *((shape.backing,) if shape.backing else ()), *arcs))
    dimensions = tuple(d for d in shape.dimensions if d.value_m > 0 and not _said(shape, d))
    texts: dict[str, int] = {}
    for dimension in dimensions:
        side = _side(dimension, box)
        texts[side] = max(texts.get(side, 0), len(write(dimension)))
    if shape.angles:
        texts.setdefault("above", 3)
    paper, whole = _fit(shape, box, texts)
    marks = [*_marks(dimensions, paper, box, write)]
    marks += [_angle_mark(a, paper) for a in shape.angles if _on_paper(paper.at(_arc_top(a)))]
    marks = [mark for mark in marks if _readable(mark)]
    return JointDrawing(
        WIDTH,
        HEIGHT,
        paper.scale,
        tuple(paper.points(plate) for plate in shape.plates),
        tuple(paper.points(outline) for outline in outlines),
        paper.points(shape.backing) if shape.backing else "",
        tuple(marks),
        whole,
    )
