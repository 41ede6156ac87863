"""The method of preheat, cooling and hardness as data, with the steels behind it."""

from __future__ import annotations

from beadwright.heating.cooling_curve import FROM_K, SLOW_M_S, USUAL_TRAVEL_M_S
from beadwright.heating.haz_hardness import MOST_HV, SCATTER_HV, TIME_RANGE_S
from beadwright.heating.preheat import (
    CET_RANGE,
    HEAT_RANGE_J_M,
    HYDROGEN,
    HYDROGEN_RANGE,
    THICKNESS_RANGE_M,
)
from beadwright.heating.steels import ELEMENTS, SYMBOLS
from beadwright.temperatures import to_celsius
from beadwright_site.method.equations import Equation, Section, Symbol
from beadwright_site.method.mathml import equation, line, over, power, row, sub
from beadwright_site.method.tables.preheat import (
    factors_table,
    least_table,
    method_a_table,
    ranges_table,
    steels_table,
)

P_CM, T_P, T_0 = sub("P", "cm"), sub("T", "p"), sub("T", "0")
T_85, F_2, F_3 = sub("t", "8/5"), sub("F", "2"), sub("F", "3")
C_B, H_M, H_B, H_X = sub("C", "B"), sub("H", "m"), sub("H", "b"), sub("H", "x")
K_0 = sub("K", "0")

_ELEMENTS = Symbol("C", "carbon; Mn, Si, Cr and so on likewise, by mass", "%")
_REST = tuple(Symbol(SYMBOLS[key], SYMBOLS[key], "%") for key in ELEMENTS if key not in ("c", "nb"))
_HEAT = Symbol("Q", "heat input as EN counts it, 0.8 of volts × amps over travel", "kJ/mm")
_START = Symbol(T_0, "temperature the plate is welded at", "°C")
_TIME = Symbol(T_85, "time from 800 to 500 °C", "s")

CARBON = Equation(
    "carbon-equivalents",
    "Carbon equivalents",
    (
        equation("CE", "=", "C", "+", over("Mn", "6"), "+", over(line("Cr + Mo + V"), "5"), "+",
                 over(line("Ni + Cu"), "15")),
        equation("CET", "=", "C", "+", over(line("Mn + Mo"), "10"), "+",
                 over(line("Cr + Cu"), "20"), "+", over("Ni", "40")),
        equation(P_CM, "=", "C", "+", over("Si", "30"), "+", over(line("Mn + Cu + Cr"), "20"), "+",
                 over("Ni", "60"), "+", over("Mo", "15"), "+", over("V", "10"), "+", line("5 · B")),
    ),
    (
        Symbol("CE", "carbon equivalent of the International Institute of Welding", "%"),
        Symbol("CET", "carbon equivalent of EN 1011-2 method B", "%"),
        Symbol(P_CM, "cracking parameter of Ito and Bessyo, for low carbon", "%"),
        _ELEMENTS,
        *_REST,
    ),
    "Each for its own steels, in the table; what is outside is refused by element. CE of a steel "
    "with more carbon is shown all the same, with a caution: standards cap it there too.",
    "As good as the analysis. A usual melt is no certificate.",
    ("iiw-ce", "en-1011-2-a", "en-1011-2-b", "ito-bessyo"),
    "The worst a grade allows has every element at its limit. Where the grade caps CE too, no melt "
    "has them all: then those are filled first that count most by the formula for what they use of "
    "the cap. A certificate with more C, Mn or CE than its grade allows, or without a cap on CE "
    "more of an alloy it limits, is not of the grade, and the prequalified table is not read for "
    "it. Mn may rise by 0.06 % for each 0.01 % of C under its most, as the ASTM grades print.",
    ("carbon_equivalent.FORMULAS", "carbon_equivalent.equivalent",
     "carbon_equivalent.outside", "carbon_equivalent.worst_melt", "welded_steel.chosen_steel",
     "welded_steel.PRINTED", "welded_steel.ALLOYS", "steels.MN_PER_C"),
)  # fmt: skip


