"""Penetration and dilution on Dial in: a row with band and mark, or the reason there is none."""

import pytest
from flask.testing import FlaskClient

from beadwright.api import answer
from beadwright.process.melted import NEVER_SIZE_BY_IT
from beadwright_site.pages.dial_in.facts import melted_facts, origins
from tests.site.page import elements

DEMO = "wire=ER70S-6&dia=0.045in&gas=90/10&plate=3/8in&leg=5/16in"


def test_the_row_shows_estimate_band_and_mark() -> None:
    depth, share = melted_facts(answer("dial-in", DEMO).dialled)
    assert depth.name == "penetration past the root"
    assert depth.value.startswith("≈ ")
    assert depth.value.endswith(" in")
    assert depth.room.endswith("; travel speed below what was measured: band widened")
    assert share.value.startswith("≈ ")
    assert share.value.endswith("%")
    assert share.room.count("%") == 2
    metric = melted_facts(answer("dial-in", f"{DEMO}&units=si").dialled)[0]
    assert metric.value.endswith(" mm")


@pytest.mark.parametrize(
    ("query", "said"),
    [
        ("plate=1/8in&transfer=short", "short circuit"),
        (f"{DEMO}&transfer=pulse", "pulse"),
        (DEMO.replace("ER70S-6", "E70C-6M"), "metal-cored wire"),
    ],
)
def test_without_an_estimate_the_row_says_why(query: str, said: str) -> None:
    [fact] = melted_facts(answer("dial-in", query).dialled)
    assert fact.value == "–"
    assert fact.room.startswith("no estimate")
    assert said in fact.room


def test_the_warning_and_the_way_to_the_method_stand_beside_it(client: FlaskClient) -> None:
    page = client.get(f"/?{DEMO}").text
    assert NEVER_SIZE_BY_IT in page
    links = [e.attrs.get("href", "") for e in elements(page)]
    assert any(link.endswith("#penetration") for link in links)
    keys = {origin.key for origin in origins(answer("dial-in", DEMO).dialled)}
    assert {"penetration", "dilution"} <= keys
