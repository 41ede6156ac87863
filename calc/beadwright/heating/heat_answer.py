"""What the Heat page answers: preheat, carbon equivalents, cooling time, hardness, the curve."""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.heating.carbon_equivalent import Method
from beadwright.heating.cooling import Cooling
from beadwright.heating.cooling_curve import Curve
from beadwright.heating.distortion_query import PartDistortion
from beadwright.heating.heat_query import HeatQuery
from beadwright.heating.preheat import SHOP_K
from beadwright.heating.preheat_needed import Needed
from beadwright.heating.preheat_table import THINNEST_M
from beadwright.heating.welded_steel import ChosenSteel
from beadwright.job.page_query import PageAnswered
from beadwright.phrases import Phrase
from beadwright.results import Quantity
from beadwright.setting.dial_in import DialIn
from beadwright.temperatures import rounded_up


@dataclass(frozen=True, slots=True)
class Equivalent:
    """A carbon equivalent of the steel.

    Attributes:
        method: Key of ``carbon_equivalent.FORMULAS``.
        name: Its symbol, as written.
        value: Of the analysis gone by, or None where the method is not for it [% by mass].
        worst: The highest the grade allows, or None [% by mass].
        refused: What the method is not for, an element each; empty where it is for all. CE(IIW)
            of a steel with more carbon is given all the same.
        source: Source id.
    """

    method: Method
    name: str
    value: float | None
    worst: float | None
    refused: tuple[Phrase, ...]
    source: str


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
        thickness_m: Thickest part, which table and method B take [m].
        combined_m: Combined thickness, which method A takes [m].
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

    @property
    def certificate_asks_k(self) -> float | None:
        """What method B asks of a certificate's melt where D1.1 rules with less, or None [K].

        D1.1 goes by the grade whatever the melt, so both belong side by side. None too where a
        temperature set by hand is enough for both.
        """
        needed = self.needed
        asked = None if needed.method_b is None else needed.method_b.kelvin
        if needed.code != "d1.1" or needed.kelvin is None or asked is None:
            return None
        enough = self.start_k if self.by_hand else max(needed.kelvin, SHOP_K)
        if self.steel.melt != "certificate" or asked <= enough + 0.5:
            return None
        return rounded_up(asked, self.units)

    @property
    def sheet(self) -> bool:
        """True where the thickest part is under the thickness at which D1.1's table begins."""
        return self.thickness_m < THINNEST_M[self.units] - 1e-9
