"""A weld group as a shop print: the weld to scale, the load, what each point carries, the worst.

Pure arithmetic; the template only writes down what this places.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from math import atan2, cos, hypot, pi, sin

from beadwright.strength.elastic_line import LineForce
from beadwright.strength.strength_answer import StrengthAnswer
from beadwright.strength.strength_check import point_numbers

WIDTH, HEIGHT = 344.0, 250.0
"""The paper [px]."""

LEFT, TOP, RIGHT, BOTTOM = 98.0, 44.0, 292.0, 206.0
"""Room for the weld; its forces and dimensions stand around it [px]."""

LONGEST_FORCE = 34.0
"""The worst force is drawn this long, the others in proportion [px]."""

LOAD_LENGTH = 40.0
HEAD = 7.0
WIDEST_LETTER = 8.4
"""A letter of the load's text takes no more [px]."""

MOST_ROUND = 12
"""Forces drawn round a circle."""

Write = Callable[[float, str], str]


@dataclass(frozen=True, slots=True)
class Arrow:
    """An arrow: its line and its head."""

    line: str
    head: str


@dataclass(frozen=True, slots=True)
class Ring:
    """A force out of the paper, or into it.

    Attributes:
        x: Middle [px].
        y: Middle [px].
        r: Radius, by size [px].
        pulls: True if it pulls out of the paper.
        cross: Path of the cross of a push.
    """

    x: float
    y: float
    r: float
    pulls: bool
    cross: str


@dataclass(frozen=True, slots=True)
class Text:
    """A word on the print."""

    x: float
    y: float
    anchor: str
    text: str


@dataclass(frozen=True, slots=True)
class GroupDrawing:
    """A weld group on paper.

    Attributes:
        weld: Path of the weld.
        second: Path of the weld on the far side of the plate, or empty.
        circle: Middle and radius of a round weld, or None.
        centroid: Path of the centroid's cross.
        load: Arrow of the force in the plane, or None.
        load_out: Ring of the force out of the plane, or None.
        load_text: What is written at the load.
        turn: Path of the moment in the plane as an arc with its head, or empty.
        forces: What the points carry in the plane.
        rings: What they carry out of it.
        worst: Middle of the point where the weakest link gives way.
        numbers: Number of each point.
        centre: Path of the instantaneous centre's mark, or empty.
        dimensions: Paths of the dimension lines.
        texts: Dimensions and the centre's name.
    """

    weld: str
    second: str
    circle: tuple[float, float, float] | None
    centroid: str
    load: Arrow | None
    load_out: Ring | None
    load_text: Text | None
    turn: Arrow | None
    forces: tuple[Arrow, ...]
    rings: tuple[Ring, ...]
    worst: tuple[float, float]
    numbers: tuple[Text, ...]
    centre: str
    dimensions: str
    texts: tuple[Text, ...]


@dataclass(frozen=True, slots=True)
class _Paper:
    scale: float
    x0: float
    y0: float

    def at(self, x: float, y: float) -> tuple[float, float]:
        return self.x0 + x * self.scale, self.y0 - y * self.scale


def _f(value: float) -> str:
    return f"{value:.1f}"


def _arrow(x0: float, y0: float, x1: float, y1: float, head: float = HEAD) -> Arrow:
    angle = atan2(y1 - y0, x1 - x0)
    wings = [
        (x1 - head * cos(angle + side * 0.42), y1 - head * sin(angle + side * 0.42))
        for side in (1, -1)
    ]
    points = " ".join(f"{_f(x)},{_f(y)}" for x, y in ((x1, y1), *wings))
    back = head * 0.8
    end = x1 - back * cos(angle), y1 - back * sin(angle)
    return Arrow(f"M{_f(x0)} {_f(y0)}L{_f(end[0])} {_f(end[1])}", points)


def _cross(x: float, y: float, r: float) -> str:
    wide = _f(2 * r)
    return f"M{_f(x - r)} {_f(y - r)}l{wide} {wide}M{_f(x - r)} {_f(y + r)}l{wide} -{wide}"


def _ring(x: float, y: float, r: float, *, pulls: bool) -> Ring:
    return Ring(round(x, 1), round(y, 1), round(r, 1), pulls, _cross(x, y, r * 0.7))


