"""Metal transfer: short circuit, globular or spray, and where one becomes another."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Mapping
from types import MappingProxyType
from typing import Literal

from beadwright.phrases import Phrase, say
from beadwright.process.gases import Gas
from beadwright.process.positions import Position
from beadwright.process.wire_kinds import Kind
from beadwright.process.wires import Wire

Transfer = Literal["short", "globular", "spray", "pulse"]

NAMES: Mapping[Transfer, str] = MappingProxyType(
    {"short": "Short circuit", "globular": "Globular", "spray": "Spray", "pulse": "Pulsed spray"}
)

MODE_PHRASES: Mapping[Transfer, Phrase] = MappingProxyType(
    {
        "short": say("process.short-circuit"),
        "globular": say("process.globular"),
        "spray": say("process.spray"),
        "pulse": say("process.pulsed-spray"),
    }
)
"""What each is called within a sentence."""

TRANSITION_A: Mapping[str, tuple[tuple[float, float], ...]] = MappingProxyType(
    {
        "0.023in": ((0.00, 129), (0.08, 137), (0.15, 141), (0.20, 152)),
        "0.030in": ((0.00, 150), (0.08, 159), (0.15, 164), (0.20, 177)),
        "0.035in": ((0.00, 165), (0.08, 175), (0.15, 180), (0.20, 195)),
        "0.040in": ((0.00, 193), (0.08, 200), (0.15, 210), (0.20, 225)),
        "0.045in": ((0.00, 220), (0.08, 225), (0.15, 240), (0.20, 255)),
        "0.052in": ((0.00, 240), (0.08, 249), (0.15, 259), (0.20, 289)),
        "1/16in": ((0.00, 275), (0.08, 290), (0.15, 295), (0.20, 345)),
    }
)
"""Least spray current of solid wire by size: (CO2 share, current [A]).

Source: 0 % column: MIG handbook Table 1-2, mild steel, 98 Ar/2 O2. CO2 columns for 0.035, 0.045
and 1/16 in: supplier handbook table, from memory; 0.030 in takes 0.035 in's ratio to the 0 %
column, 0.052 in the mean of its neighbors', 0.040 in lies halfway between its neighbors in every
column, and 0.023 in carries the 0 % column's step of 3 A for
0.001 in on down with 0.035 in's ratios. Good to ±20 % with CO2 (one measurement in 80/20
lies 30 % higher).
"""

CORED_TRANSITION_A: Mapping[str, float] = MappingProxyType(
    {"0.035in": 140.0, "0.040in": 160.0, "0.045in": 180.0, "0.052in": 202.0, "1/16in": 235.0}
)
"""Least spray current of metal-cored wire, 75-95 % argon [A].

Source: first spray-type row of a published E70C-6M sheet (0.045 in 180 A, 1/16 in 235 A):
an inference, no transition current is printed. 0.040 and 0.052 in interpolated; 0.035 in scaled
by diameter squared over solid wire's ratio. ±20 %.
"""

FLUX_CORED_LEAST_A: Mapping[str, float] = MappingProxyType(
    {"0.035in": 130.0, "0.045in": 150.0, "0.052in": 155.0, "1/16in": 190.0}
)
"""Least current of flux-cored wire: below it the drops grow coarse and lose their slag [A].

Source: first row of deposition data for class E71T-1, from memory. ±20 %.
"""

_ROUNDING = 1e-9

OXYGEN_STEP = 2.0
OXYGEN_MOST = 0.05
_COLUMN_OXYGEN = 0.02
"""Oxygen lowers the transition: 2 % for each 1 % beyond the 2 % of the first column, to 5 %.

