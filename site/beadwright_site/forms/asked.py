"""What a page is asked: its query, the example's job where none is said, what the shop keeps."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from beadwright.job.job_entries import FIELDS as JOB
from beadwright.pages import PAGES, Page
from beadwright.units import System, system_named
from beadwright_site.forms.typed import read_entries

Kept = Mapping[str, Any] | None
"""What the phone keeps, by name."""

NO_JOB = frozenset({
    "units", "machine_amps", "machine_volts", "rated_amps", "duty", "breaker", "supply", "phase",
})  # fmt: skip
"""Keys that say nothing of what is to be welded."""


@dataclass(frozen=True, slots=True)
class Asked:
    """What a page is asked.

    Attributes:
        query: The query the core answers.
        kept: The shop's own defaults by the page's keys.
        typed: Known entries as typed.
        held: What the form is filled with where nothing was typed.
        example: True if nothing at all was asked and the page's example stands.
        lent: True if the job is the example's, asked or not.
        wrong: Messages on entries the core is not asked about.
    """

    query: str
    kept: Mapping[str, str]
    typed: Mapping[str, str]
    held: Mapping[str, str]
    example: bool = False
    lent: bool = False
    wrong: Mapping[str, list[str]] = field(default_factory=dict[str, list[str]])

    @property
    def system(self) -> System:
        """Units of bare numbers."""
        return system_named(self.typed.get("units") or self.held.get("units", ""))


def with_example(page: Page, query: str) -> tuple[str, bool]:
    """Return the query to answer: with the page's example where it stands with one.

    Args:
        page: The page.
        query: The query string.

    Returns:
        The query, and whether nothing at all was asked.
    """
    text = query.removeprefix("?").strip()
    if page.example_when == "never":
        return text, False
    if not text:
        return page.example, True
    if page.example_when == "empty":
        return text, False
    typed = read_entries(text, page.defaults)
    if any(key in JOB and key not in NO_JOB for key in typed):
        return text, False
    return f"{text}&{page.example}", False


def read_asked(name: str, query: str, kept: Kept) -> Asked:
    """Return what a page is asked.

    Args:
        name: The page's name.
        query: The query string.
        kept: What the phone keeps, by name.
    """
    page = PAGES[name]
    text, example = with_example(page, query)
    own: dict[str, str] = {}
    if kept:  # a phone that keeps nothing need not read how things are kept
        from beadwright_site.forms.kept import kept_for

        own = kept_for(text, kept)
    lent = text != query.removeprefix("?").strip()
    return Asked(text, own, read_entries(text, page.defaults), own, example, lent)
