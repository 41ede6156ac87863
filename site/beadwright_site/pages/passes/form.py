"""The form of the Passes page: how many, by hand, root and cap on their own, the job."""

from __future__ import annotations

from collections.abc import Sequence

from beadwright.pages import PAGES
from beadwright.passes.passes_page import PassesAnswer
from beadwright.process.transfer import NAMES
from beadwright_site.forms.entries import Entry, entry_group
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.job_entries import JOINT, asked_entries, job_entries
from beadwright_site.forms.page_form import PageForm
from beadwright_site.links import query_of

JOB_KEYS = (
    *JOINT, "reinforcement", "position", "wire", "dia", "gas", "transfer", "travel_by",
    "weld_length", "aim", "units",
)  # fmt: skip
HAND_KEYS = ("wfs", "volts", "travel", "ctwd")
LIMIT_KEYS = ("heat_min", "heat_max", "machine_amps", "machine_volts")


def passes_form(filling: Filling, found: PassesAnswer | None) -> PageForm:
    """Return the form filled with what was typed.

    Args:
        filling: What it is filled with.
        found: The answer, or None if the entries could not be taken.
    """
    form = Form(filling, PAGES["passes"].fields)
    fields = job_entries(filling, found.dialled if found is not None else None)

    def job(keys: Sequence[str]) -> tuple[Entry, ...]:
        return asked_entries(fields, keys)

    count = ""
    if found is not None and found.found.asked.count is None:
        count = f"fewest, {len(found.found.beads)}"
    modes = [(mode, NAMES[mode], "") for mode in ("short", "spray", "pulse")]
    groups = (
        entry_group("count", "How many", (
            form.entry("passes", blank=count),
            form.choice("bead", (
                ("weave", "Weave", "up to the code's width"), ("stringer", "Stringers", "no weave"),
            )),
        )),
        entry_group("hand", "Feed, volts, travel speed by hand", job(HAND_KEYS),
               "Set the feed, and the count follows."),
        entry_group("parts", "Root and cap by hand", (
            form.choice("root_transfer", modes, form.fields["root_transfer"].blank),
            *map(form.entry, ("root_wfs", "root_volts", "cap_wfs", "cap_volts")),
        ), "Blank: as the rest."),
        entry_group("limits", "Written procedure, machine", job(LIMIT_KEYS)),
        entry_group("job", "The joint, wire, gas", job(JOB_KEYS)),
    )  # fmt: skip
    last = query_of({**filling.typed, "at": ""}) if "at" in filling.errors else ""
    # The bead looked at is left behind: of another plan it is another bead.
    return PageForm(groups, more={"last": last}, unsent=frozenset({"at"}))
