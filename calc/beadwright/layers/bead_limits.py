"""Largest bead and layer in a position, and the fewest beads a joint then takes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from types import MappingProxyType

from beadwright.job.job import Job
from beadwright.joint.fillets import REINFORCED_OVER_FLAT, flat_section
from beadwright.joint.joints import JointShape
from beadwright.layers.frame import Frame, frame_of
from beadwright.layers.layers import CAP_UNDER_FLUSH_M, BeadLimits, Layer, fewest_layers
from beadwright.measures import INCH_M
from beadwright.process.positions import Orientation
from beadwright.process.transfer import Transfer
from beadwright.tolerance import REL_TOL, SAME_PLATE

ROOT_M: Mapping[Orientation, float] = MappingProxyType(
    {
        "flat": 3 / 8 * INCH_M,
        "horizontal": 5 / 16 * INCH_M,
        "vertical-up": 1 / 2 * INCH_M,
        "vertical-down": 3 / 16 * INCH_M,
        "overhead": 5 / 16 * INCH_M,
    }
)
"""Thickest root pass by position [m].

Source: AWS D1.1:2020, Table 5.1, root pass thickness (second-hand); vertical-down is not in it:
common practice.
"""

LAYER_M = 1 / 4 * INCH_M
"""Thickest layer after the root [m]. Source: AWS D1.1:2020, Table 5.1, fill passes, gas metal arc
and flux-cored arc (second-hand)."""

SPLIT_M: Mapping[Orientation, float] = MappingProxyType(
    {
        "flat": 5 / 8 * INCH_M,
        "horizontal": 5 / 8 * INCH_M,
        "vertical-up": 1.0 * INCH_M,
        "vertical-down": 5 / 8 * INCH_M,
        "overhead": 5 / 8 * INCH_M,
    }
)
"""Widest bead before a layer is split [m].

