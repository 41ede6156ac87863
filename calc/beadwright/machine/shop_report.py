"""The Shop page's answer as a report."""

from __future__ import annotations

from beadwright.machine.check import Check
from beadwright.machine.shop_page import ShopAnswer
from beadwright.reports import Tree, shown
from beadwright.setting.dial_in_report import ways_out_report


def shop_report(answer: ShopAnswer) -> Tree:
    """Return the Shop page's answer, by part.

    Args:
        answer: The answer [-].
    """
    found, load = answer.circuit, answer.circuit.load
    drawn, rated = found.drawn, found.rated
    return {"answer": {
        "holds": found.holds,
        **shown("current", current=load.current_a),
        **shown("share", duty=found.duty),
        **shown("time", on=found.on_s, off=found.off_s),
        **shown("current", all_day_current=found.all_day_a),
        **shown("volts", cable_drop=found.cable_v, machine_volts=found.machine_v),
        **shown("current", primary=drawn.primary_a, effective=drawn.effective_a),
        **shown("share", effective_at_duty=found.worked_duty),
        "apparent": {"value": round(drawn.apparent_va / 1000, 4), "unit": "kVA"},
        **shown("current", rated_primary=rated.primary_a, rated_effective=rated.effective_a),
        "rated_apparent": {"value": round(rated.apparent_va / 1000, 4), "unit": "kVA"},
        **shown("time", longest_weld=load.longest_arc_s),
        "checks": map(_check, found.checks),
        "ways_out": ways_out_report(answer.ways_out),
    }}  # fmt: skip


def _check(check: Check) -> Tree:
    return {
        "key": check.key, "name": check.name, "held": check.held,
        **shown(check.measure, asked=check.asked, limit=check.limit),
        "text": check.phrase, "source": check.source,
    }  # fmt: skip
