"""The metals of wire and plates, with every number that belongs to one metal."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.measures import INCH_M


@dataclass(frozen=True, slots=True)
class Material:
    """A metal that is welded, with wire of the same metal.

    Attributes:
        name: Its name, in words.
        density_kg_m3: Density [kg/m³].
        drop_enthalpy_j_kg: Enthalpy of the molten drop over that of the cold wire [J/kg].
        modulus_pa: Young's modulus [Pa].
        tendon_n_per_j_m: Shrinkage force of a weld over its net heat input [N per J/m].
        thin_m: Plate below which burning through is watched [m].
        burn_through_j_m2: Heat input per thickness above which thin plate falls through [J/m²].
        burn_through_a: Current above which thin plate falls through: at no thickness [A], and for
            each ampere of the thumb rule [-].
        fusion_share: Current below which a bead does not fuse to the plate, over the thumb rule
            [-].
        fusion_to_m: Thickness above which that current no longer grows [m].
        harmful_gases: Components that harm it in a shielding gas, with the reason in words.
    """

    name: str
    density_kg_m3: float
    drop_enthalpy_j_kg: float
    modulus_pa: float
    tendon_n_per_j_m: float
    thin_m: float
    burn_through_j_m2: float
    burn_through_a: tuple[float, float]
    fusion_share: float
    fusion_to_m: float
    harmful_gases: Mapping[str, str]


CARBON_STEEL = Material(
    name="carbon steel",
    density_kg_m3=7850.0,
    drop_enthalpy_j_kg=1.3e6,
    modulus_pa=207e9,
    tendon_n_per_j_m=0.2,
    thin_m=6.0e-3,
    burn_through_j_m2=0.25e9,
    burn_through_a=(25.0, 1.7),
    fusion_share=0.6,
    fusion_to_m=0.1875 * INCH_M,
    harmful_gases=MappingProxyType(
        {
            "h2": "hydrogen in the gas cracks carbon steel; use a mix of argon, CO2, O2 and helium",
            "n2": "nitrogen in the gas makes pores in carbon steel; "
            "use a mix of argon, CO2, O2 and helium",
        }
    ),
)
"""Carbon steel.

Source of the density: EN 1991-1-1:2002, Table A.4 (77.0-78.5 kN/m³), design value 7850, from
memory; the handbooks' 0.283 lb/in³ is the same figure rounded (7833 kg/m³).

Of the drop's enthalpy: iron at its melting point from room temperature about 1.2-1.3 MJ/kg
(handbooks of physical chemistry, from memory); drops are hotter. It scales φ and r of ``burnoff``
together, so feed and current do not depend on it.

Of Young's modulus: 30 × 10⁶ psi. Of the shrinkage force: White, Leggatt and Dwight, the tendon
force of carbon steel: 0.2 kN per J/mm; from memory.

Of burning through: condition tables of power-source manuals run 1.2 mm at up to 100 A, 3.2 mm at
up to 170 A and 4.5 mm at up to 250 A; 25 A + 1.7 A per 0.001 in holds them all with some room.
Butts in the same tables reach 0.17 kJ/mm for each mm of plate, and fillets carry heat off three
ways: 0.25 is common practice. Both count below 6 mm only, just under 1/4 in (common practice).

Of fusing: common practice, 0.6 A per 0.001 in up to 3/16 in plate. The lowest current in the same
tables is 0.95 of the thumb rule, above this.
"""

MATERIALS: Mapping[str, Material] = MappingProxyType(
    {
        CARBON_STEEL.name: CARBON_STEEL,
    }
)
"""Materials by name."""
