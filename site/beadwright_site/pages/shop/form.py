"""The form of the Shop page: machine, circuit, leads, prices and rates; the phone keeps them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from beadwright.job.job_entries import DEFAULTS as JOB
from beadwright.known_keys import USUAL
from beadwright.machine.conductors import CONDUCTORS
from beadwright.machine.shop_page import ShopAnswer
from beadwright.money.demo_prices import DEMO_PRICES, INVENTED
from beadwright.reading.fields import QueryField
from beadwright_site.forms.entries import Entry, entry_group
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.job_entries import job_entries
from beadwright_site.forms.kept import (
    BOUGHT,
    CIRCUIT,
    HOURS,
    LEADS,
    MACHINE,
    MINUTES,
    OF_GAS,
    OF_WIRE,
    RATES,
    gas_name,
    way_buys,
)
from beadwright_site.forms.labels import USUAL_LABELS, kept_fields
from beadwright_site.forms.page_form import PageForm

AT_THE_JOB = ("amps", "arc_share")
"""Asked of one job, not of the shop."""

_CIRCUIT_WORDS = "Wiring and breakers are an electrician's work."


def shop_form(filling: Filling, found: ShopAnswer | None) -> PageForm:
    """Return the form filled with what is kept, and over it what was typed.

    Args:
        filling: What it is filled with, by the names it is kept under.
        found: The answer, or None if the entries could not be taken.
    """
    texts = {**filling.held, **filling.typed}
    prices = tuple(price_names(texts))
    demo = dict(_demo_prices())
    fields = {**kept_fields(), **{name: _price_field(name, demo.get(name, "")) for name in prices}}
    machine = (key for key in (*MACHINE, *CIRCUIT, *LEADS) if _stands_in(fields[key]))
    invented = frozenset(k for k in (*machine, *INVENTED, *demo) if k not in texts)
    names = {key: key for key in (*MACHINE, *CIRCUIT, *LEADS, *RATES, *BOUGHT, *MINUTES, *HOURS,
                                  *USUAL, "units", "currency", *prices)}  # fmt: skip
    form = Form(Filling(texts, {}, filling.system, filling.errors), fields, invented, names)
    entry = form.entry
    cables = [(name, name.replace("mm2", "mm²"), "") for name in CONDUCTORS]
    cords = [choice for choice in cables if CONDUCTORS[choice[0]].cord_a is not None]
    circuit = [
        form.choice(key, (("1", "1", ""), ("3", "3", "")))
        if key == "phase"
        else form.choice(key, cords)
        if key == "cord"
        else entry(key)
        for key in CIRCUIT
    ]
    leads = [form.choice("cable", cables), entry("cable_length")]
    groups = (
        entry_group("machine", "Machine", [*map(entry, MACHINE)], is_open=True),
        entry_group("circuit", "Circuit", circuit, words=_CIRCUIT_WORDS),
        entry_group("leads", "Welding leads", leads),
        entry_group("atjob", "At this job", [*map(entry, AT_THE_JOB)]),
        entry_group("prices", "Prices of wire and gas", [*map(entry, prices)],
               words="To add a wire or a gas, pick it on Cost or as your usual."),
        entry_group("usual", "Usual wire, gas, units", [*_usual(form), entry("currency")]),
        entry_group("rates", "Rates", [*map(entry, RATES)]),
        entry_group("bought", "Spools, tips, gas", [*map(entry, BOUGHT)]),
        entry_group("minutes", "Non-arc minutes, rework", [*map(entry, MINUTES)]),
        entry_group("hours", "Hours", [*map(entry, HOURS)]),
    )  # fmt: skip
    return PageForm(groups, more={"kept": len(filling.held)})


def _stands_in(field: QueryField[Any]) -> bool:
    """True if a figure of the demonstration shop's stands in for a blank."""
    return bool(field.default) or field.blank[:1].isdigit()


def _price_field(name: str, demo: str) -> QueryField[Any]:
    """The field of a price kept by what it is the price of."""
    key, _, what = name.partition("@")
    field = kept_fields()[key]
    label = f"{field.label.removeprefix('Price of ')}: {what}"
    return field.but(label=label, default=demo, blank="not known")


def _usual(form: Form) -> Iterator[Entry]:
    fields = job_entries(Filling({}, {}, form.filling.system), keys=(*USUAL.values(), "units"))
    for name, key in USUAL.items():
        blank = "" if name in form.filling.typed else JOB[key]
        if key == "gas":
            yield form.gas(name, USUAL_LABELS[name], blank)
            continue
        choices = [(o.value, o.word, o.under) for o in fields[key].options]
        yield form.choice(name, choices, blank, USUAL_LABELS[name])
    units = [(o.value, o.word, o.under) for o in fields["units"].options]
    yield form.choice("units", units)


def _demo_prices() -> Iterator[tuple[str, str]]:
    """The demonstration shop's prices, under the names they would be kept."""
    first = way_buys("", {}, {})
    second = way_buys("b_", {}, {})
    yield f"wire_price@{first[0]}", DEMO_PRICES["wire_price"]
    yield f"wire_price@{second[0]}", DEMO_PRICES["b_wire_price"]
    yield f"gas_price@{first[1]}", DEMO_PRICES["gas_price"]
    yield f"cylinder_price@{first[1]}", DEMO_PRICES["cylinder_price"]


def price_names(texts: Mapping[str, str]) -> Iterator[str]:
    """Yield the prices to ask for: of every wire and gas kept, usual, or in the job.

    Args:
        texts: What is kept and typed, by name.
    """
    usual = {key: texts[name] for name, key in USUAL.items() if texts.get(name)}
    ways = [way_buys("", {}, usual), way_buys("", texts, usual)]
    ways += [way_buys("b_", texts, usual)]
    wires = {name.partition("@")[2] for name in texts if name.startswith(f"{OF_WIRE[0]}@")}
    gases = {gas_name(name.partition("@")[2]) for name in texts
             if name.startswith(tuple(f"{key}@" for key in OF_GAS))}  # fmt: skip
    for wire in dict.fromkeys([*(way[0] for way in ways), *sorted(wires)]):
        yield f"{OF_WIRE[0]}@{wire}"
    for gas in dict.fromkeys([*(way[1] for way in ways), *sorted(gases)]):
        for key in OF_GAS:
            yield f"{key}@{gas}"
