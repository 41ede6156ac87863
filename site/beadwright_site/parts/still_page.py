"""A page that asks nothing: it is the same for every query."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from beadwright_site.page_table import SITE_PAGES
from beadwright_site.rendering import render


@dataclass(frozen=True, slots=True)
class StillPage:
    """A page that asks nothing.

    Attributes:
        name: Its name.
        view: What its template shows.
    """

    name: str
    view: Callable[[], Mapping[str, Any]]

    def whole(self, _: str = "") -> str:
        """Return the whole page, as Flask answers it and as it is frozen."""
        return render(f"{SITE_PAGES[self.name].folder}/page.html", self.name, **self.view())