Source: 95 Ar/5 O2 rows of a supplier handbook's table, from memory (0.035 in 155, 0.045 in 200,
1/16 in 265 A against 165, 220, 275 A in 98/2): 4 to 9 % lower.
"""

HELIUM_STEP = 0.3
"""Helium raises the transition: 0.3 % for each 1 %. Direction from the literature, from memory;
the amount is common practice."""

TRANSITION_BAND = 0.20
SOLID_SPRAY_CO2_LIMIT = 0.20
CORED_SPRAY_CO2_LIMIT = 0.25
"""Most CO2 with which axial spray holds: solid about 20 % (lecture page, second-hand); metal-cored
25 % (its sheet prints spray-type rows down to 75 % argon)."""

OXYGEN_AS_CO2 = 0.5
"""Share of CO2 that a share of oxygen counts for against those limits. Common practice: 80/15/5 O2
still sprays."""

HELIUM_SPRAY_LIMIT = 0.40
"""Most helium with which axial spray holds: 65/8/0.5 O2/26.5 He sprays, helium-rich mixes are for
short circuit. Common practice."""

LEAST_ACTIVE = 0.005
"""Least CO2 and oxygen that steady the arc on steel. Source: textbooks of gas metal arc welding,
from memory: argon alone wanders and undercuts; 1-5 % O2 or a few % CO2 are added."""

SHORT_RANGE_A: Mapping[str, tuple[float, float]] = MappingProxyType(
    {
        "0.023in": (30.0, 90.0),
        "0.030in": (40.0, 145.0),
        "0.035in": (50.0, 190.0),
        "0.040in": (63.0, 207.0),
        "0.045in": (75.0, 225.0),
        "0.052in": (95.0, 240.0),
        "1/16in": (140.0, 260.0),
    }
)
"""Current range of short circuit by size [A].

Source: power-source manual, rule-of-thumb ranges (0.023 30-90, 0.030 40-145, 0.035 50-180, 0.045
75-250 A), with the tops of a published equipment sheet (0.035 190, 0.045 225 A); 0.040 in
lies halfway between its neighbors; 0.052 in and 1/16 in: metal-cored sheet's short-arc rows and
common practice.
"""

OPEN_TOP_A: Mapping[tuple[Kind, str], float] = MappingProxyType(
    {
        ("solid", "0.023in"): 165.0,
        ("solid", "0.030in"): 265.0,
        ("solid", "0.035in"): 290.0,
        ("solid", "0.040in"): 335.0,
        ("solid", "0.045in"): 380.0,
        ("solid", "0.052in"): 430.0,
        ("solid", "1/16in"): 450.0,
        ("metal-cored", "0.035in"): 260.0,
        ("metal-cored", "0.040in"): 300.0,
        ("metal-cored", "0.045in"): 340.0,
        ("metal-cored", "0.052in"): 400.0,
        ("metal-cored", "1/16in"): 460.0,
        ("flux-cored", "0.035in"): 250.0,
        ("flux-cored", "0.045in"): 330.0,
        ("flux-cored", "0.052in"): 350.0,
        ("flux-cored", "1/16in"): 410.0,
    }
)
"""Usual top current in an open arc [A].

Source: published equipment sheet (0.030 265, 0.035 290 A); Machinery's Handbook 31st ed. Table 5
(0.045 380 A); handbook spray procedures, from memory (0.052 430, 1/16 about 450 A); E70C-6M sheet
(0.045 340, 1/16 460 A); metal-cored 0.035 and 0.052 in: common practice.
0.040 in lies halfway between its neighbors. Solid 0.023 in: common
practice, a technician's points end at 150 A. Flux-cored: a textbook's ranges (0.035 250, 0.052
350 A, found) and the last rows of deposition data for class E71T-1 (0.045 330, 1/16 410 A, from
memory).
"""


def transition_current(wire: Wire, gas: Gas) -> float:
    """Return the least current for axial spray [A].

    Beyond the gas's limit there is no spray at any current; see ``spray_refused``. The number is
    then that of the last column, for drawing only.

    Source: ``TRANSITION_A``, ``CORED_TRANSITION_A``, ``FLUX_CORED_LEAST_A``; straight lines between
    CO2 columns; ``OXYGEN_STEP``, ``HELIUM_STEP``.

    Args:
        wire: The wire [-].
        gas: The gas [-].
    """
    if not wire.traits.shorts:
        return FLUX_CORED_LEAST_A[wire.size]
    helium = 1 + HELIUM_STEP * gas.helium
    if wire.traits.cored:
        return CORED_TRANSITION_A[wire.size] * helium
    beyond = min(gas.oxygen, OXYGEN_MOST) - _COLUMN_OXYGEN
    return _in_argon(wire, gas) * (1 - OXYGEN_STEP * max(0.0, beyond)) * helium


def _in_argon(wire: Wire, gas: Gas) -> float:
    """Transition of solid wire between the table's CO2 columns."""
    row = TRANSITION_A[wire.size]
    if gas.co2 >= row[-1][0]:
        return row[-1][1]
    after = bisect_right([share for share, _ in row], gas.co2)
    (x0, y0), (x1, y1) = row[after - 1], row[after]
    return y0 + (y1 - y0) * (gas.co2 - x0) / (x1 - x0)


