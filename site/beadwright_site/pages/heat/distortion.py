"""Distortion on the Heat page: what the weld does to the part, beside other ways to lay it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from math import degrees
from typing import Any

from beadwright import units
from beadwright.heating.angular import tilt
from beadwright.heating.distortion import Distortion
from beadwright.heating.distortion_query import PartDistortion, PartEntries
from beadwright.reading.entries import fields_of
from beadwright.results import Quantity
from beadwright.setting.dial_in import DialIn
from beadwright.sources import SOURCES
from beadwright.units import System
from beadwright_site.forms.entries import Entry
from beadwright_site.forms.filling import Form
from beadwright_site.parts.cited_notes import cited_notes
from beadwright_site.parts.distortion_facts import distortion_fact
from beadwright_site.parts.facts import Fact

HEADS: Mapping[str, str] = {
    "across": "across", "along": "along", "camber": "up", "sweep": "side", "lift": "edge",
}  # fmt: skip
"""The same over a column."""

STANDING = ("tee", "corner", "tee-bevel", "tee-double-bevel")
"""Joints with a plate that stands."""

SIDES = (("1", "One side", ""), ("2", "Both sides", ""))


@dataclass(frozen=True, slots=True)
class WayRow:
    """One way in the table: its name, its numbers in the order of ``HEADS``."""

    name: str
    yours: bool
    numbers: tuple[str, ...]


def part_entries(form: Form, dialled: DialIn | None) -> Iterator[Entry]:
    """Yield the entries of the part the weld pulls on.

    Args:
        form: What the page's form is filled from.
        dialled: The job, or None if the entries could not be taken.
    """
    tall = dialled is None or dialled.job.joint in STANDING
    for key in fields_of(PartEntries):
        if key == "part_sides":
            yield form.choice(key, SIDES)
        elif key != "part_height" or tall:
            yield form.entry(key)


def _number(quantity: Quantity, system: System) -> str:
    if quantity.value is None:
        return "–"
    return units.show(quantity.value, quantity.measure, system)


def _facts(way: Distortion, system: System) -> Iterator[Fact]:
    for key, quantity in way.named().items():
        yield distortion_fact(key, quantity, system)


def _turned(way: Distortion, width_m: float) -> Iterator[Fact]:
    """Yield the angle, where there is a form for it: a jig is set to it."""
    lift = way.lift
    if lift.value is not None and lift.low is not None and lift.high is not None:
        angles = (degrees(tilt(v, width_m)) for v in (lift.value, lift.low, lift.high))
        value, low, high = (f"{angle:.1f}" for angle in angles)
        yield Fact(f"≈ {value}°", "each half turned", f"{low}–{high}")


def _rows(found: PartDistortion, system: System) -> Iterator[WayRow]:
    for way in found.ways:
        numbers = tuple(_number(quantity, system) for quantity in way.all())
        yield WayRow(way.name, way.key == "yours", numbers)


def distortion_view(found: PartDistortion, system: System) -> dict[str, Any]:
    """Return what the part's template shows.

    Args:
        found: The answer.
        system: Whose units.
    """
    yours = found.ways[0]
    keys = dict.fromkeys(s for quantity in yours.all() for s in quantity.sources)
    return {
        "facts": (*_facts(yours, system), *_turned(yours, found.part.width_m)),
        "heads": tuple(HEADS.values()),
        "unit": units.symbol("small_length", system),
        "rows": tuple(_rows(found, system)),
        "sources": tuple((key, f"{SOURCES[key].document}, {SOURCES[key].told}") for key in keys),
        "notes": cited_notes(found.notes, system),
    }
