"""Reading and writing quantities as the shop does; SI inside. Units and factors: ``measures``."""

from __future__ import annotations

import re
from collections.abc import Mapping
from decimal import Decimal, localcontext
from fractions import Fraction
from functools import lru_cache
from types import MappingProxyType

from beadwright.measures import EXACT_INCH_M, MEASURES, Measure, System, Unit
from beadwright.typed_number import LONGEST_TEXT, decimal_point, plain_text, quoted, read_number

__all__ = [
    "MEASURES",
    "SHEET_GAUGE_IN",
    "Measure",
    "System",
    "Unit",
    "convert",
    "fraction_text",
    "read",
    "settable",
    "show",
    "symbol",
    "system_named",
    "typed_unit",
    "write",
    "written",
]

SHEET_GAUGE_IN: Mapping[int, str] = MappingProxyType(
    {
        3: "0.2391", 7: "0.1793", 8: "0.1644", 9: "0.1495", 10: "0.1345", 11: "0.1196",
        12: "0.1046", 13: "0.0897", 14: "0.0747", 15: "0.0673", 16: "0.0598", 18: "0.0478",
        20: "0.0359", 22: "0.0299", 24: "0.0239", 26: "0.0179", 28: "0.0149", 30: "0.0120",
    }
)  # fmt: skip
"""Steel sheet thickness by gauge number [in].

Source: Manufacturers' Standard Gauge for uncoated steel sheet (41.82 lb/ft² per inch),
printed tables; gauges 3 and 7 from memory. Galvanized sheet is thicker and not meant.
"""

_SPLIT = re.compile(r"^(?P<number>[+-]?[0-9][0-9 ./-]*|[+-]?\.[0-9]+)(?P<unit>.*)$", re.ASCII)
_GAUGE = re.compile(r"^#?(?P<number>\d{1,2})\s*(?:ga|gauge|ga\.)$", re.ASCII)


def read(text: str, measure: str, system: System = "us") -> float:
    """Return a typed quantity in SI.

    A bare number takes the system's unit; ``10ga`` is read where a length is meant.

    Args:
        text: What was typed, such as ``3/8in``, ``7.4m/min``, ``10ga`` [-].
        measure: The kind of quantity, a key of ``MEASURES`` [-].
        system: Whose units a bare number takes [-].

    Raises:
        ValueError: If the number or the unit cannot be read; the text says what can.
    """
    if len(text) > LONGEST_TEXT:
        example = _example(MEASURES[measure], system)
        raise ValueError(f"{quoted(text)} is too long; write it like {example}")
    return _quantity(text, measure, system)


@lru_cache(maxsize=1024)
def _quantity(text: str, measure: str, system: System) -> float:
    """A page reads the same defaults again with every answer."""
    kind = MEASURES[measure]
    plain = plain_text(text)
    gauge = _GAUGE.match(plain.lower())
    if gauge and measure == "length":
        return _read_gauge(int(gauge["number"]))
    split = _SPLIT.match(decimal_point(plain, text))
    if split is None:
        raise ValueError(
            f"{quoted(text)} is not a quantity; write it like {_example(kind, system)}"
        )
    digits, spelling = split["number"].strip(), split["unit"]
    if digits.endswith("/"):  # a price: 1.85/lb
        digits, spelling = digits[:-1], f"/{spelling}"
    number = read_number(digits)
    return float(number * _unit_typed(spelling, kind, system, text).factor)


def _unit_typed(spelling: str, kind: Measure, system: System, text: str) -> Unit:
    wanted = spelling.strip().replace(" ", "").lower()
    if not wanted:
        return kind.unit(system)
    unit = kind.spelled().get(wanted)
    if unit is None:
        known = ", ".join(sorted({u.symbol for u in (kind.us, kind.si, *kind.others) if u.symbol}))
        raise ValueError(f"{quoted(text)}: unit not known here; use {known or 'a bare number'}")
    return unit


def _read_gauge(number: int) -> float:
    if number not in SHEET_GAUGE_IN:
        known = ", ".join(str(n) for n in SHEET_GAUGE_IN)
        raise ValueError(f"{number} ga is not in the steel sheet table; it has {known}")
    return float(Fraction(SHEET_GAUGE_IN[number]) * EXACT_INCH_M)


_SAMPLES: Mapping[tuple[str, System], str] = MappingProxyType(
    {("wire_feed", "us"): "290", ("wire_feed", "si"): "7.4", ("travel", "si"): "300"}
)
"""A likely number for the example of how a quantity is written, where 9.5 is not likely."""


def _example(kind: Measure, system: System) -> str:
    unit = kind.unit(system)
    sample = _SAMPLES.get((kind.name, system), "3/8" if unit.symbol == "in" else "9.5")
    return f"{sample}{unit.symbol}"