def draw_group(found: StrengthAnswer, write: Write) -> GroupDrawing:
    """Return the picture of an answer.

    Args:
        found: The answer.
        write: Writes a value of a measure with its unit.
    """
    task, spread = found.task, found.spread
    paper = _fit(found)
    group, p = task.group, task.properties
    cx, cy = paper.at(p.x, p.y)
    shown = list(_shown_forces(found))
    biggest = max(f.total for f in spread.forces) or 1.0
    worst = spread.forces[found.links[0].point].place
    at_worst = paper.at(worst.x, worst.y)
    circle = None
    if group.radius_m:
        r = group.radius_m
        mx, my = paper.at(r, r)
        circle = round(mx, 1), round(my, 1), round(r * paper.scale, 1)
    arrows = tuple(_force_arrows(paper, shown, biggest))
    rings = tuple(
        _ring(*paper.at(f.place.x, f.place.y), 3 + 7 * abs(f.fz) / biggest, pulls=f.fz > 0)
        for f in shown
        if abs(f.fz) > 0.02 * biggest
    )
    load, load_out, load_text = _load(found, paper, write)
    centre, centre_text = _centre(found, paper)
    dimensions, texts = _dimensions(found, paper, write)
    return GroupDrawing(
        _weld(found, paper, 0.0),
        "" if task.sides == 1 else _weld(found, paper, 7.0),
        circle,
        f"M{_f(cx - 5)} {_f(cy)}H{_f(cx + 5)}M{_f(cx)} {_f(cy - 5)}V{_f(cy + 5)}",
        load,
        load_out,
        load_text,
        _turn(found, cx, cy),
        arrows,
        rings,
        (round(at_worst[0], 1), round(at_worst[1], 1)),
        tuple(_numbers(found, paper)),
        centre,
        dimensions,
        (*texts, *centre_text),
    )


def _fit(found: StrengthAnswer) -> _Paper:
    left, bottom, right, top = found.task.group.outline
    at = found.task.at
    if _plane_force(found):  # keep the load on the paper, within reason
        wide, high = right - left, top - bottom
        reach = 1.2 * max(wide, high)
        left, right = min(left, max(at[0], left - reach)), max(right, min(at[0], right + reach))
        bottom, top = min(bottom, max(at[1], bottom - reach)), max(top, min(at[1], top + reach))
    wide, high = max(right - left, 1e-4), max(top - bottom, 1e-4)
    scale = min((RIGHT - LEFT) / wide, (BOTTOM - TOP) / high)
    x0 = (LEFT + RIGHT) / 2 - scale * (left + right) / 2
    y0 = (TOP + BOTTOM) / 2 + scale * (bottom + top) / 2
    return _Paper(scale, x0, y0)


def _plane_force(found: StrengthAnswer) -> float:
    load = found.task.load
    size = abs(load.px) + abs(load.py) + abs(load.pz)
    plane = hypot(load.px, load.py)
    return plane if plane > 1e-6 * size else 0.0


def _weld(found: StrengthAnswer, paper: _Paper, aside: float) -> str:
    parts: list[str] = []
    for start, end in found.task.group.stretches:
        (x0, y0), (x1, y1) = paper.at(*start), paper.at(*end)
        length = hypot(x1 - x0, y1 - y0) or 1.0
        nx, ny = aside * (y1 - y0) / length, -aside * (x1 - x0) / length
        parts.append(f"M{_f(x0 - nx)} {_f(y0 - ny)}L{_f(x1 - nx)} {_f(y1 - ny)}")
    return "".join(parts)


def _shown_forces(found: StrengthAnswer) -> Iterator[LineForce]:
    forces = found.spread.forces
    if found.task.group.radius_m:
        step = len(forces) // MOST_ROUND
        chosen = {i for i in range(len(forces)) if i % step == 0} | {found.links[0].point}
        yield from (forces[i] for i in sorted(chosen))
        return
    seen: set[int] = set()
    for number, force in zip(point_numbers(forces), forces, strict=True):
        if number not in seen:
            seen.add(number)
            yield force


def _force_arrows(paper: _Paper, forces: list[LineForce], biggest: float) -> Iterator[Arrow]:
    for force in forces:
        size = hypot(force.fx, force.fy)
        if size < 0.02 * biggest:
            continue
        x, y = paper.at(force.place.x, force.place.y)
        long = LONGEST_FORCE / biggest
        yield _arrow(x, y, x + force.fx * long, y - force.fy * long, 6.0)


