"""What current the printed tables run on plate of a thickness, for fillets and for butts.

Two lines through the operating rows of power-source manuals, for 0.045 in wire; other sizes stand
to it as the rows of their size do. The rule of 1 A for each 0.001 in (``heat.thickness_current``)
runs under all of them on sheet: it is a floor, not a plan.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Mapping, Sequence
from types import MappingProxyType

from beadwright.errors import require_positive

Line = Sequence[tuple[float, float]]

FILLET_LINE_A: Line = (
    (0.6, 45.0), (0.9, 66.0), (1.2, 87.0), (1.6, 104.0), (2.0, 121.0), (2.4, 134.0), (3.2, 155.0),
    (4.5, 218.0), (6.0, 287.0), (9.0, 323.0), (12.0, 335.0), (25.0, 350.0),
)  # fmt: skip
"""Fillets and laps: thickness [mm], current with 0.045 in wire [A].

Source: power-source manual, downward fillet in CO2, 1.2 to 12 mm (found); power-source manual,
lap, tee and horizontal fillet in 80/20 with 0.030 and 0.035 in wire, 20 to 7 gauge (found). Above
12 mm the process, not the plate, sets the current; the line's rise there is common practice, and so
is its start at 0.6 mm.
"""

BUTT_LINE_A: Line = (
    (0.6, 38.0), (1.2, 78.0), (1.6, 97.0), (2.0, 112.0), (2.3, 124.0), (3.2, 141.0), (4.5, 166.0),
    (6.0, 240.0), (9.0, 328.0), (12.0, 335.0), (25.0, 350.0),
)  # fmt: skip
"""Butts, from one side to 4.5 mm: thickness [mm], current with 0.045 in wire [A].

Source: power-source manual, square butts without backing in CO2, 1.2 to 9 mm (found). Its ends as
``FILLET_LINE_A``.
"""

SHORT_SHARE: Mapping[str, float] = MappingProxyType(
    {
        "0.023in": 0.80,
        "0.030in": 0.90,
        "0.035in": 0.94,
        "0.040in": 0.97,
        "0.045in": 1.00,
        "0.052in": 1.04,
        "1/16in": 1.10,
    }
)
"""Short-circuit current on the same sheet over that with 0.045 in wire [-].

Source: the rows of 0.030 and 0.035 in wire of the manuals above; the other sizes carry their step
on, common practice.
"""

SHORT_COMFORT_A: Mapping[str, float] = MappingProxyType(
    {
        "0.023in": 90.0,
        "0.030in": 120.0,
        "0.035in": 162.0,
        "0.040in": 183.0,
        "0.045in": 205.0,
        "0.052in": 225.0,
        "1/16in": 245.0,
    }
)
"""Current that short circuit of a size levels off at as the plate grows [A].

Source: the manual's rows for 0.030 in level off at 110 A, for 0.035 in at 150 A (found); short
circuit on 1/4 in plate at 185 A with 0.035 in and 210 A with 0.045 in wire (procedure handbook,
from memory). The other sizes lie between or carry on, common practice.
"""

_LEVELLING = 8
"""How sharply short circuit levels off: the power of the norm that joins both lines [-]."""

LINE_TOP_A = 380.0
"""Usual top of 0.045 in solid wire, to which the lines belong [A]: ``transfer.OPEN_TOP_A``."""

THICKER_TAKES = 0.3
"""Part of what a thicker wire's top allows over 0.045 in wire's that is run on the same plate [-].

Common practice: more than the same current whatever the wire, less than as the wires' tops. Spray
fillets on 3/8 in plate at 300 A with 0.052 in and 325 A with 1/16 in wire (procedure handbook, from
memory) lie 11 and 5 % under what it gives."""


def plate_current(thickness_m: float, *, butt: bool) -> float:
    """Return the current the printed tables run on plate, with 0.045 in solid wire [A].

    Source: ``FILLET_LINE_A``, ``BUTT_LINE_A``, straight between their points.

    Args:
        thickness_m: Thickness of the thinner part, above zero; held at the line's ends [m].
        butt: True for a butt, False for a fillet, lap or corner [-].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    require_positive(thickness_m=thickness_m)
    line = BUTT_LINE_A if butt else FILLET_LINE_A
    thickness_mm = min(max(thickness_m * 1000, line[0][0]), line[-1][0])
    after = min(bisect_right([mm for mm, _ in line], thickness_mm), len(line) - 1)
    (x0, y0), (x1, y1) = line[after - 1], line[after]
    return y0 + (y1 - y0) * (thickness_mm - x0) / (x1 - x0)


def short_plate_current(thickness_m: float, size: str, *, butt: bool) -> float:
    """Return the short-circuit current usual on plate with a wire size [A].

    It follows the plate and levels off at what the size carries, without a corner between.

    Source: ``plate_current``, ``SHORT_SHARE``, ``SHORT_COMFORT_A``.

    Args:
        thickness_m: Thickness of the thinner part, above zero [m].
        size: Inch name of the wire diameter [-].
        butt: As of ``plate_current`` [-].

    Raises:
        OutOfRangeError: If the thickness is not above zero.
    """
    wanted = plate_current(thickness_m, butt=butt) * SHORT_SHARE[size]
    most = SHORT_COMFORT_A[size]
    return wanted / float((1 + (wanted / most) ** _LEVELLING) ** (1 / _LEVELLING))


def open_plate_current(thickness_m: float, top_a: float, *, butt: bool) -> float:
    """Return the open-arc current usual on plate with a wire whose usual top is given [A].

    Source: ``plate_current`` scaled by the wires' tops: procedure handbooks run 0.035 in at 0.7 to
    0.85 of 0.045 in wire's current on the same fillet (from memory); thicker: ``THICKER_TAKES``.

    Args:
        thickness_m: Thickness of the thinner part, above zero [m].
        top_a: The wire's usual top current, above zero [A].
        butt: As of ``plate_current`` [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(top_a=top_a)
    share = top_a / LINE_TOP_A
    taken = share if share < 1 else 1 + THICKER_TAKES * (share - 1)
    return plate_current(thickness_m, butt=butt) * taken
