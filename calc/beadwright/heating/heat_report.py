"""The Heat page as plain data for JSON."""

from __future__ import annotations

from typing import Any

from beadwright.heating.distortion_report import distortion_report
from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.steels import ELEMENTS
from beadwright.reports import quantity_report, shown
from beadwright.temperatures import degree_sign, degrees
from beadwright.units import System
from beadwright.words.wording import reason, worded

DIGITS = 7
"""Figures kept in a curve: far more than a picture shows [-]."""


def _round(value: float | None) -> float | None:
    return None if value is None else float(f"{value:.{DIGITS}g}")


def temperature_report(kelvin: float | None, system: System) -> dict[str, Any]:
    """Return a temperature with its unit.

    Args:
        kelvin: The temperature, or None [K].
        system: Whose scale [-].
    """
    value = None if kelvin is None else round(degrees(kelvin, system), 4)
    return {"value": value, "unit": degree_sign(system)}


def heat_report(answer: HeatAnswer) -> dict[str, Any]:
    """Return the Heat page's answer as plain data in shown units, by part.

    Args:
        answer: The answer [-].
    """
    return {"answer": _answer(answer)}


def _answer(answer: HeatAnswer) -> dict[str, Any]:
    system, steel = answer.units, answer.steel
    analysis = steel.composition
    return {
        "steel": steel.grade.name if steel.grade else None,
        "melt": steel.melt if analysis else None,
        "composition": None
        if analysis is None
        else {element: _round(analysis.share(element)) for element in ELEMENTS},
        "carbon_equivalents": {
            each.method: {
                "value": _round(each.value),
                "worst": _round(each.worst),
                "unit": "%",
                "refused": "; ".join(worded(why, system) for why in each.refused),
                "source": each.source,
            }
            for each in answer.equivalents
        },
        "hydrogen": {"value": _round(answer.hydrogen), "unit": "ml/100 g"},
        "thickness": shown(answer.thickness_m, "length", system),
        "combined_thickness": shown(answer.combined_m, "length", system),
        "preheat": _preheat(answer, system),
        "welded_at": temperature_report(answer.start_k, system) | {"by_hand": answer.by_hand},
        "interpass_most": temperature_report(answer.interpass_k, system),
        "heat": quantity_report(answer.heat, system),
        "heat_en": quantity_report(answer.heat_en, system),
        "cooling": _cooling(answer, system),
        "hardness": {
            "value": _round(answer.hardness.value),
            "low": _round(answer.hardness.low),
            "high": _round(answer.hardness.high),
            "unit": "HV",
            "refused": reason(answer.hardness_refused, system),
            "sources": list(answer.hardness.sources),
        },
        "curves": [
            {
                "regime": curve.regime,
                "from": temperature_report(curve.start_k, system),
                "rules": curve.rules,
                "points": [
                    [round(time, 4), round(degrees(kelvin, system), 2)]
                    for time, kelvin in curve.points
                ],
            }
            for curve in answer.curves
        ],
        "distortion": distortion_report(answer.distortion, system),
    }


def _preheat(answer: HeatAnswer, system: System) -> dict[str, Any]:
    needed = answer.needed
    method_b, worst = needed.method_b, needed.worst_b
    return {
        **temperature_report(needed.kelvin, system),
        "by": needed.by,
        "needed": None if needed.kelvin is None else not needed.even_cold,
        "table": None
        if needed.row is None
        else {
            **temperature_report(needed.table_k, system),
            "category": needed.row.category,
        },
        "method_b": None
        if method_b is None
        else {
            **temperature_report(method_b.kelvin, system),
            "cet": _round(method_b.cet),
            "counted": [worded(counted, system) for counted in method_b.counted],
            "refused": [worded(why, system) for _, why in method_b.refused],
        },
        "method_b_worst": None if worst is None else temperature_report(worst.kelvin, system),
    }


def _cooling(answer: HeatAnswer, system: System) -> dict[str, Any] | None:
    cooled = answer.cooling
    if cooled is None:
        return None
    return {
        "regime": cooled.regime,
        "value": _round(cooled.seconds),
        "low": _round(cooled.low),
        "high": _round(cooled.high),
        "unit": "s",
        "thick": _round(cooled.thick_s),
        "thin": _round(cooled.thin_s),
        "transition": shown(cooled.transition_m, "length", system),
        "shape_factors": {"thin": list(cooled.factors.thin), "thick": list(cooled.factors.thick)},
        "source": "en-1011-2-d",
    }
