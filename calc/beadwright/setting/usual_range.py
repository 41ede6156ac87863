"""What is said of a set point outside what its wire is usually run at."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright import units
from beadwright.job.job import Job
from beadwright.process.transfer import NAMES, Transfer
from beadwright.process.wire_kinds import KINDS, Kind
from beadwright.process.wire_ranges import usual_feed, usual_volts
from beadwright.results import Note, Quantity
from beadwright.setting.outcome import Settings

_TOL = 1e-6
_SAID = "this wire"
"""In the words of every limit that is a wire's own: its end is then said already."""


def range_sources(kind: Kind, transfer: Transfer) -> tuple[str, str]:
    """Return where the low and the high end of a wire's usual range come from: source ids.

    Source: ``wire_ranges.usual_current``.

    Args:
        kind: The wire's kind [-].
        transfer: The mode [-].
    """
    traits = KINDS[kind]
    if traits.shorts and transfer == "short":
        return "power-source-rule", "equipment-sheet"
    if traits.shorts and transfer == "pulse":
        return "practice", traits.top_source
    if traits.shorts and transfer == "globular":
        return "equipment-sheet", traits.top_source
    return traits.start_source, traits.top_source


def usual_notes(job: Job, transfer: Transfer, settings: Settings) -> Iterator[Note]:
    """Yield a caution for feed, else for volts, outside the wire's usual range in a mode.

    No limit: the windows stand as they are. Nothing is said where a limit of the wire's own says
    it already.

    Source: ``wire_ranges.usual_feed``, ``wire_ranges.usual_volts``.

    Args:
        job: The job [-].
        transfer: The mode planned [-].
        settings: Its settings [-].
    """
    kind = job.wire.kind
    sources, feed = range_sources(kind, transfer), settings.wire_feed
    usual = usual_feed(job.wire, job.gas, transfer)
    if feed.value is not None and not _holds(usual, feed.value):  # the volts follow the feed
        yield from _outside(job, transfer, feed, usual, sources, "wfs")
        return
    volts = usual_volts(job.wire, job.gas, transfer)
    if volts is not None:
        table = job.wire.traits.volts_sources[0]
        yield from _outside(job, transfer, settings.volts, volts, (table, table), "volts")


def _holds(usual: tuple[float, float], value: float) -> bool:
    return usual[0] * (1 - _TOL) <= value <= usual[1] * (1 + _TOL)


def _outside(
    job: Job,
    transfer: Transfer,
    setting: Quantity,
    usual: tuple[float, float],
    sources: tuple[str, str],
    field: str,
) -> Iterator[Note]:
    low, high = usual
    value = setting.value
    if value is None or _holds(usual, value):
        return
    under = value < low
    if not setting.inside and _SAID in (setting.low_by if under else setting.high_by):
        return
    shown, least, most = (units.show(v, setting.measure, job.units) for v in (value, low, high))
    unit = units.symbol(setting.measure, job.units)
    yield Note(
        "caution",
        f"{setting.name} {shown} is {'under' if under else 'over'} what this wire is usually run "
        f"at in {NAMES[transfer].lower()}, {least} to {most} {unit}. Prove it on scrap first.",
        sources[0 if under else 1],
        field,
    )
