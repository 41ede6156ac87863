"""An operating point of the arc: feed, volts, tip-to-work and the current they make."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.process.arc import arc_length_m, open_arc_volts, open_window, short_window
from beadwright.process.burnoff import current_from_feed, feed_from_current
from beadwright.process.gases import Gas
from beadwright.process.transfer import Transfer
from beadwright.process.wires import Wire

LEAST_EXTENSION_M = 0.0015
"""Shortest extension that is calculated; with a shorter one the arc burns into the tip [m]."""

_ROUNDS = 100
"""Most fixed-point rounds: each shrinks the error about twentyfold inside a wire's usual range, and
by half where a long arc leaves hardly any extension."""

_SETTLED = 1e-12
"""Change of current, as a share, at which the rounds end [-]."""


@dataclass(frozen=True, slots=True)
class Operating:
    """An operating point of the arc.

    Attributes:
        feed_m_s: Wire feed [m/s].
        volts: Volts at the arc [V].
        current_a: Mean current [A].
        extension_m: Electrode extension [m].
    """

    feed_m_s: float
    volts: float
    current_a: float
    extension_m: float


def volts_window(
    current_a: float, wire: Wire, gas: Gas, transfer: Transfer
) -> tuple[float, float, float]:
    """Return low, set and high volts of a transfer mode at a current [V].

    Args:
        current_a: Mean current [A].
        wire: The wire [-].
        gas: The gas [-].
        transfer: The mode planned; pulse is given the open arc's mean [-].
    """
    if transfer == "short":
        return short_window(current_a, gas, wire.kind)
    return open_window(current_a, gas, wire.kind, wire.size)


def extension(tip_to_work_m: float, volts: float) -> float:
    """Return the electrode extension: tip-to-work less the arc length [m].

    Source: AWS A3.0: tip-to-work is extension plus arc length.

    Args:
        tip_to_work_m: Contact tip to work [m].
        volts: Volts at the arc [V].
    """
    return max(LEAST_EXTENSION_M, tip_to_work_m - arc_length_m(volts))


def at_feed(
    wire: Wire,
    gas: Gas,
    transfer: Transfer,
    feed_m_s: float,
    tip_to_work_m: float,
    volts: float | None = None,
    shift_v: float = 0.0,
) -> Operating:
    """Return the operating point of a feed; volts follow the mode unless given.

    Args:
        wire: The wire [-].
        gas: The gas [-].
        transfer: The mode planned [-].
        feed_m_s: Wire feed, above zero [m/s].
        tip_to_work_m: Contact tip to work, above zero [m].
        volts: Volts at the arc, or None for the mode's own [V].
        shift_v: How far from the mode's own line they are set [V].
    """
    here = volts if volts is not None else open_arc_volts(200.0, gas, wire.size)
    stick = extension(tip_to_work_m, here)
    current = current_from_feed(wire, feed_m_s, stick)
    if volts is None:
        for _ in range(_ROUNDS):
            here, before = volts_window(current, wire, gas, transfer)[1] + shift_v, current
            stick = extension(tip_to_work_m, here)
            current = current_from_feed(wire, feed_m_s, stick)
            if abs(current - before) <= _SETTLED * current:
                break
    return Operating(feed_m_s, here, current, stick)


def feed_at_current(
    wire: Wire,
    gas: Gas,
    transfer: Transfer,
    current_a: float,
    tip_to_work_m: float,
    volts: float | None = None,
    shift_v: float = 0.0,
) -> float:
    """Return the feed that draws a current; volts follow the mode unless given [m/s].

    Args:
        wire: The wire [-].
        gas: The gas [-].
        transfer: The mode planned [-].
        current_a: Mean current, above zero [A].
        tip_to_work_m: Contact tip to work, above zero [m].
        volts: Volts at the arc, or None for the mode's own [V].
        shift_v: How far from the mode's own line they are set [V].
    """
    if volts is None:
        volts = volts_window(current_a, wire, gas, transfer)[1] + shift_v
    return feed_from_current(wire, current_a, extension(tip_to_work_m, volts))
