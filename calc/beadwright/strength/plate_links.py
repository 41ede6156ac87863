"""The links of the plates beside a weld: what shears, pulls and tears them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import hypot
from types import MappingProxyType

from beadwright.joint.joints import BUTTS
from beadwright.phrases import Phrase, say
from beadwright.strength import base_metal
from beadwright.strength.elastic_line import LineForce
from beadwright.strength.resistance_aisc import (
    Basis,
)
from beadwright.strength.steel_strength import SteelStrength
from beadwright.strength.strength_check import Link, Spread
from beadwright.strength.strength_task import StrengthTask


def plate_links(task: StrengthTask, found: Spread) -> Iterator[Link]:
    """Yield the links of the plates beside the weld: load and strength at their worst points.

    The bottom plate is sheared beside each weld, whichever way the force goes. In a tee the
    other plate is pulled by what goes out of the joint and sheared by the rest; in a lap sheared.
    In a butt both are pulled by what goes across it and sheared by the rest.

    Args:
        task: What is asked [-].
        found: How the load spreads [-].
    """
    paired = 2 if task.welds_on_stem == 2 and task.sides == 1 else 1
    pulled = task.job.joint != "lap" and task.per_length_n_m is None
    for key, thickness, times, takes_pull in (
        ("plate", task.job.plate_m, 1 / task.sides, pulled and task.job.joint in BUTTS),
        ("plate2", task.job.plate2_m, paired, pulled),
    ):
        steel = task.steel if key == "plate" else task.steel2
        for way, pull, shear, source in _plate_strengths(task, steel, thickness):
            at, use = _worst_use(found.forces, pull, shear, takes_pull=takes_pull)
            force = found.forces[at].total
            asked = force * times
            holds = force / use if use else shear
            link = f"{key}-{way}"
            yield Link(link, _PLATES[link], asked, holds, source, at)


_PLATES: Mapping[str, Phrase] = MappingProxyType(
    {
        "plate-yield": say("strength.plate-yielding"),
        "plate-rupture": say("strength.plate-tearing"),
        "plate2-yield": say("strength.other-plate-yielding"),
        "plate2-rupture": say("strength.other-plate-tearing"),
    }
)


def _plate_strengths(
    task: StrengthTask, steel: SteelStrength, thickness: float
) -> Iterator[tuple[str, float, float, str]]:
    """Yield the kind of failure, its strength in pull and in shear [N/m], and the source."""
    fy, fu = steel.at(thickness)
    if task.european:
        yield (
            "yield",
            base_metal.pull_strength_en(thickness, fy),
            base_metal.yield_strength_en(thickness, fy),
            "en-1993-1-1",
        )
        return
    basis: Basis = "lrfd" if task.code == "lrfd" else "asd"
    yield (
        "yield",
        base_metal.pull_yield_strength(thickness, fy, basis),
        base_metal.yield_strength(thickness, fy, basis),
        "aisc-j4.2",
    )
    yield (
        "rupture",
        base_metal.pull_rupture_strength(thickness, fu, basis),
        base_metal.rupture_strength(thickness, fu, basis),
        "aisc-j4.2",
    )


def _worst_use(
    forces: tuple[LineForce, ...], pull: float, shear: float, *, takes_pull: bool
) -> tuple[int, float]:
    uses = [
        base_metal.together(f.fz, hypot(f.fx, f.fy), pull, shear) if takes_pull else f.total / shear
        for f in forces
    ]
    at = max(range(len(uses)), key=uses.__getitem__)
    return at, uses[at]
