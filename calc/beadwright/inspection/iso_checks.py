"""A weld against ISO 5817:2014, quality levels B, C and D."""

from __future__ import annotations

from collections.abc import Iterator
from math import inf

from beadwright.inspection import iso_limits
from beadwright.inspection.aws_checks import length_check
from beadwright.inspection.inspected import Check, Inspected, least, most, never
from beadwright.inspection.iso_limits import (
    IsoLimit,
    Level,
    iso_by_plate,
    iso_limit,
    iso_undercut,
    short_length,
)
from beadwright.phrases import Phrase, say
from beadwright.tolerance import REL_TOL

_SURFACE, _FORM = "iso-5817-surface", "iso-5817-form"
_OLDER, _MEMORY = "iso-5817-throat", "iso-5817-memory"


def iso_checks(weld: Inspected, level: Level) -> Iterator[Check]:
    """Yield every limit of ISO 5817 that this weld is held to.

    Source: ``iso_limits``.

    Args:
        weld: The weld [-].
        level: Quality level [-].
    """
    seen, thin = weld.readings, weld.job.thinner_m
    yield never("crack", "100", say("inspection.crack"), seen.cracks, _SURFACE)
    yield never("fusion", "401", say("inspection.fusion"), seen.unfused, _SURFACE)
    if weld.job.is_fillet:
        yield from _fillet(weld, level)
    elif not weld.job.is_round:
        yield from _groove(weld, level)
    limit = iso_undercut(level, thin)
    source = _MEMORY if limit.short_only else _FORM
    yield _within(
        weld, "undercut", "501", say("inspection.undercut"), seen.undercut, limit, source,
        seen.undercut_length,
    )  # fmt: skip
    overlap = iso_limit(iso_limits.OVERLAP, level, weld.face_m)
    yield most("overlap", "506", say("inspection.overlap"), seen.overlap, overlap, _MEMORY)
    pore = iso_by_plate(iso_limits.PORE, iso_limits.THIN_PORE, level, thin, _size(weld))
    yield most("pores", "2017", say("inspection.pore"), seen.pore, pore, _SURFACE)
    crater = iso_by_plate(iso_limits.CRATER, iso_limits.THIN_CRATER, level, thin, thin)
    yield most("crater", "2025", say("inspection.crater"), seen.crater, crater, _SURFACE)
    yield from length_check(weld, "practice")


def _size(weld: Inspected) -> float:
    """The throat a pore is a share of: of the fillet, or of the groove [m]."""
    return weld.throat_wanted_m or weld.shape.throat_m or weld.job.thinner_m


def _within(
    weld: Inspected,
    key: str,
    number: str,
    phrase: Phrase,
    found: float | None,
    limit: IsoLimit,
    source: str,
    length_m: float | None,
) -> Check:
    """A limit that may hold for short imperfections only: longer ones are not accepted."""
    if not limit.short_only or limit.most_m == 0:
        return most(key, number, phrase, found, limit.most_m, source)
    short = length_m is not None and length_m <= short_length(weld.length_m) + REL_TOL
    note = say("inspection.short-only")
    return most(key, number, phrase, found, limit.most_m if short else 0.0, source, note=note)


def _by_plate(thin_m: float) -> str:
    """Where a limit of the predecessor is from: of thin plate it is from memory."""
    return _OLDER if thin_m > iso_limits.THIN_M + REL_TOL else _MEMORY


def _fillet(weld: Inspected, level: Level) -> Iterator[Check]:
    throat, thin, seen = weld.throat_wanted_m, weld.job.thinner_m, weld.readings
    found = weld.throat_found_m
    less = iso_by_plate(iso_limits.THROAT_SHORT, iso_limits.THIN_THROAT_SHORT, level, thin, throat)
    short = seen.short_length is not None
    short = short and (seen.short_length or 0.0) <= short_length(weld.length_m) + REL_TOL
    note = say("inspection.short-only") if less > 0 else None
    yield least(
        "throat", "5213", say("inspection.throat"), found, throat - (less if short else 0.0),
        _by_plate(thin) if short else _OLDER, measure="length", note=note,
    )  # fmt: skip
    over = iso_limit(iso_limits.THROAT_OVER, level, throat)
    yield most(
        "throat-over", "5214", say("inspection.throat-over"), found, throat + over,
        _MEMORY if over == inf else _OLDER, measure="length",
    )  # fmt: skip
    first, second = weld.legs_found
    apart = None if first is None or second is None else abs(first - second)
    equal = abs(weld.shape.leg_m - weld.shape.leg2_m) <= REL_TOL
    limit = iso_limit(iso_limits.ASYMMETRY, level, throat)
    if equal:
        yield most("asymmetry", "512", say("inspection.asymmetry"), apart, limit, _OLDER)
    convexity = iso_limit(iso_limits.CONVEXITY, level, weld.face_m)
    yield most(
        "convexity", "503", say("inspection.convexity"), weld.crown_found_m, convexity, _FORM
    )
    gap = iso_by_plate(iso_limits.FILLET_GAP, iso_limits.THIN_FILLET_GAP, level, thin, throat)
    yield most(
        "gap", "617", say("inspection.gap"), seen.gap_found, gap, _by_plate(thin), measure="leg"
    )


def _groove(weld: Inspected, level: Level) -> Iterator[Check]:
    seen, thin = weld.readings, weld.job.thinner_m
    excess = iso_limit(iso_limits.EXCESS_WELD, level, weld.face_m)
    crown = say("inspection.reinforcement")
    yield most("reinforcement", "502", crown, seen.convexity, excess, _FORM)
    most_m = iso_by_plate(iso_limits.UNDERFILL, iso_limits.THIN_UNDERFILL, level, thin, thin)
    yield _within(
        weld, "underfill", "511", say("inspection.underfill"), seen.concavity,
        IsoLimit(most_m, short_only=True), _MEMORY, seen.short_length,
    )  # fmt: skip
