"""The pass plan: every bead in its place, in welding order, with its own settings."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, replace
from functools import cached_property

from beadwright.errors import FieldErrors
from beadwright.job.job import Job
from beadwright.joint.fillets import leg_of_section
from beadwright.joint.joints import JointShape
from beadwright.layers.bead_limits import is_one_pass_fillet, of_side, position_limits
from beadwright.layers.frame import Frame, frame_of
from beadwright.layers.layer_counts import Tried, layers_of_count
from beadwright.layers.layers import BeadLimits, Layer, fewest_layers, holds
from beadwright.passes.bead_count import require_few
from beadwright.passes.bead_sections import Cut, laid_sections
from beadwright.passes.pass_beads import Asked, Bead, Fight, Laid, PassPlan, Role, part_of
from beadwright.passes.pass_layout import Slot, slots_of
from beadwright.passes.pass_limits import fused_limits, run_limits, second_limits
from beadwright.passes.pass_process import Part, Process, apart, process_of
from beadwright.passes.pass_settings import laid_beads
from beadwright.passes.pass_torch import torch_of
from beadwright.phrases import say
from beadwright.setting.plan import Plan, make_plan

FEWEST = Asked()
"""Nothing is asked for: the fewest beads."""


_Place = tuple[int, Frame, Slot, Role]
"""Side, its frame, the bead's place, what the bead is."""


def pass_plan(job: Job, asked: Asked = FEWEST) -> PassPlan:
    """Return every bead of a joint in welding order, with its settings.

    Beads are the fewest that hold every limit of size, travel and heat, or as many as asked for.
    Each part of the weld (root, fill and cap) has one setting if one suits all its beads; travel
    follows each bead's section. If the mode is free and spray leaves no room for such light beads,
    short circuit is tried.

    Source: the modules it calls.

    Args:
        job: The job [-].
        asked: What is asked of the plan [-].

    Raises:
        FieldErrors: If it takes more than ``MOST_BEADS``.
    """
    return Grounds(job, asked).with_beads(asked.count)


@dataclass(frozen=True, slots=True)
class _Ground:
    """What stands in one mode, whatever the number of beads."""

    job: Job
    plan: Plan
    asked: Asked
    processes: Mapping[Part, Process]
    size: BeadLimits
    limits: BeadLimits
    second: BeadLimits
    """Of the second side; the limits of fill and cap where it is welded as they are."""
    sides: tuple[Frame, ...]
    tried: tuple[Tried, ...]
    """Of each side, the layers worked out so far; they serve other counts of beads."""


@dataclass(frozen=True)
class Grounds:
    """What the plans of a job have in common, whatever the number of beads.

    Attributes:
        job: The job.
        asked: What is asked of its plans; its count is left aside.
    """

    job: Job
    asked: Asked

    @cached_property
    def _first(self) -> _Ground:
        """In the mode planned."""
        return _ground(self.job, make_plan(self.job), self.asked)

    @cached_property
    def _cooler(self) -> _Ground | None:
        """In short circuit, where the mode is free and spray was planned."""
        job, plan = self.job, self._first.plan
        shorts = job.wire.traits.shorts and plan.transfer == "spray"
        if job.transfer != "auto" or not shorts or plan.refused is not None:
            return None
        short = replace(job, transfer="short")
        shorted = replace(make_plan(short), reason=say("passes.spray-too-light"))
        return _ground(short, shorted, self.asked)

    def with_beads(self, count: int | None) -> PassPlan:
        """Return the plan with a number of beads.

        Args:
            count: Beads in all, 1 or more, or None for the fewest [-].

        Raises:
            FieldErrors: If the fewest are more than ``MOST_BEADS``.
        """
        found = _planned(self._first, count)
        if not found.open and self._cooler is not None:
            with suppress(FieldErrors):  # more beads than a plan has: what stands is told
                other = _planned(self._cooler, count)
                if other.open:
                    return replace(other, job=self.job)
        return found


def _ground(job: Job, plan: Plan, asked: Asked) -> _Ground:
    parts: tuple[Part, ...] = ("root", "fill", "cap")
    if apart(plan):
        parts = (*parts, "back")
    processes: dict[Part, Process] = {
        part: process_of(job, plan, part, asked.of(part)) for part in parts
    }
    size = position_limits(job, stringers=asked.stringers)
    sides = tuple(frame_of(region) for region in plan.shape.regions)
    limits = run_limits(processes, plan.shape, sides[0], size)
    return _Ground(
        job=job,
        plan=plan,
        asked=asked,
        processes=processes,
        size=size,
        limits=limits,
        second=second_limits(processes, size, limits),
        sides=sides,
        tried=tuple({} for _ in sides),
    )


def _planned(ground: _Ground, count: int | None) -> PassPlan:
    """The pass plan in one mode."""
    job, plan = ground.job, ground.plan
    layers = _layers(ground, count)
    if count is None:
        require_few(job, ground.asked, sum(layer.beads for side in layers for layer in side))
    beads = tuple(_beads(ground, layers, grown=count is None))
    over = () if count is None else tuple(_over(ground, layers))
    counts = tuple(len(side) for side in layers)
    return PassPlan(
        job=job,
        plan=plan,
        asked=replace(ground.asked, count=count),
        shape=plan.shape,
        beads=beads,
        layers=counts,
        processes=ground.processes,
        limits=ground.limits,
        over=over,
    )


