"""The Shop page's answer as a report."""

from __future__ import annotations

from beadwright.machine.circuit import Check
from beadwright.machine.shop_page import ShopAnswer
from beadwright.reports import Tree, shown


def shop_report(answer: ShopAnswer) -> Tree:
    """Return the Shop page's answer, by part.

    Args:
        answer: The answer [-].
    """
    found, load = answer.circuit, answer.circuit.load
    return {"answer": {
        "holds": found.holds,
        **shown("current", current=load.current_a),
        **shown("share", duty=found.duty),
        **shown("time", on=found.on_s, off=found.off_s),
        **shown("current", all_day_current=found.all_day_a),
        **shown("volts", cable_drop=found.cable_v, machine_volts=found.machine_v),
        **shown("current", primary=found.primary_a, effective=found.effective_a),
        **shown("share", effective_at_duty=found.worked_duty),
        "apparent": {"value": round(found.apparent_va / 1000, 4), "unit": "kVA"},
        **shown("time", longest_weld=load.longest_arc_s),
        "checks": map(_check, found.checks),
    }}  # fmt: skip


def _check(check: Check) -> Tree:
    return {
        "key": check.key, "name": check.name, "held": check.held,
        **shown(check.measure, asked=check.asked, limit=check.limit),
        "text": check.phrase, "source": check.source,
    }  # fmt: skip
