"""The form: units behind bare numbers, blanks, groups."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright import units
from beadwright.job.job_entries import DEFAULTS, FIELDS
from beadwright.key_groups import key_groups
from beadwright.measures import System
from beadwright.pages import PAGES
from beadwright_site.forms.typed import read_entries, with_units

MEASURES = {key: field.measure for key, field in FIELDS.items() if field.measure}


def test_every_entry_is_in_one_group() -> None:
    keys = [key for each in key_groups(PAGES["dial-in"]) for key in each.keys]
    assert sorted(keys) == sorted(DEFAULTS)


@pytest.mark.parametrize(
    ("typed", "system", "kept"),
    [
        ({"plate": "3/8"}, "us", {"plate": "3/8in"}),
        ({"plate": "9.5"}, "si", {"plate": "9.5mm"}),
        ({"plate": "3/8in"}, "si", {"plate": "3/8in"}),
        ({"plate": "10ga"}, "us", {"plate": "10ga"}),
        ({"plate": "½"}, "us", {"plate": "½in"}),
        ({"plate": "1 1/4"}, "us", {"plate": "1 1/4in"}),
        ({"volts": "24"}, "si", {"volts": "24V"}),
        ({"travel": "300"}, "si", {"travel": "300mm/min"}),
        ({"welds": "8"}, "us", {"welds": "8"}),
        ({"plate": "abc"}, "us", {"plate": "abc"}),
    ],
)
def test_a_bare_number_gets_the_unit_it_was_meant_in(
    typed: dict[str, str], system: System, kept: dict[str, str]
) -> None:
    assert with_units(typed, FIELDS, system) == kept


@given(
    st.sampled_from(sorted(MEASURES)),
    st.from_regex(r"[0-9]{1,4}(\.[0-9]{1,3})?|[1-9]/[1-9][0-9]?", fullmatch=True),
    st.sampled_from(["us", "si"]),
)
def test_the_unit_written_changes_no_value(key: str, number: str, system: System) -> None:
    measure = MEASURES[key]
    written = with_units({key: number}, FIELDS, system)[key]
    for other in ("us", "si"):
        assert units.read(written, measure, other) == units.read(number, measure, system)


def test_unknown_and_blank_entries_are_left_out_and_the_rest_kept() -> None:
    assert read_entries("plate=abc&x=1&leg=&gas=CO2", DEFAULTS) == {"plate": "abc", "gas": "CO2"}
