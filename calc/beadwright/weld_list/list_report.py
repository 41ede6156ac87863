"""The Weld list's answer as a report, and the list with its settings as CSV."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright import units
from beadwright.reports import Shown, Tree, figures, same, shown
from beadwright.weld_list.list_page import ListAnswer
from beadwright.weld_list.list_rows import (
    ListRow,
    called,
    heaviest,
    hottest,
    most_pulled,
    worst_checks,
)
from beadwright.weld_list.list_totals import Package, WayTotal
from beadwright.weld_list.quote import Quoted
from beadwright.weld_list.weld_lines import COLUMNS, line_cells, written_lines


def list_report(answer: ListAnswer) -> Tree:
    """Return the answer as a tree.

    Args:
        answer: The answer [-].
    """
    heavy, hot = heaviest(answer.counted), hottest(answer.counted)
    return {"answer": {
        "currency": answer.currency,
        "lines": len(answer.rows),
        "missing": answer.missing,
        "header": answer.read.header,
        "columns_passed_over": answer.read.passed_over,
        "rows": map(_row, answer.rows),
        "batch": answer.query.batch,
        "totals": map(_total, answer.totals),
        "packages": map(_package, answer.packages),
        "heaviest": heavy and called(heavy),
        "hottest": hot and called(hot),
        "machine": [
            {"weld": called(row), **same(check, "key", "held"),
             "asked": Shown(check.asked, check.measure), "limit": Shown(check.limit, check.measure),
             "text": check.phrase}
            for row, check in worst_checks(answer.counted)
        ],
        "distortion": [
            {"of": name, "weld": called(row), "most": found}
            for name, row, found in most_pulled(answer.counted)
        ],
        "order": {
            "welds": map(called, answer.in_order),
            **same(answer.order.changes, "wires", "turns", "dials"),
            "given": same(answer.order.given, "wires", "turns", "dials"),
            "saved": answer.order.saved,
        },
        "quotes": [
            {"way": total.name, "batches": map(_quoted, quotes)}
            for total, quotes in zip(answer.totals, answer.quotes, strict=True)
        ],
    }}  # fmt: skip


def _row(row: ListRow) -> Tree:
    line, weld = row.line, row.weld
    said = {"line": line.number, "name": line.name, "typed": line.typed, "wrong": row.wrong}
    if weld is None:
        return said
    dialled, way = weld.first.dialled, weld.first.way
    outcome, needed = dialled.outcome, None if weld.heat is None else weld.heat.needed
    return {
        **said,
        "query": weld.query,
        "welds": dialled.job.welds,
        "position": dialled.job.position_name,
        "passes": dialled.plan.passes,
        "wire_feed": dialled.settings.wire_feed,
        "volts": dialled.settings.volts,
        "travel": dialled.settings.travel,
        "heat": outcome and outcome.heat,
        **shown("mass", metal=way.metal_kg, wire=way.bought_kg),
        **shown("time", arc=way.arc_s),
        **shown("gas_volume", gas=way.gas_part_m3),
        **shown("temperature", preheat=None if needed is None else needed.kelvin),
        "preheat_needed": None if needed is None or needed.kelvin is None else not needed.even_cold,
    }


def _total(total: WayTotal) -> Tree:
    return {
        "way": total.name,
        **shown("mass", metal=total.metal_kg, wire=total.wire_kg),
        **shown("distance", length=total.length_m),
        **shown("gas_volume", gas=total.gas_m3),
        **shown("time", arc=total.arc_s, off_arc=total.off_s, time=total.time_s),
        **figures(part=total.part),
        "pieces": figures(**{piece.key: piece.amount for piece in total.pieces}),
    }


def _package(package: Package) -> Tree:
    measure = "mass" if package.kind == "wire" else "gas_volume"
    return {
        **same(package, "kind", "name", "count"),
        **shown(measure, amount=package.amount, holds=package.holds),
    }


def _quoted(quoted: Quoted) -> Tree:
    return {
        "parts": quoted.parts,
        **figures(set_up=quoted.set_up, cost=quoted.cost, price=quoted.price, batch=quoted.batch),
    }


_ANSWERED = ("passes", "wire feed", "volts", "travel", "arc min", "wire", "cannot be read")
"""Columns after the weld's own; in parentheses, so that the file can be read again as a list."""


def list_csv(answer: ListAnswer) -> str:
    """Return the list with its settings as CSV, which can be read again as a list.

    Args:
        answer: The answer [-].
    """
    cells = [_own_cells(row) for row in answer.rows]
    own = max([len(COLUMNS), *map(len, cells)])
    extra = [f"({i})" for i in range(1, own - len(COLUMNS) + 1)]
    rows = [[*COLUMNS, *extra, *(f"({name})" for name in _ANSWERED)]]
    for row, given in zip(answer.rows, cells, strict=True):
        rows.append([*given, *([""] * (own - len(given))), *_answered(row)])
    return written_lines(rows).replace("\n", "\r\n")


def _own_cells(row: ListRow) -> list[str]:
    return line_cells(row.line) if row.weld is not None else [row.line.typed]


def _answered(row: ListRow) -> Iterator[str]:
    if row.weld is None:
        yield from [""] * (len(_ANSWERED) - 1)
        yield row.wrong
        return
    dialled, way = row.weld.first.dialled, row.weld.first.way
    settings, system = dialled.settings, dialled.job.units
    yield str(dialled.plan.passes)
    for quantity in (settings.wire_feed, settings.volts, settings.travel):
        yield units.written(quantity.value or 0.0, quantity.measure, system)
    yield f"{way.arc_s / 60:.2f}"
    yield units.written(way.bought_kg, "mass", system)
    yield ""
