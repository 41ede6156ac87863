"""A consistency check of the tables of the wires: figures chosen where print gives but a range.

What print gives is among the reference rows, and holds each figure to its range. Here each figure
stands a second time, so that a slip of one cell shows. It is no proof that the figure is right.
"""

import pytest

from beadwright.joint.joints import JointKind
from beadwright.process.arc import open_window
from beadwright.process.burnoff import CONSTANTS
from beadwright.process.deposition import deposition_efficiency
from beadwright.process.gases import Gas, gas_of
from beadwright.process.positions import Orientation
from beadwright.process.tip_to_work import tip_to_work
from beadwright.process.transfer import (
    OPEN_TOP_A,
    SHORT_RANGE_A,
    TRANSITION_A,
    Transfer,
    gas_refused,
    spray_refused,
    transition_current,
)
from beadwright.process.transfer_regions import edges, globular_current, transfer_at
from beadwright.process.wire_kinds import Kind
from beadwright.process.wire_ranges import usual_current
from beadwright.process.wires import wire_of
from beadwright.setting.torch import torch

INCH = 0.0254
SOLID, CORED = wire_of("ER70S-6", "0.045in"), wire_of("E70C-6M", "0.045in")
C_WIRE, M_WIRE = wire_of("E71T-1C", "0.045in"), wire_of("E71T-1M", "0.045in")


def mix(co2: float = 0.0, oxygen: float = 0.0, helium: float = 0.0) -> Gas:
    return Gas("this mix", 1 - co2 - oxygen - helium, co2, oxygen, "", helium)


@pytest.mark.parametrize(
    ("wire", "gas", "mode", "low", "typical", "high"),
    [
        ("ER70S-6", "98/2 O2", "spray", 95, 98, 98),
        ("ER70S-6", "90/10", "spray", 95, 97, 98),
        ("ER70S-6", "80/20", "pulse", 95, 96, 98),
        ("ER70S-6", "75/25", "spray", 95, 95.5, 98),
        ("ER70S-6", "50/50", "spray", 95, 95.5, 98),
        ("ER70S-6", "75/25", "short", 90, 93, 96),
        ("ER70S-6", "50/50", "short", 100 * (0.9 - 0.02 / 3), 100 * (0.93 - 0.02 / 3), 95),
        ("ER70S-6", "CO2", "short", 88, 91, 93),
        ("ER70S-6", "CO2", "globular", 88, 90, 93),
        ("E70C-6M", "90/10", "short", 87, 89, 92),
        ("E70C-6M", "90/10", "spray", 88, 91, 95),
        ("E71T-1C", "CO2", "spray", 82, 85, 88),
        ("E71T-1M", "75/25", "spray", 83, 87, 90),
    ],
)
def test_efficiency(
    wire: str, gas: str, mode: Transfer, low: float, typical: float, high: float
) -> None:
    found = deposition_efficiency(wire_of(wire, "0.045in"), gas_of(gas), mode)
    assert [100 * share for share in found] == pytest.approx([low, typical, high], abs=1e-9)


@pytest.mark.parametrize(
    ("name", "size", "of_solid"),
    [
        ("E70C-6M", "0.045in", 0.931 * 0.82),
        ("E70C-6M", "0.040in", 0.93 * 0.82),
        ("E70C-6M", "1/16in", 0.920 * 0.82),
        ("E80C-Ni1", "0.052in", 0.926 * 0.82),
        ("E71T-1C", "0.035in", 0.86 * 0.85),
        ("E71T-1M", "1/16in", 0.86 * 0.85),
    ],
)
def test_the_section_that_carries_current(name: str, size: str, of_solid: float) -> None:
    """18 % of metal-cored and 15 % of flux-cored wire is powder."""
    wire = wire_of(name, size)
    whole = 3.141592653589793 / 4 * wire.diameter_m**2
    assert wire.conducting_area_m2 / whole == pytest.approx(of_solid, rel=1e-9)
    assert wire_of("ER70S-6", "0.045in").material.density_kg_m3 == 7850


@pytest.mark.parametrize(
    ("kind", "size", "band"),
    [("solid", "0.023in", 0.13), ("flux-cored", "0.035in", 0.15), ("flux-cored", "0.045in", 0.15),
     ("flux-cored", "0.052in", 0.15), ("flux-cored", "1/16in", 0.15)],
)  # fmt: skip
def test_bands(kind: Kind, size: str, band: float) -> None:
    assert CONSTANTS[kind, size].band == band


