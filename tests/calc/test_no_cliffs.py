"""No set point jumps where a hand would not: leg, plate and gas are walked in small steps."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

import pytest

from beadwright.job.job_query import read_query
from beadwright.setting.dial_in import dial_in

MOST_FEED_STEP = 35.0
"""Most the feed may move in a step of input in one mode and number of passes [in/min]."""
MOST_VOLTS_STEP = 1.1
MOST_AMPS_AT_A_CHANGE = 0.45
"""Most the current may move where the mode changes: from short circuit's top to spray's start."""

WIRES = ("ER70S-6&dia=0.035in", "ER70S-6&dia=0.045in", "E70C-6M&dia=0.045in")


class Spot(NamedTuple):
    """Where an answer stands; shut where there is none."""

    mode: str
    passes: int
    feed: float
    amps: float
    volts: float


def spot(query: str) -> Spot | None:
    found = dial_in(read_query(query).job)
    if found.outcome is None or found.outcome.current.value is None:
        return None
    feed, volts = found.settings.wire_feed.value, found.settings.volts.value
    assert feed is not None
    return Spot(found.plan.transfer, found.plan.passes, feed * 60 / 0.0254,
                found.outcome.current.value, volts or 0.0)  # fmt: skip


def walks() -> Iterator[tuple[str, list[str]]]:
    for wire in WIRES:
        for position in ("2F", "3F-up"):
            base = f"wire={wire}&position={position}&gas=90/10"
            yield f"plate {base}", [f"{base}&plate={t / 1000}in" for t in range(40, 800, 8)]
            legs = [f"{base}&plate=1/2in&leg={leg / 128}in" for leg in range(16, 64)]
            yield f"leg {base}", legs
    for plate in ("1/8in", "1/4in", "3/8in"):
        base = f"wire=ER70S-6&dia=0.045in&plate={plate}"
        yield f"gas {base}", [f"{base}&gas={100 - co2}/{co2}" for co2 in range(3, 50)]
    yield "CO2", [f"gas=CO2&plate={t / 1000}in" for t in range(120, 500, 4)]


@pytest.mark.parametrize(("name", "queries"), list(walks()), ids=lambda value: str(value)[:60])
def test_no_set_point_jumps(name: str, queries: list[str]) -> None:
    jumps: list[str] = []
    before: Spot | None = None
    for query in queries:
        here = spot(query)
        if here is not None and before is not None:
            same = (here.mode, here.passes) == (before.mode, before.passes)
            far = (
                abs(here.feed - before.feed) > MOST_FEED_STEP
                or abs(here.volts - before.volts) > MOST_VOLTS_STEP
                if same
                else abs(here.amps / before.amps - 1) > MOST_AMPS_AT_A_CHANGE
            )
            if far:
                jumps.append(f"{query}: {before} → {here}")
        before = here
    assert not jumps, f"{name}: {jumps[:5]}"


def test_the_cliffs_that_were() -> None:
    """Leg 0.141 to 0.156 in, CO2 on 0.1875 to 0.190 in, 80/20 to 79/21."""
    for one, other, share in (
        ("plate=1/2in&leg=0.141in", "plate=1/2in&leg=0.156in", 0.05),
        ("gas=CO2&plate=0.1875in", "gas=CO2&plate=0.190in", 0.10),
        ("gas=80/20", "gas=79/21", 0.05),
    ):
        first, second = spot(one), spot(other)
        assert first is not None
        assert second is not None
        assert second.amps == pytest.approx(first.amps, rel=share)
