"""Money as the shop writes it."""

from __future__ import annotations


def money_text(amount: float, sign: str) -> str:
    """Return an amount as the shop writes it: cents below a hundred, whole above [money].

    Args:
        amount: The amount [money].
        sign: Currency sign, may be empty [-].
    """
    places = 2 if abs(amount) < 100 else 0
    return f"{'-' if amount < 0 else ''}{sign}{abs(amount):,.{places}f}"
