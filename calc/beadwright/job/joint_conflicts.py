"""Pairs of a joint's entries that contradict each other, though each alone is allowed."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright import units
from beadwright.job.job import Job
from beadwright.job.job_joint import corner_room, fill_m, hole_m
from beadwright.job.preparations import (
    MELTED_FACE_M,
    case_of,
    groove_of,
    prepared_m,
    square_gap,
)
from beadwright.joint.groove_rules import longest_slot
from beadwright.joint.joints import BUTTS, TEE_GROOVES
from beadwright.measures import INCH_M
from beadwright.tolerance import REL_TOL

MOST_FILLET_GAP_M = 3 / 16 * INCH_M
"""Widest gap a fillet may be welded over [m]. Source: AWS D1.1 7.21.1."""

MOST_BEVEL_DEG = 70.0
"""Largest angle of a single bevel [°]. Common practice: the details ask for 45°, with 10° more as
fitted."""

Conflict = tuple[tuple[str, ...], str]
"""The fields in conflict, and what is wrong with them together."""


def conflicts(job: Job) -> Iterator[Conflict]:
    """Yield the fields in conflict and the sentence that says so, the plainest first.

    Args:
        job: A job whose single entries are each in range [-].
    """
    if job.is_round:
        yield from _hole(job)
    elif job.is_fillet:
        yield from _fillet(job)
    else:
        found = tuple(_groove(job))
        yield from found if found else _gouge(job)
    pitch = job.edges.pitch_m
    if pitch is not None and not job.is_round and pitch < job.weld_length_m - REL_TOL:
        yield (
            ("pitch", "weld_length"),
            f"Pitch {_w(pitch, job)} is shorter than the weld, {_w(job.weld_length_m, job)}: "
            "the pieces would run into each other.",
        )


def _w(value: float, job: Job) -> str:
    return units.written(value, "leg", job.units)


def _fillet(job: Job) -> Iterator[Conflict]:
    gap = job.gap_m
    if gap is not None and gap > MOST_FILLET_GAP_M + REL_TOL:
        yield (
            ("gap",),
            f"{_w(gap, job)} is outside {_w(0.0, job)} to {_w(MOST_FILLET_GAP_M, job)}: "
            "AWS D1.1 7.21.1 lets no fillet be welded over more",
        )
    if job.joint != "corner":
        return
    room, half = corner_room(job), job.edges.corner == "half"
    if job.leg_m is not None and job.leg_m > room + REL_TOL:
        holds = "half its other plate" if half else "its thinner plate"
        yield (
            ("leg",),
            f"An outside corner holds no leg over {holds}, {_w(room, job)}.",
        )
    leg2 = job.edges.leg2_m
    if leg2 is not None and leg2 > job.plate_m + REL_TOL:
        yield (
            ("leg2", "plate"),
            f"Leg {_w(leg2, job)} up the edge is over the plate, {_w(job.plate_m, job)}.",
        )


def _groove(job: Job) -> Iterator[Conflict]:
    edges, thick = job.edges, prepared_m(job)
    if job.joint in ("square", "corner"):
        if square_gap(job) == 0 and job.reinforcement_m == 0:
            what = "square butt" if job.joint == "square" else "closed corner"
            yield (
                ("gap", "reinforcement"),
                f"A {what} with no gap and no reinforcement has nothing to fill; give one.",
            )
    elif edges.root_face_m is not None and edges.root_face_m > thick - REL_TOL:
        yield (
            ("root_face", "plate2" if job.joint in TEE_GROOVES else "plate"),
            f"Root face {_w(edges.root_face_m, job)} on plate {_w(thick, job)} leaves nothing to "
            "bevel; make it smaller.",
        )
    bevel = job.joint not in ("square", "corner", "v", "double-v")
    if bevel and (edges.angle_deg or 0.0) > MOST_BEVEL_DEG:
        yield (
            ("angle",),
            f"{edges.angle_deg:g}° is outside 10° to {MOST_BEVEL_DEG:g}°: one beveled face, not "
            "two; flatter is no groove.",
        )
    yield from _backing(job)
    if job.joint == "corner":
        return
    yield from _depths(job, thick)


def _backing(job: Job) -> Iterator[Conflict]:
    if not job.backed:
        return
    if job.is_double:
        yield (
            ("backing", "joint"),
            "A backing closes the second side; a double groove is welded from it. Take the "
            "backing away, or bevel one side.",
        )
    elif job.edges.depth_m is not None and job.joint in (*BUTTS, *TEE_GROOVES):
        yield (
            ("backing", "depth"),
            "A groove cut part way never reaches a backing. Leave the depth blank, or take the "
            "backing away.",
        )
    elif job.gap_m == 0:
        yield (
            ("backing", "gap"),
            "A backing wants an open root: with no gap the arc does not reach it.",
        )


def _gouge(job: Job) -> Iterator[Conflict]:
    edges = job.edges
    if edges.back == "gouge" and job.back_gouged and job.backed:
        yield (
            ("back", "backing"),
            "A backing closes the back: nothing is gouged there. Take the backing away, or leave "
            "the back open.",
        )
    elif edges.back == "gouge" and job.back_gouged and case_of(job) == "part":
        yield (
            ("back", "depth"),
            f"Cut part way, the groove leaves more than {_w(MELTED_FACE_M, job)} square: that is "
            "not gouged through. Cut it deeper, or leave the back open.",
        )
    elif edges.gouge_m is not None and job.back_gouged and case_of(job) == "open":
        groove = groove_of(job)
        face = max(0.0, prepared_m(job) - groove.depth_m - groove.depth2_m)
        if job.joint == "square" and edges.gouge_m < face + REL_TOL:
            yield (
                ("gouge_depth", "plate"),
                f"A gouge {_w(edges.gouge_m, job)} deep stops short of the middle of the plate, "
                f"{_w(face, job)}: both sides have to fuse past it. Gouge deeper.",
            )
        elif edges.gouge_m < face + REL_TOL:
            yield (
                ("gouge_depth", "root_face"),
                f"A gouge {_w(edges.gouge_m, job)} deep stops in the root face, {_w(face, job)}: "
                "under it the edges are not fused. Gouge deeper.",
            )
        elif edges.gouge_m > face + groove.depth_m - REL_TOL:
            yield (
                ("gouge_depth",),
                f"A gouge {_w(edges.gouge_m, job)} deep cuts through the first side's weld, "
                f"{_w(face + groove.depth_m, job)}. Gouge less deep.",
            )


def _depths(job: Job, thick: float) -> Iterator[Conflict]:
    edges = job.edges
    depth, depth2 = edges.depth_m, edges.depth2_m if job.is_double else None
    parts = [
        (name, key, value)
        for name, key, value in (
            ("depth", "depth", depth),
            ("second depth", "depth2", depth2),
            ("root face", "root_face", None if job.joint == "square" else edges.root_face_m),
        )
        if value is not None
    ]
    whole = sum(value for _, _, value in parts)
    if not parts or (len(parts) == 1 and parts[0][1] == "root_face"):
        return
    said = " and ".join(f"{name} {_w(value, job)}" for name, _, value in parts)
    said = said[0].upper() + said[1:]
    keys = tuple(key for _, key, _ in parts)
    full = len(parts) == (3 if job.is_double else 2) and "root_face" in keys
    if whole > thick + REL_TOL:
        makes = "is" if len(parts) == 1 else f"make {_w(whole, job)},"
        yield keys, f"{said} {makes} over the plate, {_w(thick, job)}."
    elif full and whole < thick - 1e-5:
        yield (
            keys,
            f"{said} make {_w(whole, job)}; the plate is {_w(thick, job)}. Leave one blank.",
        )
    elif job.is_double and len(parts) < 3 and whole > thick - REL_TOL and depth2 is None:
        yield keys, f"{said} leaves nothing for the second side; bevel one side alone."
    elif job.is_double and len(parts) < 3 and whole > thick - REL_TOL and depth is None:
        yield keys, f"{said} leaves nothing for the first side; bevel one side alone."


def _hole(job: Job) -> Iterator[Conflict]:
    edges, top = job.edges, job.plate2_m
    if edges.depth_m is not None and edges.depth_m > top + REL_TOL:
        yield (
            ("depth", "plate2"),
            f"Fill {_w(edges.depth_m, job)} is deeper than the plate with the hole, "
            f"{_w(top, job)}.",
        )
        return
    if job.joint == "slot" and edges.slot_m is not None:
        if edges.slot_m < hole_m(job) - REL_TOL:
            yield (
                ("slot_length", "hole"),
                f"A slot {_w(edges.slot_m, job)} long is shorter than its width, "
                f"{_w(hole_m(job), job)}.",
            )
        elif edges.slot_m > longest_slot(fill_m(job)) + REL_TOL:
            yield (
                ("slot_length", "depth"),
                f"A slot {_w(edges.slot_m, job)} long is over ten times its fill, "
                f"{_w(fill_m(job), job)} (AISC 360 J2.3b).",
            )
