"""The method of the metal laid as data: deposition, bead and travel."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright import units
from beadwright.process.deposition import deposition_efficiency
from beadwright.process.gases import GASES
from beadwright.process.materials import CARBON_STEEL
from beadwright.process.positions import TRAVEL_RANGE_M_S
from beadwright.process.transfer import NAMES, Transfer
from beadwright.process.wire_kinds import KINDS
from beadwright.process.wires import wire_of
from beadwright_site.method.equations import Equation, Section, Symbol, Table
from beadwright_site.method.mathml import equation, line, over

_RHO_A = Symbol(line("ρ A"), "mass of wire per length: the density times π/4 of the diameter "
                "squared if solid, less by a table if cored", "kg/m")  # fmt: skip
_FEED = Symbol("v", "wire feed", "m/s")
_TRAVEL = Symbol("w", "travel", "m/s")
_SECTION = Symbol("S", "section of the bead", "m²")
_LAID = Symbol("D", "deposition rate", "kg/s")
_DENSITY = Symbol("ρ", f"density of steel, {CARBON_STEEL.density_kg_m3:g}", "kg/m³")

LAID = Equation(
    "laid",
    "Deposition rate",
    (equation(line("D = η · ρ A · v")),),
    (
        _LAID,
        Symbol("η", "deposition efficiency: metal deposited over wire used", "–"),
        _RHO_A,
        _FEED,
    ),
    "Any feed.",
    "By wire and transfer, below.",
    ("lecture-efficiency", "mig-handbook-deposition", "e70c-sheet"),
    "",
    (
        "deposition.laid_rate",
        "materials.MATERIALS",
        "wires.solid_linear_mass",
        "materials.CARBON_STEEL",
        "materials.MATERIALS",
    ),
)

BEAD = Equation(
    "bead",
    "Bead and travel",
    (equation("S", "=", over("D", line("ρ · w"))), equation("w", "=", over("D", line("ρ · S")))),
    (_SECTION, _LAID, _DENSITY, _TRAVEL),
    "Always: metal is neither lost nor made.",
    "That of the deposition rate.",
    ("mass-balance",),
    "Travel follows from the section the joint needs, never from a table.",
    ("deposition.bead_section", "deposition.travel_for_section", "deposition.feed_for_travel"),
)


def efficiency_table() -> Table:
    """Return deposition efficiency by wire and transfer."""
    solid, metal, flux = (wire_of(traits.representative, "0.045in") for traits in KINDS.values())

    def rows() -> Iterator[tuple[str, ...]]:
        modes: tuple[Transfer, ...] = ("short", "globular", "spray")
        for mode in modes:
            for gas in ("90/10", "CO2") if mode != "spray" else ("90/10",):
                low, set_, high = deposition_efficiency(solid, GASES[gas], mode)
                name = f"solid, {NAMES[mode].lower()}, {gas}"
                yield name, f"{low:.0%}", f"{set_:.0%}", f"{high:.0%}"
        for wire, name, gas in ((metal, "metal-cored", "90/10"), (flux, "flux-cored", "75/25"),
                                (flux, "flux-cored", "CO2")):  # fmt: skip
            low, set_, high = deposition_efficiency(wire, GASES[gas], "spray")
            yield f"{name}, {gas}", f"{low:.0%}", f"{set_:.0%}", f"{high:.0%}"

    return Table(
        "efficiency",
        "Deposition efficiency",
        ("wire, transfer, gas", "low", "counted", "high"),
        tuple(rows()),
        ("lecture-efficiency", "mig-handbook-deposition", "e70c-sheet"),
        "",
        ("deposition.deposition_efficiency",),
    )


def travel_table() -> Table:
    """Return the travel each mover holds."""

    def written(ends: tuple[float, float], system: units.System) -> str:
        low, high = (units.show(end, "travel", system) for end in ends)
        return f"{low.removesuffix('.0')}–{high.removesuffix('.0')}"

    return Table(
        "travel",
        "Travel held steadily",
        ("gun moved by", "in/min", "mm/min"),
        tuple(
            (f"{mover}, {orientation}", written(ends, "us"), written(ends, "si"))
            for (mover, orientation), ends in TRAVEL_RANGE_M_S.items()
        ),
        ("practice",),
        "",
        ("positions.TRAVEL_RANGE_M_S",),
    )


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return (Section(LAID, (efficiency_table(),)), Section(BEAD, (travel_table(),)))
