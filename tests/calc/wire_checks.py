"""Adapters between print and the core for the wires: what each is, where and in what it runs.

Factors are typed here. Standard library and beadwright only; see ``reference_rows``.
"""

from __future__ import annotations

from beadwright.money import demo_prices
from beadwright.process import (
    arc,
    burnoff,
    deposition,
    gases,
    positions,
    transfer,
    wire_ranges,
    wires,
)
from beadwright.process.transfer import Transfer
from beadwright.supply import spools

INCH = 0.0254


def usual_feed_in_min(wire: str, size: str, gas: str, mode: Transfer) -> tuple[float, float]:
    found = wires.wire_of(wire, size)
    low, high = wire_ranges.usual_feed(found, gases.gas_of(gas), mode)
    return low / INCH * 60, high / INCH * 60


def short_feed_m_min(wire: str, size: str, current_a: float) -> float:
    """Return the feed in short circuit, 3/8 in tip-to-work, 2 mm of it arc."""
    found = wires.wire_of(wire, size)
    return burnoff.feed_from_current(found, current_a, 0.375 * INCH - 0.002) * 60


def usual_current_a(wire: str, size: str, gas: str, mode: Transfer) -> tuple[float, float]:
    return wire_ranges.usual_current(wires.wire_of(wire, size), gases.gas_of(gas), mode)


def usual_volts(wire: str, size: str, gas: str, mode: Transfer) -> tuple[float, float] | str:
    found = wire_ranges.usual_volts(wires.wire_of(wire, size), gases.gas_of(gas), mode)
    return "the machine's own" if found is None else found


def usual_positions(wire: str, gas: str, mode: Transfer) -> str:
    found = wires.wire_of(wire, "0.045in")
    return " ".join(wire_ranges.usual_positions(found, gases.gas_of(gas), mode))


def sold_in(wire: str, size: str, package: str) -> str:
    return "yes" if package in spools.packages_sold(wires.wire_of(wire, size)) else "no"


def dearer(ways: str) -> float:
    """Return the second wire's price over the first's, of the demonstration shop."""
    first, second = (demo_prices.DEMO_PRICES[key] for key in ways.split())
    return float(second.removesuffix("/lb")) / float(first.removesuffix("/lb"))


def type_of(wire: str, what: str) -> str:
    return str(getattr(wires.WIRE_TYPES[wire], what))


def made_in(wire: str, size: str) -> str:
    return "yes" if size in wires.WIRE_TYPES[wire].sizes else "no"


def tensile_ksi(wire: str) -> float:
    return wires.WIRE_TYPES[wire].tensile_pa / 6.894757e6


def fill_percent(wire: str) -> float:
    return 100 * wires.WIRE_TYPES[wire].fill_share


def runs_in_gas(wire: str, gas: str) -> str:
    found = wires.wire_of(wire, "0.045in")
    return "no" if transfer.gas_refused(found, gases.gas_of(gas)) else "yes"


def sprays_in_gas(wire: str, gas: str) -> str:
    found = wires.wire_of(wire, "0.045in")
    return "no" if transfer.spray_refused(found, gases.gas_of(gas)) else "yes"


def runs_in_position(wire: str, position: str, mode: Transfer) -> str:
    found = wires.wire_of(wire, "0.045in")
    place = positions.position_of(position)
    return "no" if transfer.position_refused(found, place, mode) else "yes"


def runs(wire: str, gas: str, position: str, mode: Transfer) -> str:
    found, of_gas = wires.wire_of(wire, "0.045in"), gases.gas_of(gas)
    refused = transfer.transfer_refused(found, of_gas, positions.position_of(position), mode)
    return "no" if refused else "yes"


def counts_as_co2_percent(gas: str) -> float:
    return 100 * transfer.oxidizing_share(gases.gas_of(gas))


def transition_of_gas_a(wire: str, size: str, gas: str) -> float:
    return transfer.transition_current(wires.wire_of(wire, size), gases.gas_of(gas))


def open_volts(size: str, gas: str, current_a: float) -> float:
    return arc.open_arc_volts(current_a, gases.gas_of(gas), size)


def short_volts(gas: str, current_a: float) -> float:
    return arc.short_circuit_volts(current_a, gases.gas_of(gas))


def flux_volts(size: str, gas: str, current_a: float) -> float:
    return arc.flux_cored_volts(current_a, gases.gas_of(gas), size)


def typical_efficiency_percent(wire: str, gas: str, mode: Transfer) -> float:
    found = wires.wire_of(wire, "0.045in")
    return 100 * deposition.deposition_efficiency(found, gases.gas_of(gas), mode)[1]
