"""The note on a set point outside the usual range of its wire."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.job.job import Job
from beadwright.phrases import Amount, Phrase, say
from beadwright.process.transfer import MODE_PHRASES, Transfer
from beadwright.process.wire_kinds import KINDS, Kind
from beadwright.process.wire_ranges import usual_feed, usual_volts
from beadwright.results import Note, Quantity
from beadwright.setting.outcome import SETTING_PHRASES, Settings

_TOL = 1e-6
_WIRES_OWN = frozenset(
    {
        "setting.wire-stubs", "setting.shorts-unevenly", "setting.drops-out-of-spray",
        "setting.drops-grow-coarse", "setting.still-shorts", "setting.pulse-stubs",
        "setting.usual-top", "setting.sprays-on-volts",
    }
)  # fmt: skip
"""The limits that are a wire's own: where one binds, its end is said already."""


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

    This is not a limit: the windows stay as they are. There is no note where a limit of the wire
    already has one.

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
    if not setting.inside and _of_wire(setting.low_by if under else setting.high_by):
        return
    told = say(
        "setting.under-usual" if under else "setting.over-usual",
        setting=SETTING_PHRASES[setting.measure],
        value=Amount(value, setting.measure),
        mode=MODE_PHRASES[transfer],
        least=Amount(low, setting.measure),
        most=Amount(high, setting.measure),
    )
    yield Note("caution", told, sources[0 if under else 1], field)


def _of_wire(why: Phrase | None) -> bool:
    """Whether a reason is a limit of the wire's own, or holds one."""
    if why is None:
        return False
    held = (value for _, value in why.parameters if isinstance(value, Phrase))
    return why.key in _WIRES_OWN or any(map(_of_wire, held))
