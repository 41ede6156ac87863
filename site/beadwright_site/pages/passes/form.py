"""The form of the Passes page: how many, by hand, root and cap on their own, the job."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from beadwright.passes.passes_page import PassesAnswer
from beadwright.passes.passes_query import DEFAULTS, PassesSchema
from beadwright.process.transfer import NAMES
from beadwright.units import System
from beadwright_site.forms.entries import (
    Entry,
    EntryGroup,
    Form,
    entry_group,
    measures_of,
    of_field,
)
from beadwright_site.forms.job_form import job_fields
from beadwright_site.forms.kept import KEPT

JOB_KEYS = (
    "joint", "corner", "plate", "plate2", "skew", "leg", "leg2", "gap", "angle", "root_face",
    "depth", "depth2", "backing", "hole", "slot_length", "reinforcement", "position", "wire", "dia",
    "gas", "transfer", "travel_by", "weld_length", "aim", "units",
)  # fmt: skip
"""What the joint does not ask of these is left out."""

HAND_KEYS = ("wfs", "volts", "travel", "ctwd")
LIMIT_KEYS = ("heat_min", "heat_max", "machine_amps", "machine_volts")

LABELS: Mapping[str, str] = {
    "passes": "Passes",
    "bead": "Beads",
    "root_transfer": "Root's transfer",
    "root_wfs": "Root's wire feed",
    "root_volts": "Root's volts",
    "cap_wfs": "Cap's wire feed",
    "cap_volts": "Cap's volts",
}
"""What each entry past the job's is called."""


def passes_form(
    typed: Mapping[str, str],
    kept: Mapping[str, str],
    system: System,
    answer: PassesAnswer | None = None,
    errors: Mapping[str, Sequence[str]] | None = None,
) -> tuple[EntryGroup, ...]:
    """Return the form filled with what was typed.

    Args:
        typed: Entries as typed.
        kept: The shop's defaults by key.
        system: Units of bare numbers.
        answer: The answer, or None if the entries could not be taken.
        errors: Messages by key.
    """
    wrong = errors or {}
    kept_as = {key: key if key in KEPT else "" for key in DEFAULTS}
    form = Form(typed, kept, DEFAULTS, measures_of(PassesSchema), wrong, frozenset(), system,
                kept_as)  # fmt: skip
    dialled = answer.dialled if answer is not None else None
    fields = job_fields({**kept, **typed}, system, dialled, wrong)

    def job(keys: Sequence[str]) -> tuple[Entry, ...]:
        return tuple(of_field(fields[key]) for key in keys if not fields[key].hidden)

    count = ""
    if answer is not None and answer.found.asked.count is None:
        count = f"fewest, {len(answer.found.beads)}"
    modes = [(mode, NAMES[mode], "") for mode in ("short", "spray", "pulse")]
    return (
        entry_group("count", "How many", (
            form.entry("passes", LABELS["passes"], blank=count or "the fewest"),
            form.choice("bead", LABELS["bead"], (
                ("weave", "Weave", "up to the code's width"), ("stringer", "Stringers", "no weave"),
            )),
        )),
        entry_group("hand", "Feed, volts, travel by hand", job(HAND_KEYS),
               "Set the feed, and the count follows."),
        entry_group("parts", "Root and cap by hand", (
            form.choice("root_transfer", LABELS["root_transfer"], modes, "As the rest"),
            *(form.entry(key, LABELS[key], blank="ours")
              for key in ("root_wfs", "root_volts", "cap_wfs", "cap_volts")),
        ), "Blank goes as the rest."),
        entry_group("limits", "Written procedure, machine", job(LIMIT_KEYS)),
        entry_group("job", "The joint, wire, gas", job(JOB_KEYS)),
    )  # fmt: skip
