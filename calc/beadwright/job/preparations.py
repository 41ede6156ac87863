"""Preparation of a groove where the welder gives none: the codes' prequalified details."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.job.job import Job
from beadwright.joint.back_gouge import BackGouge, sound_depth
from beadwright.joint.groove_joints import Groove
from beadwright.joint.joints import JointKind
from beadwright.measures import INCH_M
from beadwright.tolerance import REL_TOL

Case = Literal["open", "backed", "part"]
"""Welded through from an open root or after gouging; onto a backing; cut to part of the depth."""

MELTED_FACE_M = 1 / 8 * INCH_M
"""A root face up to this is melted or gouged through [m].

Source: AWS D1.1, details with a root face of 0 to 1/8 in.
"""


@dataclass(frozen=True, slots=True)
class Detail:
    """A prequalified detail.

    Attributes:
        name: The code's designation.
        angle_deg: Groove angle; the least as detailed [°].
        gap_m: Root opening we take where none is given [m].
        most_gap_m: Largest root opening detailed [m].
        root_face_m: Root face we take where none is given [m].
        most_face_m: Largest root face detailed; of a partial-penetration groove, no limit [m].
        source: Source id.
    """

    name: str
    angle_deg: float
    gap_m: float
    most_gap_m: float
    root_face_m: float
    most_face_m: float
    source: str


def _detail(
    name: str, angle: float, gap: float, most: float, face: float, top: float, source: str
) -> Detail:
    return Detail(name, angle, gap * INCH_M, most * INCH_M, face * INCH_M, top * INCH_M, source)


_EIGHTH, _SIXTEENTH, _INF = 1 / 8, 1 / 16, float("inf")
_D1, _D1_FOUND, _AISC = "aws-d1.1-details", "aws-d1.1-bevels", "aisc-pjp-details"

DETAILS: Mapping[tuple[JointKind, Case], Detail] = MappingProxyType(
    {
        ("v", "open"): _detail("B-U2-GF", 60, _EIGHTH, _EIGHTH, _SIXTEENTH, _EIGHTH, _D1),
        ("v", "backed"): _detail("B-U2a-GF", 45, 1 / 4, 3 / 8, 0, 0, _D1),
        ("v", "part"): _detail("BC-P2-GF", 60, 0, 0, _EIGHTH, _INF, _D1),
        ("double-v", "open"): _detail("B-U3-GF", 60, _EIGHTH, _EIGHTH, _SIXTEENTH, _EIGHTH, _D1),
        ("double-v", "part"): _detail("B-P3-GF", 60, 0, 0, _EIGHTH, _INF, _D1),
        ("bevel", "open"): _detail("B-U4b-GF", 45, _EIGHTH, _EIGHTH, _SIXTEENTH, _EIGHTH,
                                   _D1_FOUND),
        ("bevel", "backed"): _detail("B-U4a-GF", 45, 1 / 4, 3 / 8, 0, 0, _D1),
        ("bevel", "part"): _detail("BTC-P4-GF", 45, 0, 0, _EIGHTH, _INF, _AISC),
        ("double-bevel", "open"): _detail("B-U5-GF", 45, _EIGHTH, _EIGHTH, _SIXTEENTH, _EIGHTH,
                                          _D1),
        ("double-bevel", "part"): _detail("BTC-P5-GF", 45, 0, 0, _EIGHTH, _INF, _AISC),
        ("tee-bevel", "open"): _detail("TC-U4b-GF", 45, _EIGHTH, _EIGHTH, _SIXTEENTH, _EIGHTH,
                                       _D1),
        ("tee-bevel", "backed"): _detail("TC-U4a-GF", 45, 1 / 4, 3 / 8, 0, 0, _D1_FOUND),
        ("tee-bevel", "part"): _detail("BTC-P4-GF", 45, 0, 0, _EIGHTH, _INF, _AISC),
        ("tee-double-bevel", "open"): _detail("TC-U5-GF", 45, _EIGHTH, _EIGHTH, _SIXTEENTH,
                                              _EIGHTH, _D1),
        ("tee-double-bevel", "part"): _detail("BTC-P5-GF", 45, 0, 0, _EIGHTH, _INF, _AISC),
    }
)  # fmt: skip
"""Prequalified details for gas metal arc by joint and case: AWS D1.1:2020 Figures 5.1 and 5.2."""

SQUARE_GAP_FROM_M = 1 / 16 * INCH_M
SQUARE_MOST_GAP_M = 1 / 8 * INCH_M
SQUARE_GOUGED_GAP_M = 1 / 16 * INCH_M
"""Gap of a square butt gouged from the back where none is given [m]: within the 0 to 1/8 in of
B-L1b-GF, and such as an open arc holds (common practice); a power-source manual's table has 1.2 to
1.5 mm for 6 and 9 mm welded from both sides (found)."""
SQUARE_REINFORCEMENT_M = 1 / 16 * INCH_M
SQUARE_BACKED_TO_M = 3 / 8 * INCH_M
"""A square butt on a backing is prequalified to this, with the gap as wide as the plate is thick
[m]. Source: AISC Manual, Table 8-36, B-L1a-GF; welded from both sides too, B-L1b-GF (found)."""

SQUARE_ONE_SIDE_TO_M = 4e-3
"""Thickest square butt that melts through from one side without a backing [m]. Source: ISO 9692-1,
from memory; a power-source manual's table welds 4.5 mm from one side, 6 and 9 mm from both
(found)."""


def prepared_m(job: Job) -> float:
    """Return the thickness the groove is cut in: the upright's in a tee, else the thinner [m].

    Args:
        job: The job [-].
    """
    return job.plate2_m if job.joint in ("tee-bevel", "tee-double-bevel") else job.thinner_m


def case_of(job: Job) -> Case:
    """Return whether a job's groove is welded through, onto a backing, or in part of the depth.

    A given depth means part of the depth, unless the rest is melted or gouged through: up to
    1/8 in, with an open root, a second side, or a gouge from the back.

    Args:
        job: A job whose joint is a groove [-].
    """
    if job.backed:
        return "backed"
    left = left_square_m(job)
    if left is None or left <= REL_TOL:
        return "open"
    reached = job.is_double or bool(job.gap_m) or job.back_gouged
    return "open" if reached and left <= MELTED_FACE_M + REL_TOL else "part"


def left_square_m(job: Job) -> float | None:
    """Return the root face the depths given leave; None if they leave it open [m].

    Args:
        job: The job [-].
    """
    edges = job.edges
    if edges.depth_m is None or (job.is_double and edges.depth2_m is None):
        return None
    return prepared_m(job) - edges.depth_m - (edges.depth2_m or 0.0)


def detail_of(job: Job) -> Detail | None:
    """Return the prequalified detail for a job's groove; None for a square one.

    Source: AWS D1.1:2020 Figures 5.1 and 5.2.

    Args:
        job: The job [-].
    """
    return DETAILS.get((job.joint, case_of(job)))


def square_gap(job: Job) -> float:
    """Return the gap of a square butt or closed corner [m].

    Source: ISO 9692-1, square butts, from memory: half the thickness, here to 1/8 in; on a
    backing as wide as the plate is thick (AISC Manual, B-L1a-GF); gouged, ``SQUARE_GOUGED_GAP_M``.

    Args:
        job: The job [-].
    """
    if job.gap_m is not None:
        return job.gap_m
    if job.backed:
        return min(job.thinner_m, SQUARE_BACKED_TO_M)
    if job.closed_corner or case_of(job) == "part":
        return 0.0
    if job.back_gouged:
        return min(SQUARE_GOUGED_GAP_M, job.thinner_m / 2)
    wide = job.thinner_m / 2 if job.thinner_m > SQUARE_GAP_FROM_M else 0.0
    return min(wide, SQUARE_MOST_GAP_M)


def groove_of(job: Job) -> Groove:
    """Return the edges of a job's groove, blanks filled from the prequalified detail.

    Source: AWS D1.1:2020 Figures 5.1 and 5.2; a double groove is shared evenly.

    Args:
        job: A job whose joint is a groove [-].
    """
    thick, case, edges = prepared_m(job), case_of(job), job.edges
    if job.joint == "square":
        return _square(job, case)
    detail = DETAILS[job.joint, case]
    angle = detail.angle_deg if edges.angle_deg is None else edges.angle_deg
    gap = detail.gap_m if job.gap_m is None else job.gap_m
    face = edges.root_face_m
    depth, depth2 = edges.depth_m, edges.depth2_m
    if face is None:
        cut = (depth or 0.0) + ((depth2 or 0.0) if job.is_double else 0.0)
        face = min(detail.root_face_m, (thick - cut) / 4)
    if not job.is_double:
        depth, depth2 = (thick - face if depth is None else depth), 0.0
    elif depth is None and depth2 is None:
        depth = depth2 = (thick - face) / 2
    elif depth is None:
        depth = thick - face - (depth2 or 0.0)
    elif depth2 is None:
        depth2 = thick - face - depth
    assert depth is not None
    assert depth2 is not None
    return Groove(
        kind=job.joint,
        angle_deg=angle,
        gap_m=gap,
        depth_m=depth,
        depth2_m=depth2,
        complete=case != "part",
        backed=job.backed,
        gouge=_gouge(job, case, thick - depth - depth2, depth),
    )


def _square(job: Job, case: Case) -> Groove:
    """A square edge: through, part way, or gouged and welded from both sides.

    Gouged, the first side's metal is taken to reach the middle of the plate.
    """
    thick, depth = prepared_m(job), job.edges.depth_m
    if case == "part":
        assert depth is not None  # the depth given makes it so
        deep = depth
    else:
        deep = thick / 2 if job.back_gouged and case == "open" else thick
    return Groove(
        kind="square",
        angle_deg=0.0,
        gap_m=square_gap(job),
        depth_m=deep,
        depth2_m=0.0,
        complete=case != "part",
        backed=job.backed,
        gouge=_gouge(job, case, thick - deep, deep),
    )


def _gouge(job: Job, case: Case, root_face_m: float, first_m: float) -> BackGouge | None:
    """The gouge cut from the back of a groove's root, if one is."""
    if case != "open" or not job.back_gouged:
        return None
    asked = job.edges.gouge_m
    return BackGouge(sound_depth(max(0.0, root_face_m), first_m) if asked is None else asked)