Source: AWS D1.1:2020, Table 5.1, layers over 5/8 in wide are split, vertical over 1 in (from
memory).
"""

STRINGER_M = 3 / 8 * INCH_M
"""Widest stringer: about eight wire diameters of 0.045 in wire [m]. Common practice."""

COLD_LAP_M = 3 / 16 * INCH_M
"""Plate thickness over which short circuit may lie without fusing [m]. Common practice."""

BRIDGED_GAP_M = 1 / 16 * INCH_M
"""Gap over which the root has to be bridged: up to it, the arc only melts the edges together [m].
Common practice."""

BRIDGE_M = 1 / 8 * INCH_M
"""Thinnest bead that bridges an open root and carries the next [m]. Common practice."""

SIZE_SLACK = 1.03
"""Share that a size may be over and still count, so that 8 mm is 5/16 in: the codes' metric sizes
are rounded [-]."""


def largest_bead_m2(job: Job) -> float:
    """Return the largest section planned for one bead [m²].

    Source: ``positions.POSITIONS``: the practical one-pass fillet, as welded.

    Args:
        job: The job [-].
    """
    return REINFORCED_OVER_FLAT * flat_section(job.position.practical_leg_m)


def position_limits(job: Job, *, stringers: bool) -> BeadLimits:
    """Return the limits of a bead and a layer in the job's position.

    Over a lower plate a weave sags: after the root, horizontal beads are laid as stringers.

    Source: ``largest_bead_m2``, ``ROOT_M``, ``LAYER_M``, ``SPLIT_M``, ``STRINGER_M``; horizontal
    stringers are common practice.

    Args:
        job: The job [-].
        stringers: True if beads are laid without weaving [-].
    """
    orientation = job.position.orientation
    most, split = largest_bead_m2(job) * SIZE_SLACK, SPLIT_M[orientation]
    narrow = min(split, STRINGER_M)
    wide = narrow if stringers or orientation == "horizontal" else split
    root = narrow if stringers else split
    return BeadLimits(most, most, ROOT_M[orientation], LAYER_M, wide, root)


def fusing(limits: BeadLimits, shape: JointShape, root: Transfer, rest: Transfer) -> BeadLimits:
    """Return the limits as an open root and short circuit narrow them.

    Every layer in short circuit is kept thin: a thicker one may lie on the edges without fusing.
    The bead that bridges an open root is no skin.

    Source: ``COLD_LAP_M``, ``BRIDGE_M``.

    Args:
        limits: What a bead and a layer may be [-].
        shape: The joint to scale [-].
        root: Mode of the first layer [-].
        rest: Mode of the layers after it [-].
    """
    first = min(limits.root_m, COLD_LAP_M) if root == "short" else limits.root_m
    after = min(limits.layer_m, COLD_LAP_M) if rest == "short" else limits.layer_m
    least = BRIDGE_M if bridges(shape) else 0.0
    return replace(limits, root_m=first, layer_m=after, root_least_m=least)


def bridges(shape: JointShape) -> bool:
    """Return whether the first bead has to bridge a gap with nothing under it.

    Source: ``BRIDGED_GAP_M``.

    Args:
        shape: The joint to scale [-].
    """
    return shape.complete and not shape.backing and shape.gap_m > BRIDGED_GAP_M + REL_TOL


def one_layer_deep(shape: JointShape) -> bool:
    """Return whether the bead that bridges an open root leaves no depth for a layer over it.

    Source: ``BRIDGE_M``, ``layers.CAP_UNDER_FLUSH_M``.

    Args:
        shape: The joint to scale [-].
    """
    if not bridges(shape):
        return False
    return frame_of(shape.regions[0]).bottom + BRIDGE_M > REL_TOL - CAP_UNDER_FLUSH_M


def of_side(limits: BeadLimits, size: BeadLimits, side: int, frame: Frame) -> BeadLimits:
    """Return the limits on one side: a gouged second side has no open root any more.

    A groove no deeper than ``COLD_LAP_M`` may be one layer in short circuit: its crown lies over
    the plate, not on its edges. Over a gap the root is a bead of its own.

    Source: ``COLD_LAP_M``.

    Args:
        limits: What a bead and a layer may be on the first side [-].
        size: What the position allows [-].
        side: 1 or 2 [-].
        frame: The side seen along its face [-].
    """
    if side == 2:
        limits = replace(
            limits,
            root_m=min(size.root_m, limits.layer_m),
            root_m2=limits.section_m2,
            root_least_m=0.0,
            root_least_m2=limits.section_least_m2,
        )
    deep, whole = -frame.bottom, frame.levels.levels[-1] - frame.bottom
    shallow = deep <= COLD_LAP_M * SAME_PLATE and not limits.root_least_m
    if shallow and limits.root_m < size.root_m:
        limits = replace(limits, root_m=min(size.root_m, max(limits.root_m, whole)))
    return limits


def is_one_pass_fillet(job: Job, shape: JointShape, most_m2: float) -> bool:
    """Return whether one bead lays a fillet: the codes limit it by leg, not by layer and width.

    Source: AWS D1.1:2020, Table 5.1, single-pass fillets (second-hand).

    Args:
        job: The job [-].
        shape: Its joint to scale [-].
        most_m2: Largest section of one bead, above zero [m²].
    """
    return job.is_fillet and shape.section_m2 <= most_m2 * (1 + REL_TOL)


def shorted_root(job: Job, shape: JointShape, transfer: Transfer) -> bool:
    """Return whether the root is welded in short circuit though the rest is not.

    Source: ``open_arc_falls``. Flux-cored wire has no other mode; it needs a backing.

    Args:
        job: The job [-].
        shape: Its joint to scale [-].
        transfer: Mode of the rest [-].
    """
    open_arc = transfer in ("spray", "globular") and job.wire.traits.shorts
    return open_arc and open_arc_falls(shape)


def open_arc_falls(shape: JointShape) -> bool:
    """Return whether an open arc falls through a root: a gap with nothing under it.

    Source: common practice: spray and flux-cored wire hold their pool on a backing, or on edges
    that all but touch and are gouged from the other side.

    Args:
        shape: The joint to scale [-].
    """
    if shape.backing or not shape.complete:
        return False
    return shape.gap_m > (BRIDGED_GAP_M + REL_TOL if shape.gouged else REL_TOL)


def root_wants_backing(job: Job, shape: JointShape) -> bool:
    """Return whether a wire that only runs an open arc would have to bridge an open root.

    Source: ``open_arc_falls``.

    Args:
        job: The job [-].
        shape: Its joint to scale [-].
    """
    return not job.wire.traits.shorts and open_arc_falls(shape)


def fewest_beads(job: Job, shape: JointShape, transfer: Transfer) -> int:
    """Return the fewest beads that fill a joint within the limits of its position [-].

    Source: ``side_layers``; a fillet that one bead may lay is one bead.

    Args:
        job: The job [-].
        shape: Its joint to scale [-].
        transfer: Mode planned [-].
    """
    if is_one_pass_fillet(job, shape, position_limits(job, stringers=False).root_m2):
        return 1
    return sum(layer.beads for stack in side_layers(job, shape, transfer) for layer in stack)


def side_layers(job: Job, shape: JointShape, transfer: Transfer) -> Iterator[list[Layer]]:
    """Yield the layers of each side that fill it with the fewest beads.

    Source: ``layers.fewest_layers``; layers in short circuit as ``fusing``.

    Args:
        job: The job [-].
        shape: Its joint to scale [-].
        transfer: Mode planned [-].
    """
    size = position_limits(job, stringers=False)
    root = "short" if shorted_root(job, shape, transfer) else transfer
    limits, groove, around = fusing(size, shape, root, transfer), not job.is_fillet, shape.round
    for side, region in enumerate(shape.regions, start=1):
        frame = frame_of(region)
        most = of_side(limits, size, side, frame)
        yield fewest_layers(frame, most, groove=groove, around=around)
