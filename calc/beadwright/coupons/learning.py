"""How far coupons move a published fit: Bayesian regression with one or two coefficients.

Each coupon gives a share ``y`` by which it stands over print, and how much of each coefficient it
shows, ``x``. The prior says the coefficients are zero (print is right) and how far shops stand off
it. The scatter of a shop's coupons is not known beforehand: it is learned with them, so the band is
a Student's t.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from heapq import nlargest
from math import sqrt

from beadwright.coupons.student_t import t_quantile
from beadwright.errors import OutOfRangeError, require_positive

FREEDOM = 4
"""Coupons' worth of belief in the scatter assumed beforehand [-]. Our choice: ten coupons outweigh
it."""

SCATTER_OVER_SHOPS = sqrt(2.0)
"""Scatter of one shop's coupons over the distance between shops, assumed beforehand [-]. Our
choice: so that one coupon moves a number a third of the way and ten five sixths."""

CHANCE = 0.95
"""Chance a band is worked out for [-]. Our choice: a little wide, so that it still holds nine in
ten for a shop whose coupons scatter nearly twice as much as assumed. A test draws such shops."""

ODD_CHANCE = 0.998
"""A coupon is named as odd where the others would give one nearer with this chance [-]. Our choice:
one sound coupon in five hundred is named."""

MOST_ODD = 3
"""At most one coupon in so many is set aside as odd, but one always may be [-]."""

LOOK_PAST = 2
"""Coupons taken out on trial to see whether they hid one another [-]. Our choice."""

Pair = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Shown:
    """What one coupon shows.

    Attributes:
        key: The coupon's own name.
        y: Share by which it stands over print [-].
        x: How much of each coefficient it shows [-]; ``(1, 0)`` where there is one only.
        counted: True if the welder wants it counted though it is odd.
    """

    key: str
    y: float
    x: Pair = (1.0, 0.0)
    counted: bool = False


@dataclass(frozen=True, slots=True)
class Prior:
    """What is believed before any coupon.

    Attributes:
        level: Standard deviation, between shops, of what both coefficients share [-].
        apart: That of what each has of its own; zero where there is one only [-].
    """

    level: float
    apart: float = 0.0

    @property
    def scatter(self) -> float:
        """Scatter of one coupon assumed beforehand [-]."""
        return SCATTER_OVER_SHOPS * self.level

    def spread(self) -> tuple[float, float, float]:
        """Return the coefficients' covariance over the squared scatter: first, both, second."""
        require_positive(level=self.level)
        both = self.level**2 / self.scatter**2
        own = self.apart**2 / self.scatter**2
        return both + own, both if own else 0.0, both + own


@dataclass(frozen=True, slots=True)
class Learned:
    """What coupons and print together say.

    Attributes:
        mean: The coefficients [-].
        scatter: Scatter of one coupon [-].
        freedom: Degrees of freedom of the scatter [-].
        spread: The coefficients' covariance over the squared scatter: first, both, second.
        counted: Keys of the coupons counted.
        odd: Keys of those set aside, each with its part of the squares over what is still sound.
    """

    mean: Pair
    scatter: float
    freedom: int
    spread: tuple[float, float, float]
    counted: tuple[str, ...]
    odd: tuple[tuple[str, float], ...]

    def share(self, x: Pair = (1.0, 0.0)) -> float:
        """Return the share over print at some mix of the coefficients [-].

        Args:
            x: How much of each counts [-].
        """
        return self.mean[0] * x[0] + self.mean[1] * x[1]

    def half_band(self, x: Pair = (1.0, 0.0), chance: float = CHANCE) -> float:
        """Return how far that share may be off, on either side [-].

        Args:
            x: How much of each coefficient counts [-].
            chance: Chance that it is no further off, 0.01 to 0.9999 [-].
        """
        return t_quantile(chance, self.freedom) * self.scatter * sqrt(quadratic(self.spread, x))

    def narrowed(self, at: Pair, seen: Pair) -> float:
        """Return the part of the squared doubt at one mix that a coupon at another takes away [-].

        Args:
            at: Where the doubt is looked at [-].
            seen: What the coupon would show [-].
        """
        a, b, c = self.spread
        crossed = at[0] * (a * seen[0] + b * seen[1]) + at[1] * (b * seen[0] + c * seen[1])
        return crossed**2 / (1 + quadratic(self.spread, seen)) / quadratic(self.spread, at)


def quadratic(spread: tuple[float, float, float], x: Pair) -> float:
    """Return x' S x of a symmetric matrix of two rows [-].

    Args:
        spread: First, both, second element [-].
        x: The vector [-].
    """
    a, b, c = spread
    return a * x[0] ** 2 + 2 * b * x[0] * x[1] + c * x[1] ** 2


@dataclass(frozen=True, slots=True)
class _Fit:
    """The closed form: normal coefficients, inverse-gamma scatter."""

    mean: Pair
    spread: tuple[float, float, float]
    squares: float
    freedom: int


