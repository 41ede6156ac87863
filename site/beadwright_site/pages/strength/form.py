"""The form of the Strength page: load, weld, plates and steel, code."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from beadwright.pages import PAGES
from beadwright.strength.steel_strength import STRENGTHS
from beadwright.strength.strength_answer import StrengthAnswer
from beadwright_site.forms.entries import Entry, entry_group
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.job_entries import job_entries
from beadwright_site.forms.page_form import PageForm
from beadwright_site.links import query_of

LOADS = ("py", "px", "pz", "load_x", "load_y", "load_z", "mz", "mx", "my", "line_load")
"""Entries of the load, the usual ones first."""

SHAPES = (
    ("line", "Line", ""), ("lines", "Two upright", ""), ("flats", "Two level", ""),
    ("rectangle", "All round", "rectangle"), ("circle", "All round", "circle"), ("c", "C", ""),
    ("l", "L", ""), ("t", "T", ""),
)  # fmt: skip

OWN_LINE = "polyline:0,0 4in,0 4in,6in"
"""What one's own line begins with."""

CODES = (
    ("asd", "AISC, service loads", "ASD"), ("lrfd", "AISC, factored loads", "LRFD"),
    ("en", "EN 1993", "simplified"), ("en-directional", "EN 1993", "directional"),
)  # fmt: skip

ONLY_ON: Mapping[str, tuple[str, ...]] = {
    "plate_width": ("lap",),
    "plate2_width": ("lap",),
}
"""Entries that only some joints ask."""

DEMO_LOAD = frozenset({"py", "load_z", "load_x"})
"""Entries of the load the demonstration's bracket carries."""


def strength_form(filling: Filling, found: StrengthAnswer | None) -> PageForm:
    """Return the form filled with what was typed.

    Args:
        filling: What it is filled with.
        found: The answer, or None if the entries could not be taken.
    """
    demo = DEMO_LOAD if found is not None and found.task.demo_load else frozenset[str]()
    form = Form(filling, PAGES["strength"].fields, demo)
    typed = filling.typed

    joint = form.wanted("joint").lower()

    def entry(key: str) -> Entry:
        made = form.entry(key)
        asked = joint in ONLY_ON.get(key, (joint,))
        return made if asked or made.errors else replace(made, hidden=True)

    def job(*keys: str) -> list[Entry]:
        return list(job_entries(filling, keys=keys).values())

    own = typed.get("group", "").lower().startswith("polyline")
    shape = (
        form.entry("group", "Your own line: points x,y", words=True)
        if own
        else form.choice("group", SHAPES)
    )
    links = (("Back to shapes", "group=line"),) if own else (("Draw your own line", _own(typed)),)
    steels = [(grade, grade, "") for grade in STRENGTHS]
    grades = [form.choice(key, steels, form.fields[key].blank) for key in ("steel", "steel2")]
    return PageForm((
        entry_group("load", "Load", [*map(entry, LOADS)],
                    "At the weld's centroid unless you say where."),
        entry_group("weld", "Weld", [
            shape, *map(entry, ("group_width", "group_height")),
            form.choice("weld_sides", (("1", "One side", ""), ("2", "Both sides", "")),
                        form.fields["weld_sides"].blank),
            *job("leg", "gap", "weld_length"), *map(entry, ("part_length", "segment")),
            form.choice("weld_ends", (("plain", "As they come", ""), ("full", "Full size", ""))),
        ], links=links),
        entry_group("plates", "Plates, steel, wire", [
            *job("joint", "plate", "plate2"), *map(entry, ("plate_width", "plate2_width")),
            *grades, *job("position", "wire"), entry("filler_strength"),
        ]),
        entry_group("code", "Code and method", [
            form.choice("design_code", CODES),
            form.choice("analysis", (
                ("elastic", "Elastic", "any load"), ("ic", "Turning center", "load in plane"))),
            form.choice("cross_increase",
                        (("no", "Leave out", ""), ("yes", "Count it", ""))),
            *job("units"),
        ]),
    ))  # fmt: skip


def _own(typed: Mapping[str, str]) -> str:
    return query_of({**typed, "group": OWN_LINE})
