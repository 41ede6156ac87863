"""What wire and gas cost by weight and volume, however the shop is billed."""

from __future__ import annotations

from beadwright.errors import FieldErrors
from beadwright.money.asked_way import AskedWay


def wire_price(asked: AskedWay) -> float:
    """Return the price of a way's wire [money/kg].

    A price of a full package outranks one by weight; a later way's own price, of either kind,
    outranks what it would take from the first.

    Args:
        asked: The way [-].

    Raises:
        FieldErrors: If a package is priced and nobody said how much wire is on it.
    """
    own, taken = asked.own, asked.taken
    price, package = taken.wire_price, taken.spool_price
    if package is None or (own.wire_price is not None and own.spool_price is None):
        if price is None or not price.package:
            return 0.0 if price is None else price.amount
        package = price.amount
    if "spool" not in asked.known:
        text = "Write how much wire is on it, as 33lb: a price by the spool means nothing without."
        raise FieldErrors({f"{asked.prefix}spool": [text]})
    assert taken.spool is not None  # it is known
    return package / taken.spool


def gas_price(asked: AskedWay) -> float:
    """Return the price of a way's gas [money/m³]; as ``wire_price``, with the cylinder.

    Args:
        asked: The way [-].

    Raises:
        FieldErrors: If a cylinder is priced in the query and nobody said how much gas is in it.
    """
    own, taken = asked.own, asked.taken
    price, package = taken.gas_price, taken.cylinder_price
    by_volume = bool(asked.prefix) and own.gas_price is not None and own.cylinder_price is None
    content = taken.cylinder_gas
    if package is None or by_volume or (content is None and "cylinder_price" not in asked.typed):
        if price is None or not price.package:
            return 0.0 if price is None else price.amount
        package = price.amount
    if content is None:
        text = "Write how much gas a full one holds, as 330ft3: a price by the cylinder means "
        raise FieldErrors({f"{asked.prefix}cylinder_gas": [f"{text}nothing without."]})
    return package / content
