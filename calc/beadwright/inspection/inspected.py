"""The weld under inspection: what was asked for, what was measured, and a limit held against it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

from beadwright.inspection.aws_limits import WIDEST_GAP_M
from beadwright.inspection.measured_fillet import MeasuredFillet, crown_of_throat, leg_from_gauge
from beadwright.inspection.weld_readings import WeldReadings
from beadwright.job.job import Job
from beadwright.job.job_joint import joint_shape
from beadwright.joint.fillet_joints import fillet_throat
from beadwright.joint.joints import JointShape
from beadwright.phrases import Phrase
from beadwright.tolerance import REL_TOL

Way = Literal["most", "least", "none"]
"""What a limit is: the most or the least accepted, or nothing of it is."""

State = Literal["in", "out", "unknown"]
"""Whether a weld is inside a limit; unknown where it was not measured."""


@dataclass(frozen=True, slots=True)
class Check:
    """One limit and what was found.

    Attributes:
        key: What is judged: crack, leg, undercut, …
        number: Its number in ISO 6520-1, or empty.
        phrase: What it is called.
        measure: Kind of quantity; empty for what is seen, not measured.
        found: What was measured, or None [SI].
        limit: The limit; infinite where there is none [SI].
        way: What the limit is.
        state: In, out, or not measured.
        source: Source id.
        note: What the limit hangs on, or None.
    """

    key: str
    number: str
    phrase: Phrase
    measure: str
    found: float | None
    limit: float
    way: Way
    state: State
    source: str
    note: Phrase | None = None

    @property
    def off(self) -> float:
        """By how much it is out; zero if it is not [SI]."""
        if self.state != "out" or self.found is None:
            return 0.0
        return abs(self.found - self.limit)


def most(
    key: str,
    number: str,
    phrase: Phrase,
    found: float | None,
    limit: float,
    source: str,
    *,
    measure: str = "small_length",
    note: Phrase | None = None,
) -> Check:
    """Return a limit that may not be passed.

    Args:
        key: What is judged [-].
        number: Its number in ISO 6520-1 [-].
        phrase: What it is called [-].
        found: What was measured, or None [SI].
        limit: Most accepted; zero: nothing of it, infinite: no limit [SI].
        source: Source id [-].
        measure: Kind of quantity [-].
        note: What the limit hangs on [-].
    """
    state: State = "unknown" if found is None else "in" if found <= limit + REL_TOL else "out"
    way: Way = "none" if limit == 0 else "most"
    return Check(key, number, phrase, measure, found, limit, way, state, source, note)


def least(
    key: str,
    number: str,
    phrase: Phrase,
    found: float | None,
    limit: float,
    source: str,
    *,
    measure: str = "leg",
    note: Phrase | None = None,
) -> Check:
    """Return a limit that must be reached.

    Args:
        key: What is judged [-].
        number: Its number in ISO 6520-1 [-].
        phrase: What it is called [-].
        found: What was measured, or None [SI].
        limit: Least accepted [SI].
        source: Source id [-].
        measure: Kind of quantity [-].
        note: What the limit hangs on [-].
    """
    state: State = "unknown" if found is None else "in" if found >= limit - REL_TOL else "out"
    return Check(key, number, phrase, measure, found, limit, "least", state, source, note)


def never(key: str, number: str, phrase: Phrase, seen: str | None, source: str) -> Check:
    """Return what no weld may have.

    Args:
        key: What is judged [-].
        number: Its number in ISO 6520-1 [-].
        phrase: What it is called [-].
        seen: ``no``, or what was seen; None: not looked at [-].
        source: Source id [-].
    """
    state: State = "unknown" if seen is None else "in" if seen == "no" else "out"
    return Check(key, number, phrase, "", None, 0.0, "none", state, source)


@dataclass(frozen=True, slots=True)
class Inspected:
    """A weld with what was asked for.

    Attributes:
        job: The job, with the gap as measured.
        readings: What was measured.
        shape: The joint to weld, to scale, its gap allowed for.
        leg_m: Leg specified, as on a square tee; zero without a fillet [m].
        throat_wanted_m: Throat of the fillet to weld, its gap allowed for; zero without one [m].
        fillet: The fillet as measured, or None.
        gap_m: Gap as measured, else as planned [m].
    """

    job: Job
    readings: WeldReadings
    shape: JointShape
    leg_m: float
    throat_wanted_m: float
    fillet: MeasuredFillet | None
    gap_m: float

    @property
    def length_m(self) -> float:
        """Length of the weld: as measured, else as asked for [m]."""
        return self.readings.length_found or self.job.weld_length_m

    @property
    def face_m(self) -> float:
        """Width of the face: as measured, else of the joint asked for [m]."""
        if self.readings.face is not None:
            return self.readings.face
        return self.fillet.face_m if self.fillet is not None else self.shape.regions[0].face_m

    @property
    def legs_found(self) -> tuple[float | None, float | None]:
        """Both legs as measured along the plates, None where not [m]."""
        fillet, asked = self.fillet, self.readings
        if fillet is None:
            return None, None
        return (None if asked.leg_found is None else fillet.leg_m,
                None if asked.leg2_found is None else fillet.leg2_m)  # fmt: skip

    @property
    def throat_found_m(self) -> float | None:
        """Throat that counts, the least of what was measured; None: not measured [m].

        A typed throat counts without its crown; two legs and the angle give a second.
        """
        found: list[float] = []
        if self.fillet is not None:
            found.append(self.fillet.throat_m)
        if self.readings.throat_found is not None and self.job.is_fillet:
            found.append(self.readings.throat_found - (self.readings.convexity or 0.0))
        return min(found, default=None)

    @property
    def crown_found_m(self) -> float | None:
        """Crown as measured, none over a hollow face; None: not measured [m]."""
        if self.readings.convexity is not None or self.fillet is None:
            return self.readings.convexity
        crown = self.fillet.crown_m
        return None if crown is None else max(0.0, crown)

    @property
    def over_flat(self) -> float:
        """Section as welded over the flat one, of the joint asked for [-]."""
        bare = self.shape.section_m2 - self.shape.crown_m2
        return self.shape.section_m2 / bare


def inspected(job: Job, readings: WeldReadings) -> Inspected:
    """Return the weld under inspection.

    A gap wider than a fillet may have does not make the leg asked for larger: it is out by itself.

    Args:
        job: The job as read [-].
        readings: What was measured [-].
    """
    gap = readings.gap_found
    fits = gap is not None and job.is_fillet and gap <= WIDEST_GAP_M + REL_TOL
    judged = replace(job, gap_m=gap) if fits else job
    shape, leg = joint_shape(judged)
    held = job.gap_m if gap is None else gap
    skew, wanted = job.skew_deg, 0.0
    if job.is_fillet:
        wanted = fillet_throat(shape.leg_m, shape.leg2_m, skew)
    return Inspected(
        job=judged,
        readings=readings,
        shape=shape,
        leg_m=leg,
        throat_wanted_m=wanted,
        fillet=_fillet(job, readings, shape.leg2_m / shape.leg_m if job.is_fillet else 1.0),
        gap_m=held if held is not None else shape.gap_m,
    )


def _fillet(job: Job, readings: WeldReadings, second_over_first: float) -> MeasuredFillet | None:
    """The fillet as measured, None without a leg; the other leg in the proportion asked for."""
    first, second = readings.leg_found, readings.leg2_found
    if not job.is_fillet or (first is None and second is None):
        return None
    if readings.read_by == "gauge" and job.skew_deg != 90:
        first, second = (leg and leg_from_gauge(leg, job.skew_deg) for leg in (first, second))
    leg = first if first is not None else (second or 0.0) / second_over_first
    leg2 = second if second is not None else leg * second_over_first
    crown = readings.convexity
    if crown is None and readings.concavity is not None:
        crown = -readings.concavity
    if crown is None and readings.throat_found is not None:
        crown = crown_of_throat(readings.throat_found, leg, leg2, job.skew_deg)
    one = first is None or second is None
    return MeasuredFillet(leg, leg2, job.skew_deg, crown, readings.face, one)
