"""Adapters for the reference rows of acceptance and gauge readings, in the source's own units."""

from __future__ import annotations

from math import isinf
from typing import cast

from beadwright.inspection import aws_limits, iso_limits
from beadwright.inspection.iso_limits import Level
from beadwright.inspection.measured_fillet import (
    MeasuredFillet,
    crown_of_throat,
    leg_from_gauge,
)
from beadwright.joint import groove_rules
from beadwright.joint.fillet_joints import gauge_leg
from beadwright.units import read

_IN = 0.0254
_MM = 0.001


def _inches(text: str) -> float:
    return read(f"{text}in", "length")


def undersize_in(leg_in: str) -> float:
    return aws_limits.undersize_allowed(_inches(leg_in)) / _IN


def undersize_of_mm(leg_mm: float) -> float:
    """The metric size of the table, its decrease in inches."""
    return aws_limits.undersize_allowed(leg_mm * _MM) / _IN


def undersize_share() -> float:
    return aws_limits.UNDERSIZE_SHARE


def undercut_in(thickness_in: str, length_in: str | None, cyclic: bool, across: bool) -> float:
    length = None if length_in is None else _inches(length_in)
    allowed = aws_limits.undercut_allowed(
        _inches(thickness_in), length, cyclic=cyclic, across=across
    )
    return allowed / _IN


def aws_in(name: str) -> float:
    """A constant of the table in inches."""
    return cast("float", getattr(aws_limits, name)) / _IN


def cyclic_pores() -> float:
    return float(aws_limits.CYCLIC_PORES)


def reinforcement_in(thickness_in: str) -> float:
    return groove_rules.reinforcement_allowed(_inches(thickness_in)) / _IN


def iso_mm(rule: str, level: Level, size_mm: float) -> float:
    return iso_limits.iso_limit(getattr(iso_limits, rule), level, size_mm * _MM) / _MM


def iso_unlimited(rule: str, level: Level) -> str:
    unlimited = isinf(iso_limits.iso_limit(getattr(iso_limits, rule), level, 1.0))
    return "no limit" if unlimited else "a limit"


def iso_undercut_mm(level: Level, thickness_mm: float) -> float:
    return iso_limits.iso_undercut(level, thickness_mm * _MM).most_m / _MM


def iso_thin_mm() -> float:
    return iso_limits.THIN_M / _MM


def iso_short_mm(weld_mm: float) -> float:
    return iso_limits.short_length(weld_mm * _MM) / _MM


def gauge_reads_mm(leg_mm: float, skew_deg: float) -> float:
    return gauge_leg(leg_mm * _MM, skew_deg) / _MM


def leg_from_gauge_mm(reading_mm: float, skew_deg: float) -> float:
    return leg_from_gauge(reading_mm * _MM, skew_deg) / _MM


def flat_throat_mm(leg_mm: float, leg2_mm: float, skew_deg: float) -> float:
    return MeasuredFillet(leg_mm * _MM, leg2_mm * _MM, skew_deg).flat_throat_m / _MM


def crown_mm(throat_mm: float, leg_mm: float, leg2_mm: float) -> float:
    return crown_of_throat(throat_mm * _MM, leg_mm * _MM, leg2_mm * _MM, 90.0) / _MM
