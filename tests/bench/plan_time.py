"""How long Passes takes for long slots and asked counts, over the time of a plain tee.

    .venv/bin/python tests/bench/plan_time.py

Meant: no plan takes more than fifteen times a plain tee's. The best of several runs, in the
process's own time, so that a busy machine does not blur it. Each run asks another length of weld,
so that no answer is one kept.
"""

import time

from beadwright.passes.passes_page import passes_answer

PLAIN = "plate=3/8in&leg=5/16in"
QUERIES = {
    "tee": PLAIN,
    "open V, 1 in": "joint=v&plate=1in&position=1G",
    "slot, 1/2 in, 5 in long": "joint=slot&plate=1/2in&slot_length=5in",
    "slot, 2 in, 10 in long": "joint=slot&plate=2in&slot_length=10in",
    "slot overhead, 2 in, 10 in long": "joint=slot&plate=2in&slot_length=10in&position=4F",
    "slot, shut: fine wire, 3 passes": "joint=slot&plate=2in&slot_length=5in&dia=0.023in&passes=3",
    "slot, shut: fine wire": "joint=slot&plate=2in&slot_length=3in&dia=0.023in&transfer=short",
    "slot, 400 passes": "joint=slot&plate=1/2in&slot_length=5in&passes=400",
    "V, 400 passes": "joint=v&plate=2in&position=1G&passes=400",
}
RUNS = 7


def milliseconds(query: str) -> float:
    """Return the shortest time of a plan and of the plans beside it."""
    best = float("inf")
    for run in range(RUNS):
        asked = f"{query}&weld_length={run + 5}in"
        started = time.process_time()
        passes_answer(asked).choices()
        best = min(best, time.process_time() - started)
    return best * 1000


if __name__ == "__main__":
    plain = milliseconds(PLAIN)
    for name, query in QUERIES.items():
        took = milliseconds(query)
        print(f"{name:<34}{took:8.1f} ms{took / plain:8.1f} tees")
