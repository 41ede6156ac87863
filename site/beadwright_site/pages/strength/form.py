"""The form of the Strength page: load, weld, plates and steel, code."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from beadwright.joint.joints import FILLETS, HOLES, JOINTS, TEE_GROOVES
from beadwright.pages import PAGES
from beadwright.strength.steel_strength import STRENGTHS
from beadwright.strength.strength_answer import StrengthAnswer
from beadwright_site.forms.entries import Choices, Entry, EntryGroup, entry_group
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

Links = tuple[tuple[str, str], ...]

LAPPED = ("lap", *HOLES)
LINES = tuple(kind for kind in JOINTS if kind not in HOLES)
ONLY_ON: Mapping[str, tuple[str, ...]] = {
    "plate_width": LAPPED,
    "plate2_width": LAPPED,
    "plugs": HOLES,
    "pitch": HOLES,
    "far_leg": ("tee",),
    **dict.fromkeys(("weld_sides", "segment", "weld_ends", "cross_increase", "analysis"), FILLETS),
    **dict.fromkeys(("pz", "load_x", "load_y", "load_z", "mz", "mx", "my", "line_load"), LINES),
    **dict.fromkeys(("group", "group_width", "group_height", "part_length", "held"), LINES),
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
    demo = frozenset[str]()
    joint = Form(filling, PAGES["strength"].fields).wanted("joint").lower()
    if found is not None and found.task.demo_load:
        bracket = joint in ("tee", *TEE_GROOVES) or found.task.analysis == "ic"
        demo = DEMO_LOAD if bracket else frozenset({"py"})
    form = Form(filling, PAGES["strength"].fields, demo)
    typed = filling.typed

    def asked(made: Entry) -> Entry:
        wanted = joint in ONLY_ON.get(made.key, (joint,))
        return made if wanted or made.errors else replace(made, hidden=True)

    def entry(key: str) -> Entry:
        return asked(form.entry(key))

    def choice(key: str, choices: Choices, blank: str = "") -> Entry:
        return asked(form.choice(key, choices, blank))

    def job(*keys: str) -> list[Entry]:
        return list(job_entries(filling, keys=keys).values())

    def group(
        key: str, title: str, entries: list[Entry], about: str = "", links: Links = ()
    ) -> EntryGroup:
        shown = [one for one in entries if not one.hidden]
        return entry_group(key, title, shown, about, links=links)

    own = typed.get("group", "").lower().startswith("polyline")
    shape = (
        asked(form.entry("group", "Your own line: points x,y", words=True))
        if own
        else choice("group", SHAPES)
    )
    links = (("Back to shapes", "group=line"),) if own else (("Draw your own line", _own(typed)),)
    steels = [(grade, grade, "") for grade in STRENGTHS]
    grades = [choice(key, steels, form.fields[key].blank) for key in ("steel", "steel2")]
    return PageForm((
        group("load", "Load", [*map(entry, LOADS)],
              "At the weld's centroid unless you say where."),
        group("weld", "Weld", [
            shape, *map(entry, ("group_width", "group_height")),
            choice("weld_sides", (("1", "One side", ""), ("2", "Both sides", "")),
                   form.fields["weld_sides"].blank),
            choice("held", (("no", "No", ""), ("yes", "Yes", ""))),
            *job("leg"), entry("far_leg"), *job("leg2", "gap", "weld_length"), asked(*job("pitch")),
            *map(entry, ("plugs", "part_length", "segment")),
            choice("weld_ends", (("plain", "As welded", ""), ("full", "Full size", ""))),
        ], links=() if joint in HOLES else links),
        group("plates", "Joint, plates, steel, wire", [
            *job("joint", "corner", "plate", "plate2"),
            *map(entry, ("plate_width", "plate2_width")),
            *job("skew", "angle", "root_face", "depth", "depth2", "backing", "back",
                 "gouge_depth", "hole", "slot_length"),
            *grades, *job("position", "wire"), entry("filler_strength"),
        ]),
        group("code", "Code and method", [
            form.choice("design_code", CODES),
            choice("analysis", (
                ("elastic", "Elastic", "any load"),
                ("ic", "Instantaneous center", "in plane, brackets"),
            )),
            choice("cross_increase", (("no", "Leave out", ""), ("yes", "Count it", ""))),
            *job("units"),
        ]),
    ))  # fmt: skip


def _own(typed: Mapping[str, str]) -> str:
    return query_of({**typed, "group": OWN_LINE})
