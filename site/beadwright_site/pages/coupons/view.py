"""What the Coupons page shows of its answer, in words and numbers already written."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from beadwright import units
from beadwright.coupons.coupon_records import CouponRecord
from beadwright.coupons.coupons_page import NAMES, CouponsAnswer
from beadwright.coupons.learned_numbers import LearnedNumber
from beadwright.joint.joints import Dimension
from beadwright.phrases import say
from beadwright.results import Quantity
from beadwright.words.wording import worded
from beadwright_site.drawings.passes_drawing import PassDrawing, draw_passes
from beadwright_site.drawings.strip_drawing import Band, Strip, draw_strip
from beadwright_site.parts.facts import Fact
from beadwright_site.written import written

SETTINGS = ("Wire feed", "Volts", "Travel speed", "Stickout (tip to work)")


@dataclass(frozen=True, slots=True)
class NumberRow:
    """A number of the shop, as a line of the table.

    Attributes:
        name: What it is.
        print: What print says of it, with its band.
        own: What print and coupons say together, with theirs; empty while none counts.
        count: Coupons behind it.
        strip: Both bands and each coupon as drawn, or None while none counts.
    """

    name: str
    print: str
    own: str
    count: int
    strip: Strip | None


def headline_of(found: CouponsAnswer) -> str:
    """Return what the coupons say, in a line."""
    count = found.own.coupons if found.own is not None else 0
    if not count:
        return "No coupon kept for this wire and gas"
    return f"{count} coupon{'' if count == 1 else 's'} of this wire and gas count"


def _over(number: LearnedNumber, share: float | None, half: float) -> str:
    """How far a number stands over print, and how far that may be off; print by its band alone."""
    meter = number.key == "meter"
    off = f"± {half:.1f}" if meter else f"± {100 * half:.0f}"
    unit = "V" if meter else "%"
    if share is None:
        return f"{off} {unit}"
    return f"{share:+.1f} V {off}" if meter else f"{100 * share:+.0f} % {off}"


def number_rows(found: CouponsAnswer) -> Iterator[NumberRow]:
    """Yield each number with its band, before the coupons and after."""
    for number in found.numbers:
        yield NumberRow(
            name=worded(say(NAMES[number.key]), found.units).capitalize(),
            print=_over(number, None, number.half_before),
            own=_over(number, number.share, number.half_band) if number.count else "",
            count=number.count,
            strip=_number_strip(number, found) if number.count else None,
        )


def _number_strip(number: LearnedNumber, found: CouponsAnswer) -> Strip:
    """A number's band before the coupons and after, and what each coupon showed."""
    odd = {key for key, _ in number.found.odd}
    half, name = number.half_before, worded(say(NAMES[number.key]), found.units)
    own = _over(number, number.share, number.half_band)
    low, high = (
        f"{end:+.1f} V" if number.key == "meter" else f"{100 * end:+.0f} %" for end in (-half, half)
    )
    return draw_strip(
        Band(-half, half, 0.0),
        Band(number.share - number.half_band, number.share + number.half_band, number.share),
        [(each.y, each.key not in odd) for each in number.shown],
        (low, high),
        f"{name}: print {_over(number, None, half)}, yours {own}, {len(number.shown)} coupons",
    )


def setting_strips(found: CouponsAnswer) -> Iterator[tuple[str, str, str, Strip]]:
    """Yield each setting that coupons moved: as published, as it is now, both windows as drawn."""
    pairs = zip(SETTINGS, found.published.settings.all(), found.dialled.settings.all(), strict=True)
    for name, plain, own in pairs:
        before, after = (_shown(each.value, each.measure, found) for each in (plain, own))
        old, new = _window(plain), _window(own)
        if before == after or old is None or new is None:
            continue
        low, high = (units.show(end, plain.measure, found.units) for end in (old.low, old.high))
        spoken = f"{name}: as published {before}, by your coupons {after}, each in its window"
        yield name, before, after, draw_strip(old, new, (), (low, high), spoken)


def _window(setting: Quantity) -> Band | None:
    if setting.value is None or setting.low is None or setting.high is None:
        return None
    return Band(setting.low, setting.high, setting.value)


def setting_rows(found: CouponsAnswer) -> Iterator[tuple[str, str, str, bool]]:
    """Yield each setting as published and as the shop's own numbers have it, and if they differ."""
    pairs = zip(SETTINGS, found.published.settings.all(), found.dialled.settings.all(), strict=True)
    for name, plain, own in pairs:
        before = _shown(plain.value, plain.measure, found)
        after = _shown(own.value, own.measure, found)
        yield name, before, after, before != after


@dataclass(frozen=True, slots=True)
class Pace:
    """What the beat is made from, as attributes of the page.

    Attributes:
        beads: Travel of each bead [mm/s].
        length: Length of each [mm].
        steps: Lengths from tick to tick to choose from [mm].
        names: The same in words.
    """

    beads: str
    length: str
    steps: str
    names: str


