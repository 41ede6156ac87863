"""Whatever is asked, the page is drawn: with the answer, or with what was refused."""

from random import Random

import pytest

from beadwright.pages import PAGES
from beadwright_site.page_table import SITE_PAGES
from tests.any_query import drawn_query, plain_queries

COUNTS = {"dial-in": 40, "passes": 5, "heat": 40, "strength": 40, "cost": 15, "supplies": 40,
          "shop": 40, "coupons": 3}  # fmt: skip
"""Queries drawn for each page; fewer where one page takes longer."""


def check(page: str, query: str) -> None:
    """Draw a page; a part that cannot be drawn raises."""
    shown = SITE_PAGES[page].load().show(query)
    assert shown.ok != bool(shown.errors), f"{page} {query}"
    assert shown.html["state"], f"{page} {query}"


@pytest.mark.parametrize("page", PAGES)
def test_drawn_queries_are_shown(page: str) -> None:
    draw = Random(f"shown {page}")
    for _ in range(COUNTS.get(page, 15)):
        check(page, drawn_query(page, draw))


@pytest.mark.long(reason="Ten times as many, and every plain job on every page: three minutes.")
@pytest.mark.parametrize("page", PAGES)
def test_many_more_queries_are_shown(page: str) -> None:
    draw = Random(f"many shown {page}")
    for _ in range(10 * COUNTS.get(page, 15)):
        check(page, drawn_query(page, draw))
    for query in plain_queries():
        check(page, query)
