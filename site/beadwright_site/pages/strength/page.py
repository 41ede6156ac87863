"""Strength: the leg the load asks for, what is used of it, and which link gives way first."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any, Final

from beadwright import units
from beadwright.api import answer
from beadwright.errors import FieldErrors
from beadwright.strength.strength_answer import StrengthAnswer
from beadwright.strength.strength_query import DEFAULTS, StrengthSchema
from beadwright_site.drawings.strength_drawing import draw_group
from beadwright_site.forms.entries import hidden, measures_of, read_entries, with_units
from beadwright_site.forms.example import EXAMPLE, EXAMPLE_NAME
from beadwright_site.forms.kept import kept_for
from beadwright_site.forms.typed import system_named
from beadwright_site.links import query_of
from beadwright_site.pages.cost.view import written
from beadwright_site.pages.strength.form import strength_form
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
from beadwright_site.parts.page_parts import PageParts

PARTS = ("units-switch", "state", "verdict", "picture", "job-form", "links", "sizes", "notes")
"""Element ids of the page's parts; each has a template of its own."""

NAME: Final = "strength"

ROUND = ("rectangle", "circle")


def show_strength(
    query: str, kept: Mapping[str, Any] | None = None, parts: Sequence[str] | None = None
) -> PageParts:
    """Return the page's parts for a query.

    Args:
        query: The query string.
        kept: What the phone keeps, by name.
        parts: Which of ``PARTS`` to draw; None for all. A refusal always comes whole.
    """
    text = query.removeprefix("?").strip()
    asked, example = (text, False) if text else (EXAMPLE, True)
    shop = kept_for(asked, kept)
    try:
        found = answer(NAME, asked, shop)
    except FieldErrors as error:
        return _refused(asked, shop, error)
    return _answered(found, shop, example, PARTS if parts is None else parts)


def _refused(query: str, kept: Mapping[str, str], error: FieldErrors) -> PageParts:
    typed = read_entries(query, DEFAULTS)
    system = system_named(typed.get("units") or kept.get("units", ""))
    groups = strength_form(typed, kept, system, error.messages)
    left = tuple(hidden(typed, groups))
    return refusal(NAME, typed, error.messages, keys_of(groups), groups=groups, hidden=left)


def _answered(
    found: StrengthAnswer, kept: Mapping[str, str], example: bool, parts: Sequence[str]
) -> PageParts:
    system = found.units
    typed = with_units(found.query.typed, measures_of(StrengthSchema), system)
    demo = frozenset(("py", "load_z", "load_x")) if found.task.demo_load else frozenset[str]()
    headline, reason = verdict_of(found)

    def write(value: float, measure: str) -> str:
        return written(value, measure, system)

    def form() -> dict[str, Any]:
        groups = strength_form(typed, kept, system, None, demo)
        return {"groups": groups, "general": (), "hidden": tuple(hidden(typed, groups))}

    whose = EXAMPLE_NAME if example else "Your job"
    made_up = ". Load made up" if found.task.demo_load else ""
    views: Views = {
        "units-switch": lambda: switch_view(system, typed),
        "state": lambda: state_view(example, f"{whose}{made_up}"),
        "verdict": lambda: {
            "headline": headline,
            "reason": reason,
            "tone": "switch" if found.holds and not _stopped(found) else "fails",
            "line": line_of(found),
            "facts": tuple(main_facts(found)),
        },
        "picture": lambda: {
            "drawing": draw_group(found, write),
            "spoken": spoken(found),
            "weakest": found.links[0].name,
        },
        "links": lambda: {"links": tuple(link_rows(found))},
        "sizes": lambda: {"facts": tuple(size_facts(found))},
        "notes": lambda: {"notes": cited_notes(found.notes, found.units)},
        "job-form": form,
    }
    html = draw_parts(NAME, parts, views)
    asked = "" if example else query_of(typed)
    return PageParts(True, asked, f"{headline} · Strength", html)


def _stopped(found: StrengthAnswer) -> bool:
    return any(note.level == "stop" for note in found.notes)