def pace_of(found: CouponsAnswer) -> Pace:
    """Return what the beat is made from."""
    steps, names = ("6.35 12.7", "1/4 in,1/2 in") if found.units == "us" else ("5 10", "5 mm,10 mm")
    beads = " ".join(f"{1000 * travel:.4f}" for travel in found.travels())
    return Pace(beads, f"{1000 * found.paced_m():.2f}", steps, names)


@dataclass(frozen=True, slots=True)
class BeadsDrawn:
    """The beads of a coupon laid in more than one.

    Attributes:
        drawing: The joint to scale, every bead in its place.
        words: How many, and what the settings above are of.
    """

    drawing: PassDrawing
    words: str


def beads_of(found: CouponsAnswer) -> BeadsDrawn | None:
    """Return the drawing of the beads, or None where one is planned or none can be laid."""
    count = found.dialled.plan.passes
    if count == 1 or not found.dialled.open:
        return None
    beads = found.beads()

    def write(dimension: Dimension) -> str:
        return units.show(dimension.value_m, "leg", found.units)

    drawing = draw_passes(beads, len(beads.beads), write)
    return BeadsDrawn(drawing, f"{len(beads.beads)} beads, numbered as laid. Settings are of each.")


def _shown(value: float | None, measure: str, found: CouponsAnswer) -> str:
    return "–" if value is None else written(value, measure, found.units)


def coupon_facts_of(found: CouponsAnswer) -> Iterator[Fact]:
    """Yield what the coupon at hand says."""
    facts, system = found.facts, found.units
    if facts.travel_m_s is not None:
        yield Fact(written(facts.travel_m_s, "travel", system), "travel", _against(facts.travel))
    if facts.melting is not None:
        yield Fact(f"{100 * (facts.melting - 1):+.0f} %", "wire melted, over print at those amps")
    if facts.laid_kg_s is not None:
        yield Fact(written(facts.laid_kg_s, "deposition", system), "laid")
    if facts.efficiency is not None:
        yield Fact(f"{100 * (facts.efficiency - 1):+.0f} %", "deposition efficiency, over print")
    if facts.crown is not None:
        yield Fact(f"{100 * (facts.crown - 1):+.0f} %", "weld metal in that leg, over print")
    if facts.meter_v is not None:
        yield Fact(f"{facts.meter_v:+.1f} V", "machine's meter, over the arc")
    seen, planned = found.query.seen, found.published.outcome
    if seen.penetration_seen is not None and planned is not None:
        yield _beside_plan(seen.penetration_seen, planned.penetration, found)
    if seen.flow_seen is not None and planned is not None:
        yield _beside_plan(seen.flow_seen, planned.gas_flow, found)
    if found.query.seen.burst_time is not None and facts.feed_m_s is not None:
        yield Fact(written(facts.feed_m_s, "wire_feed", system), "wire feed, as timed")


def _beside_plan(seen: float, plan: Quantity, found: CouponsAnswer) -> Fact:
    """What was measured, with the room it has in the plan."""
    value, name = written(seen, plan.measure, found.units), plan.name[0].lower() + plan.name[1:]
    if plan.low is None or plan.high is None:
        return Fact(value, name)
    low = units.show(plan.low, plan.measure, found.units)
    room = f"{low} to {written(plan.high, plan.measure, found.units)}"
    tone = "planned" if plan.low <= seen <= plan.high else "planned: outside"
    return Fact(value, name, f"{room} {tone}")


def _against(share: float | None) -> str:
    return "" if share is None else f"{100 * (share - 1):+.0f} % on plan"


@dataclass(frozen=True, slots=True)
class LogRow:
    """A kept coupon, as a line of the list.

    Attributes:
        key: Its key.
        made: Its day.
        who: Welder and machine.
        says: What it says, in a few words.
        odd: What it does not fit the others in, or empty.
        query: Its entries.
    """

    key: str
    made: str
    who: str
    says: str
    odd: str
    query: str


def log_rows(found: CouponsAnswer) -> Iterator[LogRow]:
    """Yield the kept coupons of this wire and gas, the newest first."""
    odd = found.odd()
    for record in sorted(found.records, key=lambda each: each.made, reverse=True):
        yield LogRow(
            key=record.key,
            made=record.made[:10],
            who=", ".join(name for name in (record.welder, record.machine) if name),
            says=_says(record),
            odd=_odd_words(odd, record, found),
            query=record.query,
        )


def _odd_words(
    odd: Mapping[str, tuple[LearnedNumber, ...]], record: CouponRecord, found: CouponsAnswer
) -> str:
    names = (worded(say(NAMES[number.key]), found.units) for number in odd.get(record.key, ()))
    return ", ".join(names)


def _says(record: CouponRecord) -> str:
    facts = record.facts
    told = (
        ("melted", facts.melting), ("laid", facts.efficiency), ("crown", facts.crown),
        ("travel", facts.travel),
    )  # fmt: skip
    parts = [f"{name} {100 * (value - 1):+.0f} %" for name, value in told if value is not None]
    if facts.meter_v is not None:
        parts.append(f"meter {facts.meter_v:+.1f} V")
    return ", ".join(parts) or "nothing measured"
