"""Notes on a pass plan: limits that conflict, beads too large, what to do between beads."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from itertools import groupby
from types import MappingProxyType

from beadwright.layers.bead_limits import COLD_LAP_M
from beadwright.passes.pass_beads import Bead, Laid, PassPlan, of_beads
from beadwright.passes.pass_by_hand import by_hand_remarks
from beadwright.passes.pass_process import Part
from beadwright.phrases import Amount, say
from beadwright.process.positions import MOVER_PHRASES, TRAVEL_RANGE_M_S
from beadwright.process.transfer import MODE_PHRASES
from beadwright.results import Note
from beadwright.tolerance import REL_TOL


def pass_remarks(found: PassPlan) -> tuple[Note, ...]:
    """Return the notes on a pass plan, the most severe first.

    Args:
        found: The plan [-].
    """
    return (
        *_refused(found),
        *_blocked(found),
        *_beside(found),
        *_too_large(found),
        *_travel(found),
        *by_hand_remarks(found),
        *_heat(found),
        *_between(found),
    )


_PART_REFUSED: Mapping[Part, str] = MappingProxyType(
    {
        "root": "passes.root-refused",
        "fill": "passes.fill-refused",
        "cap": "passes.cap-refused",
        "back": "passes.back-refused",
    }
)


_TOLD_BY_DIAL_IN = ("passes.root-wants-backing",)
"""Refusals that Dial in's notes on the joint tell already."""


def _refused(found: PassPlan) -> Iterator[Note]:
    for part, process in found.processes.items():
        if process.refused is not None and process.refused.key not in _TOLD_BY_DIAL_IN:
            told = say(_PART_REFUSED[part], why=process.refused)
            yield Note("stop", told, "", "transfer" if part == "back" else f"{part}_transfer")


def _blocked(found: PassPlan) -> Iterator[Note]:
    stuck = [(bead.number, bead.blocked) for bead in found.beads if bead.blocked is not None]
    fights = groupby(stuck, key=lambda each: (each[1][0].why, each[1][1].why, each[1][0].source))
    for (low, high, source), group in fights:
        beads = of_beads([number for number, _ in group])
        field = "passes" if found.asked.count else "wfs"
        told = say("passes.two-limits-fight", beads=beads, low=low, high=high)
        yield Note("stop", told, source, field)


def _beside(found: PassPlan) -> Iterator[Note]:
    if found.beside:
        told = say("passes.root-beside", beads=of_beads(found.beside))
        yield Note("stop", told, "practice", "passes")


def _too_large(found: PassPlan) -> Iterator[Note]:
    if not found.over:
        return
    thick = {bead.number for bead in found.beads if bead.number in found.over and _cold(bead)}
    if thick:
        most = Amount(COLD_LAP_M, "leg")
        told = say("passes.short-too-thick", beads=of_beads(sorted(thick)), most=most)
        yield Note("out", told, "practice", "passes")
    large = [number for number in found.over if number not in thick]
    if large:
        orientation = found.job.position.phrase
        told = say("passes.too-large", beads=of_beads(large), orientation=orientation)
        yield Note("out", told, "aws-d1.1-5.1", "passes")


def _cold(bead: Bead) -> bool:
    """Whether a bead in short circuit is thicker than what fuses."""
    shorted = bead.laid is not None and bead.laid.transfer == "short"
    return shorted and bead.slot.thickness_m > COLD_LAP_M + REL_TOL


def _travel(found: PassPlan) -> Iterator[Note]:
    job = found.job
    slow, fast = TRAVEL_RANGE_M_S[job.travel_by, job.position.orientation]
    slower = _where(found, lambda laid: laid.travel_m_s < slow * (1 - REL_TOL))
    faster = _where(found, lambda laid: laid.travel_m_s > fast * (1 + REL_TOL))
    if slower:
        yield _mover(found, "passes.travel-too-slow", slower, slow)
    if faster:
        yield _mover(found, "passes.travel-too-fast", faster, fast)


def _mover(found: PassPlan, key: str, beads: list[int], edge: float) -> Note:
    told = say(
        key,
        beads=of_beads(beads),
        travel=Amount(edge, "travel"),
        mover=MOVER_PHRASES[found.job.travel_by],
        orientation=found.job.position.phrase,
    )
    return Note("out", told, "practice", "passes")


def _where(found: PassPlan, is_so: Callable[[Laid], bool]) -> list[int]:
    return [b.number for b in found.beads if b.laid is not None and is_so(b.laid)]


def _heat(found: PassPlan) -> Iterator[Note]:
    heats = found.processes["fill"].heats
    over = _where(found, lambda laid: laid.heat_j_m > heats.high * (1 + REL_TOL))
    under = _where(found, lambda laid: laid.heat_j_m < heats.low * (1 - REL_TOL))
    for limit, beads in ((heats.high_limit, over), (heats.low_limit, under)):
        if beads:
            told = say("passes.put-in", beads=of_beads(beads), heat=limit.why, count=len(beads))
            yield Note("out", told, limit.source, "passes")


def _between(found: PassPlan) -> Iterator[Note]:
    root, fill = found.processes["root"], found.processes["fill"]
    if len(found.beads) > 1 and root.transfer != fill.transfer:
        told = say("passes.root-in-mode", mode=MODE_PHRASES[root.transfer], why=root.why)
        yield Note("note", told, "practice", "root_transfer")
    second = [bead for bead in found.beads if bead.side == 2]
    gouge = found.shape.gouge
    if gouge is not None and second:
        told = say("passes.gouge-before", bead=second[0].number, depth=Amount(gouge.depth_m, "leg"))
        yield Note("caution", told, "back-gouge")
    back = found.processes.get("back")
    if back is not None and back.refused is None:
        told = say("passes.back-in-mode", mode=MODE_PHRASES[back.transfer], why=back.why)
        yield Note("caution", told, "practice", "transfer")
    if len(found.beads) > 1:
        slag = found.job.wire.traits.slag
        told = say("passes.chip-and-brush" if slag else "passes.brush")
        yield Note("note", told, "practice")
