"""The Passes page's keys: the job, how many beads, how they are laid, what root and cap run on."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from marshmallow import Schema, fields

from beadwright.job.job_query import DEFAULTS as JOB_DEFAULTS
from beadwright.job.job_query import KEY_WORDS as JOB_WORDS
from beadwright.passes.pass_beads import Asked
from beadwright.passes.pass_plan import MOST_BEADS
from beadwright.passes.pass_process import Part, PartByHand
from beadwright.reading.fields import Choice, Measured, WholeNumber

_FEED = "30in/min", "1000in/min", "no feeder holds less or gives more"
_VOLTS = "10V", "50V", "outside that no wire arc burns"

PASSES_WORDS: Mapping[str, str] = MappingProxyType(
    {
        "passes": "beads in all; blank: the fewest that hold every limit",
        "bead": "weave, up to the code's width; or stringer, without weaving",
        "root_transfer": "transfer of the root: short, spray, pulse; blank: follows the job",
        "root_wfs": "wire feed of the root set by hand",
        "root_volts": "volts of the root set by hand",
        "cap_wfs": "wire feed of the cap set by hand",
        "cap_volts": "volts of the cap set by hand",
        "at": "bead shown, from 1; blank: the last",
    }
)
"""What each key besides the job's means."""

_OWN_DEFAULTS: dict[str, str] = dict.fromkeys(PASSES_WORDS, "") | {"bead": "weave"}

DEFAULTS: Mapping[str, str] = MappingProxyType({**JOB_DEFAULTS, **_OWN_DEFAULTS})
"""What a blank or missing key of the page means."""

KEY_WORDS: Mapping[str, str] = MappingProxyType({**JOB_WORDS, **PASSES_WORDS})
"""What each key means, for the terminal and the form."""


def _fields() -> dict[str, fields.Field[Any]]:
    return {
        "passes": WholeNumber(1, MOST_BEADS),
        "bead": Choice(("weave", "stringer")),
        "root_transfer": Choice(("short", "spray", "pulse")),
        "root_wfs": Measured("wire_feed", *_FEED),
        "root_volts": Measured("volts", *_VOLTS),
        "cap_wfs": Measured("wire_feed", *_FEED),
        "cap_volts": Measured("volts", *_VOLTS),
        "at": WholeNumber(1, MOST_BEADS),
    }


PassesSchema = Schema.from_dict(_fields(), name="PassesSchema")
"""The page's keys besides the job's."""


def asked_of(values: Mapping[str, Any]) -> Asked:
    """Return what a query asks of the plan.

    Args:
        values: The page's values, by key [-].
    """
    parts: dict[Part, PartByHand] = {
        "root": PartByHand(
            values.get("root_transfer"), values.get("root_wfs"), values.get("root_volts")
        ),
        "cap": PartByHand(None, values.get("cap_wfs"), values.get("cap_volts")),
    }
    return Asked(values.get("passes"), values.get("bead") == "stringer", parts)
