"""How long a fit of a thousand coupons takes here, and over one pass of plain sums.

    .venv/bin/python tests/bench/learn_time.py

Meant to take 20 ms at the most: it is done again at every change of the form.
"""

import random
from collections.abc import Callable
from functools import partial
from time import process_time

from beadwright.coupons.learning import Prior, Shown, learn

COUPONS, ROUNDS = 1000, 15
AIM_MS = 20.0


def coupons(odd: int) -> list[Shown]:
    """Coupons of one shop, some of them misread."""
    chance = random.Random(1)
    points: list[Shown] = []
    for number in range(COUPONS):
        arc = chance.uniform(0.5, 0.95)
        y = chance.gauss(0.05, 0.08) + (0.9 if number < odd else 0.0)
        points.append(Shown(str(number), y, (arc, 1 - arc)))
    return points


def plain_sums(points: list[Shown]) -> float:
    """The sums of one fit, and nothing else: what the time is held against."""
    total = 0.0
    for point in points:
        (x1, x2), y = point.x, point.y
        total += x1 * x1 + x1 * x2 + x2 * x2 + x1 * y + x2 * y + y * y
    return total


def best_ms(act: Callable[[], object]) -> float:
    """The least of several rounds, of the processor's time alone [ms]."""
    found: list[float] = []
    for _ in range(ROUNDS):
        began = process_time()
        act()
        found.append(1000 * (process_time() - began))
    return min(found)


def main() -> None:
    """Print the times and their ratios."""
    prior = Prior(0.10, 0.05)
    for odd in (0, 10, 100, 300):
        points = coupons(odd)
        base = best_ms(partial(plain_sums, points))
        fit = best_ms(partial(learn, points, prior))
        named = len(learn(points, prior).odd)
        print(f"{COUPONS:,} coupons, {odd} misread, {named} named: {fit:.1f} ms "
              f"(aim: {AIM_MS:.0f}), {fit / base:.0f} × one pass of plain sums")  # fmt: skip


if __name__ == "__main__":
    main()
