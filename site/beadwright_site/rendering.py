"""The page templates: from files where they are at hand, compiled ahead on the phone.

A template is named by the folder it belongs to and its file: ``heat/start.html`` of the page Heat,
``parts/base.html``, ``forms/field.html``, ``drawings/marks.html``.
"""

from __future__ import annotations

import importlib
from functools import cache
from pathlib import Path
from typing import Any

from jinja2 import (
    BaseLoader,
    Environment,
    FileSystemLoader,
    ModuleLoader,
    PrefixLoader,
    StrictUndefined,
)

from beadwright_site.links import NAVIGATION, links_of

COMPILED = "beadwright_site_templates"
"""Package of templates compiled by the build; only the phone has it."""

HERE = Path(__file__).parent


def _loader() -> BaseLoader:
    try:
        compiled = importlib.import_module(COMPILED)
    except ModuleNotFoundError:
        rooms = [HERE / room for room in ("drawings", "forms", "parts")]
        folders = [*rooms, *sorted((HERE / "pages").iterdir())]
        with_templates = [folder for folder in folders if (folder / "templates").is_dir()]
        return PrefixLoader({f.name: FileSystemLoader(f / "templates") for f in with_templates})
    return ModuleLoader(list(compiled.__path__))


@cache
def environment() -> Environment:
    """Return the one environment every page is rendered with; everything is escaped."""
    return Environment(
        loader=_loader(),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=False,
    )


def _carried(endpoint: str) -> str:
    # Only whole pages name the keys of all; the phone draws parts and need not read them.
    from beadwright_site.page_keys import carried

    return carried(endpoint)


def render(template: str, endpoint: str, **values: Any) -> str:
    """Return a template rendered for the page of an endpoint.

    Args:
        template: Its folder and file.
        endpoint: The page it is for; its links are relative to that page.
        **values: What the template shows.
    """
    links = links_of(endpoint)
    return (
        environment()
        .get_template(template)
        .render(
            url_for=links.url_for,
            endpoint=endpoint,
            navigation=NAVIGATION,
            carried=_carried,
            **values,
        )
    )
