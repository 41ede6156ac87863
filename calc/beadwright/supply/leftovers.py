"""What is left on the spool and in the cylinder in use: length of weld and time."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.money.cost_ways import PlannedWay
from beadwright.phrases import Amount, Phrase, say
from beadwright.supply.cylinder_sizes import CylinderSize
from beadwright.supply.cylinders import (
    RESIDUAL_PA,
    WATER_OFF,
    co2_gas,
    lasts,
    usable,
    water_volume,
)
from beadwright.supply.spools import (
    left_by_full,
    left_by_size,
    left_by_weight,
    weld_length,
    wire_length,
)
from beadwright.supply.supplies_query import CylinderEntries, SpoolEntries

SpoolBy = Literal["weight", "size", "full"]
CylinderBy = Literal["gauge", "weight"]


@dataclass(frozen=True, slots=True)
class SpoolLeft:
    """What is left on a spool.

    Attributes:
        by: weight, size, or full (size now against size when full).
        wire_kg: Low, taken, high [kg].
        wire_m: Length of wire [m].
        weld_m: Length of this joint it lays: low, taken, high [m].
        parts: Parts it lays [-].
        arc_s: Arc time it lasts [s].
    """

    by: SpoolBy
    wire_kg: tuple[float, float, float]
    wire_m: float
    weld_m: tuple[float, float, float]
    parts: float
    arc_s: float


@dataclass(frozen=True, slots=True)
class CylinderLeft:
    """What is left in a cylinder.

    Attributes:
        by: gauge or weight.
        size: Size its water volume is taken from; None where that was written, or it was weighed.
        gas_m3: Gas that can be drawn, 70 °F and 1 atm: low, taken, high [m³].
        lasts_s: How long it lasts with the gas on [s].
        parts: Parts it welds [-].
        phrase: The same in a sentence.
    """

    by: CylinderBy
    size: CylinderSize | None
    gas_m3: tuple[float, float, float]
    lasts_s: float
    parts: float
    phrase: Phrase


def spool_left(asked: SpoolEntries, planned: PlannedWay) -> SpoolLeft | None:
    """Return what is left on the begun spool; None if it was neither weighed nor measured.

    Weight comes before size; size against a full spool comes before size alone.

    Args:
        asked: What was weighed or measured [SI].
        planned: The way the job is welded [-].

    Raises:
        FieldErrors: If the figures contradict each other or one is missing.
    """
    measured = _spool_mass(asked, planned)
    if measured is None:
        return None
    by, masses = measured
    way, job = planned.way, planned.dialled.job
    usable_share = 1 - way.waste
    metal = way.metal_kg / way.length_m
    low, taken, high = (weld_length(mass * usable_share, way.efficiency, metal) for mass in masses)
    return SpoolLeft(
        by,
        masses,
        wire_length(job.wire, masses[1]),
        (low, taken, high),
        masses[1] / way.bought_kg,
        masses[1] * usable_share / way.melted_kg_s,
    )


def _spool_mass(
    asked: SpoolEntries, planned: PlannedWay
) -> tuple[SpoolBy, tuple[float, float, float]] | None:
    """How the wire left was told, and its mass: low, taken, high [kg]; None where it was not."""
    gross, outside = asked.spool_gross, asked.spool_outside
    try:
        if gross is not None:
            bare = _want(
                asked.spool_empty, "spool_empty", "Weigh an empty spool of the same kind too."
            )
            return "weight", _sure(left_by_weight(gross, bare))
        if outside is None:
            return None
        barrel = _want(asked.spool_hub, "spool_hub", "Measure the barrel under the winding too.")
        if asked.spool_full is not None:
            full = left_by_full(planned.way.spool_kg, asked.spool_full, outside, barrel)
            return "full", _sure(full)
        wide = _want(asked.spool_width, "spool_width", "Measure the width between the flanges too.")
        return "size", left_by_size(planned.dialled.job.wire, outside, barrel, wide)
    except OutOfRangeError as error:
        field = "spool_gross" if gross is not None else "spool_outside"
        text = (
            "The spool weighs less than when empty; check both weights."
            if gross is not None
            else "The winding must be at least its barrel and at most a full one; check the sizes."
        )
        raise FieldErrors({field: [text]}) from error


def _sure(mass_kg: float) -> tuple[float, float, float]:
    return mass_kg, mass_kg, mass_kg


def _want(value: float | None, field: str, text: str) -> float:
    if value is None:
        raise FieldErrors({field: [text]})
    return value


def cylinder_left(
    asked: CylinderEntries, size: CylinderSize | None, planned: PlannedWay
) -> CylinderLeft | None:
    """Return what is left in the cylinder in use; None if nothing was written about it.

    Args:
        asked: What the gauge or the scales read [SI].
        size: Size of cylinder asked for, or None [-].
        planned: The way the job is welded [-].

    Raises:
        FieldErrors: If the figures do not do for this gas.
    """
    gas, gauge, mass = planned.dialled.job.gas, asked.gauge, asked.co2_mass
    if gauge is None and mass is None:
        return None
    if gas.co2 == 1:
        co2 = _want(mass, "co2_mass", "CO2 is liquid: the gauge reads the same until it is gone. "
                    "Weigh the cylinder and take off the weight stamped on it.")  # fmt: skip
        return _left("weight", co2_gas(co2), planned)
    read = _want(gauge, "gauge", "This gas is no liquid: read the gauge.")
    bottle = None if asked.water else asked.bottle or size
    water = _want(asked.water or (water_volume(bottle) if bottle else None), "bottle",
                  "Tap the size of this bottle, or write the water volume stamped on its shoulder "
                  "as W.C.")  # fmt: skip
    try:
        return _left("gauge", usable(gas, read, water, asked.gas_temp), planned, bottle)
    except OutOfRangeError as error:
        raise FieldErrors({"gauge": [str(error)]}) from error


def _left(
    by: CylinderBy, gas_m3: float, planned: PlannedWay, size: CylinderSize | None = None
) -> CylinderLeft:
    way = planned.way
    hours = lasts(gas_m3, way.gas_flow_m3_s)
    parts = gas_m3 / way.gas_part_m3
    # A liter size is its water volume; only one called by its content is worked back from it.
    off = WATER_OFF if size is not None and size.water_m3 is None else 0.0
    band = (gas_m3 * (1 - off), gas_m3, gas_m3 * (1 + off))
    if gas_m3 <= 0:
        told = say("supply.cylinder-empty", least=Amount(RESIDUAL_PA, "pressure"))
    elif size is not None:
        span = Amount(hours, "time")
        told = say("supply.bottle-lasts", size=size.shown, span=span, parts=parts)
    else:
        told = say("supply.cylinder-lasts", span=Amount(hours, "time"), parts=parts)
    return CylinderLeft(by, size, band, hours, parts, told)
