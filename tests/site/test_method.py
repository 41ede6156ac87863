"""The Method page: well-formed equations, and every source a number names."""

import re
from functools import cache
from pathlib import Path
from xml.etree import ElementTree

import pytest
from flask.testing import FlaskClient

from beadwright.api import answer
from beadwright.process.burnoff import CONSTANTS
from beadwright.process.burnoff_fit import extension_m, fitted_points, shown_points
from beadwright.process.burnoff_points import POINTS
from beadwright.process.volts_points import VOLTS_POINTS
from beadwright.process.wire_kinds import KINDS, Kind
from beadwright.process.wires import wire_of
from beadwright.sources import SOURCES
from beadwright_site.drawings.points_drawing import FIELD
from beadwright_site.method.contents import TOPICS, sections
from beadwright_site.method.mathml import equation, over, sign
from beadwright_site.method.plots import (
    burn_off_plots,
    penetration_plot,
    plot_key,
    size_text,
    transition_plot,
)
from beadwright_site.method.tables.arc import constants_table, volts_table
from beadwright_site.method.topics.arc import BURN_OFF
from beadwright_site.method.volts_plots import LEAST_DRAWN, points_inside, volts_plots
from beadwright_site.pages.dial_in.facts import origins
from beadwright_site.pages.method.page import PAGE
from tests.site.page import elements
from tests.site.test_pages import QUERIES

ROOT = Path(__file__).parents[2]

MATHML = {
    "math", "mrow", "mi", "mn", "mo", "mtext", "mfrac", "msub", "msup", "msqrt",
    "mtable", "mtr", "mtd", "mspace",
}  # fmt: skip


@cache
def whole_page() -> str:
    """The page, drawn once for all tests."""
    return PAGE.whole()


def formulas() -> list[str]:
    return re.findall(r"<math.*?</math>", whole_page(), re.DOTALL)


def test_equations_are_well_formed_mathml() -> None:
    found = formulas()
    assert len(found) > 20
    for text in found:
        tree = ElementTree.fromstring(text)
        assert {element.tag for element in tree.iter()} <= MATHML
        for element in tree.iter("mfrac"):
            assert len(element) == 2
        for name in ("msub", "msup"):
            assert all(len(element) == 2 for element in tree.iter(name))


def test_every_sign_of_an_equation_is_explained() -> None:
    for section in sections():
        each = section.equation
        signs = {"".join(ElementTree.fromstring(f"<m>{sign(s.sign)}</m>").itertext())
                 for s in each.symbols}  # fmt: skip
        explained = "".join(signs)
        for formula in each.formulas:
            for name in ElementTree.fromstring(formula).iter("mi"):
                assert name.text is not None
                assert name.text in explained, (each.key, name.text)


def test_each_equation_says_range_band_and_source() -> None:
    for section in sections():
        each = section.equation
        assert each.valid
        assert each.band
        assert each.sources
        for table in section.tables:
            assert table.sources
            assert all(len(row) == len(table.head) for row in table.rows)


@pytest.mark.parametrize("query", QUERIES)
def test_every_source_a_number_or_note_names_is_on_the_page(query: str) -> None:
    ids = {e.attrs.get("id") for e in elements(whole_page())}
    found = answer("dial-in", query)
    named = {note.source for note in found.notes if note.source}
    named |= {key for setting in found.dialled.settings.all() for key in setting.sources}
    named |= {source.key for origin in origins(found.dialled) for source in origin.sources}
    assert named
    assert {f"source-{key}" for key in named} <= ids


def test_all_sources_are_listed_with_how_they_were_come_by() -> None:
    page = {e.attrs["id"]: e.text for e in elements(whole_page()) if "id" in e.attrs}
    for key, source in SOURCES.items():
        assert source.document in page[f"source-{key}"]
        assert source.told in page[f"source-{key}"]


def test_links_inside_the_page_lead_somewhere(client: FlaskClient) -> None:
    method = elements(whole_page())
    ids = {e.attrs.get("id") for e in method}
    inside = [e.attrs["href"][1:] for e in method if e.attrs.get("href", "").startswith("#")]
    assert inside
    assert set(inside) <= ids
    for query in QUERIES:
        for element in elements(client.get(f"/?{query}").text):
            page, _, anchor = element.attrs.get("href", "").partition("#")
            if page.startswith("method/") and anchor:
                assert anchor in ids


