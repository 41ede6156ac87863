"""Passes: every bead drawn in its place, numbered, with its own settings; the schedule."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any, Final

from beadwright import units
from beadwright.api import answer
from beadwright.errors import FieldErrors
from beadwright.heating.heat_query import DEFAULTS as HEAT_DEFAULTS
from beadwright.job.job_query import DEFAULTS as JOB_DEFAULTS
from beadwright.joint.joints import Dimension
from beadwright.pages import PAGES
from beadwright.passes.pass_beads import PassPlan
from beadwright.passes.pass_plan import MOST_BEADS
from beadwright.passes.passes_page import PassesAnswer
from beadwright.passes.passes_query import DEFAULTS, PassesSchema
from beadwright.units import System
from beadwright_site.drawings.passes_drawing import draw_passes
from beadwright_site.forms.entries import hidden, measures_of, read_entries, with_units
from beadwright_site.forms.example import asked_of
from beadwright_site.forms.kept import kept_for
from beadwright_site.forms.typed import system_named
from beadwright_site.links import query_of
from beadwright_site.pages.passes.bead_card import bead_card
from beadwright_site.pages.passes.bead_words import arc_words
from beadwright_site.pages.passes.form import passes_form
from beadwright_site.pages.passes.other_plans import other_plans
from beadwright_site.pages.passes.schedule import schedule_rows
from beadwright_site.parts.cited_notes import cited_notes
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

PARTS = ("units-switch", "state", "plan", "picture", "bead", "count", "job-form", "schedule",
         "others", "notes", "take")  # fmt: skip
"""Element ids of the page's parts; each has a template of its own."""

LATER = ("others",)
"""Parts asked for when the others stand: they take several plans to work out."""

AHEAD = ("state", "plan", "picture", "bead")
"""Parts of the first screen, shown a frame ahead of the rest."""

STEPPED = ("units-switch", "picture", "bead", "schedule")
"""Parts that follow from bead to bead."""

NAME: Final = "passes"
EXAMPLE_NAME = "Example: a heavier bracket"


def show_passes(
    query: str, kept: Mapping[str, Any] | None = None, parts: Sequence[str] | None = None
) -> PageParts:
    """Return the page's parts for a query.

    Args:
        query: The query string.
        kept: What the phone keeps, by name.
        parts: Which of ``PARTS`` to draw; None for all. A refusal always comes whole.
    """
    asked, example = asked_of(query, DEFAULTS, PAGES[NAME].example)
    shop = kept_for(asked, kept)
    try:
        found = answer(NAME, asked, shop)
    except FieldErrors as error:
        return _refused(asked, shop, error)
    return _answered(found, shop, example, PARTS if parts is None else parts)


def _refused(query: str, kept: Mapping[str, str], error: FieldErrors) -> PageParts:
    typed = read_entries(query, DEFAULTS)
    system = system_named(typed.get("units") or kept.get("units", ""))
    groups = passes_form(typed, kept, system, None, error.messages)
    last = query_of({**typed, "at": ""}) if "at" in error.messages else ""
    return refusal(NAME, typed, error.messages, keys_of(groups), groups=groups, last=last,
                   hidden=_hidden(typed, groups))  # fmt: skip


def _hidden(typed: Mapping[str, str], groups: Any) -> tuple[tuple[str, str], ...]:
    """What has no entry, but for the bead looked at: of another plan it is another bead."""
    return tuple((key, text) for key, text in hidden(typed, groups) if key != "at")


def _answered(
    page: PassesAnswer, kept: Mapping[str, str], example: bool, parts: Sequence[str]
) -> PageParts:
    system, found = page.units, page.found
    typed = with_units(page.query.typed, measures_of(PassesSchema), system)
    whole = {key: text for key, text in typed.items() if key != "at"}
    headline = headline_of(found)
    notes = cited_notes(page.notes, page.units)
    loud = [note for note in notes if note.level in ("stop", "out")]

    def form() -> dict[str, Any]:
        groups = passes_form(typed, kept, system, page)
        return {"groups": groups, "general": (), "last": "", "hidden": _hidden(typed, groups)}

    views: Views = {
        "units-switch": lambda: switch_view(system, typed),
        "state": lambda: state_view(example, EXAMPLE_NAME if example else "Your job"),
        "plan": lambda: {
            "headline": headline,
            "tone": tone_of(page),
            "line": job_card(page.dialled).line,
            "sums": sums_of(found, system),
            "loud": loud,
            "ways": tuple(ways_of(page, whole)),
            "dial_in": _only(whole, JOB_DEFAULTS),
        },
        "picture": lambda: picture_of(page, whole),
        "bead": lambda: {
            "card": bead_card(found, page.bead, system),
            "heat": _only(whole, HEAT_DEFAULTS),
        },
        "count": lambda: count_of(found, whole),
        "schedule": lambda: {
            "rows": tuple(schedule_rows(found)),
            "at": page.at,
            "stem": query_of(whole),
            "heads": tuple(
                units.symbol(measure, system)
                for measure in ("wire_feed", "volts", "travel", "heat_input")
            ),
            "total": arc_words(found.arc_time_s) if found.open else "–",
        },
        "others": lambda: {"plans": tuple(other_plans(page, whole))},
        "notes": lambda: {"notes": [note for note in notes if note not in loud]},
        "take": lambda: {},
        "job-form": form,
    }
    html = draw_parts(NAME, parts, views)
    asked = "" if example else query_of(typed)
    return PageParts(True, asked, f"{headline} · Passes", html)


