"""A number or word with what it is, as the pages show it."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Fact:
    """One number or word with what it is.

    Attributes:
        value: What is shown large.
        name: What it is.
        room: Its band or range, or empty.
        key: Id of where it is told how it was got, or empty.
    """

    value: str
    name: str
    room: str = ""
    key: str = ""
