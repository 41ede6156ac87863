"""How close Dial in comes to whole published rows: a score by group.

A row is inside if the window holds its amps and volts. It is at the set point if ours stands within
15 % of its amps and 1.5 V of its volts, counted from the nearer end of a printed range.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from statistics import median

from beadwright.job.job import Job
from beadwright.job.job_query import read_query
from beadwright.measures import INCH_M
from beadwright.process.gases import gas_of
from beadwright.process.operating import at_feed, volts_window
from beadwright.process.tip_to_work import tip_to_work
from beadwright.process.transfer import Transfer
from beadwright.process.wires import wire_of
from beadwright.setting.dial_in import dial_in
from beadwright.setting.procedure_rows import TABLES, ProcedureTable, Row

NEAR_AMPS = 0.15
"""How far amps may stand from a printed row, as a share [-]."""

NEAR_VOLTS = 1.5
"""How far volts may stand from it [V]."""

SHEET_TO_MM = 3.2
"""Thickest plate that counts as sheet [mm]."""

_INCH_M_S = INCH_M / 60
_SLACK = 1e-9


@dataclass(frozen=True, slots=True)
class Held:
    """A published row held against the plan.

    Attributes:
        table: Its table.
        row: The row.
        transfer: Mode planned.
        amps: Current set, None where the plan is shut [A].
        volts: Volts set, None in pulse and where shut [V].
        inside: True if the window holds the row.
        near: True if the set point is the row's.
    """

    table: ProcedureTable
    row: Row
    transfer: Transfer
    amps: float | None
    volts: float | None
    inside: bool
    near: bool

    @property
    def amps_off(self) -> float | None:
        """Amps set over the row's middle, less one [-]."""
        return None if self.amps is None else self.amps / self.row.amps - 1

    @property
    def volts_off(self) -> float | None:
        """Volts set less the row's middle [V]."""
        printed = self.row.volts
        return None if self.volts is None or printed is None else self.volts - printed


@dataclass(frozen=True, slots=True)
class Score:
    """The score of a group.

    Attributes:
        rows: Rows counted.
        inside: Share inside the window [-].
        near: Share at the set point [-].
        amps_off: Median signed error of the amps [-].
        volts_off: Median signed error of the volts, or None without printed volts [V].
    """

    rows: int
    inside: float
    near: float
    amps_off: float
    volts_off: float | None


def query_of_row(table: ProcedureTable, row: Row) -> str:
    """Return the query of a row's job; tight edges on a backing are given its usual gap.

    Args:
        table: Its table, one with a joint [-].
        row: The row [-].
    """
    setup = table.setup
    keys: dict[str, object] = {
        "wire": setup.wire,
        "dia": row.size,
        "gas": setup.gas,
        "joint": setup.joint,
        "position": setup.position,
        "plate": f"{row.thickness_mm}mm",
        "transfer": setup.transfer or "auto",
        "backing": setup.backing,
    }
    if row.leg_mm is not None:
        keys["leg"] = f"{row.leg_mm}mm"
    if row.gap_mm is not None and (row.gap_mm > 0 or setup.backing == "none"):
        keys["gap"] = f"{row.gap_mm}mm"
    return "&".join(f"{key}={value}" for key, value in keys.items())


def held_rows() -> Iterator[Held]:
    """Yield every row, those with a joint held against the plan, the others against the arc."""
    for table in TABLES:
        for row in table.rows:
            joint = bool(table.setup.joint) and row.thickness_mm is not None
            yield _held_by_plan(table, row) if joint else _held_by_arc(table, row)


