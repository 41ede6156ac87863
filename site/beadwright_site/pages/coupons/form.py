"""The form of the Coupons page: the job, who welds it, what the coupon shows."""

from __future__ import annotations

from beadwright.coupons.coupons_page import CouponsAnswer
from beadwright.pages import PAGES
from beadwright_site.forms.entries import Entry, entry_group
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.job_entries import JOINT, asked_entries, job_entries
from beadwright_site.forms.page_form import PageForm

JOB_KEYS = (*JOINT, "position", "wire", "dia", "gas", "transfer", "travel_by", "units")
SET = ("wfs", "volts", "travel", "ctwd")
WHO = ("machine", "welder", "coupon")
TIMED = ("marked", "arc_time")
SHOWN = ("meter_amps", "meter_volts", "arc_volts")
GAUGED = ("leg_seen", "leg2_seen", "face", "convexity", "throat_seen", "penetration_seen")
WEIGHED = ("weight_before", "weight_after")
CHECKED = ("burst_length", "burst_time", "flow_seen", "clean_time")
MEASURED = (*TIMED, *SHOWN, *GAUGED, *WEIGHED, *CHECKED, "coupon", "count_odd")
"""Entries of one coupon: a new one starts without them."""


def coupons_form(filling: Filling, found: CouponsAnswer | None) -> PageForm:
    """Return the form filled with what was typed.

    Args:
        filling: What it is filled with.
        found: The answer, or None if the entries could not be taken.
    """
    form = Form(filling, PAGES["coupons"].fields)
    dialled = found.dialled if found is not None else None
    fields = job_entries(filling, dialled, (*JOB_KEYS, *SET))

    def entries(keys: tuple[str, ...]) -> tuple[Entry, ...]:
        return tuple(map(form.entry, keys))

    odd = form.choice("count_odd", (("no", "No", ""), ("yes", "Yes", "")))
    return PageForm(
        (
            entry_group("who", "Who, on what", entries(WHO)),
            entry_group(
                "job", "The joint", [*asked_entries(fields, JOB_KEYS), form.entry("passes")]
            ),
            entry_group(
                "set", "Set on the machine", [fields[key] for key in SET],
                "Blank: the settings above were set.",
            ),
        ),
        beside={
            "readings": {
                "timed": entries(TIMED),
                "shown": entries(SHOWN),
                "gauged": entries(GAUGED),
                "weighed": entries(WEIGHED),
                "checked": (*entries(CHECKED), odd),
            }
        },
    )  # fmt: skip
