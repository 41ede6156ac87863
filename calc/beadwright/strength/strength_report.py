"""The Strength page as plain data for JSON."""

from __future__ import annotations

from typing import Any

from beadwright.reports import shown
from beadwright.strength.elastic_line import LineForce
from beadwright.strength.strength_answer import StrengthAnswer
from beadwright.strength.strength_check import Link, point_numbers
from beadwright.units import System
from beadwright.words.wording import worded


def strength_report(answer: StrengthAnswer) -> dict[str, Any]:
    """Return the Strength page's answer as plain data in shown units, by part.

    Args:
        answer: The answer [-].
    """
    return {"answer": _answer(answer)}


def _answer(answer: StrengthAnswer) -> dict[str, Any]:
    task, legs, system = answer.task, answer.legs, answer.units
    p = task.properties
    center, numbers = answer.spread.center, point_numbers(answer.spread.forces)
    return {
        "holds": answer.holds,
        "weakest": worded(answer.links[0].phrase, answer.units),
        "use": round(answer.links[0].use, 6),
        "leg": shown(legs.judged, "leg", system),
        "leg_given": legs.given,
        "leg_needed": shown(legs.needed, "leg", system),
        "leg_least": shown(legs.least, "leg", system),
        "leg_most": shown(legs.most, "leg", system),
        "leg_one_pass": shown(legs.one_pass, "leg", system),
        "leg_to_weld": shown(legs.to_weld, "leg", system),
        "throat": shown(legs.throat, "length", system),
        "links": [_link(link, system) for link in answer.links],
        "group": {
            "name": task.group.name,
            "length": shown(p.length_m, "length", system),
            "x": shown(p.x, "length", system),
            "y": shown(p.y, "length", system),
        },
        "load": {
            **{k: shown(getattr(task.load, k), "force", system) for k in ("px", "py", "pz")},
            **{k: shown(getattr(task.load, k), "moment", system) for k in ("mx", "my", "mz")},
        },
        "centre": None
        if center is None
        else {axis: shown(at, "length", system) for axis, at in zip("xy", center, strict=True)},
        "points": [
            {"number": number, **_point(force, system)}
            for number, force in zip(numbers, answer.spread.forces, strict=True)
        ],
        "worst": numbers[answer.spread.worst],
        "segment": None
        if answer.segments is None
        else {
            "length": shown(answer.segments.segment_m, "length", system),
            "pitch": shown(answer.segments.pitch_m, "length", system),
        },
    }


def _link(link: Link, system: System) -> dict[str, Any]:
    return {
        "key": link.key,
        "name": worded(link.phrase, system),
        "asked": shown(link.asked, "force_per_length", system),
        "holds": shown(link.holds, "force_per_length", system),
        "use": round(link.use, 6),
        "source": link.source,
    }


def _point(force: LineForce, system: System) -> dict[str, Any]:
    return {
        "x": shown(force.place.x, "length", system),
        "y": shown(force.place.y, "length", system),
        "force": shown(force.total, "force_per_length", system),
    }