def test_room_of_flux_cored_volts() -> None:
    """±2.5 V about the line: 23.5 to 28.5 V at 200 A, 0.045 in, CO2."""
    assert open_window(200, gas_of("CO2"), "flux-cored", "0.045in") == pytest.approx(
        (23.5, 26.0, 28.5)
    )


@pytest.mark.parametrize(
    ("wire", "size", "mode", "sixteenths"),
    [
        ("ER70S-6", "0.023in", "short", (4, 5, 6)),
        ("ER70S-6", "0.023in", "spray", (6, 8, 10)),
        ("ER70S-6", "0.040in", "short", (4, 6, 10)),
        ("ER70S-6", "0.040in", "spray", (8, 10, 14)),
        ("E70C-6M", "0.040in", "spray", (8, 11, 14)),
        ("E71T-1C", "0.035in", "spray", (8, 10, 12)),
        ("E71T-1C", "0.045in", "spray", (8, 12, 16)),
        ("E71T-1C", "0.052in", "spray", (10, 12, 16)),
        ("E71T-1C", "1/16in", "spray", (12, 16, 20)),
    ],
)
def test_tip_to_work(
    wire: str, size: str, mode: Transfer, sixteenths: tuple[int, int, int]
) -> None:
    found = tip_to_work(wire_of(wire, size), mode)
    assert [reach / INCH * 16 for reach in found] == pytest.approx(sixteenths)


@pytest.mark.parametrize(
    ("joint", "degrees"),
    [
        ("v", (85, 90, 95)), ("double-v", (85, 90, 95)),
        ("bevel", (70, 80, 90)), ("double-bevel", (70, 80, 90)),
        ("tee-bevel", (35, 45, 55)), ("tee-double-bevel", (35, 45, 55)),
        ("plug", (80, 90, 95)), ("slot", (80, 90, 95)),
    ],
)  # fmt: skip
def test_work_angles_of_grooves(joint: JointKind, degrees: tuple[float, ...]) -> None:
    assert torch(joint, "flat", "spray").work_angle == degrees


@pytest.mark.parametrize(
    ("orientation", "mode", "kind", "way", "degrees"),
    [
        ("horizontal", "spray", "metal-cored", "push", (5, 15, 30)),
        ("flat", "pulse", "solid", "push", (5, 15, 30)),
        ("vertical-up", "spray", "solid", "push", (5, 10, 15)),
        ("flat", "spray", "flux-cored", "drag", (5, 15, 25)),
        ("vertical-up", "spray", "flux-cored", "push", (5, 10, 15)),
        ("overhead", "spray", "flux-cored", "drag", (5, 10, 15)),
    ],
)
def test_travel_angles(
    orientation: Orientation, mode: Transfer, kind: Kind, way: str, degrees: tuple[float, ...]
) -> None:
    held = torch("tee", orientation, mode, kind)
    assert (held.way, held.travel_angle) == (way, degrees)


def test_the_top_of_the_thinnest_wire() -> None:
    """A tenth over the technician's 150 A."""
    assert OPEN_TOP_A["solid", "0.023in"] == 165
    assert SHORT_RANGE_A["0.023in"] == (30, 90)


@pytest.mark.parametrize(
    ("size", "low", "high"),
    [
        # Low ends: power-source manual's rule; tops: the same, 190 and 225 A the equipment sheet's.
        ("0.023in", 30, 90), ("0.030in", 40, 145), ("0.035in", 50, 190), ("0.045in", 75, 225),
        # Halfway between its neighbors, whole amps inward.
        ("0.040in", 63, 207),
        # Between the metal-cored sheet's short-arc rows and common practice.
        ("0.052in", 95, 240), ("1/16in", 140, 260),
    ],
)  # fmt: skip
def test_short_circuit_by_size(size: str, low: float, high: float) -> None:
    assert SHORT_RANGE_A[size] == (low, high)


@pytest.mark.parametrize(
    ("kind", "tops"),
    [
        ("solid", (165, 265, 290, 335, 380, 430, 450)),
        ("metal-cored", (260, 300, 340, 400, 460)),
        ("flux-cored", (250, 330, 350, 410)),
    ],
)
def test_usual_tops(kind: Kind, tops: tuple[float, ...]) -> None:
    """As told beside the table: equipment sheet, handbooks, sheets, common practice."""
    assert tuple(top for (of, _), top in OPEN_TOP_A.items() if of == kind) == tops


