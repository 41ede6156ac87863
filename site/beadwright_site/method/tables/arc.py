"""Tables of the arc: fitted constants, stickout, volts held, currents by size, gas by nozzle."""

from __future__ import annotations

from beadwright import units
from beadwright.process.burnoff import CONSTANTS
from beadwright.process.burnoff_fit import share_inside, shown_points
from beadwright.process.gas_flow import NOZZLES
from beadwright.process.tip_to_work import tip_position, tip_to_work
from beadwright.process.transfer import (
    CORED_TRANSITION_A,
    FLUX_CORED_LEAST_A,
    OPEN_TOP_A,
    SHORT_RANGE_A,
    TRANSITION_A,
    Transfer,
)
from beadwright.process.wire_kinds import KINDS, Kind
from beadwright.process.wires import INCH_SIZES_M, WIRE_TYPES, wire_of
from beadwright_site.method.equations import Table
from beadwright_site.method.plots import size_text
from beadwright_site.method.volts_plots import points_inside

_SHORT_OR_OPEN: dict[Transfer, str] = {"short": "short circuit", "spray": "open arc"}


def _inside(kind: Kind, size: str) -> str:
    """How many points stand inside the band; without any, whether both neighbors or one gave."""
    shown = shown_points(kind, size)
    if shown:
        return f"{sum(point.inside for point in shown)} of {len(shown)}"
    sizes = [each for of, each in CONSTANTS if of == kind]
    at = sizes.index(size)
    beside = sizes[max(0, at - 1) : at] + sizes[at + 1 : at + 2]
    between = len(beside) == 2 and all(CONSTANTS[kind, each].points for each in beside)
    return "interpolated" if between else "carried over"


def constants_table() -> Table:
    """Return the fitted constants by wire."""
    rows: list[tuple[str, ...]] = []
    for (kind, size), fitted in CONSTANTS.items():
        rows.append(
            (
                f"{kind} {size_text(size)}",
                f"{fitted.phi_v:.3f}",
                f"{fitted.r_ohm_m * 1e7:.3f}",
                str(fitted.points),
                f"±{fitted.band:.0%}",
                _inside(kind, size),
            )
        )
    held = [share_inside(kind, size) for kind, size in CONSTANTS]
    least = min(share for share in held if share is not None)
    return Table(
        "constants",
        "Burn-off constants, fitted",
        ("wire", "φ, V", "r, 10⁻⁷ Ω·m", "points", "band of the feed", "points inside"),
        tuple(rows),
        ("power-balance",),
        "φ and r are those of least squares of the relative error of the feed. "
        "No points were found for the sizes interpolated or carried over: theirs come from both "
        "neighbors or from one, and the band is wider. "
        f"At worst {least:.0%} of a wire's points stand inside its band.",
        (
            "burnoff.CONSTANTS",
            "burnoff.constants_of",
            "burnoff_fit.fit",
            "burnoff_fit.fitted_points",
            "burnoff_fit.extension_m",
            "burnoff_fit.relative_errors",
            "burnoff_fit.shown_points",
            "burnoff_fit.share_inside",
        ),
    )


def tip_table() -> Table:
    """Return contact stickout by wire and mode, and where the tip stands in the nozzle."""
    rows: list[tuple[str, ...]] = []
    for kind in KINDS:
        modes: tuple[Transfer, ...] = ("short", "spray") if KINDS[kind].shorts else ("spray",)
        for mode in modes:
            for size in WIRE_TYPES[KINDS[kind].representative].sizes:
                ends = tip_to_work(wire_of(KINDS[kind].representative, size), mode)
                written = (units.show(end, "tip_to_work", "us") for end in ends)
                rows.append((f"{kind} {size.removesuffix('in')}, {_SHORT_OR_OPEN[mode]}", *written))
    return Table(
        "stickout (tip to work)",
        "Contact stickout (tip to work), in",
        ("wire, arc", "least", "usual", "most"),
        tuple(rows),
        ("power-source-conditions", "e70c-sheet", "fcaw-ranges", "torch-manual", "practice"),
        f"In short circuit the tip stands {tip_position('short')}, else {tip_position('spray')}.",
        ("tip_to_work.tip_to_work", "tip_to_work.tip_position"),
    )


def volts_table() -> Table:
    """Return how many printed settings stand inside the windows, by wire and gas."""
    counted = points_inside()
    return Table(
        "volts-inside",
        "Printed settings inside the volts window",
        ("wire", "gas", "points inside"),
        tuple((f"{kind} {size_text(size)}", gas, f"{held} of {count}")
              for kind, size, gas, held, count in counted),
        ("machinery-31-t5", "power-source-conditions", "procedure-guide", "trade-schedule",
         "technician-points", "e70c-sheet", "fcaw-ranges"),
        f"In all {sum(held for *_, held, _ in counted)} of {sum(count for *_, count in counted)}. "
        "Two settings of old schedules for 1/16 in in CO2 lie below our window.",
    )  # fmt: skip


def transition_table() -> Table:
    """Return currents by size: short circuit, spray, usual top."""

    def amps(found: float | None) -> str:
        return "–" if found is None else f"{found:g}"

    def cells(size: str) -> tuple[str, ...]:
        spray = " · ".join(f"{each:g}" for _, each in TRANSITION_A.get(size, ()))
        low, high = SHORT_RANGE_A.get(size, (None, None))
        return (
            size_text(size),
            "–" if low is None else f"{low:g}–{high:g}",
            spray or "–",
            amps(OPEN_TOP_A.get(("solid", size))),
            amps(CORED_TRANSITION_A.get(size)),
            amps(OPEN_TOP_A.get(("metal-cored", size))),
            amps(FLUX_CORED_LEAST_A.get(size)),
            amps(OPEN_TOP_A.get(("flux-cored", size))),
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
            "flux-cored, from",
            "flux-cored, usual top",
        ),
        tuple(map(cells, INCH_SIZES_M)),
        ("mig-handbook-1-2", "supplier-transition", "power-source-rule", "equipment-sheet",
         "e70c-sheet"),
        "",
        ("transfer.TRANSITION_A", "transfer.CORED_TRANSITION_A", "transfer.FLUX_CORED_LEAST_A",
         "transfer.SHORT_RANGE_A", "transfer.OPEN_TOP_A"),
    )  # fmt: skip


def nozzle_table() -> Table:
    """Return gas flow by nozzle."""
    flow = 3600 / 0.3048**3

    def cells(name: str) -> tuple[str, ...]:
        held = NOZZLES[name]
        flows = tuple(f"{q * flow:.0f}" for q in (held.least, held.usual, held.most))
        return (held.name, *flows, "any" if held.top_a > 1e4 else f"{held.top_a:g}")

    return Table(
        "nozzles",
        "Gas flow by nozzle bore, ft³/h",
        ("bore", "least", "usual", "most", "usual to, A"),
        tuple(map(cells, NOZZLES)),
        ("gas-flow-nozzle", "practice"),
    )
