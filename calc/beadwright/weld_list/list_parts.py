"""A list that came in parts, as from several printed codes: which are here, which are missing."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from marshmallow import ValidationError

from beadwright.reading.fields import QueryField
from beadwright.typed_number import quoted

MOST_PARTS = 12
"""Parts a list may be cut in: more codes than that nobody reads one by one [-]."""

_WRITTEN = re.compile(r"(\d{1,2}(?:,\d{1,2})*)/(\d{1,2})/([0-9a-f]{6})")


@dataclass(frozen=True, slots=True)
class ListParts:
    """Which parts of a list are at hand.

    Attributes:
        here: Numbers of the parts at hand, from 1, rising [-].
        count: Parts the whole list has [-].
        mark: What tells this list's parts from another's.
    """

    here: tuple[int, ...]
    count: int
    mark: str

    @property
    def missing(self) -> tuple[int, ...]:
        """Numbers of the parts that are not at hand [-]."""
        return tuple(each for each in range(1, self.count + 1) if each not in self.here)

    def __str__(self) -> str:
        """As a link says it: ``2/3/1a2b3c``, ``1,3/3/1a2b3c``."""
        return f"{','.join(map(str, self.here))}/{self.count}/{self.mark}"


class ListPartsField(QueryField[ListParts]):
    """Which parts of a list a query holds, as ``ListParts`` writes it."""

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> ListParts:
        written = _WRITTEN.fullmatch(str(value).strip())
        if written is None:
            raise ValidationError(
                f"{quoted(str(value))} does not say which part of a list this is; a code says it "
                "as 2/3/1a2b3c: part 2 of 3. Scan the code again"
            )
        here = tuple(sorted({int(each) for each in written[1].split(",")}))
        count = int(written[2])
        if not 1 <= here[0] <= here[-1] <= count <= MOST_PARTS:
            raise ValidationError(
                f"{quoted(str(value))} names a part that is not there; a list has up to "
                f"{MOST_PARTS} parts, numbered from 1. Scan the code again"
            )
        return ListParts(here, count, written[3])
