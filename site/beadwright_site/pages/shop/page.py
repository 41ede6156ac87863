"""Shop: what machine and circuit do with the planned job, and all that is asked only once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from typing import Any, Final

from beadwright.api import answer
from beadwright.errors import FieldErrors
from beadwright.machine.circuit import Check
from beadwright.machine.shop_page import STANDS_IN, ShopAnswer, demo_keys
from beadwright.machine.shop_query import DEFAULTS, ShopSchema
from beadwright.phrases import say
from beadwright.reading.queries import split_query
from beadwright.results import Note
from beadwright_site.forms.entries import measures_of, with_units
from beadwright_site.forms.example import EXAMPLE_NAME, asked_of
from beadwright_site.forms.kept import KEPT, check_kept, kept_for
from beadwright_site.forms.labels import names_of
from beadwright_site.forms.typed import LONGEST_ECHO, system_named
from beadwright_site.links import query_of
from beadwright_site.pages.cost.view import written
from beadwright_site.pages.shop.form import shop_form
from beadwright_site.parts.cited_notes import cited_notes
from beadwright_site.parts.facts import Fact
from beadwright_site.parts.frame import (
    Views,
    draw_parts,
    keys_of,
    refusal,
    state_view,
    switch_view,
    whole_page,
)
from beadwright_site.parts.job_card import job_card
from beadwright_site.parts.page_parts import PageParts

PARTS = ("units-switch", "state", "holds", "checks", "job-form", "notes", "file")
"""Element ids of the page's parts; each has a template of its own."""

NAME: Final = "shop"

HELD_WORDS = {"holds": "Holds", "close": "Close", "fails": "Fails"}


def show_shop(
    query: str, kept: Mapping[str, Any] | None = None, parts: Sequence[str] | None = None
) -> PageParts:
    """Return the page's parts for a query.

    Args:
        query: The query string; what the phone keeps may be typed here too, and wins.
        kept: What the phone keeps, by name.
        parts: Which of ``PARTS`` to draw; None for all. A refusal always comes whole.
    """
    held = {k: v for k, v in (kept or {}).items() if isinstance(v, str) and v}
    try:
        given = {k: v[:LONGEST_ECHO] for k, v in split_query(query).items() if v}
    except FieldErrors as error:
        return _refused({}, {}, held, error.messages)
    typed = {k: v for k, v in given.items() if k in DEFAULTS or k in KEPT or "@" in k}
    strange = {k: v for k, v in given.items() if k not in typed}
    texts = {**held, **typed}
    # What only other pages use is read here too: here is where it is asked.
    others = {k: v for k, v in texts.items() if k not in DEFAULTS and (k in KEPT or "@" in k)}
    _, wrong = check_kept({**others, "units": texts.get("units", "us")})
    mine = {k: v for k, v in typed.items() if k in DEFAULTS}
    asked, _ = asked_of(query_of({**mine, **strange}), DEFAULTS)
    try:
        found = answer(NAME, asked, kept_for(asked, held))
    except FieldErrors as error:
        return _refused(typed, texts, held, {**error.messages, **wrong})
    if wrong:
        return _refused(typed, texts, held, wrong)
    return _answered(found, typed, texts, held, PARTS if parts is None else parts)


def _refused(
    typed: Mapping[str, str],
    texts: Mapping[str, str],
    kept: Mapping[str, str],
    messages: Mapping[str, list[str]],
) -> PageParts:
    system = system_named(texts.get("units", ""))
    groups = shop_form(texts, kept, system, messages)
    shown = keys_of(groups)
    return refusal(NAME, typed, messages, shown, groups=groups, kept=len(kept),
                   hidden=_hidden(typed, shown))  # fmt: skip


def _hidden(typed: Mapping[str, str], shown: set[str]) -> tuple[tuple[str, str], ...]:
    return tuple((key, text) for key, text in typed.items() if key not in shown)


