"""How a load spreads along a weld, and what the weld itself holds of it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import acos, degrees, hypot, inf
from types import MappingProxyType
from typing import Literal

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.joint.fillet_joints import fillet_throat
from beadwright.joint.fillets import throat
from beadwright.phrases import Phrase, say
from beadwright.strength import resistance_en
from beadwright.strength.bracket_center import bracket_strength
from beadwright.strength.effective_weld import effective_weld
from beadwright.strength.elastic_line import LineForce, line_forces, worst
from beadwright.strength.instantaneous_center import CenterStrength, center_strength
from beadwright.strength.one_sided import opens_at_root
from beadwright.strength.resistance_aisc import (
    Basis,
    available,
    concentric_strength,
    counted_leg,
    direction_factor,
    long_weld_factor,
    nominal_strength,
)
from beadwright.strength.skew_sides import SkewSide, skew_sides
from beadwright.strength.strength_task import StrengthTask


@dataclass(frozen=True, slots=True)
class Link:
    """One thing that can give way.

    Attributes:
        key: weld, or the plate and how it gives way: plate-yield, plate2-gross.
        phrase: What gives way.
        asked: What it is asked to carry: per length of weld, or in all [N/m or N].
        holds: What it may be asked [N/m or N].
        source: Source id.
        point: Index of the point of the weld where that is.
        measure: force_per_length, or force for what the load strains as a whole.
        by_length: True if it holds more beside a longer weld: shear lag, a block torn out.
    """

    key: str
    phrase: Phrase
    asked: float
    holds: float
    source: str
    point: int = 0
    measure: Literal["force_per_length", "force"] = "force_per_length"
    by_length: bool = False

    @property
    def use(self) -> float:
        """How much of its strength is used; over 1 it gives way [-]."""
        return self.asked / self.holds if self.holds else inf

    @property
    def part(self) -> Phrase:
        """What it is a part of, without the place or the way it gives."""
        return _PARTS.get(self.key.partition("-")[0], self.phrase)


_PARTS: Mapping[str, Phrase] = MappingProxyType(
    {"plate": say("strength.plate"), "plate2": say("strength.other-plate")}
)


@dataclass(frozen=True, slots=True)
class Spread:
    """How the load spreads along the weld.

    Attributes:
        forces: Force per length under the load, both sides of the plate together [N/m].
        worst: Index of the worst.
        center: The instantaneous center, if that method was taken and the group turns in its plane
            [m].
        factor: Load at strength over the load, for a unit of nominal strength; elastic 0 [-].
        increased: True if the added strength across the weld is counted.
    """

    forces: tuple[LineForce, ...]
    worst: int
    center: tuple[float, float] | None
    factor: float
    increased: bool


def spread(task: StrengthTask, throat_m: float | None = None) -> Spread:
    """Return how the load spreads along the weld.

    Args:
        task: What is asked [-].
        throat_m: Throat, where ends that are not full size lose one each; None: none do [m].

    Raises:
        FieldErrors: If the shape cannot take the load, both named.
        OutOfRangeError: If the ends leave nothing of a stretch.
    """
    if throat_m is not None and task.ends_lost:
        task = task.on_weld(effective_weld(task.group, throat_m))
    increased = _increase_counts(task)
    try:
        if task.analysis == "ic":
            turned = center_strength if task.load.in_plane else bracket_strength
            return _of_center(turned(task.group, task.load, 1.0, task.properties))
        forces = line_forces(task.group, task.load, task.properties)
    except OutOfRangeError as error:
        text = f"This shape cannot take this load: {error}. Give it width or take the load off."
        raise FieldErrors({"group": [text]}) from error
    uses = [f.total / (_towards(f) if increased else 1.0) for f in forces]
    at = worst(forces) if not increased else max(range(len(uses)), key=uses.__getitem__)
    if task.code == "en-directional":
        at = max(range(len(forces)), key=lambda i: _directional(task, forces[i], 1.0))
    return Spread(forces, at, None, 0.0, increased)


def _of_center(found: CenterStrength) -> Spread:
    # A nominal strength of 1 N/m carries `factor` times the load; scaled back to the load itself.
    share = 1 / found.factor
    forces = tuple(
        LineForce(f.place, f.fx * share, f.fy * share, f.fz * share) for f in found.forces
    )
    return Spread(forces, found.first, found.center, found.factor, increased=True)


def _increase_counts(task: StrengthTask) -> bool:
    """Counted only where the code allows it without asking how the group deforms."""
    if not task.increase or task.european or (opens_at_root(task) and not task.held):
        return False
    return task.job.is_fillet and task.group.way is not None and task.concentric


def _towards(force: LineForce) -> float:
    """Added strength of a point by the angle between its force and the weld."""
    total = force.total
    if total == 0:
        return 1.0
    return direction_factor(degrees(acos(min(1.0, abs(force.along) / total))))


def _directional(task: StrengthTask, force: LineForce, throat_m: float) -> float:
    fu, correlation = task.weaker_en
    return resistance_en.directional_use(
        force.along, force.across, force.fz, throat_m, fu, correlation
    )


def point_numbers(forces: tuple[LineForce, ...]) -> tuple[int, ...]:
    """Return the number of each force's place: 1 up, in order, the same for the same place.

    Args:
        forces: Forces along the weld [-].
    """
    numbers: dict[tuple[float, float], int] = {}
    return tuple(
        numbers.setdefault((round(f.place.x, 7), round(f.place.y, 7)), len(numbers) + 1)
        for f in forces
    )


def counted_throat(leg_m: float, leg2_m: float | None = None) -> float:
    """Return the throat of a fillet of equal or unequal legs [m].

    A skewed tee is welded with the legs that keep this throat; see ``weld_throat`` for two sides.

    Source: geometry; AWS A3.0, theoretical throat.

    Args:
        leg_m: Leg, above zero [m].
        leg2_m: The other leg, or None for the same [m].
    """
    return throat(leg_m) if leg2_m is None else fillet_throat(leg_m, leg2_m)


def weld_throat(task: StrengthTask, leg_m: float, leg2_m: float | None = None) -> float:
    """Return the throat that counts of a fillet, on both sides the lesser [m].

    A pull shares evenly between the two sides of a plate, whatever their throats.

    Source: ``skew_sides``; statics of a plate pulled in its middle.

    Args:
        task: What is asked [-].
        leg_m: Leg, as on a square tee, above zero [m].
        leg2_m: The other leg, or None for the same [m].
    """
    near = counted_throat(leg_m, leg2_m)
    sides = both_sides(task, leg_m)
    return near if sides is None else min(near, *(side.throat_m for side in sides))


def both_sides(task: StrengthTask, leg_m: float) -> tuple[SkewSide, SkewSide] | None:
    """Return the two sides of a tee that differ, or None where both are alike or one is welded.

    Args:
        task: What is asked [-].
        leg_m: Leg on the first side, as on a square tee, above zero [m].
    """
    job = task.job
    if job.joint != "tee" or task.welds_on_stem != 2:
        return None
    if job.skew_deg == 90 and task.far_leg_m is None:
        return None
    return skew_sides(job, leg_m, task.far_leg_m)


def weld_link(task: StrengthTask, found: Spread, leg_m: float, leg2_m: float | None = None) -> Link:
    """Return the weld itself as a link, at a leg.

    Args:
        task: What is asked [-].
        found: How the load spreads, with the throat of this leg [-].
        leg_m: Leg, above zero [m].
        leg2_m: The other leg, or None for the same [m].

    Raises:
        OutOfRangeError: If a weld so short may carry no load with this leg.
    """
    force = found.forces[found.worst]
    if task.group.radius_m:
        name = say("strength.weld-at-worst")
    else:
        name = say("strength.weld-at-point", point=point_numbers(found.forces)[found.worst])
    if task.european:
        return replace(
            _weld_en(task, force, weld_throat(task, leg_m, leg2_m), name), point=found.worst
        )
    basis: Basis = "lrfd" if task.code == "lrfd" else "asd"
    share = counted_leg(leg_m, task.group.shortest_m) / leg_m
    counted = share * weld_throat(task, leg_m, leg2_m)
    unit = task.sides * available(nominal_strength(counted, task.filler_pa), basis)
    if task.end_loaded:
        unit *= long_weld_factor(task.group.shortest_m, leg_m)
    source = "aisc-j2.4-strength"
    if task.analysis == "ic":
        # Per length the whole load asks 1/factor of what the weld has along itself.
        return Link("weld", name, 1 / found.factor, unit, "aisc-manual-8", found.worst)
    mixed = _mixed(task)
    if mixed is not None:
        return Link("weld", say("strength.weld-all"), mixed, unit, source, found.worst)
    holds = unit * (_towards(force) if found.increased else 1.0)
    return Link("weld", name, force.total, holds, source, found.worst)


def _mixed(task: StrengthTask) -> float | None:
    """Force per length by J2.4(c): lines along and across a load through the centroid.

    None unless the increase is asked for and every line runs along the load or across it.
    """
    if not task.increase or task.group.way is not None or not task.concentric:
        return None
    load = task.load
    size = hypot(load.px, load.py)
    if size == 0 or load.pz or task.group.radius_m:
        return None
    along = across = 0.0
    for (x0, y0), (x1, y1) in task.group.stretches:
        length = hypot(x1 - x0, y1 - y0)
        cosine = abs((x1 - x0) * load.px + (y1 - y0) * load.py) / length / size
        if cosine > 1 - 1e-9:
            along += length
        elif cosine < 1e-9:
            across += length
        else:
            return None
    return size / concentric_strength(along, across)


def _weld_en(task: StrengthTask, force: LineForce, a: float, name: Phrase) -> Link:
    fu, correlation = task.weaker_en
    piece, share = task.group.shortest_m, 1.0
    resistance_en.effective_length(piece, a, ends_full=not task.ends_lost)
    if task.end_loaded:
        share = resistance_en.long_weld_factor(piece, a)
    simple = resistance_en.simplified_strength(a, fu, correlation)
    if task.code == "en-directional":
        use = _directional(task, force, a)
        simple = force.total / use if use else simple
    return Link("weld", name, force.total, task.sides * share * simple, "en-1993-1-8")
