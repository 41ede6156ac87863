"""Method on windows: numbers are the core's, and what it refers to is on the page."""

from xml.etree import ElementTree

from beadwright_site.method.contents import TOPICS
from beadwright_site.method.contents import sections as all_sections
from beadwright_site.method.topics.windows import (
    aims,
    feeds,
    limits_table,
    sections,
    sizes,
    soft_edges,
)


def test_the_topic_is_on_the_page_once() -> None:
    assert [topic.title for topic in TOPICS].count("The windows and the set point") == 1
    assert set(sections()) <= set(all_sections())


def test_where_a_limit_is_told_is_a_title_of_the_page() -> None:
    titles = {section.equation.title for section in all_sections()}
    titles |= {table.title for section in all_sections() for table in section.tables}
    for _, _, told in limits_table().rows:
        assert set(told.split("; ")) <= titles | {"yours", "common practice"}


def test_numbers_as_the_trade_holds_them() -> None:
    """What the core holds is what the trade says (common practice) and the supplier's table.

    Feeders 50 to 800 in/min, 1/16 in over a leg, a crown of 1/8 in; transition currents are good to
    20 %.
    """
    assert "50 to 800 in/min" in feeds().valid
    said = " ".join(symbol.meaning for symbol in sizes().symbols)
    assert "1/16 in over the leg" in said
    assert "crown heaped to 1/8 in" in said
    spray = "".join(ElementTree.fromstring(soft_edges().formulas[1]).itertext())
    assert spray.endswith("(1±0.2)")


def test_how_close_the_search_comes_is_said() -> None:
    assert "within 2% of a window's width" in aims().band
    assert "the lowest volts the mode holds" in aims().words
    assert "7 even spots, then 5 rounds" in aims().words