def _answered(
    found: ShopAnswer,
    typed: Mapping[str, str],
    texts: Mapping[str, str],
    kept: Mapping[str, str],
    parts: Sequence[str],
) -> PageParts:
    system = found.units
    measures = measures_of(ShopSchema)
    typed = with_units(typed, measures, system)
    groups = shop_form({**texts, **typed}, kept, system, {})
    shown = keys_of(groups)
    example = "leg" not in typed and found.query.typed.get("leg") is not None
    headline = headline_of(found)
    views: Views = {
        "units-switch": lambda: switch_view(system, typed),
        "state": lambda: state_view(example, EXAMPLE_NAME if example else "Your job"),
        "holds": lambda: {
            "headline": headline,
            "tone": tone_of(found),
            "job": job_card(found.dialled).line,
            "facts": tuple(circuit_facts(found)),
            "on": round(found.circuit.on_s / 60, 2),
            "on_text": f"{found.circuit.on_s / 60:.1f}",
            "off_text": f"{found.circuit.off_s / 60:.1f}",
            "amps": f"{found.circuit.load.current_a:.0f}",
        },
        "checks": lambda: {"checks": tuple(check_rows(found))},
        "job-form": lambda: {
            "groups": groups,
            "general": (),
            "kept": len(kept),
            "hidden": _hidden(typed, shown),
        },
        "notes": lambda: {"notes": cited_notes(shop_notes(found), found.units)},
        "file": lambda: {"kept": len(kept)},
    }
    html = draw_parts(NAME, parts, views)
    return PageParts(True, query_of(typed), f"{headline} · Shop", html)


def headline_of(found: ShopAnswer) -> str:
    """Return whether the shop can run the job, in a line."""
    named = {
        held: ", ".join(c.name.lower() for c in found.circuit.checks if c.held == held)
        for held in ("fails", "close")
    }
    if named["fails"]:
        return f"This job is too much: {named['fails']}"
    if named["close"]:
        return f"Holds, but close: {named['close']}"
    return "Machine and circuit hold this job"


def tone_of(found: ShopAnswer) -> str:
    """Return the class of the headline: switch if all holds, too-close, or fails."""
    held = {check.held for check in found.circuit.checks}
    return "fails" if "fails" in held else "too-close" if "close" in held else "switch"


def shop_notes(found: ShopAnswer) -> Iterator[Note]:
    """Yield the notes past the checks, which stand on their own; entries named as in the form."""
    checked = {check.text for check in found.circuit.checks}
    for note in found.notes:
        if note.key == STANDS_IN:
            names = names_of(demo_keys(found.query))
            yield replace(note, phrase=say("machine.demo-stands-in-marked", names=names))
        elif note.phrase not in checked:
            yield note


def circuit_facts(found: ShopAnswer) -> Iterator[Fact]:
    """Yield what the job asks of machine and circuit."""
    circuit, system = found.circuit, found.units
    yield Fact("", f"≈ {written(circuit.load.current_a, 'current', system)}", "current")
    yield Fact("", f"{circuit.duty:.0%}", "duty cycle there")
    yield Fact("", written(circuit.all_day_a, "current", system), "without a break")
    yield Fact("", written(circuit.machine_v, "volts", system), "at the machine")
    yield Fact("", written(circuit.primary_a, "current", system), "from the wall, arc on")
    yield Fact("", f"{circuit.apparent_va / 1000:.1f} kVA", "from wall or generator")


def check_rows(found: ShopAnswer) -> Iterator[tuple[str, str, str, str, str, Check]]:
    """Yield held, word, name, asked and limit of each check, and the check."""
    for check in found.circuit.checks:
        if check.measure == "power":
            asked, limit = (f"{value / 1000:.1f} kVA" for value in (check.asked, check.limit))
        else:
            asked = written(check.asked, check.measure, found.units)
            limit = written(check.limit, check.measure, found.units)
        yield check.held, HELD_WORDS[check.held], check.name, asked, limit, check


def shop_page(query: str) -> str:
    """Return the whole page for a query, as Flask answers it and as it is frozen.

    Args:
        query: The query string.
    """
    shown = show_shop(query)
    return whole_page(NAME, shown, PARTS)
