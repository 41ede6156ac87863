"""A query string taken apart, and a schema's refusal as messages by field."""

from __future__ import annotations

from typing import Any, cast
from urllib.parse import parse_qsl

from marshmallow import ValidationError

from beadwright.errors import FieldErrors

MOST_KEYS = 300
"""Keys a query may carry: the page that asks most has about half as many."""


PACKED = "z"
"""The key of a packed query, which stands for what it holds; what is written beside it wins."""


def split_query(query: str) -> dict[str, str]:
    """Return the keys and values of a query string; the last of a repeated key that is not blank.

    Args:
        query: With or without the leading ``?``; a packed one counts as what it holds [-].

    Raises:
        FieldErrors: If there are more than ``MOST_KEYS`` keys, or a packed query is damaged.
    """
    found = _split(query)
    held = found.pop(PACKED, "")
    if not held:
        return found
    beside = {key: value for key, value in found.items() if value}  # a blank takes nothing back
    return {**_split(_unpacked(held)), **beside}


def _unpacked(text: str) -> str:
    from beadwright.reading.packed_query import PackedQueryError, unpacked  # few queries are packed

    try:
        return unpacked(text)
    except PackedQueryError as error:
        message = (
            "This link is damaged or cut short: a packed job holds to its last letter only. Scan "
            "the code again, or ask for the link again."
        )
        raise FieldErrors({PACKED: [message]}) from error


def _split(query: str) -> dict[str, str]:
    try:
        pairs = parse_qsl(query.removeprefix("?"), keep_blank_values=True, max_num_fields=MOST_KEYS)
    except ValueError as error:
        message = f"This address has more than {MOST_KEYS} entries."
        raise FieldErrors({"query": [message]}) from error
    found: dict[str, str] = {}
    for key, value in ((key.strip(), value.strip()) for key, value in pairs):
        if value or key not in found:  # a form's blank line takes nothing back
            found[key] = value
    return found


def messages_of(error: ValidationError) -> dict[str, list[str]]:
    """Return a schema's messages by field.

    Args:
        error: What the schema raised; marshmallow types its messages more widely [-].
    """
    found = cast("dict[str, list[str]]", cast(Any, error).normalized_messages())
    return {key: [str(text) for text in texts] for key, texts in found.items()}
