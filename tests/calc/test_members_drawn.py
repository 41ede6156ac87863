"""Plates of a thousand drawn laps of every shape by each code, counted plainly; seeds kept."""

from collections import Counter
from dataclasses import dataclass
from math import radians, tan
from random import Random

import pytest

from beadwright.units import read
from tests.calc.strength_asked import ask

KIP = read("1kip", "force")
STEELS = {"A36": (36.0, 58.0), "A572-50": (50.0, 65.0), "A588": (50.0, 70.0)}
EN_STEELS = {"S235JR": 235.0, "S275JR": 275.0, "S355J2": 355.0}


@dataclass(frozen=True)
class Lap:
    """Welds of a lap as its pull sees them, and its plates [in, ksi; mm, MPa by EN].

    Attributes:
        lines: Welds along the pull.
        length: Their length.
        reach: How far the welds reach across the pull.
        crossed: Some weld runs across the pull.
        widths: Widths typed, lower and upper, or None.
        thick: Thicknesses, lower and upper.
        sides: Sides of the plate that are welded.
    """

    lines: int
    length: float
    reach: float
    crossed: bool
    widths: tuple[float | None, float | None]
    thick: tuple[float, float]
    sides: int

    def width(self, at: int) -> float | None:
        """What of a plate is pulled: of a wide lower one what 30° to each side reaches."""
        typed = self.widths[at]
        if typed is None:
            return self.reach or None
        return typed if at else min(typed, self.reach + 2 * self.length * tan(radians(30)))

    def lag(self, at: int, width: float) -> float | None:
        """U of Table D3.1; None where it has no case or the plate is too thick for its weld."""
        off = self.thick[at] / 2 if self.sides == 1 else 0.0
        if not self.lines:
            return 1.0  # case 3
        if off >= self.length or (not self.crossed and self.lines == 1):
            return None
        out = 1 - off / self.length
        if self.crossed:
            return out  # case 2
        return out * 3 * self.length**2 / (3 * self.length**2 + width**2)  # case 4


def by_aisc(lap: Lap, fy: float, fu: float, *, factored: bool) -> dict[str, float]:
    """AISC 360-22 D2, D3 and J4.3 [kip]."""
    yields, tears = (0.90, 0.75) if factored else (1 / 1.67, 1 / 2.00)
    found: dict[str, float] = {}
    for at, name in enumerate(("plate", "plate2")):
        width, t = lap.width(at), lap.thick[at]
        if width is None:
            continue
        found[f"{name}-gross"] = yields * fy * width * t
        beyond = width > lap.reach * (1 + 1e-6)
        lag = lap.lag(at, width)
        # A block tears out of a wide lower plate, not its whole width.
        if lag is not None and not (at == 0 and beyond and lap.reach):
            joined = lap.reach if not lap.lines and at else width
            found[f"{name}-net"] = tears * fu * joined * t * lag
        if lap.lines == 2 and (at == 0 or beyond):
            shear = 0.6 * min(fy, fu) * 2 * lap.length * t
            found[f"{name}-block"] = tears * (shear + fu * lap.reach * t)
    return found


# Shape: welds along a pull that goes up and to the right, and whether some cross it; a lone line
# reaches nowhere across.
SHAPES = {
    "line": ((1, False), (0, True)),
    "lines": ((2, False), (0, True)),
    "flats": ((0, True), (2, False)),
    "c": ((1, True), (2, True)),
    "l": ((1, True), (1, True)),
    "rectangle": ((2, True), (2, True)),
}


def drawn(rng: Random, *, metric: bool) -> tuple[str, Lap]:
    """A lap: its query without load, code and steel, and the same for the clauses."""
    unit, whole = ("mm", 25.4) if metric else ("in", 1.0)
    group, way = rng.choice(sorted(SHAPES)), rng.randint(0, 1)
    w, h = (round(rng.uniform(2, 12) * whole, 3) for _ in range(2))
    lines, crossed = SHAPES[group][way]
    along, across = (h, w) if way == 0 else (w, h)
    reach = 0.0 if group == "line" and way == 0 else across
    thick = (rng.choice((3, 4, 6, 8, 12)) / 16 * whole, rng.choice((3, 4, 6, 8)) / 16 * whole)
    typed = [
        round(max(reach, 0.5 * whole) * rng.uniform(1, 4), 3) if rng.random() < 0.5 else None
        for _ in range(2)
    ]
    sides = rng.choice((1, 2))
    query = (
        f"joint=lap&plate={thick[0]}{unit}&plate2={thick[1]}{unit}&group={group}&held=yes"
        f"&group_width={w}{unit}&group_height={h}{unit}&weld_sides={sides}&leg=1/8in"
        f"&{('py', 'px')[way]}=3kip"
    )
    for key, width in zip(("plate_width", "plate2_width"), typed, strict=True):
        query += f"&{key}={width}{unit}" if width is not None else ""
    lap = Lap(lines, along if lines else 0.0, reach, crossed, (typed[0], typed[1]), thick, sides)
    return query, lap


def held(query: str) -> dict[str, float]:
    """What each link that is strained as a whole holds [N]."""
    return {link.key: link.holds for link in ask(query).links if link.measure == "force"}


def test_a_thousand_laps_of_every_shape_by_aisc() -> None:
    rng, met = Random(2022), Counter[str]()
    for _ in range(1000):
        query, lap = drawn(rng, metric=False)
        steel, code = rng.choice(sorted(STEELS)), rng.choice(("asd", "lrfd"))
        wanted = by_aisc(lap, *STEELS[steel], factored=code == "lrfd")
        found = held(f"{query}&steel={steel}&design_code={code}")
        expected = {key: pytest.approx(value * KIP, rel=1e-9) for key, value in wanted.items()}
        assert found == expected, query
        for key in wanted:
            met[key.rpartition("-")[2]] += 1
    assert min(met[kind] for kind in ("gross", "net", "block")) > 300


def test_a_thousand_laps_of_every_shape_by_en() -> None:
    """EN 1993-1-1, 6.2.3: the gross section yields; nothing is drilled."""
    rng, met = Random(1993), 0
    for _ in range(1000):
        query, lap = drawn(rng, metric=True)
        steel = rng.choice(sorted(EN_STEELS))
        # Over 16 mm the steels yield at less; these plates are no thicker than that but one.
        fy = [EN_STEELS[steel] - (10 if t > 16 else 0) for t in lap.thick]
        found = held(f"{query}&steel={steel}&design_code=en")
        widths = [lap.width(at) for at in range(2)]
        wanted = {
            f"{name}-gross": pytest.approx(y * width * t, rel=1e-9)
            for name, width, t, y in zip(("plate", "plate2"), widths, lap.thick, fy, strict=True)
            if width is not None
        }
        assert found == wanted, query
        met += bool(wanted)
    assert met > 800
