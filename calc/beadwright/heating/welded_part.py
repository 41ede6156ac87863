"""The part a weld is on: its section as rectangles, and the place of the weld in it."""

from __future__ import annotations

from dataclasses import dataclass
from math import fsum

from beadwright.errors import require_positive


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle of a section.

    Attributes:
        x: Its middle, across [m].
        y: Its middle, up [m].
        width: Across [m].
        height: Up [m].
    """

    x: float
    y: float
    width: float
    height: float


@dataclass(frozen=True, slots=True)
class WeldedPart:
    """A part and the weld along it.

    Attributes:
        area_m2: Section [m²].
        camber_inertia_m4: Moment of inertia against bowing up and down [m⁴].
        camber_offset_m: Weld to neutral axis, up and down [m].
        sweep_inertia_m4: Moment of inertia against bowing sideways, or None if not known [m⁴].
        sweep_offset_m: Weld to neutral axis, sideways [m].
        width_m: Width of the plate the weld turns [m].
        length_m: Length of the part [m].
    """

    area_m2: float
    camber_inertia_m4: float
    camber_offset_m: float
    sweep_inertia_m4: float | None
    sweep_offset_m: float
    width_m: float
    length_m: float


def section(boxes: tuple[Box, ...]) -> tuple[float, float, float, float, float]:
    """Return area, middle across, middle up, inertia about the level and the upright axis.

    Source: geometry: b·h³/12 and the parallel axis theorem; [m², m, m, m⁴, m⁴].

    Args:
        boxes: Rectangles that do not overlap, one or more [m].

    Raises:
        OutOfRangeError: If a rectangle has no width or height.
    """
    for box in boxes:
        require_positive(width=box.width, height=box.height)
    areas = [box.width * box.height for box in boxes]
    area = fsum(areas)
    x = fsum(a * box.x for a, box in zip(areas, boxes, strict=True)) / area
    y = fsum(a * box.y for a, box in zip(areas, boxes, strict=True)) / area
    pairs = list(zip(areas, boxes, strict=True))
    level = fsum(a * (box.height**2 / 12 + (box.y - y) ** 2) for a, box in pairs)
    upright = fsum(a * (box.width**2 / 12 + (box.x - x) ** 2) for a, box in pairs)
    return area, x, y, level, upright


def _part(
    boxes: tuple[Box, ...], weld: tuple[float, float], width_m: float, length_m: float
) -> WeldedPart:
    area, x, y, level, upright = section(boxes)
    return WeldedPart(
        area_m2=area,
        camber_inertia_m4=level,
        camber_offset_m=abs(weld[1] - y),
        sweep_inertia_m4=upright,
        sweep_offset_m=abs(weld[0] - x),
        width_m=width_m,
        length_m=length_m,
    )


def _tee(flange_m: float, web_m: float, width_m: float, height_m: float) -> tuple[Box, Box]:
    return (
        Box(0.0, flange_m / 2, width_m, flange_m),
        Box(0.0, flange_m + height_m / 2, web_m, height_m),
    )


def tee_part(
    flange_m: float, web_m: float, width_m: float, height_m: float, leg_m: float, length_m: float
) -> WeldedPart:
    """Return a tee of two plates with a fillet in one corner.

    Source: geometry; the fillet's middle is a third of its leg from either plate.

    Args:
        flange_m: Thickness of the horizontal plate, above zero [m].
        web_m: Thickness of the plate standing on its middle, above zero [m].
        width_m: Width of the flange, above zero [m].
        height_m: Height of the web, above zero [m].
        leg_m: Leg, above zero [m].
        length_m: Length, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(leg_m=leg_m, length_m=length_m)
    weld = (web_m / 2 + leg_m / 3, flange_m + leg_m / 3)
    return _part(_tee(flange_m, web_m, width_m, height_m), weld, width_m, length_m)


def tee_groove_part(
    flange_m: float, web_m: float, width_m: float, height_m: float, length_m: float
) -> WeldedPart:
    """Return a tee of two plates with a groove at the foot of the upright.

    Source: geometry; the weld's middle is taken at the foot of the upright's face.

    Args:
        flange_m: Thickness of the horizontal plate, above zero [m].
        web_m: Thickness of the plate standing on its middle, above zero [m].
        width_m: Width of the flange, above zero [m].
        height_m: Height of the web, above zero [m].
        length_m: Length, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(length_m=length_m)
    boxes = _tee(flange_m, web_m, width_m, height_m)
    return _part(boxes, (web_m / 2, flange_m), width_m, length_m)


def corner_part(
    flange_m: float, web_m: float, width_m: float, height_m: float, leg_m: float, length_m: float
) -> WeldedPart:
    """Return two plates meeting edge to edge, the fillet outside in the corner.

    Source: geometry; the fillet's middle is two thirds of its leg out from the corner they share.

    Args:
        flange_m: Thickness of the horizontal plate, above zero [m].
        web_m: Thickness of the plate standing, above zero [m].
        width_m: Width of the horizontal plate, above zero [m].
        height_m: Height of the plate standing, above zero [m].
        leg_m: Leg, above zero [m].
        length_m: Length, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(leg_m=leg_m, length_m=length_m)
    boxes = (
        Box(-width_m / 2, flange_m / 2, width_m, flange_m),
        Box(web_m / 2, flange_m + height_m / 2, web_m, height_m),
    )
    return _part(boxes, (leg_m / 3, flange_m - leg_m / 3), width_m, length_m)


def lap_part(
    lower_m: float, upper_m: float, width_m: float, leg_m: float, length_m: float
) -> WeldedPart:
    """Return two plates of a width overlapping by half, a fillet along one edge.

    Source: geometry; a fillet's middle is a third of its leg from either plate.

    Args:
        lower_m: Thickness of the lower plate, above zero [m].
        upper_m: Thickness of the upper plate, above zero [m].
        width_m: Width of each, above zero [m].
        leg_m: Leg, above zero [m].
        length_m: Length, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(leg_m=leg_m, length_m=length_m)
    boxes = (
        Box(0.0, lower_m / 2, width_m, lower_m),
        Box(-width_m / 2, lower_m + upper_m / 2, width_m, upper_m),
    )
    return _part(boxes, (leg_m / 3, lower_m + leg_m / 3), width_m, length_m)


def butt_part(plate_m: float, width_m: float, length_m: float) -> WeldedPart:
    """Return two plates of a width welded edge to edge, the weld in the middle of both.

    Args:
        plate_m: Thickness, above zero [m].
        width_m: Width of each, above zero [m].
        length_m: Length, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(length_m=length_m)
    return _part((Box(0.0, 0.0, 2 * width_m, plate_m),), (0.0, 0.0), 2 * width_m, length_m)
