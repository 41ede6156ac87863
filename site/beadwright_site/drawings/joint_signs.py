"""A small section of each joint, to be known by at a glance; not to scale."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.joint.joints import JointKind


@dataclass(frozen=True, slots=True)
class JointSign:
    """A joint in a box 48 wide and 32 high.

    Attributes:
        plates: Path of the plates.
        weld: Path of the weld.
    """

    plates: str
    weld: str


JOINT_SIGNS: Mapping[JointKind, JointSign] = MappingProxyType({
    "tee": JointSign("M3 22H45V29H3ZM19 3H27V22H19Z", "M27 12V22H37Z"),
    "lap": JointSign("M3 18H45V26H3ZM3 9H25V18H3Z", "M25 9V18H34Z"),
    "corner": JointSign("M5 6H27V14H5ZM27 14H35V30H27Z", "M27 6V14H35A8 8 0 0 0 27 6Z"),
    "square": JointSign("M3 11H22V22H3ZM26 11H45V22H26Z", "M17 11Q24 6 31 11H26V22H22V11Z"),
    "v": JointSign("M3 10H14L22 23H3ZM45 10H34L26 23H45Z", "M14 10Q24 5 34 10L26 23H22Z"),
    "double-v": JointSign(
        "M3 7H16L23 16L16 25H3ZM45 7H32L25 16L32 25H45Z",
        "M16 7Q24 3 32 7L25 16L32 25Q24 29 16 25L23 16Z",
    ),
    "bevel": JointSign("M3 10H21V23H3ZM45 10H36L25 23H45Z", "M21 10Q28 5 36 10L25 23H21Z"),
    "double-bevel": JointSign(
        "M3 7H21V25H3ZM45 7H34L24 16L34 25H45Z",
        "M21 7Q28 3 34 7L24 16L34 25Q28 29 21 25Z",
    ),
    "tee-bevel": JointSign("M3 22H45V29H3ZM17 3H28V11L19 22H17Z", "M28 9L37 22H19L28 11Z"),
    "tee-double-bevel": JointSign(
        "M3 22H45V29H3ZM17 3H31V13L24 22L17 13Z",
        "M31 10L39 22H24L31 13ZM17 10L9 22H24L17 13Z",
    ),
    "plug": JointSign("M3 19H45V28H3ZM3 9H15V19H3ZM33 9H45V19H33Z", "M15 9Q24 5 33 9V19H15Z"),
    "slot": JointSign("M3 5H45V27H3Z", "M16 11H32A5 5 0 0 1 32 21H16A5 5 0 0 1 16 11Z"),
})  # fmt: skip
"""The sign of each joint: in section, of a slot from above."""
