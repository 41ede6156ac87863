"""The entry to the core: a page and a query string in, an answer or its JSON out."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, Literal, overload

from beadwright.errors import FieldErrors
from beadwright.known_keys import unknown_keys
from beadwright.pages import PAGES

if TYPE_CHECKING:
    from beadwright.coupons.coupons_page import CouponsAnswer
    from beadwright.heating.heat_answer import HeatAnswer
    from beadwright.inspection.inspect_page import InspectAnswer
    from beadwright.job.page_query import PageAnswered
    from beadwright.machine.shop_page import ShopAnswer
    from beadwright.money.cost_page import CostAnswer
    from beadwright.passes.passes_page import PassesAnswer
    from beadwright.setting.dial_in_page import DialInAnswer
    from beadwright.strength.strength_answer import StrengthAnswer
    from beadwright.supply.supplies_page import SuppliesAnswer
    from beadwright.weld_list.list_page import ListAnswer

Kept = Mapping[str, Any] | None
"""The shop's own defaults, a page's keys to text."""


# A page named in the source gives its own type of answer; a page without a line here still answers.
@overload
def answer(page: Literal["dial-in"], query: str, kept: Kept = None) -> DialInAnswer: ...
@overload
def answer(page: Literal["passes"], query: str, kept: Kept = None) -> PassesAnswer: ...
@overload
def answer(page: Literal["cost"], query: str, kept: Kept = None) -> CostAnswer: ...
@overload
def answer(page: Literal["supplies"], query: str, kept: Kept = None) -> SuppliesAnswer: ...
@overload
def answer(page: Literal["list"], query: str, kept: Kept = None) -> ListAnswer: ...
@overload
def answer(page: Literal["shop"], query: str, kept: Kept = None) -> ShopAnswer: ...
@overload
def answer(page: Literal["coupons"], query: str, kept: Kept = None) -> CouponsAnswer: ...
@overload
def answer(page: Literal["heat"], query: str, kept: Kept = None) -> HeatAnswer: ...
@overload
def answer(page: Literal["strength"], query: str, kept: Kept = None) -> StrengthAnswer: ...
@overload
def answer(page: Literal["inspect"], query: str, kept: Kept = None) -> InspectAnswer: ...
@overload
def answer(page: str, query: str, kept: Kept = None) -> PageAnswered: ...
def answer(page: str, query: str, kept: Kept = None) -> PageAnswered:
    """Return a page's answer to a query string.

    Args:
        page: A key of ``PAGES`` [-].
        query: The query string [-].
        kept: The shop's own defaults, the page's keys to text; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    if page not in PAGES:
        raise FieldErrors({"page": [f"There is no page {page[:40]}; there is {', '.join(PAGES)}."]})
    strange = unknown_keys(page, query)
    try:
        found = PAGES[page].answer(query, kept)
    except FieldErrors as error:
        raise FieldErrors({**strange, **error.messages}) from error
    if strange:
        raise FieldErrors(strange)
    return found


def answer_json(page: str, query: str, kept: Kept = None) -> dict[str, Any]:
    """Return a page's answer as plain data, or ``{"errors": {field: [messages]}}``.

    Args:
        page: A key of ``PAGES`` [-].
        query: The query string [-].
        kept: As of ``answer`` [-].
    """
    try:
        found = answer(page, query, kept)
    except FieldErrors as error:
        return {"errors": error.messages}
    from beadwright.reports import encoded  # a page on a phone is drawn without

    report: dict[str, Any] = encoded(
        {
            "page": page,
            "query": found.canonical,
            **PAGES[page].report(found),
            "notes": found.notes,
        },
        found.units,
    )
    return report


def answer_csv(page: str, query: str, kept: Kept = None) -> str:
    """Return a page's answer as CSV.

    Args:
        page: A key of ``PAGES`` whose page has a table [-].
        query: The query string [-].
        kept: As of ``answer`` [-].

    Raises:
        FieldErrors: With each field's messages, or if the page has no table.
    """
    found = answer(page, query, kept)
    if not PAGES[page].has_table:
        raise FieldErrors({"page": [f"The page {page} has no table to write."]})
    return PAGES[page].csv(found)
