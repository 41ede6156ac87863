"""The form of a page: its groups of entries, and entries that stand beside what they answer."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from beadwright_site.forms.entries import Entry, EntryGroup


@dataclass(frozen=True, slots=True)
class PageForm:
    """A form.

    Attributes:
        groups: Its groups.
        beside: Entries outside it, by the part they stand in and their name in its template.
        more: What else its template shows.
        unsent: Keys whose entry is left behind when the form is sent.
    """

    groups: tuple[EntryGroup, ...]
    beside: Mapping[str, Mapping[str, tuple[Entry, ...]]] = field(
        default_factory=dict[str, Mapping[str, tuple[Entry, ...]]]
    )
    more: Mapping[str, Any] = field(default_factory=dict[str, Any])
    unsent: frozenset[str] = frozenset()

    @property
    def keys(self) -> frozenset[str]:
        """Every key with an entry."""
        return frozenset(entry.key for entry in self._entries())

    def _entries(self) -> Iterator[Entry]:
        for group in self.groups:
            yield from group.entries
        for part in self.beside.values():
            for entries in part.values():
                yield from entries

    def view(
        self, typed: Mapping[str, str], general: Sequence[str] = (), without: str = ""
    ) -> dict[str, Any]:
        """Return what its template shows.

        Args:
            typed: Entries as typed; what has no entry goes along hidden, so that sending the form
                loses nothing.
            general: Messages on what has no entry.
            without: The query without what nothing knows; empty where there is no such thing.
        """
        left_out = {*self.keys, *self.unsent}
        hidden = tuple((key, text) for key, text in typed.items() if key not in left_out)
        return {
            "groups": self.groups,
            "general": general,
            "without": without,
            "hidden": hidden,
            **self.more,
        }
