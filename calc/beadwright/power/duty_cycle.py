"""Time a power source can weld in ten minutes, at a current other than its rated one."""

from __future__ import annotations

from beadwright.errors import OutOfRangeError, require_positive

PERIOD_S = 600.0
"""The duty cycle's period: ten minutes [s]. Source: AWS glossary; IEC 60974-1."""


def duty_at(current_a: float, rated_a: float, rated_duty: float) -> float:
    """Return the duty cycle a machine can hold at a current, at most 1 [-].

    Source: I²·T constant, power-source manuals. It differs from rating plates by up to a tenth.

    Valid for: currents up to the most the machine gives; it does not hold above that.

    Args:
        current_a: Welding current, above zero [A].
        rated_a: Rated current, above zero [A].
        rated_duty: Duty cycle at the rated current, above 0 to 1 [-].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(current_a=current_a, rated_a=rated_a, rated_duty=rated_duty)
    if rated_duty > 1:
        raise OutOfRangeError(f"rated_duty = {rated_duty} must be at most 1")
    return min(1.0, rated_duty * (rated_a / current_a) ** 2)


def current_at(duty: float, rated_a: float, rated_duty: float) -> float:
    """Return the current a machine can hold at a duty cycle [A].

    Source: as ``duty_at``.

    Args:
        duty: Duty cycle wanted, above 0 to 1 [-].
        rated_a: Rated current, above zero [A].
        rated_duty: Duty cycle at the rated current, above 0 to 1 [-].

    Raises:
        OutOfRangeError: If an argument is out of range.
    """
    require_positive(duty=duty, rated_a=rated_a, rated_duty=rated_duty)
    if duty > 1 or rated_duty > 1:
        raise OutOfRangeError(f"duty = {duty} and rated_duty = {rated_duty} must be at most 1")
    return float(rated_a * (rated_duty / duty) ** 0.5)


def minutes_on(duty: float) -> float:
    """Return the time in a period of ten minutes that the arc may burn [s].

    Args:
        duty: Duty cycle, 0 to 1 [-].
    """
    return duty * PERIOD_S
