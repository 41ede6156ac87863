"""The form of the Inspect page: what was measured, what it is judged by, the settings used."""

from __future__ import annotations

from beadwright.inspection.inspect_page import InspectAnswer
from beadwright.inspection.trouble import SYMPTOMS
from beadwright.pages import PAGES
from beadwright.words.wording import worded
from beadwright_site.forms.entries import Entry, entry_group
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.job_entries import JOINT, asked_entries, job_entries
from beadwright_site.forms.page_form import PageForm

JOB_KEYS = (*JOINT, "position", "weld_length", "wire", "dia", "gas", "transfer", "travel_by",
            "units")  # fmt: skip
USED = ("wfs", "volts", "travel", "ctwd")
SIZES = ("leg_found", "leg2_found", "throat_found", "convexity", "concavity", "face",
         "short_length", "length_found", "gap_found")  # fmt: skip
FLAWS = ("undercut", "undercut_length", "overlap", "pore", "pores_inch", "pores_foot", "pore_count",
         "crater")  # fmt: skip
FILLET_ONLY = frozenset({"leg_found", "leg2_found", "throat_found"})

ACCEPTS = (
    ("d1.1-static", "AWS D1.1", "steady load"), ("d1.1-cyclic", "AWS D1.1", "comes and goes"),
    ("iso-b", "ISO 5817 B", "stringent"), ("iso-c", "ISO 5817 C", "intermediate"),
    ("iso-d", "ISO 5817 D", "moderate"),
)  # fmt: skip


def inspect_form(filling: Filling, found: InspectAnswer | None) -> PageForm:
    """Return the form filled with what was typed.

    Args:
        filling: What it is filled with.
        found: The answer, or None if the entries could not be taken.
    """
    asked = PAGES["inspect"].fields
    form = Form(filling, asked)
    used = None if found is None else found.used
    job = job_entries(filling, used, (*JOB_KEYS, *USED))

    def entries(keys: tuple[str, ...]) -> list[Entry]:
        return [form.entry(key) for key in keys if not _left_out(key, found, filling)]

    def choice(key: str, *choices: tuple[str, str, str]) -> Entry:
        blank = "" if asked[key].default else asked[key].blank.capitalize()
        return form.choice(key, choices, blank)

    yes_no = (("no", "No", ""), ("yes", "Yes", ""))
    skewed = found is None or found.weld.job.skew_deg != 90 or "read_by" in filling.typed
    way = [choice("read_by", ("along", "Along the plate", "root to toe"),
                  ("gauge", "By gauge", "square across"))] if skewed else []  # fmt: skip
    groups = (
        entry_group("sizes", "Measured: the size", [*entries(SIZES), *way], is_open=True),
        entry_group("flaws", "Seen: cracks, undercut, pores", [
            choice("cracks", *yes_no, ("crater", "In the crater", "")),
            choice("unfused", *yes_no), *entries(FLAWS),
        ]),
        entry_group("judged", "Judged by", [
            choice("accept", *ACCEPTS),
            choice("across", ("yes", "Across the load", ""), ("no", "Along, or not primary", "")),
        ]),
        entry_group("used", "Settings it was welded with", [
            *(job[key] for key in USED), form.entry("passes"), form.entry("flow"),
            choice("wind", ("still", "Still", ""), ("draft", "A draft", ""),
                   ("windy", "Wind", "over 5 mph, 8 km/h")),
        ], "Blank: as planned. Time your travel speed, and the change is figured for your hand."),
        entry_group("job", "The job", asked_entries(job, JOB_KEYS)),
    )  # fmt: skip
    names = {key: worded(name, "us") for key, name in SYMPTOMS.items()}
    seen = [(key, name[0].upper() + name[1:], "") for key, name in names.items()]
    return PageForm(
        groups, beside={"seen": {"entries": (form.choice("trouble", seen, "Nothing"),)}}
    )


def _left_out(key: str, found: InspectAnswer | None, filling: Filling) -> bool:
    """A leg or throat where there is no fillet, unless it was typed."""
    fillet = found is None or found.weld.job.is_fillet
    return key in FILLET_ONLY and not fillet and key not in filling.typed
