"""The entries a joint needs; the other entries do not apply to it."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.joint.joints import JointKind

JOINT_KEYS = (
    "plate", "plate2", "corner", "skew", "leg", "leg2", "gap", "angle", "root_face", "depth",
    "depth2", "backing", "back", "gouge_depth", "hole", "slot_length", "reinforcement",
    "weld_length", "pitch",
)  # fmt: skip
"""Every entry that some joints need and others do not, in the order of the form."""

_BACK = ("back", "gouge_depth")
_FILLET = ("plate", "plate2", "leg", "leg2", "gap", "reinforcement", "weld_length", "pitch")
_GROOVE = ("plate", "plate2", "angle", "root_face", "gap", "depth", "reinforcement", "weld_length")
_CLOSED = ("plate", "plate2", "corner", "gap", "reinforcement", "weld_length")

ENTRIES: Mapping[JointKind, tuple[str, ...]] = MappingProxyType(
    {
        "tee": ("skew", *_FILLET),
        "lap": _FILLET,
        "corner": ("corner", *_FILLET),
        "square": ("plate", "plate2", "gap", "depth", "backing", *_BACK, "reinforcement",
                   "weld_length"),
        "v": (*_GROOVE, "backing", *_BACK),
        "double-v": (*_GROOVE, "depth2", *_BACK),
        "bevel": (*_GROOVE, "backing", *_BACK),
        "double-bevel": (*_GROOVE, "depth2", *_BACK),
        "tee-bevel": (*_GROOVE, "leg", "backing", *_BACK),
        "tee-double-bevel": (*_GROOVE, "leg", "depth2", *_BACK),
        "plug": ("plate", "plate2", "hole", "depth", "pitch"),
        "slot": ("plate", "plate2", "hole", "slot_length", "depth", "pitch"),
    }
)  # fmt: skip
"""What each joint asks for."""


def entries_of(joint: JointKind, corner: str = "open") -> frozenset[str]:
    """Return the keys a joint asks for among ``JOINT_KEYS``.

    Args:
        joint: The joint [-].
        corner: How far a corner's edges stand apart; a closed one has no legs [-].
    """
    if joint == "corner" and corner == "closed":
        return frozenset(_CLOSED)
    return frozenset(ENTRIES[joint])
