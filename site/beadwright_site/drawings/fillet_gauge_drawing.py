"""A fillet as measured over the one asked for, to one scale, with what the gauges read."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import cos, hypot, radians, sin

from beadwright.inspection.inspected import Inspected
from beadwright.joint.joints import region
from beadwright_site.drawings.marks import Label, label
from beadwright_site.drawings.paper import XY, Field, Paper, box_of, fit, px

WIDTH, HEIGHT = 344.0, 236.0
"""The paper [px]."""

ROOM = Field(96.0, 34.0, WIDTH - 92.0, HEIGHT - 56.0)
"""Where the weld lies; around it stand the readings [px]."""

AWAY, TICK, BESIDE = 14.0, 5.0, 9.0
"""Line of a reading off the leg, half its tick, text off the line [px]."""

ASCENT, LINE = 6.0, 21.0
"""Half the height of a figure over its baseline; from one line of text to the next [px]."""


@dataclass(frozen=True, slots=True)
class GaugeDrawing:
    """The picture.

    Attributes:
        width: Of the paper [px].
        height: Of the paper [px].
        plates: Outlines of the plates as SVG points.
        found: The weld as measured as SVG points, or empty.
        wanted: The weld asked for, flat, as SVG points.
        lines: Lines of the readings as SVG path data.
        labels: The readings: what was measured, and what is asked for.
    """

    width: float
    height: float
    plates: tuple[str, ...]
    found: str
    wanted: str
    lines: str
    labels: tuple[Label, ...]


def draw_gauges(weld: Inspected, write: Callable[[float], str]) -> GaugeDrawing:
    """Return the fillet as measured over the one asked for.

    Args:
        weld: A fillet.
        write: Writes a length without its unit.
    """
    shape, turn = weld.shape, radians(weld.job.skew_deg)
    up = (cos(turn), sin(turn))
    wanted = ((0.0, 0.0), (shape.leg_m, 0.0), (up[0] * shape.leg2_m, up[1] * shape.leg2_m))
    found = _found(weld, up)
    box = box_of([*wanted, *found])
    paper = fit(box.middle, ROOM, ROOM.largest_scale(box))
    first, second = weld.legs_found
    longest = max(x for x, _ in (*wanted, *found))
    tallest = max(shape.leg2_m, 0.0 if weld.fillet is None else weld.fillet.leg2_m)
    drawn = (
        _reading(paper, (0.0, 0.0), (first or shape.leg_m, 0.0), (0.0, -1.0)),
        _reading(
            paper, (0.0, 0.0),
            (up[0] * (second or shape.leg2_m), up[1] * (second or shape.leg2_m)),
            (-up[1], up[0]),
        ),
    )  # fmt: skip
    foot, top = paper.at((longest / 2, 0.0)), paper.at((up[0] * tallest / 2, up[1] * tallest / 2))
    throat_line, throat = _throat(weld, paper, write)
    return GaugeDrawing(
        WIDTH,
        HEIGHT,
        tuple(paper.points(plate) for plate in shape.plates),
        paper.points(found),
        paper.points(wanted),
        "".join((*drawn, throat_line)),
        (
            label(foot[0], foot[1] + AWAY + BESIDE + 2 * ASCENT, "middle",
                  " ".join(_both(first, shape.leg_m, write))),
            *_stacked(
                (top[0] - up[1] * (AWAY + BESIDE), top[1] - up[0] * (AWAY + BESIDE) + ASCENT),
                "end", _both(second, shape.leg2_m, write),
            ),
            *throat,
        ),
    )  # fmt: skip


def _found(weld: Inspected, up: XY) -> tuple[XY, ...]:
    """Outline of the weld as measured; none without a leg."""
    fillet = weld.fillet
    if fillet is None:
        return ()
    foot, top = (fillet.leg_m, 0.0), (up[0] * fillet.leg2_m, up[1] * fillet.leg2_m)
    filled = (top, (0.0, 0.0), foot)
    return region("first", filled, foot, top, (0.0, 0.0), fillet.crown_m or 0.0).outline


def _both(found: float | None, wanted: float, write: Callable[[float], str]) -> tuple[str, ...]:
    """What was measured, and in brackets what is asked for."""
    return (f"({write(wanted)})",) if found is None else (write(found), f"({write(wanted)})")


def _stacked(place: XY, anchor: str, texts: tuple[str, ...]) -> tuple[Label, ...]:
    """Texts one under the other, the first at a place [px]."""
    return tuple(
        label(place[0], place[1] + LINE * at, anchor, text) for at, text in enumerate(texts)
    )


def _reading(paper: Paper, start: XY, end: XY, out: XY) -> str:
    """The line of a reading beside a leg, outside the weld, square ticks at its ends."""
    (x0, y0), (x1, y1) = paper.at(start), paper.at(end)
    dx, dy = out[0], -out[1]
    line = f"M{px(x0 + AWAY * dx)} {px(y0 + AWAY * dy)}L{px(x1 + AWAY * dx)} {px(y1 + AWAY * dy)}"
    near, far = AWAY - TICK, AWAY + TICK
    ticks = (
        f"M{px(x + near * dx)} {px(y + near * dy)}L{px(x + far * dx)} {px(y + far * dy)}"
        for x, y in ((x0, y0), (x1, y1))
    )
    return line + "".join(ticks)


def _throat(
    weld: Inspected, paper: Paper, write: Callable[[float], str]
) -> tuple[str, tuple[Label, ...]]:
    """The throat from the root square to the face, and what is written at its end."""
    fillet, shape = weld.fillet, weld.shape
    legs = (shape.leg_m, shape.leg2_m) if fillet is None else (fillet.leg_m, fillet.leg2_m)
    turn = radians(weld.job.skew_deg)
    ax, ay, bx, by = legs[0], 0.0, legs[1] * cos(turn), legs[1] * sin(turn)
    long = hypot(bx - ax, by - ay)
    out = ((by - ay) / long, (ax - bx) / long)  # square to the face, away from the root
    deep = out[0] * ax + out[1] * ay
    root, face = paper.at((0.0, 0.0)), paper.at((out[0] * deep, out[1] * deep))
    crown = 0.0 if fillet is None else max(fillet.crown_m or 0.0, 0.0)
    beyond = BESIDE + crown * paper.scale
    x, y = face[0] + out[0] * beyond, face[1] - out[1] * beyond
    line = f"M{px(root[0])} {px(root[1])}L{px(face[0])} {px(face[1])}"
    texts = _both(weld.throat_found_m, weld.throat_wanted_m, write)
    return line, _stacked((x, y - LINE / 2), "start", texts)
