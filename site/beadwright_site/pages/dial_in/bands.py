"""The four settings as bands: the room each has, and where it stands in it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import ceil, floor
from types import MappingProxyType

from beadwright import units
from beadwright.job.job_entries import FIELDS
from beadwright.reading.fields import Measured
from beadwright.results import Quantity
from beadwright.units import System
from beadwright.words.wording import reason

KEYS: Mapping[str, str] = MappingProxyType(
    {"wire_feed": "wfs", "volts": "volts", "travel": "travel", "tip_to_work": "ctwd"}
)
"""Query key of each setting, by its measure."""

STEPS: Mapping[tuple[str, System], float] = MappingProxyType(
    {key: float(step) for key, step in units.STEPS.items() if key[0] in KEYS}
)
"""What one step of a finger sets, in the unit shown; as fine as ``units.settable``."""

BEYOND = 0.6
"""Room drawn past each end of the window, as a share of its width."""


@dataclass(frozen=True, slots=True)
class Band:
    """One setting as drawn. Lengths are in percent of the band's width.

    Attributes:
        key: Query key.
        name: The trade's name.
        number: The number to set, or a dash.
        unit: Unit beside it.
        by_hand: True if the welder set it.
        inside: False if it stands outside the window.
        word: What to say of it: by hand, over, under, no room.
        low: Window's low end [%], or None.
        high: Window's high end [%], or None.
        at: Set point [%], or None.
        low_text: Number at the low end.
        high_text: Number at the high end.
        low_by: What binds the low end.
        high_by: What binds the high end.
        least: Left end of the band, in the unit shown.
        most: Right end.
        now: Set point, in the unit shown.
        step: One step, in the unit shown.
        places: Decimals of the number.
        sixteenths: True if the number is a fraction of an inch.
        typed_unit: Unit to put after a number set by dragging.
        spoken: The whole for a screen reader.
    """

    key: str
    name: str
    number: str
    unit: str
    by_hand: bool
    inside: bool
    word: str
    low: float | None
    high: float | None
    at: float | None
    low_text: str
    high_text: str
    low_by: str
    high_by: str
    least: float
    most: float
    now: float | None
    step: float
    places: int
    sixteenths: bool
    typed_unit: str
    spoken: str


def _ends(
    low: float | None,
    high: float | None,
    now: float | None,
    step: float,
    allowed: tuple[float, float],
) -> tuple[float, float]:
    """Ends of the band: the window, room past it, the set point; no farther than is allowed."""
    known = [value for value in (low, high, now) if value is not None]
    if not known:
        return step, 2 * step
    window = [value for value in (low, high) if value is not None] or known
    room = max(BEYOND * (max(window) - min(window)), 4 * step)
    least, most = min(window) - room, max(window) + room
    if now is not None:
        least, most = min(least, now - room / 4), max(most, now + room / 4)
    return (
        max(floor(least / step + 1e-9) * step, min(allowed[0], *known)),
        min(ceil(most / step - 1e-9) * step, max(allowed[1], *known)),
    )


def _word(quantity: Quantity, low_text: str, high_text: str) -> str:
    if quantity.value is None:
        return "no window" if quantity.low is not None else ""
    if quantity.low is not None and not quantity.inside and quantity.value < quantity.low:
        return f"under {low_text}"
    if not quantity.inside:
        return f"over {high_text}"
    return "by hand" if quantity.by_hand else ""


def _spoken(number: str, unit: str, room: str, word: str) -> str:
    return ", ".join(part for part in (f"{number} {unit}", room, word) if part)


def band_of(quantity: Quantity, system: System) -> Band:
    """Return a setting as a band.

    Args:
        quantity: The setting with its window [SI].
        system: Whose units.
    """
    measure = quantity.measure
    step = STEPS[measure, system]

    def convert(value: float | None) -> float | None:
        return None if value is None else units.convert(value, measure, system)

    def text(value: float | None) -> str:
        return "" if value is None else units.show(value, measure, system)

    low, high, now = convert(quantity.low), convert(quantity.high), convert(quantity.value)
    key = KEYS[measure]
    field = FIELDS[key]
    assert isinstance(field, Measured)  # all four settings are
    allowed = [units.convert(end, measure, system) for end in (field.low, field.high)]
    least, most = _ends(low, high, now, step, (allowed[0], allowed[1]))

    def share(value: float | None) -> float | None:
        return None if value is None else round(100 * (value - least) / (most - least), 2)

    unit = units.symbol(measure, system)
    number = text(quantity.value) or "–"
    low_text, high_text = text(quantity.low), text(quantity.high)
    room = f"window {low_text} to {high_text}" if low_text and high_text else ""
    word = _word(quantity, low_text, high_text)
    return Band(
        key=key,
        name=quantity.name,
        number=number,
        unit=unit,
        by_hand=quantity.by_hand,
        inside=quantity.inside or quantity.value is None,
        word=word,
        low=share(low),
        high=share(high),
        at=share(now),
        low_text=low_text,
        high_text=high_text,
        low_by=reason(quantity.low_by, system),
        high_by=reason(quantity.high_by, system),
        least=round(least, 6),
        most=round(most, 6),
        now=None if now is None else round(now, 6),
        step=step,
        places=units.MEASURES[measure].unit(system).places,
        sixteenths=measure == "tip_to_work" and system == "us",
        typed_unit=units.typed_unit(measure, system),
        spoken=_spoken(number, unit, room, word),
    )
