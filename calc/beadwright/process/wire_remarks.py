"""Notes on the wire: its volts, what is not in print, its use, what it lays."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.process.arc import arc_length_m, open_arc_volts
from beadwright.process.burnoff import constants_of
from beadwright.process.comparison import at_equal_current, more_laid, usual_way
from beadwright.process.gases import GASES, Gas
from beadwright.process.positions import Position
from beadwright.process.transfer import Transfer, spray_refused
from beadwright.process.wires import WIRE_TYPES, Wire, wire_of
from beadwright.results import Note

SHEET_VOLTS = (28.0, 30.0)
SHOP_VOLTS = 23.6
"""What a published sheet prints for 0.045 in metal-cored wire at 250 in/min in 75-95 % argon, and
what shops run at 290 in/min in 90/10 [V]. Source: data sheet for class E70C-6M; common practice.
"""

LEAD_DROP_V = (1.0, 3.0)
"""Drop of cable and clamp that a meter on the machine also reads [V]. Common practice: 250 A
through 4 to 12 mΩ."""


def volts_remark(wire: Wire, gas: Gas) -> str:
    """Return why sheets and shops differ on the volts of metal-cored wire; empty for other wire.

    Source: gas by ``arc.open_arc_volts``, arc length by ``arc.arc_length_m``, drop by
    ``LEAD_DROP_V``; the printed and practiced volts are both inside ``arc.open_window``.

    Args:
        wire: The wire [-].
        gas: The gas in use [-].
    """
    if not wire.traits.wide_volts:
        return ""
    sheet, shop = GASES["75/25"], GASES["90/10"]
    by_gas = open_arc_volts(200.0, sheet, "0.045in") - open_arc_volts(200.0, shop, "0.045in")
    middle = sum(SHEET_VOLTS) / 2
    longer = (arc_length_m(middle) - arc_length_m(SHOP_VOLTS)) * 1000
    low, high = LEAD_DROP_V
    own = open_arc_volts(200.0, gas, "0.045in") - open_arc_volts(200.0, shop, "0.045in")
    yours = "" if abs(own) < 0.05 else f" {gas.name} stands {own:+.1f} V from 90/10."
    return (
        "Two truths about volts: sheets for 0.045 in print "
        f"{SHEET_VOLTS[0]:g}-{SHEET_VOLTS[1]:g} V at 250 in/min in 75-95% argon, shops run it "
        f"clean near {SHOP_VOLTS:g} V at 290 in 90/10. "
        f"Leaner argon is up to {by_gas:.1f} V of it, cable and clamp {low:g} to {high:g} V if the "
        f"meter is on the machine, the rest an arc about {longer:.0f} mm longer.{yours} "
        "The window holds both."
    )


def print_remark(wire: Wire) -> str:
    """Return what is not in print about a wire of this size; empty if its points are found.

    Args:
        wire: The wire [-].
    """
    if not wire.traits.cored:
        if constants_of(wire).points:
            return ""
        return (
            "No printed points for solid wire in this size: burn-off and spray currents are taken "
            "half-way between its neighbours, and the band is wider. Read the machine's ammeter."
        )
    if wire.published:
        return ""
    if wire.traits.slag:
        return (
            "Mass and burn-off of flux-cored wire stand on remembered data, not on a sheet in "
            "hand: hold the amps against your meter."
        )
    return (
        "No printed points for this wire in this size: mass and burn-off are carried over from "
        "its neighbour, and the band is wider."
    )


def lays_remark(wire: Wire, gas: Gas, current_a: float) -> str:
    """Return what metal-cored wire lays against solid of its size at one current; else empty.

    Empty too where solid wire does not spray in this gas.

    Source: ``comparison.at_equal_current``; "about 30 % more" is common practice.

    Args:
        wire: The wire [-].
        gas: The gas [-].
        current_a: Mean current, above zero [A].
    """
    solid = wire_of("ER70S-6", wire.size)
    if not wire.traits.wide_volts or spray_refused(solid, gas):
        return ""
    found = at_equal_current(usual_way(solid, gas), usual_way(wire, gas), current_a)
    return (
        f"At the same amps this wire lays {more_laid(found)} than solid. Shops say 30% more: that "
        "counts its lower volts and higher feed too."
    )


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
            "Metal-cored wire out of position wants pulse; short circuit on light work only.",
            "practice",
            "position",
        )
    if wire.traits.slag:
        text = "Slag: chip and brush every pass before the next, or it is in the weld."
        yield Note("caution", text, "practice", "wire")
    volts = volts_remark(wire, gas)
    if volts:
        yield Note("note", volts, "e70c-sheet", "volts")
    if current_a is not None and transfer == "spray":
        lays = lays_remark(wire, gas, current_a)
        if lays:
            yield Note("note", lays, "power-balance", "wire")
    missing = print_remark(wire)
    if missing:
        yield Note("note", missing, wire.traits.mass_source, "dia")


def wire_facts(wire: Wire) -> tuple[tuple[str, str], ...]:
    """Return what stands on the wire's label and what feeds it: name and words, in order.

    Source: ``wire_types.WIRE_TYPES``.

    Args:
        wire: The wire [-].
    """
    made = WIRE_TYPES[wire.type.name]
    rows = [
        ("Class", f"{made.name}, {made.spec}"),
        ("ISO", made.iso),
        ("A5.36", made.alias),
        ("Weld metal", f"{made.tensile_pa / 1e6:.0f} MPa at least"),
        ("Gas", made.gases.label),
        ("Polarity", made.polarity),
        ("Drive rolls", made.drive_roll),
    ]
    return tuple((name, words) for name, words in rows if words)
