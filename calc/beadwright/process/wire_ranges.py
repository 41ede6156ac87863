"""The usual feed, volts and positions of a wire, worked out from the limits, not a list."""

from __future__ import annotations

from beadwright.process.gases import Gas
from beadwright.process.operating import feed_at_current, volts_window
from beadwright.process.positions import POSITIONS, Orientation
from beadwright.process.tip_to_work import tip_to_work
from beadwright.process.transfer import (
    OPEN_TOP_A,
    SHORT_RANGE_A,
    Transfer,
    transfer_refused,
    transition_current,
)
from beadwright.process.wires import Wire

PULSE_FROM = 0.4
"""Least mean current at which each pulse makes a drop, as a share of the spray transition [-].

Common practice: the mean current is well under the transition, the peaks stay over it.
"""


def usual_current(wire: Wire, gas: Gas, transfer: Transfer) -> tuple[float, float]:
    """Return the usual least and most current of a wire in a mode [A].

    Source: ``transfer.SHORT_RANGE_A``, ``transition_current``, ``OPEN_TOP_A``.

    Args:
        wire: The wire [-].
        gas: The gas [-].
        transfer: The mode [-].
    """
    top = OPEN_TOP_A[wire.kind, wire.size]
    if not wire.traits.shorts:
        return transition_current(wire, gas), top
    if transfer == "short":
        return SHORT_RANGE_A[wire.size]
    if transfer == "pulse":
        return PULSE_FROM * transition_current(wire, gas), top
    if transfer == "globular":
        return SHORT_RANGE_A[wire.size][1], top
    return transition_current(wire, gas), top


def usual_feed(wire: Wire, gas: Gas, transfer: Transfer) -> tuple[float, float]:
    """Return the usual least and most wire feed in a mode, at the usual tip-to-work [m/s].

    Source: ``usual_current`` through ``burnoff``.

    Args:
        wire: The wire [-].
        gas: The gas [-].
        transfer: The mode [-].
    """
    tip = tip_to_work(wire, transfer)[1]
    low, high = usual_current(wire, gas, transfer)
    return (
        feed_at_current(wire, gas, transfer, low, tip),
        feed_at_current(wire, gas, transfer, high, tip),
    )


def usual_volts(wire: Wire, gas: Gas, transfer: Transfer) -> tuple[float, float] | None:
    """Return the usual least and most volts of a mode; None in pulse, which sets its own volts [V].

    Source: ``arc``'s windows at the ends of ``usual_current``.

    Args:
        wire: The wire [-].
        gas: The gas [-].
        transfer: The mode [-].
    """
    if transfer == "pulse":
        return None
    low, high = usual_current(wire, gas, transfer)
    return (
        volts_window(low, wire, gas, transfer)[0],
        volts_window(high, wire, gas, transfer)[2],
    )


def usual_positions(wire: Wire, gas: Gas, transfer: Transfer) -> tuple[Orientation, ...]:
    """Return the positions a wire runs in, in a mode and gas; none if it does not run at all.

    Source: ``transfer.transfer_refused``.

    Args:
        wire: The wire [-].
        gas: The gas [-].
        transfer: The mode [-].
    """
    return tuple(
        place.orientation
        for place in POSITIONS.values()
        if not transfer_refused(wire, gas, place, transfer)
    )