def fraction_text(inches: float, denominator: int = 16) -> str | None:
    """Return a length in inches as a shop fraction, or None if it is not one.

    Args:
        inches: Length [in].
        denominator: The finest fraction, a power of two [-].
    """
    steps = round(inches * denominator)
    if steps == 0 or abs(steps / denominator - inches) > 1e-9 * max(1.0, abs(inches)):
        return "0" if inches == 0 else None
    whole, rest = divmod(abs(Fraction(steps, denominator)), 1)
    sign = "-" if steps < 0 else ""
    if rest == 0:
        return f"{sign}{whole}"
    return f"{sign}{whole}-{rest}" if whole else f"{sign}{rest}"


def write(value: float, measure: str, system: System = "us", denominator: int = 16) -> str:
    """Return a quantity as a query writes it: reading it back gives the same float.

    Valid for: zero, and a billionth to a hundred million of the unit written.

    Lengths that are shop fractions come back as fractions.

    Args:
        value: The quantity in SI [SI].
        measure: Its kind, a key of ``MEASURES`` [-].
        system: Whose unit to write [-].
        denominator: The finest fraction of an inch [-].

    Raises:
        ValueError: If the value is out of that range or not a number.
    """
    kind = MEASURES[measure]
    unit = kind.unit(system)
    exact = Fraction(value) / unit.factor
    if unit.symbol == "in":
        fraction = fraction_text(float(exact), denominator)
        if fraction is not None and read(f"{fraction}in", measure) == value:
            return f"{fraction}in"
    for digits in range(1, 20):
        text = f"{_decimal(exact, digits)}{unit.text}"
        if read(text, measure) == value:
            return text
    raise ValueError(f"{value} {kind.si_symbol} is too small or too large to write in {unit.text}")


def _decimal(number: Fraction, digits: int) -> str:
    """An exact number rounded once to significant digits, never with an exponent."""
    with localcontext(prec=digits):
        rounded = Decimal(number.numerator) / Decimal(number.denominator)
    return f"{rounded.normalize():f}"


def convert(value: float, measure: str, system: System) -> float:
    """Return an SI value in the unit shown by a system.

    Args:
        value: The quantity [SI].
        measure: Its kind [-].
        system: Whose unit [-].
    """
    return value / MEASURES[measure].unit(system).size


def show(value: float, measure: str, system: System = "us") -> str:
    """Return the number alone, rounded as the shop reads it; see ``symbol`` for its unit.

    Args:
        value: The quantity [SI].
        measure: Its kind [-].
        system: Whose unit [-].
    """
    kind = MEASURES[measure]
    unit = kind.unit(system)
    number = convert(value, measure, system)
    if unit.symbol == "in" and measure == "tip_to_work":
        nearest = round(number * kind.fraction_of) / kind.fraction_of
        return fraction_text(nearest, kind.fraction_of) or "0"
    if unit.symbol == "in" and measure in ("length", "leg"):
        return fraction_text(number, 32) or f"{number:.3f}"
    return f"{number:.{unit.places}f}"


def written(value: float, measure: str, system: System = "us") -> str:
    """Return a quantity with its unit, rounded as the shop reads it: ``3/8 in``.

    Args:
        value: The quantity [SI].
        measure: Its kind [-].
        system: Whose unit [-].
    """
    return f"{show(value, measure, system)} {symbol(measure, system)}".strip()


STEPS: Mapping[tuple[str, System], Fraction] = MappingProxyType(
    {
        ("wire_feed", "us"): Fraction(5),
        ("wire_feed", "si"): Fraction(1, 10),
        ("volts", "us"): Fraction(1, 10),
        ("volts", "si"): Fraction(1, 10),
        ("tip_to_work", "us"): Fraction(1, 16),
        ("tip_to_work", "si"): Fraction(1),
        ("travel", "us"): Fraction(1, 10),
        ("travel", "si"): Fraction(5),
        ("gas_flow", "us"): Fraction(1),
        ("gas_flow", "si"): Fraction(1),
        ("leg", "us"): Fraction(1, 16),
        ("leg", "si"): Fraction(1, 2),
    }
)
"""Steps a hand can set, in the unit shown: 5 in/min on the feeder, 0.1 V, 1/16 in of tip-to-
work."""


def settable(value: float, measure: str, system: System = "us") -> float:
    """Return the nearest value a hand can set and the page can show [SI].

    Args:
        value: The quantity [SI].
        measure: Its kind; one without a step comes back as it is [-].
        system: Whose steps [-].
    """
    step = STEPS.get((measure, system))
    if step is None:
        return value
    factor = MEASURES[measure].unit(system).factor
    return float(round(Fraction(value) / factor / step) * step * factor)


def symbol(measure: str, system: System = "us") -> str:
    """Return the unit shown beside a measure in a system."""
    return MEASURES[measure].unit(system).symbol


def typed_unit(measure: str, system: System) -> str:
    """Return the unit of a measure as it is typed behind a number, such as ``in/min``, ``ft3/h``.

    Args:
        measure: Kind of quantity, key of ``MEASURES`` [-].
        system: Whose unit [-].
    """
    return symbol(measure, system).replace("³", "3")


def system_named(text: str) -> System:
    """Return the system of units a query names; ``us`` for anything else.

    Args:
        text: The value of ``units`` [-].
    """
    return "si" if text.strip().lower() == "si" else "us"
