"""No query breaks a page: each is answered, or refused with messages beside its fields."""

from random import Random

import pytest

from beadwright.api import answer_json
from beadwright.pages import PAGES
from tests.any_query import drawn_query, plain_queries

COUNTS = {"dial-in": 150, "passes": 12, "heat": 150, "strength": 150, "cost": 60, "supplies": 120,
          "shop": 120, "coupons": 6, "card": 12}  # fmt: skip
"""Queries drawn for each page; fewer where one answer takes longer."""


def answered(page: str, query: str) -> bool:
    """True if the query is answered, False if it is refused; an exception is neither."""
    found = answer_json(page, query)
    if "errors" not in found:
        return True
    assert all(found["errors"].values()), f"{page} {query}"
    return False


@pytest.mark.parametrize("page", PAGES)
def test_drawn_queries_are_answered_or_refused(page: str) -> None:
    draw = Random(f"drawn {page}")
    done = [answered(page, drawn_query(page, draw)) for _ in range(COUNTS.get(page, 50))]
    assert sum(done) / len(done) > 0.1  # else nothing is tried but the refusals


@pytest.mark.parametrize("page", [page for page in PAGES if COUNTS.get(page, 0) >= 60])
def test_plain_jobs_are_answered_or_refused(page: str) -> None:
    done = [answered(page, query) for query in plain_queries()]
    assert sum(done) / len(done) > 0.2


@pytest.mark.long(
    reason="Ten times as many queries, and slow pages for every plain job: five minutes."
)
@pytest.mark.parametrize("page", PAGES)
def test_many_more_queries_are_answered_or_refused(page: str) -> None:
    draw = Random(f"many {page}")
    for _ in range(10 * COUNTS.get(page, 50)):
        answered(page, drawn_query(page, draw))
    for query in plain_queries():
        answered(page, query)
