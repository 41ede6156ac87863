"""Other plans and their costs: a bead more or fewer, stringers, less time, less heat."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import suppress
from dataclasses import dataclass, replace

from beadwright.errors import FieldErrors
from beadwright.job.job import Aim, Job
from beadwright.passes.bead_count import MOST_BEADS
from beadwright.passes.pass_beads import Asked, PassPlan
from beadwright.passes.pass_plan import Grounds, pass_plan
from beadwright.phrases import Phrase, say
from beadwright.setting.aims import AIMS

_AIMS: tuple[Aim, ...] = ("least-time", "least-heat")

FARTHEST = 8
"""Beads more or fewer that are tried for a plan that holds [-]."""

MOST_TRIED = 500
"""Beads laid in all while a plan that holds is looked for [-]: thirty beads are tried eight either
way; of hundreds, the next plan and the fewest, so that the answer comes at once."""


@dataclass(frozen=True, slots=True)
class Choice:
    """Another plan, and what it costs.

    Attributes:
        phrase: What to ask for, in the imperative.
        changes: Query keys and their new values; a blank removes the key.
        beads: Beads in all [-].
        arc_time_s: Arc time along one weld, or None if it does not hold [s].
        heat_j_m: Heat input of the hottest bead, or None [J/m].
        open: True if it holds every limit.
        same: True if it is the plan shown.
    """

    phrase: Phrase
    changes: Mapping[str, str]
    beads: int
    arc_time_s: float | None
    heat_j_m: float | None
    open: bool
    same: bool


def choices(found: PassPlan) -> tuple[Choice, ...]:
    """Return other plans of the same joint, each worked out in full.

    Args:
        found: The plan shown [-].
    """
    job, asked = found.job, found.asked
    grounds = Grounds(job, asked)
    fewest = found if asked.count is None else _fewest(grounds)
    least = len(fewest.beads) if fewest else MOST_BEADS
    rows: list[Choice] = []
    if fewest:
        rows = [_choice(say("passes.fewest"), {"passes": ""}, fewest, same=asked.count is None)]
    counts = {least + 1, least + 2}
    if asked.count is not None:
        counts |= {asked.count - 1, asked.count, asked.count + 1}
    for count in sorted(counts):
        if least < count <= MOST_BEADS or count == asked.count:
            other = found if count == asked.count else grounds.with_beads(count)
            rows.append(
                _choice(
                    say("passes.count", count=count),
                    {"passes": str(count)},
                    other,
                    same=count == asked.count,
                )
            )
    rows += _otherwise(job, asked)
    return tuple(rows)


def _fewest(grounds: Grounds) -> PassPlan | None:
    """The plan of the fewest beads; None if it takes more than any plan has."""
    try:
        return grounds.with_beads(None)
    except FieldErrors:
        return None


def _otherwise(job: Job, asked: Asked) -> Iterator[Choice]:
    others: list[tuple[Phrase, Mapping[str, str], Job, Asked]] = []
    if not asked.stringers:
        stringers = replace(asked, stringers=True)
        others.append((say("passes.stringers"), {"bead": "stringer"}, job, stringers))
    for aim in _AIMS:
        if job.aim != aim:
            others.append((AIMS[aim], {"aim": aim}, replace(job, aim=aim), asked))
    for phrase, changes, other_job, other_asked in others:
        with suppress(FieldErrors):  # more beads than any plan has: no choice
            yield _choice(phrase, changes, pass_plan(other_job, other_asked))


def _choice(
    phrase: Phrase, changes: Mapping[str, str], plan: PassPlan, *, same: bool = False
) -> Choice:
    hottest = plan.hottest
    heat = hottest.laid.heat_j_m if hottest is not None and hottest.laid is not None else None
    holds = plan.open and not plan.over
    time = plan.arc_time_s if plan.open else None
    return Choice(
        phrase=phrase,
        changes=changes,
        beads=len(plan.beads),
        arc_time_s=time,
        heat_j_m=heat if plan.open else None,
        open=holds,
        same=same,
    )


def nearest(found: PassPlan, grounds: Grounds) -> Choice | None:
    """Return the plan nearest in number of beads that holds, or None if none tried does.

    The fewest beads are tried last, where a number was asked for.

    Args:
        found: A plan that does not hold [-].
        grounds: What it has in common with plans of other counts [-].
    """
    count, laid = len(found.beads), 0
    for step in range(1, FARTHEST + 1):
        for other in (count + step, count - step):
            if 1 <= other <= MOST_BEADS and laid < MOST_TRIED:
                laid += other
                plan = grounds.with_beads(other)
                if plan.open and not plan.over:
                    hold = say("passes.hold", count=other)
                    return _choice(hold, {"passes": str(other)}, plan)
    if found.asked.count is None:
        return None
    fewest = _fewest(grounds)
    if fewest is None or not fewest.open:
        return None
    return _choice(say("passes.hold", count=len(fewest.beads)), {"passes": ""}, fewest)
