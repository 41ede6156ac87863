"""The method of the arc as data: burn-off, extension, volts, least spray current, gas flow."""

from __future__ import annotations

from beadwright import units
from beadwright.process import arc, transfer
from beadwright.process.burnoff import CONSTANTS
from beadwright.process.burnoff_fit import share_inside, shown_points
from beadwright.process.gas_flow import NOZZLES, OUT_OF_POSITION_FT3_H
from beadwright.process.gases import GASES
from beadwright.process.materials import CARBON_STEEL
from beadwright.process.operating import LEAST_EXTENSION_M
from beadwright.process.tip_to_work import tip_position, tip_to_work
from beadwright.process.transfer import (
    CORED_TRANSITION_A,
    FLUX_CORED_LEAST_A,
    OPEN_TOP_A,
    SHORT_RANGE_A,
    TRANSITION_A,
    TRANSITION_BAND,
    Transfer,
)
from beadwright.process.wire_kinds import KINDS, Kind
from beadwright.process.wire_remarks import LEAD_DROP_V, SHEET_VOLTS, SHOP_VOLTS
from beadwright.process.wires import INCH_SIZES_M, WIRE_TYPES, wire_of
from beadwright_site.method.equations import Equation, Section, Symbol, Table, number
from beadwright_site.method.mathml import equation, line, over, power, root, row, sub
from beadwright_site.method.plots import burn_off_plots, size_text, transition_plot
from beadwright_site.method.volts_plots import points_inside, volts_plots

A_C = sub("A", "c")
E_SHORT, E_OPEN, E_FLUX, E_CO2 = (sub("U", name) for name in ("short", "open", "flux", "CO2"))
U_0, I_SPRAY, I_TABLE = sub("U", "0"), sub("I", "spray"), sub("I", "table")
Q_0, M_AR, M_GAS = sub("q", "0"), sub("M", "Ar"), sub("M", "gas")

_DROP_MJ_KG = CARBON_STEEL.drop_enthalpy_j_kg / 1e6
_SHORT_OR_OPEN: dict[Transfer, str] = {"short": "short circuit", "spray": "open arc"}

_CURRENT = Symbol("I", "mean current, wire positive", "A")
_VOLTS = Symbol("U", "volts at the arc", "V")
_OXYGEN = Symbol("o", "oxygen over 2 %, counted to 5 % in the gas", "%")
_HELIUM = Symbol("h", "helium", "%")

_BURN_OFF_POINTS = [point for kind, size in CONSTANTS for point in shown_points(kind, size)]
_BURN_OFF_INSIDE = sum(point.inside for point in _BURN_OFF_POINTS)

BURN_OFF = Equation(
    "burn-off",
    "Burn-off: wire feed and current",
    (
        equation(
            line("ρ A · v · H = I · φ +"), over(row(power("I", "2"), "·", line("r · L")), A_C)
        ),
    ),
    (
        Symbol(line("ρ A"), "mass of wire per length", "kg/m"),
        Symbol("v", "wire feed", "m/s"),
        Symbol("H", f"enthalpy of the molten drop, {_DROP_MJ_KG:g}", "MJ/kg"),
        _CURRENT,
        Symbol("φ", "heating voltage at the tip, fitted", "V"),
        Symbol("r", "mean resistivity of the hot wire, fitted", "Ω·m"),
        Symbol("L", "electrode extension: tip to work less arc length", "m"),
        Symbol(A_C, "section that carries the current: all of a solid wire, a cored one's sheath",
               "m²"),
    ),
    "Direct current, wire positive, within the currents of the points fitted.",
    f"By wire, below. {_BURN_OFF_INSIDE} of all {len(_BURN_OFF_POINTS)} points fitted stand "
    "inside; the bands were set from these points, so a new one may stand outside more often.",
    ("power-balance", "machinery-31-t5", "feeder-table-4-3", "power-source-rule",
     "power-source-conditions", "technician-points", "trade-schedule", "procedure-guide",
     "e70c-sheet"),
    "What the wire takes up to melt equals what the arc gives its tip and what the current heats "
    "on the way. Pull the torch back and the same wire draws less current.",
    ("burnoff.feed_from_current", "burnoff.current_from_feed", "burnoff.extension_from_feed",
     "materials.CARBON_STEEL", "operating.at_feed", "operating.feed_at_current"),
)  # fmt: skip

EXTENSION = Equation(
    "extension",
    "Extension: tip to work less arc length",
    (
        equation(line("L = T − a")),
        equation(line("a = 0.004 + 0.00025 · ( U − 26 )")),
    ),
    (
        Symbol("L", f"electrode extension, at least {1000 * LEAST_EXTENSION_M:g} mm", "m"),
        Symbol("T", "contact tip to work", "m"),
        Symbol("a", "arc length, held between 1 and 8 mm", "m"),
        _VOLTS,
    ),
    "4 mm in an open arc and 2 mm in short circuit are what the burn-off was fitted with.",
    "The line between the two is ours.",
    ("power-balance",),
    "",
    ("arc.arc_length_m", "operating.extension", "operating.LEAST_EXTENSION_M"),
)  # fmt: skip


