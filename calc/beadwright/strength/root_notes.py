"""What is said of a weld from one side that a load opens at its root."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.phrases import say
from beadwright.results import Level, Note
from beadwright.strength.one_sided import root_load
from beadwright.strength.strength_check import Spread
from beadwright.strength.strength_task import StrengthTask


def root_notes(task: StrengthTask, found: Spread) -> Iterator[Note]:
    """Yield the stop or the caution on a weld from one side; nothing where no load opens it.

    Args:
        task: What was asked [-].
        found: How the load spreads [-].
    """
    load = root_load(task, found.forces)
    if load is None:
        return
    source = "en-1993-1-8-root" if task.european else "one-sided-root"
    if task.held:
        yield Note("caution", say("strength.one-sided-held"), source, "held")
        return
    if load == "lap":
        lap = source if task.european else "aisc-j2.2b"
        yield Note("stop", say("strength.one-sided-lap"), lap, "weld_sides")
        return
    # The instantaneous center counts the added strength across the weld, which is not there.
    level: Level = "stop" if load == "pulled" or task.analysis == "ic" else "caution"
    said = {
        "pulled": say("strength.one-sided-pulled"),
        "across": say("strength.one-sided-across"),
        "unknown": say("strength.one-sided-unknown"),
    }
    # A groove's sides are its joint's.
    yield Note(level, said[load], source, "weld_sides" if task.job.is_fillet else "joint")
