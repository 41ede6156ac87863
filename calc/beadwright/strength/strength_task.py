"""What is asked of a weld's strength: its shape, its load, its plates, its code."""

from __future__ import annotations

from dataclasses import dataclass, replace

from beadwright.errors import FieldErrors
from beadwright.job.job import Job
from beadwright.job.job_joint import hole_m, slot_m
from beadwright.joint.joints import TEE_GROOVES
from beadwright.strength.elastic_line import GroupLoad, load_at_centroid
from beadwright.strength.plug_strength import hole_by_en
from beadwright.strength.resistance_en import MOST_LAP_THROATS
from beadwright.strength.steel_strength import SteelStrength
from beadwright.strength.strength_conflicts import (
    check_center,
    check_edge,
    check_far_leg,
    check_kind,
    check_part,
    check_shear,
)
from beadwright.strength.strength_metals import counted_filler, plate_steels
from beadwright.strength.strength_query import (
    DEMO_LOAD,
    DEMO_LOAD_IN_PLANE,
    DEMO_SHEAR,
    FORCES,
    LOADS,
    PLACES,
    Analysis,
    DesignCode,
    LoadEntries,
    StrengthQuery,
)
from beadwright.strength.weld_group import WeldGroup, shaped_group, slot_group
from beadwright.strength.weld_line import LineProperties, line_properties
from beadwright.units import read

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
        far_leg_m: Leg on a skewed tee's other side, as on a square tee, or None [m].
        plugs: Plugs or slots that share the load [-].
        held: True if the part is held from turning about a weld from one side.
        filler_pa: Tensile strength of the filler [Pa].
        code: Design code.
        analysis: How the load spreads.
        increase: True if the added strength across the weld counts.
        ends_full: True if the weld is full size to its ends.
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
    far_leg_m: float | None
    plugs: int
    held: bool
    filler_pa: float
    code: DesignCode
    analysis: Analysis
    increase: bool
    ends_full: bool
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
    def ends_lost(self) -> bool:
        """True if the code takes a throat off each end of the weld."""
        return self.european and not self.ends_full and self.group.free_ends > 0

    def on_weld(self, group: WeldGroup) -> StrengthTask:
        """Return the same load on a part of the weld; through the centroid it stays so.

        Args:
            group: The part that counts [-].
        """
        old, new, load = self.properties, line_properties(group), self.load
        if not self.concentric:
            load = load_at_centroid(new, load, (old.x, old.y, 0.0))
        return replace(self, group=group, properties=new, load=load)

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

    def longer_holds_less(self, throat_m: float) -> bool:
        """Return whether a longer weld of this throat holds less: a lap's rule in EN 1993-1-8.

        Source: ``resistance_en.MOST_LAP_THROATS``.

        Args:
            throat_m: Throat a, above zero [m].
        """
        most = MOST_LAP_THROATS * throat_m * (1 + 1e-9)
        return self.european and self.end_loaded and self.group.shortest_m > most

    @property
    def lines(self) -> int:
        """Lines of weld side by side, those on the other side of the plate too."""
        return self.sides * (2 if self.group.name in ("lines", "flats") else 1)

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
    if query.job.is_round and query.design_code.startswith("en"):
        query = replace(query, job=hole_by_en(query.job))
    job = query.job
    check_kind(query)
    group = _group(query)
    check_part(query, group)
    check_edge(query)
    properties = line_properties(group)
    asked, demo = _loaded(query)
    load, at = _load(asked, properties)
    if job.is_round:
        check_shear(asked, load)
    steels = plate_steels(query)
    task = StrengthTask(
        job=job,
        group=group,
        properties=properties,
        load=load,
        at=at,
        per_length_n_m=asked.line_load,
        sides=_sides(query, group),
        steel=steels[0],
        steel2=steels[1],
        plate_width_m=query.member.plate_width,
        plate2_width_m=query.member.plate2_width,
        far_leg_m=query.member.far_leg,
        plugs=query.member.plugs,
        held=query.member.held == "yes",
        filler_pa=counted_filler(query, steels),
        code=query.design_code,
        analysis=query.analysis,
        increase=query.cross_increase == "yes",
        ends_full=query.weld_ends == "full",
        segment_m=query.segment,
        demo_load=demo,
    )
    check_far_leg(query, task.welds_on_stem)
    if task.analysis == "ic":
        check_center(query, asked, group, load, task.lines)
    return task


def _group(query: StrengthQuery) -> WeldGroup:
    if query.job.is_round:  # the hole itself, seen square
        hole, slot = hole_m(query.job), slot_m(query.job)
        if slot is None or slot <= hole * (1 + 1e-9):
            return shaped_group("circle", hole, hole)
        return slot_group(hole, slot)
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
    if query.job.joint not in ("tee", *TEE_GROOVES) and query.analysis == "elastic":
        demo = DEMO_SHEAR
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
