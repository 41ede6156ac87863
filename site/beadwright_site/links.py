"""Addresses of our own pages and files, relative to the page they stand on.

Relative links make the same page right under Flask, frozen in any folder, and on the phone, where
no web framework is at hand to build an address.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from urllib.parse import urlencode

PATHS: Mapping[str, str] = MappingProxyType(
    {
        "dial_in": "",
        "cost": "cost/",
        "passes": "passes/",
        "strength": "strength/",
        "supplies": "supplies/",
        "heat": "heat/",
        "shop": "shop/",
        "method": "method/",
        "missing": "404.html",
        "manifest": "manifest.webmanifest",
    }
)
"""Path of each page from the folder the app lives in, by endpoint."""


@dataclass(frozen=True, slots=True)
class Navigation:
    """The bar at the foot: endpoint and name of each page, in its order.

    Attributes:
        first: Pages in the bar itself; a gloved thumb hits no more than five.
        more: Pages on the sheet the last button opens.
    """

    first: tuple[tuple[str, str], ...]
    more: tuple[tuple[str, str], ...]

    @property
    def more_endpoints(self) -> tuple[str, ...]:
        """Endpoints on the sheet."""
        return tuple(endpoint for endpoint, _ in self.more)


NAVIGATION = Navigation(
    first=(
        ("dial_in", "Dial in"),
        ("passes", "Passes"),
        ("heat", "Heat"),
        ("strength", "Strength"),
    ),
    more=(("cost", "Cost"), ("supplies", "Supplies"), ("shop", "Shop"), ("method", "Method")),
)
"""Every page a link leads to: what the joint asks first, then what the shop asks."""


def query_of(values: Mapping[str, str]) -> str:
    """Return a query string a person can read: slashes stay slashes, blanks are left out."""
    filled = {key: value for key, value in values.items() if value}
    return urlencode(filled, safe="/", errors="replace")  # half a character has no UTF-8


@dataclass(frozen=True, slots=True)
class Links:
    """Builds links on one page.

    Attributes:
        root: The way from the page back to the app's folder: empty, or ``../``.
    """

    root: str = ""

    def url_for(
        self, endpoint: str, *, filename: str = "", query: str = "", anchor: str = ""
    ) -> str:
        """Return a relative link.

        Args:
            endpoint: A key of ``PATHS``, or ``static`` with a file name.
            filename: Path below ``static/``.
            query: Query string, without the question mark.
            anchor: Id on the page to go to.

        Raises:
            KeyError: If there is no such endpoint.
        """
        path = f"static/{filename}" if endpoint == "static" else PATHS[endpoint]
        link = f"{self.root}{path}" or "./"
        if query:
            link += f"?{query}"
        return f"{link}#{anchor}" if anchor else link


def links_of(endpoint: str) -> Links:
    """Return the link builder for the page of an endpoint."""
    return Links("../" * PATHS[endpoint].count("/"))
