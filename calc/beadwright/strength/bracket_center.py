"""The instantaneous center of a bracket: two equal lines of weld, the load midway between them.

Such a load turns the bracket out of the plane of its welds. Seen from the side all its lines fall
into one, and the load lies in the plane of the picture: there the center is found as for any group.
"""

from __future__ import annotations

from beadwright.errors import OutOfRangeError
from beadwright.strength.elastic_line import GroupLoad, LineForce
from beadwright.strength.instantaneous_center import CenterStrength, center_strength
from beadwright.strength.weld_group import XY, WeldGroup
from beadwright.strength.weld_line import LineProperties, line_properties

_NOTHING = 1e-6
"""Share of the load times the weld's length under which a part of it is rounding [-]."""


def turns_as_bracket(group: WeldGroup, load: GroupLoad, lines: int) -> bool:
    """Return whether the Manual's special case covers a load that leaves the plane of its welds.

    Every line must run one way, two or more in number, and the load must lie in the plane midway
    between them: along the lines, square off the joint, or turning the one into the other.

    Args:
        group: The weld group [-].
        load: Load at its centroid [N, N·m].
        lines: Lines of weld, those on the other side of the plate too [-].
    """
    way = group.way
    if way is None or lines < 2:
        return False
    across = load.py * way[0] - load.px * way[1]
    twist = load.mx * way[0] + load.my * way[1]
    size = abs(load.px) + abs(load.py) + abs(load.pz)
    turning = abs(load.mx) + abs(load.my) + abs(load.mz)
    arm = size * group.length_m + turning
    return abs(across) <= _NOTHING * size and max(abs(twist), abs(load.mz)) <= _NOTHING * arm


def bracket_strength(
    group: WeldGroup,
    load: GroupLoad,
    strength_n_m: float,
    properties: LineProperties | None = None,
) -> CenterStrength:
    """Return the strength of a bracket's welds under a load out of their plane.

    The welds carry the push as well as the pull: that plates bear on each other is not counted.

    Source: AISC Manual part 8, Tables 8-4 and following: load not in the plane of the weld group,
    special case, lines at equal distances from the load: coefficients for k = 0.

    Args:
        group: The weld group; see ``turns_as_bracket`` [-].
        load: Load at the centroid, not nothing [N, N·m].
        strength_n_m: 0.60 FEXX times the throat: an element's strength along the weld [N/m].
        properties: The group's, if at hand [-].

    Raises:
        OutOfRangeError: If the lines do not run one way, there is no load, or no center is found.
    """
    way = group.way
    if way is None:
        raise OutOfRangeError("group has lines that run more than one way")
    p = properties or line_properties(group)
    side = WeldGroup(
        "side", tuple((_seen(a, p, way), _seen(b, p, way)) for a, b in group.stretches)
    )
    along = load.px * way[0] + load.py * way[1]
    # Right in the picture is out of the joint, up is along the lines: z × way is the way back.
    turn = load.my * way[0] - load.mx * way[1]
    found = center_strength(side, GroupLoad(px=load.pz, py=along, mz=turn), strength_n_m)
    forces = tuple(
        LineForce(place, force.fy * way[0], force.fy * way[1], force.fx)
        for place, force in zip(group.ends, found.forces, strict=True)
    )
    return CenterStrength(found.factor, None, forces, found.first)


def _seen(point: XY, p: LineProperties, way: XY) -> XY:
    """A point from the side: how far along the lines it lies from the centroid."""
    return 0.0, (point[0] - p.x) * way[0] + (point[1] - p.y) * way[1]
