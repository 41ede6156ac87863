"""What to buy for a job, as a list and as CSV."""

from __future__ import annotations

import csv
from collections.abc import Sequence
from dataclasses import dataclass
from io import StringIO


@dataclass(frozen=True, slots=True)
class PurchaseRow:
    """One line of a purchase list.

    Attributes:
        key: Its id: wire, gas, tips, nozzles.
        item: What to buy.
        package: How it comes.
        count: How many [-].
        price: Price of one, or None if not written [money].
        note: A remark, or empty.
    """

    key: str
    item: str
    package: str
    count: int
    price: float | None
    note: str

    @property
    def amount(self) -> float | None:
        """What the line comes to [money]."""
        return None if self.price is None else self.price * self.count


def purchase_total(rows: Sequence[PurchaseRow]) -> float | None:
    """Return what a list comes to; None if a line that buys anything has no price [money].

    Args:
        rows: The list [-].
    """
    amounts = [row.amount for row in rows if row.count]
    if any(amount is None for amount in amounts):
        return None
    return sum(amount for amount in amounts if amount is not None)


def purchase_csv(rows: Sequence[PurchaseRow], sign: str) -> str:
    """Return a purchase list as CSV.

    Args:
        rows: The list [-].
        sign: Currency sign [-].
    """
    file = StringIO()
    writer = csv.writer(file, lineterminator="\r\n")
    writer.writerow(["item", "package", "count", f"price {sign}".strip(),
                     f"amount {sign}".strip(), "note"])  # fmt: skip
    for row in rows:
        writer.writerow([row.item, row.package, row.count, _cents(row.price), _cents(row.amount),
                         row.note])  # fmt: skip
    writer.writerow(["total", "", "", "", _cents(purchase_total(rows)), ""])
    return file.getvalue()


def _cents(amount: float | None) -> str:
    return "" if amount is None else f"{amount:.2f}"
