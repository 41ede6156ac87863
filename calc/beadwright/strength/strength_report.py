"""The Strength page's answer as a report."""

from __future__ import annotations

from beadwright.reports import Tree, shown
from beadwright.strength.groove_weld import GrooveSizes
from beadwright.strength.leg_sizes import LegSizes
from beadwright.strength.plug_weld import PlugSizes
from beadwright.strength.strength_answer import StrengthAnswer
from beadwright.strength.strength_check import Link, point_numbers


def strength_report(answer: StrengthAnswer) -> Tree:
    """Return the Strength page's answer, by part.

    Args:
        answer: The answer [-].
    """
    task, spread, segments = answer.task, answer.spread, answer.segments
    line, load = task.properties, task.load
    numbers = point_numbers(spread.forces)
    return {"answer": {
        "holds": answer.holds,
        "weakest": answer.links[0].phrase,
        "use": round(answer.links[0].use, 6),
        **_sizes(answer.sizes),
        "links": map(_link, answer.links),
        "group": {
            "name": task.group.name,
            **shown("length", length=line.length_m, x=line.x, y=line.y),
        },
        "load": {
            **shown("force", px=load.px, py=load.py, pz=load.pz),
            **shown("moment", mx=load.mx, my=load.my, mz=load.mz),
        },
        "centre": spread.center and shown("length", x=spread.center[0], y=spread.center[1]),
        "points": [
            {
                "number": number,
                **shown("length", x=force.place.x, y=force.place.y),
                **shown("force_per_length", force=force.total),
            }
            for number, force in zip(numbers, spread.forces, strict=True)
        ],
        "worst": numbers[spread.worst],
        "segment": segments
        and shown("length", length=segments.segment_m, pitch=segments.pitch_m),
    }}  # fmt: skip


def _link(link: Link) -> Tree:
    return {
        "key": link.key, "name": link.phrase,
        **shown(link.measure, asked=link.asked, holds=link.holds),
        "use": round(link.use, 6), "source": link.source,
    }  # fmt: skip


def _sizes(sizes: LegSizes | GrooveSizes | PlugSizes) -> Tree:
    if isinstance(sizes, GrooveSizes):
        return {
            **shown("length", throat=sizes.throat), **shown("leg", throat_least=sizes.least),
            "through": sizes.through,
        }  # fmt: skip
    if isinstance(sizes, PlugSizes):
        return {
            **shown("leg", hole=sizes.hole, hole_least=sizes.least_hole),
            **shown("leg", hole_most=sizes.most_hole, slot_length=sizes.slot),
            **shown("leg", fill=sizes.fill, fill_least=sizes.least_fill),
            **shown("area", area=sizes.area),
        }
    return {
        **shown("leg", leg=sizes.judged),
        "leg_given": sizes.given,
        **shown("leg", leg_needed=sizes.needed, leg_least=sizes.least, leg_most=sizes.most),
        **shown("leg", leg_one_pass=sizes.one_pass, leg_to_weld=sizes.to_weld),
        **shown("leg", leg_to_weld_far=sizes.to_weld_far),
        **shown("length", throat=sizes.throat),
    }