def volts_lines() -> Equation:
    """Return the lines volts follow, as ``arc`` has them."""
    argon, quarter, co2 = GASES["98/2 O2"], GASES["75/25"], GASES["CO2"]
    some = "0.045in"
    short = arc.short_circuit_volts(0.0, argon)
    per_short = (arc.short_circuit_volts(0.0, quarter) - short) / (100 * quarter.co2)
    foot = arc.open_arc_volts(0.0, co2, some)
    slope = arc.open_arc_volts(1.0, co2, some) - foot
    feet = ", ".join(f"{size} {line_[0]:g}" for size, line_ in arc.OPEN_LINES.items())
    slopes = ", ".join(f"{size} {line_[1]:g}" for size, line_ in arc.OPEN_LINES.items())
    flux = ", ".join(f"{size} {a:g} + {b:g} · I" for size, (a, b) in arc.FLUX_LINES.items())
    return Equation(
        "volts",
        "Volts: short circuit, globular, spray",
        (
            equation(E_SHORT, "=", number(short), "+", number(per_short), line("· c +"),
                     number(arc.HELIUM_SHORT_V / 100), line("· h +"),
                     number(arc.SHORT_SLOPE_V_A), line("· I")),
            equation(E_OPEN, "=", U_0, "+", number(arc.CO2_OPEN_V / 100), line("· c +"),
                     number(arc.OXYGEN_OPEN_V / 100), line("· o +"),
                     number(arc.HELIUM_OPEN_V / 100), line("· h + k · I")),
            equation(E_CO2, "=", number(foot), "+", number(slope), line("· I")),
            equation(E_FLUX, "=", line("f − g"), "·", number(arc.FLUX_ARGON_V)),
        ),
        (
            Symbol(E_SHORT, f"middle of short circuit; the window is ±{arc.SHORT_HALF_BAND_V:g}",
                   "V"),
            Symbol(E_OPEN, "middle of the open arc in argon mixtures; the window is "
                   f"−{arc.OPEN_BELOW_V:g} to +{arc.OPEN_ABOVE_V:g}", "V"),
            Symbol(U_0, f"foot of the line by wire size: {feet}", "V"),
            Symbol("k", f"slope of the line by wire size: {slopes}", "V/A"),
            Symbol(E_CO2, "middle of the open arc in CO2; from 25 % CO2 up the two are mixed by "
                   "share", "V"),
            Symbol(E_FLUX, f"middle for flux-cored wire; the window is ±{arc.FLUX_ROOM_V:g}", "V"),
            Symbol("f", f"flux-cored line in CO2 by wire size: {flux}", "V"),
            Symbol("g", "share of gas that is not CO2", "–"),
            Symbol("c", "carbon dioxide; in short circuit counted in full to 25 % and less beyond",
                   "%"),
            Symbol("o", "oxygen over 2 %", "%"),
            _HELIUM,
            _CURRENT,
        ),
        "The sizes given. Metal-cored wire runs clean lower and far higher: its window is wider "
        "both ways.",
        "The window. The lines are drawn to hold the published points; how many they hold stands "
        "below.",
        ("machinery-31-t5", "power-source-conditions", "equipment-sheet", "e70c-sheet",
         "fcaw-ranges"),
        "Volts are at the arc. The meter on the machine reads the drop of cable and clamp on top, "
        f"usually {LEAD_DROP_V[0]:g} to {LEAD_DROP_V[1]:g} V. So a sheet may print "
        f"{SHEET_VOLTS[0]:g} to {SHEET_VOLTS[1]:g} V for 0.045 in metal-cored wire where shops run "
        f"{SHOP_VOLTS:g}: both stand inside its window.",
        ("arc.short_circuit_volts", "arc.open_arc_volts", "arc.flux_cored_volts",
         "arc.short_window", "arc.open_window", "operating.volts_window",
         "arc.SHORT_HALF_BAND_V", "arc.SHORT_SLOPE_V_A", "arc.SPRAY_SLOPE_V_A",
         "arc.OPEN_BELOW_V", "arc.OPEN_ABOVE_V", "arc.HELIUM_OPEN_V", "arc.HELIUM_SHORT_V",
         "arc.CO2_OPEN_V", "arc.OXYGEN_OPEN_V", "arc.FLUX_ROOM_V", "arc.FLUX_ARGON_V",
         "arc.FLUX_LINES", "arc.OPEN_LINES", "wire_remarks.LEAD_DROP_V",
         "wire_remarks.SHEET_VOLTS", "wire_remarks.SHOP_VOLTS", "wire_remarks.volts_remark"),
    )  # fmt: skip


