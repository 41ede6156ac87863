"""Arc volts against current: where short circuit ends, where spray begins and ends.

Each edge is a straight line in current whose foot moves with the gas. The lines are drawn
through published setting ranges and procedure points; they hold those points, and a test says so.
Volts are at the arc: a meter at the machine reads the drop of cable and clamp on top.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.gases import Gas
from beadwright.wires import Kind

SHORT_HALF_BAND_V = 2.5
"""Half-width of the short-circuit volts window [V]: fillets run about 2 V above thin butts."""

SHORT_SLOPE_V_A = 0.034
SPRAY_SLOPE_V_A = 0.025
OPEN_BELOW_V = 2.0
OPEN_ABOVE_V = 2.5
_CORED_SHORT_BELOW_V = 4.0
_CORED_OPEN_BELOW_V = 3.0
_CO2_FOOT_V = 11.6
_CO2_SLOPE_V_A = 0.0645
_CORED_TOP_FOOT_V = 23.0
_CORED_TOP_SLOPE_V_A = 0.045
_CORED_TOP_V = 38.5


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
    return foot + SHORT_SLOPE_V_A * current_a


OPEN_LINES: Mapping[str, tuple[float, float]] = MappingProxyType(
    {
        "0.030in": (15.4, 0.045),
        "0.035in": (15.4, 0.045),
        "0.045in": (19.5, SPRAY_SLOPE_V_A),
        "0.052in": (19.5, SPRAY_SLOPE_V_A),
        "1/16in": (17.5, SPRAY_SLOPE_V_A),
    }
)
"""Middle of the open arc in argon by wire size: foot [V] and slope [V/A].

Thin wire asks more volts for each amp; 1/16 in burns 2 V lower than 0.045 in at equal current.
"""


def open_arc_volts(current_a: float, gas: Gas, size: str) -> float:
    """Return the middle of the spray (or globular) window for solid wire [V].

    Source: argon mixtures: Machinery's Handbook, 31st ed., p. 1583, Table 5, spray rows; spray
    ranges of a published equipment sheet; handbook spray procedures in 90/10 and 98/2 (from
    memory); lines by size and gas shift (0.09 V per 1 % CO2) drawn here. CO2: straight line
    through the condition tables of power-source manuals, 85-435 A (11.6 + 0.0645 I, one standard
    deviation 0.9 V), whatever the size.

    Args:
        current_a: Mean current [A].
        gas: Shielding gas [-].
        size: Inch name of the wire diameter [-].
    """
    if gas.co2 > 0.5:
        return _CO2_FOOT_V + _CO2_SLOPE_V_A * current_a
    foot, slope = OPEN_LINES[size]
    return foot + 9.0 * gas.co2 + slope * current_a


def short_window(current_a: float, gas: Gas, kind: Kind) -> tuple[float, float, float]:
    """Return low, set and high volts in short circuit [V].

    Source: ``short_circuit_volts``; metal-cored wire shorts cleanly lower down: its published
    sheet prints 15 V at 145 A for 1/16 in.

    Args:
        current_a: Mean current [A].
        gas: Shielding gas [-].
        kind: Solid or metal-cored [-].
    """
    middle = short_circuit_volts(current_a, gas)
    below = SHORT_HALF_BAND_V if kind == "solid" else _CORED_SHORT_BELOW_V
    return middle - below, middle, middle + SHORT_HALF_BAND_V


def open_window(current_a: float, gas: Gas, kind: Kind, size: str) -> tuple[float, float, float]:
    """Return low, set and high volts in spray or globular transfer [V].

    Metal-cored wire runs clean over a far wider range than solid: published sheets for class
    E70C-6M print 28-30 V at 180 A and 35-38 V at 340 A in 75-95 % argon, and the trade runs
    0.045 in near 23.6 V at 290 in/min in 90/10 (common practice). Both ends are inside.

    Args:
        current_a: Mean current [A].
        gas: Shielding gas [-].
        kind: Solid or metal-cored [-].
        size: Inch name of the wire diameter [-].
    """
    middle = open_arc_volts(current_a, gas, size)
    if kind == "solid":
        return middle - OPEN_BELOW_V, middle, middle + OPEN_ABOVE_V
    top = min(_CORED_TOP_V, _CORED_TOP_FOOT_V + _CORED_TOP_SLOPE_V_A * current_a)
    low = middle - _CORED_OPEN_BELOW_V
    return low, max(low, min(middle + 1.0, top)), max(top, low)


def arc_length_m(volts: float) -> float:
    """Return the arc length taken off the tip-to-work [m].

    Source: 4 mm in an open arc and 2 mm in short circuit are the lengths the burn-off constants
    were fitted with; the straight line between them (0.25 mm per volt about 26 V) is ours.

    Args:
        volts: Arc volts; the length is held between 1 and 8 mm [V].
    """
    return min(0.008, max(0.001, 0.004 + 0.00025 * (volts - 26.0)))


def conventional_load_volts(current_a: float) -> float:
    """Return the conventional load voltage of a MIG/MAG power source [V].

    A convention for rating machines, not a setting to weld with.

    Source: IEC 60974-1, 11.2 (formula from memory): 14 + 0.05 I up to 600 A, 44 V above; rating
    plates print 90 A 18.5 V, 200 A 24 V, 250 A 26.5 V.

    Args:
        current_a: Welding current, zero or more [A].
    """
    return min(44.0, 14.0 + 0.05 * current_a)
