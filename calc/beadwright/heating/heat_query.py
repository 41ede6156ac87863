"""The Heat page's keys: the job, the steel or its certificate, hydrogen, preheat and heat."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any, Literal

from marshmallow import Schema, ValidationError, fields

from beadwright import units
from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.heating import distortion_query
from beadwright.heating.preheat import HYDROGEN_RANGE
from beadwright.heating.steels import (
    ELEMENTS,
    STEELS,
    SYMBOLS,
    UNKNOWN,
    Composition,
    Steel,
    steel_of,
)
from beadwright.job.job_query import DEFAULTS as JOB_DEFAULTS
from beadwright.job.job_query import KEY_WORDS as JOB_WORDS
from beadwright.measures import System
from beadwright.reading.fields import Choice, Entry, Measured
from beadwright.reading.page_query import PageQuery
from beadwright.temperatures import from_fahrenheit, read_temperature

Melt = Literal["typical", "limit", "certificate"]

_ELEMENT_WORDS: dict[str, str] = {
    key: f"{SYMBOLS[key]} on the certificate, % by mass" for key in ELEMENTS
}

HEAT_WORDS: Mapping[str, str] = MappingProxyType(
    {
        "steel": f"grade: {', '.join(STEELS)}; or {UNKNOWN}",
        "melt": "without a certificate: typical, or limit, the worst the grade allows",
        **_ELEMENT_WORDS,
        "hydrogen": "diffusible hydrogen the wire leaves, ml/100 g; blank: usual for the wire",
        "preheat": "preheat or interpass temperature you run at, as 150F or 65C",
        "heat": "heat input by hand, volts × amps over travel; blank: the job's own",
        **distortion_query.WORDS,
    }
)
"""What each key besides the job's means."""

_OWN_DEFAULTS: dict[str, str] = {
    "steel": "A36",
    "melt": "typical",
    **dict.fromkeys(ELEMENTS, ""),
    "hydrogen": "",
    "preheat": "",
    "heat": "",
    **distortion_query.DEFAULTS,
}

DEFAULTS: Mapping[str, str] = MappingProxyType({**JOB_DEFAULTS, **_OWN_DEFAULTS})
"""What a blank or missing key of the page means."""

KEY_WORDS: Mapping[str, str] = MappingProxyType({**JOB_WORDS, **HEAT_WORDS})
"""What each key means, for the terminal and the form."""

COLDEST_K, HOTTEST_K = from_fahrenheit(-50), from_fahrenheit(750)
"""Temperatures of a joint that may be typed; wider than what is allowed, so that it can be told
[K]."""


class PreheatTemperature(fields.Field[float]):
    """A temperature of the joint with its scale; a bare number takes the page's [K]."""

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> float:
        system: System = "si" if Measured.context_units(data) == "si" else "us"
        try:
            kelvin = read_temperature(str(value), system)
        except ValueError as error:
            raise ValidationError(str(error)) from error
        if not COLDEST_K - 1e-6 <= kelvin <= HOTTEST_K + 1e-6:
            allowed = "−45C to 398C" if system == "si" else "−50F to 750F"
            raise ValidationError(
                f"{units.short(str(value))} is outside {allowed}: nobody welds plain steel so"
            )
        return kelvin


class Hydrogen(fields.Field[float]):
    """Diffusible hydrogen, a bare number or with its unit [ml/100 g]."""

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> float:
        text = str(value).strip().lower().replace(" ", "").removeprefix("h")
        low, high = HYDROGEN_RANGE
        try:
            number = float(units.read_number(text.removesuffix("ml/100g")))
        except ValueError as error:
            raise ValidationError(
                f"{units.quoted(str(value))} is no hydrogen; write 5 or H5, in ml/100 g"
            ) from error
        if not low <= number <= high:
            raise ValidationError(
                f"{units.short(str(value))} is outside {low:g} to {high:g} ml/100 g: "
                "method B knows no other"
            )
        return number


def _percent() -> Measured:
    return Measured("share", "0%", "100%", "a share of the steel")


def _fields() -> dict[str, fields.Field[Any]]:
    return {
        "steel": Entry(steel_of, (*STEELS, UNKNOWN)),
        "melt": Choice(("typical", "limit")),
        **{key: _percent() for key in ELEMENTS},
        "hydrogen": Hydrogen(),
        "preheat": PreheatTemperature(),
        "heat": Measured("heat_input", "1kJ/in", "300kJ/in", "no wire arc gives less or more"),
        **distortion_query.distortion_fields(),
    }


HeatSchema = Schema.from_dict(_fields(), name="HeatSchema")
"""The page's keys besides the job's."""


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


def chosen_steel(read: PageQuery) -> ChosenSteel:
    """Return the steel a query asks for: a certificate before the grade's melt.

    Args:
        read: The page's query [-].

    Raises:
        FieldErrors: If the certificate lacks C or Mn, or adds up to more than 100 %.
    """
    values = read.values
    shares = {key: round(values[key] * 100, 9) for key in ELEMENTS if key in values}
    grade: Steel | None = values["steel"]
    if not shares:
        if grade is None:
            return ChosenSteel(None, None, None, "certificate")
        if values["melt"] == "limit":
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
