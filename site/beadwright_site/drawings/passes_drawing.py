"""A pass plan as a shop print: the joint to scale, every bead in its place and numbered.

Pure arithmetic. The template only writes down what this places, so the frozen picture and the
phone's are the same. The picture stands as the work hangs: a butt welded horizontally has its
lower plate at the bottom, overhead work is seen from below.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from math import cos, radians, sin

from beadwright.joint.joints import BUTTS, XY, Dimension
from beadwright.passes.pass_beads import Bead, PassPlan
from beadwright.process.positions import Orientation

WIDTH, LOWEST = 362.0, 190.0
HIGH: tuple[tuple[int, float], ...] = ((60, 440.0), (13, 330.0), (0, 272.0))
"""The paper: width, least height, and how high it may get from so many beads on [px]. Few beads
leave their settings on the first screen; many need the room to be told apart."""

EDGE, UNDER, OVER = 8.0, 36.0, 40.0
"""Margin, room under a butt for a dimension, room over it for the torch [px]."""

AROUND, AROUND_BUTT, AROUND_MANY = 0.36, 0.24, 0.1
"""How much of the plates is shown around the weld, as a share of the weld's size: beside fillets,
butts, and a high stack of beads [-]."""

STEPS = 6
"""Steps of shade from the first bead to the last."""

LARGEST_NUMBER, LEAST_NUMBER, CHOSEN_NUMBER = 19.0, 9.0, 12.0
"""Height of a bead's number: at most; below this it is left out; of the bead looked at at least
[px]."""

DIGIT = 0.56
"""Width of a digit over its height [-]."""

LONGEST_TIP = 15.0
"""The wire's head is no longer [px]."""

OFFSET, TICK, INSET = 15.0, 3.0, 24.0
"""Dimension line off the weld, half a tick, dimension of a plate in from the paper's edge [px]."""

