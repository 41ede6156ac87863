"""The Passes page's answer as a report, and its schedule as CSV."""

from __future__ import annotations

import csv
import io

from beadwright import units
from beadwright.passes.pass_beads import ROLE_NAMES, Bead, Laid
from beadwright.passes.pass_choices import Choice
from beadwright.passes.passes_page import PassesAnswer
from beadwright.reports import Number, Tree, encoded, same, shown
from beadwright.setting.dial_in_report import ways_out_report

AIM_PLACES = 5
"""Decimals kept of where a bead is aimed [-]."""


def passes_report(answer: PassesAnswer) -> Tree:
    """Return the Passes page's answer, by part.

    Args:
        answer: The answer [-].
    """
    found, hottest = answer.found, answer.found.hottest
    laid = hottest and hottest.laid
    return {"answer": {
        "open": found.open,
        "passes": len(found.beads),
        **same(found, "layers", "over"),
        "planned_because": found.plan.reason,
        **shown("time", arc_time=found.arc_time_s if found.open else None),
        **shown("mass", wire=found.wire_kg if found.open else None),
        **shown("mass_per_length", metal=found.metal_kg_m),
        **shown("heat_input", hottest=laid.heat_j_m if laid else None),
        "at": answer.at,
        "beads": map(_bead, found.beads),
        "nearest": answer.nearest and _choice(answer.nearest),
        "choices": map(_choice, answer.choices()),
        "ways_out": ways_out_report(answer.ways_out),
    }}  # fmt: skip


def _bead(bead: Bead) -> Tree:
    slot = bead.slot
    report: dict[str, object] = {
        "number": bead.number, "side": bead.side, "layer": slot.layer, "role": bead.role,
        **shown("area", section=bead.section_m2),
        **shown("leg", equivalent_leg=bead.leg_m, width=slot.width_m),
        **shown("leg", layer_thickness=slot.thickness_m),
        "aim": [Number(each, "leg", AIM_PLACES) for each in slot.aim],
        "work_angle": {"value": round(bead.work_deg, 1), "unit": "°"},
    }  # fmt: skip
    if bead.laid is not None:
        return report | _laid(bead.laid)
    assert bead.blocked is not None  # without settings there is a reason
    return report | {"fight": [limit.why for limit in bead.blocked]}


def _laid(laid: Laid) -> dict[str, object]:
    point = laid.point
    return {
        "transfer": laid.transfer,
        **shown("wire_feed", wire_feed=point.feed_m_s),
        **shown("volts", volts=None if laid.transfer == "pulse" else point.volts),
        **shown("current", current=point.current_a),
        **shown("tip_to_work", tip_to_work=laid.tip_to_work_m),
        **shown("travel", travel=laid.travel_m_s),
        **shown("heat_input", heat=laid.heat_j_m, heat_en=laid.heat_en_j_m),
        **shown("distance", wire_length=laid.wire_m),
        **shown("mass", wire=laid.wire_kg),
        **shown("time", arc_time=laid.arc_time_s),
    }


def _choice(choice: Choice) -> Tree:
    return {
        "text": choice.phrase,
        "changes": choice.changes,
        "passes": choice.beads,
        **shown("time", arc_time=choice.arc_time_s),
        **shown("heat_input", hottest=choice.heat_j_m),
        **same(choice, "open", "same"),
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
        row = encoded(_bead(bead), system)
        cells = [row.get(key, {}).get("value") for _, key, _ in COLUMNS]
        table.writerow(
            [bead.number, bead.side, bead.slot.layer, ROLE_NAMES[bead.role],
             row.get("transfer", ""), *("" if cell is None else cell for cell in cells)]
        )  # fmt: skip
    return text.getvalue()
