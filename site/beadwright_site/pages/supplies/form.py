"""The form of the Supplies page: the job, what it takes, the spool and the cylinder at hand."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from beadwright.money.cost_page import invented_in_use
from beadwright.money.demo_prices import INVENTED
from beadwright.supply.cylinders import CYLINDERS
from beadwright.supply.spools import PACKAGES_KG, packages_sold
from beadwright.supply.supplies_page import SuppliesAnswer
from beadwright.supply.supplies_query import DEFAULTS, SuppliesSchema
from beadwright.units import System
from beadwright_site.forms.entries import (
    Entry,
    EntryGroup,
    Form,
    entry_group,
    measures_of,
    of_field,
)
from beadwright_site.forms.job_form import job_fields
from beadwright_site.forms.kept import keep_name, way_buys
from beadwright_site.forms.labels import LABELS

JOB_KEYS = (
    "joint", "corner", "plate", "plate2", "skew", "leg", "leg2", "gap", "angle", "root_face",
    "depth", "depth2", "backing", "hole", "slot_length", "position", "weld_length", "welds",
    "wire", "dia", "gas", "units",
)  # fmt: skip
"""What the joint does not ask of these is left out."""
WIRE = ("waste", "rework", "efficiency", "arc_min", "laid")
GAS = ("cylinder_gas", "gas_flow", "gas_extra", "gas_price", "cylinder_price")
SMALL = ("wire_price", "tip_price", "tip_life", "nozzle_price", "nozzle_life", "currency")
SPOOL_WEIGHT = ("spool_gross", "spool_empty")
SPOOL_SIZE = ("spool_outside", "spool_hub", "spool_width", "spool_full")
CYLINDER = ("gauge", "water", "gas_temp", "co2_mass")


@dataclass(frozen=True, slots=True)
class SuppliesForm:
    """The form: its groups, and the entries that stand beside what they answer.

    Attributes:
        groups: The form's groups.
        weight: The begun spool by weight.
        size: The begun spool by size.
        cylinder: The cylinder at hand.
    """

    groups: tuple[EntryGroup, ...]
    weight: tuple[Entry, ...]
    size: tuple[Entry, ...]
    cylinder: tuple[Entry, ...]

    @property
    def keys(self) -> frozenset[str]:
        """Every key with an entry."""
        apart = (*self.weight, *self.size, *self.cylinder)
        return frozenset(
            entry.key for entry in (*apart, *(e for group in self.groups for e in group.entries))
        )

    def hidden(self, typed: Mapping[str, str]) -> tuple[tuple[str, str], ...]:
        """What was typed and has no entry, so that sending the form loses nothing."""
        return tuple((key, text) for key, text in typed.items() if key not in self.keys)


def supplies_form(
    typed: Mapping[str, str],
    kept: Mapping[str, str],
    system: System,
    found: SuppliesAnswer | None = None,
    errors: Mapping[str, Sequence[str]] | None = None,
) -> SuppliesForm:
    """Return the form filled with what was typed.

    Args:
        typed: Entries as typed.
        kept: The shop's defaults by key.
        system: Units of bare numbers.
        found: The answer, or None if the entries could not be taken.
        errors: Messages by key.
    """
    wrong = errors or {}
    invented = (
        frozenset(invented_in_use(found.query))
        if found is not None
        else frozenset(k for k in INVENTED if k not in typed and k not in kept)
    )
    wire, gas = way_buys("", typed, kept)
    kept_as = {key: keep_name(key, wire, gas) for key in DEFAULTS}
    form = Form(typed, kept, DEFAULTS, measures_of(SuppliesSchema), wrong, invented, system,
                kept_as)  # fmt: skip
    dialled = found.planned.dialled if found is not None else None
    fields = job_fields({**kept, **typed}, system, dialled, wrong)

    def entry(key: str) -> Entry:
        blank = "worked out" if key in ("efficiency", "arc_min", "laid", "gas_flow") else ""
        return form.entry(key, LABELS[key], blank=blank, words=key == "currency")

    sold = packages_sold(dialled.job.wire) if dialled is not None else tuple(PACKAGES_KG)
    packages = [
        (name, name.replace("lb", " lb").replace("kg", " kg"), said)
        for name in PACKAGES_KG
        for said in ["" if name in sold else "seldom sold"]
    ]
    sizes = [(name, name.replace("ft3", " ft³"), "") for name in CYLINDERS]
    groups = (
        entry_group("need", "How many", [*map(entry, ("count", "parts", "weeks", "on_hand"))]),
        entry_group("job", "The job", [of_field(fields[key]) for key in JOB_KEYS
                                  if not fields[key].hidden]),
        entry_group("wire", "Wire", [
            form.choice("spool", "Package", packages), *map(entry, WIRE),
        ]),
        entry_group("gas", "Gas", [
            form.choice("cylinder", "Cylinder", sizes, "Usual"), *map(entry, GAS),
        ]),
        entry_group("prices", "Prices, tips, nozzles", [*map(entry, SMALL)]),
    )  # fmt: skip
    return SuppliesForm(
        groups,
        tuple(map(entry, SPOOL_WEIGHT)),
        tuple(map(entry, SPOOL_SIZE)),
        tuple(map(entry, CYLINDER)),
    )