def method_b() -> Equation:
    """Return method B with its ranges."""
    low, high = HEAT_RANGE_J_M
    thin, thick = THICKNESS_RANGE_M
    return Equation(
        "preheat-b",
        "Preheat, EN 1011-2 method B",
        (
            equation(T_P, "=", line("697 · CET + 160 · tanh"), over("d", "35"), "+", "62", "·",
                     power("HD", "0.35")),
            equation("+", line("( 53 · CET − 32 ) · Q − 328")),
        ),
        (
            Symbol(T_P, "least preheat and interpass temperature", "°C"),
            Symbol("CET", "carbon equivalent", "%"),
            Symbol("tanh", "hyperbolic tangent", "–"),
            Symbol("d", "thickness of the thickest part, not the sum of the parts", "mm"),
            Symbol("HD", f"diffusible hydrogen; solid wire {HYDROGEN['solid']:g}, cored "
                   f"{HYDROGEN['metal-cored']:g} where none is written", "ml/100 g"),
            _HEAT,
        ),
        f"CET {CET_RANGE[0]:g} to {CET_RANGE[1]:g} %, {thin * 1e3:g} to {thick * 1e3:g} mm, HD "
        f"{HYDROGEN_RANGE[0]:g} to {HYDROGEN_RANGE[1]:g}, Q {low / 1e6:g} to {high / 1e6:g}, yield "
        "to 1000 MPa. Leaner, thinner or hotter is counted as the end of the range, which asks no "
        "less, and the page says so.",
        "None is printed. It was fitted to crack tests under restraint.",
        ("en-1011-2-b", "hydrogen-scales"),
        "One code rules, as chosen. Where none is, AWS D1.1 rules steels its prequalified table "
        "lists, EN 1011-2 method B the others; which rules is for the contract to say. The others "
        "stand beside it, and one that asks more is told. What method B asks is rounded up to 10 "
        "°F or 5 °C, as crayons are sold.",
        ("preheat.method_b", "preheat.preheat_b", "preheat.HYDROGEN",
         "preheat.combined_thickness", "preheat.CET_RANGE", "preheat.HEAT_RANGE_J_M",
         "preheat.HYDROGEN_RANGE", "preheat.THICKNESS_RANGE_M", "preheat.SHOP_K",
         "preheat_needed.preheat_needed", "temperatures.rounded_up"),
    )  # fmt: skip


COOLING = Equation(
    "cooling-time",
    "Cooling time",
    (
        equation(T_85, "=", row("(", line("6700 − 5 ·"), T_0, ")"), line("· Q · ("),
                 over("1", row("500", "−", T_0)), "−", over("1", row("800", "−", T_0)),
                 line(") ·"), F_3),
        equation(T_85, "=", row("(", line("4300 − 4.3 ·"), T_0, ")"), "·", power("10", "5"), "·",
                 over(power("Q", "2"), power("d", "2")), line("· ("),
                 over("1", power(row("(", "500", "−", T_0, ")"), "2")), "−",
                 over("1", power(row("(", "800", "−", T_0, ")"), "2")), line(") ·"), F_2),
    ),
    (
        _TIME,
        _START,
        _HEAT,
        Symbol("d", "thickness; the mean of both parts", "mm"),
        Symbol(F_3, "shape factor of thick plate", "–"),
        Symbol(F_2, "shape factor of thin plate", "–"),
    ),
    "Thick plate first, thin second; the larger time rules, for they cross at the transition.",
    "The band of the heat, the span of the shape factor, the thicker against the thinner part.",
    ("en-1011-2-d", "en-1011-2-d1"),
    "",
    ("cooling.thick_time", "cooling.thin_time", "cooling.transition_thickness",
     "cooling.cooling", "cooling.HOT_C", "cooling.COOL_C"),
)  # fmt: skip


