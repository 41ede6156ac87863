"""The regions of transfer on the plane of current and volts: which mode a point lies in."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.process.arc import open_window, short_window
from beadwright.process.gases import Gas
from beadwright.process.transfer import Transfer, spray_refused, transition_current
from beadwright.process.wires import Wire
from beadwright.tolerance import REL_TOL

NO_SHORT_V = 12.0
"""Top of short circuit for wire that has none: the volts at which drawings begin [V]."""


@dataclass(frozen=True, slots=True)
class Edges:
    """Volts at the edges of the regions for one current [V]."""

    short_top: float
    open_low: float
    open_top: float


def globular_current(wire: Wire, gas: Gas) -> float:
    """Return the current below which the open arc's volts still short circuit [A].

    Source: where the middle of the open arc's volts (``arc.open_window``) crosses the top of short
    circuit's; both are straight in current. Zero where the open arc is always above it, and for
    flux-cored wire, which has no short circuit.

    Args:
        wire: The wire [-].
        gas: The gas [-].
    """
    if not wire.traits.shorts:
        return 0.0
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
    if not wire.traits.shorts:
        return Edges(NO_SHORT_V, low, top)
    return Edges(short_window(current_a, gas, wire.kind)[2], low, top)


def transfer_at(current_a: float, volts: float, wire: Wire, gas: Gas) -> Transfer:
    """Return the transfer mode at a current and volts.

    Short circuit up to its top volts; spray from the transition current and the open arc's low
    volts up, where wire and gas allow it; globular between. Flux-cored wire has no short circuit:
    under its window it runs coarse.

    Args:
        current_a: Mean current [A].
        volts: Arc volts [V].
        wire: The wire [-].
        gas: The gas [-].
    """
    at = edges(current_a, wire, gas)
    # Within the tolerance it still sprays: rounding moves a set point that lies on the edge.
    least = transition_current(wire, gas) * (1 - REL_TOL)
    if not spray_refused(wire, gas) and current_a >= least and volts >= at.open_low - REL_TOL:
        return "spray"
    if not wire.traits.shorts:
        return "globular"
    return "short" if volts <= at.short_top else "globular"
