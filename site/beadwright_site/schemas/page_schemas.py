"""The JSON Schemas of a page, 2020-12: of its query from its fields, of its answer as written down.

What a page answers is a contract with the programs that read it: it stands beside the page as
``answer.schema.json``, and a test holds answers to it.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Mapping
from functools import partial
from pathlib import Path
from typing import Any, Final

from beadwright.key_help import takes
from beadwright.pages import PAGES, Page
from beadwright.reading.fields import Choice, Entry, QueryField, WholeNumber
from beadwright_site.page_table import SITE_PAGES

Schema = dict[str, Any]

DIALECT: Final = "https://json-schema.org/draft/2020-12/schema"
"""Name of the language the schemas are written in."""

_PARTS = Path(__file__).with_name("answer_parts.json")
_REFERENCE = re.compile(r'"\$ref": "#/\$defs/(\w+)"')

_QUERY_WORDS = (
    "Entries of the query string, as text. One left out means its default, where it has one. "
    "Entries of other pages are passed over; one that no page knows is refused."
)


def published() -> Mapping[str, Callable[[], Schema]]:
    """Return what makes each schema, by its name, such as ``dial-in.answer.json``."""
    found: dict[str, Callable[[], Schema]] = {}
    for page in PAGES.values():
        found[f"{page.name}.query.json"] = partial(query_schema, page)
        if _written(page).is_file():  # a page that is being written has none yet
            found[f"{page.name}.answer.json"] = partial(answer_schema, page)
    return found


def query_schema(page: Page) -> Schema:
    """Return the schema of a page's query as an object of text by key.

    Args:
        page: The page [-].
    """
    return {
        "$schema": DIALECT,
        "title": f"Beadwright: what {page.title} asks",
        "description": _QUERY_WORDS,
        "type": "object",
        "additionalProperties": False,
        "properties": {key: _entry(field) for key, field in page.fields.items()},
    }


def _entry(field: QueryField[Any]) -> Schema:
    told: Schema = {"title": field.label} if field.label else {}
    told["description"] = "; ".join((field.help, *takes(field)))
    told["type"] = "string"
    if isinstance(field, Choice):
        told["enum"] = list(field.choices)
    elif isinstance(field, Entry):  # one may also be made up of parts, or spelled otherwise
        told["examples"] = list(field.choices)
    elif isinstance(field, WholeNumber):
        told["pattern"] = "^[0-9]+$"
    if field.default:
        told["default"] = field.default
    return told


def answer_schema(page: Page) -> Schema:
    """Return the schema of what the terminal prints for a page: its answer, or what it refused.

    Args:
        page: The page [-].
    """
    answered = json.loads(_written(page).read_text())
    own: Mapping[str, Schema] = {"answered": answered, **answered.pop("$defs", {})}
    parts: Mapping[str, Schema] = json.loads(_PARTS.read_text())
    return {
        "$schema": DIALECT,
        "title": f"Beadwright: what {page.title} answers",
        "oneOf": [{"$ref": "#/$defs/answered"}, {"$ref": "#/$defs/refused"}],
        "$defs": {**own, **_used({**own, "refused": parts["refused"]}, parts)},
    }


def _used(own: Mapping[str, Schema], parts: Mapping[str, Schema]) -> dict[str, Schema]:
    """The shared parts that a page's schema refers to, and those they refer to."""
    found = {name: each for name, each in own.items() if name in parts}
    left = [*own.values()]
    while left:
        for name in _REFERENCE.findall(json.dumps(left.pop())):
            if name in parts and name not in found:
                found[name] = parts[name]
                left.append(parts[name])
    return found


def _written(page: Page) -> Path:
    return SITE_PAGES[page.name].style.with_name("answer.schema.json")
