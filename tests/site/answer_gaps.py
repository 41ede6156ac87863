"""What an answer has that the schema of its page has not, place by place.

``python -m tests.site.answer_gaps PAGE 'QUERY'`` prints them, as ``answer.beads[0].aim: …``. Of a
page that is being written: begin with ``{"type": "object", "additionalProperties": false}`` in
``answer.schema.json`` and write down what is told, until nothing is.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator
from functools import cache
from typing import Any

from jsonschema import Draft202012Validator
from jsonschema.exceptions import ValidationError

from beadwright.api import answer_json
from beadwright.pages import PAGES
from beadwright_site.schemas.page_schemas import answer_schema


@cache
def _validator(page: str, part: str) -> Draft202012Validator:
    schema = answer_schema(PAGES[page])
    del schema["oneOf"]  # which of the two it must be is known: the message is then the plainest
    return Draft202012Validator({**schema, "$ref": f"#/$defs/{part}"})


def answer_gaps(page: str, found: dict[str, Any]) -> list[str]:
    """Return where an answer is not what the schema says; nothing where it is.

    Args:
        page: The page.
        found: What ``answer_json`` returned for it.
    """
    plain = json.loads(json.dumps(found))
    part = "refused" if "errors" in plain else "answered"
    return [f"{_place(each)}: {each.message[:200]}" for each in _told(page, part, plain)]


def _told(page: str, part: str, plain: Any) -> Iterator[ValidationError]:
    for error in _validator(page, part).iter_errors(plain):  # pyright: ignore[reportUnknownVariableType]
        deeper = [each for each in error.context or () if len(each.path)]
        yield max(deeper, key=lambda each: len(each.path)) if deeper else error


def _place(error: ValidationError) -> str:
    steps = (f"[{step}]" if isinstance(step, int) else f".{step}" for step in error.absolute_path)
    return "".join(steps).removeprefix(".") or "(top)"


if __name__ == "__main__":
    asked, query = sys.argv[1], sys.argv[2] if len(sys.argv) > 2 else ""
    print("\n".join(answer_gaps(asked, answer_json(asked, query))) or "nothing")
