"""What is asked of a weld's strength: its shape, its load, its plates, its code."""

from __future__ import annotations

from dataclasses import dataclass, replace

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.job.job import Job
from beadwright.joint.fillets import largest_edge_leg
from beadwright.strength.elastic_line import GroupLoad, load_at_centroid
from beadwright.strength.resistance_aisc import filler_strength
from beadwright.strength.steel_strength import STRENGTHS, SteelStrength
from beadwright.strength.strength_query import (
    DEMO_LOAD,
    DEMO_LOAD_IN_PLANE,
    FORCES,
    LOADS,
    PLACES,
    Analysis,
    DesignCode,
    LoadEntries,
    StrengthQuery,
)
from beadwright.strength.weld_group import WeldGroup, shaped_group
from beadwright.strength.weld_line import LineProperties, line_properties
from beadwright.units import read, written

_BOTH_SIDES = 2.0
"""Distance, in plate thicknesses, under which two lines of weld are the two sides of one plate
[-]."""


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
        steel: Steel of the plate lying down.
        steel2: Steel of the other plate.
        plate_width_m: Width of a lap's lower plate across the pull, or None [m].
        plate2_width_m: Width of its upper plate, or None [m].
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
    steel2: SteelStrength
    plate_width_m: float | None
    plate2_width_m: float | None
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
    def weaker_en(self) -> tuple[float, float]:
        """Tensile strength of the weaker plate and its correlation factor [Pa, -].

        Source: EN 1993-1-8, 4.5.3.2(6).
        """
        found: list[tuple[float, float]] = []
        for steel, thickness in ((self.steel, self.job.plate_m), (self.steel2, self.job.plate2_m)):
            assert steel.correlation is not None  # refused when the query was read
            found.append((steel.at(thickness)[1], steel.correlation))
        return min(found)

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


def strength_task(query: StrengthQuery) -> StrengthTask:
    """Return what a query asks.

    Args:
        query: The query as read [-].

    Raises:
        FieldErrors: Where two entries contradict each other, each named.
    """
    job = query.job
    group = _group(query)
    _check_part(query, group)
    _check_edge(job)
    properties = line_properties(group)
    asked, demo = _loaded(query)
    load, at = _load(asked, properties)
    if query.analysis == "ic":
        _check_plane(asked, load)
    return StrengthTask(
        job=job,
        group=group,
        properties=properties,
        load=load,
        at=at,
        per_length_n_m=asked.line_load,
        sides=_sides(query, group),
        steel=_steel(query, "steel", "plate"),
        steel2=_steel(query, "steel2" if query.member.steel2 else "steel", "plate2"),
        plate_width_m=query.member.plate_width,
        plate2_width_m=query.member.plate2_width,
        filler_pa=query.filler_strength or filler_strength(job.wire.type.name),
        code=query.design_code,
        analysis=query.analysis,
        increase=query.cross_increase == "yes",
        segment_m=query.segment,
        demo_load=demo,
    )


def _group(query: StrengthQuery) -> WeldGroup:
    shape, length = query.group, query.job.weld_length_m
    if isinstance(shape, WeldGroup):
        return shape
    height = length if query.group_height is None else query.group_height
    width = query.group_width
    if shape == "flats" and query.group_height is None:
        height, width = width, length
    return shaped_group(shape, width, height)


def _sides(query: StrengthQuery, group: WeldGroup) -> int:
    """Sides welded, unless the query says: both of a tee's straight fillet, one of all others."""
    if query.weld_sides is not None:
        return int(query.weld_sides)
    return 2 if group.name == "line" and query.job.joint == "tee" else 1


def _check_part(query: StrengthQuery, group: WeldGroup) -> None:
    part, system = query.part_length, query.job.units
    if part is None:
        return
    left, bottom, right, top = group.outline
    longest = max(right - left, top - bottom)
    if longest > part * (1 + 1e-9):
        text = (
            f"The weld is {written(longest, 'length', system)} long, the part "
            f"{written(part, 'length', system)}: shorten the weld or "
            "give the part its length."
        )
        key = "group_height" if query.group_height is not None else "weld_length"
        key = "group" if isinstance(query.group, WeldGroup) else key
        raise FieldErrors({key: [text], "part_length": [text]})


