"""What is said of the plates of a lap: the width counted, and what of them is not checked."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.joint.fillets import least_lap
from beadwright.phrases import Amount, say
from beadwright.results import Note
from beadwright.strength.lap_members import Pull, pull_of
from beadwright.strength.strength_task import StrengthTask
from beadwright.tolerance import REL_TOL


def lap_notes(task: StrengthTask) -> Iterator[Note]:
    """Yield the notes on a lap's plates; nothing for another joint.

    Args:
        task: What was asked [-].
    """
    if task.job.joint != "lap":
        return
    pull = pull_of(task)
    if pull is None:
        yield Note("caution", say("strength.lap-plates-unchecked"), "practice", "py")
    else:
        yield from _widths(task, pull)
        yield from _lag(task, pull)
    if not task.european:
        least = Amount(least_lap(task.job.thinner_m), "length")
        yield Note("note", say("strength.least-lap", least=least), "aisc-j2.2b")


def _widths(task: StrengthTask, pull: Pull) -> Iterator[Note]:
    widths = (("plate2_width", task.plate2_width_m), ("plate_width", task.plate_width_m))
    blank = [key for key, width in widths if width is None]
    if not blank:
        return
    if not pull.across_m:
        source = "en-1993-1-1-pull" if task.european else "aisc-d2"
        yield Note("caution", say("strength.lap-width-unknown"), source, blank[0])
    else:
        width = Amount(pull.across_m, "length")
        yield Note("note", say("strength.lap-width-taken", width=width), "practice", blank[0])


def _lag(task: StrengthTask, pull: Pull) -> Iterator[Note]:
    if pull.crossed or not pull.lines:
        return
    if task.european:
        if pull.along_m < pull.across_m - REL_TOL:
            yield Note("caution", say("strength.lag-en"), "bs-5950-lag", "group_height")
    elif pull.lines < 2:
        yield Note("caution", say("strength.lag-one-line"), "aisc-d3.1", "group")
