"""Notes on the wire: its volts, what is not in print, its use, what it lays."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.phrases import Amount, Phrase, say
from beadwright.process.burnoff import constants_of
from beadwright.process.comparison import at_equal_current, more_laid, usual_way
from beadwright.process.gases import Gas
from beadwright.process.positions import Position
from beadwright.process.transfer import Transfer, spray_refused
from beadwright.process.wires import Wire, wire_of
from beadwright.results import Note

SHEET_VOLTS = (28.0, 30.0)
"""What a published sheet prints for 0.045 in metal-cored wire at 250 in/min in 75-95 % argon [V].

Source: data sheet for class E70C-6M.
"""


def volts_remark(wire: Wire) -> Phrase | None:
    """Return why sheets and shops differ on the volts of metal-cored wire; None for other wire.

    Source: ``SHEET_VOLTS``; shops run it a volt or two under solid wire (common practice). Both are
    inside ``arc.open_window``.

    Args:
        wire: The wire [-].
    """
    if not wire.traits.wide_volts:
        return None
    return say(
        "process.sheet-and-shop-volts",
        sheet_low=Amount(SHEET_VOLTS[0], "volts"),
        sheet_high=Amount(SHEET_VOLTS[1], "volts"),
    )


def print_remark(wire: Wire) -> Phrase | None:
    """Return what is not in print about a wire of this size; None if its points are found.

    Args:
        wire: The wire [-].
    """
    if not wire.traits.cored:
        if constants_of(wire).points:
            return None
        return say("process.no-points-solid")
    if wire.published:
        return None
    if wire.traits.slag:
        return say("process.remembered-data")
    return say("process.no-points-carried-over")


def lays_remark(wire: Wire, gas: Gas, current_a: float) -> Phrase | None:
    """Return what metal-cored wire lays against solid of its size at one current; else None.

    None too where solid wire does not spray in this gas.

    Source: ``comparison.at_equal_current``; "about 30 % more" is common practice.

    Args:
        wire: The wire [-].
        gas: The gas [-].
        current_a: Mean current, above zero [A].
    """
    solid = wire_of("ER70S-6", wire.size)
    if not wire.traits.wide_volts or spray_refused(solid, gas):
        return None
    found = at_equal_current(usual_way(solid, gas), usual_way(wire, gas), current_a)
    return say("process.lays-against-solid", laid=more_laid(found))


def wire_remarks(
    wire: Wire, gas: Gas, position: Position, transfer: Transfer, current_a: float | None
) -> Iterator[Note]:
    """Yield the notes on a wire as it is run.

    Args:
        wire: The wire [-].
        gas: The gas [-].
        position: The position [-].
        transfer: The mode planned [-].
        current_a: Mean current, or None without a set point [A].
    """
    if wire.traits.wants_pulse and not position.sprays and transfer != "pulse":
        yield Note(
            "caution",
            say("process.cored-wants-pulse"),
            "practice",
            "position",
        )
    if wire.traits.slag:
        yield Note("caution", say("process.chip-slag"), "practice", "wire")
    if wire.traits.wide_volts and gas.co2 == 0:
        yield Note("caution", say("process.cored-in-oxygen", gas=gas.name), "aws-wires", "gas")
    volts = volts_remark(wire)
    if volts is not None and transfer in ("spray", "globular"):
        yield Note("note", volts, "e70c-sheet", "volts")
    if current_a is not None and transfer == "spray":
        lays = lays_remark(wire, gas, current_a)
        if lays is not None:
            yield Note("note", lays, "power-balance", "wire")
    missing = print_remark(wire)
    if missing is not None:
        yield Note("note", missing, wire.traits.mass_source, "dia")
