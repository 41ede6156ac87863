"""The form of the Heat page: the steel or its certificate, the job, preheat and hydrogen."""

from __future__ import annotations

from collections.abc import Mapping

from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.heat_query import DEFAULTS, HeatSchema
from beadwright.heating.preheat import HYDROGEN
from beadwright.heating.steels import ELEMENTS, STEELS, SYMBOLS, UNKNOWN
from beadwright.temperatures import degree_sign
from beadwright_site.forms.entries import entry_group
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.job_entries import JOINT, asked_entries, job_entries
from beadwright_site.forms.page_form import PageForm
from beadwright_site.forms.typed import measures_of
from beadwright_site.pages.heat.distortion import part_entries

JOB_KEYS = (*JOINT, "position", "wire", "dia", "gas", "units")

LABELS: Mapping[str, str] = {
    "steel": "Grade",
    "melt": "Without a certificate, count",
    "preheat": "Plate's temperature as welded",
    "hydrogen": "Hydrogen of the wire",
    "heat": "Heat input, V × A over travel",
    **{key: SYMBOLS[key] for key in ELEMENTS},
}
"""What each entry past the job's is called."""


def heat_form(filling: Filling, found: HeatAnswer | None) -> PageForm:
    """Return the form filled with what was typed.

    Args:
        filling: What it is filled with.
        found: The answer, or None if the entries could not be taken.
    """
    form = Form(filling, DEFAULTS, measures_of(HeatSchema))
    dialled = found.dialled if found is not None else None
    fields = job_entries(filling, dialled)
    wire = dialled.job.wire.kind if dialled is not None else "solid"
    grades = [*((name, name, "") for name in STEELS), (UNKNOWN, "Not known", "")]
    melts = (("typical", "A usual melt", ""), ("limit", "The worst allowed", ""))
    sign = degree_sign(filling.system)
    own = (
        form.entry("preheat", f"{LABELS['preheat']}, {sign}", blank="as needed"),
        form.entry("hydrogen", f"{LABELS['hydrogen']}, ml/100 g", blank=f"{HYDROGEN[wire]:g}"),
        form.entry("heat", LABELS["heat"], blank="the job's own"),
    )
    return PageForm((
        entry_group("steel", "Steel", (
            form.choice("steel", LABELS["steel"], grades),
            form.choice("melt", LABELS["melt"], melts),
        )),
        entry_group("certificate", "Mill certificate", tuple(
            form.entry(key, LABELS[key], blank="–") for key in ELEMENTS
        ), "Type what it prints; C and Mn at the least. It counts before the grade."),
        entry_group("weld", "Temperature, hydrogen, heat", own),
        entry_group("part", "The part it pulls on", (
            fields["weld_length"], *part_entries(form, dialled),
        ), "For how far it bows."),
        entry_group("job", "The job", asked_entries(fields, JOB_KEYS)),
    ))  # fmt: skip