def oxidizing_share(gas: Gas) -> float:
    """Return the CO2 that a gas counts for against the limits of spray [volume share].

    Source: ``OXYGEN_AS_CO2``.

    Args:
        gas: The gas [-].
    """
    return gas.co2 + OXYGEN_AS_CO2 * gas.oxygen


def spray_refused(wire: Wire, gas: Gas, position: Position | None = None) -> Phrase | None:
    """Return why axial spray cannot be held, or None if it can.

    Flux-cored wire of class T-1 sprays in the gas of its classification and in every position but
    vertical-down: its slag holds the pool.

    Source: gas limits above; position: common practice (the pool runs); flux-cored: AWS A5.20,
    annex on T-1 (second-hand copies).

    Args:
        wire: The wire [-].
        gas: The gas [-].
        position: The position, or None to ask of wire and gas alone [-].
    """
    if not wire.traits.shorts:
        why = gas_refused(wire, gas)
        return why or (None if position is None else position_refused(wire, position, "spray"))
    if gas.co2 == 1:
        return say("process.co2-never-sprays")
    if gas.argon == 0:
        return say("process.spray-wants-argon", gas=gas.name)
    limit = CORED_SPRAY_CO2_LIMIT if wire.traits.cored else SOLID_SPRAY_CO2_LIMIT
    if oxidizing_share(gas) > limit + _ROUNDING:
        kind = wire.traits.phrase
        return say("process.much-co2-to-spray", kind=kind, limit=limit, gas=gas.name)
    if gas.helium > HELIUM_SPRAY_LIMIT + _ROUNDING:
        return say("process.much-helium-to-spray", limit=HELIUM_SPRAY_LIMIT, gas=gas.name)
    if gas.co2 + gas.oxygen < LEAST_ACTIVE:
        return say("process.spray-wanders", gas=gas.name)
    return None if position is None else position_refused(wire, position, "spray")


def gas_refused(wire: Wire, gas: Gas) -> Phrase | None:
    """Return why a wire may not run in a gas at all, or None if it may.

    Source: ``wire_types.WIRE_TYPES``, the gases each classification is made for; oxygen counted as
    ``OXYGEN_AS_CO2``.

    Args:
        wire: The wire [-].
        gas: The gas [-].
    """
    made = wire.type.gases
    low, high = made.co2
    mixed = made.plain and (gas.oxygen > 0 or gas.helium > 0)
    if mixed or not low - _ROUNDING <= oxidizing_share(gas) <= high + _ROUNDING:
        return say("process.not-its-gas", wire=wire.type.name, gases=made.named, gas=gas.name)
    return None


def position_refused(wire: Wire, position: Position, transfer: Transfer) -> Phrase | None:
    """Return why a wire cannot run in a mode in a position, or None if it can.

    With solid wire, short circuit and pulse hold the pool in every position; out of position
    metal-cored wire needs pulse (short circuit only on light work).

    Source: AWS A5.20 (textbook's copy, second-hand): E71T-1 is for flat, horizontal, vertical-up
    and overhead; the rest is common practice.

    Args:
        wire: The wire [-].
        position: The position [-].
        transfer: The mode [-].
    """
    if wire.traits.slag:
        if position.orientation == "vertical-down":
            return say("process.slag-runs-ahead", wire=wire.type.name)
        return None
    if position.sprays or transfer in ("short", "pulse"):
        return None
    mode, orientation = MODE_PHRASES[transfer], position.phrase
    if wire.traits.wants_pulse:
        kind = wire.traits.phrase
        return say("process.runs-out-pulse-there", mode=mode, orientation=orientation, kind=kind)
    return say("process.runs-out", mode=mode, orientation=orientation)


def transfer_refused(wire: Wire, gas: Gas, position: Position, transfer: Transfer) -> Phrase | None:
    """Return why a mode cannot be run with a wire in a gas and position, or None if it can.

    Source: ``gas_refused``, ``spray_refused``, ``position_refused``; flux-cored wire has one mode,
    the fine drops of its classification.

    Args:
        wire: The wire [-].
        gas: The gas [-].
        position: The position [-].
        transfer: The mode [-].
    """
    if not wire.traits.shorts and transfer in ("short", "globular"):
        return say("process.fine-drops-only", wire=wire.type.name)
    if not wire.traits.shorts and transfer == "pulse":
        return say("process.pulse-gives-nothing", wire=wire.type.name)
    why = gas_refused(wire, gas)
    if not why and transfer in ("spray", "pulse"):
        why = spray_refused(wire, gas)
    return why or position_refused(wire, position, transfer)
