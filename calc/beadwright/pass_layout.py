"""Where each bead lies: weld metal cut into layers and the layers into beads.

A region is looked at along its face: x from the first toe to the second, y from the root out. It
is sheared so that the rounded face lies flat; layers are then cut straight and lie parallel to the
face. Each layer is sheared again so that the cut between neighbours leans: the later bead laps
over the earlier one. Shears keep areas, so beads add up to the region.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, hypot, inf, log

from beadwright.errors import OutOfRangeError, require_positive
from beadwright.joints import XY, Polygon, WeldRegion
from beadwright.sweep import Sweep, band, sweep

LEAN = 0.5
"""How far a later bead laps over its neighbour, for each unit of layer thickness [-]. Common
practice: about half; a picture's choice, no setting hangs on it."""

CAP_UNDER_FLUSH_M = 0.0008
"""A groove's cap starts at least so far below flush, so that its edges are melted away [m].
Common practice: fill to within 1/32 to 1/16 in."""

SHAPELY = 1.8
"""Width over height of a bead that lies well [-]. Common practice; it chooses between layers of
the same number of beads."""

_WIDE_ROOT = 1000
_LEVELS = 32
_MOST_FULL = 60
_FACE_PARTS = 24
_HAIR = 1e-9

_Best = tuple[int, float, int, int]
"""Beads so far, how ill they lie, the level before, beads of the last layer."""


@dataclass(frozen=True, slots=True)
class BeadLimits:
    """What one bead and one layer may be.

    Attributes:
        section_m2: Largest section of a bead [m²].
        root_m: Thickest first layer [m].
        layer_m: Thickest layer after it [m].
        width_m: Widest bead [m].
    """

    section_m2: float
    root_m: float
    layer_m: float
    width_m: float

    def times(self, factor: float) -> BeadLimits:
        """Return the limits widened or tightened alike.

        Args:
            factor: Above zero; sections go with its square [-].
        """
        return BeadLimits(
            self.section_m2 * factor**2,
            self.root_m * factor,
            self.layer_m * factor,
            self.width_m * factor,
        )


@dataclass(frozen=True, slots=True)
class Layer:
    """A layer between two levels.

    Attributes:
        low: Level of its floor [m].
        high: Level of its top [m].
        beads: Beads in it [-].
    """

    low: float
    high: float
    beads: int


