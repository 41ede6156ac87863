"""Arc volts against current: where short circuit ends, where spray begins and ends.

Each edge is a straight line in current, and the gas moves the line up or down. The lines are drawn
through published setting ranges and procedure points; a test holds them to those points. Each
component of a gas counts by its share: CO2 raises the volts, oxygen half as much, helium most in
the open arc. Volts are at the arc: a meter at the machine also reads the drop of cable and clamp.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.process.gas_components import COMPONENTS
from beadwright.process.gases import Gas
from beadwright.process.wire_kinds import KINDS, Kind

SHORT_HALF_BAND_V = 2.5
"""Half-width of the short-circuit volts window [V]: fillets run about 2 V above thin butts."""

SHORT_SLOPE_V_A = 0.034
"""Slope of the short-circuit line: drawn through the points of ``short_circuit_volts`` [V/A]."""

SPRAY_SLOPE_V_A = 0.025
"""Slope of the open arc's line for 0.045 in and thicker wire, as of ``OPEN_LINES`` [V/A]."""

OPEN_BELOW_V = 2.2
OPEN_ABOVE_V = 2.5
"""Room of solid wire's open arc below and above its middle [V]; they hold the printed ranges."""

_CORED_SHORT_BELOW_V = 4.0
_CORED_OPEN_BELOW_V = 3.0
"""Room of metal-cored wire below its middle, short circuit and open arc [V]: they hold the printed
15 V at 145 A and a shop's low volts in 90/10."""

CORED_UNDER_V = 1.2
"""Metal-cored wire is set so far under solid wire at the same current [V]. Common practice: a volt
or two."""

_CO2_FOOT_V = 11.6
_CO2_SLOPE_V_A = 0.0645
"""Line of the open arc in CO2: foot [V] and slope [V/A]; its source is with ``open_arc_volts``."""

_RISE_FROM_A, _RISE_TO_A, _MOST_RISE_V = 133.0, 290.0, 1.8
"""Where short circuit in CO2 begins to be set over its middle and where it stands on the open arc's
line [A], and the most it rises [V]: see ``carbonic_rise``."""

_CORED_TOP_FOOT_V = 23.0
_CORED_TOP_SLOPE_V_A = 0.045
_CORED_TOP_V = 38.5
"""Top of metal-cored wire's open arc: foot [V], slope [V/A] and the most [V], drawn over the
highest volts of the published sheet."""

HELIUM_OPEN_V = 5.0
HELIUM_SHORT_V = 3.0
"""Volts that a full share of helium adds to the open and the shorting arc [V].

Source: helium's arc runs several volts over argon's at equal length (Welding Handbook, from
memory); the amounts are common practice: 90 % helium mixes short at 19-21 V where argon mixes
short at 17-18 V.
"""

CO2_OPEN_V = 9.0
OXYGEN_OPEN_V = 4.5
"""Volts that a full share of CO2 or of oxygen would add to the open arc; 0.09 and 0.045 V per 1 %.

Oxygen at half of CO2's: common practice; it counts beyond the 2 % the argon line was drawn with.
"""

_LINE_OXYGEN = 0.02
_LEAN_CO2 = 0.25
"""Share of CO2 up to which the argon line holds; above it the line of argon and the line of CO2 are
mixed by share."""

FLUX_ROOM_V = 2.5
FLUX_ARGON_V = 1.3
"""Half-width of flux-cored wire's volts window, and what argon in place of CO2 takes off [V].

Source: 75/25 runs about 1 V under CO2 (data sheets of class E71T-1, from memory).
"""

FLUX_LINES: Mapping[str, tuple[float, float]] = MappingProxyType(
    {
        "0.035in": (17.0, 0.060),
        "0.045in": (18.0, 0.040),
        "0.052in": (18.7, 0.0267),
        "1/16in": (17.5, 0.0333),
    }
)
"""Middle of flux-cored wire's volts in CO2 by size: foot [V] and slope [V/A].

Source: drawn from the low corner to the high corner of a textbook's setting ranges for gas-shielded
flux-cored wire (0.035 in 26-32 V at 150-250 A, 0.045 in 24-28 V at 150-250 A, 0.052 in 24-28 V at
200-350 A, 1/16 in 25-30 V at 225-375 A; found).
"""


