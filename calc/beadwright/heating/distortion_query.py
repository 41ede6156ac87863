"""Distortion's keys, and its answer from a job as dialled in: the part the weld is on."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any

from marshmallow import fields

from beadwright.errors import FieldErrors
from beadwright.heating.distortion import Distortion, Laid, distortions
from beadwright.heating.welded_part import WeldedPart, butt_part, corner_part, lap_part, tee_part
from beadwright.joint.fillets import minimum_leg
from beadwright.phrases import say
from beadwright.reading.fields import Choice, Measured
from beadwright.results import Note
from beadwright.setting.dial_in import DialIn

WORDS: Mapping[str, str] = MappingProxyType(
    {
        "part_length": "length of the part the weld pulls on; blank: the weld's",
        "part_width": "width of the plate lying down",
        "part_height": "height of the plate standing",
        "part_sides": "1: welded on one side; 2: the same on both",
        "part_share": "share of the length welded, 100% if continuous",
        "part_area": "section of your own part, with the next two",
        "part_inertia": "its moment of inertia against the bow",
        "part_offset": "weld to its neutral axis",
    }
)
"""What each key means."""

DEFAULTS: Mapping[str, str] = MappingProxyType(
    {
        "part_length": "", "part_width": "4in", "part_height": "4in", "part_sides": "1",
        "part_share": "100%", "part_area": "", "part_inertia": "", "part_offset": "",
    }
)  # fmt: skip
"""What a blank or missing key means."""

_OWN = ("part_area", "part_inertia", "part_offset")

ROOM = 1 + 1e-9
"""Factor by which a weld may be longer than its part and still count as of its length [-]."""


def distortion_fields() -> dict[str, fields.Field[Any]]:
    """Return the fields of the keys, for the schema of the page that shows distortion."""
    plate = "bar to ship's plate"
    own = "bar to bridge girder"
    return {
        "part_length": Measured("length", "1/2in", "200ft", plate),
        "part_width": Measured("length", "1/2in", "20ft", plate),
        "part_height": Measured("length", "1/2in", "20ft", plate),
        "part_sides": Choice(("1", "2")),
        "part_share": Measured("share", "5%", "100%", "less is a tack"),
        "part_area": Measured("area", "0.05in2", "5000in2", own),
        "part_inertia": Measured("inertia", "0.0001in4", "10000000in4", own),
        "part_offset": Measured("length", "0in", "20ft", own),
    }


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
    dialled: DialIn, values: Mapping[str, Any], heat_en_j_m: float | None = None
) -> PartDistortion:
    """Return what a job as dialled in does to its part, and what other ways would do.

    Args:
        dialled: The job and its settings [-].
        values: The keys of ``DEFAULTS`` as their fields read them; a blank one is missing [SI].
        heat_en_j_m: Net heat input of a pass by hand, or None for the job's own [J/m].

    Raises:
        FieldErrors: If the weld is longer than the part, or a part of your own is half written.
    """
    laid = _laid(dialled, values, heat_en_j_m)
    part = _part(dialled, values, laid)
    least = minimum_leg(dialled.job.thinner_m) if laid.fillet else 0.0
    ways = distortions(laid, part, least)
    return PartDistortion(part, ways, tuple(_notes(laid, ways[0])))


def _laid(dialled: DialIn, values: Mapping[str, Any], heat: float | None) -> Laid:
    job, plan, outcome = dialled.job, dialled.plan, dialled.outcome
    if heat is None and outcome is not None:
        heat = outcome.heat_en.value
    return Laid(
        joint=job.joint,
        leg_m=plan.shape.leg_m if job.is_fillet else 0.0,
        section_m2=plan.shape.section_m2,
        plate_m=job.plate_m if job.is_fillet else job.thinner_m,
        gap_m=next((d.value_m for d in plan.shape.dimensions if d.name == "gap"), 0.0),
        passes=plan.passes,
        heat_j_m=heat,
        current_a=None if outcome is None else outcome.current.value,
        sides=2 if values.get("part_sides") == "2" else 1,
        share=values["part_share"],
        length_m=job.weld_length_m,
        material=job.wire.material,
    )


def _part(dialled: DialIn, values: Mapping[str, Any], laid: Laid) -> WeldedPart:
    job = dialled.job
    length: float = values.get("part_length", job.weld_length_m)
    if job.weld_length_m > length * ROOM:
        text = "The weld is longer than the part: write a longer part_length or less weld_length."
        raise FieldErrors({"part_length": [text], "weld_length": [text]})
    width, height = values["part_width"], values["part_height"]
    given = {key: values[key] for key in _OWN if key in values}
    if given and len(given) < len(_OWN):
        text = "A part of your own needs part_area, part_inertia and part_offset, all three."
        raise FieldErrors({key: [text] for key in _OWN if key not in given})
    if given:
        area, inertia, offset = (given[key] for key in _OWN)
        return WeldedPart(area, inertia, offset, None, 0.0, width, length)
    match job.joint:
        case "tee":
            return tee_part(job.plate_m, job.plate2_m, width, height, laid.leg_m, length)
        case "corner":
            return corner_part(job.plate_m, job.plate2_m, width, height, laid.leg_m, length)
        case "lap":
            return lap_part(job.plate_m, job.plate2_m, width, laid.leg_m, length)
        case _:
            return butt_part(job.thinner_m, width, length)


def _notes(laid: Laid, yours: Distortion) -> Iterator[Note]:
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
            say("heating.no-angle-form"),
            "practice",
            "distortion",
        )
