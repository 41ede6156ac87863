"""What a way to weld says for itself, and what it takes from the first.

What is not written for a later way comes from the first, with two exceptions. Settings by hand and
measurements pass only to a way that welds the same (same wire, size, gas, transfer, mover, position
and size of weld), because a measured feed says nothing about another wire. If the first way has an
operating factor, a later one takes the minutes without an arc, not the factor, changed by any
minutes of its own: a faster wire does not make fit-up faster. What belongs to a cell passes only to
a way whose torch is moved alike.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from beadwright.errors import FieldErrors
from beadwright.job.job import Job
from beadwright.job.job_entries import JobEntries
from beadwright.job.job_joint import wanted_leg
from beadwright.job.job_reading import job_of
from beadwright.money.cell_entries import CELL_KEYS
from beadwright.money.cost_query import WAY_JOB_KEYS, CostQuery
from beadwright.money.later_way import JobChanges, LaterWay, written
from beadwright.money.way_entries import WayEntries

_HAND = ("wfs", "volts", "ctwd", "travel")
_SAME = tuple(key for key in WAY_JOB_KEYS if key not in _HAND)


@dataclass(frozen=True, slots=True)
class ShopShare:
    """What the shop says that goes into every way.

    Attributes:
        nozzle_price: Price of a nozzle [money].
        nozzle_life_s: Arc time one lasts [s].
        gas_extra_s: Gas before and after each arc [s].
        grind_s: Grinding out a part before it is welded again [s].
        batch: Parts in a batch, one or more [-].
    """

    nozzle_price: float
    nozzle_life_s: float
    gas_extra_s: float
    grind_s: float = 0.0
    batch: int = 1


@dataclass(frozen=True, slots=True)
class AskedWay:
    """What a way says, and what it takes from the first.

    Attributes:
        prefix: What its keys begin with.
        job: The job as this way welds it.
        own: What the way itself says.
        base: What the first way says.
        taken: What the way says, or the first.
        tested: What was measured on this way, or on one that welds the same.
        same: True if it welds the same as the first.
        given: Its keys the shop gave or the query typed, without the prefix.
        known: The same, with those it takes from the first.
        typed: Its keys the query typed, without the prefix.
        once: What is paid once for changing to it, name by name [money].
        shop: What the shop says.
    """

    prefix: str
    job: Job
    own: WayEntries
    base: WayEntries
    taken: WayEntries
    tested: WayEntries
    same: bool
    given: frozenset[str]
    known: frozenset[str]
    typed: frozenset[str]
    once: tuple[tuple[str, float], ...]
    shop: ShopShare


def later_way(query: CostQuery, prefix: str, way: LaterWay, shop: ShopShare) -> AskedWay:
    """Return what a later way says, and what it takes from the first.

    Args:
        query: The Cost page's query [-].
        prefix: What its keys begin with [-].
        way: What the way itself says [-].
        shop: What the shop says [-].

    Raises:
        FieldErrors: If its job contradicts itself, by its own keys.
    """
    own, base = way.way, query.way
    same = _welds_the_same(way.job, query.asked)
    alike = way.job.travel_by in (None, query.asked.travel_by)
    lent = base if alike else replace(base, **dict.fromkeys(CELL_KEYS))
    taken = replace(lent, **written(own))
    given = _without(prefix, query.own)
    return AskedWay(
        prefix=prefix,
        job=_job(query.asked, prefix, way.job, same=same),
        own=own,
        base=base,
        taken=taken,
        tested=taken if same else own,
        same=same,
        given=given,
        known=given | query.own,
        typed=_without(prefix, query.typed),
        once=way.once.amounts(),
        shop=shop,
    )


def _without(prefix: str, keys: Iterable[str]) -> frozenset[str]:
    """Keys that begin with a prefix, without it."""
    return frozenset(key.removeprefix(prefix) for key in keys if key.startswith(prefix))


def _welds_the_same(changes: JobChanges, first: JobEntries) -> bool:
    """True for the same wire, size, gas, transfer, mover, position and size of weld."""
    said = written(changes)
    return all(said[key] == getattr(first, key) for key in _SAME if key in said)


def _job(first: JobEntries, prefix: str, changes: JobChanges, *, same: bool) -> Job:
    """The job as a later way welds it: the same weld, though a hand might lay another uphill."""
    by_hand = {} if same else dict.fromkeys(_HAND)
    try:
        job = job_of(replace(first, **{**by_hand, **written(changes)}))
        leg = wanted_leg(job_of(first))
        if job.is_fillet and job.leg_m is None and wanted_leg(job) != leg:
            job = replace(job, leg_m=leg)
        return job
    except FieldErrors as error:
        raise FieldErrors(
            {prefix + k if k in WAY_JOB_KEYS else k: v for k, v in error.messages.items()}
        ) from error
