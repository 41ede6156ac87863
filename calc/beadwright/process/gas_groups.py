"""ISO 14175: the groups of shielding gases without hydrogen or nitrogen."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.errors import UnknownEntryError

_ROUNDING = 1e-9
LEAST_SHARE = 0.005
"""Least share that counts for a group [volume share]."""

OTHER_GROUP = "Z"
"""Group of a mixture with a component the other groups do not name. Source: ISO 14175:2008, from
memory."""


@dataclass(frozen=True, slots=True)
class GroupRow:
    """A row of the table: shares above the low limit up to the high one.

    Attributes:
        name: Main and sub group.
        co2: Low and high limit of carbon dioxide; both zero: none [volume share].
        oxygen: Low and high limit of oxygen [volume share].
    """

    name: str
    co2: tuple[float, float]
    oxygen: tuple[float, float]


_NONE = (0.0, 0.0)

ACTIVE: tuple[GroupRow, ...] = (
    GroupRow("M12", (LEAST_SHARE, 0.05), _NONE),
    GroupRow("M13", _NONE, (LEAST_SHARE, 0.03)),
    GroupRow("M14", (LEAST_SHARE, 0.05), (LEAST_SHARE, 0.03)),
    GroupRow("M20", (0.05, 0.15), _NONE),
    GroupRow("M21", (0.15, 0.25), _NONE),
    GroupRow("M22", _NONE, (0.03, 0.10)),
    GroupRow("M23", (LEAST_SHARE, 0.05), (0.03, 0.10)),
    GroupRow("M24", (0.05, 0.15), (LEAST_SHARE, 0.03)),
    GroupRow("M25", (0.05, 0.15), (0.03, 0.10)),
    GroupRow("M26", (0.15, 0.25), (LEAST_SHARE, 0.03)),
    GroupRow("M27", (0.15, 0.25), (0.03, 0.10)),
    GroupRow("M31", (0.25, 0.50), _NONE),
    GroupRow("M32", _NONE, (0.10, 0.15)),
    GroupRow("M33", (0.25, 0.50), (0.02, 0.10)),
    GroupRow("M34", (0.05, 0.25), (0.10, 0.15)),
    GroupRow("M35", (0.25, 0.50), (0.10, 0.15)),
)
"""Active mixtures; the balance is argon, which helium may replace in part or altogether.

M11 holds hydrogen and is not for carbon steel, nor are the groups R and N.
Source: ISO 14175:2008, Table 2, from memory.
"""


def _within(share: float, limits: tuple[float, float]) -> bool:
    low, high = limits
    if high == 0:
        return share == 0
    above = share >= low - _ROUNDING if low == LEAST_SHARE else share > low + _ROUNDING
    return above and share <= high + _ROUNDING


def iso_14175_group(co2: float, oxygen: float, helium: float = 0.0) -> str:
    """Return the ISO 14175 main and sub group of a mixture; the balance is argon.

    Source: ISO 14175:2008, Table 2, from memory: I1 argon, I2 helium, I3 argon with 0.5-95 %
    helium; ``ACTIVE``; C1 CO2; C2 CO2 with 0.5-30 % O2. A share on a limit belongs to the group
    below it.

    Args:
        co2: Carbon dioxide [volume share, 0 to 1].
        oxygen: Oxygen [volume share, 0 to 1].
        helium: Helium [volume share, 0 to 1].

    Raises:
        UnknownEntryError: If the mixture is in none of these groups.
    """
    inert = _inert_group(helium) if co2 == oxygen == 0 else ""
    name = inert or _co2_group(co2, oxygen)
    if name:
        return name
    for row in ACTIVE:
        if _within(co2, row.co2) and _within(oxygen, row.oxygen):
            return row.name
    raise UnknownEntryError(
        f"ISO 14175 has no group with {_percent(co2)} % CO2 and {_percent(oxygen)} % O2"
    )


def _inert_group(helium: float) -> str:
    if helium == 0:
        return "I1"
    if helium == 1:
        return "I2"
    return "I3" if LEAST_SHARE - _ROUNDING <= helium <= 0.95 + _ROUNDING else ""


def _co2_group(co2: float, oxygen: float) -> str:
    if co2 == 1:
        return "C1"
    alone = abs(co2 + oxygen - 1) < _ROUNDING
    return "C2" if alone and LEAST_SHARE - _ROUNDING <= oxygen <= 0.30 + _ROUNDING else ""


def _percent(share: float) -> str:
    return f"{round(100 * share, 2):g}"
