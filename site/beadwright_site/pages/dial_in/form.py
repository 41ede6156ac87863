"""The form of Dial in: every entry of a job, in groups."""

from __future__ import annotations

from beadwright.setting.dial_in_page import DialInAnswer
from beadwright_site.forms.entries import entry_group
from beadwright_site.forms.filling import Filling
from beadwright_site.forms.job_entries import job_entries
from beadwright_site.forms.page_form import PageForm

GROUPS: tuple[tuple[str, str, tuple[str, ...]], ...] = (
    ("joint", "Joint", ("joint", "corner", "plate", "plate2", "skew", "leg", "leg2", "angle",
                        "root_face", "gap", "depth", "depth2", "backing", "hole", "slot_length",
                        "reinforcement", "position")),
    ("wire", "Wire and gas", ("wire", "dia", "gas", "nozzle", "transfer")),
    ("hand", "By hand: blank means ours", ("wfs", "volts", "travel", "ctwd")),
    ("torch", "Torch, machine, job", ("travel_by", "machine_amps", "machine_volts",
                                      "weld_length", "pitch", "welds")),
    ("source", "Plate and circuit, as on Shop", ("rated_amps", "duty", "breaker", "supply",
                                                 "phase")),
    ("aim", "Set it for", ("aim",)),
    ("procedure", "Written procedure: volts × amps ÷ travel", ("heat_min", "heat_max")),
    ("show", "Show in", ("units",)),
)  # fmt: skip
"""Id, title and keys of each group. Every key of the page is in one of them."""


def dial_in_form(filling: Filling, found: DialInAnswer | None) -> PageForm:
    """Return the form filled with what was typed.

    Args:
        filling: What it is filled with.
        found: The answer, or None if the entries could not be taken.
    """
    entries = job_entries(filling, found.dialled if found is not None else None)
    return PageForm(
        tuple(entry_group(id, title, [entries[key] for key in keys]) for id, title, keys in GROUPS)
    )
