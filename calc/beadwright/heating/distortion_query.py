"""Distortion's keys, and its answer from a job as dialled in: the part the weld is on."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from beadwright.errors import FieldErrors
from beadwright.heating.distortion import Distortion, distortions
from beadwright.heating.laid_weld import LaidWeld
from beadwright.heating.welded_part import (
    WeldedPart,
    butt_part,
    corner_part,
    lap_part,
    tee_groove_part,
    tee_part,
)
from beadwright.joint.fillets import minimum_leg
from beadwright.phrases import say
from beadwright.reading.entries import optional, required
from beadwright.reading.fields import Choice, Measured
from beadwright.results import Note
from beadwright.setting.dial_in import DialIn

_PLATE = "1/2in", "20ft", "bar to ship's plate"
_OWN_PART = "bar to bridge girder"


@dataclass(frozen=True, slots=True, kw_only=True)
class PartEntries:
    """The keys of the part the weld pulls on [SI]."""

    part_length: float | None = optional(
        Measured(
            "length",
            "1/2in",
            "200ft",
            "bar to ship's plate",
            label="Length of the part",
            help="length of the part the weld pulls on; blank: the weld's",
            blank="the weld's",
        )
    )
    part_width: float = required(
        Measured(
            "length",
            *_PLATE,
            label="Width of the bottom plate",
            help="width of the bottom plate",
            default="4in",
        )
    )
    part_height: float = required(
        Measured(
            "length",
            *_PLATE,
            label="Height of the vertical plate",
            help="height of the vertical plate",
            default="4in",
        )
    )
    part_sides: Literal["1", "2"] = required(
        Choice(
            ("1", "2"),
            label="Welded on",
            help="1: welded on one side; 2: the same on both",
            default="1",
        )
    )
    part_share: float = required(
        Measured(
            "share",
            "5%",
            "100%",
            "less is a tack",
            label="Share of the length welded",
            help="share of the length welded, 100% if continuous",
            default="100%",
        )
    )
    part_area: float | None = optional(
        Measured(
            "area",
            "0.05in2",
            "5000in2",
            _OWN_PART,
            label="Your own part: its section",
            help="section of your own part, with the next two",
            blank="–",
        )
    )
    part_inertia: float | None = optional(
        Measured(
            "inertia",
            "0.0001in4",
            "10000000in4",
            _OWN_PART,
            label="Its moment of inertia",
            help="its moment of inertia against the bow",
            blank="–",
        )
    )
    part_offset: float | None = optional(
        Measured(
            "length",
            "0in",
            "20ft",
            _OWN_PART,
            label="Weld to its neutral axis",
            help="weld to its neutral axis",
            blank="–",
        )
    )


ROOM = 1 + 1e-9
"""Factor by which a weld may be longer than its part and still count as of its length [-]."""


@dataclass(frozen=True, slots=True)
class PartDistortion:
    """What the job does to its part.

    Attributes:
        part: The part.
        ways: As asked first, then other ways.
        notes: Notes on it.
    """

    part: WeldedPart
    ways: tuple[Distortion, ...]
    notes: tuple[Note, ...]


def job_distortion(
    dialled: DialIn, asked: PartEntries, heat_en_j_m: float | None = None
) -> PartDistortion:
    """Return what a job as dialled in does to its part, and what other ways would do.

    Args:
        dialled: The job and its settings [-].
        asked: The part as asked [SI].
        heat_en_j_m: Net heat input of a pass by hand, or None for the job's own [J/m].

    Raises:
        FieldErrors: If the weld is longer than the part, or a part of your own is half written.
    """
    laid = _laid(dialled, asked, heat_en_j_m)
    part = _part(dialled, asked, laid)
    least = minimum_leg(dialled.job.thinner_m) if laid.fillet else 0.0
    ways = distortions(laid, part, least)
    return PartDistortion(part, ways, tuple(_notes(laid, ways[0])))


def _laid(dialled: DialIn, asked: PartEntries, heat: float | None) -> LaidWeld:
    job, plan, outcome = dialled.job, dialled.plan, dialled.outcome
    if heat is None and outcome is not None:
        heat = outcome.heat_en.value
    sides, section, passes = _sides(dialled, asked)
    return LaidWeld(
        joint=job.joint,
        leg_m=plan.shape.leg_m if job.is_fillet else 0.0,
        section_m2=section,
        plate_m=job.plate_m if job.is_fillet else job.thinner_m,
        gap_m=next((d.value_m for d in plan.shape.dimensions if d.name == "gap"), 0.0),
        passes=passes,
        heat_j_m=heat,
        current_a=None if outcome is None else outcome.current.value,
        sides=sides,
        share=asked.part_share,
        length_m=job.weld_length_m,
        material=job.wire.material,
    )


def _sides(dialled: DialIn, asked: PartEntries) -> tuple[int, float, int]:
    """Sides welded, weld metal and passes of each.

    A groove through the plate holds its metal once, from whichever sides it is filled.
    """
    shape, passes = dialled.plan.shape, dialled.plan.passes
    asked_sides = 2 if asked.part_sides == "2" else 1
    if dialled.job.is_fillet:
        return asked_sides, shape.section_m2, passes
    drawn = len(shape.regions) if dialled.job.is_double else 1
    if drawn == 1 and not shape.complete:
        return asked_sides, shape.section_m2, passes
    sides = max(drawn, asked_sides)
    return sides, shape.section_m2 / sides, max(1, round(passes / sides))


def _part(dialled: DialIn, asked: PartEntries, laid: LaidWeld) -> WeldedPart:
    job = dialled.job
    length = job.weld_length_m if asked.part_length is None else asked.part_length
    if job.weld_length_m > length * ROOM:
        text = "The weld is longer than the part: write a longer part_length or less weld_length."
        raise FieldErrors({"part_length": [text], "weld_length": [text]})
    width, height = asked.part_width, asked.part_height
    own = _own_section(asked)
    if own is not None:
        area, inertia, offset = own
        return WeldedPart(
            area_m2=area,
            camber_inertia_m4=inertia,
            camber_offset_m=offset,
            sweep_inertia_m4=None,
            sweep_offset_m=0.0,
            width_m=width,
            length_m=length,
        )
    match job.joint:
        case "tee":
            return tee_part(job.plate_m, job.plate2_m, width, height, laid.leg_m, length)
        case "tee-bevel" | "tee-double-bevel":
            return tee_groove_part(job.plate_m, job.plate2_m, width, height, length)
        case "corner":
            return corner_part(job.plate_m, job.plate2_m, width, height, laid.leg_m, length)
        case "lap":
            return lap_part(job.plate_m, job.plate2_m, width, laid.leg_m, length)
        case _:
            return butt_part(job.thinner_m, width, length)


def _own_section(asked: PartEntries) -> tuple[float, float, float] | None:
    """Section, moment of inertia and offset of a part of one's own, or None where none is given."""
    area, inertia, offset = asked.part_area, asked.part_inertia, asked.part_offset
    if area is not None and inertia is not None and offset is not None:
        return area, inertia, offset
    given = {"part_area": area, "part_inertia": inertia, "part_offset": offset}
    missing = [key for key, value in given.items() if value is None]
    if len(missing) < len(given):
        text = "A part of your own needs part_area, part_inertia and part_offset, all three."
        raise FieldErrors({key: [text] for key in missing})
    return None


def _notes(laid: LaidWeld, yours: Distortion) -> Iterator[Note]:
    yield Note(
        "caution",
        say("heating.forms-differ"),
        "practice",
        "distortion",
    )
    yield Note(
        "note",
        say("heating.free-to-move"),
        "practice",
        "distortion",
    )
    if laid.heat_j_m is None:
        yield Note(
            "note",
            say("heating.forms-without-heat"),
            "tendon",
            "distortion",
        )
    if yours.lift.value is None:
        yield Note(
            "note",
            say("heating.no-form-at-all" if laid.hole else "heating.no-angle-form"),
            "practice",
            "distortion",
        )
