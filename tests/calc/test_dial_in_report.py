"""What the Dial-in page hands on of its plane and its estimates."""

from typing import Any

from beadwright.api import answer_json

JOB = "plate=3/8in&leg=5/16in&wire=ER70S-6&dia=0.045in&position=2F"


def page(query: str) -> dict[str, Any]:
    return answer_json("dial-in", f"{JOB}&{query}")


def test_the_point_on_the_plane_is_what_is_set() -> None:
    found = page("gas=90/10&wfs=400in/min&volts=28V")["window_map"]
    assert found["unit"] == ["in/min", "V"]
    assert found["point"] == [400.0, 28.0]


def test_where_nothing_holds_there_is_no_point_and_no_window() -> None:
    found = page("gas=90/10&machine_amps=100A")
    assert not found["answer"]["open"]
    assert found["window_map"]["point"] is None
    assert found["window_map"]["window"] == []


def test_why_a_gas_does_not_spray_is_said_and_nothing_where_it_does() -> None:
    assert "CO2 does not spray" in page("gas=CO2")["window_map"]["no_spray_because"]
    assert page("gas=90/10")["window_map"]["no_spray_because"] == ""


def test_the_plane_is_drawn_to_thousandths_of_a_volt() -> None:
    found = page("gas=90/10")["window_map"]
    lines = [found["window"], *(region["outline"] for region in found["regions"])]
    volts = [at for line in lines for _, at in line]
    assert len(volts) > 20
    assert all(at == round(at, 3) for at in volts)


def test_an_estimate_off_what_was_measured_says_so() -> None:
    """Beads were measured from 6 mm/s on, 14 in/min; 8 in/min is slower."""
    for key in ("penetration", "dilution"):
        wide = page("gas=90/10&wfs=400in/min&travel=8in/min")["answer"][key]
        assert wide["because"] == "travel speed below what was measured: band widened"
        assert wide["note"].startswith("An estimate")
