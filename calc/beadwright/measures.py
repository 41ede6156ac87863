"""The measures: kinds of quantity, the units each is read and shown in, exact factors.

A *measure* is a kind of quantity the trade has its own units for: wire feed and travel are
both speeds, but one is read in in/min or m/min and the other in in/min or mm/min.

Factors are exact by definition: 1 in = 25.4 mm and 1 lb = 0.453 592 37 kg (international
yard and pound agreement of 1959); 1 ft³ = 0.028 316 846 592 m³ follows. A pound-force is a pound
at 9.806 65 m/s² (third General Conference on Weights and Measures, 1901).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from types import MappingProxyType
from typing import Literal

System = Literal["us", "si"]

EXACT_INCH_M = Fraction(254, 10_000)
INCH_M = float(EXACT_INCH_M)
FOOT_M = 12 * EXACT_INCH_M
POUND_KG = Fraction(45_359_237, 100_000_000)
CUBIC_FOOT_M3 = FOOT_M**3
LITRE_M3 = Fraction(1, 1000)
MM_M = Fraction(1, 1000)
MINUTE_S = 60
HOUR_S = 3600
POUND_N = POUND_KG * Fraction(980_665, 100_000)
PSI_PA = POUND_N / EXACT_INCH_M**2


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit as shown and as typed.

    Attributes:
        symbol: How it is shown.
        factor: SI units in one of it, exact.
        places: Decimals to show.
        spellings: How else it may be typed, lower case, no spaces.
        size: The factor as a float, for what is shown.
    """

    symbol: str
    factor: Fraction
    places: int
    spellings: tuple[str, ...] = ()
    size: float = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "size", float(self.factor))

    @property
    def text(self) -> str:
        """The spelling used in a query."""
        plain = self.symbol.replace("³", "3").replace("²", "2").replace("°", "deg")
        return plain.replace("·", "-").lower()


@dataclass(frozen=True, slots=True)
class Measure:
    """A kind of quantity: its SI unit, the unit shown in each system, all that may be typed."""

    name: str
    si_symbol: str
    us: Unit
    si: Unit
    others: tuple[Unit, ...] = ()
    fraction_of: int = 0
    """Show US values as fractions to this denominator where they are such fractions."""

    def unit(self, system: System) -> Unit:
        """The unit shown in a system."""
        return self.us if system == "us" else self.si

    def spelled(self) -> dict[str, Unit]:
        """Every spelling to its unit."""
        found: dict[str, Unit] = {}
        for unit in (self.us, self.si, *self.others):
            for spelling in (unit.text, *unit.spellings):
                found.setdefault(spelling, unit)
        return found


def _unit(symbol: str, factor: Fraction | int, places: int, *spellings: str) -> Unit:
    return Unit(symbol, Fraction(factor), places, spellings)


_INCH_SPELLINGS = ("inch", "inches", '"', "″", "”", "''")
_IN_MIN = ("ipm", "in/min.", "inch/min")
_PER_HOUR = ("/hr", "/hour", "h", "hr", "perhour")
_HOURS = ("hr", "hrs", "hour", "hours")
_PER_KWH = Fraction(1, 3_600_000)