def _held_by_plan(table: ProcedureTable, row: Row) -> Held:
    job = read_query(query_of_row(table, row)).job
    found = dial_in(job)
    mode, outcome = found.plan.transfer, found.outcome
    if outcome is None or outcome.current.value is None:
        return Held(table, row, mode, None, None, False, False)
    feed = found.settings.wire_feed
    assert feed.low is not None
    assert feed.high is not None
    run = found.plan.run
    least, most = run.point(feed.low).current_a, run.point(feed.high).current_a
    inside = least <= row.amps <= most and _volts_inside(job, mode, row)
    amps, volts = outcome.current.value, found.settings.volts.value
    return Held(table, row, mode, amps, volts, inside, _near(row, amps, volts))


def _volts_inside(job: Job, mode: Transfer, row: Row) -> bool:
    if row.volts is None or mode == "pulse":
        return True
    low, _, high = volts_window(row.amps, job.wire, job.gas, mode)
    return low - _SLACK <= row.volts <= high + _SLACK


def _held_by_arc(table: ProcedureTable, row: Row) -> Held:
    """A row without a joint: does its feed draw its amps, and do its volts suit them?"""
    wire, gas = wire_of(table.setup.wire, row.size), gas_of(table.setup.gas)
    mode: Transfer = "short" if table.setup.transfer == "short" else "spray"
    low, _, high = volts_window(row.amps, wire, gas, mode)
    inside = row.volts is None or low - _SLACK <= row.volts <= high + _SLACK
    if row.feed_in_min is None:
        return Held(table, row, mode, None, None, inside, inside)
    tip = row.tip_to_work_mm
    tip_m = tip_to_work(wire, mode)[1] if tip is None else tip / 1000
    there = at_feed(wire, gas, mode, row.feed_in_min * _INCH_M_S, tip_m)
    return Held(table, row, mode, there.current_a, None, inside, _near(row, there.current_a, None))


def _near(row: Row, amps: float, volts: float | None) -> bool:
    if not row.amps_low * (1 - NEAR_AMPS) <= amps <= row.amps_high * (1 + NEAR_AMPS):
        return False
    if volts is None or row.volts_low is None or row.volts_high is None:
        return True
    return row.volts_low - NEAR_VOLTS <= volts <= row.volts_high + NEAR_VOLTS


def groups_of(held: Held) -> tuple[str, ...]:
    """Return the groups a row counts in.

    Args:
        held: The row [-].
    """
    table, row = held.table, held.row
    where = table.setup.position
    kind = wire_of(table.setup.wire, row.size).kind
    groups = ["all"]
    if not table.setup.joint or row.thickness_mm is None:
        groups.append("feed and amps alone")
    elif row.thickness_mm <= SHEET_TO_MM:
        groups.append("sheet")
    elif where[:1] in ("1", "2"):
        groups.append("plate")
    if where.startswith("3") and where.endswith("up"):
        groups.append("vertical-up")
    if where.startswith("4"):
        groups.append("overhead")
    if kind != "solid":
        groups.append(kind)
    elif held.transfer == "spray":
        groups.append("solid spray")
    elif held.transfer == "short":
        groups.append("short circuit")
    groups.append("left out" if table.left_out else "fitted")
    return tuple(groups)


GROUPS = (
    "all", "fitted", "left out", "sheet", "plate", "vertical-up", "overhead", "metal-cored",
    "flux-cored", "solid spray", "short circuit", "feed and amps alone",
)  # fmt: skip
"""The groups, in the order shown."""


def scores() -> Mapping[str, Score]:
    """Return the score of every group that has rows."""
    by_group: dict[str, list[Held]] = {}
    for held in held_rows():
        for group in groups_of(held):
            by_group.setdefault(group, []).append(held)
    return {group: _score(by_group[group]) for group in GROUPS if group in by_group}


def _score(rows: list[Held]) -> Score:
    volts = [held.volts_off for held in rows if held.volts_off is not None]
    amps = [held.amps_off for held in rows if held.amps_off is not None]
    return Score(
        len(rows),
        sum(held.inside for held in rows) / len(rows),
        sum(held.near for held in rows) / len(rows),
        median(amps) if amps else 0.0,
        median(volts) if volts else None,
    )
