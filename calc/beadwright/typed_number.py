"""A number as it is typed: fractions, a decimal comma, a sign of currency; messages quote it."""

from __future__ import annotations

import re
from fractions import Fraction

LONGEST_TEXT = 40
"""Characters a typed quantity may have; nothing the shop writes is longer."""

_VULGAR = {
    "¼": "1/4", "½": "1/2", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
    "⅓": "1/3", "⅔": "2/3",
}  # fmt: skip
_PLAIN = str.maketrans(
    {sign: f" {fraction}" for sign, fraction in _VULGAR.items()}
    | dict.fromkeys("‐‑‒–—−", "-")
    | {"⁄": "/", "\u00a0": " ", "³": "3", "²": "2", "°": "deg"}
)

_NUMBER = re.compile(
    r"""^(?P<sign>[+-]?)(?:
        (?P<whole>\d{1,9})[ -](?P<n>\d{1,6})/(?P<d>\d{1,6})   # 1 1/4 or 1-1/4
      | (?P<fn>\d{1,9})/(?P<fd>\d{1,6})                       # 3/8
      | (?P<decimal>\d{0,9}\.?\d{0,30})                       # 0.375, .375, 9
    )$""",
    re.VERBOSE | re.ASCII,
)
_AROUND = re.compile(r" ?([-/]) ?")


def plain_text(text: str) -> str:
    """Return what phones and people type in plain characters.

    Args:
        text: What was typed [-].
    """
    return _AROUND.sub(r"\1", " ".join(text.translate(_PLAIN).split()))


_THOUSANDS = re.compile(r"^[+-]?[1-9]\d{0,2},\d{3}(?!\d)", re.ASCII)


def decimal_point(plain: str, text: str) -> str:
    """Return a text with its decimal comma as a point.

    Args:
        plain: The text in plain characters [-].
        text: What was typed, for the message [-].

    Raises:
        ValueError: If the comma may as well part thousands: 1,200 is not read as 1.2.
    """
    if plain.count(",") != 1 or "." in plain:
        return plain
    if _THOUSANDS.match(plain):
        raise ValueError(f"{quoted(text)}: a comma may be decimal or thousands; write 1200 or 1.2")
    return plain.replace(",", ".")


def read_number(text: str) -> Fraction:
    """Return the exact number written in a text.

    Reads ``3/8``, ``1-1/4``, ``1 1/4``, ``1¼``, ``0.375``, ``.375`` and ``0,375``.

    Args:
        text: What was typed, no unit [-].

    Raises:
        ValueError: If it is not a plain number, or a fraction has a zero below the line.
    """
    plain = plain_text(text)
    plain = decimal_point(plain, text)
    match = _NUMBER.match(plain)
    if match is None or not any(c.isdigit() for c in plain):
        raise ValueError(f"{quoted(text)} is not a number; write 3/8, 1-1/4 or 0.375")
    sign = -1 if match["sign"] == "-" else 1
    if match["decimal"] is not None:
        return sign * Fraction(match["decimal"].rstrip(".") or "0")
    top, below = match["n"] or match["fn"], match["d"] or match["fd"]
    if int(below) == 0:
        raise ValueError(f"{quoted(text)} has a zero below the line")
    return sign * (int(match["whole"] or 0) + Fraction(int(top), int(below)))


_CURRENCY = re.compile(r"^\s*(?:[$€£¥₹]|[A-Z]{3}\b)\s*|\s*[$€£¥₹]\s*(?=/|$)")


def without_currency(text: str) -> str:
    """Return a price without its sign of currency, before or behind the number.

    Args:
        text: What was typed, such as ``$1.85/lb``, ``USD 4.10``, ``4.10 €/kg`` [-].
    """
    return _CURRENCY.sub("", text).strip()


def is_bare_number(text: str) -> bool:
    """Return True if a text is a number without a unit, so that the page's units decide it.

    A sign of currency is no unit. What cannot be read as a number (``1,200`` may be 1.2) is none.

    Args:
        text: What was typed [-].
    """
    if len(text) > LONGEST_TEXT:
        return False
    try:
        read_number(without_currency(text))
    except ValueError:
        return False
    return True


def short(text: str) -> str:
    """Return what was typed, cut so that a message stays readable."""
    printable = "".join(c if c.isprintable() else " " for c in text)
    return printable if len(printable) <= LONGEST_TEXT else printable[:LONGEST_TEXT] + "…"


def quoted(text: str) -> str:
    """Return what was typed between quotes, cut to a readable length."""
    return f"“{short(text)}”"
