"""Jobs kept by name: one JSON text, as the phone gives them to the page that stacks coupons."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any, cast

from beadwright.errors import BeadwrightError

MOST_JOBS = 2000
LONGEST_NAME = 200
MOST_CHARACTERS = 5_000_000
"""Jobs of a text, characters of a job's name, of the text: far more than a shop has [-]."""


class KeptJobsError(BeadwrightError):
    """A text that holds no kept jobs; the message gives the reason."""


@dataclass(frozen=True, slots=True)
class KeptJob:
    """A job kept by name.

    Attributes:
        page: The page it is a job of.
        query: Its entries, as in the address.
        name: What it is called.
        made: When it was kept, as the phone's clock wrote it.
    """

    page: str
    query: str
    name: str
    made: str

    @property
    def key(self) -> str:
        """Its own key: no two jobs share one."""
        return f"{self.page}?{self.query}"


def read_jobs(text: str) -> tuple[KeptJob, ...]:
    """Return the jobs of a JSON text.

    Args:
        text: A list of jobs as the phone keeps them; blank means none [-].

    Raises:
        KeptJobsError: If the text is too long, is no such list, or any job is bad.
    """
    if not text.strip():
        return ()
    if len(text) > MOST_CHARACTERS:
        raise KeptJobsError(f"{len(text):,} characters are more than {MOST_CHARACTERS:,}.")
    try:
        found: Any = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise KeptJobsError("The kept jobs are no JSON: the text is cut or damaged.") from error
    if not isinstance(found, list):
        raise KeptJobsError("The kept jobs are no list.")
    rows = [*cast("Iterable[Any]", found)]
    if len(rows) > MOST_JOBS:
        raise KeptJobsError(f"{len(rows):,} kept jobs are more than {MOST_JOBS:,}.")
    return tuple(_job(row, number) for number, row in enumerate(rows, 1))


def _job(row: Any, number: int) -> KeptJob:
    told: Mapping[str, Any] = cast("dict[str, Any]", row) if isinstance(row, dict) else {}
    texts: dict[str, str] = {}
    for key in ("page", "query", "name", "made"):
        text: Any = told.get(key)
        if not isinstance(text, str):
            raise KeptJobsError(f"Kept job {number}: {key} is no text.")
        texts[key] = text
    return KeptJob(**texts)
