"""The Supplies page as plain data for JSON, and its purchase list as CSV."""

from __future__ import annotations

from typing import Any

from beadwright.reports import shown
from beadwright.supply.leftovers import CylinderLeft, SpoolLeft
from beadwright.supply.purchase import purchase_csv, purchase_total
from beadwright.supply.supplies_page import SuppliesAnswer
from beadwright.units import System
from beadwright.words.wording import worded


def supplies_report(answer: SuppliesAnswer) -> dict[str, Any]:
    """Return the Supplies page's answer as plain data in shown units, by part.

    Args:
        answer: The answer [-].
    """
    return {"answer": _answer(answer)}


def _answer(answer: SuppliesAnswer) -> dict[str, Any]:
    found, system = answer.supplies, answer.units
    return {
        "currency": answer.currency,
        "count": found.count,
        "arc": shown(found.arc_s, "time", system),
        "wire": shown(found.wire_kg, "mass", system),
        "wire_length": shown(found.wire_m, "distance", system),
        "package": shown(found.package_kg, "mass", system),
        "packages": found.packages.count,
        "change_overs": found.packages.changes,
        "wire_left_over": shown(found.packages.left_kg, "mass", system),
        "package_years": found.package_years,
        "gas": shown(found.gas_m3, "gas_volume", system),
        "cylinder": found.cylinder.name,
        "cylinder_gas": shown(found.cylinder_m3, "gas_volume", system),
        "cylinders": found.cylinders,
        "cylinders_a_week": found.cylinders_a_week,
        "cylinder_lasts": shown(found.cylinder_s, "hours", system),
        "tips": found.tips,
        "nozzles": found.nozzles,
        "purchases": [
            {
                "key": row.key,
                "item": row.item,
                "package": row.package,
                "count": row.count,
                "price": row.price,
                "amount": row.amount,
                "note": row.note,
            }
            for row in answer.purchases
        ],
        "total": purchase_total(answer.purchases),
        "spool": None if answer.spool is None else _spool_report(answer.spool, system),
        "gas_left": None if answer.gas_left is None else _gas_report(answer.gas_left, system),
    }


def _spool_report(left: SpoolLeft, system: System) -> dict[str, Any]:
    low, taken, high = (shown(mass, "mass", system)["value"] for mass in left.wire_kg)
    short, weld, far = (shown(length, "distance", system)["value"] for length in left.weld_m)
    return {
        "by": left.by,
        "wire": {**shown(left.wire_kg[1], "mass", system), "value": taken, "low": low,
                 "high": high},
        "wire_length": shown(left.wire_m, "distance", system),
        "weld": {**shown(left.weld_m[1], "distance", system), "value": weld, "low": short,
                 "high": far},
        "parts": left.parts,
        "arc": shown(left.arc_s, "time", system),
    }  # fmt: skip


def _gas_report(left: CylinderLeft, system: System) -> dict[str, Any]:
    return {
        "by": left.by,
        "gas": shown(left.gas_m3, "gas_volume", system),
        "lasts": shown(left.lasts_s, "hours", system),
        "parts": left.parts,
        "text": worded(left.phrase, system),
    }


def supplies_csv(answer: SuppliesAnswer) -> str:
    """Return the purchase list as CSV.

    Args:
        answer: The answer [-].
    """
    return purchase_csv(answer.purchases, answer.currency)