_TURNS: dict[Orientation, int] = {"horizontal": 1, "overhead": 2}
"""Quarter turns clockwise a butt is drawn with; other joints turn only overhead."""


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
    """

    number: int
    points: tuple[str, ...]
    x: float
    y: float
    size: float
    step: int


@dataclass(frozen=True, slots=True)
class Label:
    """A word on the print."""

    x: float
    y: float
    anchor: str
    text: str


@dataclass(frozen=True, slots=True)
class PassDrawing:
    """A pass plan on paper.

    Attributes:
        width: Of the paper [px].
        height: Of the paper [px].
        scale: Pixels a metre [px/m].
        plates: Outlines as SVG points.
        backing: Outline as SVG points, or empty.
        beads: Every bead, in welding order.
        aim: Where the wire points [px].
        torch: The torch's centre line, from the aim out of the paper, as SVG path data.
        tip: Head of the wire at the aim, as SVG points.
        dimensions: Dimension lines, as SVG path data.
        labels: What is written at them.
        turned: Quarter turns clockwise from how the joint is kept.
    """

    width: float
    height: float
    scale: float
    plates: tuple[str, ...]
    backing: str
    beads: tuple[BeadMark, ...]
    aim: XY
    torch: str
    tip: str
    dimensions: str
    labels: tuple[Label, ...]
    turned: int


@dataclass(frozen=True, slots=True)
class _Box:
    left: float
    bottom: float
    right: float
    top: float

    @property
    def size(self) -> tuple[float, float]:
        return self.right - self.left, self.top - self.bottom


@dataclass(frozen=True, slots=True)
class _Paper:
    """Where a point of the joint lies on the paper."""

    turns: int
    scale: float
    x0: float
    y0: float
    height: float

    def at(self, point: XY) -> XY:
        x, y = _turned(point, self.turns)
        return self.x0 + x * self.scale, self.y0 - y * self.scale

    def points(self, polygon: Sequence[XY]) -> str:
        return " ".join(f"{x:.1f},{y:.1f}" for x, y in map(self.at, polygon))


def _turned(point: XY, turns: int) -> XY:
    x, y = point
    for _ in range(turns):
        x, y = y, -x
    return x, y


def turns_of(found: PassPlan) -> int:
    """Return the quarter turns clockwise that bring a joint to how its work hangs.

    Args:
        found: The plan.
    """
    turns = _TURNS.get(found.job.position.orientation, 0)
    return turns if turns != 1 or found.job.joint in BUTTS else 0


def draw_passes(found: PassPlan, at: int, write: Callable[[Dimension], str]) -> PassDrawing:
    """Return a plan fitted to the paper, one scale both ways.

    Args:
        found: The plan.
        at: Number of the bead the torch is drawn on, from 1.
        write: Gives a dimension its text.
    """
    shape, turns = found.shape, turns_of(found)
    weld = _box([r.outline for r in shape.regions], turns)
    paper = _fit(found, weld, turns)
    bead = found.beads[at - 1]
    aim = paper.at(bead.slot.aim)
    way = radians(bead.torch_deg - 90 * turns)
    far = WIDTH + HIGH[0][1]
    torch = f"M{aim[0]:.1f} {aim[1]:.1f}l{far * cos(way):.1f} {-far * sin(way):.1f}"
    paths: list[str] = []
    labels: list[Label] = []
    for dimension in _said(found):
        placed = _dimension(dimension, paper, weld, write(dimension))
        if placed is not None:
            paths.append(placed[0])
            labels.append(placed[1])
    return PassDrawing(
        WIDTH,
        round(paper.height, 1),
        paper.scale,
        tuple(paper.points(plate) for plate in shape.plates),
        paper.points(shape.backing) if shape.backing else "",
        tuple(_mark(each, paper, len(found.beads)) for each in found.beads),
        (round(aim[0], 1), round(aim[1], 1)),
        torch,
        _tip(aim, way, min(LONGEST_TIP, 0.6 * bead.slot.thickness_m * paper.scale)),
        "".join(paths),
        tuple(labels),
        turns,
    )


def _box(polygons: Sequence[Sequence[XY]], turns: int) -> _Box:
    points = [_turned(point, turns) for polygon in polygons for point in polygon]
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return _Box(min(xs), min(ys), max(xs), max(ys))


def _fit(found: PassPlan, weld: _Box, turns: int) -> _Paper:
    """The weld with some of its plates around it, as large as the paper takes."""
    shape = found.shape
    plates = _box([*shape.plates, *([shape.backing] if shape.backing else [])], turns)
    butt = found.job.joint in BUTTS
    share = AROUND_BUTT if butt else AROUND
    if len(found.beads) >= HIGH[0][0]:
        share = AROUND_MANY
    reach = share * max(weld.size)
    box = _Box(
        min(weld.left, max(plates.left, weld.left - reach)),
        min(weld.bottom, max(plates.bottom, weld.bottom - reach)),
        max(weld.right, min(plates.right, weld.right + reach)),
        max(weld.top, min(plates.top, weld.top + reach)),
    )
    wide, high = box.size
    left, over, right, under = EDGE, EDGE, EDGE, EDGE
    if butt and turns == 1:  # its first face looks to the right
        right = OVER
        left, under = (OVER if len(shape.regions) > 1 else UNDER), EDGE
    elif butt and len(shape.regions) > 1:
        over = under = OVER
    elif butt:
        over, under = (OVER, UNDER) if turns == 0 else (UNDER, OVER)
    most = next(high for beads, high in HIGH if len(found.beads) >= beads)
    scale = min((WIDTH - left - right) / wide, (most - over - under) / high)
    height = max(LOWEST, high * scale + over + under)
    x0 = left + (WIDTH - left - right) / 2 - scale * (box.left + box.right) / 2
    y0 = over + (height - over - under) / 2 + scale * (box.bottom + box.top) / 2
    return _Paper(turns, scale, x0, y0, height)


def _mark(bead: Bead, paper: _Paper, beads: int) -> BeadMark:
    outlines = [[*map(paper.at, outline)] for outline in bead.slot.outlines]
    x, y = _middle(outlines[0])
    xs, ys = [p[0] for p in outlines[0]], [p[1] for p in outlines[0]]
    wide, high = max(xs) - min(xs), max(ys) - min(ys)
    size = min(LARGEST_NUMBER, 0.8 * high, 0.8 * wide / (DIGIT * len(str(bead.number))))
    step = round((STEPS - 1) * (bead.number - 1) / (beads - 1)) if beads > 1 else STEPS - 1
    points = tuple(" ".join(f"{a:.1f},{b:.1f}" for a, b in outline) for outline in outlines)
    size = round(size, 1) if size >= LEAST_NUMBER else 0.0
    return BeadMark(bead.number, points, round(x, 1), round(y + 0.35 * (size or CHOSEN_NUMBER), 1),
                    size, step)  # fmt: skip


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


def _tip(aim: XY, way: float, long: float) -> str:
    """A slim head, its point at the aim."""
    ends = [(aim[0] + long * cos(way + side * 0.25), aim[1] - long * sin(way + side * 0.25))
            for side in (1, -1)]  # fmt: skip
    return " ".join(f"{x:.1f},{y:.1f}" for x, y in (aim, *ends))


def _said(found: PassPlan) -> Iterator[Dimension]:
    """What is dimensioned here: legs, plates, gap; an equal one is not said twice."""
    shape = found.shape
    for each in shape.dimensions:
        twin = "leg" if each.name == "leg2" else "plate" if each.name == "plate2" else ""
        said = twin == "leg" and shape.leg2_m in (0.0, shape.leg_m)
        said = said or (twin == "plate" and found.job.joint in BUTTS and any(
            d.name == "plate" and d.value_m == each.value_m for d in shape.dimensions))  # fmt: skip
        said = said or each.name == "reinforcement"
        said = said or (each.name == "gap" and len(shape.regions) > 1)  # deep in the metal
        if each.value_m > 0 and not said:
            yield each


def _dimension(
    dimension: Dimension, paper: _Paper, weld: _Box, text: str
) -> tuple[str, Label] | None:
    (x0, y0), (x1, y1) = paper.at(dimension.start), paper.at(dimension.end)
    middle = (
        paper.x0 + paper.scale * (weld.left + weld.right) / 2,
        paper.y0 - paper.scale * (weld.bottom + weld.top) / 2,
    )
    plate = dimension.name.startswith("plate")
    upright = abs(x1 - x0) < abs(y1 - y0)
    if plate:
        # What it measures runs off the paper, so it stands in the plate itself.
        along = x0 if upright else y0
        far = WIDTH if upright else paper.height
        inward = 1 if along < middle[0 if upright else 1] else -1
        along = min(max(along + inward * OFFSET, INSET), far - INSET)
    else:
        ends = (x0, x1) if upright else (y0, y1)
        outward = -1 if sum(ends) / 2 < middle[0 if upright else 1] - 0.5 else 1
        along = (min(ends) if outward < 0 else max(ends)) + outward * OFFSET
        inward = outward
    low, high = sorted((y0, y1) if upright else (x0, x1))
    across = paper.height if upright else WIDTH
    far = WIDTH if upright else paper.height
    if low < -0.5 or high > across + 0.5 or high - low < 6 or not 4 < along < far - 4:
        return None
    ticks = "".join(
        f"M{x - TICK:.1f} {y + TICK:.1f}l{2 * TICK:g} {-2 * TICK:g}"
        for x, y in (((along, low), (along, high)) if upright else ((low, along), (high, along)))
    )
    if upright:
        path = f"M{along:.1f} {low:.1f}V{high:.1f}{ticks}{_reach(dimension, paper, along, plate)}"
        label = Label(round(along + inward * 6, 1), round((low + high) / 2 + 5, 1),
                      "start" if inward > 0 else "end", text)  # fmt: skip
    else:
        path = f"M{low:.1f} {along:.1f}H{high:.1f}{ticks}"
        down = 16 if (inward > 0) else -6
        label = Label(round((low + high) / 2, 1), round(along + down, 1), "middle", text)
    return path, label


def _reach(dimension: Dimension, paper: _Paper, along: float, plate: bool) -> str:
    """Extension lines of an upright dimension beside the weld."""
    if plate:
        return ""
    return "".join(
        f"M{along - OFFSET + 3 if along > x else along + OFFSET - 3:.1f} {y:.1f}H{along:.1f}"
        for x, y in map(paper.at, (dimension.start, dimension.end))
    )
