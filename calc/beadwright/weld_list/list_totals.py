"""What the welds of a list come to: the sums of the pages' own answers, weld by weld."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import ceil

from beadwright.errors import OutOfRangeError
from beadwright.money.cost import Cost, Piece, cost_of, hourly
from beadwright.money.cost_ways import rates_of
from beadwright.money.way import Rates, Way
from beadwright.supply.cylinders import full_content, usual_cylinder
from beadwright.supply.spools import packages
from beadwright.weld_list.listed_weld import ListedWeld, hands_of


@dataclass(frozen=True, slots=True)
class WayTotal:
    """What a part takes by one way, all its welds together.

    Attributes:
        name: The way; its own name, or wire and gas where all welds have the same.
        metal_kg: Weld metal [kg].
        length_m: Welded length [m].
        wire_kg: Wire bought, rework shared out [kg].
        gas_m3: Gas, rework shared out [m³].
        arc_s: Arc time of a part welded once [s].
        off_s: Time off the arc of a part welded once [s].
        time_s: Time of a part, rework shared out [s].
        part: Cost of a part [money].
        pieces: The same piece by piece [money].
        hour_s: What its time costs, labor and overhead [money/s].
    """

    name: str
    metal_kg: float
    length_m: float
    wire_kg: float
    gas_m3: float
    arc_s: float
    off_s: float
    time_s: float
    part: float
    pieces: tuple[Piece, ...]
    hour_s: float


@dataclass(frozen=True, slots=True)
class Package:
    """Wire or gas that the list asks for, and how it comes.

    Attributes:
        kind: ``wire`` or ``gas``.
        name: What it is.
        amount: What a batch takes: wire [kg], gas [m³].
        holds: What a spool or a cylinder holds, or None for bulk: wire [kg], gas [m³].
        count: Spools or cylinders for a batch, or None for bulk [-].
    """

    kind: str
    name: str
    amount: float
    holds: float | None
    count: int | None


def way_totals(welds: Sequence[ListedWeld]) -> tuple[WayTotal, ...]:
    """Return what a part takes by each way; none for an empty list.

    Each weld's own answer of Cost, without what is done once a part, and that once.

    Source: ``cost.cost_of``, weld by weld.

    Args:
        welds: The welds that could be read [-].

    Raises:
        FieldErrors: As ``hands_of``.
    """
    if not welds:
        return ()
    rates = rates_of(welds[0].cost)
    hands = hands_of(welds[0])
    return tuple(_total(welds, index, each, rates) for index, each in enumerate(hands))


def _total(welds: Sequence[ListedWeld], index: int, hands: Way, rates: Rates) -> WayTotal:
    alone = [weld.costs[index] for weld in welds]
    ways = [cost.way for cost in alone]
    whole = _waiting(hands, sum(way.torch_s for way in ways))
    costs = [*alone, cost_of(whole, rates)]
    names = dict.fromkeys(way.name for way in ways)
    return WayTotal(
        name=" + ".join(names),
        metal_kg=sum(way.metal_kg for way in ways),
        length_m=sum(way.length_m for way in ways),
        wire_kg=sum(way.bought_kg for way in ways),
        gas_m3=sum(way.gas_part_m3 for way in ways),
        arc_s=sum(way.arc_s for way in ways),
        off_s=sum(cost.way.off_s for cost in costs),
        time_s=sum(cost.time_s for cost in costs),
        part=sum(cost.part for cost in costs),
        pieces=tuple(_pieces(costs)),
        hour_s=sum(hourly(whole, rates)),
    )


def _waiting(hands: Way, torch_s: float) -> Way:
    """What is done once a part, on one station; with two it is done while the torch works."""
    if hands.stations == 1:
        return hands
    waits = max(0.0, hands.hands_s - torch_s - hands.torch_s)
    return replace(
        hands, stations=1, load_s=0.0, fit_up_s=0.0, spatter_s=0.0, other_s=hands.other_s + waits
    )


def _pieces(costs: Sequence[Cost]) -> Iterator[Piece]:
    for alike in zip(*(cost.pieces for cost in costs), strict=True):  # all have the same pieces
        yield replace(alike[0], amount=sum(piece.amount for piece in alike))


def asked_packages(welds: Sequence[ListedWeld], parts: int) -> tuple[Package, ...]:
    """Return spools and cylinders for a number of parts, the first way.

    Source: ``spools.packages`` and ``cylinders.full_content``.

    Args:
        welds: The welds that could be read [-].
        parts: Parts made, one or more [-].
    """
    wires: dict[str, list[Way]] = {}
    gases: dict[str, list[ListedWeld]] = {}
    for weld in welds:
        job = weld.first.dialled.job
        wires.setdefault(f"{job.wire.type.name} {job.wire.size}", []).append(weld.first.way)
        gases.setdefault(job.gas.name, []).append(weld)
    return (
        *(_spools(name, ways, parts) for name, ways in wires.items()),
        *(_cylinders(name, alike, parts) for name, alike in gases.items()),
    )


def _spools(name: str, ways: Sequence[Way], parts: int) -> Package:
    need, holds = parts * sum(way.bought_kg for way in ways), ways[0].spool_kg
    return Package("wire", name, need, holds, packages(need, holds).count)


def _cylinders(name: str, welds: Sequence[ListedWeld], parts: int) -> Package:
    gas, written = welds[0].first.dialled.job.gas, welds[0].cost.way.cylinder_gas
    need = parts * sum(weld.first.way.gas_part_m3 for weld in welds)
    try:
        full = written or full_content(usual_cylinder(gas), gas)
    except OutOfRangeError:
        full = None
    return Package("gas", name, need, full, None if full is None else ceil(need / full - 1e-9))
