"""The keys of one coupon: who welded it on what, what the machine showed, what was measured."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.money.price_fields import Words
from beadwright.reading.entries import optional
from beadwright.reading.fields import Choice, Measured

_SIZES = "1/32in", "2in", "no single bead is smaller or larger"
_WEIGHED = "0.01lb", "100lb", "what a shop scale weighs of a coupon"


@dataclass(frozen=True, slots=True, kw_only=True)
class CouponEntries:
    """What was seen and measured of one coupon [SI]."""

    welder: str | None = optional(
        Words(24, label="Welder", help="who held the gun; each hand is learned apart")
    )
    machine: str | None = optional(
        Words(24, label="Machine", help="which machine; each is learned apart")
    )
    coupon: str | None = optional(Words(40, label="Mark", help="the mark on the coupon"))
    marked: float | None = optional(
        Measured(
            "length",
            "1in",
            "10ft",
            "shorter cannot be timed, longer is no coupon",
            label="Marked length",
            help="length welded between the two marks",
        )
    )
    arc_time: float | None = optional(
        Measured(
            "seconds",
            "2s",
            "30min",
            "shorter is all start and stop, longer is no coupon",
            label="Arc time",
            help="time the arc burned over the marked length, one bead: 31s",
        )
    )
    meter_amps: float | None = optional(
        Measured(
            "current",
            "15A",
            "700A",
            "what wire arcs draw",
            label="Amps shown",
            help="amps the machine showed while welding",
        )
    )
    meter_volts: float | None = optional(
        Measured(
            "volts",
            "8V",
            "60V",
            "what wire machines show",
            label="Volts shown",
            help="volts the machine showed while welding",
        )
    )
    arc_volts: float | None = optional(
        Measured(
            "volts",
            "8V",
            "50V",
            "outside that no wire arc burns",
            label="Volts at the arc",
            help="by a meter from the gun's tip end to the work, if one was used",
        )
    )
    leg_seen: float | None = optional(
        Measured("leg", *_SIZES, label="Leg measured", help="leg on the bottom plate, by gauge")
    )
    leg2_seen: float | None = optional(
        Measured(
            "leg",
            *_SIZES,
            label="Other leg measured",
            help="leg on the vertical plate, by gauge; blank: the same",
            blank="the same",
        )
    )
    convexity: float | None = optional(
        Measured(
            "leg",
            "0in",
            "1/2in",
            "no bead stands higher",
            label="Convexity measured",
            help="how far the face stands over the line from toe to toe",
        )
    )
    face: float | None = optional(
        Measured("leg", *_SIZES, label="Face width", help="width of the face from toe to toe")
    )
    throat_seen: float | None = optional(
        Measured(
            "leg",
            *_SIZES,
            label="Throat measured",
            help="by a throat gauge, root to the middle of the face; instead of convexity",
        )
    )
    penetration_seen: float | None = optional(
        Measured(
            "leg",
            "0in",
            "1in",
            "no wire arc bites deeper",
            label="Penetration, cut and etched",
            help="past the root of a fillet, below the surface of a butt, cut and etched",
        )
    )
    weight_before: float | None = optional(
        Measured(
            "mass", *_WEIGHED, label="Weight before", help="weight of the coupon before the bead"
        )
    )
    weight_after: float | None = optional(
        Measured(
            "mass",
            *_WEIGHED,
            label="Weight after",
            help="weight after that bead, slag and spatter off",
        )
    )
    burst_length: float | None = optional(
        Measured(
            "length",
            "6in",
            "100ft",
            "a shorter length of wire cannot be measured well",
            label="Wire run out",
            help="length of wire run out with no arc, to check the feed",
        )
    )
    burst_time: float | None = optional(
        Measured(
            "seconds",
            "2s",
            "2min",
            "shorter cannot be timed, longer wastes wire",
            label="In a time of",
            help="time the wire ran out in: 10s",
        )
    )
    flow_seen: float | None = optional(
        Measured(
            "gas_flow",
            "3ft3/h",
            "120ft3/h",
            "less shields nothing, more drags air in",
            label="Gas flow at the nozzle",
            help="gas flow by a tube on the nozzle",
        )
    )
    clean_time: float | None = optional(
        Measured(
            "time",
            "0min",
            "4h",
            "no coupon takes longer",
            label="Clean-up time",
            help="time to take spatter and slag off this coupon",
        )
    )
    count_odd: Literal["no", "yes"] | None = optional(
        Choice[Literal["no", "yes"]](
            ("no", "yes"),
            label="Count it though odd",
            help="yes: count this coupon though it does not fit the others",
            blank="no",
        )
    )
