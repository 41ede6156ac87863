"""Long equations are broken into lines a phone holds, and say the same."""

from xml.etree import ElementTree

import pytest
from markupsafe import Markup

from beadwright_site.method.contents import sections
from beadwright_site.method.math_lines import WIDEST_PX, in_lines, width_px
from beadwright_site.method.mathml import (
    equation,
    fenced,
    function,
    line,
    over,
    power,
    root,
    row,
    sub,
)


def texts(markup: Markup) -> list[str]:
    """What each line says."""
    tree = ElementTree.fromstring(markup)
    rows = list(tree.iter("mtr"))
    return ["".join(each.itertext()) for each in rows] or ["".join(tree.itertext())]


def test_a_short_row_stays_as_it_is() -> None:
    short = row("a", "=", "b", "+", "c")
    assert in_lines(short) is short


def test_a_long_row_begins_its_lines_with_plus_and_minus() -> None:
    terms = [part for name in "bcdefghij" for part in ("+", line(f"{name} · x"))]
    long = row("a", "=", "0", *terms, "−", "k")
    said = texts(in_lines(long))
    assert len(said) > 1
    assert "".join(said) == "".join(ElementTree.fromstring(long).itertext())
    assert said[0].startswith("a=0")
    assert all(each[0] in "+−" for each in said[1:])


def test_brackets_are_not_broken() -> None:
    inner = fenced("b", "+", "c", "−", "d", "+", "e")
    long = row("a", "=", line("2 ·"), inner, "+", line("3 ·"), inner, "+", line("4 ·"), inner)
    said = texts(in_lines(long))
    assert len(said) == 3
    assert all(each.count("(") == each.count(")") == 1 for each in said)


def test_two_equations_of_a_row_part_at_the_comma() -> None:
    one = ["S", "=", over(line("M · P · Q · R"), line("η · u")), "+", line("t · u · v")]
    two = ["T", "=", over(line("M · P · Q · R"), line("η · u")), "+", line("t · u · v")]
    said = texts(in_lines(row(*one, ",", *two)))
    assert said == ["S=M·P·Q·Rη·u+t·u·v,", "T=M·P·Q·Rη·u+t·u·v"]


def test_a_long_product_parts_before_a_dot() -> None:
    said = texts(in_lines(row("y", "=", line(" · ".join("ABCDEFGHIJKLMN")))))
    assert len(said) > 1
    assert all(each.startswith("·") for each in said[1:])


def test_what_cannot_be_broken_stays_whole() -> None:
    whole = row(root(row(line(" + ".join("ABCDEFGHIJKLMN")))))
    assert in_lines(whole) is whole


@pytest.mark.parametrize(
    ("wider", "narrower"),
    [
        (row("a", "+", "b"), row("a", "·", "b")),
        (over(line("a + b"), "c"), over("a", "c")),
        (power("a", "2"), row("a")),
        (row("a", "2"), sub("a", "2")),
        (root("a"), row("a")),
        (function("cos", "a"), row("a")),
        (row("A"), row("a")),
        (row("+"), row(")")),
    ],
)
def test_width_grows_with_what_is_drawn(wider: Markup, narrower: Markup) -> None:
    assert width_px(ElementTree.fromstring(wider)) > width_px(ElementTree.fromstring(narrower))


def test_no_line_of_the_page_is_wider_than_a_phone_unless_it_is_one_piece() -> None:
    for section in sections():
        for formula in section.equation.formulas:
            tree = ElementTree.fromstring(formula)
            for drawn in tree.iter("mtd"):
                pieces = [e for e in drawn.iter("mo") if e.text in ("+", "−")]
                assert width_px(drawn) <= WIDEST_PX + 60 or len(pieces) < 4, section.equation.key


def test_an_equation_is_escaped_in_lines_too() -> None:
    names = [part for _ in range(20) for part in ("<b>", "+")]
    broken = equation("a", "=", *names, "c")
    assert "mtable" in broken
    assert "<b>" not in broken