MEASURES: Mapping[str, Measure] = MappingProxyType(
    {
        measure.name: measure
        for measure in (
            Measure("length", "m", _unit("in", EXACT_INCH_M, 3, *_INCH_SPELLINGS),
                    _unit("mm", MM_M, 1), (_unit("ft", FOOT_M, 2, "'", "foot", "feet"),
                    _unit("cm", MM_M * 10, 2), _unit("m", 1, 3))),
            Measure("leg", "m", _unit("in", EXACT_INCH_M, 3, *_INCH_SPELLINGS),
                    _unit("mm", MM_M, 1), (_unit("cm", MM_M * 10, 2),), fraction_of=16),
            Measure("wire_diameter", "m", _unit("in", EXACT_INCH_M, 3, *_INCH_SPELLINGS),
                    _unit("mm", MM_M, 1)),
            Measure("tip_to_work", "m", _unit("in", EXACT_INCH_M, 3, *_INCH_SPELLINGS),
                    _unit("mm", MM_M, 0), (_unit("cm", MM_M * 10, 1),), fraction_of=16),
            Measure("wire_feed", "m/s", _unit("in/min", EXACT_INCH_M / MINUTE_S, 0, *_IN_MIN),
                    _unit("m/min", Fraction(1, MINUTE_S), 1, "mpm"),
                    (_unit("mm/s", MM_M, 0), _unit("cm/min", Fraction(1, 6000), 0))),
            Measure("travel", "m/s", _unit("in/min", EXACT_INCH_M / MINUTE_S, 1, *_IN_MIN),
                    _unit("mm/min", MM_M / MINUTE_S, 0),
                    (_unit("cm/min", Fraction(1, 6000), 1), _unit("mm/s", MM_M, 1),
                     _unit("m/min", Fraction(1, MINUTE_S), 2))),
            Measure("volts", "V", _unit("V", 1, 1, "volt", "volts"),
                    _unit("V", 1, 1, "volt", "volts")),
            Measure("current", "A", _unit("A", 1, 0, "amp", "amps"),
                    _unit("A", 1, 0, "amp", "amps")),
            Measure("gas_flow", "m³/s", _unit("ft³/h", CUBIC_FOOT_M3 / HOUR_S, 0, "cfh", "ft3/hr"),
                    _unit("L/min", LITRE_M3 / MINUTE_S, 0, "lpm", "l/min")),
            Measure("heat_input", "J/m", _unit("kJ/in", Fraction(1000) / EXACT_INCH_M, 1),
                    _unit("kJ/mm", Fraction(1_000_000), 2), (_unit("J/in", 1 / EXACT_INCH_M, 0),)),
            Measure("deposition", "kg/s", _unit("lb/h", POUND_KG / HOUR_S, 1, "lb/hr"),
                    _unit("kg/h", Fraction(1, HOUR_S), 2)),
            Measure("mass", "kg", _unit("lb", POUND_KG, 2, "lbs"), _unit("kg", 1, 2),
                    (_unit("g", Fraction(1, 1000), 0),)),
            Measure("mass_per_length", "kg/m", _unit("lb/ft", POUND_KG / FOOT_M, 3),
                    _unit("kg/m", 1, 3), (_unit("g/m", Fraction(1, 1000), 1),)),
            Measure("area", "m²", _unit("in²", EXACT_INCH_M**2, 4), _unit("mm²", MM_M**2, 1)),
            Measure("time", "s", _unit("min", MINUTE_S, 1), _unit("min", MINUTE_S, 1),
                    (_unit("h", HOUR_S, 2), _unit("s", 1, 0))),
            Measure("seconds", "s", _unit("s", 1, 1, "sec"), _unit("s", 1, 1, "sec"),
                    (_unit("min", MINUTE_S, 2), _unit("h", HOUR_S, 2))),
            Measure("angle", "°", _unit("°", 1, 0), _unit("°", 1, 0)),
            Measure("count", "", _unit("", 1, 0), _unit("", 1, 0)),
            # Money is a bare number in whatever the shop counts in; prices are money per unit.
            Measure("money", "", _unit("", 1, 2), _unit("", 1, 2)),
            Measure("price_per_mass", "/kg", _unit("/lb", 1 / POUND_KG, 2, "lb", "/lbs", "perlb"),
                    _unit("/kg", 1, 2, "kg", "perkg")),
            Measure("rate", "/s", _unit("/h", Fraction(1, HOUR_S), 2, *_PER_HOUR),
                    _unit("/h", Fraction(1, HOUR_S), 2, *_PER_HOUR)),
            Measure("price_per_volume", "/m³",
                    _unit("/ft³", 1 / CUBIC_FOOT_M3, 3, "ft3", "/cf", "/cuft", "perft3"),
                    _unit("/m³", 1, 2, "m3", "perm3")),
            Measure("price_per_energy", "/J", _unit("/kWh", _PER_KWH, 3, "kwh", "perkwh"),
                    _unit("/kWh", _PER_KWH, 3, "kwh", "perkwh")),
            Measure("cost_per_length", "/m", _unit("/ft", 1 / FOOT_M, 2, "ft"),
                    _unit("/m", 1, 2, "m")),
            Measure("share", "", _unit("%", Fraction(1, 100), 1, "percent", "pct"),
                    _unit("%", Fraction(1, 100), 1, "percent", "pct")),
            Measure("hours", "s", _unit("h", HOUR_S, 1, *_HOURS), _unit("h", HOUR_S, 1, *_HOURS),
                    (_unit("min", MINUTE_S, 0),)),
            Measure("distance", "m", _unit("ft", FOOT_M, 0, "'", "foot", "feet"),
                    _unit("m", 1, 1), (_unit("in", EXACT_INCH_M, 0, *_INCH_SPELLINGS),)),
            Measure("gas_volume", "m³", _unit("ft³", CUBIC_FOOT_M3, 0, "cf", "cuft"),
                    _unit("m³", 1, 2), (_unit("L", LITRE_M3, 0),)),
            Measure("water_volume", "m³", _unit("L", LITRE_M3, 1), _unit("L", LITRE_M3, 1),
                    (_unit("in³", EXACT_INCH_M**3, 0), _unit("ft³", CUBIC_FOOT_M3, 2))),
            Measure("pressure", "Pa", _unit("psi", PSI_PA, 0, "psig"),
                    _unit("bar", 100_000, 0, "barg"),
                    (_unit("kPa", 1000, 0), _unit("MPa", 1_000_000, 1))),
            Measure("power", "W", _unit("kW", 1000, 2, "kva"), _unit("kW", 1000, 2, "kva"),
                    (_unit("W", 1, 0, "va"),)),
            Measure("force", "N", _unit("kip", 1000 * POUND_N, 2, "kips"), _unit("kN", 1000, 1),
                    (_unit("lbf", POUND_N, 0, "lb", "lbs"), _unit("N", 1, 0))),
            Measure("moment", "N·m",
                    _unit("kip·in", 1000 * POUND_N * EXACT_INCH_M, 1, "kip·in", "kipin"),
                    _unit("kN·m", 1000, 2, "kn·m", "knm"),
                    (_unit("kip·ft", 1000 * POUND_N * FOOT_M, 2, "kip·ft", "kipft"),
                     _unit("lbf·in", POUND_N * EXACT_INCH_M, 0, "lb-in", "in-lb"),
                     _unit("lbf·ft", POUND_N * FOOT_M, 0, "lb-ft", "ft-lb"),
                     _unit("N·m", 1, 0, "n·m", "nm"))),
            Measure("force_per_length", "N/m", _unit("kip/in", 1000 * POUND_N / EXACT_INCH_M, 2),
                    _unit("kN/mm", 1_000_000, 3),
                    (_unit("lbf/in", POUND_N / EXACT_INCH_M, 0, "lb/in"), _unit("N/mm", 1000, 0),
                     _unit("kip/ft", 1000 * POUND_N / FOOT_M, 2), _unit("kN/m", 1000, 0))),
            Measure("small_length", "m", _unit("in", EXACT_INCH_M, 3, *_INCH_SPELLINGS),
                    _unit("mm", MM_M, 2)),
            Measure("inertia", "m⁴", _unit("in⁴", EXACT_INCH_M**4, 2, "in4", "in^4"),
                    _unit("cm⁴", (MM_M * 10)**4, 1, "cm4", "cm^4"),
                    (_unit("mm⁴", MM_M**4, 0, "mm4", "mm^4"),)),
            Measure("stress", "Pa", _unit("ksi", 1000 * PSI_PA, 0),
                    _unit("MPa", 1_000_000, 0, "n/mm2"), (_unit("psi", PSI_PA, 0),)),
        )
    }
)  # fmt: skip
"""The measures by name."""
