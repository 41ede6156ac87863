"""Shielding gases: the usual ones, and any mixture for wire on carbon steel."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.errors import UnknownEntryError
from beadwright.process.gas_groups import LEAST_SHARE, OTHER_GROUP, iso_14175_group
from beadwright.process.gas_mix import Mix, read_mix, say_mix


@dataclass(frozen=True, slots=True)
class Gas:
    """A shielding gas.

    Attributes:
        name: As said in the shop: argon first, CO2 second, others with their symbol.
        argon: Argon [volume share, 0 to 1].
        co2: Carbon dioxide [volume share].
        oxygen: Oxygen [volume share].
        iso_group: Group of ISO 14175.
        helium: Helium [volume share].
        others: Any other component and its share [volume share].
    """

    name: str
    argon: float
    co2: float
    oxygen: float
    iso_group: str
    helium: float = 0.0
    others: tuple[tuple[str, float], ...] = ()


def _gas(mix: Mix) -> Gas:
    """The gas of a mixture; refused, with the reason, if it is not for wire on steel."""
    argon, co2, oxygen, helium = (
        round(percent / 100, 6) for percent in (mix.argon, mix.co2, mix.oxygen, mix.helium)
    )
    name = say_mix(mix)
    why = _why_not(argon, co2, oxygen, helium)
    if why is not None:
        raise UnknownEntryError(f"{name} is no gas for wire on steel: {why}")
    others = tuple((component, round(percent / 100, 6)) for component, percent in mix.others)
    group = OTHER_GROUP if others else iso_14175_group(co2, oxygen, helium)
    return Gas(name, argon, co2, oxygen, group, helium, others)


def _why_not(argon: float, co2: float, oxygen: float, helium: float) -> str | None:
    """Why a mixture is not for wire on carbon steel, or None if it is."""
    if helium > 0 and co2 == oxygen == 0 and argon < 0.05:
        return "helium alone does not hold an arc on it; mix it with argon and CO2"
    if 0 < min((share for share in (co2, oxygen) if share > 0), default=1) < LEAST_SHARE:
        return "a share of CO2 or O2 under 0.5 % counts for no group of ISO 14175"
    without_argon = argon == helium == 0
    if oxygen > (0.30 if without_argon else 0.15):
        most = "30 % O2 in CO2" if without_argon else "15 % O2"
        return f"ISO 14175 has no group over {most}; it burns up the wire"
    if co2 > 0.50 and not without_argon:
        return "over 50 % CO2 it is in no group of ISO 14175; use CO2 or a leaner mix"
    try:
        iso_14175_group(co2, oxygen, helium)
    except UnknownEntryError as error:
        return str(error)
    return None


_USUAL = (
    "98/2 O2", "95/5", "92/8", "90/10", "85/15", "80/20", "75/25", "90/8/2 O2",
    "65/8/0.5 O2/26.5 He", "CO2",
)  # fmt: skip

GASES: Mapping[str, Gas] = MappingProxyType({name: _gas(read_mix(name)) for name in _USUAL})
"""The usual gases by shop name; ``gas_of`` takes any other mixture too."""


def gas_of(name: str) -> Gas:
    """Return a gas as said in the shop: a usual one or any mixture of Ar, CO2, O2 and He.

    Args:
        name: Such as ``90/10``, ``98/2 O2``, ``90/8/2 O2``, ``CO2``; see ``gas_mix`` [-].

    Raises:
        UnknownEntryError: If it cannot be read, does not add to 100 or is not for wire on steel.
    """
    usual = GASES.get(name)
    return usual if usual is not None else _gas(read_mix(name))
