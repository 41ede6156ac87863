"""Heat: how hot to start, how hot at the most, how fast it cools, how hard it gets."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from typing import Any, Final

from beadwright import units
from beadwright.api import answer
from beadwright.errors import FieldErrors
from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.heat_query import DEFAULTS, HeatSchema
from beadwright.results import Quantity
from beadwright.temperatures import degree_sign, show_temperature
from beadwright.units import System
from beadwright_site.drawings.heat_drawing import draw_heat
from beadwright_site.forms.entries import hidden, measures_of, read_entries, with_units
from beadwright_site.forms.example import EXAMPLE_NAME, asked_of
from beadwright_site.forms.kept import kept_for
from beadwright_site.forms.typed import system_named
from beadwright_site.links import query_of
from beadwright_site.pages.heat.distortion import distortion_view
from beadwright_site.pages.heat.form import heat_form
from beadwright_site.parts.cited_notes import cited_notes
from beadwright_site.parts.facts import Fact, written
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

PARTS = ("units-switch", "state", "start", "job-form", "methods", "cooling", "carbon",
         "distortion", "notes")  # fmt: skip
"""Element ids of the page's parts; each has a template of its own."""

NAME: Final = "heat"
MELT_WORDS = {"typical": "usual melt", "limit": "worst allowed", "certificate": "certificate"}
REGIME_WORDS = {"thick": "Thick plate rules: heat runs off downward too.",
                "thin": "Thin plate rules: heat runs off sideways alone."}  # fmt: skip
_BARE = re.compile(r"[+−-]?\d+(?:[.,]\d+)?", re.ASCII)


def show_heat(
    query: str, kept: Mapping[str, Any] | None = None, parts: Sequence[str] | None = None
) -> PageParts:
    """Return the page's parts for a query.

    Args:
        query: The query string.
        kept: What the phone keeps, by name.
        parts: Which of ``PARTS`` to draw; None for all. A refusal always comes whole.
    """
    asked, example = asked_of(query, DEFAULTS)
    shop = kept_for(asked, kept)
    try:
        found = answer(NAME, asked, shop)
    except FieldErrors as error:
        return _refused(asked, shop, error)
    return _answered(found, shop, example, PARTS if parts is None else parts)


def _refused(query: str, kept: Mapping[str, str], error: FieldErrors) -> PageParts:
    typed = read_entries(query, DEFAULTS)
    system = system_named(typed.get("units") or kept.get("units", ""))
    groups = heat_form(typed, kept, system, None, error.messages)
    left = tuple(hidden(typed, groups))
    return refusal(NAME, typed, error.messages, keys_of(groups), groups=groups, hidden=left)


def _typed(found: HeatAnswer) -> dict[str, str]:
    """What was typed, with the units bare numbers were meant in."""
    system = found.units
    typed = with_units(found.query.typed, measures_of(HeatSchema), system)
    if _BARE.fullmatch(typed.get("preheat", "")):
        typed["preheat"] += degree_sign(system).removeprefix("°")
    return typed


def _answered(
    found: HeatAnswer, kept: Mapping[str, str], example: bool, parts: Sequence[str]
) -> PageParts:
    system = found.units
    typed = _typed(found)
    groups = heat_form(typed, kept, system, found)
    headline = headline_of(found)
    views: Views = {
        "units-switch": lambda: switch_view(system, typed),
        "state": lambda: state_view(example, EXAMPLE_NAME if example else "Your job"),
        "start": lambda: {
            "headline": headline,
            "tone": tone_of(found),
            "job": f"{found.steel.name}. {job_card(found.dialled).line}",
            "facts": tuple(start_facts(found)),
        },
        "methods": lambda: {"rows": tuple(method_rows(found))},
        "cooling": lambda: {
            "drawing": draw_heat(found.curves, system) if found.curves else None,
            "seconds": seconds(found.cooling.seconds) if found.cooling else "",
            "regime": REGIME_WORDS[found.cooling.regime] if found.cooling else "",
            "facts": tuple(cooling_facts(found)),
        },
        "carbon": lambda: {
            "rows": tuple(carbon_rows(found)),
            "melt": MELT_WORDS[found.steel.melt],
            "worst": any(each.worst is not None for each in found.equivalents),
        },
        "distortion": lambda: distortion_view(found.distortion, system),
        "notes": lambda: {"notes": cited_notes(found.notes, found.units)},
        "job-form": lambda: {"groups": groups, "general": (),
                             "hidden": tuple(hidden(typed, groups))},
    }  # fmt: skip
    html = draw_parts(NAME, parts, views)
    return PageParts(True, "" if example else query_of(typed), f"{headline} · Heat", html)


def headline_of(found: HeatAnswer) -> str:
    """Return how hot to start, in a line."""
    needed = found.needed
    if needed.kelvin is None:
        return "No preheat can be given"
    if needed.even_cold:
        if found.by_hand and found.start_k < needed.kelvin - 0.5:
            return f"Too cold: warm it to {show_temperature(needed.kelvin, found.units)}"
        return "No preheat"
    asked = f"reheat to {show_temperature(needed.kelvin, found.units)}"
    too_cold = found.by_hand and found.start_k < needed.kelvin - 0.5
    return f"Too cold: p{asked}" if too_cold else f"P{asked}"