def _load(
    found: StrengthAnswer, paper: _Paper, write: Write
) -> tuple[Arrow | None, Ring | None, Text | None]:
    task, plane = found.task, _plane_force(found)
    load = task.load
    if task.per_length_n_m is not None:
        text = f"{write(task.per_length_n_m, 'force_per_length')} all along"
        return None, None, Text(WIDTH / 2, 16.0, "middle", text)
    x, y = paper.at(task.at[0], task.at[1])
    x, y = min(max(x, 12.0), WIDTH - 12.0), min(max(y, 30.0), HEIGHT - 16.0)
    arrow = ring = None
    if plane:
        ux, uy = load.px / plane, -load.py / plane
        # The arrow's tail stands away from the weld, its point where the force acts.
        arrow = _arrow(x - ux * LOAD_LENGTH, y - uy * LOAD_LENGTH, x, y, 11.0)
    if load.pz:
        ring = _ring(x, y, 9.0, pulls=load.pz > 0)
    words: list[str] = []
    size = hypot(plane, load.pz)
    if size:
        words.append(write(size, "force"))
        if abs(task.at[2]) > 1e-9:
            words.append(f"{write(abs(task.at[2]), 'length')} out")
    if load.mz and not plane:
        words.append(write(abs(load.mz), "moment"))
    elif (load.mx or load.my) and not size:
        words.append(f"bends {write(hypot(load.mx, load.my), 'moment')}")
    side = "end" if x > WIDTH * 0.6 else "start"
    tx = x + (-12.0 if side == "end" else 12.0)
    ty = y - LOAD_LENGTH * 0.55 if not plane or load.py <= 0 else y + LOAD_LENGTH * 0.75
    text = ", ".join(words)
    wide = WIDEST_LETTER * len(text)
    if not (0 <= (tx - wide if side == "end" else tx) <= WIDTH - (0 if side == "end" else wide)):
        return arrow, ring, Text(WIDTH / 2, 16.0, "middle", text)  # no room beside it: on top
    return arrow, ring, Text(round(tx, 1), round(max(ty, 14.0), 1), side, text)


def _turn(found: StrengthAnswer, cx: float, cy: float) -> Arrow | None:
    load = found.task.load
    if not load.mz or _plane_force(found):
        return None
    r, way = 20.0, 1.0 if load.mz > 0 else -1.0
    start, end = way * -0.6, way * (1.3 * pi - 0.6)
    x0, y0 = cx + r * cos(start), cy - r * sin(start)
    x1, y1 = cx + r * cos(end), cy - r * sin(end)
    sweep = 0 if way > 0 else 1
    tip = _arrow(x1 + 5 * sin(end) * way, y1 + 5 * cos(end) * way,
                 x1 - 5 * sin(end) * way, y1 - 5 * cos(end) * way, 9.0)  # fmt: skip
    return Arrow(f"M{_f(x0)} {_f(y0)}A{r} {r} 0 1 {sweep} {_f(x1)} {_f(y1)}", tip.head)


def _numbers(found: StrengthAnswer, paper: _Paper) -> Iterator[Text]:
    if found.task.group.radius_m:
        return
    p = found.task.properties
    seen: set[int] = set()
    for number, force in zip(point_numbers(found.spread.forces), found.spread.forces, strict=True):
        if number in seen:
            continue
        seen.add(number)
        x, y = paper.at(force.place.x, force.place.y)
        right = force.place.x > p.x + 1e-9
        above = force.place.y > p.y + 1e-9
        yield Text(round(x + (13 if right else -13), 1), round(y + (-7 if above else 17), 1),
                   "start" if right else "end", str(number))  # fmt: skip


def _centre(found: StrengthAnswer, paper: _Paper) -> tuple[str, tuple[Text, ...]]:
    centre = found.spread.centre
    if centre is None:
        return "", ()
    x, y = paper.at(*centre)
    if not (8 < x < WIDTH - 8 and 8 < y < HEIGHT - 8):
        return "", ()
    anchor = "end" if x > WIDTH / 2 else "start"
    at = x - 8 if anchor == "end" else x + 8
    return _cross(x, y, 5.0), (Text(round(at, 1), round(y - 7, 1), anchor, "turns here"),)


def _dimensions(found: StrengthAnswer, paper: _Paper, write: Write) -> tuple[str, tuple[Text, ...]]:
    left, bottom, right, top = found.task.group.outline
    (x0, y0), (x1, y1) = paper.at(left, bottom), paper.at(right, top)
    paths: list[str] = []
    texts: list[Text] = []
    if top - bottom > 1e-6:
        at = max(x0 - 34, 8.0)
        paths.append(f"M{_f(at)} {_f(y0)}V{_f(y1)}M{_f(at - 3)} {_f(y0)}h6M{_f(at - 3)} {_f(y1)}h6")
        room = at > 62
        texts.append(Text(round(at - 6 if room else at + 6, 1), round((y0 + y1) / 2 + 5, 1),
                          "end" if room else "start", write(top - bottom, "length")))  # fmt: skip
    if right - left > 1e-6:
        at = min(y0 + 26, HEIGHT - 18)
        paths.append(f"M{_f(x0)} {_f(at)}H{_f(x1)}M{_f(x0)} {_f(at - 3)}v6M{_f(x1)} {_f(at - 3)}v6")
        texts.append(Text(round((x0 + x1) / 2, 1), round(at + 16, 1), "middle",
                          write(right - left, "length")))  # fmt: skip
    return "".join(paths), tuple(texts)