def short_circuit_volts(current_a: float, gas: Gas) -> float:
    """Return the middle of the short-circuit window [V].

    Source: setting points of Machinery's Handbook, 31st ed., p. 1583, Table 5 (Ar + 15-20 % CO2),
    condition tables of power-source manuals for 80/20 and CO2 (butts and fillets, 0.8-4.5 mm
    plate); line and gas shift (0.05 V per 1 % CO2 to 25 %, 0.02 V beyond) drawn here to hold them.

    Args:
        current_a: Mean current [A].
        gas: Shielding gas [-].
    """
    share = 100 * gas.co2
    foot = 12.9 + 0.05 * min(share, 25.0) + 0.02 * max(share - 25.0, 0.0)
    foot += HELIUM_SHORT_V * gas.helium
    if gas.others:
        foot += sum(COMPONENTS[name].short_v * part for name, part in gas.others)
    return foot + SHORT_SLOPE_V_A * current_a


OPEN_LINES: Mapping[str, tuple[float, float]] = MappingProxyType(
    {
        "0.023in": (13.8, 0.045),
        "0.030in": (15.4, 0.045),
        "0.035in": (8.5, 0.075),
        "0.040in": (14.0, 0.050),
        "0.045in": (19.5, SPRAY_SLOPE_V_A),
        "0.052in": (19.5, SPRAY_SLOPE_V_A),
        "1/16in": (17.5, SPRAY_SLOPE_V_A),
    }
)
"""Middle of the open arc in argon by wire size: foot [V] and slope [V/A].

Thin wire needs more volts for each amp: 0.035 in climbs from 23 V at 195 A to 30 V at 275 A
(procedure handbook, from memory), and 0.023 in starts from fewer (through the technician's points
at 110 and 150 A in 75/25); 1/16 in burns 2 V lower than 0.045 in at equal current.
0.040 in is interpolated between its neighbors: no open-arc settings were found for it.
"""


def open_arc_volts(current_a: float, gas: Gas, size: str) -> float:
    """Return the middle of the spray (or globular) window for solid wire [V].

    Source: argon mixtures: Machinery's Handbook, 31st ed., p. 1583, Table 5, spray rows; spray
    ranges of a published equipment sheet; handbook spray procedures in 90/10 and 98/2 (from
    memory); lines by size and gas shift (0.09 V per 1 % CO2) drawn here. CO2: straight line
    through the condition tables of power-source manuals, 85-435 A (11.6 + 0.0645 I, one standard
    deviation 0.9 V), whatever the size. Between 25 % CO2 and CO2 alone the two are mixed by share;
    our choice, as no settings are printed there.

    Args:
        current_a: Mean current [A].
        gas: Shielding gas [-].
        size: Inch name of the wire diameter [-].
    """
    foot, slope = OPEN_LINES[size]
    lean = min(gas.co2, _LEAN_CO2)
    argon = foot + CO2_OPEN_V * lean + OXYGEN_OPEN_V * max(0.0, gas.oxygen - _LINE_OXYGEN)
    argon += HELIUM_OPEN_V * gas.helium + slope * current_a
    if gas.others:
        argon += sum(COMPONENTS[name].open_v * part for name, part in gas.others)
    if gas.co2 <= _LEAN_CO2:
        return argon
    toward = (gas.co2 - _LEAN_CO2) / (1 - _LEAN_CO2)
    carbonic = _CO2_FOOT_V + _CO2_SLOPE_V_A * current_a
    return (1 - toward) * argon + toward * carbonic


