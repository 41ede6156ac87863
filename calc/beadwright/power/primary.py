"""What a power source draws from the wall: primary current, its effective value, kVA."""

from __future__ import annotations

from math import sqrt
from typing import Literal

from beadwright.errors import OutOfRangeError, require_positive

Phases = Literal[1, 3]


def primary_current(
    arc_w: float, efficiency: float, power_factor: float, supply_v: float, phases: Phases
) -> float:
    """Return the current drawn while the arc burns [A].

    Source: U·I/η over supply volts and power factor, √3 for three phase; definitions.

    Args:
        arc_w: Volts times amps at the machine's output, above zero [W].
        efficiency: Output power over power drawn, above 0 to 1 [-].
        power_factor: Power drawn over volts times amps drawn, above 0 to 1 [-].
        supply_v: Supply volts, between lines if three phase, above zero [V].
        phases: 1 or 3 [-].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    return apparent_power(arc_w, efficiency, power_factor) / line_factor(phases) / _volts(supply_v)


def _volts(supply_v: float) -> float:
    require_positive(supply_v=supply_v)
    return supply_v


def line_factor(phases: Phases) -> float:
    """Return volt-amps by line current and volts between lines: 1, or √3 for three phase [-].

    Args:
        phases: 1 or 3 [-].
    """
    return sqrt(3) if phases == 3 else 1.0


def apparent_power(arc_w: float, efficiency: float, power_factor: float) -> float:
    """Return the volt-amps drawn while the arc burns, which a generator must give [VA].

    Args:
        arc_w: Output power, above zero [W].
        efficiency: Output power over power drawn, above 0 to 1 [-].
        power_factor: Power drawn over volt-amps drawn, above 0 to 1 [-].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(arc_w=arc_w, efficiency=efficiency, power_factor=power_factor)
    if efficiency > 1 or power_factor > 1:
        raise OutOfRangeError(
            f"efficiency = {efficiency} and power_factor = {power_factor} must be at most 1"
        )
    return arc_w / efficiency / power_factor


def rated_volts(current_a: float) -> float:
    """Return the load volts a wire machine is rated at [V].

    Source: IEC 60974-1, conventional load voltage for MIG/MAG, 14 + 0.05·I, from memory; the rating
    plates of power sources print it beside the current (found second-hand).

    Args:
        current_a: Welding current, above zero, at most 600 [A].

    Raises:
        OutOfRangeError: If the current is not above zero.
    """
    require_positive(current_a=current_a)
    return 14.0 + 0.05 * current_a


def effective_current(primary_a: float, duty: float) -> float:
    """Return the steady current that heats conductors as much as the arc's on and off [A].

    Source: I·√X; NFPA 70 Table 630.11(A) prints the same factors, 0.45 and no less at 20 % and
    below. Current without an arc is left out.

    Args:
        primary_a: Current drawn while the arc burns, above zero [A].
        duty: Duty cycle worked at, 0 to 1 [-].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(primary_a=primary_a)
    if not 0 <= duty <= 1:
        raise OutOfRangeError(f"duty = {duty} must be 0 to 1")
    return primary_a * max(sqrt(duty), LEAST_MULTIPLIER)


LEAST_MULTIPLIER = 0.45
"""Least share of the primary current that conductors must carry [-]. Source: NFPA 70, 630.11(A)."""
