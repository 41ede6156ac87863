"""The gases to tap, and the line for any other mix."""

from __future__ import annotations

from beadwright.errors import BeadwrightError
from beadwright.process.gases import GASES, gas_of
from beadwright_site.forms.entries import Option


def gas_options(wanted: str) -> tuple[tuple[Option, ...], str]:
    """Return the gases to tap, and what stands in the line for another mix.

    A mix that can be taken is one more to tap; one that cannot stays in the line as typed.

    Args:
        wanted: The gas as typed, or empty.
    """
    try:
        gas = gas_of(wanted) if wanted else None
    except BeadwrightError:
        return tuple(_option(name, "", "") for name in GASES), wanted
    chosen = gas.name if gas is not None else ""
    options = [_option(name, "", chosen) for name in GASES]
    if gas is not None and gas.name not in GASES:
        options.append(_option(gas.name, gas.iso_group, chosen))
    return tuple(options), ""


def _option(name: str, group: str, chosen: str) -> Option:
    return Option(name, name, group or GASES[name].iso_group, name == chosen)
