"""The form of the Heat page: the steel or its certificate, the job, preheat and hydrogen."""

from __future__ import annotations

from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.preheat import HYDROGEN
from beadwright.heating.steels import ELEMENTS, STEELS, UNKNOWN
from beadwright.pages import PAGES
from beadwright.temperatures import degree_sign
from beadwright_site.forms.entries import entry_group
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.job_entries import JOINT, asked_entries, job_entries
from beadwright_site.forms.page_form import PageForm
from beadwright_site.pages.heat.distortion import part_entries

CODES = (("d1.1", "AWS D1.1", ""), ("en-b", "EN, B", ""), ("en-a", "EN, A", ""))

JOB_KEYS = (*JOINT, "position", "wire", "dia", "gas", "units")


def heat_form(filling: Filling, found: HeatAnswer | None) -> PageForm:
    """Return the form filled with what was typed.

    Args:
        filling: What it is filled with.
        found: The answer, or None if the entries could not be taken.
    """
    form = Form(filling, PAGES["heat"].fields)
    dialled = found.dialled if found is not None else None
    fields = job_entries(filling, dialled, ("weld_length", *JOB_KEYS))
    wire = dialled.job.wire.kind if dialled is not None else "solid"
    grades = [*((name, name, "") for name in STEELS), (UNKNOWN, "Not known", "")]
    melts = (("typical", "A typical analysis", ""), ("limit", "The worst the grade allows", ""))
    sign = degree_sign(filling.system)
    own = (
        form.choice("preheat_code", CODES, "The steel's own"),
        form.entry("preheat", f"{form.fields['preheat'].label}, {sign}"),
        form.entry("hydrogen", f"{form.fields['hydrogen'].label}, ml/100 g",
                   blank=f"{HYDROGEN[wire]:g}"),
        form.entry("heat"),
    )  # fmt: skip
    return PageForm((
        entry_group("steel", "Steel", (
            form.choice("steel", grades),
            form.choice("melt", melts),
        )),
        entry_group("certificate", "Mill certificate", tuple(
            form.entry(key) for key in ELEMENTS
        ), "Type what it says, at least C and Mn. It is checked against the grade above."),
        entry_group("weld", "Code, temperature, hydrogen, heat", own),
        entry_group("part", "The part, for distortion", (
            fields["weld_length"], *part_entries(form, dialled),
        ), "For how far it bows."),
        entry_group("job", "The job", asked_entries(fields, JOB_KEYS)),
    ))  # fmt: skip
