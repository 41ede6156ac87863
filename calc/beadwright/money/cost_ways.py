"""From a query to the numbers of each way: dialled in, or as the shop measured it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from beadwright.errors import FieldErrors
from beadwright.job.job import Job
from beadwright.money.asked_way import AskedWay, ShopShare, later_way
from beadwright.money.compared_entries import Compared
from beadwright.money.cost_query import CostQuery
from beadwright.money.package_prices import gas_price, wire_price
from beadwright.money.planned_alike import PlannedAlike, planned_alike
from beadwright.money.time_off import time_off_arc
from beadwright.money.way import Rates, Way
from beadwright.money.way_entries import WayEntries
from beadwright.setting.dial_in import DialIn, dial_in
from beadwright.setting.outcome import Outcome
from beadwright.setting.run_alike import FirstRun
from beadwright.words.wording import worded


@dataclass(frozen=True, slots=True)
class PlannedWay:
    """A way with what it was worked out from.

    Attributes:
        prefix: What its keys begin with.
        way: Its numbers.
        dialled: The dial-in it was worked out from.
        alike: How it is planned beside the first; None of the first.
        efficiency: Deposition efficiency: low, taken, high [-].
        measured: True if the arc time or the laid metal was measured.
        once: What is paid once, name by name [money].
        inherited_price: True if it uses the first way's wire price for another wire.
    """

    prefix: str
    way: Way
    dialled: DialIn
    alike: PlannedAlike | None
    efficiency: tuple[float, float, float]
    measured: bool
    once: tuple[tuple[str, float], ...]
    inherited_price: bool


def rates_of(query: CostQuery) -> Rates:
    """Return what the shop pays; a shop rate holds labor and overhead.

    Args:
        query: The Cost page's query [-].
    """
    whole = query.shop_rate
    return Rates(
        labor_s=query.labour if whole is None else whole,
        overhead_s=query.overhead if whole is None else 0.0,
        energy_j=query.energy_price,
        machine_efficiency=query.machine_efficiency,
        idle_w=query.idle,
    )


def planned_ways(query: CostQuery) -> tuple[PlannedWay, ...]:
    """Return the ways of a query: two, or as many as have keys of their own.

    Args:
        query: The Cost page's query [-].

    Raises:
        FieldErrors: If a way's job contradicts itself, or no setting holds and none was typed.
    """
    shop = ShopShare(
        query.nozzle_price, query.nozzle_life, query.gas_extra, query.grind, query.batch
    )
    first = first_way(query.job, query.way, shop, query.own, query.typed)
    later = query.later().items()
    return (
        first,
        *(_planned(later_way(query, *way, shop), first, query.beside.compared) for way in later),
    )


def first_way(
    job: Job,
    way: WayEntries,
    shop: ShopShare,
    own: Iterable[str],
    typed: Iterable[str] = (),
) -> PlannedWay:
    """Return the first way, or that of a page that asks for one alone.

    Args:
        job: The job [-].
        way: What the way says [-].
        shop: What the shop says [-].
        own: Keys the shop gave or the query typed [-].
        typed: Keys the query typed, where one price needs another key beside it [-].

    Raises:
        FieldErrors: As ``planned_ways``.
    """
    return _planned(
        AskedWay(
            prefix="",
            job=job,
            own=way,
            base=way,
            taken=way,
            tested=way,
            same=True,
            given=frozenset(own),
            known=frozenset(own),
            typed=frozenset(typed),
            once=(),
            shop=shop,
        ),
        None,
    )


def _planned(
    asked: AskedWay, first: PlannedWay | None, compared: Compared | None = None
) -> PlannedWay:
    alike = None if first is None else planned_alike(asked, _run_of(first), compared)
    dialled = dial_in(asked.job) if alike is None else alike.dialled
    outcome = dialled.outcome
    own = asked.own
    if outcome is None:
        stops = (n.phrase for n in dialled.notes if n.level == "stop")
        fight = next((worded(phrase, asked.job.units) for phrase in stops), "")
        text = f"No setting holds every limit. {fight} Write the feed you run."
        raise FieldErrors({f"{asked.prefix}wfs": [text]})
    tested = asked.tested
    return PlannedWay(
        prefix=asked.prefix,
        way=_way(asked, dialled, outcome, first),
        dialled=dialled,
        alike=alike,
        efficiency=_efficiency(asked, dialled),
        measured=tested.arc_min is not None or tested.laid is not None,
        once=asked.once,
        inherited_price=not asked.same and own.wire_price is None and own.spool_price is None,
    )


def _run_of(first: PlannedWay) -> FirstRun:
    """How the first way is run: where its metal or its arc time was measured, as they say."""
    dialled, way = first.dialled, first.way
    feed = way.melted_kg_s / dialled.job.wire.linear_mass_kg_m
    return FirstRun(dialled, feed, way.length_m * dialled.plan.passes / way.arc_s)


def _efficiency(asked: AskedWay, dialled: DialIn) -> tuple[float, float, float]:
    measured = asked.tested.efficiency
    return dialled.plan.efficiency if measured is None else (measured, measured, measured)


def _melted(
    tested: WayEntries, dialled: DialIn, outcome: Outcome, efficiency: float
) -> tuple[float, float]:
    """Weld metal in a part [kg] and wire melted while the arc burns [kg/s].

    Feed and travel as dialled in, unless arc time or laid metal were measured. With both measured
    the metal is what they lay, over or under the drawing's.
    """
    job, point = dialled.job, dialled.point
    assert point is not None  # an outcome comes from a point
    drawn = (outcome.metal.value or 0.0) * job.weld_length_m * job.welds
    arc, laid = tested.arc_min, tested.laid
    if arc is not None and laid is not None:
        return arc * laid, laid / efficiency
    if laid is not None:
        return drawn, laid / efficiency
    if arc is not None:
        return drawn, drawn / arc / efficiency
    melted = job.wire.linear_mass_kg_m * point.feed_m_s
    return melted * efficiency * (outcome.arc_time.value or 0.0), melted


def _way(asked: AskedWay, dialled: DialIn, outcome: Outcome, first: PlannedWay | None) -> Way:
    job, point, taken, shop = dialled.job, dialled.point, asked.taken, asked.shop
    assert point is not None  # an outcome comes from a point
    assert taken.spool is not None  # the first way has defaults for these three
    assert taken.waste is not None
    assert taken.tip_life is not None
    _, efficiency, _ = _efficiency(asked, dialled)
    metal, melted = _melted(asked.tested, dialled, outcome, efficiency)
    passes = job.welds * dialled.plan.passes
    counts = {"reposition": job.welds, "clean": passes}
    off = time_off_arc(asked, metal / melted / efficiency, counts, first.way if first else None)
    return Way(
        name=_name(asked, dialled, first),
        metal_kg=metal,
        length_m=job.weld_length_m * job.welds,
        melted_kg_s=melted,
        efficiency=efficiency,
        waste=taken.waste,
        wire_kg=wire_price(asked),
        gas_m3=gas_price(asked),
        gas_flow_m3_s=taken.gas_flow or outcome.gas_flow.value or 0.0,
        gas_extra_s=shop.gas_extra_s,
        starts=passes,
        arc_w=point.volts * point.current_a,
        tips_s=(taken.tip_price or 0.0) / taken.tip_life + shop.nozzle_price / shop.nozzle_life_s,
        spool_kg=taken.spool,
        spool_change_s=off.spool_change_s,
        fit_up_s=off.fit_up_s,
        reposition_s=off.reposition_s,
        clean_s=off.clean_s,
        spatter_s=off.spatter_s,
        other_s=off.other_s,
        rework=taken.rework or 0.0,
        grind_s=shop.grind_s,
        yearly=taken.yearly or 0.0,
        once=sum(amount for _, amount in asked.once),
        load_s=off.load_s,
        swap_s=off.swap_s,
        stopped=off.stopped,
        tipped=off.tipped,
        stations=off.stations,
        rate_s=taken.rate,
    )


def _name(asked: AskedWay, dialled: DialIn, first: PlannedWay | None) -> str:
    """The name given, or wire and gas; told apart from the first way's where they are the same.

    By who moves the torch, where that differs; else by the way's letter.
    """
    if asked.own.name:
        return asked.own.name
    wire, gas = dialled.job.wire, dialled.job.gas
    name = f"{wire.type.name} {wire.size}, {gas.name}"
    if first is None or first.way.name != name:
        return name
    mover = asked.job.travel_by
    if mover != first.dialled.job.travel_by:
        return f"{name}, by {mover}"
    return f"{name}, way {asked.prefix[0].upper()}"
