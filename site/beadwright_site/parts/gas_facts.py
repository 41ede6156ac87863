"""What a gas does, in lines for the page, each with where it comes from."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from beadwright.measures import System
from beadwright.process.gas_effects import What, effects_of
from beadwright.process.gases import Gas
from beadwright.sources import SOURCES
from beadwright.sources.source import Source
from beadwright.words.wording import worded

NAMES: Mapping[What, str] = {
    "transfer": "Transfer",
    "volts": "Volts",
    "spatter": "Spatter",
    "laid": "Deposition",
    "penetration": "Penetration",
    "wetting": "Bead",
    "fume": "Fume",
    "flow": "Flow",
}
"""What an effect changes, in the page's order."""


@dataclass(frozen=True, slots=True)
class GasLine:
    """One line: what changes, how, and the sources it rests on."""

    name: str
    text: str
    sources: tuple[Source, ...]


def gas_lines(gas: Gas, system: System) -> tuple[GasLine, ...]:
    """Return what a gas does, a line for each thing it changes.

    Args:
        gas: The gas.
        system: Whose units.
    """
    effects = tuple(effects_of(gas))
    lines: list[GasLine] = []
    for what, name in NAMES.items():
        of = [effect for effect in effects if effect.what == what]
        if of:
            keys = dict.fromkeys(effect.source for effect in of)
            text = " ".join(worded(effect.phrase, system) for effect in of)
            lines.append(GasLine(name, text, tuple(SOURCES[key] for key in keys)))
    return tuple(lines)
