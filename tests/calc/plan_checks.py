"""Adapters between printed operating rows and what the plan sets: currents, legs, volts.

Factors are typed here. Standard library and beadwright only; see ``reference_rows``.
"""

from __future__ import annotations

from beadwright.job import usual_leg
from beadwright.job.job_query import read_query
from beadwright.process import plate_currents, position_currents
from beadwright.process.operating import volts_window
from beadwright.process.positions import position_of
from beadwright.process.transfer import Transfer
from beadwright.process.wires import wire_of
from beadwright.setting import set_volts, usual_current

INCH = 0.0254


def plate_a(thickness_mm: float, joint: str) -> float:
    return plate_currents.plate_current(thickness_mm / 1000, butt=joint == "butt")


def short_plate_a(thickness_mm: float, size: str, joint: str) -> float:
    butt = joint == "butt"
    return plate_currents.short_plate_current(thickness_mm / 1000, size, butt=butt)


def held_a(wire: str, size: str, position: str, mode: Transfer, which: str) -> float | str:
    """What a hand sets out of position, or the most it holds."""
    where = position_of(position).orientation
    found = position_currents.held_current(wire_of(wire, size), where, mode)
    return "none" if found is None else found[("set", "most").index(which)]


def short_held(position: str, which: str) -> float:
    where = position_of(position).orientation
    return position_currents.SHORT_HELD[where][("set", "most").index(which)]


def leg_of_plate_mm(thickness_mm: float) -> float:
    return usual_leg.leg_of_plate(thickness_mm / 1000) * 1000


def blank_leg_in(query: str) -> float:
    return usual_leg.usual_leg(read_query(query).job) / INCH


def set_volts_at(query: str, mode: Transfer, current_a: float) -> float:
    """Volts set at a current: the mode's own, moved by joint and position."""
    job = read_query(query).job
    own = volts_window(current_a, job.wire, job.gas, mode)[1]
    return own + set_volts.set_volts_shift(job, mode)


def usual_a(query: str, mode: Transfer) -> float:
    return usual_current.usual_current(read_query(query).job, mode)