def tone_of(found: HeatAnswer) -> str:
    """Return the class of the headline: switch if all is well, too-close, or fails."""
    levels = {note.level for note in found.notes}
    if found.needed.kelvin is None or "stop" in levels:
        return "fails"
    if "out" in levels:
        return "too-close"
    return "switch" if found.needed.even_cold else ""


def seconds(value: float) -> str:
    """Return a cooling time as the shop reads it."""
    return f"{value:.1f} s" if value < 20 else f"{value:.0f} s"


def _room(quantity: Quantity, system: System) -> str:
    if quantity.low is None or quantity.high is None:
        return ""
    ends = [units.show(end, quantity.measure, system) for end in (quantity.low, quantity.high)]
    return "–".join(ends)


def start_facts(found: HeatAnswer) -> Iterator[Fact]:
    """Yield the temperatures, the heat, how fast it cools and how hard it gets."""
    system, cooled = found.units, found.cooling
    least = found.needed.kelvin
    if found.by_hand:
        yield Fact("", show_temperature(found.start_k, system), "welded at, by hand")
    else:
        yield Fact("", "–" if least is None else show_temperature(least, system), "at the least")
    yield Fact("", show_temperature(found.interpass_k, system), "between passes at most")
    yield Fact("", written(found.heat, system), "heat in, AWS and ASME", _room(found.heat, system))
    yield Fact("", written(found.heat_en, system), "heat in, EN × 0.8",
               _room(found.heat_en, system))  # fmt: skip
    if cooled is None:
        yield Fact("", "–", "no heat, no cooling time")
    else:
        yield Fact("", seconds(cooled.seconds), "from 800 to 500 °C",
                   f"{seconds(cooled.low).removesuffix(' s')}–{seconds(cooled.high)}")  # fmt: skip
    hard = found.hardness
    if hard.value is None or hard.low is None or hard.high is None:
        yield Fact("", "–", f"hardness: {found.hardness_refused}")
    else:
        yield Fact("", f"≈ {hard.value:.0f} HV", "hardest beside the bead",
                   f"{hard.low:.0f}–{hard.high:.0f}")  # fmt: skip


def method_rows(found: HeatAnswer) -> Iterator[tuple[str, str, str, str, bool]]:
    """Yield name, temperature, how it counts, source id and whether it rules, by method."""
    system, needed = found.units, found.needed
    thick = f"{units.show(found.thickness_m, 'length', system)} {units.symbol('length', system)}"
    summed = f"{units.show(found.combined_m, 'length', system)} {units.symbol('length', system)}"
    row = needed.row
    if row is None or needed.table_k is None:
        yield "Prequalified table", "–", "does not list this steel", "aws-d1.1-5.8", False
    else:
        yield ("Prequalified table", show_temperature(needed.table_k, system),
               f"category {row.category}, thickest part {thick}", "aws-d1.1-5.8",
               needed.by == "table")  # fmt: skip
    found_b = needed.method_b
    counted = f"CET, thickest part {thick}, {found.hydrogen:g} ml/100 g, heat"
    if found_b is None or found_b.kelvin is None:
        why = "no analysis" if found_b is None else found_b.refused[0][1]
        yield "EN method B", "–", why, "en-1011-2-b", False
    else:
        yield ("EN method B", _or_none(found_b.kelvin, system), counted, "en-1011-2-b",
               needed.by == "method-b")  # fmt: skip
    worst = needed.worst_b
    if worst is not None and worst.kelvin is not None:
        yield ("Method B, worst melt allowed", _or_none(worst.kelvin, system),
               "if the certificate reads so", "en-1011-2-b", False)  # fmt: skip
    yield "All parts together", summed, "method A counts it; these two do not", "en-1011-2-a", False


def _or_none(kelvin: float, system: System) -> str:
    return "none" if kelvin <= 293.15 else show_temperature(kelvin, system)


def cooling_facts(found: HeatAnswer) -> Iterator[Fact]:
    """Yield both formulas, where they meet, and the joint's shape factors."""
    cooled, system = found.cooling, found.units
    if cooled is None:
        return
    yield Fact("", seconds(cooled.thick_s), "as thick plate")
    yield Fact("", seconds(cooled.thin_s), "as thin plate")
    meet = units.show(cooled.transition_m, "length", system)
    yield Fact("", f"{meet} {units.symbol('length', system)}", "thickness where they meet")


def carbon_rows(found: HeatAnswer) -> Iterator[tuple[str, str, str, str, str]]:
    """Yield name, value, worst, why there is none and source id of each carbon equivalent."""
    for each in found.equivalents:
        value, worst = ("–" if v is None else f"{v:.2f}" for v in (each.value, each.worst))
        yield each.name, value, worst, each.refused, each.source


def heat_page(query: str) -> str:
    """Return the whole page for a query, as Flask answers it and as it is frozen.

    Args:
        query: The query string.
    """
    shown = show_heat(query)
    return whole_page(NAME, shown, PARTS)
