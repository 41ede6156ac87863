"""The example the pages of money stand with: the demonstration shop's bracket."""

from __future__ import annotations

from collections.abc import Mapping

from beadwright.job.job_query import DEFAULTS as JOB
from beadwright_site.forms.entries import read_entries

EXAMPLE = "leg=5/16in"
"""What bracket MB-3 asks past the defaults, as a query."""

EXAMPLE_NAME = "Example: bracket MB-3"

NO_JOB = frozenset({"units", "machine_amps", "machine_volts"})
"""Keys that say nothing of what is to be welded."""


def asked_of(query: str, defaults: Mapping[str, str], example: str = EXAMPLE) -> tuple[str, bool]:
    """Return the query to answer: with the example's job where none is said.

    Args:
        query: The query string.
        defaults: The page's keys.
        example: The job it stands with.

    Returns:
        The query, and whether nothing at all was asked.
    """
    text = query.removeprefix("?").strip()
    if not text:
        return example, True
    typed = read_entries(text, defaults)
    if any(key in JOB and key not in NO_JOB for key in typed):
        return text, False
    return f"{text}&{example}", False
