"""A shop's own numbers: how its wire, machine and hand stand against the published fits.

They are learned from coupons and written in one short text, so that a link or a kept entry carries
them: ``ER70S-6,0.045in,90/10,n7,phi1.021,r0.98,band0.11,crown1.05,at=bay 2,by=Ann``, a semicolon
between two wires or gases. What is not written stays as published; ``at`` and ``by`` say of which
machine and hand they are.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from urllib.parse import quote, unquote

from beadwright.errors import BeadwrightError
from beadwright.phrases import Amount, Phrase, say
from beadwright.typed_number import quoted

RANGES: Mapping[str, tuple[float, float]] = MappingProxyType(
    {
        "n": (1.0, 9999.0),
        "phi": (0.6, 1.6),
        "r": (0.6, 1.6),
        "band": (0.01, 0.5),
        "eff": (0.7, 1.1),
        "spread": (0.005, 0.2),
        "crown": (0.6, 1.7),
        "travel": (0.4, 2.5),
        "volts": (-6.0, 6.0),
    }
)
"""What each number may be, by its name in the text: beyond it a coupon was misread, not learned
from. Common practice: no shop's wire, scale or meter stands so far from print."""

_NAMES = 3
"""Parts that name wire, size and gas, before the numbers."""

_WHOSE = ("at=", "by=")
"""What the machine's and the welder's name begin with."""

LONGEST_NAME = 40
"""Characters of a machine's or welder's name [-]."""

_PART = re.compile(r"([a-z]+)([+-]?\d{1,4}(?:\.\d{1,6})?)", re.ASCII)


class OwnNumbersError(BeadwrightError):
    """A text that holds no own numbers; the message says what one looks like."""


@dataclass(frozen=True, slots=True)
class OwnNumbers:
    """A shop's own numbers for one wire and gas, on its machine; None where it has none.

    Attributes:
        wire: Classification of the wire.
        dia: Inch name of its size.
        gas: Name of the gas.
        coupons: Coupons behind them [-].
        phi: Heating voltage at the tip over the published fit's [-].
        r: Resistivity of the extension over the published fit's [-].
        band: Half-band of the feed at a current, as a share [-].
        efficiency: Deposition efficiency over the published typical one [-].
        spread: Half-band of it, as a share [-].
        crown: Section of a fillet as welded over what the tables give [-].
        travel: Travel of the hand over the one planned [-].
        volts_v: The machine's meter over the volts planned at the arc [V].
        machine: Name of the machine they were learned on, may be empty.
        welder: Name of whose hand they are, may be empty.
    """

    wire: str
    dia: str
    gas: str
    coupons: int
    phi: float | None = None
    r: float | None = None
    band: float | None = None
    efficiency: float | None = None
    spread: float | None = None
    crown: float | None = None
    travel: float | None = None
    volts_v: float | None = None
    machine: str = ""
    welder: str = ""

    @property
    def whose(self) -> str:
        """Whose they are: welder and machine, as far as they were named."""
        return ", ".join(name for name in (self.welder, self.machine) if name)

    @property
    def meter_told(self) -> Phrase | None:
        """How the machine's meter stands to volts told at the arc; None where it is not known."""
        if not self.volts_v:
            return None
        key = "process.meter-over" if self.volts_v > 0 else "process.meter-under"
        return say(key, off=Amount(abs(self.volts_v), "volts"))

    @property
    def text(self) -> str:
        """The numbers as one text, which ``own_book`` reads back."""
        found = {
            "n": self.coupons, "phi": self.phi, "r": self.r, "band": self.band,
            "eff": self.efficiency, "spread": self.spread, "crown": self.crown,
            "travel": self.travel, "volts": self.volts_v,
        }  # fmt: skip
        told = (f"{name}{value:.4g}" for name, value in found.items() if value is not None)
        whose = {"at": self.machine, "by": self.welder}
        names = (f"{key}={quote(name, safe=' ')}" for key, name in whose.items() if name)
        return ",".join([self.wire, self.dia, self.gas, *told, *names])


OwnBook = tuple[OwnNumbers, ...]
"""Own numbers for several wires and gases."""


def own_book(text: str) -> OwnBook:
    """Return the own numbers a text holds, wire by wire; none for ``off``.

    Args:
        text: As ``OwnNumbers.text`` writes them, a semicolon between two; or ``off`` [-].

    Raises:
        OwnNumbersError: If a part is not known, out of its range, or one of a pair is missing.
    """
    if text.strip().lower() == "off":
        return ()
    return tuple(_own_numbers(each) for each in text.split(";") if each.strip())


def own_of(book: OwnBook, wire: str, dia: str, gas: str) -> OwnNumbers | None:
    """Return the own numbers of a wire and gas, or None if a book has none.

    Args:
        book: Own numbers [-].
        wire: Classification of the wire [-].
        dia: Inch name of its size [-].
        gas: Name of the gas [-].
    """
    return next((own for own in book if (own.wire, own.dia, own.gas) == (wire, dia, gas)), None)


def _own_numbers(text: str) -> OwnNumbers:
    parts = [part.strip() for part in text.split(",")]
    if len(parts) < _NAMES + 1 or not all(parts):
        raise OwnNumbersError(
            f"{quoted(text)} is no own number; write off, or what Coupons gives: "
            "ER70S-6,0.045in,90/10,n7,phi1.02,r0.98,band0.11"
        )
    whose = {part[:2]: unquote(part[3:]) for part in parts[_NAMES:] if part[:3] in _WHOSE}
    for name in whose.values():
        if len(name) > LONGEST_NAME or not name.isprintable():
            raise OwnNumbersError(f"a name has up to {LONGEST_NAME} plain characters")
    found = dict(_number(part) for part in parts[_NAMES:] if part[:3] not in _WHOSE)
    for names in (("phi", "r", "band"), ("eff", "spread")):
        if 0 < sum(name in found for name in names) < len(names):
            raise OwnNumbersError(f"{', '.join(names)} stand together or not at all")
    if "n" not in found:
        raise OwnNumbersError("n, the number of coupons behind the own numbers, is missing")
    wire, dia, gas = parts[:_NAMES]
    return OwnNumbers(
        wire=wire,
        dia=dia,
        gas=gas,
        coupons=round(found["n"]),
        phi=found.get("phi"),
        r=found.get("r"),
        band=found.get("band"),
        efficiency=found.get("eff"),
        spread=found.get("spread"),
        crown=found.get("crown"),
        travel=found.get("travel"),
        volts_v=found.get("volts"),
        machine=whose.get("at", ""),
        welder=whose.get("by", ""),
    )


def _number(part: str) -> tuple[str, float]:
    matched = _PART.fullmatch(part)
    if matched is None or matched[1] not in RANGES:
        raise OwnNumbersError(f"{quoted(part)} is none of {', '.join(RANGES)} with its number")
    name, value = matched[1], float(matched[2])
    low, high = RANGES[name]
    if not low <= value <= high:
        raise OwnNumbersError(
            f"{quoted(part)} is outside {low:g} to {high:g}: no coupon that was read right stands "
            "so far from print"
        )
    return name, value
