"""The pages that compute, one row each; all that the code knows of a page is here.

The modules of a page ``made-up`` lie in its room: ``made_up_query`` (``MadeUpQuery``, its keys),
``made_up_page`` (``made_up_answer``, from a query to the answer) and ``made_up_report``
(``made_up_report``, the answer by key; ``made_up_csv`` where the page has a table). They are
imported when first asked for: a phone opens Dial in before a page of prices.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from importlib import import_module
from types import MappingProxyType
from typing import TYPE_CHECKING, Any, Literal

if TYPE_CHECKING:
    from beadwright.job.page_query import PageAnswered
    from beadwright.reading.entries import Fields
    from beadwright.reports import Tree

ExampleWhen = Literal["never", "empty", "no job"]
"""When a page shows its example: never (it shows its defaults), for an empty query, or for a query
without a key of a job."""


def module_name(page: str) -> str:
    """Return a page's name as a Python name; every module of the page uses it.

    Args:
        page: The page's name [-].
    """
    return page.replace("-", "_")


def class_name(page: str) -> str:
    """Return a page's name as the classes of its modules begin.

    Args:
        page: The page's name [-].
    """
    return page.title().replace("-", "")


@dataclass(frozen=True, slots=True)
class Page:
    """A page.

    Attributes:
        name: Its name in addresses, JSON, the terminal and on the phone.
        room: Room of the core its modules lie in.
        title: Its name in the bar at the foot.
        example: A query that shows its answer.
        example_name: Name of that job.
        example_when: When the page shows it.
        has_table: True if its answer can be written as CSV.
    """

    name: str
    room: str
    title: str
    example: str
    example_name: str
    example_when: ExampleWhen = "no job"
    has_table: bool = False

    def answer(self, query: str, kept: Mapping[str, Any] | None = None) -> PageAnswered:
        """Return the page's answer to a query string.

        Args:
            query: The query string [-].
            kept: The shop's own defaults, the page's keys to text; the query wins [-].

        Raises:
            FieldErrors: With each field's messages.
        """
        found: PageAnswered = self._of("page", "answer")(query, kept)
        told = tuple(found.query.own_notes())
        return replace(found, notes=(*found.notes, *told)) if told else found

    def report(self, found: PageAnswered) -> Tree:
        """Return an answer of the page as a tree of its values, by part; see ``reports``.

        Args:
            found: What ``answer`` returned [-].
        """
        tree: Tree = self._of("report", "report")(found)
        return tree

    def csv(self, found: PageAnswered) -> str:
        """Return the table of an answer of the page as CSV; only where it ``has_table``.

        Args:
            found: What ``answer`` returned [-].
        """
        text: str = self._of("report", "csv")(found)
        return text

    @property
    def fields(self) -> Fields:
        """Every key of the page, in the form's order: how it is read, what is said of it."""
        from beadwright.job.page_query import page_fields

        return page_fields(getattr(self._module("query"), f"{class_name(self.name)}Query"))

    @property
    def defaults(self) -> Mapping[str, str]:
        """What a blank or missing key means, by key; empty where it is worked out."""
        return {key: field.default for key, field in self.fields.items()}

    def _module(self, kind: str) -> Any:
        return import_module(f"beadwright.{self.room}.{module_name(self.name)}_{kind}")

    def _of(self, kind: str, function: str) -> Any:
        return getattr(self._module(kind), f"{module_name(self.name)}_{function}")


_BRACKET = "Example: bracket MB-3"
_BRACKET_JOB = "leg=5/16in"
"""Keys of bracket MB-3 of the invented two-bay shop, other than the defaults."""

_BRACKET_WHOLE = "plate=3/8in&leg=5/16in&position=2F&wire=ER70S-6&dia=0.045in&gas=90/10"
"""The same, defaults and all."""

_BRACKET_LINES = "%0A".join(
    f"Gusset {gusset} {side},tee,3/8in,5/16in,6in,1,2F"
    for gusset in (1, 2, 3, 4)
    for side in ("near", "far")
)
"""Its eight welds as a list, one a line."""

PAGES: Mapping[str, Page] = MappingProxyType(
    {
        page.name: page
        for page in (
            Page(
                "dial-in",
                "setting",
                "Dial in",
                _BRACKET_WHOLE,
                _BRACKET,
                example_when="never",
            ),
            Page(
                "passes",
                "passes",
                "Passes",
                f"{_BRACKET_WHOLE}&passes=3",  # so that there is something to stack
                f"{_BRACKET} in three passes",
                has_table=True,
            ),
            Page("heat", "heating", "Heat", _BRACKET_JOB, _BRACKET),
            Page("strength", "strength", "Strength", _BRACKET_JOB, _BRACKET, example_when="empty"),
            Page(
                "inspect",
                "inspection",
                "Inspect",
                f"{_BRACKET_JOB}&wfs=350in/min&volts=27V&travel=11in/min"
                "&leg_found=9/32in&leg2_found=9/32in&undercut=1/64in&cracks=no",
                "Example: a weld of bracket MB-3",
                example_when="empty",
            ),
            Page("cost", "money", "Cost", _BRACKET_JOB, _BRACKET, has_table=True),
            Page("supplies", "supply", "Supplies", _BRACKET_JOB, _BRACKET, has_table=True),
            Page(
                "list",
                "weld_list",
                "Weld list",
                f"{_BRACKET_JOB}&set_up=30min&margin=25%25&lines={_BRACKET_LINES}",
                f"{_BRACKET}, eight welds",
                example_when="empty",
                has_table=True,
            ),
            Page("coupons", "coupons", "Coupons", _BRACKET_JOB, _BRACKET, has_table=True),
            Page("card", "card", "Card", f"{_BRACKET_JOB}&piece=Bracket MB-3", _BRACKET),
            Page("shop", "machine", "Shop", _BRACKET_JOB, _BRACKET),
        )
    }
)
"""The pages by name, in the order of the bar at the foot."""
