"""The Heat page's answer: preheat, carbon equivalents, cooling time, hardness, the curve."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from beadwright.errors import FieldErrors
from beadwright.heating.carbon_equivalent import (
    FORMULAS,
    Method,
    equivalent,
    outside,
    worst_melt,
)
from beadwright.heating.cooling import Cooling, cooling, shape_factors
from beadwright.heating.cooling_curve import Curve, cooling_curves
from beadwright.heating.distortion_query import job_distortion
from beadwright.heating.haz_hardness import (
    SCATTER_HV,
    TIME_RANGE_S,
    hardness_refused,
    haz_hardness,
)
from beadwright.heating.heat_answer import Equivalent, HeatAnswer
from beadwright.heating.heat_query import HeatQuery
from beadwright.heating.heat_remarks import heat_remarks
from beadwright.heating.preheat import HYDROGEN, INTERPASS_K, SHOP_K, combined_thickness
from beadwright.heating.preheat_needed import Needed, Weld, preheat_needed
from beadwright.heating.preheat_table import THINNEST_M
from beadwright.heating.steels import Composition
from beadwright.heating.welded_steel import ChosenSteel, chosen_steel
from beadwright.job.page_query import read_page
from beadwright.phrases import Phrase, say
from beadwright.process.heat import EN_EFFICIENCY
from beadwright.results import Quantity
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.temperatures import from_celsius
from beadwright.units import System
from beadwright.words.wording import worded


def heat_answer(query: str, kept: Mapping[str, Any] | None = None) -> HeatAnswer:
    """Return the Heat page's answer to a query string.

    Args:
        query: Keys of ``heat_query.HeatQuery`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    return heat_of(read_page(HeatQuery, query, kept))


def heat_of(read: HeatQuery) -> HeatAnswer:
    """Return the Heat page's answer to a query as read.

    Args:
        read: The query [SI].

    Raises:
        FieldErrors: With each field's messages.
    """
    dialled = dial_in(read.job)
    job = dialled.job
    thickest = max(job.plate_m, job.plate2_m)
    steel = chosen_steel(read.asked_steel, thickest, job.units)
    heat, heat_en = _heat(read.heat, dialled)
    hydrogen = read.hydrogen or HYDROGEN[job.wire.kind]
    combined = combined_thickness(job.joint, job.plate_m, job.plate2_m)
    weld = Weld(thickest, combined, hydrogen, heat_en.value, job.units)
    needed = preheat_needed(steel, weld, read.preheat_code)
    _refuse(steel, needed, job.units)
    start = read.preheat if read.preheat is not None else max(SHOP_K, needed.kelvin or SHOP_K)
    cooled = _cooling(dialled, heat_en, start)
    sheet = thickest < THINNEST_M[job.units] - 1e-9
    hard, why = _hardness(steel.composition, cooled, sheet)
    found = HeatAnswer(
        page="heat",
        query=read,
        dialled=dialled,
        steel=steel,
        equivalents=_equivalents(steel),
        hydrogen=hydrogen,
        thickness_m=thickest,
        combined_m=combined,
        needed=needed,
        start_k=start,
        by_hand=read.preheat is not None,
        interpass_k=INTERPASS_K,
        heat=heat,
        heat_en=heat_en,
        cooling=cooled,
        hardness=hard,
        hardness_refused=why,
        curves=_curves(dialled, heat_en, start, cooled),
        distortion=job_distortion(dialled, read.part, heat_en.value),
        notes=(),
    )
    return replace(found, notes=heat_remarks(found))


def _heat(by_hand: float | None, dialled: DialIn) -> tuple[Quantity, Quantity]:
    if by_hand is not None:
        own = Quantity("Heat input", "heat_input", by_hand, sources=("yours",), by_hand=True)
        en = replace(own, name="Heat input, EN", value=EN_EFFICIENCY * by_hand,
                     sources=("en-1011-1",))  # fmt: skip
        return own, en
    if dialled.outcome is None:
        none = Quantity("Heat input", "heat_input", None)
        return none, replace(none, name="Heat input, EN")
    return dialled.outcome.heat, dialled.outcome.heat_en


def _refuse(steel: ChosenSteel, needed: Needed, system: System) -> None:
    """Refuse a certificate with elements outside method B, whatever the table says.

    The table is for steels within their grades; an analysis outside method B is not one of them.
    """
    found = needed.method_b
    if found is None or not found.refused or steel.melt != "certificate":
        return
    messages: dict[str, list[str]] = {}
    for key, why in found.refused:
        messages.setdefault("c" if key == "cet" else key, []).append(f"{worded(why, system)}.")
    raise FieldErrors(messages)


def _equivalents(steel: ChosenSteel) -> tuple[Equivalent, ...]:
    if steel.composition is None:
        return ()
    found: list[Equivalent] = []
    for method, formula in FORMULAS.items():
        worst = None
        if steel.worst is not None and steel.limits is not None:
            worst = _valued(worst_melt(steel.limits, method), method)
        refused = tuple(why for _, why in outside(steel.composition, method))
        value = _valued(steel.composition, method)
        found.append(Equivalent(method, formula.name, value, worst, refused, formula.source))
    return tuple(found)


def _valued(analysis: Composition, method: Method) -> float | None:
    """A carbon equivalent, or None where the method is not for the steel.

    CE(IIW) is given past its range of carbon: standards cap it and certificates print it there too.
    """
    wrong = {element for element, _ in outside(analysis, method)}
    if method == "ce" and analysis.c > FORMULAS["ce"].ranges["c"][1]:
        wrong.discard("c")
    return None if wrong else equivalent(analysis, method)


def _cooling(dialled: DialIn, heat_en: Quantity, start_k: float) -> Cooling | None:
    job, taken = dialled.job, heat_en.value
    if taken is None or start_k >= from_celsius(500):
        return None
    low = taken if heat_en.low is None else heat_en.low
    high = taken if heat_en.high is None else heat_en.high
    factors = shape_factors(job.joint if job.is_fillet else "butt")
    return cooling((low, taken, high), (job.plate_m, job.plate2_m), start_k, factors)


def _hardness(
    steel: Composition | None, cooled: Cooling | None, sheet: bool
) -> tuple[Quantity, Phrase | None]:
    """The hardness, from the slowest cooling less its scatter to the fastest with it."""
    none = Quantity("Peak HAZ hardness", "count", None)
    if steel is None:
        return none, say("heating.no-analysis-no-hardness")
    if cooled is None:
        return none, say("heating.no-cooling-no-hardness")
    if sheet:
        return none, say("heating.sheet-no-hardness")
    refused = hardness_refused(steel, cooled.seconds)
    if refused is not None:
        return none, refused
    fastest, slowest = TIME_RANGE_S
    hard = haz_hardness(steel, max(fastest, cooled.low))
    soft = haz_hardness(steel, min(slowest, cooled.high))
    spread = 2 * SCATTER_HV
    return (
        replace(none, value=haz_hardness(steel, cooled.seconds), low=soft - spread,
                high=hard + spread, meaning="band", sources=("duren", "haz-scatter")),
        None,
    )  # fmt: skip


def _curves(
    dialled: DialIn, heat_en: Quantity, start_k: float, cooled: Cooling | None
) -> tuple[Curve, ...]:
    if heat_en.value is None or cooled is None:
        return ()
    travel = dialled.settings.travel.value
    job = dialled.job
    return cooling_curves(heat_en.value, (job.plate_m + job.plate2_m) / 2, travel, cooled, SHOP_K)