FIELD = Equation(
    "temperature-field",
    "Temperature behind the arc",
    (
        equation("T", "=", T_0, "+", over("q", line("2 · π · λ · R")), "·",
                 power("e", row("−", over(line("v · ( R − b )"), line("2 · a"))))),
        equation("T", "=", T_0, "+", over("q", line("2 · π · λ · d")), "·",
                 power("e", over(line("v · b"), line("2 · a"))), "·", K_0, "(",
                 over(line("v · R"), line("2 · a")), ")"),
    ),
    (
        Symbol("T", "temperature on the plate", "°C"),
        _START,
        Symbol("q", "power into the plate, times F3, or the root of F2", "W"),
        Symbol("λ", "conductivity the cooling time implies", "W/(m·K)"),
        Symbol("a", "diffusivity the cooling time implies", "m²/s"),
        Symbol("R", "distance from the arc", "m"),
        Symbol("b", "distance behind the arc, along the weld", "m"),
        Symbol("v", "travel", "m/s"),
        Symbol("d", "thickness", "m"),
        Symbol(K_0, "Bessel function, second kind, order zero", "–"),
        Symbol("e", "2.71828", "–"),
        Symbol("π", "3.14159", "–"),
    ),
    "Thick plate first, thin second. Far enough from the pool; drawn for the middle of the weld, "
    f"from {to_celsius(FROM_K):.0f} °C down.",
    "Checked against a sum over all heat given before, without this formula: within 0.5 % thick, "
    "2 % thin.",
    ("rosenthal", "en-1011-2-d"),
    "λ and a take in the heat given off as the structure of the steel changes; they are no "
    "handbook values. Travel that is not known is counted as "
    f"{1000 * USUAL_TRAVEL_M_S:g} mm/s, any other as no slower than {1000 * SLOW_M_S:g}.",
    ("thermal_field.thick_temperature", "thermal_field.thin_temperature",
     "thermal_field.implied_metal", "thermal_field.scaled_k0", "cooling_curve.cooling_curves",
     "cooling_curve.FROM_K", "cooling_curve.SLOW_M_S", "cooling_curve.USUAL_TRAVEL_M_S"),
)  # fmt: skip


def hardness() -> Equation:
    """Return the hardness beside the bead with its range."""
    low, high = TIME_RANGE_S
    return Equation(
        "hardness",
        "Peak HAZ hardness",
        (
            equation(C_B, "=", "C", "+", over("Si", "11"), "+", over("Mn", "8"), "+",
                     over("Cu", "9"), "+", over("Cr", "5"), "+", over("Ni", "17"), "+",
                     over("Mo", "6"), "+", over("V", "3")),
            equation(H_M, "=", line("802 · C + 305"), ",", H_B, "=", "350", "·", C_B, "+", "101"),
            equation(H_X, "=", line("2019 · ( C · ( 1 − 0.5 · log"), T_85, line(") + 0.3 · ("), C_B,
                     line("− C ) ) + 66 · ( 1 − 0.8 · log"), T_85, ")"),
        ),
        (
            Symbol(C_B, "carbon equivalent of bainite", "%"),
            _ELEMENTS,
            *_REST,
            Symbol(H_M, "all martensite", "HV"),
            Symbol(H_B, "no martensite", "HV"),
            Symbol(H_X, "a mixture: the one taken, but never outside the other two", "HV"),
            Symbol("log", "logarithm to ten", "–"),
            _TIME,
        ),
        f"Single beads on plate; {low:g} to {high:g} s; steels in the table, boron-free. Outside, "
        "and on sheet, none is given.",
        f"From the slowest cooling of its band to the fastest, and twice {SCATTER_HV:g} HV either "
        "way: the scatter of the best of twelve such methods.",
        ("duren", "haz-scatter", "iso-15614-1"),
        f"Over {MOST_HV:g} HV, the most for plain steels not heat treated, the page says so.",
        ("haz_hardness.haz_hardness", "haz_hardness.hardness_refused",
         "haz_hardness.mixed_hardness", "haz_hardness.martensite_hardness",
         "haz_hardness.bainite_hardness",
         "haz_hardness.bainite_equivalent", "haz_hardness.TIME_RANGE_S",
         "haz_hardness.SCATTER_HV", "haz_hardness.MOST_HV"),
    )  # fmt: skip


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic: steels, preheat, cooling, hardness."""
    return (
        Section(CARBON, (ranges_table(), steels_table())),
        Section(method_b(), (least_table(), method_a_table())),
        Section(COOLING, (factors_table(),)),
        Section(FIELD),
        Section(hardness()),
    )
