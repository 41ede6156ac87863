"""The form of the Heat page: the steel or its certificate, the job, preheat and hydrogen."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.heat_query import DEFAULTS, HeatSchema
from beadwright.heating.preheat import HYDROGEN
from beadwright.heating.steels import ELEMENTS, STEELS, SYMBOLS, UNKNOWN
from beadwright.temperatures import degree_sign
from beadwright.units import System
from beadwright_site.forms.entries import (
    EntryGroup,
    Form,
    entry_group,
    measures_of,
    of_field,
)
from beadwright_site.forms.job_form import job_fields
from beadwright_site.forms.kept import KEPT
from beadwright_site.pages.heat.distortion import part_entries

JOB_KEYS = (
    "joint", "corner", "plate", "plate2", "skew", "leg", "leg2", "gap", "angle", "root_face",
    "depth", "depth2", "backing", "hole", "slot_length", "position", "wire", "dia", "gas", "units",
)  # fmt: skip
"""What the joint does not ask of these is left out."""

LABELS: Mapping[str, str] = {
    "steel": "Grade",
    "melt": "Without a certificate, count",
    "preheat": "Plate's temperature as welded",
    "hydrogen": "Hydrogen of the wire",
    "heat": "Heat input, V × A over travel",
    **{key: SYMBOLS[key] for key in ELEMENTS},
}
"""What each entry past the job's is called."""


def heat_form(
    typed: Mapping[str, str],
    kept: Mapping[str, str],
    system: System,
    found: HeatAnswer | None = None,
    errors: Mapping[str, Sequence[str]] | None = None,
) -> tuple[EntryGroup, ...]:
    """Return the form filled with what was typed.

    Args:
        typed: Entries as typed.
        kept: The shop's defaults by key.
        system: Units of bare numbers.
        found: The answer, or None if the entries could not be taken.
        errors: Messages by key.
    """
    wrong = errors or {}
    kept_as = {key: key if key in KEPT else "" for key in DEFAULTS}
    form = Form(typed, kept, DEFAULTS, measures_of(HeatSchema), wrong, frozenset(), system,
                kept_as)  # fmt: skip
    dialled = found.dialled if found is not None else None
    fields = job_fields({**kept, **typed}, system, dialled, wrong)
    wire = dialled.job.wire.kind if dialled is not None else "solid"
    sign = degree_sign(system)
    grades = [*((name, name, "") for name in STEELS), (UNKNOWN, "Not known", "")]
    melts = (("typical", "A usual melt", ""), ("limit", "The worst allowed", ""))
    own = (
        form.entry("preheat", f"{LABELS['preheat']}, {sign}", blank="as needed"),
        form.entry("hydrogen", f"{LABELS['hydrogen']}, ml/100 g", blank=f"{HYDROGEN[wire]:g}"),
        form.entry("heat", LABELS["heat"], blank="the job's own"),
    )
    return (
        entry_group("steel", "Steel", (
            form.choice("steel", LABELS["steel"], grades),
            form.choice("melt", LABELS["melt"], melts),
        )),
        entry_group("certificate", "Mill certificate", tuple(
            form.entry(key, LABELS[key], blank="–") for key in ELEMENTS
        ), "Type what it prints; C and Mn at the least. It counts before the grade."),
        entry_group("weld", "Temperature, hydrogen, heat", own),
        entry_group("part", "The part it pulls on", (
            of_field(fields["weld_length"]), *part_entries(form, dialled),
        ), "For how far it bows."),
        entry_group("job", "The job", tuple(of_field(fields[key]) for key in JOB_KEYS
                                     if key in fields and not fields[key].hidden)),
    )  # fmt: skip
