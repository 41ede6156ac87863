"""Weld metal cut into layers: the fewest beads that hold the limits."""

from __future__ import annotations

from bisect import bisect
from dataclasses import dataclass
from math import ceil, inf, log

from beadwright.errors import require_positive
from beadwright.layers.frame import Frame
from beadwright.layers.sweep import Sweep
from beadwright.measures import INCH_M
from beadwright.tolerance import REL_TOL

CAP_UNDER_FLUSH_M = 0.0008
"""Depth below flush at which a groove's cap starts at the least, so that it melts the edges [m].
Common practice: fill to within 1/32 to 1/16 in."""

SHAPELY = 1.8
"""Width over height of a well-shaped bead [-]. Common practice; it chooses between layers of the
same number of beads."""

FLAT_ROOT_M = 3 / 8 * INCH_M
"""Width of a root's floor over which beads may lie side by side in it [m]. Common practice."""

_WIDE_ROOT = 1000
_LEVELS = 32
_SLIVER = 0.15
"""Least distance between two levels, as a share of an even step [-]."""

_MOST_FULL = 60

_TOO_LIGHT = 10_000
"""What a layer of beads too light for their arc counts as, in beads: more than any other fault."""

_Best = tuple[int, float, int, int]
"""Beads so far, their penalty for shape, the level before, beads of the last layer."""


