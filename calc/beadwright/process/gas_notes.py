"""What the welder is told about the gas: whether it suits, what it can do to him, its flow."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright import units
from beadwright.process.gas_flow import GasFlow, lightness
from beadwright.process.gases import Gas
from beadwright.results import Note
from beadwright.units import System

MUCH_OXYGEN = 0.05
"""Oxygen above which a wire loses more manganese and silicon than it can spare [volume share].

Common practice: mixes for carbon steel hold 1 to 5 %.
"""
MUCH_HELIUM = 0.50


def gas_notes(gas: Gas, flow: GasFlow | None, system: System) -> Iterator[Note]:
    """Yield the notes on a gas.

    Args:
        gas: The gas [-].
        flow: What to run, or None without a set point [-].
        system: How to show [-].
    """
    yield from _suits(gas)
    if flow is not None and lightness(gas) > 1.05:
        unit = units.symbol("gas_flow", system)
        shown = units.show(flow.argon_meter, "gas_flow", system)
        real = units.show(flow.usual, "gas_flow", system)
        yield Note(
            "note",
            f"A flowmeter made for argon shows {shown} {unit} when {real} {unit} of this gas runs.",
            "gas-density",
            "nozzle",
        )
    pushed = "Argon and CO2 push out" if gas.argon > 0 else "CO2 pushes out"
    if gas.helium > 0:
        pushed = "Shielding gas pushes out"
    yield Note(
        "caution",
        f"{pushed} the air in tanks, pits and closed rooms: test, ventilate, post a watch.",
        "practice",
    )
    yield Note(
        "note",
        "Wind over 5 mph (8 km/h) takes the gas away: screen it. In a draught run the high end; "
        "more than that drags air in.",
        "aws-d1.1-wind",
    )


def _suits(gas: Gas) -> Iterator[Note]:
    if gas.iso_group.startswith("I"):
        yield Note(
            "caution",
            f"{gas.name} is inert: on carbon steel the arc wanders and undercuts. "
            "Use 2 % O2 or 5 % CO2 at the least.",
            "gas-argon-steel",
            "gas",
        )
    if gas.oxygen > MUCH_OXYGEN:
        yield Note(
            "caution",
            f"{100 * gas.oxygen:g} % O2 burns manganese and silicon out of the wire: "
            "weak, porous metal. 1 to 5 % is usual.",
            "gas-handbook",
            "gas",
        )
    if gas.helium > MUCH_HELIUM:
        yield Note(
            "caution",
            "Mostly helium: mixed for short circuit on stainless. It starts hard on carbon steel "
            "and costs more.",
            "gas-choice-textbook",
            "gas",
        )
    if gas.helium > 0:
        yield Note(
            "caution",
            "What helium adds to the volts is common practice, not print: trim until the arc runs "
            "clean.",
            "practice",
            "volts",
        )
