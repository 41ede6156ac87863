"""What the hand holds: tip-to-work, torch angles, where to aim; and the filter shade."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.joint.joints import JointKind
from beadwright.process.positions import Lie
from beadwright.process.transfer import Transfer
from beadwright.process.wires import Kind, Wire

_IN = 0.0254
_Three = tuple[float, float, float]

_SHORT: Mapping[str, _Three] = MappingProxyType(
    {
        "0.023in": (1 / 4, 5 / 16, 3 / 8),
        "0.030in": (1 / 4, 3 / 8, 1 / 2),
        "0.035in": (1 / 4, 3 / 8, 1 / 2),
        "0.040in": (1 / 4, 7 / 16, 5 / 8),
        "0.045in": (1 / 4, 1 / 2, 5 / 8),
        "0.052in": (3 / 8, 1 / 2, 5 / 8),
        "1/16in": (3 / 8, 5 / 8, 3 / 4),
    }
)
_OPEN_SOLID: Mapping[str, _Three] = MappingProxyType(
    {
        "0.023in": (3 / 8, 1 / 2, 5 / 8),
        "0.030in": (1 / 2, 1 / 2, 3 / 4),
        "0.035in": (1 / 2, 5 / 8, 3 / 4),
        "0.040in": (1 / 2, 5 / 8, 7 / 8),
        "0.045in": (1 / 2, 5 / 8, 1.0),
        "0.052in": (5 / 8, 3 / 4, 1.0),
        "1/16in": (3 / 4, 7 / 8, 9 / 8),
    }
)
_OPEN_CORED: Mapping[str, _Three] = MappingProxyType(
    {
        "0.035in": (1 / 2, 5 / 8, 3 / 4),
        "0.040in": (1 / 2, 11 / 16, 7 / 8),
        "0.045in": (1 / 2, 3 / 4, 1.0),
        "0.052in": (5 / 8, 7 / 8, 9 / 8),
        "1/16in": (3 / 4, 1.0, 5 / 4),
    }
)
_FLUX: Mapping[str, _Three] = MappingProxyType(
    {
        "0.035in": (1 / 2, 5 / 8, 3 / 4),
        "0.045in": (1 / 2, 3 / 4, 1.0),
        "0.052in": (5 / 8, 3 / 4, 1.0),
        "1/16in": (3 / 4, 1.0, 5 / 4),
    }
)
_OPEN: Mapping[Kind, Mapping[str, _Three]] = MappingProxyType(
    {"solid": _OPEN_SOLID, "metal-cored": _OPEN_CORED, "flux-cored": _FLUX}
)


@dataclass(frozen=True, slots=True)
class Torch:
    """How the torch is held.

    Attributes:
        way: push, drag or either.
        travel_angle: Degrees off square along the travel: low, set, high.
        work_angle: Degrees from the plate lying down: low, set, high.
        aim: Where to point, in words.
        source: Source id.
    """

    way: str
    travel_angle: _Three
    work_angle: _Three
    aim: str
    source: str


def tip_to_work(wire: Wire, transfer: Transfer) -> _Three:
    """Return low, set and high contact tip to work [m].

    Source: power-source condition tables (10 mm to 110 A, 15 mm at 120-160 A, 80/20, rows
    for 1.0 mm wire among them); published
    E70C-6M sheet (0.045 in 3/4-1 in, 1/16 in 1-1¼ in); wire extension 1/4-1/2 in short circuit
    and 1/2-1 in otherwise (from memory); metal-cored low ends and set points: common practice,
    at least 1/2 to 5/8 in from about 250 in/min up. 0.040 in lies between
    its neighbours. Flux-cored: 1/2-1 in to 0.052 in, 3/4-1¼ in
    above (data sheets of class E71T-1, from memory).

    Args:
        wire: The wire [-].
        transfer: The mode planned [-].
    """
    short = transfer == "short" and wire.kind != "flux-cored"
    table = _SHORT if short else _OPEN[wire.kind]
    low, set_, high = table[wire.size]
    return low * _IN, set_ * _IN, high * _IN


def tip_position(transfer: Transfer) -> str:
    """Return where the contact tip stands in the nozzle.

    Source: machine manuals: short circuit flush to 1/8 in out; spray recessed 1/8 to 1/4 in.

    Args:
        transfer: The mode planned [-].
    """
    if transfer == "short":
        return "flush to 1/8 in out of the nozzle"
    return "1/8 in inside the nozzle"


_WORK: Mapping[JointKind, tuple[_Three, str]] = MappingProxyType(
    {
        "tee": ((40.0, 45.0, 50.0), "into the root, split between the plates"),
        "lap": ((55.0, 60.0, 70.0), "on the lower plate, washing up to the edge"),
        "corner": ((40.0, 45.0, 50.0), "into the corner, split between the edges"),
        "square": ((85.0, 90.0, 95.0), "into the gap, square to the plate"),
        "v": ((85.0, 90.0, 95.0), "down the middle of the groove"),
        "double-v": ((85.0, 90.0, 95.0), "down the middle of the groove"),
        "bevel": ((70.0, 80.0, 90.0), "into the foot of the square edge"),
        "double-bevel": ((70.0, 80.0, 90.0), "into the foot of the square edge"),
        "tee-bevel": ((35.0, 45.0, 55.0), "into the root of the groove"),
        "tee-double-bevel": ((35.0, 45.0, 55.0), "into the root of the groove"),
        "plug": ((80.0, 90.0, 95.0), "round the foot of the hole first, then fill inward"),
        "slot": ((80.0, 90.0, 95.0), "round the foot of the slot first, then fill inward"),
    }
)


def torch(joint: JointKind, lie: Lie, transfer: Transfer, kind: Kind = "solid") -> Torch:
    """Return torch angles for a joint, position and mode.

    Source: machine manuals: travel angle 5-15°, poor over 20-25°; fillet work angle about 45°,
    leaning to the plate when an edge is lapped; trade textbook: overhead 5-15° drag. In spray the
    trade pushes 15-30° (common practice); vertical-down drag is common practice, and so is dragging
    flux-cored wire flat and horizontal so that the slag stays behind.

    Args:
        joint: The joint [-].
        lie: Position in words [-].
        transfer: The mode planned [-].
        kind: Solid, metal-cored or flux-cored [-].
    """
    work, aim = _WORK[joint]
    if lie in ("vertical-down", "overhead"):
        return Torch("drag", (5.0, 10.0, 15.0), work, aim, "torch-manual")
    if kind == "flux-cored" and lie != "vertical-up":
        return Torch("drag", (5.0, 15.0, 25.0), work, aim, "practice")
    if transfer in ("spray", "pulse") and lie != "vertical-up":
        return Torch("push", (5.0, 15.0, 30.0), work, aim, "practice")
    return Torch("push", (5.0, 10.0, 15.0), work, aim, "torch-manual")


def least_shade(current_a: float) -> int:
    """Return the least filter shade for gas metal arc [-].

    Source: OSHA 29 CFR 1910.133(a)(5): below 60 A 7; 60 to 500 A 10. Darker is usual:
    ANSI Z49.1:2012 suggests 11 to 14.

    Args:
        current_a: Welding current [A].
    """
    return 7 if current_a < 60 else 10
