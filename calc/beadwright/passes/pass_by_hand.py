"""Notes on what is set by hand and is out of a bead's window: feed, volts, travel."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from beadwright.passes.pass_beads import Bead, Laid, PassPlan, of_beads
from beadwright.passes.pass_process import BRIDGING_TRAVEL_M_S, Process
from beadwright.phrases import Amount, Parameter, Phrase, say
from beadwright.process.deposition import feed_for_travel
from beadwright.process.positions import MOVER_PHRASES, TRAVEL_RANGE_M_S
from beadwright.results import Note
from beadwright.setting.limits import Window
from beadwright.setting.outcome import SETTING_PHRASES
from beadwright.setting.volts_limits import volts_room
from beadwright.tolerance import REL_TOL

STEP = 0.005
"""Share by which a bead's travel may differ from the one set by hand: a step of the feed [-]."""


@dataclass(frozen=True, slots=True)
class _Out:
    """A setting that is out of its window: what, by which edge, and why."""

    field: str
    setting: str
    value: float
    below: bool
    edge: float
    limit: str
    why: Phrase
    planned: float | None = None


def by_hand_remarks(found: PassPlan) -> Iterator[Note]:
    """Yield the notes on feed, volts and travel set by hand that a bead's limits do not hold.

    Each is held against the window of its own bead, as Dial in holds a single pass.

    Args:
        found: The plan [-].
    """
    by_limit: dict[tuple[str, bool, str], list[tuple[int, _Out]]] = {}
    for bead in found.beads:
        for out in _of_bead(found.processes[bead.part], bead):
            by_limit.setdefault((out.field, out.below, out.limit), []).append((bead.number, out))
    for outs in by_limit.values():
        yield _told([number for number, _ in outs], outs[0][1])


def _told(beads: list[int], out: _Out) -> Note:
    parameters: dict[str, Parameter] = {
        "beads": of_beads(beads),
        "setting": SETTING_PHRASES[out.setting],
        "value": Amount(out.value, out.setting),
        "edge": Amount(out.edge, out.setting),
        "why": out.why,
    }
    if out.planned is None:
        key = "passes.below-window" if out.below else "passes.above-window"
    else:
        parameters["planned"] = Amount(out.planned, out.setting)
        key = "passes.below-window-planned" if out.below else "passes.above-window-planned"
    return Note("out", say(key, **parameters), "", out.field)


def _of_bead(process: Process, bead: Bead) -> Iterator[_Out]:
    wanted = process.travel_m_s
    moved = () if wanted is None else tuple(_moved(process, wanted, bead.laid))
    yield from moved
    if bead.laid is None:
        return
    yield from _feed(process, bead)
    volts = process.by_hand.volts
    if volts is not None and process.transfer != "pulse":
        field = "volts" if process.own.volts is None else f"{process.part}_volts"
        window = volts_room(process.run(bead.section_m2), bead.laid.point)
        yield from _beyond("volts", volts, window, field)
    if wanted is not None and not moved:
        yield from _travel(process, bead, bead.laid, wanted)


def _feed(process: Process, bead: Bead) -> Iterator[_Out]:
    feed = process.by_hand.wire_feed_m_s
    if feed is not None:
        field = "wfs" if process.own.wire_feed_m_s is None else f"{process.part}_wfs"
        window = process.room(bead.section_m2).window
        yield from _beyond("wire_feed", feed, window, field)


def _beyond(setting: str, value: float, window: Window, field: str) -> Iterator[_Out]:
    low, high = window.low_limit, window.high_limit
    if value < window.low * (1 - REL_TOL):
        yield _Out(field, setting, value, True, window.low, low.key, low.why)
    elif value > window.high * (1 + REL_TOL):
        yield _Out(field, setting, value, False, window.high, high.key, high.why)


def _moved(process: Process, wanted: float, laid: Laid | None) -> Iterator[_Out]:
    """Travel set by hand that misses the edges of an open root, or that no mover holds."""
    job, here = process.job, None if laid is None else laid.travel_m_s
    slow, fast = TRAVEL_RANGE_M_S[job.travel_by, job.position.orientation]
    bridging = BRIDGING_TRAVEL_M_S[job.travel_by]
    if process.bridges and wanted > bridging * (1 + REL_TOL):
        missed = say("passes.root-not-bridged", travel=Amount(bridging, "travel"))
        yield _Out("travel", "travel", wanted, False, bridging, "bridging", missed, here)
    elif not slow * (1 - REL_TOL) <= wanted <= fast * (1 + REL_TOL):
        below = wanted < slow
        edge = slow if below else fast
        mover, where = MOVER_PHRASES[job.travel_by], job.position.phrase
        held = say("passes.mover-holds", mover=mover, orientation=where)
        yield _Out("travel", "travel", wanted, below, edge, "mover", held, here)


def _travel(process: Process, bead: Bead, laid: Laid, wanted: float) -> Iterator[_Out]:
    """Travel set by hand that this bead cannot be filled at."""
    here = laid.travel_m_s
    if not _filled(process, here / wanted):
        limit, why = _not_filled(process, bead, laid, wanted)
        yield _Out("travel", "travel", wanted, wanted < here, here, limit, why)


def _filled(process: Process, laid: float) -> bool:
    """Whether the joint is still the one asked for where a travel lays a share of the bead."""
    if process.by_hand.wire_feed_m_s is None:
        return abs(laid - 1) <= STEP
    most, least = process.shares
    return least * (1 - REL_TOL) <= laid <= most * (1 + REL_TOL)


def _not_filled(process: Process, bead: Bead, laid: Laid, wanted: float) -> tuple[str, Phrase]:
    """Why a bead is not filled at a travel."""
    if process.by_hand.wire_feed_m_s is not None:
        feed = Amount(laid.point.feed_m_s, "wire_feed")
        return "feed", say("passes.feed-by-hand-fills", feed=feed)
    section, window = bead.section_m2, process.room(bead.section_m2).window
    needed = feed_for_travel(process.job.wire, wanted, section, process.efficiency[1])
    limit = window.low_limit if needed < window.low else window.high_limit
    told = say("passes.travel-wants-feed", feed=Amount(needed, "wire_feed"), why=limit.why)
    return limit.key, told
