"""The query string of a job: what may be asked, its ranges and its defaults.

One schema serves the form, the address bar, the terminal and the tests. Unknown keys are
reported, not fatal. A blank value means the default.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any
from urllib.parse import urlencode

from marshmallow import Schema

from beadwright import units
from beadwright.errors import FieldErrors, UnknownEntryError
from beadwright.job.job import ByHand, Edges, Job
from beadwright.job.job_joint import weld_way
from beadwright.job.joint_conflicts import conflicts
from beadwright.joint.joints import JOINTS
from beadwright.process.gas_flow import NOZZLES, nozzle_of
from beadwright.process.gases import GASES, gas_of
from beadwright.process.positions import position_of
from beadwright.process.wires import INCH_SIZES_M, METRIC_NAMES, WIRE_TYPES, wire_of
from beadwright.reading.fields import Choice, Entry, Measured, WholeNumber
from beadwright.reading.page_query import PageQuery, read_page

DEFAULTS: Mapping[str, str] = {
    "units": "us",
    "joint": "tee",
    "plate": "3/8in",
    "plate2": "",
    "corner": "open",
    "skew": "",
    "leg": "",
    "leg2": "",
    "gap": "",
    "angle": "",
    "root_face": "",
    "depth": "",
    "depth2": "",
    "backing": "none",
    "hole": "",
    "slot_length": "",
    "reinforcement": "",
    "position": "2F",
    "wire": "ER70S-6",
    "dia": "0.045in",
    "gas": "90/10",
    "transfer": "auto",
    "travel_by": "hand",
    "aim": "balanced",
    "heat_min": "",
    "heat_max": "",
    "wfs": "",
    "volts": "",
    "ctwd": "",
    "travel": "",
    "weld_length": "6in",
    "pitch": "",
    "welds": "8",
    "machine_amps": "",
    "machine_volts": "",
    "nozzle": "",
}
"""What a blank or missing key means. Blank: ours to choose (or no limit)."""

KEY_WORDS: Mapping[str, str] = {
    "units": "us or si",
    "joint": ", ".join(JOINTS),
    "plate": "thickness of the plate lying down, or sheet gauge (10ga)",
    "plate2": "thickness of the other; blank: the same",
    "corner": "open (edge to edge), half (half covered), closed (covered)",
    "skew": "angle of a tee on the weld's side; blank: 90deg",
    "leg": "fillet leg as on a square tee; blank: the code's minimum",
    "leg2": "leg up the other plate; blank: the same",
    "gap": "fit-up gap, root opening",
    "angle": "groove angle: between the faces of a V, of the bevelled face of a bevel",
    "root_face": "edge left square",
    "depth": "depth of the groove, first side; of a plug how full; blank: through",
    "depth2": "depth of the groove, second side",
    "backing": "none, steel, copper, ceramic",
    "hole": "diameter of a plug's hole, width of a slot; blank: the code's least",
    "slot_length": "length of a slot, end to end",
    "reinforcement": "crown of the face; blank: the usual",
    "position": "1F 2F 3F-up 3F-down 4F, 1G 2G 3G-up 3G-down 4G, or PA to PG",
    "wire": "AWS classification",
    "dia": "wire diameter",
    "gas": "any mix as said in the shop: 90/10, 98/2 O2, 90/8/2 O2, CO2",
    "transfer": "auto, short, spray, pulse",
    "travel_by": "hand, track, robot",
    "aim": "balanced, least-time, least-heat, easiest: what the set point is chosen for",
    "heat_min": "least heat a written procedure asks: volts × amps ÷ travel, no efficiency",
    "heat_max": "most heat it allows, counted alike",
    "wfs": "wire feed set by hand",
    "volts": "volts at the arc set by hand",
    "ctwd": "contact tip to work set by hand",
    "travel": "travel set by hand",
    "weld_length": "length of one weld",
    "pitch": "centre to centre of intermittent welds; blank: one after another",
    "welds": "welds in the job",
    "machine_amps": "most current of the power source",
    "machine_volts": "most volts at the arc of the power source",
    "nozzle": "bore of the gas nozzle: 1/2in, 5/8in, 3/4in; blank: the usual at this current",
}
"""What each key means, for the terminal and the form."""

_POSITION_NAMES = (
    "1F", "2F", "3F-up", "3F-down", "4F", "1G", "2G", "3G-up", "3G-down", "4G",
    "PA", "PB", "PC", "PD", "PE", "PF", "PG",
)  # fmt: skip


def _number(metric: str) -> float | None:
    """The number of a metric size as a spool names it, with or without its unit."""
    try:
        return float(metric.removesuffix("mm"))
    except ValueError:
        return None


def size_of(text: str) -> str:
    """Return the inch name of a wire diameter typed in inches or millimeters.

    Args:
        text: Such as ``0.045in``, ``.045``, ``1.2mm``, ``1mm``, ``1/16`` [-].

    Raises:
        UnknownEntryError: If no wire of that size is in the table.
    """
    plain = text.strip().lower()
    for name, metric in METRIC_NAMES.items():
        if _number(plain) == _number(metric):
            return name
    try:
        typed = units.read(plain, "wire_diameter", "us")
    except ValueError as error:
        raise UnknownEntryError(str(error)) from error
    for name, size in INCH_SIZES_M.items():
        if abs(size - typed) < 1e-5:
            return name
    known = ", ".join(f"{name} ({METRIC_NAMES[name]})" for name in INCH_SIZES_M)
    raise UnknownEntryError(f"{units.quoted(text)} is no size in the table; it has {known}")


class JobSchema(Schema):
    """A job as typed, field by field, in the order of the form."""

    units = Choice(("us", "si"))
    joint = Choice(JOINTS)
    plate = Measured("length", "30ga", "4in", "sheet of 30 gauge to plate of 4 in")
    plate2 = Measured("length", "30ga", "4in", "sheet of 30 gauge to plate of 4 in")
    leg = Measured("leg", "1/16in", "2in", "smaller cannot be measured, larger wants a groove")
    corner = Choice(("open", "half", "closed"))
    skew = Measured("angle", "60deg", "135deg", "sharper hides the root, flatter is a butt")
    leg2 = Measured("leg", "1/16in", "2in", "smaller cannot be measured, larger wants a groove")
    gap = Measured("leg", "0in", "1/2in", "no detail opens a root wider")
    angle = Measured("angle", "10deg", "120deg", "narrower hides the root, wider is all filler")
    root_face = Measured("leg", "0in", "2in", "an edge cannot be less, and 2 in is never melted")
    depth = Measured("leg", "1/32in", "4in", "no groove is shallower, no plate here thicker")
    depth2 = Measured("leg", "1/32in", "4in", "no groove is shallower, no plate here thicker")
    backing = Choice(("none", "steel", "copper", "ceramic"))
    hole = Measured("leg", "3/16in", "3in", "smaller hides the root, larger wants a fillet around")
    slot_length = Measured("length", "3/16in", "20in", "longer wants a fillet around the hole")
    reinforcement = Measured("leg", "0in", "3/16in", "no code accepts a higher crown")
    position = Entry(position_of, _POSITION_NAMES)
    wire = Choice(tuple(WIRE_TYPES))
    dia = Entry(size_of, tuple(INCH_SIZES_M))
    gas = Entry(gas_of, tuple(GASES))
    transfer = Choice(("auto", "short", "spray", "pulse"))
    travel_by = Choice(("hand", "track", "robot"))
    aim = Choice(("balanced", "least-time", "least-heat", "easiest"))
    heat_min = Measured("heat_input", "1kJ/in", "200kJ/in", "no wire procedure asks less or more")
    heat_max = Measured("heat_input", "1kJ/in", "200kJ/in", "no wire procedure asks less or more")
    wfs = Measured("wire_feed", "30in/min", "1000in/min", "no feeder holds less or gives more")
    volts = Measured("volts", "10V", "50V", "outside that no wire arc burns")
    ctwd = Measured("tip_to_work", "1/8in", "2in", "closer the tip melts, farther the arc wanders")
    travel = Measured("travel", "1in/min", "200in/min", "nobody and nothing moves a torch so")
    weld_length = Measured("length", "1/4in", "1000ft", "one weld, not the whole job")
    pitch = Measured("length", "1/4in", "1000ft", "centre to centre, not the whole job")
    welds = WholeNumber(1, 1_000_000)
    machine_amps = Measured("current", "30A", "1000A", "smallest to largest wire power source")
    machine_volts = Measured("volts", "12V", "60V", "smallest to largest wire power source")
    nozzle = Entry(nozzle_of, tuple(NOZZLES))


@dataclass(frozen=True, slots=True)
class JobQuery(PageQuery):
    """A query of nothing but a job, as read.

    Attributes:
        job: The job.
    """

    job: Job


def read_query(query: str, kept: Mapping[str, Any] | None = None) -> JobQuery:
    """Return the job a query string describes.

    Args:
        query: The query string [-].
        kept: The shop's own defaults by key; unknown keys are left aside [-].

    Raises:
        FieldErrors: With every field's messages, if anything cannot be taken.
    """
    read = read_page(query, kept, JobSchema, DEFAULTS)
    return JobQuery(
        values=read.values,
        filled=read.filled,
        typed=read.typed,
        own=read.own,
        unknown=read.unknown,
        job=_job(read.values),
    )


def read_job(filled: Mapping[str, str]) -> JobQuery:
    """Return the job among a page's keys.

    Args:
        filled: Keys to text, blanks left out [-].

    Raises:
        FieldErrors: With every field's messages.
    """
    keys = {key: filled[key] for key in DEFAULTS if filled.get(key)}
    return read_query(urlencode(keys))


def _job(loaded: Mapping[str, Any]) -> Job:
    try:
        wire = wire_of(loaded["wire"], loaded["dia"])
    except UnknownEntryError as error:
        raise FieldErrors({"dia": [str(error)]}) from error
    job = Job(
        units=loaded["units"],
        joint=loaded["joint"],
        plate_m=loaded["plate"],
        plate2_m=loaded.get("plate2", loaded["plate"]),
        leg_m=loaded.get("leg"),
        gap_m=loaded.get("gap"),
        reinforcement_m=loaded.get("reinforcement"),
        position=loaded["position"],
        wire=wire,
        gas=loaded["gas"],
        transfer=loaded["transfer"],
        travel_by=loaded["travel_by"],
        by_hand=ByHand(
            loaded.get("wfs"), loaded.get("volts"), loaded.get("ctwd"), loaded.get("travel")
        ),
        weld_length_m=loaded["weld_length"],
        welds=loaded["welds"],
        machine_amps_a=loaded.get("machine_amps"),
        machine_volts_v=loaded.get("machine_volts"),
        edges=_edges(loaded),
        nozzle=loaded.get("nozzle"),
        aim=loaded["aim"],
        heat_min_j_m=loaded.get("heat_min"),
        heat_max_j_m=loaded.get("heat_max"),
    )
    _check_heat(job)
    _check_pairs(job)
    # A plug is laid around: its way follows from the hole.
    return replace(job, weld_length_m=weld_way(job)) if job.is_round else job


def _edges(loaded: Mapping[str, Any]) -> Edges:
    return Edges(
        leg2_m=loaded.get("leg2"),
        skew_deg=loaded.get("skew", 90.0),
        corner=loaded["corner"],
        angle_deg=loaded.get("angle"),
        root_face_m=loaded.get("root_face"),
        depth_m=loaded.get("depth"),
        depth2_m=loaded.get("depth2"),
        backing=loaded["backing"],
        hole_m=loaded.get("hole"),
        slot_m=loaded.get("slot_length"),
        pitch_m=loaded.get("pitch"),
    )


def _check_heat(job: Job) -> None:
    least, most = job.heat_min_j_m, job.heat_max_j_m
    if least is not None and most is not None and least > most:
        text = "The least heat is over the most; a procedure's range runs the other way."
        raise FieldErrors({"heat_min": [text], "heat_max": [text]})


def _check_pairs(job: Job) -> None:
    """Refuse what no single field shows: pairs that contradict each other."""
    found: dict[str, list[str]] = {}
    for fields, text in conflicts(job):
        for field in fields:
            found.setdefault(field, []).append(text)
    if found:
        raise FieldErrors(found)
