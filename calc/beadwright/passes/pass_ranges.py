"""Notes on what a bead's own setting makes: another mode, out of the wire's usual range."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from beadwright.passes.pass_beads import Bead, Laid, PassPlan, of_beads
from beadwright.passes.pass_process import Process
from beadwright.phrases import say
from beadwright.process.published_range import published_notes
from beadwright.process.transfer_regions import transfer_at
from beadwright.results import Note, Quantity
from beadwright.setting.outcome import Settings
from beadwright.setting.remarks import mode_note
from beadwright.setting.settings import windowed
from beadwright.setting.usual_range import usual_notes
from beadwright.setting.volts_limits import volts_room


def range_remarks(found: PassPlan) -> Iterator[Note]:
    """Yield what Dial in says of a set point, of each bead's own, where some of it is set by hand.

    Of a plan worked out here Dial in says it.

    Args:
        found: The plan [-].
    """
    said: dict[Note, list[int]] = {}
    for bead in found.beads:
        process = found.processes[bead.part]
        if bead.laid is not None and _typed(process):
            for note in _of_bead(process, bead, bead.laid):
                said.setdefault(note, []).append(bead.number)
    for note, beads in said.items():
        told = say("passes.of-beads", beads=of_beads(beads), told=note.phrase)
        yield replace(note, phrase=told)


def _typed(process: Process) -> bool:
    """Whether a setting of its beads is set by hand."""
    hand = process.by_hand
    settings = (hand.wire_feed_m_s, hand.volts, hand.tip_to_work_m, process.travel_m_s)
    return any(setting is not None for setting in settings)


def _of_bead(process: Process, bead: Bead, laid: Laid) -> Iterator[Note]:
    job, point = process.job, laid.point
    if process.transfer != "pulse":  # a mean current and the machine's own volts say nothing of it
        mode = transfer_at(point.current_a, point.volts, job.wire, job.gas)
        if mode != process.transfer:
            yield mode_note(mode, process.transfer)
    yield from usual_notes(job, process.transfer, _settings(process, bead, laid))
    yield from published_notes(job.wire, point.current_a)


def _settings(process: Process, bead: Bead, laid: Laid) -> Settings:
    """Feed and volts of a bead with their windows; what else is set has notes of its own."""
    section, point, hand = bead.section_m2, laid.point, process.by_hand
    feeds = process.room(section).window
    volts = volts_room(process.run(section), point)
    shown = None if process.transfer == "pulse" else point.volts
    return Settings(
        windowed("Wire feed", "wire_feed", point.feed_m_s, feeds, hand.wire_feed_m_s is not None),
        windowed("Volts at the arc", "volts", shown, volts, hand.volts is not None),
        tip_to_work=Quantity("Stickout (tip to work)", "tip_to_work", laid.tip_to_work_m),
        travel=Quantity("Travel speed", "travel", laid.travel_m_s),
    )
