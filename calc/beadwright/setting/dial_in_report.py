"""Dial in's answer as plain data for JSON."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from beadwright import units
from beadwright.process.gas_effects import effects_of
from beadwright.process.melted import NEVER_SIZE_BY_IT
from beadwright.process.wire_ranges import usual_positions
from beadwright.reports import number, quantity_report
from beadwright.setting.dial_in import DialIn
from beadwright.setting.dial_in_page import DialInAnswer
from beadwright.setting.ways_out import WayOut
from beadwright.setting.window_map import WindowMap
from beadwright.units import System
from beadwright.words.wording import reason, worded


def dial_in_report(answer: DialInAnswer) -> dict[str, Any]:
    """Return the Dial-in page's answer as plain data in shown units, by part.

    Args:
        answer: The answer [-].
    """
    return {
        "answer": _settings(answer.dialled),
        "window_map": _map(answer.window_map, answer.units),
        "ways_out": ways_out_report(answer.ways_out, answer.units),
    }


def ways_out_report(ways: Sequence[WayOut], system: System) -> list[dict[str, Any]]:
    """Return what would open a window as plain data.

    Args:
        ways: The ways out [-].
        system: Whose units [-].
    """
    return [{"text": worded(way.phrase, system), "changes": dict(way.changes)} for way in ways]


def _settings(answer: DialIn) -> dict[str, Any]:
    system = answer.job.units
    settings, outcome, torch = answer.settings, answer.outcome, answer.torch
    report: dict[str, Any] = {
        "open": answer.open,
        "transfer": outcome.transfer if outcome else None,
        "planned_transfer": answer.plan.transfer,
        "planned_because": worded(answer.plan.reason, system),
        "passes": answer.plan.passes,
        "position": answer.job.position_name,
        "polarity": answer.job.wire.type.polarity,
        "drive_roll": answer.job.wire.type.drive_roll,
        "wire": _wire(answer),
        "gas": answer.job.gas.name,
        "iso_gas_group": answer.job.gas.iso_group,
        "gas_effects": [
            {"what": e.what, "way": e.way, "text": worded(e.phrase, system), "source": e.source}
            for e in effects_of(answer.job.gas)
        ],
        "nozzle": outcome.flow.nozzle.name if outcome else None,
        "wire_feed": quantity_report(settings.wire_feed, system),
        "volts": quantity_report(settings.volts, system),
        "tip_to_work": quantity_report(settings.tip_to_work, system),
        "travel": quantity_report(settings.travel, system),
        "torch": {
            "way": torch.way,
            "travel_angle": _angles(torch.travel_angle),
            "work_angle": _angles(torch.work_angle),
            "aim": worded(torch.aim, system),
        },
    }
    if outcome is not None:
        for name in (
            "current",
            "heat",
            "heat_en",
            "laid",
            "bead",
            "leg",
            "throat",
            "gas_flow",
            "metal",
            "wire_mass",
            "arc_time",
        ):
            report[name] = quantity_report(getattr(outcome, name), system)
        for name in ("penetration", "dilution"):
            estimate = getattr(outcome, name)
            said = {"because": reason(estimate.low_by, system), "note": NEVER_SIZE_BY_IT}
            report[name] = quantity_report(estimate, system) | said
    return report


def _wire(answer: DialIn) -> dict[str, Any]:
    job = answer.job
    made = job.wire.type
    return {
        "class": made.name,
        "spec": made.spec,
        "iso": made.iso,
        "a5_36": made.alias,
        "kind": made.kind,
        "dia": job.wire.size,
        "fill_share": made.fill_share,
        "runs_in": list(usual_positions(job.wire, job.gas, answer.plan.transfer)),
    }


def _angles(three: tuple[float, float, float]) -> dict[str, Any]:
    low, value, high = three
    return {"value": value, "low": low, "high": high, "unit": "°"}


def _map(drawn: WindowMap, system: System) -> dict[str, Any]:
    """The feed and volts plane in shown units."""

    def point(feed: float, volts: float) -> list[float | None]:
        return [number(feed, "wire_feed", system), round(volts, 3)]

    return {
        "feeds": [number(feed, "wire_feed", system) for feed in drawn.feeds],
        "volts": list(drawn.volts),
        "unit": [units.symbol("wire_feed", system), "V"],
        "regions": [
            {"transfer": r.transfer, "outline": [point(*p) for p in r.outline]}
            for r in drawn.regions
        ],
        "soft_edges": [
            {"edge": e.key, "outline": [point(*p) for p in e.outline]} for e in drawn.soft
        ],
        "no_spray_because": reason(drawn.refused, system),
        "window": [point(*p) for p in drawn.window],
        "point": point(*drawn.point) if drawn.point is not None else None,
    }
