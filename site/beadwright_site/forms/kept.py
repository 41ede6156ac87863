"""What the shop keeps on its phone: which entries, under which names, and what they mean to a page.

A price belongs to a wire of a size or to a gas, not to a page's first or second way: it is kept
with what it is the price of, as ``wire_price@ER70S-6 0.045in``, and put under the key of the way
that welds with it.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from marshmallow import ValidationError

from beadwright.errors import BeadwrightError
from beadwright.job.job_entries import DEFAULTS as JOB
from beadwright.job.own_entry import LONGEST as LONGEST_OWN
from beadwright.known_keys import USUAL
from beadwright.money.cost_query import DEFAULTS as COST
from beadwright.money.cost_query import PREFIXES
from beadwright.process.gases import gas_of
from beadwright.process.wires import size_of
from beadwright.reading.queries import messages_of
from beadwright.weld_list.weld_lines import LONGEST_LIST
from beadwright_site.forms.labels import kept_fields, label_of
from beadwright_site.forms.typed import read_entries

OF_WIRE = ("wire_price", "spool_price")
OF_GAS = ("gas_price", "cylinder_price")
"""Prices kept with what they are the price of."""

MACHINE = ("machine_amps", "machine_volts", "rated_amps", "duty", "plate_amps")
CIRCUIT = ("supply", "phase", "power_factor", "breaker", "cord", "cord_length", "generator")
LEADS = ("cable", "cable_length")
SHOWN = ("units", "currency")

RATES = ("shop_rate", "labour", "overhead", "energy_price", "machine_efficiency", "idle")
BOUGHT = ("spool", "waste", "tip_price", "tip_life", "nozzle_price", "nozzle_life", "cylinder_gas",
          "gas_extra")  # fmt: skip
MINUTES = ("fit_up", "reposition", "clean", "spatter", "other", "spool_change", "rework", "grind")
HOURS = ("welders", "shift", "shifts", "weeks", "months")

LEARNED = ("own", "welder", "machine", "lines")
"""Kept as well, but from other pages: what coupons taught, who welds on what; the weld list."""

KEPT = (*MACHINE, *CIRCUIT, *LEADS, *SHOWN, *USUAL, *RATES, *BOUGHT, *MINUTES, *HOURS)
"""Keys kept as they are, each with an entry on Shop."""

GIVEN = ("coupons", "jobs")
"""Keys the phone gives with a question; they are kept record by record, not as an entry."""

LONGEST: Mapping[str, int] = {"own": LONGEST_OWN, "lines": LONGEST_LIST}
USUAL_LONGEST = 60
"""Characters an entry may have: by key, and of all others."""

MOST_KEPT = 300
"""Entries a phone's file may hold."""

Mapped = Mapping[str, Any]


def keep_name(key: str, wire: str, gas: str) -> str:
    """Return the name an entry is kept under; empty for what belongs to one job.

    Args:
        key: Key of the query, with or without a way's prefix.
        wire: Wire and size of the way, as ``wire_name`` writes it.
        gas: Gas of the way.
    """
    plain = bare(key)
    if plain in OF_WIRE:
        return f"{plain}@{wire}"
    if plain in OF_GAS:
        return f"{plain}@{gas}"
    return key if key in KEPT else ""


def bare(key: str) -> str:
    """Return a key without a way's prefix."""
    return key[2:] if key.startswith(PREFIXES[1:]) else key


def wire_name(wire: str, size: str) -> str:
    """Return a wire as prices are kept by it; whatever cannot be read stays as typed."""
    try:
        return f"{wire.strip().upper()} {size_of(size)}"
    except BeadwrightError:
        return f"{wire} {size}"


def gas_name(gas: str) -> str:
    """Return a gas as prices are kept by it; whatever cannot be read stays as typed."""
    try:
        return gas_of(gas).name
    except BeadwrightError:
        return gas


def kept_for(query: str, kept: Mapped | None) -> dict[str, str]:
    """Return the shop's defaults for a page: prices put under the keys of the query's ways.

    Args:
        query: The query string.
        kept: What the phone keeps, by name.
    """
    texts = {k: v for k, v in (kept or {}).items() if isinstance(v, str) and v}
    found = {USUAL.get(key, key): texts[key] for key in (*KEPT, *LEARNED, *GIVEN) if key in texts}
    if not any("@" in name for name in texts):
        return found
    typed = read_entries(query, COST)
    for prefix in PREFIXES:
        if prefix in ("", "b_") or any(key.startswith(prefix) for key in typed):
            found |= _prices(prefix, typed, found, texts)
    return found


def _prices(
    prefix: str, typed: Mapping[str, str], found: Mapping[str, str], texts: Mapping[str, str]
) -> dict[str, str]:
    wire, gas = way_buys(prefix, typed, found)
    prices: dict[str, str] = {}
    for key in (*OF_WIRE, *OF_GAS):
        price = texts.get(keep_name(key, wire, gas))
        if price:
            prices[prefix + key] = price
    return prices


def way_buys(prefix: str, typed: Mapping[str, str], found: Mapping[str, str]) -> tuple[str, str]:
    """Return the wire and the gas a way buys, as prices are kept by them.

    Args:
        prefix: The way's prefix.
        typed: Entries of the query.
        found: The shop's defaults.
    """

    def text(key: str) -> str:
        own = typed.get(prefix + key) or COST.get(prefix + key, "")
        return own or typed.get(key) or found.get(key) or JOB[key]

    return wire_name(text("wire"), text("dia")), gas_name(text("gas"))


def check_kept(kept: Mapped) -> tuple[dict[str, str], dict[str, list[str]]]:
    """Return what of a file can be kept, and what was wrong with the rest, by name.

    Args:
        kept: Names and texts, from a file or a form.
    """
    good: dict[str, str] = {}
    wrong: dict[str, list[str]] = {}
    for name, value in list(kept.items())[:MOST_KEPT]:
        text = value.strip() if isinstance(value, str) else ""
        messages = list(_messages(name, text, kept.get("units", "us")))
        if messages:
            wrong[name[:60]] = messages
        else:
            good[name] = text
    return good, wrong


def label_kept(name: str) -> str:
    """Return what a kept entry is called, with what it is the price of."""
    key, _, what = name.partition("@")
    return f"{label_of(key)}, {what}" if what else label_of(key)


def _messages(name: str, text: str, system: object) -> Iterator[str]:
    key, _, what = name.partition("@")
    known = (
        key in (*OF_WIRE, *OF_GAS) and 0 < len(what) <= 40
        if "@" in name
        else key in (*KEPT, *LEARNED)
    )
    if not known:
        yield "This app keeps no such entry."
        return
    if not text or len(text) > LONGEST.get(key, USUAL_LONGEST):
        yield "Nothing is written, or too much."
        return
    field = kept_fields().get(USUAL.get(key, key))
    if field is not None:
        try:
            field.deserialize(text, key, {"units": system})
        except ValidationError as error:
            yield from messages_of(error).get("_schema", ["This cannot be taken."])
