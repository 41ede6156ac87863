"""What Dial in says of the wire where wire and torch are set up."""

import pytest

from beadwright.api import answer, answer_json
from beadwright_site.pages.dial_in.facts import torch_facts


def said(query: str) -> dict[str, str]:
    return {fact.name: fact.value for fact in torch_facts(answer("dial-in", query).dialled)}


@pytest.mark.parametrize(
    ("query", "name", "value"),
    [
        ("wire=E71T-1M&gas=75/25", "it runs spray in", "Flat, horizontal, vertical-up, overhead"),
        ("wire=E71T-1M&gas=75/25", "this wire in ISO's words", "ISO 17632-B-T 49 2 T1-1 M21 A"),
        ("wire=E71T-1M&gas=75/25", "drive roll", "Knurled V-groove, light pressure"),
        ("wire=ER70S-6", "it runs spray in", "Flat, horizontal"),
        ("wire=ER70S-6&plate=16ga", "it runs short circuit in", "Every position"),
        ("wire=ER70S-6", "drive roll", "Smooth V-groove"),
    ],
)
def test_what_is_said_of_the_wire(query: str, name: str, value: str) -> None:
    assert said(query)[name] == value


def test_a_wire_that_does_not_run_has_no_positions() -> None:
    assert not any(name.startswith("it runs") for name in said("wire=E71T-1C&gas=90/10"))


def test_the_wire_as_json() -> None:
    wire = answer_json("dial-in", "wire=E80C-Ni1&dia=1/16in&position=2F")["answer"]["wire"]
    assert wire == {
        "class": "E80C-Ni1",
        "spec": "AWS A5.28/A5.28M",
        "iso": "ISO 17632-B-T 55 5 T15-0 M21 A-N2",
        "a5_36": "E80T15-M21A5-Ni1",
        "kind": "metal-cored",
        "dia": "1/16in",
        "fill_share": 0.18,
        "runs_in": ["flat", "horizontal"],
    }
