"""How the torch is held: travel angle, work angle, where to aim."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.joint.joints import JointKind
from beadwright.phrases import Phrase, say
from beadwright.process.positions import Orientation
from beadwright.process.transfer import Transfer
from beadwright.process.wire_kinds import KINDS, Kind

_Three = tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class Torch:
    """How the torch is held.

    Attributes:
        way: push, drag or either.
        travel_angle: Degrees off square along the travel: low, set, high.
        work_angle: Degrees from the horizontal plate: low, set, high.
        aim: Where to point.
        source: Source id.
    """

    way: str
    travel_angle: _Three
    work_angle: _Three
    aim: Phrase
    source: str


_WORK: Mapping[JointKind, tuple[_Three, Phrase]] = MappingProxyType(
    {
        "tee": ((40.0, 45.0, 50.0), say("setting.aim-split-plates")),
        "lap": ((55.0, 60.0, 70.0), say("setting.aim-lower-plate")),
        "corner": ((40.0, 45.0, 50.0), say("setting.aim-split-edges")),
        "square": ((85.0, 90.0, 95.0), say("setting.aim-into-gap")),
        "v": ((85.0, 90.0, 95.0), say("setting.aim-down-middle")),
        "double-v": ((85.0, 90.0, 95.0), say("setting.aim-down-middle")),
        "bevel": ((70.0, 80.0, 90.0), say("setting.aim-foot-of-edge")),
        "double-bevel": ((70.0, 80.0, 90.0), say("setting.aim-foot-of-edge")),
        "tee-bevel": ((35.0, 45.0, 55.0), say("setting.aim-root-of-groove")),
        "tee-double-bevel": ((35.0, 45.0, 55.0), say("setting.aim-root-of-groove")),
        "plug": ((80.0, 90.0, 95.0), say("setting.aim-round-hole")),
        "slot": ((80.0, 90.0, 95.0), say("setting.aim-round-slot")),
    }
)


def torch(
    joint: JointKind, orientation: Orientation, transfer: Transfer, kind: Kind = "solid"
) -> Torch:
    """Return torch angles for a joint, position and mode.

    Source: machine manuals: travel angle 5-15°, poor over 20-25°; fillet work angle about 45°,
    leaning to the plate when an edge is lapped; trade textbook: overhead 5-15° drag. In spray the
    trade pushes 15-30° (common practice); vertical-down drag is common practice, and so is dragging
    flux-cored wire flat and horizontal so that the slag stays behind.

    Args:
        joint: The joint [-].
        orientation: Position in words [-].
        transfer: The mode planned [-].
        kind: Solid, metal-cored or flux-cored [-].
    """
    work, aim = _WORK[joint]
    if orientation in ("vertical-down", "overhead"):
        return Torch("drag", (5.0, 10.0, 15.0), work, aim, "torch-manual")
    if KINDS[kind].slag and orientation != "vertical-up":
        return Torch("drag", (5.0, 15.0, 25.0), work, aim, "practice")
    if transfer in ("spray", "pulse") and orientation != "vertical-up":
        return Torch("push", (5.0, 15.0, 30.0), work, aim, "practice")
    return Torch("push", (5.0, 10.0, 15.0), work, aim, "torch-manual")
