"""The form of Dial in: six entries first, all others folded."""

from __future__ import annotations

from beadwright.key_groups import key_groups
from beadwright.pages import PAGES
from beadwright.setting.dial_in_page import DialInAnswer
from beadwright_site.drawings.joint_signs import JOINT_SIGNS
from beadwright_site.forms.entries import entry_group
from beadwright_site.forms.filling import Filling
from beadwright_site.forms.job_entries import job_entries
from beadwright_site.forms.page_form import PageForm
from beadwright_site.forms.usual_sizes import usual_sizes


def dial_in_form(filling: Filling, found: DialInAnswer | None) -> PageForm:
    """Return the form filled with what was typed.

    Args:
        filling: What it is filled with.
        found: The answer, or None if the entries could not be taken.
    """
    entries = job_entries(filling, found.dialled if found is not None else None)
    groups = tuple(
        entry_group(group.id, group.title, [entries[key] for key in group.keys])
        for group in key_groups(PAGES["dial-in"])
    )
    sizes = {key: usual_sizes(entries[key], filling.system) for key in ("plate", "leg")}
    return PageForm(groups, more={"first": groups[0], "signs": JOINT_SIGNS, "sizes": sizes})