def least_spray() -> Equation:
    """Return the least spray current, as ``transfer`` has it."""
    return Equation(
        "spray",
        "Least spray current",
        (
            equation(I_SPRAY, "=", I_TABLE, "·", "(", line("1 −"),
                     number(transfer.OXYGEN_STEP / 100), line("· o ) · ( 1 +"),
                     number(transfer.HELIUM_STEP / 100), line("· h )")),
        ),
        (
            Symbol(I_SPRAY, "current from which the drops spray", "A"),
            Symbol(I_TABLE, "the table's, straight between its CO2 columns; metal-cored and "
                   "flux-cored wire have one figure by size and no oxygen term", "A"),
            _OXYGEN,
            _HELIUM,
        ),
        f"Solid wire to {transfer.SOLID_SPRAY_CO2_LIMIT:.0%} CO2, metal-cored to "
        f"{transfer.CORED_SPRAY_CO2_LIMIT:.0%}, oxygen counted as "
        f"{transfer.OXYGEN_AS_CO2:g} of CO2; helium to {transfer.HELIUM_SPRAY_LIMIT:.0%}; at least "
        f"{transfer.LEAST_ACTIVE:.1%} CO2 or oxygen on steel. Beyond, spray is refused.",
        f"±{TRANSITION_BAND:.0%}.",
        ("mig-handbook-1-2", "supplier-transition", "e70c-sheet", "practice"),
        "",
        ("transfer.transition_current", "transfer.oxidizing_share", "transfer.spray_refused",
         "transfer.transfer_at", "transfer.edges", "transfer.globular_current",
         "transfer.TRANSITION_BAND", "transfer.SOLID_SPRAY_CO2_LIMIT",
         "transfer.CORED_SPRAY_CO2_LIMIT", "transfer.OXYGEN_STEP", "transfer.OXYGEN_MOST",
         "transfer.HELIUM_STEP", "transfer.OXYGEN_AS_CO2", "transfer.HELIUM_SPRAY_LIMIT",
         "transfer.LEAST_ACTIVE"),
    )  # fmt: skip


GAS_FLOW = Equation(
    "gas-flow",
    "Gas flow",
    (equation("q", "=", Q_0, "·", root(over(M_AR, M_GAS))),),
    (
        Symbol("q", "flow to run", "m³/s"),
        Symbol(Q_0, "flow of argon mixes and CO2 by nozzle, below; out of position "
               f"{OUT_OF_POSITION_FT3_H:g} ft³/h more", "m³/s"),
        Symbol(M_AR, "molar mass of argon", "kg/mol"),
        Symbol(M_GAS, "molar mass of a gas with helium in it; without helium the root is 1",
               "kg/mol"),
    ),
    "Still air. Wind takes it away at any flow.",
    "The nozzle's least and most, times the root.",
    ("gas-flow-nozzle", "gas-flow-handbook", "gas-flow-textbook", "gas-density",
     "gas-flow-helium"),
    "Equal push on the air: density times speed squared.",
    ("gas_flow.gas_flow", "gas_flow.lightness", "gas_flow.usual_nozzle", "gas_flow.NOZZLES",
     "gas_flow.OUT_OF_POSITION_FT3_H"),
)  # fmt: skip


def _inside(kind: Kind, size: str) -> str:
    """How many points stand inside the band; without any, whether both neighbours or one gave."""
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
        "neighbours or from one, and the band is wider. "
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
            "burnoff_fit.fitted_range_a",
        ),
    )


def tip_table() -> Table:
    """Return contact tip to work by wire and mode, and where the tip stands in the nozzle."""
    rows: list[tuple[str, ...]] = []
    for kind in KINDS:
        modes: tuple[Transfer, ...] = ("short", "spray") if KINDS[kind].shorts else ("spray",)
        for mode in modes:
            for size in WIRE_TYPES[KINDS[kind].representative].sizes:
                ends = tip_to_work(wire_of(KINDS[kind].representative, size), mode)
                written = (units.show(end, "tip_to_work", "us") for end in ends)
                rows.append((f"{kind} {size.removesuffix('in')}, {_SHORT_OR_OPEN[mode]}", *written))
    return Table(
        "tip-to-work",
        "Contact tip to work, in",
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
        "Two settings of old schedules for 1/16 in in CO2 stand under ours.",
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


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return (
        Section(BURN_OFF, (constants_table(),), burn_off_plots()),
        Section(EXTENSION, (tip_table(),)),
        Section(volts_lines(), (volts_table(),), volts_plots()),
        Section(least_spray(), (transition_table(),), (transition_plot(),)),
        Section(GAS_FLOW, (nozzle_table(),)),
    )
