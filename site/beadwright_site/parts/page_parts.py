"""What a page shows for a query."""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class PageParts:
    """The parts of a page for one query, to put in place or to build the whole page from.

    Attributes:
        ok: False if something typed could not be taken.
        query: The query as it should stand in the address bar.
        title: Title of the page.
        html: Outer HTML by element id; with errors only the parts that say so.
        errors: Messages by field.
    """

    ok: bool
    query: str
    title: str
    html: dict[str, str]
    errors: dict[str, list[str]] = field(default_factory=dict[str, list[str]])