def _only(typed: Mapping[str, str], keys: Mapping[str, str]) -> str:
    """The query another page is asked with."""
    return query_of({key: text for key, text in typed.items() if key in keys})


def headline_of(found: PassPlan) -> str:
    """Return the plan in a line, or what stops it."""
    count = len(found.beads)
    if not found.open:
        stuck = [bead.number for bead in found.beads if bead.laid is None]
        if 0 < len(stuck) < count:
            return f"{count} passes stop at bead {stuck[0]}"
        return "Not one pass can be laid so" if count == 1 else f"{count} passes cannot be laid so"
    time = f"{arc_words(found.arc_time_s)} arc a weld"
    if count == 1:
        return f"1 pass, {time}"
    layers = sum(found.layers)
    stack = f" in {layers} layers" if layers > 1 else " in one layer"
    sides = " from both sides" if len(found.layers) > 1 else ""
    return f"{count} passes{stack}{sides}, {time}"


def tone_of(page: PassesAnswer) -> str:
    """Return the class of the headline: fails, too-close, or none."""
    levels = {note.level for note in page.notes}
    if not page.found.open or "stop" in levels:
        return "fails"
    return "too-close" if "out" in levels else ""


def sums_of(found: PassPlan, system: System) -> str:
    """Return what the whole weld takes, in a line; empty if it cannot be laid."""
    hottest = found.hottest
    if not found.open or hottest is None or hottest.laid is None:
        return ""
    wire = f"{units.show(found.wire_kg, 'mass', system)} {units.symbol('mass', system)} of wire"
    heat = hottest.laid.heat_en_j_m if system == "si" else hottest.laid.heat_j_m
    kind = "EN" if system == "si" else "AWS"
    hot = f"{units.show(heat, 'heat_input', system)} {units.symbol('heat_input', system)} {kind}"
    where = f", bead {hottest.number}" if len(found.beads) > 1 else ""
    most = "hottest " if len(found.beads) > 1 else ""
    return f"{wire} a weld; {most}{hot}{where}"


def ways_of(page: PassesAnswer, typed: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    """Yield what would open a plan that does not hold: words and query, the nearest plan first."""
    near = page.nearest
    if near is not None:
        time = f", {arc_words(near.arc_time_s)} arc" if near.arc_time_s is not None else ""
        yield f"{near.text}{time}", query_of({**typed, **near.changes})
    for way in page.ways_out:
        yield way.text, query_of({**typed, **way.changes})


def picture_of(page: PassesAnswer, typed: Mapping[str, str]) -> dict[str, Any]:
    """Return what the picture and the buttons under it are made of.

    Args:
        page: The answer.
        typed: What was typed, but for the bead looked at.
    """
    found, at = page.found, page.at
    count = len(found.beads)

    def write(dimension: Dimension) -> str:
        return units.show(dimension.value_m, "leg", page.units)

    def step(number: int) -> str:
        return query_of({**typed, "at": str(number)})

    this = found.beads[at - 1]
    here = (this.side, this.slot.layer)
    firsts = [b.number for b in found.beads if b.slot.place == 1]
    before = [number for number in firsts if number < at]
    after = [b.number for b in found.beads if b.number > at and (b.side, b.slot.layer) != here]
    return {
        "drawing": draw_passes(found, at, write),
        "at": at,
        "count": count,
        "stem": query_of(typed),
        "spoken": f"{headline_of(found)}. Section to scale, torch at bead {at}",
        "back": step(at - 1) if at > 1 else "",
        "next": step(at + 1) if at < count else "",
        "again": step(1) if count > 1 else "",
        "layer_back": step(before[-1]) if before and count > 12 else "",
        "layer_next": step(after[0]) if after and count > 12 else "",
        "caption": caption_of(page),
    }


def caption_of(page: PassesAnswer) -> str:
    """Return how the picture is to be read where it is not plain."""
    found = page.found
    words: list[str] = []
    if found.job.position.orientation == "overhead":
        words.append("Drawn as it hangs: you weld from below.")
    elif page.found.job.position.orientation.startswith("vertical"):
        words.append("Cut across the weld.")
    if len(found.layers) > 1:
        first = next(bead.number for bead in found.beads if bead.side == 2)
        words.append(f"From bead {first} on: the other side.")
    if found.shape.round:
        words.append("Each bead runs round the wall and shows twice.")
    return " ".join(words)


def count_of(found: PassPlan, typed: Mapping[str, str]) -> dict[str, Any]:
    """Return the buttons for more and fewer passes, and for weaving.

    Args:
        found: The plan.
        typed: What was typed, but for the bead looked at.
    """
    count, least = len(found.beads), len(found.layers)

    def ask(**changes: str) -> str:
        return query_of({**typed, **changes})

    return {
        "count": count,
        "fewer": ask(passes=str(count - 1)) if count > least else "",
        "more": ask(passes=str(count + 1)) if count < MOST_BEADS else "",
        "fewest": ask(passes="") if found.asked.count is not None else "",
        "weave": ask(bead="weave"),
        "stringer": ask(bead="stringer"),
        "stringers": found.asked.stringers,
        "whose": "as you asked" if found.asked.count is not None else "the fewest that hold",
    }


def passes_page(query: str) -> str:
    """Return the whole page for a query, as Flask answers it and as it is frozen.

    Args:
        query: The query string.
    """
    shown = show_passes(query)
    return whole_page(NAME, shown, PARTS, later=LATER, ahead=AHEAD, stepped=STEPPED)
