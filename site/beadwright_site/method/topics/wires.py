"""The method of the wires as data: what they are, what each is run at, two of them side by side."""

from __future__ import annotations

from collections.abc import Iterator

from beadwright.measures import INCH_M
from beadwright.process.comparison import (
    Comparison,
    at_equal_current,
    at_equal_feed,
    at_equal_heat,
    laid_at_current,
    usual_way,
)
from beadwright.process.gases import GASES
from beadwright.process.transfer import Transfer
from beadwright.process.wire_kinds import KINDS, Kind
from beadwright.process.wire_ranges import PULSE_FROM, usual_feed, usual_volts
from beadwright.process.wires import CORED_MASS_RATIO, METRIC_NAMES, WIRE_TYPES, wire_of
from beadwright_site.method.equations import Equation, Section, Symbol, Table
from beadwright_site.method.mathml import equation, line, over, sub

_CURRENTS_A = (200.0, 250.0, 300.0, 340.0)
_COMPARED_SIZE = "0.045in"
_COMPARED_GAS = "90/10"
_MODES: dict[Kind, tuple[Transfer, ...]] = {
    "solid": ("short", "spray"),
    "metal-cored": ("short", "spray"),
    "flux-cored": ("spray",),
}
_GAS: dict[Kind, str] = {"solid": "80/20", "metal-cored": "90/10", "flux-cored": "CO2"}
_R, _D1, _D2 = "R", sub("D", "1"), sub("D", "2")
_P1, _P2 = line("U₁ · I₁"), line("U₂ · I₂")

RATIO = Equation(
    "compared",
    "Two wires side by side",
    (
        equation(_R, "=", over(_D2, _D1)),
        equation(_P1, "=", _P2),
        equation(over(sub("Q", "2"), sub("Q", "1")), "=", over("1", _R)),
    ),
    (
        Symbol(_R, "laid by the second wire over laid by the first", "–"),
        Symbol(_D1, "deposition rate of the first wire, at one current, one feed or one arc power",
               "kg/s"),
        Symbol(_D2, "deposition rate of the second", "kg/s"),
        Symbol(_P1, "arc power of the first; the second line holds at equal heat", "W"),
        Symbol(_P2, "arc power of the second", "W"),
        Symbol(sub("Q", "1"), "heat input of a bead laid with the first", "J/m"),
        Symbol(sub("Q", "2"), "heat input of the same bead laid with the second, at equal power",
               "J/m"),
    ),
    "Spray, each wire at its usual stickout (tip to work) and on its own volts.",
    "Both wires' bands of burn-off and of deposition efficiency, added by their squares; at equal "
    "feed the efficiencies' alone.",
    ("power-balance", "e70c-sheet", "practice"),
    "Shops say metal-cored wire lays 30 % more in the same work. At equal current the printed "
    "points give less in the middle, and hold 30 % at the top of the band; at equal feed it lays "
    "less, because it weighs less. Run at lower volts and a faster feed it comes nearer.",
    ("comparison.at_equal_current", "comparison.at_equal_feed", "comparison.at_equal_heat",
     "comparison.laid_at_current", "comparison.laid_at_feed", "wire_remarks.lays_remark"),
)  # fmt: skip


def _ratio(found: Comparison) -> str:
    return f"{found.ratio:.2f} ({found.low:.2f}–{found.high:.2f})"


def compared_table() -> Table:
    """Return metal-cored over solid wire, at several currents of the solid."""
    gas = GASES[_COMPARED_GAS]
    solid, cored = (
        usual_way(wire_of(KINDS[kind].representative, _COMPARED_SIZE), gas)
        for kind in ("solid", "metal-cored")
    )

    def row(amps: float) -> tuple[str, ...]:
        feed = laid_at_current(solid, amps).feed_m_s
        by_all = (
            at_equal_current(solid, cored, amps),
            at_equal_feed(solid, cored, feed),
            at_equal_heat(solid, cored, amps),
        )
        return f"{amps:g}", *map(_ratio, by_all)

    return Table(
        "compared-table",
        f"Metal-cored over solid, {_COMPARED_SIZE.removesuffix('in')} in, {_COMPARED_GAS}",
        ("solid, A", "equal amps", "equal feed", "equal heat"),
        tuple(map(row, _CURRENTS_A)),
        ("power-balance", "e70c-sheet"),
        "At the current of the solid wire; in brackets the band.",
        ("comparison.usual_way",),
    )


