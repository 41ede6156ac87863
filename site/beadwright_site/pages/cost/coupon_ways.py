"""What kept coupons say of each way, and the link that takes it as what was measured."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from beadwright import units
from beadwright.money.cost_page import CostAnswer
from beadwright.money.cost_ways import PlannedWay
from beadwright.units import System
from beadwright_site.links import query_of
from beadwright_site.pages.cost.view import letters_of
from beadwright_site.written import counted


@dataclass(frozen=True, slots=True)
class CouponRow:
    """What the coupons say of one way.

    Attributes:
        letter: The way.
        wire: Its wire and gas.
        words: What was measured, or what is missing.
    """

    letter: str
    wire: str
    words: str


def coupons_view(
    found: CostAnswer, typed: Mapping[str, str], kept: Mapping[str, Any] | None
) -> dict[str, Any]:
    """Return what the part shows; nothing where no coupon is kept.

    Args:
        found: The answer.
        typed: What was typed.
        kept: What the phone keeps, coupons too.
    """
    text = str((kept or {}).get("coupons") or "")
    if not text:
        return {"rows": (), "query": "", "taken": False}
    # Here, not above: most shops keep none, and a page of prices then needs none of it.
    from beadwright.coupons.coupon_records import CouponRecordsError, read_records
    from beadwright.coupons.measured_way import measured_way

    try:
        records = read_records(text)
    except CouponRecordsError:
        return {"rows": (), "query": "", "taken": False}  # Coupons tells what is wrong
    names = str((kept or {}).get("machine") or ""), str((kept or {}).get("welder") or "")
    rows: list[CouponRow] = []
    taken: dict[str, str] = {}
    for letter, way in zip(letters_of(found), found.ways, strict=True):
        job = way.dialled.job
        said = measured_way(records, job, *names)
        wire = f"{job.wire.type.name} {job.wire.size}, {job.gas.name}"
        figures = dict(_figures(said.laid_kg_s, said.efficiency, _clean(said.clean_s_m, way)))
        words = ", ".join(_words(key, value, found.units) for key, value in figures.items())
        if said.coupons:
            words = f"{counted(said.coupons, 'coupon')}: {words}"
        else:
            words = "none timed and weighed on this weld"
        words += f"; {said.elsewhere} of other welds" if said.elsewhere else ""
        words += f"; set aside as odd: {', '.join(said.odd)}" if said.odd else ""
        rows.append(CouponRow(letter, wire, words))
        taken |= {way.prefix + key: _text(key, each) for key, each in figures.items()}
    return {
        "rows": tuple(rows),
        "query": query_of({**typed, **taken}) if taken else "",
        "taken": bool(taken) and all(typed.get(key) == text for key, text in taken.items()),
    }


def _clean(clean_s_m: float | None, way: PlannedWay) -> float | None:
    """Clean-up of a part, all its welds [s]."""
    job = way.dialled.job
    return None if clean_s_m is None else clean_s_m * job.weld_length_m * job.welds


MEASURES = {"laid": "deposition", "efficiency": "share", "spatter": "time"}
"""Keys of a way that coupons give, with their measure."""

SAID = {"laid": "laid", "efficiency": "deposition efficiency", "spatter": "cleanup a part"}


def _figures(*values: float | None) -> Iterator[tuple[str, float]]:
    for key, value in zip(MEASURES, values, strict=True):
        if value is not None:
            yield key, value


def _words(key: str, value: float, system: System) -> str:
    return f"{units.written(value, MEASURES[key], system)} {SAID[key]}"


def _text(key: str, value: float) -> str:
    """A figure as an entry, fine enough that nothing is lost in it; pounds in both systems."""
    measure = MEASURES[key]
    return f"{units.convert(value, measure, 'us'):.4g}{units.symbol(measure, 'us')}"
