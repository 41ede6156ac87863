"""Whether breaker, cord and generator carry what the job draws."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType

from beadwright.machine.check import Check, Held
from beadwright.machine.conductors import WARM_K, Conductor, cord_amps, resistance
from beadwright.machine.power_source import Drawn, Machine
from beadwright.phrases import Amount, Parameter, say
from beadwright.power.primary import line_factor

BREAKER_TRIPS = 1.35
"""Share of its rating at which a breaker has to trip, sooner or later [-].

Source: UL 489, calibration: it holds its rating; at 135 % it opens within an hour (to 50 A, two
hours above), at 200 % within ``TRIPS_AT_TWICE_S`` (found second-hand).
"""

TRIPS_AT_TWICE_S: Mapping[float, float] = MappingProxyType({30.0: 120.0, 50.0: 240.0, 100.0: 360.0})
"""Most time to trip at twice the rating, by rating up to [A, s].

Source: UL 489: 2 min to 30 A (found second-hand), 4 min to 50 A and 6 min to 100 A (from memory).
"""

HOUR_TO_A = 50.0
"""Rating up to which a breaker at 135 % opens within one hour, above it within two [A]."""

MOST_CORD_SHARE = 0.05
"""Most of the supply's volts to lose in the cord [-]. Common practice."""

GENERATOR_START = 1.35
"""Generator's rating over the volt-amps the arc draws [-].

Source: operating manuals of three power sources, rule of thumb; no less than 1 (found).
"""


def supply_checks(machine: Machine, drawn: Drawn) -> Iterator[Check]:
    """Yield whether breaker, cord and generator carry what is drawn, each that there is.

    Source: ``BREAKER_TRIPS``, ``conductors.CORD_AMPS``, ``MOST_CORD_SHARE``, ``GENERATOR_START``.

    Args:
        machine: The machine and its circuit [-].
        drawn: What the job draws [-].
    """
    if machine.breaker_a is not None:
        yield _breaker(machine.breaker_a, drawn)
    if machine.cord is not None:
        most = cord_amps(machine.cord, machine.phases)
        if most is not None:
            fits = drawn.effective_a <= most
            told = say(
                "machine.cord-carries" if fits else "machine.cord-too-thin",
                cord=machine.cord.name,
                most=Amount(most, "current"),
                asked=Amount(drawn.effective_a, "current"),
                phases=machine.phases,
            )
            yield Check("cord", "holds" if fits else "fails", "current", drawn.effective_a,
                        most, told, "nec-400.5")  # fmt: skip
        yield _cord_drop(machine, machine.cord, drawn.primary_a)
    if machine.generator_va is not None:
        yield _generator(machine.generator_va, drawn.apparent_va)


def _breaker(breaker: float, drawn: Drawn) -> Check:
    """It holds its rating; over 135 % it trips, however short the welds; between, by the time."""
    held: Held = "holds"
    share = drawn.primary_a / breaker
    told: dict[str, Parameter] = {
        "drawn": Amount(drawn.primary_a, "current"),
        "breaker": Amount(breaker, "current"),
    }
    heats_like = Amount(drawn.effective_a, "current")
    phrase = say("machine.breaker-holds", **told)
    if drawn.effective_a > breaker:
        held, phrase = "fails", say("machine.breaker-overheats", **told, heats_like=heats_like)
    elif share > BREAKER_TRIPS:
        twice = _at_twice(breaker)
        held, phrase = "fails", say("machine.breaker-trips", **told, share=share, twice=twice)
    elif share > 1:
        hours = Amount(3600.0 if breaker <= HOUR_TO_A else 7200.0, "time")
        phrase = say(
            "machine.long-weld-trips", **told, share=share, heats_like=heats_like, hours=hours
        )
        held = "close"
    return Check("breaker", held, "current", drawn.primary_a, breaker, phrase, "ul-489")


def _at_twice(breaker: float) -> Amount:
    times = [time for rating, time in TRIPS_AT_TWICE_S.items() if breaker <= rating]
    return Amount(min(times, default=max(TRIPS_AT_TWICE_S.values())), "time")


def _cord_drop(machine: Machine, cord: Conductor, primary: float) -> Check:
    ways = 2.0 if machine.phases == 1 else line_factor(3)
    lost = primary * resistance(cord, machine.cord_m, WARM_K) * ways
    most = MOST_CORD_SHARE * machine.supply_v
    fits = lost <= most
    told = say(
        "machine.cord-drop" if fits else "machine.cord-drop-soft-arc",
        lost=Amount(lost, "volts"),
        supply=Amount(machine.supply_v, "volts"),
    )
    return Check("cord_drop", "holds" if fits else "close", "volts",
                 lost, most, told, "copper-annealed")  # fmt: skip


def _generator(rating: float, steady: float) -> Check:
    held: Held = "holds"
    key = "machine.generator-holds"
    if steady > rating:
        held, key = "fails", "machine.generator-stalls"
    elif steady * GENERATOR_START > rating:
        held, key = "close", "machine.generator-close"
    told = say(key, drawn=Amount(steady, "power"), gives=Amount(rating, "power"),
               start=Amount(steady * GENERATOR_START, "power"))  # fmt: skip
    return Check("generator", held, "power", steady, rating, told, "generator-rule")
