"""The published points behind the method, drawn against the lines and bands that stand for them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from statistics import median

from beadwright import penetration as depth
from beadwright.burnoff import CONSTANTS, feed_from_current
from beadwright.burnoff_fit import REPRESENTATIVE, Shown, shown_points
from beadwright.burnoff_points import POINTS
from beadwright.gases import gas_of
from beadwright.operating import volts_window
from beadwright.penetration_points import BEADS
from beadwright.transfer import NAMES, TRANSITION_A, TRANSITION_BAND, Transfer
from beadwright.volts_points import VOLTS_POINTS
from beadwright.wires import METRIC_NAMES, Kind, wire_of
from beadwright_site.points_drawing import Axis, Band, Place, Plot, Point, Shape, draw_points

_IN_MIN = 60 / 0.0254
_STEPS = 12
_HAIR = 1e-9
_SHAPES: dict[str, Shape] = {"short": "circle", "globular": "triangle", "spray": "square"}


def size_text(size: str) -> str:
    """Return a wire size both ways: 0.045 in, 1.2 mm."""
    return f"{size.removesuffix('in')} in, {METRIC_NAMES[size].replace('mm', ' mm')}"


def _key(*parts: str) -> str:
    return "-".join(part.replace("/", "-").replace(".", "-").replace(" ", "") for part in parts)


def _over(low: float, high: float) -> list[float]:
    return [low + (high - low) * at / _STEPS for at in range(_STEPS + 1)]


def _modes(points: Sequence[Point], modes: set[str]) -> list[tuple[Shape, bool, str]]:
    """Legend of transfer modes, and of hollow points if there are any."""
    rows: list[tuple[Shape, bool, str]] = [
        (_SHAPES[mode], True, NAMES[as_mode].lower()) for mode, as_mode in _NAMED if mode in modes
    ]
    if not all(point.inside for point in points):
        rows.append(("circle", False, "hollow: outside the band"))
    if any(point.shape == "cross" for point in points):
        rows.append(("cross", True, "left out of the fit"))
    return rows


_NAMED: tuple[tuple[str, Transfer], ...] = (
    ("short", "short"), ("globular", "globular"), ("spray", "spray"),
)  # fmt: skip


def _burn_off_band(kind: Kind, size: str, shown: Sequence[Shown]) -> Band:
    wire, band = wire_of(REPRESENTATIVE[kind], size), CONSTANTS[kind, size].band
    extension = median(point.extension_m for point in shown)
    amps = [point.point.current_a for point in shown]

    def curve(share: float) -> list[Place]:
        return [
            (a, feed_from_current(wire, a, extension) * _IN_MIN / share)
            for a in _over(min(amps), max(amps))
        ]

    return Band(curve(1.0), curve(1 + band), curve(1 - band))


def _burn_off(kind: Kind, size: str, shown: tuple[Shown, ...]) -> Plot:
    points = [
        Point(s.point.current_a, s.point.feed_in_min, _SHAPES[s.point.transfer], s.inside)
        for s in shown
    ]
    out = [p for p in POINTS if p.kind == kind and p.size == size and not p.fitted]
    points += [Point(p.current_a, p.feed_in_min, "cross") for p in out]
    groups = [
        [s for s in shown if (s.point.transfer == "short") is short] for short in (True, False)
    ]
    bands = [_burn_off_band(kind, size, group) for group in groups if len(group) > 1]
    lengths = " and ".join(
        f"{1000 * median(s.extension_m for s in group):.1f} mm"
        for group in groups
        if len(group) > 1
    )
    held = sum(s.inside for s in shown)
    words = (
        f"{held} of {len(shown)} points inside ±{CONSTANTS[kind, size].band:.0%} of the feed. "
        f"Drawn for {lengths} of extension; each point is judged at its own."
    )
    feeds = [end for band in bands for _, end in (*band.low, *band.high)]
    return draw_points(
        _key("burn-off", kind, size),
        f"Burn-off, {kind} {size_text(size)}",
        Axis("current, A", 0, max(p.x for p in points)),
        Axis("wire feed, in/min", 0, max([*feeds, *(p.y for p in points)])),
        points,
        bands,
        _modes(points, {s.point.transfer for s in shown}),
        words,
        tuple(dict.fromkeys(s.point.source for s in shown)),
    )


def burn_off_plots() -> tuple[Plot, ...]:
    """Return feed against current for each wire that has published points."""
    found = ((kind, size, shown_points(kind, size)) for kind, size in CONSTANTS)
    return tuple(_burn_off(*each) for each in found if each[2])


_VOLTS_SOURCES: dict[Kind, tuple[str, ...]] = {
    "solid": ("machinery-31-t5", "power-source-conditions", "procedure-guide", "trade-schedule",
              "technician-points"),
    "metal-cored": ("e70c-sheet",),
    "flux-cored": ("fcaw-ranges",),
}  # fmt: skip

LEAST_DRAWN = 3
"""Fewer points than this are counted in the table and not drawn."""


def _held(kind: Kind, size: str, gas: str, printed: str, amps: float, volts: float) -> bool:
    """True if a printed setting stands inside the window of its own gas."""
    wire = wire_of(REPRESENTATIVE[kind], size)
    low, _, high = volts_window(amps, wire, gas_of(gas), _mode(printed))
    return low - _HAIR <= volts <= high + _HAIR


def points_inside() -> tuple[tuple[Kind, str, str, int, int], ...]:
    """Return kind, size, gas, settings inside the window, settings printed."""
    counts: dict[tuple[Kind, str, str], list[bool]] = {}
    for (kind, size, gas, printed), pairs in VOLTS_POINTS.items():
        held = [_held(kind, size, gas, printed, *pair) for pair in pairs]
        counts.setdefault((kind, size, gas), []).extend(held)
    return tuple((*key, sum(held), len(held)) for key, held in counts.items())


def _mode(printed: str) -> Transfer:
    """The mode whose window a printed point belongs to: short, or the open arc."""
    return "short" if printed == "short" else "spray"


def _volts(kind: Kind, size: str, carbonic: bool) -> Plot | None:
    rows = {
        key: pairs
        for key, pairs in VOLTS_POINTS.items()
        if key[:2] == (kind, size) and (key[2] == "CO2") is carbonic
    }
    wire = wire_of(REPRESENTATIVE[kind], size)
    points: list[Point] = []
    bands: list[Band] = []
    names: list[str] = []
    for short in (True, False):
        group = {k: v for k, v in rows.items() if (k[3] == "short") is short}
        if not group:
            continue
        for (_, _, gas, printed), pairs in group.items():
            for amps, volts in pairs:
                inside = _held(kind, size, gas, printed, amps, volts)
                points.append(Point(amps, volts, _SHAPES.get(printed, "square"), inside))
        most = max(group, key=lambda key: len(group[key]))
        amps = [a for pairs in group.values() for a, _ in pairs]
        bands.append(_volts_band(lambda a, m=most: volts_window(a, wire, gas_of(m[2]), _mode(m[3])),
                                 min(amps), max(amps)))  # fmt: skip
        names.append(f"{'short circuit' if short else 'the open arc'} in {most[2]}")
    if len(points) < LEAST_DRAWN:
        return None
    held = sum(point.inside for point in points)
    gas = "CO2" if carbonic else "argon mixtures"
    return draw_points(
        _key("volts", kind, size, "co2" if carbonic else "argon"),
        f"Volts, {kind} {size_text(size)}, {gas}",
        Axis("current, A", 0, max(p.x for p in points)),
        Axis("volts", 10, max([40.0, *(p.y for p in points)])),
        points,
        bands,
        _modes(points, {"spray" if k[3] == "open" else k[3] for k in rows}),
        f"{held} of {len(points)} points inside the window of their own gas. Drawn: "
        f"{' and '.join(names)}.",
        _VOLTS_SOURCES[kind],
    )


def _volts_band(
    window: Callable[[float], tuple[float, float, float]], least: float, most: float
) -> Band:
    ends = _over(least, most if most > least else least + 10)
    at = [(a, window(a)) for a in ends]
    low, middle, high = ([(a, w[i]) for a, w in at] for i in range(3))
    return Band(middle, low, high)


def volts_plots() -> tuple[Plot, ...]:
    """Return volts against current for each wire and family of gas that has printed settings."""
    wires = dict.fromkeys((kind, size) for kind, size in CONSTANTS)
    found = (_volts(*wire, carbonic) for wire in wires for carbonic in (False, True))
    return tuple(plot for plot in found if plot is not None)


_FOUND = ("0.030in", "0.035in", "0.045in", "0.052in", "1/16in")
"""Sizes whose current in 98/2 was found in print (MIG handbook, Table 1-2)."""


def transition_plot() -> Plot:
    """Return the least spray current against carbon dioxide, a line for each size of solid wire."""
    bands: list[Band] = []
    points: list[Point] = []
    for size, row in TRANSITION_A.items():
        line = [(100 * share, amps) for share, amps in row]
        shaded = size == "0.045in"
        low, high = (
            [(share, amps * (1 + end * TRANSITION_BAND)) for share, amps in line] for end in (-1, 1)
        )
        bands.append(Band(line, low if shaded else (), high if shaded else (), name=size))
        points += [
            Point(share, amps, "square", True)
            if share == 0 and size in _FOUND
            else Point(share, amps, "circle", False)
            for share, amps in line
        ]
    points.append(Point(20, 340, "cross"))
    most = max(point.y for point in points)
    return draw_points(
        "transition-points",
        "Least spray current, solid wire",
        Axis("carbon dioxide, %", 0, 24),
        Axis("current, A", 100, most),
        points,
        bands,
        [
            ("square", True, "found in print"),
            ("circle", False, "from memory, or carried over from a neighbour"),
            ("cross", True, "one measurement by high-speed video, size not said"),
        ],
        f"Shaded for 0.045 in: ±{TRANSITION_BAND:.0%}. The measurement stands outside it: spray "
        "may start later than the tables say.",
        ("mig-handbook-1-2", "supplier-transition", "spray-video"),
    )


def penetration_plot() -> Plot:
    """Return measured depth of the beads against what the form gives."""
    low, high = depth.BAND
    pairs = [
        (1000 * depth.bead_penetration(b.current_a, b.volts, b.travel_mm_s / 1000), b)
        for b in BEADS
    ]
    most = max(formed for formed, _ in pairs)
    points = [
        Point(formed, b.penetration_mm, "circle", low <= b.penetration_mm / formed <= high)
        for formed, b in pairs
    ]
    held = sum(point.inside for point in points)
    ends = (0.0, most)

    def ray(share: float) -> list[Place]:
        return [(end, share * end) for end in ends]

    return draw_points(
        "penetration-points",
        "Penetration of beads on plate",
        Axis("as the form gives, mm", 0, most),
        Axis("measured, mm", 0, high * most),
        points,
        [Band(ray(1.0), ray(low), ray(high))],
        [("circle", True, "a bead"), ("circle", False, "hollow: outside the band")],
        f"{held} of {len(points)} beads inside the band.",
        ("bead-runs", "jackson-form"),
    )
