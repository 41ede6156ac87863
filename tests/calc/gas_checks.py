"""Adapters between printed tables of shielding gas and the core.

Factors are typed here, not taken from ``beadwright.units``, so that a wrong factor there shows.
Standard library and beadwright only; see ``reference_rows``.
"""

from __future__ import annotations

from beadwright.errors import UnknownEntryError
from beadwright.process import (
    compressibility,
    gas_effects,
    gas_flow,
    gas_groups,
    gas_mix,
    gas_notes,
    gases,
)
from beadwright.process.gases import Gas
from beadwright.process.positions import Orientation
from beadwright.supply import cylinders
from beadwright.words.wording import worded

FT3_H = 0.3048**3 / 3600
PURE = {
    "Ar": Gas("Ar", 1.0, 0.0, 0.0, "I1"),
    "CO2": Gas("CO2", 0.0, 1.0, 0.0, "C1"),
    "O2": Gas("O2", 0.0, 0.0, 1.0, ""),
    "He": Gas("He", 0.0, 0.0, 0.0, "I2", 1.0),
}


def group(co2: float, oxygen: float = 0.0, helium: float = 0.0) -> str:
    """Return the group of percents; ``none`` if there is none."""
    try:
        return gas_groups.iso_14175_group(co2 / 100, oxygen / 100, helium / 100)
    except UnknownEntryError:
        return "none"


def group_of(gas: str) -> str:
    return gases.gas_of(gas).iso_group


def shares(gas: str) -> str:
    """Return the percents as Ar CO2 O2 He."""
    mix = gas_mix.read_mix(gas)
    return f"{mix.argon:g} {mix.co2:g} {mix.oxygen:g} {mix.helium:g}"


def named(gas: str) -> str:
    return gas_mix.say_mix(gas_mix.read_mix(gas))


def refused(gas: str) -> str:
    try:
        gases.gas_of(gas)
    except UnknownEntryError:
        return "yes"
    return "no"


def density(gas: str) -> float:
    found = PURE[gas] if gas in PURE else gases.gas_of(gas)
    return compressibility.normal_density(found)


def lightness(gas: str) -> float:
    return gas_flow.lightness(PURE[gas] if gas in PURE else gases.gas_of(gas))


def bore_mm(nozzle: str) -> float:
    return gas_flow.nozzle_of(nozzle).bore_m * 1000


def nozzle_flow(nozzle: str, which: str) -> float:
    found: float = getattr(gas_flow.nozzle_of(nozzle), which)
    return found / FT3_H


def nozzle_for(amps: float) -> str:
    return gas_flow.usual_nozzle(amps).name


def flow(gas: str, amps: float, orientation: Orientation = "flat") -> tuple[float, float]:
    """Return the window of flow [ft³/h]."""
    found = gas_flow.gas_flow(gases.gas_of(gas), amps, orientation)
    return found.low / FT3_H, found.high / FT3_H


def flow_low(gas: str, amps: float) -> float:
    return flow(gas, amps)[0]


def flow_set(gas: str, amps: float, orientation: Orientation = "flat") -> float:
    return gas_flow.gas_flow(gases.gas_of(gas), amps, orientation).usual / FT3_H


def flow_more(amps: float, orientation: Orientation) -> float:
    """Return what a position asks more than flat [ft³/h]."""
    return flow_set("75/25", amps, orientation) - flow_set("75/25", amps)


def argon_meter(gas: str, amps: float) -> float:
    return gas_flow.gas_flow(gases.gas_of(gas), amps, "flat").argon_meter / FT3_H


def effect(gas: str, what: str, part: str) -> str:
    """Return which way a part of a gas moves something; ``none`` if it does not."""
    found = [
        e.way for e in gas_effects.effects_of(gases.gas_of(gas)) if (e.what, e.part) == (what, part)
    ]
    return " ".join(found) or "none"


def cautioned(gas: str, word: str) -> str:
    """Return whether a caution on a gas holds a word."""
    found = gases.gas_of(gas)
    run = gas_flow.gas_flow(found, 250, "flat")
    notes = gas_notes.gas_notes(found, run)
    return (
        "yes"
        if any(word in worded(n.phrase, "us") for n in notes if n.level == "caution")
        else "no"
    )


def settles_c(co2: float) -> float:
    """Return the temperature under which CO2 may turn liquid [°C]; -273.15 for never."""
    return cylinders.settles_below(gases.gas_of(f"{100 - co2:g}/{co2:g}")) - 273.15


def content_m3(gas: str, gauge_bar: float, water_l: float, celsius: float) -> float:
    found = gases.gas_of(gas)
    return cylinders.content(found, gauge_bar * 1e5, water_l / 1000, celsius + 273.15)


def usual_cylinder(gas: str) -> str:
    return cylinders.usual_cylinder(gases.gas_of(gas)).name
