"""A gas as the shop says it: argon first, CO2 second, any other number with its symbol.

``90/10``, ``98/2 O2``, ``90/8/2 O2``, ``65/8/0.5 O2/26.5 He``, ``Ar``, ``CO2``. If every number has
its symbol, the order does not matter.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import KW_ONLY, dataclass

from beadwright.errors import UnknownEntryError
from beadwright.process.gas_components import COMPONENTS
from beadwright.process.materials import MATERIALS
from beadwright.typed_number import quoted

HOW_TO_SAY = "write argon first, CO2 second and a symbol after any other: 90/10, 98/2 O2, 90/8/2 O2"

_PART = re.compile(r"\A(?P<number>[0-9]{1,3}(?:\.[0-9]{1,6})?)\s*%?\s*(?P<symbol>[a-z]\w*)?\Z")
_SPELLED: Mapping[str, str] = {
    spelling: component.name
    for component in COMPONENTS.values()
    for spelling in (component.name, *component.spellings)
}
_NAMED = ("argon", "co2", "oxygen", "helium")


@dataclass(frozen=True, slots=True)
class Mix:
    """Shares of a mixture; they add to 100.

    Attributes:
        argon: Argon [percent by volume].
        co2: Carbon dioxide [percent by volume].
        oxygen: Oxygen [percent by volume].
        helium: Helium [percent by volume].
        others: Any other component of ``gas_components`` and its share [percent by volume].
    """

    argon: float = 0.0
    co2: float = 0.0
    oxygen: float = 0.0
    helium: float = 0.0
    _: KW_ONLY
    others: tuple[tuple[str, float], ...] = ()

    def shares(self) -> dict[str, float]:
        """The share of each component, in the order the shop says them [percent by volume]."""
        given = dict(self.others)
        named = {name: getattr(self, name) for name in _NAMED}
        return {name: named.get(name, given.get(name, 0.0)) for name in COMPONENTS}


def _mix(shares: Mapping[str, float]) -> Mix:
    """The mixture of the shares of its components [percent by volume]."""
    others = tuple((name, share) for name, share in shares.items() if name not in _NAMED)
    return Mix(*(shares.get(name, 0.0) for name in _NAMED), others=others)


def _harm(symbol: str) -> str:
    """Why a component must not be in a gas for one of the materials, or an empty string."""
    reasons = (material.harmful_gases.get(symbol, "") for material in MATERIALS.values())
    return next((reason for reason in reasons if reason), "")


def read_mix(text: str) -> Mix:
    """Return the shares of a gas as said in the shop, to 0.01 %.

    Args:
        text: Such as ``90/10``, ``90/8/2 O2``, ``90 He/7.5 Ar/2.5 CO2``, ``CO2`` [-].

    Raises:
        UnknownEntryError: If it cannot be read, or does not add to 100.
    """
    plain = text.strip().lower().replace("₂", "2").replace(",", ".")
    if plain in _SPELLED:
        return _mix({_SPELLED[plain]: 100.0})
    if _harm(plain):
        raise UnknownEntryError(_harm(plain))
    shares: dict[str, float] = {}
    for place, part in enumerate(plain.split("/")):
        name, percent = _part(text, part.strip(), place, shares)
        if name in shares:
            raise UnknownEntryError(
                f"{quoted(text)} has {COMPONENTS[name].symbol} twice; {HOW_TO_SAY}"
            )
        shares[name] = percent
    total = round(sum(shares.values()), 2)
    if total != 100:
        raise UnknownEntryError(f"{quoted(text)} adds to {total:g}; the shares must add to 100")
    return _mix(shares)


def _part(text: str, part: str, place: int, before: Mapping[str, float]) -> tuple[str, float]:
    """Name and percent of one part; a number without a symbol is known by its place."""
    match = _PART.match(part)
    if match is None:
        raise UnknownEntryError(f"{quoted(text)} is no gas; {HOW_TO_SAY}")
    symbol = match["symbol"]
    if symbol is not None and _harm(symbol):
        raise UnknownEntryError(_harm(symbol))
    if symbol is not None and symbol not in _SPELLED:
        *most, last = (component.symbol for component in COMPONENTS.values())
        raise UnknownEntryError(
            f"{quoted(symbol)} in {quoted(text)} is not {', '.join(most)} or {last}; {HOW_TO_SAY}"
        )
    percent = round(float(match["number"]), 2)
    if symbol is not None:
        return _SPELLED[symbol], percent
    if place == 0:
        return "argon", percent
    if place == 1 and "argon" in before:
        return "co2", percent
    raise UnknownEntryError(f"{quoted(text)} does not say what the {percent:g} is; {HOW_TO_SAY}")


def say_mix(mix: Mix) -> str:
    """Return a mixture as the shop says it; ``read_mix`` reads it back.

    Args:
        mix: The shares [percent by volume].
    """
    shares = {name: share for name, share in mix.shares().items() if share > 0}
    if len(shares) == 1:
        return COMPONENTS[next(iter(shares))].symbol
    bare = ("argon", "co2") if "argon" in shares else ()
    return "/".join(
        f"{share:g}" if name in bare else f"{share:g} {COMPONENTS[name].symbol}"
        for name, share in shares.items()
    )
