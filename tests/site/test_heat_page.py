"""The Heat page: the core's numbers, the curve to scale, errors beside their entries."""

import re

import pytest
from flask.testing import FlaskClient

from beadwright import units
from beadwright.api import answer
from beadwright.heating.cooling_curve import FROM_K
from beadwright.pages import PAGES
from beadwright.temperatures import from_celsius, show_temperature
from beadwright_site.drawings.heat_drawing import FIELD, draw_heat, time_at
from beadwright_site.pages.heat.page import PAGE
from beadwright_site.pages.heat.view import CODE_NAMES, seconds
from tests.site.page import by_id, elements, words
from tests.told import told

EXAMPLE = PAGES["heat"].example

QUERIES = (
    EXAMPLE,
    "plate=1in&leg=1/2in&steel=A572-60&units=si",
    "plate=2in&leg=1/2in&steel=S355J2&melt=limit",
    "plate=3/4in&leg=1/4in&c=0.19&mn=1.4&cr=0.2&hydrogen=4&preheat=120C",
    "plate=10ga&leg=1/8in&joint=lap&position=3F-down&transfer=short&gas=75/25&dia=0.035in",
    "plate=1/4in&joint=square&position=1G&steel=A992",
    "steel=unknown&plate=1/2in",
    "plate=1in&leg=1/2in&gas=CO2&transfer=spray",
)


@pytest.mark.parametrize("query", QUERIES)
def test_the_page_shows_the_numbers_of_the_core(client: FlaskClient, query: str) -> None:
    page = client.get(f"/heat/?{query}").text
    found = answer("heat", query)
    system = found.units
    start = words(by_id(page, "start"))
    needed = found.needed
    if needed.kelvin is None:
        assert "No preheat can be given" in start
    elif needed.even_cold:
        assert "No preheat" in start
    else:
        assert f"reheat to {show_temperature(needed.kelvin, system)}" in start
    methods = words(by_id(page, "methods"))
    if needed.table_k is not None:
        assert show_temperature(needed.table_k, system) in methods
    assert units.show(found.thickness_m, "length", system) in methods or needed.kelvin is None
    for quantity in (found.heat, found.heat_en):
        if quantity.value is not None:
            assert units.show(quantity.value, "heat_input", system) in start
    if found.cooling is not None:
        assert seconds(found.cooling.seconds) in start
        assert units.show(found.cooling.transition_m, "length", system) in words(
            by_id(page, "cooling")
        )
    if found.hardness.value is not None:
        assert f"{found.hardness.value:.0f} HV" in start
    carbon = words(by_id(page, "carbon"))
    for each in found.equivalents:
        assert each.name in carbon
        assert each.value is None or f"{each.value:.2f}" in carbon
    notes = words(by_id(page, "notes"))
    for note in found.notes:
        assert told(note, found.units) in notes


@pytest.mark.parametrize(
    ("query", "key", "said"),
    [
        ("c=0.2", "mn", "Write C and Mn both"),
        ("c=0.2&mn=2.4", "mn", "outside 0.5 to 1.9 %"),
        ("c=70&mn=60", "c", "add up to 130 %"),
        ("preheat=warm", "preheat", "is no temperature; write"),
        ("hydrogen=50", "hydrogen", "1 to 20"),
        ("heat=lots", "heat", "lots"),
        ("plate=9ft", "plate", "9ft"),
    ],
)
def test_an_error_stands_beside_its_field(
    client: FlaskClient, query: str, key: str, said: str
) -> None:
    page = client.get(f"/heat/?{query}").text
    field = by_id(page, key)
    assert field.attrs["aria-invalid"] == "true"
    assert said in words(by_id(page, field.attrs["aria-describedby"]))
    for name, value in (pair.split("=") for pair in query.split("&")):
        assert by_id(page, name).attrs["value"] == value


@pytest.mark.parametrize("system", ["us", "si"])
@pytest.mark.parametrize("query", QUERIES[:6])
def test_the_curve_is_to_scale(query: str, system: str) -> None:
    found = answer("heat", f"{query}&units={system}")
    drawing = draw_heat(found.curves, found.units)
    ruling = next(curve for curve in found.curves if curve.rules)
    [line] = [line for line in drawing.lines if line.kind == "rules"]
    assert drawing.lines[-1] is line
    places = [tuple(map(float, point.split(","))) for point in line.points.split()]
    last = ruling.points[-1][0]
    for (x, y), (time, kelvin) in zip(places, ruling.points, strict=True):
        assert x == pytest.approx(FIELD.left + (FIELD.right - FIELD.left) * time / last, abs=0.06)
        share = (kelvin - from_celsius(0)) / (FROM_K - from_celsius(0))
        assert y == pytest.approx(FIELD.bottom - (FIELD.bottom - FIELD.top) * share, abs=0.06)
    hot, cool = (time_at(ruling, from_celsius(c)) for c in (800, 500))
    assert found.cooling is not None
    assert cool - hot == pytest.approx(found.cooling.seconds, rel=0.03)
    across = FIELD.right - FIELD.left
    assert drawing.left == pytest.approx(FIELD.left + across * hot / last, abs=0.06)
    assert drawing.right == pytest.approx(FIELD.left + across * cool / last, abs=0.06)
    assert all(FIELD.left <= tick.at <= FIELD.right + 1 for tick in drawing.ticks)
    assert 3 <= len(drawing.ticks) <= 6
    assert drawing.levels[0].text in drawing.spoken


