"""The Heat page's answer: preheat, carbon equivalents, cooling time, hardness, the curve."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from beadwright.errors import FieldErrors
from beadwright.heating.carbon_equivalent import FORMULAS, equivalent, outside
from beadwright.heating.cooling import Cooling, cooling, shape_factors
from beadwright.heating.cooling_curve import Curve, cooling_curves
from beadwright.heating.distortion_query import job_distortion
from beadwright.heating.haz_hardness import SCATTER_HV, hardness_refused, haz_hardness
from beadwright.heating.heat_answer import SHOP_K, By, Equivalent, HeatAnswer, Needed
from beadwright.heating.heat_query import ChosenSteel, HeatQuery, chosen_steel
from beadwright.heating.heat_remarks import heat_remarks
from beadwright.heating.preheat import (
    HEAT_RANGE_J_M,
    HYDROGEN,
    INTERPASS_K,
    MethodB,
    combined_thickness,
    preheat_b,
)
from beadwright.heating.preheat_table import table_row
from beadwright.heating.steels import Composition
from beadwright.job.page_query import read_page
from beadwright.phrases import Phrase, say
from beadwright.process.heat import EN_EFFICIENCY
from beadwright.results import Quantity
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.temperatures import from_celsius, rounded_up
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
    read = read_page(HeatQuery, query, kept)
    dialled = dial_in(read.job)
    job, steel = dialled.job, chosen_steel(read)
    heat, heat_en = _heat(read.heat, dialled)
    hydrogen = read.hydrogen or HYDROGEN[job.wire.kind]
    thickest = max(job.plate_m, job.plate2_m)
    needed = _needed(steel, thickest, hydrogen, heat_en.value, job.units)
    _refuse(steel, needed, job.units)
    start = read.preheat if read.preheat is not None else max(SHOP_K, needed.kelvin or SHOP_K)
    cooled = _cooling(dialled, heat_en, start)
    hard, why = _hardness(steel.composition, cooled)
    found = HeatAnswer(
        page="heat",
        query=read,
        dialled=dialled,
        steel=steel,
        equivalents=_equivalents(steel),
        hydrogen=hydrogen,
        thickness_m=thickest,
        combined_m=combined_thickness(job.joint, job.plate_m, job.plate2_m),
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


def _needed(
    steel: ChosenSteel,
    thickest_m: float,
    hydrogen: float,
    heat_en: float | None,
    system: System,
) -> Needed:
    row = None
    if steel.grade is not None and steel.grade.category is not None:
        row = table_row(steel.grade.category, thickest_m)
    # Without settings the least heat of the method's range counts: it needs the most preheat.
    heat = HEAT_RANGE_J_M[0] if heat_en is None else heat_en

    def by_b(analysis: Composition | None) -> MethodB | None:
        return None if analysis is None else preheat_b(analysis, thickest_m, hydrogen, heat)

    method_b, worst = by_b(steel.composition), by_b(steel.worst)
    asked: dict[By, float] = {}
    if row is not None:
        asked["table"] = row.kelvin(system)
    if method_b is not None and method_b.kelvin is not None:
        asked["method-b"] = method_b.kelvin
    if not asked:
        return Needed(None, "none", row, None, method_b, worst)
    by = max(asked, key=lambda key: asked[key])
    most = asked[by]
    if by == "method-b" and most > SHOP_K:
        most = rounded_up(most, system)
    return Needed(most, by, row, asked.get("table"), method_b, worst)


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
    analysis = steel.composition
    if analysis is None:
        return ()
    cap = steel.grade.ce_cap if steel.grade else None
    found: list[Equivalent] = []
    for method, formula in FORMULAS.items():
        wrong = outside(analysis, method)
        worst = None
        if steel.worst is not None and not outside(steel.worst, method):
            worst = equivalent(steel.worst, method)
        if method == "ce" and cap is not None and steel.worst is not None:
            worst = min(worst if worst is not None else cap, cap)
        value = None if wrong else equivalent(analysis, method)
        refused = tuple(why for _, why in wrong)
        found.append(Equivalent(method, formula.name, value, worst, refused, formula.source))
    return tuple(found)


def _cooling(dialled: DialIn, heat_en: Quantity, start_k: float) -> Cooling | None:
    job, taken = dialled.job, heat_en.value
    if taken is None or start_k >= from_celsius(500):
        return None
    low = taken if heat_en.low is None else heat_en.low
    high = taken if heat_en.high is None else heat_en.high
    factors = shape_factors(job.joint if job.is_fillet else "butt")
    return cooling((low, taken, high), (job.plate_m, job.plate2_m), start_k, factors)


def _hardness(steel: Composition | None, cooled: Cooling | None) -> tuple[Quantity, Phrase | None]:
    none = Quantity("Hardness beside the bead", "count", None)
    if steel is None:
        return none, say("heating.no-analysis-no-hardness")
    if cooled is None:
        return none, say("heating.no-cooling-no-hardness")
    refused = hardness_refused(steel, cooled.seconds)
    if refused is not None:
        return none, refused
    value = haz_hardness(steel, cooled.seconds)
    spread = 2 * SCATTER_HV
    return (
        replace(none, value=value, low=value - spread, high=value + spread, meaning="band",
                sources=("duren", "haz-scatter")),
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
