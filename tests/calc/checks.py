"""Adapters between printed tables and the core: the source's units in, the source's units out.

Factors are typed here, not taken from ``beadwright.units``, so that a wrong factor there shows.
Standard library and beadwright only; see ``reference_rows``.
"""

from __future__ import annotations

from math import pi

from beadwright import units
from beadwright.errors import OutOfRangeError, UnknownEntryError
from beadwright.joint import fillet_joints, fillets
from beadwright.joint.joints import JointKind
from beadwright.process import (
    arc,
    burnoff,
    deposition,
    gas_groups,
    gases,
    positions,
    transfer,
    wires,
)
from beadwright.process.filter_shade import least_shade as shade_of
from beadwright.process.positions import Mover, Orientation
from beadwright.process.tip_to_work import tip_position as place_of_tip
from beadwright.process.tip_to_work import tip_to_work
from beadwright.process.transfer import Transfer
from beadwright.process.wire_kinds import Kind
from beadwright.setting.torch import torch
from beadwright.units import System

INCH = 0.0254
FOOT = 0.3048
POUND = 0.45359237

Window = tuple[float, float]


def inches(text: str) -> float:
    """Return a size printed in inches [m]."""
    top, _, below = text.partition("/")
    return float(top) / float(below or 1) * INCH


# Weld metal


# Wire and deposition


def mass_over_solid(wire: str, size: str) -> float:
    found = wires.wire_of(wire, size)
    rod = 7850 * pi / 4 * found.diameter_m**2
    return 100 * found.linear_mass_kg_m / rod


def metric_size(size: str) -> str:
    return wires.wire_of("ER70S-6", size).metric_size


def diameter_in(size: str) -> float:
    return wires.INCH_SIZES_M[size] / INCH


def laid_lb_h(wire: str, size: str, feed_in_min: float, efficiency: float) -> float:
    feed = feed_in_min * INCH / 60
    return deposition.laid_rate(wires.wire_of(wire, size), feed, efficiency) / POUND * 3600


def bench_deposition_kg_h(grams: float, seconds: float) -> float:
    return units.read(f"{grams}g", "mass") / units.read(f"{seconds}s", "time") * 3600


def efficiency_percent(wire: str, gas: str, transfer: Transfer) -> Window:
    found = wires.wire_of(wire, "0.045in")
    low, _, high = deposition.deposition_efficiency(found, gases.gas_of(gas), transfer)
    return low * 100, high * 100


# Burn-off, volts, transfer


def feed_at_point(
    wire: str, size: str, current_a: float, tip_to_work_in: float | None, transfer: Transfer
) -> float:
    """Return the feed of a printed point; 3/8 or 3/4 in of tip-to-work where none is printed."""
    short = transfer == "short"
    stick = tip_to_work_in or (0.375 if short else 0.75)
    extension = stick * INCH - (0.002 if short else 0.004)
    feed = burnoff.feed_from_current(wires.wire_of(wire, size), current_a, extension)
    return feed / INCH * 60


def volts_window(kind: Kind, size: str, gas: str, transfer: str, current_a: float) -> Window:
    """Return the window of a mode."""
    assert size in wires.INCH_SIZES_M
    of_gas = gases.gas_of(gas)
    if transfer == "short":
        low, _, high = arc.short_window(current_a, of_gas, kind)
    else:
        low, _, high = arc.open_window(current_a, of_gas, kind, size)
    return low, high


def transition_a(wire: str, size: str, co2: float, oxygen: float) -> float:
    group = gas_groups.iso_14175_group(co2, oxygen)
    gas = gases.Gas("as printed", 1 - co2 - oxygen, co2, oxygen, group)
    return transfer.transition_current(wires.wire_of(wire, size), gas)


def short_range_a(size: str) -> Window:
    return transfer.SHORT_RANGE_A[size]


def open_top_a(wire: str, size: str) -> float:
    return transfer.OPEN_TOP_A[wires.WIRE_TYPES[wire].kind, size]


def gas_sprays(wire: str, gas: str) -> str:
    refused = transfer.spray_refused(wires.wire_of(wire, "0.045in"), gases.gas_of(gas))
    return "no" if refused else "yes"


# Fillets and positions


def minimum_leg_in(thinner_in: str) -> float:
    return fillets.minimum_leg(inches(thinner_in)) / INCH


def minimum_leg_mm(thinner_mm: float) -> float:
    return fillets.minimum_leg(thinner_mm / 1000, metric=True) * 1000