@pytest.mark.parametrize("size", TRANSITION_A)
def test_the_columns_of_the_transition_are_those_printed(size: str) -> None:
    """98/2 O2: MIG handbook Table 1-2; then 8, 15, 20 % CO2: supplier handbook, from memory."""
    assert [share for share, _ in TRANSITION_A[size]] == [0.0, 0.08, 0.15, 0.20]


def test_pulse_goes_down_to_four_tenths_of_the_transition() -> None:
    gas = gas_of("98/2 O2")
    low, high = usual_current(SOLID, gas, "pulse")
    assert low == pytest.approx(0.4 * 220)  # MIG handbook Table 1-2
    assert high == 380  # Machinery's Handbook, 31st ed., p. 1583, Table 5
    assert usual_current(SOLID, gas, "globular") == (225, 380)
    assert usual_current(SOLID, gas, "spray") == pytest.approx((220, 380))
    assert usual_current(C_WIRE, gas_of("CO2"), "short") == (150, 330)


# Where a limit of the gas stands, from both sides


@pytest.mark.parametrize(("co2", "refused"), [(0.20, False), (0.2005, True)])
def test_solid_wire_sprays_to_a_fifth_of_co2(co2: float, refused: bool) -> None:
    assert bool(spray_refused(SOLID, mix(co2=co2))) is refused


@pytest.mark.parametrize(("co2", "refused"), [(0.25, False), (0.2505, True)])
def test_metal_cored_wire_runs_and_sprays_to_a_quarter(co2: float, refused: bool) -> None:
    assert bool(spray_refused(CORED, mix(co2=co2))) is refused
    assert bool(gas_refused(CORED, mix(co2=co2))) is refused


@pytest.mark.parametrize(("oxygen", "refused"), [(0.10, False), (0.102, True)])
def test_oxygen_counts_half(oxygen: float, refused: bool) -> None:
    assert bool(spray_refused(SOLID, mix(co2=0.15, oxygen=oxygen))) is refused


@pytest.mark.parametrize(("helium", "refused"), [(0.40, False), (0.405, True)])
def test_spray_holds_to_two_fifths_of_helium(helium: float, refused: bool) -> None:
    assert bool(spray_refused(SOLID, mix(co2=0.05, helium=helium))) is refused


@pytest.mark.parametrize(("oxygen", "refused"), [(0.005, False), (0.0049, True), (0.0, True)])
def test_spray_wants_half_a_percent_of_something_active(oxygen: float, refused: bool) -> None:
    assert bool(spray_refused(SOLID, mix(oxygen=oxygen))) is refused


@pytest.mark.parametrize(
    ("co2", "refused"), [(0.1995, True), (0.20, False), (0.25, False), (0.2505, True)]
)
def test_flux_cored_wire_of_the_mixture_keeps_to_it(co2: float, refused: bool) -> None:
    """75-80 % argon, balance CO2: AWS A5.20 table in a textbook's copy, second-hand."""
    assert bool(gas_refused(M_WIRE, mix(co2=co2))) is refused
    assert gas_refused(M_WIRE, mix(co2=0.22, oxygen=0.01))
    assert gas_refused(M_WIRE, mix(co2=0.22, helium=0.01))


@pytest.mark.parametrize(
    ("oxygen", "share"), [(0.02, 1.0), (0.03, 0.98), (0.05, 0.94), (0.08, 0.94)]
)
def test_oxygen_lowers_the_transition_to_five_percent(oxygen: float, share: float) -> None:
    assert transition_current(SOLID, mix(oxygen=oxygen)) == pytest.approx(220 * share)


def test_an_open_arc_clear_of_short_circuit_has_no_least_current() -> None:
    """0.030 in, 75/25: foot 17.65 over short circuit's top at 16.65, and the slope is steeper."""
    assert globular_current(wire_of("ER70S-6", "0.030in"), gas_of("75/25")) == 0


def test_an_open_arc_that_parts_from_short_circuit_has_one() -> None:
    """0.035 in, 75/25: foot 8.5 + 2.25 V under that 16.65, 0.075 against 0.034 V/A: 143.9 A."""
    least = globular_current(wire_of("ER70S-6", "0.035in"), gas_of("75/25"))
    assert least == pytest.approx((16.65 - 10.75) / (0.075 - 0.034))


def test_a_set_point_on_an_edge_belongs_to_the_mode_it_bounds() -> None:
    gas = gas_of("90/10")
    at = edges(250, SOLID, gas)
    assert transfer_at(250, at.open_low, SOLID, gas) == "spray"
    at = edges(150, SOLID, gas)
    assert transfer_at(150, at.short_top, SOLID, gas) == "short"
