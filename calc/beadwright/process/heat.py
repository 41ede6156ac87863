"""Heat input, by the two conventions a procedure may ask for, and what thin plate stands."""

from __future__ import annotations

from beadwright.errors import require_positive

EN_EFFICIENCY = 0.8
"""Thermal efficiency k of MIG/MAG, all wires [-]. Source: EN 1011-1, Table 1 (8.7)."""

BURN_THROUGH_J_M2 = 0.25e9
"""Heat input per thickness above which thin plate falls through [J/m per m].

Source: butts in the condition tables of power-source manuals reach 0.17 kJ/mm for each mm of
plate; fillets carry heat off three ways. 0.25 is common practice, counted below ``THIN_M`` only.
"""

THIN_M = 6.0e-3
"""Plate below which burning through is watched, just under 1/4 in [m]. Common practice."""


def heat_input(volts: float, current_a: float, travel_m_s: float) -> float:
    """Return the heat input with no efficiency in it, as AWS and ASME count it [J/m].

    Source: ASME Section IX, QW-409.1(a): volts × amps × 60 / travel (in/min) = J/in.

    Args:
        volts: Arc volts, above zero [V].
        current_a: Current, above zero [A].
        travel_m_s: Travel, above zero [m/s].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(volts=volts, current_a=current_a, travel_m_s=travel_m_s)
    return volts * current_a / travel_m_s


def heat_input_en(volts: float, current_a: float, travel_m_s: float) -> float:
    """Return the heat input with EN's thermal efficiency, 0.8 for MIG/MAG [J/m].

    Source: EN 1011-1, 8.7: Q = k·U·I/v, k = 0.8.

    Args:
        volts: Arc volts, above zero [V].
        current_a: Current, above zero [A].
        travel_m_s: Travel, above zero [m/s].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    return EN_EFFICIENCY * heat_input(volts, current_a, travel_m_s)


def thickness_current(thickness_m: float) -> float:
    """Return the thumb-rule current for a thickness: 1 A for each 0.001 in [A].

    Source: power-source manual, rule of thumb for short-circuit work on sheet and thin plate.

    Valid for: sheet up to about 3/16 in; above that the process, not the plate, sets current.

    Args:
        thickness_m: Plate thickness, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thickness_m=thickness_m)
    return thickness_m / 0.0254 * 1000


def burn_through_current(thickness_m: float) -> float:
    """Return the current above which thin plate falls through [A].

    Source: condition tables of power-source manuals run 1.2 mm at up to 100 A, 3.2 mm at up to
    170 A and 4.5 mm at up to 250 A; 25 A + 1.7 A per 0.001 in holds them all with some room.

    Valid for: plate below ``THIN_M``; thicker plate sets no such limit.

    Args:
        thickness_m: Plate thickness, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    return 25.0 + 1.7 * thickness_current(thickness_m)


def fusion_current(thickness_m: float) -> float:
    """Return the current below which the bead lies on the plate instead of fusing to it [A].

    Source: common practice: 0.6 A per 0.001 in, counted up to 3/16 in plate. The lowest current in
    the condition tables of power-source manuals is 0.95 of the thumb rule; this stands below it.

    Args:
        thickness_m: Plate thickness, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    return 0.6 * thickness_current(min(thickness_m, 0.1875 * 0.0254))
