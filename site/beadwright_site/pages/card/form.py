"""The form of the Card page: what the card says, what proves it, its paper, the job."""

from __future__ import annotations

from beadwright.card.card_page import CardAnswer
from beadwright.pages import PAGES
from beadwright_site.forms.entries import entry_group
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.job_entries import JOINT, asked_entries, job_entries
from beadwright_site.forms.page_form import PageForm

SAYS = ("piece", "weld_mark", "revision", "card_date", "written_by", "card_note")
PROOF = ("proved_mark", "proved_by", "proved_on")
JOB_KEYS = (*JOINT, "position", "weld_length", "welds", "wire", "dia", "gas", "transfer",
            "travel_by", "wfs", "volts", "ctwd", "travel", "units")  # fmt: skip
ACCEPTS = (
    ("d1.1-static", "AWS D1.1", "steady load"), ("d1.1-cyclic", "AWS D1.1", "comes and goes"),
    ("iso-b", "ISO 5817 B", "stringent"), ("iso-c", "ISO 5817 C", "intermediate"),
    ("iso-d", "ISO 5817 D", "moderate"),
)  # fmt: skip
PAPER_NAMES = {"letter": "Letter", "a4": "A4", "pocket": "Pocket, 4 × 6 in"}


def card_form(filling: Filling, found: CardAnswer | None) -> PageForm:
    """Return the form filled with what was typed.

    Args:
        filling: What it is filled with.
        found: The answer, or None if the entries could not be taken.
    """
    form = Form(filling, PAGES["card"].fields)
    fields = job_entries(filling, found.dialled if found is not None else None)
    papers = [(paper, name, "") for paper, name in PAPER_NAMES.items()]
    usual = "A4" if filling.system == "si" else "Letter"
    yes_no = (("no", "No", "on paper only"), ("yes", "Yes", "who scans reads them"))
    return PageForm(
        (
            entry_group("says", "What the card says", tuple(map(form.entry, SAYS))),
            entry_group("proof", "The coupon that proves it", tuple(map(form.entry, PROOF))),
            entry_group("paper", "Paper and code", (
                form.choice("paper", papers, usual), form.choice("code_names", yes_no),
            )),
            entry_group("judged", "Steel and limits", (
                form.entry("steel"), form.choice("accept", ACCEPTS),
            )),
            entry_group("job", "The job", asked_entries(fields, JOB_KEYS)),
        )
    )  # fmt: skip
