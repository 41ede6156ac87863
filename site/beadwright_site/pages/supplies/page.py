"""Supplies: wire, gas and small parts for a job; what is left on the spool and in the cylinder."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any, Final

from beadwright import units
from beadwright.api import answer
from beadwright.errors import FieldErrors
from beadwright.money.cost_page import invented_in_use
from beadwright.supply.leftovers import SpoolLeft
from beadwright.supply.purchase import purchase_total
from beadwright.supply.supplies_page import SuppliesAnswer
from beadwright.supply.supplies_query import DEFAULTS, SuppliesSchema
from beadwright.units import System
from beadwright_site.forms.entries import measures_of, read_entries, with_units
from beadwright_site.forms.example import EXAMPLE_NAME, asked_of
from beadwright_site.forms.kept import kept_for
from beadwright_site.forms.typed import system_named
from beadwright_site.links import query_of
from beadwright_site.pages.cost.view import cents, written
from beadwright_site.pages.supplies.form import SuppliesForm, supplies_form
from beadwright_site.parts.cited_notes import cited_notes, state_line
from beadwright_site.parts.facts import Fact
from beadwright_site.parts.frame import (
    Views,
    draw_part,
    refusal,
    state_view,
    switch_view,
    whole_page,
)
from beadwright_site.parts.invented_notes import with_invented_counted
from beadwright_site.parts.job_card import job_card
from beadwright_site.parts.page_parts import PageParts

PARTS = ("units-switch", "state", "need", "buy", "job-form", "spool", "spool-entries", "cylinder",
         "cylinder-entries", "notes", "take")  # fmt: skip
"""Element ids of the page's parts; each has a template of its own."""

NAME: Final = "supplies"

BY_WORDS = {"weight": "by weight", "size": "by size, wound as spools are",
            "full": "against a full spool"}  # fmt: skip


