"""The form of the Cost page: the job, each way, what the shop pays, how sure each figure is."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from beadwright.money.cost_page import CostAnswer, invented_in_use
from beadwright.money.cost_query import (
    ONCE_WORDS,
    PREFIXES,
    SHARED_WORDS,
    WAY_WORDS,
    CostSchema,
    defaults_for,
)
from beadwright.money.demo_prices import INVENTED
from beadwright.units import System
from beadwright_site.forms.entries import (
    Entry,
    EntryGroup,
    Form,
    entry_group,
    measures_of,
    of_field,
)
from beadwright_site.forms.gas_entry import gas_entry
from beadwright_site.forms.job_form import Field, job_fields
from beadwright_site.forms.kept import keep_name, way_buys
from beadwright_site.forms.labels import LABELS
from beadwright_site.forms.wire_options import size_options
from beadwright_site.links import query_of

JOB_KEYS = (
    "joint", "corner", "plate", "plate2", "skew", "leg", "leg2", "gap", "angle", "root_face",
    "depth", "depth2", "backing", "hole", "slot_length", "position", "weld_length", "welds",
)  # fmt: skip
"""What the joint does not ask of these is left out."""
FIRST_WAY = ("wire", "dia", "gas", "transfer", "travel_by")
BY_HAND = ("wfs", "volts", "travel")
VOLUME = ("parts", "batch", "months")
PRICES = ("wire_price", "gas_price", "cylinder_price", "cylinder_gas", "tip_price")
MINUTES = ("fit_up", "reposition", "clean", "spatter", "other", "spool_change", "factor")
MEASURED = ("arc_min", "laid", "efficiency", "gas_flow")
SMALL = ("spool", "waste", "rework", "tip_life", "yearly")
RATES = ("labour", "overhead", "energy_price", "machine_efficiency", "idle", "nozzle_price",
         "nozzle_life", "gas_extra", "grind")  # fmt: skip
HOURS = ("welders", "shift", "shifts", "weeks")
SURE = ("swing_rates", "swing_prices", "swing_feed", "swing_minutes", "swing_volume", "swing_once",
        "swing_size", "seed", "currency")  # fmt: skip

TEXTS = frozenset({"name", "currency"})


def prefixes_in(typed: Mapping[str, str]) -> tuple[str, ...]:
    """Return the prefixes of the ways of a query: two, or as many as have keys of their own."""
    return tuple(p for p in PREFIXES if p in ("", "b_") or any(key.startswith(p) for key in typed))


def form_of(
    typed: Mapping[str, str],
    kept: Mapping[str, str],
    system: System,
    found: CostAnswer | None,
    errors: Mapping[str, Sequence[str]],
) -> Form:
    """Return what the form is filled from.

    Args:
        typed: Entries as typed.
        kept: The shop's defaults by key.
        system: Units of bare numbers.
        found: The answer, or None if the entries could not be taken.
        errors: Messages by key.
    """
    invented = (
        frozenset(invented_in_use(found.query))
        if found is not None
        else frozenset(k for k in INVENTED if k not in typed and k not in kept)
    )
    kept_as: dict[str, str] = {}
    for prefix in prefixes_in(typed):
        wire, gas = way_buys(prefix, typed, kept)
        keys = (*WAY_WORDS, *(SHARED_WORDS if not prefix else ()))
        kept_as |= {prefix + key: keep_name(prefix + key, wire, gas) for key in keys}
    defaults = defaults_for(typed.get("b_wire", ""))
    return Form(typed, kept, defaults, measures_of(CostSchema), errors, invented, system, kept_as)


def cost_form(
    typed: Mapping[str, str],
    kept: Mapping[str, str],
    system: System,
    found: CostAnswer | None = None,
    errors: Mapping[str, Sequence[str]] | None = None,
) -> tuple[EntryGroup, ...]:
    """Return the form filled with what was typed; arguments as of ``form_of``."""
    wrong = errors or {}
    form = form_of(typed, kept, system, found, wrong)
    job = {**kept, **typed}
    dialled = found.ways[0].dialled if found is not None else None
    fields = job_fields(job, system, dialled, wrong)
    ways = prefixes_in(typed)
    groups = [
        entry_group(
            "job", "The job", [of_field(fields[key]) for key in JOB_KEYS if not fields[key].hidden]
        ),
        entry_group("volume", "How many", [form.entry(key, LABELS[key]) for key in VOLUME]),
    ]
    for prefix in ways:
        groups += _way_groups(form, prefix, fields, typed)
    groups[-1] = _with_link(groups[-1], ways, typed, fields["wire"].value)
    groups += [
        entry_group("rates", "Rates of the shop", [form.entry(key, LABELS[key]) for key in RATES]),
        entry_group("hours", "Hours of the shop", [form.entry(key, LABELS[key]) for key in HOURS]),
        entry_group("sure", "How far each may be off", [
            *(form.entry(key, LABELS[key], words=key in TEXTS) for key in SURE),
            of_field(fields["units"]),
        ]),
    ]  # fmt: skip
    return tuple(groups)


def _way_groups(
    form: Form, prefix: str, fields: Mapping[str, Field], typed: Mapping[str, str]
) -> Iterator[EntryGroup]:
    letter = prefix[:1].upper() or "A"
    title = "Way A: as you weld now" if not prefix else f"Way {letter}"
    same = "" if not prefix else "as A"

    def entry(key: str) -> Entry:
        # A price nobody wrote for this way is the first way's; a figure of its own stands in else.
        return form.entry(prefix + key, LABELS[key], blank=same, words=key in TEXTS)

    weld = [_of_way(form, prefix, fields[key]) for key in (*FIRST_WAY, *BY_HAND)]
    prices = [*map(entry, PRICES[: 4 if not prefix else 3])]
    yield entry_group(f"way-{letter}", title, [entry("name"), *weld, *prices])
    minutes = [*map(entry, MINUTES)]
    measured = [
        form.entry(prefix + key, LABELS[key], blank="worked out", words=False) for key in MEASURED
    ]
    small = [*map(entry, (*PRICES[4:], *SMALL))]
    yield entry_group(f"minutes-{letter}", f"Way {letter}: minutes off the arc", minutes)
    yield entry_group(f"measured-{letter}", f"Way {letter}: what you measured", measured,
                 "Weigh and time it: it outranks what is worked out.")  # fmt: skip
    yield entry_group(f"small-{letter}", f"Way {letter}: waste, rework, tips", small)
    if prefix:
        once = [form.entry(prefix + key, LABELS[key], blank="0") for key in ONCE_WORDS]
        yield entry_group(f"once-{letter}", f"Way {letter}: paid once for the change", once)


def _of_way(form: Form, prefix: str, field: Field) -> Entry:
    """An entry of the job as a way may say it; the first way's is the job's own."""
    if not prefix:
        return of_field(field)
    key = prefix + field.key
    if field.key == "gas":
        return gas_entry(form, key, field.label, "" if form.defaults.get(key) else "As A")
    if field.options:
        options = field.options
        if field.key == "dia":  # a way's own wire may be made in other sizes than the first's
            options = size_options(form.typed.get(f"{prefix}wire", ""), field.value, form.system)
        choices = [(o.value, o.word, o.under) for o in options]
        blank = "" if form.defaults.get(key) else "As A"
        return form.choice(key, field.label, choices, blank)
    entry = form.entry(key, field.label, blank="worked out")
    return entry


def _with_link(
    group: EntryGroup, ways: Sequence[str], typed: Mapping[str, str], wire: str
) -> EntryGroup:
    """Ways are added and taken out by a link, which needs no script."""
    links: list[tuple[str, str]] = []
    if len(ways) < len(PREFIXES):
        following = PREFIXES[len(ways)]
        links.append((f"Add way {following[0].upper()}",
                      query_of({**typed, f"{following}wire": wire})))  # fmt: skip
    if len(ways) > 2:
        last = ways[-1]
        less = {key: text for key, text in typed.items() if not key.startswith(last)}
        links.append((f"Take out way {last[0].upper()}", query_of(less)))
    return EntryGroup(group.key, group.title, group.entries, group.open, tuple(links), group.words)
