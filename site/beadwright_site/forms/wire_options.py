"""The choices of wire, and of the sizes a wire is made in."""

from __future__ import annotations

from beadwright.errors import BeadwrightError
from beadwright.process.gases import GASES
from beadwright.process.wire_types import WIRE_TYPES, WireType
from beadwright.process.wires import METRIC_NAMES, size_of
from beadwright.typed_number import short
from beadwright.units import System
from beadwright_site.forms.entries import Option


def wire_choices() -> list[tuple[str, str, str]]:
    """Return value, word and a word under it for each wire, with the gas its class is for."""
    return [(wire.name, wire.name, _kind(wire)) for wire in WIRE_TYPES.values()]


def _kind(wire: WireType) -> str:
    """The kind, and the gas where the class is made for one: the richest it takes by its name."""
    if not wire.gases.plain:
        return wire.kind
    gas = next(gas.name for gas in GASES.values() if gas.co2 == wire.gases.co2[1])
    return f"{wire.kind}, {gas}"


def size_options(wire: str, wanted: str, system: System) -> tuple[Option, ...]:
    """Return the sizes a wire is made in; another size asked for stays, and says so.

    Args:
        wire: Classification as typed; all sizes if it is none.
        wanted: Size chosen or typed.
        system: Which name comes first.
    """
    try:
        chosen = size_of(wanted)
    except BeadwrightError:
        chosen = wanted
    known = next(
        (t for name, t in WIRE_TYPES.items() if name.lower() == wire.strip().lower()), None
    )
    made = known.sizes if known is not None else tuple(METRIC_NAMES)
    options = [_option(inch, system, "", inch == chosen) for inch in METRIC_NAMES if inch in made]
    if not any(option.chosen for option in options):
        said = _option(chosen, system, "not made", True) if chosen in METRIC_NAMES else None
        options.append(said or Option(wanted, short(wanted), "not known", True))
    return tuple(options)


def _option(inch: str, system: System, under: str, chosen: bool) -> Option:
    bare, metric = inch.removesuffix("in"), METRIC_NAMES[inch]
    word, other = (metric, bare) if system == "si" else (bare, metric)
    return Option(inch, word, under or other, chosen)