def flux_cored_volts(current_a: float, gas: Gas, size: str) -> float:
    """Return the middle of flux-cored wire's window [V].

    Source: ``FLUX_LINES``, ``FLUX_ARGON_V``.

    Args:
        current_a: Mean current [A].
        gas: Shielding gas [-].
        size: Inch name of the wire diameter, a key of ``FLUX_LINES`` [-].
    """
    foot, slope = FLUX_LINES[size]
    return foot - FLUX_ARGON_V * (1 - gas.co2) + slope * current_a


def carbonic_rise(current_a: float, gas: Gas) -> float:
    """Return how far short circuit in CO2 is set over its middle as it nears the open arc [V].

    Source: power-source manual, fillets in CO2, 23-26 V at 200-250 A (found), between short
    circuit's line and the open arc's; the straight climb from where the two lines meet is ours.

    Args:
        current_a: Mean current [A].
        gas: Shielding gas [-].
    """
    if gas.co2 <= _LEAN_CO2:
        return 0.0
    toward = (gas.co2 - _LEAN_CO2) / (1 - _LEAN_CO2)
    gap = _CO2_FOOT_V + _CO2_SLOPE_V_A * current_a - short_circuit_volts(current_a, gas)
    share = min(1.0, max(0.0, (current_a - _RISE_FROM_A) / (_RISE_TO_A - _RISE_FROM_A)))
    return min(toward * share * max(0.0, gap), _MOST_RISE_V)


def short_window(current_a: float, gas: Gas, kind: Kind) -> tuple[float, float, float]:
    """Return low, set and high volts in short circuit [V].

    Source: ``short_circuit_volts``; metal-cored wire shorts cleanly at fewer volts: its published
    sheet prints 15 V at 145 A for 1/16 in.

    Args:
        current_a: Mean current [A].
        gas: Shielding gas [-].
        kind: Solid or cored; flux-cored wire does not short and is given metal-cored's [-].
    """
    middle = short_circuit_volts(current_a, gas)
    below = _CORED_SHORT_BELOW_V if KINDS[kind].cored else SHORT_HALF_BAND_V
    set_ = middle + carbonic_rise(current_a, gas)
    return middle - below, set_, middle + SHORT_HALF_BAND_V


def open_window(current_a: float, gas: Gas, kind: Kind, size: str) -> tuple[float, float, float]:
    """Return low, set and high volts in spray or globular transfer [V].

    Metal-cored wire runs clean over a far wider range than solid: published sheets for class
    E70C-6M print 28-30 V at 180 A and 35-38 V at 340 A in 75-95 % argon, and the trade runs it a
    volt or two under solid wire at the same current (common practice). Both ends are inside.

    Args:
        current_a: Mean current [A].
        gas: Shielding gas [-].
        kind: Solid, metal-cored or flux-cored [-].
        size: Inch name of the wire diameter [-].
    """
    traits = KINDS[kind]
    if not traits.shorts:
        middle = flux_cored_volts(current_a, gas, size)
        return middle - FLUX_ROOM_V, middle, middle + FLUX_ROOM_V
    middle = open_arc_volts(current_a, gas, size)
    if not traits.wide_volts:
        return middle - OPEN_BELOW_V, middle, middle + OPEN_ABOVE_V
    top = min(_CORED_TOP_V, _CORED_TOP_FOOT_V + _CORED_TOP_SLOPE_V_A * current_a)
    low = middle - _CORED_OPEN_BELOW_V
    return low, max(low, min(middle - CORED_UNDER_V, top)), max(top, low)


def arc_length_m(volts: float) -> float:
    """Return the arc length taken off the tip-to-work [m].

    Source: 4 mm in an open arc and 2 mm in short circuit are the lengths the burn-off constants
    were fitted with; the straight line between them (0.25 mm per volt about 26 V) is our choice.

    Args:
        volts: Arc volts; the length is held between 1 and 8 mm [V].
    """
    return min(0.008, max(0.001, 0.004 + 0.00025 * (volts - 26.0)))
