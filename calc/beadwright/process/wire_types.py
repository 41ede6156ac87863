"""The classifications of wire: names, sizes, and the gases each is made for.

ISO designations beside the AWS ones are of the nearest common type; they are not equivalents.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.phrases import Phrase, say
from beadwright.process.materials import MATERIALS, Material
from beadwright.process.wire_kinds import Kind

SMOOTH_ROLL = "smooth V-groove"
KNURLED_ROLL = "knurled V-groove, light pressure"

_A5_18 = "AWS A5.18/A5.18M"
_A5_20 = "AWS A5.20/A5.20M"
_A5_28 = "AWS A5.28/A5.28M"
_70_KSI_PA = 490e6
_80_KSI_PA = 550e6


@dataclass(frozen=True, slots=True)
class MadeFor:
    """The gases a classification is made for.

    Attributes:
        label: The gases, as its label names them.
        named: The same, as a refusal says it.
        co2: Least and most CO2, oxygen counted at its share of it [volume share].
        plain: True if argon and CO2 alone are allowed.
    """

    label: str
    named: Phrase
    co2: tuple[float, float]
    plain: bool


@dataclass(frozen=True, slots=True)
class WireType:
    """A classification of wire.

    Attributes:
        name: AWS classification.
        iso: Common ISO designation.
        spec: The AWS specification it is classified in.
        kind: Solid, metal-cored or flux-cored.
        sizes: Inch names of the diameters made.
        drive_roll: Groove that feeds it.
        fill_share: Share of the wire's mass that is core powder [-].
        gases: The gases it is made for.
        polarity: Polarity of the wire; electrode positive for all of them.
        tensile_pa: Least tensile strength of its weld metal [Pa].
        alias: Its name under the open system of AWS A5.36, or empty.
        material: The metal it is made of and lays.
    """

    name: str
    iso: str
    spec: str
    kind: Kind
    sizes: tuple[str, ...]
    drive_roll: str
    fill_share: float
    gases: MadeFor
    polarity: str = "DC+"
    tensile_pa: float = _70_KSI_PA
    alias: str = ""
    material: Material = MATERIALS["carbon steel"]


_FROM_023 = ("0.023in", "0.030in", "0.035in", "0.040in", "0.045in", "0.052in", "1/16in")
_FROM_030 = _FROM_023[1:]
_FROM_035 = _FROM_023[2:]
_FROM_045 = _FROM_023[4:]
_FLUX = ("0.035in", *_FROM_045)
_ANY = MadeFor(
    "CO2 or argon mixtures", say("process.co2-or-argon-mixtures"), (0.0, 1.0), plain=False
)
_ARGON = MadeFor(
    "argon with up to 25 % CO2", say("process.argon-mixtures"), (0.0, 0.25), plain=False
)
_CO2 = MadeFor("CO2", say("process.co2"), (1.0, 1.0), plain=True)
_MIX = MadeFor(
    "argon with 20 to 25 % CO2", say("process.argon-20-25-co2"), (0.20, 0.25), plain=True
)
"""Source: AWS A5.18 and A5.28: the M of E70C-6M classifies it in an argon mixture, 75-80 % argon
and CO2 (from memory); sheets of metal-cored wire go to 95 % argon. AWS A5.20: E71T-1C in CO2,
E71T-1M in 75-80 % argon, balance CO2 (textbook's copy, second-hand)."""


def _solid(name: str, iso: str, sizes: tuple[str, ...]) -> WireType:
    return WireType(name, iso, _A5_18, "solid", sizes, SMOOTH_ROLL, 0.0, _ANY)


WIRE_TYPES: Mapping[str, WireType] = MappingProxyType(
    {
        wire.name: wire
        for wire in (
            _solid("ER70S-6", "ISO 14341-B-G 49A 3 C1 S6", _FROM_023),
            _solid("ER70S-3", "ISO 14341-B-G 49A 2 C1 S3", _FROM_023),
            _solid("ER70S-2", "ISO 14341-B-G 49A 3 C1 S2", _FROM_030),
            WireType("ER80S-D2", "ISO 14341-B-G 55A 3 C1 S4M31", _A5_28, "solid", _FROM_035,
                     SMOOTH_ROLL, 0.0, _ANY, tensile_pa=_80_KSI_PA),
            WireType("E70C-6M", "ISO 17632-B-T 49 3 T15-0 M21 A", _A5_18, "metal-cored",
                     _FROM_035, KNURLED_ROLL, 0.18, _ARGON, alias="E70T15-M21A2-CS1"),
            WireType("E80C-Ni1", "ISO 17632-B-T 55 5 T15-0 M21 A-N2", _A5_28, "metal-cored",
                     _FROM_045, KNURLED_ROLL, 0.18, _ARGON, tensile_pa=_80_KSI_PA,
                     alias="E80T15-M21A5-Ni1"),
            WireType("E71T-1C", "ISO 17632-B-T 49 2 T1-1 C1 A", _A5_20, "flux-cored",
                     _FLUX, KNURLED_ROLL, 0.15, _CO2, alias="E71T1-C1A0-CS1"),
            WireType("E71T-1M", "ISO 17632-B-T 49 2 T1-1 M21 A", _A5_20, "flux-cored",
                     _FLUX, KNURLED_ROLL, 0.15, _MIX, alias="E71T1-M21A0-CS1"),
        )
    }
)  # fmt: skip
"""Wire types by AWS classification.

Source: AWS A5.18, A5.20, A5.28 and A5.36 and the ISO designations from memory; position, gas and
polarity of E71T-1 and E71T-1M from a textbook's copy of the A5.20 table (second-hand). Sizes of
flux-cored wire as two sources print them, without 0.040 in (found); sizes of the others as commonly
made, knurled rolls for cored wire, fill shares (metal-cored 15-20 %, rutile flux-cored
12-18 % of the mass): common practice.
"""
