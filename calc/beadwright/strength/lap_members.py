"""The two plates of a lap pulled through its welds: yielding, tearing, a block torn out."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import hypot

from beadwright.errors import FieldErrors
from beadwright.phrases import Amount, Phrase, say
from beadwright.strength import tension_members
from beadwright.strength.resistance_aisc import Basis
from beadwright.strength.strength_check import Link
from beadwright.strength.strength_task import StrengthTask
from beadwright.strength.weld_group import XY
from beadwright.units import written


@dataclass(frozen=True, slots=True)
class Pull:
    """A lap's welds as its pull sees them.

    Attributes:
        force_n: The pull [N].
        across_m: How far the welds reach across it [m].
        lines: Lines of weld along it, side by side.
        along_m: Their mean length [m].
        reach_m: How far they reach along it, first to last [m].
        crossed: True if some weld runs across it.
    """

    force_n: float
    across_m: float
    lines: int
    along_m: float
    reach_m: float
    crossed: bool


def pull_of(task: StrengthTask) -> Pull | None:
    """Return how a lap is pulled; None where that is no plain pull along or across its welds.

    Every line of weld must run along the pull or square across it.

    Args:
        task: What is asked [-].
    """
    load, group = task.load, task.group
    force = hypot(load.px, load.py)
    plain = task.concentric and task.per_length_n_m is None and not load.pz
    if task.job.joint != "lap" or not plain or not force or group.radius_m:
        return None
    way = load.px / force, load.py / force
    offsets: list[float] = []
    ends: list[float] = []
    reaches: list[float] = []
    total, crossed = 0.0, False
    for start, end in group.stretches:
        along, across = _run(start, end, way)
        if abs(across) <= 1e-6 * abs(along):
            total += abs(along)
            offsets.append(_off(start, way))
            ends += [_on(start, way), _on(end, way)]
        elif abs(along) <= 1e-6 * abs(across):
            crossed = True
        else:
            return None
        reaches += [_off(start, way), _off(end, way)]
    lines = sum(
        all(abs(one - other) > 1e-6 for other in offsets[:i]) for i, one in enumerate(offsets)
    )
    return Pull(
        force_n=force,
        across_m=max(reaches) - min(reaches),
        lines=lines,
        along_m=total / lines if lines else 0.0,
        reach_m=max(ends) - min(ends) if ends else 0.0,
        crossed=crossed,
    )


def _run(start: XY, end: XY, way: XY) -> tuple[float, float]:
    return _on(end, way) - _on(start, way), _off(end, way) - _off(start, way)


def _on(point: XY, way: XY) -> float:
    return point[0] * way[0] + point[1] * way[1]


def _off(point: XY, way: XY) -> float:
    return point[0] * -way[1] + point[1] * way[0]


def width_of(task: StrengthTask, pull: Pull, *, lower: bool) -> float | None:
    """Return the width of a plate across the pull; None if neither typed nor told by the welds [m].

    Blank, it is as far as the welds reach. A wide lower plate counts as far as the pull spreads.

    Args:
        task: What is asked [-].
        pull: How the lap is pulled [-].
        lower: True for the plate lying down, False for the other [-].
    """
    typed = task.plate_width_m if lower else task.plate2_width_m
    if typed is None:
        return pull.across_m or None
    if lower:
        return min(typed, tension_members.spread_width(pull.across_m, pull.reach_m))
    return typed


def check_widths(task: StrengthTask) -> None:
    """Refuse a plate of a lap narrower than the welds on it.

    Args:
        task: What is asked [-].

    Raises:
        FieldErrors: Beside the width.
    """
    pull = pull_of(task)
    if pull is None:
        return
    widths = (("plate_width", task.plate_width_m), ("plate2_width", task.plate2_width_m))
    for key, width in widths:
        if width is not None and width < pull.across_m * (1 - 1e-6):
            system = task.job.units
            text = (
                f"A plate {written(width, 'length', system)} wide cannot carry these welds: the "
                f"welds reach {written(pull.across_m, 'length', system)} across the pull. Type a "
                "wider plate, or bring the welds closer."
            )
            raise FieldErrors({key: [text]})


def lap_members(task: StrengthTask) -> Iterator[Link]:
    """Yield what gives way in the plates of a lap that is pulled; nothing for another load.

    Args:
        task: What is asked [-].
    """
    pull = pull_of(task)
    if pull is None:
        return
    for key, thickness in (("plate", task.job.plate_m), ("plate2", task.job.plate2_m)):
        lower = key == "plate"
        width = width_of(task, pull, lower=lower)
        if width is None:
            continue
        fy, fu = (task.steel if lower else task.steel2).at(thickness)
        name = say("strength.plate") if lower else say("strength.other-plate")
        shown = Amount(width, "length")
        gross = say("strength.member-yielding", plate=name, width=shown)
        area = width * thickness
        if task.european:
            holds = tension_members.gross_yielding_en(area, fy)
            yield _link(f"{key}-gross", gross, pull, holds, "en-1993-1-1-pull")
            continue
        basis: Basis = "lrfd" if task.code == "lrfd" else "asd"
        holds = tension_members.gross_yielding(area, fy, basis)
        yield _link(f"{key}-gross", gross, pull, holds, "aisc-d2")
        wider = width > pull.across_m * (1 + 1e-6)
        lag = _lag(task, pull, thickness, width)
        if lag is not None and not (lower and wider and pull.across_m):
            torn = area if lower or pull.lines else pull.across_m * thickness
            holds = tension_members.net_rupture(torn, fu, lag, basis)
            phrase = say("strength.member-tearing", plate=name, width=shown, lag=lag)
            yield _link(f"{key}-net", phrase, pull, holds, "aisc-d3.1", by_length=lag < 1)
        if pull.lines >= 2 and (lower or wider):
            shear, end = 2 * pull.along_m * thickness, pull.across_m * thickness
            holds = tension_members.block_shear(shear, end, fy, fu, basis)
            phrase = say("strength.block-shear", plate=name)
            yield _link(f"{key}-block", phrase, pull, holds, "aisc-j4.3", by_length=True)


def _lag(task: StrengthTask, pull: Pull, thickness: float, width: float) -> float | None:
    """U of a plate: welds along the pull, along and across it, or across it alone."""
    off = thickness / 2 if task.sides == 1 else 0.0
    if not pull.lines:
        return 1.0
    length = pull.reach_m if pull.crossed else pull.along_m
    if off >= length:
        return None
    if pull.crossed:
        return tension_members.lag_of_mixed_welds(length, off)
    if pull.lines < 2:
        return None
    return tension_members.lag_of_edge_welds(length, width, off)


def _link(
    key: str, phrase: Phrase, pull: Pull, holds: float, source: str, *, by_length: bool = False
) -> Link:
    return Link(key, phrase, pull.force_n, holds, source, measure="force", by_length=by_length)
