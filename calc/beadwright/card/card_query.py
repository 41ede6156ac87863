"""The Card page's keys: the weld as planned, heated and judged, and what the card says."""

from __future__ import annotations

from dataclasses import dataclass, field, make_dataclass
from functools import cache
from typing import Any, Literal

from beadwright.coupons.coupon_records import CouponRecord
from beadwright.coupons.coupons_query import CouponsQuery
from beadwright.heating.distortion_query import PartEntries
from beadwright.heating.heat_query import HeatQuery
from beadwright.inspection.inspect_query import Accept, InspectQuery
from beadwright.job.page_query import PageQuery
from beadwright.money.price_fields import Words
from beadwright.passes.passes_query import PassesQuery
from beadwright.reading.entries import fields_of, made, optional, part, required
from beadwright.reading.fields import Choice

Paper = Literal["letter", "a4", "pocket"]
"""What the card is printed on: US letter, ISO A4, a card of 4 by 6 in."""

PAPERS: tuple[Paper, ...] = ("letter", "a4", "pocket")

PASSES_KEYS = ("passes", "bead", "root_transfer", "root_wfs", "root_volts", "cap_wfs", "cap_volts")
HEAT_KEYS = (
    "steel", "melt", "c", "mn", "si", "cr", "mo", "v", "ni", "cu", "b", "nb", "preheat_code",
    "hydrogen", "preheat", "heat",
)  # fmt: skip
"""Keys a card takes from Passes and Heat; they mean the same there."""

INSPECT_KEYS = ("accept", "across")


@dataclass(frozen=True, slots=True, kw_only=True)
class CardSays:
    """What the card says of itself."""

    piece: str | None = optional(
        Words(40, label="Part or drawing", help="the part or drawing the weld is on")
    )
    weld_mark: str | None = optional(Words(24, label="Weld", help="the weld's mark on the drawing"))
    revision: str | None = optional(Words(12, label="Revision", help="revision of this card"))
    card_date: str | None = optional(
        Words(16, label="Date", help="date of this card, as you write dates")
    )
    written_by: str | None = optional(
        Words(24, label="Written by", help="who answers for this card")
    )
    proved_mark: str | None = optional(
        Words(40, label="Proved by coupon", help="mark of the coupon welded at these settings")
    )
    proved_by: str | None = optional(
        Words(24, label="Coupon welded by", help="who welded that coupon")
    )
    proved_on: str | None = optional(
        Words(16, label="Coupon welded on", help="when that coupon was welded")
    )
    card_note: str | None = optional(
        Words(120, label="In your own words", help="what the next hand should know")
    )
    paper: Paper | None = optional(
        Choice(
            PAPERS,
            label="Paper",
            help="letter, a4 or pocket (4 by 6 in); blank: letter in inches, a4 in millimeters",
        )
    )
    code_names: Literal["no", "yes"] = required(
        Choice(
            ("no", "yes"),
            label="Names in the code",
            help="yes: the code on the card tells the names too, not only the print",
            default="no",
        )
    )


def _taken(page: type[PageQuery], keys: tuple[str, ...]) -> type[Any]:
    """Some keys of another page, as it declares them."""
    fields = fields_of(page)
    named = [(key, Any, field(default=None, metadata={"field": fields[key]})) for key in keys]
    return make_dataclass("Taken", named, frozen=True, slots=True, kw_only=True)


def _values(taken: Any, keys: tuple[str, ...]) -> dict[str, Any]:
    return {key: getattr(taken, key) for key in keys}


@cache
def _usual_part() -> PartEntries:
    """The part a weld is on where nothing is said of it."""
    told = {key: each for key, each in fields_of(PartEntries).items() if each.default}
    return made(PartEntries, {key: each.deserialize(each.default) for key, each in told.items()})


@dataclass(frozen=True, slots=True, kw_only=True)
class CardQuery(PageQuery):
    """The Card page's query: its keys besides the job's [SI]."""

    laid: Any = part(_taken(PassesQuery, PASSES_KEYS))
    heated: Any = part(_taken(HeatQuery, HEAT_KEYS))
    judged: Any = part(_taken(InspectQuery, INSPECT_KEYS))
    says: CardSays = part(CardSays)
    coupons: tuple[CouponRecord, ...] | None = optional(fields_of(CouponsQuery)["coupons"])

    @property
    def of_passes(self) -> PassesQuery:
        """The query of Passes that the card asks."""
        return PassesQuery(**self._asked_of_all(), **_values(self.laid, PASSES_KEYS))

    @property
    def of_heat(self) -> HeatQuery:
        """The query of Heat that the card asks, of a part nothing is known of."""
        told = _values(self.heated, HEAT_KEYS)
        return HeatQuery(**self._asked_of_all(), **told, part=_usual_part())

    def _asked_of_all(self) -> dict[str, Any]:
        names = ("typed", "own", "stood_in", "asked", "job")
        return {name: getattr(self, name) for name in names}

    @property
    def accept(self) -> Accept:
        """What the weld is judged by."""
        accept: Accept = self.judged.accept
        return accept

    @property
    def paper(self) -> Paper:
        """What it is printed on."""
        return self.says.paper or ("a4" if self.job.units == "si" else "letter")
