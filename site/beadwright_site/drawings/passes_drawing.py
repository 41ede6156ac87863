"""A pass plan as a shop print: the joint to scale, every bead in its place and numbered.

The picture stands as the work hangs: a butt welded horizontally has its lower plate at the bottom,
overhead work is seen from below.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import cos, radians, sin

from beadwright.joint.joints import BUTTS, Dimension
from beadwright.passes.pass_beads import Bead, PassPlan
from beadwright.process.positions import Orientation
from beadwright_site.drawings.bead_marks import BeadMark, mark_bead
from beadwright_site.drawings.marks import Label, wedge
from beadwright_site.drawings.paper import XY, Box, Field, Paper, box_of, fit, px, turned
from beadwright_site.drawings.passes_dimensions import draw_dimensions

WIDTH, LOWEST = 362.0, 190.0
HIGH: tuple[tuple[int, float], ...] = ((60, 440.0), (13, 330.0), (0, 272.0))
"""The paper: width, least height, and how high it may get from so many beads on [px]. Few beads
leave their settings on the first screen; many need the room to be told apart."""

EDGE, UNDER, OVER = 8.0, 36.0, 40.0
"""Margin, room under a butt for a dimension, room over it for the torch [px]."""

AROUND, AROUND_BUTT, AROUND_MANY = 0.36, 0.24, 0.1
"""How much of the plates is shown around the weld, as a share of the weld's size: beside fillets,
butts, and a high stack of beads [-]."""

LONGEST_TIP, TIP_HALF = 15.0, 0.25
"""The wire's head: no longer, and half its opening [px, rad]."""

_TURNS: dict[Orientation, int] = {"horizontal": 1, "overhead": 2}
"""Quarter turns clockwise a butt is drawn with; other joints turn only overhead."""


@dataclass(frozen=True, slots=True)
class PassDrawing:
    """A pass plan on paper.

    Attributes:
        width: Of the paper [px].
        height: Of the paper [px].
        plates: Outlines as SVG points.
        backing: Outline as SVG points, or empty.
        beads: Every bead, in welding order.
        painted: The beads as painted: where a gouge cuts, the side being laid over the other.
        aim: Where the wire points [px].
        torch: The torch's center line, from the aim out of the paper, as SVG path data.
        tip: Head of the wire at the aim, as SVG points.
        dimensions: Dimension lines, as SVG path data.
        labels: What is written at them.
    """

    width: float
    height: float
    plates: tuple[str, ...]
    backing: str
    beads: tuple[BeadMark, ...]
    painted: tuple[BeadMark, ...]
    aim: XY
    torch: str
    tip: str
    dimensions: str
    labels: tuple[Label, ...]


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
    paper, height = _fit(found, turns)
    bead = found.beads[at - 1]
    x, y = paper.at(bead.slot.aim)
    way = -radians(bead.torch_deg - 90 * turns)
    far = WIDTH + HIGH[0][1]
    long = min(LONGEST_TIP, 0.6 * bead.slot.thickness_m * paper.scale)
    marks = {
        each.number: mark_bead(each, paper, len(found.beads), _over(found, each, bead))
        for each in found.beads
    }
    dimensions, labels = draw_dimensions(shape, paper, (WIDTH, height), write)
    return PassDrawing(
        WIDTH,
        px(height),
        tuple(paper.points(plate) for plate in shape.plates),
        paper.points(shape.backing),
        tuple(marks.values()),
        tuple(marks[each.number] for each in _painted(found, bead)),
        (px(x), px(y)),
        f"M{x:.1f} {y:.1f}l{far * cos(way):.1f} {far * sin(way):.1f}",
        wedge((x, y), long, (way - TIP_HALF, way + TIP_HALF)),
        dimensions,
        labels,
    )


def _painted(found: PassPlan, looked_at: Bead) -> Sequence[Bead]:
    """The beads as they are painted: where a gouge cuts, the side being laid over the other."""
    if not found.shape.gouged:
        return found.beads
    return sorted(found.beads, key=lambda bead: bead.side == looked_at.side)


def _over(found: PassPlan, bead: Bead, looked_at: Bead) -> Sequence[XY]:
    """Metal seen instead of a bead: where a gouge cuts, that of the side being laid."""
    if not found.shape.gouged or bead.side == looked_at.side:
        return ()
    return found.shape.regions[looked_at.side - 1].outline


def _fit(found: PassPlan, turns: int) -> tuple[Paper, float]:
    """The weld with some of its plates around it, as large as the paper takes, and its height."""

    def box(polygons: Sequence[Sequence[XY]]) -> Box:
        return box_of(turned(point, turns) for polygon in polygons for point in polygon)

    shape = found.shape
    seen = _surroundings(
        box([region.outline for region in shape.regions]),
        box([*shape.plates, shape.backing]),
        AROUND_MANY
        if len(found.beads) >= HIGH[0][0]
        else AROUND_BUTT
        if found.job.joint in BUTTS
        else AROUND,
    )
    left, over, right, under = _margins(found, turns)
    most = next(high for beads, high in HIGH if len(found.beads) >= beads)
    scale = Field(left, over, WIDTH - right, most - under).largest_scale(seen)
    height = max(LOWEST, seen.height * scale + over + under)
    field = Field(left, over, WIDTH - right, height - under)
    return fit(seen.middle, field, scale, turns), height


def _surroundings(weld: Box, plates: Box, share: float) -> Box:
    """The weld and as much of the plates around it as a share of its size."""
    reach = share * max(weld.width, weld.height)
    return Box(
        min(weld.left, max(plates.left, weld.left - reach)),
        min(weld.bottom, max(plates.bottom, weld.bottom - reach)),
        max(weld.right, min(plates.right, weld.right + reach)),
        max(weld.top, min(plates.top, weld.top + reach)),
    )


def _margins(found: PassPlan, turns: int) -> tuple[float, float, float, float]:
    """Room left of, over, right of and under what is drawn, for torch and dimensions [px]."""
    if found.job.joint not in BUTTS:
        return EDGE, EDGE, EDGE, EDGE
    both = len(found.shape.regions) > 1
    if turns == 1:  # its first face looks to the right
        return OVER if both else UNDER, EDGE, OVER, EDGE
    if both:
        return EDGE, OVER, EDGE, OVER
    over, under = (OVER, UNDER) if turns == 0 else (UNDER, OVER)
    return EDGE, over, EDGE, under