def test_constants_are_the_core_s_with_their_points() -> None:
    rows = {row[0]: row for row in constants_table().rows}
    assert len(rows) == len(CONSTANTS)
    row = rows["solid 0.045 in, 1.2 mm"]
    fitted = CONSTANTS["solid", "0.045in"]
    assert row[1:4] == (f"{fitted.phi_v:.3f}", f"{fitted.r_ohm_m * 1e7:.3f}", str(fitted.points))
    assert row[5] == "17 of 18"
    assert len(fitted_points("solid", "0.045in")) == fitted.points == 18
    assert rows["metal-cored 0.035 in, 0.9 mm"][5] == "carried over"
    assert rows["metal-cored 0.040 in, 1.0 mm"][5] == "carried over"
    assert rows["metal-cored 0.052 in, 1.4 mm"][5] == "interpolated"
    assert rows["solid 0.040 in, 1.0 mm"][3:] == ("0", "±23%", "interpolated")


def inside_by_hand(kind: Kind, size: str) -> list[bool]:
    """For each printed point, whether its feed by the power balance is off by no more than said."""
    wire, fitted = wire_of(KINDS[kind].representative, size), CONSTANTS[kind, size]
    drop_j_kg = 1.3e6  # heat of the molten drop, as the page says
    found: list[bool] = []
    for point in fitted_points(kind, size):
        amps, long = point.current_a, extension_m(point)
        heated = amps * fitted.phi_v + amps**2 * fitted.r_ohm_m * long / wire.conducting_area_m2
        feed = heated / (wire.linear_mass_kg_m * drop_j_kg)
        printed = point.feed_in_min * 0.0254 / 60
        found.append(abs(feed / printed - 1) <= fitted.band)
    return found


def test_the_share_of_burn_off_points_inside_is_said_as_it_is() -> None:
    rows = {row[0]: row for row in constants_table().rows}
    every: list[bool] = []
    for kind, size in CONSTANTS:
        held = inside_by_hand(kind, size)
        every += held
        if held:
            assert rows[f"{kind} {size_text(size)}"][5] == f"{sum(held)} of {len(held)}"
    assert (sum(every), len(every)) == (97, 101)
    assert "97 of all 101 points fitted stand inside" in BURN_OFF.band
    assert "hold 97 of those 101" in (ROOT / "README.md").read_text(encoding="utf-8")
    shares = [sum(held) / len(held) for wire in CONSTANTS if (held := inside_by_hand(*wire))]
    assert f"At worst {min(shares):.0%} of a wire's points" in constants_table().words


def test_numbers_in_equations_are_the_core_s() -> None:
    text = " ".join("".join(ElementTree.fromstring(f).itertext()) for f in formulas())
    assert "12.9+0.05·c+0.03·h+0.034·I" in text
    assert "U0+0.09·c+0.045·o+0.05·h+k·I" in text
    assert "11.6+0.0645·I" in text
    assert "25+1.7·t" in text


def test_a_part_is_escaped() -> None:
    assert "<b>" not in equation(over("<b>", "1"))


def test_contents_lead_to_every_topic_and_section() -> None:
    keys = [section.equation.key for section in sections()]
    assert len(keys) == len(set(keys))
    assert len({topic.key for topic in TOPICS}) == len(TOPICS)
    found = elements(whole_page())
    links = [e.attrs["href"] for e in found if e.tag == "a" and "href" in e.attrs]
    for key in (*(f"topic-{topic.key}" for topic in TOPICS), *keys, "sources", "changes"):
        assert f"#{key}" in links
    ids = [e.attrs["id"] for e in found if "id" in e.attrs]
    assert len(ids) == len(set(ids))


