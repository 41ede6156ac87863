"""Entries of the Strength page that contradict each other, and what is said beside them."""

from __future__ import annotations

from beadwright.errors import FieldErrors
from beadwright.joint.fillets import largest_edge_leg
from beadwright.strength.bracket_center import turns_as_bracket
from beadwright.strength.elastic_line import GroupLoad
from beadwright.strength.strength_query import LoadEntries, StrengthQuery
from beadwright.strength.weld_group import WeldGroup
from beadwright.units import written


def check_part(query: StrengthQuery, group: WeldGroup) -> None:
    """Refuse a weld longer than the part it lies on.

    Args:
        query: The query as read [-].
        group: Its weld group [-].

    Raises:
        FieldErrors: Beside the length of the weld and of the part.
    """
    part, system = query.part_length, query.job.units
    if part is None:
        return
    left, bottom, right, top = group.outline
    longest = max(right - left, top - bottom)
    if longest > part * (1 + 1e-9):
        text = (
            f"The weld is {written(longest, 'length', system)} long, the part "
            f"{written(part, 'length', system)}: shorten the weld or "
            "give the part its length."
        )
        key = "group_height" if query.group_height is not None else "weld_length"
        key = "group" if isinstance(query.group, WeldGroup) else key
        raise FieldErrors({key: [text], "part_length": [text]})


def check_edge(query: StrengthQuery) -> None:
    """Refuse a leg over what the edge of a lap's plate allows; EN 1993-1-8 has no such limit.

    Args:
        query: The query as read [-].

    Raises:
        FieldErrors: Beside the leg and the plate.
    """
    job = query.job
    if job.leg_m is None or job.joint != "lap" or query.design_code.startswith("en"):
        return
    most = largest_edge_leg(job.plate2_m, metric=job.units == "si")
    if job.leg_m > most + 1e-9:
        text = (
            f"Leg {written(job.leg_m, 'leg', job.units)} is over "
            f"{written(most, 'leg', job.units)}, the most along the edge of the "
            f"{written(job.plate2_m, 'leg', job.units)} plate (AISC 360 J2.2b)."
        )
        raise FieldErrors({"leg": [text], "plate2": [text]})


def check_center(
    query: StrengthQuery, asked: LoadEntries, group: WeldGroup, load: GroupLoad, lines: int
) -> None:
    """Refuse what the instantaneous center does not cover: another code, other loads.

    Args:
        query: The query as read [-].
        asked: What loads the weld, as asked [-].
        group: The weld group [-].
        load: The load at its centroid [N, N·m].
        lines: Lines of weld, those on the other side of the plate too [-].

    Raises:
        FieldErrors: Beside the method and what does not go with it.
    """
    if query.design_code.startswith("en"):
        text = (
            "The turning center stands on the curve of AISC 360, which EN 1993-1-8 does not have: "
            "take the elastic method, or design by AISC (asd, lrfd)."
        )
        raise FieldErrors({"analysis": [text], "design_code": [text]})
    size = abs(load.px) + abs(load.py) + abs(load.pz) + abs(load.mz)
    if max(abs(load.pz), abs(load.mx), abs(load.my)) <= 1e-9 * size:
        return
    if not asked.line_load and turns_as_bracket(group, load, lines):
        return
    keys = asked.written("pz", "mx", "my", "load_z", "line_load")
    text = (
        "Out of the joint's plane the turning center covers one case of the AISC Manual: two equal "
        "lines of weld, such as both sides of a bracket, and the load midway between them, along "
        "them or square off the joint. For this weld or load take the elastic method, or leave "
        "pull, bending and reach out from the joint blank."
    )
    raise FieldErrors({key: [text] for key in ("analysis", *keys)})


def check_kind(query: StrengthQuery) -> None:
    """Refuse what does not go with a joint that is no fillet.

    Args:
        query: The query as read [-].

    Raises:
        FieldErrors: Beside the entries that contradict each other.
    """
    job = query.job
    if job.is_fillet:
        return
    if job.closed_corner:
        text = (
            "A closed corner is welded over its seam with no depth that counts: no code gives it "
            "a strength. Open the corner, or take a groove."
        )
        raise FieldErrors({"corner": [text], "joint": [text]})
    if query.analysis != "elastic":
        text = "The turning center is a fillet's: take the elastic method for this joint."
        raise FieldErrors({"analysis": [text], "joint": [text]})
    if query.weld_sides == "2":
        text = (
            "The sides of this weld are its joint's: take a double groove, or a second line of "
            "weld, and leave this blank."
        )
        raise FieldErrors({"weld_sides": [text], "joint": [text]})


def check_far_leg(query: StrengthQuery, sides: int) -> None:
    """Refuse a leg on the other side where no other side is welded.

    Args:
        query: The query as read [-].
        sides: Welds on the standing plate [-].

    Raises:
        FieldErrors: Beside the leg.
    """
    if query.member.far_leg is None or (query.job.joint == "tee" and sides == 2):
        return
    text = "Only a tee welded on both sides has a leg on the other side: leave this blank."
    raise FieldErrors({"far_leg": [text]})


def check_shear(asked: LoadEntries, load: GroupLoad) -> None:
    """Refuse a load on plugs or slots that is not shear through their middle.

    AISC 360 J2.3b and EN 1993-1-8, 4.3.5(1), let plugs carry shear and no pull.

    Args:
        asked: What loads the weld, as asked [-].
        load: The same at the weld's centroid [N, N·m].

    Raises:
        FieldErrors: Beside what loads it so.
    """
    if asked.line_load:
        text = "A plug or slot has no length of weld to share this: give a force to the side."
        raise FieldErrors({"line_load": [text]})
    if asked.written("pz"):
        text = (
            "Plugs and slots carry shear only: no code lets them hold a pull square off the "
            "joint, and a push goes from plate to plate. Leave this blank, or take a fillet."
        )
        raise FieldErrors({"pz": [text]})
    if max(abs(load.mx), abs(load.my), abs(load.mz)) > 1e-9 * (abs(load.px) + abs(load.py)):
        text = (
            "Plugs and slots are judged for shear through their middle only: this turns or bends "
            "them. Leave it blank, or take a fillet."
        )
        keys = asked.written("mz", "mx", "my", "load_x", "load_y", "load_z")
        raise FieldErrors({key: [text] for key in keys})
