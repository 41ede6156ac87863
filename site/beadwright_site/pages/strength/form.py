"""The form of the Strength page: load, weld, plates and steel, code."""

from __future__ import annotations

from collections.abc import Mapping

from beadwright.strength.steel_strength import STRENGTHS
from beadwright.strength.strength_answer import StrengthAnswer
from beadwright.strength.strength_query import DEFAULTS, StrengthSchema
from beadwright_site.forms.entries import Entry, entry_group
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.job_entries import job_entries
from beadwright_site.forms.page_form import PageForm
from beadwright_site.forms.typed import measures_of
from beadwright_site.links import query_of

LABELS: Mapping[str, str] = {
    "px": "Force to the right",
    "py": "Force up, minus down",
    "pz": "Pull square off the joint",
    "load_x": "Acts right of lower left",
    "load_y": "Acts above lower left",
    "load_z": "Acts out from the joint",
    "mx": "Bending, level axis",
    "my": "Bending, upright axis",
    "mz": "Turning in the joint's plane",
    "line_load": "Or force per length of weld",
    "group": "Shape of the weld",
    "group_width": "Width",
    "group_height": "Height, or diameter",
    "weld_sides": "Weld on",
    "part_length": "Part's length, if it must fit",
    "segment": "Intermittent segment",
    "steel": "Steel",
    "filler_strength": "Filler strength",
    "design_code": "Code",
    "analysis": "How the load spreads",
    "cross_increase": "Added strength across the weld",
}
"""What each entry past the job's is called beside its field."""

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

_BLANK = {
    "load_x": "centroid", "load_y": "centroid", "load_z": "0", "group_height": "weld length",
    "part_length": "not checked", "segment": "shortest", "filler_strength": "by wire",
}  # fmt: skip


DEMO_LOAD = frozenset({"py", "load_z", "load_x"})
"""Entries of the load the demonstration's bracket carries."""


def strength_form(filling: Filling, found: StrengthAnswer | None) -> PageForm:
    """Return the form filled with what was typed.

    Args:
        filling: What it is filled with.
        found: The answer, or None if the entries could not be taken.
    """
    demo = DEMO_LOAD if found is not None and found.task.demo_load else frozenset[str]()
    form = Form(filling, DEFAULTS, measures_of(StrengthSchema), demo)
    fields, typed = job_entries(filling), filling.typed

    def entry(key: str) -> Entry:
        return form.entry(key, LABELS[key], blank=_BLANK.get(key, "none"))

    def job(*keys: str) -> list[Entry]:
        return [fields[key] for key in keys]

    own = typed.get("group", "").lower().startswith("polyline")
    shape = (
        form.entry("group", "Your own line: points x,y", words=True)
        if own
        else form.choice("group", LABELS["group"], SHAPES)
    )
    links = (("Back to shapes", "group=line"),) if own else (("Draw your own line", _own(typed)),)
    steels = [(grade, grade, "") for grade in STRENGTHS]
    steel = form.choice("steel", LABELS["steel"], steels, "Usual")
    return PageForm((
        entry_group("load", "Load", [*map(entry, LOADS)],
                    "At the weld's centroid unless you say where."),
        entry_group("weld", "Weld", [
            shape, *map(entry, ("group_width", "group_height")),
            form.choice("weld_sides", LABELS["weld_sides"], (("1", "One side", ""),
                        ("2", "Both sides", "")), "Usual"),
            *job("leg", "gap", "weld_length"), *map(entry, ("part_length", "segment")),
        ], links=links),
        entry_group("plates", "Plates, steel, wire", [
            *job("joint", "plate", "plate2"), steel, *job("position", "wire"),
            entry("filler_strength"),
        ]),
        entry_group("code", "Code and method", [
            form.choice("design_code", LABELS["design_code"], CODES),
            form.choice("analysis", LABELS["analysis"], (
                ("elastic", "Elastic", "any load"), ("ic", "Turning centre", "load in plane"))),
            form.choice("cross_increase", LABELS["cross_increase"],
                        (("no", "Leave out", ""), ("yes", "Count it", ""))),
            *job("units"),
        ]),
    ))  # fmt: skip


def _own(typed: Mapping[str, str]) -> str:
    return query_of({**typed, "group": OWN_LINE})
