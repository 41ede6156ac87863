"""The Cost page as plain data for JSON, and the whole comparison as CSV."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from io import StringIO
from typing import Any

from beadwright.money.capacity import Capacity
from beadwright.money.chance import ChanceState
from beadwright.money.cost import Cost
from beadwright.money.cost_page import Comparison, CostAnswer
from beadwright.money.cost_ways import PlannedWay
from beadwright.money.curves import CurvePoint
from beadwright.money.swings import Swing
from beadwright.reports import rounded, shown
from beadwright.units import System
from beadwright.words.wording import reason, worded


def cost_report(answer: CostAnswer) -> dict[str, Any]:
    """Return the Cost page's answer as plain data in shown units, by part.

    Args:
        answer: The answer [-].
    """
    return {"answer": _answer(answer)}


def _answer(answer: CostAnswer) -> dict[str, Any]:
    system = answer.units
    return {
        "currency": answer.currency,
        "parts": answer.parts,
        "batch": answer.batch,
        "ways": [
            _way_report(planned, cost, held, answer)
            for planned, cost, held in zip(
                answer.ways, answer.costs, answer.capacities, strict=True
            )
        ],
        "comparisons": [_comparison_report(found, system) for found in answer.comparisons],
    }


def _way_report(
    planned: PlannedWay, cost: Cost, held: Capacity, answer: CostAnswer
) -> dict[str, Any]:
    way, system = planned.way, answer.units
    settings = planned.dialled.settings
    return {
        "key": planned.prefix.rstrip("_") or "a",
        "name": way.name,
        "measured": planned.measured,
        "wire_feed": shown(settings.wire_feed.value, "wire_feed", system),
        "travel": shown(settings.travel.value, "travel", system),
        "laid": shown(way.laid_kg_s, "deposition", system),
        "efficiency": shown(way.efficiency, "share", system),
        "factor": shown(way.factor, "share", system),
        "metal": shown(way.metal_kg, "mass", system),
        "wire_bought": shown(way.bought_kg, "mass", system),
        "gas": shown(way.gas_part_m3, "gas_volume", system),
        "times": [{"key": t.key, "name": t.name, **shown(t.amount, "time", system)}
                  for t in cost.times],
        "time": shown(cost.time_s, "time", system),
        "pieces": [{"key": p.key, "name": p.name, "part": rounded(p.amount)} for p in cost.pieces],
        "part": rounded(cost.part),
        "length": shown(cost.metre, "cost_per_length", system),
        "metal_mass": shown(cost.kilogram, "price_per_mass", system),
        "batch": rounded(cost.batch(answer.batch)),
        "year": rounded(cost.year(answer.parts)),
        "once": [{"key": key, "amount": rounded(amount)} for key, amount in planned.once],
        "yearly": rounded(way.yearly),
        "capacity": {
            "arc": shown(held.arc_s, "hours", system),
            "shift": shown(held.shift_s, "hours", system),
            "parts_a_shift": rounded(held.parts_a_shift),
            "most_parts": rounded(held.most_parts),
            "used": shown(held.used, "share", system),
            "delivers": held.delivers,
            "text": worded(held.phrase, system),
        },
    }  # fmt: skip


def _comparison_report(found: Comparison, system: System) -> dict[str, Any]:
    case, met, word = found.case, found.break_even, found.verdict
    return {
        "now": case.now.name,
        "other": case.other.name,
        "verdict": {
            "word": word.word,
            "headline": worded(word.headline, system),
            "reason": worded(word.reason, system),
            "coupon": reason(word.coupon, system),
            "ask": reason(word.ask, system),
        },
        "part_saving": rounded(case.part_saving),
        "year_saving": rounded(case.year_saving),
        "net_saving": {
            "value": rounded(case.net_saving),
            "low": rounded(found.band[0]),
            "high": rounded(found.band[1]),
            "unit": "a year",
        },
        "once": rounded(case.once),
        "months_allowed": case.months,
        "break_even": {
            "crossing": met.crossing,
            "parts_a_year": None if met.parts_a_year is None else rounded(met.parts_a_year),
            "months": None if met.months is None else rounded(met.months),
            "parts_to_pay": None if met.parts_to_pay is None else rounded(met.parts_to_pay),
            "price": shown(met.price, "price_per_mass", system),
            "price_paid_back": shown(met.price_paid_back, "price_per_mass", system),
            "laid": shown(met.laid, "deposition", system),
            "gain": shown(met.gain, "share", system),
            "sentences": {key: worded(told, system) for key, told in found.sentences.items()},
        },
        "swings": [_swing_report(swing, system) for swing in found.swings],
        "curve": [_point_report(point) for point in found.curve],
        "chance": None if found.chance is None else chance_report(found.chance),
    }


def _swing_report(swing: Swing, system: System) -> dict[str, Any]:
    lever = swing.lever
    value, measure = lever.value, lever.measure
    return {
        "key": lever.key,
        "name": worded(lever.name, system),
        "value": shown(value, measure, system),
        "low": shown(value * lever.low, measure, system)["value"],
        "high": shown(value * lever.high, measure, system)["value"],
        "at_low": rounded(swing.at_low),
        "at_high": rounded(swing.at_high),
        "width": rounded(swing.width),
        "turns": swing.turns,
        "settle": worded(lever.settle, system),
    }


def _point_report(point: CurvePoint) -> dict[str, Any]:
    return {
        "parts": rounded(point.parts),
        "now": [rounded(value) for value in point.now],
        "other": [rounded(value) for value in point.other],
    }


def chance_report(state: ChanceState) -> dict[str, Any]:
    """Return where a run of draws stands as plain data.

    Args:
        state: The state [-].
    """
    return {
        "done": state.done,
        "draws": state.draws,
        "finished": state.finished,
        "pays": rounded(state.pays),
        "low": rounded(state.low),
        "middle": rounded(state.middle),
        "high": rounded(state.high),
        "bars": [[rounded(left), rounded(right), count] for left, right, count in state.bars],
    }


def cost_csv(answer: CostAnswer) -> str:
    """Return the whole comparison as CSV: a row for each figure, a column for each way.

    Args:
        answer: The answer [-].
    """
    file = StringIO()
    writer = csv.writer(file, lineterminator="\r\n")
    writer.writerow(["what", "unit", *(planned.way.name for planned in answer.ways)])
    writer.writerows(_csv_rows(answer))
    return file.getvalue()


def _csv_rows(answer: CostAnswer) -> Iterator[list[str | float]]:
    report = _answer(answer)
    ways, sign = report["ways"], answer.currency
    for index, piece in enumerate(ways[0]["pieces"]):
        yield [f"{piece['name']}, a part", sign, *(w["pieces"][index]["part"] for w in ways)]
    sums = (("part", "Cost of a part"), ("batch", f"Batch of {answer.batch}"),
            ("year", f"Year of {answer.parts}"), ("yearly", "Paid by the year"))  # fmt: skip
    for key, name in sums:
        yield [name, sign, *(w[key] for w in ways)]
    yield ["Cost of weld", f"{sign}{ways[0]['length']['unit']}",
           *(w["length"]["value"] for w in ways)]  # fmt: skip
    for index, piece in enumerate(ways[0]["times"]):
        yield [f"{piece['name']}, a part", piece["unit"],
               *(w["times"][index]["value"] for w in ways)]  # fmt: skip
    for key, name in (("time", "Time of a part"), ("laid", "Laid metal"), ("factor",
                      "Operating factor"), ("metal", "Weld metal, a part"),
                      ("wire_bought", "Wire, a part"), ("gas", "Gas, a part")):  # fmt: skip
        yield [name, ways[0][key]["unit"], *(w[key]["value"] for w in ways)]
    found = report["comparisons"]
    yield ["Saved a year after what is paid once", sign, 0.0,
           *(c["net_saving"]["value"] for c in found)]  # fmt: skip
    yield ["Verdict", "", "", *(c["verdict"]["headline"] for c in found)]
    yield ["Reason", "", "", *(c["verdict"]["reason"] for c in found)]
