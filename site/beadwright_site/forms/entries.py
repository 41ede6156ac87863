"""Entries of a form: what was typed, what a blank means, what was wrong, whether it is kept."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from beadwright.typed_number import short

_FIGURE = re.compile(r"[1-9]")
_LEAD = re.compile("[,:] ")
"""Ends what a blank says before its figure: the usual, 5/16 in."""
_PLAIN = re.compile(r"[^\w-]", re.ASCII)

Choices = Sequence[tuple[str, str, str]]
"""Value, word and a word under it, for each choice of an entry."""


@dataclass(frozen=True, slots=True)
class Option:
    """One choice: the value sent, the word, a word under it."""

    value: str
    word: str
    under: str
    chosen: bool


def options_of(choices: Choices, wanted: str, blank: str = "") -> tuple[Option, ...]:
    """Return choices with the one wanted marked.

    What cannot be taken is one more of them: it stays in the form until it is changed.

    Args:
        choices: Value, word and a word under it.
        wanted: The value wanted.
        blank: Word of the choice that leaves it blank; none if empty.
    """
    options = [
        Option(value, word, under, value.lower() == wanted.lower())
        for value, word, under in choices
    ]
    if blank:
        options.insert(0, Option("", blank, "", not wanted))
    if options and not any(option.chosen for option in options):
        options.append(Option(wanted, short(wanted), "not known", True))
    return tuple(options)


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """One entry.

    Attributes:
        key: Name it is sent under.
        label: What it is.
        value: As typed.
        blank: What a blank means.
        unit: Unit a bare number takes.
        words: True if it is a text, not a number.
        fractions: True if shop fractions help in typing it.
        options: Choices; empty for a text entry.
        errors: What was wrong.
        keep: Name the phone keeps it under, or empty.
        tag: Whose figure a blank is: ``invented``, ``kept``, or empty.
        other: What stands in the line for a choice not offered; None where there is no such line.
        hidden: True if this joint does not ask it.
        lent: True if it is the example's leg: it goes when another plate is written.
    """

    key: str
    label: str
    value: str
    blank: str
    unit: str
    fractions: bool
    options: tuple[Option, ...]
    errors: tuple[str, ...]
    words: bool = False
    keep: str = ""
    tag: str = ""
    other: str | None = None
    hidden: bool = False
    lent: bool = False

    @property
    def id(self) -> str:
        """Id of its element."""
        return _PLAIN.sub("-", self.key)

    @property
    def holds(self) -> str:
        """What it now says in a word or two; empty where it is worked out, or as another way."""
        if self.options:
            words = (o.word for o in self.options if o.chosen and o.value not in ("", "auto"))
            return next(words, "")
        text = self.value or self.blank
        if not self.value and (not _FIGURE.search(text) or text.startswith("auto")):
            return ""
        if self.words:
            return text
        figure = text if self.value else _LEAD.split(text)[-1]
        return f"{self.label.partition(',')[0].lower()} {figure}"


@dataclass(frozen=True, slots=True)
class EntryGroup:
    """Entries that belong together.

    Attributes:
        key: Its id.
        title: What they are about.
        entries: The entries.
        open: True if the group stands open.
        links: Links under it: word and query.
        words: A line under the title, or empty.
    """

    key: str
    title: str
    entries: tuple[Entry, ...]
    open: bool = False
    links: tuple[tuple[str, str], ...] = ()
    words: str = ""

    @property
    def holds(self) -> str:
        """What its entries now say, in a line."""
        return " · ".join(entry.holds for entry in self.entries if entry.holds and not entry.hidden)


def entry_group(
    key: str,
    title: str,
    entries: Sequence[Entry],
    words: str = "",
    *,
    links: tuple[tuple[str, str], ...] = (),
    is_open: bool = False,
) -> EntryGroup:
    """Return entries as a group, open if asked or if one of them is wrong.

    Args:
        key: Its id.
        title: What they are about.
        entries: The entries.
        words: A line under the title, or empty.
        links: Links under it: word and query.
        is_open: True if it stands open.
    """
    wrong = any(entry.errors for entry in entries)
    return EntryGroup(key, title, tuple(entries), is_open or wrong, links, words)
