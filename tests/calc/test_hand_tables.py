"""A consistency check: what the hand holds and how fast it moves, typed twice, in shop fractions.

Where print exists, rows of ``reference`` hold these to it; the rest is common practice, and here a
slip of one cell shows.
"""

from collections.abc import Mapping
from fractions import Fraction
from math import pi

import pytest

from beadwright.errors import UnknownEntryError
from beadwright.joint.joints import JointKind
from beadwright.process.filter_shade import least_shade
from beadwright.process.positions import (
    COMFORTABLE_TRAVEL_M_S,
    TRAVEL_RANGE_M_S,
    Mover,
    Orientation,
    position_of,
)
from beadwright.process.tip_to_work import tip_position, tip_to_work
from beadwright.process.transfer import Transfer
from beadwright.process.wire_kinds import Kind
from beadwright.process.wire_types import WIRE_TYPES
from beadwright.process.wires import wire_of
from beadwright.setting.torch import torch

INCH = 0.0254

TIP_TO_WORK = """
ER70S-6 short 0.023in 1/4 5/16 3/8
ER70S-6 short 0.030in 1/4 3/8 1/2
ER70S-6 short 0.035in 1/4 3/8 1/2
ER70S-6 short 0.040in 1/4 3/8 5/8
ER70S-6 short 0.045in 1/4 3/8 5/8
ER70S-6 short 0.052in 3/8 1/2 5/8
ER70S-6 short 1/16in 3/8 1/2 3/4
ER70S-6 spray 0.023in 3/8 1/2 5/8
ER70S-6 spray 0.030in 1/2 1/2 3/4
ER70S-6 spray 0.035in 1/2 5/8 3/4
ER70S-6 spray 0.040in 1/2 5/8 7/8
ER70S-6 spray 0.045in 1/2 3/4 1
ER70S-6 spray 0.052in 5/8 7/8 1
ER70S-6 spray 1/16in 3/4 7/8 9/8
E70C-6M spray 0.035in 1/2 5/8 3/4
E70C-6M spray 0.040in 1/2 11/16 7/8
E70C-6M spray 0.045in 5/8 7/8 1
E70C-6M spray 0.052in 3/4 1 9/8
E70C-6M spray 1/16in 3/4 9/8 5/4
E71T-1C spray 0.035in 1/2 5/8 3/4
E71T-1C spray 0.045in 1/2 3/4 1
E71T-1C spray 0.052in 5/8 3/4 1
E71T-1C spray 1/16in 3/4 1 5/4
E71T-1C short 0.045in 1/2 3/4 1
E70C-6M short 0.035in 3/8 1/2 3/4
E70C-6M short 0.040in 1/2 1/2 3/4
E70C-6M short 0.045in 1/2 5/8 1
E70C-6M short 0.052in 1/2 3/4 9/8
E70C-6M short 1/16in 5/8 7/8 5/4
"""


@pytest.mark.parametrize("row", TIP_TO_WORK.strip().splitlines())
def test_tip_to_work(row: str) -> None:
    wire, mode, size, *reach = row.split()
    transfer: Transfer = "short" if mode == "short" else "spray"
    inches = tuple(float(Fraction(text)) for text in reach)
    found = tip_to_work(wire_of(wire, size), transfer)
    assert tuple(metres / INCH for metres in found) == pytest.approx(inches)


def test_where_the_tip_stands() -> None:
    assert tip_position("short") == "flush to 1/8 in out of the nozzle"
    assert {tip_position(mode) for mode in ("globular", "spray", "pulse")} == {
        "1/8 in inside the nozzle"
    }


@pytest.mark.parametrize(
    ("joint", "angles"),
    [
        ("tee", (40, 45, 50)), ("lap", (55, 60, 70)), ("corner", (40, 45, 50)),
        ("square", (85, 90, 95)), ("v", (85, 90, 95)), ("double-v", (85, 90, 95)),
        ("bevel", (70, 80, 90)), ("double-bevel", (70, 80, 90)), ("tee-bevel", (35, 45, 55)),
        ("tee-double-bevel", (35, 45, 55)), ("plug", (80, 90, 95)), ("slot", (80, 90, 95)),
    ],
)  # fmt: skip
def test_work_angle(joint: JointKind, angles: tuple[float, float, float]) -> None:
    assert torch(joint, "flat", "short").work_angle == angles


