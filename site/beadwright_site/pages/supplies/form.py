"""The form of the Supplies page: the job, what it takes, the spool and the cylinder at hand."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from beadwright.money.volume_entries import counted_by
from beadwright.supply.cylinder_sizes import BOTTLES, CYLINDERS, CylinderSize
from beadwright.supply.spools import PACKAGES_KG, packages_sold
from beadwright.supply.supplies_page import SuppliesAnswer
from beadwright_site.forms.entries import Entry, entry_group, options_of
from beadwright_site.forms.filling import Filling, Form
from beadwright_site.forms.job_entries import JOINT, asked_entries, job_entries
from beadwright_site.forms.page_form import PageForm
from beadwright_site.forms.priced_form import priced_form
from beadwright_site.forms.volume_form import Counted, volume_entries

JOB_KEYS = (*JOINT, "position", "weld_length", "welds", "wire", "dia", "gas", "units")
WIRE = ("waste", "rework", "efficiency", "arc_min", "laid")
GAS = ("cylinder_gas", "gas_flow", "gas_extra", "gas_price", "cylinder_price")
SMALL = ("wire_price", "tip_price", "tip_life", "nozzle_price", "nozzle_life", "currency")
SPOOL_WEIGHT = ("spool_gross", "spool_empty")
SPOOL_SIZE = ("spool_outside", "spool_hub", "spool_width", "spool_full")
CYLINDER = ("water", "gas_temp", "co2_mass")


def supplies_form(filling: Filling, found: SuppliesAnswer | None) -> PageForm:
    """Return the form filled with what was typed.

    Args:
        filling: What it is filled with.
        found: The answer, or None if the entries could not be taken.
    """
    form = priced_form("supplies", filling, found.query if found is not None else None)
    dialled = found.planned.dialled if found is not None else None
    fields = job_entries(filling, dialled, JOB_KEYS)

    entry = form.entry
    sold = packages_sold(dialled.job.wire) if dialled is not None else tuple(PACKAGES_KG)
    packages = [
        (name, name.replace("lb", " lb").replace("kg", " kg"), said)
        for name in PACKAGES_KG
        for said in ["" if name in sold else "seldom sold"]
    ]
    as_bought = "As bought" if form.wanted("cylinder") else "Not said"
    bought = found.query.cylinder if found is not None else None
    at_hand = found.query.gas.bottle if found is not None else None
    bottle = _sizes(form, "bottle", BOTTLES, at_hand, as_bought)
    groups = (
        entry_group("need", "How many", [
            entry("count"), *volume_entries(form, _counted(found)), entry("weeks"),
            entry("on_hand"),
        ]),
        entry_group("job", "The job", asked_entries(fields, JOB_KEYS)),
        entry_group("wire", "Wire", [
            form.choice("spool", packages, label="Package"), *map(entry, WIRE),
        ]),
        entry_group("gas", "Gas", [
            _sizes(form, "cylinder", CYLINDERS, bought, form.fields["cylinder"].blank),
            *map(entry, GAS),
        ]),
        entry_group("prices", "Prices, tips, nozzles", [*map(entry, SMALL)]),
    )  # fmt: skip

    def entries(keys: Sequence[str]) -> tuple[Entry, ...]:
        return tuple(map(entry, keys))

    return PageForm(
        groups,
        beside={
            "spool-entries": {"weight": entries(SPOOL_WEIGHT), "size": entries(SPOOL_SIZE)},
            "cylinder-entries": {"entries": (entry("gauge"), bottle, *entries(CYLINDER))},
        },
    )


def _counted(found: SuppliesAnswer | None) -> Counted | None:
    if found is None:
        return None
    read = found.query
    by = counted_by(read.volume, read.own)
    return Counted(by, found.supplies.parts, read.weeks, found.planned.way, found.units)


def _sizes(
    form: Form, key: str, sizes: Mapping[str, CylinderSize], found: CylinderSize | None, blank: str
) -> Entry:
    """The entry of a size of cylinder; what was read stands marked, whatever it was called."""
    choices = [(name, each.shown, _CALLED.get(name, "")) for name, each in sizes.items()]
    wanted = found.name if found is not None else form.wanted(key)
    return form.entry(key, options=options_of(choices, wanted, blank))


_CALLED = {"122ft3": "called 125"}
"""What else a size is called, as it is tapped."""
