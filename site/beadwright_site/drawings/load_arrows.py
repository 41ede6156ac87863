"""The load on a weld group as drawn: an arrow in the plane, a ring out of it, an arc that turns."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from math import cos, hypot, pi, sin

from beadwright.strength.strength_answer import StrengthAnswer
from beadwright_site.drawings.marks import Arrow, Label, Ring, arrow, label, ring
from beadwright_site.drawings.paper import XY, Paper

LENGTH, HEAD, RADIUS = 40.0, 11.0, 9.0
"""The load's arrow, its head, and the ring of a load out of the plane [px]."""

EDGE, OVER, UNDER, TOP_LINE = 12.0, 30.0, 16.0, 16.0
"""The load stands so far inside the paper beside, above and below; baseline of a text on top [px].
"""

WIDEST_LETTER = 8.4
"""A letter of the load's text takes no more [px]."""

TURN_RADIUS, TURN_HEAD, TURN_FROM, TURN_BY = 20.0, 9.0, -0.6, 1.3 * pi
"""A moment's arc: radius and head [px], where it begins and how far it runs [rad]."""


@dataclass(frozen=True, slots=True)
class Load:
    """A load as drawn: the force in the plane, the force out of it, and what is written."""

    arrow: Arrow | None
    ring: Ring | None
    text: Label | None


def force_in_plane(found: StrengthAnswer) -> float:
    """Return the load's force in the plane of the weld, zero if it is as good as none [N].

    Args:
        found: The answer.
    """
    load = found.task.load
    size = abs(load.px) + abs(load.py) + abs(load.pz)
    plane = hypot(load.px, load.py)
    return plane if plane > 1e-6 * size else 0.0


def draw_load(
    found: StrengthAnswer, paper: Paper, size: XY, write: Callable[[float, str], str]
) -> Load:
    """Return the load where it acts, with its text beside it, or on top if there is no room.

    Args:
        found: The answer.
        paper: Where the group lies.
        size: Of the paper [px].
        write: Writes a value of a measure with its unit.
    """
    task, plane = found.task, force_in_plane(found)
    load, (width, height) = task.load, size
    on_top = width / 2, TOP_LINE, "middle"
    if task.per_length_n_m is not None:
        each = write(task.per_length_n_m, "force_per_length")
        return Load(None, None, label(*on_top, f"{each} all along"))
    x, y = paper.at((task.at[0], task.at[1]))
    x, y = min(max(x, EDGE), width - EDGE), min(max(y, OVER), height - UNDER)
    drawn = None
    if plane:  # its tail stands away from the weld, its point where the force acts
        tail = x - LENGTH * load.px / plane, y + LENGTH * load.py / plane
        drawn = arrow(tail, (x, y), HEAD)
    out = ring((x, y), RADIUS, pulls=load.pz > 0) if load.pz else None
    text = ", ".join(_words(found, write))
    side = "end" if x > 0.6 * width else "start"
    tx = x + (-EDGE if side == "end" else EDGE)
    ty = y - 0.55 * LENGTH if not plane or load.py <= 0 else y + 0.75 * LENGTH
    wide = WIDEST_LETTER * len(text)
    left = tx - wide if side == "end" else tx
    if 0 <= left <= width - (0 if side == "end" else wide):
        return Load(drawn, out, label(tx, max(ty, 14.0), side, text))
    return Load(drawn, out, label(*on_top, text))


def _words(found: StrengthAnswer, write: Callable[[float, str], str]) -> Iterator[str]:
    """What is written at the load: its size and its arm, or what turns and bends."""
    load, plane, out = found.task.load, force_in_plane(found), found.task.at[2]
    size = hypot(plane, load.pz)
    if size:
        yield write(size, "force")
        if abs(out) > 1e-9:
            yield f"{write(abs(out), 'length')} out"
    if load.mz and not plane:
        yield write(abs(load.mz), "moment")
    elif (load.mx or load.my) and not size:
        yield f"bends {write(hypot(load.mx, load.my), 'moment')}"


def draw_moment(found: StrengthAnswer, centroid: XY) -> Arrow | None:
    """Return the moment in the plane as an arc about the centroid, or None if a force goes with it.

    Args:
        found: The answer.
        centroid: Where the centroid lies [px].
    """
    load = found.task.load
    if not load.mz or force_in_plane(found):
        return None
    (cx, cy), way = centroid, 1.0 if load.mz > 0 else -1.0
    start, end = way * TURN_FROM, way * (TURN_BY + TURN_FROM)
    r = TURN_RADIUS
    x0, y0 = cx + r * cos(start), cy - r * sin(start)
    x1, y1 = cx + r * cos(end), cy - r * sin(end)
    dx, dy = 5 * sin(end) * way, 5 * cos(end) * way  # half the head, along the arc
    tip = arrow((x1 + dx, y1 + dy), (x1 - dx, y1 - dy), TURN_HEAD)
    sweep = 0 if way > 0 else 1
    return Arrow(f"M{x0:.1f} {y0:.1f}A{r} {r} 0 1 {sweep} {x1:.1f} {y1:.1f}", tip.head)
