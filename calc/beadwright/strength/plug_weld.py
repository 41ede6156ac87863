"""Plugs and slots under load: what gives way, their sizes by code, what is said of them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import hypot

from beadwright.errors import FieldErrors
from beadwright.job.job_joint import fill_m, hole_m, slot_m
from beadwright.joint.groove_rules import largest_hole, least_fill, least_hole
from beadwright.phrases import Amount, say
from beadwright.results import Note
from beadwright.strength import plug_strength, tension_members
from beadwright.strength.resistance_aisc import Basis
from beadwright.strength.strength_check import Link
from beadwright.strength.strength_task import StrengthTask
from beadwright.tolerance import REL_TOL


@dataclass(frozen=True, slots=True)
class PlugSizes:
    """A plug or slot, and what the code asks of it.

    Attributes:
        hole: Diameter, or width of a slot [m].
        slot: Length of a slot, or None [m].
        fill: How deep it is filled [m].
        area: What one fills of the faying surface [m²].
        least_hole: Least diameter or width [m].
        most_hole: Largest, or None where the code has none [m].
        least_fill: Least depth of fill [m].
        spacing: Least distance center to center: side by side, end to end [m].
    """

    hole: float
    slot: float | None
    fill: float
    area: float
    least_hole: float
    most_hole: float | None
    least_fill: float
    spacing: tuple[float, float]


def plug_sizes(task: StrengthTask) -> PlugSizes:
    """Return a plug or slot and what the code asks of it.

    Args:
        task: What is asked; its joint is a plug or slot [-].
    """
    job = task.job
    hole, slot, fill, top = hole_m(job), slot_m(job), fill_m(job), job.plate2_m
    if task.european:
        least, most = plug_strength.least_hole_en(top), None
        filled = plug_strength.least_fill_en(top)
    else:
        least, most, filled = least_hole(top), largest_hole(top, fill), least_fill(top)
    return PlugSizes(
        hole=hole,
        slot=slot,
        fill=fill,
        area=plug_strength.faying_area(hole, slot),
        least_hole=least,
        most_hole=most,
        least_fill=filled,
        spacing=plug_strength.least_spacing(hole, slot),
    )


def plug_links(task: StrengthTask, sizes: PlugSizes) -> Iterator[Link]:
    """Yield what gives way: the plugs in shear, and each plate whose width is given, pulled.

    The plate with one hole tears through it; of several, where they stand is not asked.

    Source: AISC 360-22 J2.3a, D2: the net section through the holes; EN 1993-1-8, 4.8 and
    EN 1993-1-1, 6.2.3.

    Args:
        task: What is asked [-].
        sizes: The plug or slot [-].
    """
    force = hypot(task.load.px, task.load.py)
    name = say("strength.plug-sheared" if sizes.slot is None else "strength.slot-sheared")
    if task.european:
        each = plug_strength.plug_shear_en(sizes.area, *task.weaker_en)
    else:
        each = plug_strength.plug_shear(sizes.area, task.filler_pa, _basis(task))
    source = "en-1993-1-8-plug" if task.european else "aisc-j2.3a"
    yield Link("weld", name, force, task.plugs * each, source, measure="force")
    widths = (
        ("plate", task.plate_width_m, task.job.plate_m, task.steel),
        ("plate2", task.plate2_width_m, task.job.plate2_m, task.steel2),
    )
    for key, width, thickness, steel in widths:
        if width is None:
            continue
        fy, fu = steel.at(thickness)
        plate = say("strength.plate") if key == "plate" else say("strength.other-plate")
        area, shown = width * thickness, Amount(width, "length")
        gross = say("strength.member-yielding", plate=plate, width=shown)
        if task.european:
            holds = tension_members.gross_yielding_en(area, fy)
            yield Link(f"{key}-gross", gross, force, holds, "en-1993-1-1-pull", measure="force")
        else:
            holds = tension_members.gross_yielding(area, fy, _basis(task))
            yield Link(f"{key}-gross", gross, force, holds, "aisc-d2", measure="force")
        if key == "plate" or task.plugs > 1:
            continue
        left = width - sizes.hole
        if left <= 0:
            text = "The plate with the hole is no wider than the hole: nothing is left to pull."
            raise FieldErrors({"plate2_width": [text], "hole": [text]})
        torn = say("strength.net-tearing", plate=plate, width=Amount(left, "length"))
        if task.european:
            holds = tension_members.net_rupture_en(left * thickness, fu)
            yield Link(f"{key}-net", torn, force, holds, "en-1993-1-1-pull", measure="force")
        else:
            holds = tension_members.net_rupture(left * thickness, fu, 1.0, _basis(task))
            yield Link(f"{key}-net", torn, force, holds, "aisc-d2", measure="force")


def _basis(task: StrengthTask) -> Basis:
    return "lrfd" if task.code == "lrfd" else "asd"


def plug_notes(task: StrengthTask, sizes: PlugSizes) -> Iterator[Note]:
    """Yield what the code says of a plug's size and place, and what is not checked.

    Args:
        task: What is asked [-].
        sizes: The plug or slot [-].
    """
    source = "en-1993-1-8-plug" if task.european else "aisc-j2.3b"
    hole, fill = Amount(sizes.hole, "leg"), Amount(sizes.fill, "leg")
    if sizes.hole < sizes.least_hole - REL_TOL:
        least = Amount(sizes.least_hole, "leg")
        yield Note("stop", say("strength.hole-small", hole=hole, least=least), source, "hole")
    if sizes.most_hole is not None and sizes.hole > sizes.most_hole + REL_TOL:
        most = Amount(sizes.most_hole, "leg")
        yield Note("stop", say("strength.hole-large", hole=hole, most=most), source, "hole")
    if sizes.fill < sizes.least_fill - REL_TOL:
        least = Amount(sizes.least_fill, "leg")
        yield Note("stop", say("strength.fill-low", fill=fill, least=least), source, "depth")
    if task.plugs > 1 and not task.european:
        yield from _apart(task, sizes)
    if task.plugs > 1 or task.plate_width_m is None or task.plate2_width_m is None:
        yield Note("caution", say("strength.plug-plates-unchecked"), "practice", "plate2_width")


def _apart(task: StrengthTask, sizes: PlugSizes) -> Iterator[Note]:
    pitch, (beside, behind) = task.job.edges.pitch_m, sizes.spacing
    least = Amount(beside, "length")
    if pitch is not None and pitch < beside - REL_TOL:
        yield Note("stop", say("strength.plugs-close", least=least), "aisc-j2.3b-apart", "pitch")
    elif sizes.slot is None:
        yield Note("note", say("strength.plugs-apart", least=least), "aisc-j2.3b-apart", "pitch")
    else:
        far = Amount(behind, "length")
        yield Note("note", say("strength.slots-apart", least=least, far=far), "aisc-j2.3b-apart",
                   "pitch")  # fmt: skip
