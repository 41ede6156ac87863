"""The Heat page's keys: the job, the steel or its certificate, hydrogen, preheat and heat."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Literal

from marshmallow import ValidationError

from beadwright.heating.distortion_query import PartEntries
from beadwright.heating.preheat import HYDROGEN_RANGE
from beadwright.heating.preheat_needed import CODES, Code
from beadwright.heating.steels import ELEMENTS, STEELS, SYMBOLS, UNKNOWN, Element, Steel, steel_of
from beadwright.heating.welded_steel import AskedSteel
from beadwright.job.page_query import PageQuery, page_defaults
from beadwright.reading.entries import optional, part, required
from beadwright.reading.fields import Choice, Entry, Measured, QueryField
from beadwright.reading.temperature_field import Temperature
from beadwright.temperatures import from_fahrenheit
from beadwright.typed_number import quoted, read_number, short


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
    preheat_code: Code | None = optional(
        Choice(
            CODES,
            label="Preheat by",
            help="d1.1, en-b or en-a; blank: d1.1 if its table lists the steel, else en-b",
            blank="the steel's own",
        )
    )
    hydrogen: float | None = optional(
        Hydrogen(
            label="Hydrogen of the wire",
            help="diffusible hydrogen the wire leaves, ml/100 g; blank: usual for the wire",
        )
    )
    preheat: float | None = optional(
        # Wider than what is allowed, so that it can be told.
        Temperature(
            from_fahrenheit(-50),
            from_fahrenheit(750),
            {"us": "−50F to 750F", "si": "−45C to 398C"},
            "nobody welds plain steel so",
            label="Plate temperature when welded",
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
            label="Heat input, V × A ÷ travel speed",
            help="heat input by hand, volts × amps ÷ travel speed; blank: the job's own",
            blank="the job's own",
        )
    )
    part: PartEntries = part(PartEntries)

    @property
    def asked_steel(self) -> AskedSteel:
        """What is written of the steel."""
        written: dict[str, float | None] = {key: getattr(self, key) for key in ELEMENTS}
        shares = {key: share for key, share in written.items() if share is not None}
        return AskedSteel(self.steel, self.melt, shares)


DEFAULTS = page_defaults(HeatQuery)
"""What a blank or missing key of the page means."""
