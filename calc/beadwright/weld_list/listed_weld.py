"""One weld of a list, answered by the pages' own functions: cost, machine, preheat, distortion.

Equal welds are answered once, and stay answered while another line is edited.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Generator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, replace
from typing import Any
from urllib.parse import urlencode

from beadwright.errors import FieldErrors
from beadwright.heating.heat_answer import HeatAnswer
from beadwright.heating.heat_page import heat_answer
from beadwright.job.job_entries import FIELDS as JOB_FIELDS
from beadwright.job.page_query import read_page
from beadwright.machine.circuit import Circuit, circuit
from beadwright.machine.shop_load import dialled_for, load_of, machine_of
from beadwright.machine.shop_query import ShopQuery
from beadwright.money.cost import Cost, cost_of
from beadwright.money.cost_query import PREFIXES, CostQuery
from beadwright.money.cost_ways import PlannedWay, planned_ways, rates_of
from beadwright.money.later_way import LaterWay
from beadwright.money.way import Way
from beadwright.weld_list.weld_lines import WeldLine

Keys = tuple[tuple[str, str], ...]
"""Keys and texts, so that they can be looked up."""

MOST_HELD = 1000
"""Different welds whose answers are held ready: as many as a list counts [-]."""

SHARED = (
    "units", "wire", "dia", "gas", "travel_by", "aim", "machine_amps", "machine_volts",
    "rated_amps", "duty", "breaker", "supply", "phase", "nozzle", "own", "heat_min", "heat_max",
)  # fmt: skip
"""Keys of a job that a list says for all its welds; the others belong to one weld alone."""

OF_LIST = ("lines", "part", "set_up", "margin")
"""Keys of the whole list, which no weld's answer depends on."""

_OF_ONE = ("arc_min", "position", "leg", "reinforcement", "wfs", "volts", "ctwd", "travel",
           "transfer")  # fmt: skip
"""Keys of a way that a measured or chosen weld has and a list of different welds has not."""


@dataclass(frozen=True, slots=True)
class ListedWeld:
    """What the pages say of one line's welds.

    Attributes:
        query: The line as a query of any page [-].
        cost: The line as Cost reads it.
        ways: The ways to weld it, without what is done once a part.
        costs: What each costs, nothing done once a part and nothing ground out in it.
        circuit: What machine and circuit do with it.
        heat: What Heat says of it; None where it refuses.
        too_long: True if it is longer than the part, so that its own length is taken for it.
    """

    query: str
    cost: CostQuery
    ways: tuple[PlannedWay, ...]
    costs: tuple[Cost, ...]
    circuit: Circuit
    heat: HeatAnswer | None
    too_long: bool = False

    @property
    def first(self) -> PlannedWay:
        """The way the shop welds now."""
        return self.ways[0]

    @property
    def preheat_k(self) -> float | None:
        """Preheat it needs over a shop's own warmth, or None [K]."""
        heat = self.heat
        if heat is None or heat.needed.even_cold:
            return None
        return heat.needed.kelvin


def shared_keys(query: Mapping[str, str]) -> Keys:
    """Return what a list says for all its welds, by key.

    Args:
        query: The list's own query, by key [-].
    """
    left_out = {prefix + key for prefix in PREFIXES for key in _OF_ONE} | {*OF_LIST}
    return tuple(
        (key, text)
        for key, text in query.items()
        if key not in left_out and (key not in JOB_FIELDS or key in SHARED)
    )


def held_keys(kept: Mapping[str, Any]) -> Keys:
    """Return what a shop keeps of what counts for every weld, in one order.

    Args:
        kept: The shop's own defaults by key [-].
    """
    left_out = {*OF_LIST, "arc_min"}
    return tuple(
        sorted((key, str(text)) for key, text in kept.items() if text and key not in left_out)
    )


