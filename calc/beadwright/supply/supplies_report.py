"""The Supplies page's answer as a report, and its purchase list as CSV."""

from __future__ import annotations

from beadwright.reports import Number, Shown, Tree, same, shown
from beadwright.supply.leftovers import CylinderLeft, SpoolLeft
from beadwright.supply.purchase import PurchaseRow, purchase_csv, purchase_total
from beadwright.supply.supplies_page import SuppliesAnswer


def supplies_report(answer: SuppliesAnswer) -> Tree:
    """Return the Supplies page's answer, by part.

    Args:
        answer: The answer [-].
    """
    found, packages = answer.supplies, answer.supplies.packages
    return {"answer": {
        "currency": answer.currency,
        **same(found, "count", "parts"),
        **shown("time", arc=found.arc_s),
        **shown("mass", wire=found.wire_kg),
        **shown("distance", wire_length=found.wire_m),
        **shown("mass", package=found.package_kg),
        "packages": packages.count,
        "change_overs": packages.changes,
        **shown("mass", wire_left_over=packages.left_kg),
        **same(found, "package_weeks", "package_years"),
        **shown("gas_volume", gas=found.gas_m3),
        "cylinder": found.cylinder.name,
        **shown("gas_volume", cylinder_gas=found.cylinder_m3),
        **same(found, "cylinders", "cylinders_a_week", "cylinder_weeks"),
        **shown("hours", cylinder_lasts=found.cylinder_s),
        **same(found, "tips", "nozzles"),
        "purchases": map(_row, answer.purchases),
        "total": purchase_total(answer.purchases),
        "spool": answer.spool and _spool(answer.spool),
        "gas_left": answer.gas_left and _gas(answer.gas_left),
    }}  # fmt: skip


def _row(row: PurchaseRow) -> Tree:
    return same(row, "key", "item", "package", "count", "price", "amount", "note")


def _band(three: tuple[float, float, float], measure: str) -> Tree:
    low, taken, high = three
    return {"**": Shown(taken, measure), "low": Number(low, measure), "high": Number(high, measure)}


def _spool(left: SpoolLeft) -> Tree:
    return {
        "by": left.by,
        "wire": _band(left.wire_kg, "mass"),
        **shown("distance", wire_length=left.wire_m),
        "weld": _band(left.weld_m, "distance"),
        "parts": left.parts,
        **shown("time", arc=left.arc_s),
    }


def _gas(left: CylinderLeft) -> Tree:
    return {
        "by": left.by,
        "bottle": left.size and left.size.name,
        "gas": _band(left.gas_m3, "gas_volume"),
        **shown("hours", lasts=left.lasts_s),
        "parts": left.parts,
        "text": left.phrase,
    }


def supplies_csv(answer: SuppliesAnswer) -> str:
    """Return the purchase list as CSV.

    Args:
        answer: The answer [-].
    """
    return purchase_csv(answer.purchases, answer.currency)
