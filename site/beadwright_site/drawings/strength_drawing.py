"""A weld group as a shop print: the weld to scale, the load, what each point carries, the worst."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import hypot

from beadwright.strength.strength_answer import StrengthAnswer
from beadwright_site.drawings.load_arrows import Load, draw_load, draw_moment, force_in_plane
from beadwright_site.drawings.marks import Arrow, Label, Ring, cross, dimension_line, label
from beadwright_site.drawings.paper import Box, Field, Paper, fit, px
from beadwright_site.drawings.point_forces import draw_forces, draw_numbers

WIDTH, HEIGHT = 344, 250
"""The paper [px]."""

FIELD = Field(98.0, 44.0, 292.0, 206.0)
"""Room for the weld; its forces and dimensions stand around it [px]."""

FARTHEST_LOAD = 1.2
"""The paper reaches no farther to keep the load on it, as a share of the weld's size [-]."""

LEAST_SIZE_M = 1e-4
"""A line has no width: it is fitted as if it had this [m]."""

FAR_SIDE, CENTROID, CENTRE = 7.0, 5.0, 5.0
"""The far side's weld is drawn so far beside the near one's; half the crosses of the centroid and
of the instantaneous center [px]."""

Write = Callable[[float, str], str]


@dataclass(frozen=True, slots=True)
class GroupDrawing:
    """A weld group on paper.

    Attributes:
        width: Of the paper [px].
        height: Of the paper [px].
        weld: Path of the weld.
        second: Path of the weld on the far side of the plate, or empty.
        circle: Middle and radius of a round weld, or None.
        centroid: Path of the centroid's cross.
        load: What loads it: a force in the plane or out of it, and what is written there.
        turn: The moment in the plane as an arc with its head, or None.
        forces: What the points carry in the plane.
        rings: What they carry out of it.
        worst: Middle of the point where the weakest link gives way.
        numbers: Number of each point.
        center: Path of the instantaneous center's mark, or empty.
        dimensions: Paths of the dimension lines.
        texts: Dimensions and the center's name.
    """

    width: float
    height: float
    weld: str
    second: str
    circle: tuple[float, float, float] | None
    centroid: str
    load: Load
    turn: Arrow | None
    forces: tuple[Arrow, ...]
    rings: tuple[Ring, ...]
    worst: tuple[float, float]
    numbers: tuple[Label, ...]
    center: str
    dimensions: str
    texts: tuple[Label, ...]


def draw_group(found: StrengthAnswer, write: Write) -> GroupDrawing:
    """Return the picture of an answer.

    Args:
        found: The answer.
        write: Writes a value of a measure with its unit.
    """
    task, paper = found.task, _fit(found)
    cx, cy = paper.at((task.properties.x, task.properties.y))
    worst = found.spread.forces[found.ringed.point].place
    worst_x, worst_y = paper.at((worst.x, worst.y))
    round_hole = task.job.is_round  # it is judged as a whole, not point by point
    forces, rings = ((), ()) if round_hole else draw_forces(found, paper)
    center, center_name = _center(found, paper)
    dimensions, texts = _dimensions(found, paper, write)
    return GroupDrawing(
        WIDTH,
        HEIGHT,
        _weld(found, paper, 0.0),
        "" if task.sides == 1 else _weld(found, paper, FAR_SIDE),
        _circle(found, paper),
        f"M{cx - CENTROID:.1f} {cy:.1f}H{cx + CENTROID:.1f}"
        f"M{cx:.1f} {cy - CENTROID:.1f}V{cy + CENTROID:.1f}",
        draw_load(found, paper, (WIDTH, HEIGHT), write),
        draw_moment(found, (cx, cy)),
        forces,
        rings,
        (px(worst_x), px(worst_y)),
        () if round_hole else draw_numbers(found, paper),
        center,
        dimensions,
        (*texts, *center_name),
    )


def _fit(found: StrengthAnswer) -> Paper:
    left, bottom, right, top = found.task.group.outline
    x, y, _ = found.task.at
    if force_in_plane(found):  # keep the load on the paper, within reason
        reach = FARTHEST_LOAD * max(right - left, top - bottom)
        left, right = min(left, max(x, left - reach)), max(right, min(x, right + reach))
        bottom, top = min(bottom, max(y, bottom - reach)), max(top, min(y, top + reach))
    size = max(right - left, LEAST_SIZE_M), max(top - bottom, LEAST_SIZE_M)
    scale = FIELD.largest_scale(Box(0.0, 0.0, *size))
    return fit(Box(left, bottom, right, top).middle, FIELD, scale)


def _weld(found: StrengthAnswer, paper: Paper, aside: float) -> str:
    parts: list[str] = []
    for start, end in found.task.group.stretches:
        (x0, y0), (x1, y1) = paper.at(start), paper.at(end)
        length = hypot(x1 - x0, y1 - y0) or 1.0
        nx, ny = aside * (y1 - y0) / length, -aside * (x1 - x0) / length
        parts.append(f"M{x0 - nx:.1f} {y0 - ny:.1f}L{x1 - nx:.1f} {y1 - ny:.1f}")
    return "".join(parts)


def _circle(found: StrengthAnswer, paper: Paper) -> tuple[float, float, float] | None:
    radius = found.task.group.radius_m
    if not radius:
        return None
    x, y = paper.at((radius, radius))
    return px(x), px(y), px(radius * paper.scale)


def _center(found: StrengthAnswer, paper: Paper) -> tuple[str, tuple[Label, ...]]:
    """The instantaneous center's cross and name, if it lies on the paper."""
    if found.spread.center is None:
        return "", ()
    x, y = paper.at(found.spread.center)
    if not (8 < x < WIDTH - 8 and 8 < y < HEIGHT - 8):
        return "", ()
    anchor = "end" if x > WIDTH / 2 else "start"
    name = label(x - 8 if anchor == "end" else x + 8, y - 7, anchor, "turns here")
    return cross(x, y, CENTRE), (name,)


def _dimensions(found: StrengthAnswer, paper: Paper, write: Write) -> tuple[str, tuple[Label, ...]]:
    """Height on the left and width below, as paths and texts."""
    left, bottom, right, top = found.task.group.outline
    (x0, y0), (x1, y1) = paper.at((left, bottom)), paper.at((right, top))
    paths: list[str] = []
    texts: list[Label] = []
    if top - bottom > 1e-6:
        at = max(x0 - 34, 8.0)
        paths.append(dimension_line((at, y0), (at, y1), "square"))
        room = at > 62
        texts.append(label(at - 6 if room else at + 6, (y0 + y1) / 2 + 5,
                           "end" if room else "start", write(top - bottom, "length")))  # fmt: skip
    if right - left > 1e-6:
        at = min(y0 + 26, HEIGHT - 18)
        paths.append(dimension_line((x0, at), (x1, at), "square"))
        texts.append(label((x0 + x1) / 2, at + 16, "middle", write(right - left, "length")))
    return "".join(paths), tuple(texts)
