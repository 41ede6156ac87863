"""What ISO 5817 accepts of a finished weld by quality level.

B is stringent, C intermediate, D moderate. Each limit is a share of a size with the most it may be.
"Short" limits hold for short imperfections only, see ``short_length``.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import inf
from types import MappingProxyType
from typing import Literal

from beadwright.errors import require_positive
from beadwright.tolerance import REL_TOL

Level = Literal["B", "C", "D"]
"""Quality level."""

THIN_M = 0.003
"""Thickness up to which the limits of thin plate hold [m]. Source: ISO 5817:2014 Table 1
(second-hand)."""

_Rule = tuple[float, float, float]
"""Constant [mm], share of a size [-], most [mm]."""

_NEVER: _Rule = (0.0, 0.0, 0.0)


@dataclass(frozen=True, slots=True)
class IsoLimit:
    """A limit of ISO 5817.

    Attributes:
        most_m: Most accepted; zero: not permitted, infinite: no limit [m].
        short_only: True if only short imperfections are accepted.
    """

    most_m: float
    short_only: bool = False


UNDERCUT: Mapping[Level, _Rule] = MappingProxyType(
    {"B": (0.0, 0.05, 0.5), "C": (0.0, 0.1, 0.5), "D": (0.0, 0.2, 1.0)}
)
"""Undercut over ``THIN_M`` by plate thickness. Source: EN ISO 5817:2007, 5011 (second-hand)."""

THIN_UNDERCUT: Mapping[Level, _Rule] = MappingProxyType(
    {"B": _NEVER, "C": (0.0, 0.1, inf), "D": (0.0, 0.2, inf)}
)
"""The same to ``THIN_M``, short only. Source: ISO 5817:2014 1.7, from memory."""

CONVEXITY: Mapping[Level, _Rule] = MappingProxyType(
    {"B": (1.0, 0.1, 3.0), "C": (1.0, 0.15, 4.0), "D": (1.0, 0.25, 5.0)}
)
"""Convexity of a fillet by the width of its face. Source: EN ISO 5817:2007, 503 (second-hand)."""

EXCESS_WELD: Mapping[Level, _Rule] = MappingProxyType(
    {"B": (1.0, 0.1, 5.0), "C": (1.0, 0.15, 7.0), "D": (1.0, 0.25, 10.0)}
)
"""Crown of a butt by the width of its face. Source: EN ISO 5817:2007, 502 (second-hand)."""

OVERLAP: Mapping[Level, _Rule] = MappingProxyType({"B": _NEVER, "C": _NEVER, "D": (0.0, 0.2, inf)})
"""Overlap by the width of the face. Source: ISO 5817:2014 1.13, 506, from memory."""

THROAT_SHORT: Mapping[Level, _Rule] = MappingProxyType(
    {"B": _NEVER, "C": (0.3, 0.1, 1.0), "D": (0.3, 0.1, 2.0)}
)
"""What a throat may lack over ``THIN_M``, short only. Source: EN 25817 no. 15, the predecessor
(second-hand); ISO 5817:2014 1.20, 5213."""

THIN_THROAT_SHORT: Mapping[Level, _Rule] = MappingProxyType(
    {"B": _NEVER, "C": (0.2, 0.0, inf), "D": (0.2, 0.1, inf)}
)
"""The same to ``THIN_M``. Source: ISO 5817:2014 1.20, from memory."""

THROAT_OVER: Mapping[Level, _Rule] = MappingProxyType(
    {"B": (1.0, 0.15, 3.0), "C": (1.0, 0.2, 4.0), "D": (inf, 0.0, inf)}
)
"""What a throat may be over. Source: EN 25817 no. 14, the predecessor (second-hand); no limit in D:
ISO 5817:2014 1.21, 5214, from memory."""

ASYMMETRY: Mapping[Level, _Rule] = MappingProxyType(
    {"B": (1.5, 0.15, inf), "C": (2.0, 0.15, inf), "D": (2.0, 0.2, inf)}
)
"""Difference of the legs by the throat. Source: EN 25817 no. 20, the predecessor (second-hand); ISO
5817:2014 1.16, 512."""

PORE: Mapping[Level, _Rule] = MappingProxyType(
    {"B": _NEVER, "C": (0.0, 0.2, 2.0), "D": (0.0, 0.3, 3.0)}
)
"""Largest single pore over ``THIN_M`` by the throat. Source: ISO 5817:2014 1.3, 2017
(second-hand)."""

THIN_PORE: Mapping[Level, _Rule] = MappingProxyType(
    {"B": _NEVER, "C": _NEVER, "D": (0.0, 0.3, inf)}
)
"""The same to ``THIN_M``. Source: ISO 5817:2014 1.3, 2017 (second-hand)."""

CRATER: Mapping[Level, _Rule] = MappingProxyType(
    {"B": _NEVER, "C": (0.0, 0.1, 1.0), "D": (0.0, 0.2, 2.0)}
)
"""Depth of a crater over ``THIN_M`` by plate thickness. Source: ISO 5817:2014 1.4, 2025
(second-hand)."""

THIN_CRATER: Mapping[Level, _Rule] = MappingProxyType(
    {"B": _NEVER, "C": _NEVER, "D": (0.0, 0.2, inf)}
)
"""The same to ``THIN_M``. Source: ISO 5817:2014 1.4, 2025 (second-hand)."""

FILLET_GAP: Mapping[Level, _Rule] = MappingProxyType(
    {"B": (0.5, 0.1, 2.0), "C": (0.5, 0.2, 3.0), "D": (1.0, 0.3, 4.0)}
)
"""Gap under a fillet over ``THIN_M`` by its throat. Source: EN 25817 no. 10, the predecessor
(second-hand); ISO 5817:2014 3.2, 617."""

THIN_FILLET_GAP: Mapping[Level, _Rule] = MappingProxyType(
    {"B": (0.2, 0.1, inf), "C": (0.3, 0.1, inf), "D": (0.5, 0.1, inf)}
)
"""The same to ``THIN_M``. Source: ISO 5817:2014 3.2, from memory."""

UNDERFILL: Mapping[Level, _Rule] = MappingProxyType(
    {"B": (0.0, 0.05, 0.5), "C": (0.0, 0.1, 1.0), "D": (0.0, 0.25, 2.0)}
)
"""Underfill of a groove over ``THIN_M`` by plate thickness, short only. Source: ISO 5817:2014 1.14,
509 and 511, from memory."""

THIN_UNDERFILL: Mapping[Level, _Rule] = MappingProxyType(
    {"B": _NEVER, "C": (0.0, 0.1, inf), "D": (0.0, 0.25, inf)}
)
"""The same to ``THIN_M``. Source: ISO 5817:2014 1.14, from memory."""

SHORT_M, SHORT_OF_M, SHORT_SHARE = 0.025, 0.1, 0.25
"""Imperfections count as short up to this length [m] in the worst length of weld [m]; of a shorter
weld this share [-]. Source: ISO 5817:2014 clause 3, from memory."""


def iso_limit(rule: Mapping[Level, _Rule], level: Level, size_m: float) -> float:
    """Return the most accepted by a rule [m].

    Source: the rule's own: constant + share × size, no more than its most.

    Args:
        rule: One of this module's [-].
        level: Quality level [-].
        size_m: What it is a share of: thickness, throat or width of the face; above zero [m].

    Raises:
        OutOfRangeError: If the size is not above zero.
    """
    require_positive(size_m=size_m)
    constant, share, most = rule[level]
    return min(constant + share * size_m * 1000, most) / 1000


def iso_by_plate(
    thick: Mapping[Level, _Rule],
    thin: Mapping[Level, _Rule],
    level: Level,
    thickness_m: float,
    size_m: float,
) -> float:
    """Return the most accepted by the rule of thin or of thicker plate [m].

    Source: ISO 5817:2014 Table 1: 0.5 to 3 mm, and over 3 mm.

    Args:
        thick: Rule over ``THIN_M`` [-].
        thin: Rule to ``THIN_M`` [-].
        level: Quality level [-].
        thickness_m: Thickness of the plate, above zero [m].
        size_m: What the rule is a share of, above zero [m].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(thickness_m=thickness_m)
    return iso_limit(thin if thickness_m <= THIN_M + REL_TOL else thick, level, size_m)


def iso_undercut(level: Level, thickness_m: float) -> IsoLimit:
    """Return the undercut accepted.

    Source: ``UNDERCUT``, ``THIN_UNDERCUT``.

    Args:
        level: Quality level [-].
        thickness_m: Thickness of the plate, above zero [m].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    most = iso_by_plate(UNDERCUT, THIN_UNDERCUT, level, thickness_m, thickness_m)
    return IsoLimit(most, short_only=thickness_m <= THIN_M + REL_TOL)


def short_length(weld_m: float) -> float:
    """Return the length of imperfections that still counts as short, in the worst 100 mm [m].

    Source: ``SHORT_M``.

    Args:
        weld_m: Length of the weld, above zero [m].

    Raises:
        OutOfRangeError: If the length is not above zero.
    """
    require_positive(weld_m=weld_m)
    return SHORT_M if weld_m >= SHORT_OF_M else SHORT_SHARE * weld_m
