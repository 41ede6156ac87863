"""The Supplies page's answer: wire, gas and small parts for a job, and what is left of each."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from math import ceil
from typing import Any

from beadwright import units
from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.job.page_query import PageAnswered, read_page
from beadwright.money.asked_way import ShopShare
from beadwright.money.cost_ways import PlannedWay, first_way
from beadwright.money.demo_prices import INVENTED_IN_USE, invented_in_use
from beadwright.money.uncounted import uncounted
from beadwright.money.volume_entries import parts_a_year
from beadwright.phrases import say
from beadwright.results import Note
from beadwright.supply.cylinder_sizes import CylinderSize
from beadwright.supply.cylinders import full_content, usual_cylinder
from beadwright.supply.leftovers import CylinderLeft, SpoolLeft, cylinder_left, spool_left
from beadwright.supply.purchase import PurchaseRow
from beadwright.supply.spools import Packages, packages
from beadwright.supply.supplies_query import SuppliesQuery

YEARS_OF_WIRE = 2.0
"""Time in use after which wire in a package rusts before it is used up [years]. Common practice."""

A_LIFETIME = 50
"""Years above which the number itself is not shown [years]."""


@dataclass(frozen=True, slots=True)
class Supplies:
    """What a number of parts needs.

    Attributes:
        count: Parts to weld now.
        parts: Parts a year, in whatever way they were counted [1/year].
        arc_s: Arc time [s].
        wire_kg: Wire [kg].
        wire_m: The same as length [m].
        package_kg: Wire in a package [kg].
        packages: Packages, change-overs, wire left.
        weeks: Weeks worked in a year.
        package_weeks: Weeks worked a package lasts at a year's parts, or None at none.
        gas_m3: Gas [m³].
        cylinder: Size of cylinder.
        cylinder_m3: Gas in a full one, or None for bulk [m³].
        cylinders: Cylinders, or None for bulk.
        cylinder_weeks: Weeks worked a full one lasts at a year's parts, or None at none or bulk.
        cylinder_s: How long a full one lasts with the gas on, or None for bulk [s].
        tips: Contact tips.
        nozzles: Nozzles.
    """

    count: int
    parts: int
    arc_s: float
    wire_kg: float
    wire_m: float
    package_kg: float
    packages: Packages
    weeks: int
    package_weeks: float | None
    gas_m3: float
    cylinder: CylinderSize
    cylinder_m3: float | None
    cylinders: int | None
    cylinder_weeks: float | None
    cylinder_s: float | None
    tips: int
    nozzles: int

    @property
    def package_years(self) -> float | None:
        """How long a package lasts at a year's parts, or None at none [years]."""
        return None if self.package_weeks is None else self.package_weeks / self.weeks

    @property
    def cylinders_a_week(self) -> float | None:
        """Cylinders a week worked at a year's parts, or None for bulk [-]."""
        if self.cylinder_m3 is None:
            return None
        return 0.0 if self.cylinder_weeks is None else 1 / self.cylinder_weeks


@dataclass(frozen=True, slots=True)
class SuppliesAnswer(PageAnswered):
    """The Supplies page's answer.

    Attributes:
        page: ``supplies``.
        query: The query as read.
        planned: The way the job is welded.
        supplies: What the parts need.
        purchases: What to buy.
        spool: What is left on the begun spool, if it was weighed or measured.
        gas_left: What is left in the cylinder at hand, if its gauge or weight was written.
        notes: Notes, the most severe first.
    """

    query: SuppliesQuery
    planned: PlannedWay
    supplies: Supplies
    purchases: tuple[PurchaseRow, ...]
    spool: SpoolLeft | None
    gas_left: CylinderLeft | None

    @property
    def currency(self) -> str:
        """The sign before money."""
        return self.query.currency


