"""Equations and tables of the method whose numbers are read from the core."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from beadwright import arc, units
from beadwright.burnoff import CONSTANTS, BurnOff
from beadwright.burnoff_fit import fitted_points, relative_errors
from beadwright.deposition import deposition_efficiency
from beadwright.fillets import MINIMUM_LEG_M
from beadwright.gases import GASES
from beadwright.heat import (
    BURN_THROUGH_J_M2,
    THIN_M,
    burn_through_current,
    fusion_current,
    thickness_current,
)
from beadwright.positions import TRAVEL_RANGE_M_S
from beadwright.transfer import (
    CORED_TRANSITION_A,
    NAMES,
    OPEN_TOP_A,
    SHORT_RANGE_A,
    TRANSITION_A,
    TRANSITION_BAND,
    Transfer,
)
from beadwright.wires import INCH_SIZES_M, METRIC_NAMES, Kind, wire_of
from beadwright_site.mathml import equation, line, sub
from beadwright_site.method import E_OPEN, E_SHORT, I_LEAST, I_MOST, Q_MOST, Equation, Symbol

MIL_M = 0.001 * 0.0254


@dataclass(frozen=True, slots=True)
class Table:
    """A table of the page."""

    key: str
    title: str
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    sources: tuple[str, ...]
    words: str = ""


def _number(value: float) -> str:
    return f"{value:.4g}"


def volts_lines() -> Equation:
    """Return the lines volts follow, as ``arc`` has them."""
    argon, quarter, co2 = GASES["98/2 O2"], GASES["75/25"], GASES["CO2"]
    short = arc.short_circuit_volts(0.0, argon)
    per_short = (arc.short_circuit_volts(0.0, quarter) - short) / (100 * quarter.co2)
    some = "0.045in"
    per_open = (arc.open_arc_volts(0.0, quarter, some) - arc.open_arc_volts(0.0, argon, some)) / (
        100 * quarter.co2
    )
    foot = arc.open_arc_volts(0.0, co2, some)
    slope = arc.open_arc_volts(1.0, co2, some) - foot
    feet = ", ".join(f"{size} {line_[0]:g}" for size, line_ in arc.OPEN_LINES.items())
    slopes = ", ".join(f"{size} {line_[1]:g}" for size, line_ in arc.OPEN_LINES.items())
    return Equation(
        "volts",
        "Volts: short circuit, globular, spray",
        (
            equation(E_SHORT, "=", _number(short), "+", _number(per_short), line("· c +"),
                     _number(arc.SHORT_SLOPE_V_A), line("· I")),
            equation(E_OPEN, "=", sub("U", "0"), "+", _number(per_open), line("· c +"),
                     line("k · I")),
            equation(sub("U", "CO2"), "=", _number(foot), "+", _number(slope), line("· I")),
        ),
        (
            Symbol(E_SHORT, f"middle of short circuit; the window is ±{arc.SHORT_HALF_BAND_V:g}",
                   "V"),
            Symbol(E_OPEN, "middle of the open arc in argon mixtures; the window is "
                   f"−{arc.OPEN_BELOW_V:g} to +{arc.OPEN_ABOVE_V:g}", "V"),
            Symbol(sub("U", "0"), f"foot of the line by wire size: {feet}", "V"),
            Symbol("k", f"slope of the line by wire size: {slopes}", "V/A"),
            Symbol(sub("U", "CO2"), "middle of the open arc in CO2", "V"),
            Symbol("c", "carbon dioxide, counted in full to 25 % and less beyond", "%"),
            Symbol("I", "mean current", "A"),
        ),
        "Solid wire 0.030 to 1/16 in. Metal-cored wire runs clean lower and far higher: its window "
        "is wider both ways.",
        "The window. The lines are drawn to hold the published points.",
        ("machinery-31-t5", "power-source-conditions", "equipment-sheet", "e70c-sheet"),
        "Volts are at the arc. The meter on the machine reads the drop of cable and clamp on top.",
    )  # fmt: skip


def plate_limits() -> Equation:
    """Return the limits thin plate sets, as ``heat`` has them."""
    slope = burn_through_current(2 * MIL_M) - burn_through_current(MIL_M)
    foot = burn_through_current(MIL_M) - slope
    thumb, least = thickness_current(MIL_M), fusion_current(MIL_M)
    thin = units.show(THIN_M, "length", "si")
    ceiling = BURN_THROUGH_J_M2 / 1e9
    return Equation(
        "plate",
        "Burning through, and lying on the plate",
        (
            equation(I_MOST, "=", _number(foot), "+", _number(slope), line("· t")),
            equation(I_LEAST, "=", _number(least), line("· t")),
            equation(Q_MOST, "=", _number(ceiling), line("· s")),
        ),
        (
            Symbol(I_MOST, f"current above which plate under {thin} mm falls through", "A"),
            Symbol(I_LEAST, "current below which the bead lies on the plate; t counts to 3/16 in",
                   "A"),
            Symbol(Q_MOST, f"heat input above which plate under {thin} mm falls through", "kJ/mm"),
            Symbol("t", "thickness of the thinner plate", "0.001 in"),
            Symbol("s", "the same thickness", "mm"),
        ),
        f"The thumb rule stands between the two: {thumb:g} A for each 0.001 in, on sheet.",
        "Rules, not laws. Prove them on a coupon.",
        ("power-source-conditions", "power-source-rule", "practice"),
    )  # fmt: skip


def _inside(kind: Kind, size: str, fitted: BurnOff) -> str:
    points = fitted_points(kind, size)
    if not points:
        return "carried over"
    wire = wire_of("ER70S-6" if kind == "solid" else "E70C-6M", size)
    errors = relative_errors(points, wire, fitted.phi_v, fitted.r_ohm_m)
    held = sum(abs(error) <= fitted.band for error in errors)
    return f"{held} of {len(points)}"


def _size(size: str) -> str:
    return f"{size.removesuffix('in')} in, {METRIC_NAMES[size].replace('mm', ' mm')}"


def constants_table() -> Table:
    """Return the fitted constants by wire."""
    rows = tuple(
        (
            f"{kind} {_size(size)}",
            f"{fitted.phi_v:.3f}",
            f"{fitted.r_ohm_m * 1e7:.3f}",
            str(fitted.points),
            f"±{fitted.band:.0%}",
            _inside(kind, size, fitted),
        )
        for (kind, size), fitted in CONSTANTS.items()
    )
    return Table(
        "constants",
        "Burn-off constants, fitted",
        ("wire", "φ, V", "r, 10⁻⁷ Ω·m", "points", "band of the feed", "points inside"),
        rows,
        ("power-balance",),
        "No points were found for the sizes carried over: theirs come from the neighbour, and the "
        "band is wider.",
    )


def transition_table() -> Table:
    """Return currents by size: short circuit, spray, usual top."""

    def amps_of(found: float | None) -> str:
        return "–" if found is None else f"{found:g}"

    def row(size: str) -> tuple[str, ...]:
        spray = " · ".join(f"{amps:g}" for _, amps in TRANSITION_A.get(size, ()))
        low, high = SHORT_RANGE_A.get(size, (None, None))
        return (
            _size(size),
            "–" if low is None else f"{low:g}–{high:g}",
            spray or "–",
            amps_of(OPEN_TOP_A.get(("solid", size))),
            amps_of(CORED_TRANSITION_A.get(size)),
            amps_of(OPEN_TOP_A.get(("metal-cored", size))),
        )

    shares = " · ".join(f"{share * 100:g}" for share, _ in next(iter(TRANSITION_A.values())))
    return Table(
        "transition",
        "Currents by wire size, A",
        (
            "size",
            "short circuit",
            f"spray from, at {shares} % CO2",
            "solid, usual top",
            "metal-cored, spray from",
            "metal-cored, usual top",
        ),
        tuple(map(row, INCH_SIZES_M)),
        ("mig-handbook-1-2", "supplier-transition", "power-source-rule", "equipment-sheet",
         "e70c-sheet"),
        f"Spray starts within ±{TRANSITION_BAND:.0%}. Solid wire does not spray above 20 % CO2, "
        "metal-cored above 25 %.",
    )  # fmt: skip


def efficiency_table() -> Table:
    """Return deposition efficiency by wire and transfer."""
    solid, cored = wire_of("ER70S-6", "0.045in"), wire_of("E70C-6M", "0.045in")

    def rows() -> Iterator[tuple[str, ...]]:
        modes: tuple[Transfer, ...] = ("short", "globular", "spray")
        for mode in modes:
            for gas in ("90/10", "CO2") if mode != "spray" else ("90/10",):
                low, set_, high = deposition_efficiency(solid, GASES[gas], mode)
                name = f"solid, {NAMES[mode].lower()}, {gas}"
                yield name, f"{low:.0%}", f"{set_:.0%}", f"{high:.0%}"
        low, set_, high = deposition_efficiency(cored, GASES["90/10"], "spray")
        yield "metal-cored", f"{low:.0%}", f"{set_:.0%}", f"{high:.0%}"

    return Table(
        "efficiency",
        "Deposition efficiency",
        ("wire, transfer, gas", "low", "counted", "high"),
        tuple(rows()),
        ("lecture-efficiency", "mig-handbook-deposition", "e70c-sheet"),
    )


def legs_table() -> Table:
    """Return the code's least leg by thickness."""
    bounds = [limit for limit, _ in MINIMUM_LEG_M]

    def upto(at: int) -> str:
        if bounds[at] == float("inf"):
            return f"over {units.show(bounds[at - 1], 'leg', 'us')} in"
        return f"to {units.show(bounds[at], 'leg', 'us')} in"

    return Table(
        "legs",
        "Least leg by the thinner plate",
        ("thinner plate", "least leg"),
        tuple(
            (upto(at), f"{units.show(leg, 'leg', 'us')} in, {units.show(leg, 'leg', 'si')} mm")
            for at, (_, leg) in enumerate(MINIMUM_LEG_M)
        ),
        ("aisc-j2.4", "aws-d1.1-7.7"),
        "No more than the thinner plate itself.",
    )


def travel_table() -> Table:
    """Return the travel each mover holds."""

    def written(ends: tuple[float, float], system: units.System) -> str:
        low, high = (units.show(end, "travel", system) for end in ends)
        return f"{low.removesuffix('.0')}–{high.removesuffix('.0')}"

    return Table(
        "travel",
        "Travel held steadily",
        ("torch moved by", "in/min", "mm/min"),
        tuple(
            (f"{mover}, {lie}", written(ends, "us"), written(ends, "si"))
            for (mover, lie), ends in TRAVEL_RANGE_M_S.items()
        ),
        ("practice",),
    )
