"""The schedule of a pass plan: a row for every bead, equal neighbors in one."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from beadwright import units
from beadwright.passes.pass_beads import ROLE_NAMES, Bead, Laid, PassPlan
from beadwright.units import System
from beadwright_site.pages.passes.bead_words import arc_words

HELD_BY_HAND = 0.05
"""Beads whose travel differs by no more are one row where a hand moves the torch [-]."""


@dataclass(frozen=True, slots=True)
class ScheduleRow:
    """A row.

    Attributes:
        beads: Their numbers, such as ``4–6``.
        first: Number of the first.
        last: Number of the last.
        what: What they are.
        feed: Wire feed, or a dash.
        volts: Volts, a dash for pulse.
        travel: Travel, or its ends.
        heat: Heat input, or its ends.
        time: Arc time of all of them along one weld.
    """

    beads: str
    first: int
    last: int
    what: str
    feed: str
    volts: str
    travel: str
    heat: str
    time: str


def schedule_rows(found: PassPlan) -> Iterator[ScheduleRow]:
    """Yield the rows in welding order.

    Args:
        found: The plan.
    """
    system = found.job.units
    slack = HELD_BY_HAND if found.job.travel_by == "hand" else 0.0
    group: list[Bead] = []
    for bead in found.beads:
        if group and not _alike(group, bead, system, slack):
            yield _row(group, system)
            group = []
        group.append(bead)
    yield _row(group, system)


def _set_to(laid: Laid, system: System) -> tuple[str, ...]:
    return (
        laid.transfer,
        units.show(laid.point.feed_m_s, "wire_feed", system),
        units.show(laid.point.volts, "volts", system),
        units.show(laid.tip_to_work_m, "tip_to_work", system),
    )


def _alike(group: Sequence[Bead], bead: Bead, system: System, slack: float) -> bool:
    first = group[0]
    if (first.side, first.role) != (bead.side, bead.role):
        return False
    if first.laid is None or bead.laid is None:
        return first.laid is bead.laid
    if _set_to(first.laid, system) != _set_to(bead.laid, system):
        return False
    travels = [b.laid.travel_m_s for b in (*group, bead) if b.laid is not None]
    low, high = min(travels), max(travels)
    shown = [units.show(travel, "travel", system) for travel in (low, high)]
    return shown[0] == shown[1] or high <= low * (1 + slack)


def _row(group: Sequence[Bead], system: System) -> ScheduleRow:
    first, last = group[0], group[-1]
    numbers = str(first.number) if first is last else f"{first.number}–{last.number}"
    laid = [bead.laid for bead in group if bead.laid is not None]
    what = ROLE_NAMES[first.role].removeprefix("The ").capitalize()
    if not laid:
        return ScheduleRow(numbers, first.number, last.number, what, *["–"] * 5)
    volts = "–" if laid[0].transfer == "pulse" else units.show(laid[0].point.volts, "volts", system)
    return ScheduleRow(
        numbers,
        first.number,
        last.number,
        what,
        units.show(laid[0].point.feed_m_s, "wire_feed", system),
        volts,
        _ends([one.travel_m_s for one in laid], "travel", system),
        _ends([one.heat_j_m for one in laid], "heat_input", system),
        arc_words(sum(one.arc_time_s for one in laid)),
    )


def _ends(values: Sequence[float], measure: str, system: System) -> str:
    low, high = (units.show(value, measure, system) for value in (min(values), max(values)))
    return low if low == high else f"{low}–{high}"
