"""The fillet leg a hand lays where none is asked for."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from beadwright.job.job import Job
from beadwright.joint.fillets import leg_of_section
from beadwright.measures import INCH_M
from beadwright.process.arc import arc_length_m
from beadwright.process.burnoff import feed_from_current
from beadwright.process.deposition import bead_section, deposition_efficiency, laid_rate
from beadwright.process.plate_currents import SHORT_COMFORT_A, plate_current
from beadwright.process.position_currents import SHORT_HELD, held_current
from beadwright.process.positions import COMFORTABLE_TRAVEL_M_S
from beadwright.process.tip_to_work import tip_to_work
from beadwright.process.transfer import Transfer, spray_refused

USUAL_LEG_IN: Sequence[tuple[float, float]] = (
    (0.030, 0.080), (0.060, 0.100), (0.080, 0.115), (0.125, 0.140), (3 / 16, 3 / 16),
    (1 / 4, 3 / 16), (1 / 2, 1 / 4), (3 / 4, 5 / 16),
)  # fmt: skip
"""Leg the usual mode lays well in one pass, flat and horizontal: thinner plate, leg [in].

Straight between the points.

Source: on sheet a little over the plate: printed fillets on 1.2 to 4.5 mm plate have legs of 2.5 to
4.5 mm (power-source manual, found). 3/16 in on 1/4 in plate and on: common practice. It stands at
or over the code's minimum everywhere."""


UPHILL_OVER_PLATE = 1.25
"""Most an uphill leg goes over its plate where none is asked for [-]. Common practice."""

_UPHILL_VOLTS = 24.0
"""Volts an uphill arc's length is counted at [V]."""


def usual_leg(job: Job) -> float:
    """Return the fillet leg a hand lays on a job where none is asked for [m].

    By the plate; uphill no less than what the usual current lays at a comfortable travel, for the
    pool sets the pace there.

    Source: ``USUAL_LEG_IN``; uphill ``position_currents`` and ``positions.COMFORTABLE_TRAVEL_M_S``.

    Args:
        job: The job; its leg is not asked [-].
    """
    leg = leg_of_plate(job.thinner_m)
    if job.position.orientation != "vertical-up":
        return leg
    return max(leg, min(_uphill_leg(job), UPHILL_OVER_PLATE * job.thinner_m))


def leg_of_plate(thinner_m: float) -> float:
    """Return the leg by the plate alone [m].

    Source: ``USUAL_LEG_IN``.

    Args:
        thinner_m: Thickness of the thinner part, above zero [m].
    """
    line, thin = USUAL_LEG_IN, thinner_m / INCH_M
    if thin <= line[0][0]:
        return line[0][1] * INCH_M
    for (x0, y0), (x1, y1) in pairwise(line):
        if thin <= x1:
            return (y0 + (y1 - y0) * (thin - x0) / (x1 - x0)) * INCH_M
    return line[-1][1] * INCH_M


def _uphill_leg(job: Job) -> float:
    """The leg that the usual uphill current lays at the fast end of a comfortable travel."""
    wire, where = job.wire, job.position.orientation
    shorts = wire.traits.shorts and (
        job.transfer == "short" or bool(spray_refused(wire, job.gas)) or job.transfer == "auto"
    )
    mode: Transfer = "short" if shorts else "pulse"
    held = held_current(wire, where, mode)
    most = held[0] if held else SHORT_COMFORT_A[wire.size] * SHORT_HELD[where][0]
    current = min(most, plate_current(job.thinner_m, butt=False))
    extension = tip_to_work(wire, mode)[1] - arc_length_m(_UPHILL_VOLTS)
    feed = feed_from_current(wire, current, extension)
    laid = laid_rate(wire, feed, deposition_efficiency(wire, job.gas, mode)[1])
    fast = COMFORTABLE_TRAVEL_M_S[job.travel_by, where][1]
    return leg_of_section(bead_section(laid, fast, wire.material))
