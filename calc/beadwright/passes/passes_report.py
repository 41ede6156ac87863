"""The Passes page as plain data for JSON, and its schedule as CSV."""

from __future__ import annotations

import csv
import io
from typing import Any

from beadwright import units
from beadwright.passes.pass_beads import ROLE_NAMES, Bead
from beadwright.passes.pass_choices import Choice
from beadwright.passes.passes_page import PassesAnswer
from beadwright.reports import shown
from beadwright.setting.dial_in_report import ways_out_report
from beadwright.units import System
from beadwright.words.wording import worded


def passes_report(answer: PassesAnswer) -> dict[str, Any]:
    """Return the Passes page's answer as plain data in shown units, by part.

    Args:
        answer: The answer [-].
    """
    return {"answer": _answer(answer)}


def _answer(answer: PassesAnswer) -> dict[str, Any]:
    found, system = answer.found, answer.units
    hottest = found.hottest
    heat = hottest.laid.heat_j_m if hottest is not None and hottest.laid is not None else None
    return {
        "open": found.open,
        "passes": len(found.beads),
        "layers": list(found.layers),
        "over": list(found.over),
        "planned_because": worded(found.plan.reason, system),
        "arc_time": shown(found.arc_time_s if found.open else None, "time", system),
        "wire": shown(found.wire_kg if found.open else None, "mass", system),
        "metal": shown(found.metal_kg_m, "mass_per_length", system),
        "hottest": shown(heat, "heat_input", system),
        "at": answer.at,
        "beads": [_bead(bead, system) for bead in found.beads],
        "nearest": None if answer.nearest is None else _choice(answer.nearest, system),
        "choices": [_choice(choice, system) for choice in answer.choices()],
        "ways_out": ways_out_report(answer.ways_out, system),
    }


def _bead(bead: Bead, system: System) -> dict[str, Any]:
    slot, laid = bead.slot, bead.laid
    report: dict[str, Any] = {
        "number": bead.number,
        "side": bead.side,
        "layer": slot.layer,
        "role": bead.role,
        "section": shown(slot.section_m2, "area", system),
        "equivalent_leg": shown(bead.leg_m, "leg", system),
        "width": shown(slot.width_m, "leg", system),
        "layer_thickness": shown(slot.thickness_m, "leg", system),
        "aim": [round(units.convert(each, "leg", system), 5) for each in slot.aim],
        "work_angle": {"value": round(bead.work_deg, 1), "unit": "°"},
    }
    if laid is None:
        assert bead.blocked is not None  # without settings there is a reason
        return report | {"fight": [worded(limit.why, system) for limit in bead.blocked]}
    volts = None if laid.transfer == "pulse" else laid.point.volts
    return report | {
        "transfer": laid.transfer,
        "wire_feed": shown(laid.point.feed_m_s, "wire_feed", system),
        "volts": shown(volts, "volts", system),
        "current": shown(laid.point.current_a, "current", system),
        "tip_to_work": shown(laid.tip_to_work_m, "tip_to_work", system),
        "travel": shown(laid.travel_m_s, "travel", system),
        "heat": shown(laid.heat_j_m, "heat_input", system),
        "heat_en": shown(laid.heat_en_j_m, "heat_input", system),
        "wire_length": shown(laid.wire_m, "distance", system),
        "wire": shown(laid.wire_kg, "mass", system),
        "arc_time": shown(laid.arc_time_s, "time", system),
    }


def _choice(choice: Choice, system: System) -> dict[str, Any]:
    return {
        "text": worded(choice.phrase, system),
        "changes": dict(choice.changes),
        "passes": choice.beads,
        "arc_time": shown(choice.arc_time_s, "time", system),
        "hottest": shown(choice.heat_j_m, "heat_input", system),
        "open": choice.open,
        "same": choice.same,
    }


COLUMNS: tuple[tuple[str, str, str], ...] = (
    ("wire feed", "wire_feed", "wire_feed"),
    ("volts", "volts", "volts"),
    ("travel", "travel", "travel"),
    ("tip to work", "tip_to_work", "tip_to_work"),
    ("current", "current", "current"),
    ("heat input", "heat", "heat_input"),
    ("section", "section", "area"),
    ("wire", "wire_length", "distance"),
    ("arc time", "arc_time", "time"),
)
"""Columns of the schedule past number, side, layer and role: name, key of a bead, measure."""


def passes_csv(answer: PassesAnswer) -> str:
    """Return the schedule of beads as CSV, one row for each bead.

    Args:
        answer: The answer [-].
    """
    system = answer.units
    text = io.StringIO()
    table = csv.writer(text, lineterminator="\r\n")
    heads = [f"{name} ({units.symbol(measure, system)})" for name, _, measure in COLUMNS]
    table.writerow(["bead", "side", "layer", "what", "transfer", *heads])
    for bead in answer.found.beads:
        row = _bead(bead, system)
        cells = [row.get(key, {}).get("value") for _, key, _ in COLUMNS]
        table.writerow(
            [bead.number, bead.side, bead.slot.layer, ROLE_NAMES[bead.role],
             row.get("transfer", ""), *("" if cell is None else cell for cell in cells)]
        )  # fmt: skip
    return text.getvalue()
