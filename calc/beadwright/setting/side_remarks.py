"""Notes where the beads of one side have no settings, though those of an even share would."""

from __future__ import annotations

from collections.abc import Iterator
from math import inf

from beadwright.job.job import Job
from beadwright.layers.bead_limits import one_layer_deep, shorted_root, side_layers
from beadwright.phrases import Amount, say
from beadwright.results import Note
from beadwright.setting.feed_limits import feed_room
from beadwright.setting.plan import LEAST_ROOM, Plan, least_bead
from beadwright.setting.size_limits import side_most_m2
from beadwright.tolerance import REL_TOL


def side_remarks(job: Job, plan: Plan) -> Iterator[Note]:
    """Yield a stop for each side whose beads the planned mode cannot lay.

    A dial-in takes the weld in even beads. A root that bridges a gap in one bead is heavier than
    that, the first side of a square butt lighter.

    Source: ``bead_limits.one_layer_deep``; ``plan.least_bead``; conservation of mass.

    Args:
        job: The job [-].
        plan: Its plan [-].
    """
    if job.is_fillet or not plan.open or shorted_root(job, plan.shape, plan.transfer):
        return
    if one_layer_deep(plan.shape):
        yield from _heavy_root(job, plan)
    if job.by_hand.travel_m_s is None:
        yield from _light_sides(job, plan)


def _heavy_root(job: Job, plan: Plan) -> Iterator[Note]:
    stack = next(side_layers(job, plan.shape, plan.transfer))
    if sum(layer.beads for layer in stack) > 1:
        return  # what lies over the plate is a layer of its own
    section = plan.shape.regions[0].section_m2
    found = feed_room(plan.run.of(section), (section, section))
    if found.window.open and found.heat_fight is None:
        return
    low, high = found.window.low_limit, found.window.high_limit
    if found.heat_fight is not None:
        high = found.heat_fight
    told = say("setting.root-in-one-bead", low=low.why, high=high.why)
    yield Note("stop", told, "practice", "gap")


def _light_sides(job: Job, plan: Plan) -> Iterator[Note]:
    for side in range(1, len(plan.shape.regions) + 1):
        most = side_most_m2(job, plan.shape, side)
        least = least_bead(plan.run.of(most), inf).section_m2 / LEAST_ROOM
        if least > most * (1 + REL_TOL):
            told = say(
                "setting.side-too-small",
                side=side,
                most=Amount(most, "area"),
                least=Amount(least, "area"),
            )
            yield Note("stop", told, "mass-balance", "dia")
