"""The method of shielding gas as data: groups, what each part does, density, how far from ideal."""

from __future__ import annotations

from beadwright.process.gas_components import COMPONENTS
from beadwright.process.gas_effects import EFFECTS
from beadwright.process.gas_groups import ACTIVE, LEAST_SHARE
from beadwright.process.gases import GASES
from beadwright.supply.cylinders import SETTLES_K
from beadwright.words.wording import worded
from beadwright_site.method.equations import Equation, Section, Symbol, Table
from beadwright_site.method.mathml import equation, over, power, row, sub
from beadwright_site.parts.gas_facts import NAMES

_RHO, _P, _T = sub("ρ", "0"), sub("p", "0"), sub("T", "0")
_SHARE, _MOLAR = sub("x", "i"), sub("M", "i")
_P_C, _T_C = sub("p", "c"), sub("T", "c")

DENSITY = Equation(
    "gas-density",
    "Density of a mix",
    (
        equation(_RHO, "=", over(row(_P, "·", "M"), row("R", "·", _T))),
        equation("M", "=", "∑", _SHARE, "·", _MOLAR),
    ),
    (
        Symbol(_RHO, "density as the trade counts volume", "kg/m³"),
        Symbol(_P, "one atmosphere", "Pa"),
        Symbol(_T, "70 °F", "K"),
        Symbol("R", "gas constant", "J/(mol·K)"),
        Symbol("M", "molar mass of the mix", "kg/mol"),
        Symbol(_SHARE, "share of each gas by volume", "–"),
        Symbol(_MOLAR, "its molar mass", "kg/mol"),
    ),
    "Any mix of argon, CO2, oxygen and helium.",
    "0.7 % for CO2, 0.1 % for argon.",
    ("gas-density", "iso-14175"),
    "",
    ("compressibility.normal_density", "compressibility.molar_mass", "compressibility.parts_of",
     "gas_components.COMPONENTS", "compressibility.NORMAL_K", "compressibility.NORMAL_PA",
     "compressibility.GAS_CONSTANT_J_MOL_K"),
)  # fmt: skip

FACTOR_Z = Equation(
    "gas-z",
    "How far a compressed gas is from an ideal one",
    (
        equation(power("Z", "3"), "−", power("Z", "2"), "+",
                 row("(", "A", "−", "B", "−", power("B", "2"), ")"), "·", "Z", "−", "A", "·", "B",
                 "=", "0"),
        equation("A", "=", "0.42748", "·", over("p", _P_C), "·", power(over(_T_C, "T"), "2.5")),
        equation("B", "=", "0.08664", "·", over("p", _P_C), "·", over(_T_C, "T")),
    ),
    (
        Symbol("Z", "share of an ideal gas's volume that the gas takes up; the largest root", "–"),
        Symbol("A", "pull between the molecules; the root of a mix's is the sum of shares times "
               "roots", "–"),
        Symbol("B", "room they take; a mix's is the sum of shares times theirs", "–"),
        Symbol("p", "pressure over vacuum", "Pa"),
        Symbol("T", "temperature", "K"),
        Symbol(_P_C, "critical pressure of each gas, below", "Pa"),
        Symbol(_T_C, "its critical temperature", "K"),
    ),
    "250 to 330 K, to 300 bar, no liquid in the cylinder.",
    "2 % to 200 bar, against reference equations of state.",
    ("redlich-kwong", "gas-dew"),
    "Over half CO2, the cylinder holds liquid: weigh it.",
    ("compressibility.compressibility", "compressibility.MOST_PA", "cylinders.settles_below",
     "cylinders.SETTLES_K", "cylinders.is_liquid"),
)  # fmt: skip


def _limits(limits: tuple[float, float]) -> str:
    low, high = limits
    if high == 0:
        return "–"
    return f"{100 * low:g} to {100 * high:g}" if low == LEAST_SHARE else (
        f"over {100 * low:g} to {100 * high:g}")  # fmt: skip


def groups_table() -> Table:
    """Return the groups of ISO 14175 the core knows."""
    fixed = (
        ("I1", "–", "–", "argon alone"),
        ("I2", "–", "–", "helium alone"),
        ("I3", "–", "–", "argon with 0.5 to 95 % helium"),
    )
    strong = (("C1", "100", "–", "–"), ("C2", "the rest", "0.5 to 30", "–"))
    active = tuple(
        (group.name, _limits(group.co2), _limits(group.oxygen), "argon, helium in its place")
        for group in ACTIVE
    )
    return Table(
        "gas-groups",
        "Groups of gas",
        ("group", "CO2, %", "O2, %", "the rest"),
        (*fixed, *active, *strong),
        ("iso-14175",),
        "M11 holds hydrogen: not for carbon steel. The usual gases: "
        + ", ".join(f"{gas.name} {gas.iso_group}" for gas in GASES.values()) + ".",
        ("gas_groups.iso_14175_group", "gas_groups.ACTIVE", "gas_groups.LEAST_SHARE",
         "gases.GASES", "gases.gas_of", "gas_mix.read_mix", "gas_mix.say_mix"),
    )  # fmt: skip


def effects_table() -> Table:
    """Return what each part of a gas does."""
    rows = tuple(
        (
            COMPONENTS[effect.part].symbol,
            f"over {100 * effect.over:g} to {100 * effect.up_to:g}",
            NAMES[effect.what],
            worded(effect.phrase, "us"),
        )
        for effect in EFFECTS
    )
    return Table(
        "gas-effects",
        "What each part of a gas does",
        ("part", "share, %", "changes", "how"),
        rows,
        tuple(dict.fromkeys(effect.source for effect in EFFECTS)),
        "Against argon with a little oxygen. For how much, see volts, spray, deposition "
        "and gas flow.",
        ("gas_effects.effects_of", "gas_effects.EFFECTS"),
    )


def substances_table() -> Table:
    """Return the constants of the pure gases."""
    rows = tuple(
        (
            component.symbol,
            f"{component.substance.molar_kg * 1000:.4g}",
            f"{component.substance.critical_k:.1f}",
            f"{component.substance.critical_pa / 1e6:.3f}",
        )
        for component in COMPONENTS.values()
    )
    return Table(
        "pure-gases",
        "Pure gases",
        ("gas", "g/mol", "critical K", "critical MPa"),
        rows,
        ("redlich-kwong",),
        "Helium with the effective point of a quantum gas.",
    )


def settles_table() -> Table:
    """Return where CO2 of a mix turns liquid."""
    rows = tuple((f"{100 * share:g}", f"{kelvin - 273.15:.0f}") for share, kelvin in SETTLES_K)
    return Table(
        "gas-settles",
        "Keep the cylinder warmer",
        ("CO2 in argon, %", "°C"),
        rows,
        ("gas-dew",),
        "Colder, some of the CO2 may turn liquid and the mix no longer holds.",
    )


def sections() -> tuple[Section, ...]:
    """Return the sections of the topic."""
    return (
        Section(DENSITY, (groups_table(), effects_table())),
        Section(FACTOR_Z, (substances_table(), settles_table())),
    )
