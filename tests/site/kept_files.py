"""Files of what a phone keeps, sound ones and broken ones, for the tests of reading them."""

from __future__ import annotations

import json
from collections.abc import Iterable
from copy import deepcopy
from random import Random
from typing import Any, cast

from beadwright.coupons.new_record import new_record

READ = "plate=1/4in&leg=1/4in&marked=8in&arc_time=40s&meter_amps=330A"


def sound_file(coupons: int = 3) -> dict[str, Any]:
    """Return a file with shop, jobs and coupons."""
    kept = {"welder": "Ann", "machine": "one"}
    records = [
        new_record(f"{READ}&meter_volts={26 + n}V", kept, f"k{n}", f"2026-11-{n + 1:02d}")
        for n in range(coupons)
    ]
    return {
        "kind": "beadwright",
        "version": 1,
        "shop": {"labour": "41/h", "welder": "Ann", "wire_price@ER70S-6 0.045in": "2/lb"},
        "jobs": [
            {
                "page": "dial-in",
                "query": "plate=3/8in&leg=5/16in",
                "name": "Bracket MB-3",
                "made": "2026-11-28T12:00:00.000Z",
            }
        ],
        "coupons": [record.plain() for record in records],
    }


_STRANGE: tuple[Any, ...] = (
    None, True, 0, -1, 1e308, 10**400, 2, "", "x" * 5000, "\ud800", "\u202e", "<b>", "=1+1", [], {},
    [[]], {"a": []}, "NaN", "plate=0", "&" * 400, "%00", "units=si", "1e999in",
)  # fmt: skip


def _strange(draw: Random) -> Any:
    """A value of its own each time: a list put in twice must not come to hold itself."""
    return deepcopy(draw.choice(_STRANGE))


def _places(found: Any) -> list[tuple[Any, Any]]:
    """Every value of plain data, as its holder and its key there."""
    if isinstance(found, dict):
        keys = [*cast("Iterable[Any]", found)]
    elif isinstance(found, list):
        keys = [at for at, _ in enumerate(cast("Iterable[Any]", found))]
    else:
        return []
    here: list[tuple[Any, Any]] = [(found, key) for key in keys]
    return here + [place for key in keys for place in _places(found[key])]


def _change_value(data: Any, draw: Random) -> None:
    holder, key = draw.choice(_places(data))
    what = draw.randrange(4)
    if what == 0:
        del holder[key]
    elif what == 1 and isinstance(holder, dict):
        holder[draw.choice(["", "key", "x", "own", "__proto__", "version"])] = _strange(draw)
    elif what == 2 and isinstance(holder, list):
        holder[key:key] = [holder[key]]
    else:
        holder[key] = _strange(draw)


def _change_text(text: str, draw: Random) -> str:
    at = draw.randrange(len(text))
    what = draw.randrange(4)
    if what == 0:
        return text[:at]  # the file was cut
    if what == 1:
        return text[:at] + draw.choice('{}[]",:0-eN\\\x00é') + text[at + 1 :]
    if what == 2:
        return text[:at] + draw.choice("0123456789") + text[at:]
    return text[:at] + text[at + draw.randrange(1, 30) :]


def broken_file(sound: str, draw: Random) -> str:
    """Return a file changed in one to three places, or cut."""
    if draw.random() < 0.5:
        data = json.loads(sound)
        for _ in range(draw.randrange(1, 4)):
            if data:
                _change_value(data, draw)
        return json.dumps(data)
    text = sound
    for _ in range(draw.randrange(1, 4)):
        if text:
            text = _change_text(text, draw)
    return text