def largest_edge_leg_in(edge_in: str) -> float:
    return fillets.largest_edge_leg(inches(edge_in)) / INCH


def largest_edge_leg_mm(edge_mm: float) -> float:
    return fillets.largest_edge_leg(edge_mm / 1000, metric=True) * 1000


def printed_size_mm(leg_in: str) -> float:
    assert fillets.printed_size(inches(leg_in), metric=False) == inches(leg_in)
    return fillets.printed_size(inches(leg_in), metric=True) * 1000


def gapped_leg_in(leg_in: str, gap_in: str) -> float | str:
    try:
        return fillets.gapped_leg(inches(leg_in), inches(gap_in)) / INCH
    except OutOfRangeError:
        return "refused"


def largest_convexity_in(face_in: str) -> float:
    return fillets.largest_convexity(inches(face_in)) / INCH


def throat_mm(leg_mm: float) -> float:
    return fillets.throat(leg_mm / 1000) * 1000


def face_mm(leg_mm: float) -> float:
    leg = leg_mm / 1000
    return fillet_joints.fillet_joint("tee", 0.01, 0.01, leg, leg, 0.0).face_m * 1000


def overweld_percent(asked: str, laid: str) -> float:
    return 100 * (fillets.flat_section(inches(laid)) / fillets.flat_section(inches(asked)) - 1)


def single_pass_leg_in(position: str) -> float:
    return positions.position_of(position).single_pass_leg_m / INCH


def practical_leg_in(position: str) -> float:
    found = positions.position_of(position)
    assert found.practical_leg_m <= found.single_pass_leg_m
    return found.practical_leg_m / INCH


def iso_position(position: str) -> str:
    found = positions.position_of(position)
    return found.iso_fillet if position[1] == "F" else found.iso_groove


def aws_position(position: str, fillet: bool) -> str:
    return positions.position_of(position).name(fillet)


def sprays(position: str) -> str:
    return "yes" if positions.position_of(position).sprays else "no"


def travel_in_min(mover: Mover, position: str) -> Window:
    low, high = positions.TRAVEL_RANGE_M_S[mover, positions.position_of(position).orientation]
    return low / INCH * 60, high / INCH * 60


def comfortable_in_min(mover: Mover, position: str) -> Window:
    where = positions.position_of(position).orientation
    slow, fast = positions.COMFORTABLE_TRAVEL_M_S[mover, where]
    return slow / INCH * 60, fast / INCH * 60


def comfortable_end_in_min(mover: Mover, position: str, end: str) -> float:
    return comfortable_in_min(mover, position)[("low", "high").index(end)]


# Plate and heat


def gauge_in(gauge: int) -> float:
    return units.read(f"{gauge}ga", "length") / INCH


def gauge_lb_ft2(gauge: int) -> float:
    return gauge_in(gauge) * 41.82


# Gas


def gas_group(gas: str) -> str:
    return gases.gas_of(gas).iso_group


def gas_percent(gas: str, of: str) -> float:
    share: float = getattr(gases.gas_of(gas), of)
    return 100 * share


def group_of_percent(co2: float, oxygen: float) -> str:
    try:
        return gas_groups.iso_14175_group(co2 / 100, oxygen / 100)
    except UnknownEntryError:
        return "none"


# Units


def converted(text: str, measure: str, system: System) -> float:
    return units.convert(units.read(text, measure), measure, system)


_US = {
    "length": INCH,
    "wire_feed": INCH / 60,
    "gas_flow": FOOT**3 / 3600,
    "volts": 1.0,
}


def typed(text: str, measure: str) -> float:
    return units.read(text, measure) / _US[measure]


# Technique


def tip_to_work_in(wire: str, size: str, transfer: Transfer) -> Window:
    low, set_, high = tip_to_work(wires.wire_of(wire, size), transfer)
    assert low <= set_ <= high
    return low / INCH, high / INCH


def least_shade(current_a: float) -> int:
    return shade_of(current_a)


def work_angle_deg(joint: JointKind) -> Window:
    low, _, high = torch(joint, "horizontal", "short").work_angle
    return low, high


def travel_angle_deg(orientation: Orientation, transfer: Transfer) -> Window:
    low, _, high = torch("tee", orientation, transfer).travel_angle
    return low, high


def way(orientation: Orientation, transfer: Transfer) -> str:
    return torch("tee", orientation, transfer).way


def tip_position(transfer: Transfer) -> str:
    return place_of_tip(transfer)
