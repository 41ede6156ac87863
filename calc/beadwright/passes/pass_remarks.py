"""Notes on a pass plan: limits that conflict, beads too large, what to do between beads."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from itertools import groupby

from beadwright import units
from beadwright.passes.pass_beads import Laid, PassPlan
from beadwright.process.positions import TRAVEL_RANGE_M_S
from beadwright.process.transfer import NAMES
from beadwright.results import Note
from beadwright.tolerance import REL_TOL


def numbers(beads: Sequence[int]) -> str:
    """Return bead numbers as a shop writes them: ``Bead 3``, ``Beads 2–4, 7``.

    Args:
        beads: Numbers, rising, one at least [-].
    """
    runs: list[list[int]] = []
    for number in beads:
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    texts = [str(run[0]) if len(run) == 1 else f"{run[0]}–{run[-1]}" for run in runs]
    return f"{'Bead' if len(beads) == 1 else 'Beads'} {', '.join(texts)}"


def pass_remarks(found: PassPlan) -> tuple[Note, ...]:
    """Return the notes on a pass plan, the most severe first.

    Args:
        found: The plan [-].
    """
    return (
        *_refused(found),
        *_blocked(found),
        *_too_large(found),
        *_travel(found),
        *_heat(found),
        *_between(found),
    )


def _refused(found: PassPlan) -> Iterator[Note]:
    for part, process in found.processes.items():
        if process.refused:
            yield Note("stop", f"{part.capitalize()}: {process.refused}.", "", f"{part}_transfer")


def _blocked(found: PassPlan) -> Iterator[Note]:
    stuck = [(bead.number, bead.blocked) for bead in found.beads if bead.blocked is not None]
    told = groupby(stuck, key=lambda each: (each[1][0].text, each[1][1].text, each[1][0].source))
    for (low, high, source), group in told:
        who = numbers([number for number, _ in group])
        field = "passes" if found.asked.count else "wfs"
        yield Note("stop", f"{who}: two limits fight: {low}; but {high}.", source, field)


def _too_large(found: PassPlan) -> Iterator[Note]:
    if not found.over:
        return
    orientation = found.job.position.orientation
    yield Note(
        "out",
        f"{numbers(found.over)}: larger, thicker or wider than one bead may be {orientation}. "
        "Take more passes.",
        "aws-d1.1-5.1",
        "passes",
    )


def _travel(found: PassPlan) -> Iterator[Note]:
    job = found.job
    slow, fast = TRAVEL_RANGE_M_S[job.travel_by, job.position.orientation]
    slower = _where(found, lambda laid: laid.travel_m_s < slow * (1 - REL_TOL))
    faster = _where(found, lambda laid: laid.travel_m_s > fast * (1 + REL_TOL))
    if slower:
        yield _mover(found, slower, "slower", slow, "Take more passes, or more feed.")
    if faster:
        yield _mover(found, faster, "faster", fast, "Take fewer passes, or less feed.")


def _mover(found: PassPlan, beads: list[int], word: str, edge: float, then: str) -> Note:
    job = found.job
    shown = f"{units.show(edge, 'travel', job.units)} {units.symbol('travel', job.units)}"
    text = (
        f"{numbers(beads)}: travel is {word} than the {shown} a {job.travel_by} holds "
        f"{job.position.orientation}. {then}"
    )
    return Note("out", text, "practice", "passes")


def _where(found: PassPlan, is_so: Callable[[Laid], bool]) -> list[int]:
    return [b.number for b in found.beads if b.laid is not None and is_so(b.laid)]


def _heat(found: PassPlan) -> Iterator[Note]:
    heats = found.processes["fill"].heats
    over = _where(found, lambda laid: laid.heat_j_m > heats.high * (1 + REL_TOL))
    under = _where(found, lambda laid: laid.heat_j_m < heats.low * (1 - REL_TOL))
    for limit, beads in ((heats.high_limit, over), (heats.low_limit, under)):
        if beads:
            puts = "puts" if len(beads) == 1 else "put"
            yield Note("out", f"{numbers(beads)} {puts} in {limit.text}.", limit.source, "passes")


def _between(found: PassPlan) -> Iterator[Note]:
    root, fill = found.processes["root"], found.processes["fill"]
    if len(found.beads) > 1 and root.transfer != fill.transfer:
        text = f"Root in {NAMES[root.transfer].lower()}: {root.why}."
        yield Note("note", text, "practice", "root_transfer")
    second = [bead for bead in found.beads if bead.side == 2]
    if found.shape.gouged and second:
        yield Note(
            "caution",
            f"Before bead {second[0].number} turn the part and gouge the root to sound metal. What "
            "you gouge out is laid again; it is not counted here.",
            "practice",
        )
    if len(found.beads) > 1:
        slag = "Chip the slag and brush" if found.job.wire.traits.slag else "Brush"
        yield Note(
            "note",
            f"{slag} each bead bright before the next, and let it cool under your interpass limit.",
            "practice",
        )
