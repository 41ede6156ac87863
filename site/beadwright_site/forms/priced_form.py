"""What a form with prices is made from: which are invented, and what each is kept under."""

from __future__ import annotations

from beadwright.job.page_query import PageQuery
from beadwright.money.demo_prices import INVENTED, invented_in_use
from beadwright.pages import PAGES
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.kept import keep_name, way_buys


def invented_keys(filling: Filling, query: PageQuery | None) -> frozenset[str]:
    """Return the keys whose value is an invented price or rate.

    Args:
        filling: What the form is filled with.
        query: The query as read, or None if the entries could not be taken.
    """
    if query is not None:
        return frozenset(invented_in_use(query))
    return frozenset(INVENTED) - filling.typed.keys() - filling.held.keys()


def priced_form(page: str, filling: Filling, query: PageQuery | None) -> Form:
    """Return what the entries of a page with one way to weld are made from.

    Args:
        page: The page.
        filling: What the form is filled with.
        query: The query as read, or None if the entries could not be taken.
    """
    wire, gas = way_buys("", filling.typed, filling.held)
    asked = PAGES[page].fields
    kept_as = {key: keep_name(key, wire, gas) for key in asked}
    return Form(filling, asked, invented_keys(filling, query), kept_as)
