"""Groove welds under load: what gives way, the throat that counts, what is said of it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from math import hypot

from beadwright.errors import FieldErrors
from beadwright.job.job_joint import effective_depth, joint_shape, wanted_leg
from beadwright.job.preparations import SQUARE_BACKED_TO_M, groove_of
from beadwright.joint.groove_rules import minimum_throat
from beadwright.joint.joints import BUTTS, TEE_GROOVES
from beadwright.joint.tee_grooves import tee_groove_joint
from beadwright.phrases import Amount, say
from beadwright.results import Note
from beadwright.strength import groove_strength
from beadwright.strength.base_metal import together
from beadwright.strength.elastic_line import LineForce
from beadwright.strength.plate_links import plate_links
from beadwright.strength.resistance_aisc import Basis
from beadwright.strength.resistance_en import LEAST_THROAT_M, simplified_strength
from beadwright.strength.strength_check import Link, Spread, point_numbers
from beadwright.strength.strength_task import StrengthTask
from beadwright.tolerance import REL_TOL


@dataclass(frozen=True, slots=True)
class GrooveSizes:
    """The throat of a groove weld, and what the code asks of it.

    Attributes:
        throat: Throat that counts, all sides together [m].
        least: Least throat; of a groove welded through, None [m].
        through: True if it is welded through the plate.
    """

    throat: float
    least: float | None
    through: bool


def groove_sizes(task: StrengthTask) -> GrooveSizes:
    """Return the throat of a groove and the least the code asks.

    Source: AISC 360-22 Tables J2.1 and J2.3; EN 1993-1-8, 4.7.2(2) and 4.5.2(2).

    Args:
        task: What is asked; its joint is a groove [-].

    Raises:
        FieldErrors: If nothing of the groove counts.
    """
    job = task.job
    groove = groove_of(job)
    if groove.complete:
        through = job.plate2_m if job.joint in TEE_GROOVES else job.thinner_m
        return GrooveSizes(through, None, through=True)
    if not task.european:
        tee = job.joint in TEE_GROOVES
        throat = joint_shape(job)[0].throat_m if tee else effective_depth(job)
        return GrooveSizes(throat, minimum_throat(job.thinner_m), through=False)
    if job.joint in TEE_GROOVES:
        lost, leg = groove_strength.UNSURE_M, wanted_leg(job)
        throat = tee_groove_joint(groove, job.plate_m, job.plate2_m, leg, 0.0, lost).throat_m
    else:
        throat = groove_strength.sure_depth((groove.depth_m, groove.depth2_m))
    if throat <= REL_TOL:
        text = "Less the 2 mm at the root that are not sure, nothing of this groove counts."
        raise FieldErrors({"depth": [f"{text} Cut it deeper."]})
    return GrooveSizes(throat, LEAST_THROAT_M, through=False)


def groove_links(task: StrengthTask, found: Spread, sizes: GrooveSizes) -> Iterator[Link]:
    """Yield what gives way: the weld, the plates, and the plate over a part-way groove's throat.

    Welded through, the weld holds what the weaker plate holds. A force given per length may go any
    way: it is taken as shear.

    Source: AISC 360-22 Table J2.5; EN 1993-1-8, 4.7.1 and 4.7.2.

    Args:
        task: What is asked [-].
        found: How the load spreads [-].
        sizes: The groove [-].
    """
    plates = tuple(plate_links(task, found))
    if sizes.through:
        weakest = max(plates, key=lambda link: link.use)
        source = "en-1993-1-8-butt" if task.european else "aisc-j2.5"
        yield replace(weakest, key="weld", phrase=say("strength.groove-through"), source=source)
        yield from plates
        return
    yield from _part_way(task, found, sizes.throat)
    yield from plates


def _part_way(task: StrengthTask, found: Spread, throat: float) -> Iterator[Link]:
    if task.european:
        fu, correlation = task.weaker_en
        if task.code == "en-directional":
            uses = [_use_en(task, force, throat) for force in found.forces]
        else:
            simple = simplified_strength(throat, fu, correlation)
            uses = [force.total / simple for force in found.forces]
        yield _link(found, "weld", uses, "en-1993-1-8-butt")
        return
    basis: Basis = "lrfd" if task.code == "lrfd" else "asd"
    pull = groove_strength.groove_pull(throat, task.filler_pa, basis)
    shear = groove_strength.groove_shear(throat, task.filler_pa, basis)
    parts = [_parts(task, force) for force in found.forces]
    yield _link(found, "weld", [together(n, v, pull, shear) for n, v in parts], "aisc-j2.5")
    plates = ((task.steel, task.job.plate_m), (task.steel2, task.job.plate2_m))
    fu = min(steel.at(thickness)[1] for steel, thickness in plates)
    pull, shear = groove_strength.plate_at_groove(throat, fu, basis)
    yield _link(
        found, "groove-rupture", [together(n, v, pull, shear) for n, v in parts], "aisc-j4.2"
    )


def _parts(task: StrengthTask, force: LineForce) -> tuple[float, float]:
    """Pull and shear of a point."""
    if task.per_length_n_m is not None:
        return 0.0, force.total
    return force.fz, hypot(force.fx, force.fy)


def _use_en(task: StrengthTask, force: LineForce, throat: float) -> float:
    pull, shear = _parts(task, force)
    along = force.along if task.per_length_n_m is None else shear
    across = force.across if task.per_length_n_m is None else 0.0
    return groove_strength.groove_use_en(along, across, pull, throat, *task.weaker_en)


def _link(found: Spread, key: str, uses: list[float], source: str) -> Link:
    at = max(range(len(uses)), key=uses.__getitem__)
    force = found.forces[at].total
    if key != "weld":
        phrase = say("strength.plate-at-groove")
    elif len(found.forces) > 12:
        phrase = say("strength.weld-at-worst")
    else:
        phrase = say("strength.weld-at-point", point=point_numbers(found.forces)[at])
    return Link(key, phrase, force, force / uses[at], source, at)


def groove_notes(task: StrengthTask, sizes: GrooveSizes) -> Iterator[Note]:
    """Yield what the code asks of a groove, and how far its count reaches.

    Args:
        task: What was asked [-].
        sizes: The groove [-].
    """
    source = "en-1993-1-8-butt" if task.european else "aisc-j2.5"
    if task.job.joint in BUTTS:
        yield Note("note", say("strength.butt-pull"), "practice", "pz")
    if task.increase:
        yield Note("note", say("strength.groove-no-increase"), source, "cross_increase")
    if not sizes.through:
        throat = Amount(sizes.throat, "leg")
        if sizes.least is not None and sizes.throat < sizes.least - REL_TOL:
            yield Note(
                "stop",
                say("strength.throat-under-least", throat=throat,
                    least=Amount(sizes.least, "leg")),
                "en-1993-1-8" if task.european else "aisc-j2.3",
                "depth",
            )  # fmt: skip
        if task.job.joint == "square":
            yield Note("caution", say("strength.square-part"), source, "depth")
        cut = groove_of(task.job)
        if task.job.is_double and abs(cut.depth_m - cut.depth2_m) > REL_TOL:
            yield Note("caution", say("strength.groove-uneven"), source, "depth2")
        said = "strength.throat-en" if task.european else "strength.throat-aisc"
        yield Note("note", say(said, throat=throat),
                   "env-1993-throat" if task.european else "aisc-j2.1", "depth")  # fmt: skip
        return
    most = groove_strength.SQUARE_EN_TO_M if task.european else SQUARE_BACKED_TO_M
    if task.job.joint == "square" and sizes.throat > most + REL_TOL:
        told = "strength.square-thick-en" if task.european else "strength.square-thick"
        by = "iso-9692-1" if task.european else "aisc-square-details"
        yield Note("stop", say(told, most=Amount(most, "leg")), by, "joint")
    if unmatched(task):
        yield Note("stop", say("strength.filler-under", filler=Amount(task.filler_pa, "stress")),
                   source, "filler_strength")  # fmt: skip
    gouged = groove_of(task.job).gouge is not None
    if not gouged and not task.job.backed:
        root = say("strength.groove-root")
        yield Note("caution", root, source if task.european else "aws-d1.1-through", "backing")
    elif gouged:
        yield Note("caution", say("strength.groove-gouged"), source, "joint")


def unmatched(task: StrengthTask) -> bool:
    """Return whether the filler is weaker than a groove through the plate asks.

    Source: AISC 360-22 Table J2.5: matching filler by AWS D1.1; EN 1993-1-8, 4.7.1: no weaker than
    the parent metal.

    Args:
        task: What is asked [-].
    """
    wanted: list[float] = []
    for steel, thickness in ((task.steel, task.job.plate_m), (task.steel2, task.job.plate2_m)):
        matching = None if task.european else steel.matching
        wanted.append(steel.at(thickness)[1] if matching is None else matching)
    return task.filler_pa < min(wanted) * (1 - 1e-6)
