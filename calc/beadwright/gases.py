"""Shielding gases as the shop says them, their ISO 14175 group, and whether they carry spray."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.errors import UnknownEntryError
from beadwright.units import quoted


@dataclass(frozen=True, slots=True)
class Gas:
    """A shielding gas.

    Attributes:
        name: As said in the shop: argon first.
        argon: Argon [volume share, 0 to 1].
        co2: Carbon dioxide [volume share].
        oxygen: Oxygen [volume share].
        iso_group: Group of ISO 14175.
    """

    name: str
    argon: float
    co2: float
    oxygen: float
    iso_group: str


def iso_14175_group(co2: float, oxygen: float) -> str:
    """Return the ISO 14175 main and sub group of an argon mixture or of CO2.

    Source: ISO 14175:2008, Table 2, from memory: M12 0.5-5 % CO2; M13 0.5-3 % O2;
    M20 5-15 % CO2; M21 15-25 % CO2; M22 3-10 % O2; M31 25-50 % CO2; C1 CO2.
    Upper limits belong to the group below.

    Args:
        co2: Carbon dioxide [volume share, 0 to 1].
        oxygen: Oxygen [volume share, 0 to 1].

    Raises:
        UnknownEntryError: If the mixture is none of these groups.
    """
    if co2 == 1 and oxygen == 0:
        return "C1"
    if oxygen == 0 and 0.005 <= co2 <= 0.50:
        for limit, group in ((0.05, "M12"), (0.15, "M20"), (0.25, "M21"), (0.50, "M31")):
            if co2 <= limit:
                return group
    if co2 == 0 and 0.005 <= oxygen <= 0.10:
        return "M13" if oxygen <= 0.03 else "M22"
    raise UnknownEntryError(f"no group for {co2:.1%} CO2 and {oxygen:.1%} O2")


def _gas(name: str, co2: float, oxygen: float = 0.0) -> Gas:
    return Gas(name, round(1 - co2 - oxygen, 6), co2, oxygen, iso_14175_group(co2, oxygen))


GASES: Mapping[str, Gas] = MappingProxyType(
    {
        gas.name: gas
        for gas in (
            _gas("98/2 O2", 0.0, 0.02),
            _gas("95/5", 0.05),
            _gas("90/10", 0.10),
            _gas("85/15", 0.15),
            _gas("80/20", 0.20),
            _gas("75/25", 0.25),
            _gas("CO2", 1.0),
        )
    }
)
"""Gases by shop name; argon/CO2 unless O2 is said."""


def gas_of(name: str) -> Gas:
    """Return a gas by its shop name.

    Args:
        name: A key of ``GASES`` [-].

    Raises:
        UnknownEntryError: If it is not in the table.
    """
    gas = GASES.get(name)
    if gas is None:
        known = ", ".join(GASES)
        raise UnknownEntryError(f"{quoted(name)} is not in the table; it has {known}")
    return gas


def flow_range_m3_s() -> tuple[float, float, float]:
    """Return the usual gas flow: low, set, high [m³/s].

    Source: procedure handbook, gas section: 25-30 ft³/h for gas metal arc; magazine article on
    shielding gas: 30-45 ft³/h semi-automatic. Set point 33 ft³/h: common practice 30-35.
    """
    cubic_foot_per_hour = 0.3048**3 / 3600
    return 25 * cubic_foot_per_hour, 33 * cubic_foot_per_hour, 45 * cubic_foot_per_hour
