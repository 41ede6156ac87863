"""Reads a page the way a test wants it: elements with their attributes and text."""

from __future__ import annotations

from dataclasses import dataclass, field
from html.parser import HTMLParser

VOID = {"meta", "link", "input", "br", "img", "hr", "base"}


@dataclass
class Element:
    """One element of a page."""

    tag: str
    attrs: dict[str, str]
    text: str = ""
    children: list[Element] = field(default_factory=list["Element"])


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.all: list[Element] = []
        self._open: list[Element] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        element = Element(tag, {name: value or "" for name, value in attrs})
        if self._open:
            self._open[-1].children.append(element)
        self.all.append(element)
        if tag not in VOID:
            self._open.append(element)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.all.append(Element(tag, {name: value or "" for name, value in attrs}))

    def handle_endtag(self, tag: str) -> None:
        while self._open and self._open.pop().tag != tag:
            pass

    def handle_data(self, data: str) -> None:
        for element in self._open:
            element.text += data


def elements(html: str) -> list[Element]:
    """Return every element of a page, in its order."""
    reader = _Reader()
    reader.feed(html)
    return reader.all


def by_id(html: str, key: str) -> Element:
    """Return the one element with an id."""
    found = [element for element in elements(html) if element.attrs.get("id") == key]
    assert len(found) == 1, f"{len(found)} elements with id {key}"
    return found[0]


def words(element: Element) -> str:
    """Return an element's text, white space folded."""
    return " ".join(element.text.split())


def inside(element: Element) -> list[Element]:
    """Return everything below an element."""
    return [e for child in element.children for e in (child, *inside(child))]
