"""The range of the published points, and the note on a current outside it."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

from beadwright.phrases import Amount, say
from beadwright.process.burnoff_points import POINTS
from beadwright.process.wire_kinds import Kind
from beadwright.process.wires import Wire
from beadwright.results import Note


@cache
def published_currents(kind: Kind, size: str) -> tuple[float, float] | None:
    """Return the lowest and highest current of the printed points that a wire's burn-off holds [A].

    Source: ``burnoff_points.POINTS``: those fitted, and the short-arc rows of metal-cored wire's
    sheet, which the fit leaves out and the band holds; None where no point is printed.

    Args:
        kind: The wire's kind [-].
        size: Inch name of its diameter [-].
    """
    currents = [
        p.current_a
        for p in POINTS
        if (p.kind, p.size) == (kind, size) and (p.fitted or p.source == "e70c-sheet")
    ]
    return (min(currents), max(currents)) if currents else None


def published_notes(wire: Wire, current_a: float | None) -> Iterator[Note]:
    """Yield the note on a current outside the published points.

    Args:
        wire: The wire [-].
        current_a: Current at the set point, or None without one [A].
    """
    reach = published_currents(wire.kind, wire.size)
    if reach is None or current_a is None or reach[0] <= current_a <= reach[1]:
        return
    yield Note(
        "caution",
        say(
            "process.under-published" if current_a < reach[0] else "process.over-published",
            current=Amount(current_a, "current"),
            least=Amount(reach[0], "current"),
            most=Amount(reach[1], "current"),
        ),
        "power-balance",
        "wfs",
    )
