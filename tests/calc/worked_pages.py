"""Whole pages worked by hand: a query, and what the page must answer, with the working.

No number here comes from the core: each is worked with a pocket calculator from the rule named in
the working. What no calculator gives (an arc's current at a wire feed) is typed into the query.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from beadwright.api import answer_csv, answer_json

Shown = str | float | bool | None


@dataclass(frozen=True)
class Worked:
    """A page worked by hand.

    Attributes:
        page: The page.
        query: What is asked.
        shown: What the page must show, by its place below ``answer``: ``links[weld].use`` is the
            use of the link whose key is weld.
        working: How the numbers come about.
        share: How near a number must come, as a share of it.
        lines: Beginnings of lines the page's CSV must hold.
    """

    page: str
    query: str
    shown: dict[str, Shown]
    working: str
    share: float = 1e-4
    lines: tuple[str, ...] = ()

    def wrong(self) -> list[str]:
        """Return each place where the page shows something else."""
        found = answer_json(self.page, self.query)
        if "errors" in found:
            return [str(found["errors"])]
        told: list[str] = []
        for place, wanted in self.shown.items():
            value = at(found["answer"], place)
            if not self._same(value, wanted):
                told.append(f"{place} is {value!r}, by hand {wanted!r}")
        written = answer_csv(self.page, self.query).splitlines() if self.lines else []
        return [
            *told,
            *(
                f"no line {line}"
                for line in self.lines
                if not any(one.startswith(line) for one in written)
            ),
        ]

    def _same(self, value: Any, wanted: Shown) -> bool:
        if isinstance(wanted, bool | str) or wanted is None or not isinstance(value, int | float):
            return bool(value == wanted)
        return abs(value - wanted) <= self.share * abs(wanted) + 1e-9


def at(found: Any, place: str) -> Any:
    """Return what stands at a place of an answer.

    Raises:
        KeyError: If there is nothing.
    """
    for step in place.replace("[", ".[").split("."):
        if step.startswith("["):
            name = step[1:-1]
            named = [one for one in found if name in (one.get("key"), str(found.index(one)))]
            if len(named) != 1:
                raise KeyError(f"{len(named)} of {name} in {place}")
            [found] = named
        else:
            found = found[step]
    return found
