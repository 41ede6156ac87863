"""The Cost page's answer as a report, and the whole comparison as CSV."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from io import StringIO

from beadwright.money.break_even import BreakEven
from beadwright.money.capacity import Capacity
from beadwright.money.chance import ChanceState
from beadwright.money.cost import Cost
from beadwright.money.cost_page import Comparison, CostAnswer
from beadwright.money.cost_ways import PlannedWay
from beadwright.money.cycle import what_rules
from beadwright.money.swings import Swing
from beadwright.reports import Number, Shown, Tree, encoded, figures, rounded, same, shown


def cost_report(answer: CostAnswer) -> Tree:
    """Return the Cost page's answer, by part.

    Args:
        answer: The answer [-].
    """
    ways = zip(answer.ways, answer.costs, answer.capacities, strict=True)
    return {
        "answer": {
            **same(answer, "currency", "batch", "parts"),
            "ways": [_way(planned, cost, held, answer) for planned, cost, held in ways],
            "comparisons": map(_comparison, answer.comparisons),
        }
    }


def _way(planned: PlannedWay, cost: Cost, held: Capacity, answer: CostAnswer) -> Tree:
    way, settings = planned.way, planned.dialled.settings
    return {
        "key": planned.prefix.rstrip("_") or "a",
        "name": way.name,
        "measured": planned.measured,
        **shown("wire_feed", wire_feed=settings.wire_feed.value),
        **shown("travel", travel=settings.travel.value),
        **shown("deposition", laid=way.laid_kg_s),
        **shown("share", efficiency=way.efficiency, factor=way.factor),
        **shown("mass", metal=way.metal_kg, wire_bought=way.bought_kg),
        **shown("gas_volume", gas=way.gas_part_m3),
        "times": [{**same(t, "key", "name"), "**": Shown(t.amount, "time")} for t in cost.times],
        **shown("time", time=cost.time_s),
        "pieces": [{**same(p, "key", "name"), **figures(part=p.amount)} for p in cost.pieces],
        **figures(part=cost.part),
        **shown("cost_per_length", length=cost.metre),
        **shown("price_per_mass", metal_mass=cost.kilogram),
        **figures(batch=cost.batch(answer.batch), year=cost.year(answer.parts)),
        "once": [{"key": key, **figures(amount=amount)} for key, amount in planned.once],
        **figures(yearly=way.yearly),
        "cycle": {
            **shown("time", torch=way.torch_s, hands=way.hands_s, waits=way.waits_s),
            "text": what_rules(way),
        },
        "capacity": {
            **shown("hours", arc=held.arc_s, shift=held.shift_s),
            **figures(parts_a_shift=held.parts_a_shift, most_parts=held.most_parts),
            **shown("share", used=held.used),
            "delivers": held.delivers,
            "text": held.phrase,
        },
    }  # fmt: skip


def _comparison(found: Comparison) -> Tree:
    case, word, sums, work = found.case, found.verdict, found.sums, found.work
    return {
        "now": case.now.name,
        "other": case.other.name,
        "compared": found.alike,
        "practice": found.practice,
        "verdict": {
            **same(word, "word", "headline", "reason"),
            "odds": word.odds or "",
            "hangs_on": [swing.lever.name for swing in word.hangs_on],
            "settle": word.settle or "",
            "by_bench": word.by_bench,
        },
        **figures(part_saving=case.part_saving, year_saving=case.year_saving),
        "net_saving": {
            **figures(value=case.net_saving, low=found.chance.low, high=found.chance.high),
            "unit": "a year",
        },
        "sums": {
            **figures(part=sums.part, gross=sums.gross, yearly=sums.yearly, year=sums.year),
            **figures(period=sums.period, once=sums.once, first=sums.first, worst=sums.worst),
            "parts": round(sums.parts),
            "months": round(sums.months),
        },
        "week": {
            **shown("hours", freed=work.freed_s),
            **figures(
                shift_now=work.shift_now, shift_other=work.shift_other, even_parts=work.even_week
            ),
        },
        **figures(once=case.once),
        "months_allowed": case.months,
        "break_even": {**_break_even(found.break_even), "sentences": found.sentences},
        "swings": map(_swing, found.swings),
        "curve": [
            {
                **figures(parts=point.parts),
                "now": map(rounded, point.now),
                "other": map(rounded, point.other),
            }
            for point in found.curve
        ],
        "chance": _chance(found.chance),
    }


def _break_even(met: BreakEven) -> dict[str, object]:
    return {
        "crossing": met.crossing,
        **figures(parts_a_year=met.parts_a_year, months=met.months, parts_to_pay=met.parts_to_pay),
        **shown("price_per_mass", price=met.price, price_paid_back=met.price_paid_back),
        **shown("deposition", laid=met.laid),
        **shown("share", gain=met.gain),
    }


def _swing(swing: Swing) -> Tree:
    lever = swing.lever
    return {
        "key": lever.key,
        "name": lever.name,
        **shown(lever.measure, value=lever.value),
        "low": Number(lever.value * lever.low, lever.measure),
        "high": Number(lever.value * lever.high, lever.measure),
        **figures(at_low=swing.at_low, at_high=swing.at_high, width=swing.width),
        "turns": swing.turns,
        "settle": lever.settle,
    }


def _chance(state: ChanceState) -> Tree:
    return {
        **same(state, "done", "draws", "finished"),
        **figures(pays=state.pays, low=state.low, middle=state.middle, high=state.high),
        "bars": [(rounded(left), rounded(right), count) for left, right, count in state.bars],
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
    report = encoded(cost_report(answer), answer.units)["answer"]
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
    for key, name in (("time", "Time of a part"), ("laid", "Deposition rate"), ("factor",
                      "Operating factor"), ("metal", "Weld metal, a part"),
                      ("wire_bought", "Wire, a part"), ("gas", "Gas, a part")):  # fmt: skip
        yield [name, ways[0][key]["unit"], *(w[key]["value"] for w in ways)]
    found = report["comparisons"]
    yield ["Savings a year after change-over cost", sign, 0.0,
           *(c["net_saving"]["value"] for c in found)]  # fmt: skip
    yield ["Verdict", "", "", *(c["verdict"]["headline"] for c in found)]
    yield ["Reason", "", "", *(c["verdict"]["reason"] for c in found)]
