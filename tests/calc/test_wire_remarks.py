"""What is said of the wire: when it is due, in what words, with numbers of the model's own."""

import pytest

from beadwright.api import answer
from beadwright.process.gases import gas_of
from beadwright.process.positions import position_of
from beadwright.process.transfer import Transfer
from beadwright.process.wire_remarks import (
    lays_remark,
    print_remark,
    volts_remark,
    wire_remarks,
)
from beadwright.process.wires import WIRE_TYPES, Wire, wire_of
from beadwright.results import Note
from tests.told import in_words, told

CORED = wire_of("E70C-6M", "0.045in")
SOLID = wire_of("ER70S-6", "0.045in")
FLUX = wire_of("E71T-1C", "0.045in")


def notes(
    name: str, size: str, gas: str, position: str, transfer: Transfer, amps: float | None = 220.0
) -> list[Note]:
    place = position_of(position)
    return list(wire_remarks(wire_of(name, size), gas_of(gas), place, transfer, amps))


def test_sheet_and_shop_volts() -> None:
    """28-30 V at 250 in/min on the sheet; a volt or two under solid wire in shops."""
    said = in_words(volts_remark(CORED))
    for words in ("28-30 V at 250 in/min", "a volt or two under solid", "The window holds both."):
        assert words in said


@pytest.mark.parametrize("wire", [SOLID, FLUX])
def test_other_wire_has_one_truth(wire: Wire) -> None:
    assert volts_remark(wire) is None


def test_volts_of_short_circuit_and_pulse_are_not_the_sheet_s_spray() -> None:
    for mode in ("short", "pulse"):
        fields = [note.field for note in notes("E70C-6M", "0.045in", "90/10", "2F", mode)]
        assert "volts" not in fields


def test_metal_cored_wire_in_argon_and_oxygen_is_warned_of() -> None:
    said = notes("E70C-6M", "0.045in", "98/2 O2", "2F", "spray")
    assert (said[0].level, said[0].field) == ("caution", "gas")
    assert "98/2 O2" in told(said[0])
    assert not any(note.field == "gas" for note in notes("ER70S-6", "0.045in", "98/2 O2", "2F",
                                                         "spray"))  # fmt: skip


@pytest.mark.parametrize("name", WIRE_TYPES)
def test_what_is_not_in_print_is_said(name: str) -> None:
    for size in WIRE_TYPES[name].sizes:
        wire = wire_of(name, size)
        said = in_words(print_remark(wire))
        printed = (wire.kind == "solid" and size != "0.040in") or (
            wire.kind == "metal-cored" and size in ("0.045in", "1/16in")
        )
        assert bool(said) is not printed
        if wire.kind == "flux-cored":
            assert "not checked against the book" in said
        elif said:
            kind = "solid" if wire.kind == "solid" else "this"
            assert said.startswith(f"No printed points for {kind} wire in this size")


def test_solid_wire_without_points_says_so_on_the_page() -> None:
    found = answer("dial-in", "dia=1mm")
    (note,) = [note for note in found.notes if "No printed points" in told(note)]
    assert (note.field, note.source) == ("dia", "power-balance")
    assert "halfway between the next sizes" in told(note)
    for size in ("0.035in", "0.045in"):
        beside = answer("dial-in", f"dia={size}")
        assert not any("No printed points" in told(note) for note in beside.notes)


def test_what_it_lays_against_solid_is_said_with_its_band() -> None:
    """At 250 A, each at its tip-to-work and volts, by hand, φ I + r I² L / A.

    solid 4.192 × 250 + 3.454e-7 × 250² × 14.89e-3 / 1.0261e-6 = 1361 W, 97 % of it laid;
    cored 3.351 × 250 + 5.571e-7 × 250² × 18.36e-3 / 0.7833e-6 = 1654 W, 91 %: 1.14 to one.
    """
    said = in_words(lays_remark(CORED, gas_of("90/10"), 250))
    assert "At the same amps this wire lays 14% more" in said
    assert "by the band" in said
    assert "Shops say about 30% more" in said
    assert lays_remark(SOLID, gas_of("90/10"), 250) is None
    assert lays_remark(CORED, gas_of("75/25"), 250) is None  # solid does not spray there


def test_notes_of_metal_cored_wire() -> None:
    flat = notes("E70C-6M", "0.045in", "90/10", "2F", "spray")
    assert [(note.level, note.field) for note in flat] == [("note", "volts"), ("note", "wire")]
    up = notes("E70C-6M", "0.045in", "90/10", "3F-up", "short")
    assert (up[0].level, up[0].field) == ("caution", "position")
    assert "needs pulse; short circuit on light work only" in told(up[0])
    assert not any(note.level == "caution" for note in notes(
        "E70C-6M", "0.045in", "90/10", "3F-up", "pulse"))  # fmt: skip
    assert notes("E70C-6M", "0.045in", "90/10", "2F", "spray", None)[-1].field == "volts"
    assert notes("E70C-6M", "0.052in", "90/10", "2F", "spray")[-1].field == "dia"


def test_notes_of_flux_cored_wire() -> None:
    said = notes("E71T-1M", "0.045in", "75/25", "3F-up", "spray")
    assert [note.field for note in said] == ["wire", "dia"]
    assert said[0].level == "caution"
    assert told(said[0]).startswith("Slag: chip and brush every pass")


def test_solid_wire_needs_no_note() -> None:
    assert notes("ER70S-6", "0.023in", "75/25", "3F-down", "short", 60) == []
