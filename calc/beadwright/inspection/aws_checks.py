"""A weld against AWS D1.1:2020, visual inspection: Table 8.1 and the profiles of clause 7."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.inspection.aws_limits import (
    COUNTED_PORE_M,
    CYCLIC_PORE_M,
    CYCLIC_PORES,
    PORES_FOOT_M,
    PORES_INCH_M,
    UNDERSIZE_SHARE,
    WIDEST_GAP_M,
    undercut_allowed,
    undersize_allowed,
)
from beadwright.inspection.inspected import Check, Inspected, least, most, never
from beadwright.joint.fillets import convexity_source, largest_convexity
from beadwright.joint.groove_rules import reinforcement_allowed
from beadwright.joint.joints import BUTTS
from beadwright.phrases import Phrase, say

_TABLE = "aws-d1.1-8.1"


def aws_checks(weld: Inspected, *, cyclic: bool, across: bool) -> Iterator[Check]:
    """Yield every limit of AWS D1.1 that this weld is held to.

    Source: ``aws_limits``; convexity ``fillets.largest_convexity``.

    Args:
        weld: The weld [-].
        cyclic: True if the load comes and goes [-].
        across: True if the weld lies across the pull, in a primary member [-].
    """
    seen = weld.readings
    yield never("crack", "100", say("inspection.crack"), seen.cracks, _TABLE)
    yield never("fusion", "401", say("inspection.fusion"), seen.unfused, _TABLE)
    if weld.job.is_fillet:
        yield from _fillet(weld)
    elif not weld.job.is_round:
        yield from _groove(weld)
    yield most(
        "undercut",
        "501",
        say("inspection.undercut"),
        seen.undercut,
        undercut_allowed(weld.job.thinner_m, seen.undercut_length, cyclic=cyclic, across=across),
        _TABLE,
        note=_undercut_note(cyclic=cyclic, across=across),
    )
    overlap = say("inspection.overlap")
    yield most("overlap", "506", overlap, seen.overlap, 0.0, "aws-d1.1-7.23")
    yield from _cyclic_pores(weld, across=across) if cyclic else _pores(weld, across=across)
    yield from length_check(weld, "aws-d1.1-7.12")


def length_check(weld: Inspected, source: str) -> Iterator[Check]:
    """Yield the length, no less than asked for.

    Args:
        weld: The weld [-].
        source: Source id of the rule [-].
    """
    found, asked = weld.readings.length_found, weld.job.weld_length_m
    if not weld.job.is_round:
        yield least("length", "", say("inspection.length"), found, asked, source, measure="length")


def _undercut_note(*, cyclic: bool, across: bool) -> Phrase | None:
    if not cyclic:
        return say("inspection.deeper-if-short")
    return say("inspection.across-the-pull") if across else None


def _fillet(weld: Inspected) -> Iterator[Check]:
    job, shape, seen = weld.job, weld.shape, weld.readings
    short = seen.short_length is not None
    short = short and (seen.short_length or 0.0) <= UNDERSIZE_SHARE * weld.length_m * (1 + 1e-9)
    less = undersize_allowed(weld.leg_m) if short else 0.0
    note = say("inspection.tenth-may-lack") if short else None
    if job.skew_deg == 90:
        legs = (("leg", say("inspection.leg"), shape.leg_m),
                ("leg2", say("inspection.leg2"), shape.leg2_m))  # fmt: skip
        for (key, phrase, wanted), found in zip(legs, weld.legs_found, strict=True):
            yield least(key, "5213", phrase, found, wanted - less, _TABLE, note=note)
    throat, wanted = say("inspection.throat"), weld.throat_wanted_m
    wanted -= less * wanted / max(shape.leg_m, shape.leg2_m)
    yield least(
        "throat", "5213", throat, weld.throat_found_m, wanted, _TABLE, measure="length", note=note
    )
    yield most(
        "convexity",
        "503",
        say("inspection.convexity"),
        weld.crown_found_m,
        largest_convexity(weld.face_m),
        convexity_source(weld.face_m),
    )
    yield most(
        "crater",
        "2025",
        say("inspection.crater"),
        seen.crater,
        crater_room(weld),
        _TABLE,
        note=say("inspection.crater-to-size"),
    )
    gap = say("inspection.gap")
    yield most("gap", "617", gap, seen.gap_found, WIDEST_GAP_M, "aws-d1.1-gap", measure="leg")


def crater_room(weld: Inspected) -> float:
    """Return how far a crater may lie below the face and still leave the size asked for [m].

    Source: AWS D1.1:2020 Table 8.1 (3): craters are filled to the size specified (second-hand).

    Args:
        weld: The weld [-].
    """
    if not weld.job.is_fillet:
        return max(0.0, weld.readings.convexity or 0.0)
    if weld.fillet is None:
        return 0.0
    thick = weld.fillet.flat_throat_m + (weld.fillet.crown_m or 0.0)
    return max(0.0, thick - weld.throat_wanted_m)


def _groove(weld: Inspected) -> Iterator[Check]:
    seen, thin = weld.readings, weld.job.thinner_m
    yield most(
        "reinforcement",
        "502",
        say("inspection.reinforcement"),
        seen.convexity,
        reinforcement_allowed(thin),
        "aws-d1.1-7.9",
    )
    yield most("underfill", "511", say("inspection.underfill"), seen.concavity, 0.0, "aws-d1.1-7.9")
    crater, room = say("inspection.crater"), crater_room(weld)
    yield most("crater", "2025", crater, seen.crater, room, _TABLE)


def _pores(weld: Inspected, *, across: bool) -> Iterator[Check]:
    """Steady load: the sum of the diameters, and none in a butt across the pull."""
    seen, largest = weld.readings, weld.readings.pore
    if _through_butt(weld) and across:
        note = say("inspection.none-across")
        found = _sum(largest, seen.pores_inch, seen.pores_foot)
        yield most("pores", "2017", say("inspection.pores"), found, 0.0, _TABLE, note=note)
        return
    counted = largest if largest is None or largest >= COUNTED_PORE_M * (1 - 1e-9) else 0.0
    inch, foot = say("inspection.pores-inch"), say("inspection.pores-foot")
    in_inch = _sum(counted, seen.pores_inch)
    yield most("pores", "2017", inch, in_inch, PORES_INCH_M, _TABLE)
    yield most("pores-foot", "2017", foot, _sum(in_inch, seen.pores_foot), PORES_FOOT_M, _TABLE)


def _cyclic_pores(weld: Inspected, *, across: bool) -> Iterator[Check]:
    """Load that comes and goes: the size and the number, and none in a butt across the pull."""
    seen, largest = weld.readings, say("inspection.pore")
    if _through_butt(weld) and across:
        note = say("inspection.none-across")
        yield most("pores", "2017", largest, seen.pore, 0.0, _TABLE, note=note)
        return
    yield most("pores", "2017", largest, seen.pore, CYCLIC_PORE_M, "aws-d1.1-8.1-cyclic")
    yield most(
        "pore-count",
        "2017",
        say("inspection.pore-count"),
        None if seen.pore_count is None else float(seen.pore_count),
        float(CYCLIC_PORES),
        "aws-d1.1-8.1-frequency",
        measure="count",
    )


def _through_butt(weld: Inspected) -> bool:
    return weld.job.joint in BUTTS and weld.shape.complete


def _sum(*found: float | None) -> float | None:
    """The largest of what was measured: a sum is no less than one of its parts."""
    known = [each for each in found if each is not None]
    return max(known, default=None)
