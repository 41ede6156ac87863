"""The method of the arc as data: burn-off, extension, volts, least spray current, gas flow."""

from __future__ import annotations

from beadwright.process import arc, transfer
from beadwright.process.burnoff import CONSTANTS
from beadwright.process.burnoff_fit import shown_points
from beadwright.process.gas_flow import MOST_USUAL_FT3_H, OUT_OF_POSITION_FT3_H
from beadwright.process.gases import GASES
from beadwright.process.materials import CARBON_STEEL
from beadwright.process.operating import LEAST_EXTENSION_M
from beadwright.process.transfer import (
    TRANSITION_BAND,
)
from beadwright.process.wire_remarks import SHEET_VOLTS
from beadwright_site.method.equations import Equation, Section, Symbol, number
from beadwright_site.method.mathml import equation, line, over, power, root, row, sub
from beadwright_site.method.plots import burn_off_plots, transition_plot
from beadwright_site.method.tables.arc import (
    constants_table,
    nozzle_table,
    tip_table,
    transition_table,
    volts_table,
)
from beadwright_site.method.volts_plots import volts_plots

A_C = sub("A", "c")
E_SHORT, E_OPEN, E_FLUX, E_CO2 = (sub("U", name) for name in ("short", "open", "flux", "CO2"))
U_0, I_SPRAY, I_TABLE = sub("U", "0"), sub("I", "spray"), sub("I", "table")
Q_0, M_AR, M_GAS = sub("q", "0"), sub("M", "Ar"), sub("M", "gas")

_DROP_MJ_KG = CARBON_STEEL.drop_enthalpy_j_kg / 1e6
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
        Symbol("L", "electrode extension: stickout (tip to work) less arc length", "m"),
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
    "on the way. Pull the gun back and the same wire draws less current.",
    ("burnoff.feed_from_current", "burnoff.current_from_feed", "burnoff.extension_from_feed",
     "materials.CARBON_STEEL", "operating.at_feed", "operating.feed_at_current"),
)  # fmt: skip

EXTENSION = Equation(
    "extension",
    "Extension: stickout (tip to work) less arc length",
    (
        equation(line("L = T − a")),
        equation(line("a = 0.004 + 0.00025 · ( U − 26 )")),
    ),
    (
        Symbol("L", f"electrode extension, at least {1000 * LEAST_EXTENSION_M:g} mm", "m"),
        Symbol("T", "contact stickout (tip to work)", "m"),
        Symbol("a", "arc length, held between 1 and 8 mm", "m"),
        _VOLTS,
    ),
    "4 mm in an open arc and 2 mm in short circuit are what the burn-off was fitted with.",
    "The line between the two is set here.",
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
            Symbol(U_0, f"volts of the line at no current, by wire size: {feet}", "V"),
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
        "The sizes given. Metal-cored wire runs cleanly well below and above these lines: its "
        "window is wider both ways.",
        "The window. The lines are drawn to hold the published points; how many they hold stands "
        "below.",
        ("machinery-31-t5", "power-source-conditions", "equipment-sheet", "e70c-sheet",
         "fcaw-ranges"),
        "Volts are at the arc. The meter on the machine reads the drop of cable and clamp on top, "
        f"usually 1 to 3 V. A sheet prints {SHEET_VOLTS[0]:g} to {SHEET_VOLTS[1]:g} V for 0.045 in "
        "metal-cored wire at 250 in/min; shops run it a volt or two under solid wire: both stand "
        "inside its window.",
        ("arc.short_circuit_volts", "arc.open_arc_volts", "arc.flux_cored_volts",
         "arc.short_window", "arc.open_window", "operating.volts_window",
         "arc.SHORT_HALF_BAND_V", "arc.SHORT_SLOPE_V_A", "arc.SPRAY_SLOPE_V_A",
         "arc.OPEN_BELOW_V", "arc.OPEN_ABOVE_V", "arc.HELIUM_OPEN_V", "arc.HELIUM_SHORT_V",
         "arc.CO2_OPEN_V", "arc.OXYGEN_OPEN_V", "arc.FLUX_ROOM_V", "arc.FLUX_ARGON_V",
         "arc.FLUX_LINES", "arc.OPEN_LINES", "arc.CORED_UNDER_V", "arc.carbonic_rise",
         "wire_remarks.SHEET_VOLTS", "wire_remarks.volts_remark"),
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
            Symbol(I_TABLE, "the table's, in straight lines between its CO2 columns; metal-cored "
                   "and flux-cored wire have one figure by size and no oxygen term", "A"),
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
         "transfer_regions.transfer_at", "transfer_regions.edges",
         "transfer_regions.globular_current", "transfer.TRANSITION_BAND",
         "transfer.SOLID_SPRAY_CO2_LIMIT", "transfer.CORED_SPRAY_CO2_LIMIT", "transfer.OXYGEN_STEP",
         "transfer.OXYGEN_MOST", "transfer.HELIUM_STEP", "transfer.OXYGEN_AS_CO2",
         "transfer.HELIUM_SPRAY_LIMIT", "transfer.LEAST_ACTIVE"),
    )  # fmt: skip


GAS_FLOW = Equation(
    "gas-flow",
    "Gas flow",
    (equation("q", "=", Q_0, "·", root(over(M_AR, M_GAS))),),
    (
        Symbol("q", "flow to run", "m³/s"),
        Symbol(Q_0, "flow of argon mixes and CO2 by nozzle, below; out of position "
               f"{OUT_OF_POSITION_FT3_H:g} ft³/h more, to {MOST_USUAL_FT3_H:g}", "m³/s"),
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
     "gas_flow.OUT_OF_POSITION_FT3_H", "gas_flow.MOST_USUAL_FT3_H"),
)  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return (
        Section(BURN_OFF, (constants_table(),), burn_off_plots()),
        Section(EXTENSION, (tip_table(),)),
        Section(volts_lines(), (volts_table(),), volts_plots()),
        Section(least_spray(), (transition_table(),), (transition_plot(),)),
        Section(GAS_FLOW, (nozzle_table(),)),
    )
