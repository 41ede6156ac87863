"""Printed volts drawn against the windows of ``arc``, and how many of them stand inside."""

from __future__ import annotations

from collections.abc import Sequence

from beadwright.process.gases import gas_of
from beadwright.process.operating import volts_window
from beadwright.process.transfer import Transfer
from beadwright.process.volts_points import VOLTS_POINTS, Settings
from beadwright.process.wire_kinds import KINDS, Kind
from beadwright.process.wires import wire_of
from beadwright.tolerance import REL_TOL
from beadwright_site.drawings.points_drawing import Axis, Band, Plot, Point, draw_points
from beadwright_site.method.plots import SHAPES, legend_of_modes, plot_key, size_text, steps

LEAST_DRAWN = 3
"""Fewer points than this are counted in the table and not drawn."""

_LEAST_SPAN_A = 10.0

_SOURCES: dict[Kind, tuple[str, ...]] = {
    "solid": ("machinery-31-t5", "power-source-conditions", "procedure-guide", "trade-schedule",
              "technician-points"),
    "metal-cored": ("e70c-sheet",),
    "flux-cored": ("fcaw-ranges",),
}  # fmt: skip

_Key = tuple[Kind, str, str, str]
_Group = tuple[tuple[_Key, Settings], ...]


def _window(key: _Key, current_a: float) -> tuple[float, float, float]:
    """The window of a key's own wire, gas and mode; an open arc has one whatever it is called."""
    kind, size, gas, printed = key
    mode: Transfer = "short" if printed == "short" else "spray"
    return volts_window(current_a, wire_of(KINDS[kind].representative, size), gas_of(gas), mode)


def _held(key: _Key, current_a: float, volts: float) -> bool:
    low, _, high = _window(key, current_a)
    return low - REL_TOL <= volts <= high + REL_TOL


def points_inside() -> tuple[tuple[Kind, str, str, int, int], ...]:
    """Return kind, size, gas, settings inside the window, settings printed."""
    counts: dict[tuple[Kind, str, str], list[bool]] = {}
    for key, settings in VOLTS_POINTS.items():
        held = [_held(key, *setting) for setting in settings]
        counts.setdefault(key[:3], []).extend(held)
    return tuple((*key, sum(held), len(held)) for key, held in counts.items())


def _mode(printed: str) -> str:
    """A mode of ``SHAPES``: the open arc of CO2 is globular, it does not spray."""
    return "globular" if printed == "open" else printed


def _points(group: _Group) -> list[Point]:
    return [
        Point(amps, volts, SHAPES[_mode(key[3])], _held(key, amps, volts))
        for key, settings in group
        for amps, volts in settings
    ]


def _band(group: _Group) -> tuple[Band, str]:
    """The window of the gas with most points, over the currents of all, and its name."""
    key, _ = max(group, key=lambda pair: len(pair[1]))
    amps = [each for _, settings in group for each, _ in settings]
    ends = steps(min(amps), max(max(amps), min(amps) + _LEAST_SPAN_A))
    at = [(each, _window(key, each)) for each in ends]
    low, middle, high = ([(each, window[i]) for each, window in at] for i in range(3))
    mode = "short circuit" if key[3] == "short" else "the open arc"
    return Band(middle, low, high), f"{mode} in {key[2]}"


def _plot(kind: Kind, size: str, rows: Sequence[tuple[_Key, Settings]], family: str) -> Plot | None:
    groups = [
        tuple(row for row in rows if (row[0][3] == "short") is short) for short in (True, False)
    ]
    points = [point for group in groups for point in _points(group)]
    if len(points) < LEAST_DRAWN:
        return None
    drawn = [_band(group) for group in groups if group]
    held = sum(point.inside for point in points)
    return draw_points(
        plot_key("volts", kind, size, family),
        f"Volts, {kind} {size_text(size)}, {family}",
        Axis("current, A", 0, max(end for band, _ in drawn for end, _ in band.line)),
        Axis("volts", 10, max([40.0, *(p.y for p in points)])),
        points,
        [band for band, _ in drawn],
        legend_of_modes(points, {_mode(key[3]) for key, _ in rows}),
        f"{held} of {len(points)} points inside the window of their own gas. Drawn: "
        f"{' and '.join(name for _, name in drawn)}.",
        _SOURCES[kind],
    )


def volts_plots() -> tuple[Plot, ...]:
    """Return volts against current for each wire and family of gas that has printed settings."""
    found: list[Plot] = []
    for kind, size in dict.fromkeys(key[:2] for key in VOLTS_POINTS):
        for family in ("argon mixtures", "CO2"):
            rows = [
                (key, settings)
                for key, settings in VOLTS_POINTS.items()
                if key[:2] == (kind, size) and (key[2] == "CO2") is (family == "CO2")
            ]
            plot = _plot(kind, size, rows, family)
            if plot is not None:
                found.append(plot)
    return tuple(found)
