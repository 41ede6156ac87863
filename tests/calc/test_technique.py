"""What the hand holds: reach of the tip and angles that keep an order."""

from itertools import pairwise, product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.joint.joints import JOINTS
from beadwright.process.filter_shade import least_shade
from beadwright.process.positions import POSITIONS, TRAVEL_RANGE_M_S, Mover, Orientation
from beadwright.process.tip_to_work import tip_to_work
from beadwright.process.transfer import Transfer
from beadwright.process.wires import WIRE_TYPES, wire_of
from beadwright.setting.torch import torch

INCH = 0.0254
MOVERS: tuple[Mover, ...] = ("hand", "track", "robot")


@pytest.mark.parametrize("name", WIRE_TYPES)
@pytest.mark.parametrize("transfer", ["short", "spray"])
def test_thicker_wire_is_never_held_closer(name: str, transfer: Transfer) -> None:
    reaches = [tip_to_work(wire_of(name, size), transfer) for size in WIRE_TYPES[name].sizes]
    for thin, thick in pairwise(reaches):
        assert all(one <= other for one, other in zip(thin, thick, strict=True))
    for low, set_, high in reaches:
        # A pipefitter's tape: sixteenths, 1/4 to 1-1/4 in.
        assert low < high
        assert low <= set_ <= high
        for reach in (low, set_, high):
            assert reach * (1 + 1e-9) >= INCH / 4
            assert reach <= 1.25 * INCH * (1 + 1e-9)
            assert reach / INCH * 16 == pytest.approx(round(reach / INCH * 16), abs=1e-6)


@pytest.mark.parametrize("name", WIRE_TYPES)
def test_an_open_arc_is_held_no_closer_than_a_shorting_one(name: str) -> None:
    for size in WIRE_TYPES[name].sizes:
        wire = wire_of(name, size)
        for short, spray in zip(
            tip_to_work(wire, "short"), tip_to_work(wire, "spray"), strict=True
        ):
            assert short <= spray


def test_angles_are_in_order_and_within_reach() -> None:
    """Over 20-25 degrees is poor (machine manuals), but spray is pushed to 30 (common practice)."""
    transfers: tuple[Transfer, ...] = ("short", "globular", "spray", "pulse")
    orientations: list[Orientation] = [position.orientation for position in POSITIONS.values()]
    wrong: list[str] = []
    for joint, orientation, transfer in product(JOINTS, orientations, transfers):
        held = torch(joint, orientation, transfer)
        low, set_, high = held.travel_angle
        top = 30 if transfer in ("spray", "pulse") else 25
        work_low, work_set, work_high = held.work_angle
        if not (
            0 < low < set_ < high <= top
            and 0 < work_low < work_set < work_high <= 95
            and held.way in ("push", "drag")
            and held.aim
        ):
            wrong.append(f"{joint}, {orientation}, {transfer}: {held}")
    assert not wrong, "\n".join(wrong)


@given(st.floats(1, 499), st.floats(1, 499))
def test_more_current_never_asks_for_a_lighter_filter(one: float, other: float) -> None:
    low, high = sorted((one, other))
    assert least_shade(low) <= least_shade(high)


@pytest.mark.parametrize("orientation", [position.orientation for position in POSITIONS.values()])
def test_a_machine_moves_at_least_as_fast_as_a_hand(orientation: Orientation) -> None:
    tops = [TRAVEL_RANGE_M_S[mover, orientation][1] for mover in MOVERS]
    assert tops == sorted(tops)
    for mover in MOVERS:
        low, high = TRAVEL_RANGE_M_S[mover, orientation]
        assert 0 < low < high
        # Uphill the pool sags first: never faster than downhill or flat.
        assert TRAVEL_RANGE_M_S[mover, "vertical-up"][1] <= high
