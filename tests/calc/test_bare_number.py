"""A number without a unit: told from all else, and kept at what it was meant in."""

import json
from pathlib import Path

import pytest

from beadwright import units
from beadwright.job.job_entries import FIELDS
from beadwright.pages import PAGES
from beadwright.reading.temperature_field import Temperature
from beadwright.strength.outline_field import Outline
from beadwright.typed_number import is_bare_number, without_currency
from beadwright.units import System

# The page's script is held to the same cases by tests/site/test_bare_number.py.
CASES: dict[str, list[str]] = json.loads(
    Path(__file__).parents[1].joinpath("bare_numbers.json").read_text("utf-8")
)
BARE, NOT_BARE = CASES["bare"], CASES["not_bare"]


@pytest.mark.parametrize(
    ("text", "bare"), [*((t, True) for t in BARE), *((t, False) for t in NOT_BARE)]
)
def test_a_number_alone_is_told_from_all_else(text: str, bare: bool) -> None:
    assert is_bare_number(text) is bare


@pytest.mark.parametrize(
    ("text", "us", "si"),
    [("1.", "1.in", "1.mm"), ("½", "½in", "½mm"), ("1 ½", "1 ½in", "1 ½mm"), (",5", ",5in", ",5mm"),
     ("3/8in", "3/8in", "3/8in"), ("10ga", "10ga", "10ga"), ("1,200", "1,200", "1,200")],
)  # fmt: skip
def test_a_bare_number_is_given_the_unit_it_was_meant_in(text: str, us: str, si: str) -> None:
    assert (FIELDS["plate"].with_unit(text, "us"), FIELDS["plate"].with_unit(text, "si")) == (
        us,
        si,
    )


@pytest.mark.parametrize(
    ("page", "key", "text", "us", "si"),
    [
        ("heat", "preheat", "150", "150F", "150C"),
        ("supplies", "gas_temp", "70", "70F", "70C"),
        ("cost", "wire_price", "$1.85", "$1.85/lb", "$1.85/kg"),
        ("cost", "wire_price", "1.85 €", "1.85 €/lb", "1.85 €/kg"),
        ("cost", "b_wire_price", "2", "2/lb", "2/kg"),
        ("cost", "gas_flow", "35", "35ft3/h", "35L/min"),
        ("cost", "parts", "480", "480", "480"),
        ("cost", "tip_price", "1.60", "1.60", "1.60"),
        ("shop", "phase", "3", "3", "3"),
        ("strength", "group", "line", "line", "line"),
        ("strength", "group", "polyline:0,0 4,½ 1mm,2",
         "polyline:0in,0in 4in,½in 1mm,2in", "polyline:0mm,0mm 4mm,½mm 1mm,2mm"),
    ],
)  # fmt: skip
def test_each_key_has_its_own_unit(page: str, key: str, text: str, us: str, si: str) -> None:
    field = PAGES[page].fields[key]
    assert (field.with_unit(text, "us"), field.with_unit(text, "si")) == (us, si)


def test_degrees_have_the_letter_of_their_scale() -> None:
    for degrees in (PAGES["heat"].fields["preheat"], PAGES["supplies"].fields["gas_temp"]):
        assert isinstance(degrees, Temperature)
        assert (degrees.bare_unit("us"), degrees.bare_unit("si")) == ("F", "C")


def test_a_shape_of_weld_has_no_unit_and_a_line_of_ones_own_one_for_each_number() -> None:
    assert Outline().with_unit("rectangle", "us") == "rectangle"
    assert Outline().with_unit("Polyline:0,0  4,6", "us") == "polyline:0in,0in 4in,6in"


def test_a_price_without_its_sign() -> None:
    signed = ("$1.85/lb", "USD 4.10", "1.85 €", "1.85 €/kg", "2")
    assert [without_currency(text) for text in signed] == [
        "1.85/lb", "4.10", "1.85", "1.85/kg", "2",
    ]  # fmt: skip


def test_a_unit_as_it_is_typed() -> None:
    assert units.typed_unit("gas_flow", "us") == "ft3/h"
    assert units.typed_unit("wire_feed", "si") == "m/min"


@pytest.mark.parametrize("text", BARE)
@pytest.mark.parametrize("system", ["us", "si"])
def test_the_unit_written_behind_it_changes_nothing(text: str, system: System) -> None:
    price = PAGES["cost"].fields["wire_price"]
    written = price.with_unit(text, system)
    other = "us" if system == "si" else "si"
    if text[0] in "-−":
        return  # no price
    meant = price.deserialize(text, "wire_price", {"units": system})
    assert price.deserialize(written, "wire_price", {"units": other}) == meant
