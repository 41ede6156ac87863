"""The published points behind the method, drawn against the lines and bands that stand for them."""

from __future__ import annotations

from collections.abc import Sequence

from beadwright.measures import INCH_M
from beadwright.process import penetration as depth
from beadwright.process.burnoff import CONSTANTS, feed_from_current
from beadwright.process.burnoff_fit import Shown, shown_points
from beadwright.process.burnoff_points import POINTS
from beadwright.process.penetration_points import BEADS
from beadwright.process.transfer import NAMES, TRANSITION_A, TRANSITION_BAND, Transfer
from beadwright.process.wire_kinds import KINDS, Kind
from beadwright.process.wires import METRIC_NAMES, wire_of
from beadwright_site.drawings.paper import XY
from beadwright_site.drawings.points_drawing import (
    Axis,
    Band,
    Plot,
    Point,
    Shape,
    draw_points,
)

_IN_MIN = 60 / INCH_M
_STEPS = 12
SHAPES: dict[str, Shape] = {"short": "circle", "globular": "triangle", "spray": "square"}
"""The shape of each transfer mode."""


def size_text(size: str) -> str:
    """Return a wire size both ways: 0.045 in, 1.2 mm."""
    return f"{size.removesuffix('in')} in, {METRIC_NAMES[size].replace('mm', ' mm')}"


def plot_key(*parts: str) -> str:
    """Return parts as one id."""
    return "-".join(part.replace("/", "-").replace(".", "-").replace(" ", "") for part in parts)


def _middle_extension(shown: Sequence[Shown]) -> float:
    """Return an extension half of the points are no longer than [m]."""
    return sorted(point.extension_m for point in shown)[len(shown) // 2]


def steps(low: float, high: float) -> list[float]:
    """Return places along a line, both ends among them."""
    return [low + (high - low) * at / _STEPS for at in range(_STEPS + 1)]


def legend_of_modes(points: Sequence[Point], modes: set[str]) -> list[tuple[Shape, bool, str]]:
    """Return the legend of transfer modes, and of hollow and left-out points if there are any."""
    rows: list[tuple[Shape, bool, str]] = [
        (SHAPES[mode], True, NAMES[as_mode].lower()) for mode, as_mode in _NAMED if mode in modes
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
    wire, band = wire_of(KINDS[kind].representative, size), CONSTANTS[kind, size].band
    extension = _middle_extension(shown)
    amps = [point.point.current_a for point in shown]

    def curve(share: float) -> list[XY]:
        return [
            (a, feed_from_current(wire, a, extension) * _IN_MIN / share)
            for a in steps(min(amps), max(amps))
        ]

    return Band(curve(1.0), curve(1 + band), curve(1 - band))


def _burn_off(kind: Kind, size: str, shown: tuple[Shown, ...]) -> Plot:
    points = [
        Point(s.point.current_a, s.point.feed_in_min, SHAPES[s.point.transfer], s.inside)
        for s in shown
    ]
    out = [p for p in POINTS if p.kind == kind and p.size == size and not p.fitted]
    points += [Point(p.current_a, p.feed_in_min, "cross") for p in out]
    shorted = [s for s in shown if s.point.transfer == "short"]
    open_arc = [s for s in shown if s.point.transfer != "short"]
    groups = [group for group in (shorted, open_arc) if len(group) > 1]
    bands = [_burn_off_band(kind, size, group) for group in groups]
    lengths = " and ".join(f"{1000 * _middle_extension(group):.1f} mm" for group in groups)
    held = sum(s.inside for s in shown)
    words = (
        f"{held} of {len(shown)} points inside ±{CONSTANTS[kind, size].band:.0%} of the feed. "
        f"Drawn for {lengths} of extension; each point is judged at its own."
    )
    feeds = [end for band in bands for _, end in (*band.low, *band.high)]
    return draw_points(
        plot_key("burn-off", kind, size),
        f"Burn-off, {kind} {size_text(size)}",
        Axis("current, A", 0, max(p.x for p in points)),
        Axis("wire feed, in/min", 0, max([*feeds, *(p.y for p in points)])),
        points,
        bands,
        legend_of_modes(points, {s.point.transfer for s in shown}),
        words,
        tuple(dict.fromkeys(s.point.source for s in shown)),
    )


def burn_off_plots() -> tuple[Plot, ...]:
    """Return feed against current for each wire that has published points."""
    return tuple(
        _burn_off(kind, size, shown)
        for kind, size in CONSTANTS
        if (shown := shown_points(kind, size))
    )


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
            ("circle", False, "not checked against the book, or taken from its neighbors"),
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

    def ray(share: float) -> list[XY]:
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
