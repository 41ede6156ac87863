"""What current a hand holds out of position: the pool runs before the wire gives out."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.process.positions import Orientation
from beadwright.process.transfer import Transfer
from beadwright.process.wire_kinds import Kind
from beadwright.process.wires import Wire

_Held = tuple[float, float]

_FLUX_UP: Mapping[str, _Held] = MappingProxyType(
    {"0.035in": (160, 195), "0.045in": (200, 235), "0.052in": (215, 255), "1/16in": (228, 270)}
)
_FLUX_OVER: Mapping[str, _Held] = MappingProxyType(
    {"0.035in": (165, 200), "0.045in": (210, 250), "0.052in": (225, 265), "1/16in": (235, 280)}
)
_PULSE_UP: Mapping[str, _Held] = MappingProxyType(
    {
        "0.023in": (80, 105),
        "0.030in": (95, 125),
        "0.035in": (115, 145),
        "0.040in": (130, 165),
        "0.045in": (145, 185),
        "0.052in": (160, 200),
        "1/16in": (175, 220),
    }
)
_PULSE_OVER: Mapping[str, _Held] = MappingProxyType(
    {
        "0.023in": (88, 115),
        "0.030in": (105, 135),
        "0.035in": (128, 160),
        "0.040in": (145, 175),
        "0.045in": (160, 195),
        "0.052in": (175, 215),
        "1/16in": (190, 235),
    }
)

HELD_A: Mapping[tuple[Kind, Orientation], Mapping[str, _Held]] = MappingProxyType(
    {
        ("flux-cored", "vertical-up"): _FLUX_UP,
        ("flux-cored", "overhead"): _FLUX_OVER,
        ("solid", "vertical-up"): _PULSE_UP,
        ("solid", "vertical-down"): _PULSE_OVER,
        ("solid", "overhead"): _PULSE_OVER,
        ("metal-cored", "vertical-up"): _PULSE_UP,
        ("metal-cored", "vertical-down"): _PULSE_OVER,
        ("metal-cored", "overhead"): _PULSE_OVER,
    }
)
"""Current a hand sets and the most it holds, open arc and pulse, by size [A].

Source: overhead flux-cored 0.045 in: a sample procedure, 180-220 A root, 200-240 A fill (found
second-hand). Vertical-up, 0.045 in: flux-cored 180-220 A, solid pulsed 120-165 A, metal-cored
pulsed 130-180 A; 0.052 in flux-cored 190-240 A, 1/16 in 200-250 A (from memory); one data sheet
says 220-250 A can be held (found). Overhead, pulsed, to about 190 A (from memory). The other sizes
stand to these as the wires' diameters: common practice.
"""

SHORT_HELD: Mapping[Orientation, tuple[float, float]] = MappingProxyType(
    {
        "flat": (1.0, 1.0),
        "horizontal": (1.0, 1.0),
        "vertical-up": (0.80, 0.85),
        "vertical-down": (0.95, 1.0),
        "overhead": (0.85, 0.90),
    }
)
"""Short circuit out of position over flat: what is set, and what is the most [-].

Source: a technician's list runs vertical at 0.67 to 0.73 of the horizontal current (found
second-hand); a power-source manual keeps the setting vertical-down (found). Between: common
practice.
"""


def held_current(wire: Wire, orientation: Orientation, transfer: Transfer) -> _Held | None:
    """Return what a hand sets out of position in an open arc and the most it holds [A].

    None in flat and horizontal, and in short circuit, which ``SHORT_HELD`` rules.

    Source: ``HELD_A``; ``wire_kinds.KINDS`` for metal-cored wire's share.

    Args:
        wire: The wire [-].
        orientation: Position in words [-].
        transfer: The mode planned [-].
    """
    sizes = HELD_A.get((wire.kind, orientation))
    if sizes is None or transfer == "short" or wire.size not in sizes:
        return None
    share = wire.traits.held_share
    usual, most = sizes[wire.size]
    return usual * share, most * share
