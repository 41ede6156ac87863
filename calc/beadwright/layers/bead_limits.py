"""Largest bead and layer in a position, and the fewest beads a joint then takes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType

from beadwright.job.job import Job
from beadwright.joint.fillets import REINFORCED_OVER_FLAT, flat_section
from beadwright.joint.joints import JointShape
from beadwright.layers.frame import frame_of
from beadwright.layers.layers import BeadLimits, fewest_layers
from beadwright.measures import INCH_M
from beadwright.process.positions import Orientation
from beadwright.process.transfer import Transfer

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

    Source: ``largest_bead_m2``, ``ROOT_M``, ``LAYER_M``, ``SPLIT_M``, ``STRINGER_M``.

    Args:
        job: The job [-].
        stringers: True if beads are laid without weaving [-].
    """
    orientation = job.position.orientation
    most = largest_bead_m2(job) * SIZE_SLACK
    wide = min(SPLIT_M[orientation], STRINGER_M) if stringers else SPLIT_M[orientation]
    return BeadLimits(most, most, ROOT_M[orientation], LAYER_M, wide)


def shorted_root(job: Job, shape: JointShape, transfer: Transfer) -> bool:
    """Return whether the root is welded in short circuit though the rest is not.

    Spray falls through an open gap.

    Source: common practice. Flux-cored wire has no other mode; it needs a backing.

    Args:
        job: The job [-].
        shape: Its joint to scale [-].
        transfer: Mode of the rest [-].
    """
    open_root = shape.complete and shape.gap_m > 0 and not shape.backing
    falls = transfer in ("spray", "globular") and job.wire.traits.shorts
    return open_root and falls


def fewest_beads(job: Job, shape: JointShape, transfer: Transfer) -> int:
    """Return the fewest beads that fill a joint within the limits of its position [-].

    Source: ``layers.fewest_layers``; a fillet that one bead may lay is one bead, and a root in
    short circuit is kept under ``COLD_LAP_M``: a thicker one does not fuse to the edges.

    Args:
        job: The job [-].
        shape: Its joint to scale [-].
        transfer: Mode planned [-].
    """
    limits = position_limits(job, stringers=False)
    if job.is_fillet and shape.section_m2 <= limits.root_m2:
        return 1
    if shorted_root(job, shape, transfer):
        limits = replace(limits, root_m=min(limits.root_m, COLD_LAP_M))
    sides = (frame_of(region) for region in shape.regions)
    groove, around = not job.is_fillet, shape.round
    return sum(
        layer.beads
        for side in sides
        for layer in fewest_layers(side, limits, groove=groove, around=around)
    )