def _layers(ground: _Ground, count: int | None) -> list[list[Layer]]:
    groove, around = not ground.job.is_fillet, ground.plan.shape.round
    sides = [
        (side, of_side(ground.limits if number == 1 else ground.second, ground.size, number, side))
        for number, side in enumerate(ground.sides, start=1)
    ]
    if count is None:
        if _one_bead(ground):
            return [[Layer(side.bottom, side.levels.levels[-1], 1)] for side, _ in sides]
        return [fewest_layers(side, most, groove=groove, around=around) for side, most in sides]
    shares = _shared(count, [side.levels.area for side in ground.sides])
    return [
        layers_of_count(side, most, share, groove=groove, around=around, tried=tried)
        for (side, most), share, tried in zip(sides, shares, ground.tried, strict=True)
    ]


def _one_bead(ground: _Ground) -> bool:
    """Whether one bead lays a fillet."""
    single = is_one_pass_fillet(ground.job, ground.plan.shape, ground.limits.root_m2)
    return single and not ground.asked.stringers


def _shared(count: int, areas: Sequence[float]) -> list[int]:
    """Beads of each side by its share of the metal, one at least."""
    shares = [max(1, round(count * area / sum(areas))) for area in areas]
    while sum(shares) > count and max(shares) > 1:
        shares[shares.index(max(shares))] -= 1
    while sum(shares) < count:
        shares[shares.index(min(shares))] += 1
    return shares


def _over(ground: _Ground, layers: Sequence[Sequence[Layer]]) -> Iterator[int]:
    """Numbers of the beads larger than the position allows, or thicker than the mode fuses."""
    job, shape, size = ground.job, ground.plan.shape, ground.size
    thin = fused_limits(ground.processes, shape, size)
    number = 0
    for at, (side, stack) in enumerate(zip(ground.sides, layers, strict=True), start=1):
        back = ground.processes.get("back") if at == 2 else None
        most = thin if back is None or back.transfer == "short" else size
        most = of_side(most, size, at, side)
        single = job.is_fillet and sum(each.beads for each in stack) == 1
        for layer in stack:
            fits = holds(side, layer, most, root=layer is stack[0], around=shape.round)
            if single:
                fits = is_one_pass_fillet(job, shape, size.root_m2)
            for _ in range(layer.beads):
                number += 1
                if not fits:
                    yield number


def _beads(ground: _Ground, layers: Sequence[Sequence[Layer]], *, grown: bool) -> Iterator[Bead]:
    job, plan, processes = ground.job, ground.plan, ground.processes
    places = list(_places(ground, layers))
    parts: list[Part] = [
        part_of(side, role, apart="back" in processes) for side, _, _, role in places
    ]
    sections = laid_sections(
        job, plan.shape,
        [Cut(place[0], place[2].section_m2, processes[part])
         for place, part in zip(places, parts, strict=True)],
        grown=grown,
    )  # fmt: skip
    laid: dict[int, Laid | Fight] = {}
    for part, process in processes.items():
        mine = [at for at, bead_part in enumerate(parts) if bead_part == part]
        if mine:
            found = laid_beads(job, plan, process, [sections[at] for at in mine])
            laid |= dict(zip(mine, found, strict=True))
    for at, (number, frame, slot, role) in enumerate(places):
        torch, work = torch_of(job, frame, slot)
        of_bead = laid[at]
        held, fight = (of_bead, None) if isinstance(of_bead, Laid) else (None, of_bead)
        yield Bead(
            number=at + 1,
            side=number,
            role=role,
            part=parts[at],
            slot=slot,
            torch_deg=torch,
            work_deg=work,
            section_m2=sections[at],
            leg_m=leg_of_section(sections[at]),
            laid=held,
            blocked=fight,
        )


def _places(ground: _Ground, layers: Sequence[Sequence[Layer]]) -> Iterator[_Place]:
    """Every bead's place, in welding order."""
    shape = ground.plan.shape
    for number, (side, stack) in enumerate(zip(ground.sides, layers, strict=True), start=1):
        start, alternate = _order(ground.job, number)
        for slot in slots_of(side, stack, start=start, alternate=alternate, around=shape.round):
            yield number, side, slot, _role(shape, number, slot, len(stack))


def _order(job: Job, side: int) -> tuple[int, bool]:
    """The toe a layer begins at, and whether the next layer begins at the other.

    Above a lower plate the weld is built up from that plate, so that each bead is a shelf for the
    next; seen from the second side, the toes change places. Overhead the toe on the upright is the
    lower one. Flat and vertical, layers alternate.
    """
    if job.position.orientation == "horizontal":
        return (1 if side == 1 else -1), False
    if job.position.orientation == "overhead" and job.is_fillet:
        return -1, False
    return 1, not job.is_fillet


def _role(shape: JointShape, side: int, slot: Slot, layers: int) -> Role:
    if layers == 1:
        return "only" if slot.of == 1 else "cap"
    if slot.layer == 1:
        return "root"
    if slot.layer == layers:
        return "cap"
    hot = slot.layer == 2 and side == 1 and shape.complete and shape.gap_m > 0
    return "hot" if hot and not shape.backing else "fill"
