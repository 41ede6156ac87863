"""The Inspect page's keys: the job, what was measured, the standard, the trouble, gas and air."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from beadwright.inspection.signs import Wind
from beadwright.inspection.trouble import SYMPTOMS, Symptom
from beadwright.inspection.weld_readings import WeldReadings
from beadwright.job.page_query import PageQuery
from beadwright.reading.entries import optional, part, required
from beadwright.reading.fields import Choice, Measured, WholeNumber

Accept = Literal["d1.1-static", "d1.1-cyclic", "iso-b", "iso-c", "iso-d"]
"""What a weld is judged by."""

ACCEPTS: tuple[Accept, ...] = ("d1.1-static", "d1.1-cyclic", "iso-b", "iso-c", "iso-d")


@dataclass(frozen=True, slots=True, kw_only=True)
class InspectQuery(PageQuery):
    """The Inspect page's query: its keys besides the job's [SI]."""

    accept: Accept = required(
        Choice(
            ACCEPTS,
            label="Judged by",
            help="d1.1-static, d1.1-cyclic (AWS D1.1:2020), iso-b, iso-c, iso-d (ISO 5817:2014)",
            default="d1.1-static",
        )
    )
    across: Literal["yes", "no"] = required(
        Choice(
            ("yes", "no"),
            label="Across the load",
            help="yes or no: the weld lies across the load in a primary member (AWS D1.1)",
            default="yes",
        )
    )
    readings: WeldReadings = part(WeldReadings)
    passes: int | None = optional(
        WholeNumber(
            1,
            150,
            label="Passes it was laid in",
            help="passes the weld was laid in; blank: as planned",
            blank="as planned",
        )
    )
    trouble: Symptom | None = optional(
        Choice[Symptom](
            tuple(SYMPTOMS),
            label="Seen or heard",
            help="the trouble seen or heard; blank: what the readings find out",
            blank="nothing",
        )
    )
    flow: float | None = optional(
        Measured(
            "gas_flow",
            "0ft3/h",
            "200ft3/h",
            "no nozzle takes more",
            label="Gas flow set",
            help="gas flow set; blank: not told",
            blank="not told",
        )
    )
    wind: Wind | None = optional(
        Choice[Wind](
            ("still", "draft", "windy"),
            label="Air at the weld",
            help="still, draft (felt), windy (over 5 mph, 8 km/h); blank: not told",
            blank="not told",
        )
    )
