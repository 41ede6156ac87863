"""How long the Cost page takes, against Dial in with the same job in the same run.

    .venv/bin/python tests/bench/cost_time.py [--rounds N]

Cost plans the job for each of its two ways and compares them: meant to take as long as four answers
of Dial in at the most, and its whole page as long as three pages of Dial in. The two are asked in
turn, in the process's own time; medians.
"""

import argparse
import statistics
import time
from collections.abc import Callable

from beadwright.api import answer
from beadwright_site.pages.cost.page import PAGE as COST
from beadwright_site.pages.dial_in.page import PAGE as DIAL_IN

JOB = "plate=3/8in&leg=5/16in"
AIMS = {"answer": 4.0, "page": 3.0}


def taken(work: Callable[[], object]) -> float:
    """Return the processor's seconds for a piece of work."""
    began = time.process_time()
    work()
    return time.process_time() - began


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description="The Cost page against Dial in.")
    parser.add_argument("--rounds", type=int, default=31)
    rounds = parser.parse_args().rounds
    pairs: dict[str, tuple[Callable[[], object], Callable[[], object]]] = {
        "answer": (lambda: answer("cost", JOB), lambda: answer("dial-in", JOB)),
        "page": (lambda: COST.show(JOB), lambda: DIAL_IN.show(JOB)),
    }
    for name, (cost, dial_in) in pairs.items():
        cost()  # imports
        dial_in()
        times = [(taken(cost), taken(dial_in)) for _ in range(rounds)]
        ours, base = (statistics.median(column) for column in zip(*times, strict=True))
        print(
            f"{name:<8}{ours * 1000:7.2f} ms, Dial in {base * 1000:6.2f} ms: "
            f"{ours / base:4.1f} times, meant {AIMS[name]:g} at the most"
        )


if __name__ == "__main__":
    main()
