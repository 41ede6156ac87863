"""How many answers the core gives a second, on this machine's Python.

    .venv/bin/python tests/bench/core_rate.py [--seconds N]

Each page is asked with its default job and with varied ones, so that nothing is answered from a
cache it would not have on the phone.
"""

import argparse
import itertools
import time
from collections.abc import Iterator

from beadwright.api import answer, answer_json
from beadwright.pages import PAGES

PLATES = ("3/16in", "1/4in", "5/16in", "3/8in", "1/2in", "6mm", "10mm")
WIRES = ("ER70S-6", "E70C-6M")
POSITIONS = ("2F", "1F", "3F-up")


def queries() -> Iterator[str]:
    """Yield jobs for ever, each differing from the last."""
    for leg_thousandths in itertools.count(200):
        for plate, wire, position in itertools.product(PLATES, WIRES, POSITIONS):
            leg = 200 + leg_thousandths % 100
            yield f"plate={plate}&leg=0.{leg}in&wire={wire}&position={position}"


def rate(page: str, seconds: float, *, as_json: bool) -> float:
    """Return answers per second over a stretch of time."""
    ask = answer_json if as_json else answer
    started = time.perf_counter()
    for count, query in enumerate(queries(), 1):
        ask(page, query)
        took = time.perf_counter() - started
        if took >= seconds:
            return count / took
    raise AssertionError("unreachable")


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description="Answers per second.")
    parser.add_argument("--seconds", type=float, default=3.0)
    seconds = parser.parse_args().seconds
    for page in PAGES:
        for as_json in (False, True):
            label = f"{page}{' as JSON' if as_json else ''}"
            print(f"{label:<24}{rate(page, seconds, as_json=as_json):8.0f} answers/s")


if __name__ == "__main__":
    main()
