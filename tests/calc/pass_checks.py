"""Adapters of the pass plan's reference rows."""

from __future__ import annotations

from beadwright.job.job_query import read_query
from beadwright.layers.bead_limits import position_limits
from beadwright.passes.passes_page import passes_answer

IN = 0.0254


def beads(query: str) -> float:
    """Beads of the plan a query gets."""
    return float(len(passes_answer(query).found.beads))


def metal_lb_ft(query: str) -> float:
    """Weld metal of the whole plan [lb/ft]."""
    return passes_answer(query).found.metal_kg_m * 0.3048 / 0.45359237


def root_in(position: str) -> float:
    """Thickest root pass in a position [in]."""
    return position_limits(read_query(f"position={position}").job, stringers=False).root_m / IN


def layer_in(position: str) -> float:
    """Thickest layer after it [in]."""
    return position_limits(read_query(f"position={position}").job, stringers=False).layer_m / IN


def split_in(position: str) -> float:
    """Widest bead before the code splits a layer [in]."""
    limits = position_limits(read_query(f"position={position}").job, stringers=False)
    return limits.root_width_m / IN


def widest_after_root_in(position: str) -> float:
    """Widest bead planned after the root [in]."""
    return position_limits(read_query(f"position={position}").job, stringers=False).width_m / IN


def stringer_in(position: str) -> float:
    """Widest stringer [in]."""
    return position_limits(read_query(f"position={position}").job, stringers=True).width_m / IN


def largest_equals(leg_in: float, position: str) -> float:
    """Beads of a fillet of a leg on plate thick enough."""
    return beads(f"plate=1in&leg={leg_in}in&position={position}")


def share_of_joint(query: str) -> float:
    """Sections of all beads over the joint's [-]."""
    found = passes_answer(query).found
    return sum(bead.slot.section_m2 for bead in found.beads) / found.shape.section_m2


def work_angle(query: str, bead: int) -> float:
    """Work angle of a bead [°]."""
    return round(
        passes_answer(query).found.beads[bead - 1].work_deg, 6
    )  # trigonometry ends elsewhere
