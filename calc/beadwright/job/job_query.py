"""A query of nothing but a job."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from beadwright.job.page_query import PageQuery, read_page


def read_query(query: str, kept: Mapping[str, Any] | None = None) -> PageQuery:
    """Return the job a query string describes.

    A blank value means the default.

    Args:
        query: The query string [-].
        kept: The shop's own defaults by key; unknown keys are left aside [-].

    Raises:
        FieldErrors: With every field's messages, if anything cannot be taken.
    """
    return read_page(PageQuery, query, kept)
