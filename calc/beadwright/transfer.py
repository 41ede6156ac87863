"""How the metal crosses: short circuit, globular or spray, and where one turns into the other."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.arc import open_window, short_window
from beadwright.gases import Gas
from beadwright.positions import Position
from beadwright.wires import Kind, Wire

Transfer = Literal["short", "globular", "spray", "pulse"]

NAMES: Mapping[Transfer, str] = MappingProxyType(
    {"short": "Short circuit", "globular": "Globular", "spray": "Spray", "pulse": "Pulsed spray"}
)

TRANSITION_A: Mapping[str, tuple[tuple[float, float], ...]] = MappingProxyType(
    {
        "0.030in": ((0.00, 150), (0.08, 159), (0.15, 164), (0.20, 177)),
        "0.035in": ((0.00, 165), (0.08, 175), (0.15, 180), (0.20, 195)),
        "0.045in": ((0.00, 220), (0.08, 225), (0.15, 240), (0.20, 255)),
        "0.052in": ((0.00, 240), (0.08, 249), (0.15, 259), (0.20, 289)),
        "1/16in": ((0.00, 275), (0.08, 290), (0.15, 295), (0.20, 345)),
    }
)
"""Least spray current of solid wire by size: (CO2 share, current [A]).

Source: 0 % column: MIG handbook Table 1-2, mild steel, 98 Ar/2 O2. CO2 columns for 0.035, 0.045
and 1/16 in: supplier handbook table, from memory; 0.030 in takes 0.035 in's ratio to the 0 %
column and 0.052 in the mean of its neighbours'. Good to ±20 % with CO2 (one measurement in 80/20
stands 30 % higher).
"""

CORED_TRANSITION_A: Mapping[str, float] = MappingProxyType(
    {"0.035in": 140.0, "0.045in": 180.0, "0.052in": 202.0, "1/16in": 235.0}
)
"""Least spray current of metal-cored wire, 75-95 % argon [A].

Source: first spray-type row of a published E70C-6M sheet (0.045 in 180 A, 1/16 in 235 A):
an inference, no transition current is printed. 0.052 in interpolated; 0.035 in scaled by
diameter squared over solid wire's ratio. ±20 %.
"""

TRANSITION_BAND = 0.20
SOLID_SPRAY_CO2_LIMIT = 0.20
CORED_SPRAY_CO2_LIMIT = 0.25
"""Most CO2 with which axial spray holds: solid about 20 % (lecture page, second-hand); metal-cored
25 % (its sheet prints spray-type rows down to 75 % argon)."""

SHORT_RANGE_A: Mapping[str, tuple[float, float]] = MappingProxyType(
    {
        "0.030in": (40.0, 145.0),
        "0.035in": (50.0, 190.0),
        "0.045in": (75.0, 225.0),
        "0.052in": (95.0, 240.0),
        "1/16in": (140.0, 260.0),
    }
)
"""Current range of short circuit by size [A].

Source: power-source manual, rule-of-thumb ranges (0.030 40-145, 0.035 50-180, 0.045 75-250 A),
with the tops of a published equipment sheet (0.035 190, 0.045 225 A); 0.052 in and 1/16 in:
metal-cored sheet's short-arc rows and common practice.
"""

OPEN_TOP_A: Mapping[tuple[Kind, str], float] = MappingProxyType(
    {
        ("solid", "0.030in"): 265.0,
        ("solid", "0.035in"): 290.0,
        ("solid", "0.045in"): 380.0,
        ("solid", "0.052in"): 430.0,
        ("solid", "1/16in"): 450.0,
        ("metal-cored", "0.035in"): 260.0,
        ("metal-cored", "0.045in"): 340.0,
        ("metal-cored", "0.052in"): 400.0,
        ("metal-cored", "1/16in"): 460.0,
    }
)
"""Usual top current in an open arc [A].

