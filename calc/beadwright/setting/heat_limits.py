"""Every limit on the heat input: what thin plate stands, what a written procedure asks."""

from __future__ import annotations

from collections.abc import Iterator
from math import inf

from beadwright import units
from beadwright.job.job import Job
from beadwright.process.heat import heat_ceiling
from beadwright.setting.limits import Limit

STEP_ROOM = 0.98
"""Room left inside a heat limit for the steps a hand sets volts and feed in [-]."""


def heat_ceiling_j_m(job: Job) -> float:
    """Return the most heat input thin plate stands; no limit on thicker plate [J/m].

    Source: ``heat.heat_ceiling``.

    Args:
        job: The job [-].
    """
    return heat_ceiling(job.thinner_m, job.wire.material)


def heat_limits(job: Job) -> Iterator[Limit]:
    """Yield every limit on the heat input: volts × amps ÷ travel, no efficiency in it [J/m].

    Each limit's text follows "puts in": over what, under what.

    Args:
        job: The job [-].
    """
    yield Limit("heat", "more heat than any plate stands", low=0.0)
    ceiling = heat_ceiling_j_m(job)
    if ceiling < inf:
        text = "more heat than this plate stands"
        yield Limit("plate-heat", text, high=ceiling, source="power-source-conditions")
    if job.heat_max_j_m is not None:
        text = f"over your procedure's {_shown(job.heat_max_j_m, job)}"
        yield Limit("heat-max", text, high=job.heat_max_j_m, source="yours")
    if job.heat_min_j_m is not None:
        text = f"under your procedure's {_shown(job.heat_min_j_m, job)}"
        yield Limit("heat-min", text, low=job.heat_min_j_m, source="yours")


def _shown(heat_j_m: float, job: Job) -> str:
    number = units.show(heat_j_m, "heat_input", job.units)
    return f"{number} {units.symbol('heat_input', job.units)}"
