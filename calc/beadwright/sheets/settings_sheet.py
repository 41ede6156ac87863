"""A sheet of settings: tee fillets by thickness and position, with one wire in one gas."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from types import MappingProxyType

from beadwright.job.page_query import read_page
from beadwright.phrases import Phrase, say
from beadwright.process.wire_types import WIRE_TYPES
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.dial_in_query import DialInQuery
from beadwright.setting.note_keys import LAPS_COLD, MAY_NOT_FUSE, NOT_THIS_WIRE, WRONG_GAS
from beadwright.units import System

WIRES: tuple[str, ...] = ("ER70S-6", "E70C-6M", "E71T-1C", "E71T-1M")
"""Classifications that have sheets: the common one of each kind. Common practice."""

SHEET_GASES: Mapping[System, tuple[str, ...]] = MappingProxyType(
    {"us": ("98/2 O2", "90/10", "75/25", "CO2"), "si": ("90/10", "82/18", "75/25", "CO2")}
)
"""Gases that have sheets, by their units. Common practice: what a steel shop has on the rack; 98/2
O2 for spray in the US, 82/18 the mixture of group M21 in Europe."""

POSITIONS: tuple[str, ...] = ("2F", "3F-up", "3F-down", "4F")
"""Columns of a sheet."""

PLATES: Mapping[System, tuple[str, ...]] = MappingProxyType(
    {
        "us": ("20ga", "18ga", "16ga", "14ga", "12ga", "1/8in", "3/16in", "1/4in", "5/16in",
               "3/8in", "1/2in", "3/4in"),
        "si": ("1mm", "1.2mm", "1.5mm", "2mm", "2.5mm", "3mm", "4mm", "5mm", "6mm", "8mm",
               "10mm", "12mm", "20mm"),
    }
)  # fmt: skip
"""Rows of a sheet by its units: thicknesses as sold. Common practice."""

_STOPPED: Mapping[str, Phrase] = MappingProxyType(
    {
        LAPS_COLD: say("sheets.laps-cold"),
        NOT_THIS_WIRE: say("sheets.not-downhill"),
    }
)


@dataclass(frozen=True, slots=True)
class Made:
    """What a sheet is for.

    Attributes:
        units: Its units.
        wire: AWS classification.
        dia: Inch name of the size.
        gas: The gas, as said in the shop.
        own: The shop's own numbers that count, as one text; empty: as published.
    """

    units: System
    wire: str
    dia: str
    gas: str
    own: str = ""

    @property
    def name(self) -> str:
        """Its name in addresses, such as ``us-er70s-6-0.045in-90-10``."""
        name = "-".join((self.units, self.wire, self.dia, self.gas)).lower()
        return name.replace("/", "-").replace(" ", "-")

    def query(self, plate: str, position: str) -> str:
        """Return the job of one cell as a query of Dial in.

        Args:
            plate: Thickness of both plates, as typed [-].
            position: Position [-].
        """
        units = "units=si&" if self.units == "si" else ""
        gas = self.gas.replace(" ", "+")
        job = f"plate={plate}&position={position}&wire={self.wire}&dia={self.dia}&gas={gas}"
        # What the shop keeps counts on the page behind the link; switched off must be said.
        return units + job + ("&own=off" if self.own == "off" else "")

    def read(self, plate: str, position: str) -> DialInQuery:
        """Return the job of one cell as Dial in reads it.

        Args:
            plate: Thickness of both plates, as typed [-].
            position: Position [-].
        """
        return read_page(DialInQuery, self.query(plate, position), {"own": self.own})

    def own_told(self) -> Iterator[Phrase]:
        """Yield what of it is the shop's own, or that this is switched off; none: as published."""
        read = self.read(PLATES[self.units][0], POSITIONS[0])
        yield from (note.phrase for note in read.own_notes())
        own = read.job.wire.own
        if own is not None and own.meter_told is not None:
            yield own.meter_told


@dataclass(frozen=True, slots=True)
class SheetCell:
    """One thickness in one position.

    Attributes:
        position: Position.
        query: The job, as a query of Dial in.
        found: The core's answer; not ``open`` where no setting holds every limit.
    """

    position: str
    query: str
    found: DialIn

    @property
    def stopped(self) -> Phrase | None:
        """Why it gives no settings, in two words; None where it does."""
        stops = [note.key for note in self.found.notes if note.level == "stop"]
        if self.found.open and not stops:
            return None
        named = (_STOPPED[key] for key in stops if key in _STOPPED)
        return next(named, say("sheets.no-window"))

    @property
    def may_not_fuse(self) -> bool:
        """True where short circuit may lie on the plate without fusing."""
        return any(note.key == MAY_NOT_FUSE for note in self.found.notes)


def set_alike() -> Mapping[str, tuple[str, ...]]:
    """Return the classifications without sheets of their own by the one whose sheets are theirs.

    All that is set follows from kind, size, gas and metal, not from the strength or the deoxidizers
    of a classification: wires alike in those, made for the same gases, are set alike.
    """
    found: dict[str, tuple[str, ...]] = {}
    for name in WIRES:
        made = WIRE_TYPES[name]
        found[name] = tuple(
            other.name
            for other in WIRE_TYPES.values()
            if other.name not in WIRES
            and (other.kind, other.material, other.gases) == (made.kind, made.material, made.gases)
        )
    return MappingProxyType({name: others for name, others in found.items() if others})


@cache
def sheets_made() -> tuple[Made, ...]:
    """Return every sheet: each wire and size in each gas it is made for, as ``dial_in`` says."""
    every = (
        Made(units, wire, dia, gas)
        for units in PLATES
        for wire in WIRES
        for dia in WIRE_TYPES[wire].sizes
        for gas in SHEET_GASES[units]
    )
    return tuple(made for made in every if _taken(made))


def _taken(made: Made) -> bool:
    first = _cell(made, PLATES[made.units][0], POSITIONS[0])
    return all(note.key != WRONG_GAS for note in first.found.notes)


def sheet_rows(
    made: Made, plates: tuple[str, ...] | None = None
) -> Iterator[tuple[str, tuple[SheetCell, ...]]]:
    """Yield the rows of a sheet: a thickness, and its cell in each of ``POSITIONS``.

    Each is what ``dial_in`` answers with no machine and no kept shop but its own numbers.

    Args:
        made: What the sheet is for [-].
        plates: Thicknesses as typed, or None for those of ``PLATES`` [-].
    """
    for plate in PLATES[made.units] if plates is None else plates:
        yield plate, tuple(_cell(made, plate, position) for position in POSITIONS)


def _cell(made: Made, plate: str, position: str) -> SheetCell:
    found = dial_in(made.read(plate, position).job)
    return SheetCell(position, made.query(plate, position), found)
