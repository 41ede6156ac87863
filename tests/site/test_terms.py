"""One meaning, one term: what the trade calls it, on every page and in every message."""

from __future__ import annotations

import re
from collections.abc import Iterator
from html import unescape
from importlib import import_module
from pkgutil import iter_modules

import pytest
from flask.testing import FlaskClient

import beadwright.words.english as catalogs
from beadwright.pages import PAGES
from beadwright.words.text import Plural, Rounded, Text
from beadwright.words.wording import catalogue
from beadwright_site.page_table import SITE_PAGES

SAY_INSTEAD = {
    r"\bMind\b": "Caution, the word of standards for what may hurt",
    r"\btorch(es)?\b": "gun: a torch burns gas",
    r"\bgaps?\b(?!=)": "root opening, AWS A3.0; 'gap=' is a key of the query",
    r"\bother plate\b": "vertical plate, second plate or upper plate: which one is said",
    r"\bplate lying down\b": "bottom plate",
    r"\bleg up\b": "leg on the vertical plate",
    r"\bours\b": "auto, of what is chosen for the welder",
    r"\b(?<!\()(tip.to.work)\b(?!\))": "stickout (tip to work)",
    r"\bfrom memory\b|\bremembered\b": "not checked against the book",
    r"\bleast (time|heat)\b": "fastest, coolest",
    r"\blaid metal\b": "deposition rate, weld metal",
    r"\blaid an hour\b": "deposition rate",
    r"\blaid over wire\b": "deposition efficiency",
    r"\bwelded twice\b": "rework",
    r"\boff the arc\b": "non-arc time",
    r"\bchange-over in all\b|\bpaid once\b": "change-over cost",
    r"\bdraws?\b(?= (made|of \d|in \d))": "what-ifs",
    r"\bbeside the bead\b": "peak HAZ hardness",
    r"\bpulls the part\b|\bpulls its part\b": "distortion",
    r"\blabour\b": "labor",
    r"\bgalvanis": "galvanized",
    r"\bbevelled\b": "beveled",
    r"\bcentre(s|d)?\b": "center",
    r"\bearthing\b": "grounding",
    r"\bmetres?\b|\bmillimetres?\b": "meter",
    r"\bturning center\b": "instantaneous center, AISC 360",
    r"\btwo limits fight\b": "two limits conflict",
    r"\blet go of\b": "set back to auto",
}
"""Words no page says, and what the trade says in their place."""

GRID = (
    "", "units=si", "joint=lap&plate=10ga", "joint=corner&plate=1/4in&units=si",
    "joint=v&plate=1/2in", "joint=double-v&plate=3/4in",
    "joint=tee&plate=3/4in&leg=1/2in&wire=E71T-1M", "joint=plug",
    "joint=tee&skew=70&gap=1/8in", "joint=square&plate=1/2in", "gas=CO2&transfer=spray",
    "wfs=900in/min", "plate=16ga&leg=3/8in", "travel=100in/min",
    "wire=ER70S-3&plate=1in&steel=A514",
)  # fmt: skip
"""Jobs that bring notes, cautions and refusals of every kind."""


def wrong_words(text: str) -> list[str]:
    """Return what of the words no page says stands in a text, with what to say."""
    return [
        f"{found.group()!r} in {text[max(0, found.start() - 40) : found.end() + 40]!r}: {instead}"
        for pattern, instead in SAY_INSTEAD.items()
        for found in re.finditer(pattern, text, re.IGNORECASE)
    ]


def seen(html: str) -> str:
    """Return what a reader of a page sees or is told: its text, labels and blanks."""
    named = re.findall(r'(?:aria-label|placeholder|title|alt)="([^"]*)"', html)
    bare = re.sub(r"<(script|style)\b.*?</\1>", " ", html, flags=re.DOTALL)
    text = re.sub(r"<[^>]+>", " ", bare)
    return " ".join(unescape(f"{text} {' · '.join(named)}").split())


def _texts(text: Text) -> Iterator[str]:
    if isinstance(text, Plural):
        yield from (text.one, text.other)
    elif isinstance(text, Rounded):
        yield from (text.us, text.si)
    else:
        yield re.sub(r"\{(\w+)", "{", text)


def _told(text: str) -> str:
    """A help without the values of the query it lists."""
    return re.sub(r"least-(time|heat)", "", text)


ROOMS = [m.name.removesuffix("_words") for m in iter_modules(catalogs.__path__)]


@pytest.mark.parametrize("room", ROOMS)
def test_catalogs_say_the_terms(room: str) -> None:
    import_module(f"beadwright.words.english.{room}_words")
    found = [
        (key, wrong)
        for key, text in catalogue(room).items()
        for said in _texts(text)
        for wrong in wrong_words(re.sub(r"\{\w*[^}]*\}", "…", said))
    ]
    assert not found


@pytest.mark.parametrize("page", PAGES)
def test_entries_say_the_terms(page: str) -> None:
    found = [
        (key, wrong)
        for key, field in PAGES[page].fields.items()
        for wrong in wrong_words(f"{field.label} · {field.blank} · {_told(field.help)}")
    ]
    assert not found


@pytest.mark.parametrize("page", PAGES)
def test_pages_say_the_terms(page: str) -> None:
    for query in GRID:
        shown = SITE_PAGES[page].load().show(query)
        found = [w for html in shown.html.values() for w in wrong_words(seen(html))]
        assert not found, query


@pytest.mark.parametrize("address", ["/method/", "/sheets/", "/sheets/wall.html"])
def test_still_pages_say_the_terms(client: FlaskClient, address: str) -> None:
    assert not wrong_words(seen(client.get(address).text))


def test_wrong_words_are_found() -> None:
    assert wrong_words("Mind the gap between torch and plate.")
    assert wrong_words("Tip to work 5/8 in")
    assert not wrong_words("Stickout (tip to work) 5/8 in, gap=1/16in")
