"""Weld metal cut into layers with as many beads as asked for."""

from __future__ import annotations

from beadwright.errors import OutOfRangeError
from beadwright.layers.frame import Frame
from beadwright.layers.layers import BeadLimits, Layer, fewest_layers

_SCALES = (0.05, 40.0)
"""Least and most by which limits are scaled to reach a count of beads: from many fine beads to one
that fills any joint [-]."""

_HALVINGS = 16
"""Halvings of that range: to one part in a thousand of the scale, finer than a count of beads can
tell [-]."""


Tried = dict[float, list[Layer]]
"""Layers already worked out for one region and its limits, by the scale of the limits."""


def layers_of_count(
    frame: Frame,
    limits: BeadLimits,
    count: int,
    *,
    groove: bool,
    around: bool,
    tried: Tried | None = None,
) -> list[Layer]:
    """Return layers with a given number of beads, holding the limits as nearly as they can.

    Args:
        frame: The region [-].
        limits: What a bead and a layer may be [-].
        count: Beads wanted, 1 or more [-].
        groove: As of ``fewest_layers`` [-].
        around: As of ``fewest_layers`` [-].
        tried: Layers worked out for other counts, which this adds to: counts near one another
            halve the range at mostly the same places [-].

    Raises:
        OutOfRangeError: If the count is below 1.
    """
    if count < 1:
        raise OutOfRangeError(f"count = {count} must be 1 or more")
    tried = {} if tried is None else tried
    low, high = _SCALES
    found = [Layer(frame.bottom, frame.levels.levels[-1], 1)]
    for _ in range(_HALVINGS):
        middle = (low * high) ** 0.5
        layers = tried.get(middle)
        if layers is None:
            layers = fewest_layers(frame, limits.times(middle), groove=groove, around=around)
            tried[middle] = layers
        beads = sum(layer.beads for layer in layers)
        if beads == count:
            return layers
        if beads > count:
            low = middle
        else:
            high, found = middle, layers
    return _with_more(frame, found, count, bridged=limits.root_least_m > 0)


def _with_more(frame: Frame, layers: list[Layer], count: int, *, bridged: bool) -> list[Layer]:
    """The layers with beads added where they are largest, until there are enough.

    The bead that bridges an open root has another beside it only where no layer lies over it.
    """
    grown = list(layers)
    first = 1 if bridged and len(grown) > 1 else 0
    while sum(layer.beads for layer in grown) < count:
        sizes = [
            (frame.levels.below(layer.high) - frame.levels.below(layer.low)) / layer.beads
            for layer in grown
        ]
        at = max(range(first, len(grown)), key=lambda i: (sizes[i], i))
        grown[at] = Layer(grown[at].low, grown[at].high, grown[at].beads + 1)
    return grown
