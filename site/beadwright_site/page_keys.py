"""Which keys of the query each page knows, so that links carry to each what it can take."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from types import MappingProxyType

from beadwright.heating.heat_query import DEFAULTS as HEAT
from beadwright.job.job_query import DEFAULTS as JOB
from beadwright.machine.shop_query import DEFAULTS as SHOP
from beadwright.money.cost_query import DEFAULTS as COST
from beadwright.money.cost_query import PREFIXES
from beadwright.pages import PAGES
from beadwright.passes.passes_query import DEFAULTS as PASSES
from beadwright.strength.strength_query import DEFAULTS as STRENGTH
from beadwright.supply.supplies_query import DEFAULTS as SUPPLIES

DEFAULTS_OF: Mapping[str, Mapping[str, str]] = MappingProxyType(
    {
        "dial_in": JOB,
        "cost": COST,
        "supplies": SUPPLIES,
        "heat": HEAT,
        "passes": PASSES,
        "strength": STRENGTH,
        "shop": SHOP,
    }
)
"""Keys and defaults of each page, by endpoint."""

EXAMPLES: Mapping[str, str] = MappingProxyType({"passes": PAGES["passes"].example})
"""What a page stands with where it is not the demonstration shop's bracket, by endpoint."""


@cache
def carried(endpoint: str) -> str:
    """Return the keys a link to a page carries, a blank between them.

    ``*`` stands for the keys of later ways on the page that has them. A page that asks nothing has
    none.

    Args:
        endpoint: A key of ``links.PATHS``.
    """
    keys = DEFAULTS_OF.get(endpoint, {})
    later = PREFIXES[1:]
    plain = [key for key in keys if not key.startswith(later)]
    return " ".join([*plain, *("*" for _ in later[:1] if len(plain) < len(keys))])
