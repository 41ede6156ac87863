"""Tables of weld strength: the clauses counted by and how each was had, the steels."""

from __future__ import annotations

from beadwright.measures import PSI_PA
from beadwright.sources import SOURCES
from beadwright.sources.strength_sources import ROWS
from beadwright.strength.steel_strength import STRENGTHS
from beadwright_site.method.equations import Table

OTHERS = (
    "aisc-j2.4", "aisc-j2.2b", "aisc-j2.1", "aisc-j2.3", "aisc-j2.3b", "aws-d1.1-5.1",
    "aws-d1.1-gap", "aws-d1.1-skew", "skewed-tees",
)  # fmt: skip
"""Sources of sizes and joints that Strength names besides its own."""

HOW = ("found", "found second-hand", "from memory", "derived", "common practice")
"""How values are had, the surest first."""


def codes_table() -> Table:
    """Return every clause Strength counts by: its edition, and how it was had."""
    keys = (*(row[0] for row in ROWS), *OTHERS)
    sources = sorted(
        (SOURCES[key] for key in keys), key=lambda one: (HOW.index(one.how), one.document)
    )
    return Table(
        "strength-codes",
        "Clauses, editions, and how each was had",
        ("document", "clause", "had"),
        tuple((one.document, one.place, one.told) for one in sources),
        ("practice",),
        "The surest first; the same words stand beside each limit on the page. The edition is the "
        "one whose numbering is used: copies and handbooks read were often of an earlier one, and "
        "that the named edition says the same is then not checked against the book. Hold what "
        "decides against the edition your contract names.",
    )


def strengths_table() -> Table:
    """Return the steels' strengths as a table."""
    rows = [
        (
            steel.grade,
            "any" if limit == float("inf") else f"{limit * 1000:.0f}",
            f"{fy / 1e6:.0f}",
            f"{fu / 1e6:.0f}",
            "–" if steel.correlation is None else f"{steel.correlation:.2f}",
            "–" if steel.matching is None else f"{steel.matching / PSI_PA / 1000:.0f}",
        )
        for steel in STRENGTHS.values()
        for limit, fy, fu in steel.rows
    ]
    return Table(
        "steel-strengths",
        "Steels",
        ("grade", "to mm", "yield, MPa", "tensile, MPa", "βw", "filler, ksi"),
        tuple(rows),
        ("astm-strengths", "astm-a500", "en-10025-2", "aws-d1.1-matching"),
        covers=(
            "steel_strength.strength_of",
            "steel_strength.STRENGTHS",
            "steel_strength.ROUND_OF",
        ),
    )
