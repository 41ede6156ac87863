"""What is said beside the strength of a weld: what holds, what does not, what is not covered."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.phrases import Amount, say
from beadwright.results import Note, severest_first
from beadwright.strength import resistance_en
from beadwright.strength.intermittent import Intermittent
from beadwright.strength.lap_notes import lap_notes
from beadwright.strength.leg_sizes import LegSizes
from beadwright.strength.resistance_aisc import counted_leg, long_weld_factor
from beadwright.strength.root_notes import root_notes
from beadwright.strength.skew_notes import skew_notes
from beadwright.strength.strength_cautions import cautions
from beadwright.strength.strength_check import Link, Spread
from beadwright.strength.strength_task import StrengthTask
from beadwright.tolerance import REL_TOL


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
        *lap_notes(task),
        *skew_notes(task, legs),
        *_code(task, legs),
        *root_notes(task, found),
    ]
    if not any(note.level == "stop" for note in notes):  # no part of what is stopped is offered
        notes += _seam(task, segments)
    notes += cautions(task)
    return severest_first(notes)


def _weld_source(task: StrengthTask) -> str:
    return "en-1993-1-8" if task.european else "aisc-j2.4-strength"


def _leg(value_m: float) -> Amount:
    return Amount(value_m, "leg")


def _weakest(task: StrengthTask, legs: LegSizes, links: tuple[Link, ...]) -> Iterator[Note]:
    weak = links[0]
    for link in links:
        if link.use > 1 + REL_TOL and link.key != "weld":
            over = "strength.no-leg-helps"
            if link.measure == "force":
                over = "strength.longer-weld-helps" if link.by_length else "strength.no-weld-helps"
            yield Note(
                "stop",
                say(over, link=link.phrase, use=link.use),
                link.source,
                link.key.split("-")[0],
            )
    if weak.key != "weld" and weak.use <= 1 + REL_TOL:
        yield Note("note", say("strength.weakest", link=weak.phrase, use=weak.use), weak.source)
    if legs.needed is None:
        told = say("strength.no-fillet-holds")
        if task.longer_holds_less(legs.throat):
            told = say("strength.no-fillet-holds-so-long")
        yield Note("stop", told, _weld_source(task), "leg")


def _sizes(task: StrengthTask, legs: LegSizes) -> Iterator[Note]:
    source = "en-1993-1-8" if task.european else "aisc-j2.4"
    if legs.given and legs.judged < legs.least - REL_TOL:
        yield Note(
            "stop",
            say("strength.leg-under-least", leg=_leg(legs.judged), least=_leg(legs.least)),
            source,
            "leg",
        )
    if not legs.given and legs.needed is not None and legs.needed < legs.least - REL_TOL:
        yield Note(
            "note",
            say("strength.asks-less", leg=_leg(legs.needed), least=_leg(legs.least)),
            source,
            "leg",
        )
    if legs.most is not None and legs.judged > legs.most + REL_TOL:
        yield Note(
            "stop",
            say("strength.fights-edge", leg=_leg(legs.judged), most=_leg(legs.most)),
            "aisc-j2.2b",
            "leg",
        )
    if legs.one_pass is not None and legs.judged > legs.one_pass + REL_TOL:
        position = task.job.position
        yield Note(
            "note",
            say(
                "strength.not-in-one-pass",
                leg=_leg(legs.one_pass),
                orientation=position.phrase,
            ),
            position.single_pass_source,
            "position",
        )
    if legs.to_weld_far is None and legs.to_weld > legs.judged + REL_TOL:
        yield Note(
            "note",
            say("strength.weld-larger", leg=_leg(legs.to_weld)),
            "geometry" if task.european else "aws-d1.1-gap",
            "gap",
        )


def _counting(task: StrengthTask, found: Spread, legs: LegSizes) -> Iterator[Note]:
    length = task.group.shortest_m
    if not task.european:
        counted = counted_leg(legs.judged, length)
        if counted < legs.judged - REL_TOL:
            yield Note(
                "caution",
                say("strength.shorter-than-four-legs", counted=_leg(counted)),
                "aisc-j2.2b",
                "group_height",
            )
        if task.end_loaded and long_weld_factor(length, legs.judged) < 1:
            factor = long_weld_factor(length, legs.judged)
            yield Note(
                "note",
                say("strength.long-weld", counted=factor),
                "aisc-j2.2b-long",
                "group_height",
            )
    if task.analysis == "ic" and not task.load.in_plane:
        yield Note("note", say("strength.center-of-bracket"), "aisc-manual-8", "analysis")
    by_center = legs.by_center
    least = max(by_center or 0.0, legs.least)
    if by_center is not None and (legs.needed is None or least < legs.needed - REL_TOL):
        yield Note(
            "note",
            say("strength.center-asks-less", leg=_leg(by_center)),
            "aisc-manual-8",
            "analysis",
        )
    if task.increase and task.analysis == "elastic":
        if task.code == "en":
            yield Note(
                "note",
                say("strength.take-directional"),
                "en-1993-1-8",
                "cross_increase",
            )
        elif not task.european and not found.increased and not task.concentric:
            yield Note(
                "note",
                say("strength.no-increase"),
                "aisc-j2.4-strength",
                "cross_increase",
            )
    if task.welds_on_stem == 2 and task.sides == 1:
        yield Note(
            "note",
            say("strength.both-lines-one-plate"),
            "en-1993-1-1" if task.european else "aisc-j4.2",
        )


def _code(task: StrengthTask, legs: LegSizes) -> Iterator[Note]:
    """What only EN 1993-1-8 has to say."""
    if task.european:
        if task.ends_lost:
            yield Note(
                "note",
                say("strength.ends-lost", throat=_leg(legs.throat)),
                "en-1993-1-8-ends",
                "weld_ends",
            )
        share = 1.0
        if task.end_loaded:
            share = resistance_en.long_weld_factor(task.group.shortest_m, legs.throat)
        if share < 1:
            yield Note("note", say("strength.long-lap", counted=share), "en-1993-1-8-lap",
                       "group_height")  # fmt: skip
        if task.longer_holds_less(legs.throat):
            most = resistance_en.MOST_LAP_THROATS * legs.throat
            yield Note("caution", say("strength.lap-too-long", most=Amount(most, "length")),
                       "en-1993-1-8-lap", "group_height")  # fmt: skip


def _seam(task: StrengthTask, segments: Intermittent | None) -> Iterator[Note]:
    if segments is not None:
        said = "strength.intermittent-en" if task.european else "strength.intermittent"
        yield Note(
            "note",
            say(
                said,
                segment=Amount(segments.segment_m, "length"),
                pitch=Amount(segments.pitch_m, "length"),
            ),
            "en-1993-1-8-seam" if task.european else "aws-d1.1-spacing",
            "segment",
        )