@dataclass(frozen=True, slots=True)
class Slot:
    """The place of one bead.

    Attributes:
        layer: Layer on its side, from 1 [-].
        place: Place in the layer in the order laid, from 1 [-].
        of: Beads in that layer [-].
        outlines: What it shows in the section; two pieces where it runs around a hole [m].
        section_m2: Section laid along the weld [m²].
        width_m: Width of the layer's share it covers [m].
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


@dataclass(frozen=True, slots=True)
class Frame:
    """A region seen along its face, its rounded face sheared flat."""

    origin: XY
    along: XY
    out: XY
    bow: float
    outline: tuple[XY, ...]
    levels: Sweep
    face_m: float

    @property
    def bottom(self) -> float:
        """Level at which there is metal to lay; a closed root face below it has none [m]."""
        least = 1e-9 * self.levels.area
        at = next(i for i, area in enumerate(self.levels.areas) if area > least)
        return self.levels.levels[at - 1]

    def back(self, point: XY) -> XY:
        """Return a point of the sheared region where it lies in the joint [m]."""
        x, y = point[0], point[1] - self.bow * point[0] ** 2
        return (
            self.origin[0] + x * self.along[0] + y * self.out[0],
            self.origin[1] + x * self.along[1] + y * self.out[1],
        )


def frame_of(region: WeldRegion) -> Frame:
    """Return a region seen along its face.

    Source: geometry.

    Args:
        region: Weld metal of one side [-].
    """
    (x0, y0), (x1, y1) = region.face
    width = hypot(x1 - x0, y1 - y0)
    origin = ((x0 + x1) / 2, (y0 + y1) / 2)
    along = ((x1 - x0) / width, (y1 - y0) / width)
    out = (along[1], -along[0])
    if (region.root[0] - origin[0]) * out[0] + (region.root[1] - origin[1]) * out[1] > 0:
        out = (-out[0], -out[1])
    bow = 4 * region.crown_m / width**2
    flat: list[XY] = []
    for x, y in region.outline:
        dx, dy = x - origin[0], y - origin[1]
        flat.append((dx * along[0] + dy * along[1], dx * out[0] + dy * out[1]))
    points = tuple((x, y + bow * x * x) for x, y in _dense(flat, width))
    return Frame(origin, along, out, bow, points, sweep(points, 1), width)


def _dense(points: Sequence[XY], width: float) -> list[XY]:
    """The outline with its edges cut short along the face, so that they can be bent."""
    found: list[XY] = []
    for (x0, y0), (x1, y1) in zip(points, _turned(points), strict=True):
        cuts = max(1, ceil(_FACE_PARTS * abs(x1 - x0) / width))
        found += [(x0 + (x1 - x0) * i / cuts, y0 + (y1 - y0) * i / cuts) for i in range(cuts)]
    return found


def _turned(points: Sequence[XY]) -> list[XY]:
    return [*points[1:], points[0]]


def fewest_layers(frame: Frame, limits: BeadLimits, *, groove: bool, around: bool) -> list[Layer]:
    """Return the layers that hold the limits with the fewest beads, the evenest of those.

    Source: the shortest way through the levels, a layer a step (Bellman).

    Args:
        frame: The region [-].
        limits: What a bead and a layer may be [-].
        groove: True if the last layer must close over the plate's edges [-].
        around: True if beads run around a hole, so that half the section is laid [-].
    """
    require_positive(
        section_m2=limits.section_m2, root_m=limits.root_m,
        layer_m=limits.layer_m, width_m=limits.width_m,
    )  # fmt: skip
    share = 0.5 if around else 1.0
    levels = _levels(frame, limits, share)
    last = len(levels) - 1
    areas = [share * frame.levels.below(level) for level in levels]
    widest = [share * _chord(frame.levels, level) for level in levels]
    least = 1e-9 * areas[-1]
    best: list[_Best] = [(0, 0.0, -1, 0)]
    for high in range(1, last + 1):
        found = loose = (1 << 30, inf, -1, 0)
        cap = high == last
        for low in range(high - 1, -1, -1):
            thick = levels[high] - levels[low]
            if thick > (limits.layer_m if low else limits.root_m) + _HAIR and low < high - 1:
                break
            section = areas[high] - areas[low]
            wide = max(widest[low], widest[high - 1], 0.0 if cap else widest[high])
            beads = max(1, ceil(section / limits.section_m2 - _HAIR))
            beads = max(beads, ceil(wide / limits.width_m - _HAIR))
            # One bead makes the root wherever it can.
            cost = best[low][0] + beads + (_WIDE_ROOT * (beads - 1) if low == 0 else 0)
            over_flush = cap and groove and low > 0 and levels[low] > -CAP_UNDER_FLUSH_M
            if cost > (loose if over_flush else found)[0]:
                continue
            odd = best[low][1]
            if low:
                shape = max(section, least) / (thick * thick * beads * SHAPELY)
                odd += beads * log(shape) ** 2
            step = (cost, odd, low, beads)
            if over_flush:
                loose = min(loose, step)
            else:
                found = min(found, step)
        # A crown higher than a layer may be leaves no cap that starts under flush.
        best.append(found if found[2] >= 0 else loose)
    layers: list[Layer] = []
    at = last
    while at > 0:
        _, _, low, beads = best[at]
        layers.append(Layer(levels[low], levels[at], beads))
        at = low
    return _evened(frame, layers[::-1], limits, groove=groove, around=around)


def _levels(frame: Frame, limits: BeadLimits, share: float) -> list[float]:
    """Levels a layer may end at: even steps, full beads, and the thickest layers."""
    swept = frame.levels
    bottom, top = frame.bottom, swept.levels[-1]
    step = (top - bottom) / _LEVELS
    found = {bottom + step * i for i in range(1, _LEVELS)}
    beads = swept.area * share / limits.section_m2
    if beads < _MOST_FULL:
        found |= {swept.level(swept.area * i / beads) for i in range(1, ceil(beads))}
    level = bottom + limits.root_m
    while level < top and limits.layer_m > step:
        found.add(level)
        level += limits.layer_m
    return [bottom, *sorted(level for level in found if bottom < level < top), top]


def _evened(
    frame: Frame, layers: list[Layer], limits: BeadLimits, *, groove: bool, around: bool
) -> list[Layer]:
    """The same beads, all of one section and no layer with fewer than the one under it.

    Where that breaks a limit the layers stay as they are.
    """
    counts = sorted(layer.beads for layer in layers)
    each = frame.levels.area / sum(counts)
    even: list[Layer] = []
    laid, low = 0, layers[0].low
    for count in counts:
        laid += count
        high = frame.levels.level(min(each * laid, frame.levels.area))
        if laid < sum(counts):
            high = min(high, low + (limits.layer_m if even else limits.root_m))
        even.append(Layer(low, high, count))
        low = high
    held = all(holds(frame, layer, limits, root=layer is even[0], around=around) for layer in even)
    over_flush = groove and len(even) > 1 and even[-1].low > -CAP_UNDER_FLUSH_M
    return layers if over_flush or not held else even


def holds(frame: Frame, layer: Layer, limits: BeadLimits, *, root: bool, around: bool) -> bool:
    """Return whether a layer and its beads are within limits.

    Args:
        frame: The region [-].
        layer: The layer [-].
        limits: What a bead and a layer may be [-].
        root: True for the first layer [-].
        around: As of ``fewest_layers`` [-].
    """
    share = 0.5 if around else 1.0
    levels = frame.levels
    section = share * (levels.below(layer.high) - levels.below(layer.low)) / layer.beads
    top = levels.levels[-1]
    # A cap laps over the plate's edges; its width is that of the groove.
    high = layer.high if layer.high < top else layer.low
    wide = share * max(_chord(levels, layer.low), _chord(levels, high)) / layer.beads
    thick = layer.high - layer.low
    return (
        section <= limits.section_m2 * (1 + _HAIR)
        and thick <= (limits.root_m if root else limits.layer_m) + _HAIR
        and wide <= limits.width_m + _HAIR
    )


def _chord(levels: Sweep, level: float) -> float:
    span = levels.levels[-1] - levels.levels[0]
    low, high = level - 1e-4 * span, level + 1e-4 * span
    return (levels.below(high) - levels.below(low)) / (high - low)


def layers_of_count(
    frame: Frame, limits: BeadLimits, count: int, *, groove: bool, around: bool
) -> list[Layer]:
    """Return layers with a given number of beads, holding the limits as nearly as they can.

    Args:
        frame: The region [-].
        limits: What a bead and a layer may be [-].
        count: Beads wanted, 1 or more [-].
        groove: As of ``fewest_layers`` [-].
        around: As of ``fewest_layers`` [-].

    Raises:
        OutOfRangeError: If the count is below 1.
    """
    if count < 1:
        raise OutOfRangeError(f"count = {count} must be 1 or more")
    low, high = 0.05, 40.0
    found = [Layer(frame.bottom, frame.levels.levels[-1], 1)]
    for _ in range(16):
        middle = (low * high) ** 0.5
        tried = fewest_layers(frame, limits.times(middle), groove=groove, around=around)
        beads = sum(layer.beads for layer in tried)
        if beads == count:
            return tried
        if beads > count:
            low = middle
        else:
            high, found = middle, tried
    return _with_more(frame, found, count)


def _with_more(frame: Frame, layers: list[Layer], count: int) -> list[Layer]:
    """The layers with beads added where they are largest, until there are enough."""
    grown = list(layers)
    while sum(layer.beads for layer in grown) < count:
        sizes = [
            (frame.levels.below(layer.high) - frame.levels.below(layer.low)) / layer.beads
            for layer in grown
        ]
        at = max(range(len(grown)), key=lambda i: (sizes[i], i))
        grown[at] = Layer(grown[at].low, grown[at].high, grown[at].beads + 1)
    return grown


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
                number,
                place,
                layer.beads,
                (_shown(frame, upright),),
                across.area / layer.beads,
                _width(upright, layer),
                layer.high - layer.low,
                frame.back(corner),
                ((cuts[at] + cuts[at + 1]) / 2 - middle) / half,
            )
        )
    return slots


def _corner(points: Sequence[XY], layer: Layer, way: int, place: int) -> XY:
    """Where a bead's floor meets what stands before it; the last bead's floor meets the wall.

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
    """How wide a bead shows on its layer's top."""
    span = layer.high - layer.low
    top = [x for x, y in points if y >= layer.high - 1e-3 * span]
    return max(top) - min(top)


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
                number,
                place,
                layer.beads,
                (_shown(frame, right), _shown(frame, left)),
                across.area / layer.beads,
                outer - inner,
                layer.high - layer.low,
                frame.back((outer, layer.low)),
                0.0,
            )
        )
    return slots


def _shown(frame: Frame, points: Sequence[XY]) -> Polygon:
    """The outline in the joint, its long edges bent like the face."""
    return tuple(frame.back(point) for point in _dense(points, frame.face_m))
