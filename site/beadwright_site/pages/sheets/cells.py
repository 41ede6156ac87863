"""A cell of a sheet as it is written, and the names of what a sheet is for."""

from __future__ import annotations

from typing import Any, Final

from beadwright import units
from beadwright.job.job_joint import told_leg
from beadwright.process.wires import METRIC_NAMES
from beadwright.setting.dial_in import DialIn
from beadwright.sheets.settings_sheet import Made, SheetCell
from beadwright.units import System
from beadwright.words.wording import worded

_MODES: Final = {"short": "short", "globular": "glob.", "spray": "spray", "pulse": "pulse"}


def size_words(made: Made) -> str:
    """Return a wire's size with its unit.

    Args:
        made: What the sheet is for.
    """
    if made.units == "us":
        return made.dia.replace("in", " in")
    return METRIC_NAMES[made.dia].replace("mm", " mm")


def plate_words(plate: str) -> str:
    """Return a thickness with a blank before its unit.

    Args:
        plate: As typed.
    """
    for unit in ("ga", "in", "mm"):
        if plate.endswith(unit):
            return f"{plate.removesuffix(unit)} {unit}"
    return plate


def shown_cell(cell: SheetCell, system: System) -> dict[str, Any]:
    """Return a cell as its template takes it.

    Args:
        cell: The cell.
        system: Whose units.
    """
    stopped = cell.stopped
    shown: dict[str, Any] = {
        "position": cell.position,
        "query": cell.query,
        "stopped": "" if stopped is None else worded(stopped, system),
        "may_not_fuse": cell.may_not_fuse,
    }
    return shown if stopped else {**shown, **_numbers(cell.found, system)}


def _numbers(found: DialIn, system: System) -> dict[str, Any]:
    settings, outcome = found.settings, found.outcome
    volts = settings.volts.value
    amps = None if outcome is None else outcome.current.value

    def show(value: float | None, measure: str) -> str:
        return "–" if value is None else units.show(value, measure, system)

    return {
        "feed": show(settings.wire_feed.value, "wire_feed"),
        "volts": "pulse" if volts is None else f"{show(volts, 'volts')} V",
        "travel": show(settings.travel.value, "travel"),
        "tip": show(settings.tip_to_work.value, settings.tip_to_work.measure),
        "leg": show(told_leg(found.job, found.plan.wanted_leg_m), "leg"),
        "amps": show(amps, "current"),
        "passes": found.plan.passes,
        "mode": "" if outcome is None else _MODES.get(outcome.transfer, outcome.transfer),
    }
