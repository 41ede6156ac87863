"""How long the Strength page takes to answer, elastic and by the instantaneous center.

    .venv/bin/python tests/bench/strength_time.py

Meant: 5 ms an answer, 30 ms where the instantaneous center is sought. The best of many runs, in the
process's own time, so that a busy machine does not blur it.
"""

import time

from beadwright.api import answer

ZIGZAG = " ".join(f"{i}in,{i * 7 % 5}in" for i in range(24))
QUERIES = {
    "a line, both sides": "leg=5/16in",
    "C, elastic": "group=c&py=-9kip&load_x=9in",
    "circle, EN directional": "group=circle&mz=10kip-in&design_code=en-directional",
    "C, center": "group=c&py=-9kip&load_x=9in&analysis=ic",
    "rectangle, center, slanted load": "group=rectangle&py=-9kip&px=3kip&load_x=9in&analysis=ic",
    "24 points, center": f"group=polyline:{ZIGZAG}&py=3kip&load_x=40in&analysis=ic",
}
RUNS = 40


def milliseconds(query: str) -> float:
    """Return the shortest time of an answer."""
    best = float("inf")
    for _ in range(RUNS):
        started = time.process_time()
        answer("strength", query)
        best = min(best, time.process_time() - started)
    return best * 1000


if __name__ == "__main__":
    for name, query in QUERIES.items():
        print(f"{name:<34}{milliseconds(query):8.2f} ms")
