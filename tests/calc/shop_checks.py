"""Adapters between printed tables of cost, supplies and circuit and the core.

Factors are typed here, not taken from ``beadwright.units``, so that a wrong factor there shows.
Standard library and beadwright only; see ``reference_rows``.
"""

from __future__ import annotations

from beadwright.machine import conductors, supply_checks
from beadwright.money import break_even, cost, cost_page
from beadwright.money.way import Rates, Way, off_arc
from beadwright.power import duty_cycle, primary
from beadwright.process import compressibility, wires
from beadwright.process.gases import Gas, gas_of
from beadwright.supply import cylinder_sizes, cylinders, spools

FOOT = 0.3048
POUND = 0.45359237
PSI = 6894.757293168
ARGON = Gas("argon", 1.0, 0.0, 0.0, "I1")


def pound_of_weld(
    laid_lb_h: float,
    factor: float,
    rate: float,
    wire_lb: float,
    efficiency: float,
    gas_ft3_h: float = 0.0,
    gas_ft3: float = 0.0,
) -> tuple[Way, Rates]:
    """Return a handbook's way to lay one pound: no spatter, rework, power, tips or waste."""
    arc = 3600 / laid_lb_h
    way = Way(
        name="pound",
        metal_kg=POUND,
        length_m=1.0,
        melted_kg_s=laid_lb_h * POUND / 3600 / efficiency,
        efficiency=efficiency,
        waste=0.0,
        wire_kg=wire_lb / POUND,
        gas_m3=gas_ft3 / FOOT**3,
        gas_flow_m3_s=gas_ft3_h * FOOT**3 / 3600,
        gas_extra_s=0.0,
        starts=0.0,
        arc_w=1.0,
        tips_s=0.0,
        spool_kg=15.0,
        spool_change_s=0.0,
        fit_up_s=0.0,
        reposition_s=0.0,
        clean_s=0.0,
        spatter_s=0.0,
        other_s=off_arc(arc, factor),
        rework=0.0,
        grind_s=0.0,
        yearly=0.0,
        once=0.0,
    )
    return way, Rates(rate / 3600, 0.0, 0.0, 1.0, 0.0)


def cost_lb(
    of: str,
    laid_lb_h: float,
    factor: float,
    rate: float,
    wire_lb: float,
    efficiency: float,
    gas_ft3_h: float = 0.0,
    gas_ft3: float = 0.0,
) -> float:
    """Return the cost of a pound of weld metal, or one piece of it."""
    way, rates = pound_of_weld(laid_lb_h, factor, rate, wire_lb, efficiency, gas_ft3_h, gas_ft3)
    found = cost.cost_of(way, rates)
    pieces = {
        "labour": found.piece("labour_on") + found.piece("labour_off"),
        "wire": found.piece("wire"),
        "gas": found.piece("gas"),
        "total": found.kilogram * POUND,
    }
    return pieces[of]


def pounds_to_pay(once: float, saving_lb: float) -> float:
    found = break_even.parts_to_pay(once, saving_lb)
    assert found is not None
    return found


def fillet_cost_ft(metal_lb_ft: float, cost_of_lb: float) -> float:
    way, rates = pound_of_weld(10.0, 1.0, cost_of_lb * 10.0, 0.0, 1.0)
    found = cost.cost_of(way, rates)
    return found.kilogram * POUND * metal_lb_ft


def demo_share_percent(of: str) -> float:
    """Return the share of labor and overhead, or of power, in a part of the demonstration."""
    found = cost_page.cost_answer("leg=5/16in").costs[0]
    keys = {"labour": ("labour_on", "labour_off", "overhead"), "power": ("power",)}[of]
    return 100 * sum(found.piece(key) for key in keys) / found.part


# Gas


def density_kg_m3(gas: str, psia: float, kelvin: float) -> float:
    found = ARGON if gas == "argon" else gas_of(gas)
    z = compressibility.compressibility(found, psia * PSI, kelvin)
    moles = psia * PSI / (z * 8.314462618 * kelvin)
    return moles * compressibility.molar_mass(found)


def normal_density_kg_m3(gas: str) -> float:
    return compressibility.normal_density(ARGON if gas == "argon" else gas_of(gas))