def supplies_answer(query: str, kept: Mapping[str, Any] | None = None) -> SuppliesAnswer:
    """Return the Supplies page's answer to a query string.

    Args:
        query: Keys of ``supplies_query.SuppliesQuery`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    read = read_page(SuppliesQuery, query, kept)
    shop = ShopShare(read.nozzle_price, read.nozzle_life, read.gas_extra)
    planned = first_way(read.job, read.way, shop, read.own)
    found = _supplies(read, planned)
    return SuppliesAnswer(
        page="supplies",
        query=read,
        planned=planned,
        supplies=found,
        purchases=_purchases(read, planned, found),
        spool=spool_left(read.spool, planned),
        gas_left=cylinder_left(read.gas, read.cylinder, planned),
        notes=tuple(_notes(read, planned, found)),
    )


def _supplies(read: SuppliesQuery, planned: PlannedWay) -> Supplies:
    way, wire, count = planned.way, planned.dialled.job.wire, read.count
    need, gas = count * way.bought_kg, count * way.gas_part_m3
    arc = count * (1 + way.rework) * way.arc_s
    full = _full(read, planned)
    parts = parts_a_year(read.volume, read.own, read.weeks, way)
    tip_life = read.way.tip_life
    assert tip_life is not None  # it has a default
    return Supplies(
        count=count,
        parts=parts,
        arc_s=arc,
        wire_kg=need,
        wire_m=need / wire.linear_mass_kg_m,
        package_kg=way.spool_kg,
        packages=packages(need, way.spool_kg, read.on_hand or 0.0),
        weeks=read.weeks,
        package_weeks=_weeks(parts, read.weeks, way.spool_kg, way.bought_kg),
        gas_m3=gas,
        cylinder=_size(read, planned),
        cylinder_m3=full,
        cylinders=None if full is None else ceil(gas / full - 1e-9),
        cylinder_weeks=None if full is None else _weeks(parts, read.weeks, full, way.gas_part_m3),
        cylinder_s=None if full is None else full / way.gas_flow_m3_s,
        tips=ceil(arc / tip_life),
        nozzles=ceil(arc / read.nozzle_life),
    )


def _weeks(parts: int, weeks: int, holds: float, a_part: float) -> float | None:
    """Weeks worked that what holds so much lasts at a year's parts; None at no parts [-]."""
    return holds / a_part / parts * weeks if parts else None


def _size(read: SuppliesQuery, planned: PlannedWay) -> CylinderSize:
    return read.cylinder or usual_cylinder(planned.dialled.job.gas)


def _full(read: SuppliesQuery, planned: PlannedWay) -> float | None:
    """Gas in a full cylinder: as written, else by its size [m³]."""
    if read.way.cylinder_gas is not None:
        return read.way.cylinder_gas
    try:
        return full_content(_size(read, planned), planned.dialled.job.gas)
    except OutOfRangeError as error:
        raise FieldErrors({"cylinder": [str(error)]}) from error


def _purchases(
    read: SuppliesQuery, planned: PlannedWay, found: Supplies
) -> tuple[PurchaseRow, ...]:
    way, job = planned.way, planned.dialled.job
    package = units.written(way.spool_kg, "mass", job.units)
    wire = PurchaseRow(
        "wire",
        f"{job.wire.type.name} {job.wire.size} ({job.wire.metric_size})",
        package,
        found.packages.count,
        way.wire_kg * way.spool_kg,
        f"{units.written(found.packages.left_kg, 'mass', job.units)} left over",
    )
    small = (
        PurchaseRow("tips", f"Contact tip for {job.wire.size}", "each", found.tips,
                    read.way.tip_price, ""),
        PurchaseRow("nozzles", "Nozzle", "each", found.nozzles, read.nozzle_price, ""),
    )  # fmt: skip
    return (wire, _gas_row(read, planned, found), *small)


def _gas_row(read: SuppliesQuery, planned: PlannedWay, found: Supplies) -> PurchaseRow:
    job = planned.dialled.job
    name = f"{job.gas.name} (ISO 14175 {job.gas.iso_group})"
    volume = units.written(found.gas_m3, "gas_volume", job.units)
    if found.cylinders is None:
        return PurchaseRow("gas", name, f"bulk, {volume}", 1, found.gas_m3 * planned.way.gas_m3, "")
    return PurchaseRow("gas", name, found.cylinder.name, found.cylinders,
                       read.way.cylinder_price, f"{volume} used")  # fmt: skip


def _notes(read: SuppliesQuery, planned: PlannedWay, found: Supplies) -> Iterator[Note]:
    for note in planned.dialled.notes:
        if note.level in ("stop", "out"):
            yield note
    yield from uncounted(planned.dialled)
    if planned.dialled.plan.shape.gouged:
        yield Note("note", say("supply.gouging-not-counted"), "back-gouge", "back")
    years = found.package_years
    if years is None:
        yield Note("note", say("supply.no-parts-no-span"), field="parts")
    elif years > YEARS_OF_WIRE:
        lasts = (
            say("supply.rusts-in-a-lifetime")
            if years > A_LIFETIME
            else say("supply.rusts-first", years=years)
        )
        yield Note("caution", lasts, "practice", "spool")
    if found.count == 0:
        yield Note("note", say("supply.nothing-to-weld"), field="count")
    if read.gas_extra == 0:
        yield Note("note", say("supply.no-gas-extra"), field="gas_extra")
    names = invented_in_use(read)
    if names:
        yield Note("caution", say(INVENTED_IN_USE, keys=names), "invented")