def listed_weld(line: WeldLine, shared: Keys, held: Keys) -> ListedWeld | None:
    """Return what the pages say of one line's welds.

    Args:
        line: A line that can be read [-].
        shared: What ``shared_keys`` says for all [-].
        held: What ``held_keys`` says for all [-].

    Returns:
        The answer; None for a weld left for later, see ``at_most_new``.

    Raises:
        FieldErrors: With each field's messages.
    """
    asked = shared, tuple(line.entries.items()), held
    if asked in _held:
        _held.move_to_end(asked)
        return _held[asked]
    if not _new.left:
        return None
    if _new.left > 0:
        _new.left -= 1
    _held[asked] = found = _listed(*asked)
    if len(_held) > MOST_HELD:
        _held.popitem(last=False)
    return found


_held: OrderedDict[tuple[Keys, Keys, Keys], ListedWeld] = OrderedDict()


@dataclass(slots=True)
class _New:
    """How many more welds may be answered anew; below zero: all."""

    left: int = -1


_new = _New()


@contextmanager
def at_most_new(count: int) -> Generator[None]:
    """Answer at most so many welds anew inside; the others are left for later.

    On a phone a long list would else take longer than a question may. Asked again, what was
    answered is held, and the next ones are.

    Args:
        count: Welds to answer anew, zero or more [-].
    """
    before, _new.left = _new.left, count
    try:
        yield
    finally:
        _new.left = before


def _listed(shared: Keys, own: Keys, held: Keys) -> ListedWeld:
    said, kept = tuple({**dict(shared), **dict(own)}.items()), dict(held)
    query = urlencode(said)
    cost = read_page(CostQuery, query, kept)
    shop = read_page(ShopQuery, query, kept)
    machine = circuit(machine_of(shop), load_of(shop, dialled_for(shop)))
    heat, too_long = _heated(said, kept)
    ways, rates = planned_ways(_without_hands(cost)), rates_of(cost)
    # One station: what the hands do meanwhile is a matter of the whole part.
    alone = (replace(each.way, stations=1, grind_s=0.0) for each in ways)
    costs = tuple(cost_of(way, rates) for way in alone)
    return ListedWeld(query, cost, ways, costs, machine, heat, too_long)


def _heated(said: Keys, kept: Mapping[str, str]) -> tuple[HeatAnswer | None, bool]:
    """What Heat says, and whether the weld is longer than the part asked about."""
    try:
        return heat_answer(urlencode(said), kept), False
    except FieldErrors as error:
        if not {"part_length", "weld_length"} <= {*error.messages}:
            return None, False
    own_length = [(key, text) for key, text in said if key != "part_length"]
    try:
        return heat_answer(urlencode(own_length), kept), True
    except FieldErrors:
        return None, True


def _without_hands(cost: CostQuery) -> CostQuery:
    """The same ways with nothing done once a part: that is counted for the whole list."""
    way = replace(cost.way, load=0.0, fit_up=0.0, spatter=0.0, other=0.0, swap=0.0)

    def later(each: LaterWay) -> LaterWay:
        # Blank, it goes as the first way.
        own = replace(each.way, load=None, fit_up=None, spatter=None, other=None, swap=None)
        return replace(each, way=own)

    return replace(cost, way=way, b=later(cost.b), c=later(cost.c), d=later(cost.d))


def hands_of(weld: ListedWeld) -> tuple[Way, ...]:
    """Return each way's minutes of a part alone: no arc, no wire, no gas.

    Args:
        weld: Any weld of the list: what is done once a part does not depend on it [-].

    Raises:
        FieldErrors: If an operating factor leaves less time than the clean-up written takes.
    """
    whole = planned_ways(weld.cost)
    return tuple(_hands(one.way, two.way) for one, two in zip(whole, weld.ways, strict=True))


def _hands(whole: Way, alone: Way) -> Way:
    return replace(
        whole,
        metal_kg=0.0,
        length_m=0.0,
        starts=0.0,
        reposition_s=0.0,
        clean_s=0.0,
        load_s=whole.load_s - alone.load_s,
        fit_up_s=whole.fit_up_s - alone.fit_up_s,
        spatter_s=whole.spatter_s - alone.spatter_s,
        other_s=whole.other_s - alone.other_s,
        swap_s=whole.swap_s - alone.swap_s,
    )
