"""The Heat page's answer as a report."""

from __future__ import annotations

from beadwright.heating.cooling import Cooling
from beadwright.heating.distortion_report import distortion_report
from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.preheat_needed import Needed
from beadwright.heating.steels import ELEMENTS
from beadwright.reports import Joined, Number, Shown, Tree, rounded, same, shown

DIGITS = 7
"""Figures kept of what tables and formulas of two or three figures give [-]."""


def _few(**values: float | None) -> dict[str, float | None]:
    return {key: rounded(value, DIGITS) for key, value in values.items()}


def heat_report(answer: HeatAnswer) -> Tree:
    """Return the Heat page's answer, by part.

    Args:
        answer: The answer [-].
    """
    steel, hard = answer.steel, answer.hardness
    analysis, cooled = steel.composition, answer.cooling
    return {
        "answer": {
            "steel": steel.grade.name if steel.grade else None,
            "melt": steel.melt if analysis else None,
            "composition": analysis and _few(**{key: analysis.share(key) for key in ELEMENTS}),
            "carbon_equivalents": {
                each.method: {
                    **_few(value=each.value, worst=each.worst),
                    "unit": "%",
                    "refused": Joined(each.refused),
                    "source": each.source,
                }
                for each in answer.equivalents
            },
            "hydrogen": {**_few(value=answer.hydrogen), "unit": "ml/100 g"},
            **shown("length", thickness=answer.thickness_m, combined_thickness=answer.combined_m),
            "preheat": _preheat(answer.needed),
            "welded_at": {"**": Shown(answer.start_k, "temperature"), "by_hand": answer.by_hand},
            "interpass_most": Shown(answer.interpass_k, "temperature"),
            **same(answer, "heat", "heat_en"),
            "cooling": cooled and _cooling(cooled),
            "hardness": {
                **_few(value=hard.value, low=hard.low, high=hard.high),
                "unit": "HV",
                "refused": answer.hardness_refused or "",
                "sources": hard.sources,
            },
            "curves": [
                {
                    "regime": curve.regime,
                    "from": Shown(curve.start_k, "temperature"),
                    "rules": curve.rules,
                    "points": [(round(s, 4), Number(k, "temperature", 2)) for s, k in curve.points],
                }
                for curve in answer.curves
            ],
            "distortion": distortion_report(answer.distortion),
        }
    }


def _preheat(needed: Needed) -> Tree:
    row, method_b, worst = needed.row, needed.method_b, needed.worst_b
    method_a = needed.method_a
    return {
        "**": Shown(needed.kelvin, "temperature"),
        "by": needed.by,
        "code": needed.code,
        "code_chosen": needed.chosen,
        "refused": needed.refused or "",
        "needed": None if needed.kelvin is None else not needed.even_cold,
        "table": row and {"**": Shown(needed.table_k, "temperature"), "category": row.category},
        "method_b": method_b
        and {
            "**": Shown(method_b.kelvin, "temperature"),
            **_few(cet=method_b.cet),
            "counted": method_b.counted,
            "refused": [why for _, why in method_b.refused],
        },
        "method_b_worst": worst and Shown(worst.kelvin, "temperature"),
        "method_a": method_a
        and {
            "**": Shown(method_a.kelvin, "temperature"),
            **_few(ce=method_a.ce),
            "scale": method_a.scale,
            **shown("length", combined_most=method_a.most_m),
            "refused": method_a.refused or "",
        },
    }


def _cooling(cooled: Cooling) -> Tree:
    return {
        "regime": cooled.regime,
        **_few(value=cooled.seconds, low=cooled.low, high=cooled.high),
        "unit": "s",
        **_few(thick=cooled.thick_s, thin=cooled.thin_s),
        **shown("length", transition=cooled.transition_m),
        "shape_factors": {"thin": cooled.factors.thin, "thick": cooled.factors.thick},
        "source": "en-1011-2-d",
    }
