"""Wire feed against amps: print and its band, the shop's own curve and its, each coupon."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from beadwright.coupons.coupons_page import CouponsAnswer
from beadwright.measures import MEASURES, System
from beadwright.process.burnoff import constants_of, feed_from_current
from beadwright.process.operating import extension
from beadwright.process.wires import Wire
from beadwright_site.drawings.points_drawing import Axis, Band, Plot, Point, Shape, draw_points

LOW, HIGH, PIECES = 0.7, 1.3, 12
"""The curve is drawn from here to there of the planned current, in so many straight pieces."""


@dataclass(frozen=True, slots=True)
class _Curve:
    """Feed of a wire by current, in the units shown."""

    wire: Wire
    stick_m: float
    system: System

    def feed(self, current_a: float, share: float = 1.0) -> float:
        """Feed at a current, times a share."""
        feed = share * feed_from_current(self.wire, current_a, self.stick_m)
        return feed / MEASURES["wire_feed"].unit(self.system).size

    def band(self, low: float, high: float) -> Band:
        """The curve and its band between two currents."""
        half = constants_of(self.wire).band
        at = [low + (high - low) * number / PIECES for number in range(PIECES + 1)]
        return Band(
            [(amps, self.feed(amps)) for amps in at],
            [(amps, self.feed(amps, 1 - half)) for amps in at],
            [(amps, self.feed(amps, 1 + half)) for amps in at],
        )


def _points(found: CouponsAnswer, print_: _Curve) -> Iterator[Point]:
    """Each coupon at its amps, as far over print as it was; those set aside are open crosses."""
    number = next(each for each in found.numbers if each.key == "melting")
    odd = {key for key, _ in number.found.odd}
    for record in found.records:
        amps, melting = record.facts.current_a, record.facts.melting
        if amps is not None and melting is not None:
            out = record.key in odd
            yield Point(amps, print_.feed(amps, melting), "cross" if out else "circle", not out)


def draw_fit(found: CouponsAnswer) -> Plot | None:
    """Return the fit as drawn, or None while no coupon or no settings can be drawn.

    Args:
        found: The page's answer.
    """
    point, tip = found.published.point, found.published.settings.tip_to_work.value
    if point is None or tip is None:
        return None
    stick = extension(tip, point.volts)
    print_ = _Curve(found.published.job.wire, stick, found.units)
    points = list(_points(found, print_))
    if not points:
        return None
    own = _Curve(found.dialled.job.wire, stick, found.units)
    amps = [point.current_a * LOW, point.current_a * HIGH, *(each.x for each in points)]
    low, high = min(amps), max(amps)
    bands = [print_.band(low, high)]
    if found.own is not None and found.own.phi is not None:
        bands.append(own.band(low, high))
    feeds = [y for band in bands for _, y in (*band.low, *band.high)] + [p.y for p in points]
    odd = sum(not each.inside for each in points)
    middle = point.current_a
    words = f"At {middle:.0f} A print feeds {_feed(print_, middle)}"
    if len(bands) > 1:
        words += f", your coupons say {_feed(own, middle)}"
    words += f". {odd} set aside as odd." if odd else "."
    legend: list[tuple[Shape, bool, str]] = [("circle", True, "a coupon")]
    if odd:
        legend.append(("cross", False, "set aside as odd"))
    unit = MEASURES["wire_feed"].unit(found.units).symbol
    return draw_points(
        "fit",
        "Wire feed by amps",
        Axis("amps, A", low, high),
        Axis(f"wire feed, {unit}", min(feeds), max(feeds)),
        points,
        bands,
        legend,
        words,
        ("own-coupons",),
    )


def _feed(curve: _Curve, current_a: float) -> str:
    unit = MEASURES["wire_feed"].unit(curve.system)
    return f"{curve.feed(current_a):.{unit.places}f} {unit.symbol}"