def show_supplies(
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


def _entries_html(form: SuppliesForm) -> dict[str, str]:
    return {
        "spool-entries": draw_part(NAME, "spool-entries", weight=form.weight, size=form.size),
        "cylinder-entries": draw_part(NAME, "cylinder-entries", entries=form.cylinder),
    }


def _refused(query: str, kept: Mapping[str, str], error: FieldErrors) -> PageParts:
    typed = read_entries(query, DEFAULTS)
    system = system_named(typed.get("units") or kept.get("units", ""))
    form = supplies_form(typed, kept, system, None, error.messages)
    return refusal(NAME, typed, error.messages, form.keys, more=_entries_html(form),
                   groups=form.groups, hidden=form.hidden(typed))  # fmt: skip


def _answered(
    found: SuppliesAnswer, kept: Mapping[str, str], example: bool, parts: Sequence[str]
) -> PageParts:
    system, sign = found.units, found.currency
    invented = len(invented_in_use(found.query))
    typed = with_units(found.query.typed, measures_of(SuppliesSchema), system)
    form = supplies_form(typed, kept, system, found)
    entries = _entries_html(form)
    line = job_card(found.planned.dialled).line
    headline = headline_of(found)
    whose = EXAMPLE_NAME if example else "Your job"
    views: Views = {
        "units-switch": lambda: switch_view(system, typed),
        "state": lambda: state_view(example, state_line(whose, invented)),
        "need": lambda: {
            "headline": headline,
            "job": f"{found.supplies.count:,} parts: {line}.",
            "facts": tuple(need_facts(found)),
        },
        "buy": lambda: {
            "rows": tuple(buy_rows(found)),
            "total": _total(found, sign),
        },
        "spool": lambda: {"facts": tuple(spool_facts(found.spool, system))},
        "cylinder": lambda: {
            "text": found.gas_left.text if found.gas_left else "",
            "facts": tuple(gas_facts(found)),
        },
        "notes": lambda: {
            "notes": cited_notes(with_invented_counted(found.notes, invented), found.units)
        },
        "take": lambda: {},
        "job-form": lambda: {
            "groups": form.groups,
            "general": (),
            "hidden": form.hidden(typed),
        },
    }
    html = {
        part: entries[part] if part in entries else draw_part(NAME, part, **views[part]())
        for part in parts
        if part in PARTS
    }
    asked = "" if example else query_of(typed)
    return PageParts(True, asked, f"{headline} · Supplies", html)


def headline_of(found: SuppliesAnswer) -> str:
    """Return what to buy, in a line."""
    need = found.supplies
    if need.count == 0:
        return "Nothing to buy"
    wire = _plural(need.packages.count, "package") + " of wire"
    if need.packages.count == 0:
        wire = "no wire"
    if need.cylinders is None:
        return f"Buy {wire}; gas from the bulk tank"
    return f"Buy {wire}, {_plural(need.cylinders, 'cylinder')}"


def _plural(count: int, noun: str) -> str:
    return f"{count:,} {noun}{'' if count == 1 else 's'}"


def need_facts(found: SuppliesAnswer) -> Iterator[Fact]:
    """Yield what the parts take."""
    need, system = found.supplies, found.units
    yield Fact("", written(need.wire_kg, "mass", system), "wire")
    yield Fact("", written(need.wire_m, "distance", system), "of wire off the spool")
    yield Fact("", f"{need.packages.changes:,}", "change-overs")
    yield Fact("", written(need.gas_m3, "gas_volume", system), "gas")
    if need.cylinders_a_week is None:
        yield Fact("", "bulk", "gas supply")
    else:
        yield Fact("", _few(need.cylinders_a_week), "cylinders a week")
    if need.cylinder_s is None:
        yield Fact("", written(need.packages.left_kg, "mass", system), "wire left over")
    else:
        yield Fact("", written(need.cylinder_s, "hours", system), "of arc, a full one")
    yield Fact("", written(need.arc_s, "hours", system), "arc time")
    years = need.package_years
    lasts = "–" if years is None else "a lifetime" if years > 50 else _span(years)
    yield Fact("", lasts, "a package lasts")
    yield Fact("", f"{need.tips:,} + {need.nozzles:,}", "tips + nozzles")


def _few(number: float) -> str:
    places = 0 if number >= 100 else 1 if number >= 1 else 2
    return f"{number:,.{places}f}"


def _span(years: float) -> str:
    if years >= 2:
        return f"{years:.1f} years"
    months = years * 12
    return f"{months:.1f} months" if months >= 1 else f"{years * 52:.1f} weeks"


def buy_rows(found: SuppliesAnswer) -> Iterator[tuple[str, str, str, str, str, str]]:
    """Yield item, package, count, price of one, amount and note of each line."""
    sign = found.currency
    for row in found.purchases:
        price = "–" if row.price is None else cents(row.price, sign)
        amount = "–" if row.amount is None else cents(row.amount, sign)
        package = row.package.replace("ft3", " ft³").replace(".00 ", " ")
        yield row.item, package, f"{row.count:,}", price, amount, row.note


def _total(found: SuppliesAnswer, sign: str) -> str:
    total = purchase_total(found.purchases)
    return "a price is missing" if total is None else cents(total, sign)


def spool_facts(left: SpoolLeft | None, system: System) -> Iterator[Fact]:
    """Yield what the begun spool still lays; nothing if it was neither weighed nor measured."""
    if left is None:
        return
    yield Fact("", _span_of(left.weld_m, "distance", system), "of this weld")
    yield Fact("", _span_of(left.wire_kg, "mass", system), f"wire, {BY_WORDS[left.by]}")
    yield Fact("", f"{left.parts:,.1f}", "parts")
    yield Fact("", written(left.wire_m, "distance", system), "of wire")
    yield Fact("", written(left.arc_s, "time", system), "of arc")


def _span_of(three: tuple[float, float, float], measure: str, system: System) -> str:
    low, taken, high = (units.show(value, measure, system) for value in three)
    unit = units.symbol(measure, system)
    return f"{taken} {unit}" if low == high else f"{taken} {unit} ({low}–{high})"


def gas_facts(found: SuppliesAnswer) -> Iterator[Fact]:
    """Yield what the cylinder at hand still gives; nothing if nothing was written about it."""
    left = found.gas_left
    if left is None or left.gas_m3 <= 0:
        return
    yield Fact("", written(left.lasts_s, "time", found.units), "with the gas on")
    yield Fact("", f"{left.parts:,.1f}", "parts")
    yield Fact("", written(left.gas_m3, "gas_volume", found.units), "gas that can be drawn")


def supplies_page(query: str) -> str:
    """Return the whole page for a query, as Flask answers it and as it is frozen.

    Args:
        query: The query string.
    """
    shown = show_supplies(query)
    return whole_page(NAME, shown, PARTS)
