"""Addresses of our own pages and files, relative to the page they stand on.

Relative links make the same page right under Flask, frozen in any folder, and on the phone, where
no web framework is at hand to build an address.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from urllib.parse import urlencode

from beadwright_site.page_table import SITE_PAGES, SitePage

PATHS: Mapping[str, str] = MappingProxyType(
    {**{page.name: page.path for page in SITE_PAGES.values()}, "manifest": "manifest.webmanifest"}
)
"""Path of each page and of the manifest from the folder the app lives in, by name."""

BUILT: Mapping[str, str] = MappingProxyType({"licenses": "licences.txt"})
"""Path of each file that only the build makes."""

IN_THE_BAR = 4
"""Pages in the bar itself: with the button for the others a gloved thumb hits no more than five."""


@dataclass(frozen=True, slots=True)
class Navigation:
    """The bar at the foot, in the order of the pages: what the joint asks, then what the shop asks.

    Attributes:
        first: Pages in the bar itself.
        more: Pages on the sheet the last button opens.
    """

    first: tuple[SitePage, ...]
    more: tuple[SitePage, ...]

    @property
    def names_of_more(self) -> tuple[str, ...]:
        """Names of the pages on the sheet."""
        return tuple(page.name for page in self.more)


_TITLED = tuple(page for page in SITE_PAGES.values() if page.title)
NAVIGATION = Navigation(_TITLED[:IN_THE_BAR], _TITLED[IN_THE_BAR:])
"""Every page a link leads to."""


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

    def url_for(self, page: str, *, filename: str = "", query: str = "", anchor: str = "") -> str:
        """Return a relative link.

        Args:
            page: A key of ``PATHS`` or ``BUILT``, or ``static`` with a file name.
            filename: Path below ``static/``.
            query: Query string, without the question mark.
            anchor: Id on the page to go to.

        Raises:
            KeyError: If there is no such page.
        """
        path = f"static/{filename}" if page == "static" else {**PATHS, **BUILT}[page]
        link = f"{self.root}{path}" or "./"
        if query:
            link += f"?{query}"
        return f"{link}#{anchor}" if anchor else link


def links_of(page: str) -> Links:
    """Return the link builder for a page."""
    return Links("../" * PATHS[page].count("/"))
