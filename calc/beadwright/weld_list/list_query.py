"""The Weld list's keys: the lines, and what Cost asks of the shop."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from marshmallow import ValidationError

from beadwright.heating.distortion_query import PartEntries
from beadwright.job.page_query import page_defaults
from beadwright.money.cost_query import CostQuery
from beadwright.reading.entries import optional, part, required
from beadwright.reading.fields import Measured, QueryField
from beadwright.weld_list.list_parts import ListParts, ListPartsField
from beadwright.weld_list.weld_lines import LONGEST_LIST


class LinesField(QueryField[str]):
    """The lines of a list, as typed."""

    is_text = True

    def _deserialize(
        self, value: Any, attr: str | None, data: Mapping[str, Any] | None, **kwargs: Any
    ) -> str:
        text = str(value)
        if len(text) > LONGEST_LIST:
            raise ValidationError(
                f"This list has {len(text):,} characters; write up to {LONGEST_LIST:,}, "
                "and the rest in a second list"
            )
        return text


@dataclass(frozen=True, slots=True, kw_only=True)
class ListQuery(CostQuery):
    """The Weld list's query: its keys besides Cost's [SI, money]."""

    pulled: PartEntries = part(PartEntries)
    lines: str | None = optional(
        LinesField(
            label="The welds, one a line",
            help="one weld a line: name, joint, plate, leg, length, count, position, wire, gas; "
            "parted by commas, semicolons or tabs; a first line may name other columns; a cell "
            "gap=1/16in says any other entry of a weld",
        )
    )
    part: ListParts | None = optional(
        ListPartsField(
            label="Part of a list",
            help="which part of a longer list these lines are, as a code says it: 2/3/1a2b3c",
        )
    )
    set_up: float = required(
        Measured(
            "time",
            "0min",
            "10000min",
            "minutes for one batch",
            label="Set-up, a batch",
            help="setting up for a batch: jigs, machine, first part",
            default="0min",
        )
    )
    margin: float = required(
        Measured(
            "share",
            "0%",
            "90%",
            "a share of the price, not of the cost",
            label="Margin, of the price",
            help="share of the price left over when the cost is paid",
            default="0%",
        )
    )


DEFAULTS = page_defaults(ListQuery)
"""What a blank or missing key of the page means."""
