"""What the sums of a job leave out because of how its back is welded."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.job.groove_remarks import one_sided_butt
from beadwright.phrases import say
from beadwright.results import Note
from beadwright.setting.dial_in import DialIn


def uncounted(dialled: DialIn) -> Iterator[Note]:
    """Yield what the sums of a job leave out: tests of its procedure, a side not planned.

    A gouged side that is pulsed though short circuit is planned has its minutes on Passes; counted
    here are those of short circuit.

    Args:
        dialled: The job as dialled in [-].
    """
    yield from (note for note in dialled.notes if note.source == "aws-d1.1-short")
    half_welded = one_sided_butt(dialled.job)
    if half_welded in dialled.notes:
        yield half_welded
    if dialled.plan.shape.gouged and dialled.plan.transfer == "short":
        yield Note("caution", say("money.gouge-in-one-mode"), "practice", "transfer")


def untimed(dialled: DialIn) -> Iterator[Note]:
    """Yield what is not in the time off the arc of a job, and how to put it there.

    Args:
        dialled: The job as dialled in [-].
    """
    if dialled.plan.shape.gouged:
        yield Note("caution", say("money.gouging-not-timed"), "back-gouge", "other")
