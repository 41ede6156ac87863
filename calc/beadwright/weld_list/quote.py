"""A quote: what a part is sold for in batches of 1, 10 and 100."""

from __future__ import annotations

from dataclasses import dataclass

BATCHES = (1, 10, 100)
"""Parts in the batches quoted [-]."""


@dataclass(frozen=True, slots=True)
class Quoted:
    """A batch and its price.

    Attributes:
        parts: Parts in the batch [-].
        set_up: Share of the set-up that falls to a part [money].
        cost: Cost of a part, that share in it [money].
        price: Price of a part [money].
    """

    parts: int
    set_up: float
    cost: float
    price: float

    @property
    def batch(self) -> float:
        """Price of the batch [money]."""
        return self.parts * self.price


def quoted_batch(part: float, set_up: float, margin: float, parts: int) -> Quoted:
    """Return the price of a part in a batch.

    Source: definition of a margin: the share of the price left when the cost is paid.

    Args:
        part: Cost of a part without set-up, zero or more [money].
        set_up: Cost of setting up for a batch, zero or more [money].
        margin: Margin, 0 to below 1 [-].
        parts: Parts in the batch, one or more [-].
    """
    share = set_up / parts
    return Quoted(parts, share, part + share, (part + share) / (1 - margin))
