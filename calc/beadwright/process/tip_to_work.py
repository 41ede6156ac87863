"""Contact tip to work, and the place of the tip in the nozzle."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.measures import INCH_M
from beadwright.process.transfer import Transfer
from beadwright.process.wire_kinds import Kind
from beadwright.process.wires import Wire

_Three = tuple[float, float, float]

_SHORT: Mapping[str, _Three] = MappingProxyType(
    {
        "0.023in": (1 / 4, 5 / 16, 3 / 8),
        "0.030in": (1 / 4, 3 / 8, 1 / 2),
        "0.035in": (1 / 4, 3 / 8, 1 / 2),
        "0.040in": (1 / 4, 3 / 8, 5 / 8),
        "0.045in": (1 / 4, 3 / 8, 5 / 8),
        "0.052in": (3 / 8, 1 / 2, 5 / 8),
        "1/16in": (3 / 8, 1 / 2, 3 / 4),
    }
)
_SHORT_CORED: Mapping[str, _Three] = MappingProxyType(
    {
        "0.035in": (3 / 8, 1 / 2, 3 / 4),
        "0.040in": (1 / 2, 1 / 2, 3 / 4),
        "0.045in": (1 / 2, 5 / 8, 1.0),
        "0.052in": (1 / 2, 3 / 4, 9 / 8),
        "1/16in": (5 / 8, 7 / 8, 5 / 4),
    }
)
_OPEN_SOLID: Mapping[str, _Three] = MappingProxyType(
    {
        "0.023in": (3 / 8, 1 / 2, 5 / 8),
        "0.030in": (1 / 2, 1 / 2, 3 / 4),
        "0.035in": (1 / 2, 5 / 8, 3 / 4),
        "0.040in": (1 / 2, 5 / 8, 7 / 8),
        "0.045in": (1 / 2, 3 / 4, 1.0),
        "0.052in": (5 / 8, 7 / 8, 1.0),
        "1/16in": (3 / 4, 7 / 8, 9 / 8),
    }
)
_OPEN_CORED: Mapping[str, _Three] = MappingProxyType(
    {
        "0.035in": (1 / 2, 5 / 8, 3 / 4),
        "0.040in": (1 / 2, 11 / 16, 7 / 8),
        "0.045in": (5 / 8, 7 / 8, 1.0),
        "0.052in": (3 / 4, 1.0, 9 / 8),
        "1/16in": (3 / 4, 9 / 8, 5 / 4),
    }
)
_FLUX: Mapping[str, _Three] = MappingProxyType(
    {
        "0.035in": (1 / 2, 5 / 8, 3 / 4),
        "0.045in": (1 / 2, 3 / 4, 1.0),
        "0.052in": (5 / 8, 3 / 4, 1.0),
        "1/16in": (3 / 4, 1.0, 5 / 4),
    }
)
_OPEN: Mapping[Kind, Mapping[str, _Three]] = MappingProxyType(
    {"solid": _OPEN_SOLID, "metal-cored": _OPEN_CORED, "flux-cored": _FLUX}
)


def tip_to_work(wire: Wire, transfer: Transfer) -> _Three:
    """Return low, set and high contact tip to work [m].

    Source: short circuit: power-source manuals, 9 mm and 10 mm to about 140 A (found), so 3/8 in to
    0.045 in wire; 15 mm at 120-160 A, 80/20, too (found). Open arc: procedure handbook, 5/8 in at
    0.035, 3/4 in at 0.045, 7/8 in at 0.052 in (from memory). Metal-cored: published E70C-6M sheet,
    0.045 in 3/4-1 in, 1/16 in 1-1¼ in, in every mode (found); a sample procedure, 0.052 in
    1-1⅛ in (second-hand); low ends and short circuit's set points: common practice. 0.040 in lies
    between its neighbors. Flux-cored: 1/2-1 in to 0.052 in, 3/4-1¼ in above (data sheets of class
    E71T-1, from memory).

    Args:
        wire: The wire [-].
        transfer: The mode planned [-].
    """
    short = transfer == "short" and wire.traits.shorts
    shorting = _SHORT_CORED if wire.traits.cored else _SHORT
    table = shorting if short else _OPEN[wire.kind]
    low, set_, high = table[wire.size]
    return low * INCH_M, set_ * INCH_M, high * INCH_M


def tip_position(transfer: Transfer) -> str:
    """Return the place of the contact tip in the nozzle.

    Source: machine manuals: short circuit flush to 1/8 in out; spray recessed 1/8 to 1/4 in.

    Args:
        transfer: The mode planned [-].
    """
    if transfer == "short":
        return "flush to 1/8 in out of the nozzle"
    return "1/8 in inside the nozzle"
