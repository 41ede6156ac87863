"""The form of the Cost page: what is asked first, then the rest in groups, folded."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from beadwright.key_groups import KeyGroup, key_groups
from beadwright.money.cost_page import CostAnswer
from beadwright.money.cost_query import ONCE_KEYS, PREFIXES, WAY_JOB_KEYS, WAY_KEYS, CostQuery
from beadwright.money.volume_entries import counted_by
from beadwright.pages import PAGES
from beadwright_site.forms.entries import Entry, EntryGroup, entry_group
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.job_entries import job_entries
from beadwright_site.forms.kept import keep_name, way_buys
from beadwright_site.forms.page_form import PageForm
from beadwright_site.forms.priced_form import invented_keys
from beadwright_site.forms.volume_form import Counted, volume_entries
from beadwright_site.forms.wire_options import size_options
from beadwright_site.links import query_of

GROUPS: Mapping[str, KeyGroup] = {each.id: each for each in key_groups(PAGES["cost"])}
"""Keys by group."""

OF_WAY = ("way", "bought", "minutes", "cell", "measured")
"""Groups that each way has."""

ALIKE = (
    ("equal-amps", "Equal amps", ""),
    ("equal-travel", "Equal travel speed", ""),
    ("as-run", "Each as usually run", ""),
    ("measured", "What I measured", "typed for the way"),
)
"""How later ways are run beside the first."""

MEASURED = "Weigh it and time it: measured numbers replace figured ones."
FACTOR = "Cleanup is asked above. An operating factor covers all of them, cleanup too."
CELL = "With two stations the slower of gun and hands sets the pace."


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
    invented = invented_keys(filling, found.query if found is not None else None)
    kept_as: dict[str, str] = {}
    for prefix in prefixes_in(typed):
        wire, gas = way_buys(prefix, typed, held)
        keys = WAY_KEYS if prefix else CostQuery.fields_for({})
        kept_as |= {prefix + key: keep_name(prefix + key, wire, gas) for key in keys}
    return Form(filling, CostQuery.fields_for(typed), invented, kept_as)


def cost_form(filling: Filling, found: CostAnswer | None) -> PageForm:
    """Return the form filled with what was typed; arguments as of ``form_of``."""
    form, typed = form_of(filling, found), filling.typed
    job = job_entries(filling, found.ways[0].dialled if found is not None else None)
    ways = prefixes_in(typed)
    first = _asked_first(form, job, found)
    asked = {entry.key for entry in first}
    joint = [job[key] for key in GROUPS["job"].keys if key not in asked and not job[key].hidden]
    groups = [
        entry_group("ask", "What moves the answer", first, is_open=True),
        entry_group("job", "The job", joint),
        entry_group("volume", "Batches, payback", [form.entry("batch"), form.entry("months")]),
    ]
    for prefix in ways:
        groups += _way_groups(form, prefix, job)
    groups[-1] = _with_link(groups[-1], ways, typed, job["wire"].value)
    groups += [
        entry_group(id, GROUPS[id].title, [
            job[key] if key == "units" else form.entry(key) for key in GROUPS[id].keys
        ])
        for id in ("rates", "hours", "sure")
    ]  # fmt: skip
    return PageForm(tuple(groups))


def _asked_first(
    form: Form, job: Mapping[str, Entry], found: CostAnswer | None
) -> tuple[Entry, ...]:
    """The questions the answer hangs on, in the order a shop is asked them."""
    wires = [_wire(form, found, at) for at in (0, 1)]
    prices = [form.entry(f"{prefix}wire_price", f"{letter}: {wire}")
              for prefix, letter, wire in zip(PREFIXES, "AB", wires, strict=False)]  # fmt: skip
    spatter = [form.entry(f"{prefix}spatter", f"Cleanup, {letter}")
               for prefix, letter in zip(PREFIXES, "AB", strict=False)]  # fmt: skip
    size = [job[key] for key in ("leg", "weld_length", "welds") if not job[key].hidden]
    return (
        *prices,
        *size,
        form.entry("shop_rate", blank=_shop_rate(form, found)),
        *volume_entries(form, _counted(found)),
        form.entry("b_change_over", blank=_change_over(found)),
        *spatter,
        form.choice("compared", ALIKE, "As usual for these wires"),
    )


def _counted(found: CostAnswer | None) -> Counted | None:
    if found is None:
        return None
    by = counted_by(found.query.volume, found.query.own)
    return Counted(by, found.parts, found.query.weeks, found.ways[0].way, found.units)


def _wire(form: Form, found: CostAnswer | None, at: int) -> str:
    """The wire of a way as its price is asked."""
    if found is not None:
        return found.ways[at].dialled.job.wire.type.name
    return form.wanted(f"{PREFIXES[at]}wire") or form.wanted("wire")


def _shop_rate(form: Form, found: CostAnswer | None) -> str:
    """What labor and overhead come to, where the two are not asked in one."""
    if found is None:
        return ""
    rate = (found.query.labour + found.query.overhead) * 3600
    return f"{rate:g}/h"


def _change_over(found: CostAnswer | None) -> str:
    """What the pieces of the second way's change-over come to."""
    return f"{found.ways[1].way.once:,.0f}: its pieces" if found is not None else ""


def _way_groups(form: Form, prefix: str, job: Mapping[str, Entry]) -> Iterator[EntryGroup]:
    letter = prefix[:1].upper() or "A"
    later = prefix in PREFIXES[2:]
    words = {"measured": MEASURED, "minutes": FACTOR, "cell": CELL}
    for name in OF_WAY:
        group = GROUPS[f"{name}-A"]
        keys = list(group.keys)
        if later and name == "bought":
            keys.insert(0, "wire_price")
        if later and name == "minutes":
            keys.insert(0, "spatter")
        entries = [
            _of_way(form, prefix, job[key]) if key in WAY_JOB_KEYS else form.entry(prefix + key)
            for key in keys
        ]
        title = group.title.replace("Way A", f"Way {letter}")
        yield entry_group(f"{name}-{letter}", title, entries, words.get(name, ""))
    if prefix:
        group = GROUPS["once-B"]
        keys = [f"{prefix}{key}" for key in ONCE_KEYS if later or key != "change_over"]
        title = group.title.replace("Way B", f"Way {letter}")
        yield entry_group(f"once-{letter}", title, [form.entry(key) for key in keys])


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
    return replace(group, links=tuple(links))