def _check_edge(job: Job) -> None:
    if job.leg_m is None or job.joint != "lap":
        return
    most = largest_edge_leg(job.plate2_m)
    if job.leg_m > most + 1e-9:
        text = (
            f"Leg {written(job.leg_m, 'leg', job.units)} is over "
            f"{written(most, 'leg', job.units)}, the most along the edge of the "
            f"{written(job.plate2_m, 'leg', job.units)} plate (AISC 360 J2.2b)."
        )
        raise FieldErrors({"leg": [text], "plate2": [text]})


def _loaded(query: StrengthQuery) -> tuple[LoadEntries, bool]:
    """Return what loads the weld, and whether it is the demonstration's, for none is given."""
    asked = query.load
    if asked.written(*LOADS):
        return asked, False
    wrong = [key for key in LOADS if getattr(asked, key) is not None]
    if wrong:
        text = "Nothing loads the weld: give a force, a moment or a force per length over zero."
        raise FieldErrors({wrong[0]: [text]})
    demo = DEMO_LOAD_IN_PLANE if query.analysis == "ic" else DEMO_LOAD
    read_in = {
        key: read(text, "force" if key in LOADS else "length")
        for key, text in demo.items()
        if getattr(asked, key) is None
    }
    return replace(asked, **read_in), True


def _load(
    asked: LoadEntries, properties: LineProperties
) -> tuple[GroupLoad, tuple[float, float, float]]:
    if asked.line_load:
        others = asked.written(*FORCES, *PLACES)
        if others:
            text = "Give a force per length, or forces and moments: not both."
            raise FieldErrors({key: [text] for key in ("line_load", *others)})
        pull = GroupLoad(pz=asked.line_load * properties.length_m)
        return pull, (properties.x, properties.y, 0.0)
    given = GroupLoad(
        px=asked.px or 0.0,
        py=asked.py or 0.0,
        pz=asked.pz or 0.0,
        mx=asked.mx or 0.0,
        my=asked.my or 0.0,
        mz=asked.mz or 0.0,
    )
    lone = () if asked.written("px", "py", "pz") else asked.written(*PLACES)
    if lone:
        text = "This says where a force acts, but no force is given."
        raise FieldErrors({key: [text] for key in lone})
    spot = (
        properties.x if asked.load_x is None else asked.load_x,
        properties.y if asked.load_y is None else asked.load_y,
        asked.load_z or 0.0,
    )
    return load_at_centroid(properties, given, spot), spot


def _check_plane(asked: LoadEntries, load: GroupLoad) -> None:
    size = abs(load.px) + abs(load.py) + abs(load.pz) + abs(load.mz)
    if max(abs(load.pz), abs(load.mx), abs(load.my)) <= 1e-9 * size:
        return
    keys = asked.written("pz", "mx", "my", "load_z", "line_load")
    text = (
        "The turning center takes loads in the plane of the joint only. Leave pull, bending and "
        "reach out from the joint blank, or take the elastic method."
    )
    raise FieldErrors({key: [text] for key in ("analysis", *keys)})


def _steel(query: StrengthQuery, key: str, plate: str) -> SteelStrength:
    """The steel of a plate, typed under one key or the other, or the usual."""
    european = query.design_code.startswith("en")
    typed = query.member.steel2 if key == "steel2" else query.steel
    steel = typed or STRENGTHS["S235JR" if european else "A36"]
    if european and steel.correlation is None:
        grades = ", ".join(g for g, s in STRENGTHS.items() if s.correlation is not None)
        text = (
            f"EN 1993-1-8 has no correlation factor for {steel.grade}: take {grades}, "
            "or design by AISC (asd, lrfd)."
        )
        raise FieldErrors({key: [text], "design_code": [text]})
    try:
        steel.at(query.job.plate_m if plate == "plate" else query.job.plate2_m)
    except OutOfRangeError as error:
        raise FieldErrors({plate: [str(error)], key: [str(error)]}) from error
    return steel