def test_a_joint_welded_warm_shows_the_cold_curve_too(client: FlaskClient) -> None:
    page = client.get(f"/heat/?{QUERIES[1]}").text
    kinds = [e.attrs["class"] for e in elements(page) if e.tag == "polyline"]
    assert {"line rules", "line other", "line cold"} <= set(kinds)
    bare = client.get(f"/heat/?{EXAMPLE}").text
    assert "line cold" not in [e.attrs.get("class") for e in elements(bare)]


def test_a_bare_temperature_keeps_its_scale_when_units_change(client: FlaskClient) -> None:
    page = client.get("/heat/?plate=1in&leg=1/2in&preheat=150").text
    switch = by_id(page, "units-switch").attrs["href"]
    assert "preheat=150F" in switch
    other = client.get(f"/heat/{switch}").text
    assert "66 °C" in words(by_id(other, "start"))
    assert "plate temperature, by hand" in words(by_id(other, "start"))


@pytest.mark.parametrize(
    ("query", "said"),
    [
        ("steel=unknown", "No preheat can be given"),
        ("plate=1in&leg=1/2in&steel=A572-60&preheat=60F", "Too cold: preheat to"),
        ("plate=3/8in&preheat=0F", "Too cold: warm it to 32 °F"),
        ("plate=3/8in&preheat=700F", "No preheat"),
    ],
)
def test_the_headline_is_the_verdict(client: FlaskClient, query: str, said: str) -> None:
    assert said in words(by_id(client.get(f"/heat/?{query}").text, "start"))


def test_every_part_is_drawn_alone_as_it_is_in_the_whole() -> None:
    whole = PAGE.show(EXAMPLE)
    assert set(whole.html) == set(PAGE.parts)
    for part in PAGE.parts:
        assert PAGE.show(EXAMPLE, None, [part]).html == {part: whole.html[part]}


def test_sources_named_are_on_the_method_page(client: FlaskClient) -> None:
    ids = {e.attrs.get("id") for e in elements(client.get("/method/").text)}
    for query in QUERIES:
        page = client.get(f"/heat/?{query}").text
        cited = re.findall(r'href="\.\./method/#([^"]+)"', page)
        assert cited
        assert set(cited) <= ids


JOBS = (
    "plate=16ga&leg=1/16in", "plate=3/8in&leg=5/16in", "plate=2in&leg=1/2in&steel=A572-50",
    "plate=30mm&plate2=30mm&leg=8mm&steel=S355J2", "plate=3/8in&c=0.30&mn=0.9",
    "plate=1in&leg=1/2in&preheat_code=en-a", "joint=plug&plate2=1/2in", "steel=unknown",
)  # fmt: skip


@pytest.mark.parametrize(("system", "strange"), [("us", r"°C|mm\b"), ("si", r"°F| in\b|kJ/in")])
@pytest.mark.parametrize("query", JOBS)
def test_a_page_keeps_to_its_units(query: str, system: str, strange: str) -> None:
    """Grades, codes and sizes of wire are names; the words of a sentence may hold “in”."""
    shown = PAGE.show(f"{query}&units={system}").html
    parts = ("start", "methods", "cooling", "carbon", "distortion", "notes")
    text = re.sub(r"<[^>]+>", " ", " ".join(shown[part] for part in parts))
    found = [m for m in re.finditer(strange, text)
             if m.group() != " in" or text[: m.start()][-1:].isdigit()]  # fmt: skip
    assert [text[max(0, m.start() - 30) : m.end()] for m in found] == []


@pytest.mark.parametrize("query", JOBS)
def test_the_code_that_rules_stands_first_with_its_edition(client: FlaskClient, query: str) -> None:
    methods = words(by_id(client.get(f"/heat/?{query}").text, "methods"))
    needed = answer("heat", query).needed
    first = methods.removeprefix("Minimum preheat, by each method").strip()
    assert first.startswith(CODE_NAMES[needed.code])
    for name in CODE_NAMES.values():
        assert name in methods
    for edition in ("AWS D1.1:2020 Table 5.8", "EN 1011-2:2001, found second-hand"):
        assert edition in methods


def test_nothing_odd_is_written(client: FlaskClient) -> None:
    for query in QUERIES:
        page = client.get(f"/heat/?{query}").text
        text = " ".join(words(by_id(page, part)) for part in PAGE.parts if part != "job-form")
        assert not re.search(r"\bnan\b|\binf\b|None", text)