def test_every_wire_with_points_is_drawn_with_all_of_them() -> None:
    drawn = {plot.key: plot for plot in burn_off_plots()}
    with_points = {key for key, fitted in CONSTANTS.items() if fitted.points}
    assert set(drawn) == {plot_key("burn-off", *key) for key in with_points}
    for kind, size in with_points:
        plot = drawn[plot_key("burn-off", kind, size)]
        points = [p for p in POINTS if (p.kind, p.size) == (kind, size)]
        assert len(plot.marks) == len(points)
        shown = shown_points(kind, size)
        assert [mark.inside for mark in plot.marks[: len(shown)]] == [s.inside for s in shown]
        held = sum(s.inside for s in shown)
        assert plot.words.startswith(f"{held} of {len(shown)} points inside")


def test_points_stand_to_scale_beside_their_line() -> None:
    plot = next(p for p in burn_off_plots() if p.key == plot_key("burn-off", "solid", "0.045in"))
    across = {float(tick.text): tick.at for tick in plot.x_ticks}
    up = {float(tick.text): tick.at for tick in plot.y_ticks}
    first = shown_points("solid", "0.045in")[0]
    assert (first.point.current_a, first.point.feed_in_min) == (125, 125)
    least, most = min(across), max(across)
    x = across[least] + (across[most] - across[least]) * (125 - least) / (most - least)
    low, high = min(up), max(up)
    y = up[low] + (up[high] - up[low]) * (125 - low) / (high - low)
    assert [plot.marks[0].x, plot.marks[0].y] == pytest.approx([x, y], abs=0.1)
    assert len(plot.lines) == 2  # short circuit and the open arc, each at its own extension


def test_every_mark_and_line_is_on_the_paper_and_in_the_legend() -> None:
    plots = (*burn_off_plots(), *volts_plots(), transition_plot(), penetration_plot())
    assert len({plot.key for plot in plots}) == len(plots)
    for plot in plots:
        for mark in plot.marks:
            assert FIELD.left <= mark.x <= FIELD.right
            assert FIELD.top <= mark.y <= FIELD.bottom
            assert mark.path in {entry.path for entry in plot.legend}
        for line in plot.lines:
            for corner in (*line.path.split(), *line.band.split()):
                x, y = map(float, corner.split(","))
                assert FIELD.left <= x <= FIELD.right
                assert FIELD.top <= y <= FIELD.bottom
        hollow = any(not mark.inside for mark in plot.marks)
        assert hollow == any(not entry.filled for entry in plot.legend)
        assert set(plot.sources) <= set(SOURCES)


def test_volts_outside_the_window_are_counted_and_said() -> None:
    counted = points_inside()
    held = sum(inside for *_, inside, _ in counted)
    assert f"In all {held} of {sum(map(len, VOLTS_POINTS.values()))}." in volts_table().words
    assert sum(count for *_, count in counted) == sum(map(len, VOLTS_POINTS.values()))
    assert all(0 <= held <= count for *_, held, count in counted)
    drawn = volts_plots()
    assert all(len(plot.marks) >= LEAST_DRAWN for plot in drawn)
    few = sum(count for *_, count in counted if count < LEAST_DRAWN)
    marks = sum(len(plot.marks) for plot in drawn)
    assert sum(map(len, VOLTS_POINTS.values())) - few <= marks  # all but those of a few
    page = whole_page()
    for plot in drawn:
        held = sum(mark.inside for mark in plot.marks)
        assert f"{held} of {len(plot.marks)} points inside" in plot.words
        assert plot.words in page


def test_the_share_of_beads_inside_is_said() -> None:
    plot = penetration_plot()
    assert len(plot.marks) == 31
    assert sum(mark.inside for mark in plot.marks) == 29
    assert plot.words == "29 of 31 beads inside the band."
    assert "29 of 31 beads stand inside" in whole_page()


def test_a_plot_is_told_in_words_and_waits_folded() -> None:
    found = elements(whole_page())
    pictures = [e for e in found if e.tag == "svg" and e.attrs.get("role") == "img"]
    pictures = [e for e in pictures if "points" in e.attrs.get("class", "")]
    assert len(pictures) == len((*burn_off_plots(), *volts_plots())) + 2
    assert all("points" in e.attrs["aria-label"] for e in pictures)
    folded = [e for e in found if e.tag == "details" and e.attrs.get("class") == "plots"]
    assert len(folded) == 2
    assert all("open" not in e.attrs for e in folded)