Source: published equipment sheet (0.030 265, 0.035 290 A); Machinery's Handbook 31st ed. Table 5
(0.045 380 A); handbook spray procedures, from memory (0.052 430, 1/16 about 450 A); E70C-6M sheet
(0.045 340, 1/16 460 A); metal-cored 0.035 and 0.052 in: common practice.
"""


@dataclass(frozen=True, slots=True)
class Edges:
    """Volts at the edges of the regions for one current [V]."""

    short_top: float
    open_low: float
    open_top: float


def transition_current(wire: Wire, gas: Gas) -> float:
    """Return the least current for axial spray [A].

    Beyond the gas's limit spray does not hold at any current; see ``spray_refused``. The number
    is then the last column's, for drawing only.

    Source: ``TRANSITION_A``, ``CORED_TRANSITION_A``; straight lines between CO2 columns.

    Args:
        wire: The wire [-].
        gas: The gas [-].
    """
    if wire.kind == "metal-cored":
        return CORED_TRANSITION_A[wire.size]
    row = TRANSITION_A[wire.size]
    if gas.co2 >= row[-1][0]:
        return row[-1][1]
    after = bisect_right([share for share, _ in row], gas.co2)
    (x0, y0), (x1, y1) = row[after - 1], row[after]
    return y0 + (y1 - y0) * (gas.co2 - x0) / (x1 - x0)


def spray_refused(wire: Wire, gas: Gas, position: Position | None = None) -> str:
    """Return why axial spray cannot be held, or an empty string.

    Source: gas limits above; position: common practice (the pool runs).

    Args:
        wire: The wire [-].
        gas: The gas [-].
        position: The position, or None to ask of wire and gas alone [-].
    """
    if gas.co2 == 1:
        return "CO2 does not spray at any setting"
    limit = CORED_SPRAY_CO2_LIMIT if wire.kind == "metal-cored" else SOLID_SPRAY_CO2_LIMIT
    if gas.co2 > limit:
        return f"{wire.kind} wire does not spray above about {limit:.0%} CO2; {gas.name} has more"
    if position is not None and not position.sprays:
        return f"spray runs out of the joint {position.lie}"
    return ""


def gas_refused(wire: Wire, gas: Gas) -> str:
    """Return why a wire may not run in a gas at all, or an empty string.

    Source: AWS A5.18: the M of E70C-6M classifies it in an argon mixture, 75-80 % argon and CO2
    (from memory); its sheets go to 95 % argon.

    Args:
        wire: The wire [-].
        gas: The gas [-].
    """
    if wire.kind == "metal-cored" and gas.co2 > CORED_SPRAY_CO2_LIMIT:
        return f"{wire.type.name} is made for argon mixtures, not {gas.name}"
    return ""


def globular_current(wire: Wire, gas: Gas) -> float:
    """Return the current below which the open arc's volts still short circuit [A].

    Source: where the middle of the open arc's line (``arc.open_window``) leaves the top of short
    circuit's; both are straight in current. Zero where the open arc stands clear of it throughout.

    Args:
        wire: The wire [-].
        gas: The gas [-].
    """
    gaps = [
        open_window(amps, gas, wire.kind, wire.size)[1] - short_window(amps, gas, wire.kind)[2]
        for amps in (0.0, 100.0)
    ]
    slope = (gaps[1] - gaps[0]) / 100
    return max(0.0, -gaps[0] / slope) if slope > 0 else 0.0


def edges(current_a: float, wire: Wire, gas: Gas) -> Edges:
    """Return the volts at the region edges for one current [V].

    Args:
        current_a: Mean current [A].
        wire: The wire [-].
        gas: The gas [-].
    """
    low, _, top = open_window(current_a, gas, wire.kind, wire.size)
    return Edges(short_window(current_a, gas, wire.kind)[2], low, top)


def transfer_at(current_a: float, volts: float, wire: Wire, gas: Gas) -> Transfer:
    """Return the transfer mode at a current and volts.

    Short circuit up to its top volts; spray from the transition current and the open arc's low
    volts up, where wire and gas carry it; globular between.

    Args:
        current_a: Mean current [A].
        volts: Arc volts [V].
        wire: The wire [-].
        gas: The gas [-].
    """
    at = edges(current_a, wire, gas)
    sprays = not spray_refused(wire, gas) and current_a >= transition_current(wire, gas)
    if sprays and volts >= at.open_low:
        return "spray"
    return "short" if volts <= at.short_top else "globular"
