"""A page of an answer: from a query to the parts it shows, for every page the same way."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cache
from typing import Any, cast

from markupsafe import Markup

from beadwright.api import answer
from beadwright.errors import FieldErrors
from beadwright.job.page_query import PageAnswered
from beadwright.pages import PAGES
from beadwright.units import System
from beadwright_site.forms.asked import Asked, Kept, read_asked
from beadwright_site.forms.filling import Filling
from beadwright_site.forms.page_form import PageForm
from beadwright_site.forms.typed import with_units
from beadwright_site.links import query_of
from beadwright_site.page_table import SITE_PAGES
from beadwright_site.parts.cited_notes import cited_notes
from beadwright_site.parts.page_parts import PageParts
from beadwright_site.rendering import draw_part, render

Views = Mapping[str, Callable[[], Mapping[str, Any]]]
"""What each part shows, by element id; worked out when the part is drawn."""


@dataclass(frozen=True, slots=True)
class Answered[A: PageAnswered]:
    """An answer, and what it was asked with.

    Attributes:
        found: The answer.
        typed: Known entries as typed, bare numbers with the unit they were meant in.
        asked: What was asked.
        whose: Whose job it is, in words: the example's or yours.
    """

    found: A
    typed: Mapping[str, str]
    asked: Asked
    whose: str

    @property
    def filling(self) -> Filling:
        """What the form is filled with."""
        asked = self.asked
        return Filling(self.typed, asked.held, asked.system, lent=asked.lent)


@dataclass(frozen=True, slots=True)
class PageView:
    """How a page shows an answer.

    Attributes:
        title: The answer in a few words, for the browser's tab.
        state: The line over the answer.
        parts: What each part shows, but for those every page has.
    """

    title: str
    state: str
    parts: Views


@dataclass(frozen=True, slots=True)
class AnswerPage[A: PageAnswered]:
    """A page of an answer.

    Attributes:
        name: Its name.
        parts: Element ids of its parts in the page's order; each is drawn by a template of its id.
        form: Its form; without an answer where what was asked could not be taken.
        view: How it shows an answer.
        topics: Keys of the topics of Method its numbers come from.
        lists: Further lists of part ids its script is told, by name.
        read: How what is asked is read.
        keeps_in_address: True if what the shop keeps and the answer uses goes into the address, so
            that a link means the same elsewhere.
    """

    name: str
    parts: tuple[str, ...]
    form: Callable[[Filling, A | None], PageForm]
    view: Callable[[Answered[A]], PageView]
    topics: tuple[str, ...]
    lists: Mapping[str, tuple[str, ...]] = field(default_factory=dict[str, tuple[str, ...]])
    read: Callable[[str, str, Kept], Asked] = read_asked
    keeps_in_address: bool = False

    def show(self, query: str, kept: Kept = None, parts: Sequence[str] | None = None) -> PageParts:
        """Return the page's parts for a query.

        Args:
            query: The query string.
            kept: What the phone keeps, by name.
            parts: Which of ``parts`` to draw; None for all. A refusal always comes whole.
        """
        asked = self.read(self.name, query, kept)
        try:
            found = cast("A", answer(self.name, asked.query, asked.kept))
        except FieldErrors as error:
            return self._refused(asked, {**error.messages, **asked.wrong})
        if asked.wrong:
            return self._refused(asked, asked.wrong)
        return self._answered(asked, found, self.parts if parts is None else parts)

    def _refused(self, asked: Asked, messages: Mapping[str, list[str]]) -> PageParts:
        form = self.form(Filling(asked.typed, asked.held, asked.system, messages), None)
        keys = form.keys
        general = [text for key, texts in messages.items() if key not in keys for text in texts]
        unknown = any(key not in keys and key not in PAGES[self.name].fields for key in messages)
        without = query_of(asked.typed) if unknown else ""
        html = {
            "state": draw_part(self.name, "state", line=_refusal(len(messages))),
            "job-form": draw_part(
                self.name, "job-form", **form.view(asked.typed, general, without)
            ),
            **{part: draw_part(self.name, part, **shown) for part, shown in form.beside.items()},
        }
        return PageParts(False, query_of(asked.typed), "Not taken", html, dict(messages))

    def _answered(self, asked: Asked, found: A, parts: Sequence[str]) -> PageParts:
        typed = self._written_out(asked)
        whose = PAGES[self.name].example_name if asked.example else "Your job"
        answered = Answered(found, typed, asked, whose)
        view = self.view(answered)
        form = cache(lambda: self.form(answered.filling, found))
        views: Views = {
            "units-switch": lambda: _switch(asked.system, typed),
            "state": lambda: {"line": view.state},
            "job-form": lambda: form().view(typed),
            "notes": lambda: {"notes": cited_notes(found.notes, asked.system)},
            **view.parts,
        }
        own = {"notes": {"own": _own_switch(found, typed)}}
        html = {
            part: draw_part(
                self.name,
                part,
                **(views[part]() if part in views else form().beside[part]),
                **own.get(part, {}),
            )
            for part in parts
            if part in self.parts
        }
        return PageParts(True, "" if asked.example else query_of(typed), view.title, html)

    def _written_out(self, asked: Asked) -> dict[str, str]:
        """Return the known entries, bare numbers with the unit they were meant in."""
        typed = asked.typed
        if self.keeps_in_address:
            both = {**asked.kept, **typed}
            typed = {key: both[key] for key in PAGES[self.name].defaults if both.get(key)}
        return with_units(typed, PAGES[self.name].fields, asked.system)

    def link(self, query: str, kept: Kept, tell: Collection[str], *, short: bool = True) -> str:
        """Return the query of a link to what a query asks.

        Args:
            query: The query string.
            kept: What the phone keeps, by name.
            tell: What private things may leave: ``prices``, ``names``.
            short: True to pack a long one.
        """
        from beadwright_site.parts.shared_link import shared_query, short_query  # seldom wanted

        asked = self.read(self.name, query, kept)
        told = shared_query(self.name, self._written_out(asked), asked.kept, tell)
        return short_query(told) if short else told

    def whole(self, query: str) -> str:
        """Return the whole page for a query, as Flask answers it and as it is frozen.

        Args:
            query: The query string.
        """
        shown, page = self.show(query), SITE_PAGES[self.name]
        parts = {id: Markup(shown.html.get(id, f'<div id="{id}"></div>')) for id in self.parts}
        lists = {"parts": self.parts, "private": _private(self.name), **self.lists}
        return render(f"{page.folder}/page.html", page.name, shown=shown, parts=parts, lists=lists)


def _private(page: str) -> tuple[str, ...]:
    """Keys that leave only when ticked, those of later ways by their plain name."""
    from beadwright_site.forms.kept import bare  # only whole pages tell it; the phone draws parts
    from beadwright_site.parts.shared_link import private_keys

    keys = (key for held in private_keys(page).values() for key in held)
    return tuple(sorted({bare(key) for key in keys}))


def _refusal(count: int) -> str:
    return "One entry cannot be taken" if count == 1 else f"{count} entries cannot be taken"


def _own_switch(found: PageAnswered, typed: Mapping[str, str]) -> dict[str, str] | None:
    """What the switch of the shop's own numbers shows; None where they count for nothing."""
    if not any(found.query.own_notes()):
        return None
    rest = {key: text for key, text in typed.items() if key != "own"}
    if found.query.asked.own == ():
        return {"query": query_of(rest), "words": "Count your own numbers"}
    return {"query": query_of({**rest, "own": "off"}), "words": "Show this as published"}


def _switch(system: System, typed: Mapping[str, str]) -> dict[str, Any]:
    """What the switch of units shows: the units, and the query in the other ones."""
    other = "us" if system == "si" else "si"
    return {"system": system, "query": query_of({**typed, "units": other})}
