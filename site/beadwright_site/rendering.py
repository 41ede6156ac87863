"""The page templates: from files where they are at hand, compiled ahead on the phone.

A template is named by the folder it belongs to and its file: ``heat/start.html`` of the page Heat,
``parts/base.html``, ``forms/field.html``, ``drawings/marks.html``.
"""

from __future__ import annotations

import importlib
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import Any, cast

from jinja2 import (
    BaseLoader,
    Environment,
    FileSystemLoader,
    ModuleLoader,
    PrefixLoader,
    StrictUndefined,
    Template,
)

from beadwright_site.links import NAVIGATION, links_of
from beadwright_site.page_table import FOLDERS, SITE_PAGES

COMPILED = "beadwright_site_templates"
"""Package of templates compiled by the build; only the phone has it."""

HERE = Path(__file__).parent


def _loader() -> BaseLoader:
    try:
        compiled = importlib.import_module(COMPILED)
    except ModuleNotFoundError:
        rooms = [HERE / room for room in ("drawings", "forms", "parts")]
        folders = [*rooms, *sorted(FOLDERS.iterdir())]
        with_templates = [folder for folder in folders if (folder / "templates").is_dir()]
        return PrefixLoader({f.name: FileSystemLoader(f / "templates") for f in with_templates})
    return ModuleLoader(list(compiled.__path__))


@cache
def environment() -> Environment:
    """Return the one environment every page is rendered with; everything is escaped."""
    made = Environment(
        loader=_loader(),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=False,
    )
    cast("dict[str, Any]", made.globals)["core"] = ""  # the build names the packed core here
    return made


def _carried(page: str) -> str:
    # Only whole pages name the keys of all; the phone draws parts and need not read them.
    from beadwright_site.page_keys import carried

    return carried(page)


def render(template: str, page: str, **values: Any) -> str:
    """Return a template rendered for a page.

    Args:
        template: Its folder and file.
        page: Name of the page it is for; its links are relative to that page.
        **values: What the template shows.
    """
    return _render(environment().get_template(template), page, values)


def draw_part(page: str, part: str, **values: Any) -> str:
    """Return a part of a page: the template of its id, the page's own or the one pages share.

    Args:
        page: The page's name.
        part: The part's element id.
        **values: What it shows.
    """
    return _render(_part_template(page, part), page, {**values, "part": part})


@cache
def _part_template(page: str, part: str) -> Template:
    folder = SITE_PAGES[page].folder
    return environment().select_template([f"{folder}/{part}.html", f"parts/{part}.html"])


def _render(template: Template, page: str, values: Mapping[str, Any]) -> str:
    return template.render(
        url_for=links_of(page).url_for,
        page=SITE_PAGES[page],
        navigation=NAVIGATION,
        carried=_carried,
        **values,
    )
