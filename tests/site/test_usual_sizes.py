"""The first entries of Dial in: sizes to tap, a section of each joint."""

from __future__ import annotations

import re

import pytest

from beadwright.api import answer
from beadwright.joint.joints import JOINTS
from beadwright.units import System
from beadwright_site.drawings.joint_signs import JOINT_SIGNS
from beadwright_site.forms.filling import Filling
from beadwright_site.forms.job_entries import job_entries
from beadwright_site.forms.usual_sizes import SIZES, usual_sizes


def tapped(key: str, text: str, system: System = "us") -> list[tuple[str, str]]:
    """Value and word of each size marked as the one held."""
    entry = job_entries(Filling({key: text} if text else {}, {}, system))[key]
    return [(size.value, size.word) for size in usual_sizes(entry, system) if size.chosen]


@pytest.mark.parametrize(
    ("key", "text", "system", "marked"),
    [
        ("plate", "3/8in", "us", ("3/8in", "3/8")),
        ("plate", "0.375", "us", ("3/8in", "3/8")),
        ("plate", "9.525mm", "us", ("3/8in", "3/8")),
        ("plate", "10ga", "us", ("10ga", "10 ga")),
        ("plate", "6", "si", ("6mm", "6")),
        ("plate", "7/16in", "us", ("7/16in", "7/16in")),
        ("leg", "", "us", ("", "Usual")),
        ("leg", "1/4", "us", ("1/4in", "1/4")),
        ("leg", "1/4in", "si", ("1/4in", "1/4in")),
    ],
)
def test_the_size_held_is_marked(
    key: str, text: str, system: System, marked: tuple[str, str]
) -> None:
    assert tapped(key, text, system) == [marked]


def test_a_size_that_is_not_usual_stands_first_and_one_that_cannot_be_read_does_not() -> None:
    entry = job_entries(Filling({"plate": "7/16in"}, {}, "us"))["plate"]
    assert usual_sizes(entry, "us")[0].value == "7/16in"
    assert tapped("plate", "abc") == []


def test_every_usual_size_can_be_taken() -> None:
    for (key, system), sizes in SIZES.items():
        for size in sizes:
            if size:
                answer("dial-in", f"units={system}&{key}={size}")
        assert len(set(sizes)) == len(sizes)


def test_every_joint_has_its_own_section_inside_the_box() -> None:
    assert set(JOINT_SIGNS) == set(JOINTS)
    assert len({(sign.plates, sign.weld) for sign in JOINT_SIGNS.values()}) == len(JOINTS)
    for sign in JOINT_SIGNS.values():
        for path in (sign.plates, sign.weld):
            numbers = [int(found) for found in re.findall(r"\d+", path)]
            assert max(numbers) <= 48