def types_table() -> Table:
    """Return the classifications."""

    def sizes(made: tuple[str, ...]) -> str:
        first, last = made[0].removesuffix("in"), made[-1].removesuffix("in")
        return f"{first}–{last}"

    return Table(
        "wire-types",
        "The wires",
        ("class", "kind", "made, in", "MPa", "gas", "ISO"),
        tuple(
            (t.name, t.kind, sizes(t.sizes), f"{t.tensile_pa / 1e6:.0f}", t.gases.label, t.iso)
            for t in WIRE_TYPES.values()
        ),
        ("aws-wires", "aws-a5.20", "practice"),
        "Every size between; flux-cored not in 0.040. MPa: least strength of the weld metal. "
        "ISO names are of the nearest common type, not an equivalence.",
        ("wire_types.WIRE_TYPES", "wire_kinds.KINDS"),
    )


def mass_table() -> Table:
    """Return how much lighter cored wire is, and how much of it carries the current."""

    def rows() -> Iterator[tuple[str, ...]]:
        for (kind, size), ratio in CORED_MASS_RATIO.items():
            wire = wire_of(KINDS[kind].representative, size)
            carries = ratio * (1 - wire.type.fill_share)
            name = f"{kind} {size.removesuffix('in')} in, {METRIC_NAMES[size].replace('mm', ' mm')}"
            yield (name, f"{wire.linear_mass_kg_m * 1000:.2f}", f"{ratio:.3f}", f"{carries:.2f}",
                   "sheet" if wire.published else "not in print")  # fmt: skip

    return Table(
        "cored-mass",
        "Cored wire against solid of its size",
        ("wire", "g/m", "mass over solid", "section that carries, share", "mass from"),
        tuple(rows()),
        ("e70c-sheet", "fcaw-deposition", "practice"),
        "The sheath carries the current; the core's powder does not. Not in print: carried over, "
        "interpolated or not checked.",
        ("wires.CORED_MASS_RATIO",),
    )


def ranges_table() -> Table:
    """Return the usual feed and volts of each kind and size."""

    def rows() -> Iterator[tuple[str, ...]]:
        for kind, modes in _MODES.items():
            gas = GASES[_GAS[kind]]
            for size in WIRE_TYPES[KINDS[kind].representative].sizes:
                wire = wire_of(KINDS[kind].representative, size)
                for mode in modes:
                    feeds = [feed / INCH_M * 60 for feed in usual_feed(wire, gas, mode)]
                    volts = usual_volts(wire, gas, mode)
                    assert volts is not None  # only pulse has none
                    yield (
                        f"{kind} {size.removesuffix('in')}, {mode}",
                        f"{round(feeds[0], -1):.0f}–{round(feeds[1], -1):.0f}",
                        f"{volts[0]:.0f}–{volts[1]:.0f}",
                        gas.name,
                    )

    return Table(
        "usual-ranges",
        "Usual ranges",
        ("wire, transfer", "in/min", "V", "gas"),
        tuple(rows()),
        ("power-balance", "power-source-rule", "fcaw-ranges", "e70c-sheet"),
        "From the usual currents through the burn-off at the usual stickout; volts at the ends. "
        f"Pulse goes down to {PULSE_FROM:.0%} of the current spray starts at. A set point outside "
        "is told, not forbidden. A wire runs in every position its transfer is not refused in.",
        ("wire_ranges.usual_current", "wire_ranges.usual_feed", "wire_ranges.usual_volts",
         "wire_ranges.PULSE_FROM", "wire_ranges.usual_positions", "usual_range.range_sources",
         "usual_range.usual_notes"),
    )  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return (Section(RATIO, (compared_table(), types_table(), mass_table(), ranges_table())),)
