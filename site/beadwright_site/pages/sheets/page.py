"""Tables: sheets of settings by thickness and position, made with the site, and their index."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any, Final

from beadwright import units
from beadwright.job.job_joint import told_leg
from beadwright.process.wire_types import WIRE_TYPES
from beadwright.process.wires import METRIC_NAMES
from beadwright.setting.dial_in import DialIn
from beadwright.sheets.settings_sheet import (
    POSITIONS,
    Made,
    SheetCell,
    set_alike,
    sheet_rows,
    sheets_made,
)
from beadwright.units import System
from beadwright.words.wording import worded
from beadwright_site.rendering import render

SYSTEM_NAMES: Final = {"us": "US", "si": "Metric"}
_MODES: Final = {"short": "short", "globular": "glob.", "spray": "spray", "pulse": "pulse"}


@dataclass(frozen=True, slots=True)
class SheetsPage:
    """The page of sheets.

    Attributes:
        name: Its name.
    """

    name: str = "sheets"

    def whole(self, _: str = "") -> str:
        """Return the index of sheets."""
        return render(
            "sheets/page.html", self.name, systems=tuple(_index()), alike=set_alike().items()
        )

    def sheets(self) -> Mapping[str, Made]:
        """Return every sheet by its name in addresses."""
        return {made.name: made for made in sheets_made()}

    def sheet(self, name: str) -> str:
        """Return one sheet, whole.

        Args:
            name: A key of ``sheets``.
        """
        made = self.sheets()[name]
        us = made.units == "us"
        return render(
            "sheets/settings-sheet.html",
            self.name,
            title=f"{made.wire} {_size(made)}, {made.gas}",
            positions=POSITIONS,
            polarity=WIRE_TYPES[made.wire].polarity,
            feed=units.symbol("wire_feed", made.units),
            travel=units.symbol("travel", made.units),
            length="in" if us else "mm",
            rows=[(_plate(plate), [_cell(cell, made.units) for cell in cells])
                  for plate, cells in sheet_rows(made)],
        )  # fmt: skip


def _size(made: Made) -> str:
    if made.units == "us":
        return made.dia.replace("in", " in")
    return METRIC_NAMES[made.dia].replace("mm", " mm")


def _plate(plate: str) -> str:
    for unit in ("ga", "in", "mm"):
        if plate.endswith(unit):
            return f"{plate.removesuffix(unit)} {unit}"
    return plate


def _index() -> Iterator[tuple[str, list[tuple[str, list[tuple[str, str]]]]]]:
    for system, name in SYSTEM_NAMES.items():
        wires: dict[str, list[tuple[str, str]]] = {}
        for made in sheets_made():
            if made.units == system:
                links = wires.setdefault(f"{made.wire} {_size(made)}", [])
                links.append((made.gas, f"{made.name}.html"))
        yield name, list(wires.items())


def _cell(cell: SheetCell, system: System) -> dict[str, Any]:
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


PAGE: Final = SheetsPage()
"""The page."""
