"""Tables: every cell of every sheet is what Dial in answers to the link behind it."""

from __future__ import annotations

from urllib.parse import unquote_plus, urlsplit

import pytest
from flask.testing import FlaskClient

from beadwright import units
from beadwright.api import answer
from beadwright.sheets.settings_sheet import PLATES, POSITIONS, sheets_made
from tests.site.page import Element, elements, inside, words

MADE = {made.name: made for made in sheets_made()}


def _cells(client: FlaskClient, name: str) -> list[Element]:
    page = client.get(f"/sheets/{name}.html")
    assert page.status_code == 200
    return [each for each in elements(page.text) if each.tag == "td"]


def _agrees(cell: Element) -> None:
    link = next(each.attrs["href"] for each in inside(cell) if each.tag == "a")
    query = unquote_plus(urlsplit(link).query)
    found = answer("dial-in", query).dialled
    stops = [note for note in found.notes if note.level == "stop"]
    said = words(cell)
    if not found.open or stops:
        assert said in {"laps cold", "not downhill", "no window"}, query
        return
    system, settings, outcome = found.job.units, found.settings, found.outcome
    assert outcome is not None

    def show(value: float | None, measure: str) -> str:
        assert value is not None, query
        return units.show(value, measure, system)

    first, second, third = (words(e) for e in inside(cell) if e.tag in {"b", "span"})
    feed = show(settings.wire_feed.value, "wire_feed")
    if outcome.transfer == "pulse":  # the machine makes its own volts
        assert settings.volts.value is None
        assert first == f"{feed} · pulse", query
    else:
        assert first == f"{feed} · {show(settings.volts.value, 'volts')} V", query
    assert second.endswith(f"· travel {show(settings.travel.value, 'travel')}"), query
    tip = show(settings.tip_to_work.value, settings.tip_to_work.measure)
    amps = show(outcome.current.value, "current")
    assert third.startswith(f"tip {tip} · {amps} A · {found.plan.passes}× "), query
    fuses = all(note.key != "setting.short-may-not-fuse" for note in found.notes)
    assert third.endswith("*") is not fuses, query


@pytest.mark.parametrize("name", MADE)
def test_every_cell_equals_the_answer_behind_its_link(client: FlaskClient, name: str) -> None:
    cells = _cells(client, name)
    assert len(cells) == len(PLATES[MADE[name].units]) * len(POSITIONS)
    for cell in cells:
        _agrees(cell)


def test_the_leg_and_the_setting_are_those_the_page_shows(client: FlaskClient) -> None:
    """Read off Dial in's own page, not off the core."""
    cells = _cells(client, "us-er70s-6-0.045in-90-10")
    at = PLATES["us"].index("3/8in") * len(POSITIONS)
    link = inside(cells[at])[0].attrs["href"]
    page = " ".join(client.get(f"/{link.removeprefix('../')}").text.split())
    bold, second, _ = (words(e) for e in inside(cells[at]) if e.tag in {"b", "span"})
    feed, volts = bold.removesuffix(" V").split(" · ")
    leg = second.removeprefix("leg ").split(" · ")[0]
    for shown in (feed, volts, leg):
        assert f">{shown}" in page
    assert f"leg {leg} in" in page


def test_the_index_leads_to_every_sheet(client: FlaskClient) -> None:
    links = [e.attrs.get("href", "") for e in elements(client.get("/sheets/").text) if e.tag == "a"]
    leads = [link.removesuffix(".html") for link in links if link.removesuffix(".html") in MADE]
    assert sorted(leads) == sorted(MADE)


def test_a_sheet_says_it_is_no_procedure_and_how_it_was_got(client: FlaskClient) -> None:
    text = client.get("/sheets/si-er70s-6-0.045in-90-10.html").text
    assert "Starting points, not a qualified procedure" in text
    assert "1.2 mm" in text
    assert "How it was got" in text
    assert "Cautions" in text
