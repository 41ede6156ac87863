"""Every page of the site in the order of the bar: those the core answers, three that ask nothing.

A page's row stands in ``beadwright.pages``; the site's half of it is the folder ``pages/<page>/``,
found by the page's name: ``page.py`` with its ``PAGE``, its form, its templates, its ``page.css``.
Routes, links, the bar, the phone's actions and what is frozen follow from the table.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from importlib import import_module
from pathlib import Path
from types import MappingProxyType
from typing import Any

from beadwright.pages import PAGES as ANSWERED
from beadwright.pages import module_name

FOLDERS = Path(__file__).parent / "pages"


@dataclass(frozen=True, slots=True)
class SitePage:
    """A page of the site.

    Attributes:
        name: Its name, spelled as everywhere.
        title: What it is called in the bar at the foot; empty where nothing leads to it.
        path: Its address from the folder the app lives in.
    """

    name: str
    title: str
    path: str

    @property
    def folder(self) -> str:
        """Folder of its module, templates and styles below ``pages/``."""
        return module_name(self.name)

    @property
    def asks(self) -> bool:
        """True if the core answers it; False if it is the same for every query."""
        return self.name in ANSWERED

    @property
    def style(self) -> Path:
        """Its own styles, if it has any."""
        return FOLDERS / self.folder / "page.css"

    def load(self) -> Any:
        """Return the ``PAGE`` of its module, imported when first asked: a phone dials in first."""
        return import_module(f"beadwright_site.pages.{self.folder}.page").PAGE


def _answered() -> tuple[SitePage, ...]:
    first, *others = ANSWERED.values()
    return (
        SitePage(first.name, first.title, ""),
        *(SitePage(page.name, page.title, f"{page.name}/") for page in others),
    )


SITE_PAGES: Mapping[str, SitePage] = MappingProxyType(
    {
        page.name: page
        for page in (
            *_answered(),
            SitePage("sheets", "Tables", "sheets/"),
            SitePage("method", "Method", "method/"),
            SitePage("missing", "", "404.html"),
        )
    }
)
"""The pages by name. The first lives in the app's own folder."""