@pytest.mark.parametrize(
    ("kind", "orientation", "mode", "way", "angles"),
    [
        ("solid", "flat", "short", "push", (5, 10, 15)),
        ("solid", "flat", "globular", "push", (5, 10, 15)),
        ("solid", "horizontal", "spray", "push", (5, 15, 30)),
        ("solid", "flat", "pulse", "push", (5, 15, 30)),
        ("solid", "vertical-up", "pulse", "push", (5, 10, 15)),
        ("solid", "vertical-up", "short", "push", (5, 10, 15)),
        ("solid", "vertical-down", "short", "drag", (5, 10, 15)),
        ("solid", "overhead", "pulse", "drag", (5, 10, 15)),
        ("flux-cored", "flat", "spray", "drag", (5, 15, 25)),
        ("flux-cored", "horizontal", "spray", "drag", (5, 15, 25)),
        ("flux-cored", "vertical-up", "spray", "push", (5, 10, 15)),
        ("flux-cored", "overhead", "spray", "drag", (5, 10, 15)),
    ],
)
def test_travel_angle(
    kind: Kind,
    orientation: Orientation,
    mode: Transfer,
    way: str,
    angles: tuple[float, float, float],
) -> None:
    held = torch("tee", orientation, mode, kind)
    assert (held.way, held.travel_angle) == (way, angles)


def test_least_shade() -> None:
    """OSHA 29 CFR 1910.133(a)(5), gas metal arc: under 60 A 7, from 60 A 10."""
    assert [least_shade(amps) for amps in (1, 59.9, 60, 61, 500)] == [7, 7, 10, 10, 10]


# By hand, on a track, by a robot [in/min].
TRAVEL = """
flat 6 40 4 60 6 80
horizontal 6 40 4 60 6 80
vertical-up 3 8 3 15 3 20
vertical-down 8 36 8 60 8 80
overhead 4 20 4 40 5 60
"""

COMFORTABLE = """
flat 9 24 8 32 12 55
horizontal 9 24 8 32 12 55
vertical-up 3.5 7 3.5 10 4 14
vertical-down 10 26 10 40 12 55
overhead 5 14 5 24 6 36
"""


@pytest.mark.parametrize(
    ("table", "held"), [(TRAVEL, TRAVEL_RANGE_M_S), (COMFORTABLE, COMFORTABLE_TRAVEL_M_S)]
)
def test_travel_held(
    table: str, held: Mapping[tuple[Mover, Orientation], tuple[float, float]]
) -> None:
    movers: tuple[Mover, ...] = ("hand", "track", "robot")
    typed = dict[tuple[str, str], tuple[float, float]]()
    for row in table.strip().splitlines():
        orientation, *ends = row.split()
        for place, mover in enumerate(movers):
            typed[mover, orientation] = float(ends[2 * place]), float(ends[2 * place + 1])
    found = {
        (str(mover), str(orientation)): (low / INCH * 60, high / INCH * 60)
        for (mover, orientation), (low, high) in held.items()
    }
    assert set(found) == set(typed)
    for key, range_typed in typed.items():
        assert found[key] == pytest.approx(range_typed), key


@pytest.mark.parametrize("key", COMFORTABLE_TRAVEL_M_S)
def test_comfortable_travel_is_inside_what_is_held(key: tuple[Mover, Orientation]) -> None:
    (least, most), (slow, fast) = TRAVEL_RANGE_M_S[key], COMFORTABLE_TRAVEL_M_S[key]
    assert least < slow < fast < most


@pytest.mark.parametrize(
    ("position", "code", "planned"),
    [
        ("1F", 1 / 2, 3 / 8), ("2F", 3 / 8, 5 / 16), ("3F-up", 1 / 2, 3 / 8),
        ("3F-down", 3 / 16, 3 / 16), ("4F", 5 / 16, 1 / 4),
    ],
)  # fmt: skip
def test_one_pass_by_position(position: str, code: float, planned: float) -> None:
    """AWS D1.1:2020 Table 5.1 (second-hand); what is planned: AISC, and common practice."""
    found = position_of(position)
    assert found.single_pass_leg_m / INCH == pytest.approx(code)
    assert found.practical_leg_m / INCH == pytest.approx(planned)


@pytest.mark.parametrize("name", ["9F", "6G", "PZ", "x", ""])
def test_no_such_position(name: str) -> None:
    with pytest.raises(UnknownEntryError):
        position_of(name)


def test_fill_of_the_wires() -> None:
    """Percent of the mass: the middle of what is common for each kind, rounded; solid has none."""
    percent = {name: 100 * wire.fill_share for name, wire in WIRE_TYPES.items()}
    assert percent == pytest.approx(
        {"ER70S-6": 0, "ER70S-3": 0, "ER70S-2": 0, "ER80S-D2": 0, "E70C-6M": 18, "E80C-Ni1": 18,
         "E71T-1C": 15, "E71T-1M": 15}
    )  # fmt: skip


def test_the_section_that_carries_current() -> None:
    """Solid: the whole wire. Cored: mass less fill at 7850 kg/m³."""
    solid = wire_of("ER70S-6", "0.045in")
    assert solid.conducting_area_m2 == pytest.approx(pi / 4 * (0.045 * INCH) ** 2)
    cored = wire_of("E70C-6M", "0.045in")
    sheath = cored.linear_mass_kg_m * 0.82 / 7850
    assert cored.conducting_area_m2 == pytest.approx(sheath)
