"""The lines of a list with what the pages say of them, and which of them asks most."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from beadwright.machine.check import Check
from beadwright.results import Quantity
from beadwright.weld_list.listed_weld import ListedWeld
from beadwright.weld_list.weld_lines import WeldLine


@dataclass(frozen=True, slots=True)
class ListRow:
    """A line of the list with what the pages say of it.

    Attributes:
        line: The line.
        weld: Its welds, or None where it cannot be read or was left for later.
        wrong: Why it cannot be read; empty where it can.
    """

    line: WeldLine
    weld: ListedWeld | None
    wrong: str = ""


@dataclass(frozen=True, slots=True)
class CountedRow(ListRow):
    """A line that could be read."""

    weld: ListedWeld


def counted_rows(rows: Sequence[ListRow]) -> tuple[CountedRow, ...]:
    """Return the lines that could be read, in their order.

    Args:
        rows: Lines of a list [-].
    """
    return tuple(row for row in rows if isinstance(row, CountedRow))


def called(row: ListRow) -> str:
    """Return what a line's weld is called: its name, else its place.

    Args:
        row: The line [-].
    """
    return row.line.name or f"line {row.line.number}"


def worst_checks(counted: Sequence[CountedRow]) -> tuple[tuple[CountedRow, Check], ...]:
    """Return what machine and circuit must carry: of each check the weld that asks most of it.

    Args:
        counted: Lines that could be read [-].
    """
    worst: dict[str, tuple[CountedRow, Check]] = {}
    for row in counted:
        for check in row.weld.circuit.checks:
            held = worst.get(check.key)
            if held is None or _strain(check) > _strain(held[1]):
                worst[check.key] = row, check
    return tuple(worst.values())


def _strain(check: Check) -> float:
    """How much of a limit is used."""
    return check.asked / check.limit if check.limit else float("inf")


def heaviest(counted: Sequence[CountedRow]) -> CountedRow | None:
    """Return the line with most weld metal in one weld; None for an empty list.

    Args:
        counted: Lines that could be read [-].
    """
    return max(counted, key=_metal_of_one, default=None)


def hottest(counted: Sequence[CountedRow]) -> CountedRow | None:
    """Return the line with most heat input; None for an empty list.

    Args:
        counted: Lines that could be read [-].
    """
    return max(counted, key=_heat, default=None)


def most_pulled(counted: Sequence[CountedRow]) -> tuple[tuple[str, CountedRow, Quantity], ...]:
    """Return what pulls the part out of shape: of each distortion the weld that does most of it.

    Each weld is taken alone, at the highest of the published forms, on the part as asked.

    Args:
        counted: Lines that could be read [-].
    """
    most: dict[str, tuple[CountedRow, Quantity]] = {}
    for row in counted:
        if row.weld.heat is None:
            continue
        for name, found in row.weld.heat.distortion.ways[0].named().items():
            held = most.get(name)
            if found.value and (held is None or _high(found) > _high(held[1])):
                most[name] = row, found
    return tuple((name, row, found) for name, (row, found) in most.items())


def _high(found: Quantity) -> float:
    return max(found.value or 0.0, found.high or 0.0)


def _metal_of_one(row: CountedRow) -> float:
    return row.weld.first.way.metal_kg / row.weld.first.dialled.job.welds


def _heat(row: CountedRow) -> float:
    outcome = row.weld.first.dialled.outcome
    return (outcome.heat.value or 0.0) if outcome is not None else 0.0
