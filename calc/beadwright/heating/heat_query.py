"""The Heat page's keys: the job, the steel or its certificate, hydrogen, preheat and heat."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Literal

from marshmallow import ValidationError

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.heating.distortion_query import PartEntries
from beadwright.heating.preheat import HYDROGEN_RANGE
from beadwright.heating.steels import (
    ELEMENTS,
    STEELS,
    SYMBOLS,
    UNKNOWN,
    Composition,
    Element,
    Steel,
    steel_of,
)
from beadwright.job.page_query import PageQuery, page_defaults
from beadwright.reading.entries import optional, part, required
from beadwright.reading.fields import Choice, Entry, Measured, QueryField
from beadwright.temperatures import degree_sign, from_fahrenheit, read_temperature
from beadwright.typed_number import quoted, read_number, short
from beadwright.units import System

Melt = Literal["typical", "limit", "certificate"]

COLDEST_K, HOTTEST_K = from_fahrenheit(-50), from_fahrenheit(750)
"""Temperatures of a joint that may be typed; wider than what is allowed, so that it can be told
[K]."""


class PreheatTemperature(QueryField[float]):
    """A temperature of the joint with its scale; a bare number takes the page's [K]."""

    def bare_unit(self, system: System) -> str:
        """Return the letter of the scale a bare number takes."""
        return degree_sign(system).removeprefix("°")

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> float:
        system = self.system_of(data)
        try:
            kelvin = read_temperature(str(value), system)
        except ValueError as error:
            raise ValidationError(str(error)) from error
        if not COLDEST_K - 1e-6 <= kelvin <= HOTTEST_K + 1e-6:
            allowed = "−45C to 398C" if system == "si" else "−50F to 750F"
            raise ValidationError(
                f"{short(str(value))} is outside {allowed}: nobody welds plain steel so"
            )
        return kelvin


class Hydrogen(QueryField[float]):
    """Diffusible hydrogen, a bare number or with its unit [ml/100 g]."""

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> float:
        text = str(value).strip().lower().replace(" ", "").removeprefix("h")
        low, high = HYDROGEN_RANGE
        try:
            number = float(read_number(text.removesuffix("ml/100g")))
        except ValueError as error:
            raise ValidationError(
                f"{quoted(str(value))} is no hydrogen; write 5 or H5, in ml/100 g"
            ) from error
        if not low <= number <= high:
            raise ValidationError(
                f"{short(str(value))} is outside {low:g} to {high:g} ml/100 g: "
                "method B knows no other"
            )
        return number


def _percent(key: Element) -> Measured:
    return Measured(
        "share",
        "0%",
        "100%",
        "a share of the steel",
        label=SYMBOLS[key],
        help=f"{SYMBOLS[key]} on the certificate, % by mass",
        blank="–",
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatQuery(PageQuery):
    """The Heat page's query: its keys besides the job's [SI]."""

    steel: Steel | None = optional(
        Entry(
            steel_of,
            (*STEELS, UNKNOWN),
            label="Grade",
            help=f"grade: {', '.join(STEELS)}; or {UNKNOWN}",
            default="A36",
        )
    )
    melt: Literal["typical", "limit"] = required(
        Choice(
            ("typical", "limit"),
            label="Without a certificate, count",
            help="without a certificate: typical, or limit, the worst the grade allows",
            default="typical",
        )
    )
    c: float | None = optional(_percent("c"))
    mn: float | None = optional(_percent("mn"))
    si: float | None = optional(_percent("si"))
    cr: float | None = optional(_percent("cr"))
    mo: float | None = optional(_percent("mo"))
    v: float | None = optional(_percent("v"))
    ni: float | None = optional(_percent("ni"))
    cu: float | None = optional(_percent("cu"))
    b: float | None = optional(_percent("b"))
    nb: float | None = optional(_percent("nb"))
    hydrogen: float | None = optional(
        Hydrogen(
            label="Hydrogen of the wire",
            help="diffusible hydrogen the wire leaves, ml/100 g; blank: usual for the wire",
        )
    )
    preheat: float | None = optional(
        PreheatTemperature(
            label="Plate's temperature as welded",
            help="preheat or interpass temperature you run at, as 150F or 65C",
            blank="as needed",
        )
    )
    heat: float | None = optional(
        Measured(
            "heat_input",
            "1kJ/in",
            "300kJ/in",
            "no wire arc gives less or more",
            label="Heat input, V × A over travel",
            help="heat input by hand, volts × amps over travel; blank: the job's own",
            blank="the job's own",
        )
    )
    part: PartEntries = part(PartEntries)


DEFAULTS = page_defaults(HeatQuery)
"""What a blank or missing key of the page means."""


@dataclass(frozen=True, slots=True)
class ChosenSteel:
    """The steel as asked.

    Attributes:
        grade: Its grade, or None where it is not known.
        composition: The analysis used, or None without one.
        worst: The worst the grade allows, if a usual melt is used; else None.
        melt: Which analysis it is.
    """

    grade: Steel | None
    composition: Composition | None
    worst: Composition | None
    melt: Melt

    @property
    def name(self) -> str:
        """Its name."""
        return self.grade.name if self.grade else "Steel not known"


def chosen_steel(read: HeatQuery) -> ChosenSteel:
    """Return the steel a query asks for: a certificate before the grade's melt.

    Args:
        read: The page's query [-].

    Raises:
        FieldErrors: If the certificate lacks C or Mn, or adds up to more than 100 %.
    """
    written: dict[str, float | None] = {key: getattr(read, key) for key in ELEMENTS}
    shares = {key: round(x * 100, 9) for key, x in written.items() if x is not None}
    grade = read.steel
    if not shares:
        if grade is None:
            return ChosenSteel(None, None, None, "certificate")
        if read.melt == "limit":
            return ChosenSteel(grade, grade.limit, None, "limit")
        return ChosenSteel(grade, grade.typical, grade.limit, "typical")
    if "steel" not in read.own:
        grade = None  # a certificate alone means no grade, so no grade is assumed
    missing = [key for key in ("c", "mn") if key not in shares]
    if missing:
        text = "Write C and Mn both: every certificate prints them, every method needs them."
        raise FieldErrors({key: [text] for key in missing})
    try:
        composition = Composition(**shares)
    except OutOfRangeError as error:
        most = max(shares, key=lambda key: shares[key])
        raise FieldErrors({most: [f"Check the certificate: {error}."]}) from error
    return ChosenSteel(grade, composition, None, "certificate")
