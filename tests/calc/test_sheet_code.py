"""Sheet under 1/8 in (3 mm) says which code would rule, on every page that counts by AWS D1.1."""

import pytest

from beadwright.api import answer_json

PAGES = ("dial-in", "passes", "heat", "card", "strength", "inspect")


def said(page: str, query: str) -> str:
    """What a page says of a job."""
    return " ".join(note["text"] for note in answer_json(page, query)["notes"])


@pytest.mark.parametrize("page", PAGES)
@pytest.mark.parametrize(
    ("plate", "sheet"),
    [("11ga", True), ("0.124in", True), ("1/8in", False), ("2.9mm&units=si", True),
     ("3mm&units=si", False)],
)  # fmt: skip
def test_sheet_names_the_code_that_would_rule(page: str, plate: str, sheet: bool) -> None:
    """AWS D1.1:2020 begins at 1/8 in, 3 mm (from memory); AWS D1.3:2018 has sheet to 3/16 in."""
    leg = "2.5mm" if plate.startswith("2.9") else "1/8in"
    assert ("D1.3" in said(page, f"plate={plate}&leg={leg}")) is sheet


@pytest.mark.parametrize("joint", ["v", "bevel", "square&back=gouge"])
def test_no_detail_of_d1_1_is_claimed_of_sheet(joint: str) -> None:
    for plate, claimed in (("1/8in", True), ("12ga", False)):
        text = said("dial-in", f"joint={joint}&plate={plate}&position=1G")
        assert any(word in text for word in ("detail B-", "prequalified detail")) is claimed


def test_iso_5817_judges_sheet_by_itself() -> None:
    assert "D1.3" not in said("inspect", "plate=16ga&leg=1/16in&accept=iso-b")


def test_short_circuit_on_sheet_is_left_to_its_code() -> None:
    """In AWS D1.1 it is not prequalified; what AWS D1.3 asks is not told here."""
    sheet, plate = (
        said("dial-in", f"plate={t}&leg=1/8in&transfer=short") for t in ("12ga", "1/8in")
    )
    assert "see AWS D1.3 for which procedures need a test" in sheet
    assert "structural work, qualify the procedure by test" in plate
    assert "structural work, qualify the procedure by test" not in sheet
