"""The form of the Weld list: its lines, what holds for all of them, the quote."""

from __future__ import annotations

from beadwright.weld_list.list_page import ListAnswer
from beadwright_site.forms.entries import entry_group
from beadwright_site.forms.filling import Filling
from beadwright_site.forms.job_entries import asked_entries, job_entries
from beadwright_site.forms.page_form import PageForm
from beadwright_site.forms.priced_form import priced_form

FOR_ALL = ("wire", "dia", "gas", "travel_by", "units")
PART = ("part_length", "part_width", "part_height")
QUOTE = ("margin", "set_up", "batch", "currency")
RATES = ("shop_rate", "labour", "overhead", "wire_price", "gas_price", "spool")
MINUTES = ("fit_up", "reposition", "clean", "spatter", "spool_change", "factor")


def list_form(filling: Filling, found: ListAnswer | None) -> PageForm:
    """Return the form filled with what was typed.

    Args:
        filling: What it is filled with.
        found: The answer, or None if the entries could not be taken.
    """
    form = priced_form("list", filling, found.query if found is not None else None)
    first = next((row.weld for row in found.counted), None) if found else None
    dialled = first.first.dialled if first is not None else None
    fields = job_entries(filling, dialled, FOR_ALL)
    return PageForm(
        (
            entry_group("lines", "Type or paste the list", [form.entry("lines")]),
            entry_group("all", "Wire and gas for all of them", asked_entries(fields, FOR_ALL)),
            entry_group("part", "Size of the part, for distortion", [*map(form.entry, PART)]),
            entry_group("quote", "Margin, set-up", [*map(form.entry, QUOTE)]),
            entry_group("rates", "Prices and rates", [*map(form.entry, RATES)]),
            entry_group("minutes", "Non-arc minutes", [*map(form.entry, MINUTES)]),
        )
    )