def _inverse(a: float, b: float, c: float) -> tuple[float, float, float]:
    size = a * c - b * b
    return c / size, -b / size, a / size


@dataclass(slots=True)
class _Sums:
    """The sums a fit is made from: squares and products of what coupons show."""

    x11: float = 0.0
    x12: float = 0.0
    x22: float = 0.0
    x1y: float = 0.0
    x2y: float = 0.0
    yy: float = 0.0
    count: int = 0

    def take(self, points: Iterable[Shown], sign: int = 1) -> None:
        """Add coupons, or take them out again."""
        for point in points:
            (x1, x2), y = point.x, point.y
            self.x11 += sign * x1 * x1
            self.x12 += sign * x1 * x2
            self.x22 += sign * x2 * x2
            self.x1y += sign * x1 * y
            self.x2y += sign * x2 * y
            self.yy += sign * y * y
            self.count += sign


def _fit(sums: _Sums, prior: Prior) -> _Fit:
    p11, p12, p22 = _inverse(*prior.spread())
    spread = _inverse(p11 + sums.x11, p12 + sums.x12, p22 + sums.x22)
    mean = (
        spread[0] * sums.x1y + spread[1] * sums.x2y,
        spread[1] * sums.x1y + spread[2] * sums.x2y,
    )
    explained = mean[0] * sums.x1y + mean[1] * sums.x2y
    squares = FREEDOM * prior.scatter**2 + sums.yy - explained
    return _Fit(mean, spread, squares, FREEDOM + sums.count)


_Row = tuple[Shown, float, float, float, float, float, float]
"""A coupon, what it shows, and the squares and product of its mix."""


def _row(point: Shown) -> _Row:
    (x1, x2), y = point.x, point.y
    return point, x1, x2, y, x1 * x1, x1 * x2, x2 * x2


def _parts(rows: Sequence[_Row], fit: _Fit) -> list[float]:
    """What each coupon adds to the squares: its distance from what the others foretell."""
    (m1, m2), (a, b, c) = fit.mean, fit.spread
    b2 = 2 * b
    return [
        (y - m1 * x1 - m2 * x2) ** 2 / (1 - a * x11 - b2 * x12 - c * x22)
        for _, x1, x2, y, x11, x12, x22 in rows
    ]


def _sorted_out(
    points: Sequence[Shown], prior: Prior
) -> tuple[list[Shown], list[tuple[str, float]]]:
    """The coupons that stand, and those that are odd with how far they do not fit.

    The worst is taken out first. Two that are far off can hide each other, so up to ``LOOK_PAST``
    are taken out on trial: all count as odd if the last of them does.
    """
    sums = _Sums()
    sums.take(points)
    fixed = [_row(point) for point in points if point.counted]
    kept = [_row(point) for point in points if not point.counted]
    standing, odd, trial = kept, list[tuple[str, float]](), list[tuple[str, float]]()
    most = max(1, len(points) // MOST_ODD)
    while kept and len(odd) + len(trial) < most and len(trial) <= LOOK_PAST:
        fit = _fit(sums, prior)
        limit = t_quantile(ODD_CHANCE, fit.freedom - 1)
        # A leave-one-out t is over its limit where the coupon's part of the squares is over this.
        edge = fit.squares * limit**2 / (fit.freedom - 1 + limit**2)
        parts = _parts(kept, fit)
        sure = sum(part > edge for part in parts)
        # A tenth of many at a time, for the worst drag sound ones along.
        count = min(1 + sure // 10, most - len(odd) - len(trial))
        out = nlargest(count, range(len(kept)), key=parts.__getitem__)
        sums.take((kept[at][0] for at in out), -1)
        trial += [(kept[at][0].key, parts[at] / edge) for at in out]
        gone = set(out)
        kept = [row for at, row in enumerate(kept) if at not in gone]
        if sure:
            standing, odd, trial = kept, odd + trial, []
    left = {id(row[0]) for row in (*standing, *fixed)}
    return [point for point in points if id(point) in left], odd


def learn(points: Sequence[Shown], prior: Prior) -> Learned:
    """Return what coupons and print together say; coupons that do not fit the rest are named.

    Source: conjugate Bayesian regression, normal coefficients with inverse-gamma scatter (any
    textbook of Bayesian statistics); a coupon is held against the rest by its leave-one-out t.

    Args:
        points: What each coupon shows; may be none [-].
        prior: What is believed before [-].

    Raises:
        OutOfRangeError: If a coupon's share is not a finite number, or the prior has no spread.
    """
    for point in points:
        if not abs(point.y) < 1e6:
            raise OutOfRangeError(f"y = {point.y} of {point.key} must be a finite share")
    kept, odd = _sorted_out(points, prior)
    sums = _Sums()
    sums.take(kept)
    fit = _fit(sums, prior)
    return Learned(
        mean=fit.mean,
        scatter=sqrt(fit.squares / fit.freedom),
        freedom=fit.freedom,
        spread=fit.spread,
        counted=tuple(point.key for point in kept),
        odd=tuple(odd),
    )
