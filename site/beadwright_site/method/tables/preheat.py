"""Tables of preheat and cooling: steels, what each formula is for, least preheat, shape factors."""

from __future__ import annotations

from math import isinf

from beadwright import units
from beadwright.heating.carbon_equivalent import FORMULAS
from beadwright.heating.cooling import BEAD, BUTT, CORNER, TEE
from beadwright.heating.haz_hardness import RANGES
from beadwright.heating.preheat_a import CES, HEATS_J_M, SCALES, WITHOUT_PREHEAT_M
from beadwright.heating.preheat_table import LEAST, THINNEST_M
from beadwright.heating.steels import ELEMENTS, STEELS, SYMBOLS, Composition, Limits
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


def _through(step: Limits) -> str:
    """Up to what thickness limits hold, as both editions print it."""
    if isinf(step.through_in_m):
        return "any"
    mm = f"{step.through_mm_m * 1000:g} mm"
    if step.through_in_m == step.through_mm_m:  # the standard prints millimetres alone
        return f"to {mm}"
    return f"to {units.show(step.through_in_m, 'leg', 'us')} in, {mm}"


def steels_table() -> Table:
    """Return the steels: usual melt, most allowed by thickness, most CE, category."""

    def shares(melt: Composition) -> tuple[str, ...]:
        return tuple(f"{melt.share(e):g}" if melt.share(e) else "–" for e in ELEMENTS)

    rows: list[tuple[str, ...]] = []
    for steel in STEELS.values():
        category = steel.category or "–"
        rows.append((steel.name, "usual", *shares(steel.typical), "–", category))
        for step in steel.limits:
            cap = "–" if step.ce_cap is None else f"{step.ce_cap:g}"
            most = shares(step.most)
            if step.mn_open:
                most = (most[0], f"({most[1]})", *most[2:])
            rows.append((steel.name, _through(step), *most, cap, ""))
    sources = (key for steel in STEELS.values() for key in (steel.limit_source, steel.cap_source))
    return Table(
        "steels",
        "Steels, % by mass",
        ("grade", "melt", *(SYMBOLS[e] for e in ELEMENTS), "most CE", "preheat category"),
        tuple(rows),
        ("typical-melt", *dict.fromkeys(key for key in sources if key)),
        "Usual: a likely melt, common practice. By thickness: each element at its limit. A36 is "
        "plate; Mn in brackets is not limited and counted as the next step's. A588 is grade B; "
        "A992 goes by its flange. Both editions as printed, not converted.",
        ("steels.STEELS", "steels.steel_of", "steels.Steel"),
    )


def method_a_table() -> Table:
    """Return what EN 1011-2 method A prints: combined thickness welded without preheat."""
    ends = dict(SCALES)
    rows = [
        (
            f"{scale}, to {ends[scale]:g}" if scale in ends else f"{scale}, more",
            *(f"{most * 1000:g} mm" for by_heat in by_ce for most in by_heat),
        )
        for scale, by_ce in WITHOUT_PREHEAT_M.items()
    ]
    heads = (f"CE {ce:g}, {heat / 1e6:g} kJ/mm" for ce in CES for heat in HEATS_J_M)
    return Table(
        "method-a",
        "Method A: largest combined thickness welded without preheat",
        ("hydrogen scale, ml/100 g", *heads),
        tuple(rows),
        ("en-1011-2-c1", "hydrogen-scales"),
        "A leaner steel or more heat counts as the next printed. Past the table, and under 1 "
        "kJ/mm, Figure C.2 of the standard must be read: its curves are not in this app, so no "
        "preheat by method A is given there. Combined thickness: the parts' sum, the plate a tee "
        "or lap stands on counted both ways.",
        (
            "preheat_a.preheat_a",
            "preheat_a.hydrogen_scale",
            "preheat_a.SCALES",
            "preheat_a.CES",
            "preheat_a.HEATS_J_M",
            "preheat_a.WITHOUT_PREHEAT_M",
        ),
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
        ("aws-d1.1-5.8", "aws-d1.1-5.8-a", "aws-d1.3-scope"),
        f"The table begins at {units.show(THINNEST_M['us'], 'leg', 'us')} in, "
        f"{THINNEST_M['si'] * 1000:g} mm; thinner sheet is under AWS D1.3. Below 32 °F, 0 °C the "
        "metal is warmed to 70 °F, 20 °C. Rows and temperatures as each edition prints them, not "
        "converted: the page's units choose the edition.",
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