def verdict_of(found: StrengthAnswer) -> tuple[str, str]:
    """Return the verdict and the reason, in a foreman's words."""
    legs, weak, system = found.legs, found.links[0], found.units
    leg = written(legs.judged, "leg", system)
    where = " all round" if found.task.group.name in ROUND else ""
    weld = found.weld
    if legs.needed is None:
        return "No fillet holds this", "Longer weld, weld further apart, or a groove."
    if not legs.given:
        if weak.use > 1:
            return f"The {weak.name.split(',')[0]} does not hold", _reason(found)
        return f"Weld {leg}{where}", f"{weak.use:.0%} used. {_reason(found)}"
    if weak.use <= 1:
        return f"{leg}{where} holds; {weak.use:.0%} used", _reason(found)
    if weld.use > 1:
        needed = written(legs.needed, "leg", system)
        return f"{leg}{where} does not hold", f"{weld.use:.0%} of what it may. Weld {needed}."
    return f"The {weak.name.split(',')[0]} does not hold", _reason(found)


def _reason(found: StrengthAnswer) -> str:
    weak = found.links[0]
    return f"Weakest link: {weak.name}, {weak.use:.0%}."


def line_of(found: StrengthAnswer) -> str:
    """Return the job in a line: steel, plates, length of weld, filler, code."""
    task, system = found.task, found.units
    job = task.job
    plates = written(job.plate_m, "leg", system)
    if abs(job.plate2_m - job.plate_m) > 1e-9:
        plates = f"{units.show(job.plate2_m, 'leg', system)} on {plates}"
    whole = units.convert(task.properties.length_m * task.sides, "length", system)
    length = f"{whole:.4g} {units.symbol('length', system)}"
    filler = written(task.filler_pa, "stress", system)
    code = {"asd": "AISC, service loads", "lrfd": "AISC, factored loads", "en": "EN 1993",
            "en-directional": "EN 1993, directional"}[task.code]  # fmt: skip
    filler_part = "" if task.european else f", {filler} filler"
    return f"{task.steel.grade}, {plates}, {length} of weld{filler_part}. {code}."


def main_facts(found: StrengthAnswer) -> Iterator[Fact]:
    """Yield the numbers beside the verdict."""
    legs, system, weld = found.legs, found.units, found.weld
    needed = "none" if legs.needed is None else written(legs.needed, "leg", system)
    yield Fact("", needed, "leg strength asks")
    yield Fact("", written(weld.asked, "force_per_length", system), "at the worst point")
    yield Fact("", written(weld.holds, "force_per_length", system), "the weld holds there")
    yield Fact("", f"{weld.use:.0%}", "of the weld used")
    yield Fact("", _times(found), "this load it holds")
    yield Fact("", written(legs.throat, "length", system), "throat")


def _times(found: StrengthAnswer) -> str:
    times = found.load_times
    return f"{times:.2f} ×" if times < 100 else "over 100 ×"


def size_facts(found: StrengthAnswer) -> Iterator[Fact]:
    """Yield the sizes the code asks for."""
    legs, system = found.legs, found.units
    yield Fact("", written(legs.least, "leg", system), "least leg, code")
    most = "–" if legs.most is None else written(legs.most, "leg", system)
    yield Fact("", most, "most along the edge" if legs.most is not None else "no edge welded")
    yield Fact("", written(legs.one_pass, "leg", system), "most in one pass")
    yield Fact("", written(legs.to_weld, "leg", system), "leg to weld, gap and slant in")
    yield Fact("", written(legs.shortest, "length", system), "shortest full-strength weld")
    seam = found.segments
    if seam is None:
        yield Fact("", "all along", "no intermittent weld here")
    else:
        pitch = f"{units.show(seam.segment_m, 'length', system)} at "
        yield Fact("", pitch + written(seam.pitch_m, "length", system), "or intermittent, centres")


def link_rows(found: StrengthAnswer) -> Iterator[tuple[str, str, str, str, str, str]]:
    """Yield class, word, name, asked, holds and source of each link, the weakest first."""
    for link in found.links:
        tone = "fails" if link.use > 1 + 1e-9 else "holds"
        asked = written(link.asked, "force_per_length", found.units)
        holds = written(link.holds, "force_per_length", found.units)
        name = link.name[0].upper() + link.name[1:]
        yield tone, f"{link.use:.0%}", name, asked, holds, link.source


def spoken(found: StrengthAnswer) -> str:
    """Return the picture in words."""
    p, system = found.task.properties, found.units
    whole = units.convert(p.length_m, "length", system)
    length = f"{whole:.4g} {units.symbol('length', system)}"
    return f"Weld to scale, {length} long, with its load. Weakest link: {found.links[0].name}."


def strength_page(query: str) -> str:
    """Return the whole page for a query, as Flask answers it and as it is frozen.

    Args:
        query: The query string.
    """
    shown = show_strength(query)
    return whole_page(NAME, shown, PARTS)
