"""Notes on the wire: its volts, what is not in print, its use, what it lays."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.phrases import Amount, Parameter, Phrase, say
from beadwright.process.arc import arc_length_m, open_arc_volts
from beadwright.process.burnoff import constants_of
from beadwright.process.comparison import at_equal_current, more_laid, usual_way
from beadwright.process.gases import GASES, Gas
from beadwright.process.positions import Position
from beadwright.process.transfer import Transfer, spray_refused
from beadwright.process.wires import Wire, wire_of
from beadwright.results import Note

SHEET_VOLTS = (28.0, 30.0)
SHOP_VOLTS = 23.6
"""What a published sheet prints for 0.045 in metal-cored wire at 250 in/min in 75-95 % argon, and
what shops run at 290 in/min in 90/10 [V]. Source: data sheet for class E70C-6M; common practice.
"""

LEAD_DROP_V = (1.0, 3.0)
"""Drop of cable and clamp that a meter on the machine also reads [V]. Common practice: 250 A
through 4 to 12 mΩ."""


_HARDLY_V = 0.05
"""A gas that stands less than this from 90/10 is not told apart [V]."""


def volts_remark(wire: Wire, gas: Gas) -> Phrase | None:
    """Return why sheets and shops differ on the volts of metal-cored wire; None for other wire.

    Source: gas by ``arc.open_arc_volts``, arc length by ``arc.arc_length_m``, drop by
    ``LEAD_DROP_V``; the printed and practiced volts are both inside ``arc.open_window``.

    Args:
        wire: The wire [-].
        gas: The gas in use [-].
    """
    if not wire.traits.wide_volts:
        return None
    sheet, shop = GASES["75/25"], GASES["90/10"]
    by_gas = open_arc_volts(200.0, sheet, "0.045in") - open_arc_volts(200.0, shop, "0.045in")
    middle = sum(SHEET_VOLTS) / 2
    longer = (arc_length_m(middle) - arc_length_m(SHOP_VOLTS)) * 1000
    low, high = LEAD_DROP_V
    own = open_arc_volts(200.0, gas, "0.045in") - open_arc_volts(200.0, shop, "0.045in")
    truths: dict[str, Parameter] = {
        "sheet_low": Amount(SHEET_VOLTS[0], "volts"),
        "sheet_high": Amount(SHEET_VOLTS[1], "volts"),
        "shop": Amount(SHOP_VOLTS, "volts"),
        "by_gas": Amount(by_gas, "volts"),
        "lead_low": Amount(low, "volts"),
        "lead_high": Amount(high, "volts"),
        "longer_mm": longer,
    }
    if abs(own) < _HARDLY_V:
        return say("process.two-truths", **truths)
    return say("process.two-truths-yours", **truths, gas=gas.name, yours=Amount(own, "volts"))


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
    volts = volts_remark(wire, gas)
    if volts is not None:
        yield Note("note", volts, "e70c-sheet", "volts")
    if current_a is not None and transfer == "spray":
        lays = lays_remark(wire, gas, current_a)
        if lays is not None:
            yield Note("note", lays, "power-balance", "wire")
    missing = print_remark(wire)
    if missing is not None:
        yield Note("note", missing, wire.traits.mass_source, "dia")
