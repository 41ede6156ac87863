"""What the points of a weld group carry: arrows in the plane, rings out of it, numbers."""

from __future__ import annotations

from collections.abc import Iterator
from math import hypot

from beadwright.strength.elastic_line import LineForce
from beadwright.strength.strength_answer import StrengthAnswer
from beadwright.strength.strength_check import point_numbers
from beadwright_site.drawings.marks import Arrow, Label, Ring, arrow, label, ring
from beadwright_site.drawings.paper import Paper

LONGEST_FORCE, HEAD = 34.0, 6.0
"""The worst force is drawn this long, the others in proportion; an arrow's head [px]."""

LEAST_RING, RING_ROOM = 3.0, 7.0
"""Radius of a ring for no force, and what the worst force adds to it [px]."""

LEAST_DRAWN = 0.02
"""A smaller force is not drawn, as a share of the worst [-]."""

MOST_ROUND = 12
"""Forces drawn round a circle."""


def draw_forces(found: StrengthAnswer, paper: Paper) -> tuple[tuple[Arrow, ...], tuple[Ring, ...]]:
    """Return what the points carry in the plane and out of it.

    Args:
        found: The answer.
        paper: Where the group lies.
    """
    biggest = max(force.total for force in found.spread.forces) or 1.0
    arrows: list[Arrow] = []
    rings: list[Ring] = []
    for force in _drawn(found):
        x, y = paper.at((force.place.x, force.place.y))
        if hypot(force.fx, force.fy) >= LEAST_DRAWN * biggest:
            long = LONGEST_FORCE / biggest
            arrows.append(arrow((x, y), (x + force.fx * long, y - force.fy * long), HEAD))
        if abs(force.fz) > LEAST_DRAWN * biggest:
            radius = LEAST_RING + RING_ROOM * abs(force.fz) / biggest
            rings.append(ring((x, y), radius, pulls=force.fz > 0))
    return tuple(arrows), tuple(rings)


def draw_numbers(found: StrengthAnswer, paper: Paper) -> tuple[Label, ...]:
    """Return the number of each point, outside the group; a circle has none.

    Args:
        found: The answer.
        paper: Where the group lies.
    """
    if found.task.group.radius_m:
        return ()
    middle = found.task.properties
    labels: list[Label] = []
    for number, force in _numbered(found):
        x, y = paper.at((force.place.x, force.place.y))
        right = force.place.x > middle.x + 1e-9
        above = force.place.y > middle.y + 1e-9
        labels.append(label(x + (13 if right else -13), y + (-7 if above else 17),
                            "start" if right else "end", str(number)))  # fmt: skip
    return tuple(labels)


def _numbered(found: StrengthAnswer) -> Iterator[tuple[int, LineForce]]:
    """Each point once, with its number."""
    forces = found.spread.forces
    seen: set[int] = set()
    for number, force in zip(point_numbers(forces), forces, strict=True):
        if number not in seen:
            seen.add(number)
            yield number, force


def _drawn(found: StrengthAnswer) -> Iterator[LineForce]:
    """Each point's force; round a circle some, the weakest link's among them."""
    forces = found.spread.forces
    if found.task.group.radius_m:
        step = len(forces) // MOST_ROUND
        weakest = found.ringed.point
        yield from (f for at, f in enumerate(forces) if at % step == 0 or at == weakest)
    else:
        yield from (force for _, force in _numbered(found))
