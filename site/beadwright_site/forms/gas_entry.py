"""The entry of a gas on the pages of money."""

from __future__ import annotations

from beadwright_site.forms.entries import Entry, Form
from beadwright_site.forms.gas_options import gas_options
from beadwright_site.forms.option import Option


def gas_entry(form: Form, key: str, label: str, blank: str = "") -> Entry:
    """Return the entry of a gas on a page of money.

    Args:
        form: What the page's form is filled from.
        key: Query key.
        label: What it is.
        blank: Word of the choice that leaves it blank; none if empty.
    """
    wanted = form.typed.get(key) or form.kept.get(key) or form.defaults.get(key, "")
    options, other = gas_options(wanted)
    if blank:
        options = (Option("", blank, "", not wanted), *options)
    return form.entry(key, label, options=options, other=other)
