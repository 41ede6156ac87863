"""The choices of wire and size: every wire there is, and the sizes it is made in."""

import pytest

from beadwright.process.wires import METRIC_NAMES, WIRE_TYPES
from beadwright_site.forms.entries import Option
from beadwright_site.forms.filling import Filling
from beadwright_site.forms.job_entries import job_entries
from beadwright_site.forms.wire_options import size_options, wire_choices


def test_every_wire_can_be_chosen_and_says_what_it_is() -> None:
    choices = wire_choices()
    assert [value for value, _, _ in choices] == list(WIRE_TYPES)
    under = {value: words for value, _, words in choices}
    assert under["ER80S-D2"] == "solid"
    assert under["E80C-Ni1"] == "metal-cored"
    assert under["E71T-1C"] == "flux-cored, CO2"
    assert under["E71T-1M"] == "flux-cored, 75/25"


@pytest.mark.parametrize("wire", WIRE_TYPES)
def test_the_sizes_offered_are_those_made(wire: str) -> None:
    made = WIRE_TYPES[wire].sizes
    options = size_options(wire, "0.045in", "us")
    assert tuple(option.value for option in options) == made
    assert [option.value for option in options if option.chosen] == ["0.045in"]
    # Written any way, however the wire is written.
    assert size_options(wire.lower(), "1.2mm", "us") == options


def test_metric_comes_first_where_it_is_asked_for() -> None:
    (thin, *_) = size_options("ER70S-6", "0.023in", "si")
    assert thin == Option("0.023in", "0.6mm", "0.023", True)
    (thin, *_) = size_options("ER70S-6", "0.6mm", "us")
    assert thin == Option("0.023in", "0.023", "0.6mm", True)


def test_a_size_not_made_stays_and_says_so() -> None:
    options = size_options("E70C-6M", "0.030in", "us")
    assert options[-1] == Option("0.030in", "0.030", "not made", True)
    assert sum(option.chosen for option in options) == 1


def test_what_is_no_size_stays_and_says_so() -> None:
    options = size_options("E70C-6M", "3/4in", "us")
    assert options[-1] == Option("3/4in", "3/4in", "not known", True)


def test_an_unknown_wire_leaves_every_size() -> None:
    for wire in ("", "E7018"):
        options = size_options(wire, "0.045in", "us")
        assert [option.value for option in options] == list(METRIC_NAMES)


def test_the_form_offers_the_sizes_of_the_wire_typed() -> None:
    typed = {"wire": "E80C-Ni1", "dia": "0.030in"}
    dia = job_entries(Filling(typed, {}, "us", {"dia": ["not made"]}))["dia"]
    assert [option.value for option in dia.options] == ["0.045in", "0.052in", "1/16in", "0.030in"]
    assert dia.errors == ("not made",)
