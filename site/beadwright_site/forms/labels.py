"""What each entry of the pages of money is called beside its field."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from beadwright.money.cost_query import PREFIXES

LABELS: Mapping[str, str] = {
    "name": "Call it",
    "arc_min": "Arc time of a part, timed",
    "laid": "Laid an hour of arc, weighed",
    "efficiency": "Laid over wire used, weighed",
    "gas_flow": "Gas flow set",
    "factor": "Operating factor instead",
    "fit_up": "Fit-up, a part",
    "reposition": "Next weld, each",
    "clean": "Cleaning, each pass",
    "spatter": "Spatter off, a part",
    "other": "Other, a part",
    "spool_change": "A spool change",
    "spool": "Wire on a spool",
    "waste": "Wire never melted",
    "rework": "Parts welded twice",
    "wire_price": "Price of wire",
    "gas_price": "Price of gas",
    "cylinder_price": "Price of a cylinder",
    "cylinder_gas": "Gas in it when full",
    "tip_price": "Price of a tip",
    "tip_life": "A tip lasts, arc hours",
    "yearly": "Paid by the year for it",
    "rolls": "Drive rolls",
    "liner": "Liner and gun parts",
    "gas_change": "Changing the gas",
    "procedure": "Qualifying a procedure",
    "training": "Training and trial plates",
    "stock": "Old and new stock",
    "labour": "Labour",
    "overhead": "Overhead",
    "energy_price": "Electricity",
    "machine_efficiency": "Machine's efficiency",
    "idle": "Idle power",
    "nozzle_price": "Price of a nozzle",
    "nozzle_life": "A nozzle lasts, arc hours",
    "gas_extra": "Gas before and after an arc",
    "grind": "Grinding out, a part",
    "parts": "Parts a year",
    "batch": "Parts in a batch",
    "months": "Months to be back in",
    "welders": "Torches at once",
    "shift": "A shift",
    "shifts": "Shifts a week",
    "weeks": "Weeks a year",
    "swing_rates": "Rates, either way",
    "swing_prices": "Prices",
    "swing_feed": "Laid an hour",
    "swing_minutes": "Minutes off the arc",
    "swing_volume": "Parts a year",
    "swing_once": "Paid once",
    "swing_size": "Welds heavier than drawn",
    "seed": "Seed of the draws",
    "currency": "Sign before money",
    "count": "Parts to weld now",
    "on_hand": "Wire on the machine now",
    "cylinder": "Size of cylinder",
    "spool_gross": "Spool with its wire weighs",
    "spool_empty": "Such a spool empty weighs",
    "spool_outside": "Wound to a diameter of",
    "spool_hub": "Barrel under the wire",
    "spool_width": "Between the flanges",
    "spool_full": "Diameter when full",
    "gauge": "The gauge reads",
    "water": "Water volume stamped on it",
    "gas_temp": "Cylinder's temperature",
    "co2_mass": "CO2 in it, weighed",
    "rated_amps": "Rated amps",
    "machine_amps": "Most amps",
    "machine_volts": "Most volts",
    "duty": "Duty cycle at rated amps",
    "supply": "Supply volts",
    "phase": "Phases",
    "power_factor": "Power factor",
    "breaker": "Breaker",
    "cord": "Cord",
    "cord_length": "Cord's length, one way",
    "generator": "Generator, if any",
    "cable": "Welding leads",
    "cable_length": "Both leads together",
    "amps": "Current instead",
    "arc_share": "Arc on at the busiest",
    "usual_wire": "Usual wire",
    "usual_dia": "Usual size",
    "usual_gas": "Usual gas",
    "units": "Units",
}
"""What each entry is called beside its field."""


def label_of(key: str) -> str:
    """Return what an entry is called where several ways have one of that name."""
    if key[:2] in PREFIXES[1:]:
        return f"{LABELS.get(key[2:], key[2:])} of way {key[0].upper()}"
    return LABELS.get(key, key)


def names_of(keys: Sequence[str]) -> str:
    """Return entries named in a sentence."""
    names = [label_of(key) for key in keys]
    return ", ".join([*names[:1], *(name[0].lower() + name[1:] for name in names[1:])])
