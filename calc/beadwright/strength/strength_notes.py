"""What is said beside the strength of a weld: what holds, what does not, what is not covered."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.results import Note
from beadwright.strength.intermittent import Intermittent
from beadwright.strength.resistance_aisc import counted_leg, long_weld_factor
from beadwright.strength.strength_answer import LegSizes
from beadwright.strength.strength_check import Link, Spread
from beadwright.strength.strength_task import StrengthTask
from beadwright.tolerance import REL_TOL
from beadwright.units import show, symbol

_ORDER = {"stop": 0, "out": 1, "caution": 2, "note": 3}

LICENSED = (
    "Structural, pressure and lifting gear: the written procedure, the code there and licensed "
    "people rule. This is a check of arithmetic, not a design."
)
FATIGUE = (
    "Steady load only. Load that comes and goes, shock and cold are not covered: a weld that holds "
    "once may crack in time."
)


def strength_notes(
    task: StrengthTask,
    found: Spread,
    legs: LegSizes,
    links: tuple[Link, ...],
    segments: Intermittent | None,
) -> tuple[Note, ...]:
    """Return the notes on an answer, the most severe first.

    Args:
        task: What was asked [-].
        found: How the load spreads [-].
        legs: The legs that matter [-].
        links: What can give way, the weakest first [-].
        segments: Intermittent welding that would carry it, or None [-].
    """
    notes = [
        *_weakest(task, legs, links),
        *_sizes(task, legs),
        *_counting(task, found, legs),
        *_seam(task, segments),
        *_cautions(task),
    ]
    return tuple(sorted(notes, key=lambda note: _ORDER[note.level]))


def _written(value: float, measure: str, task: StrengthTask) -> str:
    return f"{show(value, measure, task.job.units)} {symbol(measure, task.job.units)}"


def _weakest(task: StrengthTask, legs: LegSizes, links: tuple[Link, ...]) -> Iterator[Note]:
    weak = links[0]
    for link in links:
        if link.use > 1 + REL_TOL and link.key != "weld":
            yield Note(
                "stop",
                f"{link.name.capitalize()}: {link.use:.0%} of what it may. No leg helps: thicker "
                "plate, stronger steel or more weld.",
                link.source,
                link.key.split("-")[0],
            )
    if weak.key != "weld" and weak.use <= 1 + REL_TOL:
        yield Note("note", f"Weakest link: {weak.name}, {weak.use:.0%} used.", weak.source)
    if legs.needed is None:
        yield Note(
            "stop",
            "No fillet to 2 in holds this. Longer weld, weld further apart, or a groove.",
            "aisc-j2.4-strength",
            "leg",
        )


def _sizes(task: StrengthTask, legs: LegSizes) -> Iterator[Note]:
    source = "en-1993-1-8" if task.european else "aisc-j2.4"
    if legs.given and legs.judged < legs.least - REL_TOL:
        yield Note(
            "stop",
            f"Leg {_written(legs.judged, 'leg', task)} is under the code's least of "
            f"{_written(legs.least, 'leg', task)}.",
            source,
            "leg",
        )
    if not legs.given and legs.needed is not None and legs.needed < legs.least - REL_TOL:
        yield Note(
            "note",
            f"Strength asks {_written(legs.needed, 'leg', task)} only; the code's least for this "
            f"plate is {_written(legs.least, 'leg', task)}.",
            source,
            "leg",
        )
    if legs.most is not None and legs.judged > legs.most + REL_TOL:
        yield Note(
            "stop",
            f"Two limits fight: strength asks leg {_written(legs.judged, 'leg', task)}, the "
            f"plate's edge allows {_written(legs.most, 'leg', task)}. More weld or thicker plate.",
            "aisc-j2.2b",
            "leg",
        )
    if legs.judged > legs.one_pass + REL_TOL:
        position = task.job.position
        yield Note(
            "note",
            f"Over {_written(legs.one_pass, 'leg', task)} in one pass is not prequalified "
            f"{position.orientation}: run more than one.",
            position.single_pass_source,
            "position",
        )
    if legs.to_weld > legs.judged + REL_TOL:
        yield Note(
            "note",
            f"Gap or slant: weld {_written(legs.to_weld, 'leg', task)} so the throat counted is "
            "there.",
            "aws-d1.1-gap",
            "gap",
        )


def _counting(task: StrengthTask, found: Spread, legs: LegSizes) -> Iterator[Note]:
    length = task.group.shortest_m
    if not task.european:
        counted = counted_leg(legs.judged, length)
        if counted < legs.judged - REL_TOL:
            yield Note(
                "caution",
                f"Shorter than four legs: only {_written(counted, 'leg', task)} of the leg counts.",
                "aisc-j2.2b",
                "group_height",
            )
        if task.end_loaded and long_weld_factor(length, legs.judged) < 1:
            factor = long_weld_factor(length, legs.judged)
            yield Note(
                "note",
                f"Over 100 legs long and loaded along: its middle idles, {factor:.0%} counts.",
                "aisc-j2.2b-long",
                "group_height",
            )
    if task.increase and task.analysis == "elastic":
        if task.european:
            yield Note(
                "note",
                "EN 1993-1-8 counts direction in its directional method: take en-directional.",
                "en-1993-1-8",
                "cross_increase",
            )
        elif not found.increased and not task.concentric:
            yield Note(
                "note",
                "No increase counted: the load misses the weld's centroid. Take the instantaneous "
                "centre, which counts it as far as the weld stretches.",
                "aisc-j2.4-strength",
                "cross_increase",
            )
    if task.welds_on_stem == 2 and task.sides == 1:
        yield Note("note", "Both lines weld one plate: its thickness carries both.", "aisc-j4.2")


def _seam(task: StrengthTask, segments: Intermittent | None) -> Iterator[Note]:
    if segments is not None:
        yield Note(
            "note",
            f"Or weld {_written(segments.segment_m, 'length', task)} on "
            f"{_written(segments.pitch_m, 'length', task)} centres. Put a segment at each end.",
            "aisc-j2.2b-long",
            "segment",
        )


def _cautions(task: StrengthTask) -> Iterator[Note]:
    if task.demo_load:
        yield Note(
            "caution",
            "The load is made up for the demonstration bracket. Put in yours.",
            "invented",
            "py",
        )
    yield Note("caution", LICENSED, "practice")
    yield Note("caution", FATIGUE, "practice")
    basis = {
        "asd": "Loads are service loads, as they come.",
        "lrfd": "Loads are factored loads: multiply them first, as 1.2 dead + 1.6 live.",
    }.get(task.code, "Loads are design values with their partial factors in them.")
    yield Note("note", basis, "en-1993-1-8" if task.european else "aisc-j2.4-strength",
               "design_code")  # fmt: skip
    yield Note(
        "caution",
        f"Strength is counted for {task.steel.grade}. Steel without papers may be weaker and may "
        "not weld: find out before you trust it.",
        task.steel.source,
        "steel",
    )
    if not task.job.is_fillet:
        yield Note(
            "caution",
            "This judges a fillet. A groove welded through holds what its plate holds.",
            "aisc-j2.4-strength",
            "joint",
        )
