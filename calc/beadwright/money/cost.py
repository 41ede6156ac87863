"""What a part costs, piece by piece; the pieces add up to the whole."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from operator import attrgetter

from beadwright.money.way import Rates, Way


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece of a cost or of a time.

    Attributes:
        key: Its id.
        name: The trade's name for it.
        amount: For one part [money] or [s].
    """

    key: str
    name: str
    amount: float


@dataclass(frozen=True, slots=True)
class Cost:
    """What one way costs.

    Attributes:
        way: The way.
        pieces: Money for a part, piece by piece [money].
        times: Time for a part, piece by piece [s].
    """

    way: Way
    pieces: tuple[Piece, ...]
    times: tuple[Piece, ...]

    @property
    def part(self) -> float:
        """Cost of a part: the sum of the pieces [money]."""
        return sum(piece.amount for piece in self.pieces)

    @property
    def time_s(self) -> float:
        """Time of a part: the sum of the times [s]."""
        return sum(piece.amount for piece in self.times)

    @property
    def metre(self) -> float:
        """Cost of a meter of weld [money/m]."""
        return self.part / self.way.length_m

    @property
    def kilogram(self) -> float:
        """Cost of a kilogram of weld metal [money/kg]."""
        return self.part / self.way.metal_kg

    def batch(self, parts: float) -> float:
        """Cost of a number of parts [money]."""
        return self.part * parts

    def year(self, parts: float) -> float:
        """Cost of a year's parts, with what is paid by the year; nothing paid once [money]."""
        return self.part * parts + self.way.yearly

    def piece(self, key: str) -> float:
        """Money of one piece, zero if there is none [money]."""
        return sum(piece.amount for piece in self.pieces if piece.key == key)


def hourly(way: Way, rates: Rates) -> tuple[float, float]:
    """Return labor and overhead of a way; its own rate holds both [money/s].

    Args:
        way: The way [-].
        rates: What the shop pays [-].
    """
    return (rates.labor_s, rates.overhead_s) if way.rate_s is None else (way.rate_s, 0.0)


def cost_of(way: Way, rates: Rates) -> Cost:
    """Return what a part costs and how long it takes, piece by piece.

    Source: handbook form: (labor + overhead) / (deposition × operating factor) + wire / efficiency
    + gas flow × price / deposition, here for a part and with gas before and after the arc, waste,
    power, tips and rework added. A part welded again costs all of it again, and the grinding out.

    Args:
        way: The way [-].
        rates: What the shop pays [-].
    """
    arc, off = way.arc_s, way.off_s
    labor, overhead = hourly(way, rates)
    drawn_j = way.arc_w / rates.machine_efficiency * arc + rates.idle_w * off
    once = (
        Piece("labour_on", "Labor, arc on", labor * arc),
        Piece("labour_off", "Labor, non-arc", labor * off),
        Piece("overhead", "Overhead", overhead * (arc + off)),
        Piece("wire", "Wire", way.wire_once_kg * way.wire_kg),
        Piece("gas", "Gas", way.gas_once_m3 * way.gas_m3),
        Piece("power", "Power", drawn_j * rates.energy_j),
        Piece("tips", "Tips and nozzles", way.tips_s * arc),
    )
    again = sum(piece.amount for piece in once)
    again += (labor + overhead) * way.grind_s
    return Cost(way, (*once, Piece("rework", "Rework", way.rework * again)), _times(way))


def _times(way: Way) -> tuple[Piece, ...]:
    alone = way.stations == 1
    return (
        Piece("arc", "Arc", way.arc_s),
        Piece("load", "Loading", way.load_s * alone),
        Piece("fit_up", "Fit-up", way.fit_up_s * alone),
        Piece("reposition", "Repositioning", way.reposition_s),
        Piece("clean", "Cleaning passes", way.clean_s),
        Piece("spatter", "Spatter", way.spatter_s * alone),
        Piece("wait", "Waiting to be loaded", way.waits_s),
        Piece("spool", "Spool changes", way.spool_s),
        Piece("swap", "Wire swaps", way.swap_s),
        Piece("stops", "Cleaning stops", way.stopped * way.arc_s),
        Piece("tip", "Tip changes", way.tipped * way.arc_s),
        Piece("other", "Other", way.other_s),
        Piece("rework", "Rework", way.rework * (way.cycle_s + way.grind_s)),
    )


UNSURE = (
    "metal_kg", "melted_kg_s", "efficiency", "wire_kg", "gas_m3", "gas_flow_m3_s", "load_s",
    "fit_up_s", "reposition_s", "clean_s", "spatter_s", "other_s", "rework",
)  # fmt: skip
"""Figures of a way that may be off, in the order of a row; labor and overhead stand before them."""

_unsure = attrgetter(*UNSURE)


def part_cost(way: Way, rates: Rates) -> float:
    """Return the cost of a part alone [money].

    The same sum as ``cost_of``; a test compares them.

    Args:
        way: The way [-].
        rates: What the shop pays [-].
    """
    return part_costs(way, rates, [(*hourly(way, rates), *_unsure(way))])[0]


def part_costs(way: Way, rates: Rates, rows: Iterable[tuple[float, ...]]) -> list[float]:
    """Return the cost of a part for each row of figures, for work that needs it thousands of times.

    Plain sums of plain numbers: an object for each row takes five times as long.

    Args:
        way: The way; its figures that are in a row count for nothing [-].
        rates: What the shop pays; the same [-].
        rows: Labor and overhead [money/s], then the figures of ``UNSURE`` [SI, money].
    """
    energy, idle, drawn_w = rates.energy_j, rates.idle_w, way.arc_w / rates.machine_efficiency
    melted_share, before_and_after = 1 - way.waste, way.starts * way.gas_extra_s
    a_second, alone, tips = 1 + way.stopped + way.tipped, way.stations == 1, way.tips_s
    change, spool, swap, grind = way.spool_change_s, way.spool_kg, way.swap_s, way.grind_s
    found: list[float] = []
    for (
        labor, overhead, metal, melted, efficiency, wire_price, gas_price, flow,
        load, fit_up, reposition, clean, spatter, other, rework,
    ) in rows:  # fmt: skip
        hour = labor + overhead
        arc = metal / (melted * efficiency)
        wire = metal / efficiency / melted_share
        torch = arc * a_second + reposition + clean + other + change * wire / spool + swap
        waits = load + fit_up + spatter if alone else load + fit_up + spatter - torch
        cycle = torch + waits if waits > 0 else torch
        off = cycle - arc
        once = (
            hour * (arc + off)
            + wire * wire_price
            + flow * (arc + before_and_after) * gas_price
            + (drawn_w * arc + idle * off) * energy
            + tips * arc
        )
        found.append(once + rework * (once + hour * grind))
    return found
