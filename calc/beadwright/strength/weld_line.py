"""Properties of a weld taken as a line: length, centroid, second moments, all over the throat."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.strength.weld_group import WeldGroup


@dataclass(frozen=True, slots=True)
class LineProperties:
    """What a weld group is to the elastic line method, for a throat of one.

    Attributes:
        length_m: Length of weld [m].
        x: Centroid, right of the origin [m].
        y: Centroid, above the origin [m].
        ix: Second moment about the level axis through the centroid [m³].
        iy: Second moment about the upright axis through the centroid [m³].
        ixy: Product moment about both [m³].
    """

    length_m: float
    x: float
    y: float
    ix: float
    iy: float
    ixy: float

    @property
    def j(self) -> float:
        """Polar second moment about the centroid [m³]."""
        return self.ix + self.iy


def line_properties(group: WeldGroup) -> LineProperties:
    """Return the properties of a weld group as a line.

    Source: weld treated as a line, textbook tables (Blodgett; Shigley Tables 9-1 and 9-2). Summed
    along the weld by rules exact for these squares, so every shape goes one way.

    Args:
        group: The weld group [-].
    """
    places = group.samples
    length = sum(p.length_m for p in places)
    x = sum(p.x * p.length_m for p in places) / length
    y = sum(p.y * p.length_m for p in places) / length
    ix = sum((p.y - y) ** 2 * p.length_m for p in places)
    iy = sum((p.x - x) ** 2 * p.length_m for p in places)
    ixy = sum((p.x - x) * (p.y - y) * p.length_m for p in places)
    return LineProperties(length, x, y, ix, iy, ixy)
