"""Tables: sheets of settings by thickness and position, made with the site, and their index."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Final

from beadwright import units
from beadwright.process.wire_types import WIRE_TYPES
from beadwright.sheets.settings_sheet import (
    POSITIONS,
    Made,
    set_alike,
    sheet_rows,
    sheets_made,
)
from beadwright_site.pages.sheets.cells import plate_words, shown_cell, size_words
from beadwright_site.pages.sheets.wall import wall_page
from beadwright_site.rendering import render

SYSTEM_NAMES: Final = {"us": "US", "si": "Metric"}


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

    def wall(self, query: str) -> str:
        """Return the wall sheet, whole.

        Args:
            query: The query string.
        """
        return wall_page(query)

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
            title=f"{made.wire} {size_words(made)}, {made.gas}",
            positions=POSITIONS,
            polarity=WIRE_TYPES[made.wire].polarity,
            feed=units.symbol("wire_feed", made.units),
            travel=units.symbol("travel", made.units),
            length="in" if us else "mm",
            rows=[(plate_words(plate), [shown_cell(cell, made.units) for cell in cells])
                  for plate, cells in sheet_rows(made)],
        )  # fmt: skip


def _index() -> Iterator[tuple[str, list[tuple[str, list[tuple[str, str]]]]]]:
    for system, name in SYSTEM_NAMES.items():
        wires: dict[str, list[tuple[str, str]]] = {}
        for made in sheets_made():
            if made.units == system:
                links = wires.setdefault(f"{made.wire} {size_words(made)}", [])
                links.append((made.gas, f"{made.name}.html"))
        yield name, list(wires.items())


PAGE: Final = SheetsPage()
"""The page."""
