"""Tables of preheat and cooling: steels, what each formula is for, least preheat, shape factors."""

from __future__ import annotations

from beadwright import units
from beadwright.heating.carbon_equivalent import FORMULAS
from beadwright.heating.cooling import BEAD, BUTT, CORNER, TEE
from beadwright.heating.haz_hardness import RANGES
from beadwright.heating.preheat_table import LEAST, THINNEST_M
from beadwright.heating.steels import ELEMENTS, STEELS, SYMBOLS
from beadwright_site.method.equations import Table


def ranges_table() -> Table:
    """Return the steels each carbon equivalent is for."""
    rows = [
        (
            SYMBOLS[element],
            *(
                "–" if span is None else f"{span[0]:g} to {span[1]:g}"
                for span in (formula.ranges.get(element) for formula in FORMULAS.values())
            ),
            "–" if element not in RANGES else f"{RANGES[element][0]:g} to {RANGES[element][1]:g}",
        )
        for element in ELEMENTS
    ]
    return Table(
        "equivalent-ranges",
        "Steels each formula is for, %",
        ("", *(formula.name for formula in FORMULAS.values()), "hardness"),
        tuple(rows),
        ("en-1011-2-a", "en-1011-2-b", "ito-bessyo", "duren"),
        covers=("haz_hardness.RANGES",),
    )


def steels_table() -> Table:
    """Return the steels: usual melt, most allowed, category."""

    def share(value: float) -> str:
        return f"{value:g}" if value else "–"

    rows: list[tuple[str, ...]] = []
    for steel in STEELS.values():
        for said, melt in (("usual", steel.typical), ("most", steel.limit)):
            rows.append(
                (
                    f"{steel.name} {said}",
                    *(share(melt.share(element)) for element in ELEMENTS),
                    (steel.category or "–") if said == "usual" else "",
                )
            )
    return Table(
        "steels",
        "Steels, % by mass",
        ("grade", *(SYMBOLS[element] for element in ELEMENTS), "preheat category"),
        tuple(rows),
        ("typical-melt", *dict.fromkeys(steel.limit_source for steel in STEELS.values())),
        "Usual: a likely melt, common practice. Most: each element at its limit, all at once; A36 "
        "is plate up to 1-1/2 in, A588 grade B, EN grades up to 16 mm.",
        ("steels.STEELS", "steels.steel_of"),
    )


def least_table() -> Table:
    """Return the prequalified table for low-hydrogen processes."""
    steps = ("to 3/4 in, 20 mm", "to 1-1/2 in, 38 mm", "to 2-1/2 in, 65 mm", "over")
    rows = [
        (step, *(f"{LEAST[category][i][0]} °F, {LEAST[category][i][1]} °C" for category in LEAST))
        for i, step in enumerate(steps)
    ]
    return Table(
        "least-preheat",
        "Prequalified least preheat, gas-shielded wire",
        ("thickest part", *(f"category {category}" for category in LEAST)),
        tuple(rows),
        ("aws-d1.1-5.8",),
        f"The table begins at {units.show(THINNEST_M, 'leg', 'us')} in. Below 32 °F the metal is "
        "warmed to 70 °F. Both columns as printed, rounded, not converted.",
        (
            "preheat_table.LEAST",
            "preheat_table.table_row",
            "preheat_table.THICKNESS_STEPS_M",
            "preheat_table.THINNEST_M",
            "preheat_table.COLD_K",
            "preheat_table.COLD_TO_K",
        ),
    )


def factors_table() -> Table:
    """Return the shape factors."""
    rows = [
        (name, *(f"{f[0]:g}" if f[0] == f[2] else f"{f[0]:g} to {f[2]:g}, {f[1]:g} taken"
                 for f in (factors.thin, factors.thick)))
        for name, factors in (("bead on plate", BEAD), ("butt, filling", BUTT),
                              ("corner fillet", CORNER), ("tee and lap fillet", TEE))
    ]  # fmt: skip
    return Table(
        "shape-factors",
        "Shape factors",
        ("joint", "thin plate", "thick plate"),
        tuple(rows),
        ("en-1011-2-d1",),
        covers=(
            "cooling.shape_factors",
            "cooling.BEAD",
            "cooling.BUTT",
            "cooling.CORNER",
            "cooling.TEE",
        ),
    )
