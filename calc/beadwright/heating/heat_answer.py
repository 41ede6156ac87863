"""What the Heat page answers: preheat, carbon equivalents, cooling time, hardness, the curve."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.heating.carbon_equivalent import Method
from beadwright.heating.cooling import Cooling
from beadwright.heating.cooling_curve import Curve
from beadwright.heating.distortion_query import PartDistortion
from beadwright.heating.heat_query import ChosenSteel, HeatQuery
from beadwright.heating.preheat import (
    MethodB,
)
from beadwright.heating.preheat_table import TableRow
from beadwright.job.page_query import PageAnswered
from beadwright.phrases import Phrase
from beadwright.results import Quantity
from beadwright.setting.dial_in import DialIn
from beadwright.temperatures import from_celsius

SHOP_K = from_celsius(20)
"""Temperature of a joint that is not preheated [K]. Common practice."""

By = Literal["table", "method-b", "none"]


@dataclass(frozen=True, slots=True)
class Equivalent:
    """A carbon equivalent of the steel.

    Attributes:
        method: Key of ``carbon_equivalent.FORMULAS``.
        name: Its symbol, as written.
        value: Of the analysis gone by, or None where the method is not for it [% by mass].
        worst: Of the worst the grade allows, or None [% by mass].
        refused: Why there is none, an element each; empty where there is one.
        source: Source id.
    """

    method: Method
    name: str
    value: float | None
    worst: float | None
    refused: tuple[Phrase, ...]
    source: str


@dataclass(frozen=True, slots=True)
class Needed:
    """The preheat needed.

    Attributes:
        kelvin: The stricter of both, or None where neither can be given [K].
        by: Which of the two it is.
        row: The prequalified table's row, or None where it does not list the steel.
        table_k: What it asks [K].
        method_b: EN 1011-2 method B, or None without an analysis.
        worst_b: Method B for the worst melt, or None.
    """

    kelvin: float | None
    by: By
    row: TableRow | None
    table_k: float | None
    method_b: MethodB | None
    worst_b: MethodB | None

    @property
    def even_cold(self) -> bool:
        """True if a joint at shop temperature is warm enough."""
        return self.kelvin is not None and self.kelvin <= SHOP_K + 1e-6


@dataclass(frozen=True, slots=True)
class HeatAnswer(PageAnswered):
    """The Heat page's answer.

    Attributes:
        page: ``heat``.
        query: The query as read.
        dialled: The job with its settings.
        steel: The steel as asked.
        equivalents: Its carbon equivalents; empty without an analysis.
        hydrogen: Diffusible hydrogen counted [ml/100 g].
        thickness_m: Thickest part, which both preheat methods take [m].
        combined_m: Sum of the parts heat flows into, which method A takes [m].
        needed: The preheat needed.
        start_k: Temperature the weld starts from [K].
        by_hand: True if the welder set it.
        interpass_k: Highest interpass temperature [K].
        heat: Heat input, no efficiency; value None if no setting holds the job [J/m].
        heat_en: With EN's efficiency [J/m].
        cooling: Cooling time, or None without a heat.
        hardness: Highest hardness beside the bead, value None where none can be given [HV].
        hardness_refused: Why there is none, or None where there is one.
        curves: Temperature behind the weld; empty without a heat.
        distortion: What the weld does to the shape of its part, and other ways to lay it.
        notes: Notes, the most severe first.
    """

    query: HeatQuery
    dialled: DialIn
    steel: ChosenSteel
    equivalents: tuple[Equivalent, ...]
    hydrogen: float
    thickness_m: float
    combined_m: float
    needed: Needed
    start_k: float
    by_hand: bool
    interpass_k: float
    heat: Quantity
    heat_en: Quantity
    cooling: Cooling | None
    hardness: Quantity
    hardness_refused: Phrase | None
    curves: tuple[Curve, ...]
    distortion: PartDistortion
