"""The Strength page's answer: leg needed, what is used of it, which link gives way first."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.job.page_query import read_page
from beadwright.strength.lap_members import check_widths, lap_members
from beadwright.strength.leg_sizes import LegSizes, judged_leg2, leg_sizes
from beadwright.strength.other_welds import other_weld
from beadwright.strength.plate_links import plate_links
from beadwright.strength.segments import segments_for
from beadwright.strength.strength_answer import StrengthAnswer
from beadwright.strength.strength_check import spread, weld_link
from beadwright.strength.strength_notes import strength_notes
from beadwright.strength.strength_query import StrengthQuery
from beadwright.strength.strength_task import StrengthTask, strength_task


def strength_answer(query: str, kept: Mapping[str, Any] | None = None) -> StrengthAnswer:
    """Return the Strength page's answer to a query string.

    Args:
        query: Keys of ``strength_query.StrengthQuery`` [-].
        kept: The shop's own defaults by key; the query wins [-].

    Raises:
        FieldErrors: With each field's messages.
    """
    read = read_page(StrengthQuery, query, kept)
    task = strength_task(read)
    if not task.job.is_fillet:
        other = other_weld(task)
        return StrengthAnswer(
            page="strength",
            query=read,
            task=task,
            spread=other.spread,
            sizes=other.sizes,
            links=other.links,
            segments=None,
            notes=other.notes,
        )
    check_widths(task)
    found = spread(task)
    legs, plates = leg_sizes(task, found), plate_links(task, found)
    try:
        found = spread(task, legs.throat)
        weld = weld_link(task, found, legs.judged, judged_leg2(task))
    except OutOfRangeError as error:
        raise _refused(task, legs, error) from error
    links = tuple(sorted((weld, *plates, *lap_members(task)), key=lambda link: -link.use))
    segments = segments_for(task, links, legs)
    notes = strength_notes(task, found, legs, links, segments)
    if any(note.level == "stop" for note in notes):
        segments = None
    return StrengthAnswer(
        page="strength",
        query=read,
        task=task,
        spread=found,
        sizes=legs,
        links=links,
        segments=segments,
        notes=notes,
    )


def _refused(task: StrengthTask, legs: LegSizes, error: OutOfRangeError) -> FieldErrors:
    """What keeps a weld from carrying anything, beside the entries it comes from."""
    leg = ("leg",) if legs.given else ()
    if task.end_loaded and task.group.shortest_m >= 900 * legs.throat:
        text = (
            "The weld is over 900 throats long: of it EN 1993-1-8, 4.11(3), counts nothing. "
            "Take a larger leg or a shorter weld."
        )
    elif legs.given:
        text = f"This weld is too short for the leg: {error}."
    else:
        text = f"This weld is too short to carry load: {error}."
    length = "group_height" if task.group.name != "polyline" else "group"
    return FieldErrors({key: [text] for key in (*leg, length)})
