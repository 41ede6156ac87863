"""Drawings in whole millimeters, for the tests that hold them corner by corner."""

from collections.abc import Iterable

import pytest

from beadwright.joint.groove_joints import Groove
from beadwright.joint.joints import XY, JointKind, JointShape

Points = Iterable[tuple[float, float]]


def near(points: Points, by_hand: Points) -> bool:
    """Whether points [m] are those given [mm]."""
    found = [(x * 1e3, y * 1e3) for x, y in points]
    wanted = list(by_hand)
    return len(found) == len(wanted) and all(
        one == pytest.approx(other, abs=1e-6) for one, other in zip(found, wanted, strict=True)
    )


def rectangle(left: float, bottom: float, right: float, top: float) -> list[XY]:
    return [(left, bottom), (right, bottom), (right, top), (left, top)]


def dimensions(shape: JointShape) -> dict[str, list[float]]:
    """Ends and value of each dimension [mm]."""
    return {
        d.name: [round(v * 1e3, 6) + 0.0 for v in (*d.start, *d.end, d.value_m)]
        for d in shape.dimensions
    }


def about(*values: float) -> object:
    return pytest.approx(values, abs=1e-6)


def mm(value: float) -> object:
    return pytest.approx(value * 1e-3, rel=1e-7, abs=1e-12)


def mm2(value: float) -> object:
    return pytest.approx(value * 1e-6, rel=1e-7)


def mm_groove(kind: JointKind, angle: float, gap: float, depth: float, depth2: float = 0.0,
              *, complete: bool = True, backed: bool = False) -> Groove:  # fmt: skip
    return Groove(kind, angle, gap / 1e3, depth / 1e3, depth2 / 1e3, complete, backed)


def about_one(value: float) -> object:
    return pytest.approx(value, abs=1e-9)
