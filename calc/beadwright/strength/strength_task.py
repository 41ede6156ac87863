"""What is asked of a weld's strength: its shape, its load, its plates, its code."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Literal

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.job.job import Job
from beadwright.job.job_query import read_job
from beadwright.joint.fillets import largest_edge_leg
from beadwright.reading.page_query import PageQuery
from beadwright.strength.elastic_line import GroupLoad, load_at_centroid
from beadwright.strength.resistance_aisc import filler_strength
from beadwright.strength.steel_strength import STRENGTHS, SteelStrength
from beadwright.strength.strength_query import DEMO_LOAD, DEMO_LOAD_IN_PLANE, LOADS
from beadwright.strength.weld_group import WeldGroup, shaped_group
from beadwright.strength.weld_line import LineProperties, line_properties
from beadwright.units import read, show, symbol

DesignCode = Literal["asd", "lrfd", "en", "en-directional"]
Analysis = Literal["elastic", "ic"]

_BOTH_SIDES = 2.0
"""Distance, in plate thicknesses, under which two lines of weld are the two sides of one plate
[-]."""

_AT = ("load_x", "load_y", "load_z")


@dataclass(frozen=True, slots=True)
class StrengthTask:
    """A weld to be judged.

    Attributes:
        job: The job it belongs to.
        group: Shape of the weld.
        properties: The same as a line.
        load: What it carries, at its centroid [N, N·m].
        at: Where the force acts, from the group's origin and out of its plane [m].
        per_length_n_m: Force per length, where that was given, or None [N/m].
        sides: 1, or 2 for the same weld on both sides of the plate.
        steel: Steel of both plates.
        filler_pa: Tensile strength of the filler [Pa].
        code: Design code.
        analysis: How the load spreads.
        increase: True if the added strength across the weld counts.
        segment_m: Length of an intermittent segment asked for, or None [m].
        demo_load: True if the load is the demonstration's.
    """

    job: Job
    group: WeldGroup
    properties: LineProperties
    load: GroupLoad
    at: tuple[float, float, float]
    per_length_n_m: float | None
    sides: int
    steel: SteelStrength
    filler_pa: float
    code: DesignCode
    analysis: Analysis
    increase: bool
    segment_m: float | None
    demo_load: bool

    @property
    def european(self) -> bool:
        """True for EN 1993-1-8."""
        return self.code.startswith("en")

    @property
    def concentric(self) -> bool:
        """True if nothing turns or bends the group."""
        size = abs(self.load.px) + abs(self.load.py) + abs(self.load.pz)
        arm = self.properties.length_m * 1e-6 * size
        return max(abs(self.load.mx), abs(self.load.my), abs(self.load.mz)) <= arm

    @property
    def end_loaded(self) -> bool:
        """True if the lines all run one way and the load runs along them through the centroid."""
        way, load = self.group.way, self.load
        if way is None or not self.concentric or self.per_length_n_m is not None:
            return False
        across = abs(load.px * way[1] - load.py * way[0]) + abs(load.pz)
        return across <= 1e-6 * (abs(load.px) + abs(load.py))

    @property
    def welds_on_stem(self) -> int:
        """Welds that share the standing plate's thickness."""
        paired = self.group.name in ("lines", "flats") and self.sides == 1
        if not paired:
            return self.sides
        left, bottom, right, top = self.group.outline
        apart = right - left if self.group.name == "lines" else top - bottom
        return 2 if apart <= _BOTH_SIDES * self.job.plate2_m else 1


def strength_task(query: PageQuery) -> StrengthTask:
    """Return what a query asks.

    Args:
        query: The query as read [-].

    Raises:
        FieldErrors: Where two entries contradict each other, each named.
    """
    values = query.values
    job = read_job(query.filled).job
    group = _group(values, job)
    _check_part(values, group, job)
    _check_edge(job)
    properties = line_properties(group)
    values, demo = _loaded(values)
    load, at = _load(values, properties)
    code: DesignCode = values["design_code"]
    analysis: Analysis = values["analysis"]
    if analysis == "ic":
        _check_plane(values, load)
    return StrengthTask(
        job, group, properties, load, at, values.get("line_load"), _sides(values, group, job),
        _steel(values, code, job), _filler(values, job), code, analysis,
        values["cross_increase"] == "yes", values.get("segment"), demo,
    )  # fmt: skip


def _group(values: Mapping[str, Any], job: Job) -> WeldGroup:
    shape = values["group"]
    if isinstance(shape, WeldGroup):
        return shape
    height = values.get("group_height", job.weld_length_m)
    width = values["group_width"]
    if shape == "flats" and "group_height" not in values:
        height, width = width, job.weld_length_m
    return shaped_group(shape, width, height)


