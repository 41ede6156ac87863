"""What the welder is told about the gas: whether it suits, its dangers, its flow."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.phrases import Amount, Phrase, say
from beadwright.process.gas_flow import GasFlow, lightness
from beadwright.process.gases import Gas
from beadwright.results import Note

MUCH_OXYGEN = 0.05
"""Oxygen above which a wire loses more manganese and silicon than it can spare [volume share].

Common practice: mixes for carbon steel hold 1 to 5 %.
"""
MUCH_HELIUM = 0.50


def gas_notes(gas: Gas, flow: GasFlow | None) -> Iterator[Note]:
    """Yield the notes on a gas.

    Args:
        gas: The gas [-].
        flow: What to run, or None without a set point [-].
    """
    yield from _suits(gas)
    if flow is not None and lightness(gas) > 1.05:
        shows = Amount(flow.argon_meter, "gas_flow")
        runs = Amount(flow.usual, "gas_flow")
        yield Note(
            "note",
            say("process.argon-flowmeter", shows=shows, runs=runs),
            "gas-density",
            "nozzle",
        )
    yield Note("caution", _pushes_air_out(gas), "practice")
    yield Note("note", say("process.wind"), "aws-d1.1-wind")


def _pushes_air_out(gas: Gas) -> Phrase:
    if gas.helium > 0:
        return say("process.gas-pushes-air-out")
    if gas.argon > 0:
        return say("process.argon-pushes-air-out")
    return say("process.co2-pushes-air-out")


def _suits(gas: Gas) -> Iterator[Note]:
    if gas.iso_group.startswith("I"):
        yield Note(
            "caution",
            say("process.inert-gas", gas=gas.name),
            "gas-argon-steel",
            "gas",
        )
    if gas.oxygen > MUCH_OXYGEN:
        yield Note(
            "caution",
            say("process.much-oxygen", oxygen=Amount(gas.oxygen, "share")),
            "gas-handbook",
            "gas",
        )
    if gas.helium > MUCH_HELIUM:
        yield Note(
            "caution",
            say("process.much-helium"),
            "gas-choice-textbook",
            "gas",
        )
    if gas.helium > 0:
        yield Note(
            "caution",
            say("process.helium-volts"),
            "practice",
            "volts",
        )
