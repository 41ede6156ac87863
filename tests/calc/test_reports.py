"""One encoder for all reports: units, words, rounding, what stands beside what."""

import pytest

from beadwright.phrases import say
from beadwright.reports import Joined, Number, Shown, Tree, encoded, figures, rounded, same, shown
from beadwright.results import Note, Quantity

INCH_M = 0.0254


def test_a_value_is_given_in_the_unit_shown() -> None:
    assert encoded(Shown(INCH_M / 4, "leg"), "us") == {"value": 0.25, "unit": "in"}
    assert encoded(Shown(INCH_M / 4, "leg"), "si") == {"value": 6.35, "unit": "mm"}
    assert encoded(Shown(None, "leg"), "si") == {"value": None, "unit": "mm"}
    assert encoded(Shown(373.15, "temperature"), "us") == {"value": 212.0, "unit": "°F"}


def test_a_number_may_stand_without_its_unit() -> None:
    assert encoded(Number(0.1, "leg"), "us") == 3.937007874  # ten figures of 3.93700787401…
    assert encoded(Number(0.1, "leg", 2), "us") == 3.94
    assert encoded(Number(373.15, "temperature", 1), "si") == 100.0


def test_figures_end_where_a_floats_noise_begins() -> None:
    assert rounded(0.1 + 0.2) == 0.3
    assert rounded(123456.789, 3) == 123000.0
    assert figures(paid=1 / 3, never=None) == {"paid": 0.3333333333, "never": None}


def test_a_quantity_has_its_room_and_who_set_it_only_if_it_is_a_window() -> None:
    band = Quantity("Heat", "heat_input", 1e6, 0.9e6, 1.1e6, "band", ("asme-qw-409",))
    assert encoded(band, "si") == {
        "value": 1.0, "low": 0.9, "high": 1.1, "unit": "kJ/mm", "meaning": "band",
        "sources": ["asme-qw-409"],
    }  # fmt: skip
    window = encoded(Quantity("Volts", "volts", 25.0, 24.0, 26.0, "window"), "us")
    assert (window["inside"], window["by_hand"], window["low_by"]) == (True, False, "")


def test_words_come_with_the_report() -> None:
    phrase = say("machine.gives-current")
    text = "The machine gives the current."
    assert encoded(phrase, "us") == text
    assert encoded(Note("note", phrase, field="x"), "us") == {
        "level": "note", "text": text, "source": "", "field": "x",
    }  # fmt: skip
    assert encoded(Joined((phrase, phrase)), "us") == f"{text}; {text}"
    assert encoded(Joined(()), "us") == ""


def test_keys_under_two_stars_stand_beside_the_others() -> None:
    tree: Tree = {"key": "a", "**": Shown(60.0, "time"), "unit": "still last", "more": ((1, "b"),)}
    assert encoded(tree, "us") == {
        "key": "a",
        "value": 1.0,
        "unit": "still last",
        "more": [[1, "b"]],
    }
    assert list(encoded({"z": 1, "a": map(str, (1, 2))}, "us").items()) == [
        ("z", 1),
        ("a", ["1", "2"]),
    ]


def test_short_ways_to_write_a_report() -> None:
    assert shown("leg", near=0.1, far=None) == {
        "near": Shown(0.1, "leg"),
        "far": Shown(None, "leg"),
    }
    assert same(Shown(2.0, "leg"), "measure", "value") == {"measure": "leg", "value": 2.0}
    with pytest.raises(AttributeError):
        same(Shown(2.0, "leg"), "color")


def test_what_a_report_cannot_hold_is_refused() -> None:
    with pytest.raises(TypeError, match="complex is nothing a report can hold"):
        encoded({"answer": 1j}, "us")
