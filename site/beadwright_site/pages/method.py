"""Method: each equation with its symbols, range, source and band; every source."""

from __future__ import annotations

from beadwright.sources import SOURCES
from beadwright_site import method, method_costs, method_melted, method_numbers
from beadwright_site.changes import CHANGES
from beadwright_site.mathml import inline
from beadwright_site.method import Equation
from beadwright_site.method_numbers import Table
from beadwright_site.rendering import render


def sections() -> tuple[tuple[Equation, tuple[Table, ...]], ...]:
    """Return each equation with the tables that belong to it, in the order of the work."""
    return (
        (method.BURN_OFF, (method_numbers.constants_table(),)),
        (method.EXTENSION, ()),
        (method_numbers.volts_lines(), (method_numbers.transition_table(),)),
        (method.LAID, (method_numbers.efficiency_table(),)),
        (method.BEAD, (method_numbers.travel_table(),)),
        (method.FILLET, (method_numbers.legs_table(),)),
        (method.SQUARE, ()),
        (method.HEAT, ()),
        (method_numbers.plate_limits(), ()),
        *((equation, ()) for equation in method_melted.EQUATIONS),
        *((equation, ()) for equation in method_costs.EQUATIONS),
    )


def method_page() -> str:
    """Return the page."""
    return render(
        "method/page.html",
        "method",
        sections=sections(),
        sources=SOURCES,
        changes=CHANGES,
        inline=inline,
    )
