"""The place of each bead: layers cut into beads, in the order laid.

Each layer is sheared so that the cut between neighbors leans: the later bead laps over the
earlier one. The shear keeps areas, so beads add up to the layer.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import inf

from beadwright.joint.joints import XY, Polygon
from beadwright.layers.frame import Frame, dense
from beadwright.layers.layers import Layer
from beadwright.layers.sweep import band, sweep

LEAN = 0.5
"""Overlap of a later bead on its neighbor, for each unit of layer thickness [-]. Common practice:
about half; it is for the picture, no setting depends on it."""


@dataclass(frozen=True, slots=True)
class Slot:
    """The place of one bead.

    Attributes:
        layer: Layer on its side, from 1 [-].
        place: Place in the layer in the order laid, from 1 [-].
        of: Beads in that layer [-].
        outlines: What it shows in the section; two pieces where it runs around a hole [m].
        section_m2: Section laid along the weld [m²].
        width_m: Width it shows on top of its layer; covered by its neighbors, its widest [m].
        thickness_m: Thickness of its layer [m].
        aim: Where the wire points: the corner the bead is laid into [m].
        across: How far from the first toe's side (-1) to the second's (1) it lies [-].
    """

    layer: int
    place: int
    of: int
    outlines: tuple[Polygon, ...]
    section_m2: float
    width_m: float
    thickness_m: float
    aim: XY
    across: float


def slots_of(
    frame: Frame, layers: Sequence[Layer], *, start: int, alternate: bool, around: bool
) -> list[Slot]:
    """Return the place of each bead, in the order laid.

    Args:
        frame: The region [-].
        layers: Its layers, from the root out [-].
        start: 1 to begin each layer at the first toe, -1 at the second [-].
        alternate: True to begin every other layer at the other toe [-].
        around: True if beads run around a hole [-].
    """
    slots: list[Slot] = []
    for number, layer in enumerate(layers, start=1):
        way = -start if alternate and number % 2 == 0 else start
        piece = band(frame.outline, 1, layer.low, layer.high)
        if around:
            slots += _rings(frame, piece, layer, number)
        else:
            slots += _side_by_side(frame, piece, layer, number, way)
    return slots


def _side_by_side(frame: Frame, piece: list[XY], layer: Layer, number: int, way: int) -> list[Slot]:
    lean = -way * LEAN if layer.beads > 1 else 0.0
    leaning = [(x - lean * (y - layer.low), y) for x, y in piece]
    across = sweep(leaning, 0)
    cuts = [across.level(across.area * i / layer.beads) for i in range(layer.beads + 1)]
    middle, half = (cuts[0] + cuts[-1]) / 2, (cuts[-1] - cuts[0]) / 2
    slots: list[Slot] = []
    for place in range(1, layer.beads + 1):
        at = place - 1 if way > 0 else layer.beads - place
        cut = band(leaning, 0, cuts[at], cuts[at + 1])
        upright = [(x + lean * (y - layer.low), y) for x, y in cut]
        corner = _corner(upright, layer, way, place)
        slots.append(
            Slot(
                layer=number,
                place=place,
                of=layer.beads,
                outlines=(_shown(frame, upright),),
                section_m2=across.area / layer.beads,
                width_m=_width(upright, layer),
                thickness_m=layer.high - layer.low,
                aim=frame.back(corner),
                across=((cuts[at] + cuts[at + 1]) / 2 - middle) / half,
            )
        )
    return slots


def _corner(points: Sequence[XY], layer: Layer, way: int, place: int) -> XY:
    """Where a bead's floor meets the bead before it; the last bead's floor meets the wall.

    A bead alone in its layer is aimed at the middle of its floor.
    """
    floor = min(y for _, y in points)
    near = floor + 1e-3 * (layer.high - layer.low)
    on_floor = [x for x, y in points if y <= near]
    low, high = min(on_floor), max(on_floor)
    if layer.beads == 1:
        return (low + high) / 2, floor
    toward = way if place == layer.beads else -way
    return (high if toward > 0 else low), floor


def _width(points: Sequence[XY], layer: Layer) -> float:
    """Visible width of a bead on top of its layer; of one its neighbors cover, the widest.

    Where a layer is thick beside its beads, one leans over the next at the wall.
    """
    near = layer.high - 1e-3 * (layer.high - layer.low)
    top = [x for x, y in points if y >= near]
    shown = max(top) - min(top) if top else 0.0
    across = [x for x, _ in points]
    return shown if shown > 0 else max(across) - min(across)


def _rings(frame: Frame, piece: list[XY], layer: Layer, number: int) -> list[Slot]:
    """Beads around a hole, from the wall inwards; each shows on both sides of the middle."""
    half = band(piece, 0, 0.0, inf)
    across = sweep(half, 0)
    cuts = [across.level(across.area * i / layer.beads) for i in range(layer.beads + 1)]
    slots: list[Slot] = []
    for place in range(1, layer.beads + 1):
        inner, outer = cuts[layer.beads - place], cuts[layer.beads - place + 1]
        right = band(half, 0, inner, outer)
        left = [(-x, y) for x, y in reversed(right)]
        slots.append(
            Slot(
                layer=number,
                place=place,
                of=layer.beads,
                outlines=(_shown(frame, right), _shown(frame, left)),
                section_m2=across.area / layer.beads,
                width_m=outer - inner,
                thickness_m=layer.high - layer.low,
                aim=frame.back((outer, layer.low)),
                across=0.0,
            )
        )
    return slots


def _shown(frame: Frame, points: Sequence[XY]) -> Polygon:
    """The outline in the joint, its long edges bent like the face."""
    return tuple(frame.back(point) for point in dense(points, frame.face_m))
