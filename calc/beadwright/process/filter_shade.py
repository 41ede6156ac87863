"""The least filter shade in front of the eyes."""

from __future__ import annotations


def least_shade(current_a: float) -> int:
    """Return the least filter shade for gas metal arc [-].

    Source: OSHA 29 CFR 1910.133(a)(5): below 60 A 7; 60 to 500 A 10. Darker is usual:
    ANSI Z49.1:2012 suggests 11 to 14.

    Args:
        current_a: Welding current [A].
    """
    return 7 if current_a < 60 else 10