@dataclass(frozen=True, slots=True)
class BeadLimits:
    """Largest sizes of one bead and one layer.

    Attributes:
        root_m2: Largest section of a bead in the first layer [m²].
        section_m2: Largest section of a bead after it [m²].
        root_m: Thickest first layer [m].
        layer_m: Thickest layer after it [m].
        width_m: Widest bead [m].
        root_width_m: Widest bead of the first layer [m].
        root_least_m: Thinnest first layer under others: one that bridges an open root [m]. Above
            zero, the first layer is one bead: beside it another would lie on nothing.
        root_least_m2: Lightest bead of the first layer [m²].
        section_least_m2: Lightest bead after it [m²].
    """

    root_m2: float
    section_m2: float
    root_m: float
    layer_m: float
    width_m: float
    root_width_m: float
    root_least_m: float = 0.0
    root_least_m2: float = 0.0
    section_least_m2: float = 0.0

    def times(self, factor: float) -> BeadLimits:
        """Return all limits widened or tightened by one factor.

        However many beads are laid, a gap is as wide as it was: the bead that bridges an open root
        keeps its least thickness, and is not laid lighter where the others are.

        Args:
            factor: Above zero; sections go with its square [-].
        """
        root = max(1.0, factor) if self.root_least_m else factor
        return BeadLimits(
            self.root_m2 * root**2,
            self.section_m2 * factor**2,
            self.root_m * root,
            self.layer_m * factor,
            self.width_m * factor,
            self.root_width_m * root,
            self.root_least_m,
            self.root_least_m2 * root**2,
            self.section_least_m2 * factor**2,
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


def fewest_layers(frame: Frame, limits: BeadLimits, *, groove: bool, around: bool) -> list[Layer]:
    """Return the layers that hold the limits with the fewest beads, the evenest of those.

    Source: the shortest path through the levels, one step for each layer (Bellman).

    Args:
        frame: The region [-].
        limits: What a bead and a layer may be [-].
        groove: True if the last layer must close over the plate's edges [-].
        around: True if beads run around a hole, so that half the section is laid [-].
    """
    require_positive(
        root_m2=limits.root_m2, section_m2=limits.section_m2, root_m=limits.root_m,
        layer_m=limits.layer_m, width_m=limits.width_m, root_width_m=limits.root_width_m,
    )  # fmt: skip
    share = 0.5 if around else 1.0
    levels = _levels(frame, limits, share)
    last = len(levels) - 1
    areas = [share * frame.levels.below(level) for level in levels]
    widest = [share * _chord(frame.levels, level) for level in levels]
    least = 1e-9 * areas[-1]
    deepest = max(limits.root_m, limits.layer_m) + REL_TOL
    flat_root = widest[0] > FLAT_ROOT_M
    best: list[_Best] = [(0, 0.0, -1, 0)]
    for high in range(1, last + 1):
        found = loose = (1 << 30, inf, -1, 0)
        cap = high == last
        for low in range(high - 1, -1, -1):
            thick = levels[high] - levels[low]
            if low < high - 1:
                if thick > deepest:
                    break
                if thick > (limits.layer_m if low else limits.root_m) + REL_TOL:
                    continue
            section = areas[high] - areas[low]
            wide = max(widest[low], widest[high - 1], widest[high])
            most = limits.section_m2 if low else limits.root_m2
            beads = max(1, ceil(section / most - REL_TOL))
            widest_bead = limits.width_m if low else limits.root_width_m
            beads = max(beads, ceil(wide / widest_bead - REL_TOL))
            # A narrow root is one bead if that holds the limits, one over an open gap always.
            again = _WIDE_ROOT * (beads - 1) if low == 0 and not flat_root else 0
            if low == 0 and limits.root_least_m:
                beads, again = 1, again + beads - 1
            lightest = limits.section_least_m2 if low else limits.root_least_m2
            light = _TOO_LIGHT if section < beads * lightest * (1 - REL_TOL) else 0
            cost = best[low][0] + beads + again + light
            over_flush = cap and groove and low > 0 and levels[low] > -CAP_UNDER_FLUSH_M
            if cost > (loose if over_flush else found)[0]:
                continue
            shape = max(section, least) / (thick * thick * beads * SHAPELY)
            odd = best[low][1] + beads * log(shape) ** 2
            way = (cost, odd, low, beads)
            if over_flush:
                loose = min(loose, way)
            else:
                found = min(found, way)
        # With a crown higher than the thickest layer, no cap can start below flush.
        best.append(found if found[2] >= 0 else loose)
    layers: list[Layer] = []
    at = last
    while at > 0:
        _, _, low, beads = best[at]
        layers.append(Layer(levels[low], levels[at], beads))
        at = low
    return _evened(frame, layers[::-1], limits, groove=groove, around=around)


def _levels(frame: Frame, limits: BeadLimits, share: float) -> list[float]:
    """Levels a layer may end at: full and lightest beads, the thickest layers, and even steps.

    No level lies so near another, or an end, that a sliver would count as a layer. None lies lower
    than a bead that bridges an open root is thick: no layer may end there.
    """
    swept = frame.levels
    bottom, top = frame.bottom, swept.levels[-1]
    step = (top - bottom) / _LEVELS
    first = bottom + limits.root_least_m
    full = [first]
    beads = swept.area * share / limits.section_m2
    if beads < _MOST_FULL:
        full += [swept.level(swept.area * i / beads) for i in range(1, ceil(beads))]
    for section in (limits.root_m2, limits.root_least_m2):
        if 0 < section < swept.area * share:
            full.append(swept.level(section / share))
    level = bottom + limits.root_m
    while level < top and limits.layer_m > step:
        full.append(level)
        level += limits.layer_m
    even = [bottom + step * i for i in range(1, _LEVELS)]
    kept = [bottom, top]
    for level in (*full, *even):
        if level < first:
            continue
        at = bisect(kept, level)
        if 0 < at < len(kept) and min(level - kept[at - 1], kept[at] - level) > _SLIVER * step:
            kept.insert(at, level)
    return kept


def _evened(
    frame: Frame, layers: list[Layer], limits: BeadLimits, *, groove: bool, around: bool
) -> list[Layer]:
    """The same beads, all of one section; if possible no layer has fewer than the one below it.

    Where that breaks a limit the layers stay as they are.
    """

    def light(stack: list[Layer]) -> bool:
        return any(
            _light(frame, each, limits, root=each is stack[0], around=around) for each in stack
        )

    counts = [layer.beads for layer in layers]
    for order in (sorted(counts), counts):
        even = _of_one_section(frame, order, limits)
        held = all(holds(frame, each, limits, root=each is even[0], around=around) for each in even)
        over_flush = groove and len(even) > 1 and even[-1].low > -CAP_UNDER_FLUSH_M
        if held and not over_flush and (light(layers) or not light(even)):
            return even
    return layers


def _of_one_section(frame: Frame, counts: list[int], limits: BeadLimits) -> list[Layer]:
    each = frame.levels.area / sum(counts)
    even: list[Layer] = []
    laid, low = 0, frame.bottom
    for count in counts:
        laid += count
        high = frame.levels.level(min(each * laid, frame.levels.area))
        if laid < sum(counts):
            high = min(high, low + (limits.layer_m if even else limits.root_m))
        even.append(Layer(low, high, count))
        low = high
    return even


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
    section = _section(frame, layer, around=around)
    wide = share * max(_chord(levels, layer.low), _chord(levels, layer.high)) / layer.beads
    thick = layer.high - layer.low
    if root and layer.high < levels.levels[-1] and thick < limits.root_least_m - REL_TOL:
        return False
    return (
        section <= (limits.root_m2 if root else limits.section_m2) * (1 + REL_TOL)
        and thick <= (limits.root_m if root else limits.layer_m) + REL_TOL
        and wide <= (limits.root_width_m if root else limits.width_m) + REL_TOL
    )


def _light(frame: Frame, layer: Layer, limits: BeadLimits, *, root: bool, around: bool) -> bool:
    """Whether a layer's beads are lighter than their arc lays."""
    least = limits.root_least_m2 if root else limits.section_least_m2
    return _section(frame, layer, around=around) < least * (1 - REL_TOL)


def _section(frame: Frame, layer: Layer, *, around: bool) -> float:
    """Section of one bead of a layer [m²]."""
    levels, share = frame.levels, 0.5 if around else 1.0
    return share * (levels.below(layer.high) - levels.below(layer.low)) / layer.beads


def _chord(levels: Sweep, level: float) -> float:
    """Width of the region at a level; at an end, just inside it."""
    bottom, top = levels.levels[0], levels.levels[-1]
    near = 1e-4 * (top - bottom)
    low, high = max(level - near, bottom), min(level + near, top)
    return (levels.below(high) - levels.below(low)) / (high - low)
