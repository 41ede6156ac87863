"""The form of the Cost page: the job, each way, what the shop pays, how sure each figure is."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from beadwright.money.cost_page import CostAnswer
from beadwright.money.cost_query import ONCE_KEYS, PREFIXES, WAY_KEYS, CostQuery
from beadwright.money.demo_prices import INVENTED, invented_in_use
from beadwright_site.forms.entries import Entry, EntryGroup, entry_group
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.job_entries import JOINT, asked_entries, job_entries
from beadwright_site.forms.kept import keep_name, way_buys
from beadwright_site.forms.page_form import PageForm
from beadwright_site.forms.wire_options import size_options
from beadwright_site.links import query_of

JOB_KEYS = (*JOINT, "position", "weld_length", "welds")
FIRST_WAY = ("wire", "dia", "gas", "transfer", "travel_by")
BY_HAND = ("wfs", "volts", "travel")
ALIKE = (
    ("equal-amps", "Equal amps", ""),
    ("equal-travel", "Equal travel", ""),
    ("as-run", "Each as usually run", ""),
    ("measured", "What I measured", "typed for the way"),
)
VOLUME = ("parts", "batch", "months")
PRICES = ("wire_price", "gas_price", "cylinder_price", "cylinder_gas", "tip_price")
MINUTES = ("fit_up", "reposition", "clean", "spatter", "other", "spool_change", "factor")
MEASURED = ("arc_min", "laid", "efficiency", "gas_flow")
SMALL = ("spool", "waste", "rework", "tip_life", "yearly")
RATES = ("labour", "overhead", "energy_price", "machine_efficiency", "idle", "nozzle_price",
         "nozzle_life", "gas_extra", "grind")  # fmt: skip
HOURS = ("welders", "shift", "shifts", "weeks")
SHOP_KEYS = (*VOLUME, *RATES, *HOURS, "currency")
SURE = ("swing_rates", "swing_prices", "swing_feed", "swing_minutes", "swing_volume", "swing_once",
        "swing_size", "seed", "currency")  # fmt: skip


def prefixes_in(typed: Mapping[str, str]) -> tuple[str, ...]:
    """Return the prefixes of the ways of a query: two, or as many as have keys of their own."""
    return tuple(p for p in PREFIXES if p in ("", "b_") or any(key.startswith(p) for key in typed))


def form_of(filling: Filling, found: CostAnswer | None) -> Form:
    """Return what the entries are made from.

    Args:
        filling: What they are filled with.
        found: The answer, or None if the entries could not be taken.
    """
    typed, held = filling.typed, filling.held
    invented = (
        frozenset(invented_in_use(found.query))
        if found is not None
        else frozenset(k for k in INVENTED if k not in typed and k not in held)
    )
    kept_as: dict[str, str] = {}
    for prefix in prefixes_in(typed):
        wire, gas = way_buys(prefix, typed, held)
        keys = WAY_KEYS if prefix else (*WAY_KEYS, *SHOP_KEYS)
        kept_as |= {prefix + key: keep_name(prefix + key, wire, gas) for key in keys}
    return Form(filling, CostQuery.fields_for(typed), invented, kept_as)


def cost_form(filling: Filling, found: CostAnswer | None) -> PageForm:
    """Return the form filled with what was typed; arguments as of ``form_of``."""
    form, typed = form_of(filling, found), filling.typed
    fields = job_entries(filling, found.ways[0].dialled if found is not None else None)
    ways = prefixes_in(typed)
    groups = [
        entry_group("job", "The job", asked_entries(fields, JOB_KEYS)),
        entry_group("volume", "How many", [
            *(form.entry(key) for key in VOLUME),
            form.choice("compared", ALIKE, "As such wires are"),
        ]),
    ]  # fmt: skip
    for prefix in ways:
        groups += _way_groups(form, prefix, fields, typed)
    groups[-1] = _with_link(groups[-1], ways, typed, fields["wire"].value)
    groups += [
        entry_group("rates", "Rates of the shop", [form.entry(key) for key in RATES]),
        entry_group("hours", "Hours of the shop", [form.entry(key) for key in HOURS]),
        entry_group("sure", "How far each may be off", [
            *(form.entry(key) for key in SURE),
            fields["units"],
        ]),
    ]  # fmt: skip
    return PageForm(tuple(groups))


def _way_groups(
    form: Form, prefix: str, fields: Mapping[str, Entry], typed: Mapping[str, str]
) -> Iterator[EntryGroup]:
    letter = prefix[:1].upper() or "A"
    title = "Way A: as you weld now" if not prefix else f"Way {letter}"

    def entry(key: str) -> Entry:
        return form.entry(prefix + key)

    weld = [_of_way(form, prefix, fields[key]) for key in (*FIRST_WAY, *BY_HAND)]
    prices = [*map(entry, PRICES[: 4 if not prefix else 3])]
    yield entry_group(f"way-{letter}", title, [entry("name"), *weld, *prices])
    minutes = [*map(entry, MINUTES)]
    measured = [*map(entry, MEASURED)]
    small = [*map(entry, (*PRICES[4:], *SMALL))]
    yield entry_group(f"minutes-{letter}", f"Way {letter}: minutes off the arc", minutes)
    yield entry_group(f"measured-{letter}", f"Way {letter}: what you measured", measured,
                 "Weigh and time it: it outranks what is worked out.")  # fmt: skip
    yield entry_group(f"small-{letter}", f"Way {letter}: waste, rework, tips", small)
    if prefix:
        once = [*map(entry, ONCE_KEYS)]
        yield entry_group(f"once-{letter}", f"Way {letter}: paid once for the change", once)


def _of_way(form: Form, prefix: str, field: Entry) -> Entry:
    """An entry of the job as a way may say it; the first way's is the job's own."""
    if not prefix:
        return field
    key = prefix + field.key
    blank = "" if form.default(key) else form.fields[key].blank
    if field.key == "gas":
        return form.gas(key, field.label, blank)
    if field.options:
        options = field.options
        if field.key == "dia":  # a way's own wire may be made in other sizes than the first's
            options = size_options(
                form.filling.typed.get(f"{prefix}wire", ""), field.value, form.filling.system
            )
        choices = [(o.value, o.word, o.under) for o in options]
        return form.choice(key, choices, blank, field.label)
    return form.entry(key, field.label)


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
