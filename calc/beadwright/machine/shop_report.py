"""The Shop page as plain data for JSON."""

from __future__ import annotations

from typing import Any

from beadwright.machine.shop_page import ShopAnswer
from beadwright.reports import shown
from beadwright.words.wording import worded


def shop_report(answer: ShopAnswer) -> dict[str, Any]:
    """Return the Shop page's answer as plain data in shown units, by part.

    Args:
        answer: The answer [-].
    """
    return {"answer": _answer(answer)}


def _answer(answer: ShopAnswer) -> dict[str, Any]:
    found, system = answer.circuit, answer.units
    return {
        "holds": found.holds,
        "current": shown(found.load.current_a, "current", system),
        "duty": shown(found.duty, "share", system),
        "on": shown(found.on_s, "time", system),
        "off": shown(found.off_s, "time", system),
        "all_day_current": shown(found.all_day_a, "current", system),
        "cable_drop": shown(found.cable_v, "volts", system),
        "machine_volts": shown(found.machine_v, "volts", system),
        "primary": shown(found.primary_a, "current", system),
        "effective": shown(found.effective_a, "current", system),
        "effective_at_duty": shown(found.worked_duty, "share", system),
        "apparent": {"value": round(found.apparent_va / 1000, 4), "unit": "kVA"},
        "longest_weld": shown(found.load.longest_arc_s, "time", system),
        "checks": [
            {
                "key": check.key,
                "name": worded(check.name, system),
                "held": check.held,
                "asked": shown(check.asked, check.measure, system),
                "limit": shown(check.limit, check.measure, system),
                "text": worded(check.phrase, system),
                "source": check.source,
            }
            for check in found.checks
        ],
    }