def _sides(values: Mapping[str, Any], group: WeldGroup, job: Job) -> int:
    """Sides welded, unless the query says: both of a tee's straight fillet, one of all others."""
    usual = "2" if group.name == "line" and job.joint == "tee" else "1"
    return int(values.get("weld_sides", usual))


def _check_part(values: Mapping[str, Any], group: WeldGroup, job: Job) -> None:
    part = values.get("part_length")
    if part is None:
        return
    left, bottom, right, top = group.outline
    longest = max(right - left, top - bottom)
    if longest > part * (1 + 1e-9):
        unit = symbol("length", job.units)
        text = (
            f"The weld is {show(longest, 'length', job.units)} {unit} long, the part "
            f"{show(part, 'length', job.units)} {unit}: shorten the weld or "
            "give the part its length."
        )
        key = "group" if isinstance(values["group"], WeldGroup) else "group_height"
        key = "weld_length" if "group_height" not in values and key != "group" else key
        raise FieldErrors({key: [text], "part_length": [text]})


def _check_edge(job: Job) -> None:
    if job.leg_m is None or job.joint != "lap":
        return
    most = largest_edge_leg(job.plate2_m)
    if job.leg_m > most + 1e-9:
        unit = symbol("leg", job.units)
        text = (
            f"Leg {show(job.leg_m, 'leg', job.units)} {unit} is over "
            f"{show(most, 'leg', job.units)} {unit}, the most along the edge of the "
            f"{show(job.plate2_m, 'leg', job.units)} {unit} plate (AISC 360 J2.2b)."
        )
        raise FieldErrors({"leg": [text], "plate2": [text]})


def _loaded(values: Mapping[str, Any]) -> tuple[Mapping[str, Any], bool]:
    """Return the values with the demonstration's load where none is given."""
    if any(values.get(key) for key in LOADS):
        return values, False
    wrong = [key for key in LOADS if key in values]
    if wrong:
        text = "Nothing loads the weld: give a force, a moment or a force per length over zero."
        raise FieldErrors({wrong[0]: [text]})
    demo = DEMO_LOAD_IN_PLANE if values["analysis"] == "ic" else DEMO_LOAD
    read_in = {k: read(t, "force" if k in LOADS else "length") for k, t in demo.items()}
    return {**values, **{k: v for k, v in read_in.items() if k not in values}}, True


def _load(
    values: Mapping[str, Any], properties: LineProperties
) -> tuple[GroupLoad, tuple[float, float, float]]:
    center = (properties.x, properties.y, 0.0)
    per_length = values.get("line_load")
    if per_length:
        others = [key for key in (*LOADS[:-1], *_AT) if values.get(key)]
        if others:
            text = "Give a force per length, or forces and moments: not both."
            raise FieldErrors({key: [text] for key in ("line_load", *others)})
        return GroupLoad(pz=per_length * properties.length_m), center
    given = GroupLoad(*(values.get(key, 0.0) for key in LOADS[:-1]))
    at = tuple(values.get(key, blank) for key, blank in zip(_AT, center, strict=True))
    lone = [key for key in _AT if values.get(key) and not (given.px or given.py or given.pz)]
    if lone:
        text = "This says where a force acts, but no force is given."
        raise FieldErrors({key: [text] for key in lone})
    spot = at[0], at[1], at[2]
    return load_at_centroid(properties, given, spot), spot


def _check_plane(values: Mapping[str, Any], load: GroupLoad) -> None:
    size = abs(load.px) + abs(load.py) + abs(load.pz) + abs(load.mz)
    if max(abs(load.pz), abs(load.mx), abs(load.my)) <= 1e-9 * size:
        return
    keys = [key for key in ("pz", "mx", "my", "load_z", "line_load") if values.get(key)]
    text = (
        "The turning centre takes loads in the plane of the joint only. Leave pull, bending and "
        "reach out from the joint blank, or take the elastic method."
    )
    raise FieldErrors({key: [text] for key in ("analysis", *keys)})


def _steel(values: Mapping[str, Any], code: DesignCode, job: Job) -> SteelStrength:
    european = code.startswith("en")
    steel: SteelStrength = values.get("steel") or STRENGTHS["S235JR" if european else "A36"]
    if european and steel.correlation is None:
        grades = ", ".join(g for g, s in STRENGTHS.items() if s.correlation is not None)
        text = (
            f"EN 1993-1-8 has no correlation factor for {steel.grade}: take {grades}, "
            "or design by AISC (asd, lrfd)."
        )
        raise FieldErrors({"steel": [text], "design_code": [text]})
    for key, thickness in (("plate", job.plate_m), ("plate2", job.plate2_m)):
        try:
            steel.at(thickness)
        except OutOfRangeError as error:
            raise FieldErrors({key: [str(error)], "steel": [str(error)]}) from error
    return steel


def _filler(values: Mapping[str, Any], job: Job) -> float:
    own = values.get("filler_strength")
    return float(own) if own else filler_strength(job.wire.type.name)
