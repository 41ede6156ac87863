"""The field of a weld's shape: by name, or one's own line point by point."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from marshmallow import ValidationError

from beadwright import units
from beadwright.errors import OutOfRangeError
from beadwright.reading.fields import QueryField
from beadwright.strength.weld_group import MOST_POINTS, SHAPES, WeldGroup, polyline_group
from beadwright.typed_number import is_bare_number, quoted
from beadwright.units import System

GROUPS = ("line", "lines", "flats", "rectangle", "circle", "c", "l", "t")
"""Shapes of weld by name; besides them ``polyline:0,0 4,0 4,6``."""

assert set(SHAPES) | {"circle"} == set(GROUPS)

_POLYLINE = "polyline:"
_LONGEST = 400


class Outline(QueryField[str | WeldGroup]):
    """A shape of weld by name, or one's own polyline, read in the page's units."""

    def with_unit(self, text: str, system: System) -> str:
        """Return what was typed, with the unit behind each coordinate that is a bare number."""
        plain = " ".join(text.split())
        if not plain.lower().startswith(_POLYLINE):
            return text
        unit = units.typed_unit("length", system)
        pairs = (pair.split(",") for pair in plain[len(_POLYLINE) :].split())
        said = (",".join(x + unit if is_bare_number(x) else x for x in p) for p in pairs)
        return _POLYLINE + " ".join(said)

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> str | WeldGroup:
        text = " ".join(str(value).split()).lower()
        if text in GROUPS:
            return text
        if not text.startswith(_POLYLINE):
            raise ValidationError(
                f"{quoted(text)} is no shape; use {', '.join(GROUPS)}, or polyline:0,0 4,0 4,6"
            )
        if len(text) > _LONGEST:
            raise ValidationError(f"The polyline is too long; give up to {MOST_POINTS} points")
        system = self.system_of(data)
        points = tuple(_point(pair, system) for pair in text.removeprefix(_POLYLINE).split())
        try:
            return polyline_group(points)
        except OutOfRangeError as error:
            raise ValidationError(
                f"A polyline takes 2 to {MOST_POINTS} points, no point twice in a row"
            ) from error


def _point(pair: str, system: System) -> tuple[float, float]:
    parts = pair.split(",")
    try:
        if len(parts) != 2:
            raise ValueError
        x, y = (units.read(part, "length", system) for part in parts)
    except ValueError as error:
        raise ValidationError(
            f"{quoted(pair)} is no point; write x,y such as 4,0 or 100mm,50mm"
        ) from error
    if max(abs(x), abs(y)) > 30.0:
        raise ValidationError(f"{quoted(pair)} is farther off than 100 ft (30 m)")
    return x, y
