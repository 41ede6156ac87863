"""Every limit on the heat input: of thin plate, and of a written procedure."""

from __future__ import annotations

from collections.abc import Iterator
from math import inf

from beadwright.job.job import Job
from beadwright.phrases import Amount, say
from beadwright.process.heat import heat_ceiling
from beadwright.setting.limits import Limit

UPHILL_HEAT = 1.5
"""Heat that thin plate stands uphill over flat [-]: the pool rests on the bead below it and travel
is slow. Common practice."""

STEP_ROOM = 0.98
"""Share of a heat limit that is used: the rest is for the steps of volts and feed [-]."""


def heat_ceiling_j_m(job: Job) -> float:
    """Return the most heat input thin plate bears; no limit on thicker plate [J/m].

    Source: ``heat.heat_ceiling``, ``UPHILL_HEAT``.

    Args:
        job: The job [-].
    """
    uphill = UPHILL_HEAT if job.position.orientation == "vertical-up" else 1.0
    return heat_ceiling(job.thinner_m, job.wire.material) * uphill


def heat_limits(job: Job) -> Iterator[Limit]:
    """Yield every limit on the heat input: volts × amps ÷ travel, no efficiency in it [J/m].

    Each limit's phrase follows "puts in": over what, under what.

    Args:
        job: The job [-].
    """
    yield Limit("heat", say("setting.more-heat-than-any-plate"), low=0.0)
    ceiling = heat_ceiling_j_m(job)
    if ceiling < inf:
        why = say("setting.more-heat-than-this-plate")
        yield Limit("plate-heat", why, high=ceiling, source="power-source-conditions")
    if job.heat_max_j_m is not None:
        why = say("setting.over-your-procedure", heat=Amount(job.heat_max_j_m, "heat_input"))
        yield Limit("heat-max", why, high=job.heat_max_j_m, source="yours")
    if job.heat_min_j_m is not None:
        why = say("setting.under-your-procedure", heat=Amount(job.heat_min_j_m, "heat_input"))
        yield Limit("heat-min", why, low=job.heat_min_j_m, source="yours")
