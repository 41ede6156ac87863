"""How long a list of 200 welds takes: first, and after one line is edited; against Dial in.

Run: ``PYTHONPATH=calc:site:. python tests/bench/list_time.py``
"""

from __future__ import annotations

from time import perf_counter
from urllib.parse import quote

from beadwright.api import answer
from beadwright_site.page_table import SITE_PAGES

KINDS = 40
"""Different welds on the list; 200 of one drawing are seldom all different."""


def line(number: int, length: float) -> str:
    leg = ("1/4in", "5/16in", "3/8in", "3/16in")[number % 4]
    return f"W{number},tee,3/8in,{leg},{length}in,1,{('2F', '1F', '3F-up')[number % 3]}"


def seconds(lines: list[str]) -> float:
    text = quote("\n".join(lines))
    start = perf_counter()
    found = answer("list", f"lines={text}")
    taken = perf_counter() - start
    assert found.missing == 0
    return taken


def seconds_shown(lines: list[str]) -> float:
    """The page's parts as well, as the phone's worker draws them."""
    page = SITE_PAGES["list"].load()
    text = quote("\n".join(lines))
    start = perf_counter()
    assert page.show(f"lines={text}").ok
    return perf_counter() - start


def main() -> None:
    answer("dial-in", "leg=5/16in")
    start = perf_counter()
    for turn in range(20):
        answer("dial-in", f"leg=5/16in&weld_length={6 + turn / 10}in")
    dialled = (perf_counter() - start) / 20
    for kinds in (KINDS, 200):
        lines = [line(n, 4 + n % kinds / 10) for n in range(200)]
        first = seconds(lines)
        edited = min(
            seconds([*lines[:7], line(7, 30 + kinds / 1000 + turn), *lines[8:]])
            for turn in range(5)
        )
        shown = min(
            seconds_shown([*lines[:7], line(7, 50 + kinds / 1000 + turn), *lines[8:]])
            for turn in range(5)
        )
        print(f"{kinds} different of 200: first {first * 1e3:.0f} ms, after an edit "
              f"{edited * 1e3:.1f} ms, {edited / dialled:.1f} × Dial in; page drawn "
              f"{shown * 1e3:.0f} ms")  # fmt: skip


if __name__ == "__main__":
    main()
