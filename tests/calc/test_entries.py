"""A query's keys as attributes of a frozen dataclass: fields, parts, prefixes, defaults."""

from dataclasses import dataclass
from typing import Any

import pytest

from beadwright.reading.entries import defaults_of, fields_of, made, optional, part, required
from beadwright.reading.fields import Choice, Measured, QueryField, WholeNumber


@dataclass(frozen=True, slots=True, kw_only=True)
class Coil:
    """A toy part."""

    weight: float | None = optional(
        Measured("mass", "1lb", "60lb", "a hand spool to a big one", label="It weighs")
    )
    kind: str = required(Choice(("new", "begun"), default="new", help="new or begun"))


def second(key: str, field: QueryField[Any]) -> QueryField[Any]:
    return field.but(default="", help=f"{field.help}, the second") if key == "kind" else field


@dataclass(frozen=True, slots=True, kw_only=True)
class Toy:
    """A toy query."""

    name: str
    count: int = required(WholeNumber(1, 9, default="3", blank="some"))
    coil: Coil = part(Coil)
    spare: Coil = part(Coil, "b_", only=("kind",), change=second)


FIELDS = fields_of(Toy)


def test_keys_stand_in_the_order_of_the_attributes() -> None:
    assert list(FIELDS) == ["count", "weight", "kind", "b_kind"]


def test_a_part_may_say_other_words_and_leaves_the_first_as_they_are() -> None:
    assert (FIELDS["b_kind"].default, FIELDS["b_kind"].help) == ("", "new or begun, the second")
    assert (FIELDS["kind"].default, FIELDS["kind"].help) == ("new", "new or begun")
    assert (FIELDS["count"].blank, FIELDS["weight"].label) == ("some", "It weighs")
    assert defaults_of(FIELDS) == {"count": "3", "weight": "", "kind": "new", "b_kind": ""}


def test_a_dataclass_is_made_of_what_the_fields_read() -> None:
    read = {"count": 4, "kind": "begun", "b_kind": "new", "stranger": 1}
    found = made(Toy, read, name="a")
    assert found == Toy(name="a", count=4, coil=Coil(kind="begun"), spare=Coil(kind="new"))
    assert found.coil.weight is None


def test_a_key_that_must_have_a_value_is_asked_for() -> None:
    with pytest.raises(TypeError, match="count"):
        made(Toy, {"kind": "new", "b_kind": "new"}, name="a")


def test_only_a_measure_has_a_unit() -> None:
    assert FIELDS["weight"].bare_unit("us") == "lb"
    assert FIELDS["weight"].with_unit("33", "si") == "33kg"
    assert FIELDS["count"].bare_unit("us") == ""
    assert FIELDS["count"].with_unit("3", "us") == "3"
