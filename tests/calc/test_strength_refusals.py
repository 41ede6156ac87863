"""What the Strength page says beside its numbers, and what it refuses."""

from typing import Any

import pytest

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.strength import intermittent, resistance_aisc, resistance_en
from beadwright.strength.steel_strength import strength_of
from tests.calc.strength_asked import ask
from tests.told import told


def test_gap_edge_and_pass_are_told() -> None:
    found = ask("leg=1/2in&gap=1/8in&plate=1in&position=4F&py=1kip")
    assert found.legs.to_weld == pytest.approx(5 / 8 * 0.0254)
    assert found.legs.one_pass == pytest.approx(5 / 16 * 0.0254)
    texts = " ".join(told(note) for note in found.notes)
    assert "weld 5/8 in" in texts
    assert "more than one" in texts
    lap = ask("joint=lap&plate=1/4in&plate2=1/4in&weld_sides=1&line_load=3kip/in&steel=A572-50")
    assert lap.legs.most == pytest.approx(3 / 16 * 0.0254)
    assert any(note.level == "stop" and "conflict" in told(note) for note in lap.notes)


@pytest.mark.parametrize(
    "query", ["", "leg=1/4in&py=2kip", "design_code=en", "analysis=ic&px=3kip"]
)
def test_who_rules_is_always_said(query: str) -> None:
    texts = [told(note) for note in ask(query).notes]
    assert any("licensed people" in text for text in texts)
    assert any("Fatigue" in text for text in texts)
    assert any("without papers" in text for text in texts)


def test_an_invented_load_says_so_until_one_is_given() -> None:
    assert any("made up" in told(note) for note in ask("leg=1/4in").notes)
    assert any("made up" in told(note) for note in ask("analysis=ic").notes)
    assert not any("made up" in told(note) for note in ask("py=-3kip").notes)


@pytest.mark.parametrize(
    ("query", "keys"),
    [
        ("py=0", ("py",)),
        ("py=1kip&line_load=1kip/in", ("line_load", "py")),
        ("line_load=1kip/in&load_z=2in", ("line_load", "load_z")),
        ("line_load=1kip/in&mz=1kip-in", ("line_load", "mz")),
        ("mz=1kip-in&load_x=4in", ("load_x",)),
        ("analysis=ic&py=1kip&load_z=2in&weld_sides=1", ("analysis", "load_z")),
        ("analysis=ic&pz=1kip&group=rectangle", ("analysis", "pz")),
        ("analysis=ic&py=1kip&load_z=2in&load_x=1in", ("analysis", "load_z")),
        ("analysis=ic&py=1kip&load_z=2in&group=flats", ("analysis", "load_z")),
        ("analysis=ic&px=1kip&load_z=2in", ("analysis", "load_z")),
        ("analysis=ic&line_load=1kip/in", ("analysis", "line_load")),
        ("analysis=ic&py=1kip&design_code=en", ("analysis", "design_code")),
        ("design_code=en&steel=A36", ("steel", "design_code")),
        ("steel=A500-B&plate=1-1/2in&py=1kip", ("plate", "steel")),
        ("steel=unknown", ("steel",)),
        ("joint=lap&leg=3/8in&plate2=3/8in&py=1kip", ("leg", "plate2")),
        ("weld_length=8in&part_length=6in&py=1kip", ("weld_length", "part_length")),
        ("group=c&group_height=8in&part_length=6in&py=1kip", ("group_height", "part_length")),
        ("group=polyline:0,0 9,0&part_length=6in&py=1kip", ("group", "part_length")),
        ("group=line&my=3kip-in", ("group",)),
        ("group=line&group_height=1in&design_code=en&py=1kip&leg=1/4in", ("leg", "group_height")),
        ("group=knot", ("group",)),
        ("group=polyline:0,0", ("group",)),
        ("group=polyline:0,0 0,0", ("group",)),
        ("group=polyline:0,0 1", ("group",)),
        ("group=polyline:0,0 1e9,1", ("group",)),
        ("group=polyline:" + "0,0 1,1 " * 60, ("group",)),
        ("filler_strength=10ksi", ("filler_strength",)),
        ("segment=1in", ("segment",)),
        ("segment=2in&leg=1in&plate=2in&line_load=1kip/in", ("segment",)),
        ("py=lots", ("py",)),
        ("py=5kg", ("py",)),
        ("weld_sides=3", ("weld_sides",)),
    ],
)
def test_what_cannot_be_is_refused_beside_its_entries(query: str, keys: tuple[str, ...]) -> None:
    with pytest.raises(FieldErrors) as refused:
        ask(query)
    assert set(refused.value.messages) == set(keys)
    assert all(text for texts in refused.value.messages.values() for text in texts)


@pytest.mark.parametrize(
    ("work", "said"),
    [
        (lambda: resistance_aisc.direction_factor(120.0), "angle_deg"),
        (lambda: resistance_aisc.nominal_strength(0.0, 1.0), "throat_m"),
        (lambda: resistance_aisc.concentric_strength(-1.0, 0.0), "zero or more"),
        (lambda: resistance_aisc.filler_strength("copper"), "copper"),
        (lambda: resistance_en.effective_length(0.03, 0.005), "30 mm"),
        (lambda: resistance_en.long_weld_factor(10.0, 0.003), "900"),
        (lambda: intermittent.pitch_for(1.0, 2.0, 0.0), "counted_m"),
        (lambda: intermittent.pitch_for(3.0, 2.0, 0.05), "all along"),
        (lambda: strength_of("A36").at(0.0), "thickness_m"),
        (lambda: strength_of("A500-C").at(0.05), "not held"),
    ],
)
def test_methods_refuse_what_they_are_not_good_for(work: Any, said: str) -> None:
    with pytest.raises(OutOfRangeError, match=said):
        work()