def content_ft3(psia: float, water_ft3: float) -> float:
    found = cylinders.content(ARGON, psia * PSI - 101_325, water_ft3 * FOOT**3)
    return found / FOOT**3


def co2_ft3(pounds: float) -> float:
    return cylinders.co2_gas(pounds * POUND) / FOOT**3


def cylinder_ft3(size: str, gas: str) -> float:
    found = cylinders.full_content(cylinder_sizes.cylinder_of(size), gas_of(gas))
    assert found is not None
    return found / FOOT**3


def cylinder_water_l(size: str) -> float:
    found = cylinder_sizes.cylinder_of(size)
    assert found.filled_pa == 200e5
    assert found.water_m3 is not None
    return found.water_m3 * 1000


def bottle_water_l(size: str) -> float:
    found = cylinders.water_volume(cylinder_sizes.bottle_of(size))
    assert found is not None
    return found * 1000


def lasts_min(gas_ft3: float, flow_ft3_h: float) -> float:
    return cylinders.lasts(gas_ft3 * FOOT**3, flow_ft3_h * FOOT**3 / 3600) / 60


# Wire


def package_lb(package: str) -> float:
    return spools.PACKAGES_KG[package] / POUND


def package_kg(package: str) -> float:
    return spools.PACKAGES_KG[package]


def wire_ft(size: str, pounds: float) -> float:
    return spools.wire_length(wires.wire_of("ER70S-6", size), pounds * POUND) / FOOT


def weld_ft(pounds: float, efficiency: float, metal_lb_ft: float) -> float:
    return spools.weld_length(pounds * POUND, efficiency, metal_lb_ft * POUND / FOOT) / FOOT


# Circuit


def duty_percent(rated_a: float, duty_percent: float, current_a: float) -> float:
    return 100 * duty_cycle.duty_at(current_a, rated_a, duty_percent / 100)


def current_at_a(rated_a: float, duty_percent: float, at_percent: float) -> float:
    return duty_cycle.current_at(at_percent / 100, rated_a, duty_percent / 100)


def minutes_on(duty_percent: float) -> float:
    return duty_cycle.minutes_on(duty_percent / 100) / 60


def effective_a(primary_a: float, duty_percent: float) -> float:
    return primary.effective_current(primary_a, duty_percent / 100)


def input_w(volts: float, current_a: float, efficiency: float) -> float:
    return primary.apparent_power(volts * current_a, efficiency, 1.0)


def ohm_kft(conductor: str, celsius: float) -> float:
    found = conductors.conductor_of(conductor)
    return conductors.resistance(found, 1000 * FOOT, celsius - 20)


def ohm_km(conductor: str) -> float:
    return conductors.resistance(conductors.conductor_of(conductor), 1000.0)


def circular_mils(gauge: str) -> float:
    diameter = conductors.awg_diameter(conductors.AWG_NUMBERS[gauge])
    return (diameter / 0.0254 * 1000) ** 2


def ohm_circular_mil_ft() -> float:
    mil = 0.0254 / 1000
    return conductors.COPPER_OHM_M * FOOT / (3.141592653589793 / 4 * mil**2)


def resistance_factor(celsius: float) -> float:
    found = conductors.conductor_of("50 mm2")
    return conductors.resistance(found, 1.0) / conductors.resistance(found, 1.0, celsius - 20)


def leads_v(conductor: str, feet: float, current_a: float) -> float:
    found = conductors.conductor_of(conductor)
    return conductors.volts_lost(found, feet * FOOT, current_a, 0.0)


def cord_a(conductor: str) -> float:
    found = conductors.conductor_of(conductor).cord_a
    assert found is not None
    return found


def cord_single_a(conductor: str) -> float:
    found = conductors.cord_amps(conductors.conductor_of(conductor), 1)
    assert found is not None
    return found


def rated_v(current_a: float) -> float:
    return primary.rated_volts(current_a)


def breaker_trips_at(twice_a: float) -> float:
    """Return the minutes within which a breaker of a rating trips at twice its rating."""
    return next(t for a, t in supply_checks.TRIPS_AT_TWICE_S.items() if twice_a <= a) / 60
