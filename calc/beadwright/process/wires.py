"""The wires: sizes, linear mass, section that carries current."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from math import pi
from types import MappingProxyType

from beadwright import units
from beadwright.errors import UnknownEntryError
from beadwright.measures import INCH_M
from beadwright.process.materials import Material
from beadwright.process.own_numbers import OwnNumbers
from beadwright.process.wire_kinds import KINDS, Kind, KindTraits
from beadwright.process.wire_types import WIRE_TYPES, WireType
from beadwright.typed_number import quoted

__all__ = [
    "CORED_MASS_RATIO",
    "INCH_SIZES_M",
    "METRIC_NAMES",
    "WIRE_TYPES",
    "Wire",
    "WireType",
    "size_of",
    "solid_linear_mass",
    "wire_of",
]

INCH_SIZES_M: Mapping[str, float] = MappingProxyType(
    {
        "0.023in": 0.023 * INCH_M,
        "0.030in": 0.030 * INCH_M,
        "0.035in": 0.035 * INCH_M,
        "0.040in": 0.040 * INCH_M,
        "0.045in": 0.045 * INCH_M,
        "0.052in": 0.052 * INCH_M,
        "1/16in": 0.0625 * INCH_M,
    }
)
"""Wire diameters by their inch names [m]."""

METRIC_NAMES: Mapping[str, str] = MappingProxyType(
    {
        "0.023in": "0.6mm",
        "0.030in": "0.8mm",
        "0.035in": "0.9mm",
        "0.040in": "1.0mm",
        "0.045in": "1.2mm",
        "0.052in": "1.4mm",
        "1/16in": "1.6mm",
    }
)
"""The metric size sold in each inch size's place (trade custom, not a conversion)."""

CORED_MASS_RATIO: Mapping[tuple[Kind, str], float] = MappingProxyType(
    {
        ("metal-cored", "0.035in"): 0.93,
        ("metal-cored", "0.040in"): 0.93,
        ("metal-cored", "0.045in"): 0.931,
        ("metal-cored", "0.052in"): 0.926,
        ("metal-cored", "1/16in"): 0.920,
        ("flux-cored", "0.035in"): 0.86,
        ("flux-cored", "0.045in"): 0.86,
        ("flux-cored", "0.052in"): 0.86,
        ("flux-cored", "1/16in"): 0.86,
    }
)
"""Mass per length of cored wire over solid wire of the same diameter [-].

Source, metal-cored: published data sheet for class E70C-6M: 0.420 lb/1000 in at 0.045 in. At
1/16 in the sheet prints 0.765 lb/1000 in, but its melt-off of 7.0 to 22.0 lb/h at 150 to 450 in/min
comes to 0.778 to 0.815; weighed metal is what is compared, so the melt-off rules here. 0.052 in is
interpolated, 0.035 and 0.040 in carried over
from 0.045 in: no published figure was found for them. Flux-cored: about 0.86, what deposition data
of class E71T-1 come to (melt-off over feed, from memory), good to ±4 %.
"""

_PRINTED_MASS: frozenset[tuple[Kind, str]] = frozenset(
    {("metal-cored", "0.045in"), ("metal-cored", "1/16in")}
)


@dataclass(frozen=True, slots=True)
class Wire:
    """A wire of one type and diameter.

    Attributes:
        type: Its classification.
        size: Inch name of the diameter.
        diameter_m: Diameter [m].
        linear_mass_kg_m: Mass per length [kg/m].
        conducting_area_m2: Section that carries the current [m²].
        published: False where the mass was interpolated, carried over or remembered.
        own: What a shop's coupons say of it, or None where the published fits stand.
        kind: Solid, metal-cored or flux-cored: the key of its tables; of its type.
        traits: What makes its kind different.
        material: The metal it is made of and lays; of its type.
    """

    type: WireType
    size: str
    diameter_m: float
    linear_mass_kg_m: float
    conducting_area_m2: float
    published: bool
    own: OwnNumbers | None = None
    # Stored, not worked out when asked: the arc asks for them at each step of each search.
    kind: Kind = field(init=False, repr=False, compare=False)
    traits: KindTraits = field(init=False, repr=False, compare=False)
    material: Material = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "kind", self.type.kind)
        object.__setattr__(self, "traits", KINDS[self.type.kind])
        object.__setattr__(self, "material", self.type.material)

    @property
    def metric_size(self) -> str:
        """The metric size in its place."""
        return METRIC_NAMES[self.size]


def solid_linear_mass(diameter_m: float, material: Material) -> float:
    """Return the mass per length of a solid wire [kg/m].

    Source: geometry and the material's density.

    Args:
        diameter_m: Wire diameter, above zero [m].
        material: What it is made of [-].
    """
    return material.density_kg_m3 * pi / 4 * diameter_m**2


def _number(metric: str) -> float | None:
    """The number of a metric size as a spool names it, with or without its unit."""
    try:
        return float(metric.removesuffix("mm"))
    except ValueError:
        return None


def size_of(text: str) -> str:
    """Return the inch name of a wire diameter typed in inches or millimeters.

    Args:
        text: Such as ``0.045in``, ``.045``, ``1.2mm``, ``1mm``, ``1/16`` [-].

    Raises:
        UnknownEntryError: If no wire of that size is in the table.
    """
    plain = text.strip().lower()
    for name, metric in METRIC_NAMES.items():
        if _number(plain) == _number(metric):
            return name
    try:
        typed = units.read(plain, "wire_diameter", "us")
    except ValueError as error:
        raise UnknownEntryError(str(error)) from error
    for name, size in INCH_SIZES_M.items():
        if abs(size - typed) < 1e-5:
            return name
    known = ", ".join(f"{name} ({METRIC_NAMES[name]})" for name in INCH_SIZES_M)
    raise UnknownEntryError(f"{quoted(text)} is no size in the table; it has {known}")


def wire_of(name: str, size: str) -> Wire:
    """Return the wire of a classification and inch size.

    The section that carries current is the whole wire if solid; if cored, the sheath:
    (1 - fill share) of the mass at the density of its metal.

    Args:
        name: AWS classification, a key of ``WIRE_TYPES`` [-].
        size: Inch name of the diameter, such as ``0.045in`` [-].

    Raises:
        UnknownEntryError: If the wire is not in the table, or not made in that size.
    """
    wire_type = WIRE_TYPES.get(name)
    if wire_type is None:
        raise UnknownEntryError(f"{name} is not in the table; it has {', '.join(WIRE_TYPES)}")
    if size not in wire_type.sizes:
        raise UnknownEntryError(f"{name} is made in {', '.join(wire_type.sizes)}, not {size}")
    diameter_m = INCH_SIZES_M[size]
    solid = solid_linear_mass(diameter_m, wire_type.material)
    if not KINDS[wire_type.kind].cored:
        return Wire(wire_type, size, diameter_m, solid, pi / 4 * diameter_m**2, True)
    key = (wire_type.kind, size)
    mass = solid * CORED_MASS_RATIO[key]
    sheath = mass * (1 - wire_type.fill_share) / wire_type.material.density_kg_m3
    return Wire(wire_type, size, diameter_m, mass, sheath, key in _PRINTED_MASS)
