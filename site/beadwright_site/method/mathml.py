"""Equations as MathML, built from small parts; everything a part is given is escaped."""

from __future__ import annotations

from markupsafe import Markup, escape

from beadwright_site.method.math_lines import in_lines

OPERATORS = frozenset("=+−·×≤≥<>,()⌈⌉±∑√∝")

Part = str | Markup


def tag(name: str, *parts: Part) -> Markup:
    """Return an element around parts."""
    return Markup("<{0}>{1}</{0}>").format(Markup(name), Markup("").join(map(sign, parts)))


def sign(part: Part) -> Markup:
    """Return one sign: a number, an operator, a name; what is built already stays as it is."""
    if isinstance(part, Markup):
        return part
    if part in OPERATORS:
        return Markup("<mo>{}</mo>").format(part)
    if part[0].isdigit():
        return Markup("<mn>{}</mn>").format(part)
    return Markup("<mi>{}</mi>").format(part)


def row(*parts: Part) -> Markup:
    """Return parts side by side."""
    return tag("mrow", *parts)


def line(text: str) -> Markup:
    """Return signs written with spaces between them, side by side: ``line("a + b")``."""
    return row(*text.split())


def over(above: Part, below: Part) -> Markup:
    """Return a fraction."""
    return tag("mfrac", row(above), row(below))


def sub(base: Part, index: str) -> Markup:
    """Return a sign with an index; a word as index stands upright."""
    below = Markup("<mtext>{}</mtext>").format(escape(index))
    return tag("msub", base, below)


def power(base: Part, exponent: Part) -> Markup:
    """Return a power."""
    return tag("msup", base, exponent)


def root(inside: Part) -> Markup:
    """Return a square root."""
    return tag("msqrt", inside)


def fenced(*parts: Part) -> Markup:
    """Return parts between round brackets."""
    return row("(", *parts, ")")


def function(name: str, of: Part) -> Markup:
    """Return a named function of something, such as the sine of an angle."""
    return row(Markup("<mtext>{}</mtext>").format(escape(name)), of)


def total(index: str) -> Markup:
    """Return the sign of a sum over an index."""
    return tag("msub", Markup("<mo>∑</mo>"), index)


def equation(*parts: Part) -> Markup:
    """Return a whole equation, on a line of its own, or on several if it is long."""
    return Markup('<math display="block">{}</math>').format(in_lines(row(*parts)))


def inline(part: Part) -> Markup:
    """Return a sign to stand in a sentence or a table."""
    return Markup("<math>{}</math>").format(sign(part))
